//! Colours taken off pictures: of drawn patches, in every turn, from the tiniest to all of it.

use benchwright::photo::measure::{self, MeasureError, Sampled};
use benchwright::photo::thumbnail::shrink_each;
use benchwright::photo::{Colours, Picture, tiles};
use image::codecs::png::PngEncoder;
use image::{DynamicImage, ExtendedColorType, ImageBuffer, ImageEncoder as _, Luma, Rgb, RgbImage};
use moxcms::ColorProfile;

use super::exif::Noted;
use super::quarters::{BLUE, GREEN, RED, WHITE, quarters, seen};

fn sample(picture: &DynamicImage, outline: &[[f32; 2]]) -> Result<Sampled, MeasureError> {
    measure::sample(picture, &Colours::SRGB, outline)
}

fn square(left: f32, top: f32, side: f32) -> Vec<[f32; 2]> {
    vec![[left, top], [left + side, top], [left + side, top + side], [left, top + side]]
}

fn bytes(Sampled { colour, .. }: Sampled) -> [f64; 3] {
    [colour.red, colour.green, colour.blue].map(|channel| channel * 255.0)
}

fn is_like(one: [f64; 3], Rgb(other): Rgb<u8>, within: f64) -> bool {
    one.iter().zip(other).all(|(one, other)| (one - f64::from(other)).abs() < within)
}

#[test]
fn a_patch_of_one_colour_has_that_colour() {
    let picture = quarters();
    for (left, top, colour) in [(0.1, 0.1, RED), (0.6, 0.1, GREEN), (0.1, 0.6, BLUE), (0.6, 0.6, WHITE)] {
        let sampled = sample(&picture, &square(left, top, 0.25)).unwrap();
        assert!(is_like(bytes(sampled), colour, 1e-6), "{sampled:?}");
        assert_eq!(sampled.clipped_percent, 0.0);
        // Of 48 × 32: 12 columns and 8 rows have their middle inside.
        assert_eq!(sampled.pixels, 96);
    }
}

/// Where a colour is seen after the camera's turn stands in `seen`, from the Exif standard.
#[test]
fn a_patch_lies_where_a_person_sees_it_however_the_camera_was_held() {
    for orientation in 1..=8 {
        let noted = Noted { orientation, ..Noted::taken(b"2024:05:06 07:08:09", None) };
        let picture = Picture::from_bytes("turned.png", noted.png()).unwrap().decode().unwrap();
        for ((is_right, is_lower), colour) in seen(orientation).into_iter().zip([RED, GREEN]) {
            let at = |is_far: bool| if is_far { 0.7 } else { 0.1 };
            let sampled = sample(&picture, &square(at(is_right), at(is_lower), 0.2)).unwrap();
            assert!(is_like(bytes(sampled), colour, 1e-6), "orientation {orientation}: {sampled:?}");
        }
    }
}

/// IEC 61966-2-1: half the light of white is encoded as 1.055 · 0.5^(1/2.4) − 0.055 = 0.735357, 187.516 of 255.
#[test]
fn light_is_averaged_not_its_encoding() {
    let board = RgbImage::from_fn(40, 40, |x, y| Rgb([if (x + y) % 2 == 0 { 255 } else { 0 }; 3]));
    let sampled = sample(&board.into(), &square(0.0, 0.0, 1.0)).unwrap();
    assert!(is_like(bytes(sampled), Rgb([188; 3]), 0.5) && (sampled.colour.red - 0.735_357).abs() < 1e-6);
    assert_eq!((sampled.clipped_percent, sampled.pixels), (100.0, 1600));
}

#[test]
fn clipped_pixels_are_counted_at_both_ends() {
    // A quarter too bright in one channel, a quarter black, a half fine.
    let picture = RgbImage::from_fn(40, 40, |x, _| match x {
        0..10 => Rgb([200, 254, 200]),
        10..20 => Rgb([0, 0, 0]),
        _ => Rgb([253, 1, 100]),
    });
    let sampled = sample(&picture.into(), &square(0.0, 0.0, 1.0)).unwrap();
    assert_eq!(sampled.clipped_percent, 50.0);
}

#[test]
fn a_patch_too_small_for_a_pixel_has_the_colour_of_the_one_it_lies_in() {
    let picture = quarters();
    for outline in [square(0.6, 0.2, 0.001), vec![[0.6, 0.2]], vec![[0.6, 0.2], [0.601, 0.2]]] {
        let sampled = sample(&picture, &outline).unwrap();
        assert!(is_like(bytes(sampled), GREEN, 1e-6) && sampled.pixels == 1, "{outline:?}: {sampled:?}");
    }
    let corner = sample(&picture, &[[1.0, 1.0]]).unwrap();
    assert!(is_like(bytes(corner), WHITE, 1e-6));
    assert_eq!(sample(&picture, &[]), Err(MeasureError::TooFewPoints { fewest: 1 }));
    assert_eq!(sample(&picture, &[[1.5, 0.5]]), Err(MeasureError::OffPicture));
}

/// An outline that goes round something twice takes it in; the notch of an L does not belong to it.
#[test]
fn only_what_an_outline_encloses_counts() {
    let picture = quarters();
    let notched = [[0.0, 0.0], [1.0, 0.0], [1.0, 0.5], [0.5, 0.5], [0.5, 1.0], [0.0, 1.0]];
    let sampled = sample(&picture, &notched).unwrap();
    assert_eq!(sampled.pixels, 48 * 32 * 3 / 4);
    let square = square(0.1, 0.1, 0.25);
    let twice = [&square[..], &square].concat();
    assert_eq!(sample(&picture, &twice), sample(&picture, &square));
}

#[test]
fn sixteen_bits_and_greys_are_read_as_they_are() {
    let fine = ImageBuffer::<Luma<u16>, _>::from_pixel(20, 20, Luma([12_345]));
    let sampled = sample(&DynamicImage::ImageLuma16(fine), &square(0.0, 0.0, 1.0)).unwrap();
    assert!((sampled.colour.red - 12_345.0 / 65_535.0).abs() < 1e-9);
    assert_eq!(sampled.colour.red, sampled.colour.blue);
}

/// A phone's picture in Display P3. What it means in sRGB is by colour-science 0.4.7 (RGB_to_RGB, both transfer
/// functions applied); a picture without a profile is sRGB as it is.
#[test]
fn colours_are_those_that_the_embedded_profile_says() {
    let profile = ColorProfile::new_display_p3().encode().unwrap();
    for (written, meant) in [
        ([0xD9, 0xD2, 0xBE], [218.520, 209.709, 187.727]),
        ([0xB0, 0x60, 0x50], [188.427, 90.609, 75.019]),
        ([0x80, 0x80, 0x80], [128.0; 3]),
    ] {
        let picture = RgbImage::from_pixel(16, 16, Rgb(written));
        let packed = |profile: Option<&Vec<u8>>| {
            let mut bytes = Vec::new();
            let mut encoder = PngEncoder::new(&mut bytes);
            if let Some(profile) = profile {
                encoder.set_icc_profile(profile.clone()).unwrap();
            }
            encoder.write_image(&picture, 16, 16, ExtendedColorType::Rgb8).unwrap();
            Picture::from_bytes("phone.png", bytes).unwrap()
        };
        let taken = |picture: Picture| {
            bytes(measure::sample(&picture.decode().unwrap(), &Colours::of(&picture), &square(0.2, 0.2, 0.6)).unwrap())
        };
        let shown = |copy: &[u8]| {
            copy.chunks_exact(3)
                .all(|pixel| pixel.iter().zip(meant).all(|(one, other)| (f64::from(*one) - other).abs() <= 1.0))
        };
        let whole = tiles::decoded(&packed(Some(&profile))).unwrap();
        let [small] = shrink_each(&packed(Some(&profile)), [8]).unwrap();
        assert!(shown(&whole) && shown(&small), "{:?} {:?} {meant:?}", whole.get_pixel(0, 0), small.get_pixel(0, 0));
        assert_eq!(tiles::decoded(&packed(None)).unwrap(), picture, "nothing is done to what is sRGB");
        let wide = taken(packed(Some(&profile)));
        assert!(wide.iter().zip(meant).all(|(one, other)| (one - other).abs() < 0.1), "{wide:?} {meant:?}");
        assert!(is_like(taken(packed(None)), Rgb(written), 1e-6));
    }
}
