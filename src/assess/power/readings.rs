//! Readings out of their limits: rails under power, ripple, rails to ground; cells that are low or spent.

use chrono::NaiveDate;

use crate::assess::limits::is_out;
use crate::assess::proofs::{is_changed_since, repaired_by};
use crate::assess::reason::Reason;
use crate::record::{MachineFile, PartFile, Proof, ProofResult, Reading};
use crate::rules::{PowerEffect, Rules};
use crate::trade::cell::{self, CellState};

/// What the last reading of each quantity on a part does; after later work on it, only a new one tells.
pub(super) fn of_part(file: &PartFile, rules: &Rules, today: NaiveDate) -> Vec<Reason> {
    let part = Some(file.part.id);
    let judged = judged(&file.readings, &file.proofs, rules).filter(|(reading, _)| {
        // Measured in a test that is to be made again: the test says so.
        let proof = file.proofs.iter().find(|proof| reading.proof == Some(proof.id));
        let rule = proof.and_then(|proof| rules.proof(&proof.test));
        rule.is_none_or(|rule| repaired_by(file, rule, reading.measured, rules, today).is_none())
    });
    let effect = |(reading, effect): (&Reading, PowerEffect)| {
        let is_changed = is_changed_since(file, reading.measured, rules, today);
        let effect = if is_changed { effect.min(PowerEffect::NotKnown) } else { effect };
        Reason::ReadingOut { part, machine: None, reading: reading.id, effect }
    };
    judged.map(effect).collect()
}

/// The same of a machine's own readings.
pub(super) fn of_machine(file: &MachineFile, rules: &Rules) -> Vec<Reason> {
    let machine = Some(file.machine.id);
    let judged = judged(&file.readings, &file.proofs, rules);
    judged.map(|(reading, effect)| Reason::ReadingOut { part: None, machine, reading: reading.id, effect }).collect()
}

/// Readings that hold now and are out of their limits. A later reading of the same quantity takes an earlier one's
/// place, and so does a test with figures that was passed after it.
fn judged<'a>(
    readings: &'a [Reading],
    proofs: &'a [Proof],
    rules: &'a Rules,
) -> impl Iterator<Item = (&'a Reading, PowerEffect)> {
    let is_superseded = |old: &Reading| readings.iter().any(|new| new.supersedes == Some(old.id) && new.id != old.id);
    let is_overtaken = |old: &Reading| {
        let mut again = readings.iter().filter(|new| new.quantity == old.quantity && new.id != old.id);
        let mut passed = proofs.iter().filter(|proof| {
            let measures = |test: &str| rules.proof(test).is_some_and(|rule| rule.rails || !rule.figures.is_empty());
            proof.result == ProofResult::Passed && Some(proof.id) != old.proof && measures(&proof.test)
        });
        again.any(|new| new.measured.is_after(old.measured))
            || passed.any(|proof| proof.run.is_surely_after(old.measured))
    };
    let holding = readings.iter().filter(move |reading| !is_superseded(reading) && !is_overtaken(reading));
    holding.filter_map(|reading| Some((reading, effect(reading, rules)?)))
}

fn effect(reading: &Reading, rules: &Rules) -> Option<PowerEffect> {
    match is_out(reading, rules) {
        Some(true) => Some(PowerEffect::No),
        Some(false) => None,
        None => is_weak_cell(reading).then_some(PowerEffect::Remark),
    }
}

/// Whether the reading is of a cell that is low or spent.
fn is_weak_cell(reading: &Reading) -> bool {
    let Some((chemistry, cells)) = cell::named_in(&reading.quantity) else { return false };
    let volts = match reading.unit.trim() {
        "V" | "v" | "volt" | "volts" => reading.value,
        "mV" => reading.value / 1000.0,
        _ => return false,
    };
    cell::judge(chemistry, cells, Some(volts), None).is_ok_and(|verdict| verdict.state > CellState::Good)
}
