//! What a frame of the window costs, without the graphics card: layout, tessellation and the accessible tree, on an
//! invented logbook of 10,000 parts, while revisions land.
#![allow(clippy::unwrap_used)]

mod hand;

use std::time::{Duration, Instant};

use benchwright::record::{Change, Kind};
use benchwright::store::invent;
use benchwright::window::page::Page;
use benchwright::window::part_index::words_of;
use egui::{Event, Key, Modifiers};
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
        bench.press(benchwright::window::command::Command::SearchShelf.shortcut().unwrap());
        frames(&mut bench, "Shelf, typing", typing);
        for page in [Page::Intake, Page::Bench, Page::Machines, Page::Placement] {
            bench.press(benchwright::window::command::Command::Go(page).shortcut().unwrap());
            assert_eq!(bench.app.page(), page);
            frames(&mut bench, page.label(), scroll);
        }
        let part = bench.app.session().unwrap().logbook.parts.iter().find(|file| file.part.kind == Kind::Mainboard);
        let part = part.unwrap().part.id;
        bench.app.carry_out(benchwright::window::command::Command::Go(Page::Part(part)), &bench.ctx.clone(), None);
        frames(&mut bench, "Part sheet", scroll);
    }
}
