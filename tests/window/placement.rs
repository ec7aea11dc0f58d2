//! Placement: two boards for one machine, the proposal with its grounds, the other one put in, moves planned and undone.

use benchwright::record::*;
use benchwright::window::command::Command;
use benchwright::window::desks::placement::PlaceAct;
use benchwright::window::page::Page;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, part};
use crate::records::{self, when};

const SIZE: [f32; 2] = [1280.0, 1000.0];

/// Two boards of other years for one machine, and a role that nothing on the shelf fills.
pub fn two_boards() -> Change {
    let mut change = Change::new("Two boards");
    let machine =
        Machine { window_from: when("1994"), window_to: when("1996"), priority: 1, ..records::machine("Reading room") };
    for kind in [Kind::Mainboard, Kind::PowerSupply] {
        change.put(records::role(machine.id, kind));
    }
    for (tag, model, from, to) in [("0017", "NB-4", "1994", "1996"), ("0018", "V90", "1990", "1991")] {
        let design = Design {
            introduced: when(from),
            discontinued: when(to),
            ..records::design(Kind::Mainboard, "Nordkamp", model)
        };
        let board = Part { design: Some(design.id), ..part(tag, Kind::Mainboard, "") };
        change.put(records::connector(design.id, Side::Offers, "isa-16", 4)).put(design).put(board);
    }
    change.put(machine);
    change
}

pub fn on_placement(change: Change) -> Hand {
    let mut hand = Hand::on(change, SIZE);
    hand.give(Command::Go(Page::Placement));
    hand
}

pub fn says(hand: &Hand, words: &str) -> bool {
    hand.window.query_all_by_label_contains(words).next().is_some()
}

pub fn until(hand: &mut Hand, words: &str) {
    hand.until(words, |hand| says(hand, words));
}

pub fn slip(hand: &Hand, begins: &str) -> Option<String> {
    let slips = hand.window.query_all_by_role(Role::ListBoxOption);
    let mut names = slips.filter_map(|slip| slip.accesskit_node().label());
    names.find(|name| name.starts_with(begins))
}

pub fn choose(hand: &mut Hand, begins: &str) {
    let name = slip(hand, begins).unwrap();
    hand.window.get_by_role_and_label(Role::ListBoxOption, &name).click();
    hand.window.run();
}

pub fn plans(hand: &Hand) -> Vec<String> {
    let logbook = &hand.window.state().session().unwrap().logbook;
    let plans = logbook.machines.iter().flat_map(|file| &file.placements);
    let tag = |part: PartId| logbook.part(part).unwrap().part.tag.clone();
    plans.map(|plan| format!("{}{}", tag(plan.part), if plan.pinned { " pinned" } else { "" })).collect()
}

#[test]
fn the_board_of_the_window_is_proposed_with_its_grounds_and_what_is_missing() {
    let mut hand = on_placement(two_boards());
    until(&mut hand, "Proven best: 0 of 1 machine get all their required roles; 1 move.");
    assert_eq!(slip(&hand, "0017").unwrap(), "0017 Nordkamp NB-4, proposed for Reading room: Mainboard (comes here)");
    assert_eq!(slip(&hand, "0018").unwrap(), "0018 Nordkamp V90, left over");
    assert!(says(&hand, "Plan 0017 (Nordkamp NB-4) for Reading room: Mainboard."));
    hand.window.get_by_label("Missing").click();
    hand.window.run();
    assert!(says(&hand, "Power supply"));

    choose(&mut hand, "0017");
    assert!(says(&hand, "fills a required role"));
    until(&mut hand, "Next best: 0018 (Nordkamp V90)");
    choose(&mut hand, "0018");
    until(&mut hand, "Best use: Reading room, Mainboard. It is left over: 0017 (Nordkamp NB-4) there is worth");
    until(&mut hand, "Reading room: costs");
    assert!(says(&hand, "instead of 0017 (Nordkamp NB-4)"));
}

#[test]
fn the_other_board_put_in_by_key_tells_its_cost_and_is_planned_and_undone_in_one_step() {
    let mut hand = on_placement(two_boards());
    until(&mut hand, "Proven best");
    // The arrows lead from slip to slip once the drawing has the keys.
    hand.window.get_by_label_contains("Proposal: 1 machine").focus();
    hand.window.run();
    hand.window.key_press(egui::Key::ArrowRight);
    hand.window.run();
    hand.window.key_press(egui::Key::ArrowRight);
    hand.window.run();
    until(&mut hand, "Put 0018 in Reading room");
    hand.press("Put 0018 in Reading room");
    assert!(says(&hand, "Pinned 0018 (Nordkamp V90) to Reading room."));
    until(&mut hand, "points in all.");
    assert!(slip(&hand, "0018").unwrap().ends_with("(put here by you)"));
    assert_eq!(slip(&hand, "0017").unwrap(), "0017 Nordkamp NB-4, left over");
    assert_eq!(plans(&hand), [""; 0], "nothing is written by trying");
    choose(&mut hand, "0017");
    until(&mut hand, "It is left over: 0018 (Nordkamp V90) is pinned there.");

    hand.press("Put the part away");
    assert!(says(&hand, "Plan 0018 (Nordkamp V90) for Reading room: Mainboard."));
    assert!(says(&hand, "It is pinned there."));
    hand.keys(&Command::Place(PlaceAct::Plan));
    hand.settle();
    assert_eq!(plans(&hand), ["0018 pinned"]);
    until(&mut hand, "nothing to move");
    // From now on it is the logbook that keeps it there: nothing is tried any more.
    assert!(!says(&hand, "Pinned 0018") && !says(&hand, "Take the pin off 0018"));
    assert_eq!(slip(&hand, "0018").unwrap(), "0018 Nordkamp V90, proposed for Reading room: Mainboard (pinned)");
    hand.give(Command::Undo);
    hand.settle();
    assert_eq!(plans(&hand), [""; 0]);
    hand.until("the first proposal", |hand| slip(hand, "0017").is_some_and(|name| name.contains("proposed for")));
}

#[test]
fn a_pin_that_was_planned_is_taken_off_where_it_is_told_and_the_best_is_proposed_again() {
    let mut hand = on_placement(two_boards());
    until(&mut hand, "Proven best");
    drag(&mut hand, "0018", "0017");
    until(&mut hand, "points in all.");
    hand.keys(&Command::Place(PlaceAct::Plan));
    hand.settle();
    hand.until("the pinned plan", |hand| slip(hand, "0018").is_some_and(|name| name.ends_with("(pinned)")));
    choose(&mut hand, "0018");
    hand.press("Pin 0018 no longer");
    hand.settle();
    assert_eq!(plans(&hand), ["0018"]);
    hand.until("the best board", |hand| slip(hand, "0017").is_some_and(|name| name.contains("proposed for")));
}

/// What is fitted elsewhere can be planned, and is then left for the bench: planning again would write nothing.
#[test]
fn a_part_fitted_in_another_machine_is_planned_once_and_then_left_for_the_bench() {
    let mut change = two_boards();
    let cellar =
        Machine { window_from: when("1975"), window_to: when("1976"), priority: 9, ..records::machine("Cellar") };
    let role = records::role(cellar.id, Kind::Mainboard);
    // As good as 0017 but for being original.
    let board = Part { originality: Originality::Original, ..part("0019", Kind::Mainboard, "") };
    let design = Design {
        introduced: when("1995"),
        discontinued: when("1995"),
        ..records::design(Kind::Mainboard, "Nordkamp", "NB-5")
    };
    let fitting = records::fitting(cellar.id, Some(role.id), board.id, records::moment("2026-01-01"));
    change.put(records::connector(design.id, Side::Offers, "isa-16", 4)).put(fitting).put(role).put(cellar);
    change.put(Part { design: Some(design.id), ..board }).put(design);
    let mut hand = on_placement(change);
    until(&mut hand, "Take 0019 (Nordkamp NB-5) out of Cellar");
    hand.keys(&Command::Place(PlaceAct::Plan));
    hand.settle();
    assert_eq!(plans(&hand), ["0019"]);
    until(&mut hand, "1 move left for the bench");
    assert!(says(&hand, "Left for the bench; nothing to plan"));
    assert!(hand.window.get_by_role_and_label(Role::Button, PlaceAct::Plan.label()).accesskit_node().is_disabled());
}

/// Drags one slip onto another.
pub fn drag(hand: &mut Hand, from: &str, to: &str) {
    let middle = |begins: &str| {
        let name = slip(hand, begins).unwrap();
        hand.window.get_by_role_and_label(Role::ListBoxOption, &name).rect().center()
    };
    let (from, to) = (middle(from), middle(to));
    hand.window.hover_at(from);
    hand.window.step();
    hand.window.drag_at(from);
    hand.window.step();
    hand.window.hover_at(to);
    hand.window.step();
    hand.window.step();
    hand.window.drop_at(to);
    hand.window.step();
    hand.window.run();
}

#[test]
fn a_slip_dragged_to_a_machine_is_pinned_there() {
    let mut hand = on_placement(two_boards());
    until(&mut hand, "Proven best");
    drag(&mut hand, "0018", "0017");
    until(&mut hand, "Pinned 0018 (Nordkamp V90) to Reading room.");
    until(&mut hand, "points in all.");
    hand.press("Take the pin off 0018");
    hand.until("the first proposal", |hand| slip(hand, "0017").is_some_and(|name| name.contains("proposed for")));
}

#[test]
fn where_nothing_can_be_placed_it_is_said() {
    let hand = on_placement(Change::new("Nothing"));
    assert!(says(&hand, "No machine yet."));
    let mut change = Change::new("A machine");
    change.put(records::machine("Reading room"));
    let hand = on_placement(change);
    assert!(says(&hand, "No machine has a role to fill."));
    let machine = records::machine("Reading room");
    let mut change = Change::new("A machine");
    change.put(records::role(machine.id, Kind::Case)).put(machine);
    let hand = on_placement(change);
    assert!(says(&hand, "No part is logged yet"));
}

#[test]
fn on_the_sample_every_slip_is_explained_and_a_slider_asks_again() {
    let mut hand = Hand::on_sample(SIZE);
    hand.give(Command::Go(Page::Placement));
    until(&mut hand, "get all their required roles");
    let left = hand.window.query_all_by_role(Role::ListBoxOption).filter_map(|slip| slip.accesskit_node().label());
    let left = left.into_iter().find(|name| name.ends_with("left over")).expect("some spare is left over");
    choose(&mut hand, &left);
    until(&mut hand, "It is left over: ");
    hand.press("Put the part away");
    hand.window.get_by_label("What counts").click();
    hand.window.run();
    assert!(!says(&hand, "As usual"));
    hand.window.get_by_role_and_label(Role::Slider, "Least work").focus();
    hand.window.run();
    hand.window.key_press(egui::Key::ArrowRight);
    hand.window.run();
    until(&mut hand, "As usual");
    until(&mut hand, "get all their required roles");
}

/// The library catalogue of the sample is past its tests; a disk in it would do better elsewhere.
#[test]
fn a_tested_machine_is_touched_only_once_its_switch_is_on_and_the_switch_is_remembered() {
    let mut hand = Hand::on_sample(SIZE);
    hand.give(Command::Go(Page::Placement));
    until(&mut hand, "get all their required roles");
    until(&mut hand, "1 machine is past its tests and left as it is.");
    assert!(!says(&hand, "out of The library catalogue, 1994"));
    hand.window.get_by_label("Tested machines").click();
    hand.window.run();
    let switch = "May touch The library catalogue, 1994";
    let is_on = |hand: &Hand, name: &str| {
        let node = hand.window.get_by_role_and_label(Role::CheckBox, name);
        node.accesskit_node().toggled() == Some(egui::accesskit::Toggled::True)
    };
    assert!(!is_on(&hand, switch) && !is_on(&hand, "May touch all tested machines"));
    // By the keyboard.
    hand.window.get_by_role_and_label(Role::CheckBox, switch).focus();
    hand.window.run();
    hand.window.key_press(egui::Key::Space);
    hand.window.run();
    assert!(is_on(&hand, switch));
    hand.window.get_by_label("Moves").click();
    hand.window.run();
    until(&mut hand, "out of The library catalogue, 1994");
    until(&mut hand, "“Eight hours of work without a fault” (480 min) of The library catalogue, 1994");
    assert!(!says(&hand, "is past its tests and left as it is."));
    let library = hand.window.state().session().unwrap().logbook.machine_named("The library catalogue, 1994").unwrap();
    let library = library.machine.id;
    let mut hand = hand.again(SIZE);
    assert_eq!(hand.window.state().settings().touch.machines, [library]);
    // The switch for all takes those of single machines along.
    hand.give(Command::Go(Page::Placement));
    until(&mut hand, "get all their required roles");
    hand.window.get_by_label("Tested machines").click();
    hand.window.run();
    hand.window.get_by_role_and_label(Role::CheckBox, "May touch all tested machines").click();
    hand.window.run();
    assert!(is_on(&hand, switch) && hand.window.state().settings().touch.all);
    assert!(hand.window.get_by_role_and_label(Role::CheckBox, switch).accesskit_node().is_disabled());
}
