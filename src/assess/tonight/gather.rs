//! The work that can be done tonight, with set-ups and gates, as one problem.

use std::collections::HashMap;

use super::{Evening, Item, Piece, UNTOLD_MINUTES, machine_urgency, urgency};
use crate::assess::outstanding::Stock;
use crate::assess::{Answers, Gate, MachineAnswers, PartAnswers, Reason, Task};
use crate::record::{Competence, Hold, Logbook, PartId, WorkState};
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
    let stock = Stock::of(&logbook.materials);
    let sitting_places: HashMap<&str, usize> =
        rules.sittings.iter().enumerate().map(|(place, sitting)| (sitting.name.as_str(), place)).collect();
    let urgency = urgency(answers);
    let mut gathered = Gathered { items: Vec::new(), problem: Vec::new() };
    let mut set_ups: HashMap<usize, usize> = HashMap::new();
    // Where each task stands among the items.
    let mut places: HashMap<(PartId, usize), usize> = HashMap::new();
    for (part_at, part) in answers.parts.iter().enumerate() {
        if part.tasks.is_empty() || !part.file.custody_now().is_at_hand() {
            continue;
        }
        let urgency = urgency.get(&part.part).map_or(1, |(urgency, _)| *urgency);
        for (task_at, task) in part.tasks.iter().enumerate() {
            let Some(mut after) = firsts(part, task, &places) else { continue };
            if !is_possible(task, evening, &stock) {
                continue;
            }
            if let Some(sitting) = sitting_places.get(task.sitting()) {
                let set_up = *set_ups.entry(*sitting).or_insert_with(|| {
                    let minutes = rules.sittings[*sitting].set_up_minutes;
                    gathered.add(Item::SetUp { sitting: *sitting }, Piece { minutes, ..Piece::default() })
                });
                after.push(set_up);
            }
            let piece = Piece { minutes: minutes_of(task), worth: worth_of(task.hold) * urgency, after };
            let at = gathered.add(Item::Work { part: part_at, task: task_at }, piece);
            places.insert((part.part, task_at), at);
        }
    }
    for machine in &answers.machines {
        if let Some((gate, after)) = gate(machine, &places) {
            let worth = GATE * machine_urgency(machine.file.machine.priority);
            gathered.add(Item::Gate { machine: machine.machine, gate }, Piece { minutes: 0, worth, after });
        }
    }
    gathered
}

impl Gathered {
    fn add(&mut self, item: Item, piece: Piece) -> usize {
        self.items.push(item);
        self.problem.push(piece);
        self.items.len() - 1
    }
}

/// Places of what a task comes after; `None` where one of them is not possible tonight or has to dry or run first.
fn firsts(part: &PartAnswers, task: &Task, places: &HashMap<(PartId, usize), usize>) -> Option<Vec<usize>> {
    let firsts = task.waits_for.iter().map(|first| usize::from(*first));
    firsts
        .map(|first| {
            let place = places.get(&(part.part, first)).copied();
            place.filter(|_| part.tasks[first].wait_hours() == 0)
        })
        .collect()
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
fn gate(machine: &MachineAnswers, places: &HashMap<(PartId, usize), usize>) -> Option<(Gate, Vec<usize>)> {
    let gate = machine.readiness.gate(machine.readiness.at)?;
    let after: Option<Vec<usize>> = gate
        .holding()
        .map(|reason| match reason {
            Reason::Work { part, task, .. } => places.get(&(*part, usize::from(*task))).copied(),
            _ => None,
        })
        .collect();
    Some((gate.gate, after.filter(|after| !after.is_empty())?))
}
