//! A whole overhaul as pieces of work on one part, each after the one before it.

use std::sync::Arc;

use chrono::NaiveDate;
use uuid::Uuid;

use super::outstanding::{blank_work, record_of};
use super::{PartAnswers, Task};
use crate::record::{Change, Id, Moment, Step, Work, WorkAfter, WorkId};
use crate::rules::{Rules, Template, WorkRule};
use crate::text;

/// One piece of an overhaul.
#[derive(Clone, Debug)]
pub struct Piece {
    pub rule: Arc<WorkRule>,
    /// Its place in the part's list, where it is outstanding already.
    pub outstanding: Option<usize>,
}

/// The pieces of an overhaul that a part of its kind can have, in their order.
pub fn pieces(template: &Template, part: &PartAnswers, rules: &Rules) -> Vec<Piece> {
    let kind = part.file.part.kind;
    let named = template.work.iter().filter_map(|name| rules.work(name));
    named
        .filter(|rule| rule.kinds.is_empty() || rule.kinds.contains(&kind))
        .map(|rule| {
            let is_it = |task: &Task| task.rule().is_some_and(|known| Arc::ptr_eq(known, rule));
            Piece { rule: Arc::clone(rule), outstanding: part.tasks.iter().position(is_it) }
        })
        .collect()
}

/// Adds an overhaul to a part: what is not outstanding yet, and the order of all of it.
pub fn apply(
    template: &Template,
    part: &PartAnswers,
    rules: &Rules,
    today: NaiveDate,
    ids: &mut dyn FnMut() -> Uuid,
) -> Change {
    let file = &part.file;
    let say = text::say(&template.say);
    let mut change = Change::new(text!("{overhaul} on {tag}", overhaul = say, tag = file.part.tag));
    let mut before: Option<(WorkId, &Piece)> = None;
    let pieces = pieces(template, part, rules);
    for piece in &pieces {
        let new = Id::from_uuid(ids());
        let work = match piece.outstanding.and_then(|at| part.tasks.get(at)) {
            Some(task) => record_of(file, task, task.findings.first().copied(), new),
            None => Work {
                rule: piece.rule.name.clone(),
                hold: piece.rule.hold,
                nature: piece.rule.nature,
                ..blank_work(new, file.part.id, None)
            },
        };
        let id = work.id;
        if file.work.iter().all(|known| known.id != id) {
            change.put(Work { changed: Moment::on(today), ..work });
        }
        if let Some((first, of)) = before.replace((id, piece)) {
            let is_there = file.work_after.iter().any(|order| (order.work, order.after) == (id, first));
            // What the tables put in order needs no order by hand.
            if !is_there && !rules.is_before(&of.rule.name, &piece.rule.name) {
                change.put(WorkAfter { id: Id::from_uuid(ids()), part: file.part.id, work: id, after: first });
            }
        }
    }
    change
}

/// Whether a change adds anything: an overhaul that is outstanding already, and in order, does not.
pub fn adds(change: &Change) -> bool {
    change.steps.iter().any(|step| matches!(step, Step::Put(_)))
}
