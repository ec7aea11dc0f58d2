//! What a picture file is: told by its content, never by its name, and refused before it can do harm.

use std::fs::File;
use std::io::{Cursor, Read as _};
use std::path::Path;

use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder as _, ImageFormat, ImageReader, Limits};

/// The most pixels a picture may have. A decoded pixel takes 3 to 8 bytes; no camera of the bench makes more.
pub const MOST_PIXELS: u64 = 120_000_000;

/// The largest picture file that is read, bytes.
pub const MOST_BYTES: u64 = 256 * 1024 * 1024;

crate::words! {
    /// The kinds of picture file that can be read.
    Format {
        Jpeg = "jpg", "JPEG";
        Png = "png", "PNG";
        Webp = "webp", "WebP";
        Tiff = "tiff", "TIFF";
        Bmp = "bmp", "BMP";
        Gif = "gif", "GIF";
    }
}

/// How picture files' names end, without the dot: a hint for lists of files, since the content alone tells.
pub const PICTURE_ENDINGS: [&str; 8] = ["jpg", "jpeg", "png", "webp", "tif", "tiff", "bmp", "gif"];

impl Format {
    /// How a file of this kind ends, without the dot.
    pub fn extension(self) -> &'static str {
        use crate::record::Word as _;
        self.name()
    }

    /// The format that a file's first bytes tell; `None` for anything else.
    pub fn of(head: &[u8]) -> Option<Self> {
        match image::guess_format(head).ok()? {
            ImageFormat::Jpeg => Some(Self::Jpeg),
            ImageFormat::Png => Some(Self::Png),
            ImageFormat::WebP => Some(Self::Webp),
            ImageFormat::Tiff => Some(Self::Tiff),
            ImageFormat::Bmp => Some(Self::Bmp),
            ImageFormat::Gif => Some(Self::Gif),
            _ => None,
        }
    }

    fn decoder(self) -> ImageFormat {
        match self {
            Self::Jpeg => ImageFormat::Jpeg,
            Self::Png => ImageFormat::Png,
            Self::Webp => ImageFormat::WebP,
            Self::Tiff => ImageFormat::Tiff,
            Self::Bmp => ImageFormat::Bmp,
            Self::Gif => ImageFormat::Gif,
        }
    }
}

/// Why a picture cannot be had; each names the file.
#[derive(Debug, thiserror::Error)]
pub enum PictureError {
    #[error("“{name}” cannot be read: {reason}")]
    Unreadable { name: String, reason: std::io::Error },
    #[error("“{name}” is empty")]
    Empty { name: String },
    #[error("“{name}” is no picture: JPEG, PNG, WebP, TIFF, BMP and GIF can be read")]
    NotAPicture { name: String },
    #[error("“{name}” is cut short: copy it again from where it came from")]
    CutShort { name: String },
    #[error("“{name}” is too large: {width_px} × {height_px} pixels, {most} million are read at most")]
    TooManyPixels { name: String, width_px: u32, height_px: u32, most: u64 },
    #[error("“{name}” is too large: {mb} MB, {most} MB are read at most")]
    TooManyBytes { name: String, mb: u64, most: u64 },
    #[error("“{name}” is damaged: {reason}")]
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
}

impl Picture {
    /// Reads a file and tells what it is.
    pub fn open(path: &Path) -> Result<Self, PictureError> {
        let name = path.file_name().unwrap_or(path.as_os_str()).to_string_lossy().into_owned();
        let unreadable = |reason| PictureError::Unreadable { name: name.clone(), reason };
        let file = File::open(path).map_err(unreadable)?;
        let metadata = file.metadata().map_err(unreadable)?;
        if metadata.is_dir() {
            return Err(PictureError::NotAPicture { name });
        }
        let mut bytes = Vec::new();
        // One byte over the limit is read, so that a device that claims no length is refused too.
        file.take(MOST_BYTES + 1).read_to_end(&mut bytes).map_err(unreadable)?;
        if bytes.len() as u64 > MOST_BYTES {
            let mb = metadata.len().max(MOST_BYTES) / (1024 * 1024);
            return Err(PictureError::TooManyBytes { name, mb, most: MOST_BYTES / (1024 * 1024) });
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
        let reader = ImageReader::with_format(Cursor::new(&bytes[..]), format.decoder());
        let mut decoder = reader.into_decoder().map_err(|error| refused(&name, error))?;
        let orientation = decoder.orientation().unwrap_or(Orientation::NoTransforms);
        let (width, height) = decoder.dimensions();
        drop(decoder);
        let (width_px, height_px) = if turns_sideways(orientation) { (height, width) } else { (width, height) };
        if u64::from(width) * u64::from(height) > MOST_PIXELS {
            return Err(PictureError::TooManyPixels { name, width_px, height_px, most: MOST_PIXELS / 1_000_000 });
        }
        Ok(Self { name, bytes, format, width_px, height_px, orientation })
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

    /// Decodes it, turned as the camera says. Takes long: never on the window's thread.
    pub fn decode(&self) -> Result<DynamicImage, PictureError> {
        let mut reader = ImageReader::with_format(Cursor::new(&self.bytes[..]), self.format.decoder());
        let mut limits = Limits::default();
        limits.max_alloc = Some(MOST_PIXELS * 8);
        reader.limits(limits);
        let mut image = reader.decode().map_err(|error| refused(&self.name, error))?;
        image.apply_orientation(self.orientation);
        Ok(image)
    }
}

fn turns_sideways(orientation: Orientation) -> bool {
    matches!(
        orientation,
        Orientation::Rotate90 | Orientation::Rotate270 | Orientation::Rotate90FlipH | Orientation::Rotate270FlipH
    )
}

/// Cuts that decoders pass over in silence, filling the rest with grey.
fn is_cut_short(format: Format, bytes: &[u8]) -> bool {
    match format {
        Format::Jpeg => is_jpeg_cut_short(bytes),
        // RIFF tells the length of all that follows its first eight bytes.
        Format::Webp => bytes
            .get(4..8)
            .and_then(|length| <[u8; 4]>::try_from(length).ok())
            .is_none_or(|length| (bytes.len() as u64) < u64::from(u32::from_le_bytes(length)) + 8),
        Format::Png => bytes.len() < 45,
        Format::Tiff | Format::Bmp | Format::Gif => false,
    }
}

/// Walks the segments of ITU-T T.81, annex B, to the first scan; an end marker (FF D9) has to follow it.
fn is_jpeg_cut_short(bytes: &[u8]) -> bool {
    let mut at = 2;
    loop {
        let Some(&[marker_start, marker]) = bytes.get(at..at + 2) else { return true };
        if marker_start != 0xFF {
            // Not a segment: the decoder says what is wrong with it.
            return false;
        }
        match marker {
            0xFF => at += 1,
            0x01 | 0xD0..=0xD8 => at += 2,
            0xDA => return !bytes[at..].windows(2).any(|pair| pair == [0xFF, 0xD9]),
            _ => {
                let Some(&[high, low]) = bytes.get(at + 2..at + 4) else { return true };
                at += 2 + usize::from(u16::from_be_bytes([high, low])).max(2);
            }
        }
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
