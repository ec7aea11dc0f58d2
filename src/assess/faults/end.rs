//! The end of a case: a finding with its work, or "not reproduced".

use chrono::NaiveDate;
use uuid::Uuid;

use crate::record::{
    CaseState, Change, FaultCaseFile, Finding, FindingSource, FindingState, Hold, Id, Look, Moment, Name, Nature,
    PartFile, Severity, Touches, When, Work, WorkState,
};
use crate::rules::Rules;
use crate::text;

/// What a search found.
#[derive(Clone, Debug)]
pub struct Found<'a> {
    /// The finding's name in the rules; empty for one in the restorer's own words.
    pub what: &'a str,
    /// What it was, in words; not empty.
    pub outcome: &'a str,
    pub place_on_part: &'a str,
    pub severity: Severity,
}

/// Closes a case with what was found on a part: the finding, and, where no rule calls for any work on it, a piece of
/// work of its own that holds readiness.
pub fn found(
    file: &FaultCaseFile,
    part: &PartFile,
    found: &Found,
    rules: &Rules,
    today: NaiveDate,
    ids: &mut dyn FnMut() -> Uuid,
) -> Change {
    let mut change = Change::new(text!("Fault found: {symptom}", symptom = file.case.symptom));
    let mut case = file.case.clone();
    case.state = CaseState::Found;
    found.outcome.clone_into(&mut case.outcome);
    change.put(case);
    let finding = Finding {
        id: Id::from_uuid(ids()),
        part: part.part.id,
        what: Name::from(found.what),
        place_on_part: found.place_on_part.to_owned(),
        source: FindingSource::Hand,
        question: Name::default(),
        note: found.outcome.to_owned(),
    };
    let id = finding.id;
    change.put(finding);
    change.put(Look {
        id: Id::from_uuid(ids()),
        finding: id,
        looked: Moment::on(today),
        state: FindingState::Open,
        severity: found.severity,
        share_percent: None,
        again_by: When::Unknown,
        reason: String::new(),
        survey: None,
        work: None,
        who: String::new(),
    });
    if rules.work_for(found.what, part.part.kind, found.severity).next().is_none() {
        change.put(Work {
            id: Id::from_uuid(ids()),
            part: part.part.id,
            finding: Some(id),
            rule: String::new(),
            title: text!("Mend: {fault}", fault = found.outcome),
            hold: Hold::Ready,
            nature: Nature::Repair,
            state: WorkState::Open,
            changed: Moment::on(today),
            who: String::new(),
            minutes: None,
            used: String::new(),
            reason: String::new(),
            reversible: None,
            note: String::new(),
            touches: Touches::Electrical,
        });
    }
    change
}

/// Closes a case whose symptom does not come any more; `outcome` says how long and under what it was tried.
pub fn not_reproduced(file: &FaultCaseFile, outcome: &str) -> Change {
    let mut change = Change::new(text!("Not reproduced: {symptom}", symptom = file.case.symptom));
    let mut case = file.case.clone();
    case.state = CaseState::NotReproduced;
    outcome.clone_into(&mut case.outcome);
    change.put(case);
    change
}
