//! `photos LOGBOOK marks` and marked copies: what marks measure, and a picture of it without a word of its camera.

use std::fs;
use std::path::Path;

use benchwright::record::{
    Change, FindingState, Kind, MarkUse, Moment, PartId, Photo, PhotoMark, PhotoView, Severity, When,
};
use benchwright::store::{FileSource, Store};
use chrono::NaiveDate;
use image::codecs::png::PngEncoder;
use image::{DynamicImage, ExtendedColorType, ImageEncoder as _, ImageFormat, Rgb, RgbImage};
use moxcms::ColorProfile;
use serde_json::Value;

use super::exif::{Noted, PLACE, ascii};
use crate::{json, reason, records, text};

fn day(year: i32, month: u32, day: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(year, month, day).unwrap()
}

/// A logbook with part 0042.
fn logbook(path: &Path) -> (Store, PartId) {
    let store = Store::create(&path.join("w.logbook"), records::workshop("Attic")).unwrap();
    let part = records::part("0042", Kind::Mainboard, "Nordkamp NB-4");
    let id = part.id;
    let mut change = Change::new("Log");
    change.put(part);
    store.write(change).unwrap();
    (store, id)
}

/// Keeps a picture as the part's photograph, taken on a day.
fn photo(store: &Store, part: PartId, bytes: &[u8], (width_px, height_px): (u32, u32), taken: When) -> Photo {
    let kept = store.keep_photo(FileSource::Bytes(bytes), "png").unwrap();
    let photo = Photo {
        part: Some(part),
        width_px,
        height_px,
        taken,
        view: PhotoView::Detail,
        added: Moment::on(day(2026, 1, 1)),
        ..records::photo(&kept.content, "png")
    };
    let mut change = Change::new("Photograph");
    change.put(photo.clone());
    store.write(change).unwrap();
    photo
}

fn packed(picture: RgbImage) -> Vec<u8> {
    let mut bytes = std::io::Cursor::new(Vec::new());
    DynamicImage::ImageRgb8(picture).write_to(&mut bytes, ImageFormat::Png).unwrap();
    bytes.into_inner()
}

fn square(left: f32, top: f32, width: f32, height: f32) -> Vec<[f32; 2]> {
    vec![[left, top], [left + width, top], [left + width, top + height], [left, top + height]]
}

fn mark(photo: &Photo, role: MarkUse, points: Vec<[f32; 2]>) -> PhotoMark {
    PhotoMark::new(Store::new_id(), photo.id, role, points)
}

fn put(store: &Store, marks: Vec<PhotoMark>) {
    let mut change = Change::new("Marks");
    for mark in marks {
        change.put(mark);
    }
    store.write(change).unwrap();
}

/// Lets go of the logbook, so that the program can open it.
fn closed(store: Store) -> String {
    let path = store.folder().to_str().unwrap().to_owned();
    drop(store);
    path
}

/// On paper: 400 × 200 pixels, a scale of 40 pixels for 20 mm, so half a millimetre a pixel. A surface of 200 × 100
/// pixels is 100 mm × 50 mm; damage of 20 × 10 and 30 × 10 pixels on it is 50 + 75 mm²: 2.5 %.
#[test]
fn a_surface_with_damage_is_told_in_millimetres_grades_and_change() {
    let folder = tempfile::tempdir().unwrap();
    let (store, part) = logbook(folder.path());
    let photo = photo(&store, part, &packed(RgbImage::new(400, 200)), (400, 200), When::Day(day(2025, 1, 1)));
    let finding = records::finding(part, "");
    let looked = Moment::on(day(2024, 1, 1));
    let mut look = records::look(finding.id, looked, FindingState::Open, Severity::Plain);
    look.share_percent = Some(1.0);
    let (finding_id, mut change) = (finding.id, Change::new("Finding"));
    change.put(benchwright::record::Finding { note: "Rust on the shell".to_owned(), ..finding });
    change.put(look);
    store.write(change).unwrap();
    let tied = |mark: PhotoMark| PhotoMark { finding: Some(finding_id), ..mark };
    put(
        &store,
        vec![
            PhotoMark { length_mm: Some(20.0), ..mark(&photo, MarkUse::Scale, vec![[0.0, 0.9], [0.1, 0.9]]) },
            tied(mark(&photo, MarkUse::Surface, square(0.25, 0.25, 0.5, 0.5))),
            mark(&photo, MarkUse::Damage, square(0.3, 0.3, 0.05, 0.05)),
            tied(mark(&photo, MarkUse::Damage, square(0.5, 0.5, 0.075, 0.05))),
            mark(&photo, MarkUse::Length, vec![[0.0, 0.0], [0.3, 0.0]]),
            mark(&photo, MarkUse::Damage, square(0.0, 0.0, 0.05, 0.05)),
        ],
    );
    let path = closed(store);
    let answer = &json(&["photos", &path, "marks", "0042"])["photos"][0];
    let near = |value: &Value, expected: f64| (value.as_f64().unwrap() - expected).abs() < 1e-3 * expected.abs();
    assert_eq!((&answer["basis"], &answer["unit"]), (&"scale".into(), &"mm".into()));
    let share = &answer["shares"][0];
    assert_eq!(share["finding"], finding_id.to_string());
    assert_eq!(share["damages"].as_array().unwrap().len(), 2, "the one that is tied to nothing goes with its surface");
    assert!(near(&share["surface_area"], 5000.0) && near(&share["damaged_area"], 125.0));
    assert!(near(&share["share_percent"], 2.5));
    // ISO 4628-3: over 1 to 8 % is Ri 4 by our rule; ASTM D610-08, table 1: over 1 to 3 % is grade 5.
    assert_eq!((share["ri"].as_u64(), share["d610"].as_u64()), (Some(4), Some(5)));
    // From 1 % on 2024-01-01, a leap year: 1.5 points in 366 days, 1.5 × 365.25 / 366 = 1.49693 a year.
    assert!(near(&share["since"]["points"], 1.5));
    assert!(near(&share["since"]["change"]["points_per_year"], 1.49693));
    assert_eq!(answer["marks"][5]["stray"], true);
    assert!(near(&answer["marks"][4]["length"], 60.0));
    let said = text(&["photos", &path, "marks", "0042"]);
    for line in [
        "2.50 % damaged: ISO 4628-3 Ri 4, ASTM D610 grade 5",
        "+1.50 points since 2024-01-01, +1.50 a year",
        "Surface: Rust on the shell (open)",
        "60.0 mm",
        "! It lies on no surface",
    ] {
        assert!(said.contains(line), "{line}: {said}");
    }
}

/// Three patches: grey card, a yellowed bezel, the side that no light reached; colours and their figures as
/// colour-science 0.4.7 has them (yellowness D9D2BE 20.83, E8E4D9 10.94; between them CIEDE2000 5.45262).
#[test]
fn a_bezel_is_told_yellower_than_its_hidden_side_and_what_is_missing_is_said() {
    let drawn = RgbImage::from_fn(90, 30, |x, _| match x {
        0..30 => Rgb([0x80; 3]),
        30..60 => Rgb([0xD9, 0xD2, 0xBE]),
        _ => Rgb([0xE8, 0xE4, 0xD9]),
    });
    let folder = tempfile::tempdir().unwrap();
    let (store, part) = logbook(folder.path());
    let photo = photo(&store, part, &packed(drawn), (90, 30), When::Unknown);
    let noted = |mark: PhotoMark| PhotoMark { note: "Bezel".to_owned(), ..mark };
    let bezel = noted(mark(&photo, MarkUse::Sample, square(0.4, 0.2, 0.2, 0.6)));
    let hidden = noted(mark(&photo, MarkUse::Hidden, square(0.75, 0.2, 0.2, 0.6)));
    let card = mark(&photo, MarkUse::Reference, square(0.05, 0.2, 0.2, 0.6));
    put(&store, vec![bezel, hidden]);
    let path = closed(store);
    let said = text(&["photos", &path, "marks", "0042"]);
    assert!(said.contains("No neutral patch is marked in the picture"), "{said}");

    let store = Store::open(Path::new(&path)).unwrap();
    put(&store, vec![card]);
    let path = closed(store);
    let answer = &json(&["photos", &path, "marks", "0042"])["photos"][0];
    let line = |role: &str| answer["marks"].as_array().unwrap().iter().find(|line| line["role"] == role).unwrap();
    let tone = &line("sample")["tone"];
    let near = |value: &Value, expected: f64, within: f64| (value.as_f64().unwrap() - expected).abs() < within;
    assert!(near(&tone["yellowness"]["index"], 20.83095, 1e-3), "{tone}");
    assert!(near(&line("hidden")["tone"]["yellowness"]["index"], 10.94009, 1e-3));
    assert!(near(&tone["differences"][0]["delta_e_2000"], 5.45262, 1e-3), "{tone}");
    assert!(near(&tone["differences"][0]["yellower"], 20.83095 - 10.94009, 1e-3));
    assert_eq!(tone["warnings"], serde_json::json!([]));
    // Looking at patches writes nothing: the marks in the logbook are as they were.
    let store = Store::open_reading(Path::new(&path)).unwrap();
    assert!(store.logbook().photo_files().flat_map(|file| &file.marks).all(|mark| mark.colour().is_none()));
}

/// What must not leave with a copy.
const SECRETS: [&[u8]; 4] = [PLACE, b"Halvorsen", b"2024:05:06", b"Exif"];

#[test]
fn a_marked_copy_has_picture_marks_and_legend_and_nothing_of_the_camera() {
    let folder = tempfile::tempdir().unwrap();
    let (store, part) = logbook(folder.path());
    let camera = Noted {
        fields: vec![ascii(0x010F, b"Halvorsen Optik"), ascii(0x0132, b"2024:05:06 07:08:09")],
        exif: vec![ascii(0x9003, b"2024:05:06 07:08:09")],
        has_place: true,
        orientation: 6,
    };
    // Held upright: 48 × 32 as stored are 32 × 48 as seen.
    let photo = photo(&store, part, &camera.png(), (32, 48), When::Day(day(2024, 5, 6)));
    let surface = mark(&photo, MarkUse::Surface, square(0.25, 0.25, 0.5, 0.5));
    put(&store, vec![surface]);
    let path = closed(store);
    let out = folder.path().join("out");
    let copy = |format: &str, out: &Path| {
        let answer = json(&["photos", &path, "copy", "0042", out.to_str().unwrap(), "--marked", format]);
        fs::read(answer["copied"][0]["file"].as_str().unwrap()).unwrap()
    };
    let (png, jpeg) = (copy("png", &out), copy("jpg", &out));
    for (bytes, what) in [(&png, "PNG"), (&jpeg, "JPEG")] {
        for secret in SECRETS {
            assert!(!bytes.windows(secret.len()).any(|window| window == secret), "{what}: {secret:?}");
        }
    }
    let drawn = image::load_from_memory(&png).unwrap().into_rgb8();
    assert_eq!(image::load_from_memory(&jpeg).unwrap().into_rgb8().dimensions(), drawn.dimensions());
    // 48 pixels are enlarged 17 times to 816, and the legend stands below.
    assert!(drawn.width() >= 32 * 17 && drawn.height() > 816 + 40, "{:?}", drawn.dimensions());
    // Pixels away from the marks stay what they were: the corners of the picture as it is seen.
    let original = image::load_from_memory(&camera.png()).unwrap().rotate90().into_rgb8();
    for (x, y) in [(1, 1), (30, 1), (1, 46), (30, 46)] {
        assert_eq!(drawn.get_pixel(x * 17 + 8, y * 17 + 8), original.get_pixel(x, y));
    }
    // The surface's edge is drawn on its left side, in another colour than the picture has there.
    let edge = (0..20).map(|step| drawn.get_pixel(32 * 17 / 4, 340 + step * 10));
    assert!(edge.clone().any(|pixel| pixel != original.get_pixel(8, 20)));
    // There are dark letters on light paper below.
    let below = drawn.enumerate_pixels().filter(|(_, y, _)| *y > 830);
    let (mut dark, mut light) = (0, 0);
    for (.., Rgb([red, green, blue])) in below {
        let sum = u32::from(*red) + u32::from(*green) + u32::from(*blue);
        dark += u32::from(sum < 250);
        light += u32::from(sum > 600);
    }
    assert!(dark > 200 && light > 20 * dark, "{dark} dark pixels, {light} light ones");
    let again = reason_of_copy(&path, &out);
    assert!(again.contains("cannot be written"), "{again}");
}

/// A copy that is there already is left alone, and said to be.
fn reason_of_copy(path: &str, out: &Path) -> String {
    let output = crate::benchwright(&["photos", path, "copy", "0042", out.to_str().unwrap(), "--marked", "png"]);
    assert_eq!(output.status.code(), Some(1));
    String::from_utf8(output.stdout).unwrap()
}

#[test]
fn any_size_of_picture_can_be_marked() {
    for (width, height) in [(1, 1), (3, 700), (13_000, 9)] {
        let folder = tempfile::tempdir().unwrap();
        let (store, part) = logbook(folder.path());
        let picture = packed(RgbImage::from_pixel(width, height, Rgb([90, 120, 90])));
        let photo = photo(&store, part, &picture, (width, height), When::Unknown);
        put(
            &store,
            vec![mark(&photo, MarkUse::Place, vec![[0.5, 0.5]]), mark(&photo, MarkUse::Place, vec![[1.0, 0.0]])],
        );
        let path = closed(store);
        let out = folder.path().join("out");
        let answer = json(&["photos", &path, "copy", "0042", out.to_str().unwrap(), "--marked", "png"]);
        let copy = image::open(answer["copied"][0]["file"].as_str().unwrap()).unwrap();
        assert!(copy.width() >= 400 && copy.width() <= 14_000, "{width}: {}", copy.width());
    }
}

#[test]
fn a_photograph_that_is_not_there_is_named() {
    let folder = tempfile::tempdir().unwrap();
    let (store, _) = logbook(folder.path());
    let path = closed(store);
    assert!(reason(&["photos", &path, "marks", "0099"]).contains("0099"));
    let output = crate::benchwright(&["photos", &path, "copy", "0042", "out", "--marked", "tiff"]);
    assert_eq!(output.status.code(), Some(2));
}

/// A phone's picture in Display P3 keeps its colours on a copy that says nothing of profiles: B06050 there is
/// (188.427, 90.609, 75.019) in sRGB. Source: colour-science 0.4.7, RGB_to_RGB.
#[test]
fn a_marked_copy_shows_the_colours_that_the_profile_says() {
    let folder = tempfile::tempdir().unwrap();
    let (store, part) = logbook(folder.path());
    let mut bytes = Vec::new();
    let mut encoder = PngEncoder::new(&mut bytes);
    encoder.set_icc_profile(ColorProfile::new_display_p3().encode().unwrap()).unwrap();
    let flat = RgbImage::from_pixel(60, 40, Rgb([0xB0, 0x60, 0x50]));
    encoder.write_image(&flat, 60, 40, ExtendedColorType::Rgb8).unwrap();
    let photo = photo(&store, part, &bytes, (60, 40), When::Unknown);
    put(&store, vec![mark(&photo, MarkUse::Surface, square(0.6, 0.6, 0.2, 0.2))]);
    let path = closed(store);
    let out = folder.path().join("out");
    let answer = json(&["photos", &path, "copy", "0042", out.to_str().unwrap(), "--marked", "png"]);
    let copy = image::open(answer["copied"][0]["file"].as_str().unwrap()).unwrap().into_rgb8();
    let corner = copy.get_pixel(3, 3).0;
    let meant = [188.427, 90.609, 75.019];
    assert!(corner.iter().zip(meant).all(|(one, other)| (f64::from(*one) - other).abs() <= 1.0), "{corner:?}");
}
