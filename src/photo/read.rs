//! What a picture file is: told by its content, never by its name, and refused before it can do harm.

use std::fs::File;
use std::io::{Cursor, Read as _};
use std::path::Path;

use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder as _, ImageFormat, ImageReader, Limits};

use super::{Shot, heic, jpeg};
use crate::record::Word as _;
use crate::text;

/// The most pixels a picture may have. A decoded pixel takes 3 to 8 bytes; no camera of the bench makes more.
pub const MOST_PIXELS: u64 = 120_000_000;

/// The largest picture file that is read, bytes.
pub const MOST_BYTES: u64 = 256 * 1024 * 1024;

/// How many bytes tell what a file is.
pub const HEAD_BYTES: usize = 64;

crate::words! {
    /// The kinds of picture file that can be read.
    Format {
        Jpeg = "jpg", "JPEG";
        Png = "png", "PNG";
        Webp = "webp", "WebP";
        Tiff = "tiff", "TIFF";
        Bmp = "bmp", "BMP";
        Gif = "gif", "GIF";
        Heic = "heic", "HEIC";
    }
}

/// How picture files' names end, without the dot: a hint for lists of files, since the content alone tells.
pub const PICTURE_ENDINGS: [&str; 10] = ["jpg", "jpeg", "png", "webp", "tif", "tiff", "bmp", "gif", "heic", "heif"];

impl Format {
    /// How a file of this kind ends, without the dot.
    pub fn extension(self) -> &'static str {
        self.name()
    }

    /// The format that a file's first bytes tell; `None` for anything else.
    pub fn of(head: &[u8]) -> Option<Self> {
        if heic::is_heic(head) {
            return Some(Self::Heic);
        }
        let format = image::guess_format(head).ok()?;
        Self::ALL.iter().copied().find(|known| known.decoder() == Some(format))
    }

    /// What the `image` library calls it; `None` where it has no decoder for it.
    pub(super) fn decoder(self) -> Option<ImageFormat> {
        match self {
            Self::Jpeg => Some(ImageFormat::Jpeg),
            Self::Png => Some(ImageFormat::Png),
            Self::Webp => Some(ImageFormat::WebP),
            Self::Tiff => Some(ImageFormat::Tiff),
            Self::Bmp => Some(ImageFormat::Bmp),
            Self::Gif => Some(ImageFormat::Gif),
            Self::Heic => None,
        }
    }
}

/// Why a picture cannot be had; each names the file.
#[derive(Debug, thiserror::Error)]
pub enum PictureError {
    #[error("{}", text!("“{name}” cannot be read: {reason}", name = .name, reason = .reason))]
    Unreadable { name: String, reason: std::io::Error },
    #[error("{}", text!("“{name}” is empty", name = .name))]
    Empty { name: String },
    #[error("{}", text!("“{name}” is no picture: JPEG, PNG, WebP, TIFF, BMP, GIF and HEIC can be read", name = .name))]
    NotAPicture { name: String },
    #[error("{}", text!("“{name}” is cut short: copy it again from where it came from", name = .name))]
    CutShort { name: String },
    #[error("{}", text!("“{name}” is too large: {width} × {height} pixels, {most} million are read at most", name = .name, width = .width_px, height = .height_px, most = MOST_PIXELS / 1_000_000))]
    TooManyPixels { name: String, width_px: u32, height_px: u32 },
    #[error("{}", text!("“{name}” is too large: {mb} MB, {most} MB are read at most", name = .name, mb = .mb, most = MOST_BYTES / (1024 * 1024)))]
    TooManyBytes { name: String, mb: u64 },
    #[error("{}", text!("“{name}” is damaged: {reason}", name = .name, reason = .reason))]
    Damaged { name: String, reason: String },
}

/// A picture file that has been looked at, but not decoded.
#[derive(Clone)]
pub struct Picture {
    name: String,
    bytes: Vec<u8>,
    format: Format,
    width_px: u32,
    height_px: u32,
    orientation: Orientation,
    shot: Shot,
}

impl Picture {
    /// Reads a file and tells what it is.
    pub fn open(path: &Path) -> Result<Self, PictureError> {
        let name = path.file_name().unwrap_or(path.as_os_str()).to_string_lossy().into_owned();
        let unreadable = |reason| PictureError::Unreadable { name: name.clone(), reason };
        let metadata = path.metadata().map_err(unreadable)?;
        // A pipe or a device might keep its reader waiting for ever.
        if !metadata.is_file() {
            return Err(PictureError::NotAPicture { name });
        }
        let mut bytes = Vec::new();
        // One byte over the limit is read, so that a file that grows meanwhile is refused too.
        let file = File::open(path).map_err(unreadable)?;
        file.take(MOST_BYTES + 1).read_to_end(&mut bytes).map_err(unreadable)?;
        if bytes.len() as u64 > MOST_BYTES {
            let mb = metadata.len().max(MOST_BYTES) / (1024 * 1024);
            return Err(PictureError::TooManyBytes { name, mb });
        }
        Self::from_bytes(name, bytes)
    }

    /// Tells what some bytes are: a pasted picture, one out of a store. `name` is for messages.
    pub fn from_bytes(name: impl Into<String>, bytes: Vec<u8>) -> Result<Self, PictureError> {
        let name = name.into();
        if bytes.is_empty() {
            return Err(PictureError::Empty { name });
        }
        let Some(format) = Format::of(&bytes) else { return Err(PictureError::NotAPicture { name }) };
        if is_cut_short(format, &bytes) {
            return Err(PictureError::CutShort { name });
        }
        let mut shot = guarded(&name, || Ok(Shot::of(&bytes)))?;
        let (width, height) = guarded(&name, || match format.decoder() {
            None => heic::size_px(&name, &bytes),
            Some(decoder) => {
                let reader = ImageReader::with_format(Cursor::new(&bytes[..]), decoder);
                Ok(reader.into_decoder().map_err(|error| refused(&name, error))?.dimensions())
            }
        })?;
        if format == Format::Heic {
            // Its container says how it is turned, and its decoder turns it.
            shot.orientation = 1;
        }
        let orientation = Orientation::from_exif(shot.orientation).unwrap_or(Orientation::NoTransforms);
        let (width_px, height_px) = if shot.orientation > 4 { (height, width) } else { (width, height) };
        if u64::from(width) * u64::from(height) > MOST_PIXELS {
            return Err(PictureError::TooManyPixels { name, width_px, height_px });
        }
        Ok(Self { name, bytes, format, width_px, height_px, orientation, shot })
    }

    /// What it is called in messages.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The file's bytes, as they were.
    pub fn bytes(&self) -> &[u8] {
        &self.bytes
    }

    /// What kind of file it is.
    pub fn format(&self) -> Format {
        self.format
    }

    /// Width as a person sees it, after the camera's turn.
    pub fn width_px(&self) -> u32 {
        self.width_px
    }

    /// Height as a person sees it, after the camera's turn.
    pub fn height_px(&self) -> u32 {
        self.height_px
    }

    /// What its camera noted.
    pub fn shot(&self) -> &Shot {
        &self.shot
    }

    /// How its decoded pixels must be turned to be seen as the camera says.
    pub(super) fn orientation(&self) -> Orientation {
        self.orientation
    }

    /// Decodes it, turned as the camera says. Takes long: never on the window's thread.
    pub fn decode(&self) -> Result<DynamicImage, PictureError> {
        let mut image = guarded(&self.name, || {
            let Some(decoder) = self.format.decoder() else { return heic::decode(&self.name, &self.bytes) };
            let mut reader = ImageReader::with_format(Cursor::new(&self.bytes[..]), decoder);
            let mut limits = Limits::default();
            limits.max_alloc = Some(MOST_PIXELS * 8);
            reader.limits(limits);
            reader.decode().map_err(|error| refused(&self.name, error))
        })?;
        image.apply_orientation(self.orientation);
        if (image.width(), image.height()) != (self.width_px, self.height_px) {
            // Marks and limits go by the size that was told.
            let reason = text!(
                "it says that it is {told} pixels large, and is {found}",
                told = format!("{} × {}", self.width_px, self.height_px),
                found = format!("{} × {}", image.width(), image.height())
            );
            return Err(PictureError::Damaged { name: self.name.clone(), reason });
        }
        Ok(image)
    }
}

/// A decoder that meets a picture it was not made for must not take the others with it.
pub(super) fn guarded<T>(name: &str, read: impl FnOnce() -> Result<T, PictureError>) -> Result<T, PictureError> {
    std::panic::catch_unwind(std::panic::AssertUnwindSafe(read)).unwrap_or_else(|_| {
        let reason = text!("its decoder cannot make sense of it").to_owned();
        Err(PictureError::Damaged { name: name.to_owned(), reason })
    })
}

/// Cuts that decoders pass over in silence, filling the rest with grey.
fn is_cut_short(format: Format, bytes: &[u8]) -> bool {
    match format {
        Format::Jpeg => jpeg::is_cut_short(bytes),
        // RIFF tells the length of all that follows its first eight bytes.
        Format::Webp => bytes
            .get(4..8)
            .and_then(|length| <[u8; 4]>::try_from(length).ok())
            .is_none_or(|length| (bytes.len() as u64) < u64::from(u32::from_le_bytes(length)) + 8),
        Format::Png => bytes.len() < 45,
        Format::Tiff | Format::Bmp | Format::Gif | Format::Heic => false,
    }
}

fn refused(name: &str, error: image::ImageError) -> PictureError {
    use image::ImageError::{Decoding, IoError};
    let name = name.to_owned();
    let reason = error.to_string();
    let ended = |text: &str| text.contains("unexpected end") || text.contains("failed to fill whole buffer");
    match error {
        IoError(error) if error.kind() == std::io::ErrorKind::UnexpectedEof => PictureError::CutShort { name },
        Decoding(_) if ended(&reason.to_lowercase()) => PictureError::CutShort { name },
        _ => PictureError::Damaged { name, reason },
    }
}
