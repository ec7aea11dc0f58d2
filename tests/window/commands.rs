//! Every command that has keys does its work by them where it applies, and nothing where it does not.

use std::sync::Arc;

use benchwright::record::{Change, Kind, PhotoView};
use benchwright::store::Store;
use benchwright::window::command::{Command, Situation};
use benchwright::window::outbox::Ask;
use benchwright::window::page::Page;
use benchwright::window::viewer::{Act, Tool};
use egui::accesskit::Role;
use egui::{Event, ViewportCommand};
use egui_kittest::kittest::Queryable;

use crate::desktop::Told;
use crate::hand::{Hand, part};
use crate::records;
use crate::viewer;

const SIZE: [f32; 2] = [1280.0, 800.0];

fn with_keys() -> impl Iterator<Item = Command> {
    Command::LISTED.into_iter().chain([Command::Quit]).filter(|command| command.shortcut().is_some())
}

fn has_focus(hand: &Hand, field: &str) -> bool {
    hand.window.query_by_role_and_label(Role::TextInput, field).is_some_and(|field| field.is_focused())
}

fn closes(hand: &Hand) -> bool {
    hand.window.output().viewport_output.values().any(|viewport| viewport.commands.contains(&ViewportCommand::Close))
}

/// In one frame, since what a frame asks of the window is gone with it.
fn press_in_one_frame(hand: &mut Hand, command: &Command) {
    let keys = command.shortcut().unwrap();
    hand.window.input_mut().events.push(Event::Key {
        key: keys.logical_key,
        physical_key: None,
        pressed: true,
        repeat: false,
        modifiers: keys.modifiers,
    });
    hand.window.step();
}

fn parts(hand: &Hand) -> usize {
    hand.window.state().session().map_or(0, |session| session.logbook.parts.len())
}

#[test]
fn every_command_with_keys_is_carried_out_by_them() {
    for command in with_keys() {
        let told = Arc::new(Told::default());
        let mut change = Change::new("Log a board");
        change.put(part("0042", Kind::Mainboard, "Veltrane board"));
        let mut hand = Hand::on_desktop(change, SIZE, told.clone());
        hand.give(Command::Go(Page::Bench));
        hand.give(Command::Go(Page::Machines));
        let keys = |hand: &mut Hand| hand.keys(&command);
        match command {
            Command::Go(page) => {
                // The desk that the window stands on is gone to from another.
                hand.give(if page == Page::Machines { Command::Go(Page::Bench) } else { Command::Go(Page::Machines) });
                keys(&mut hand);
                assert_eq!(hand.window.state().page(), page);
            }
            Command::GoBack => {
                keys(&mut hand);
                assert_eq!(hand.window.state().page(), Page::Bench);
            }
            Command::Find => {
                keys(&mut hand);
                assert!(has_focus(&hand, "Find a command, a part or a machine"));
            }
            Command::SearchShelf => {
                keys(&mut hand);
                assert_eq!(hand.window.state().page(), Page::Shelf);
                assert!(has_focus(&hand, "Words, tag or marking"));
            }
            Command::SearchPhotographs => {
                keys(&mut hand);
                assert_eq!(hand.window.state().page(), Page::Shelf);
                assert!(has_focus(&hand, "Words, tag or caption"));
            }
            Command::OpenLogbook => {
                let other = hand.folder.path().join("other.logbook");
                drop(Store::create(&other, records::workshop("The other shed")).unwrap());
                told.files.lock().unwrap().push(other.clone());
                keys(&mut hand);
                hand.wait("the other logbook", |app| app.session().is_some_and(|session| session.folder == other));
                assert_eq!(*told.asked.lock().unwrap(), [Ask::Logbook]);
            }
            Command::Paste => {
                // The window system then gives what is in its clipboard.
                let asked = |hand: &Hand| {
                    let viewports = hand.window.output().viewport_output.values();
                    viewports
                        .flat_map(|viewport| &viewport.commands)
                        .any(|asked| *asked == ViewportCommand::RequestPaste)
                };
                press_in_one_frame(&mut hand, &command);
                assert!(asked(&hand));
            }
            Command::Undo => {
                keys(&mut hand);
                hand.settle();
                assert_eq!(parts(&hand), 0);
            }
            Command::Redo => {
                hand.give(Command::Undo);
                hand.settle();
                assert_eq!(parts(&hand), 0);
                keys(&mut hand);
                hand.settle();
                assert_eq!(parts(&hand), 1);
            }
            Command::LargerText => {
                keys(&mut hand);
                assert!(hand.window.state().settings().text_percent > 100);
            }
            Command::SmallerText => {
                hand.give(Command::LargerText);
                keys(&mut hand);
                assert_eq!(hand.window.state().settings().text_percent, 100);
            }
            Command::Quit => {
                assert!(!closes(&hand));
                press_in_one_frame(&mut hand, &command);
                assert!(closes(&hand));
            }
            // Shown below, over a photograph; in `placement` and `placement_tried`, on the Placement desk; and in
            // `touched`, of own work.
            Command::Look(_) | Command::Place(_) | Command::Touch(_) => {}
            other => panic!("{other:?} has keys, but nothing here shows what they do"),
        }
    }
}

#[test]
fn every_act_over_a_photograph_is_given_by_its_keys() {
    for act in Act::ALL {
        let board = part("0042", Kind::Mainboard, "Veltrane board");
        let (mut hand, photos) = viewer::sheet(&board, &[([2000, 1000], PhotoView::Overview, ""); 3]);
        let among: Vec<_> = photos.iter().map(|photo| photo.id).collect();
        hand.give(Command::LookAt(photos[1].id, among.into()));
        hand.give(Command::Look(if act == Act::PixelForPixel { Act::Fit } else { Act::PixelForPixel }));
        if act == Act::Take(Tool::Hand) {
            hand.give(Command::Look(Act::Take(Tool::Pin)));
        }
        hand.keys(&Command::Look(act));
        let look = hand.window.state().desks().viewer.look();
        let zoom = look.zoom.unwrap_or(0.0);
        let shows = |words: &str| hand.window.query_by_label(words).is_some();
        let is_done = match act {
            Act::Nearer => zoom > 1.0,
            Act::Farther => 0.0 < zoom && zoom < 1.0,
            Act::Fit => look.zoom.is_none(),
            Act::PixelForPixel => look.zoom == Some(1.0),
            Act::TurnRight => look.quarter_turns == 1,
            Act::TurnLeft => look.quarter_turns == 3,
            Act::Next => shows("3 of 3"),
            Act::Previous => shows("1 of 3"),
            Act::Compare => hand.window.query_by_label_contains("Compared with Overview: zoom").is_some(),
            Act::BesideOrOver => hand.window.query_by_role(Role::Slider).is_some(),
            Act::Marks => shows("Nothing is marked yet."),
            Act::Take(Tool::Hand) => !shows("Pin: 0 points set"),
            Act::Take(tool) => shows(&format!("{}: 0 points set", tool.word())),
            Act::MatchPoints => shows("Put a point on both"),
            Act::Leave => hand.window.state().page() == Page::Part(board.id),
        };
        assert!(is_done, "{act:?}: {look:?}");
    }
}

#[test]
fn where_a_command_does_not_apply_its_keys_do_nothing() {
    let mut hand = Hand::empty(SIZE);
    let idle: Vec<Command> = with_keys().filter(|command| !command.applies(Situation::default())).collect();
    for command in [Command::Undo, Command::Redo, Command::GoBack, Command::SearchShelf, Command::Go(Page::Shelf)] {
        assert!(idle.contains(&command), "{command:?} wants an open logbook");
    }
    for command in idle {
        hand.keys(&command);
        assert_eq!(hand.window.state().page(), Page::Welcome, "{command:?}");
        assert!(hand.window.query_by_label("Put the notice away").is_none(), "{command:?}");
    }
}

#[test]
fn keys_stay_with_the_field_that_is_typed_in_and_with_the_finder() {
    let mut change = Change::new("Log a board");
    change.put(part("0042", Kind::Mainboard, "Veltrane board"));
    let mut hand = Hand::on(change, SIZE);
    hand.keys(&Command::SearchShelf);
    hand.fill("Words, tag or marking", "velt");
    hand.keys(&Command::Undo);
    hand.settle();
    assert_eq!(parts(&hand), 1, "letters are taken back, not the part");
    hand.keys(&Command::Find);
    hand.keys(&Command::Go(Page::Bench));
    assert_eq!(hand.window.state().page(), Page::Shelf, "the finder is closed first");
}
