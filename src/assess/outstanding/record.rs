//! The record that carries a task: the one that is there, or a new one.

use crate::assess::{Job, Task};
use crate::record::{FindingId, Hold, Moment, Nature, PartFile, PartId, Touches, Work, WorkId, WorkState};

/// The record that carries a task for one of its findings; `new` is its key where there is none yet.
pub fn record_of(file: &PartFile, task: &Task, finding: Option<FindingId>, new: WorkId) -> Work {
    let rule = task.rule().map(|rule| rule.name.as_str()).unwrap_or_default();
    let own = |work: &&Work| work.finding == finding && !rule.is_empty() && work.rule == rule;
    let carried = |work: &&Work| task.work == Some(work.id) && (work.finding == finding || finding.is_none());
    if let Some(known) = file.work.iter().find(carried).or_else(|| file.work.iter().find(own)) {
        return known.clone();
    }
    let title = match &task.job {
        Job::Rule(_) => String::new(),
        Job::Own { title, .. } => title.to_string(),
    };
    let blank = blank_work(new, file.part.id, finding);
    Work { rule: rule.to_owned(), title, hold: task.hold, nature: task.nature(), ..blank }
}

/// Open work that nothing is said of yet.
pub fn blank_work(id: WorkId, part: PartId, finding: Option<FindingId>) -> Work {
    Work {
        id,
        part,
        finding,
        rule: String::new(),
        title: String::new(),
        hold: Hold::Ready,
        nature: Nature::Care,
        state: WorkState::Open,
        changed: Moment::default(),
        who: String::new(),
        minutes: None,
        used: String::new(),
        reason: String::new(),
        reversible: None,
        note: String::new(),
        touches: Touches::Unstated,
    }
}
