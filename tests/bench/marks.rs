//! What a frame costs over a photograph with hundreds of marks, and on the sheet of its part.
#![allow(clippy::unwrap_used)]

mod hand;

use std::sync::Arc;
use std::time::Duration;

use benchwright::photo::drawing::sketch;
use benchwright::record::{Change, Id, MarkUse, Photo, PhotoMark, PhotoView, When};
use benchwright::store::{FileSource, Store, invent};
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use benchwright::window::viewer::{Act, Tool};
use egui::{Event, pos2};
use hand::{Bench, report, scroll, today};

const FRAMES: usize = 400;
const MARKS: u32 = 400;

/// A circle of so many points.
fn circle([x, y]: [f32; 2], radius: f32, points: u32) -> Vec<[f32; 2]> {
    (0..points)
        .map(|at| {
            let (sine, cosine) = (at as f32 / points as f32 * std::f32::consts::TAU).sin_cos();
            [x + radius * cosine, y + radius * sine]
        })
        .collect()
}

/// Half of them pins, the rest outlines, surfaces and damage.
fn marks(photo: &Photo, capacitors: &[benchwright::record::CapacitorId]) -> Vec<PhotoMark> {
    let mark = |at: u32| {
        let centre = [0.05 + 0.9 * (at % 20) as f32 / 20.0, 0.05 + 0.9 * (at / 20) as f32 / 20.0];
        let (role, points) = match at % 8 {
            0..4 => (MarkUse::Place, vec![centre]),
            4 => (MarkUse::Place, circle(centre, 0.02, 12)),
            5 => (MarkUse::Surface, circle(centre, 0.04, 8)),
            _ => (MarkUse::Damage, circle(centre, 0.02, 40)),
        };
        let capacitor = capacitors.get(at as usize).copied().filter(|_| points.len() == 1);
        PhotoMark { capacitor, ..PhotoMark::new(Store::new_id(), photo.id, role, points) }
    };
    (0..MARKS).map(mark).collect()
}

fn frames(bench: &mut Bench, what: &str) {
    for _ in 0..100 {
        bench.frame(Vec::new());
        std::thread::sleep(Duration::from_millis(10));
    }
    let moved = |at: usize| vec![Event::PointerMoved(pos2(100.0 + at as f32, 300.0 + at as f32 / 2.0))];
    let mut took: Vec<Duration> = (0..FRAMES).map(|at| bench.frame(moved(at))).collect();
    report(what, &mut took);
}

fn main() {
    let folder = tempfile::tempdir().unwrap();
    let logbook = folder.path().join("bench.logbook");
    let store = invent::create(&logbook, today(), 200, 1).unwrap();
    let kept = store.keep_photo(FileSource::Bytes(&sketch::sketch_jpeg(1)), "jpg").unwrap();
    let file = store.logbook().parts.iter().max_by_key(|file| file.capacitors.len()).unwrap().clone();
    let [width_px, height_px] = sketch::SIZE_PX;
    let photo = Photo {
        id: Id::from_uuid(uuid::Uuid::now_v7()),
        part: Some(file.part.id),
        machine: None,
        lot: None,
        content: kept.content,
        extension: kept.extension,
        width_px,
        height_px,
        added: benchwright::record::Moment::on(today()),
        taken: When::Unknown,
        view: PhotoView::Overview,
        caption: String::new(),
        is_map: true,
    };
    let capacitors: Vec<_> = file.capacitors.iter().map(|one| one.position.id).collect();
    let mut change = Change::new("Mark");
    change.put_all(marks(&photo, &capacitors).into_iter().map(Into::into)).put(photo.clone());
    store.write(change).unwrap();
    drop(store);
    println!("{MARKS} marks on one photograph, {} capacitor positions", capacitors.len());
    let mut bench = Bench::open(&logbook, 1.0, None);
    let ctx = bench.ctx.clone();
    bench.app.carry_out(Command::LookAt(photo.id, Arc::new([photo.id])), &ctx, None);
    frames(&mut bench, "The photograph with its list of marks");
    bench.press(Act::Take(Tool::Surface).shortcut());
    frames(&mut bench, "While a surface is drawn on it");
    bench.press(Act::Marks.shortcut());
    frames(&mut bench, "The photograph without the list");
    bench.app.carry_out(Command::Go(Page::Part(file.part.id)), &ctx, None);
    frames(&mut bench, "The sheet of its part, with the map");
    let mut took: Vec<Duration> = (0..FRAMES).map(|at| bench.frame(scroll(at))).collect();
    report("The same, scrolling", &mut took);
}
