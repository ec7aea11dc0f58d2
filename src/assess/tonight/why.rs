//! Why a piece is done tonight, and what just missed.

use std::collections::HashMap;

use super::{Item, Piece, urgency};
use crate::assess::reason::machine_name;
use crate::assess::{Answers, Gate};
use crate::record::{Hold, Logbook, MachineId, PartId, Word as _};
use crate::{counted, text};

/// One reason to do a piece tonight.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Why {
    /// It is the last that holds a machine at its gate, with others that are done tonight too.
    OpensGate { machine: MachineId, gate: Gate },
    /// What it holds up, and of which machine: the most urgent that uses the part.
    Holds { hold: Hold, machine: Option<MachineId> },
    /// This many other pieces of tonight come after it.
    First { of: usize },
    /// Its tools are out for this many other pieces of tonight.
    SameSitting { with: usize },
}

/// A piece that was not chosen, though it could have been done.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Missed {
    pub part: PartId,
    /// The place of the part in the answers.
    pub part_at: usize,
    /// The place of the task in the part's list.
    pub task: usize,
    /// Minutes that it wants, with all it comes after and setting up.
    pub minutes: u32,
    /// Minutes that are lacking for it beside what was chosen.
    pub short: u32,
    pub worth: u32,
}

/// How many that missed are told.
const MISSED: usize = 5;

impl Why {
    /// As a sentence.
    pub fn sentence(&self, logbook: &Logbook) -> String {
        match self {
            Self::OpensGate { machine, gate } => text!(
                "With it, nothing holds {machine} at “{gate}” any more.",
                machine = machine_name(logbook, *machine),
                gate = gate.label()
            ),
            Self::Holds { hold, machine: None } => match hold {
                Hold::Storage => text!("The part should not lie on the shelf without it.").to_owned(),
                Hold::Power => text!("No power before it is done.").to_owned(),
                Hold::Fitting => text!("It comes before fitting.").to_owned(),
                Hold::Ready => text!("It comes before ready.").to_owned(),
                Hold::Looks => text!("For its looks.").to_owned(),
            },
            Self::Holds { hold, machine: Some(machine) } => {
                let machine = machine_name(logbook, *machine);
                match hold {
                    Hold::Storage => {
                        text!("The part should not even lie still without it; {machine} needs it.", machine = machine)
                    }
                    Hold::Power => text!("It keeps power from {machine}.", machine = machine),
                    Hold::Fitting => text!("It keeps a part from being fitted in {machine}.", machine = machine),
                    Hold::Ready => text!("It keeps {machine} from ready.", machine = machine),
                    Hold::Looks => text!("For the looks of {machine}.", machine = machine),
                }
            }
            Self::First { of } => {
                counted!("{count} piece of tonight comes after it.", "{count} pieces of tonight come after it.", *of)
            }
            Self::SameSitting { with } => {
                counted!("Its tools are out for {count} other.", "Its tools are out for {count} others.", *with)
            }
        }
    }
}

/// Reasons for each chosen piece of work, by its place among the items.
pub fn reasons(answers: &Answers, items: &[Item], problem: &[Piece], chosen: &[bool]) -> HashMap<usize, Vec<Why>> {
    let urgency = urgency(answers);
    let mut reasons: HashMap<usize, Vec<Why>> = HashMap::new();
    let mut first_of: HashMap<usize, usize> = HashMap::new();
    let mut in_sitting: HashMap<usize, usize> = HashMap::new();
    for at in (0..items.len()).filter(|at| chosen[*at]) {
        match &items[at] {
            Item::Gate { machine, gate } => {
                for first in &problem[at].after {
                    let why = Why::OpensGate { machine: *machine, gate: *gate };
                    reasons.entry(*first).or_default().push(why);
                }
            }
            Item::Work { .. } => {
                for first in &problem[at].after {
                    match items[*first] {
                        Item::SetUp { .. } => *in_sitting.entry(*first).or_default() += 1,
                        _ => *first_of.entry(*first).or_default() += 1,
                    }
                }
            }
            Item::SetUp { .. } => {}
        }
    }
    for at in (0..items.len()).filter(|at| chosen[*at]) {
        let Item::Work { part, task } = items[at] else { continue };
        let own = reasons.entry(at).or_default();
        let part = &answers.parts[part];
        let machine = urgency.get(&part.part).map(|(_, machine)| *machine);
        own.push(Why::Holds { hold: part.tasks[task].hold, machine });
        if let Some(of) = first_of.get(&at) {
            own.push(Why::First { of: *of });
        }
        let others = problem[at].after.iter().filter_map(|first| in_sitting.get(first)).map(|count| count - 1).sum();
        if others > 0 {
            own.push(Why::SameSitting { with: others });
        }
    }
    reasons
}

/// What was not chosen, most worth for the minutes it wants first; `left` minutes were left over.
pub fn missed(answers: &Answers, items: &[Item], problem: &[Piece], chosen: &[bool], left: u32) -> Vec<Missed> {
    let mut missed: Vec<Missed> = Vec::new();
    for at in (0..items.len()).filter(|at| !chosen[*at]) {
        let Item::Work { part, task } = items[at] else { continue };
        let mut wanted = vec![at];
        let mut open = vec![at];
        while let Some(next) = open.pop() {
            for first in problem[next].after.iter().filter(|first| !chosen[**first]) {
                if !wanted.contains(first) {
                    wanted.push(*first);
                    open.push(*first);
                }
            }
        }
        let minutes: u32 = wanted.iter().map(|at| problem[*at].minutes).sum();
        missed.push(Missed {
            part: answers.parts[part].part,
            part_at: part,
            task,
            minutes,
            short: minutes.saturating_sub(left),
            worth: wanted.iter().map(|at| problem[*at].worth).sum(),
        });
    }
    // Compared crosswise: worth for minutes, without rounding.
    missed.sort_by(|one, other| {
        let (first, second) = (
            u64::from(other.worth) * u64::from(one.minutes.max(1)),
            u64::from(one.worth) * u64::from(other.minutes.max(1)),
        );
        first.cmp(&second).then(one.minutes.cmp(&other.minutes)).then(one.part_at.cmp(&other.part_at))
    });
    missed.truncate(MISSED);
    missed
}
