//! When machines will be ready: order, hands, waits, deliveries, pace.

use benchwright::assess::Answers;
use benchwright::assess::schedule::{Ground, Held, Item, PaceSource, Schedule, Terms, Undated, schedule};
use benchwright::record::*;

use super::support::*;
use crate::records;

const TERMS: Terms = Terms { minutes_per_week: 420, delivery_days: 14 };

fn made(logbook: &Logbook, terms: Terms) -> (Schedule, Vec<String>) {
    let rules = rules();
    let answers = Answers::of(logbook, &rules, day("2026-06-01"));
    let made = schedule(&answers, &Ground::of(logbook, &rules), terms).unwrap();
    let names = made.planned.iter().map(|planned| match planned.item {
        Item::Work { part, task } => {
            let part = &answers.parts[part];
            format!("{} {}", part.file.part.tag, part.tasks[task].rule().map_or("own", |rule| &rule.name))
        }
        Item::PartProof { part, proof } => {
            let part = &answers.parts[part];
            format!("{} {}", part.file.part.tag, part.proofs[proof].rule.name)
        }
        Item::Fit { part, .. } => format!("{} fit", answers.parts[part].file.part.tag),
        Item::MachineProof { machine, proof } => answers.machines[machine].readiness.proofs[proof].rule.name.clone(),
    });
    let names = names.collect();
    (made, names)
}

fn board(number: u128, tag: &str, what: &str) -> PartFile {
    let mut board = part(number, tag, Kind::Mainboard);
    board.findings.push(finding(number + 50, &board, what, at("2026-01-05", number as u32), Severity::Plain));
    board
}

/// "Orla" with board 0001 first, "Brand" with board 0002 after it.
fn two_machines(first: PartFile, second: PartFile) -> Logbook {
    let mut machines = vec![
        machine(20, "Orla", ("1995", "1997"), &[(30, Kind::Mainboard)]),
        machine(21, "Brand", ("1995", "1997"), &[(31, Kind::Mainboard)]),
    ];
    machines[0].machine.priority = 1;
    machines[1].machine.priority = 2;
    fit(&mut machines[0], 40, 30, 1, at("2026-02-01", 20));
    fit(&mut machines[1], 41, 31, 2, at("2026-02-01", 21));
    logbook(vec![first, second], vec![], machines)
}

#[test]
fn hands_are_in_one_place_and_nothing_begins_before_what_it_comes_after() {
    let (made, names) = made(&two_machines(board(1, "0001", "leaked-cell"), board(2, "0002", "bulged")), TERMS);
    assert!(names.len() >= 8, "{names:?}");
    for pair in made.planned.windows(2) {
        assert!(pair[1].slot.start >= pair[0].slot.hands_free);
    }
    for planned in &made.planned {
        for first in &planned.after {
            assert!(planned.slot.start >= made.planned[*first].slot.over);
        }
    }
}

#[test]
fn while_one_board_dries_the_hands_turn_to_the_other() {
    let (made, names) = made(&two_machines(board(1, "0001", "leaked-cell"), board(2, "0002", "bulged")), TERMS);
    let place = |name: &str| names.iter().position(|known| known == name).unwrap();
    let (rinse, recap, look) = (place("0001 rinse"), place("0002 recap"), place("0001 look-under"));
    assert!(rinse < recap && recap < look, "{names:?}");
    let drying = made.planned[rinse].slot;
    assert!((drying.over - drying.hands_free - 48.0 * 60.0).abs() < 1e-9, "two days by the calendar");
    // Seven hours a week are one an hour a day: 20 minutes of rinsing take a third of a day.
    let hours_of_hands = made.planned[rinse].minutes / 60.0;
    assert!((drying.hands_free - drying.start - hours_of_hands * 24.0 * 60.0).abs() < 1e-6);
}

#[test]
fn a_priority_or_hours_changed_move_the_dates() {
    let mut logbook = two_machines(board(1, "0001", "bulged"), board(2, "0002", "bulged"));
    let ready = |logbook: &Logbook, terms| {
        let (made, _) = made(logbook, terms);
        let of = |number: u128| made.machines.iter().find(|plan| plan.machine == id(number)).unwrap().ready.unwrap();
        (of(20), of(21))
    };
    let (orla, brand) = ready(&logbook, TERMS);
    assert!(orla < brand);
    let faster = ready(&logbook, Terms { minutes_per_week: 840, ..TERMS });
    assert!(faster.0 < orla && faster.1 < brand);
    let mut second = (*logbook.machines[1]).clone();
    second.machine.priority = 1;
    let mut first = (*logbook.machines[0]).clone();
    first.machine.priority = 0;
    logbook.machines = vec![first.into(), second.into()];
    let (orla, brand) = ready(&logbook, TERMS);
    assert!(brand < orla, "untold comes after every told one");
}

#[test]
fn what_lacks_materials_begins_when_they_are_taken_to_have_come() {
    let mut waiting = board(1, "0001", "bulged");
    let piece = work(30, &waiting, "recap", WorkState::Waiting, at("2026-02-01", 20));
    waiting.work.push(Work { finding: Some(id(51)), ..piece });
    let logbook = two_machines(waiting, board(2, "0002", "rust"));
    for days in [14, 30] {
        let (made, names) = made(&logbook, Terms { delivery_days: days, ..TERMS });
        let recap = &made.planned[names.iter().position(|name| name == "0001 recap").unwrap()];
        assert!(recap.lacks_material);
        assert_eq!((recap.start - day("2026-06-01")).num_days(), i64::from(days));
        assert_eq!(recap.slot.held, Held::Delivery);
    }
}

#[test]
fn a_part_that_is_not_here_leaves_its_machine_undated() {
    let mut lent = board(1, "0001", "bulged");
    lent.custody.push(CustodyEvent { id: id(90), ..records::custody(id(1), at("2026-02-01", 21), CustodyAct::Lent) });
    let (made, _) = made(&two_machines(lent, board(2, "0002", "bulged")), TERMS);
    assert_eq!(made.machines[0].ready, None);
    assert!(made.machines[0].unplanned > 0);
    assert!(made.machines[1].ready.is_some());
}

/// Looks come after all other work, but the run of the whole machine comes after them: no hands in it after that.
#[test]
fn looks_come_last_but_before_the_test_of_their_machine() {
    let mut logbook = two_machines(board(1, "0001", "badge-lost"), board(2, "0002", "bulged"));
    let (with_badge, names) = made(&logbook, TERMS);
    assert_eq!(names[..3], ["0001 boot", "0001 glue-badge", "long-run"], "{names:?}");
    assert!(with_badge.planned[2].slot.start >= with_badge.planned[1].slot.over);
    assert!(with_badge.machines[0].needs.contains(&1));
    let mut bare = (*logbook.parts[0]).clone();
    bare.findings.clear();
    logbook.parts[0] = bare.into();
    // Where the run holds already, looks keep no machine waiting.
    let mut tested = (*logbook.machines[0]).clone();
    tested.proofs.push(proof(60, "long-run", at("2026-05-01", 40), ProofResult::Passed));
    logbook.machines[0] = tested.into();
    let ready = made(&logbook, TERMS).0.machines[0].ready;
    logbook.parts[0] = board(1, "0001", "badge-lost").into();
    let (with_badge, names) = made(&logbook, TERMS);
    assert_eq!(names.last().map(String::as_str), Some("0001 glue-badge"), "{names:?}");
    assert_eq!(with_badge.machines[0].ready, ready);
}

#[test]
fn a_machine_with_an_empty_role_has_no_date_and_is_not_tested_before_it_is_filled() {
    let mut logbook = two_machines(board(1, "0001", "bulged"), board(2, "0002", "bulged"));
    let mut orla = (*logbook.machines[0]).clone();
    orla.roles.push(Role { id: id(33), count: 2, ..records::role(id(20), Kind::MemoryModule) });
    orla.roles.push(Role { id: id(34), required: false, ..records::role(id(20), Kind::SoundCard) });
    logbook.machines[0] = orla.into();
    let (made_empty, names) = made(&logbook, TERMS);
    let plan = &made_empty.machines[0];
    assert_eq!((plan.ready, plan.early, plan.late, plan.alone), (None, None, None, None));
    assert_eq!(plan.undated, Some(Undated::RolesEmpty { missing: 2 }), "optional roles may stay empty");
    assert_eq!(plan.sentence("Orla"), "Orla: when its roles are filled; 2 places are empty.");
    assert_eq!(names.iter().filter(|name| *name == "long-run").count(), 1, "Brand's own: {names:?}");
    assert!(names.contains(&"0001 recap".to_owned()), "the work goes on");
    assert!(made_empty.machines[1].ready.is_some() && made_empty.machines[1].undated.is_none());
}

#[test]
fn what_is_only_planned_is_fitted_after_its_work_and_before_the_machine_is_tested() {
    let mut logbook = two_machines(board(1, "0001", "leaked-cell"), board(2, "0002", "bulged"));
    let mut orla = (*logbook.machines[0]).clone();
    orla.fittings.clear();
    plan(&mut orla, 45, 30, 1);
    // It passed once, with another board in it.
    orla.proofs.push(proof(60, "long-run", at("2026-05-01", 40), ProofResult::Passed));
    logbook.machines[0] = orla.into();
    let (made, names) = made(&logbook, TERMS);
    let place = |name: &str| names.iter().position(|known| known == name).unwrap();
    let (rinse, fit, run) = (place("0001 rinse"), place("0001 fit"), place("long-run"));
    let slot = |at: usize| made.planned[at].slot;
    assert!(slot(fit).start >= slot(rinse).over && slot(run).start >= slot(fit).over, "{names:?}");
    assert_eq!(made.planned[run].machine, id(20), "run again: a board comes into it");
    assert!(made.machines[0].needs.contains(&fit) && made.machines[0].ready.is_some());
    for (planned, name) in made.planned.iter().zip(&names) {
        assert!(planned.part != Some(id(1)) || slot(run).start >= planned.slot.over, "{name}");
    }
}

#[test]
fn a_test_that_outstanding_work_takes_away_is_run_again_after_it() {
    let mut logbook = two_machines(board(1, "0001", "bulged"), board(2, "0002", "bulged"));
    let (_, before) = made(&logbook, TERMS);
    let mut tested = (*logbook.parts[0]).clone();
    tested.proofs.push(proof(61, "boot", at("2026-05-01", 41), ProofResult::Passed));
    logbook.parts[0] = tested.into();
    let (made, names) = made(&logbook, TERMS);
    assert_eq!(names, before, "recapping voids the start");
    let place = |name: &str| names.iter().position(|known| known == name).unwrap();
    assert!(made.planned[place("0001 boot")].slot.start >= made.planned[place("0001 recap")].slot.over);
}

#[test]
fn a_material_that_has_run_out_delays_its_work_and_the_machine() {
    let mut logbook = two_machines(board(1, "0001", "bulged"), board(2, "0002", "bulged"));
    let ready = |logbook: &Logbook, days| {
        let (made, names) = made(logbook, Terms { delivery_days: days, ..TERMS });
        let recap = &made.planned[names.iter().position(|name| name == "0001 recap").unwrap()];
        (recap.lacks_material, (recap.start - day("2026-06-01")).num_days(), made.machines[0].ready.unwrap())
    };
    let solder = |stock: f64| Material { stock, ..records::material("solder") };
    logbook.materials = vec![solder(3.0).into()];
    let (lacks, start, there) = ready(&logbook, 30);
    assert!(!lacks && start < 30);
    logbook.materials = vec![solder(0.0).into()];
    let (lacks, start, wanting) = ready(&logbook, 30);
    assert_eq!((lacks, start), (true, 30));
    assert!((wanting - day("2026-06-01")).num_days() >= 30 && wanting > there);
    assert!(ready(&logbook, 60).2 > wanting);
}

/// The pace counts only what was done by a rule with its minutes: eight soldering jobs that took twice the rule's time.
#[test]
fn the_pace_is_that_of_this_logbook_once_enough_is_finished() {
    let mut done = board(1, "0001", "bulged");
    for at_work in 0..8 {
        let minutes = Some(20);
        let own = work(200 + at_work, &done, "cut-out", WorkState::Done, at("2026-02-01", 30 + at_work as u32));
        done.work.push(Work { minutes, ..own });
    }
    let mut few = done.clone();
    few.work.pop();
    let pace = |first: PartFile| made(&two_machines(first, board(2, "0002", "bulged")), TERMS).0;
    let (enough, too_few) = (pace(done), pace(few));
    let (spread, source) = enough.pace.of_sitting("soldering");
    assert_eq!((spread.mean, spread.deviation, spread.samples, source), (2.0, 0.0, 8, PaceSource::Sitting));
    assert_eq!(enough.pace.of_sitting("wet").1, PaceSource::Overall);
    assert_eq!(too_few.pace.of_sitting("soldering").1, PaceSource::OwnRule);
    let orla = &enough.machines[0];
    assert_eq!((orla.early, orla.late), (orla.ready, orla.ready), "always the same time leaves no spread");
    let orla = &too_few.machines[0];
    assert!(orla.early <= orla.ready && orla.ready < orla.late);
}

#[test]
fn the_longest_path_of_a_machine_alone_is_a_bound_on_its_date() {
    let (made, names) = made(&two_machines(board(1, "0001", "leaked-cell"), board(2, "0002", "bulged")), TERMS);
    for plan in &made.machines {
        assert!(plan.alone.unwrap() <= plan.ready.unwrap());
        for pair in plan.critical.windows(2) {
            assert!(made.planned[pair[1]].after.contains(&pair[0]));
        }
    }
    let path: Vec<&str> = made.machines[0].critical.iter().map(|at| names[*at].as_str()).collect();
    assert_eq!(path[..4], ["0001 cut-out", "0001 neutralise", "0001 rinse", "0001 look-under"]);
}
