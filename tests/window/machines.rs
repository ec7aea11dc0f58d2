//! Machines: a brief, roles, a part planned and fitted, and what the gates then say.

use benchwright::record::{Change, Kind, Machine, PowerOnResult};
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, part};
use crate::records::{self, when};

const SIZE: [f32; 2] = [1280.0, 1600.0];

fn machine() -> Machine {
    Machine {
        purpose: "Visitors leaf through a catalogue".to_owned(),
        window_from: when("1994"),
        window_to: when("1996"),
        priority: 1,
        ..records::machine("The reading room")
    }
}

/// A machine with one role, and a board on the shelf that nobody has looked at.
fn hand() -> Hand {
    let mut change = Change::new("Start a machine");
    let machine = machine();
    let role = records::role(machine.id, Kind::Mainboard);
    change.put(machine).put(role).put(part("0042", Kind::Mainboard, "Veltrane board"));
    let mut hand = Hand::on(change, SIZE);
    on_machines(&mut hand);
    hand
}

fn on_machines(hand: &mut Hand) {
    hand.window.get_by_role_and_label(Role::Tab, "Machines").click();
    hand.window.run();
}

fn says(hand: &Hand, text: &str) -> bool {
    hand.window.query_all_by_label_contains(text).next().is_some()
}

#[test]
fn a_machine_is_started_with_its_brief_and_the_usual_roles() {
    let mut hand = Hand::on(Change::new("Nothing"), SIZE);
    on_machines(&mut hand);
    hand.press("New machine…");
    hand.fill("Name", "The reading room");
    hand.fill("Parts from", "1996");
    hand.fill("Parts to", "1994");
    assert!(says(&hand, "The window ends before it begins"));
    let start = hand.window.get_by_label("Start the machine");
    assert!(start.accesskit_node().is_disabled());
    hand.fill("Parts to", "-12");
    // Typing went on at the end: 1994-12 still lies before 1996.
    assert!(says(&hand, "The window ends before it begins"));
    hand.press("Put the form away");

    hand.press("New machine…");
    hand.fill("Name", "The reading room");
    hand.fill("Parts from", "1994");
    hand.fill("Parts to", "1996");
    hand.press("Start the machine");
    hand.settle();
    let session = hand.window.state().session().unwrap();
    let file = session.logbook.machine_named("the reading room").unwrap();
    assert_eq!(file.machine.window().unwrap().first.to_string(), "1994-01-01");
    for kind in [Kind::Mainboard, Kind::Processor, Kind::MemoryModule, Kind::PowerSupply, Kind::Case] {
        assert!(file.roles.iter().any(|role| role.kind == kind && role.required), "no role for {kind:?}");
    }
}

#[test]
fn a_part_is_planned_fitted_and_taken_out_and_the_gates_follow() {
    let mut hand = hand();
    hand.press("The reading room");
    assert!(says(&hand, "Nothing fills the role Mainboard yet."));
    hand.press("Choose for Mainboard…");
    let candidate = hand.window.get_all_by_role(Role::Button).find(|button| {
        button
            .accesskit_node()
            .label()
            .is_some_and(|label| label.starts_with("0042  Veltrane board, not known, not surveyed"))
    });
    candidate.unwrap().click();
    hand.window.run();
    hand.settle();
    assert!(says(&hand, "is planned, not yet fitted"));
    // Nobody has looked at the board: whether power may be applied is not known, and said as "do not".
    assert!(says(&hand, "Not known: do not apply power"));
    assert!(says(&hand, "0042"));

    hand.press("0042 is fitted now");
    hand.settle();
    let session = hand.window.state().session().unwrap();
    let file = session.logbook.machine_named("The reading room").unwrap();
    assert_eq!((file.placements.len(), file.fitted().count()), (0, 1));
    assert!(!says(&hand, "is planned, not yet fitted"));

    hand.press("Take out 0042");
    hand.settle();
    let session = hand.window.state().session().unwrap();
    let file = session.logbook.machine_named("The reading room").unwrap();
    assert_eq!((file.fitted().count(), file.fittings.len()), (0, 1), "taking out keeps the fitting as history");
    assert_eq!(file.fittings[0].removed.unwrap().on.to_string(), "2026-03-14");
    assert_eq!(session.undo_name().as_deref(), Some("Take 0042 out of The reading room"));
}

#[test]
fn a_filled_role_asks_what_makes_room_and_one_undo_takes_the_exchange_back() {
    let mut hand = hand();
    hand.press("The reading room");
    hand.press("Choose for Mainboard…");
    hand.window.run();
    hand.window.key_press(egui::Key::Enter);
    hand.window.run();
    hand.settle();
    hand.press("0042 is fitted now");
    hand.settle();
    // A second board comes in.
    hand.window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::N);
    hand.window.run();
    hand.fill("Kind", "mainb");
    hand.window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::Enter);
    hand.window.step();
    hand.wait("the second board", |app| app.session().unwrap().logbook.parts.len() == 2);
    hand.settle();
    let tag = "0043";
    hand.press(&format!("Open the sheet of {tag}"));
    hand.press("Fit it in a machine…");
    hand.window.run();
    hand.window.key_press(egui::Key::Enter);
    hand.window.run();
    assert!(says(&hand, "Mainboard of The reading room is filled already."));
    let fitted = |hand: &Hand| {
        let logbook = &hand.window.state().session().unwrap().logbook;
        let machine = logbook.machine_named("The reading room").unwrap();
        machine.fitted().map(|fitting| logbook.part(fitting.part).unwrap().part.tag.clone()).collect::<Vec<_>>()
    };
    assert_eq!(fitted(&hand), ["0042"]);
    hand.press("Take 0042 out and fit 0043");
    hand.settle();
    assert_eq!(fitted(&hand), ["0043"]);
    hand.press("Undo: Fit 0043 in The reading room in place of 0042");
    hand.settle();
    assert_eq!(fitted(&hand), ["0042"]);
}

#[test]
fn a_power_on_is_kept_as_an_event() {
    let mut hand = hand();
    hand.press("The reading room");
    hand.press("Note a power-on…");
    assert!(says(&hand, "The logbook says not to apply power yet."));
    hand.window.get_by_label("What happened: pictures, beeps, codes, smells").focus();
    hand.window.run();
    hand.window.get_by_label("What happened: pictures, beeps, codes, smells").type_text("one beep, picture");
    hand.window.run();
    hand.press("Keep the power-on");
    hand.settle();
    let session = hand.window.state().session().unwrap();
    let event = &session.logbook.machine_named("The reading room").unwrap().power_ons[0];
    assert_eq!((event.happened.as_str(), event.result), ("one beep, picture", PowerOnResult::Well));
    assert_eq!(session.undo_name().as_deref(), Some("First power-on of The reading room"));
}

#[test]
fn a_machine_stands_in_the_list_with_its_gate_and_its_answer_about_power() {
    let hand = hand();
    assert!(says(&hand, "0 of 1 ready; power may be applied to 0"));
    assert!(says(&hand, "Roles filled: stands here"));
    assert!(says(&hand, "Proven: ahead"));
    assert!(says(&hand, "Not known: do not apply power"));
    assert!(says(&hand, "Find a part for the role Mainboard"));
}
