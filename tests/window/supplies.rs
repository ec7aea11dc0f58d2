//! Supplies: stock changed where it stands, tables in, kits gathered, what to buy, what it cost.

use std::sync::Arc;

use benchwright::record::*;
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};

use crate::desktop::Told;
use crate::hand::{Hand, part};
use crate::records::{self, moment};

const SIZE: [f32; 2] = [1600.0, 1000.0];

fn hand(change: Change) -> Hand {
    let mut hand = Hand::on(change, SIZE);
    hand.give(Command::Go(Page::Supplies));
    hand
}

fn leaf(hand: &mut Hand, name: &str) {
    hand.window.get_by_label(name).click();
    hand.window.run();
}

fn stocked() -> Change {
    let mut change = Change::new("Stock");
    let solder = Material {
        unit: "g".to_owned(),
        stock: 40.0,
        minimum: 50.0,
        price_cents: Some(12),
        ..records::material("Solder")
    };
    change.put(solder).put(Material { stock: 3.0, ..records::material("Shielding bag") });
    change
}

fn logbook(hand: &Hand) -> std::sync::Arc<Logbook> {
    hand.window.state().session().unwrap().logbook.clone()
}

#[test]
fn what_runs_low_is_on_the_list_and_comes_into_stock_with_one_press() {
    let mut hand = hand(stocked());
    let rows = hand.rows();
    assert!(rows.len() == 1 && rows[0].starts_with("Solder, 10 g, less than 50 left"), "{rows:#?}");
    hand.window.query_all_by_role(Role::Row).next().unwrap().click();
    hand.window.run();
    hand.press("It has come: 10 g into stock");
    hand.settle();
    let solder = |hand: &Hand| logbook(hand).materials.iter().find(|one| one.name == "Solder").unwrap().stock;
    assert_eq!(solder(&hand), 50.0);
    assert!(hand.rows().is_empty());
    hand.window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::Z);
    hand.settle();
    assert_eq!(solder(&hand), 40.0);
}

/// A board that is planned says what its processor must plug into; without it nobody knows.
#[test]
fn what_a_machine_lacks_is_told_by_the_parts_that_are_in_it() {
    let mut change = Change::new("A machine with a board");
    let machine = Machine {
        window_from: records::when("1995"),
        window_to: records::when("1997"),
        ..records::machine("Reading room")
    };
    let design = records::design(Kind::Mainboard, "Veltrane", "B5");
    let board = Part { design: Some(design.id), ..part("0042", Kind::Mainboard, "") };
    change.put(records::connector(design.id, Side::Offers, "socket-7", 1));
    change.put(records::role(machine.id, Kind::Processor));
    let role = records::role(machine.id, Kind::Mainboard);
    let id = machine.id;
    let plan = records::placement(id, role.id, board.id, moment("2026-03-01"));
    change.put(design).put(board).put(role).put(machine).put(plan);
    let mut hand = hand(change);
    let socket = "Processor, for Socket 7, made 1995-01 to 1997-12, 1 piece, Reading room lacks it, row 1 of 1";
    assert_eq!(hand.rows(), [socket]);
    hand.give(Command::Go(Page::Machine(id)));
    hand.press("Plan 0042 no longer");
    hand.settle();
    hand.give(Command::Go(Page::Supplies));
    let rows = hand.rows();
    let has = |begins: &str| rows.iter().any(|row| row.starts_with(begins));
    assert!(has("Processor, made 1995-01 to 1997-12, 1 piece, Reading room lacks it"), "{rows:#?}");
    assert!(has("Mainboard, made 1995-01 to 1997-12, 1 piece, Reading room lacks it"), "{rows:#?}");
}

#[test]
fn stock_below_nothing_is_refused_where_it_is_typed() {
    let mut hand = hand(stocked());
    leaf(&mut hand, "In stock");
    let rows = hand.rows();
    assert!(rows[1].contains("Solder, 40 g, runs low"), "{rows:#?}");
    hand.window.query_all_by_role(Role::Row).nth(1).unwrap().click();
    hand.window.run();
    hand.press("In stock: 40 g");
    hand.window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::A);
    hand.window.get_by_role_and_label(Role::TextInput, "In stock").type_text("-4");
    hand.window.run();
    hand.window.key_press(egui::Key::Enter);
    hand.window.run();
    assert!(hand.window.query_by_label_contains("“-4” cannot be").is_some());
    assert!(logbook(&hand).materials.iter().any(|one| one.stock == 40.0));
}

#[test]
fn a_table_of_materials_is_taken_only_as_a_whole() {
    let mut hand = hand(stocked());
    leaf(&mut hand, "In stock");
    hand.press("Paste a table…");
    let paste = |hand: &mut Hand, text: &str| {
        hand.window.get_by_role_and_label(Role::MultilineTextInput, "The table of materials").focus();
        hand.window.run();
        hand.window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::A);
        hand.window.run();
        hand.window.input_mut().events.push(egui::Event::Paste(text.to_owned()));
        hand.window.run();
    };
    paste(&mut hand, "name;stock\nSolder;-1\nFlux;12,5\n");
    assert!(hand.rows()[0].contains("Line 2 is wrong: Stock"), "{:#?}", hand.rows());
    assert!(hand.window.get_by_label("Take 1 line in").accesskit_node().is_disabled());
    paste(&mut hand, "name;stock;place\nSolder;99;Cellar / Box 2\nFlux;12,5;\n");
    hand.press("Take 2 lines in");
    hand.settle();
    let logbook = logbook(&hand);
    let stock: Vec<(&str, f64)> = logbook.materials.iter().map(|one| (one.name.as_str(), one.stock)).collect();
    assert_eq!(stock, [("Solder", 99.0), ("Shielding bag", 3.0), ("Flux", 12.5)]);
    let solder = &logbook.materials[0];
    assert_eq!(logbook.place_path(solder.place.unwrap()), "Cellar / Box 2");
}

#[test]
fn a_kit_is_gathered_over_a_part_and_kept_as_a_draft() {
    let mut change = Change::new("Log a board");
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    change.put(board.clone());
    for name in ["C1", "C2", "C3"] {
        change.put(records::capacitor(board.id, name, moment("2026-03-01"), CapacitorState::Bulged));
    }
    let mut hand = hand(change);
    leaf(&mut hand, "Kits");
    hand.press("Gather a kit…");
    assert!(hand.window.query_by_label("1 line for 3 positions; fewer are not possible").is_some());
    hand.press("Keep it as a draft");
    hand.settle();
    assert_eq!(logbook(&hand).kits[0].kit.state, KitState::Draft);
    hand.window.get_by_label_contains("Line: 3 × 1000 µF").click();
    hand.window.run();
    assert!(hand.window.query_by_label("0042 C2").is_some(), "whom it serves");
    assert!(hand.window.query_by_label_contains("1000 µF as it was; 6.3 V as it was").is_some(), "why it may");
    hand.press("Freeze it");
    hand.settle();
    leaf(&mut hand, "To buy");
    // Three and a spare.
    assert!(hand.rows()[0].contains("4 piece, kit "), "{:#?}", hand.rows());
}

#[test]
fn a_role_that_no_part_fills_is_on_the_list_and_costs_add_up() {
    let mut change = stocked();
    let machine = records::machine("The exhibit");
    let mut card = part("0007", Kind::SoundCard, "Orrin card");
    card.price_cents = Some(1250);
    change.put(machine.clone()).put(records::role(machine.id, Kind::VideoCard));
    let role = records::role(machine.id, Kind::SoundCard);
    change.put(role.clone()).put(card.clone());
    change.put(records::fitting(machine.id, Some(role.id), card.id, moment("2026-03-01")));
    let mut hand = hand(change);
    assert!(
        hand.rows().iter().any(|row| row.starts_with("Video card, 1 piece, The exhibit lacks it")),
        "{:#?}",
        hand.rows()
    );
    leaf(&mut hand, "What it cost");
    assert!(hand.rows()[0].starts_with("The exhibit, bought for 12.50 EUR"), "{:#?}", hand.rows());
}

#[test]
fn what_is_ordered_is_not_asked_for_again_until_it_has_come() {
    let mut hand = hand(stocked());
    let choose = |hand: &mut Hand| {
        hand.window.query_all_by_role(Role::Row).next().unwrap().click();
        hand.window.run();
    };
    choose(&mut hand);
    hand.press("It is ordered: 10 g");
    hand.settle();
    let rows = hand.rows();
    assert!(rows.len() == 1 && rows[0].starts_with("Solder, 10 on order, row"), "{rows:#?}");
    // Ten more are used up: only those are lacking beyond what is on its way.
    let mut change = Change::new("Use");
    change.put(Material { stock: 30.0, ..Material::clone(&logbook(&hand).materials[0]) });
    hand.window.state().session().unwrap().store().send(change);
    hand.until("the shortfall", |hand| hand.rows()[0].starts_with("Solder, 10 g, less than 50 left; 10 on order"));
    choose(&mut hand);
    hand.press("It has come: 10 g into stock");
    hand.settle();
    let solder = logbook(&hand).materials[0].clone();
    assert_eq!((solder.stock, solder.on_order), (40.0, 0.0));
}

#[test]
fn spares_that_an_ordered_kit_brings_are_taken_off_a_shortfall() {
    let mut change = Change::new("Stock and a kit");
    let cans = Material { stock: 1.0, minimum: 10.0, ..records::material("Capacitor 1000 µF 6.3 V") };
    let kit = records::kit("Recap of 0042", KitState::Ordered, moment("2026-03-01"));
    let line = KitLine { material: Some(cans.id), to_buy: 5, spares: 4, ..records::kit_line(kit.id) };
    change.put(cans).put(kit).put(line);
    let hand = hand(change);
    // Five of the nine are for positions: one that lies here and four to spare leave five lacking of ten.
    let row = "Capacitor 1000 µF 6.3 V, 5 piece, less than 10 left; 4 on order to spare, with kit Recap of 0042";
    assert!(hand.rows().len() == 1 && hand.rows()[0].starts_with(row), "{:#?}", hand.rows());
}

#[test]
fn tables_go_to_a_file_and_come_from_one_and_nothing_is_overwritten_by_a_typed_path() {
    let told = Arc::new(Told::default());
    let mut hand = Hand::on_desktop(stocked(), SIZE, told.clone());
    hand.give(Command::Go(Page::Supplies));
    let list = hand.folder.path().join("list.csv");
    let write_list = |hand: &mut Hand| {
        hand.press("Write the table to a file…");
        hand.fill("File to be written, ending in .csv", list.to_str().unwrap());
        hand.press("Write the table");
    };
    write_list(&mut hand);
    let says = |hand: &Hand, text: &str| hand.window.query_all_by_label_contains(text).next().is_some();
    hand.until("the file", |hand| says(hand, "The table is written: "));
    let written = std::fs::read_to_string(&list).unwrap();
    assert!(written.starts_with("what,amount,unit") && written.contains("Solder,10,g"), "{written}");
    std::fs::write(&list, "mine").unwrap();
    write_list(&mut hand);
    hand.until("the refusal", |hand| says(hand, "This file is there already: "));
    assert_eq!(std::fs::read_to_string(&list).unwrap(), "mine");

    // The dialog has asked by itself whether a file may be replaced.
    let stock = hand.folder.path().join("stock.csv");
    std::fs::write(&stock, "old").unwrap();
    *told.files.lock().unwrap() = vec![stock.clone()];
    leaf(&mut hand, "In stock");
    hand.press("Write the table to a file…");
    hand.press("Look for it…");
    hand.until("the stock", |_| std::fs::read_to_string(&stock).unwrap().starts_with("name,stock,unit"));

    let table = std::fs::read_to_string(&stock).unwrap().replace("Solder,40", "Solder,99");
    std::fs::write(&stock, table).unwrap();
    hand.press("Read a table from a file…");
    hand.press("Look for it…");
    hand.until("the table", |hand| hand.rows().iter().any(|row| row.contains("Solder, 99 g (known)")));
    hand.press("Take 2 lines in");
    hand.settle();
    assert_eq!(logbook(&hand).materials.iter().find(|one| one.name == "Solder").unwrap().stock, 99.0);

    std::fs::write(&stock, [0xff, 0xfe, 0x00]).unwrap();
    hand.press("Read a table from a file…");
    hand.fill("File with the table", stock.to_str().unwrap());
    hand.press("Read the table");
    hand.until("why not", |hand| says(hand, "it is no text in UTF-8"));
}
