//! A photograph to hand out with its marks on it and a legend below: what each number is, and what it measures.

mod file;
mod legend;
mod shapes;

use std::path::PathBuf;

use image::RgbImage;
use image::codecs::png::PngEncoder;
use image::imageops::FilterType;
use image::{ExtendedColorType, ImageEncoder as _};
use jpeg_encoder::{ColorType, Encoder, SamplingFactor};

use super::inks::Inks;
use super::sheet::Sheet;
use crate::assess::tie::Tied;
use crate::photo::measure::{Measured, Said};
use crate::photo::thumbnail::shrink_each;
use crate::photo::{Picture, PictureError};
use crate::record::{Logbook, MarkUse, PartFile, Photo, PhotoFile, PhotoMark, Word as _};
use crate::rules::Rules;
use crate::text;

pub use file::write_out;

/// The most pixels that a picture keeps on a marked copy; a larger one is made smaller.
pub const MOST_PIXELS: u64 = 24_000_000;

/// The longest side that a picture keeps, pixels.
const LONGEST_PX: u32 = 12_000;

/// A picture smaller than this is enlarged, so that its marks do not hide it.
const SMALLEST_PX: u32 = 800;

/// How strongly a JPEG is packed, 1–100.
const QUALITY: u8 = 92;

crate::words! {
    /// What a marked copy is written as.
    CopyFormat {
        Png = "png", "PNG";
        Jpeg = "jpg", "JPEG";
    }
}

/// Why there is no marked copy.
#[derive(Debug, thiserror::Error)]
pub enum CopyError {
    #[error(transparent)]
    Picture(#[from] PictureError),
    #[error("{}", text!("The marked copy of “{name}” would be too large", name = .name))]
    TooLarge { name: String },
    #[error("{}", text!("The marked copy of “{name}” cannot be packed: {reason}", name = .name, reason = .reason))]
    Packing { name: String, reason: String },
    #[error("{}", text!("This photograph is no longer in the logbook."))]
    Gone,
    #[error("{}", text!("A marked copy ends in .png or .jpg: {path}", path = .path.display()))]
    Ending { path: PathBuf },
    #[error("{}", text!("This file is there already: {path}", path = .path.display()))]
    There { path: PathBuf },
    #[error("{}", text!("The copy cannot be written ({reason}): {path}", reason = .source, path = .path.display()))]
    Unwritten { path: PathBuf, source: std::io::Error },
}

/// A mark with all that is said of it.
struct Entry<'a> {
    mark: &'a PhotoMark,
    number: usize,
    tied: Tied,
    said: Said,
}

impl Entry<'_> {
    /// What it is, for the legend.
    fn title(&self) -> String {
        let what = self.tied.said();
        match self.mark.role {
            MarkUse::Place => what,
            role if what == role.label() => what,
            role => text!("{role}: {what}", role = role.label(), what = what),
        }
    }
}

/// What a copy is headed with: the part, machine or lot that the photograph shows, and its caption.
pub fn title(logbook: &Logbook, photo: &Photo) -> String {
    let part = photo.part.and_then(|part| logbook.part(part));
    let machine = photo.machine.and_then(|machine| logbook.machine(machine));
    let lot = photo.lot.and_then(|lot| logbook.lot(lot));
    let shows = part
        .map(|file| format!("{} {}", file.part.tag, logbook.title_of(file)))
        .or_else(|| machine.map(|file| file.machine.name.clone()))
        .or_else(|| lot.map(|file| file.lot.name.clone()))
        .unwrap_or_default();
    let said = [shows, photo.view.label().to_owned(), photo.caption.clone()];
    said.into_iter().filter(|words| !words.is_empty()).collect::<Vec<_>>().join(" – ")
}

/// A marked copy as a file's bytes, without any metadata; `title` says what the picture shows. Takes long.
///
/// Colours and figures are those that the marks hold: patches that were not sampled yet say so.
pub fn copy(
    picture: &Picture,
    photo: &PhotoFile,
    part: Option<&PartFile>,
    rules: &Rules,
    title: &str,
    format: CopyFormat,
) -> Result<Vec<u8>, CopyError> {
    let name = || picture.name().to_owned();
    let sheet = drawn(picture, photo, part, rules, title)?;
    let (width, height) = sheet.dimensions();
    let mut bytes = Vec::new();
    let packed = match format {
        CopyFormat::Png => PngEncoder::new(&mut bytes)
            .write_image(&sheet, width, height, ExtendedColorType::Rgb8)
            .map_err(|error| error.to_string()),
        CopyFormat::Jpeg => {
            let mut encoder = Encoder::new(&mut bytes, QUALITY);
            // Thin lines in full colour.
            encoder.set_sampling_factor(SamplingFactor::R_4_4_4);
            encoder.encode(&sheet, width as u16, height as u16, ColorType::Rgb).map_err(|error| error.to_string())
        }
    };
    packed.map_err(|reason| CopyError::Packing { name: name(), reason })?;
    Ok(bytes)
}

fn drawn(
    picture: &Picture,
    photo: &PhotoFile,
    part: Option<&PartFile>,
    rules: &Rules,
    title: &str,
) -> Result<RgbImage, CopyError> {
    let measured = Measured::of(photo, part);
    let entries: Vec<Entry> = photo
        .marks
        .iter()
        .zip(&measured.lines)
        .map(|(mark, line)| Entry {
            mark,
            number: line.number,
            tied: Tied::of(mark, part, rules),
            said: measured.said(line, photo),
        })
        .collect();
    let base = sized(picture)?;
    let (width, height) = (base.width() as f32, base.height() as f32);
    // An em grows with the picture, so that the words are as large beside it whatever its pixels.
    let em = ((width * height).sqrt() / 55.0).max(16.0);
    let inks = Inks::new();
    let legend = legend::lay_out(title, &measured.basis_said(), &entries, [width, height], em);
    let size = (width.max(legend.width).ceil() as u32, (height + legend.height).ceil() as u32);
    let too_large = || CopyError::TooLarge { name: picture.name().to_owned() };
    if size.0.max(size.1) > u32::from(u16::MAX) {
        return Err(too_large());
    }
    let mut sheet = Sheet::new(size.0, size.1, inks.page).ok_or_else(too_large)?;
    sheet.lay(&base);
    drop(base);
    shapes::draw(&mut sheet, &inks, &entries, [width, height], em);
    legend.draw(&mut sheet, &inks, &entries, height);
    Ok(sheet.picture())
}

/// The picture upright, neither too large to be held nor too small to be marked.
fn sized(picture: &Picture) -> Result<RgbImage, PictureError> {
    let (width, height) = (picture.width_px(), picture.height_px());
    let pixels = f64::from(width) * f64::from(height);
    let shrink = (MOST_PIXELS as f64 / pixels).sqrt().min(1.0);
    let longest = width.max(height);
    let side_px = ((f64::from(longest) * shrink) as u32).clamp(1, LONGEST_PX);
    let [base] = shrink_each(picture, [side_px])?;
    let times = SMALLEST_PX.div_ceil(base.width().max(base.height()));
    if times < 2 {
        return Ok(base);
    }
    // Pixels stay what they were, only larger.
    Ok(image::imageops::resize(&base, base.width() * times, base.height() * times, FilterType::Nearest))
}
