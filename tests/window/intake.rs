//! Intake, driven as by a hand: by keyboard through the fast lane, and the whole round.

use std::sync::Arc;

use benchwright::record::{
    CapacitorState, Change, Design, Given, Hold, Kind, Lot, Originality, PartFile, PhotoView, Severity, Side, When,
};
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::accesskit::Role;
use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, part, place};
use crate::records;

const SIZE: [f32; 2] = [1280.0, 800.0];

fn key(hand: &mut Hand, key: Key) {
    hand.window.key_press(key);
    hand.window.run();
}

fn type_text(hand: &mut Hand, text: &str) {
    hand.window.event(egui::Event::Text(text.to_owned()));
    hand.window.run();
}

/// Gives the command to log, and waits until the part is in the logbook.
fn log(hand: &mut Hand, tag: &str) {
    hand.window.key_press_modifiers(Modifiers::COMMAND, Key::Enter);
    hand.wait(tag, |app| app.session().is_some_and(|session| session.logbook.part_tagged(tag).is_some()));
    hand.settle();
}

fn file(hand: &Hand, tag: &str) -> PartFile {
    let session = hand.window.state().session().unwrap();
    (**session.logbook.part_tagged(tag).unwrap()).clone()
}

fn step(hand: &mut Hand, name: &str) {
    let found = hand
        .window
        .get_all_by_role(Role::Tab)
        .find(|tab| tab.accesskit_node().label().is_some_and(|label| label.starts_with(&format!("Step {name}"))));
    found.unwrap_or_else(|| panic!("no step {name}")).click();
    hand.window.run();
}

fn says(hand: &Hand, text: &str) -> bool {
    hand.window.query_all_by_label_contains(text).next().is_some()
}

fn value(hand: &Hand, field: &str) -> String {
    let field = hand.window.get_by_role_and_label(Role::TextInput, field);
    field.accesskit_node().value().unwrap_or_default()
}

fn on_intake(change: Change) -> Hand {
    let mut hand = Hand::on(change, SIZE);
    if hand.window.state().page() != Page::Intake {
        hand.window.key_press_modifiers(Modifiers::COMMAND, Key::N);
        hand.window.run();
    }
    hand
}

fn picture(hand: &Hand, name: &str) -> std::path::PathBuf {
    let path = hand.folder.path().join(name);
    image::RgbImage::from_pixel(40, 30, image::Rgb([90, 120, 60])).save(&path).unwrap();
    path
}

#[test]
fn parts_go_in_one_after_the_other_by_keyboard_alone() {
    let mut hand = on_intake(Change::new("nothing"));
    assert_eq!(value(&hand, "Tag"), "0001");
    // The tag has the keys and is marked: a scan replaces it, and its Enter goes on to the kind.
    type_text(&mut hand, "0041");
    key(&mut hand, Key::Enter);
    type_text(&mut hand, "mai");
    log(&mut hand, "0041");
    assert_eq!(file(&hand, "0041").part.kind, Kind::Mainboard);
    // The next tag is offered, the kind is kept: nothing but the command is needed.
    assert_eq!((value(&hand, "Tag"), value(&hand, "Kind")), ("0042".to_owned(), "Mainboard".to_owned()));
    log(&mut hand, "0042");
    key(&mut hand, Key::Enter);
    type_text(&mut hand, "sou");
    log(&mut hand, "0043");
    let kinds: Vec<Kind> = ["0042", "0043"].map(|tag| file(&hand, tag).part.kind).into();
    assert_eq!(kinds, [Kind::Mainboard, Kind::SoundCard]);
    // Each is one act that can be taken back.
    let session = hand.window.state().session().unwrap();
    assert_eq!(session.undo_name().as_deref(), Some("Log part 0043"));
}

#[test]
fn a_tag_that_is_taken_is_refused_as_it_is_typed() {
    let mut change = Change::new("Start");
    change.put(part("0007", Kind::Modem, "Quayside M2"));
    let mut hand = on_intake(change);
    assert_eq!(value(&hand, "Tag"), "0008");
    type_text(&mut hand, "0007");
    assert!(says(&hand, "Tag 0007 is on another part already: Quayside M2"));
    key(&mut hand, Key::Enter);
    type_text(&mut hand, "mod");
    hand.window.key_press_modifiers(Modifiers::COMMAND, Key::Enter);
    hand.settle();
    assert_eq!(hand.window.state().session().unwrap().logbook.parts.len(), 1);
    assert_eq!((value(&hand, "Tag"), value(&hand, "Kind")), ("0007".to_owned(), "mod".to_owned()));
}

#[test]
fn a_part_without_a_kind_is_not_logged() {
    let mut hand = on_intake(Change::new("nothing"));
    key(&mut hand, Key::Enter);
    type_text(&mut hand, "zz");
    assert!(says(&hand, "No kind is called “zz”."));
    hand.window.key_press_modifiers(Modifiers::COMMAND, Key::Enter);
    hand.settle();
    assert!(hand.window.state().session().unwrap().logbook.parts.is_empty());
}

#[test]
fn the_whole_round_is_written_as_one_act() {
    let mut change = Change::new("Start");
    let cellar = place("Cellar", None);
    change.put(place("Shelf 2", Some(cellar.id))).put(cellar);
    let mut hand = on_intake(change);
    type_text(&mut hand, "0042");
    key(&mut hand, Key::Enter);
    type_text(&mut hand, "mainb");

    step(&mut hand, "What it is");
    hand.fill("Maker", "Harrow");
    hand.fill("Model", "Meridian 5");
    hand.fill("First sold", "1995");
    hand.fill("Last made", "1997-06");
    hand.fill("Connectors it offers", "16-bit isa");
    hand.window.key_press(Key::Enter);
    hand.window.run();
    hand.fill("Serial number", "HM5-000123");

    step(&mut hand, "Where from");
    hand.fill("What you call it", "Attic clearance");
    hand.fill("From whom or where", "Estate of a teacher");
    hand.fill("When it came", "2026-02");
    hand.fill("Price of the lot (EUR)", "40,50");
    hand.fill("Place", "cellar / shelf 2 / Box 4");
    assert!(says(&hand, "Will be made: Box 4"));

    step(&mut hand, "Markings");
    hand.fill("Marking 1 as printed", "2396");
    assert!(says(&hand, "week and year (WWYY)"), "a code on a board reads as week and year first");
    hand.press("Another marking");
    hand.fill("Marking 2 as printed", "9621");
    assert!(says(&hand, "1996"));

    step(&mut hand, "Survey");
    assert!(says(&hand, "0 of"));
    hand.press("What feeds the clock and settings? Not looked at");
    hand.press("What feeds the clock and settings? Leaking cell");
    // The margin tells at once what comes first, and until when.
    assert!(says(&hand, "Storage"));
    hand.fill("Where on the part", "beside the keyboard port");

    step(&mut hand, "Capacitors");
    hand.fill("Capacitors in plain words", "six of 1000 µF 6.3 V 8 mm near the processor, sound");
    assert!(says(&hand, "Understood: 6 positions, 1000 µF, 6.3 V, Ø 8 mm, near the processor: sound"));
    hand.window.key_press(Key::Enter);
    hand.window.run();
    // A line that is understood goes in even when Enter was not pressed.
    hand.fill("Capacitors in plain words", "C20–C21 470 µF 16 V bulged");

    let good = picture(&hand, "board.png");
    step(&mut hand, "Photographs");
    hand.fill("Path of a photograph", &good.display().to_string());
    log(&mut hand, "0042");

    let session = hand.window.state().session().unwrap();
    assert_eq!(session.undo_name().as_deref(), Some("Log part 0042"));
    let logbook = &session.logbook;
    let file = file(&hand, "0042");
    let design = logbook.design_of(&file).unwrap();
    assert_eq!(design.design.title(), "Harrow Meridian 5");
    assert_eq!((design.design.introduced, design.design.kind), (When::Year(1995), Kind::Mainboard));
    assert_eq!(design.connectors.len(), 1);
    assert_eq!((design.connectors[0].side, design.connectors[0].connector.as_str()), (Side::Offers, "isa-16"));
    assert_eq!(file.part.serial, "HM5-000123");
    let lot = &logbook.lot(file.part.lot.unwrap()).unwrap().lot;
    assert_eq!(
        (lot.name.as_str(), lot.price_cents, lot.acquired.to_string().as_str()),
        ("Attic clearance", Some(4050), "2026-02")
    );
    // Only the box was made: cellar and shelf were there.
    assert_eq!(logbook.place_path(file.part.place.unwrap()), "Cellar / Shelf 2 / Box 4");
    assert_eq!(logbook.places.len(), 3);
    let texts: Vec<&str> = file.markings.iter().map(|marking| marking.text.as_str()).collect();
    assert_eq!(texts, ["2396", "9621"]);
    let survey = &file.surveys[0];
    assert_eq!(survey.looked.on.to_string(), "2026-03-14");
    assert_eq!(survey.answer("clock-supply").unwrap().given, Given::Is("leaking".into()));
    let others = survey.answers.iter().filter(|answer| answer.question != "clock-supply");
    assert!(others.clone().count() > 0 && others.clone().all(|answer| answer.given == Given::NotLooked));
    let leaked = file.findings.iter().find(|known| known.finding.what == "cell-leaked").unwrap();
    assert_eq!(leaked.severity(), Severity::Grave);
    assert_eq!(leaked.finding.place_on_part, "beside the keyboard port");
    assert_eq!(file.capacitors.len(), 8);
    let bulged = file.capacitors.iter().filter(|position| position.state() == CapacitorState::Bulged);
    assert_eq!(bulged.map(|position| position.position.designator.as_str()).collect::<Vec<_>>(), ["C20", "C21"]);
    assert!(file.findings.iter().any(|known| known.finding.what == "capacitors-bulged"));
    let photo = &file.photos[0].photo;
    assert_eq!((photo.width_px, photo.height_px, photo.view), (40, 30, PhotoView::Overview));
    assert!(session.store().photo_path(photo).exists());

    // What was shown beside the answers is what the logbook now asks for: the strictest hold is storage.
    let answers = session.answers.part(file.part.id).unwrap();
    assert_eq!(answers.hold, Some(Hold::Storage));
    // The lot is chosen for the next part of the same box, and so is the place.
    step(&mut hand, "Where from");
    assert!(says(&hand, "Attic clearance"));
    assert_eq!(value(&hand, "Place"), "cellar / shelf 2 / Box 4");
}

#[test]
fn what_it_sits_in_why_it_is_kept_apart_and_how_it_was_set_go_in_with_it() {
    let mut change = Change::new("Start");
    change.put(part("0007", Kind::Mainboard, "Quayside board"));
    let mut hand = on_intake(change);
    key(&mut hand, Key::Enter);
    type_text(&mut hand, "firmw");
    step(&mut hand, "Where from");
    hand.press("It sits inside another part…");
    hand.fill("The part that it sits in", "quay");
    key(&mut hand, Key::Enter);
    assert!(says(&hand, "It sits in 0007  Quayside board"));
    hand.press("Keep it apart: it leaks, smells or crawls…");
    hand.fill("Kept apart because", "smells of smoke");
    step(&mut hand, "Markings");
    hand.press("Note as found: Firmware version");
    hand.window.key_press_modifiers(Modifiers::COMMAND, Key::Enter);
    hand.window.run();
    assert!(says(&hand, "Say how Firmware version was found."));
    hand.fill("Found as", "4.51");
    log(&mut hand, "0008");
    let logged = file(&hand, "0008");
    let outer = file(&hand, "0007").part.id;
    assert_eq!((logged.part.inside, logged.part.quarantine.as_str()), (Some(outer), "smells of smoke"));
    assert_eq!(logged.part.quarantined.to_string(), "2026-03-14");
    assert_eq!((logged.settings[0].name.as_str(), logged.settings[0].value.as_str()), ("Firmware version", "4.51"));
}

#[test]
fn number_keys_and_arrows_answer_the_survey() {
    let mut hand = on_intake(Change::new("nothing"));
    key(&mut hand, Key::Enter);
    type_text(&mut hand, "mainb");
    hand.window.key_press(Key::PageDown);
    hand.window.run();
    for _ in 0..3 {
        key(&mut hand, Key::PageDown);
    }
    // The first question: what is known of its running. 3 is "Never tried", which finds nothing and goes on.
    key(&mut hand, Key::Num3);
    assert!(says(&hand, "1 of"));
    // The second: left of "Not looked at" stands "Does not apply".
    key(&mut hand, Key::ArrowLeft);
    key(&mut hand, Key::ArrowDown);
    key(&mut hand, Key::C);
    // What does not apply wants a reason before it is kept.
    hand.window.key_press_modifiers(Modifiers::COMMAND, Key::Enter);
    hand.window.run();
    assert!(says(&hand, "“What feeds the clock and settings?”: say why it does not apply."));
    hand.press("What feeds the clock and settings? Does not apply");
    hand.fill("Why it does not apply", "A clock card does it");
    log(&mut hand, "0001");
    assert_eq!(file(&hand, "0001").surveys[0].answer("clock-supply").unwrap().note, "A clock card does it");
    let given: Vec<Given> = file(&hand, "0001").surveys[0].answers[..4].iter().map(|row| row.given.clone()).collect();
    let expected = [Given::Is("untested".into()), Given::DoesNotApply, Given::CouldNotTell, Given::NotLooked];
    assert_eq!(given, expected);
}

#[test]
fn what_a_kind_always_has_cannot_fail_to_apply() {
    let mut hand = on_intake(Change::new("nothing"));
    key(&mut hand, Key::Enter);
    type_text(&mut hand, "mainb");
    hand.window.key_press(Key::PageDown);
    hand.window.run();
    step(&mut hand, "Survey");
    let ask = "Each rail to ground, unpowered?";
    hand.press(&format!("{ask} Not looked at"));
    let offers = |hand: &Hand, answer: &str| hand.window.query_by_label(&format!("{ask} {answer}")).is_some();
    assert!(offers(&hand, "Could not tell") && !offers(&hand, "Does not apply"));
    key(&mut hand, Key::X);
    log(&mut hand, "0001");
    assert!(file(&hand, "0001").surveys.is_empty(), "nothing was answered");
}

#[test]
fn a_known_design_and_lot_are_chosen_by_a_few_letters() {
    let mut change = Change::new("Start");
    let lot =
        Lot { acquired: When::Year(2025), source: "a table by the door".to_owned(), ..records::lot("Harbour fair") };
    let design = Design {
        introduced: When::Year(1993),
        discontinued: When::Year(1995),
        ..records::design(Kind::SoundCard, "Larkspur", "Chord 16")
    };
    let (lot_id, design_id) = (lot.id, design.id);
    change.put(lot).put(design);
    let mut hand = on_intake(change);
    step(&mut hand, "What it is");
    hand.fill("A design that you have already", "cho");
    hand.window.key_press(Key::Enter);
    hand.window.run();
    step(&mut hand, "Where from");
    hand.press("Harbour fair");
    log(&mut hand, "0001");
    let logged = file(&hand, "0001").part;
    assert_eq!((logged.kind, logged.design, logged.lot), (Kind::SoundCard, Some(design_id), Some(lot_id)));
    assert_eq!(logged.originality, Originality::Unstated);
}

#[test]
fn a_design_learns_the_positions_of_each_example_that_is_logged() {
    let design = records::design(Kind::SoundCard, "Larkspur", "Chord 16");
    let id = design.id;
    let mut change = Change::new("Start");
    change.put(design);
    let mut hand = on_intake(change);
    let known = |hand: &Hand| -> Vec<String> {
        let design = Arc::clone(hand.window.state().session().unwrap().logbook.design(id).unwrap());
        design.capacitors.iter().map(|one| one.designator.clone()).collect()
    };
    for (tag, typed, all) in [
        ("0001", "C1–C2 10 µF 25 V, bulged", vec!["C1", "C2"]),
        ("0002", "C2–C3 10 µF 25 V, sound", vec!["C1", "C2", "C3"]),
    ] {
        step(&mut hand, "What it is");
        hand.fill("A design that you have already", "cho");
        hand.window.key_press(Key::Enter);
        hand.window.run();
        step(&mut hand, "Capacitors");
        hand.fill("Capacitors in plain words", typed);
        hand.window.key_press(Key::Enter);
        hand.window.run();
        log(&mut hand, tag);
        assert_eq!(known(&hand), all, "what is named twice is kept once");
        hand.give(Command::Go(Page::Intake));
    }
}

#[test]
fn an_unreadable_photograph_costs_nothing_that_was_typed() {
    let mut hand = on_intake(Change::new("nothing"));
    key(&mut hand, Key::Enter);
    type_text(&mut hand, "vid");
    let good = picture(&hand, "card.png");
    hand.fill("Path of a photograph", &good.display().to_string());
    hand.window.key_press(Key::Enter);
    hand.window.run();
    let bad = hand.folder.path().join("notes.jpg");
    std::fs::write(&bad, "no picture").unwrap();
    hand.fill("Path of a photograph", &bad.display().to_string());
    hand.window.key_press_modifiers(Modifiers::COMMAND, Key::Enter);
    for _ in 0..200 {
        hand.window.step();
        if says(&hand, "Not logged yet") {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(10));
    }
    hand.settle();
    assert!(says(&hand, "Not logged yet: “notes.jpg” is no picture"));
    assert!(hand.window.state().session().unwrap().logbook.parts.is_empty());
    // Once told, it is left out; the other goes in.
    log(&mut hand, "0001");
    assert!(says(&hand, "Left out: “notes.jpg” is no picture"));
    let file = file(&hand, "0001");
    assert_eq!((file.part.kind, file.photos.len()), (Kind::VideoCard, 1));
}

#[test]
fn what_is_half_typed_survives_and_is_offered_again() {
    let mut hand = on_intake(Change::new("nothing"));
    type_text(&mut hand, "0042");
    key(&mut hand, Key::Enter);
    type_text(&mut hand, "mainb");
    step(&mut hand, "Capacitors");
    hand.fill("Capacitors in plain words", "six of 1000 µF lea");
    // The lights go out: nothing is closed in order.
    let mut hand = hand.again(SIZE);
    hand.window.key_press_modifiers(Modifiers::COMMAND, Key::N);
    hand.window.run();
    assert!(says(&hand, "You were logging 0042, a mainboard."));
    hand.press("Go on with it");
    assert_eq!(value(&hand, "Capacitors in plain words"), "six of 1000 µF lea");
    hand.fill("Capacitors in plain words", "king");
    assert_eq!(value(&hand, "Capacitors in plain words"), "six of 1000 µF leaking");
    log(&mut hand, "0042");
    assert!(file(&hand, "0042").capacitors.iter().all(|position| position.state() == CapacitorState::Leaking));
    // Logged, it is no longer offered.
    let hand = hand.again(SIZE);
    assert!(!says(&hand, "You were logging"));
    assert_eq!(hand.window.state().session().unwrap().store().draft("intake"), None);
}

#[test]
fn a_draft_that_is_put_away_is_gone() {
    let mut hand = on_intake(Change::new("nothing"));
    key(&mut hand, Key::Enter);
    type_text(&mut hand, "rise");
    let mut hand = hand.again(SIZE);
    hand.press("Put it away");
    hand.settle();
    assert_eq!(value(&hand, "Tag"), "0001");
    assert_eq!(hand.window.state().session().unwrap().store().draft("intake"), None);
}

#[test]
fn one_undo_takes_all_of_it_back() {
    let mut hand = on_intake(Change::new("nothing"));
    key(&mut hand, Key::Enter);
    type_text(&mut hand, "mainb");
    step(&mut hand, "Where from");
    hand.fill("What you call it", "Attic clearance");
    hand.fill("Place", "Cellar / Box 4");
    step(&mut hand, "Capacitors");
    hand.fill("Capacitors in plain words", "two 10 µF burst");
    log(&mut hand, "0001");
    hand.press("Undo: Log part 0001");
    hand.settle();
    let logbook = &hand.window.state().session().unwrap().logbook;
    assert!(logbook.parts.is_empty() && logbook.places.is_empty() && logbook.lots.is_empty());
    // The lot that is chosen for the next part is gone: the next part is logged without it.
    log(&mut hand, "0002");
    assert_eq!(file(&hand, "0002").part.lot, None);
}

#[test]
fn the_desk_can_be_used_in_a_narrow_window() {
    // 1280 by 800 at 200 %.
    let mut hand = Hand::on(Change::new("nothing"), [640.0, 400.0]);
    key(&mut hand, Key::Enter);
    type_text(&mut hand, "mainb");
    for name in ["What it is", "Where from", "Markings", "Survey", "Capacitors", "Photographs"] {
        step(&mut hand, name);
        let width = hand.window.get_by_label_contains("Log part 0001").rect().right();
        assert!(width <= 640.0, "{name}: the desk is wider than the window");
        let shown: Vec<egui::Rect> = [Role::Button, Role::TextInput, Role::ComboBox, Role::Tab]
            .iter()
            .flat_map(|role| hand.window.query_all_by_role(*role))
            .map(|node| node.rect().shrink(1.0))
            // What is scrolled out of sight keeps its place behind the status line.
            .filter(|rect| rect.bottom() < 400.0 - 32.0)
            .collect();
        for (at, rect) in shown.iter().enumerate() {
            let under = shown[at + 1..].iter().find(|other| rect.intersect(**other).is_positive());
            assert_eq!(under, None, "{name}: {rect:?} lies over another");
        }
        let fields = hand.window.query_all_by_role(Role::TextInput);
        for field in fields {
            assert!(
                field.rect().right() <= 640.0,
                "{name}: {:?} reaches {}",
                field.accesskit_node().label(),
                field.rect().right()
            );
        }
    }
    log(&mut hand, "0001");
    assert_eq!(file(&hand, "0001").part.kind, Kind::Mainboard);
}
