//! The viewer: a photograph over the whole window, near and far, turned, one after the other.

use benchwright::record::{Change, Kind, Part, Photo, PhotoView};
use benchwright::store::{FileSource, Store};
use benchwright::window::page::Page;
use egui::accesskit::Role;
use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, part, photo_of};

const WINDOW: [f32; 2] = [1280.0, 800.0];

/// A PNG of a size, of one shade of grey.
fn png([width, height]: [u32; 2], shade: u8) -> Vec<u8> {
    let mut bytes = Vec::new();
    let picture = image::RgbImage::from_pixel(width, height, image::Rgb([shade, shade, shade]));
    picture.write_to(&mut std::io::Cursor::new(&mut bytes), image::ImageFormat::Png).unwrap();
    bytes
}

/// A window on the sheet of a part with these photographs: their sizes, views and captions.
pub fn sheet(board: &Part, photos: &[([u32; 2], PhotoView, &str)]) -> (Hand, Vec<Photo>) {
    let mut change = Change::new("Log a board");
    change.put(board.clone());
    let mut hand = Hand::on(change, WINDOW);
    let store = std::sync::Arc::clone(hand.window.state().session().unwrap().store());
    let mut change = Change::new("Photographs");
    let mut records = Vec::new();
    for (number, (size, view, caption)) in photos.iter().enumerate() {
        let kept = store.keep_photo(FileSource::Bytes(&png(*size, 40 * (number as u8 + 1))), "png").unwrap();
        let photo = photo_of(board, &kept, *size);
        records.push(Photo { view: *view, caption: (*caption).to_owned(), id: Store::new_id(), ..photo });
    }
    for photo in &records {
        change.put(photo.clone());
    }
    store.write(change).unwrap();
    let count = records.len();
    let id = board.id;
    hand.wait("the photographs", |app| app.session().unwrap().logbook.part(id).unwrap().photos.len() == count);
    hand.window.get_by_label_contains(&format!("{}, ", board.tag)).click();
    hand.window.run();
    assert_eq!(hand.window.state().page(), Page::Part(board.id));
    (hand, records)
}

/// What is said of the picture on show.
fn said(hand: &Hand) -> String {
    let said = hand.window.get_all_by_role(Role::Image).next().unwrap();
    said.accesskit_node().label().unwrap_or_default()
}

fn key(hand: &mut Hand, key: Key) {
    hand.window.key_press(key);
    hand.window.run();
}

/// Presses the photograph in the head of the sheet.
fn look(hand: &mut Hand) {
    hand.press("First photograph of 0042");
    assert_eq!(hand.window.state().page(), Page::Photograph);
    hand.window.run();
}

#[test]
fn a_photograph_is_looked_at_from_the_sheet_and_escape_goes_back_there() {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let (mut hand, _) = sheet(&board, &[([400, 200], PhotoView::Overview, "as found")]);
    look(&mut hand);
    assert!(said(&hand).starts_with("Overview, as found: zoom "), "{}", said(&hand));
    assert!(hand.window.query_by_label("0042 Veltrane board").is_some());
    key(&mut hand, Key::Escape);
    assert_eq!(hand.window.state().page(), Page::Part(board.id));
}

#[test]
fn keys_zoom_and_the_announced_zoom_follows() {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let (mut hand, _) = sheet(&board, &[([2000, 1000], PhotoView::Overview, "")]);
    look(&mut hand);
    key(&mut hand, Key::Num1);
    assert_eq!(said(&hand), "Overview: zoom 100 %");
    key(&mut hand, Key::Plus);
    assert_eq!(said(&hand), "Overview: zoom 125 %");
    key(&mut hand, Key::Minus);
    key(&mut hand, Key::Minus);
    assert_eq!(said(&hand), "Overview: zoom 80 %");
    key(&mut hand, Key::Num0);
    let whole = said(&hand);
    assert!(hand.window.state().desks().viewer.look().zoom.is_none());
    key(&mut hand, Key::R);
    assert_ne!(said(&hand), whole, "a wide picture that stands upright is shown smaller");
    hand.window.key_press_modifiers(Modifiers::SHIFT, Key::R);
    hand.window.run();
    assert_eq!(said(&hand), whole);
}

#[test]
fn next_and_previous_go_through_the_photographs_of_the_part() {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let photos = [
        ([40, 20], PhotoView::Before, "one"),
        ([40, 20], PhotoView::Detail, "two"),
        ([40, 20], PhotoView::After, "three"),
    ];
    let (mut hand, _) = sheet(&board, &photos);
    look(&mut hand);
    assert!(hand.window.query_by_label("1 of 3").is_some());
    key(&mut hand, Key::PageDown);
    assert!(said(&hand).starts_with("Detail, two"), "{}", said(&hand));
    // While the whole picture is seen the arrows go on too; nearer, they move it.
    key(&mut hand, Key::ArrowRight);
    assert!(said(&hand).starts_with("After work, three"), "{}", said(&hand));
    key(&mut hand, Key::PageDown);
    assert!(said(&hand).starts_with("After work, three"), "the last one stays");
    hand.press("Before it");
    assert!(said(&hand).starts_with("Detail, two"), "{}", said(&hand));
    key(&mut hand, Key::Num1);
    key(&mut hand, Key::ArrowRight);
    assert!(said(&hand).starts_with("Detail, two"), "{}", said(&hand));
    assert!(hand.window.state().desks().viewer.look().centre[0] > 0.5);
}

#[test]
fn caption_and_date_are_edited_in_the_line_below() {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let (mut hand, photos) = sheet(&board, &[([40, 20], PhotoView::Overview, "")]);
    look(&mut hand);
    let photo = |hand: &Hand| {
        let file = hand.window.state().session().unwrap().logbook.part(board.id).unwrap().clone();
        file.photos.iter().find(|file| file.photo.id == photos[0].id).unwrap().photo.clone()
    };
    hand.press("Caption: –");
    hand.window.get_by_role_and_label(Role::TextInput, "Caption").type_text("row 1");
    hand.window.run();
    // Digits typed in a field are no commands.
    assert!(hand.window.state().desks().viewer.look().zoom.is_none());
    hand.window.key_press(Key::Enter);
    hand.window.step();
    hand.settle();
    assert_eq!(photo(&hand).caption, "row 1");
    hand.press("Taken: –");
    hand.window.get_by_role_and_label(Role::TextInput, "Taken").type_text("1998-13");
    hand.window.run();
    key(&mut hand, Key::Enter);
    assert!(hand.window.query_by_label_contains("is no date").is_some());
    key(&mut hand, Key::Escape);
    assert_eq!(hand.window.state().page(), Page::Photograph, "escape gives the fact back and stays");
    assert_eq!(photo(&hand).taken.to_string(), "");
}

#[test]
fn a_missing_or_damaged_file_says_why() {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let (mut hand, photos) = sheet(&board, &[([40, 20], PhotoView::Overview, ""), ([50, 20], PhotoView::Detail, "")]);
    let path = |photo: &Photo| hand.window.state().session().unwrap().store().photo_path(photo);
    let (missing, damaged) = (path(&photos[0]), path(&photos[1]));
    std::fs::remove_file(missing).unwrap();
    std::fs::write(damaged, b"no picture at all").unwrap();
    look(&mut hand);
    hand.wait("word of the missing file", |_| true);
    let until = std::time::Instant::now() + std::time::Duration::from_secs(10);
    while !said(&hand).contains("cannot be read") && std::time::Instant::now() < until {
        hand.window.step();
    }
    assert!(said(&hand).contains("cannot be read"), "{}", said(&hand));
    key(&mut hand, Key::PageDown);
    while !said(&hand).contains("is no picture") && std::time::Instant::now() < until {
        hand.window.step();
    }
    assert!(said(&hand).contains("is no picture"), "{}", said(&hand));
}
