//! Small copies of pictures, made off the window's thread and kept on disk by the picture's content.

use std::fs;
use std::io::{BufWriter, Cursor, Write as _};
use std::path::{Path, PathBuf};

use image::codecs::jpeg::JpegEncoder;
use image::{DynamicImage, ImageFormat, ImageReader, Rgba, RgbaImage};

use super::{Picture, PictureError};

/// A copy that fits in a square of `side_px`, turned as the camera says, never enlarged.
pub fn shrink(picture: &Picture, side_px: u32) -> Result<RgbaImage, PictureError> {
    let image = picture.decode()?;
    let side_px = side_px.max(1);
    let small =
        if image.width() <= side_px && image.height() <= side_px { image } else { image.thumbnail(side_px, side_px) };
    Ok(on_paper(small))
}

/// Transparency laid on white: a copy is kept as JPEG, which has none.
pub(super) fn on_paper(image: DynamicImage) -> RgbaImage {
    let has_alpha = image.color().has_alpha();
    let mut image = image.into_rgba8();
    if has_alpha {
        for Rgba([red, green, blue, alpha]) in image.pixels_mut() {
            let share = u16::from(*alpha);
            for channel in [red, green, blue] {
                *channel = ((u16::from(*channel) * share + 255 * (255 - share)) / 255) as u8;
            }
            *alpha = 255;
        }
    }
    image
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

    /// The small copy of the picture at `path`, whose content has the SHA-256 `content` (in hexadecimal).
    pub fn thumbnail(&self, content: &str, path: &Path, side_px: u32) -> Result<RgbaImage, PictureError> {
        let kept = self.file(content, side_px);
        if let Some(image) = kept.as_deref().and_then(load) {
            return Ok(image);
        }
        let image = shrink(&Picture::open(path)?, side_px)?;
        if let Some(kept) = kept {
            // A full or read-only cache costs time, not pictures.
            let _ = keep(&kept, &image);
        }
        Ok(image)
    }

    /// Where a copy is kept; `None` for a name that is no hash and must not become a path.
    fn file(&self, content: &str, side_px: u32) -> Option<PathBuf> {
        let is_hash = content.len() == 64 && content.bytes().all(|byte| byte.is_ascii_hexdigit());
        is_hash.then(|| self.folder.join(&content[..2]).join(format!("{content}-{side_px}.jpg")))
    }
}

fn load(path: &Path) -> Option<RgbaImage> {
    let bytes = fs::read(path).ok()?;
    // A copy that was cut off by a lost power line decodes without complaint: its end has to be there.
    if !bytes.ends_with(&[0xFF, 0xD9]) {
        return None;
    }
    ImageReader::with_format(Cursor::new(bytes), ImageFormat::Jpeg).decode().ok().map(DynamicImage::into_rgba8)
}

/// Written beside and renamed, so that a reader never meets half a copy.
fn keep(path: &Path, image: &RgbaImage) -> Result<(), Box<dyn std::error::Error>> {
    let folder = path.parent().unwrap_or(Path::new("."));
    fs::create_dir_all(folder)?;
    let beside = path.with_extension(format!("{}.part", std::process::id()));
    let mut file = BufWriter::new(fs::File::create(&beside)?);
    let rgb = DynamicImage::ImageRgba8(image.clone()).into_rgb8();
    JpegEncoder::new_with_quality(&mut file, 85).encode_image(&rgb)?;
    file.flush()?;
    fs::rename(beside, path)?;
    Ok(())
}
