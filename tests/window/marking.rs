//! Marks on photographs: drawn by pointer and by keys, tied, moved, measured, and shown on the part's map.

use benchwright::record::{
    CapacitorState, Change, Finding, FindingState, Kind, MarkUse, Part, PartFile, Photo, PhotoMark, PhotoView, Severity,
};
use benchwright::store::{FileSource, Store};
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use benchwright::window::viewer::{Act, Tool};
use egui::accesskit::Role;
use egui::{Key, Modifiers, Pos2, Rect, vec2};
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, part, photo_of};
use crate::records::{self, moment};
use crate::viewer::sheet;

const SIZE_PX: [u32; 2] = [1000, 500];

/// A board with an open finding and one photograph, that photograph on show.
fn looked_at() -> (Hand, Part, Finding) {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let (mut hand, photos) = sheet(&board, &[(SIZE_PX, PhotoView::Overview, "front")]);
    let rust = Finding { note: "Rust on the shells".to_owned(), ..records::finding(board.id, "") };
    let look = records::look(rust.id, moment("2026-03-01"), FindingState::Open, Severity::Plain);
    let mut change = Change::new("Find rust");
    change.put(rust.clone()).put(look);
    write(&mut hand, change);
    hand.give(Command::LookAt(photos[0].id, [photos[0].id].into()));
    (hand, board, rust)
}

fn write(hand: &mut Hand, change: Change) {
    let revision = hand.window.state().session().unwrap().logbook.revision;
    hand.window.state().session().unwrap().store().send(change);
    hand.wait("the change", |app| app.session().unwrap().logbook.revision > revision);
    hand.window.run();
}

fn file(hand: &Hand, board: &Part) -> PartFile {
    PartFile::clone(hand.window.state().session().unwrap().logbook.part(board.id).unwrap())
}

fn marks(hand: &Hand, board: &Part) -> Vec<PhotoMark> {
    file(hand, board).photos[0].marks.clone()
}

fn key(hand: &mut Hand, key: Key) {
    hand.window.key_press(key);
    hand.window.step();
    hand.settle();
}

/// Where a place on the picture stands in the window: the picture fits into what is left for it.
fn at(hand: &Hand, [x, y]: [f32; 2]) -> Pos2 {
    let area: Rect = hand.window.get_all_by_role(Role::Image).next().unwrap().rect();
    let [width, height] = SIZE_PX.map(|side| side as f32);
    let scale = (area.width() / width).min(area.height() / height);
    area.center() + vec2((x - 0.5) * width, (y - 0.5) * height) * scale
}

fn hold(hand: &mut Hand, share: [f32; 2]) {
    let at = at(hand, share);
    hand.window.hover_at(at);
    hand.window.step();
    hand.window.drag_at(at);
    hand.window.step();
}

fn let_go(hand: &mut Hand, share: [f32; 2]) {
    hand.window.drop_at(at(hand, share));
    hand.window.step();
    hand.settle();
}

/// Presses the picture at a place.
fn press_at(hand: &mut Hand, share: [f32; 2]) {
    hold(hand, share);
    let_go(hand, share);
}

/// Presses each corner, and the first one again.
fn outline(hand: &mut Hand, tool: Tool, corners: &[[f32; 2]]) {
    hand.give(Command::Look(Act::Take(tool)));
    for corner in corners.iter().chain(&corners[..1]) {
        press_at(hand, *corner);
    }
}

fn rectangle(from: [f32; 2], to: [f32; 2]) -> [[f32; 2]; 4] {
    [from, [to[0], from[1]], to, [from[0], to[1]]]
}

/// Presses a button and waits for the disk.
fn press(hand: &mut Hand, name: &str) {
    hand.window.get_by_role_and_label(Role::Button, name).click();
    hand.window.step();
    hand.settle();
}

fn says(hand: &Hand, words: &str) -> bool {
    hand.window.query_all_by_label_contains(words).next().is_some()
}

fn assert_near(points: &[[f32; 2]], wanted: &[[f32; 2]]) {
    assert_eq!(points.len(), wanted.len(), "{points:?}");
    for (point, wanted) in points.iter().zip(wanted) {
        assert!((point[0] - wanted[0]).abs() < 0.002 && (point[1] - wanted[1]).abs() < 0.002, "{points:?}");
    }
}

#[test]
fn a_pin_is_tied_to_a_finding_and_leads_there_and_back() {
    let (mut hand, board, rust) = looked_at();
    hand.give(Command::Look(Act::Marks));
    hand.press("Pin");
    press_at(&mut hand, [0.25, 0.5]);
    press(&mut hand, "Finding: Rust on the shells: open");
    let [pin] = &marks(&hand, &board)[..] else { panic!("{:?}", marks(&hand, &board)) };
    assert_near(&pin.points, &[[0.25, 0.5]]);
    assert_eq!((pin.finding, pin.role), (Some(rust.id), MarkUse::Place));
    // A press chooses it, a press on what it names goes to the sheet with the finding open.
    key(&mut hand, Key::Escape);
    press_at(&mut hand, [0.25, 0.5]);
    press(&mut hand, "Go to it");
    assert_eq!(hand.window.state().page(), Page::Part(board.id));
    hand.window.run();
    press(&mut hand, "On the photograph “Overview, front”: Rust on the shells");
    assert_eq!(hand.window.state().page(), Page::Photograph);
    assert!(says(&hand, "Point 1 of mark 1"), "the mark is chosen");
}

#[test]
fn what_was_drawn_is_undone_act_by_act() {
    let (mut hand, board, rust) = looked_at();
    hand.give(Command::Look(Act::Take(Tool::Pin)));
    press_at(&mut hand, [0.25, 0.5]);
    press(&mut hand, "Finding: Rust on the shells: open");
    hand.give(Command::Undo);
    hand.settle();
    assert_eq!(marks(&hand, &board)[0].finding, None);
    hand.give(Command::Undo);
    hand.settle();
    assert_eq!(marks(&hand, &board), []);
    hand.give(Command::Redo);
    hand.give(Command::Redo);
    hand.settle();
    assert_eq!(marks(&hand, &board)[0].finding, Some(rust.id));
}

#[test]
fn two_patches_on_a_surface_give_share_and_grades_that_stand_on_the_sheet() {
    let (mut hand, board, rust) = looked_at();
    // 800 pixels are 80 mm.
    hand.give(Command::Look(Act::Take(Tool::Scale)));
    press_at(&mut hand, [0.1, 0.96]);
    press_at(&mut hand, [0.9, 0.96]);
    hand.fill("Length, mm", "80");
    press(&mut hand, "Keep the length");
    outline(&mut hand, Tool::Surface, &rectangle([0.1, 0.1], [0.9, 0.9]));
    // 80 × 40 mm, worked by hand.
    assert!(says(&hand, "3200 mm²"));
    press(&mut hand, "Say what it shows…");
    press(&mut hand, "Finding: Rust on the shells: open");
    outline(&mut hand, Tool::Damage, &rectangle([0.2, 0.2], [0.3, 0.4]));
    outline(&mut hand, Tool::Damage, &rectangle([0.6, 0.5], [0.7, 0.7]));
    key(&mut hand, Key::Escape);
    assert_eq!(marks(&hand, &board).len(), 4);
    // 2 × 10 × 10 mm of 80 × 40 mm are 6.25 %. ASTM D610-08, table 1: over 3 up to 10 % is grade 4; ISO 4628-3: over
    // the picture at 1 % and up to that at 8 % counts as Ri 4.
    assert!(says(&hand, "6.25 % damaged: ISO 4628-3 Ri 4, ASTM D610 grade 4"));
    press_at(&mut hand, [0.5, 0.1]);
    press(&mut hand, "Record this share on the finding");
    let looks = file(&hand, &board).finding(rust.id).unwrap().looks.clone();
    assert!((looks[1].share_percent.unwrap() - 6.25).abs() < 0.02, "{looks:?}");
    assert_eq!(looks[1].state, FindingState::Open);
    assert!(says(&hand, "This share is on record with the finding."));
    hand.give(Command::Go(Page::Part(board.id)));
    hand.window.run();
    assert!(says(&hand, "ISO 4628-3 Ri 4, ASTM D610 grade 4"));
}

#[test]
fn a_point_is_dragged_added_and_taken_away_each_as_one_change() {
    let (mut hand, board, _) = looked_at();
    outline(&mut hand, Tool::Surface, &rectangle([0.2, 0.2], [0.6, 0.6]));
    hold(&mut hand, [0.6, 0.6]);
    let halfway = at(&hand, [0.7, 0.65]);
    hand.window.hover_at(halfway);
    hand.window.step();
    assert_near(&marks(&hand, &board)[0].points, &rectangle([0.2, 0.2], [0.6, 0.6]));
    hand.window.hover_at(at(&hand, [0.8, 0.7]));
    hand.window.step();
    let_go(&mut hand, [0.8, 0.7]);
    let dragged = [[0.2, 0.2], [0.6, 0.2], [0.8, 0.7], [0.2, 0.6]];
    assert_near(&marks(&hand, &board)[0].points, &dragged);
    press(&mut hand, "Add a point after point 1");
    assert_near(&marks(&hand, &board)[0].points, &[dragged[0], [0.4, 0.2], dragged[1], dragged[2], dragged[3]]);
    press(&mut hand, "Take point 2 away");
    assert_near(&marks(&hand, &board)[0].points, &dragged);
    for _ in 0..3 {
        hand.give(Command::Undo);
        hand.settle();
    }
    assert_near(&marks(&hand, &board)[0].points, &rectangle([0.2, 0.2], [0.6, 0.6]));
}

#[test]
fn a_point_that_is_moved_by_keys_is_written_by_enter_and_given_up_by_escape() {
    let (mut hand, board, _) = looked_at();
    outline(&mut hand, Tool::Surface, &rectangle([0.2, 0.2], [0.6, 0.6]));
    for end in [Key::Escape, Key::Enter] {
        hand.window.get_by_label("Point 1 of mark 1").focus();
        hand.window.run();
        for _ in 0..5 {
            hand.window.key_press_modifiers(Modifiers::SHIFT, Key::ArrowLeft);
            hand.window.step();
        }
        hand.settle();
        assert_near(&marks(&hand, &board)[0].points[..1], &[[0.2, 0.2]]);
        key(&mut hand, end);
    }
    let moved = marks(&hand, &board)[0].points[0];
    assert!(moved[0] < 0.17 && (moved[1] - 0.2).abs() < 0.002, "{moved:?}");
    assert_eq!(hand.window.state().page(), Page::Photograph);
}

#[test]
fn an_outline_is_drawn_by_keys_alone() {
    let (mut hand, board, _) = looked_at();
    key(&mut hand, Key::U);
    let go = |hand: &mut Hand, key: Key| {
        for _ in 0..10 {
            hand.window.key_press_modifiers(Modifiers::SHIFT, key);
            hand.window.step();
        }
    };
    key(&mut hand, Key::Enter);
    go(&mut hand, Key::ArrowRight);
    key(&mut hand, Key::Enter);
    go(&mut hand, Key::ArrowDown);
    key(&mut hand, Key::Enter);
    assert_eq!(marks(&hand, &board), []);
    assert!(says(&hand, "Outline: 3 points set"));
    // The same place again closes it.
    key(&mut hand, Key::Enter);
    let [mark] = &marks(&hand, &board)[..] else { panic!("{:?}", marks(&hand, &board)) };
    let [first, second, third] = mark.points[..] else { panic!("{mark:?}") };
    assert_near(&[first], &[[0.5, 0.5]]);
    assert!(second[0] > first[0] + 0.05 && (second[1] - first[1]).abs() < 1e-4, "{mark:?}");
    assert!(third[1] > second[1] + 0.1 && (third[0] - second[0]).abs() < 1e-4, "{mark:?}");
    // What it shows is asked at once, and chosen by keys too.
    hand.window.key_press(Key::ArrowDown);
    hand.window.run();
    key(&mut hand, Key::Enter);
    assert!(marks(&hand, &board)[0].finding.is_some() || says(&hand, "What it shows"));
}

#[test]
fn escape_gives_up_what_is_half_drawn_then_the_tool_then_leaves() {
    let (mut hand, board, _) = looked_at();
    hand.give(Command::Look(Act::Take(Tool::Length)));
    press_at(&mut hand, [0.2, 0.2]);
    assert!(says(&hand, "Length: 1 point set"));
    key(&mut hand, Key::Escape);
    assert!(says(&hand, "Length: 0 points set"));
    key(&mut hand, Key::Escape);
    assert!(!says(&hand, "points set"));
    assert_eq!(hand.window.state().page(), Page::Photograph);
    key(&mut hand, Key::Escape);
    assert_eq!((hand.window.state().page(), marks(&hand, &board)), (Page::Part(board.id), Vec::new()));
}

#[test]
fn a_line_by_free_hand_becomes_an_outline_of_the_points_that_matter() {
    let (mut hand, board, _) = looked_at();
    hand.give(Command::Look(Act::Take(Tool::Damage)));
    let on_circle = |step: u32| {
        let (sine, cosine) = (step as f32 / 90.0 * std::f32::consts::TAU).sin_cos();
        [0.5 + 0.15 * cosine, 0.5 + 0.3 * sine]
    };
    hold(&mut hand, on_circle(0));
    for step in 1..90 {
        hand.window.hover_at(at(&hand, on_circle(step)));
        hand.window.step();
    }
    let_go(&mut hand, on_circle(89));
    let [mark] = &marks(&hand, &board)[..] else { panic!("{:?}", marks(&hand, &board)) };
    assert!((8..60).contains(&mark.points.len()), "{} points", mark.points.len());
    for [x, y] in &mark.points {
        let radius = ((x - 0.5) / 0.15).hypot((y - 0.5) / 0.3);
        assert!((0.97..1.03).contains(&radius), "{x} {y}");
    }
}

#[test]
fn capacitors_are_placed_on_the_map_one_by_one_and_stand_on_the_sheet() {
    let (mut hand, board, _) = looked_at();
    let mut change = Change::new("Log capacitors");
    for (name, state) in [("C1", CapacitorState::Bulged), ("C2", CapacitorState::Sound), ("C3", CapacitorState::Sound)]
    {
        change.put(records::capacitor(board.id, name, moment("2026-03-01"), state));
    }
    write(&mut hand, change);
    press(&mut hand, "Make it a map of the part");
    assert!(file(&hand, &board).photos[0].photo.is_map);
    key(&mut hand, Key::M);
    press(&mut hand, "Place 3 capacitors…");
    assert!(says(&hand, "Press where C1"));
    press_at(&mut hand, [0.2, 0.3]);
    assert!(says(&hand, "Press where C2"));
    press(&mut hand, "Leave this one out");
    press_at(&mut hand, [0.7, 0.6]);
    let ids: Vec<_> = file(&hand, &board).capacitors.iter().map(|one| one.position.id).collect();
    let placed = marks(&hand, &board);
    assert_eq!(placed.iter().map(|mark| mark.capacitor).collect::<Vec<_>>(), [Some(ids[0]), Some(ids[2])]);
    assert_near(&placed[0].points, &[[0.2, 0.3]]);
    // The whole sheet at once: what speaks against power stands above the map.
    hand.window.set_size(egui::vec2(1280.0, 3000.0));
    hand.give(Command::Go(Page::Part(board.id)));
    hand.window.run();
    // Each mark says what it is and how it is; a press on it opens its line.
    assert!(says(&hand, "On the map, Mark 2: C3"));
    let bulged = hand.window.get_by_label_contains("On the map, Mark 1: C1").accesskit_node().label().unwrap();
    assert!(bulged.ends_with(": bulged"), "{bulged}");
    hand.window.get_by_label_contains("On the map, Mark 1: C1").click_accesskit();
    hand.window.run();
    assert!(says(&hand, "1 position is chosen"));
    hand.window.get_by_label("No longer a map: Overview, front").click_accesskit();
    hand.window.step();
    hand.settle();
    assert!(!file(&hand, &board).photos[0].photo.is_map);
}

/// A photograph of a yellowed bezel at the left and grey card at the right.
fn bezel() -> (Hand, Part, Photo) {
    let board = part("0042", Kind::Case, "Veltrane case");
    let mut change = Change::new("Log a case");
    change.put(board.clone());
    let mut hand = Hand::on(change, [1280.0, 800.0]);
    let mut bytes = std::io::Cursor::new(Vec::new());
    let [width, height] = SIZE_PX;
    let colour = |x, _| if x < width / 2 { image::Rgb([225, 205, 160]) } else { image::Rgb([128, 128, 128]) };
    image::RgbImage::from_fn(width, height, colour).write_to(&mut bytes, image::ImageFormat::Png).unwrap();
    let store = std::sync::Arc::clone(hand.window.state().session().unwrap().store());
    let kept = store.keep_photo(FileSource::Bytes(bytes.get_ref()), "png").unwrap();
    let photo = Photo { id: Store::new_id(), ..photo_of(&board, &kept, SIZE_PX) };
    let mut change = Change::new("Photograph");
    change.put(photo.clone());
    write(&mut hand, change);
    hand.give(Command::LookAt(photo.id, [photo.id].into()));
    (hand, board, photo)
}

#[test]
fn a_colour_is_taken_off_the_picture_and_says_when_the_neutral_patch_is_missing() {
    let (mut hand, board, _) = bezel();
    outline(&mut hand, Tool::Sample, &rectangle([0.1, 0.3], [0.3, 0.7]));
    let count = |hand: &Hand| marks(hand, &board).len();
    hand.wait("the colour", |app| !app.session().unwrap().logbook.part(board.id).unwrap().photos[0].marks.is_empty());
    hand.window.run();
    let sample = &marks(&hand, &board)[0];
    let colour = sample.colour().unwrap().map(|channel| (channel * 255.0).round());
    assert_eq!((colour, sample.clipped_percent), ([225.0, 205.0, 160.0], Some(0.0)));
    assert!(says(&hand, "Yellowness "));
    assert!(says(&hand, "No neutral patch is marked in the picture"));
    outline(&mut hand, Tool::Reference, &rectangle([0.6, 0.3], [0.8, 0.7]));
    hand.wait("the second colour", |app| {
        app.session().unwrap().logbook.part(board.id).unwrap().photos[0].marks.len() == 2
    });
    hand.window.run();
    assert_eq!(count(&hand), 2);
    assert!(!says(&hand, "No neutral patch is marked in the picture"));
    // One act, one undo: mark and colour came together.
    hand.give(Command::Undo);
    hand.settle();
    assert_eq!(count(&hand), 1);
}

#[test]
fn a_patch_on_a_picture_that_is_gone_is_kept_and_says_why_it_has_no_colour() {
    let (mut hand, board, photo) = bezel();
    let path = hand.window.state().session().unwrap().store().photo_path(&photo);
    std::fs::remove_file(path).unwrap();
    outline(&mut hand, Tool::Sample, &rectangle([0.1, 0.3], [0.3, 0.7]));
    hand.wait("the mark", |app| !app.session().unwrap().logbook.part(board.id).unwrap().photos[0].marks.is_empty());
    hand.window.run();
    assert_eq!(marks(&hand, &board)[0].colour(), None);
    assert!(says(&hand, "The colour could not be taken."));
    assert!(says(&hand, "Its colour was not taken off the picture yet"));
}
