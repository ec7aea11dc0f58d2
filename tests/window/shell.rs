//! The window around the desks: first steps, shortcuts, text size, notices, idling.

use benchwright::record::{Change, Kind};
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::accesskit::Role;
use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable;

use crate::hand::{Hand, part};

const SIZE: [f32; 2] = [1280.0, 800.0];

fn with_parts() -> Change {
    let mut change = Change::new("Log two parts");
    change.put(part("0042", Kind::Mainboard, "Veltrane board"));
    change.put(part("0043", Kind::SoundCard, "Orrin card"));
    change
}

#[test]
fn a_new_logbook_is_started_from_a_typed_path_and_opened_again_the_next_time() {
    let mut hand = Hand::empty(SIZE);
    let path = hand.folder.path().join("first.logbook");
    hand.fill("Folder to be made for it", path.to_str().unwrap());
    hand.press("Start");
    hand.wait("the new logbook", |app| app.session().is_some());
    hand.window.run();
    assert_eq!(hand.window.state().page(), Page::Intake, "an empty logbook begins with logging");
    hand.window.get_by_label("first");
    assert!(path.join("logbook.sqlite").is_file());
    assert_eq!(hand.window.state().settings().recent, [path]);
}

#[test]
fn a_path_without_a_logbook_is_told_and_the_notice_can_be_put_away() {
    let mut hand = Hand::empty(SIZE);
    let nowhere = hand.folder.path().join("nowhere");
    hand.fill("Folder of the logbook", nowhere.to_str().unwrap());
    hand.press("Open");
    let nowhere = nowhere.to_str().unwrap().to_owned();
    for _ in 0..200 {
        hand.window.step();
        if hand.window.query_by_label("Put the notice away").is_some() {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(5));
    }
    hand.window.get_by_label_contains(&nowhere);
    hand.press("Put the notice away");
    assert!(hand.window.query_by_label("Put the notice away").is_none());
}

#[test]
fn shortcuts_lead_to_the_desks_and_back() {
    let mut hand = Hand::on(with_parts(), SIZE);
    assert_eq!(hand.window.state().page(), Page::Shelf);
    for (command, page) in [
        (Command::Go(Page::Bench), Page::Bench),
        (Command::Go(Page::Machines), Page::Machines),
        (Command::Go(Page::Intake), Page::Intake),
        (Command::GoBack, Page::Machines),
        (Command::SearchShelf, Page::Shelf),
    ] {
        hand.keys(&command);
        assert_eq!(hand.window.state().page(), page, "{command:?}");
    }
    assert!(hand.window.get_by_role_and_label(Role::TextInput, "Words, tag or marking").is_focused());
}

#[test]
fn no_two_commands_share_their_keys_or_their_name() {
    for (index, command) in Command::LISTED.iter().enumerate() {
        for other in &Command::LISTED[index + 1..] {
            assert_ne!(command.label(), other.label());
            // A photograph in view and the question what work touched are never before the hand together.
            let never_meet = matches!((command, other), (Command::Touch(_), Command::Look(_)));
            if let Some(keys) = command.shortcut().filter(|_| !never_meet) {
                assert_ne!(Some(keys), other.shortcut(), "{command:?} and {other:?}");
            }
        }
    }
}

#[test]
fn undo_and_redo_tell_what_they_would_do_and_do_it() {
    let mut hand = Hand::on(with_parts(), SIZE);
    hand.press("Undo: Log two parts");
    hand.settle();
    assert!(hand.window.state().session().unwrap().logbook.parts.is_empty());
    hand.window.key_press_modifiers(Modifiers::COMMAND | Modifiers::SHIFT, Key::Z);
    hand.window.run();
    hand.settle();
    assert_eq!(hand.window.state().session().unwrap().logbook.parts.len(), 2);
}

#[test]
fn text_grows_in_steps_to_twice_its_size_and_no_further() {
    let mut hand = Hand::empty([1280.0, 800.0]);
    let mut seen = Vec::new();
    for _ in 0..8 {
        hand.window.key_press_modifiers(Modifiers::COMMAND, Key::Plus);
        hand.window.run();
        seen.push(hand.window.state().settings().text_percent);
    }
    assert_eq!(seen, [115, 130, 150, 175, 200, 200, 200, 200]);
    assert!((hand.window.ctx.zoom_factor() - 2.0).abs() < 0.001);
}

#[test]
fn an_idle_window_stops_asking_to_be_drawn() {
    let mut hand = Hand::on(with_parts(), SIZE);
    for page in [Page::Welcome, Page::Intake, Page::Shelf, Page::Bench, Page::Machines] {
        hand.window.get_by_role_and_label(Role::Tab, page.label()).click();
        // With a field focused too: a blinking cursor would go on asking.
        hand.window.run();
        if let Some(field) = hand.window.query_all_by_role(Role::TextInput).next() {
            field.focus();
        }
        hand.window.run();
        hand.window.step();
        let delay = hand.window.output().viewport_output.values().map(|viewport| viewport.repaint_delay).min().unwrap();
        assert!(delay > std::time::Duration::from_mins(1), "{page:?} asks again after {delay:?}");
    }
}
