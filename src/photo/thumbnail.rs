//! Small copies of pictures, several sizes from one decoding, kept on disk by the picture's content.

use std::fs;
use std::io::Cursor;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU32, Ordering};

use fast_image_resize::images::Image;
use fast_image_resize::{FilterType, PixelType, ResizeAlg, ResizeOptions, Resizer};
use image::{DynamicImage, ImageFormat, ImageReader, Rgb, RgbImage, RgbaImage};
use jpeg_decoder::PixelFormat;
use jpeg_encoder::{ColorType, Encoder, SamplingFactor};

use super::profile::Colours;
use super::read::guarded;
use super::{Format, Picture, PictureError};

/// The sides of the squares into which kept copies fit, pixels: for a list, for a sheet, for a close look.
pub const SIDES_PX: [u32; 3] = [256, 640, 1600];

/// One copy of each of [`SIDES_PX`].
pub type Copies = [RgbImage; SIDES_PX.len()];

/// How strongly kept copies are packed, 1–100.
const QUALITY: u8 = 82;

/// A copy that fits in a square of `side_px`, turned as the camera says, in sRGB, never enlarged.
pub fn shrink(picture: &Picture, side_px: u32) -> Result<RgbaImage, PictureError> {
    let [small] = shrink_each(picture, [side_px])?;
    Ok(DynamicImage::ImageRgb8(small).into_rgba8())
}

/// Copies that fit in squares of these sides, all from one decoding, turned as the camera says, in sRGB, never enlarged.
pub fn shrink_each<const N: usize>(picture: &Picture, sides_px: [u32; N]) -> Result<[RgbImage; N], PictureError> {
    let largest = sides_px.into_iter().max().unwrap_or(1);
    let colours = Colours::of(picture);
    // Pixels come as stored, and are turned when they are few.
    let (image, orientation) = match scaled(picture, largest) {
        Some(image) => (image, picture.orientation()),
        None => (on_paper(picture.decode()?), image::metadata::Orientation::NoTransforms),
    };
    Ok(sides_px.map(|side_px| {
        let mut small = DynamicImage::ImageRgb8(colours.shown(fitted(&image, side_px)));
        small.apply_orientation(orientation);
        small.into_rgb8()
    }))
}

/// A JPEG decoded at the smallest of 1/1, 1/2, 1/4 and 1/8 of its size that is not below `side_px`; `None` for what this
/// decoder does not know, which the one for whole pictures may.
fn scaled(picture: &Picture, side_px: u32) -> Option<RgbImage> {
    if picture.format() != Format::Jpeg {
        return None;
    }
    let decoded = guarded(picture.name(), || {
        let mut decoder = jpeg_decoder::Decoder::new(picture.bytes());
        let decode = || -> Result<_, jpeg_decoder::Error> {
            decoder.read_info()?;
            let stored = decoder.info().map_or((1, 1), |info| (u32::from(info.width), u32::from(info.height)));
            let (width, height) = inside(stored, side_px);
            let size = decoder.scale(width as u16, height as u16)?;
            Ok((size, decoder.decode()?, decoder.info().map(|info| info.pixel_format)))
        };
        Ok({ decode }().ok())
    });
    let ((width, height), pixels, format) = decoded.ok()??;
    let (width, height) = (u32::from(width), u32::from(height));
    match format? {
        PixelFormat::RGB24 => RgbImage::from_raw(width, height, pixels),
        PixelFormat::L8 => {
            image::GrayImage::from_raw(width, height, pixels).map(|gray| DynamicImage::ImageLuma8(gray).into_rgb8())
        }
        PixelFormat::L16 | PixelFormat::CMYK32 => None,
    }
}

/// The size of a picture that fits in a square, its sides in proportion, neither enlarged nor 0.
fn inside((width, height): (u32, u32), side_px: u32) -> (u32, u32) {
    let longest = width.max(height).max(1);
    let side_px = side_px.clamp(1, longest);
    let fit = |side: u32| (f64::from(side) * f64::from(side_px) / f64::from(longest)).round().max(1.0) as u32;
    (fit(width), fit(height))
}

fn fitted(image: &RgbImage, side_px: u32) -> RgbImage {
    let (width, height) = inside(image.dimensions(), side_px);
    if (width, height) == image.dimensions() {
        return image.clone();
    }
    let mut small = Image::new(width, height, PixelType::U8x3);
    let options = ResizeOptions::new().resize_alg(ResizeAlg::Convolution(FilterType::Lanczos3));
    let source = fast_image_resize::images::ImageRef::new(image.width(), image.height(), image, PixelType::U8x3);
    source
        .ok()
        .and_then(|source| Resizer::new().resize(&source, &mut small, &options).ok())
        .expect("both pictures have three bytes a pixel");
    RgbImage::from_raw(width, height, small.into_vec()).expect("three bytes a pixel")
}

/// Transparency laid on white: a copy is kept as JPEG, which has none.
pub(super) fn on_paper(image: DynamicImage) -> RgbImage {
    if !image.color().has_alpha() {
        return image.into_rgb8();
    }
    let image = image.into_rgba8();
    let mut paper = RgbImage::new(image.width(), image.height());
    for (Rgb(on), over) in paper.pixels_mut().zip(image.pixels()) {
        let [colours @ .., alpha] = over.0;
        let share = u16::from(alpha);
        *on = colours.map(|colour| ((u16::from(colour) * share + 255 * (255 - share)) / 255) as u8);
    }
    paper
}

/// Small copies on disk. Only a cache: what is missing or damaged there is made again from the picture.
#[derive(Clone, Debug)]
pub struct Cache {
    folder: PathBuf,
}

impl Cache {
    /// A cache in a folder, which need not be there yet.
    pub fn new(folder: impl Into<PathBuf>) -> Self {
        Self { folder: folder.into() }
    }

    /// The small copy of the picture at `path`, whose content has the SHA-256 `content` (in hexadecimal). A side of
    /// [`SIDES_PX`] is answered fast; when it is missing, all of them are made, and come with it [to be
    /// kept](Self::keep), so that nobody who waits for the one waits for the writing too. Any other is made each time,
    /// out of the next larger kept copy where there is one.
    pub fn thumbnail(
        &self,
        content: &str,
        path: &Path,
        side_px: u32,
    ) -> Result<(RgbaImage, Option<Copies>), PictureError> {
        let Some(place) = SIDES_PX.iter().position(|side| *side >= side_px) else {
            return Ok((shrink(&Picture::open(path)?, side_px)?, None));
        };
        let sized = |copy: &RgbImage| DynamicImage::ImageRgb8(fitted(copy, side_px)).into_rgba8();
        if let Some(kept) = self.file(content, SIDES_PX[place]).as_deref().and_then(load) {
            return Ok((sized(&kept), None));
        }
        let copies = shrink_each(&Picture::open(path)?, SIDES_PX)?;
        Ok((sized(&copies[place]), Some(copies)))
    }

    /// Keeps the small copies of a picture, in the order of [`SIDES_PX`].
    pub fn keep(&self, content: &str, copies: &Copies) {
        for (side_px, copy) in SIDES_PX.into_iter().zip(copies) {
            if let Some(file) = self.file(content, side_px) {
                // A full or read-only cache costs time, not pictures.
                let _ = keep(&file, copy);
            }
        }
    }

    /// Where a copy is kept; `None` for a name that is no hash and must not become a path.
    fn file(&self, content: &str, side_px: u32) -> Option<PathBuf> {
        let is_hash = content.len() == 64 && content.bytes().all(|byte| byte.is_ascii_hexdigit());
        is_hash.then(|| self.folder.join(&content[..2]).join(format!("{content}-{side_px}.jpg")))
    }
}

fn load(path: &Path) -> Option<RgbImage> {
    let bytes = fs::read(path).ok()?;
    // A copy that was cut off by a lost power line decodes without complaint: its end has to be there.
    if !bytes.ends_with(&[0xFF, 0xD9]) {
        return None;
    }
    ImageReader::with_format(Cursor::new(bytes), ImageFormat::Jpeg).decode().ok().map(DynamicImage::into_rgb8)
}

/// Written beside and renamed, so that a reader never meets half a copy.
fn keep(path: &Path, image: &RgbImage) -> Result<(), Box<dyn std::error::Error>> {
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, QUALITY);
    encoder.set_sampling_factor(SamplingFactor::R_4_2_0);
    encoder.encode(image, u16::try_from(image.width())?, u16::try_from(image.height())?, ColorType::Rgb)?;
    fs::create_dir_all(path.parent().unwrap_or(Path::new(".")))?;
    // Two threads may make the same copy at once.
    static NUMBER: AtomicU32 = AtomicU32::new(0);
    let number = NUMBER.fetch_add(1, Ordering::Relaxed);
    let beside = path.with_extension(format!("{}-{number}.part", std::process::id()));
    let kept = fs::write(&beside, bytes).and_then(|()| fs::rename(&beside, path));
    if kept.is_err() {
        let _ = fs::remove_file(&beside);
    }
    Ok(kept?)
}
