//! What a frame of the window costs, without the graphics card: layout, tessellation and the accessible tree, on an
//! invented logbook of 10,000 parts and 40 machines, while revisions land.
#![allow(clippy::unwrap_used)]

mod hand;

use std::time::{Duration, Instant};

use benchwright::record::{Change, Kind};
use benchwright::store::invent;
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use benchwright::window::part_index::words_of;
use egui::accesskit::Role;
use egui::{Event, Key, Modifiers, vec2};
use hand::{Bench, report, scroll, today};

const PARTS: u32 = 10_000;
const FRAMES: usize = 600;

/// Renames a part, as if somebody edited it: a new revision lands some frames later.
fn edit(bench: &Bench, number: usize) {
    let session = bench.app.session().unwrap();
    let mut part = session.logbook.parts[number * 37 % session.logbook.parts.len()].part.clone();
    part.note = format!("Edit {number}");
    let mut change = Change::new("Edit");
    change.put(part);
    session.store().send(change);
}

/// Frames with a revision landing among every twenty.
fn frames(bench: &mut Bench, what: &str, mut events: impl FnMut(usize) -> Vec<Event>) {
    let mut took: Vec<Duration> = (0..FRAMES)
        .map(|number| {
            if number % 20 == 0 {
                edit(bench, number);
            }
            bench.frame(events(number))
        })
        .collect();
    report(what, &mut took);
}

fn typing(number: usize) -> Vec<Event> {
    let word = "board 12";
    let key = |key| Event::Key { key, physical_key: None, pressed: true, repeat: false, modifiers: Modifiers::NONE };
    match (number % 4, (number / 4) % (2 * word.len())) {
        (0, letter) if letter < word.len() => vec![Event::Text(word[letter..=letter].to_owned())],
        (0, _) => vec![key(Key::Backspace)],
        _ => Vec::new(),
    }
}

fn search(bench: &Bench) {
    let index = &bench.app.session().unwrap().index;
    let mut took: Vec<Duration> = ["a", "board", "board 12", "zz", "9", "sound card", "1994"]
        .iter()
        .cycle()
        .take(140)
        .map(|typed| {
            let began = Instant::now();
            let words = words_of(typed);
            let found = index.rows.iter().filter(|row| row.holds(&words)).count();
            std::hint::black_box(found);
            began.elapsed()
        })
        .collect();
    report("free text over all parts", &mut took);
}

/// The wheel over the middle, now down, now along, and back again.
fn roam(number: usize) -> Vec<Event> {
    let sign = if (number / 100).is_multiple_of(2) { -180.0 } else { 180.0 };
    let delta = if (number / 50).is_multiple_of(2) { vec2(0.0, sign) } else { vec2(sign, 0.0) };
    let mut events = scroll(number);
    for event in &mut events {
        if let Event::MouseWheel { delta: own, .. } = event {
            *own = delta;
        }
    }
    events
}

/// Placement while it looks for its first proposal, and with one on show: all lanes of all machines, a part chosen.
fn placement(bench: &mut Bench) {
    bench.press(Command::Go(Page::Placement).shortcut().unwrap());
    frames(bench, "Placement, weighing", scroll);
    let began = Instant::now();
    bench.until(|bench| ["Proven best", "Best found so far"].iter().any(|begins| bench.named(begins).is_some()));
    let machines = bench.app.session().unwrap().logbook.machines.len();
    println!("  a proposal for {machines} machines after {:.1} s without an edit", began.elapsed().as_secs_f64());
    bench.click("Settled roles too");
    frames(bench, "Placement, all lanes, down and along", roam);
    bench.click_role(Role::ListBoxOption);
    frames(bench, "Placement, a part chosen", roam);
}

fn main() {
    let folder = tempfile::tempdir().unwrap();
    let logbook = folder.path().join("bench.logbook");
    drop(invent::create(&logbook, today(), PARTS, 1).unwrap());
    for scale in [1.0, 2.0] {
        println!("{PARTS} parts, 1280 × 800 points at {:.0} %", scale * 100.0);
        let mut bench = Bench::open(&logbook, scale, None);
        if scale == 1.0 {
            search(&bench);
        }
        frames(&mut bench, "Shelf, scrolling", scroll);
        bench.press(Command::SearchShelf.shortcut().unwrap());
        frames(&mut bench, "Shelf, typing", typing);
        for page in [Page::Intake, Page::Bench, Page::Machines] {
            bench.press(Command::Go(page).shortcut().unwrap());
            assert_eq!(bench.app.page(), page);
            frames(&mut bench, page.label(), scroll);
        }
        placement(&mut bench);
        let part = bench.app.session().unwrap().logbook.parts.iter().find(|file| file.part.kind == Kind::Mainboard);
        let part = part.unwrap().part.id;
        bench.app.carry_out(Command::Go(Page::Part(part)), &bench.ctx.clone(), None);
        frames(&mut bench, "Part sheet", scroll);
    }
}
