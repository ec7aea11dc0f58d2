//! The Shelf: sorting, filtering, keys, and rows that can be read aloud.

use benchwright::record::{Change, Kind, Photo, PhotoView};
use benchwright::store::{FileSource, Kept};
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::Key;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, marking, part, photo_of, place};

fn hand(size: [f32; 2]) -> Hand {
    let mut change = Change::new("Log a shelf");
    let cellar = place("Cellar", None);
    let crate_four = place("Crate 4", Some(cellar.id));
    let attic = place("Attic", None);
    let mut board = part("9", Kind::Mainboard, "Veltrane board");
    board.place = Some(crate_four.id);
    let mut card = part("10", Kind::SoundCard, "Orrin card");
    card.place = Some(attic.id);
    let mut supply = part("100", Kind::PowerSupply, "Tessek supply");
    supply.place = Some(cellar.id);
    let read = marking(card.id, "SN 7741");
    for entry in [cellar, crate_four, attic] {
        change.put(entry);
    }
    for entry in [board, card, supply] {
        change.put(entry);
    }
    change.put(read);
    Hand::on(change, size)
}

/// The tags of the rows on show.
fn tags(hand: &Hand) -> Vec<String> {
    hand.rows().iter().map(|name| name.split(',').next().unwrap().to_owned()).collect()
}

fn choose(hand: &mut Hand, list: &str, choice: &str) {
    hand.window.get_by_role_and_label(Role::ComboBox, list).click();
    hand.window.run();
    hand.window.get_by_role_and_label(Role::Button, choice).click();
    hand.window.run();
}

const SIZE: [f32; 2] = [1280.0, 800.0];

#[test]
fn a_row_says_tag_what_state_and_its_place_in_the_table() {
    let hand = hand(SIZE);
    assert_eq!(hand.rows()[0], "9, Veltrane board, Not surveyed, row 1 of 3");
}

#[test]
fn tags_sort_by_their_numbers_and_turn_round() {
    let mut hand = hand(SIZE);
    assert_eq!(tags(&hand), ["9", "10", "100"]);
    hand.press("Sort by Tag");
    assert_eq!(tags(&hand), ["100", "10", "9"]);
    hand.press("Sort by What it is");
    assert_eq!(tags(&hand), ["10", "100", "9"]);
}

#[test]
fn words_are_looked_for_in_names_markings_and_places() {
    for (typed, found) in
        [("orrin", vec!["10"]), ("7741", vec!["10"]), ("cellar", vec!["9", "100"]), ("cellar vel", vec!["9"])]
    {
        let mut hand = hand(SIZE);
        hand.fill("Words, tag or marking", typed);
        assert_eq!(tags(&hand), found, "{typed}");
    }
}

#[test]
fn a_place_holds_what_is_in_the_places_inside_it() {
    let mut hand = hand(SIZE);
    choose(&mut hand, "Place", "Cellar");
    assert_eq!(tags(&hand), ["9", "100"]);
    choose(&mut hand, "Place", "Cellar / Crate 4");
    assert_eq!(tags(&hand), ["9"]);
}

#[test]
fn kind_filters_and_stays_while_another_desk_is_on_show() {
    let mut hand = hand(SIZE);
    choose(&mut hand, "Kind", "Mainboard");
    assert_eq!(tags(&hand), ["9"]);
    hand.window.get_by_role_and_label(Role::Tab, "Bench").click();
    hand.window.run();
    hand.window.get_by_role_and_label(Role::Tab, "Shelf").click();
    hand.window.run();
    assert_eq!(tags(&hand), ["9"]);
    hand.press("Show all");
    assert_eq!(tags(&hand).len(), 3);
}

#[test]
fn nothing_found_says_so_and_offers_the_way_back() {
    let mut hand = hand(SIZE);
    hand.fill("Words, tag or marking", "no such thing");
    hand.window.get_by_label("No part answers to all of this.");
    hand.press("Show all parts");
    assert_eq!(tags(&hand).len(), 3);
}

#[test]
fn arrows_move_the_chosen_row_and_enter_opens_it_from_the_field_too() {
    let mut hand = hand(SIZE);
    hand.fill("Words, tag or marking", "cellar");
    for key in [Key::ArrowDown, Key::ArrowDown, Key::Enter] {
        hand.window.key_press(key);
        hand.window.run();
    }
    let Page::Part(part) = hand.window.state().page() else { panic!("{:?}", hand.window.state().page()) };
    assert_eq!(hand.window.state().session().unwrap().logbook.part(part).unwrap().part.tag, "100");
}

#[test]
fn the_table_takes_the_focus_and_home_end_and_arrows_move_in_it() {
    let mut hand = hand(SIZE);
    hand.window.get_by_role(Role::Table).focus();
    hand.window.run();
    for (key, tag) in [(Key::End, "100"), (Key::ArrowUp, "10"), (Key::Home, "9"), (Key::ArrowDown, "10")] {
        hand.window.key_press(key);
        hand.window.run();
        let chosen: Vec<String> = hand
            .window
            .get_all_by_role(Role::Row)
            .filter(|row| row.accesskit_node().is_selected() == Some(true))
            .map(|row| row.accesskit_node().label().unwrap_or_default())
            .collect();
        assert_eq!(chosen.len(), 1);
        assert!(chosen[0].starts_with(&format!("{tag},")), "{key:?}: {chosen:?}");
    }
}

#[test]
fn a_press_on_a_row_opens_its_sheet() {
    let mut hand = hand(SIZE);
    hand.window.get_by_label_contains("10, Orrin card").click();
    hand.window.run();
    assert!(matches!(hand.window.state().page(), Page::Part(_)));
}

#[test]
fn pictures_can_be_shown_instead_and_open_the_same_sheet() {
    let mut hand = hand(SIZE);
    hand.press("Show pictures");
    hand.press("10, Orrin card, 2 of 3");
    assert!(matches!(hand.window.state().page(), Page::Part(_)));
}

#[test]
fn at_twice_the_size_on_a_laptop_nothing_that_is_named_lies_over_another() {
    let mut hand = hand(SIZE);
    for _ in 0..5 {
        hand.window.key_press_modifiers(egui::Modifiers::COMMAND, Key::Plus);
        hand.window.run();
    }
    let roles = [Role::Button, Role::TextInput, Role::ComboBox, Role::Tab, Role::Row, Role::Label, Role::Heading];
    // What is scrolled out of sight still has its place in the tree, behind the status line: left out.
    let status_line = hand.window.get_by_label("Saved").rect().top() - 4.0;
    for page in Page::DESKS {
        hand.window.get_by_role_and_label(Role::Tab, page.label()).click();
        hand.window.run();
        let nodes: Vec<_> = roles
            .iter()
            .flat_map(|role| hand.window.query_all_by_role(*role))
            .filter(|node| node.rect().bottom() < status_line)
            .collect();
        assert!(nodes.len() > 7, "{page:?} shows only {}", nodes.len());
        for (index, node) in nodes.iter().enumerate() {
            for other in &nodes[index + 1..] {
                let shared = node.rect().shrink(1.0).intersect(other.rect().shrink(1.0));
                let name = |node: &egui_kittest::Node<'_>| {
                    node.accesskit_node().label().or(node.accesskit_node().value()).unwrap_or_default()
                };
                assert!(!shared.is_positive(), "{page:?}: “{}” lies over “{}”", name(node), name(other));
            }
        }
    }
}

#[test]
fn a_part_with_a_photograph_is_shown_by_it() {
    let picture = image::RgbaImage::from_fn(64, 48, |x, y| image::Rgba([x as u8 * 4, y as u8 * 5, 90, 255]));
    let mut bytes = Vec::new();
    picture.write_to(&mut std::io::Cursor::new(&mut bytes), image::ImageFormat::Png).unwrap();
    let mut hand = Hand::on(Change::new(""), SIZE);
    let store = hand.window.state().session().unwrap().store().clone();
    let kept = store.keep_photo(FileSource::Bytes(&bytes), "png").unwrap();
    let board = part("1", Kind::Mainboard, "Veltrane board");
    let mut change = Change::new("Log a board with its photograph");
    let photo = photo_of(&board, &kept, [64, 48]);
    change.put(board).put(photo.clone());
    store.send(change);
    hand.wait("the board", |app| app.session().unwrap().logbook.parts.len() == 1);
    hand.window.get_by_role_and_label(Role::Tab, "Shelf").click();
    hand.window.run();
    hand.press("Show pictures");
    hand.wait("its picture", |app| app.pictures().bytes() > 0);
    // Never enlarged: four bytes a pixel.
    assert_eq!(hand.window.state().pictures().bytes(), 64 * 48 * 4);
}

#[test]
fn a_date_that_cannot_be_read_is_said_beside_its_field() {
    let mut hand = hand(SIZE);
    hand.fill("Made from", "soon");
    hand.window.get_by_label_contains("“soon” is no date");
    assert_eq!(hand.rows().len(), 3, "it asks for nothing");
    hand.window.key_press_modifiers(egui::Modifiers::COMMAND, Key::A);
    hand.window.run();
    hand.fill("Made from", "1998");
    hand.fill("Made to", "1996-05");
    hand.window.get_by_label("Nothing was made from 1998 to 1996-05: the second comes first");
}

/// A board and a supply with photographs that differ in what they show and when they were taken.
fn photographed() -> (Hand, Vec<Photo>) {
    let mut change = Change::new("Log boards with photographs");
    let mut photos = Vec::new();
    let told = [
        ("0007", PhotoView::Before, "2025-02-01", "leak at the cell"),
        ("0007", PhotoView::After, "2025-06-10", "cleaned"),
        ("0008", PhotoView::Label, "2024-12-31", ""),
    ];
    let parts = [part("0007", Kind::Mainboard, "Veltrane board"), part("0008", Kind::PowerSupply, "Dunmarrow supply")];
    for (number, (tag, view, taken, caption)) in told.into_iter().enumerate() {
        let of = parts.iter().find(|part| part.tag == tag).unwrap();
        let kept = Kept { content: format!("{number:064x}"), bytes: 1, extension: "png".to_owned(), is_new: true };
        let photo = photo_of(of, &kept, [40, 30]);
        photos.push(Photo { view, taken: taken.parse().unwrap(), caption: caption.to_owned(), ..photo });
    }
    change.put_all(parts.map(Into::into)).put_all(photos.iter().cloned().map(Into::into));
    (Hand::on(change, SIZE), photos)
}

fn photograph_names(hand: &Hand) -> Vec<String> {
    let all = hand.window.query_all_by_role(Role::Button);
    let names = all.filter_map(|button| button.accesskit_node().label());
    names.filter(|name| name.starts_with("0007, ") || name.starts_with("0008, ")).collect()
}

#[test]
fn every_photograph_is_found_newest_first_by_kind_view_words_and_days() {
    let (mut hand, photos) = photographed();
    hand.keys(&Command::SearchPhotographs);
    assert!(hand.window.query_by_label("3 photographs").is_some());
    let all = [
        "0007, After work, cleaned, 2025-06-10, 1 of 3",
        "0007, Before work, leak at the cell, 2025-02-01, 2 of 3",
        "0008, Label or marking, 2024-12-31, 3 of 3",
    ];
    assert_eq!(photograph_names(&hand), all);
    hand.fill("Words, tag or caption", "leak");
    assert_eq!(photograph_names(&hand), ["0007, Before work, leak at the cell, 2025-02-01, 1 of 1"]);
    hand.press("Show all");
    hand.fill("Taken from", "2025");
    hand.fill("Taken to", "2025-05");
    assert_eq!(photograph_names(&hand), ["0007, Before work, leak at the cell, 2025-02-01, 1 of 1"]);
    hand.press("Show all");
    hand.window.get_by_role_and_label(Role::ComboBox, "It shows").click();
    hand.window.run();
    hand.press("Label or marking");
    assert_eq!(photograph_names(&hand), ["0008, Label or marking, 2024-12-31, 1 of 1"]);
    hand.press("Show all");
    // Arrows choose, Enter opens, and next goes on through the same list.
    hand.window.get_by_role_and_label(Role::List, "Photographs").focus();
    hand.window.run();
    for key in [Key::ArrowRight, Key::Enter] {
        hand.window.key_press(key);
        hand.window.run();
    }
    assert_eq!(hand.window.state().page(), Page::Photograph);
    assert!(hand.window.query_by_label("2 of 3").is_some());
    let file = hand.window.state().session().unwrap().store().photo_path(&photos[0]);
    assert!(!file.exists(), "the window shows the list even where files are missing");
}
