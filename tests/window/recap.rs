//! A recap from its kit to its proof, on the sample workshop: the kit comes and is used up, the work is done with its
//! evidence, the board is proven, and its machine gets further.

use std::sync::Arc;

use benchwright::record::{CapacitorState, MachineId, PartFile, WorkState};
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::accesskit::Role;
use egui_kittest::kittest::Queryable;

use crate::hand::Hand;
use crate::part_sheet::press;

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
    assert!(says(&hand, "Parts fit: passed") && says(&hand, "Work done: stands here"));
    assert!(!says(&hand, "Do not apply power"));

    hand.give(Command::Go(Page::Part(file.part.id)));
    let voided = "counts no longer: 0071";
    assert!(says(&hand, voided), "the recap came after the board had been proven");
    press(&mut hand, "Record: Start with known-good parts…");
    hand.window.get_by_role_and_label(Role::ComboBox, "How it came out").click();
    hand.window.run();
    hand.window.get_by_role_and_label(Role::Button, "Passed").click();
    hand.window.run();
    press(&mut hand, "Keep the proof");
    hand.settle();
    assert!(!says(&hand, voided), "proven anew");
}
