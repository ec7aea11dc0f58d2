//! What to do tonight: of the work that can be done, the set that brings most in the hours there are.
//!
//! What a piece is worth (our own rule, in whole numbers):
//! - by what it holds up: storage 16, power 8, fitting 4, ready 2, looks 1;
//! - times the machine's urgency: priority 1 counts 4, priority 2 counts 3, any other machine 2, no machine 1. A part
//!   of several machines counts for the most urgent;
//! - a gate at which nothing but work holds a machine is worth 8 times that urgency more, once all that work is done.
//!
//! Only hands-on minutes count: drying, curing and running go on by themselves. A piece may follow the piece it comes
//! after on the same evening, unless that one has to dry or run first. Setting up for a kind of work is counted once.
//! Left out are work on parts that are not here, work that waits for materials or asks for one that is listed and out
//! of stock, work to be sent out, and, unless somebody is there, work to be done with help.

mod choose;
mod closure;
mod finish;
mod gather;
mod order;
mod why;

use std::collections::HashMap;

pub use choose::{Choice, PATIENCE, Piece, choose};
pub use why::{Missed, Why};

use super::{Answers, Patience};
use crate::record::{Logbook, MachineId, PartId};
use crate::rules::Rules;
pub(super) use gather::minutes_of;

use gather::Gathered;

/// Minutes taken for work in the restorer's own words, for which nobody said any (our own rule).
pub const UNTOLD_MINUTES: u32 = 30;

/// An evening at the bench.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Evening {
    /// Hands-on minutes there are.
    pub minutes: u32,
    /// Whether somebody is there to help.
    pub help: bool,
}

/// What is weighed against each other.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Item {
    /// A piece of work: the place of its part in the answers and its own in the part's list.
    Work { part: usize, task: usize },
    /// Setting up for the work of a sitting, by its place in the rules.
    SetUp { sitting: usize },
    /// A gate that opens when all work holding it is done.
    Gate { machine: MachineId, gate: super::Gate },
}

/// A piece of work chosen for tonight.
#[derive(Clone, Debug)]
pub struct Chosen {
    pub part: PartId,
    /// The place of the part in the answers.
    pub part_at: usize,
    /// The place of the task in the part's list.
    pub task: usize,
    /// Hands-on minutes; [`UNTOLD_MINUTES`] where nobody said.
    pub minutes: u32,
    pub worth: u32,
    /// Why it is done tonight, weightiest first.
    pub why: Vec<Why>,
}

/// The evening's plan.
#[derive(Clone, Debug)]
pub struct Tonight {
    /// In the order in which to do it: one sitting after the other, each piece after those it comes after.
    pub chosen: Vec<Chosen>,
    /// Places of the sittings to set up for, in that order, with their minutes.
    pub set_ups: Vec<(usize, u32)>,
    /// All hands-on minutes, setting up included.
    pub minutes: u32,
    /// What it is worth together.
    pub worth: u64,
    /// What no choice can be worth more than; more than `worth` only where the search was broken off.
    pub bound: u64,
    /// What would come next with more time, most worth for its minutes first.
    pub missed: Vec<Missed>,
    /// All that was weighed, with `problem` beside it.
    pub items: Vec<Item>,
    pub problem: Vec<Piece>,
}

/// The best work for an evening; see the rule at the head of this module. Looking is broken off after `patience`
/// (see [`PATIENCE`]), or once it is stopped; the bound then says how much better another choice might be at most.
pub fn tonight(
    answers: &Answers,
    logbook: &Logbook,
    rules: &Rules,
    evening: Evening,
    patience: impl Into<Patience>,
) -> Tonight {
    let Gathered { items, problem } = gather::gather(answers, logbook, rules, evening);
    let choice = choose(&problem, evening.minutes, patience);
    let is_chosen = {
        let mut chosen = vec![false; items.len()];
        choice.chosen.iter().for_each(|at| chosen[*at] = true);
        chosen
    };
    let ordered = order::in_order(&items, &problem, &is_chosen, answers, rules);
    let mut set_ups = Vec::new();
    for at in &ordered {
        for first in &problem[*at].after {
            if let Item::SetUp { sitting } = items[*first]
                && set_ups.iter().all(|(known, _)| *known != sitting)
            {
                set_ups.push((sitting, problem[*first].minutes));
            }
        }
    }
    let reasons = why::reasons(answers, &items, &problem, &is_chosen);
    let chosen = ordered.into_iter().filter_map(|at| {
        let Item::Work { part, task } = items[at] else { return None };
        let Piece { minutes, worth, .. } = problem[at];
        let why = reasons.get(&at).cloned().unwrap_or_default();
        Some(Chosen { part: answers.parts[part].part, part_at: part, task, minutes, worth, why })
    });
    Tonight {
        chosen: chosen.collect(),
        set_ups,
        minutes: choice.minutes,
        worth: choice.worth,
        bound: choice.bound,
        missed: why::missed(answers, &items, &problem, &is_chosen, evening.minutes - choice.minutes),
        items,
        problem,
    }
}

impl Tonight {
    /// Whether no other choice is worth more.
    pub fn is_best(&self) -> bool {
        self.worth == self.bound
    }

    /// Hours that dry or run by themselves once all is done, the longest of them.
    pub fn wait_hours(&self, answers: &Answers) -> u32 {
        let tasks = self.chosen.iter().map(|chosen| &answers.parts[chosen.part_at].tasks[chosen.task]);
        tasks.map(super::Task::wait_hours).max().unwrap_or(0)
    }
}

/// The urgency of each part that a machine uses: 4 for priority 1, 3 for 2, 2 for any other; and that machine.
pub(super) fn urgency(answers: &Answers) -> HashMap<PartId, (u32, MachineId)> {
    let mut urgency: HashMap<PartId, (u32, MachineId)> = HashMap::new();
    for machine in &answers.machines {
        let own = machine_urgency(machine.file.machine.priority);
        for part in &machine.members {
            let known = urgency.entry(*part).or_insert((own, machine.machine));
            if own > known.0 {
                *known = (own, machine.machine);
            }
        }
    }
    urgency
}

fn machine_urgency(priority: u32) -> u32 {
    match priority {
        1 => 4,
        2 => 3,
        _ => 2,
    }
}
