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
    hand.press("Previous");
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

/// A sheet with a board before and after work, opened at the earlier one.
fn before_and_after() -> Hand {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let photos = [([300, 200], PhotoView::Before, "leaked"), ([300, 200], PhotoView::After, "cleaned")];
    let (mut hand, _) = sheet(&board, &photos);
    look(&mut hand);
    hand
}

fn slider(hand: &Hand) -> f64 {
    hand.window.get_by_role(Role::Slider).accesskit_node().numeric_value().unwrap()
}

#[test]
fn before_and_after_stand_beside_each_other_and_zoom_together() {
    let mut hand = before_and_after();
    key(&mut hand, Key::C);
    key(&mut hand, Key::Num1);
    assert_eq!(said(&hand), "Before work, leaked: zoom 100 %");
    assert!(hand.window.query_by_label("Compared with After work, cleaned: zoom 100 %").is_some());
    key(&mut hand, Key::Plus);
    assert!(hand.window.query_by_label("Compared with After work, cleaned: zoom 125 %").is_some());
    // Escape puts one thing away after the other.
    key(&mut hand, Key::Escape);
    assert_eq!(hand.window.state().page(), Page::Photograph);
    assert!(hand.window.query_by_label_contains("Compared with After").is_none());
    key(&mut hand, Key::Escape);
    assert_ne!(hand.window.state().page(), Page::Photograph);
}

#[test]
fn a_slider_uncovers_one_picture_over_the_other() {
    let mut hand = before_and_after();
    key(&mut hand, Key::O);
    assert_eq!(slider(&hand), 50.0);
    hand.window.get_by_role(Role::Slider).focus();
    hand.window.run();
    key(&mut hand, Key::ArrowRight);
    key(&mut hand, Key::ArrowRight);
    assert_eq!(slider(&hand), 60.0);
    key(&mut hand, Key::ArrowLeft);
    assert_eq!(slider(&hand), 55.0);
}

#[test]
fn matched_points_lay_the_second_picture_on_the_first() {
    let mut hand = before_and_after();
    key(&mut hand, Key::C);
    key(&mut hand, Key::P);
    hand.press("Put a point on both");
    hand.press("Put a point on both");
    assert!(hand.window.query_by_label("Two of the points lie on the same spot: move one").is_some());
    // Twice as far apart on the first as on the second: the second is shown at twice the zoom.
    for (point, steps) in [("Point 2 on the first picture", 20), ("Point 2 on the second picture", 10)] {
        hand.window.get_by_label(point).focus();
        hand.window.run();
        for _ in 0..steps {
            hand.window.key_press_modifiers(Modifiers::SHIFT, Key::ArrowRight);
            hand.window.step();
        }
    }
    hand.window.run();
    key(&mut hand, Key::Num1);
    let zoom = |hand: &Hand| {
        let second = hand.window.get_by_label_contains("Compared with After work, cleaned: zoom");
        let said = second.accesskit_node().label().unwrap();
        said.split_whitespace().rev().nth(1).unwrap().parse::<f64>().unwrap()
    };
    assert_eq!(zoom(&hand), 100.0, "while points are matched nothing moves under them");
    hand.press("Match points");
    assert_eq!(zoom(&hand), 200.0);
}

#[test]
fn any_other_photograph_can_be_compared() {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let (mut hand, photos) = sheet(&board, &[([40, 20], PhotoView::Overview, "alone")]);
    let other = part("0077", Kind::Mainboard, "Other board");
    let mut change = Change::new("Log another board");
    let photo = Photo { id: Store::new_id(), part: Some(other.id), caption: "twin".to_owned(), ..photos[0].clone() };
    change.put(other).put(photo);
    hand.window.state().session().unwrap().store().send(change);
    hand.wait("the other board", |app| app.session().unwrap().logbook.parts.len() == 2);
    look(&mut hand);
    key(&mut hand, Key::C);
    hand.press("With one of something else…");
    hand.fill("Tag, name or caption", "0077");
    hand.press("0077 Overview, twin");
    assert!(hand.window.query_by_label_contains("Compared with Overview, twin: zoom").is_some());
    assert!(hand.window.query_by_label("0077 Other board").is_some());
}

#[test]
fn at_twice_the_size_on_a_laptop_buttons_wrap_into_the_next_line() {
    let mut hand = before_and_after();
    key(&mut hand, Key::C);
    key(&mut hand, Key::P);
    for _ in 0..5 {
        hand.window.key_press_modifiers(Modifiers::COMMAND, Key::Plus);
        hand.window.run();
    }
    let (width, height) = (WINDOW[0] / 2.0, WINDOW[1] / 2.0);
    for button in hand.window.query_all_by_role(Role::Button) {
        let (rect, name) = (button.rect(), button.accesskit_node().label().unwrap_or_default());
        assert!(rect.right() <= width && rect.bottom() <= height, "“{name}” is cut off: {rect}");
        assert!(rect.height() <= 40.0, "“{name}” is squeezed: {rect}");
    }
}
