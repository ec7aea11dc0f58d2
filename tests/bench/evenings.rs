//! What a frame costs on the desks of an evening, on invented logbooks: Supplies, the capacitor desk of a board with 5,000
//! positions, Tonight, Weeks ahead, Look again and sorting at 10,000 parts; and how soon the calendar of 5,000 pieces is
//! drawn anew once a figure was changed. Drawn into memory, without the graphics card.
#![allow(clippy::unwrap_used)]

mod hand;
#[path = "../support/records.rs"]
#[allow(clippy::wildcard_imports)] // written for tests, which take in all records
mod records;

use std::path::Path;
use std::time::{Duration, Instant};

use benchwright::record::{CapacitorState, Change, Kind, PartId};
use benchwright::store::{Store, invent};
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::{Event, Key, Modifiers};
use hand::{Bench, report, scroll, today};
use records::moment;

const PARTS: u32 = 10_000;
const POSITIONS: usize = 5_000;
/// Photographs that wait to be sorted.
const TO_SORT: u32 = 400;
/// Enough that machines ask for 5,000 pieces of work and proofs.
const PARTS_OF_5000_PIECES: u32 = 46_000;
const FRAMES: usize = 400;
const REDRAWS: usize = 40;
const FRAME_MS: f64 = 16.0;
const REDRAW_MS: f64 = 50.0;

fn verdict(took: &mut [Duration], share: f64, most_ms: f64) {
    took.sort_unstable();
    let ms = took[((took.len() - 1) as f64 * share) as usize].as_secs_f64() * 1e3;
    println!("    {} {most_ms} ms", if ms < most_ms { "within" } else { "OVER" });
}

/// Frames while the page is scrolled.
fn frames(bench: &mut Bench, what: &str) {
    let mut took: Vec<Duration> = (0..FRAMES).map(|number| bench.frame(scroll(number))).collect();
    report(what, &mut took);
    verdict(&mut took, 0.99, FRAME_MS);
}

fn go(bench: &mut Bench, page: Page) {
    bench.app.carry_out(Command::Go(page), &bench.ctx.clone(), None);
    for _ in 0..3 {
        bench.frame(Vec::new());
    }
}

/// A board with 5,000 positions in a logbook that is there already.
fn add_board(logbook: &Path) -> PartId {
    let store = Store::open(logbook).unwrap();
    let board = records::part("board", Kind::Mainboard, "A very large board");
    let mut change = Change::new("Log a large board");
    change.put(board.clone());
    for number in 0..POSITIONS {
        let state = if number % 7 == 0 { CapacitorState::Bulged } else { CapacitorState::Sound };
        change.put(records::capacitor(board.id, &format!("C{number}"), moment("2026-03-01"), state));
    }
    store.write(change).unwrap();
    board.id
}

fn desks(bench: &mut Bench, board: PartId, pictures: &Path) {
    go(bench, Page::Supplies);
    bench.until(|bench| bench.named("Adding up").is_none());
    for leaf in ["To buy", "In stock", "Kits", "What it cost"] {
        bench.click(leaf);
        frames(bench, &format!("Supplies, {leaf}"));
    }
    go(bench, Page::Capacitors(board));
    frames(bench, "Capacitor desk");
    go(bench, Page::Bench);
    bench.click("Tonight");
    bench.until(|bench| bench.named("Print the sheet").is_some());
    frames(bench, "Tonight");
    bench.click("Weeks ahead");
    bench.until(|bench| bench.named("The last machine about").is_some());
    frames(bench, "Weeks ahead");
    bench.click("Look again");
    bench.until(|bench| bench.named("What is due").is_some());
    frames(bench, "Look again");
    to_sort(bench, pictures);
    frames(bench, "Sorting");
}

/// Brings small photographs in that belong to nothing yet.
fn to_sort(bench: &mut Bench, pictures: &Path) {
    for number in 0..TO_SORT {
        let picture = image::RgbImage::from_fn(64, 48, |x, y| {
            image::Rgb([(x + number) as u8, (y + number / 256) as u8, number as u8])
        });
        picture.save(pictures.join(format!("{number}.png"))).unwrap();
    }
    go(bench, Page::Sorting);
    bench.frame(vec![Event::Paste(pictures.display().to_string())]);
    bench.until(|bench| {
        let session = bench.app.session().unwrap();
        !bench.app.taking_in().is_busy()
            && bench.app.desks().sorting.count(&session.logbook, session.refusals()) == TO_SORT as usize
    });
}

/// Frames, and from a key to the calendar with its dates: typing, working out and drawing.
fn redraws(bench: &mut Bench) {
    go(bench, Page::Bench);
    bench.click("Weeks ahead");
    bench.until(|bench| bench.named("The last machine about").is_some());
    frames(bench, "Weeks ahead, 5,000 pieces");
    bench.click("Hours a week");
    let mut took: Vec<Duration> = (0..REDRAWS)
        .map(|number| {
            let key = |pressed| Event::Key {
                key: Key::A,
                physical_key: None,
                pressed,
                repeat: false,
                modifiers: Modifiers::COMMAND,
            };
            bench.frame(vec![key(true), key(false)]);
            let before = bench.named("The last machine about").unwrap().to_owned();
            let began = Instant::now();
            bench.frame(vec![Event::Text(if number % 2 == 0 { "5" } else { "9" }.to_owned())]);
            bench.until(|bench| bench.named("The last machine about").is_some_and(|said| said != before));
            began.elapsed()
        })
        .collect();
    report("Weeks ahead, redrawn after a changed figure", &mut took);
    verdict(&mut took, 0.5, REDRAW_MS);
}

fn main() {
    let folder = tempfile::tempdir().unwrap();
    let logbook = folder.path().join("desks.logbook");
    let store = invent::create(&logbook, today(), PARTS, 1).unwrap();
    drop(store);
    let board = add_board(&logbook);
    println!("{PARTS} parts, 1280 × 800 points");
    let pictures = folder.path().join("to sort");
    std::fs::create_dir(&pictures).unwrap();
    desks(&mut Bench::open(&logbook, 1.0, None), board, &pictures);

    let logbook = folder.path().join("weeks.logbook");
    drop(invent::create(&logbook, today(), PARTS_OF_5000_PIECES, 1).unwrap());
    println!("{PARTS_OF_5000_PIECES} parts");
    redraws(&mut Bench::open(&logbook, 1.0, None));
}
