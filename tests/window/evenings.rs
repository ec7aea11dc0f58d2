//! Tonight, the weeks ahead and what is due, on the Bench.

use std::sync::Arc;

use benchwright::record::{Change, FindingState, Fitting, Kind, Machine, Part, PartId, Severity, WorkState};
use benchwright::store::Store;
use benchwright::window::page::Page;
use egui::accesskit::Role;
use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT, Queryable};

use crate::desktop::Told;
use crate::hand::{Hand, part};
use crate::records::{self, moment};

const SIZE: [f32; 2] = [1600.0, 1000.0];

fn find(change: &mut Change, part: PartId, what: &str, severity: Severity) {
    let finding = records::finding(part, what);
    let look = records::look(finding.id, moment("2026-03-01"), FindingState::Open, severity);
    change.put(finding).put(look);
}

fn fit(change: &mut Change, machine: &Machine, part: &Part) {
    change.put(Fitting {
        id: Store::new_id(),
        machine: machine.id,
        role: None,
        part: part.id,
        fitted: moment("2026-02-01"),
        removed: None,
        note: String::new(),
    });
}

/// A board whose cell has leaked in one machine, a card with dull contacts in another, which is the more urgent.
fn change() -> Change {
    let mut change = Change::new("Log two machines");
    let card = part("0010", Kind::SoundCard, "Orrin card");
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let reading = Machine { priority: 2, ..records::machine("The reading room") };
    let hall = Machine { priority: 1, ..records::machine("The hall") };
    change.put(card.clone()).put(board.clone()).put(reading.clone()).put(hall.clone());
    find(&mut change, card.id, "contacts-filmed", Severity::Slight);
    find(&mut change, board.id, "cell-leaked", Severity::Grave);
    fit(&mut change, &reading, &board);
    fit(&mut change, &hall, &card);
    change
}

/// A window on them, on one of the Bench's views.
fn hand(outlook: &str) -> Hand {
    let mut hand = Hand::on(change(), SIZE);
    hand.window.get_by_role_and_label(Role::Tab, "Bench").click();
    hand.window.run();
    hand.press(outlook);
    hand
}

fn says(hand: &Hand, text: &str) -> bool {
    hand.window.query_all_by_label_contains(text).next().is_some()
}

/// Types over what stands in a field.
fn retype(hand: &mut Hand, field: &str, text: &str) {
    hand.window.get_by_role_and_label(Role::TextInput, field).focus();
    hand.window.run();
    hand.window.key_press_modifiers(Modifiers::COMMAND, Key::A);
    hand.window.run();
    hand.window.get_by_role_and_label(Role::TextInput, field).type_text(text);
    hand.window.run();
}

/// Draws until a row says something; its place among the rows.
fn row(hand: &mut Hand, words: &str) -> usize {
    hand.until(words, |hand| hand.rows().iter().any(|row| row.contains(words)));
    hand.rows().iter().position(|row| row.contains(words)).unwrap()
}

fn press_row(hand: &mut Hand, words: &str) {
    row(hand, words);
    let rows = hand.window.query_all_by_role(Role::Row);
    let named = |row: &egui_kittest::Node<'_>| row.accesskit_node().label().is_some_and(|name| name.contains(words));
    rows.into_iter().find(named).unwrap().click();
    hand.window.run();
}

#[test]
fn tonight_stands_in_working_order_with_its_cautions_and_is_begun_with_one_press() {
    let mut hand = hand("Tonight");
    let begin = "Begin: Photograph both faces, settings and chip orientation, 0042";
    hand.until("tonight's work", |hand| says(hand, begin));
    let at = |hand: &Hand, name: &str| hand.window.get_by_role_and_label(Role::Button, name).rect().top();
    // Photograph before anything is loosened (common practice); neutralise only once the cell is out.
    let photograph = at(&hand, begin);
    let cut = at(&hand, "Begin: Cut the leaking cell out, 0042");
    assert!(photograph < cut, "photograph at {photograph}, cut at {cut}");
    assert!(says(&hand, "It keeps power from The reading room") || says(&hand, "even lie still without it"));

    hand.press(begin);
    hand.settle();
    let work = hand.window.state().session().unwrap().logbook.part_tagged("0042").unwrap().work.clone();
    assert_eq!((work[0].rule.as_str(), work[0].state), ("photograph", WorkState::Doing));
    let done = "Done: Photograph both faces, settings and chip orientation, 0042";
    hand.until("the begun piece", |hand| says(hand, done));
    hand.press(done);
    assert!(says(&hand, "Keep: it is done"), "the evidence is asked for beside the list");
}

#[test]
fn while_the_evening_is_worked_out_it_can_be_stopped_and_then_shows_what_was_found() {
    let mut hand = Hand::on(change(), SIZE);
    hand.window.get_by_role_and_label(Role::Tab, "Bench").click();
    hand.window.run();
    hand.window.get_by_role_and_label(Role::Button, "Tonight").click();
    let until = std::time::Instant::now() + std::time::Duration::from_secs(10);
    while !says(&hand, "Working it out…") {
        assert!(std::time::Instant::now() < until, "the search is never seen at work");
        hand.window.step();
    }
    hand.window.get_by_role_and_label(Role::Button, "Stop").click();
    hand.until("what was found", |hand| says(hand, " left over") || says(hand, "Nothing that can be done fits"));
    assert!(!says(&hand, "Working it out…"));
}

#[test]
fn hours_of_tonight_take_effect_as_they_are_typed_and_are_remembered() {
    let mut hand = hand("Tonight");
    hand.until("tonight's work", |hand| says(hand, "Begin: Cut the leaking cell out, 0042"));
    // A photograph takes ten minutes (tables), and nothing else can come before it: six minutes are too few.
    retype(&mut hand, "Hours tonight", "0.1");
    hand.until("what fits six minutes", |hand| !says(hand, "Begin: Cut the leaking cell out, 0042"));
    retype(&mut hand, "Hours tonight", "many");
    assert!(says(&hand, "hours are a figure above 0 and at most 24"));
    assert_eq!(hand.window.state().settings().hours.tonight_minutes, 6, "what cannot be read changes nothing");
    let hand = hand.again(SIZE);
    assert_eq!(hand.window.state().settings().hours.tonight_minutes, 6);
}

#[test]
fn the_weeks_ahead_follow_hours_and_rank_at_once() {
    let mut hand = hand("Weeks ahead");
    let hall = row(&mut hand, "The hall: ");
    assert!(hall < row(&mut hand, "The reading room: "), "rank 1 before rank 2");
    row(&mut hand, "Cut the leaking cell out, 0042 (Veltrane board)");
    let longest = hand.rows().into_iter().filter(|row| row.contains("on the longest path")).count();
    assert!(longest > 1, "{:#?}", hand.rows());

    let with_six = hand.rows()[row(&mut hand, "The reading room: ")].clone();
    retype(&mut hand, "Hours a week", "1");
    hand.until("other dates", |hand| hand.rows().iter().all(|row| *row != with_six));
    let day = |row: &str| row.trim_start_matches("The reading room: ").get(..10).unwrap().to_owned();
    let with_one = hand.rows()[row(&mut hand, "The reading room: ")].clone();
    assert!(day(&with_one) > day(&with_six), "{with_one} after {with_six}");

    press_row(&mut hand, "The reading room: ");
    hand.press("More urgent");
    hand.settle();
    let session = hand.window.state().session().unwrap();
    assert_eq!(session.logbook.machine_named("the reading room").unwrap().machine.priority, 1);
    press_row(&mut hand, "The hall: ");
    hand.press("Less urgent");
    hand.settle();
    hand.until("the other order", |hand| {
        let place = |words: &str| hand.rows().iter().position(|row| row.contains(words));
        place("The reading room: ") < place("The hall: ")
    });

    hand.window.get_by_label("Only the longest paths").click();
    hand.window.run();
    hand.until("longest paths", |hand| {
        hand.rows().iter().all(|row| row.contains("on the longest path") || row.contains(": "))
    });
}

#[test]
fn a_machine_with_an_empty_role_has_no_date_until_it_is_filled() {
    let mut change = change();
    let vault = records::machine("The vault");
    change.put(records::role(vault.id, Kind::Mainboard)).put(vault);
    let mut hand = Hand::on(change, SIZE);
    hand.window.get_by_role_and_label(Role::Tab, "Bench").click();
    hand.window.run();
    hand.press("Weeks ahead");
    row(&mut hand, "The vault: when its roles are filled; 1 place is empty.");
    assert!(says(&hand, "1 machine has no date until its roles are filled."));
    press_row(&mut hand, "The vault: ");
    assert!(!says(&hand, "at the earliest"), "no date anywhere");
}

#[test]
fn what_is_due_leads_to_where_it_is_looked_at() {
    let mut hand = hand("Look again");
    let overdue = row(&mut hand, "Look 0042 (Veltrane board) over: nobody has yet.");
    assert!(hand.rows()[overdue].contains("today"), "{:#?}", hand.rows());
    press_row(&mut hand, "Look 0042 (Veltrane board) over: nobody has yet.");
    let board = hand.window.state().session().unwrap().logbook.part_tagged("0042").unwrap().part.id;
    assert_eq!(hand.window.state().page(), Page::Part(board));
    // The round of questions is open.
    assert!(says(&hand, "What is known of its running?"), "no survey is open");
}

#[test]
fn the_sheet_of_the_evening_is_printed_with_its_cautions_before_what_to_do() {
    let told = Arc::new(Told::default());
    let mut hand = Hand::on_desktop(change(), SIZE, told.clone());
    hand.window.get_by_role_and_label(Role::Tab, "Bench").click();
    hand.window.run();
    hand.press("Tonight");
    hand.until("tonight's work", |hand| says(hand, "Print the sheet…"));
    hand.press("Print the sheet…");
    hand.until("the page", |hand| says(hand, "The page is shown in the browser"));
    let page = std::fs::read_to_string(&told.shown.lock().unwrap()[0]).unwrap();
    // Eyes and gloves before alkaline residue (trade); the caution stands before how it is done.
    let (piece, rest) = (page.find("Brush off and neutralise the residue"), &page);
    let piece = &rest[piece.unwrap()..];
    assert!(piece.find("Beware: ").unwrap() < piece.find("Tools: ").unwrap(), "{piece}");
    assert!(page.contains("0042  Veltrane board") && page.starts_with("<!DOCTYPE html>"));
}
