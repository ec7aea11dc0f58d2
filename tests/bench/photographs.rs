//! How many 12-megapixel photographs a second become small copies in all kept sizes, beside the command-line
//! thumbnailer of libvips on the same files, sizes and number of threads, in one run.
//!
//! `cargo bench --bench photographs` prints both and their ratio. The photographs are drawn here, the same in every run:
//! gradients, edges, and noise as of a small sensor. Without `vipsthumbnail` (Debian: libvips-tools) the bench says so.
#![allow(clippy::unwrap_used)]

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Instant;

use benchwright::photo::Picture;
use benchwright::photo::thumbnail::{Cache, SIDES_PX, shrink_each};
use jpeg_encoder::{ColorType, Encoder, SamplingFactor};

const WIDTH: u16 = 4000;
const HEIGHT: u16 = 3000;
const PHOTOGRAPHS: usize = 24;
const THREADS: usize = 2;
/// Both take turns; the best round of each counts.
const ROUNDS: usize = 3;

/// A 12-megapixel JPEG of 3 to 5 MB.
fn photograph(seed: usize) -> Vec<u8> {
    let mut dice = fastrand::Rng::with_seed(seed as u64);
    let mut pixels = Vec::with_capacity(usize::from(WIDTH) * usize::from(HEIGHT) * 3);
    for y in 0..HEIGHT {
        let down = f32::from(y) / f32::from(HEIGHT);
        for x in 0..WIDTH {
            let across = f32::from(x) / f32::from(WIDTH);
            // A board's light and shade, its rows of chips, and what the sensor adds.
            let light = 90.0 + 70.0 * (across * 6.0 + seed as f32).sin() * (down * 5.0).cos();
            let chips = 30.0 * ((across * 80.0).sin() * (down * 60.0).sin()).signum();
            let noise = (f32::from(dice.u8(..)) + f32::from(dice.u8(..)) - 255.0) * 0.11;
            let base = light + chips + noise;
            pixels
                .extend([base + 20.0, base * 0.9 + 30.0 * down, base * 0.7 + 40.0 * across].map(|colour| colour as u8));
        }
    }
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, 88);
    encoder.set_sampling_factor(SamplingFactor::R_4_2_0);
    encoder.encode(&pixels, WIDTH, HEIGHT, ColorType::Rgb).unwrap();
    bytes
}

/// Does something for every file on [`THREADS`] threads; files a second.
fn a_second(files: &[PathBuf], each: impl Fn(&Path) + Sync) -> f64 {
    let next = AtomicUsize::new(0);
    let start = Instant::now();
    std::thread::scope(|scope| {
        for _ in 0..THREADS {
            scope.spawn(|| {
                while let Some(file) = files.get(next.fetch_add(1, Ordering::Relaxed)) {
                    each(file);
                }
            });
        }
    });
    files.len() as f64 / start.elapsed().as_secs_f64()
}

fn ours(files: &[PathBuf], folder: &Path, round: usize) -> f64 {
    let cache = Cache::new(folder.join(format!("ours-{round}")));
    a_second(files, |file| {
        let copies = shrink_each(&Picture::open(file).unwrap(), SIDES_PX).unwrap();
        let number: usize = file.file_stem().unwrap().to_str().unwrap().parse().unwrap();
        cache.keep(&format!("{number:064x}"), &copies);
    })
}

/// One process a thread, each with every file of its half, each size in a call of its own: it makes one size a call.
/// `None` when it is not installed.
fn vips(files: &[PathBuf], folder: &Path, sides_px: &[u32]) -> Option<f64> {
    Command::new("vipsthumbnail").arg("--version").output().ok()?;
    let start = Instant::now();
    std::thread::scope(|scope| {
        for half in files.chunks(files.len().div_ceil(THREADS)) {
            scope.spawn(move || {
                for side in sides_px {
                    let output = format!("{}/vips-{side}-%s.jpg[Q=82]", folder.display());
                    let mut call = Command::new("vipsthumbnail");
                    call.env("VIPS_CONCURRENCY", "1").arg("--size").arg(format!("{side}x{side}"));
                    let status = call.arg("--output").arg(output).args(half).status().unwrap();
                    assert!(status.success());
                }
            });
        }
    });
    Some(files.len() as f64 / start.elapsed().as_secs_f64())
}

fn main() {
    let folder = tempfile::tempdir().unwrap();
    let folder = folder.path();
    let files: Vec<PathBuf> = (0..PHOTOGRAPHS)
        .map(|number| {
            let file = folder.join(format!("{number}.jpg"));
            fs::write(&file, photograph(number)).unwrap();
            file
        })
        .collect();
    let bytes: u64 = files.iter().map(|file| fs::metadata(file).unwrap().len()).sum();
    let mb = bytes as f64 / 1e6 / PHOTOGRAPHS as f64;
    println!("{PHOTOGRAPHS} photographs of {WIDTH} × {HEIGHT} pixels, {mb:.1} MB each; {THREADS} threads");
    let (mut best_ours, mut best_vips, mut best_small) = (0_f64, None::<f64>, None::<f64>);
    let (mut best_ours_small, larger) =
        (0_f64, |best: Option<f64>, now: Option<f64>| now.map(|now| best.unwrap_or(0.0).max(now)));
    for round in 0..ROUNDS {
        best_ours = best_ours.max(ours(&files, folder, round));
        best_vips = larger(best_vips, vips(&files, folder, &SIDES_PX));
        best_ours_small = best_ours_small.max(a_second(&files, |file| {
            shrink_each(&Picture::open(file).unwrap(), [SIDES_PX[0]]).unwrap();
        }));
        best_small = larger(best_small, vips(&files, folder, &SIDES_PX[..1]));
    }
    show(&format!("all sizes {SIDES_PX:?}, kept"), best_ours, best_vips);
    show(&format!("the smallest alone, {}", SIDES_PX[0]), best_ours_small, best_small);
}

/// Both figures and their ratio, whose target is 1.
fn show(what: &str, ours: f64, vips: Option<f64>) {
    let Some(vips) = vips else {
        println!("{what:<36} {ours:>6.1} a second; vipsthumbnail is missing (Debian: libvips-tools)");
        return;
    };
    let verdict = if ours >= vips { "within" } else { "UNDER" };
    println!("{what:<36} {ours:>6.1} a second, libvips {vips:>6.1}, ratio {:.2}  {verdict} 1", ours / vips);
}
