//! Copies that are handed out: the same picture, and nothing of what the camera noted but how it is turned.

use benchwright::photo::{Picture, handed_out};
use image::codecs::png::{PngDecoder, PngEncoder};
use image::{ExtendedColorType, ImageDecoder as _, ImageEncoder as _, ImageFormat};
use moxcms::ColorProfile;

use super::exif::{Noted, PLACE, ascii};
use super::quarters::{assert_turned, packed};

fn noted(orientation: u8) -> Noted {
    Noted {
        orientation,
        fields: vec![ascii(0x010F, b"Halvorsen Optik"), ascii(0x0132, b"2024:05:06 07:08:09")],
        exif: vec![ascii(0x9003, b"2024:05:06 07:08:09")],
        has_place: true,
    }
}

fn holds(bytes: &[u8], text: &[u8]) -> bool {
    bytes.windows(text.len()).any(|window| window == text)
}

/// What must not leave.
const SECRETS: [&[u8]; 4] = [PLACE, b"Halvorsen", b"2024:05:06", b"58.2,13.1"];

fn assert_clean(bytes: &[u8], what: &str) {
    for secret in SECRETS {
        assert!(!holds(bytes, secret), "{what}: {}", String::from_utf8_lossy(secret));
    }
}

/// A JPEG segment.
fn segment(marker: u8, body: &[u8]) -> Vec<u8> {
    [&[0xFF, marker], &(body.len() as u16 + 2).to_be_bytes()[..], body].concat()
}

#[test]
fn a_jpeg_loses_all_notes_and_keeps_picture_turn_and_colour_profile() {
    for orientation in 1..=8 {
        let jpeg = noted(orientation).jpeg();
        let more = [
            segment(0xE1, b"http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>58.2,13.1</x:xmpmeta>"),
            segment(0xED, b"Photoshop 3.0\0 ATTIC IN NORDKAMP"),
            segment(0xFE, b"taken by a Halvorsen at 58.2,13.1"),
            segment(0xE2, b"MPF\0 58.2,13.1"),
            segment(0xE2, b"ICC_PROFILE\0\x01\x01the colours"),
        ]
        .concat();
        // What some phones put behind the picture: another one, with notes of its own.
        let bytes = [&jpeg[..2], &more, &jpeg[2..], &noted(1).jpeg()].concat();
        assert!(SECRETS.iter().all(|secret| holds(&bytes, secret)), "the picture has something to hide");
        let picture = Picture::from_bytes("board.jpg", bytes).unwrap();
        let (copy, extension) = handed_out::copy(&picture).unwrap();
        assert_eq!(extension, "jpg");
        assert_clean(&copy, "JPEG");
        assert!(holds(&copy, b"the colours") && copy.ends_with(&[0xFF, 0xD9]));
        let again = Picture::from_bytes("copy.jpg", copy).unwrap();
        assert_eq!(again.shot().orientation, orientation);
        assert!(again.shot().taken.is_none() && again.shot().camera.is_empty());
        assert_eq!(again.decode().unwrap(), picture.decode().unwrap(), "the very pixels");
    }
}

#[test]
fn anything_else_is_written_anew_upright() {
    for orientation in [1, 6, 7] {
        let png = Picture::from_bytes("board.png", noted(orientation).png()).unwrap();
        assert_eq!(png.shot().orientation, orientation);
        let (copy, extension) = handed_out::copy(&png).unwrap();
        assert_eq!(extension, "png");
        assert_clean(&copy, "PNG");
        let again = Picture::from_bytes("copy.png", copy).unwrap();
        assert_eq!(again.shot().orientation, 1);
        assert_turned(&again.decode().unwrap().into_rgb8(), orientation, "copy");
    }
    for format in [ImageFormat::WebP, ImageFormat::Tiff, ImageFormat::Bmp, ImageFormat::Gif] {
        let picture = Picture::from_bytes("board", packed(format)).unwrap();
        let (copy, extension) = handed_out::copy(&picture).unwrap();
        assert_eq!(extension, "png");
        let again = Picture::from_bytes("copy.png", copy).unwrap().decode().unwrap();
        assert_eq!(again.into_rgb8(), picture.decode().unwrap().into_rgb8(), "{format:?}");
    }
}

/// Its values mean nothing without the profile that they were written under.
#[test]
fn a_picture_written_anew_keeps_its_colour_profile() {
    let profile = ColorProfile::new_display_p3().encode().unwrap();
    let mut bytes = Vec::new();
    let mut encoder = PngEncoder::new(&mut bytes);
    encoder.set_icc_profile(profile.clone()).unwrap();
    encoder.write_image(&[0xB0, 0x60, 0x50], 1, 1, ExtendedColorType::Rgb8).unwrap();
    let (copy, _) = handed_out::copy(&Picture::from_bytes("phone.png", bytes).unwrap()).unwrap();
    let mut copy = PngDecoder::new(std::io::Cursor::new(copy)).unwrap();
    assert_eq!(copy.icc_profile().unwrap(), Some(profile));
}
