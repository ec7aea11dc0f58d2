//! Copies that leave the house: the picture without what its camera noted, above all without where it was taken.

use image::codecs::png::PngEncoder;
use image::{DynamicImage, ImageEncoder as _};

use super::jpeg::{self, Piece};
use super::profile;
use super::{Format, Picture, PictureError};

/// A copy without metadata: its bytes, and how its file ends.
///
/// A JPEG keeps its coded picture as it is, with colour profile and, where it is turned, an Exif segment that holds the
/// orientation alone. Anything else, and a JPEG with something between its pieces, is decoded, turned and written anew
/// as PNG, under the profile it had. Takes long.
pub fn copy(picture: &Picture) -> Result<(Vec<u8>, &'static str), PictureError> {
    if picture.format() == Format::Jpeg
        && let Some(bytes) = strip_jpeg(picture)
    {
        return Ok((bytes, Format::Jpeg.extension()));
    }
    let image = plain(picture.decode()?);
    let mut bytes = Vec::new();
    let mut encoder = PngEncoder::new(&mut bytes);
    if let Some(profile) = profile::embedded(picture) {
        // PNG has a place for any profile.
        let _ = encoder.set_icc_profile(profile);
    }
    encoder
        .write_image(image.as_bytes(), image.width(), image.height(), image.color().into())
        .map_err(|error| PictureError::Damaged { name: picture.name().to_owned(), reason: error.to_string() })?;
    Ok((bytes, Format::Png.extension()))
}

/// PNG has no floating point.
fn plain(image: DynamicImage) -> DynamicImage {
    match image {
        DynamicImage::ImageRgb32F(_) => image.into_rgb16().into(),
        DynamicImage::ImageRgba32F(_) => image.into_rgba16().into(),
        image => image,
    }
}

/// `None` when its pieces cannot be told apart up to the end marker. What follows that (a second picture, a short film) goes too: it has metadata of its own.
fn strip_jpeg(picture: &Picture) -> Option<Vec<u8>> {
    let bytes = picture.bytes();
    let mut copy = Vec::with_capacity(bytes.len());
    copy.extend(&bytes[..2]);
    if picture.shot().orientation != 1 {
        copy.extend(orientation_alone(picture.shot().orientation));
    }
    for piece in jpeg::pieces(bytes) {
        match said_by(&piece) {
            Said::Picture => copy.extend(piece.whole),
            // Without the small picture that may follow: its sides become 0.
            Said::Density(density) => {
                copy.extend([0xFF, 0xE0, 0, 16]);
                copy.extend(density);
                copy.extend([0, 0]);
            }
            Said::Aside => {}
        }
        if piece.marker == Some(jpeg::END) {
            return Some(copy);
        }
    }
    None
}

/// What a piece of a JPEG file is for.
enum Said<'a> {
    Picture,
    /// JFIF's twelve bytes before the size of its small picture. Source: ITU-T T.871, 10.1.
    Density(&'a [u8]),
    /// Nothing that the picture needs.
    Aside,
}

/// Application segments go, but for three without which the colours or sides would be wrong: JFIF's, the colour profile
/// (ICC.1, annex B.4) and the colour transform (ITU-T T.872, 6.5.3).
fn said_by<'a>(piece: &Piece<'a>) -> Said<'a> {
    let body = piece.body();
    match piece.marker {
        Some(0xE0) if body.starts_with(b"JFIF\0") && body.len() >= 14 => Said::Density(&body[..12]),
        Some(0xE2) if body.starts_with(b"ICC_PROFILE\0") => Said::Picture,
        Some(0xEE) if body.starts_with(b"Adobe") => Said::Picture,
        Some(0xE0..=0xEF | 0xFE) => Said::Aside,
        _ => Said::Picture,
    }
}

/// An Exif segment with one field, the orientation: a TIFF header and a directory of one entry, high byte first.
/// Source: CIPA DC-008 (Exif 2.32), 4.6.2, 4.6.4 and 4.7.2.
fn orientation_alone(orientation: u8) -> Vec<u8> {
    let directory = [0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0];
    [&[0xFF, 0xE1, 0, 34], &b"Exif\0\0"[..], b"MM\0*\0\0\0\x08", &directory].concat()
}
