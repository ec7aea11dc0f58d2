//! A watched folder: whole new pictures are offered, once, and nothing is taken without a word.

use std::fs;

use benchwright::record::Change;
use benchwright::window::command::Command;
use benchwright::window::page::Page;

use crate::hand::Hand;
use crate::taking_in::{says, taken, wait_to_say};

const SIZE: [f32; 2] = [1280.0, 1200.0];

#[test]
fn new_pictures_are_offered_once_whole_and_by_content() {
    let mut hand = Hand::on(Change::new("Nothing"), SIZE);
    let phone = hand.folder.path().join("phone");
    taken(&phone, "old.jpg", "2026:02:01 10:00:00");
    hand.give(Command::Go(Page::Sorting));
    hand.fill("Folder to watch", phone.to_str().unwrap());
    hand.press("Watch it");
    assert!(says(&hand, "Watch it no more"));
    let seen = hand.folder.path().join("settings/watched.json");
    hand.wait("the first look", |_| seen.exists());

    taken(&phone, "deep/new.jpg", "2026:03:01 10:00:00");
    fs::write(phone.join("coming.jpg"), "").unwrap();
    wait_to_say(&mut hand, "1 new photograph in phone");
    assert_eq!(hand.window.state().taking_in().failed().len(), 0);
    assert!(!hand.folder.path().join("trial.logbook/photos").read_dir().unwrap().any(|_| true), "only offered");
    hand.press("Sort the new ones");
    wait_to_say(&mut hand, "1 photograph to sort");

    // The same picture under another name is not offered again, not after a restart either; another one is.
    let mut hand = hand.again(SIZE);
    fs::copy(phone.join("deep/new.jpg"), phone.join("copy.jpg")).unwrap();
    taken(&phone, "next.jpg", "2026:03:02 10:00:00");
    wait_to_say(&mut hand, "1 new photograph in phone");
    hand.press("Leave the new ones");
    let left: Vec<String> =
        egui_kittest::kittest::Queryable::query_all_by_label_contains(&hand.window, "new photograph")
            .filter_map(|node| egui_kittest::kittest::NodeT::accesskit_node(&node).label())
            .collect();
    assert_eq!(left, Vec::<String>::new());

    fs::rename(&phone, hand.folder.path().join("away")).unwrap();
    wait_to_say(&mut hand, "The watched folder cannot be read");
    hand.press("Put the notice away");
    fs::rename(hand.folder.path().join("away"), &phone).unwrap();
    taken(&phone, "last.jpg", "2026:03:03 10:00:00");
    wait_to_say(&mut hand, "1 new photograph in phone");
}
