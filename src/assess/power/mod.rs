//! May power be applied? No, not known, or yes: for a part on the bench, a supply on a load, a machine.
//!
//! Every reason that any part of the program knows is gathered here, each with what it does to the answer
//! ([`Reason::power_effect`]); the answer is the gravest of them. *Yes* is built in [`Power::judge`] and nowhere else.

mod asked;
mod bench;
mod decisions;
mod effect;
mod events;
mod facts;
mod plugs;
mod readings;

use std::sync::Arc;

use chrono::NaiveDate;

pub(super) use effect::of_hold;
pub(super) use events::faults;

use super::answers::PartAnswers;
use super::fit::Because;
use super::outstanding::Task;
use super::proofs::ProofStanding;
use super::reason::Reason;
use super::unknown_names::{self, NameKind};
use crate::record::{Custody, DesignFile, Kind, MachineFile, PartFile, PartId};
use crate::rules::{PowerEffect, Rules};
use asked::Asked;

crate::words! {
    /// Whether power may be applied; *not known* is shown as "do not".
    Verdict {
        No = "no", "No";
        NotKnown = "not_known", "Not known: do not";
        Yes = "yes", "Yes";
    }
}

/// The answer, with every reason that speaks against it or is to be known.
#[derive(Clone, Debug)]
pub struct Power {
    pub verdict: Verdict,
    /// Those that say no first.
    pub reasons: Vec<Reason>,
}

impl Power {
    /// The answer that these reasons make together.
    fn judge(mut reasons: Vec<Reason>) -> Self {
        reasons.retain(|reason| reason.power_effect() > PowerEffect::Nothing);
        reasons.sort_by_key(|reason| std::cmp::Reverse(reason.power_effect()));
        let verdict = match reasons.first().map(Reason::power_effect) {
            Some(PowerEffect::No) => Verdict::No,
            Some(PowerEffect::NotKnown) => Verdict::NotKnown,
            Some(PowerEffect::Remark | PowerEffect::Nothing) | None => Verdict::Yes,
        };
        Self { verdict, reasons }
    }

    /// Whether power may be applied, nothing speaking against it.
    pub fn may_be_applied(&self) -> bool {
        self.verdict == Verdict::Yes
    }
}

/// A part on the bench with all that is inside it, `parts[0]` being the part itself; a supply's own answer is about
/// the dummy load, so it is judged without the proof that it would give. `None` where nothing takes current.
pub fn of_part(parts: &[&PartAnswers]) -> Option<Power> {
    if parts.iter().all(|part| !part.takes_current) {
        return None;
    }
    let mut reasons = Vec::new();
    for (place, part) in parts.iter().enumerate() {
        reasons.extend(part.power.iter().cloned());
        reasons.extend(away(part));
        let proofs = lacking_proofs(part).filter(|(failed, _)| *failed || place > 0);
        reasons.extend(proofs.map(|(_, reason)| reason));
    }
    if let Some(part) = parts.first() {
        reasons.extend(bench::untold_figure(part));
    }
    Some(Power::judge(reasons))
}

/// A part of a machine, or inside one.
#[derive(Clone, Copy, Debug)]
pub struct Member<'a> {
    pub answers: &'a PartAnswers,
    /// Fitted, or inside what is fitted; not only planned.
    pub is_fitted: bool,
}

/// A machine with these parts and all that is inside them; `fit` are the reasons of their fit, `proofs` the
/// machine's own.
pub fn of_machine(
    file: &MachineFile,
    members: &[Member],
    fit: impl IntoIterator<Item = Reason>,
    proofs: &[ProofStanding],
    rules: &Rules,
) -> Power {
    let kind_of =
        |part: PartId| members.iter().find(|one| one.answers.part == part).map(|one| one.answers.file.part.kind);
    let is_about_power = |reason: &Reason| match reason {
        // What neither gives nor takes may plug in anywhere.
        Reason::Fit(Because::ConnectorsUnknown { part }) => {
            !matches!(kind_of(*part), Some(Kind::Cable | Kind::Case | Kind::Retention | Kind::Media))
        }
        _ => true,
    };
    let mut reasons: Vec<Reason> = fit.into_iter().filter(is_about_power).collect();
    reasons.extend(missing_essentials(file, members));
    reasons.extend(plugs::of_machine(members, rules));
    reasons.extend(events::of_machine(file, members));
    reasons.extend(readings::of_machine(file, rules));
    for Member { answers: part, is_fitted } in members {
        reasons.extend(part.power.iter().cloned());
        reasons.extend(lacking_proofs(part).map(|(_, reason)| reason));
        reasons.extend(away(part));
        match part.file.part.kind {
            _ if *is_fitted || !part.takes_current => {}
            Kind::PowerSupply | Kind::Mainboard => {}
            Kind::Cooler => reasons.push(Reason::EssentialPlanned { part: part.part }),
            _ => reasons.push(Reason::PlannedOnly { part: part.part, role: None }),
        }
    }
    let failed = proofs.iter().filter(|proof| proof.standing.has_failed());
    reasons.extend(failed.map(|proof| Reason::MachineProof {
        machine: file.machine.id,
        proof: Arc::clone(&proof.rule),
        standing: proof.standing,
    }));
    Power::judge(reasons)
}

/// A part that is not in the workshop.
fn away(part: &PartAnswers) -> Option<Reason> {
    let custody = part.file.custody_now();
    (!custody.is_at_hand()).then_some(Reason::Away { part: part.part, custody })
}

/// What a machine needs before anything can be said: a supply and a board, fitted.
fn missing_essentials(file: &MachineFile, members: &[Member]) -> Vec<Reason> {
    let machine = file.machine.id;
    if members.is_empty() {
        return vec![Reason::NothingPlaced { machine }];
    }
    let essential = |kind: Kind, missing: Reason| {
        let mut of_kind = members.iter().filter(|member| member.answers.file.part.kind == kind).peekable();
        let planned = of_kind.peek().map(|member| Reason::EssentialPlanned { part: member.answers.part });
        if of_kind.any(|member| member.is_fitted) { None } else { Some(planned.unwrap_or(missing)) }
    };
    let supply = essential(Kind::PowerSupply, Reason::SupplyMissing { machine });
    supply.into_iter().chain(essential(Kind::Mainboard, Reason::BoardMissing { machine })).collect()
}

/// Proofs of a part that do not hold, and whether they failed.
fn lacking_proofs(part: &PartAnswers) -> impl Iterator<Item = (bool, Reason)> {
    part.proofs.iter().filter(|proof| !proof.standing.is_good()).map(|proof| {
        let ProofStanding { rule, standing, .. } = proof;
        let reason = Reason::PartProof { part: part.part, proof: Arc::clone(rule), standing: *standing };
        (standing.has_failed(), reason)
    })
}

/// What speaks against power on this part, taken for itself.
pub(super) fn own_reasons(
    file: &PartFile,
    design: Option<&DesignFile>,
    tasks: &[Task],
    proofs: &[ProofStanding],
    takes_current: bool,
    rules: &Rules,
    today: NaiveDate,
) -> Vec<Reason> {
    let part = file.part.id;
    if matches!(file.custody_now(), Custody::Sold | Custody::Scrapped | Custody::GivenBack) {
        return Vec::new();
    }
    let mut reasons: Vec<Reason> = Vec::new();
    if file.part.is_quarantined() {
        reasons.push(Reason::KeptApart { part });
    }
    reasons.extend(tasks.iter().enumerate().map(|(at, task)| work(at, task)));
    reasons.extend(decisions::of_findings(file, tasks, rules));
    let asked = Asked::of(file, rules, today);
    reasons.extend(facts::of_answers(file, &asked, rules));
    reasons.extend(facts::of_capacitors(file, rules));
    reasons.extend(events::faults(&file.cases, None, Some(part)));
    if takes_current {
        reasons.extend(facts::not_looked(file, &asked, proofs, rules));
        reasons.extend(readings::of_part(file, rules, today));
        reasons.extend(decisions::unproven_work(file, proofs, today));
        reasons.extend(unknown_names(file, design, rules));
    }
    reasons.retain(|reason| reason.power_effect() > PowerEffect::Nothing);
    reasons
}

/// Records of a part and its design with names that no table holds; a scheme of a date code says nothing about power.
fn unknown_names(file: &PartFile, design: Option<&DesignFile>, rules: &Rules) -> Vec<Reason> {
    let part = file.part.id;
    let mut names = unknown_names::of_part(file, rules);
    names.extend(design.into_iter().flat_map(|design| unknown_names::of_design(design, rules)));
    names.retain(|name| name.kind != NameKind::Scheme);
    names
        .into_iter()
        .map(|unknown| Reason::UnknownName { part, kind: unknown.kind, name: unknown.name.into() })
        .collect()
}

/// The reason that a task is.
pub(super) fn work(at: usize, task: &Task) -> Reason {
    Reason::Work {
        part: task.part,
        task: at as u16,
        job: task.job.clone(),
        hold: task.hold,
        state: task.state,
        effect: task.power_effect(),
    }
}
