//! Draws the sample workshop's photographs: invented parts on a bench mat, the same picture for the same words.

mod board;
mod canvas;
mod component;
mod print;
pub mod sketch;
mod thing;

use canvas::{Area, Canvas, HEIGHT, WIDTH, ink};
use image::RgbImage;
use image::codecs::jpeg::JpegEncoder;

use crate::store::sample::{Shape, Subject};

/// How strongly a drawn photograph is packed: small enough that the sample stays small, good enough to look at.
const QUALITY: u8 = 84;

/// The picture of a subject, 800 × 600 pixels.
pub fn draw(subject: &Subject) -> RgbImage {
    let mut canvas = Canvas::new();
    let mut dice = fastrand::Rng::with_seed(subject.seed);
    mat(&mut canvas);
    match subject.shape {
        Shape::Board => board::mainboard(&mut canvas, subject, &mut dice),
        Shape::Card => board::card(&mut canvas, subject, &mut dice),
        Shape::Module => board::module(&mut canvas, subject, &mut dice),
        Shape::Cartridge => thing::cartridge(&mut canvas, subject),
        Shape::Chip => thing::chip(&mut canvas, subject),
        Shape::Disk => thing::disk(&mut canvas, subject),
        Shape::Face => thing::face(&mut canvas, subject),
        Shape::Supply => thing::supply(&mut canvas, subject, &mut dice),
        Shape::Desktop => thing::case(&mut canvas, subject, false, &mut dice),
        Shape::Tower => thing::case(&mut canvas, subject, true, &mut dice),
        Shape::Keyboard => thing::keyboard(&mut canvas, subject, &mut dice),
        Shape::Monitor => thing::monitor(&mut canvas, subject),
        Shape::Small => thing::small(&mut canvas, subject, &mut dice),
    }
    if subject.card {
        // 18 % reflectance, as photographers' cards have, is 118 of 255 in sRGB (IEC 61966-2-1).
        canvas.slab(Area::new(WIDTH * 0.62, HEIGHT * 0.76, WIDTH * 0.24, HEIGHT * 0.16), 2.0, ink(118, 118, 118));
    }
    // Corners fall off, as under a bench lamp.
    canvas.glow(WIDTH * 0.42, HEIGHT * 0.3, WIDTH * 0.6, [255, 250, 232, 26]);
    RgbImage::from_raw(WIDTH as u32, HEIGHT as u32, canvas.into_rgb()).expect("as many bytes as pixels were drawn")
}

/// The picture of a subject as a JPEG file.
pub fn draw_jpeg(subject: &Subject) -> Vec<u8> {
    let mut bytes = Vec::with_capacity(96 * 1024);
    JpegEncoder::new_with_quality(&mut bytes, QUALITY)
        .encode_image(&draw(subject))
        .expect("an RGB picture of fixed size can always be packed");
    bytes
}

/// The mat on the bench: grey-green, ruled every two centimetres.
fn mat(canvas: &mut Canvas) {
    canvas.lit(Area::new(0.0, 0.0, WIDTH, HEIGHT), 0.0, ink(84, 112, 102), ink(58, 82, 76));
    for index in 0..=20_u8 {
        let at = f32::from(index) * 40.0;
        let width = if index % 5 == 0 { 1.6 } else { 0.8 };
        canvas.line(&[(at, 0.0), (at, HEIGHT)], width, [200, 220, 206, 34]);
        canvas.line(&[(0.0, at), (WIDTH, at)], width, [200, 220, 206, 34]);
    }
}
