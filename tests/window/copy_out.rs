//! A marked copy written from beside the picture: to a typed path, to one from the dialog, and never over another file.

use std::fs;
use std::sync::Arc;

use benchwright::record::{Change, Kind, MarkUse, PhotoId, PhotoMark};
use benchwright::store::{FileSource, Store};
use benchwright::window::command::Command;
use benchwright::window::outbox::Ask;
use benchwright::window::viewer::Act;
use egui_kittest::kittest::Queryable;

use crate::desktop::Told;
use crate::hand::{Hand, part, photo_of};

/// A window on a photograph with one mark.
fn looked_at(desktop: Arc<Told>) -> (Hand, PhotoId) {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let mut change = Change::new("Log a board");
    change.put(board.clone());
    let mut hand = Hand::on_desktop(change, [1280.0, 800.0], desktop);
    let store = Arc::clone(hand.window.state().session().unwrap().store());
    let mut bytes = std::io::Cursor::new(Vec::new());
    image::RgbImage::new(120, 90).write_to(&mut bytes, image::ImageFormat::Png).unwrap();
    let kept = store.keep_photo(FileSource::Bytes(bytes.get_ref()), "png").unwrap();
    let photo = photo_of(&board, &kept, [120, 90]);
    let id = photo.id;
    let pin = PhotoMark::new(Store::new_id(), id, MarkUse::Place, vec![[0.5, 0.5]]);
    let mut change = Change::new("Photograph");
    change.put(photo).put(pin);
    store.write(change).unwrap();
    hand.wait("the photograph", |app| app.session().unwrap().logbook.photos().count() == 1);
    hand.give(Command::LookAt(id, [id].into()));
    if hand.window.query_by_label("Copy out with marks…").is_none() {
        hand.give(Command::Look(Act::Marks));
        hand.settle();
    }
    (hand, id)
}

fn says(hand: &Hand, words: &str) -> bool {
    hand.window.query_all_by_label_contains(words).next().is_some()
}

#[test]
fn a_copy_is_written_to_a_typed_path_but_not_over_another_file() {
    let (mut hand, _) = looked_at(Arc::default());
    let path = hand.folder.path().join("board.png");
    let write = |hand: &mut Hand| {
        hand.press("Copy out with marks…");
        hand.fill("File to be written, ending in .jpg or .png", path.to_str().unwrap());
        hand.press("Write the copy");
    };
    write(&mut hand);
    hand.until("the notice", |hand| says(hand, "The copy with marks is written"));
    let copy = image::open(&path).unwrap();
    // 120 × 90 are enlarged seven times, and the legend stands below.
    assert!(copy.width() >= 840 && copy.height() > 630, "{} × {}", copy.width(), copy.height());
    let before = fs::read(&path).unwrap();
    hand.press("Put the notice away");
    write(&mut hand);
    hand.until("the refusal", |hand| says(hand, "This file is there already"));
    assert_eq!(fs::read(&path).unwrap(), before);
}

#[test]
fn the_dialog_has_asked_whether_a_file_is_replaced() {
    let told = Arc::new(Told::default());
    let (mut hand, photo) = looked_at(told.clone());
    let path = hand.folder.path().join("board.jpg");
    fs::write(&path, b"an older one").unwrap();
    *told.files.lock().unwrap() = vec![path.clone()];
    hand.press("Copy out with marks…");
    hand.press("Look for it…");
    hand.until("the notice", |hand| says(hand, "The copy with marks is written"));
    assert_eq!(*told.asked.lock().unwrap(), [Ask::MarkedCopy(photo)]);
    let bytes = fs::read(&path).unwrap();
    assert!(bytes.starts_with(&[0xFF, 0xD8]) && bytes.ends_with(&[0xFF, 0xD9]), "a JPEG, whole");
    let beside = fs::read_dir(hand.folder.path())
        .unwrap()
        .filter(|entry| entry.as_ref().unwrap().file_name().to_string_lossy().contains(".part"));
    assert_eq!(beside.count(), 0);
}

#[test]
fn an_ending_that_is_no_picture_is_refused_and_giving_up_writes_nothing() {
    let (mut hand, _) = looked_at(Arc::default());
    let path = hand.folder.path().join("board.txt");
    hand.press("Copy out with marks…");
    hand.fill("File to be written, ending in .jpg or .png", path.to_str().unwrap());
    hand.press("Write the copy");
    hand.until("the refusal", |hand| says(hand, "A marked copy ends in .png or .jpg"));
    assert!(!path.exists());
    hand.press("Copy out with marks…");
    hand.press("Give it up");
    assert!(hand.window.query_by_label("Write the copy").is_none());
}
