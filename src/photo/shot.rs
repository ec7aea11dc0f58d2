//! When and with what a picture was taken, as its camera noted. Where it was taken is never read.

use std::fmt;
use std::io::Cursor;

use chrono::{DateTime, Datelike as _, FixedOffset, NaiveDateTime, Utc};
use exif::{Exif, In, Reader, Tag, Value};

use crate::record::{When, YEARS};

/// What a camera noted of a picture.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Shot {
    pub taken: Option<TakenAt>,
    /// Maker and model; empty when nothing is noted.
    pub camera: String,
    /// Exif's orientation, 1–8; 1 where none is noted.
    pub orientation: u8,
}

/// A time on a camera's clock.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TakenAt {
    pub local: NaiveDateTime,
    /// How far the clock was ahead of UTC, where it is noted.
    pub offset: Option<FixedOffset>,
}

impl TakenAt {
    /// The day, as whoever took it remembers it.
    pub fn day(self) -> When {
        self.local.date().into()
    }

    /// The instant, where the offset is known.
    pub fn instant(self) -> Option<DateTime<Utc>> {
        let local = self.local.and_local_timezone(self.offset?).single()?;
        Some(local.with_timezone(&Utc))
    }
}

impl fmt::Display for TakenAt {
    /// ISO 8601: `2024-05-06T07:08:09+02:00`, without the end where no offset is known.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.local.format("%Y-%m-%dT%H:%M:%S"))?;
        self.offset.map_or(Ok(()), |offset| write!(f, "{offset}"))
    }
}

impl Shot {
    /// What the Exif data in a file's bytes say; nothing where there are none or where they cannot be read.
    pub fn of(bytes: &[u8]) -> Self {
        let read = Reader::new().continue_on_error(true).read_from_container(&mut Cursor::new(bytes));
        // A damaged tail does not make the rest worthless.
        let Ok(exif) = read.or_else(|error| error.distill_partial_result(|_| ())) else {
            return Self { orientation: 1, ..Self::default() };
        };
        let orientation = exif.get_field(Tag::Orientation, In::PRIMARY).and_then(|field| field.value.get_uint(0));
        Self {
            taken: taken(&exif),
            camera: camera(&exif),
            orientation: orientation.filter(|value| (1..=8).contains(value)).map_or(1, |value| value as u8),
        }
    }
}

/// When the shutter opened, else when it was digitised, else when the file was changed last, each with its offset.
/// Source: CIPA DC-008 (Exif 2.32), 4.6.5 and 4.6.8.
fn taken(exif: &Exif) -> Option<TakenAt> {
    let times = [
        (Tag::DateTimeOriginal, Tag::OffsetTimeOriginal),
        (Tag::DateTimeDigitized, Tag::OffsetTimeDigitized),
        (Tag::DateTime, Tag::OffsetTime),
    ];
    times.into_iter().find_map(|(time, offset)| {
        let local = NaiveDateTime::parse_from_str(&said(exif, time)?, "%Y:%m:%d %H:%M:%S").ok()?;
        // A clock that was never set says the year 0.
        let offset = said(exif, offset).and_then(|offset| offset.parse().ok());
        YEARS.contains(&local.year()).then_some(TakenAt { local, offset })
    })
}

fn camera(exif: &Exif) -> String {
    let (maker, model) = (said(exif, Tag::Make).unwrap_or_default(), said(exif, Tag::Model).unwrap_or_default());
    // Many models repeat their maker.
    let repeats = model.get(..maker.len()).is_some_and(|start| start.eq_ignore_ascii_case(&maker));
    if repeats { model } else { format!("{maker} {model}").trim().to_owned() }
}

/// A text field without the spaces and zeros that pad it; `None` when nothing else is in it.
fn said(exif: &Exif, tag: Tag) -> Option<String> {
    let Value::Ascii(lines) = &exif.get_field(tag, In::PRIMARY)?.value else { return None };
    let text = String::from_utf8_lossy(lines.first()?);
    let text = text.trim_matches(|letter: char| letter.is_whitespace() || letter == '\0');
    (!text.is_empty()).then(|| text.to_owned())
}
