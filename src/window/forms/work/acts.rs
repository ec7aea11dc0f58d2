//! What a person does with a piece of work, each act as one change with what follows for the findings.

use chrono::NaiveDate;

use super::{Ending, Own};
use crate::assess::Task;
use crate::assess::findings::after_work;
use crate::assess::outstanding::{blank_work, record_of};
use crate::assess::touched::{self, Piece};
use crate::record::{Change, Entry, FindingId, Hold, Moment, Nature, PartFile, Step, Word, Work, WorkAfter, WorkState};
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
    let work = record_of(file, task, task.findings.first().copied(), Store::new_id());
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

/// Adds a piece of work in the restorer's own words, and what it touches where that is known already.
pub fn add_own(file: &PartFile, title: &str, hold: Hold, own: Own, today: NaiveDate) -> Change {
    let mut change = add_by_hand(file, None, title, hold, own.nature, today);
    for step in &mut change.steps {
        if let Step::Put(Entry::Work(work)) = step {
            work.touches = own.touches;
        }
    }
    change
}

/// Says otherwise what a piece of work in the restorer's own words is, or what it touches.
pub fn change_own(file: &PartFile, work: &Work, own: Own) -> Change {
    if own.nature == work.nature {
        return touched::state(Piece { file, work }, own.touches);
    }
    let mut change = Change::new(text!(
        "{nature} on {tag}: {work}",
        nature = own.nature.label(),
        tag = file.part.tag,
        work = lower_first(&work.title)
    ));
    change.put(own.on(work.clone()));
    change
}

/// Adds a piece of work in the restorer's own words that a finding calls for.
pub fn add_by_hand(
    file: &PartFile,
    finding: Option<FindingId>,
    title: &str,
    hold: Hold,
    nature: Nature,
    today: NaiveDate,
) -> Change {
    let mut change = Change::new(text!("Add work on {tag}: {work}", tag = file.part.tag, work = lower_first(title)));
    let open = blank_work(Store::new_id(), file.part.id, finding);
    change.put(Work { title: title.to_owned(), hold, nature, changed: Moment::on(today), ..open });
    change
}

/// Puts a piece of work behind another, on the same part or on another one.
pub fn put_behind(
    (later_file, later): (&PartFile, &Task),
    (first_file, first): (&PartFile, &Task),
    today: NaiveDate,
) -> Change {
    let mut change = Change::new(text!(
        "Put {later} on {tag} behind {first}",
        later = lower_first(later.title()),
        tag = later_file.part.tag,
        first = lower_first(first.title())
    ));
    let mut carrier = |file: &PartFile, task: &Task| {
        let work = record_of(file, task, task.findings.first().copied(), Store::new_id());
        let id = work.id;
        if file.work.iter().all(|known| known.id != id) {
            change.put(Work { changed: Moment::on(today), ..work });
        }
        id
    };
    let (work, after) = (carrier(later_file, later), carrier(first_file, first));
    change.put(WorkAfter { id: Store::new_id(), part: later_file.part.id, work, after });
    change
}

/// Says that a piece of work is done, by whom and with what, without further evidence.
pub fn done(file: &PartFile, task: &Task, who: &str, used: &str, today: NaiveDate, rules: &Rules) -> Change {
    let ended = |work: Work| Work {
        state: WorkState::Done,
        changed: Moment::on(today),
        who: who.to_owned(),
        used: used.to_owned(),
        ..work
    };
    end(file, task, Ending::Done, ended, rules)
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
        let work = ended(record_of(file, task, finding, Store::new_id()));
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
    // The same work added by hand beside its findings is done, or left, with it.
    let state = ending.state();
    let beside = file.work.iter().filter(|work| work.finding.is_none() && work.state.is_outstanding());
    let put = |change: &Change, work: &Work| {
        change.steps.iter().any(|step| matches!(step, Step::Put(Entry::Work(put)) if put.id == work.id))
    };
    for work in beside.filter(|work| task.is_carried_by(work)) {
        if !put(&change, work) {
            change.put(Work { minutes: None, used: String::new(), ..ended(Work { state, ..work.clone() }) });
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
