//! What logged capacitor positions mean for a part's findings: one finding for each rule that a position meets.

use uuid::Uuid;

use super::{Opening, Seen, further_look, is_worse, open, seen_again};
use crate::record::{CapacitorFile, CapacitorState, Entry, FindingFile, FindingSource, FindingState, Moment, PartFile};
use crate::rules::{FindingRule, Rules};

/// The findings and looks that follow from a part's capacitor positions as they stand in `file`, looked at `at`.
///
/// Each rule with capacitor states has one finding a part, whether positions or an earlier survey raised it. It opens
/// with the first position in such a state, returns when a position is seen so after its cure, and closes when none
/// is left.
pub fn after_capacitors(file: &PartFile, rules: &Rules, at: Moment, ids: &mut dyn FnMut() -> Uuid) -> Vec<Entry> {
    let mut entries = Vec::new();
    for rule in rules.findings.iter().filter(|rule| !rule.capacitor_states.is_empty()) {
        let bad: Vec<&CapacitorFile> =
            file.capacitors.iter().filter(|position| meets(rule, position, position.state())).collect();
        let known = file.findings.iter().rfind(|known| is_of_positions(known, rule, rules));
        let seen = Seen { what: &rule.name, severity: rule.severity, share_percent: None, looked: at, survey: None };
        match known {
            None if !bad.is_empty() => {
                let opening = Opening {
                    part: file.part.id,
                    place_on_part: &place(&bad),
                    source: FindingSource::Capacitors,
                    question: "",
                    note: String::new(),
                    work: None,
                    state: FindingState::Open,
                };
                entries.extend(open(opening, &seen, ids));
            }
            None => {}
            Some(known) if bad.is_empty() => {
                let closing = has_closed(file, known, rule).then_some(FindingState::Confirmed);
                entries.extend(closing.and_then(|state| further_look(known, state, &seen, ids)).map(Entry::from));
            }
            Some(known) => {
                let last = known.last();
                let worse = last.is_some_and(|last| is_worse(seen.severity, None, last));
                let state = seen_again(known.state(), worse);
                // Recapping cures before each position has been looked at again: only a look after the cure counts.
                let news = last.is_none_or(|last| bad.iter().any(|position| position.looked().is_after(last.looked)));
                if state != known.state() && (news || worse) {
                    entries.extend(further_look(known, state, &seen, ids).map(Entry::from));
                }
            }
        }
    }
    entries
}

fn meets(rule: &FindingRule, position: &CapacitorFile, state: CapacitorState) -> bool {
    rule.capacitor_states.contains(&state)
        && (rule.dielectrics.is_empty() || rule.dielectrics.contains(&position.position.dielectric))
}

/// Whether a finding is the one that positions speak for: theirs, or a survey's answer to a question about them.
fn is_of_positions(known: &FindingFile, rule: &FindingRule, rules: &Rules) -> bool {
    let of_topic = || rules.question(&known.finding.question).is_some_and(|q| q.topic == super::CAPACITOR_TOPIC);
    known.finding.what == rule.name && (known.finding.source == FindingSource::Capacitors || of_topic())
}

/// Whether no position in such a state being left means that they were dealt with: a survey's finding stays while
/// the positions that it saw have not been logged.
fn has_closed(file: &PartFile, known: &FindingFile, rule: &FindingRule) -> bool {
    let was_bad = |position: &CapacitorFile| {
        meets(rule, position, position.position.state)
            || position.looks.iter().any(|look| meets(rule, position, look.state))
    };
    known.state() != FindingState::Confirmed
        && (known.finding.source == FindingSource::Capacitors || file.capacitors.iter().any(was_bad))
}

/// Where the positions are, in words: their designators, else where they sit.
fn place(bad: &[&CapacitorFile]) -> String {
    let named = |position: &CapacitorFile| {
        let name = &position.position.designator;
        if name.is_empty() { position.position.place_on_part.clone() } else { name.clone() }
    };
    let mut names: Vec<String> = bad.iter().map(|position| named(position)).filter(|name| !name.is_empty()).collect();
    names.dedup();
    names.join(", ")
}
