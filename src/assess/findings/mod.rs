//! How findings come up, are looked at again, close and return: after a survey, after capacitors, after work.
//!
//! Each function gives the records to be written beside the survey, the looks or the work itself.

mod capacitors;
mod stand;
mod survey;
mod turn;
mod work;

use uuid::Uuid;

pub use capacitors::after_capacitors;
pub use stand::stand_said;
pub(super) use survey::CAPACITOR_TOPIC;
pub use survey::after_survey;
pub(super) use survey::raised;
pub use turn::{Turn, TurnKind, what_changed};
pub use work::after_work;

use crate::record::{
    Entry, Finding, FindingFile, FindingSource, FindingState, Id, Look, Moment, PartId, Severity, SurveyId, When,
    WorkId,
};

/// What a look saw, before it is known what it means for the finding.
struct Seen<'a> {
    what: &'a str,
    severity: Severity,
    share_percent: Option<f64>,
    looked: Moment,
    survey: Option<SurveyId>,
}

/// Whether a look is worse than the one before: more severe, or more of the surface where both were measured.
pub(super) fn is_worse(severity: Severity, share: Option<f64>, than: &Look) -> bool {
    severity > than.severity || share.zip(than.share_percent).is_some_and(|(now, then)| now > then)
}

/// The state of a finding that is seen again.
fn seen_again(state: FindingState, worse: bool) -> FindingState {
    match state {
        FindingState::Cured | FindingState::Confirmed => FindingState::Returned,
        FindingState::Accepted if worse => FindingState::Returned,
        FindingState::Watched if worse => FindingState::Open,
        same => same,
    }
}

/// A moment that the store has not numbered yet comes after all that it has.
fn as_latest(moment: Moment) -> Moment {
    Moment { sequence: if moment.sequence == 0 { u32::MAX } else { moment.sequence }, ..moment }
}

/// Whether a look of this moment comes too late to say anything about the present state.
fn is_overtaken(file: &FindingFile, looked: Moment) -> bool {
    file.last().is_some_and(|last| last.looked.is_after(as_latest(looked)))
}

/// A further look at a finding; `None` when its life does not allow that state now.
fn further_look(file: &FindingFile, state: FindingState, seen: &Seen, ids: &mut dyn FnMut() -> Uuid) -> Option<Look> {
    if !file.state().may_become(state) {
        return None;
    }
    // A watched or accepted finding that is seen unchanged keeps why, by whom, and until when.
    let kept = file.last().filter(|last| last.state == state);
    Some(Look {
        id: Id::from_uuid(ids()),
        finding: file.finding.id,
        looked: Moment { on: seen.looked.on, sequence: 0 },
        state,
        severity: seen.severity,
        share_percent: seen.share_percent,
        again_by: kept.map_or(When::Unknown, |last| last.again_by),
        reason: kept.map(|last| last.reason.clone()).unwrap_or_default(),
        survey: seen.survey,
        work: None,
        who: kept.map(|last| last.who.clone()).unwrap_or_default(),
    })
}

/// A new finding with the look that opened it.
struct Opening<'a> {
    part: PartId,
    place_on_part: &'a str,
    source: FindingSource,
    question: &'a str,
    note: String,
    work: Option<WorkId>,
    state: FindingState,
}

fn open(opening: Opening, seen: &Seen, ids: &mut dyn FnMut() -> Uuid) -> [Entry; 2] {
    let Opening { part, place_on_part, source, question, note, work, state } = opening;
    let finding = Finding {
        id: Id::from_uuid(ids()),
        part,
        what: seen.what.into(),
        place_on_part: place_on_part.to_owned(),
        source,
        question: question.into(),
        note,
    };
    let look = Look {
        id: Id::from_uuid(ids()),
        finding: finding.id,
        looked: Moment { on: seen.looked.on, sequence: 0 },
        state,
        severity: seen.severity,
        share_percent: seen.share_percent,
        again_by: When::Unknown,
        reason: String::new(),
        survey: seen.survey,
        work,
        who: String::new(),
    };
    [finding.into(), look.into()]
}
