//! What a frame of the window costs, without the graphics card: layout, tessellation and the accessible tree, on an
//! invented logbook of 10,000 parts, while revisions land.
#![allow(clippy::unwrap_used)]

use std::path::Path;
use std::sync::Arc;
use std::time::{Duration, Instant};

use benchwright::record::{Change, Kind};
use benchwright::store::invent;
use benchwright::window::desktop::NoDesktop;
use benchwright::window::page::Page;
use benchwright::window::part_index::words_of;
use benchwright::window::{App, Start};
use chrono::NaiveDate;
use egui::{Event, Key, Modifiers, MouseWheelUnit, Pos2, RawInput, Rect, TouchPhase, vec2};

const PARTS: u32 = 10_000;
const FRAMES: usize = 600;

fn today() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 3, 14).unwrap()
}

/// A window that is drawn into memory.
struct Bench {
    ctx: egui::Context,
    app: App,
    scale: f32,
    time: f64,
}

impl Bench {
    fn open(logbook: &Path, scale: f32) -> Self {
        let ctx = egui::Context::default();
        ctx.enable_accesskit();
        let start = Start {
            logbook: Some(logbook.to_path_buf()),
            settings_folder: None,
            cache_folder: None,
            sample_logbook: logbook.with_extension("sample"),
            desktop: Arc::new(NoDesktop),
            clock: today,
        };
        let mut bench = Self { app: App::new(&ctx, start), ctx, scale, time: 0.0 };
        let began = Instant::now();
        while bench.app.session().is_none() {
            bench.frame(Vec::new());
            std::thread::sleep(Duration::from_millis(1));
        }
        bench.frame(Vec::new());
        println!("  opened and filled in {:.0} ms", began.elapsed().as_secs_f64() * 1e3);
        bench
    }

    fn frame(&mut self, events: Vec<Event>) -> Duration {
        self.time += 1.0 / 60.0;
        let mut input = RawInput {
            screen_rect: Some(Rect::from_min_size(Pos2::ZERO, vec2(1280.0, 800.0))),
            time: Some(self.time),
            focused: true,
            events,
            ..RawInput::default()
        };
        input.viewports.entry(egui::ViewportId::ROOT).or_default().native_pixels_per_point = Some(self.scale);
        let began = Instant::now();
        let output = self.ctx.run_ui(input, |ui| self.app.window_ui(ui, None));
        let shapes = self.ctx.tessellate(output.shapes, output.pixels_per_point);
        let took = began.elapsed();
        assert!(!shapes.is_empty() && output.platform_output.accesskit_update.is_some());
        took
    }

    fn press(&mut self, keys: egui::KeyboardShortcut) {
        let key = |pressed| Event::Key {
            key: keys.logical_key,
            physical_key: None,
            pressed,
            repeat: false,
            modifiers: keys.modifiers,
        };
        self.frame(vec![key(true)]);
        self.frame(vec![key(false)]);
    }

    /// Renames a part, as if somebody edited it: a new revision lands some frames later.
    fn edit(&self, number: usize) {
        let session = self.app.session().unwrap();
        let mut part = session.logbook.parts[number * 37 % session.logbook.parts.len()].part.clone();
        part.note = format!("Edit {number}");
        let mut change = Change::new("Edit");
        change.put(part);
        session.store().send(change);
    }

    /// Frames with a revision landing among every twenty.
    fn frames(&mut self, what: &str, mut events: impl FnMut(usize) -> Vec<Event>) {
        let mut took: Vec<Duration> = (0..FRAMES)
            .map(|number| {
                if number % 20 == 0 {
                    self.edit(number);
                }
                self.frame(events(number))
            })
            .collect();
        report(what, &mut took);
    }
}

fn report(what: &str, took: &mut [Duration]) {
    took.sort_unstable();
    let at = |share: f64| took[((took.len() - 1) as f64 * share) as usize].as_secs_f64() * 1e3;
    println!("  {what}: median {:.2} ms, 99th percentile {:.2} ms, longest {:.2} ms", at(0.5), at(0.99), at(1.0));
}

fn scroll(_: usize) -> Vec<Event> {
    vec![
        Event::PointerMoved(Pos2::new(700.0, 500.0)),
        Event::MouseWheel {
            unit: MouseWheelUnit::Point,
            delta: vec2(0.0, -180.0),
            phase: TouchPhase::Move,
            source: egui::MouseWheelSource::Wheel,
            modifiers: Modifiers::NONE,
        },
    ]
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
        let mut bench = Bench::open(&logbook, scale);
        if scale == 1.0 {
            search(&bench);
        }
        bench.frames("Shelf, scrolling", scroll);
        bench.press(benchwright::window::command::Command::SearchShelf.shortcut().unwrap());
        bench.frames("Shelf, typing", typing);
        for page in [Page::Intake, Page::Bench, Page::Machines] {
            bench.press(benchwright::window::command::Command::Go(page).shortcut().unwrap());
            assert_eq!(bench.app.page(), page);
            bench.frames(page.label(), scroll);
        }
        let part = bench.app.session().unwrap().logbook.parts.iter().find(|file| file.part.kind == Kind::Mainboard);
        let part = part.unwrap().part.id;
        bench.app.carry_out(benchwright::window::command::Command::Go(Page::Part(part)), &bench.ctx.clone(), None);
        bench.frames("Part sheet", scroll);
    }
}
