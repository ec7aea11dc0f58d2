//! Facts that parts share, changed where they show: designs, lots, places, the title page; and dates of what was done.

use benchwright::record::{Change, Design, DesignId, Kind, PartId, Side, When};
use benchwright::window::page::Page;
use egui::Key;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, part, place};
use crate::part_sheet::{file, key, press, replace, sheet};
use crate::records;

fn says(hand: &Hand, text: &str) -> bool {
    hand.window.query_all_by_label_contains(text).next().is_some()
}

fn design(kind: Kind) -> Design {
    records::design(kind, "Veltrane", "VB-100")
}

fn figures(hand: &Hand, id: DesignId) -> Vec<(String, f64, String)> {
    let session = hand.window.state().session().unwrap();
    let rows = &session.logbook.design(id).unwrap().figures;
    rows.iter().map(|row| (row.figure.clone(), row.value, row.source.clone())).collect()
}

fn undo_name(hand: &Hand) -> Option<String> {
    hand.window.state().session().unwrap().undo_name()
}

#[test]
fn a_figure_of_the_design_is_given_with_its_unit_and_refused_beside_its_field() {
    let design = design(Kind::Mainboard);
    let mut board = part("0042", Kind::Mainboard, "");
    board.design = Some(design.id);
    let mut change = Change::new("Log a board");
    change.put(design.clone());
    let mut hand = sheet(&board, change);
    hand.press("Change the design…");
    hand.press("Bus clock: –");
    replace(&mut hand, "Bus clock", "sixty-six");
    key(&mut hand, Key::Enter);
    assert!(says(&hand, "“sixty-six” is no figure"));
    assert_eq!(figures(&hand, design.id), []);
    // A comma, and the unit written behind it, are meant as they are read.
    replace(&mut hand, "Bus clock", "66,5 MHz");
    key(&mut hand, Key::Enter);
    hand.window.get_by_role_and_label(Role::Button, "Bus clock: 66.5 MHz");
    hand.press("Source of “Bus clock”: –");
    replace(&mut hand, "Source of “Bus clock”", "print on the board");
    key(&mut hand, Key::Enter);
    let told = [("bus_clock_mhz".to_owned(), 66.5, "print on the board".to_owned())];
    assert_eq!(figures(&hand, design.id), told);
    // Nothing typed takes it out; undo brings it back.
    hand.press("Bus clock: 66.5 MHz");
    hand.window.key_press_modifiers(egui::Modifiers::COMMAND, Key::A);
    hand.window.key_press(Key::Backspace);
    hand.window.run();
    key(&mut hand, Key::Enter);
    assert_eq!(figures(&hand, design.id), []);
    press(&mut hand, "Undo: Change “Bus clock” of Veltrane VB-100");
    assert_eq!(figures(&hand, design.id), told);
}

#[test]
fn a_board_is_given_every_clock_that_it_can_be_set_to() {
    let design = design(Kind::Mainboard);
    let mut board = part("0042", Kind::Mainboard, "");
    board.design = Some(design.id);
    let mut change = Change::new("Log a board");
    change.put(design.clone());
    let mut hand = sheet(&board, change);
    hand.press("Change the design…");
    hand.press("Bus clock: –");
    replace(&mut hand, "Bus clock", "66.667; 100 MHz;112");
    key(&mut hand, Key::Enter);
    let values = |hand: &Hand| -> Vec<f64> {
        let mut values: Vec<f64> = figures(hand, design.id).into_iter().map(|(_, value, _)| value).collect();
        values.sort_by(f64::total_cmp);
        values
    };
    assert_eq!(values(&hand), [66.667, 100.0, 112.0]);
    // One fewer takes one out, in one change that one undo brings back.
    let told = "Bus clock: 66.667; 100; 112 MHz";
    hand.press(told);
    replace(&mut hand, "Bus clock", "66.667; 100");
    key(&mut hand, Key::Enter);
    assert_eq!(values(&hand), [66.667, 100.0]);
    press(&mut hand, "Undo: Change “Bus clock” of Veltrane VB-100");
    assert_eq!(values(&hand), [66.667, 100.0, 112.0]);
    // What a board has once is asked once.
    hand.press("Most memory it takes: –");
    replace(&mut hand, "Most memory it takes", "32; 64");
    key(&mut hand, Key::Enter);
    assert!(says(&hand, "“32; 64” is more than one figure"));
    assert_eq!(values(&hand).len(), 3);
}

#[test]
fn connectors_of_the_design_are_found_by_letters_and_counted() {
    let design = design(Kind::Mainboard);
    let mut board = part("0042", Kind::Mainboard, "");
    board.design = Some(design.id);
    let mut change = Change::new("Log a board");
    change.put(design.clone());
    let mut hand = sheet(&board, change);
    hand.press("Change the design…");
    hand.press("Add a connector that it offers…");
    hand.window.run();
    let rules = std::sync::Arc::clone(&hand.window.state().session().unwrap().rules);
    let (slot, label) = rules.connectors.all().next().map(|row| (row.id.clone(), row.label.clone())).unwrap();
    hand.window.get_by_role_and_label(Role::TextInput, "A connector that it offers").type_text(&label);
    hand.window.run();
    key(&mut hand, Key::Enter);
    press(&mut hand, &format!("One {label} more"));
    let rows = |hand: &Hand| {
        let session = hand.window.state().session().unwrap();
        let rows = session.logbook.design(design.id).unwrap().connectors.clone();
        rows.into_iter().map(|row| (row.side, row.connector, row.count)).collect::<Vec<_>>()
    };
    assert_eq!(rows(&hand), [(Side::Offers, slot, 2)]);
    assert_eq!(undo_name(&hand), Some(format!("Veltrane VB-100 offers 2 × {label}")));
    press(&mut hand, &format!("Take {label} out"));
    assert_eq!(rows(&hand), []);
}

#[test]
fn a_lot_is_changed_on_the_sheet_of_one_of_its_parts() {
    let lot = records::lot("Attic");
    let mut board = part("0042", Kind::Mainboard, "Veltrane board");
    board.lot = Some(lot.id);
    let mut change = Change::new("Log a board");
    change.put(lot.clone());
    let mut hand = sheet(&board, change);
    hand.press("Change the lot…");
    hand.press("The lot came on: –");
    replace(&mut hand, "The lot came on", "2027");
    key(&mut hand, Key::Enter);
    assert!(says(&hand, "2027 has not come yet."));
    replace(&mut hand, "The lot came on", "2025-11");
    key(&mut hand, Key::Enter);
    hand.press("Price of the lot: –");
    replace(&mut hand, "Price of the lot", "40");
    key(&mut hand, Key::Enter);
    hand.press("From whom or where: –");
    replace(&mut hand, "From whom or where", "Ilse, next door");
    key(&mut hand, Key::Enter);
    let session = hand.window.state().session().unwrap();
    let now = &session.logbook.lot(lot.id).unwrap().lot;
    assert_eq!((now.acquired.to_string().as_str(), now.price_cents), ("2025-11", Some(4000)));
    assert_eq!(now.source, "Ilse, next door");
    assert_eq!(undo_name(&hand).as_deref(), Some("Change “From whom or where” of the lot Attic"));
}

#[test]
fn a_new_place_goes_into_one_that_is_there_and_a_place_is_moved_with_its_parts() {
    let cellar = place("Cellar", None);
    let attic = place("Attic", None);
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let mut change = Change::new("Log a board");
    change.put(cellar.clone()).put(attic);
    let mut hand = sheet(&board, change);
    let path_of = |hand: &Hand, id: PartId| {
        let session = hand.window.state().session().unwrap();
        session.logbook.place_path(session.logbook.part(id).unwrap().part.place.unwrap())
    };
    hand.press("Kept at: –");
    hand.window.run();
    hand.window.get_by_role_and_label(Role::TextInput, "Place: room, shelf or box").type_text("cellar / Crate 4");
    hand.window.run();
    key(&mut hand, Key::Enter);
    assert_eq!(path_of(&hand, board.id), "Cellar / Crate 4");
    assert_eq!(hand.window.state().session().unwrap().logbook.places.len(), 3, "the cellar is the one that was there");

    hand.press("Change the place itself…");
    hand.press("It stands in: Cellar");
    hand.window.run();
    hand.window.get_by_role_and_label(Role::TextInput, "It stands in").type_text("atti");
    hand.window.run();
    key(&mut hand, Key::Enter);
    assert_eq!(path_of(&hand, board.id), "Attic / Crate 4");
    assert_eq!(undo_name(&hand).as_deref(), Some("Move Crate 4 to Attic"));
    hand.press("What the place is called: Crate 4");
    replace(&mut hand, "What the place is called", "Box of boards");
    key(&mut hand, Key::Enter);
    assert_eq!(path_of(&hand, board.id), "Attic / Box of boards");
}

#[test]
fn a_place_is_called_otherwise_from_the_shelf_and_struck_out_once_it_is_empty() {
    let attic = place("Attic", None);
    let mut change = Change::new("Log a board");
    change.put(attic).put(part("0042", Kind::Mainboard, "Veltrane board"));
    let mut hand = Hand::on(change, [1280.0, 800.0]);
    hand.window.get_by_role_and_label(Role::ComboBox, "Place").click();
    hand.window.run();
    hand.press("Attic");
    hand.press("Change this place…");
    press(&mut hand, "Strike the empty place out");
    assert!(hand.window.state().session().unwrap().logbook.places.is_empty());
    assert_eq!(hand.rows().len(), 1, "all parts are on show again");
}

#[test]
fn the_title_page_says_whose_logbook_it_is_and_new_work_knows_who_writes() {
    let mut hand = Hand::on(Change::new("Nothing"), [1280.0, 900.0]);
    hand.window.get_by_role_and_label(Role::Tab, "Logbooks").click();
    hand.window.run();
    hand.press("Who usually writes: –");
    replace(&mut hand, "Who usually writes", "Mira");
    key(&mut hand, Key::Enter);
    hand.press("Money: EUR");
    replace(&mut hand, "Money", "crowns");
    key(&mut hand, Key::Enter);
    assert!(says(&hand, "Write the three letters of a currency"));
    replace(&mut hand, "Money", "dkk");
    key(&mut hand, Key::Enter);
    let workshop = &hand.window.state().session().unwrap().logbook.workshop;
    assert_eq!((workshop.keeper.as_str(), workshop.currency.as_str()), ("Mira", "DKK"));
    assert_eq!(undo_name(&hand).as_deref(), Some("Change “Money” on the title page"));
}

#[test]
fn what_is_missed_for_the_fit_is_given_where_it_is_missed() {
    let machine = records::machine("The reading room");
    let role = records::role(machine.id, Kind::Mainboard);
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let plan = records::placement(machine.id, role.id, board.id, records::moment("2026"));
    let mut change = Change::new("Start a machine");
    change.put(machine).put(role).put(board.clone()).put(plan);
    let mut hand = Hand::on(change, [1280.0, 4000.0]);
    hand.window.get_by_role_and_label(Role::Tab, "Machines").click();
    hand.window.run();
    hand.press("The reading room");
    let reason = hand.window.get_all_by_role(Role::Button).find(|button| {
        button.accesskit_node().label().is_some_and(|label| label.contains("0042") && label.contains("plugs into"))
    });
    reason.unwrap().click();
    hand.window.run();
    assert_eq!(hand.window.state().page(), Page::Part(board.id));
    // It has no design yet: one is asked for, and its connectors stand open as soon as it has one.
    hand.window.get_by_role_and_label(Role::TextInput, "Maker, model or revision").type_text("Veltrane VB-100");
    hand.window.run();
    key(&mut hand, Key::Enter);
    hand.window.get_by_role_and_label(Role::Button, "Add a connector that it needs…");
}

#[test]
fn a_reading_a_setting_and_a_proof_carry_the_day_on_which_they_were_made() {
    let supply = part("0042", Kind::PowerSupply, "Tessek supply");
    let mut hand = sheet(&supply, Change::new("Log a supply"));
    hand.press("Add a reading…");
    hand.fill("What was measured", "+5 V");
    hand.fill("Figure", "5.02");
    replace(&mut hand, "Measured on", "2026-04");
    assert!(says(&hand, "2026-04 has not come yet."));
    press(&mut hand, "Keep the reading");
    assert_eq!(file(&hand, supply.id).readings.len(), 0);
    replace(&mut hand, "Measured on", "2025-12");
    press(&mut hand, "Keep the reading");
    assert_eq!(file(&hand, supply.id).readings[0].measured.on.to_string(), "2025-12");

    hand.press("Note a setting…");
    hand.fill("Jumper, switch or value", "Mains switch");
    hand.fill("Found as", "230 V");
    replace(&mut hand, "Found on", "1999");
    press(&mut hand, "Keep the setting");
    assert_eq!(file(&hand, supply.id).settings[0].found.on, When::Year(1999));

    let record = hand
        .window
        .get_all_by_role(Role::Button)
        .find_map(|button| button.accesskit_node().label().filter(|label| label.starts_with("Record: ")));
    hand.press(&record.unwrap());
    replace(&mut hand, "Run on", "2026-03-01");
    hand.window.get_by_role_and_label(Role::ComboBox, "How it came out").click();
    hand.window.run();
    hand.press("Passed");
    press(&mut hand, "Keep the proof");
    assert_eq!(file(&hand, supply.id).proofs[0].run.on.to_string(), "2026-03-01");
}

#[test]
fn a_divider_may_belong_to_one_bus_clock() {
    let design = design(Kind::Mainboard);
    let mut board = part("0042", Kind::Mainboard, "");
    board.design = Some(design.id);
    let mut change = Change::new("Log a board");
    change.put(design.clone());
    let mut hand = sheet(&board, change);
    hand.press("Change the design…");
    hand.press("Bus clock by PCI clock: –");
    replace(&mut hand, "Bus clock by PCI clock", "2 at 66,667 MHz; 3 @ 100;4");
    key(&mut hand, Key::Enter);
    let rows = |hand: &Hand| -> Vec<(f64, Option<f64>)> {
        let session = hand.window.state().session().unwrap();
        let rows = &session.logbook.design(design.id).unwrap().figures;
        let mut rows: Vec<_> = rows.iter().map(|row| (row.value, row.at_bus_mhz)).collect();
        rows.sort_by(|one, other| one.0.total_cmp(&other.0));
        rows
    };
    let told = [(2.0, Some(66.667)), (3.0, Some(100.0)), (4.0, None)];
    assert_eq!(rows(&hand), told);
    // What is shown can be typed again.
    hand.press("Bus clock by PCI clock: 2 @ 66.667 MHz; 3 @ 100 MHz; 4 (perhaps of one bus clock: 3 @ 112 MHz)");
    replace(&mut hand, "Bus clock by PCI clock", "3 at fast");
    key(&mut hand, Key::Enter);
    assert!(says(&hand, "is no figure"));
    replace(&mut hand, "Bus clock by PCI clock", "3 at 0");
    key(&mut hand, Key::Enter);
    assert!(says(&hand, "“3 at 0” cannot be: a bus clock is above 0."));
    assert_eq!(rows(&hand), told);
}
