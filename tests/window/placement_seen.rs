//! Placement: what is seen of it. A shelf of many spares, a narrow window, and a desk at rest.

use std::time::Duration;

use benchwright::record::*;
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, part};
use crate::placement::{choose, on_placement, says, slip, two_boards, until};
use crate::records;

fn slips(hand: &Hand) -> Vec<String> {
    let slips = hand.window.query_all_by_role(Role::ListBoxOption);
    slips.filter_map(|slip| slip.accesskit_node().label()).collect()
}

#[test]
fn of_many_spares_five_are_drawn_and_the_rest_when_asked_for() {
    let mut change = Change::new("Nine boards");
    let machine = records::machine("Reading room");
    change.put(records::role(machine.id, Kind::Mainboard)).put(machine);
    for number in 1..=9 {
        change.put(part(&format!("{number:04}"), Kind::Mainboard, "Nordkamp NB-4"));
    }
    let mut hand = on_placement(change);
    until(&mut hand, "Proven best");
    assert_eq!(slips(&hand).len(), 6, "one proposed, five of eight on the shelf");
    hand.press("3 more…: Mainboard on the shelf");
    assert_eq!(slips(&hand).len(), 9);
    assert!(hand.window.query_by_label_contains("more…: Mainboard").is_none());
}

#[test]
fn a_narrow_window_lists_lanes_machines_and_parts_and_is_walked_by_keys() {
    let mut hand = Hand::on(two_boards(), [620.0, 900.0]);
    hand.give(Command::Go(Page::Placement));
    until(&mut hand, "Proven best");
    assert_eq!(slips(&hand), [""; 0], "the moves come first");
    hand.window.get_by_label("Places").click();
    hand.window.run();
    let names = slips(&hand);
    assert_eq!(names.len(), 2, "{names:?}");
    let at = |words: &str| hand.window.query_all_by_label(words).map(|node| node.rect().top()).fold(f32::MAX, f32::min);
    let slip_at = |begins: &str| at(&slip(&hand, begins).unwrap());
    assert!(at("Mainboard") < at("Reading room") && at("Reading room") < slip_at("0017"));
    assert!(slip_at("0017") < at("Left over") && at("Left over") < slip_at("0018"));
    assert!(says(&hand, "Empty: Power supply"));

    hand.window.get_by_role_and_label(Role::ListBox, "Proposal, lane by lane").focus();
    hand.window.run();
    hand.window.key_press(egui::Key::ArrowDown);
    hand.window.run();
    assert!(says(&hand, "Reading room: Mainboard (comes here)"), "the first part is told");
    hand.press("Put the part away");
    choose(&mut hand, "0018");
    until(&mut hand, "It is left over: ");
}

#[test]
fn a_desk_that_has_told_everything_asks_for_no_more_frames() {
    let mut hand = on_placement(two_boards());
    until(&mut hand, "Proven best");
    choose(&mut hand, "0017");
    hand.until("the last word", |hand| !says(hand, "Working out what it costs elsewhere…"));
    let asks_again = |hand: &Hand| {
        let viewports = hand.window.output().viewport_output.values();
        viewports.map(|viewport| viewport.repaint_delay).min().unwrap() < Duration::from_mins(1)
    };
    // The pointer that pressed the slip has come to rest, and the last word asked for its own frame.
    hand.until("rest", |hand| !asks_again(hand));
    for _ in 0..10 {
        hand.window.step();
        assert!(!asks_again(&hand));
    }
}

#[test]
fn machines_stand_whole_beside_the_shelf_with_their_full_names_and_it_is_told_how_many_there_are() {
    let mut change = Change::new("Seven machines");
    for number in 1..=7 {
        let machine = records::machine(&format!("The reading room on the second floor, desk {number}"));
        change.put(records::role(machine.id, Kind::Mainboard)).put(machine);
    }
    change.put(part("0017", Kind::Mainboard, "Nordkamp NB-4")).put(part("0018", Kind::Case, "Nordkamp flat"));
    let mut hand = Hand::on(change, [1280.0, 800.0]);
    hand.give(Command::Go(Page::Placement));
    until(&mut hand, "Proven best");
    let headings = |hand: &Hand| -> Vec<f32> {
        let headings = hand.window.query_all_by_label_contains("The reading room on the second floor, desk ");
        let is_heading = |name: &str| name.ends_with("complete") || name.ends_with("empty");
        let name = |node: &egui_kittest::Node<'_>| node.accesskit_node().label().or(node.accesskit_node().value());
        let named = headings.filter(|node| name(node).is_some_and(|name| is_heading(&name)));
        named.map(|node| node.rect().width()).collect()
    };
    let widths = headings(&hand);
    assert!((2..7).contains(&widths.len()), "{widths:?}");
    assert!(widths.iter().all(|width| (width - widths[0]).abs() < 1.0), "none is cut: {widths:?}");
    assert!(says(&hand, &format!("beside machines 1 to {} of 7", widths.len())));
}
