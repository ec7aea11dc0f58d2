//! Readings out of their limits: rails under power, ripple, rails to ground; cells that are low or spent.

use crate::assess::limits::is_out;
use crate::assess::reason::Reason;
use crate::record::{MachineFile, PartFile, Proof, ProofResult, Reading};
use crate::rules::{PowerEffect, Rules};
use crate::trade::cell::{self, CellState};

/// What the last reading of each quantity on a part does.
pub(super) fn of_part(file: &PartFile, rules: &Rules) -> Vec<Reason> {
    let part = Some(file.part.id);
    let judged = judged(&file.readings, &file.proofs, rules);
    judged.map(|(reading, effect)| Reason::ReadingOut { part, machine: None, reading: reading.id, effect }).collect()
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
