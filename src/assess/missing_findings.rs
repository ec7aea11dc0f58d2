//! Facts whose finding is not in the logbook: answers and figures of surveys, capacitor positions, failed work.

use uuid::Uuid;

use super::findings::{after_capacitors, after_survey, after_work};
use crate::record::{Entry, Finding, FindingSource, Logbook, Look, PartFile, PartId, Survey, WorkState};
use crate::rules::Rules;

/// A part with the findings, each followed by the look that opens it, that its facts call for and it does not have.
#[derive(Clone, Debug, PartialEq)]
pub struct MissingFindings {
    pub part: PartId,
    pub entries: Vec<Entry>,
}

impl MissingFindings {
    /// The findings among them.
    pub fn findings(&self) -> impl Iterator<Item = &Finding> {
        self.entries.iter().filter_map(|entry| match entry {
            Entry::Finding(finding) => Some(finding),
            _ => None,
        })
    }
}

/// Of every part that misses one.
pub fn of(logbook: &Logbook, rules: &Rules, ids: &mut dyn FnMut() -> Uuid) -> Vec<MissingFindings> {
    let of = |file: &PartFile, ids: &mut dyn FnMut() -> Uuid| {
        let entries = of_part(file, rules, ids);
        (!entries.is_empty()).then_some(MissingFindings { part: file.part.id, entries })
    };
    logbook.parts.iter().filter_map(|file| of(file, ids)).collect()
}

/// The findings with their opening looks that a part's facts, as they stand, call for. A fact whose finding is there
/// already, whatever became of it, calls for nothing more: with these entries written, nothing is missing.
pub fn of_part(file: &PartFile, rules: &Rules, ids: &mut dyn FnMut() -> Uuid) -> Vec<Entry> {
    let mut missing = Vec::new();
    let failed = || file.work.iter().filter(|work| work.state == WorkState::Failed);
    if file.surveys.is_empty() && file.capacitors.is_empty() && failed().next().is_none() {
        return missing;
    }
    let mut surveys: Vec<&Survey> = file.surveys_now().collect();
    // What several surveys say is the newest one's finding.
    surveys.reverse();
    let mut known = file.clone();
    for survey in surveys {
        take(after_survey(&known, survey, rules, ids), &mut known, &mut missing);
    }
    let looked = file.capacitors.iter().map(crate::record::CapacitorFile::looked);
    if let Some(looked) = looked.max_by_key(|moment| moment.order()) {
        take(after_capacitors(&known, rules, looked, ids), &mut known, &mut missing);
    }
    for work in failed() {
        take(after_work(&known, work, rules, ids), &mut known, &mut missing);
    }
    missing
}

/// Takes over what opens a finding that is not there; further looks at what is there say nothing new.
fn take(entries: Vec<Entry>, known: &mut PartFile, missing: &mut Vec<Entry>) {
    let mut entries = entries.into_iter().peekable();
    while let Some(entry) = entries.next() {
        let Entry::Finding(finding) = &entry else { continue };
        let opens = |next: &Entry| matches!(next, Entry::Look(look) if look.finding == finding.id);
        let Some(look) = entries.next_if(opens) else { continue };
        if is_there(known, finding, &look) {
            continue;
        }
        for entry in [entry, look] {
            known.hang(entry.clone());
            missing.push(entry);
        }
    }
}

/// Whether a part has this finding: of the same name and not from different questions; of failed work, one that the
/// work opened.
fn is_there(file: &PartFile, finding: &Finding, look: &Entry) -> bool {
    let work = match look {
        Entry::Look(Look { work: Some(work), .. }) if finding.source == FindingSource::Work => Some(*work),
        _ => None,
    };
    file.findings.iter().any(|known| match work {
        Some(work) => known.looks.first().is_some_and(|look| look.work == Some(work)),
        None => {
            known.finding.what == finding.what
                && (known.finding.question == finding.question
                    || known.finding.question.is_empty()
                    || finding.question.is_empty())
        }
    })
}
