//! What own work touched: asked of new work before it is done, and of what is from before on one list, by two keys.

use benchwright::record::{Change, Kind, Nature, Part, Proof, ProofResult, Touches, Work, WorkState};
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::Key;
use egui::accesskit::Role;
use egui_kittest::kittest::Queryable;

use crate::hand::{Hand, part};
use crate::part_sheet::{file, key, press, sheet};
use crate::reach;
use crate::records::{self, moment};

fn says(hand: &Hand, text: &str) -> bool {
    hand.window.query_all_by_label_contains(text).next().is_some()
}

fn own(part: &Part, title: &str, state: WorkState, day: &str) -> Work {
    Work { title: title.to_owned(), nature: Nature::Repair, ..records::work(part.id, state, moment(day)) }
}

/// A card that passed its test, and then two pieces of own work that do not say what they touched.
fn card() -> (Part, Change) {
    let card = part("0050", Kind::VideoCard, "Sorrel card");
    let mut change = Change::new("Log a card");
    change.put(own(&card, "New bracket", WorkState::Done, "2026-03-05"));
    let bridge = own(&card, "Bridge a cut trace", WorkState::Done, "2026-03-06");
    change.put(Work { note: "Under the edge connector".to_owned(), ..bridge });
    (card, change)
}

fn touches(hand: &Hand, card: &Part) -> Vec<(String, Touches)> {
    let mut touches: Vec<_> = file(hand, card.id).work.into_iter().map(|work| (work.title, work.touches)).collect();
    touches.sort();
    touches
}

fn told(bridge: Touches, bracket: Touches) -> Vec<(String, Touches)> {
    vec![("Bridge a cut trace".to_owned(), bridge), ("New bracket".to_owned(), bracket)]
}

#[test]
fn two_pieces_are_stated_by_two_keys_and_the_power_answer_follows() {
    use Touches::{Electrical, NothingElectrical, Unstated};
    let (card, change) = card();
    let mut hand = sheet(&card, change);
    assert!(says(&hand, "did “New bracket” touch anything electrical? Not stated yet."));
    let reason = hand.window.get_by_label_contains("did “New bracket” touch anything electrical?");
    reason.click();
    hand.window.run();
    assert_eq!(hand.window.state().page(), Page::Touched);
    assert!(says(&hand, "2 pieces left"));
    let row = |hand: &Hand, name: &str| {
        let row = hand.rows().into_iter().find(|row| row.starts_with(name));
        row.unwrap_or_else(|| panic!("{name} in {:?}", hand.rows()))
    };
    assert_eq!(row(&hand, "New"), "New bracket, 0050  Sorrel card, done, 2026-03-05, row 1 of 2");
    let bridge = "Bridge a cut trace, 0050  Sorrel card, done, 2026-03-06, Under the edge connector, row 2 of 2";
    assert_eq!(row(&hand, "Bridge"), bridge);
    // No Tab, no mouse: the list has the keys, the first piece is asked about.
    let table = hand.window.get_by_role_and_label(Role::Table, "Own work: 2 rows");
    assert!(table.is_focused());
    key(&mut hand, Key::N);
    assert_eq!(touches(&hand, &card), told(Unstated, NothingElectrical));
    assert!(says(&hand, "1 piece left") && says(&hand, "Under the edge connector"), "it goes on by itself");
    key(&mut hand, Key::E);
    assert_eq!(touches(&hand, &card), told(Electrical, NothingElectrical));
    assert!(says(&hand, "All stated"));
    key(&mut hand, Key::Enter);
    assert_eq!(hand.window.state().page(), Page::Part(card.id), "Enter leads back");
    assert!(!says(&hand, "Not stated yet."));
    assert!(says(&hand, "not looked at or tested since “Bridge a cut trace”."));
    assert!(!says(&hand, "not looked at or tested since “New bracket”."));
}

#[test]
fn what_touched_nothing_electrical_gives_a_passed_test_back_and_each_press_is_undone_alone() {
    use Touches::{NothingElectrical, Unstated};
    let (card, mut change) = card();
    let rules = benchwright::rules::Rules::shipped();
    let proof = rules.proofs_for(Kind::VideoCard).iter().find(|proof| proof.required).unwrap();
    let run = records::proof(&proof.name, moment("2026-03-01"), ProofResult::Passed);
    change.put(Proof { part: Some(card.id), ..run });
    let mut hand = sheet(&card, change);
    let is_good = |hand: &Hand| {
        let answers = &hand.window.state().session().unwrap().answers;
        let standings = &answers.part(card.id).unwrap().proofs;
        standings.iter().find(|one| one.rule.name == proof.name).unwrap().standing.is_good()
    };
    assert!(!is_good(&hand), "until it is stated it counts as electrical");
    hand.keys(&Command::Go(Page::Touched));
    // The second piece first.
    key(&mut hand, Key::ArrowDown);
    key(&mut hand, Key::N);
    assert_eq!(touches(&hand, &card), told(NothingElectrical, Unstated));
    press(&mut hand, "Nothing electrical");
    assert_eq!(touches(&hand, &card), told(NothingElectrical, NothingElectrical));
    assert!(is_good(&hand) && says(&hand, "All stated"));
    hand.keys(&Command::Undo);
    hand.settle();
    assert_eq!(touches(&hand, &card), told(NothingElectrical, Unstated));
    assert!(says(&hand, "1 piece left") && !is_good(&hand));
    press(&mut hand, "Something electrical");
    assert_eq!(touches(&hand, &card), told(NothingElectrical, Touches::Electrical));
    assert!(says(&hand, "All stated") && !is_good(&hand), "the test is void for good");
}

#[test]
fn the_keys_of_the_list_do_nothing_elsewhere_and_nothing_when_all_is_stated() {
    let (card, change) = card();
    let mut hand = sheet(&card, change);
    key(&mut hand, Key::E);
    hand.keys(&Command::Go(Page::Touched));
    hand.keys(&Command::Find);
    hand.window.key_press(Key::E);
    hand.window.run();
    assert!(touches(&hand, &card).iter().all(|(_, touches)| *touches == Touches::Unstated));
    hand.window.key_press(Key::Escape);
    hand.window.run();
    for _ in 0..4 {
        key(&mut hand, Key::N);
    }
    assert!(says(&hand, "All stated"));
    let undone = |hand: &Hand| hand.window.state().session().unwrap().undo_name();
    assert_eq!(undone(&hand).as_deref(), Some("Nothing electrical on 0050: Bridge a cut trace"));
}

#[test]
fn new_own_work_is_not_done_before_it_says_what_it_touched() {
    let card = part("0050", Kind::VideoCard, "Sorrel card");
    let mut hand = sheet(&card, Change::new("Log a card"));
    hand.press("Add work of your own…");
    hand.fill("What is to be done", "Bridge a cut trace");
    press(&mut hand, "Add the work");
    assert_eq!(file(&hand, card.id).work[0].touches, Touches::Unstated, "while it is open nobody has to know");
    hand.press("Done: Bridge a cut trace");
    hand.window.get_by_label("Choose whether it touched something electrical.");
    press(&mut hand, "Keep: it is done");
    assert_eq!(file(&hand, card.id).work[0].state, WorkState::Open);
    hand.press("Something electrical");
    press(&mut hand, "Keep: it is done");
    let work = file(&hand, card.id).work[0].clone();
    assert_eq!((work.state, work.touches), (WorkState::Done, Touches::Electrical));
    // It was nothing after all.
    hand.press("Done: Bridge a cut trace");
    press(&mut hand, "Nothing electrical: Bridge a cut trace");
    assert_eq!(file(&hand, card.id).work[0].touches, Touches::NothingElectrical);
}

#[test]
fn new_own_work_may_say_it_at_once() {
    let card = part("0050", Kind::VideoCard, "Sorrel card");
    let mut hand = sheet(&card, Change::new("Log a card"));
    hand.press("Add work of your own…");
    hand.fill("What is to be done", "Polish the bracket");
    hand.press("Nothing electrical");
    press(&mut hand, "Add the work");
    assert_eq!(file(&hand, card.id).work[0].touches, Touches::NothingElectrical);
    hand.press("Done: Polish the bracket");
    press(&mut hand, "Keep: it is done");
    assert_eq!(file(&hand, card.id).work[0].state, WorkState::Done);
    assert!(!says(&hand, "does not say what it touched"));
}

#[test]
fn every_control_of_the_list_has_a_name_and_a_stop_in_sight() {
    let (card, mut change) = card();
    change.put(card);
    let mut hand = Hand::on(change, reach::SIZE);
    hand.keys(&Command::Go(Page::Touched));
    let mut found = reach::faults(&mut hand, "two pieces");
    for _ in 0..2 {
        key(&mut hand, Key::N);
    }
    assert!(says(&hand, "All stated"));
    found.extend(reach::faults(&mut hand, "all stated"));
    assert!(found.is_empty(), "{}", found.join("\n"));
}
