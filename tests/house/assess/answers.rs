//! The answers of the next revision are those worked out from nothing, and only what changed is worked out again.

use std::sync::Arc;

use benchwright::assess::{Answers, PartState};
use benchwright::record::*;

use super::support::*;

const TODAY: &str = "2026-06-01";

fn workshop() -> Logbook {
    let mut parts: Vec<PartFile> =
        (1..=20).map(|number| part(number, &format!("{number:04}"), Kind::Mainboard)).collect();
    parts.push(part(21, "0021", Kind::PowerSupply));
    parts[2].part.inside = Some(id(2));
    let leak = finding(50, &parts[3], "leaked-cell", at("2026-01-05", 5), Severity::Grave);
    parts[3].findings.push(leak);
    let mut one = machine(400, "Orla", ("", ""), &[(401, Kind::Mainboard), (402, Kind::PowerSupply)]);
    fit(&mut one, 403, 401, 2, at("2026-05-01", 10));
    fit(&mut one, 404, 402, 21, at("2026-05-01", 11));
    let mut two = machine(500, "Brand", ("", ""), &[(501, Kind::Mainboard)]);
    fit(&mut two, 503, 501, 4, at("2026-05-01", 12));
    logbook(parts, vec![design(300, Kind::Mainboard, ("1995", "1996"), &[])], vec![one, two])
}

fn answer(logbook: &Logbook) -> Answers {
    Answers::of(logbook, &rules_once(), day(TODAY))
}

fn rules_once() -> benchwright::rules::Rules {
    thread_local!(static RULES: benchwright::rules::Rules = rules());
    RULES.with(Clone::clone)
}

/// Everything that the answers say, without what they share.
fn said(answers: &Answers) -> String {
    let parts = answers.parts.iter().map(|part| format!("{:?} {:?} {:?}", part.part, part.state, part.power));
    let machines = answers.machines.iter().map(|machine| format!("{:?} {:?}", machine.members, machine.readiness));
    parts.chain(machines).collect::<Vec<_>>().join("\n")
}

fn change(logbook: &mut Logbook, number: u128, edit: impl FnOnce(&mut PartFile)) {
    let file = logbook.parts.iter_mut().find(|file| file.part.id == id(number)).unwrap();
    let mut changed = (**file).clone();
    edit(&mut changed);
    *file = Arc::new(changed);
    logbook.revision += 1;
}

/// How many part and machine answers are new, after checking that all say what answers from nothing say.
fn worked_out(before: &Answers, logbook: &Logbook) -> (usize, usize) {
    let next = before.next(logbook, &rules_once(), day(TODAY));
    assert_eq!(said(&next), said(&answer(logbook)));
    assert_eq!(next.revision, logbook.revision);
    let new_part = |part: &&Arc<_>| before.parts.iter().all(|old| !Arc::ptr_eq(old, part));
    let new_machine = |machine: &&Arc<_>| before.machines.iter().all(|old| !Arc::ptr_eq(old, machine));
    (next.parts.iter().filter(new_part).count(), next.machines.iter().filter(new_machine).count())
}

#[test]
fn an_edit_works_out_its_part_and_the_machines_that_use_it() {
    let mut logbook = workshop();
    let before = answer(&logbook);
    assert_eq!(worked_out(&before, &logbook), (0, 0), "nothing changed");
    change(&mut logbook, 9, |file| file.part.name = "Velmar 9".to_owned());
    assert_eq!(worked_out(&before, &logbook), (1, 0), "a part on the shelf");
    change(&mut logbook, 4, |file| file.findings.clear());
    assert_eq!(worked_out(&before, &logbook), (2, 1), "a part of one machine");
    change(&mut logbook, 3, |file| file.part.quarantine = "wet".to_owned());
    assert_eq!(worked_out(&before, &logbook), (3, 2), "a part inside a part of the other");
}

#[test]
fn parts_come_and_go_and_move_into_others() {
    let mut logbook = workshop();
    let before = answer(&logbook);
    logbook.parts.push(Arc::new(part(90, "0090", Kind::Mainboard)));
    assert_eq!(worked_out(&before, &logbook), (1, 0));
    logbook.parts.insert(0, Arc::new(part(0, "0000", Kind::Mainboard)));
    assert_eq!(worked_out(&before, &logbook), (2, 0));
    logbook.parts.remove(5);
    worked_out(&before, &logbook);
    change(&mut logbook, 9, |file| file.part.inside = Some(id(2)));
    let (_, machines) = worked_out(&before, &logbook);
    assert!(machines >= 1, "what is inside a fitted part counts for its machine");
    logbook.parts.clear();
    worked_out(&before, &logbook);
}

#[test]
fn a_design_and_another_machines_plans_are_followed() {
    let mut logbook = workshop();
    change(&mut logbook, 9, |file| file.part.design = Some(id(300)));
    let before = answer(&logbook);
    logbook.designs[0] = Arc::new(design(300, Kind::Mainboard, ("1995", "2001"), &[]));
    assert_eq!(worked_out(&before, &logbook), (1, 0));
    // The second machine plans for the board that the first has fitted: both answers change, and back again.
    let mut machine = (*logbook.machines[1]).clone();
    plan(&mut machine, 510, 501, 2);
    logbook.machines[1] = Arc::new(machine);
    assert_eq!(worked_out(&before, &logbook), (1, 2));
    let before = answer(&logbook);
    let mut machine = (*logbook.machines[1]).clone();
    machine.placements.clear();
    logbook.machines[1] = Arc::new(machine);
    assert_eq!(worked_out(&before, &logbook), (0, 2));
    logbook.machines.remove(0);
    worked_out(&before, &logbook);
}

#[test]
fn another_day_or_other_rules_are_worked_out_from_nothing() {
    let mut logbook = workshop();
    change(&mut logbook, 21, |file| {
        file.surveys.push(survey(11, file, at("2026-01-05", 6), &[("smoke-film", "sound")]));
        file.proofs.push(proof(40, "load-test", at("2025-06-02", 9), ProofResult::Passed));
    });
    let before = answer(&logbook);
    assert_eq!(before.part(id(21)).unwrap().state, PartState::Proven);
    let later = before.next(&logbook, &rules_once(), day("2026-06-03"));
    assert_eq!(later.part(id(21)).unwrap().state, PartState::ToBeProven);
    let stricter = rules_of(&TABLES.replace("good_for_days = 365", "good_for_days = 30"));
    assert_eq!(before.next(&logbook, &stricter, day(TODAY)).part(id(21)).unwrap().state, PartState::ToBeProven);
}

#[test]
fn the_word_for_a_part_is_the_most_urgent_one() {
    let state = |edit: &dyn Fn(&mut PartFile)| {
        let mut file = part(1, "0001", Kind::Mainboard);
        edit(&mut file);
        let answers = answer(&logbook(vec![file], Vec::new(), Vec::new()));
        answers.parts[0].state
    };
    let survey_it = |file: &mut PartFile| file.surveys.push(survey(10, file, at("2026-01-05", 5), &[]));
    let finds = |file: &mut PartFile, what: &str, severity| {
        file.findings.push(finding(50, file, what, at("2026-01-05", 6), severity));
    };
    assert_eq!(state(&|file| file.part.name.clear()), PartState::Unidentified);
    assert_eq!(state(&|_| ()), PartState::Unsurveyed);
    assert_eq!(state(&|file| finds(file, "leaked-cell", Severity::Grave)), PartState::HeldStorage);
    assert_eq!(state(&|file| finds(file, "bulged", Severity::Plain)), PartState::HeldPower);
    assert_eq!(state(&|file| file.part.quarantine = "wet".to_owned()), PartState::KeptApart);
    assert_eq!(state(&survey_it), PartState::ToBeProven);
    let with = |what: &'static str, severity| {
        state(&move |file| {
            survey_it(file);
            finds(file, what, severity);
        })
    };
    assert_eq!(with("rust", Severity::Grave), PartState::HeldFitting);
    assert_eq!(with("flat-cell", Severity::Slight), PartState::HeldReady);
    assert_eq!(with("", Severity::Slight), PartState::Undecided);
    assert_eq!(with("badge-lost", Severity::Slight), PartState::ToBeProven, "looks hold nothing up");
    let proven = state(&|file| {
        survey_it(file);
        file.proofs.push(proof(40, "boot", at("2026-05-01", 9), ProofResult::Passed));
    });
    assert_eq!(proven, PartState::Proven);
}
