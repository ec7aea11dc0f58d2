//! A small picture whose turn can be told: four quarters of four colours.

use image::{DynamicImage, ImageFormat, Rgb, RgbImage};

pub const RED: Rgb<u8> = Rgb([230, 20, 20]);
pub const GREEN: Rgb<u8> = Rgb([20, 200, 20]);
pub const BLUE: Rgb<u8> = Rgb([20, 20, 220]);
pub const WHITE: Rgb<u8> = Rgb([250, 250, 250]);

/// 48 × 32 pixels: red upper left, green upper right, blue lower left, white lower right.
pub fn quarters() -> DynamicImage {
    DynamicImage::ImageRgb8(RgbImage::from_fn(48, 32, |x, y| match (x < 24, y < 16) {
        (true, true) => RED,
        (false, true) => GREEN,
        (true, false) => BLUE,
        (false, false) => WHITE,
    }))
}

/// The picture as a file.
pub fn packed(format: ImageFormat) -> Vec<u8> {
    let mut bytes = std::io::Cursor::new(Vec::new());
    quarters().write_to(&mut bytes, format).unwrap();
    bytes.into_inner()
}

/// Corners as (right, lower) at which the red and the green quarter are seen, by orientation from 1 to 8.
/// Source: CIPA DC-008 (Exif 2.3), 4.6.4 A, Orientation: where the stored 0th row and 0th column are seen.
pub fn seen(orientation: u8) -> [(bool, bool); 2] {
    let (left, right, upper, lower) = (false, true, false, true);
    match orientation {
        1 => [(left, upper), (right, upper)],
        2 => [(right, upper), (left, upper)],
        3 => [(right, lower), (left, lower)],
        4 => [(left, lower), (right, lower)],
        5 => [(left, upper), (left, lower)],
        6 => [(right, upper), (right, lower)],
        7 => [(right, lower), (right, upper)],
        _ => [(left, lower), (left, upper)],
    }
}

/// Fails unless a picture is turned as an orientation says, by its size and corners.
pub fn assert_turned(picture: &RgbImage, orientation: u8, what: &str) {
    let is_upright = orientation < 5;
    assert_eq!(picture.width() > picture.height(), is_upright, "{what}, orientation {orientation}");
    for (corner, colour) in seen(orientation).into_iter().zip([RED, GREEN]) {
        let at = |is_far: bool, side: u32| if is_far { side - 3 } else { 2 };
        let pixel = picture.get_pixel(at(corner.0, picture.width()), at(corner.1, picture.height())).0;
        let is_like = pixel.iter().zip(colour.0).all(|(is, should)| is.abs_diff(should) < 60);
        assert!(is_like, "{what}, orientation {orientation}: {pixel:?} at {corner:?}");
    }
}
