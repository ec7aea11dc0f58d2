//! Mutated small files of every kind: each is taken as the picture it says it is, or refused by name; none takes the
//! program with it, and what is handed out of it is a picture again.

use std::collections::BTreeMap;
use std::sync::Mutex;
use std::time::Instant;

use benchwright::photo::thumbnail::shrink_each;
use benchwright::photo::{Picture, handed_out};
use image::ImageFormat;

use super::exif::{Noted, ascii};
use super::quarters::packed;

/// A file whose size as told is not that of its pixels, found among a million.
const LARGER_TOLD_THAN_IS: usize = 252_090;

/// How many files are tried: 20,000, or what `BENCHWRIGHT_FUZZ` says.
fn count() -> usize {
    std::env::var("BENCHWRIGHT_FUZZ").ok().and_then(|count| count.parse().ok()).unwrap_or(20_000)
}

fn seeds() -> Vec<Vec<u8>> {
    let mut noted = Noted::taken(b"2024:05:06 07:08:09", Some(b"+02:00"));
    noted.fields.push(ascii(0x0110, b"HO-12"));
    noted.has_place = true;
    noted.orientation = 6;
    let formats = [ImageFormat::Jpeg, ImageFormat::WebP, ImageFormat::Tiff, ImageFormat::Bmp, ImageFormat::Gif];
    let mut seeds: Vec<_> = formats.into_iter().map(packed).collect();
    seeds.extend([noted.jpeg(), noted.png()]);
    seeds.push(include_bytes!("../heic/quarters-1.heic").to_vec());
    seeds.push(include_bytes!("../heic/quarters-7.heic").to_vec());
    seeds
}

/// A file with one to six faults: bytes changed, left out, doubled, cut off, or taken from another file.
fn spoilt(seeds: &[Vec<u8>], dice: &mut fastrand::Rng) -> Vec<u8> {
    let mut file = seeds[dice.usize(..seeds.len())].clone();
    for _ in 0..dice.usize(1..=6) {
        let at = dice.usize(..file.len().max(1)).min(file.len().saturating_sub(1));
        let end = (at + dice.usize(1..=16)).min(file.len());
        match dice.u8(..8) {
            0 | 1 => file[at..end].iter_mut().take(1).for_each(|byte| *byte = dice.u8(..)),
            2 => file[at..end].iter_mut().take(1).for_each(|byte| *byte ^= 1 << dice.u8(..8)),
            3 => file[at..end].fill([0, 0xFF, 0x7F, 0x80][dice.usize(..4)]),
            4 => drop(file.drain(at..end)),
            5 => {
                let piece = file[at..end].to_vec();
                file.splice(at..at, piece);
            }
            6 => file.truncate(at),
            _ => {
                let other = &seeds[dice.usize(..seeds.len())];
                let from = dice.usize(..other.len());
                let piece = other[from..(from + (end - at)).min(other.len())].to_vec();
                file.splice(at..end, piece);
            }
        }
    }
    file
}

/// What became of a file, in a word.
fn fate(file: Vec<u8>) -> &'static str {
    let picture = match Picture::from_bytes("spoilt.img", file) {
        Ok(picture) => picture,
        Err(error) => {
            assert!(error.to_string().contains("spoilt.img"), "{error}");
            return "refused";
        }
    };
    let size = (picture.width_px(), picture.height_px());
    // Huge pictures of a few bytes are decoded, but not a million times.
    if u64::from(size.0) * u64::from(size.1) > 4_000_000 {
        return "large";
    }
    match shrink_each(&picture, [16]) {
        Err(error) => {
            assert!(error.to_string().contains("spoilt.img"), "{error}");
            "refused when decoded"
        }
        Ok([small]) => {
            assert!(small.width() <= 16 && small.height() <= 16);
            let Ok((copy, _)) = handed_out::copy(&picture) else { return "small copy only" };
            let copy = Picture::from_bytes("copy", copy).unwrap();
            assert_eq!((copy.width_px(), copy.height_px()), size);
            assert!(copy.shot().taken.is_none() && copy.shot().camera.is_empty());
            "taken"
        }
    }
}

#[test]
fn a_picture_that_is_not_of_the_size_it_says_is_refused() {
    let file = spoilt(&seeds(), &mut fastrand::Rng::with_seed(LARGER_TOLD_THAN_IS as u64));
    let picture = Picture::from_bytes("board.gif", file).unwrap();
    assert_eq!((picture.width_px(), picture.height_px()), (64, 49_152));
    let refused = picture.decode().unwrap_err().to_string();
    assert!(
        refused.contains("board.gif") && refused.contains("64 × 49152") && refused.contains("64 × 64"),
        "{refused}"
    );
}

/// What the last panic said.
fn last_panic() -> &'static Mutex<String> {
    static LAST: Mutex<String> = Mutex::new(String::new());
    &LAST
}

#[test]
fn fuzz_spoilt_pictures_are_taken_or_refused_by_name() {
    // Decoders that panic are caught; a million traces would hide all else.
    let before = std::panic::take_hook();
    std::panic::set_hook(Box::new(|panic| *last_panic().lock().unwrap() = panic.to_string()));
    let seeds = seeds();
    let mut fates = BTreeMap::<&str, usize>::new();
    let (mut slowest, started) = ((0.0, 0), Instant::now());
    for number in 0..count() {
        let file = spoilt(&seeds, &mut fastrand::Rng::with_seed(number as u64));
        let start = Instant::now();
        let fate = std::panic::catch_unwind(|| fate(file));
        let seconds = start.elapsed().as_secs_f64();
        if seconds > slowest.0 {
            slowest = (seconds, number);
        }
        let Ok(fate) = fate else {
            std::panic::set_hook(before);
            panic!("spoilt file {number}: {}", last_panic().lock().unwrap());
        };
        *fates.entry(fate).or_default() += 1;
    }
    std::panic::set_hook(before);
    let seconds = started.elapsed().as_secs_f64();
    println!(
        "{} spoilt pictures in {seconds:.0} s: {fates:?}; the slowest, {}, took {:.3} s",
        count(),
        slowest.1,
        slowest.0
    );
    assert!(fates.get("taken").is_some_and(|taken| taken * 20 > count()), "hardly any was taken: {fates:?}");
    assert!(fates.get("refused").is_some_and(|refused| refused * 20 > count()), "hardly any was refused: {fates:?}");
}
