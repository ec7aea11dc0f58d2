//! What a move costs: minutes at the bench for both its ends, and the tests of whole machines that count no longer after it.

use std::sync::Arc;

use super::ask::Asked;
use super::moves::Move;
use crate::assess::outstanding::hours_text;
use crate::assess::reason::machine_name;
use crate::assess::{MachineAnswers, PartAnswers};
use crate::record::{Kind, Logbook, MachineId, PartId};
use crate::rules::ProofRule;
use crate::text;

/// Minutes to fit a part of a kind, or to take it out again; common practice, no source.
pub fn bench_minutes(kind: Kind) -> u32 {
    match kind {
        // All that is screwed into a case comes out of it.
        Kind::Case => 90,
        Kind::Mainboard => 45,
        Kind::Cooler | Kind::PowerSupply | Kind::Retention | Kind::Riser => 20,
        Kind::Processor | Kind::ProcessorAdapter | Kind::VoltageModule => 15,
        kind if kind.is_drive() => 15,
        Kind::Coprocessor | Kind::FirmwareChip | Kind::ClockModule | Kind::Fan => 10,
        kind if kind.is_card() => 10,
        Kind::CacheModule | Kind::MemoryModule | Kind::Cable => 5,
        Kind::Keyboard | Kind::Media | Kind::Monitor | Kind::PointingDevice => 2,
        _ => 10,
    }
}

/// The tests of a whole machine that hold today: a part under current that comes or goes takes them all away.
pub fn tests_that_hold(machine: &MachineAnswers) -> Vec<Arc<ProofRule>> {
    let good = machine.readiness.proofs.iter().filter(|proof| proof.standing.is_good());
    good.map(|proof| Arc::clone(&proof.rule)).collect()
}

/// How long these tests run.
pub fn minutes_of(tests: &[Arc<ProofRule>]) -> u32 {
    tests.iter().map(|test| test.minutes).sum()
}

/// What a move costs beside what it brings.
#[derive(Clone, Debug, Default)]
pub struct Effort {
    /// At the bench.
    pub minutes: u32,
    /// Tests that hold today and count no longer. What several moves void is run once for all of them.
    pub voids: Vec<(MachineId, Arc<ProofRule>)>,
}

impl Effort {
    /// What a move costs.
    pub fn of(asked: &Asked, one: &Move) -> Self {
        let (part, from, to, is_fitted) = match *one {
            Move::Plan { part, to } | Move::Replan { part, to, .. } => (part, None, Some(to), false),
            Move::Refit { part, from, to } => (part, Some(from), Some(to), true),
            Move::TakeOut { part, from } => (part, Some(from), None, true),
            Move::Drop { .. } | Move::Pin { .. } => return Self::default(),
        };
        let Some(answers) = asked.answers.part(part) else { return Self::default() };
        let each = bench_minutes(answers.file.part.kind);
        let minutes = u32::from(is_fitted) * each + u32::from(to.is_some()) * each;
        let mut machines: Vec<MachineId> = from.into_iter().chain(to).map(|(machine, _)| machine).collect();
        machines.dedup();
        Self { minutes, voids: voided(asked, answers, &machines) }
    }

    /// In a clause; empty for nothing.
    pub fn said(&self, logbook: &Logbook) -> String {
        let mut clauses = Vec::new();
        if self.minutes > 0 {
            clauses.push(text!("{time} at the bench", time = hours_text(self.minutes)));
        }
        for same in self.voids.chunk_by(|(one, _), (other, _)| one == other) {
            let test = |(_, test): &(MachineId, Arc<ProofRule>)| {
                text!("“{test}” ({minutes} min)", test = text::say(&test.say), minutes = test.minutes)
            };
            let tests: Vec<String> = same.iter().map(test).collect();
            let machine = machine_name(logbook, same[0].0);
            clauses.push(text!("voids {tests} of {machine}", tests = tests.join(", "), machine = machine));
        }
        clauses.join("; ")
    }
}

fn voided(asked: &Asked, part: &PartAnswers, machines: &[MachineId]) -> Vec<(MachineId, Arc<ProofRule>)> {
    if !part.takes_current {
        return Vec::new();
    }
    let of = |machine: &MachineId| {
        let tests = asked.answers.machine(*machine).map(|answers| tests_that_hold(answers)).unwrap_or_default();
        let machine = *machine;
        tests.into_iter().map(move |test| (machine, test))
    };
    machines.iter().flat_map(of).collect()
}

impl Move {
    /// The part that it is about.
    pub fn part(&self) -> PartId {
        match *self {
            Self::Plan { part, .. }
            | Self::Replan { part, .. }
            | Self::Refit { part, .. }
            | Self::Drop { part, .. }
            | Self::TakeOut { part, .. }
            | Self::Pin { part, .. } => part,
        }
    }

    /// In a sentence, with what it costs.
    pub fn told(&self, asked: &Asked) -> String {
        let (said, costs) = (self.sentence(asked.logbook), Effort::of(asked, self).said(asked.logbook));
        if costs.is_empty() { said } else { text!("{said} Costs {costs}.", said = said, costs = costs) }
    }
}
