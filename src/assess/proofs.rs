//! How each proof that a part or a machine needs stands: never run, good, failed, voided, stale.

use std::sync::Arc;

use chrono::{Days, NaiveDate};

use super::limits::{breaks_figure, is_out};
use crate::record::{
    MachineFile, Moment, Nature, PartFile, PartId, Proof, ProofId, ProofResult, Reading, ReadingId, Touches, Work,
    WorkId, WorkState,
};
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
    /// It is said to have passed, with a figure of its own that no pass can have.
    OutOfBounds { reading: ReadingId },
    /// Its only runs are dated after today.
    InFuture,
    /// Later work voided it; `None` for a capacitor that was replaced.
    Voided { work: Option<WorkId>, part: PartId },
    /// It failed, and work done since may have mended what failed.
    Repaired { work: WorkId, part: PartId },
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

    /// Whether it shows that the part does not work.
    pub fn has_failed(self) -> bool {
        matches!(self, Self::Failed | Self::OutOfBounds { .. })
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
    let runs = Runs { proofs: &file.proofs, readings: &file.readings, today };
    let asked = rules.proofs_for(file.part.kind).iter();
    asked
        .map(|rule| {
            let repaired = |run| repaired_by(file, rule, run, rules, today);
            runs.standing(rule, rules, |run| voided_by(file, rule, run, rules), repaired)
        })
        .collect()
}

/// The standing of every proof of a whole machine; `parts` are all its parts with what is inside them.
pub fn of_machine(file: &MachineFile, parts: &[&PartFile], rules: &Rules, today: NaiveDate) -> Vec<ProofStanding> {
    let runs = Runs { proofs: &file.proofs, readings: &file.readings, today };
    let asked = rules.machine_proofs().iter();
    asked
        .map(|rule| {
            let overturned = |run| {
                let work = parts.iter().find_map(|part| voided_by(part, rule, run, rules));
                work.or_else(|| changed_after(file, parts, run, rules))
            };
            let repaired = |run| parts.iter().find_map(|part| repaired_by(part, rule, run, rules, today));
            runs.standing(rule, rules, overturned, repaired)
        })
        .collect()
}

/// The tests that were run on something, and what was read in them.
struct Runs<'a> {
    proofs: &'a [Proof],
    readings: &'a [Reading],
    today: NaiveDate,
}

impl Runs<'_> {
    /// By the last run, whatever came of it, until later work overturns it: what may void a pass, and what surely comes
    /// after a failure. A run that is dated after today is none.
    fn standing(
        &self,
        rule: &Arc<ProofRule>,
        rules: &Rules,
        overturned: impl FnOnce(Moment) -> Option<Standing>,
        repaired: impl FnOnce(Moment) -> Option<Standing>,
    ) -> ProofStanding {
        let is_future = |proof: &Proof| proof.run.on.span().is_some_and(|span| span.first > self.today);
        let runs = self.proofs.iter().filter(|proof| proof.test == rule.name);
        let last = runs.clone().rfind(|proof| !is_future(proof));
        let standing = match last.map(|proof| (proof, proof.result)) {
            None if runs.clone().next().is_some() => Standing::InFuture,
            None => Standing::NeverRun,
            Some((_, ProofResult::Undecided)) => Standing::Undecided,
            Some((proof, ProofResult::Failed)) => repaired(proof.run).unwrap_or(Standing::Failed),
            Some((proof, ProofResult::Passed)) => match self.out_of_bounds(proof, rule, rules) {
                Some(reading) => repaired(proof.run).unwrap_or(Standing::OutOfBounds { reading }),
                None => overturned(proof.run).unwrap_or_else(|| age(rule, proof.run, self.today)),
            },
        };
        ProofStanding { rule: Arc::clone(rule), proof: last.map(|proof| proof.id), standing }
    }

    /// A figure noted in a run that no pass can have.
    fn out_of_bounds(&self, proof: &Proof, rule: &ProofRule, rules: &Rules) -> Option<ReadingId> {
        let is_superseded = |old: &Reading| self.readings.iter().any(|new| new.supersedes == Some(old.id));
        let own = self.readings.iter().filter(|reading| reading.proof == Some(proof.id));
        own.filter(|reading| !is_superseded(reading))
            .find(|reading| breaks_figure(reading, rule) || is_out(reading, rules) == Some(true))
            .map(|reading| reading.id)
    }
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

/// What is not certainly before a run and voids it: work whose rule says so, a capacitor replaced, and where the proof
/// decides over power all work that changes something. Work in the restorer's own words voids that proof and what work
/// of its nature voids, unless it touched nothing electrical. Work that failed or is under way has touched the part as well.
fn voided_by(file: &PartFile, proof: &ProofRule, run: Moment, rules: &Rules) -> Option<Standing> {
    let is_before_power = proof.decides_power();
    let voids = |work: &&Work| match (rules.work(&work.rule), work.touches) {
        (Some(rule), _) => rule.voids.contains(&proof.name) || (is_before_power && rule.nature != Nature::Care),
        (None, Touches::NothingElectrical) => false,
        (None, Touches::Electrical) => {
            is_before_power || rules.own_work_voids(Some(work.nature), file.part.kind, &proof.name)
        }
        (None, Touches::Unstated) => is_before_power || rules.own_work_voids(None, file.part.kind, &proof.name),
    };
    let work = file.work.iter().filter(|work| work.state.has_touched());
    let work = work.filter(|work| !run.is_surely_after(work.changed)).find(voids).map(|work| work.id);
    let recapped = || {
        let replaced = file.capacitors.iter().flat_map(|position| &position.looks);
        let mut replaced = replaced.filter(|look| !look.replaced_by.is_empty());
        is_before_power && replaced.any(|look| !run.is_surely_after(look.looked))
    };
    (work.is_some() || recapped()).then_some(Standing::Voided { work, part: file.part.id })
}

/// Finished work that surely came after a failed run and may have mended what failed: the run is to be made again. Work
/// that nobody has told to be electrical mends nothing.
pub(super) fn repaired_by(
    file: &PartFile,
    proof: &ProofRule,
    run: Moment,
    rules: &Rules,
    today: NaiveDate,
) -> Option<Standing> {
    let mends = |work: &Work| match rules.work(&work.rule) {
        Some(rule) => rule.voids.contains(&proof.name) || (proof.decides_power() && rule.nature != Nature::Care),
        None => work.touches == Touches::Electrical,
    };
    let work = done_after(file, run, today).find(|work| mends(work))?;
    Some(Standing::Repaired { work: work.id, part: file.part.id })
}

/// Work that was finished surely after something, up to today.
fn done_after(file: &PartFile, moment: Moment, today: NaiveDate) -> impl Iterator<Item = &Work> {
    let is_past = move |work: &&Work| work.changed.on.span().is_some_and(|span| span.last <= today);
    let done = file.work.iter().filter(|work| work.state == WorkState::Done).filter(is_past);
    done.filter(move |work| work.changed.is_surely_after(moment))
}

/// Whether the part was changed electrically, surely after something was measured on it.
pub(super) fn is_changed_since(file: &PartFile, measured: Moment, rules: &Rules, today: NaiveDate) -> bool {
    done_after(file, measured, today).any(|work| match rules.work(&work.rule) {
        Some(rule) => rule.nature != Nature::Care,
        None => work.touches == Touches::Electrical,
    })
}

/// A part under current that was fitted or taken out after a run of the whole machine.
fn changed_after(file: &MachineFile, parts: &[&PartFile], run: Moment, rules: &Rules) -> Option<Standing> {
    let takes_current = |part: PartId| {
        let kind = parts.iter().find(|file| file.part.id == part).map(|file| file.part.kind);
        kind.and_then(|kind| rules.kind(kind)).is_none_or(|rule| rule.electrical)
    };
    file.fittings
        .iter()
        .filter(|fitting| {
            !run.is_surely_after(fitting.fitted) || fitting.removed.is_some_and(|removed| !run.is_surely_after(removed))
        })
        .map(|fitting| fitting.part)
        .find(|part| takes_current(*part))
        .map(|part| Standing::Changed { part })
}
