//! The ways in which parts carry their date, and where each of them is usual.

use std::fmt;

use serde::{Deserialize, Serialize};

use crate::text;
use crate::trade::Source;

/// How a text says its date. Stored with a marking once a restorer has settled it, so the names are permanent.
///
/// Where each is known from: [`Scheme::source`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Scheme {
    /// `1997-03-12`, `12 Mar 1997`, `19970312`, `1997-W12-3`: a day with nothing left open.
    WrittenDay,
    /// `1997-W12`, `WK 12 97`: a week that says it is one.
    WrittenWeek,
    /// `Mar 97`, `MARCH 1997`.
    WrittenMonth,
    /// YYWW or YYYYWW: two-digit year, then week.
    YearWeek,
    /// WWYY: week, then two-digit year.
    WeekYear,
    /// YWW: last digit of the year, then week.
    DigitWeek,
    /// YYMM or YYYYMM: year, then month.
    YearMonth,
    /// MMYY: month, then year.
    MonthYear,
    /// YYMMDD.
    YearMonthDay,
    /// DD.MM.YY, with or without something between the figures.
    DayMonthYear,
    /// MM/DD/YY, with or without something between the figures.
    MonthDayYear,
    /// YMMDD: last digit of the year, then month and day.
    DigitMonthDay,
    /// YYDDD: year, then day of the year.
    YearOrdinal,
    /// YDDD: last digit of the year, then day of the year.
    DigitOrdinal,
    /// A year and nothing else.
    Year,
    /// A year behind a copyright sign: the drawing's, so the part was made then or later.
    Copyright,
    /// IEC 60062, twenty-year cycle: year letter, then month 1–9, O, N, D.
    LetterMonth,
    /// A year letter of IEC 60062, then a two-digit week: a makers' habit.
    LetterWeek,
    /// IEC 60062, ten-year cycle: last digit of the year, then month 1–9, O, N, D.
    DigitMonth,
    /// A drive maker's fiscal year, week and day: YYWD or YYWWD.
    FiscalDay,
}

impl Scheme {
    pub const ALL: [Self; 20] = [
        Self::WrittenDay,
        Self::WrittenWeek,
        Self::WrittenMonth,
        Self::YearWeek,
        Self::WeekYear,
        Self::DigitWeek,
        Self::YearMonth,
        Self::MonthYear,
        Self::YearMonthDay,
        Self::DayMonthYear,
        Self::MonthDayYear,
        Self::DigitMonthDay,
        Self::YearOrdinal,
        Self::DigitOrdinal,
        Self::Year,
        Self::Copyright,
        Self::LetterMonth,
        Self::LetterWeek,
        Self::DigitMonth,
        Self::FiscalDay,
    ];

    /// Where the scheme is known from.
    pub fn source(self) -> Source {
        const WRITTEN: Source = Source::published("ISO 8601");
        const RELAY: Source = Source::published("How to read the date code on a relay (12/2007)");
        const BOARDS: Source = Source::published("blog.epectec.com, PCB markings; pcbdesignschool.com (2011-11-05)");
        match self {
            Self::WrittenDay | Self::WrittenWeek => WRITTEN,
            // IEC 60062 names a four-digit code; that it is this one is from memory.
            Self::YearWeek => {
                Source::published("primidi.com (1208 is week 8 of 2012); from memory: the four-digit form of IEC 60062")
            }
            Self::WeekYear | Self::MonthYear | Self::YearMonthDay => BOARDS,
            Self::DigitWeek | Self::DigitMonthDay => RELAY,
            Self::YearMonth => Source::published("ref.gs1.org, EANCOM 1997 CL23"),
            Self::YearOrdinal => Source::published("ISO 8601, ordinal dates"),
            Self::LetterMonth => Source::published("IEC 60062, as given by primidi.com and newtoncbraga.com.br"),
            Self::FiscalDay => Source::published("os2museum.com, decoding a drive maker's date codes; bugaco.com"),
            Self::DigitMonth => Source::memory("IEC 60062, ten-year cycle"),
            Self::LetterWeek => Source::memory("a makers' habit after IEC 60062"),
            Self::DigitOrdinal => Source::memory("ISO 8601, ordinal dates, with one figure of the year"),
            Self::DayMonthYear | Self::MonthDayYear => Source::published(
                "EDIFACT D96A, element 2379, codes 2 and 3 (stedi.com); e-sg.ru, Proper dating format",
            ),
            Self::WrittenMonth | Self::Year | Self::Copyright => Source::practice(""),
        }
    }

    /// How usual the scheme is on a surface. Common practice, no source, but for boards ([`Self::source`]).
    pub fn habit(self, surface: Surface) -> Habit {
        use Surface::{Board, Capacitor, Case, Chip, DriveLabel, Other, Sticker};
        match (self, surface) {
            (Self::WrittenDay | Self::WrittenWeek | Self::WrittenMonth | Self::Copyright, _)
            | (Self::YearWeek, Chip | Capacitor | Sticker | Other)
            | (Self::WeekYear, Board)
            | (Self::YearMonthDay, Sticker | DriveLabel)
            | (Self::LetterMonth | Self::DigitMonth, Capacitor)
            | (Self::Year, Case | Sticker)
            | (Self::FiscalDay, DriveLabel) => Habit::Usual,
            (Self::YearWeek | Self::WeekYear | Self::YearMonthDay | Self::DayMonthYear | Self::MonthDayYear, _)
            | (Self::DigitWeek, Chip | Capacitor | Other)
            | (Self::MonthYear, Board | Sticker | Case)
            | (Self::YearMonth, Sticker | Case)
            | (Self::YearOrdinal, Sticker | DriveLabel | Case)
            | (Self::LetterWeek, Capacitor)
            | (Self::Year, Board | DriveLabel | Other) => Habit::Seen,
            _ => Habit::Rare,
        }
    }
}

impl fmt::Display for Scheme {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::WrittenDay => text!("a day, written out"),
            Self::WrittenWeek => text!("a week, written out"),
            Self::WrittenMonth => text!("a month, written out"),
            Self::YearWeek => text!("year and week (YYWW)"),
            Self::WeekYear => text!("week and year (WWYY)"),
            Self::DigitWeek => text!("year's last digit and week (YWW)"),
            Self::YearMonth => text!("year and month (YYMM)"),
            Self::MonthYear => text!("month and year (MMYY)"),
            Self::YearMonthDay => text!("year, month, day (YYMMDD)"),
            Self::DayMonthYear => text!("day, month, year"),
            Self::MonthDayYear => text!("month, day, year"),
            Self::DigitMonthDay => text!("year's last digit, month, day (YMMDD)"),
            Self::YearOrdinal => text!("year and day of the year (YYDDD)"),
            Self::DigitOrdinal => text!("year's last digit and day of the year (YDDD)"),
            Self::Year => text!("a year"),
            Self::Copyright => text!("a copyright year"),
            Self::LetterMonth => text!("year letter and month (IEC 60062, twenty years)"),
            Self::LetterWeek => text!("year letter and week"),
            Self::DigitMonth => text!("year's last digit and month (IEC 60062, ten years)"),
            Self::FiscalDay => text!("a drive maker's fiscal year, week, day"),
        })
    }
}

/// What a marking is printed on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Surface {
    Board,
    Chip,
    Sticker,
    Capacitor,
    DriveLabel,
    Case,
    #[default]
    Other,
}

impl Surface {
    pub const ALL: [Self; 7] =
        [Self::Board, Self::Chip, Self::Sticker, Self::Capacitor, Self::DriveLabel, Self::Case, Self::Other];

    /// The surface's name in files and on the console, as in its stored form.
    pub fn key(self) -> &'static str {
        match self {
            Self::Board => "board",
            Self::Chip => "chip",
            Self::Sticker => "sticker",
            Self::Capacitor => "capacitor",
            Self::DriveLabel => "drive_label",
            Self::Case => "case",
            Self::Other => "other",
        }
    }
}

impl std::str::FromStr for Surface {
    type Err = String;

    /// From [`Surface::key`]; a hyphen may stand for the underscore.
    fn from_str(text: &str) -> Result<Self, String> {
        let key = text.trim().to_ascii_lowercase().replace('-', "_");
        Self::ALL.into_iter().find(|surface| surface.key() == key).ok_or_else(|| {
            text!("“{text}” is no surface: {all}", text = text, all = Self::ALL.map(Self::key).join(", "))
        })
    }
}

impl fmt::Display for Surface {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Board => text!("boards"),
            Self::Chip => text!("chips"),
            Self::Sticker => text!("stickers"),
            Self::Capacitor => text!("capacitors"),
            Self::DriveLabel => text!("drive labels"),
            Self::Case => text!("cases"),
            Self::Other => text!("parts of any kind"),
        })
    }
}

/// How usual a scheme is on a kind of surface.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Habit {
    Usual,
    Seen,
    Rare,
}
