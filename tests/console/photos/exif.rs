//! Exif data written by hand after CIPA DC-008 (Exif 2.32): 4.6.2 (TIFF header and directories), 4.6.4 to 4.6.6
//! (fields), 4.7.2 (APP1). Low byte first.

use image::ImageFormat;

use super::quarters::packed;

/// The place that the pictures claim to be taken at; its letters must not be found in anything handed out.
pub const PLACE: &[u8] = b"ATTIC IN NORDKAMP";

/// A field: tag, type, count, and its bytes.
type Field = (u16, u16, u32, Vec<u8>);

pub fn ascii(tag: u16, text: &[u8]) -> Field {
    let text = [text, b"\0"].concat();
    (tag, 2, text.len() as u32, text)
}

pub fn short(tag: u16, value: u16) -> Field {
    (tag, 3, 1, value.to_le_bytes().to_vec())
}

/// What a camera may note of a picture.
#[derive(Clone, Default)]
pub struct Noted {
    pub orientation: u8,
    pub fields: Vec<Field>,
    pub exif: Vec<Field>,
    pub has_place: bool,
}

impl Noted {
    pub fn turned(orientation: u8) -> Self {
        Self { orientation, ..Self::default() }
    }

    /// A time as in DateTimeOriginal and OffsetTimeOriginal.
    pub fn taken(time: &[u8], offset: Option<&[u8]>) -> Self {
        let offset = offset.map(|offset| ascii(0x9011, offset));
        Self { orientation: 1, exif: [ascii(0x9003, time)].into_iter().chain(offset).collect(), ..Self::default() }
    }

    /// The TIFF structure.
    pub fn tiff(&self) -> Vec<u8> {
        let mut first = vec![short(0x0112, self.orientation.into())];
        first.extend(self.fields.clone());
        let mut tiff = b"II*\0\x08\0\0\0".to_vec();
        // Pointers to the other directories are as long whatever they hold.
        let pointers = 2;
        let length = directory(&first, pointers, 8).len();
        let exif = directory(&self.exif, 0, 8 + length);
        let north = (0x0001, 2, 2, b"N\0".to_vec());
        let degrees = [58_u32, 1, 13, 1, 7, 1].map(u32::to_le_bytes).concat();
        let area = (0x001C, 7, PLACE.len() as u32, PLACE.to_vec());
        let place = [north, (0x0002, 5, 3, degrees), area];
        let place = if self.has_place { &place[..] } else { &[] };
        first.push((0x8769, 4, 1, (8 + length as u32).to_le_bytes().to_vec()));
        first.push((0x8825, 4, 1, ((8 + length + exif.len()) as u32).to_le_bytes().to_vec()));
        let gps = directory(place, 0, 8 + length + exif.len());
        tiff.extend(directory(&first, 0, 8));
        tiff.extend(exif);
        tiff.extend(gps);
        tiff
    }

    /// The quarters as a JPEG file with this in it.
    pub fn jpeg(&self) -> Vec<u8> {
        let exif = [b"Exif\0\0", &self.tiff()[..]].concat();
        let jpeg = packed(ImageFormat::Jpeg);
        let length = (exif.len() as u16 + 2).to_be_bytes();
        [&jpeg[..2], &[0xFF, 0xE1], &length, &exif, &jpeg[2..]].concat()
    }

    /// The quarters as a PNG file with this in it. Source: PNG Specification (Third Edition), 11.3.5.1 (eXIf).
    pub fn png(&self) -> Vec<u8> {
        let png = packed(ImageFormat::Png);
        let tiff = self.tiff();
        let chunk = [b"eXIf", &tiff[..]].concat();
        let length = (tiff.len() as u32).to_be_bytes();
        // After the signature (8) and the header chunk (25).
        [&png[..33], &length, &chunk, &crc(&chunk).to_be_bytes(), &png[33..]].concat()
    }
}

/// A directory with room for so many more fields, and the values that do not fit in it; it begins at `at`.
fn directory(fields: &[Field], more: usize, at: usize) -> Vec<u8> {
    let count = fields.len() + more;
    let mut entries = (count as u16).to_le_bytes().to_vec();
    let mut values = Vec::new();
    let values_at = at + 2 + 12 * count + 4;
    let mut fields = fields.to_vec();
    fields.sort_by_key(|field| field.0);
    for (tag, kind, length, value) in &fields {
        entries.extend(tag.to_le_bytes());
        entries.extend(kind.to_le_bytes());
        entries.extend(length.to_le_bytes());
        let mut inside = value.clone();
        if value.len() > 4 {
            inside = ((values_at + values.len()) as u32).to_le_bytes().to_vec();
            values.extend(value);
            values.resize(values.len().next_multiple_of(2), 0);
        }
        inside.resize(4, 0);
        entries.extend(inside);
    }
    entries.resize(2 + 12 * count + 4, 0);
    [entries, values].concat()
}

/// The checksum of a PNG chunk. Source: PNG Specification (Third Edition), annex D.
fn crc(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(u32::MAX, |crc, byte| {
        (0..8).fold(crc ^ u32::from(*byte), |crc, _| (crc >> 1) ^ (0xEDB8_8320 * (crc & 1)))
    })
}
