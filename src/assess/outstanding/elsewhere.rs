//! Work that waits for work on other parts, by the restorer's own order.

use std::collections::HashMap;
use std::sync::Arc;

use super::Task;
use crate::assess::answers::{Answers, PartAnswers};
use crate::record::{Logbook, PartId, WorkId};

/// A task: its part, and its place in the part's list.
pub type TaskPlace = (PartId, u16);

/// Says of each of `linked`, which are parts with work that comes after work elsewhere, what of that is still
/// outstanding. Gives back the parts for which that has changed.
pub fn settle(parts: &mut [Arc<PartAnswers>], linked: &[PartId], logbook: &Logbook) -> Vec<PartId> {
    if linked.is_empty() {
        return Vec::new();
    }
    let homes: HashMap<WorkId, PartId> =
        logbook.parts.iter().flat_map(|file| file.work.iter().map(|work| (work.id, file.part.id))).collect();
    let mut changed = Vec::new();
    for part in linked {
        let Ok(at) = parts.binary_search_by(|known| known.part.cmp(part)) else { continue };
        let firsts = |task: &Task| task.after_elsewhere.iter().filter_map(|work| place(parts, &homes, *work)).collect();
        let elsewhere: Vec<Vec<TaskPlace>> = parts[at].tasks.iter().map(firsts).collect();
        if parts[at].tasks.iter().map(|task| &task.elsewhere).ne(&elsewhere) {
            let mut settled = PartAnswers::clone(&parts[at]);
            settled.wait_for(elsewhere);
            parts[at] = Arc::new(settled);
            changed.push(*part);
        }
    }
    changed
}

/// Where a piece of work stands among the outstanding; `None` for one that is done, waived or not called for.
fn place(parts: &[Arc<PartAnswers>], homes: &HashMap<WorkId, PartId>, work: WorkId) -> Option<TaskPlace> {
    let part = homes.get(&work)?;
    let at = parts.binary_search_by(|known| known.part.cmp(part)).ok()?;
    let record = parts[at].file.work.iter().find(|known| known.id == work)?;
    let task = parts[at].tasks.iter().position(|task| task.is_carried_by(record))?;
    Some((*part, task as u16))
}

impl Answers {
    /// A task by its place.
    pub fn task(&self, (part, task): TaskPlace) -> Option<(&PartAnswers, &Task)> {
        let part = self.part(part)?;
        Some((part, part.tasks.get(usize::from(task))?))
    }

    /// What must be done before a task, as said to a person: on another part with that part's tag.
    pub fn firsts(&self, part: &PartAnswers, task: &Task) -> Vec<String> {
        let here = task.waits_for.iter().filter_map(|at| part.tasks.get(usize::from(*at)));
        let elsewhere = task.elsewhere.iter().filter_map(|place| self.task(*place));
        let elsewhere = elsewhere.map(|(part, task)| format!("{} ({})", task.title(), part.file.part.tag));
        here.map(|task| task.title().to_owned()).chain(elsewhere).collect()
    }

    /// The way by which `first` already comes after `later`, from `later` on: with the two put in order, all of it
    /// would go in a circle. `None` where they can be.
    pub fn way_back(&self, later: TaskPlace, first: TaskPlace) -> Option<Vec<TaskPlace>> {
        let mut seen = std::collections::HashSet::new();
        let mut open = vec![vec![first]];
        while let Some(way) = open.pop() {
            let last = *way.last()?;
            if last == later {
                return Some(way.into_iter().rev().collect());
            }
            let Some((_, task)) = self.task(last).filter(|_| seen.insert(last)) else { continue };
            let here = task.waits_for.iter().map(|at| (last.0, *at));
            open.extend(here.chain(task.elsewhere.iter().copied()).map(|next| {
                let mut way = way.clone();
                way.push(next);
                way
            }));
        }
        None
    }
}
