//! How long the first frame takes, from the start of a process until it stands on the screen, beside a bare window of the
//! same build; and until the Shelf is filled, on an invented logbook of 10,000 parts. Needs a display: `xvfb-run`.
#![allow(clippy::unwrap_used)]

use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::Arc;
use std::time::{Duration, SystemTime, UNIX_EPOCH};

use benchwright::store::invent;
use benchwright::window::desktop::NoDesktop;
use benchwright::window::{App, Start, options};
use chrono::NaiveDate;
use egui::{Ui, ViewportCommand, vec2};

const PARTS: u32 = 10_000;
const RUNS: usize = 15;

fn today() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 3, 14).unwrap()
}

/// What is drawn: nothing but a word, or the whole program.
trait Drawn {
    fn draw(&mut self, ui: &mut Ui, frame: &mut eframe::Frame);
    /// Whether what was drawn last is all there is to come.
    fn is_filled(&self) -> bool;
}

struct Bare;

impl Drawn for Bare {
    fn draw(&mut self, ui: &mut Ui, _: &mut eframe::Frame) {
        ui.label("Benchwright");
    }

    fn is_filled(&self) -> bool {
        true
    }
}

impl Drawn for App {
    fn draw(&mut self, ui: &mut Ui, frame: &mut eframe::Frame) {
        eframe::App::ui(self, ui, frame);
    }

    fn is_filled(&self) -> bool {
        self.session().is_some()
    }
}

/// Says when the first frame and the filled one stood on the screen: when the frame after them begins.
struct Watched<D> {
    drawn: D,
    begun: SystemTime,
    first: Option<Duration>,
    frames: usize,
    was_filled: bool,
}

impl<D: Drawn> eframe::App for Watched<D> {
    fn ui(&mut self, ui: &mut Ui, frame: &mut eframe::Frame) {
        let Self { drawn, begun, first, frames, was_filled } = self;
        let now = begun.elapsed().unwrap();
        if *frames == 1 {
            *first = Some(now);
        }
        if let (true, Some(first)) = (*was_filled, *first) {
            println!("{} {}", first.as_secs_f64() * 1e3, now.as_secs_f64() * 1e3);
            ui.ctx().send_viewport_cmd(ViewportCommand::Close);
            *was_filled = false;
        }
        let filled_before = drawn.is_filled();
        drawn.draw(ui, frame);
        *was_filled = filled_before || drawn.is_filled();
        *frames += 1;
        ui.ctx().request_repaint();
    }

    fn persist_egui_memory(&self) -> bool {
        false
    }
}

/// The other process: draws until it is filled, and prints both times in milliseconds.
fn show(logbook: Option<PathBuf>, begun: SystemTime) {
    fn watched<D: Drawn>(drawn: D, begun: SystemTime) -> Watched<D> {
        Watched { drawn, begun, first: None, frames: 0, was_filled: false }
    }
    eframe::run_native(
        "first frame",
        options(vec2(1280.0, 800.0)),
        Box::new(move |creation| {
            Ok(match logbook {
                None => Box::new(watched(Bare, begun)),
                Some(logbook) => {
                    let sample_logbook = logbook.with_extension("sample");
                    let start = Start {
                        logbook: Some(logbook),
                        settings_folder: None,
                        cache_folder: None,
                        sample_logbook,
                        desktop: Arc::new(NoDesktop),
                        clock: today,
                    };
                    Box::new(watched(App::new(&creation.egui_ctx, start), begun))
                }
            })
        }),
    )
    .unwrap();
}

/// First frame and filled frame of a fresh process, milliseconds.
fn timed(logbook: Option<&Path>) -> [f64; 2] {
    let begun = SystemTime::now().duration_since(UNIX_EPOCH).unwrap().as_nanos().to_string();
    let mut command = Command::new(std::env::current_exe().unwrap());
    let output = command.arg("--show").arg(begun).args(logbook).output().unwrap();
    let said = String::from_utf8(output.stdout).unwrap();
    // The window may draw once more before it closes.
    let times: Vec<f64> =
        said.lines().take(1).flat_map(str::split_whitespace).map(|time| time.parse().unwrap()).collect();
    times.try_into().unwrap_or_else(|_| panic!("no window: {}", String::from_utf8_lossy(&output.stderr)))
}

fn median(mut times: Vec<f64>) -> f64 {
    times.sort_by(f64::total_cmp);
    times[times.len() / 2]
}

fn main() {
    let mut arguments = std::env::args_os().skip_while(|argument| argument != "--show").skip(1);
    if let Some(begun) = arguments.next() {
        let nanos: u64 = begun.into_string().unwrap().parse().unwrap();
        return show(arguments.next().map(PathBuf::from), UNIX_EPOCH + Duration::from_nanos(nanos));
    }
    let folder = tempfile::tempdir_in(env!("CARGO_TARGET_TMPDIR")).unwrap();
    let logbook = folder.path().join("scale.logbook");
    drop(invent::create(&logbook, today(), PARTS, 1).unwrap());
    let (mut bare, mut first, mut filled) = (Vec::new(), Vec::new(), Vec::new());
    // By turns, so that both meet the same machine; the first of each warms the disk's cache.
    for run in 0..=RUNS {
        let [bare_first, _] = timed(None);
        let [our_first, our_filled] = timed(Some(&logbook));
        if run > 0 {
            bare.push(bare_first);
            first.push(our_first);
            filled.push(our_filled);
        }
    }
    let (bare, first) = (median(bare), median(first));
    println!("bare window: first frame after {bare:.0} ms");
    println!("Benchwright: first frame after {first:.0} ms: {:.2} times (limit 1.5)", first / bare);
    println!("Benchwright: Shelf of {PARTS} parts filled after {:.0} ms (limit 600)", median(filled));
}
