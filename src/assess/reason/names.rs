//! What parts, machines, roles, findings and work are called in sentences.

use crate::record::{Finding, FindingId, Kind, Logbook, MachineId, PartId, RoleId, Word as _, WorkId};
use crate::rules::Rules;
use crate::text;

/// A piece of work by its rule's words, or the restorer's own.
pub fn work_name(logbook: &Logbook, rules: &Rules, part: PartId, work: WorkId) -> String {
    let record = logbook.part(part).and_then(|file| file.work.iter().find(|known| known.id == work));
    record.map_or_else(String::new, |work| match rules.work(&work.rule) {
        Some(rule) => text::say(&rule.say).to_owned(),
        None if work.title.is_empty() => work.rule.clone(),
        None => work.title.clone(),
    })
}

/// A part by tag and title: "0042 (Corvane M5 board)".
pub fn part_name(logbook: &Logbook, part: PartId) -> String {
    logbook.part(part).map_or_else(
        || text!("a part that is not in this logbook").to_owned(),
        |file| format!("{} ({})", file.part.tag, logbook.title_of(file)),
    )
}

pub fn machine_name(logbook: &Logbook, machine: MachineId) -> String {
    logbook.machine(machine).map(|file| file.machine.name.clone()).unwrap_or_default()
}

/// A role by its own name, or else its kind's.
pub fn role_name(logbook: &Logbook, machine: MachineId, role: RoleId) -> String {
    let file = logbook.machine(machine);
    let role = file.and_then(|file| file.roles.iter().find(|known| known.id == role));
    role.map_or_else(
        || Kind::Other.label().to_owned(),
        |role| {
            if role.name.is_empty() { role.kind.label().to_owned() } else { role.name.clone() }
        },
    )
}

/// A finding by its rule's words, or the restorer's own.
pub fn finding_name(logbook: &Logbook, rules: &Rules, part: PartId, finding: FindingId) -> String {
    let file = logbook.part(part).and_then(|file| file.finding(finding));
    file.map_or_else(String::new, |file| finding_said(&file.finding, rules))
}

/// The same, for a finding that is at hand.
pub fn finding_said(finding: &Finding, rules: &Rules) -> String {
    match rules.finding(&finding.what) {
        Some(rule) => text::say(&rule.say).to_owned(),
        None if finding.what.is_empty() => finding.note.clone(),
        None => finding.what.to_string(),
    }
}

/// A label within a sentence: units and names keep their capitals.
pub(in crate::assess) fn lower_first(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_lowercase().chain(letters).collect()).unwrap_or_default()
}
