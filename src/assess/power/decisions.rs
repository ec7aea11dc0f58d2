//! Findings, and what somebody has decided about them: open, watched, accepted, waived.

use chrono::NaiveDate;

use super::effect::{decided, of_hold, of_severity};
use crate::assess::outstanding::{Task, called_since};
use crate::assess::proofs::ProofStanding;
use crate::assess::reason::Reason;
use crate::record::{
    FindingFile, FindingId, FindingState, Kind, Moment, PartFile, Proof, Severity, Touches, Work, WorkState,
};
use crate::rules::{PowerEffect, Rules};

/// What a part's findings do, and the work on them that was waived; `tasks` is its outstanding work, which speaks for
/// itself.
pub(super) fn of_findings(file: &PartFile, tasks: &[Task], rules: &Rules) -> Vec<Reason> {
    let part = file.part.id;
    let worked_on = worst_of_work(tasks);
    let mut reasons: Vec<Reason> = Vec::new();
    for finding in &file.findings {
        let id = finding.finding.id;
        let effect = open_effect(finding, rules);
        match finding.state() {
            FindingState::Cured | FindingState::Confirmed => {}
            FindingState::Watched | FindingState::Accepted => {
                // What the restorer's own words mean, the restorer has weighed.
                let is_own = finding.finding.what.is_empty();
                let effect = if is_own { PowerEffect::Remark } else { decided(effect, finding.severity()) };
                reasons.push(Reason::Decided { part, finding: id, effect });
            }
            FindingState::Open | FindingState::Returned => {
                let of_work = worked_on.binary_search_by_key(&id, |(id, _)| *id).ok().map(|at| worked_on[at].1);
                if of_work.is_some_and(|of_work| of_work >= effect) {
                    continue;
                }
                reasons.push(match waived(file, finding) {
                    Some(work) if of_work.is_none() => {
                        Reason::Waived { part, work: work.id, effect: decided(effect, finding.severity()) }
                    }
                    _ => Reason::Finding { part, finding: id, effect },
                });
            }
        }
    }
    let by_hand = file.work.iter().filter(|work| work.state == WorkState::Waived && work.finding.is_none());
    reasons.extend(by_hand.map(|work| {
        let effect = rules.work(&work.rule).map_or_else(|| of_hold(work.hold), |rule| rule.power);
        Reason::Waived { part, work: work.id, effect: decided(effect, Severity::Plain) }
    }));
    reasons
}

/// The worst that outstanding work on each finding does, by the finding's key.
fn worst_of_work(tasks: &[Task]) -> Vec<(FindingId, PowerEffect)> {
    let effects = tasks.iter().flat_map(|task| task.findings.iter().map(|finding| (*finding, task.power_effect())));
    let mut effects: Vec<_> = effects.collect();
    effects.sort_unstable_by_key(|(finding, effect)| (*finding, std::cmp::Reverse(*effect)));
    effects.dedup_by_key(|(finding, _)| *finding);
    effects
}

/// What the finding does while it is open. A name that no table has is taken as grave as it was found.
fn open_effect(file: &FindingFile, rules: &Rules) -> PowerEffect {
    let severity = file.severity();
    match rules.finding(&file.finding.what) {
        Some(rule) => rule.power_at(severity),
        None if file.finding.what.is_empty() => of_severity(severity),
        None => of_severity(severity).max(PowerEffect::NotKnown),
    }
}

/// Work on a finding that was waived since it was last found.
fn waived<'a>(file: &'a PartFile, finding: &FindingFile) -> Option<&'a Work> {
    let since = called_since(finding);
    file.work
        .iter()
        .filter(|work| work.state == WorkState::Waived && work.finding == Some(finding.finding.id))
        .find(|work| !since.is_after(work.changed))
}

/// Work in the restorer's own words after which nobody has looked at the part or proven it: it touched something
/// electrical, or nobody has said that it did not.
pub(super) fn unproven_work(
    file: &PartFile,
    proofs: &[ProofStanding],
    today: NaiveDate,
) -> impl Iterator<Item = Reason> {
    let part = file.part.id;
    // A supply is tested on the dummy load, which its answer is about; a machine asks for that test.
    let is_tested_alone = file.part.kind == Kind::PowerSupply;
    let is_passed = |run: &Proof| proofs.iter().any(|proof| proof.standing.is_good() && proof.proof == Some(run.id));
    let looks = file.surveys_until(today).map(|survey| survey.looked);
    let runs = file.proofs.iter().filter(|run| is_passed(run)).map(|run| run.run);
    let seen: Vec<Moment> = looks.chain(runs).collect();
    let own = file.work.iter().filter(|work| work.is_own() && work.state.has_touched());
    own.filter(move |_| !is_tested_alone)
        .filter(move |work| !seen.iter().any(|moment| moment.is_surely_after(work.changed)))
        .filter_map(move |work| match work.touches {
            Touches::NothingElectrical => None,
            Touches::Unstated => Some(Reason::TouchUnstated { part, work: work.id }),
            Touches::Electrical => Some(Reason::WorkedSince { part, work: work.id }),
        })
}
