//! The finder: a few letters lead to a command, a part or a machine.

use benchwright::record::{Change, Kind};
use benchwright::window::page::Page;
use egui::accesskit::Role;
use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, marking, part};

fn hand() -> Hand {
    let mut change = Change::new("Log two parts");
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    change.put(marking(board.id, "VX-9934"));
    change.steps.insert(0, benchwright::record::Step::Put(board.into()));
    change.put(part("0043", Kind::SoundCard, "Orrin card"));
    Hand::on(change, [1280.0, 800.0])
}

fn type_into_finder(hand: &mut Hand, text: &str) -> Vec<String> {
    hand.window.key_press_modifiers(Modifiers::COMMAND, Key::G);
    hand.window.run();
    hand.fill("Find a command, a part or a machine", text);
    hand.window
        .query_all_by_role(Role::ListBoxOption)
        .map(|line| line.accesskit_node().label().unwrap_or_default())
        .collect()
}

#[test]
fn a_tag_leads_to_its_part() {
    let mut hand = hand();
    let lines = type_into_finder(&mut hand, "0043");
    assert_eq!(lines, ["0043  Orrin card"]);
    hand.window.key_press(Key::Enter);
    hand.window.run();
    let Page::Part(part) = hand.window.state().page() else { panic!("{:?}", hand.window.state().page()) };
    assert_eq!(hand.window.state().session().unwrap().logbook.part(part).unwrap().part.tag, "0043");
}

#[test]
fn a_marking_leads_to_the_part_that_carries_it() {
    let mut hand = hand();
    assert_eq!(type_into_finder(&mut hand, "vx-99"), ["0042  Veltrane board"]);
}

#[test]
fn words_lead_to_a_command_and_arrows_choose() {
    let mut hand = hand();
    let lines = type_into_finder(&mut hand, "text");
    assert_eq!(lines, ["Text of the usual size", "Larger text", "Smaller text"]);
    hand.window.key_press(Key::ArrowDown);
    hand.window.key_press(Key::Enter);
    hand.window.run();
    assert_eq!(hand.window.state().settings().text_percent, 115);
}

#[test]
fn escape_closes_it_and_nothing_is_done() {
    let mut hand = hand();
    type_into_finder(&mut hand, "0042");
    hand.window.key_press(Key::Escape);
    hand.window.run();
    assert!(hand.window.query_by_role(Role::ListBoxOption).is_none());
    assert_eq!(hand.window.state().page(), Page::Shelf);
}
