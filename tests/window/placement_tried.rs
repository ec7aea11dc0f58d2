//! Placement: what is tried at the desk. Rivals with their costs, parts left out, pins that contradict each other,
//! adapters, a search that is stopped, machines ready soonest.

use benchwright::record::*;
use benchwright::window::command::Command;
use benchwright::window::desks::placement::PlaceAct;
use benchwright::window::page::Page;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, part};
use crate::placement::{choose, drag, on_placement, plans, says, slip, two_boards, until};
use crate::records;

/// The first name on show that begins so.
fn said(hand: &Hand, begins: &str) -> Option<String> {
    let all = hand.window.query_all_by_label_contains(begins);
    let name = |node: egui_kittest::Node<'_>| node.accesskit_node().label().or(node.accesskit_node().value());
    all.filter_map(name).find(|name| name.starts_with(begins))
}

/// The whole number behind the words.
fn figure_behind(name: &str, words: &str) -> i64 {
    let rest = name.split(words).nth(1).unwrap().trim();
    rest.split(' ').next().unwrap().parse().unwrap()
}

#[test]
fn a_rival_tells_what_its_place_would_cost_and_is_put_there_with_one_press() {
    let mut hand = on_placement(two_boards());
    until(&mut hand, "Proven best");
    choose(&mut hand, "0017");
    until(&mut hand, "0018 (Nordkamp V90): costs ");
    let told = said(&hand, "0018 (Nordkamp V90): costs ").unwrap();
    // The other board is of years before the window: its design's years are 1990 and 1991.
    assert!(told.contains("dates: ") && told.contains("weeks before the window"), "{told}");
    // On its slip and beside the drawing.
    assert_eq!(hand.window.query_all_by_label_contains("0018 (Nordkamp V90): costs ").count(), 2);
    hand.press("Put 0018 in Reading room");
    until(&mut hand, "points in all.");
    let paid = said(&hand, "Costs ").unwrap();
    assert_eq!(figure_behind(&told, "costs "), figure_behind(&paid, "Costs "));
}

#[test]
fn a_part_left_out_makes_room_for_the_next_best_and_stays_out_until_it_is_used_again() {
    let mut hand = on_placement(two_boards());
    until(&mut hand, "Proven best");
    choose(&mut hand, "0017");
    hand.press("Leave 0017 out");
    hand.until("the next best", |hand| slip(hand, "0018").is_some_and(|name| name.contains("proposed for")));
    assert!(says(&hand, "Left out 0017 (Nordkamp NB-4).") && slip(&hand, "0017").is_none());
    until(&mut hand, "points in all.");
    // It is not in the logbook, so it stays tried after the moves are planned.
    hand.keys(&Command::Place(PlaceAct::Plan));
    hand.settle();
    assert_eq!(plans(&hand), ["0018"]);
    until(&mut hand, "nothing to move");
    hand.press("Use 0017 again");
    hand.until("the best board", |hand| slip(hand, "0017").is_some_and(|name| name.contains("proposed for")));
}

#[test]
fn pins_that_contradict_each_other_are_named_and_nothing_can_be_planned_until_one_is_off() {
    let mut hand = on_placement(two_boards());
    until(&mut hand, "Proven best");
    drag(&mut hand, "0018", "0017");
    until(&mut hand, "points in all.");
    drag(&mut hand, "0017", "0018");
    until(&mut hand, "Reading room has room for 1 in the role Mainboard, and these are pinned there: ");
    let told = said(&hand, "Reading room has room for 1").unwrap();
    assert!(told.contains("0017 (Nordkamp NB-4)") && told.contains("0018 (Nordkamp V90)"), "{told}");
    assert!(hand.window.get_by_role_and_label(Role::Button, PlaceAct::Plan.label()).accesskit_node().is_disabled());
    hand.press("Take the pin off 0018");
    hand.until("the other pin alone", |hand| {
        slip(hand, "0017").is_some_and(|name| name.ends_with("(put here by you)"))
    });
    assert!(!says(&hand, "has room for 1"));
    hand.keys(&Command::Place(PlaceAct::PinsOff));
    hand.until("no pin", |hand| slip(hand, "0017").is_some_and(|name| name.ends_with("(comes here)")));
    assert!(!says(&hand, "Pinned 0017"));
}

/// A processor for a socket that only a slot card offers (the trade's own case: Socket 370 in Slot 1).
#[test]
fn an_adapter_is_planned_with_a_role_of_its_own_seen_on_the_machine_sheet_and_undone_in_one_step() {
    type Ports<'p> = &'p [(Side, &'p str)];
    let mut change = Change::new("A slot card");
    let machine = records::machine("Reading room");
    for kind in [Kind::Mainboard, Kind::Processor] {
        change.put(records::role(machine.id, kind));
    }
    let ports: [(&str, Kind, Ports); 3] = [
        ("0017", Kind::Mainboard, &[(Side::Offers, "slot-1")]),
        ("0018", Kind::Processor, &[(Side::Needs, "socket-370")]),
        ("0019", Kind::ProcessorAdapter, &[(Side::Needs, "slot-1"), (Side::Offers, "socket-370")]),
    ];
    for (tag, kind, ports) in ports {
        let design = records::design(kind, "Nordkamp", tag);
        change.put(Part { design: Some(design.id), ..part(tag, kind, "") });
        for (side, port) in ports {
            change.put(records::connector(design.id, *side, port, 1));
        }
        change.put(design);
    }
    let page = Page::Machine(machine.id);
    change.put(machine);
    let mut hand = on_placement(change);
    until(&mut hand, "Plan 0019 (Nordkamp 0019) for Reading room, between other parts.");
    hand.keys(&Command::Place(PlaceAct::Plan));
    hand.settle();
    assert_eq!(plans(&hand), ["0017", "0018", "0019"]);
    until(&mut hand, "Proven best: 1 of 1 machine get all their required roles; nothing to move.");

    hand.give(Command::Go(page));
    assert!(says(&hand, "Processor adapter"));
    assert!(hand.window.query_by_role_and_label(Role::Button, "0019 is fitted now").is_some());
    hand.give(Command::Undo);
    hand.settle();
    assert_eq!(plans(&hand), [""; 0]);
    let logbook = hand.window.state().session().unwrap().logbook.clone();
    assert_eq!(logbook.machines[0].roles.len(), 2, "the role goes with the plan");
}

/// The search is stopped in the frame after it began, long before anything can be proven of the sample's 7 machines.
#[test]
fn a_search_that_is_stopped_keeps_what_it_has_and_says_how_far_it_may_be_off() {
    let mut hand = Hand::on_sample([1280.0, 1000.0]);
    let ctx = hand.window.ctx.clone();
    hand.window.state_mut().carry_out(Command::Go(Page::Placement), &ctx, None);
    hand.window.step();
    assert!(says(&hand, "Weighing every spare for every machine…"));
    let keys = Command::Place(PlaceAct::Stop).shortcut().unwrap();
    hand.window.key_press_modifiers(keys.modifiers, keys.logical_key);
    hand.window.step();
    until(&mut hand, "Best found so far, at most ");
    let told = said(&hand, "Best found so far, at most ").unwrap();
    assert!(figure_behind(&told, "at most ") > 0, "{told}");
    assert!(told.contains("points short of the best possible: "), "{told}");
    // What was found can be planned, and there is nothing left to stop.
    assert!(hand.window.query_by_label(PlaceAct::Stop.label()).is_none());
    assert!(!hand.window.get_by_role_and_label(Role::Button, PlaceAct::Plan.label()).accesskit_node().is_disabled());
    // What hangs on it is told as a range, since better may exist.
    let slips = hand.window.query_all_by_role(Role::ListBoxOption).filter_map(|slip| slip.accesskit_node().label());
    let left = slips.into_iter().find(|name| name.ends_with("left over")).expect("some spare is left over");
    choose(&mut hand, &left);
    until(&mut hand, " points, not proven");
    let price = hand.window.query_all_by_label_contains(" points, not proven").next().unwrap();
    let price = price.accesskit_node().label().or(price.accesskit_node().value()).unwrap();
    let (least, most) = (figure_behind(&price, "costs between "), figure_behind(&price, " and "));
    assert!(least < most, "{price}");
    hand.keys(&Command::Place(PlaceAct::Plan));
    hand.settle();
    assert!(!plans(&hand).is_empty());
}

/// One board for two machines: the urgent one lacks a supply that nobody has, the other would be complete.
#[test]
fn soonest_ready_gives_the_board_to_the_machine_that_it_completes() {
    let mut change = Change::new("One board for two");
    for (name, priority, kinds) in
        [("Attic", 1, &[Kind::Mainboard, Kind::PowerSupply][..]), ("Cellar", 9, &[Kind::Mainboard][..])]
    {
        let machine = Machine { priority, ..records::machine(name) };
        for kind in kinds {
            change.put(records::role(machine.id, *kind));
        }
        change.put(machine);
    }
    change.put(part("0017", Kind::Mainboard, "Nordkamp NB-4"));
    let mut hand = on_placement(change);
    until(&mut hand, "Proven best");
    assert!(slip(&hand, "0017").unwrap().contains("proposed for Attic: Mainboard"));
    hand.window.get_by_label("Soonest ready").click();
    hand.window.run();
    hand.window.get_by_label("Soonest ready before all else").click();
    hand.window.run();
    hand.until("the other machine", |hand| slip(hand, "0017").is_some_and(|name| name.contains("proposed for Cellar")));
    assert!(says(&hand, "1. Cellar: complete") && says(&hand, "2. Attic: 2 missing"));
}
