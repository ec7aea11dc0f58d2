//! What a camera noted: all eight orientations, the time with its offset, the camera.

use benchwright::photo::thumbnail::shrink;
use benchwright::photo::{Format, Picture};
use benchwright::record::When;

use super::exif::{Noted, ascii};
use super::quarters::assert_turned;

/// The quarters with every orientation, written by libheif 1.23 with x265 4.3.
const HEIC: [&[u8]; 8] = [
    include_bytes!("../heic/quarters-1.heic"),
    include_bytes!("../heic/quarters-2.heic"),
    include_bytes!("../heic/quarters-3.heic"),
    include_bytes!("../heic/quarters-4.heic"),
    include_bytes!("../heic/quarters-5.heic"),
    include_bytes!("../heic/quarters-6.heic"),
    include_bytes!("../heic/quarters-7.heic"),
    include_bytes!("../heic/quarters-8.heic"),
];

#[test]
fn all_eight_orientations_are_turned_as_the_standard_says() {
    for orientation in 1..=8 {
        let noted = Noted::turned(orientation);
        let files = [
            (Format::Jpeg, noted.jpeg()),
            (Format::Png, noted.png()),
            (Format::Heic, HEIC[usize::from(orientation) - 1].to_vec()),
        ];
        for (format, bytes) in files {
            let picture = Picture::from_bytes("turned", bytes).unwrap();
            assert_eq!(picture.format(), format);
            let size = if orientation < 5 { (48, 32) } else { (32, 48) };
            assert_eq!((picture.width_px(), picture.height_px()), size, "{format:?}, orientation {orientation}");
            let whole = picture.decode().unwrap().into_rgb8();
            assert_eq!(whole.dimensions(), size);
            assert_turned(&whole, orientation, &format!("{format:?} whole"));
            let small = image::DynamicImage::ImageRgba8(shrink(&picture, 24).unwrap()).into_rgb8();
            assert_eq!(small.width().max(small.height()), 24);
            assert_turned(&small, orientation, &format!("{format:?} small"));
        }
    }
}

/// When a picture was taken, as it is written for a person's computer.
fn taken(noted: &Noted) -> Option<String> {
    let picture = Picture::from_bytes("taken.jpg", noted.jpeg()).unwrap();
    picture.shot().taken.map(|taken| taken.to_string())
}

#[test]
fn the_time_on_the_cameras_clock_is_read_with_its_offset() {
    let noted = Noted::taken(b"2024:05:06 23:30:09", Some(b"-03:30"));
    assert_eq!(taken(&noted).as_deref(), Some("2024-05-06T23:30:09-03:30"));
    let picture = Picture::from_bytes("taken.jpg", noted.jpeg()).unwrap();
    let at = picture.shot().taken.unwrap();
    // The day is the one that whoever took it lived in, though it was the seventh in Greenwich.
    assert_eq!(at.day(), "2024-05-06".parse::<When>().unwrap());
    assert_eq!(at.instant().unwrap().to_rfc3339(), "2024-05-07T03:00:09+00:00");
    assert_eq!(taken(&Noted::taken(b"1999:12:31 23:59:59", None)).as_deref(), Some("1999-12-31T23:59:59"));
    let png = Picture::from_bytes("taken.png", noted.png()).unwrap();
    assert_eq!(png.shot(), picture.shot());
}

#[test]
fn a_clock_that_was_never_set_tells_nothing_and_the_next_best_time_counts() {
    // Exif 2.32, 4.6.4 D: where the time is unknown, all letters but the colons may be spaces.
    for unset in [&b"0000:00:00 00:00:00"[..], b"    :  :     :  :  ", b"2024:13:06 10:00:00", b"yesterday"] {
        assert_eq!(taken(&Noted::taken(unset, None)), None);
    }
    let mut noted = Noted::taken(b"0000:00:00 00:00:00", Some(b"+01:00"));
    noted.exif.push(ascii(0x9004, b"2003:02:01 04:05:06"));
    noted.fields.push(ascii(0x0132, b"2009:09:09 09:09:09"));
    assert_eq!(taken(&noted).as_deref(), Some("2003-02-01T04:05:06"));
}

#[test]
fn the_camera_is_named_once() {
    for (maker, model, said) in [
        (&b"NORDKAMP"[..], &b"Nordkamp Snap 3 "[..], "Nordkamp Snap 3"),
        (b"Halvorsen Optik", b"HO-12", "Halvorsen Optik HO-12"),
        (b"", b"HO-12", "HO-12"),
    ] {
        let fields = vec![ascii(0x010F, maker), ascii(0x0110, model)];
        let noted = Noted { orientation: 1, fields, ..Noted::default() };
        assert_eq!(Picture::from_bytes("a.jpg", noted.jpeg()).unwrap().shot().camera, said);
    }
}
