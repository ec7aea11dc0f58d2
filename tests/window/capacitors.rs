//! The capacitor desk of a part: its grid, tables that are pasted, copies, corrections, and the recap in one press.

use benchwright::record::*;
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, part};
use crate::records::{self, moment};

const SIZE: [f32; 2] = [1600.0, 1000.0];

/// A board of a design with four cans, two of them bulged, and a second board of that design without any.
fn hand() -> (Hand, PartId, PartId) {
    let mut change = Change::new("Log two boards");
    let design = records::design(Kind::Mainboard, "Veltrane", "V6");
    let board = Part { design: Some(design.id), ..part("0042", Kind::Mainboard, "") };
    let second = Part { design: Some(design.id), ..part("0043", Kind::Mainboard, "") };
    change.put(design).put(board.clone()).put(second.clone());
    for (name, state) in [
        ("C1", CapacitorState::Bulged),
        ("C2", CapacitorState::Bulged),
        ("C9", CapacitorState::Sound),
        ("C10", CapacitorState::NotLooked),
    ] {
        let can = records::capacitor(board.id, name, moment("2026-03-01"), state);
        change.put(Capacitor { series: "ZQ".to_owned(), ..can });
    }
    let mut hand = Hand::on(change, SIZE);
    hand.give(Command::Go(Page::Capacitors(board.id)));
    (hand, board.id, second.id)
}

fn file(hand: &Hand, part: PartId) -> std::sync::Arc<PartFile> {
    hand.window.state().session().unwrap().logbook.part(part).unwrap().clone()
}

fn open(hand: &mut Hand, row: &str) {
    let rows = hand.window.query_all_by_role(Role::Row);
    let found = rows.into_iter().find(|node| node.accesskit_node().label().is_some_and(|label| label.starts_with(row)));
    found.unwrap().click();
    hand.window.run();
}

#[test]
fn every_position_has_a_row_that_says_it_all_numbers_in_their_order() {
    let (mut hand, ..) = hand();
    let rows = hand.rows();
    assert_eq!(rows.len(), 4);
    assert!(rows[0].starts_with("C1, 1000 µF, 6.3 V") && rows[0].contains("Bulged"), "{rows:#?}");
    assert!(rows[2].starts_with("C9") && rows[3].starts_with("C10"), "{rows:#?}");
    hand.fill("Search the positions", "bulged");
    assert_eq!(hand.rows().len(), 2);
}

#[test]
fn one_press_makes_work_and_a_kit_of_the_bad_ones_and_one_undo_takes_both_back() {
    let (mut hand, board, _) = hand();
    hand.press("Recap the bad ones (2)");
    hand.settle();
    assert_eq!(hand.window.state().page(), Page::Supplies);
    let logbook = hand.window.state().session().unwrap().logbook.clone();
    assert_eq!(logbook.kits[0].positions().count(), 2);
    // The states were put there without the findings that a log brings, so the work is written by hand.
    assert_eq!(file(&hand, board).work[0].rule, "recap");
    assert!(hand.window.query_by_label_contains("Line: 2 × 1000 µF, 6.3 V").is_some());
    hand.window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::Z);
    hand.settle();
    let logbook = hand.window.state().session().unwrap().logbook.clone();
    assert!(logbook.kits.is_empty() && logbook.part(board).unwrap().work.is_empty());
}

#[test]
fn a_series_and_all_wet_ones_can_be_recapped_too() {
    let (mut hand, ..) = hand();
    assert!(hand.window.query_by_label("Recap all wet ones (4)").is_some());
    hand.press("Recap series ZQ (4)");
    hand.settle();
    let logbook = hand.window.state().session().unwrap().logbook.clone();
    assert_eq!(logbook.kits[0].positions().count(), 4);
}

#[test]
fn a_kit_goes_from_draft_to_used_up_and_tells_its_positions() {
    let (mut hand, board, _) = hand();
    hand.press("Recap the bad ones (2)");
    hand.settle();
    for press in ["Freeze it", "It is ordered", "It has come"] {
        hand.press(press);
        hand.settle();
    }
    let logbook = hand.window.state().session().unwrap().logbook.clone();
    // Two for the positions and a spare.
    assert_eq!(logbook.materials[0].stock, 3.0);
    hand.press("It is used up");
    hand.settle();
    let logbook = hand.window.state().session().unwrap().logbook.clone();
    assert_eq!((logbook.kits[0].kit.state, logbook.materials[0].stock), (KitState::Used, 1.0));
    let replaced: Vec<bool> = file(&hand, board).capacitors.iter().map(CapacitorFile::is_replaced).collect();
    assert_eq!(replaced, [true, true, false, false]);
}

#[test]
fn a_pasted_table_is_read_line_by_line_and_taken_as_a_whole() {
    let (mut hand, board, _) = hand();
    hand.press("Paste a table…");
    let field =
        |hand: &Hand| hand.window.get_by_role_and_label(Role::MultilineTextInput, "The table of positions").rect();
    assert!(field(&hand).height() > 0.0);
    let paste = |hand: &mut Hand, text: &str| {
        hand.window.get_by_role_and_label(Role::MultilineTextInput, "The table of positions").focus();
        hand.window.run();
        hand.window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::A);
        hand.window.run();
        hand.window.input_mut().events.push(egui::Event::Paste(text.to_owned()));
        hand.window.run();
    };
    paste(&mut hand, "designator;value;voltage\nC1;47;16\nC30;22;-5\nC31;4,7;25\n");
    let rows = hand.rows();
    assert!(rows[0].contains("Line 2 is wrong: C1 is logged already"), "{rows:#?}");
    assert!(rows[1].contains("Line 3 is wrong: Voltage"), "{rows:#?}");
    assert!(hand.window.get_by_label("Log 1 position").accesskit_node().is_disabled());
    paste(&mut hand, "designator;value;voltage\nC30;22;16\nC31;4,7;25\n");
    hand.press("Log 2 positions");
    hand.settle();
    let file = file(&hand, board);
    let new: Vec<_> = file.capacitors[4..]
        .iter()
        .map(|one| (one.position.designator.as_str(), one.position.capacitance_uf))
        .collect();
    assert_eq!(new, [("C30", Some(22.0)), ("C31", Some(4.7))]);
    // The design has learned them.
    let logbook = hand.window.state().session().unwrap().logbook.clone();
    let names: Vec<&str> = logbook.designs[0].capacitors.iter().map(|one| one.designator.as_str()).collect();
    assert_eq!(names, ["C30", "C31"]);
}

#[test]
fn positions_are_copied_from_another_part_of_the_design_to_be_looked_at_afresh() {
    let (mut hand, _, second) = hand();
    hand.give(Command::Go(Page::Capacitors(second)));
    hand.press("Copy positions…");
    hand.press("4 positions from 0042");
    hand.settle();
    let copied = file(&hand, second);
    assert_eq!(copied.capacitors.len(), 4);
    assert!(copied.capacitors.iter().all(|one| one.state() == CapacitorState::NotLooked));
    assert!(copied.capacitors.iter().all(|one| one.position.series == "ZQ"));
}

#[test]
fn a_fact_is_changed_where_it_stands_and_a_measurement_is_judged_and_plotted() {
    let (mut hand, board, _) = hand();
    open(&mut hand, "C9");
    hand.press("Voltage: 6.3 V");
    hand.window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::A);
    hand.window.get_by_role_and_label(Role::TextInput, "Voltage").type_text("10");
    hand.window.run();
    hand.window.key_press(egui::Key::Enter);
    hand.settle();
    assert_eq!(file(&hand, board).capacitors[2].position.voltage_v, Some(10.0));
    for (measured, state) in [("990", "Sound"), ("1300", "Out of limits")] {
        hand.press("Looked at or measured…");
        hand.fill("Measured (µF)", measured);
        hand.window.get_by_role_and_label(Role::ComboBox, "State now").click();
        hand.window.run();
        hand.window.query_all_by_label(state).last().unwrap().click();
        hand.window.run();
        hand.press("Keep the look");
        hand.settle();
    }
    // ±20 % of 1000 µF: 1300 is out of limits (makers' endurance limits, see `trade::capacitor::series`).
    assert!(hand.window.query_by_label_contains("out of limits, replace it").is_some());
    let plot = hand.window.get_by_label_contains("Capacitance measured: ");
    let said = plot.accesskit_node().label().unwrap();
    assert!(said.contains("990 µF") && said.contains("1300 µF"), "{said}");
}
