//! Photographs that came in together: groups by time, given to parts, parted, joined, left out, and kept till sorted.

use std::fs;
use std::path::Path;

use benchwright::record::{Change, Kind, Part, Work, WorkState};
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::Key;
use egui::accesskit::Role;
use egui_kittest::kittest::Queryable;

use crate::desktop::drop_files;
use crate::hand::{Hand, part};
use crate::records;
use crate::taking_in::{photos, says, taken, wait_to_say};

const SIZE: [f32; 2] = [1280.0, 1400.0];
const WHOSE: &str = "Whose are they? Tag or name of a part, a machine or a lot";

/// A window with five photographs to sort: three within a minute, and two an hour later.
fn five() -> (Hand, [Part; 2]) {
    let parts = [part("0042", Kind::Mainboard, "Veltrane board"), part("0043", Kind::SoundCard, "Corvid card")];
    let mut change = Change::new("Log");
    change.put_all(parts.iter().cloned().map(Into::into));
    let mut hand = Hand::on(change, SIZE);
    hand.give(Command::Go(Page::Machines));
    let phone = hand.folder.path().join("phone");
    for (name, time) in [
        ("a.jpg", "2026:03:01 14:02:00"),
        ("b.jpg", "2026:03:01 14:02:20"),
        ("c.jpg", "2026:03:01 14:02:40"),
        ("d.jpg", "2026:03:01 15:10:00"),
        ("e.jpg", "2026:03:01 15:10:20"),
    ] {
        taken(&phone, name, time);
    }
    drop_files(&mut hand, &[&phone]);
    hand.wait("all five", |app| app.session().is_some() && !app.taking_in().is_busy());
    hand.window.run();
    assert!(says(&hand, "5 photographs wait to be sorted"));
    hand.press("Sort them");
    assert_eq!(hand.window.state().page(), Page::Sorting);
    (hand, parts)
}

fn enter(hand: &mut Hand) {
    hand.window.key_press(Key::Enter);
    hand.window.run();
    hand.settle();
}

fn names(hand: &Hand, part: &Part) -> usize {
    photos(hand.window.state(), part.id).len()
}

#[test]
fn groups_by_time_are_given_to_parts_by_the_keyboard_and_undo_opens_them_again() {
    let (mut hand, [board, card]) = five();
    assert!(says(&hand, "These 3 belong together: 2026-03-01, 14:02"));
    assert!(says(&hand, "These 2 belong together: 2026-03-01, 15:10"));
    // The field has the keys; after one group it is ready for the next.
    hand.fill(WHOSE, "0042");
    enter(&mut hand);
    assert_eq!((names(&hand, &board), names(&hand, &card)), (3, 0));
    assert!(says(&hand, "3 photographs: of 0042 Veltrane board") && says(&hand, "2 photographs to sort"));
    hand.window.input_mut().events.push(egui::Event::Text("corvid".to_owned()));
    hand.window.run();
    enter(&mut hand);
    assert_eq!((names(&hand, &board), names(&hand, &card)), (3, 2));
    assert!(says(&hand, "Every photograph is sorted"));
    let session = hand.window.state().session().unwrap();
    assert_eq!(session.undo_name().as_deref(), Some("Add 2 photographs (0043)"));
    hand.give(Command::Undo);
    hand.settle();
    assert!(says(&hand, "2 photographs to sort"), "what was taken back waits again");
    hand.give(Command::Redo);
    hand.settle();
    hand.press("Put the list away");
    assert!(says(&hand, "No photographs to sort"));
    assert_eq!(names(&hand, &card), 2);
}

#[test]
fn groups_are_parted_and_joined_and_single_photographs_moved_and_left_out() {
    let (mut hand, [board, card]) = five();
    hand.press("c.jpg, 3 of 3");
    hand.press("Part the group before it");
    assert!(
        says(&hand, "These 2 belong together: 2026-03-01, 14:02") && says(&hand, "1 photograph: 2026-03-01, 14:02")
    );
    hand.press("Join with the next group");
    assert!(says(&hand, "These 3 belong together: 2026-03-01, 14:02"));
    hand.press("c.jpg, 3 of 3");
    hand.press("To the next group");
    assert!(says(&hand, "These 3 belong together: 2026-03-01, 14:02 to 15:10"));
    hand.press("a.jpg, 1 of 2");
    hand.press("Leave it out");
    assert!(says(&hand, "1 photograph left out"));
    hand.fill(WHOSE, "0042");
    enter(&mut hand);
    hand.fill(WHOSE, "0043");
    enter(&mut hand);
    assert_eq!((names(&hand, &board), names(&hand, &card)), (1, 3));
    let kept = |hand: &Hand| fs::read_dir(hand.folder.path().join("trial.logbook/photos")).unwrap().count();
    assert_eq!(kept(&hand), 5, "what is left out can be taken up again until the list is put away");
    hand.press("Take up again");
    assert!(says(&hand, "1 photograph to sort"));
    hand.press("Leave them out");
    hand.press("Put the list away");
    for _ in 0..400 {
        if kept(&hand) == 4 {
            return;
        }
        std::thread::sleep(std::time::Duration::from_millis(5));
    }
    panic!("what was left out is forgotten: {} files", kept(&hand));
}

#[test]
fn what_is_not_sorted_yet_survives_a_restart_and_goes_to_a_new_part_at_intake() {
    let (hand, _) = five();
    let mut hand = hand.again(SIZE);
    assert!(says(&hand, "5 photographs wait to be sorted"));
    hand.press("Sort them");
    hand.fill(WHOSE, "0077");
    hand.press("Log a new part with the tag “0077”");
    assert_eq!(hand.window.state().page(), Page::Intake);
    let tag = hand.window.get_by_role_and_label(Role::TextInput, "Tag");
    assert_eq!(egui_kittest::kittest::NodeT::accesskit_node(&tag).value().as_deref(), Some("0077"));
    hand.fill("Kind", "mai");
    hand.window.key_press_modifiers(egui::Modifiers::COMMAND, Key::Enter);
    hand.wait("the part", |app| app.session().unwrap().logbook.parts.len() == 3);
    hand.settle();
    let logged = hand.window.state().session().unwrap().logbook.part_tagged("0077").unwrap().clone();
    assert_eq!(logged.photos.len(), 3);
    assert_eq!(logged.photos[0].photo.taken.to_string(), "2026-03-01");
    assert!(says(&hand, "2 photographs wait to be sorted"));
}

#[test]
fn what_goes_with_work_that_is_not_written_yet_stays_when_the_list_is_put_away() {
    let (mut hand, [board, _]) = five();
    let work = records::work(board.id, WorkState::Open, records::moment("2026-03-01"));
    let mut change = Change::new("Add work");
    change.put(Work { title: "Straighten the bracket".to_owned(), ..work });
    let revision = hand.window.state().session().unwrap().logbook.revision;
    hand.window.state().session().unwrap().store().send(change);
    hand.wait("the work", |app| app.session().unwrap().logbook.revision > revision);
    hand.give(Command::Go(Page::Bench));
    hand.settle();
    let row = hand.rows().into_iter().find(|row| row.contains("Straighten the bracket")).unwrap();
    hand.window.get_by_label(&row).click();
    hand.window.run();
    hand.press("Done…");
    let shown = hand.folder.path().join("phone/c.jpg");
    drop_files(&mut hand, &[&shown]);
    wait_to_say(&mut hand, "Goes with it: c.jpg");

    hand.give(Command::Go(Page::Sorting));
    for picture in ["c.jpg, 3 of 3", "a.jpg, 1 of 2"] {
        hand.press(picture);
        hand.press("Leave it out");
    }
    for tag in ["0042", "0043"] {
        hand.fill(WHOSE, tag);
        enter(&mut hand);
    }
    hand.press("Put the list away");
    let photos = hand.folder.path().join("trial.logbook/photos");
    let is_kept = |path: &Path| {
        let bytes = fs::read(path).unwrap();
        fs::read_dir(&photos).unwrap().any(|kept| fs::read(kept.unwrap().path()).unwrap() == bytes)
    };
    let patience = std::time::Instant::now();
    while is_kept(&hand.folder.path().join("phone/a.jpg")) {
        assert!(patience.elapsed().as_secs() < 20, "what nothing holds is forgotten");
        std::thread::sleep(std::time::Duration::from_millis(5));
    }
    // Both would have been let go by the same hand.
    std::thread::sleep(std::time::Duration::from_millis(200));
    assert!(is_kept(&shown));
}
