//! What phones save: HEIC, a still HEVC picture in a HEIF container.

use heic_rs::{DecodeOptions, Error, Image};
use image::imageops::rotate180_in_place;
use image::{DynamicImage, RgbImage};

use super::read::{MOST_PIXELS, PictureError};
use crate::text;

/// Brands of still HEVC pictures, and the one of any picture in this container. Source: ISO/IEC 23008-12, annex B.
const BRANDS: [&[u8]; 5] = [b"heic", b"heix", b"heim", b"heis", b"mif1"];
/// The same container with an AV1 picture in it. Source: AV1 Image File Format, 6.3.
const AV1: &[u8] = b"avif";

/// Whether a file begins like one, by the brands in its first box. Source: ISO/IEC 14496-12, 4.3.
pub fn is_heic(head: &[u8]) -> bool {
    let Some((length, rest)) = head.split_first_chunk::<4>() else { return false };
    let length = (u32::from_be_bytes(*length) as usize).min(head.len());
    if !rest.starts_with(b"ftyp") || length < 12 {
        return false;
    }
    // The file's own brand, its version, and the brands it can be read as.
    let names = |brand: &[u8]| head[8..12] == *brand || head[12..length].chunks(4).skip(1).any(|other| other == brand);
    BRANDS.iter().any(|brand| names(brand)) && !names(AV1)
}

/// Width and height as a person sees it, pixels.
pub fn size_px(name: &str, bytes: &[u8]) -> Result<(u32, u32), PictureError> {
    let info = heic_rs::probe(bytes).map_err(|error| refused(name, error))?;
    Ok((info.width, info.height))
}

/// Decodes it, turned as the container says; an orientation in its Exif says the same once more and does not count.
pub fn decode(name: &str, bytes: &[u8]) -> Result<DynamicImage, PictureError> {
    let refused = |error| refused(name, error);
    let is_mirrored = heic_rs::probe(bytes).map_err(refused)?.mirror.is_some();
    let options = DecodeOptions::default().with_max_pixels(Some(MOST_PIXELS));
    let Image { data, width, height, .. } = heic_rs::decode(bytes, &options).map_err(refused)?;
    let mut image = RgbImage::from_raw(width, height, data).expect("three bytes a pixel were asked for");
    if is_mirrored {
        // The decoder takes the mirror's axis the other way round than the standard's second edition (libheif agrees
        // with that); half a turn makes one of the other.
        rotate180_in_place(&mut image);
    }
    Ok(image.into())
}

/// The colour profile in it. Source: ISO/IEC 14496-12, 12.1.5: a box "colr" of type "prof", its size before it.
pub fn profile(bytes: &[u8]) -> Option<&[u8]> {
    let at = bytes.windows(8).position(|window| window == b"colrprof")?;
    let size = u32::from_be_bytes(bytes.get(at.checked_sub(4)?..at)?.try_into().ok()?) as usize;
    bytes.get(at + 8..(at - 4).checked_add(size)?)
}

fn refused(name: &str, error: Error) -> PictureError {
    let name = name.to_owned();
    match error {
        Error::Truncated(_) => PictureError::CutShort { name },
        Error::Unsupported(what) => {
            let reason = text!(
                "this kind of HEIC cannot be read ({what}); have the phone save JPEG (camera settings, format, “most compatible”) or send it as JPEG",
                what = what
            );
            PictureError::Damaged { name, reason }
        }
        error => PictureError::Damaged { name, reason: error.to_string() },
    }
}
