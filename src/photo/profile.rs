//! The colours that a picture was written in: pixels under its embedded profile, as sRGB.

use std::sync::Arc;

use image::{ImageDecoder as _, ImageReader, RgbImage};
use moxcms::{ColorProfile, DataColorSpace, Layout, Transform8BitExecutor, Transform16BitExecutor, TransformOptions};

use super::read::guarded;
use super::{Picture, heic};

/// How a picture's values become sRGB. Phones write wider colours than sRGB, and say so in a profile.
pub struct Colours {
    to_srgb: Option<Conversion>,
}

/// For values to measure with, and for values to look at.
struct Conversion {
    fine: Arc<Transform16BitExecutor>,
    coarse: Arc<Transform8BitExecutor>,
}

impl Colours {
    /// Values that are sRGB already: what is meant where no profile says otherwise.
    pub const SRGB: Self = Self { to_srgb: None };

    /// By the picture's embedded ICC profile. One that cannot be read, or that is not of red, green and blue, counts as
    /// none.
    pub fn of(picture: &Picture) -> Self {
        let to_srgb = guarded(picture.name(), || Ok(embedded(picture).and_then(|bytes| conversion(&bytes))));
        Self { to_srgb: to_srgb.ok().flatten() }
    }

    /// Values of red, green and blue, one pixel after the other, as sRGB.
    pub fn as_srgb(&self, pixels: Vec<u16>) -> Vec<u16> {
        let Some(conversion) = &self.to_srgb else { return pixels };
        let mut converted = vec![0; pixels.len()];
        if conversion.fine.transform(&pixels, &mut converted).is_ok() { converted } else { pixels }
    }

    /// A whole picture as sRGB, to be shown or drawn on. Takes long for a large one with a profile.
    pub fn shown(&self, picture: RgbImage) -> RgbImage {
        let Some(conversion) = &self.to_srgb else { return picture };
        let mut converted = RgbImage::new(picture.width(), picture.height());
        if conversion.coarse.transform(&picture, &mut converted).is_ok() { converted } else { picture }
    }
}

fn conversion(bytes: &[u8]) -> Option<Conversion> {
    let profile = ColorProfile::new_from_slice(bytes).ok()?;
    if profile.color_space != DataColorSpace::Rgb {
        return None;
    }
    let (srgb, options) = (ColorProfile::new_srgb(), TransformOptions::default());
    let fine = profile.create_transform_16bit(Layout::Rgb, &srgb, Layout::Rgb, options).ok()?;
    let coarse = profile.create_transform_8bit(Layout::Rgb, &srgb, Layout::Rgb, options).ok()?;
    Some(Conversion { fine, coarse })
}

/// The bytes of the embedded profile.
pub(super) fn embedded(picture: &Picture) -> Option<Vec<u8>> {
    let Some(format) = picture.format().decoder() else { return heic::profile(picture.bytes()).map(<[u8]>::to_vec) };
    let reader = ImageReader::with_format(std::io::Cursor::new(picture.bytes()), format);
    reader.into_decoder().ok()?.icc_profile().ok()?
}
