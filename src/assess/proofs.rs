//! How each proof that a part or a machine needs stands: never run, good, failed, voided, stale.

use std::sync::Arc;

use chrono::{Days, NaiveDate};

use crate::record::{MachineFile, Moment, PartFile, PartId, Proof, ProofId, ProofResult, Work, WorkId, WorkState};
use crate::rules::{ProofRule, Rules};

/// How one proof stands today.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// It was never run.
    NeverRun,
    /// It was run, and nobody could decide.
    Undecided,
    /// The last run failed.
    Failed,
    /// Later work voided it.
    Voided { work: WorkId, part: PartId },
    /// A part was fitted or taken out after the machine had passed.
    Changed { part: PartId },
    /// It is older than the rules let it be; `since` is unknown for a proof that nobody can date.
    Stale { since: Option<NaiveDate> },
    /// It holds: until a day, or for ever.
    Good { until: Option<NaiveDate> },
}

impl Standing {
    /// Whether it shows today that the part works.
    pub fn is_good(self) -> bool {
        matches!(self, Self::Good { .. })
    }
}

/// A proof that is asked for, and how it stands.
#[derive(Clone, Debug)]
pub struct ProofStanding {
    pub rule: Arc<ProofRule>,
    /// The run that the standing rests on.
    pub proof: Option<ProofId>,
    pub standing: Standing,
}

impl ProofStanding {
    /// Whether it is required and does not hold.
    pub fn is_lacking(&self) -> bool {
        self.rule.required && !self.standing.is_good()
    }
}

/// The standing of every proof that the part's kind knows.
pub fn of_part(file: &PartFile, rules: &Rules, today: NaiveDate) -> Vec<ProofStanding> {
    let asked = rules.proofs_for(file.part.kind).iter();
    asked.map(|rule| standing(rule, &file.proofs, today, |run| voided_by(file, rule, run, rules))).collect()
}

/// The standing of every proof of a whole machine; `parts` are all its parts with what is inside them.
pub fn of_machine(file: &MachineFile, parts: &[&PartFile], rules: &Rules, today: NaiveDate) -> Vec<ProofStanding> {
    let asked = rules.machine_proofs().iter();
    asked
        .map(|rule| {
            standing(rule, &file.proofs, today, |run| {
                let work = parts.iter().find_map(|part| voided_by(part, rule, run, rules));
                work.or_else(|| changed_after(file, parts, run, rules))
            })
        })
        .collect()
}

fn standing(
    rule: &Arc<ProofRule>,
    proofs: &[Proof],
    today: NaiveDate,
    overturned: impl FnOnce(Moment) -> Option<Standing>,
) -> ProofStanding {
    let mut runs = proofs.iter().filter(|proof| proof.test == rule.name);
    // The last run that was decided holds; an undecided one takes nothing away from it.
    let last = runs.clone().rfind(|proof| proof.result != ProofResult::Undecided).or_else(|| runs.next_back());
    let standing = last.map_or(Standing::NeverRun, |proof| match proof.result {
        ProofResult::Undecided => Standing::Undecided,
        ProofResult::Failed => Standing::Failed,
        ProofResult::Passed => overturned(proof.run).unwrap_or_else(|| age(rule, proof.run, today)),
    });
    ProofStanding { rule: Arc::clone(rule), proof: last.map(|proof| proof.id), standing }
}

/// Whether a passed proof still holds by its age, counted from the earliest day on which it can have been run.
fn age(rule: &ProofRule, run: Moment, today: NaiveDate) -> Standing {
    let Some(days) = rule.good_for_days else { return Standing::Good { until: None } };
    let until = run.on.span().and_then(|span| span.first.checked_add_days(Days::new(u64::from(days))));
    match until {
        Some(until) if until >= today => Standing::Good { until: Some(until) },
        until => Standing::Stale { since: until },
    }
}

/// The work after a run whose rule voids that proof. Work that failed or is under way has touched the part as well.
fn voided_by(file: &PartFile, proof: &ProofRule, run: Moment, rules: &Rules) -> Option<Standing> {
    let touched = |work: &&Work| matches!(work.state, WorkState::Done | WorkState::Failed | WorkState::Doing);
    let voids = |work: &&Work| rules.work(&work.rule).is_some_and(|rule| rule.voids.contains(&proof.name));
    file.work
        .iter()
        .filter(touched)
        .filter(|work| work.changed.is_after(run))
        .find(voids)
        .map(|work| Standing::Voided { work: work.id, part: file.part.id })
}

/// A part under current that was fitted or taken out after a run of the whole machine.
fn changed_after(file: &MachineFile, parts: &[&PartFile], run: Moment, rules: &Rules) -> Option<Standing> {
    let takes_current = |part: PartId| {
        let kind = parts.iter().find(|file| file.part.id == part).map(|file| file.part.kind);
        kind.and_then(|kind| rules.kind(kind)).is_none_or(|rule| rule.electrical)
    };
    file.fittings
        .iter()
        .filter(|fitting| fitting.fitted.is_after(run) || fitting.removed.is_some_and(|removed| removed.is_after(run)))
        .map(|fitting| fitting.part)
        .find(|part| takes_current(*part))
        .map(|part| Standing::Changed { part })
}
