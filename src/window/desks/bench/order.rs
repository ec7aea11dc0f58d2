//! Outstanding work over all parts, in groups: what can be started now first.

use std::collections::HashMap;
use std::sync::Arc;

use crate::assess::{Answers, Task, Totals};
use crate::record::{Hold, Logbook, PartId};
use crate::rules::Rules;
use crate::text;

crate::words! {
    /// What the work is put together by.
    Grouping {
        Machine = "machine", "By machine";
        Part = "part", "By part";
        Sitting = "sitting", "By sitting";
    }
}

/// What is asked of the list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Wanted {
    pub grouping: Grouping,
    /// Only what can be started now.
    pub only_doable: bool,
    /// Only work whose title, part or tag holds these letters.
    pub letters: String,
}

/// One line of the list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Line {
    /// A group's heading, by its place in [`Order::groups`].
    Group(u32),
    /// A piece of work: the part's place in the answers, the task's in the part's list.
    Task { part: u32, task: u16 },
}

/// A group with what it comes to.
#[derive(Clone, Debug)]
pub struct Group {
    pub title: String,
    pub totals: Totals,
}

/// The list for one revision, with the answers it was made of.
#[derive(Clone, Debug)]
pub struct Order {
    pub answers: Arc<Answers>,
    pub logbook: Arc<Logbook>,
    pub groups: Vec<Group>,
    pub lines: Vec<Line>,
    pub totals: Totals,
    /// The one thing to do next: what eats a part on the shelf, then begun work, then what holds up most, for the most
    /// urgent machine.
    pub next: Option<(u32, u16)>,
}

/// Groups are told apart by this key; it also puts them in order.
type GroupKey = (u32, String);
/// A task: the part's place in the answers, the task's in the part's list.
type Place = (u32, u16);
/// Waits rather than can start, what it or work behind it holds up, and where it is: the order within a group.
type InGroup = (bool, Hold, Place);
/// Holds no storage, not begun, what it holds up, the machine's rank: the least is the next thing to do. What eats a
/// part on the shelf comes before begun work.
type Rank = (bool, bool, Hold, u32);

/// Work that is gathered into groups, part by part.
#[derive(Default)]
struct Gathering {
    at: HashMap<GroupKey, usize>,
    groups: Vec<(GroupKey, Vec<InGroup>)>,
    totals: Totals,
    next: Option<(Rank, Place)>,
}

impl Gathering {
    fn add(&mut self, task: &Task, urgency: Hold, place: Place, group: GroupKey, machine_rank: u32) {
        self.totals = self.totals.and(Totals::of([task]));
        let rank = (urgency != Hold::Storage, !task.is_under_way(), urgency, machine_rank);
        if task.doable && self.next.is_none_or(|(best, _)| rank < best) {
            self.next = Some((rank, place));
        }
        let group = *self.at.entry(group).or_insert_with_key(|key| {
            self.groups.push((key.clone(), Vec::new()));
            self.groups.len() - 1
        });
        self.groups[group].1.push((!task.doable, urgency, place));
    }
}

impl Order {
    /// Puts the outstanding work in order.
    pub fn of(logbook: &Arc<Logbook>, answers: &Arc<Answers>, rules: &Rules, wanted: &Wanted) -> Self {
        let machines = machines_of(answers);
        let letters = wanted.letters.trim().to_lowercase();
        let mut gathering = Gathering::default();
        for (at, part) in answers.parts.iter().enumerate().filter(|(_, part)| !part.tasks.is_empty()) {
            let title = || format!("{}  {}", part.file.part.tag, logbook.title_of(&part.file));
            let part_matches = letters.is_empty() || title().to_lowercase().contains(&letters);
            let machine = machines.get(&part.part);
            let urgency = urgency(&part.tasks);
            for (task_at, task) in part.tasks.iter().enumerate() {
                let matches = part_matches || task.title().to_lowercase().contains(&letters);
                if !matches || (wanted.only_doable && !task.doable) {
                    continue;
                }
                let group = match wanted.grouping {
                    Grouping::Machine => machine.cloned().unwrap_or((u32::MAX, text!("On the shelf").to_owned())),
                    // Parts with the strictest hold first.
                    Grouping::Part => (part.hold.map_or(u32::MAX, |hold| hold as u32), title()),
                    Grouping::Sitting => sitting_key(task, rules),
                };
                let rank = machine.map_or(u32::MAX, |(rank, _)| *rank);
                gathering.add(task, urgency[task_at], (at as u32, task_at as u16), group, rank);
            }
        }
        Self::from_gathering(gathering, logbook, answers)
    }

    fn from_gathering(gathering: Gathering, logbook: &Arc<Logbook>, answers: &Arc<Answers>) -> Self {
        let Gathering { mut groups, totals, next, .. } = gathering;
        groups.sort_by(|one, other| one.0.cmp(&other.0));
        let mut order = Self {
            answers: Arc::clone(answers),
            logbook: Arc::clone(logbook),
            groups: Vec::with_capacity(groups.len()),
            lines: Vec::with_capacity(totals.tasks + groups.len()),
            totals,
            next: next.map(|(_, place)| place),
        };
        for ((_, title), mut tasks) in groups {
            // Doable first, then by what they hold up; the part's own order stays within that.
            tasks.sort_unstable();
            let in_group = tasks.iter().filter_map(|(_, _, (part, task))| Some(order.task(*part, *task)?.1));
            let totals = Totals::of(in_group);
            order.lines.push(Line::Group(order.groups.len() as u32));
            order.groups.push(Group { title, totals });
            order.lines.extend(tasks.iter().map(|(_, _, (part, task))| Line::Task { part: *part, task: *task }));
        }
        order
    }

    /// A task with its part's answers.
    pub fn task(&self, part: u32, task: u16) -> Option<(&crate::assess::PartAnswers, &Task)> {
        let part = self.answers.parts.get(part as usize)?;
        Some((&**part, part.tasks.get(task as usize)?))
    }
}

/// Each part's machine with its rank; fitted or planned.
fn machines_of(answers: &Answers) -> HashMap<PartId, GroupKey> {
    let mut machines = HashMap::new();
    for machine in &answers.machines {
        let brief = &machine.file.machine;
        let rank = if brief.priority == 0 { u32::MAX - 1 } else { brief.priority };
        for part in &machine.members {
            machines.entry(*part).or_insert_with(|| (rank, brief.name.clone()));
        }
    }
    machines
}

/// What each task of a part holds up, by itself or by what waits for it: a photograph before a leaking cell is cut out
/// is as urgent as the cutting. Tasks stand in working order.
fn urgency(tasks: &[Task]) -> Vec<Hold> {
    let mut urgency: Vec<Hold> = tasks.iter().map(|task| task.hold).collect();
    for (at, task) in tasks.iter().enumerate().rev() {
        for first in &task.waits_for {
            let first = usize::from(*first);
            urgency[first] = urgency[first].min(urgency[at]);
        }
    }
    urgency
}

fn sitting_key(task: &Task, rules: &Rules) -> GroupKey {
    match rules.sittings.iter().position(|sitting| sitting.name == task.sitting()) {
        Some(at) => (at as u32, crate::text::say(&rules.sittings[at].say).to_owned()),
        None => (u32::MAX, text!("Other work").to_owned()),
    }
}
