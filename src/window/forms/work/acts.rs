//! What a person does with a piece of work, each act as one change with what follows for the findings.

use chrono::NaiveDate;

use super::Ending;
use crate::assess::findings::after_work;
use crate::assess::{Job, Task};
use crate::record::{Change, Entry, FindingId, Hold, Moment, Nature, PartFile, PartId, Work, WorkState};
use crate::rules::Rules;
use crate::store::Store;
use crate::text;

fn new_uuid() -> uuid::Uuid {
    uuid::Uuid::now_v7()
}

fn lower_first(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map(|first| first.to_lowercase().chain(letters).collect()).unwrap_or_default()
}

/// Notes that a piece of work is under way.
pub fn begin(file: &PartFile, task: &Task, today: NaiveDate, rules: &Rules) -> Change {
    let name = text!("Begin on {tag}: {work}", tag = file.part.tag, work = lower_first(task.title()));
    step(file, task, WorkState::Doing, today, rules, name)
}

/// Notes that a piece of work waits for materials.
pub fn wait(file: &PartFile, task: &Task, today: NaiveDate, rules: &Rules) -> Change {
    let name = text!("Waits for materials on {tag}: {work}", tag = file.part.tag, work = lower_first(task.title()));
    step(file, task, WorkState::Waiting, today, rules, name)
}

fn step(file: &PartFile, task: &Task, state: WorkState, today: NaiveDate, rules: &Rules, name: String) -> Change {
    let mut change = Change::new(name);
    let work = record(file, task, task.findings.first().copied());
    write(&mut change, file, Work { state, changed: Moment::on(today), ..work }, rules);
    change
}

/// Takes up work again that was done, waived or failed.
pub fn take_up_again(file: &PartFile, work: &Work, today: NaiveDate, rules: &Rules) -> Change {
    let title = rules.work(&work.rule).map_or(work.title.as_str(), |rule| text::say(&rule.say));
    let mut change =
        Change::new(text!("Take up again on {tag}: {work}", tag = file.part.tag, work = lower_first(title)));
    let work = Work { state: WorkState::Open, changed: Moment::on(today), ..work.clone() };
    write(&mut change, file, work, rules);
    change
}

/// Adds a piece of work in the restorer's own words.
pub fn add_by_hand(
    file: &PartFile,
    finding: Option<FindingId>,
    title: &str,
    hold: Hold,
    nature: Nature,
    today: NaiveDate,
) -> Change {
    let mut change = Change::new(text!("Add work on {tag}: {work}", tag = file.part.tag, work = lower_first(title)));
    let open = blank(file.part.id, finding);
    change.put(Work { title: title.to_owned(), hold, nature, changed: Moment::on(today), ..open });
    change
}

/// Ends a piece of work. `ended` fills the evidence into its record.
pub(super) fn end(file: &PartFile, task: &Task, ending: Ending, ended: impl Fn(Work) -> Work, rules: &Rules) -> Change {
    let work = lower_first(task.title());
    let mut change = Change::new(match ending {
        Ending::Done => text!("Done on {tag}: {work}", tag = file.part.tag, work = work),
        Ending::Waived => text!("Waive on {tag}: {work}", tag = file.part.tag, work = work),
        Ending::Failed => text!("Failed on {tag}: {work}", tag = file.part.tag, work = work),
    });
    // Done once, it is done for every finding that asked for it; a waiver is given for each of them.
    let findings: Vec<Option<FindingId>> = match ending {
        Ending::Waived if !task.findings.is_empty() => task.findings.iter().copied().map(Some).collect(),
        _ => vec![task.findings.first().copied()],
    };
    let mut would_be = file.clone();
    for finding in findings {
        let work = ended(record(file, task, finding));
        let entries = write(&mut change, &would_be, work.clone(), rules);
        would_be.work.retain(|other| other.id != work.id);
        would_be.work.push(work);
        for entry in entries {
            if let Entry::Look(look) = entry
                && let Some(known) = would_be.findings.iter_mut().find(|known| known.finding.id == look.finding)
            {
                known.looks.push(look);
            }
        }
    }
    change
}

/// Puts a record of work with what follows for the findings; gives back what follows.
fn write(change: &mut Change, file: &PartFile, work: Work, rules: &Rules) -> Vec<Entry> {
    let before = file.work.iter().find(|known| known.id == work.id);
    if let Some(before) = before.filter(|before| before.state != work.state && !before.state.may_become(work.state)) {
        // The life of work leads back through “open”.
        change.put(Work { state: WorkState::Open, ..before.clone() });
    }
    change.put(work.clone());
    let follows = after_work(file, &work, rules, &mut new_uuid);
    change.put_all(follows.iter().cloned());
    follows
}

/// The record that carries a task for one of its findings: the one that is there, or a new one.
fn record(file: &PartFile, task: &Task, finding: Option<FindingId>) -> Work {
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
    let blank = blank(file.part.id, finding);
    Work { rule: rule.to_owned(), title, hold: task.hold, nature: task.nature(), ..blank }
}

fn blank(part: PartId, finding: Option<FindingId>) -> Work {
    Work {
        id: Store::new_id(),
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
    }
}
