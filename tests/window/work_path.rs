//! The path of work on a part's sheet: orders by hand, whole overhauls, evidence, proven or not.

use benchwright::record::{Change, FindingState, Kind, Material, Part, Severity, Work, WorkState};
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, part};
use crate::part_sheet::{file, press, sheet};
use crate::records::{self, moment};

fn says(hand: &Hand, text: &str) -> bool {
    hand.window.query_all_by_label_contains(text).next().is_some()
}

fn own(part: &Part, title: &str) -> Work {
    Work { title: title.to_owned(), ..records::work(part.id, WorkState::Open, moment("2026-03-01")) }
}

/// Chooses in an open picker.
fn choose(hand: &mut Hand, words: &str) {
    let found = hand
        .window
        .get_all_by_role(Role::Button)
        .find(|button| button.accesskit_node().label().is_some_and(|label| label.starts_with(words)));
    found.unwrap().click();
    hand.window.step();
    hand.settle();
}

#[test]
fn a_piece_is_put_behind_one_on_another_part_and_a_circle_is_told_and_not_taken() {
    let (board, card) = (part("0042", Kind::Mainboard, "Veltrane board"), part("0043", Kind::VideoCard, "Orrin card"));
    let mut change = Change::new("Log");
    change.put(card.clone()).put(own(&card, "Mend the card")).put(own(&board, "Try it with the card"));
    let mut hand = sheet(&board, change);
    press(&mut hand, "Put behind: Try it with the card");
    choose(&mut hand, "Mend the card, 0043");
    assert!(says(&hand, "after: Mend the card (0043)"), "it waits for the other part");
    let orders = file(&hand, board.id).work_after;
    assert_eq!(orders.len(), 1);

    hand.give(benchwright::window::command::Command::Go(benchwright::window::page::Page::Part(card.id)));
    press(&mut hand, "Work: Mend the card");
    press(&mut hand, "Put behind: Mend the card");
    choose(&mut hand, "Try it with the card, 0042");
    let circle = "Mend the card (0043) → Try it with the card (0042) → Mend the card (0043)";
    assert!(says(&hand, circle), "the circle is named");
    assert!(file(&hand, card.id).work_after.is_empty(), "nothing is half taken");

    hand.give(benchwright::window::command::Command::Go(benchwright::window::page::Page::Part(board.id)));
    press(&mut hand, "Strike the order after: Mend the card (0043)");
    assert!(file(&hand, board.id).work_after.is_empty());
}

#[test]
fn a_whole_overhaul_is_shown_then_added_and_taken_back_in_one_go() {
    let drive = part("0050", Kind::FloppyDrive, "Brindle drive");
    let mut hand = sheet(&drive, Change::new("Log"));
    press(&mut hand, "A whole overhaul…");
    press(&mut hand, "Look at: Service of a floppy or tape drive");
    // Rails and spindle before heads (brutman.com/forums t=304).
    assert!(says(&hand, "Take the old grease off and put new on"));
    assert!(file(&hand, drive.id).work.is_empty(), "shown, not yet added");
    press(&mut hand, "Add these pieces");
    let kept = file(&hand, drive.id);
    assert_eq!(kept.work.len(), 5);
    assert!(says(&hand, "Work: Clean the heads") && says(&hand, "can be started now"));
    hand.window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::Z);
    hand.settle();
    assert!(file(&hand, drive.id).work.is_empty() && file(&hand, drive.id).work_after.is_empty(), "one undo");
}

#[test]
fn evidence_lowers_the_stock_and_ties_a_reading_to_the_work_and_a_later_test_proves_it() {
    let fan = part("0060", Kind::Fan, "Sorrel fan");
    let oil =
        Material { name: "Light machine oil".to_owned(), unit: "ml".to_owned(), stock: 20.0, ..records::material("") };
    let mut change = Change::new("Log");
    let finding = records::finding(fan.id, "fan-gritty");
    let look = records::look(finding.id, moment("2026-03-01"), FindingState::Open, Severity::Plain);
    change.put(oil.clone()).put(finding).put(look);
    let mut hand = sheet(&fan, change);
    press(&mut hand, "Done: Strip, clean and oil the fan");
    hand.fill("Light machine oil, ml", "1,5");
    press(&mut hand, "A reading that shows it…");
    hand.fill("Measured after the work", "Speed");
    hand.fill("Its figure", "2400");
    hand.fill("Its unit", "1/min");
    press(&mut hand, "Keep: it is done");
    let kept = file(&hand, fan.id);
    let work = &kept.work[0];
    assert_eq!((work.state, kept.uses[0].amount, kept.uses[0].work), (WorkState::Done, 1.5, work.id));
    assert_eq!((kept.readings[0].value, kept.readings[0].work), (2400.0, Some(work.id)));
    let stock = |hand: &Hand| hand.window.state().session().unwrap().logbook.materials[0].stock;
    assert_eq!(stock(&hand), 18.5);
    assert!(says(&hand, "to be shown by: Fan starts at once and runs an hour"));

    hand.window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::Z);
    hand.settle();
    assert_eq!((stock(&hand), file(&hand, fan.id).uses.len()), (20.0, 0), "the stock comes back with the work");
}
