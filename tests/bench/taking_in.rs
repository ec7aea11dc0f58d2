//! What a frame of the window costs while 1,000 photographs of 12 megapixels are taken in: pasted as the path of a
//! folder, first onto one part's sheet, then to be sorted. Drawn into memory, without the graphics card.
#![allow(clippy::unwrap_used)]

mod hand;

use std::fs;
use std::path::Path;
use std::time::{Duration, Instant};

use benchwright::store::invent;
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::Event;
use hand::{Bench, report, scroll, today};
use image::codecs::jpeg::JpegEncoder;
use image::{Rgb, RgbImage};

const PARTS: u32 = 10_000;
const PHOTOGRAPHS: u32 = 1_000;
/// So many are drawn; the others differ from them by a comment.
const DRAWN: u32 = 8;
/// What a frame may take at 60 a second, milliseconds.
const FRAME_MS: u128 = 16;

/// A 12-megapixel JPEG of about 3 MB: light and shade, edges, and noise as of a small sensor.
fn drawn(seed: u32) -> Vec<u8> {
    let mut dice = fastrand::Rng::with_seed(seed.into());
    let picture = RgbImage::from_fn(4000, 3000, |x, y| {
        let light = 90.0 + 70.0 * (x as f32 / 640.0 + seed as f32).sin() * (y as f32 / 600.0).cos();
        let edges = 30.0 * ((x as f32 / 50.0).sin() * (y as f32 / 50.0).sin()).signum();
        let noise = (f32::from(dice.u8(..)) + f32::from(dice.u8(..)) - 255.0) * 0.08;
        Rgb([light + edges + noise + 20.0, light + edges + noise, light * 0.7 + noise].map(|colour| colour as u8))
    });
    let mut bytes = Vec::new();
    JpegEncoder::new_with_quality(&mut bytes, 85).encode_image(&picture).unwrap();
    bytes
}

/// A file with a comment of its own. Source: ITU-T T.81, B.2.4.5 (COM).
fn told_apart(jpeg: &[u8], number: u32) -> Vec<u8> {
    [&jpeg[..2], &[0xFF, 0xFE, 0, 6], &number.to_be_bytes(), &jpeg[2..]].concat()
}

/// Draws frames, as a screen asks for them, until everything is taken in.
fn taking_in(bench: &mut Bench, what: &str, folder: &Path) {
    bench.frame(vec![Event::Paste(folder.display().to_string())]);
    let (began, mut took) = (Instant::now(), Vec::new());
    while bench.app.taking_in().is_busy() || bench.app.session().unwrap().is_saving() {
        let frame = bench.frame(scroll(0));
        if frame.as_millis() >= FRAME_MS {
            println!("  a frame of {} ms, {:.1} s after the paste", frame.as_millis(), began.elapsed().as_secs_f64());
        }
        took.push(frame);
        std::thread::sleep(Duration::from_millis(8));
    }
    let whole = began.elapsed().as_secs_f64();
    // What follows from it comes a little later.
    took.extend((0..200).map(|_| {
        std::thread::sleep(Duration::from_millis(8));
        bench.frame(scroll(0))
    }));
    let (all, late) = (took.len(), took.iter().filter(|took| took.as_millis() >= FRAME_MS).count());
    println!("{what}: {PHOTOGRAPHS} photographs in {whole:.1} s, {:.1} a second", f64::from(PHOTOGRAPHS) / whole);
    report("frames meanwhile", &mut took);
    println!("  {late} of {all} frames took {FRAME_MS} ms or more");
}

fn main() {
    let folder = tempfile::tempdir().unwrap();
    let folder = folder.path();
    let logbook = folder.join("bench.logbook");
    drop(invent::create(&logbook, today(), PARTS, 1).unwrap());
    let pictures: Vec<Vec<u8>> = (0..DRAWN).map(drawn).collect();
    let phones = ["first", "second"].map(|name| folder.join(name));
    for (at, phone) in phones.iter().enumerate() {
        fs::create_dir(phone).unwrap();
        for number in 0..PHOTOGRAPHS {
            let jpeg = told_apart(&pictures[(number % DRAWN) as usize], number + at as u32 * PHOTOGRAPHS);
            fs::write(phone.join(format!("{number:04}.jpg")), jpeg).unwrap();
        }
    }
    let mut bench = Bench::open(&logbook, 1.0, Some(folder.join("copies")));
    let ctx = bench.ctx.clone();
    let part = bench.app.session().unwrap().logbook.parts[7].part.id;
    bench.app.carry_out(Command::Go(Page::Part(part)), &ctx, None);
    taking_in(&mut bench, "Onto a part’s sheet", &phones[0]);
    assert!(bench.app.session().unwrap().store().logbook().part(part).unwrap().photos.len() >= PHOTOGRAPHS as usize);
    fs::remove_dir_all(&phones[0]).unwrap();
    bench.app.carry_out(Command::Go(Page::Sorting), &ctx, None);
    taking_in(&mut bench, "To be sorted", &phones[1]);
}
