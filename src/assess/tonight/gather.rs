//! The work that can be done tonight, with set-ups and gates, as one problem.

use std::collections::HashMap;

use super::{Evening, Item, Piece, UNTOLD_MINUTES, machine_urgency, urgency};
use crate::assess::outstanding::Stock;
use crate::assess::{Answers, Gate, MachineAnswers, Reason, Task};
use crate::record::{Competence, Hold, Logbook, MachineId, PartId, WorkState};
use crate::rules::Rules;

/// Worth of a gate, before its machine's urgency.
const GATE: u32 = 8;

/// All that is weighed: each item with its piece of the problem.
pub struct Gathered {
    pub items: Vec<Item>,
    pub problem: Vec<Piece>,
}

/// Worth of a piece by what it holds up.
fn worth_of(hold: Hold) -> u32 {
    match hold {
        Hold::Storage => 16,
        Hold::Power => 8,
        Hold::Fitting => 4,
        Hold::Ready => 2,
        Hold::Looks => 1,
    }
}

/// Hands-on minutes of a task.
pub fn minutes_of(task: &Task) -> u32 {
    if task.minutes() == 0 { UNTOLD_MINUTES } else { task.minutes() }
}

pub fn gather(answers: &Answers, logbook: &Logbook, rules: &Rules, evening: Evening) -> Gathered {
    let mut gathering = Gathering {
        answers,
        rules,
        evening,
        stock: Stock::of(logbook, rules),
        urgency: urgency(answers),
        sittings: rules.sittings.iter().enumerate().map(|(at, sitting)| (sitting.name.as_str(), at)).collect(),
        set_ups: HashMap::new(),
        places: HashMap::new(),
        gathered: Gathered { items: Vec::new(), problem: Vec::new() },
    };
    for part in 0..answers.parts.len() {
        for task in 0..answers.parts[part].tasks.len() {
            gathering.place(part, task);
        }
    }
    let Gathering { places, mut gathered, .. } = gathering;
    let place = |part: PartId, task: u16| {
        let at = answers.parts.binary_search_by(|known| known.part.cmp(&part)).ok()?;
        places.get(&(at, usize::from(task))).copied().flatten()
    };
    for machine in &answers.machines {
        if let Some((gate, after)) = gate(machine, place) {
            let worth = GATE * machine_urgency(machine.file.machine.priority);
            gathered.add(Item::Gate { machine: machine.machine, gate }, Piece { minutes: 0, worth, after });
        }
    }
    gathered
}

struct Gathering<'a> {
    answers: &'a Answers,
    rules: &'a Rules,
    evening: Evening,
    stock: Stock,
    urgency: HashMap<PartId, (u32, MachineId)>,
    /// Places of the sittings in the rules.
    sittings: HashMap<&'a str, usize>,
    /// Where setting up for each sitting stands among the items.
    set_ups: HashMap<usize, usize>,
    /// Where each task stands among the items; nowhere where it is not possible tonight, or is being placed.
    places: HashMap<(usize, usize), Option<usize>>,
    gathered: Gathered,
}

impl Gathering<'_> {
    /// Where a task stands among the items, behind all that it comes after; `None` where it is not possible tonight.
    fn place(&mut self, part_at: usize, task_at: usize) -> Option<usize> {
        if let Some(known) = self.places.get(&(part_at, task_at)) {
            return *known;
        }
        // Whatever leads back here goes in a circle, and is never possible.
        self.places.insert((part_at, task_at), None);
        let place = self.new_place(part_at, task_at);
        self.places.insert((part_at, task_at), place);
        place
    }

    fn new_place(&mut self, part_at: usize, task_at: usize) -> Option<usize> {
        let answers = self.answers;
        let part = &answers.parts[part_at];
        let task = &part.tasks[task_at];
        if !part.file.custody_now().is_at_hand() {
            return None;
        }
        let mut firsts: Vec<(usize, usize)> =
            task.waits_for.iter().map(|first| (part_at, usize::from(*first))).collect();
        for (other, first) in &task.elsewhere {
            firsts.push((answers.parts.binary_search_by(|known| known.part.cmp(other)).ok()?, usize::from(*first)));
        }
        let mut after = Vec::with_capacity(firsts.len() + 1);
        for (part, first) in firsts {
            // What has to dry or run first is not over tonight.
            let place = self.place(part, first).filter(|_| answers.parts[part].tasks[first].wait_hours() == 0);
            after.push(place?);
        }
        if !is_possible(task, self.evening, &self.stock) {
            return None;
        }
        if let Some(sitting) = self.sittings.get(task.sitting()).copied() {
            let Self { set_ups, gathered, rules, .. } = self;
            after.push(*set_ups.entry(sitting).or_insert_with(|| {
                let minutes = rules.sittings[sitting].set_up_minutes;
                gathered.add(Item::SetUp { sitting }, Piece { minutes, ..Piece::default() })
            }));
        }
        let urgency = self.urgency.get(&part.part).map_or(1, |(urgency, _)| *urgency);
        let piece = Piece { minutes: minutes_of(task), worth: worth_of(task.hold) * urgency, after };
        Some(self.gathered.add(Item::Work { part: part_at, task: task_at }, piece))
    }
}

impl Gathered {
    fn add(&mut self, item: Item, piece: Piece) -> usize {
        self.items.push(item);
        self.problem.push(piece);
        self.items.len() - 1
    }
}

fn is_possible(task: &Task, evening: Evening, stock: &Stock) -> bool {
    let can = match task.who() {
        Competence::Oneself => true,
        Competence::WithHelp => evening.help,
        Competence::SendOut => false,
    };
    can && task.state != WorkState::Waiting && stock.lacking(task).next().is_none()
}

/// The gate at which nothing but work holds a machine, and where that work stands; `None` where something else holds,
/// or a piece of it cannot be done tonight.
fn gate(machine: &MachineAnswers, place: impl Fn(PartId, u16) -> Option<usize>) -> Option<(Gate, Vec<usize>)> {
    let gate = machine.readiness.gate(machine.readiness.at)?;
    let after: Option<Vec<usize>> = gate
        .holding()
        .map(|reason| match reason {
            Reason::Work { part, task, .. } => place(*part, *task),
            _ => None,
        })
        .collect();
    Some((gate.gate, after.filter(|after| !after.is_empty())?))
}
