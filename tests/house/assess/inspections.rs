//! What is due to be looked at or proven again.

use benchwright::assess::Answers;
use benchwright::assess::inspections::{Due, DueWhat, due};
use benchwright::record::*;
use benchwright::rules::Rules;

use super::support::*;
use crate::records;

fn due_by(parts: Vec<PartFile>, places: Vec<Place>, by: &str) -> Vec<Due> {
    let rules = Rules::shipped();
    let mut logbook = logbook(parts, vec![], vec![]);
    logbook.places = places.into_iter().map(Into::into).collect();
    let answers = Answers::of(&logbook, &rules, day("2026-06-01"));
    due(&answers, &logbook, &rules, day(by))
}

/// A board looked at on a day, with an answer.
fn board(looked: &str, clock_supply: &str) -> PartFile {
    let mut board = part(1, "0001", Kind::Mainboard);
    board.surveys.push(survey(2, &board, at(looked, 1), &[("clock-supply", clock_supply)]));
    board
}

fn told(due: &[Due]) -> Vec<(&'static str, String)> {
    due.iter().map(|due| (due.name(), due.on.to_string())).collect()
}

#[test]
fn a_survey_lapses_after_its_kinds_months_and_sooner_with_a_cell_left_in() {
    let of = |looked, supply| told(&due_by(vec![board(looked, supply)], vec![], "2030-01-01"));
    assert_eq!(of("2026-01-31", "nothing"), [("survey", "2027-01-31".to_owned())]);
    assert_eq!(of("2026-01-31", "coin"), [("survey", "2026-07-31".to_owned())]);
    assert_eq!(of("2025-11-30", "rechargeable"), [("survey", "2026-02-28".to_owned())]);
    assert_eq!(
        of("2025-11", "nothing"),
        [("survey", "2026-11-01".to_owned())],
        "from the earliest day it may have been"
    );
}

#[test]
fn a_garage_is_no_place_to_leave_a_board_for_a_year() {
    let garage = Place { id: id(80), ..records::place("Garage", None) };
    let shelf = Place { id: id(81), ..records::place("Shelf 2", Some(id(80))) };
    let mut board = board("2026-01-31", "nothing");
    board.part.place = Some(id(81));
    let due = due_by(vec![board], vec![garage, shelf], "2030-01-01");
    assert_eq!(told(&due), [("survey", "2026-07-31".to_owned())]);
    assert!(matches!(&due[0].what, DueWhat::Survey { rule: Some(rule), .. } if rule.name == "damp-or-swinging"));
}

#[test]
fn what_was_never_looked_at_is_due_today_and_what_is_gone_never() {
    assert_eq!(
        told(&due_by(vec![part(1, "0001", Kind::Mainboard)], vec![], "2026-06-01")),
        [("first_survey", "2026-06-01".to_owned())]
    );
    let mut sold = part(1, "0001", Kind::Mainboard);
    sold.custody.push(CustodyEvent { id: id(9), ..records::custody(id(1), at("2026-02-01", 3), CustodyAct::Sold) });
    assert!(due_by(vec![sold], vec![], "2036-06-01").is_empty());
}

#[test]
fn watched_findings_and_proofs_are_due_on_their_own_days() {
    let mut supply = part(1, "0001", Kind::PowerSupply);
    supply.surveys.push(survey(2, &supply, at("2026-05-01", 1), &[]));
    let mut watched = finding(50, &supply, "rust-slight", at("2026-05-01", 5), Severity::Slight);
    let looked = look(51, 50, at("2026-05-01", 6), FindingState::Watched, Severity::Slight);
    watched.looks.push(Look { again_by: records::when("2026-09-01"), ..looked });
    supply.findings.push(watched);
    supply.proofs.push(proof(60, "load-test", at("2026-04-01", 4), ProofResult::Passed));
    let due = due_by(vec![supply.clone()], vec![], "2030-01-01");
    assert_eq!(
        told(&due),
        [("watched", "2026-09-01".to_owned()), ("proof", "2027-04-01".to_owned()), ("survey", "2027-05-01".to_owned())]
    );
    assert_eq!(due_by(vec![supply], vec![], "2026-10-01").len(), 1);
}

/// A board with residue of a leak that a survey found, and what became of it.
fn leaked(state: FindingState, set: impl FnOnce(&mut Look)) -> String {
    let mut board = board("2026-05-01", "nothing");
    let mut residue = finding(50, &board, "leak-residue", at("2026-05-01", 5), Severity::Grave);
    if state != FindingState::Open {
        let mut decided = look(51, 50, at("2026-05-03", 6), state, Severity::Grave);
        set(&mut decided);
        // What a later survey finds unchanged is not decided again.
        let seen = Look { id: id(52), looked: at("2026-05-20", 7), ..decided.clone() };
        residue.looks.extend([decided, seen]);
    }
    board.findings.push(residue);
    let rules = Rules::shipped();
    let logbook = logbook(vec![board], vec![], vec![]);
    let answers = Answers::of(&logbook, &rules, day("2026-06-01"));
    let due = due(&answers, &logbook, &rules, day("2030-01-01"));
    let survey = due.iter().find(|due| due.name() == "survey").unwrap();
    survey.sentence(&logbook, &rules)
}

#[test]
fn a_leak_is_said_to_be_treated_or_accepted_only_where_it_was() {
    let open = leaked(FindingState::Open, |_| {});
    assert!(open.contains("after 3 months") && open.contains("neither treated nor accepted yet"), "{open}");
    let accepted = leaked(FindingState::Accepted, |look| {
        look.who = "Mira".to_owned();
        look.reason = "Under a socket, dry".to_owned();
    });
    assert!(accepted.ends_with("accepted on 2026-05-03 by Mira: Under a socket, dry."), "{accepted}");
    let watched = leaked(FindingState::Watched, |look| look.again_by = records::when("2026-09"));
    assert!(watched.ends_with("watched since 2026-05-03, until 2026-09."), "{watched}");
    let cured = leaked(FindingState::Cured, |look| look.work = Some(id(70)));
    assert!(cured.contains("after 3 months") && cured.ends_with("cured by work on 2026-05-03."), "{cured}");
    let confirmed = leaked(FindingState::Confirmed, |_| {});
    assert!(confirmed.contains("12 months"), "what a later look found sound is over: {confirmed}");
}
