//! What a piece of work means for a part's findings: done work cures, failed work shows something new.

use uuid::Uuid;

use super::{Opening, Seen, further_look, open};
use crate::assess::outstanding::{Call, calls};
use crate::record::{Entry, FindingFile, FindingSource, FindingState, Hold, Look, PartFile, Severity, Work, WorkState};
use crate::rules::Rules;
use crate::text;

/// The findings and looks that a piece of work brings, as `work` stands now; `file` may still hold it as it was.
///
/// A finding is cured when the last of the work that cures it, or that power or storage waits for on its account, is
/// done; some of it may be waived, but one piece that cures must have been done. Failed work
/// opens a finding of its own. Work taken up again after it cured a finding brings that finding back.
pub fn after_work(file: &PartFile, work: &Work, rules: &Rules, ids: &mut dyn FnMut() -> Uuid) -> Vec<Entry> {
    let works: Vec<&Work> = file.work.iter().filter(|other| other.id != work.id).chain(std::iter::once(work)).collect();
    match work.state {
        WorkState::Done | WorkState::Waived => file
            .findings
            .iter()
            .filter(|finding| is_cured(finding, work, file, &works, rules))
            .filter_map(|finding| look(finding, work, FindingState::Cured, ids))
            .collect(),
        WorkState::Failed => failed(file, work, rules, ids),
        WorkState::Open | WorkState::Waiting | WorkState::Doing => file
            .findings
            .iter()
            .filter(|finding| {
                let cured_by = |last: &Look| last.state == FindingState::Cured && last.work == Some(work.id);
                finding.last().is_some_and(cured_by)
            })
            .filter_map(|finding| look(finding, work, FindingState::Returned, ids))
            .collect(),
    }
}

fn is_cured(finding: &FindingFile, work: &Work, file: &PartFile, works: &[&Work], rules: &Rules) -> bool {
    let own = work.finding == Some(finding.finding.id);
    let state = finding.state();
    if is_failure_of(finding, work) {
        return work.state == WorkState::Done && state.calls_for_work();
    }
    if !(state.calls_for_work() || (own && state == FindingState::Watched)) {
        return false;
    }
    let calls: Vec<Call> = calls(finding, file.part.kind, works, rules).collect();
    let any_cures = calls.iter().any(|call| call.rule.cures);
    // A piece that only prepares the cure may be left out, but not one that power or storage waits for.
    let counts = |call: &&Call| !any_cures || call.rule.cures || call.rule.hold_at(finding.severity()) <= Hold::Power;
    let (mut settled, mut any_done, mut concerned) = (true, false, own && calls.is_empty());
    for call in calls.iter().filter(counts) {
        settled &= call.is_settled();
        any_done |= call.state == WorkState::Done && (call.rule.cures || !any_cures);
        concerned |= call.rule.name == work.rule;
    }
    let by_hand =
        works.iter().filter(|other| other.finding == Some(finding.finding.id) && rules.work(&other.rule).is_none());
    for other in by_hand {
        settled &= matches!(other.state, WorkState::Done | WorkState::Waived);
        any_done |= other.state == WorkState::Done;
        concerned |= other.id == work.id;
    }
    settled && any_done && concerned
}

fn look(finding: &FindingFile, work: &Work, state: FindingState, ids: &mut dyn FnMut() -> Uuid) -> Option<Entry> {
    let seen = Seen {
        what: &finding.finding.what,
        severity: finding.severity(),
        share_percent: finding.last().and_then(|last| last.share_percent),
        looked: work.changed,
        survey: None,
    };
    let mut look = further_look(finding, state, &seen, ids)?;
    look.work = Some(work.id);
    Some(look.into())
}

/// Whether a finding says that this work failed.
fn is_failure_of(finding: &FindingFile, work: &Work) -> bool {
    finding.finding.source == FindingSource::Work
        && finding.looks.first().is_some_and(|look| look.work == Some(work.id))
}

/// The finding that failed work opens, or brings back where the same work failed before.
fn failed(file: &PartFile, work: &Work, rules: &Rules, ids: &mut dyn FnMut() -> Uuid) -> Vec<Entry> {
    let rule = rules.work(&work.rule);
    let hold = rule.map_or(work.hold, |rule| rule.hold);
    let severity = if hold <= Hold::Power { Severity::Grave } else { Severity::Plain };
    let seen = Seen { what: "", severity, share_percent: None, looked: work.changed, survey: None };
    if let Some(known) = file.findings.iter().find(|known| is_failure_of(known, work)) {
        let state = super::seen_again(known.state(), false);
        return further_look(known, state, &seen, ids)
            .map(|look| Look { work: Some(work.id), ..look }.into())
            .into_iter()
            .collect();
    }
    let title = rule.map_or(work.title.as_str(), |rule| text::say(&rule.say));
    let note = if work.reason.is_empty() {
        text!("Failed: {title}", title = title)
    } else {
        text!("Failed: {title}. {reason}", title = title, reason = work.reason)
    };
    let place_on_part = work.finding.and_then(|id| file.finding(id)).map_or("", |of| &of.finding.place_on_part);
    let opening = Opening {
        part: file.part.id,
        place_on_part,
        source: FindingSource::Work,
        question: "",
        note,
        work: Some(work.id),
        state: FindingState::Open,
    };
    open(opening, &seen, ids).into()
}
