//! What happened under power: faults that are looked for, and how the last power-on went.

use super::Member;
use crate::assess::reason::Reason;
use crate::record::{
    CaseState, FaultCaseFile, MachineFile, MachineId, Moment, PartId, PowerOn, PowerOnResult, WorkState,
};
use crate::rules::PowerEffect;

/// How words begin after which power is not applied again: something burns, or is about to. Common practice, no source.
const BURNING: [&str; 14] = [
    "smok", "smel", "burn", "fire", "flam", "spark", "bang", "explo", "scorch", "charred", "glow", "sizzl", "crackl",
    "melt",
];
/// Whole words of the same meaning.
const BURNING_WORDS: [&str; 7] = ["hot", "pop", "pops", "popped", "arc", "arced", "arcing"];

/// What the faults of a part or a machine do.
pub(in crate::assess) fn faults(
    cases: &[FaultCaseFile],
    machine: Option<MachineId>,
    part: Option<PartId>,
) -> impl Iterator<Item = Reason> {
    cases.iter().filter_map(move |file| {
        let burns = tells_of_burning(file);
        let effect = match (file.case.state, burns) {
            (CaseState::Open | CaseState::NotReproduced | CaseState::GivenUp, true) => PowerEffect::No,
            (CaseState::Open | CaseState::NotReproduced | CaseState::GivenUp, false) | (CaseState::Found, true) => {
                PowerEffect::Remark
            }
            (CaseState::Found, false) => return None,
        };
        Some(Reason::FaultOpen { machine, part, case: file.case.id, effect })
    })
}

/// Whether a case speaks of smoke, smell, sparks or heat.
fn tells_of_burning(file: &FaultCaseFile) -> bool {
    let trials = file.trials.iter().flat_map(|trial| [&trial.note, &trial.codes, &trial.step]);
    std::iter::once(&file.case.symptom).chain(trials).any(|text| speaks_of_burning(text))
}

/// Whether a text speaks of smoke, smell, sparks or heat.
fn speaks_of_burning(text: &str) -> bool {
    let lower = text.to_lowercase();
    let mut words = lower.split(|letter: char| !letter.is_alphanumeric());
    words.any(|word| BURNING_WORDS.contains(&word) || BURNING.iter().any(|start| word.starts_with(start)))
}

/// What a machine's faults and its last power-on do.
pub(super) fn of_machine(file: &MachineFile, members: &[Member]) -> Vec<Reason> {
    let machine = file.machine.id;
    let mut reasons: Vec<Reason> = faults(&file.cases, Some(machine), None).collect();
    let last = file.power_ons.iter().max_by_key(|power_on| power_on.switched.order());
    reasons.extend(last.and_then(|power_on| {
        let effect = after(power_on, file, members)?;
        Some(Reason::PowerOnWent { machine, power_on: power_on.id, effect })
    }));
    reasons
}

/// What the last power-on does. A fault found since makes it only to be known, and so does something done about it
/// where nothing burnt.
fn after(power_on: &PowerOn, file: &MachineFile, members: &[Member]) -> Option<PowerEffect> {
    let burns = speaks_of_burning(&power_on.happened) || speaks_of_burning(&power_on.steps);
    let effect = match power_on.result {
        PowerOnResult::Well => return None,
        PowerOnResult::Stopped => PowerEffect::No,
        PowerOnResult::Faulty if burns => PowerEffect::No,
        PowerOnResult::Faulty => PowerEffect::Remark,
    };
    let is_later = |moment: Moment| moment.is_surely_after(power_on.switched);
    let work = members.iter().flat_map(|member| &member.answers.file.work);
    let is_worked_on = work.filter(|work| work.state == WorkState::Done).any(|work| is_later(work.changed));
    let is_exchanged =
        file.fittings.iter().any(|fitting| is_later(fitting.fitted) || fitting.removed.is_some_and(is_later));
    let cases = file.cases.iter().chain(members.iter().flat_map(|member| &member.answers.file.cases));
    let is_found = cases
        .filter(|case| case.case.state == CaseState::Found)
        .any(|case| !power_on.switched.is_after(case.case.opened));
    Some(if is_found || (!burns && (is_worked_on || is_exchanged)) { PowerEffect::Remark } else { effect })
}
