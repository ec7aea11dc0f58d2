//! A recap from its kit to its proof, on the sample workshop: the kit comes and is used up, the work is done with its
//! evidence, the board is proven, and its machine gets further.

use std::sync::Arc;

use benchwright::record::*;
use benchwright::store::Store;
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, part};
use crate::part_sheet::press;
use crate::records::{self, moment};

const BOARD: &str = "0071";
const MACHINE: &str = "The net café, 2001";

fn says(hand: &Hand, text: &str) -> bool {
    hand.window.query_all_by_label_contains(text).next().is_some()
}

fn board(hand: &Hand) -> Arc<PartFile> {
    Arc::clone(hand.window.state().session().unwrap().logbook.part_tagged(BOARD).unwrap())
}

fn machine(hand: &Hand) -> MachineId {
    hand.window.state().session().unwrap().logbook.machine_named(MACHINE).unwrap().machine.id
}

fn finish(hand: &mut Hand, work: &str) {
    press(hand, &format!("Done: {work}"));
    press(hand, "Keep: it is done");
    hand.settle();
}

fn pass(hand: &mut Hand, test: &str) {
    press(hand, &format!("Record: {test}…"));
    hand.window.get_by_role_and_label(Role::ComboBox, "How it came out").click();
    hand.window.run();
    hand.window.get_by_role_and_label(Role::Button, "Passed").click();
    hand.window.run();
    press(hand, "Keep the proof");
    hand.settle();
}

#[test]
fn from_a_kit_that_comes_to_a_machine_that_gets_further() {
    let mut hand = Hand::on_sample([1400.0, 6000.0]);
    let id = machine(&hand);
    hand.give(Command::Go(Page::Machine(id)));
    assert!(says(&hand, "Parts fit: stands here") && says(&hand, "Do not apply power"));

    hand.give(Command::Go(Page::Supplies));
    hand.window.get_by_label("Kits").click();
    hand.window.run();
    let kit = hand.rows().into_iter().find(|row| row.starts_with("Second half of 0071, ")).unwrap();
    hand.window.get_by_label(&kit).click();
    hand.window.run();
    for (act, then) in [("It has come", "The kit is: Received"), ("It is used up", "The kit is: Used up")] {
        if act == "It is used up" {
            hand.window.get_by_label("Mark done with it: Replace the failed capacitors, 0071").click();
            hand.window.run();
        }
        press(&mut hand, act);
        hand.settle();
        assert!(says(&hand, then));
    }
    let file = board(&hand);
    let served = file.capacitors.iter().filter(|position| ["C4", "C5", "C6"].contains(&&*position.position.designator));
    let stands: Vec<_> = served.map(|position| (position.state(), position.is_replaced())).collect();
    assert_eq!(stands, [(CapacitorState::Sound, true); 3], "the positions' history tells what was fitted");

    hand.give(Command::Go(Page::Part(file.part.id)));
    press(&mut hand, "Done: Replace the failed capacitors");
    hand.fill("Minutes at it", "70");
    press(&mut hand, "A reading that shows it…");
    hand.fill("Measured after the work", "ESR of C4");
    hand.fill("Its figure", "21");
    hand.fill("Its unit", "mΩ");
    let after = hand.folder.path().join("after.png");
    image::RgbImage::new(12, 9).save(&after).unwrap();
    hand.fill("Photograph after the work", after.to_str().unwrap());
    press(&mut hand, "Add the photograph");
    hand.until("the photograph", |hand| says(hand, "Goes with it: after.png"));
    press(&mut hand, "Keep: it is done");
    hand.settle();
    let file = board(&hand);
    let recap = file.work.iter().find(|work| work.rule == "recap" && work.state == WorkState::Done).unwrap();
    assert_eq!(recap.minutes, Some(70));
    assert!(file.readings.iter().any(|reading| reading.work == Some(recap.id) && reading.value == 21.0));
    assert!(file.photos.iter().any(|photo| photo.marks.iter().any(|mark| mark.work == Some(recap.id))));

    finish(&mut hand, "Measure every rail to ground");
    finish(&mut hand, "First start on the bench");
    finish(&mut hand, "Trace the fault");
    hand.give(Command::Go(Page::Machine(id)));
    assert!(says(&hand, "Parts fit: passed") && says(&hand, "Safe to switch on: stands here"));
    // Tracing the fault came after the rails were measured: they are measured once more, as a test.
    assert!(says(&hand, "not looked at yet: “Each rail to ground, unpowered?”"));
    hand.give(Command::Go(Page::Part(file.part.id)));
    pass(&mut hand, "Rails to ground, unpowered");
    hand.give(Command::Go(Page::Machine(id)));
    assert!(says(&hand, "Work done: stands here"));
    assert!(!says(&hand, "Do not apply power") && !says(&hand, "do not apply power"));

    hand.give(Command::Go(Page::Part(file.part.id)));
    let voided = "counts no longer: 0071";
    assert!(says(&hand, voided), "the recap came after the board had been proven");
    pass(&mut hand, "Start with known-good parts");
    assert!(!says(&hand, voided), "proven anew");
}

/// Two boards with bulged cans and a recap on each, and one kit for both that has come: three for the first, one for the
/// second, and a spare.
fn with_one_kit() -> (Hand, [PartId; 2]) {
    let mut change = Change::new("Log two boards");
    let boards = [part("0042", Kind::Mainboard, "Veltrane board"), part("0043", Kind::Mainboard, "Veltrane board")];
    let cans = Material { stock: 5.0, ..records::material("Capacitor 1000 µF 6.3 V") };
    let kit = records::kit("Two boards", KitState::Received, moment("2026-03-01"));
    let line = KitLine { material: Some(cans.id), to_buy: 4, spares: 1, ..records::kit_line(kit.id) };
    let of_line = line.id;
    change.put(cans).put(kit).put(line);
    for (board, names) in boards.iter().zip([&["C1", "C2", "C3"][..], &["C1"]]) {
        change.put(board.clone());
        let work = records::work(board.id, WorkState::Open, moment("2026-03-02"));
        change.put(Work { rule: "recap".to_owned(), ..work });
        for name in names {
            let can = records::capacitor(board.id, name, moment("2026-03-01"), CapacitorState::Bulged);
            let served = KitPosition { id: Store::new_id(), line: of_line, capacitor: can.id };
            change.put(can).put(served);
        }
    }
    let ids = boards.map(|board| board.id);
    (Hand::on(change, [1400.0, 4000.0]), ids)
}

fn logbook(hand: &Hand) -> Arc<Logbook> {
    Arc::clone(&hand.window.state().session().unwrap().logbook)
}

fn replaced(hand: &Hand, board: PartId) -> usize {
    logbook(hand).part(board).unwrap().capacitors.iter().filter(|one| one.is_replaced()).count()
}

fn recap_state(hand: &Hand, board: PartId) -> WorkState {
    logbook(hand).part(board).unwrap().work[0].state
}

#[test]
fn a_recap_that_is_done_uses_up_what_the_kit_held_for_its_board_in_one_act() {
    let (mut hand, [first, second]) = with_one_kit();
    hand.give(Command::Go(Page::Part(first)));
    press(&mut hand, "Done: Replace the failed capacitors");
    assert!(says(&hand, "Use up the kit: Two boards"));
    press(&mut hand, "Keep: it is done");
    hand.settle();
    assert_eq!((recap_state(&hand, first), replaced(&hand, first), replaced(&hand, second)), (WorkState::Done, 3, 0));
    let after = logbook(&hand);
    assert_eq!(after.materials[0].stock, 2.0, "three of five went in");
    let kits: Vec<_> = after.kits.iter().map(|kit| (kit.kit.state, kit.positions().count())).collect();
    assert_eq!(kits, [(KitState::Received, 1), (KitState::Used, 3)], "the other board's can waits still");
    let name = logbook(&hand).part(first).unwrap().capacitors[0].looks[0].replaced_by.clone();
    assert!(name.contains("1000 µF"), "{name}");

    hand.give(Command::Undo);
    hand.settle();
    let before = logbook(&hand);
    assert_eq!((recap_state(&hand, first), replaced(&hand, first)), (WorkState::Open, 0));
    assert_eq!((before.materials[0].stock, before.kits.len(), before.kits[0].positions().count()), (5.0, 1, 4));

    hand.give(Command::Redo);
    hand.settle();
    hand.give(Command::Go(Page::Part(second)));
    press(&mut hand, "Done: Replace the failed capacitors");
    press(&mut hand, "Keep: it is done");
    hand.settle();
    let last = logbook(&hand);
    assert_eq!(last.materials[0].stock, 1.0, "the spare is left");
    assert!(last.kits.iter().all(|kit| kit.kit.state == KitState::Used) && replaced(&hand, second) == 1);
}

#[test]
fn a_recap_done_without_its_kit_leaves_the_kit_as_it_is() {
    let (mut hand, [first, _]) = with_one_kit();
    hand.give(Command::Go(Page::Part(first)));
    press(&mut hand, "Done: Replace the failed capacitors");
    hand.window.get_by_label("Use up the kit: Two boards").click();
    hand.window.run();
    press(&mut hand, "Keep: it is done");
    hand.settle();
    assert_eq!((recap_state(&hand, first), replaced(&hand, first)), (WorkState::Done, 0));
    assert_eq!((logbook(&hand).materials[0].stock, logbook(&hand).kits[0].kit.state), (5.0, KitState::Received));
}

#[test]
fn what_the_kit_takes_out_of_stock_is_not_told_as_used_a_second_time() {
    let (mut hand, [first, _]) = with_one_kit();
    hand.give(Command::Go(Page::Part(first)));
    press(&mut hand, "Done: Replace the failed capacitors");
    press(&mut hand, "Material from the list…");
    press(&mut hand, "Capacitor 1000 µF 6.3 V, 5 piece in stock");
    hand.fill("Capacitor 1000 µF 6.3 V, piece", "3");
    assert!(says(&hand, "The kit takes Capacitor 1000 µF 6.3 V out of stock already"));
    let keep = hand.window.get_by_role_and_label(Role::Button, "Keep: it is done");
    assert!(keep.accesskit_node().is_disabled());
}

#[test]
fn a_kit_that_is_used_up_marks_the_recaps_done_that_it_was_for() {
    let (mut hand, [first, second]) = with_one_kit();
    hand.give(Command::Go(Page::Supplies));
    hand.window.get_by_label("Kits").click();
    hand.window.run();
    let row = hand.rows()[0].clone();
    hand.window.get_by_label(&row).click();
    hand.window.run();
    hand.window.get_by_label("Mark done with it: Replace the failed capacitors, 0043").click();
    hand.window.run();
    press(&mut hand, "It is used up");
    hand.settle();
    assert_eq!((recap_state(&hand, first), recap_state(&hand, second)), (WorkState::Done, WorkState::Open));
    assert_eq!((replaced(&hand, first), replaced(&hand, second)), (3, 1), "the kit is used up whole");
    assert_eq!(logbook(&hand).materials[0].stock, 1.0);
    hand.give(Command::Undo);
    hand.settle();
    assert_eq!((recap_state(&hand, first), logbook(&hand).kits[0].kit.state), (WorkState::Open, KitState::Received));
}
