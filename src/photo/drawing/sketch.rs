//! Small pictures that are quickly drawn and all differ, for trying at scale.

use image::codecs::jpeg::JpegEncoder;
use image::{Rgb, RgbImage};

/// The size of a sketch, pixels.
pub const SIZE_PX: [u32; 2] = [320, 240];

/// The JPEG file of a sketch: patches of colour, another pattern for each number.
pub fn sketch_jpeg(number: u32) -> Vec<u8> {
    let mut dice = fastrand::Rng::with_seed(u64::from(number));
    let patches: [Rgb<u8>; 12] = std::array::from_fn(|_| Rgb([dice.u8(40..220), dice.u8(40..220), dice.u8(40..220)]));
    let picture = RgbImage::from_fn(SIZE_PX[0], SIZE_PX[1], |x, y| patches[(y / 80 * 4 + x / 80) as usize]);
    let mut bytes = Vec::with_capacity(4096);
    JpegEncoder::new_with_quality(&mut bytes, 80)
        .encode_image(&picture)
        .expect("an RGB picture of fixed size can always be packed");
    bytes
}
