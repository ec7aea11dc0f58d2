//! What looking at photographs costs: the grid of all photographs while it is scrolled and while others are taken in,
//! and a 12-megapixel JPEG from the ask to the texture. Drawn into memory, without the graphics card.
#![allow(clippy::unwrap_used)]

mod hand;

use std::sync::Arc;
use std::time::{Duration, Instant};

use benchwright::photo::drawing::sketch;
use benchwright::record::{Change, Id, Moment, Photo, PhotoView, When};
use benchwright::store::{FileSource, Store, invent};
use benchwright::window::command::Command;
use benchwright::window::viewer::Act;
use hand::{Bench, report, scroll, today};
use image::codecs::jpeg::JpegEncoder;
use image::{Rgb, RgbImage};

const PARTS: u32 = 10_000;
const PHOTOGRAPHS: u32 = 20_000;
const FRAMES: usize = 600;
const TAKEN_IN: u32 = 1_000;
/// Photographs that come in together.
const BATCH: u32 = 10;
const LARGE_PX: [u32; 2] = [4000, 3000];

/// A 12-megapixel JPEG: light and shade, edges, and noise as of a small sensor.
fn large(seed: u64) -> Vec<u8> {
    let mut dice = fastrand::Rng::with_seed(seed);
    let picture = RgbImage::from_fn(LARGE_PX[0], LARGE_PX[1], |x, y| {
        let light = 90.0 + 70.0 * (x as f32 / 640.0 + seed as f32).sin() * (y as f32 / 600.0).cos();
        let edges = 30.0 * ((x as f32 / 50.0).sin() * (y as f32 / 50.0).sin()).signum();
        let noise = (f32::from(dice.u8(..)) + f32::from(dice.u8(..)) - 255.0) * 0.11;
        Rgb([light + edges + noise + 20.0, light + edges + noise, light * 0.7 + noise].map(|colour| colour as u8))
    });
    let mut bytes = Vec::new();
    JpegEncoder::new_with_quality(&mut bytes, 88).encode_image(&picture).unwrap();
    bytes
}

fn photo(store: &Store, part: usize, bytes: &[u8], [width_px, height_px]: [u32; 2]) -> Photo {
    let kept = store.keep_photo(FileSource::Bytes(bytes), "jpg").unwrap();
    Photo {
        id: Id::from_uuid(uuid::Uuid::now_v7()),
        part: Some(store.logbook().parts[part].part.id),
        machine: None,
        lot: None,
        content: kept.content,
        extension: kept.extension,
        width_px,
        height_px,
        added: Moment::on(today()),
        taken: When::Unknown,
        view: PhotoView::Detail,
        caption: String::new(),
        is_map: false,
    }
}

/// Frames until the photograph on show is as sharp as the screen; how long that took.
fn until_sharp(bench: &mut Bench) -> Duration {
    let began = Instant::now();
    loop {
        bench.frame(Vec::new());
        if bench.app.desks().viewer.is_sharp() {
            return began.elapsed();
        }
        std::thread::sleep(Duration::from_micros(200));
    }
}

/// Lets the threads that make pictures come to rest.
fn rest(bench: &mut Bench) {
    for _ in 0..100 {
        bench.frame(Vec::new());
        std::thread::sleep(Duration::from_millis(10));
    }
}

fn milliseconds(took: Duration) -> f64 {
    took.as_secs_f64() * 1e3
}

/// The memory of this process, MiB; 0 where the system does not tell.
fn memory_mib() -> f64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find_map(|line| line.strip_prefix("VmRSS:")).unwrap_or_default();
    line.split_whitespace().next().and_then(|kib| kib.parse::<f64>().ok()).unwrap_or(0.0) / 1024.0
}

fn grid(bench: &mut Bench) {
    bench.press(Command::SearchPhotographs.shortcut().unwrap());
    rest(bench);
    for what in ["All photographs, scrolling, pictures new", "All photographs, scrolling on"] {
        let mut took: Vec<Duration> = (0..FRAMES).map(|number| bench.frame(scroll(number))).collect();
        report(what, &mut took);
    }
    // As fast as a screen shows them, so that the threads get on meanwhile.
    let mut took: Vec<Duration> = (0..FRAMES / 2)
        .map(|number| {
            std::thread::sleep(Duration::from_millis(12));
            bench.frame(scroll(number))
        })
        .collect();
    report("All photographs, scrolling at the screen's pace", &mut took);
    println!(
        "  textures {:.0} MiB, process {:.0} MiB",
        bench.app.pictures().bytes() as f64 / 1_048_576.0,
        memory_mib()
    );
}

fn taking_in(bench: &mut Bench) {
    let store = Arc::clone(bench.app.session().unwrap().store());
    let began = Instant::now();
    let work = std::thread::spawn(move || {
        for batch in 0..TAKEN_IN / BATCH {
            let mut change = Change::new("Take photographs in");
            for number in batch * BATCH..(batch + 1) * BATCH {
                let bytes = sketch::sketch_jpeg(1_000_000 + number);
                change.put(photo(&store, (number * 7) as usize, &bytes, sketch::SIZE_PX));
            }
            store.write(change).unwrap();
        }
    });
    let mut took = Vec::new();
    while !work.is_finished() {
        took.push(bench.frame(scroll(0)));
        std::thread::sleep(Duration::from_millis(8));
    }
    work.join().unwrap();
    println!("  {TAKEN_IN} photographs taken in, {:.0} ms", milliseconds(began.elapsed()));
    report("All photographs, while others are taken in", &mut took);
}

fn viewer(bench: &mut Bench) {
    let store = Arc::clone(bench.app.session().unwrap().store());
    let photos: Vec<Photo> = (0..12).map(|seed| photo(&store, 3, &large(seed), LARGE_PX)).collect();
    let mut change = Change::new("Large photographs");
    change.put_all(photos.iter().cloned().map(Into::into));
    store.write(change).unwrap();
    rest(bench);
    let among: Arc<[_]> = photos.iter().map(|photo| photo.id).collect();
    let (mut first, mut next, mut near) = (Vec::new(), Vec::new(), Vec::new());
    for pair in photos.chunks(2).step_by(2) {
        // None of the first ones was a neighbour before: each is made from the JPEG itself.
        let ctx = bench.ctx.clone();
        bench.app.carry_out(Command::LookAt(pair[0].id, Arc::clone(&among)), &ctx, None);
        first.push(until_sharp(bench));
        rest(bench);
        bench.app.carry_out(Command::Look(Act::Next), &ctx, None);
        bench.frame(Vec::new());
        next.push(until_sharp(bench));
        bench.app.carry_out(Command::Look(Act::PixelForPixel), &ctx, None);
        bench.frame(Vec::new());
        near.push(until_sharp(bench));
        rest(bench);
    }
    report("12 megapixels, from the ask to the texture", &mut first);
    report("The next one, made ready meanwhile", &mut next);
    report("Pixel for pixel, from the key to the last tile", &mut near);
    println!(
        "  textures {:.0} MiB, process {:.0} MiB",
        bench.app.pictures().bytes() as f64 / 1_048_576.0,
        memory_mib()
    );
}

fn main() {
    let folder = tempfile::tempdir().unwrap();
    let logbook = folder.path().join("bench.logbook");
    let store = invent::create(&logbook, today(), PARTS, 1).unwrap();
    let began = Instant::now();
    invent::photographs(&store, today(), PHOTOGRAPHS, 1, sketch::SIZE_PX, sketch::sketch_jpeg).unwrap();
    drop(store);
    println!("{PARTS} parts, {PHOTOGRAPHS} photographs (made in {:.0} ms)", milliseconds(began.elapsed()));
    let mut bench = Bench::open(&logbook, 1.0, Some(folder.path().join("copies")));
    grid(&mut bench);
    taking_in(&mut bench);
    viewer(&mut bench);
}
