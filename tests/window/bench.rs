//! The Bench: what comes first, and work that is done with its evidence.

use benchwright::record::{Change, FindingState, Kind, Part, Severity, WorkState};
use egui_kittest::kittest::Queryable;

use crate::hand::{Hand, part};
use crate::records::{self, moment};

const SIZE: [f32; 2] = [1280.0, 800.0];

fn find(change: &mut Change, part: &Part, what: &str, severity: Severity) {
    let finding = records::finding(part.id, what);
    let look = records::look(finding.id, moment("2026-03-01"), FindingState::Open, severity);
    change.put(finding).put(look);
}

/// A card with dull contacts, and a board whose cell has leaked.
fn hand(size: [f32; 2]) -> Hand {
    let mut change = Change::new("Log two parts");
    let card = part("0010", Kind::SoundCard, "Orrin card");
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    change.put(card.clone()).put(board.clone());
    find(&mut change, &card, "contacts-filmed", Severity::Slight);
    find(&mut change, &board, "cell-leaked", Severity::Grave);
    let mut hand = Hand::on(change, size);
    hand.window.get_by_role_and_label(egui::accesskit::Role::Tab, "Bench").click();
    hand.window.run();
    hand
}

#[test]
fn what_eats_a_part_on_the_shelf_comes_first() {
    let hand = hand(SIZE);
    // Cutting the cell waits for the photograph, which is thereby the next thing to do (minuszerodegrees.net, and
    // common practice: photograph before anything is loosened).
    assert!(hand.window.query_by_label("Next: Photograph both faces, settings and chip orientation").is_some());
    let rows = hand.rows();
    let place = |words: &str| rows.iter().position(|row| row.contains(words)).unwrap();
    assert!(place("Photograph both faces") < place("Clean the edge contacts"), "{rows:#?}");
    assert!(place("Clean the edge contacts") < place("Cut the leaking cell out"), "what waits comes last: {rows:#?}");
    assert!(rows[place("Cut the leaking cell out")].contains("holds up storage, waits"), "{rows:#?}");
}

#[test]
fn work_is_done_with_evidence_and_what_waited_for_it_can_start() {
    let mut hand = hand(SIZE);
    hand.press("Next: Photograph both faces, settings and chip orientation");
    hand.press("Done…");
    hand.fill("Minutes at it", "12");
    hand.press("Keep: it is done");
    hand.settle();
    let session = hand.window.state().session().unwrap();
    let file = session.logbook.part_tagged("0042").unwrap();
    let done = file.work.iter().find(|work| work.rule == "photograph").unwrap();
    assert_eq!(
        (done.state, done.minutes, done.changed.on.to_string().as_str()),
        (WorkState::Done, Some(12), "2026-03-14")
    );
    // A photograph cures nothing: the leak is still there, and the cell is next.
    assert!(file.findings[0].state().calls_for_work());
    assert!(hand.window.query_by_label("Next: Cut the leaking cell out").is_some());

    hand.window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::Z);
    hand.settle();
    assert!(hand.window.query_by_label("Next: Photograph both faces, settings and chip orientation").is_some());
}

#[test]
fn a_waiver_wants_a_reason() {
    let mut hand = hand(SIZE);
    hand.press("Next: Photograph both faces, settings and chip orientation");
    hand.press("Leave it, with a reason…");
    let keep = |hand: &Hand| {
        use egui_kittest::kittest::NodeT;
        hand.window.get_by_label("Keep: it is waived").accesskit_node().is_disabled()
    };
    assert!(keep(&hand), "nothing is waived without a reason");
    hand.window.get_by_label("Why it is left").focus();
    hand.window.run();
    hand.window.get_by_label("Why it is left").type_text("photographed by the last owner");
    hand.window.run();
    assert!(!keep(&hand));
    hand.press("Keep: it is waived");
    hand.settle();
    assert!(hand.window.query_by_label("Next: Cut the leaking cell out").is_some());
}

#[test]
fn letters_and_groups_narrow_the_list() {
    let mut hand = hand(SIZE);
    hand.fill("Search the outstanding work", "orrin");
    assert!(hand.rows().iter().all(|row| !row.contains("Veltrane")), "{:#?}", hand.rows());
    assert!(hand.rows().iter().any(|row| row.contains("Orrin card")));
}

#[test]
fn in_a_narrow_window_the_work_takes_the_place_of_the_list() {
    let mut hand = hand([700.0, 600.0]);
    hand.press("Next: Photograph both faces, settings and chip orientation");
    assert!(hand.rows().is_empty());
    hand.press("Put the work away");
    assert!(!hand.rows().is_empty());
}
