//! Large pictures in pieces: only what is looked at is cut out, at the size it is looked at.

use image::{Rgb, RgbImage};

use super::profile::Colours;
use super::thumbnail::on_paper;
use super::{Picture, PictureError};

/// The side of a tile, pixels, without the rim.
pub const TILE_PX: u32 = 512;

/// Pixels of the neighbours around a tile, so that nothing shows where two meet.
pub const RIM_PX: u32 = 1;

/// A piece of a picture: at level 0 pixel for pixel, at each level above half as large in each direction.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Tile {
    pub level: u8,
    /// Columns of tiles to its left.
    pub x: u32,
    /// Rows of tiles above it.
    pub y: u32,
}

impl Tile {
    /// The level whose tiles have at least one pixel for each of the screen; `zoom` is pixels of the screen for one
    /// of the picture.
    pub fn level_for(zoom: f32) -> u8 {
        (1.0 / zoom.max(1e-6)).log2().floor().clamp(0.0, 16.0) as u8
    }

    /// How many of the picture's pixels its side spans.
    pub fn span_px(level: u8) -> u32 {
        TILE_PX << level
    }

    /// Its left, top, width and height in the picture's pixels; `None` where it lies outside.
    pub fn part_of(&self, [width_px, height_px]: [u32; 2]) -> Option<[u32; 4]> {
        let span = Self::span_px(self.level);
        let (left, top) = (self.x.checked_mul(span)?, self.y.checked_mul(span)?);
        (left < width_px && top < height_px).then(|| [left, top, span.min(width_px - left), span.min(height_px - top)])
    }
}

/// The whole picture without transparency, turned as the camera says, in sRGB. Takes long.
pub fn decoded(picture: &Picture) -> Result<RgbImage, PictureError> {
    Ok(Colours::of(picture).shown(on_paper(picture.decode()?)))
}

/// Cuts a tile out, with its rim; the picture's outermost pixels are repeated where it ends. `None` outside.
pub fn cut(image: &RgbImage, tile: Tile) -> Option<RgbImage> {
    let [left, top, width, height] = tile.part_of([image.width(), image.height()])?;
    let step = 1 << tile.level;
    let (width, height) = (width.div_ceil(step), height.div_ceil(step));
    let (last_x, last_y) = ((image.width() - 1) / step, (image.height() - 1) / step);
    // A rim's place in the picture, counted in pixels of this level.
    let place = |at: u32, first: u32, last: u32| (first / step + at).saturating_sub(RIM_PX).min(last);
    Some(RgbImage::from_fn(width + 2 * RIM_PX, height + 2 * RIM_PX, |x, y| {
        mean(image, place(x, left, last_x) * step, place(y, top, last_y) * step, step)
    }))
}

/// The mean of a square of pixels, as far as it lies in the picture.
fn mean(image: &RgbImage, left: u32, top: u32, side: u32) -> Rgb<u8> {
    if side == 1 {
        return *image.get_pixel(left, top);
    }
    let (right, bottom) = ((left + side).min(image.width()), (top + side).min(image.height()));
    let mut sum = [0_u32; 3];
    for y in top..bottom {
        let row = 3 * (y * image.width() + left) as usize..3 * (y * image.width() + right) as usize;
        for pixel in image.as_raw()[row].chunks_exact(3) {
            for (sum, part) in sum.iter_mut().zip(pixel) {
                *sum += u32::from(*part);
            }
        }
    }
    let count = (right - left) * (bottom - top);
    Rgb(sum.map(|sum| ((sum + count / 2) / count) as u8))
}
