//! What is to be done, in which order, and what can be started now.

use std::sync::Arc;

use benchwright::assess::findings::after_work;
use benchwright::assess::outstanding::{materials, of_part};
use benchwright::assess::{Task, TaskKey, Totals};
use benchwright::record::*;

use super::support::*;
use crate::records;

fn titles(tasks: &[Task]) -> Vec<&str> {
    tasks.iter().map(Task::title).collect()
}

fn names(tasks: &[Task]) -> Vec<&str> {
    tasks.iter().map(|task| task.rule().unwrap().name.as_str()).collect()
}

fn leaking_board() -> PartFile {
    let mut board = part(1, "0001", Kind::Mainboard);
    board.findings.push(finding(50, &board, "leaked-cell", at("2026-01-05", 5), Severity::Grave));
    board
}

#[test]
fn a_leaked_cell_is_cut_out_first_then_neutralised_rinsed_and_looked_under() {
    let tasks = of_part(&leaking_board(), &rules());
    assert_eq!(
        titles(&tasks),
        ["Cut the cell out", "Neutralise the residue", "Rinse and dry", "Look under the neighbours"]
    );
    assert_eq!(tasks.iter().map(|task| task.doable).collect::<Vec<_>>(), [true, false, false, false]);
    assert_eq!(tasks[0].hold, Hold::Storage, "before it goes back on the shelf");
    assert_eq!(tasks[3].waits_for, [0, 1, 2], "over however many steps");
    assert_eq!(Totals::of(&tasks), Totals { tasks: 4, doable: 1, minutes: 85, wait_hours: 48 });
}

#[test]
fn the_next_piece_can_be_started_when_the_one_before_is_done() {
    let mut board = leaking_board();
    board
        .work
        .push(Work { finding: Some(id(50)), ..work(30, &board, "cut-out", WorkState::Done, at("2026-02-01", 20)) });
    let tasks = of_part(&board, &rules());
    assert_eq!(names(&tasks), ["neutralise", "rinse", "look-under"]);
    assert!(tasks[0].doable && !tasks[1].doable);
}

#[test]
fn order_reaches_over_pieces_that_this_part_does_not_need() {
    // Residue asks for no looking under, yet the recap, which comes after looking under, comes after rinsing.
    let mut board = part(1, "0001", Kind::Mainboard);
    board.findings.push(finding(50, &board, "bulged", at("2026-01-05", 5), Severity::Plain));
    board.findings.push(finding(51, &board, "residue", at("2026-01-05", 6), Severity::Plain));
    let tasks = of_part(&board, &rules());
    assert_eq!(names(&tasks), ["neutralise", "rinse", "recap"]);
    assert_eq!(tasks[2].waits_for, [0, 1]);
}

#[test]
fn one_piece_serves_every_finding_that_calls_for_it() {
    let mut board = leaking_board();
    board.findings.push(finding(51, &board, "residue", at("2026-01-05", 6), Severity::Plain));
    let tasks = of_part(&board, &rules());
    assert_eq!(names(&tasks), ["cut-out", "neutralise", "rinse", "look-under"]);
    assert_eq!(tasks[1].findings, [id(50), id(51)]);
    // Done for the one, it is done for the other.
    board
        .work
        .push(Work { finding: Some(id(50)), ..work(30, &board, "cut-out", WorkState::Done, at("2026-02-01", 20)) });
    board
        .work
        .push(Work { finding: Some(id(50)), ..work(31, &board, "neutralise", WorkState::Done, at("2026-02-01", 21)) });
    assert_eq!(names(&of_part(&board, &rules())), ["rinse", "look-under"]);
    // But not for one that is found after it.
    board.findings.push(finding(52, &board, "residue", at("2026-03-01", 30), Severity::Plain));
    let tasks = of_part(&board, &rules());
    assert_eq!(names(&tasks), ["neutralise", "rinse", "look-under"]);
    assert_eq!(tasks[0].findings, [id(52)]);
}

#[test]
fn waived_work_is_gone_until_the_finding_is_worse() {
    let mut board = part(1, "0001", Kind::Mainboard);
    board.findings.push(finding(50, &board, "rust", at("2026-01-05", 5), Severity::Slight));
    let waived = Work { finding: Some(id(50)), ..work(30, &board, "derust", WorkState::Waived, at("2026-02-01", 20)) };
    board.work.push(waived);
    assert!(of_part(&board, &rules()).is_empty());
    board.findings[0].looks.push(look(61, 50, at("2026-03-01", 30), FindingState::Open, Severity::Slight));
    assert!(of_part(&board, &rules()).is_empty(), "looked at again, no worse");
    board.findings[0].looks.push(look(62, 50, at("2026-08-01", 40), FindingState::Open, Severity::Grave));
    let tasks = of_part(&board, &rules());
    assert_eq!(names(&tasks), ["derust"]);
    assert_eq!(tasks[0].hold, Hold::Fitting, "grave rust holds more than looks");
    assert_eq!(tasks[0].work, Some(id(30)), "the record is taken up again");
}

#[test]
fn work_done_before_a_finding_returned_is_to_be_done_again() {
    let mut board = part(1, "0001", Kind::Mainboard);
    board.findings.push(finding(50, &board, "rust", at("2026-01-05", 5), Severity::Slight));
    board
        .work
        .push(Work { finding: Some(id(50)), ..work(30, &board, "derust", WorkState::Done, at("2026-02-01", 20)) });
    board.findings[0].looks.push(look(61, 50, at("2026-02-01", 21), FindingState::Cured, Severity::Slight));
    assert!(of_part(&board, &rules()).is_empty());
    board.findings[0].looks.push(look(62, 50, at("2026-02-01", 22), FindingState::Returned, Severity::Slight));
    assert_eq!(names(&of_part(&board, &rules())), ["derust"], "the same evening, by order of entry");
}

#[test]
fn findings_that_are_watched_accepted_or_confirmed_call_for_nothing() {
    for state in [FindingState::Watched, FindingState::Accepted, FindingState::Confirmed] {
        let mut board = leaking_board();
        board.findings[0].looks.push(look(61, 50, at("2026-03-01", 30), state, Severity::Grave));
        assert!(of_part(&board, &rules()).is_empty(), "{}", state.name());
    }
}

#[test]
fn an_inspection_behind_the_cure_stays_due_after_it() {
    let mut board = leaking_board();
    board.findings[0].looks.push(look(61, 50, at("2026-03-01", 30), FindingState::Cured, Severity::Grave));
    assert_eq!(names(&of_part(&board, &rules())), ["look-under"]);
}

#[test]
fn work_in_the_restorers_own_words_stands_beside_that_of_the_rules() {
    let mut board = leaking_board();
    let own = Work {
        title: "Ask Tom about the jumper".to_owned(),
        hold: Hold::Fitting,
        ..work(30, &board, "", WorkState::Open, at("2026-02-01", 20))
    };
    board.work.push(own);
    let tasks = of_part(&board, &rules());
    assert_eq!(tasks.len(), 5);
    assert_eq!(tasks[4].title(), "Ask Tom about the jumper");
    assert_eq!(tasks[4].key(), TaskKey::Hand(id(30)));
    assert!(tasks[4].doable && tasks[4].hold == Hold::Fitting);
    assert_eq!(tasks[0].key(), TaskKey::Rule { finding: id(50), rule: "cut-out".to_owned() });
}

#[test]
fn waiting_for_material_cannot_be_started_and_what_is_under_way_says_so() {
    let mut board = leaking_board();
    board
        .work
        .push(Work { finding: Some(id(50)), ..work(30, &board, "cut-out", WorkState::Waiting, at("2026-02-01", 20)) });
    let tasks = of_part(&board, &rules());
    assert!(tasks.iter().all(|task| !task.doable));
    assert_eq!((tasks[0].state, tasks[0].work), (WorkState::Waiting, Some(id(30))));
    board.work[0].state = WorkState::Doing;
    assert!(of_part(&board, &rules())[0].is_under_way());
}

#[test]
fn failed_work_stays_until_it_is_settled() {
    let mut board = part(1, "0001", Kind::Mainboard);
    board.findings.push(finding(50, &board, "residue", at("2026-01-05", 5), Severity::Plain));
    let failed =
        Work { finding: Some(id(50)), ..work(30, &board, "neutralise", WorkState::Failed, at("2026-02-01", 20)) };
    let mut ids = Ids::from(9000);
    let entries = after_work(&board, &failed, &rules(), &mut || ids.next());
    write(&mut board, vec![failed.into()], 20);
    write(&mut board, entries, 21);
    let tasks = of_part(&board, &rules());
    assert_eq!((names(&tasks), tasks[0].state), (vec!["neutralise", "rinse"], WorkState::Failed));
    assert!(!tasks[1].doable);
}

#[test]
fn a_part_lent_out_waits_and_a_part_sold_asks_for_nothing() {
    let event = |number, act, sequence| CustodyEvent {
        id: id(number),
        party: "Tom".to_owned(),
        ..records::custody(id(1), at("2026-02-01", sequence), act)
    };
    let mut board = leaking_board();
    board.custody.push(event(90, CustodyAct::Lent, 20));
    assert_eq!(of_part(&board, &rules()).iter().filter(|task| task.doable).count(), 0);
    assert_eq!(of_part(&board, &rules()).len(), 4);
    board.custody.push(event(91, CustodyAct::Sold, 21));
    assert!(of_part(&board, &rules()).is_empty());
}

#[test]
fn materials_are_counted_over_tasks_and_held_against_the_stock() {
    let mut board = leaking_board();
    board.findings.push(finding(51, &board, "bulged", at("2026-01-05", 6), Severity::Plain));
    let mut other = part(2, "0002", Kind::Mainboard);
    other.findings.push(finding(52, &other, "bulged", at("2026-01-05", 7), Severity::Plain));
    let (one, two) = (of_part(&board, &rules()), of_part(&other, &rules()));
    let solder = Material { id: id(95), unit: "g".to_owned(), stock: 40.0, ..records::material("solder") };
    // The rules of both lists are of two loads, as after a change of tables: counted by name all the same.
    let needs = materials(one.iter().chain(&two), &[Arc::new(solder)]);
    let needs: Vec<_> = needs.iter().map(|need| (need.name.as_str(), need.tasks, need.stock)).collect();
    assert_eq!(needs, [("Capacitors", 2, None), ("Solder", 2, Some(40.0)), ("White vinegar", 1, None)]);
}
