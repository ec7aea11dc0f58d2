//! Photographs that come into the window: dropped, pasted, typed; how far it is; stopped; what could not be taken in.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use benchwright::record::{Change, Kind, Machine, Part, PartId, Photo};
use benchwright::store::Store;
use benchwright::window::App;
use benchwright::window::command::Command;
use benchwright::window::desktop::{Chosen, Desktop};
use benchwright::window::outbox::Ask;
use benchwright::window::page::Page;
use egui::{ColorImage, Event, OutputCommand};
use egui_kittest::kittest::Queryable;

use crate::desktop::{drop_files, picture};
use crate::exif::Noted;
use crate::hand::{Hand, part};
use crate::records;

const SIZE: [f32; 2] = [1280.0, 800.0];

/// A window on the sheet of a board.
fn sheet() -> (Hand, Part) {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let mut change = Change::new("Log a board");
    change.put(board.clone());
    let mut hand = Hand::on(change, SIZE);
    hand.give(Command::Go(Page::Part(board.id)));
    (hand, board)
}

/// A photograph taken at a time of the camera's clock; no two of different times are the same.
pub fn taken(folder: &Path, name: &str, time: &str) -> PathBuf {
    let path = folder.join(name);
    fs::create_dir_all(path.parent().unwrap()).unwrap();
    fs::write(&path, Noted::taken(time.as_bytes(), None).jpeg()).unwrap();
    path
}

pub fn photos(app: &App, part: PartId) -> Vec<Photo> {
    let logbook = &app.session().unwrap().logbook;
    logbook.part(part).map_or(Vec::new(), |file| file.photos.iter().map(|file| file.photo.clone()).collect())
}

pub fn says(hand: &Hand, words: &str) -> bool {
    hand.window.query_all_by_label_contains(words).next().is_some()
}

pub fn wait_to_say(hand: &mut Hand, words: &str) {
    for _ in 0..3000 {
        hand.window.step();
        if says(hand, words) {
            return;
        }
        std::thread::sleep(std::time::Duration::from_millis(5));
    }
    panic!("waited in vain for “{words}”");
}

fn paste(hand: &mut Hand, event: Event) {
    hand.window.input_mut().events.push(event);
    hand.window.step();
}

/// Waits until a part has so many photographs and the intake has told all: while lines come and go, a press may miss.
fn all_in(hand: &mut Hand, what: &str, part: PartId, count: usize) {
    hand.wait(what, |app| photos(app, part).len() == count && !app.taking_in().is_busy());
}

#[test]
fn a_dropped_folder_goes_onto_the_part_as_one_act_with_the_days_that_cameras_noted() {
    let (mut hand, board) = sheet();
    let phone = hand.folder.path().join("phone");
    let first = taken(&phone, "IMG_1.jpg", "2024:05:06 07:08:09");
    taken(&phone, "deep/IMG_2.jpg", "2024:05:07 10:00:00");
    fs::copy(&first, phone.join("IMG_1 again.jpg")).unwrap();
    fs::write(phone.join("notes.txt"), "nothing to see").unwrap();
    let before = fs::read(&first).unwrap();
    drop_files(&mut hand, &[&phone]);
    all_in(&mut hand, "both", board.id, 2);
    hand.settle();
    let mut days: Vec<String> =
        photos(hand.window.state(), board.id).iter().map(|photo| photo.taken.to_string()).collect();
    days.sort_unstable();
    assert_eq!(days, ["2024-05-06", "2024-05-07"]);
    assert!(says(&hand, "1 photograph was there already"), "the same picture twice is kept once");
    assert!(says(&hand, "1 file of the folders is no picture"));
    let session = hand.window.state().session().unwrap();
    assert_eq!(session.undo_name().as_deref(), Some("Add 2 photographs (0042)"));
    let kept: Vec<Vec<u8>> = photos(hand.window.state(), board.id)
        .iter()
        .map(|photo| fs::read(session.store().photo_path(photo)).unwrap())
        .collect();
    assert!(kept.contains(&before), "byte for byte");
    assert_eq!(fs::read(&first).unwrap(), before, "the original is untouched");
    hand.keys(&Command::Undo);
    hand.settle();
    assert!(photos(hand.window.state(), board.id).is_empty());
}

#[test]
fn what_cannot_be_taken_in_is_listed_with_its_reason_and_can_be_copied() {
    let (mut hand, board) = sheet();
    let folder = hand.folder.path().to_path_buf();
    let good = picture(&folder, "good.png", [40, 30]);
    let empty = folder.join("empty.jpg");
    fs::write(&empty, "").unwrap();
    let letter = folder.join("letter.jpg");
    fs::write(&letter, "Dear restorer").unwrap();
    drop_files(&mut hand, &[&good, &empty, &letter]);
    all_in(&mut hand, "the good one", board.id, 1);
    wait_to_say(&mut hand, "2 of 3 files were not taken in");
    hand.settle();
    assert!(!says(&hand, "“empty.jpg” is empty"), "the reasons wait until they are asked for");
    hand.press("See which, and why…");
    for words in ["“empty.jpg” is empty", "“letter.jpg” is no picture", &empty.display().to_string()] {
        assert!(says(&hand, words), "{words}");
    }
    hand.window.get_by_label("Copy the list").click();
    let copied = (0..4).find_map(|_| {
        hand.window.step();
        let commands = &hand.window.output().platform_output.commands;
        commands.iter().find_map(|command| match command {
            OutputCommand::CopyText(text) => Some(text.clone()),
            _ => None,
        })
    });
    let copied = copied.expect("the list goes to the clipboard");
    assert_eq!(copied.lines().count(), 2);
    assert!(copied.contains("is empty") && copied.contains(&letter.display().to_string()), "{copied}");
    hand.window.run();
    hand.press("Put the list away");
    assert!(!says(&hand, "were not taken in"));
}

#[test]
fn one_that_cannot_be_taken_in_is_told_with_its_reason_at_once() {
    let (mut hand, board) = sheet();
    let path = hand.folder.path().join("bomb.bmp");
    // A header that claims 60,000 × 60,000 pixels and nothing behind it. Source: the BITMAPINFOHEADER structure.
    let mut bomb = b"BM\x36\0\0\0\0\0\0\0\x36\0\0\0\x28\0\0\0".to_vec();
    for side in [60_000_u32, 60_000] {
        bomb.extend(side.to_le_bytes());
    }
    bomb.extend([1, 0, 24, 0]);
    bomb.resize(0x36, 0);
    fs::write(&path, bomb).unwrap();
    drop_files(&mut hand, &[&path]);
    wait_to_say(&mut hand, "60000 × 60000 pixels, 120 million are read at most");
    assert!(photos(hand.window.state(), board.id).is_empty());
}

#[test]
fn stopped_in_the_middle_what_is_in_stays_as_one_act() {
    let (mut hand, board) = sheet();
    let many = hand.folder.path().join("many");
    fs::create_dir(&many).unwrap();
    for number in 0..60_u8 {
        let shade = |x: u32, y: u32| image::Rgb([number, (x * 7 % 251) as u8, (y * 11 % 241) as u8]);
        image::RgbImage::from_fn(900, 700, shade).save(many.join(format!("{number:02}.png"))).unwrap();
    }
    drop_files(&mut hand, &[&many]);
    wait_to_say(&mut hand, "of 60 for 0042 Veltrane board");
    // Some are in by now: the act must hold them, and no other.
    wait_to_say(&mut hand, "Taking in 2 of 60");
    hand.window.get_by_label("Stop").click();
    hand.window.step();
    wait_to_say(&mut hand, "Stopped: ");
    hand.wait("the record of what is in", |app| !app.taking_in().is_busy());
    hand.settle();
    let count = photos(hand.window.state(), board.id).len();
    assert!((2..60).contains(&count), "{count}");
    assert!(says(&hand, &format!("Stopped: {count} taken in, {} left where they are.", 60 - count)));
    let kept = fs::read_dir(hand.folder.path().join("trial.logbook/photos")).unwrap().count();
    assert_eq!(kept, count, "no file without its record");
    hand.keys(&Command::Undo);
    hand.settle();
    assert!(photos(hand.window.state(), board.id).is_empty());
}

/// A board with work on it, a machine, and a window that shows one of them.
fn two() -> (Hand, Part, Machine) {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let machine = records::machine("Front desk");
    let mut change = Change::new("Log");
    change.put(board.clone()).put(machine.clone());
    change.put(part("0043", Kind::Fan, "Other"));
    let work = records::work(board.id, benchwright::record::WorkState::Open, records::moment("2026-03-01"));
    change.put(benchwright::record::Work { title: "Straighten the bracket".to_owned(), ..work });
    (Hand::on(change, SIZE), board, machine)
}

#[test]
fn what_is_in_view_gets_what_is_dropped() {
    let (mut hand, board, machine) = two();
    let folder = hand.folder.path().to_path_buf();
    let mut dropped = 0;
    let mut drop_one = |hand: &mut Hand| {
        dropped += 1;
        let path = picture(&folder, &format!("{dropped}.png"), [10 + dropped, 10]);
        drop_files(hand, &[&path]);
    };
    let of_machine = |app: &App| app.session().unwrap().logbook.machine(machine.id).unwrap().photos.len();

    hand.give(Command::Go(Page::Machine(machine.id)));
    drop_one(&mut hand);
    hand.wait("the machine's photograph", |app| of_machine(app) == 1);

    // Over a photograph: what it is of.
    let id = hand.window.state().session().unwrap().logbook.machine(machine.id).unwrap().photos[0].photo.id;
    hand.give(Command::LookAt(id, [id].into()));
    drop_one(&mut hand);
    hand.wait("the second", |app| of_machine(app) == 2);

    // On the Shelf: the part that is chosen there; nothing chosen, they wait to be sorted.
    hand.give(Command::Go(Page::Shelf));
    drop_one(&mut hand);
    wait_to_say(&mut hand, "1 photograph waits to be sorted");
    hand.keys(&Command::SearchShelf);
    hand.window.key_press(egui::Key::ArrowDown);
    hand.window.run();
    drop_one(&mut hand);
    all_in(&mut hand, "the chosen part's", board.id, 1);

    // On the Bench: the part of the piece of work on show; while its form is open, evidence of the work.
    hand.give(Command::Go(Page::Bench));
    let work = hand.rows().into_iter().find(|row| row.contains("Straighten the bracket")).unwrap();
    hand.window.get_by_label(&work).click();
    hand.window.run();
    drop_one(&mut hand);
    all_in(&mut hand, "the part's second", board.id, 2);
    hand.press("Done…");
    drop_one(&mut hand);
    wait_to_say(&mut hand, "Goes with it: 6.png");
    assert_eq!(photos(hand.window.state(), board.id).len(), 2);
}

#[test]
fn a_pasted_picture_and_pasted_paths_go_to_what_is_in_view() {
    let (mut hand, board) = sheet();
    let colours = [egui::Color32::RED, egui::Color32::GREEN, egui::Color32::BLUE, egui::Color32::WHITE];
    let picture_pasted = ColorImage::new([2, 2], colours.to_vec());
    paste(&mut hand, Event::PasteImage(Arc::new(picture_pasted)));
    all_in(&mut hand, "the picture", board.id, 1);
    let photo = photos(hand.window.state(), board.id)[0].clone();
    let kept = image::open(hand.window.state().session().unwrap().store().photo_path(&photo)).unwrap().into_rgba8();
    let pixels: Vec<[u8; 4]> = kept.pixels().map(|pixel| pixel.0).collect();
    assert_eq!(pixels, colours.map(|colour| colour.to_array()), "no pixel is lost");

    let spaced = picture(hand.folder.path(), "front side.png", [12, 10]);
    let other = picture(hand.folder.path(), "back.png", [13, 10]);
    let uri = format!("file://{}", spaced.display().to_string().replace(' ', "%20"));
    paste(&mut hand, Event::Paste(format!("copy\n{uri}\n{}\n", other.display())));
    all_in(&mut hand, "the files", board.id, 3);

    paste(&mut hand, Event::Paste("just words".to_owned()));
    assert!(says(&hand, "What was pasted is no picture, and no path of one."));

    // In a text field pasted text is text, even a path.
    hand.keys(&Command::SearchShelf);
    paste(&mut hand, Event::Paste(other.display().to_string()));
    hand.window.run();
    assert!(!hand.window.state().taking_in().is_busy());
    let field = hand.window.get_by_role_and_label(egui::accesskit::Role::TextInput, "Words, tag or marking");
    assert_eq!(egui_kittest::kittest::NodeT::accesskit_node(&field).value().as_deref(), other.to_str());
}

#[test]
fn without_a_logbook_what_is_dropped_is_told_to_wait() {
    let mut hand = Hand::empty(SIZE);
    let path = picture(hand.folder.path(), "front.png", [12, 10]);
    drop_files(&mut hand, &[&path]);
    assert!(says(&hand, "Open a logbook first"));
}

#[test]
fn a_batch_that_the_lights_going_out_cut_off_is_offered_again() {
    let (hand, board) = sheet();
    let path = picture(hand.folder.path(), "front.png", [12, 10]);
    let Hand { window, folder } = hand;
    drop(window);
    // What the window keeps while a batch is under way.
    let under_way = serde_json::json!([{ "target": { "Part": board.id }, "paths": [path] }]);
    let store = Store::open(&folder.path().join("trial.logbook")).unwrap();
    store.save_draft("taking in", &under_way.to_string());
    drop(store);
    let mut hand = Hand::reopened(folder, SIZE);
    hand.until("the offer", |hand| says(hand, "1 file or folder was being taken in when the program ended."));
    assert!(photos(hand.window.state(), board.id).is_empty(), "nothing is taken without a word");
    hand.press("Take them in");
    all_in(&mut hand, "the photograph", board.id, 1);
    hand.settle();
    let mut hand = hand.again(SIZE);
    hand.window.run();
    assert!(!says(&hand, "was being taken in"));
}

/// A desktop on Wayland.
#[derive(Debug)]
struct Wayland;

impl Desktop for Wayland {
    fn prefers_dark(&self) -> Option<bool> {
        None
    }

    fn receives_drops(&self) -> bool {
        false
    }

    fn choose(&self, _ask: Ask, _parent: Option<&eframe::Frame>) -> Chosen {
        Box::pin(std::future::ready(Vec::new()))
    }

    fn show(&self, _page: &std::path::Path) -> bool {
        false
    }
}

#[test]
fn where_dropping_does_not_reach_the_program_it_says_so() {
    let dropping = "Or drop files and folders on the window";
    for (desktop, can_drop) in
        [(Arc::new(Wayland) as Arc<dyn Desktop>, false), (Arc::new(benchwright::window::desktop::NoDesktop), true)]
    {
        let mut hand = Hand::on_desktop(Change::new("Nothing"), SIZE, desktop);
        for page in [Page::Intake, Page::Sorting] {
            hand.give(Command::Go(page));
            assert_eq!(says(&hand, dropping), can_drop, "{page:?}");
            assert_eq!(
                says(&hand, "Files dropped on a Wayland window do not reach the program"),
                !can_drop,
                "{page:?}"
            );
        }
    }
}
