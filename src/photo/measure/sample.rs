//! Colours taken off a picture.

use image::DynamicImage;
use serde::Serialize;

use super::homography::Point;
use super::spans::{rows, spans};
use super::tangle::must_be_drawn_by_hand;
use super::{MeasureError, pixels};
use crate::photo::{Colours, Picture, PictureError};
use crate::record::PhotoMark;
use crate::trade::colour::Srgb;

/// The colour of a patch.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Sampled {
    /// The mean of its pixels' light, as sRGB.
    pub colour: Srgb,
    /// How many of its pixels have a channel at its end: at 254 or 255 of 255, or at 0.
    pub clipped_percent: f64,
    pub pixels: u64,
}

/// A channel's values as 16 bits: 254 of 255 is the first that may have been more.
const BRIGHTEST: u16 = 254 * 257;

/// The mean colour of a patch in a decoded picture, upright as a person sees it: of all pixels whose centres lie inside
/// the outline, or of the one pixel in its middle where it is too small for any.
///
/// Values are taken for what the picture's profile says, in sRGB. Light is averaged, not its encoding: so a patch of black and white dots gives the grey that it has from afar.
/// Takes long for large patches.
pub fn sample(picture: &DynamicImage, colours: &Colours, outline: &[[f32; 2]]) -> Result<Sampled, MeasureError> {
    let (width, height) = (picture.width(), picture.height());
    let outline = pixels([f64::from(width), f64::from(height)], outline)?;
    must_be_drawn_by_hand(std::slice::from_ref(&outline))?;
    let row_of = |x: u32, y: u32, count: u32| {
        let row = picture.crop_imm(x, y, count, 1).into_rgb16().into_raw();
        colours.as_srgb(row)
    };
    let mut tally = Tally::default();
    for row in rows(&outline, height) {
        let spans = spans(&outline, row, width);
        if let (Some(first), Some(last)) = (spans.first(), spans.last()) {
            let pixels = row_of(first.start, row, last.end - first.start);
            let (pixels, _) = pixels.as_chunks::<3>();
            for span in &spans {
                let inside = (span.start - first.start) as usize..(span.end - first.start) as usize;
                pixels[inside].iter().for_each(|pixel| tally.add(*pixel));
            }
        }
    }
    if tally.pixels == 0 {
        let [x, y] = middle(&outline).ok_or(MeasureError::TooFewPoints { fewest: 1 })?;
        let at = |place: f64, count: u32| (place as u32).min(count.saturating_sub(1));
        row_of(at(x, width), at(y, height), 1).as_chunks::<3>().0.iter().for_each(|pixel| tally.add(*pixel));
    }
    Ok(tally.sampled())
}

fn middle(points: &[Point]) -> Option<Point> {
    let count = points.len() as f64;
    (!points.is_empty()).then(|| [0, 1].map(|axis| points.iter().map(|point| point[axis]).sum::<f64>() / count))
}

/// How often each value stands in each channel: one power function a value, not one a pixel.
struct Tally {
    channels: [Vec<u32>; 3],
    pixels: u64,
    clipped: u64,
}

impl Default for Tally {
    fn default() -> Self {
        Self { channels: std::array::from_fn(|_| vec![0; 1 << 16]), pixels: 0, clipped: 0 }
    }
}

impl Tally {
    fn add(&mut self, pixel: [u16; 3]) {
        for (channel, value) in self.channels.iter_mut().zip(pixel) {
            channel[usize::from(value)] += 1;
        }
        self.pixels += 1;
        self.clipped += u64::from(pixel.iter().any(|value| *value == 0 || *value >= BRIGHTEST));
    }

    fn sampled(&self) -> Sampled {
        let light = |channel: &Vec<u32>| {
            let values = channel.iter().enumerate().filter(|(_, count)| **count > 0);
            let sum: f64 = values
                .map(|(value, count)| {
                    let encoded = value as f64 / f64::from(u16::MAX);
                    let [light, ..] = Srgb { red: encoded, green: encoded, blue: encoded }.linear();
                    light * f64::from(*count)
                })
                .sum();
            sum / self.pixels as f64
        };
        let [red, green, blue] = &self.channels;
        Sampled {
            colour: Srgb::of_linear([light(red), light(green), light(blue)]),
            clipped_percent: 100.0 * self.clipped as f64 / self.pixels as f64,
            pixels: self.pixels,
        }
    }
}

/// Takes the colours of a photograph's patches off its picture, those that were not taken yet. A patch that cannot be
/// sampled is left as it is. Takes long where there is one.
pub fn sample_missing(marks: &mut [PhotoMark], picture: &Picture) -> Result<(), PictureError> {
    if !marks.iter().any(is_missing) {
        return Ok(());
    }
    let (decoded, colours) = (picture.decode()?, Colours::of(picture));
    for mark in marks.iter_mut().filter(|mark| is_missing(mark)) {
        if let Ok(sampled) = sample(&decoded, &colours, &mark.points) {
            let Srgb { red, green, blue } = sampled.colour;
            (mark.red, mark.green, mark.blue) = (Some(red), Some(green), Some(blue));
            mark.clipped_percent = Some(sampled.clipped_percent);
        }
    }
    Ok(())
}

/// Whether a mark is a patch whose colour was not taken off the picture yet.
pub fn is_missing(mark: &PhotoMark) -> bool {
    mark.role.is_patch() && mark.colour().is_none()
}
