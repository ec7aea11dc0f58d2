//! Dates as people remember them, and moments that can be put in order.

use std::fmt;
use std::str::FromStr;

use chrono::{Datelike, NaiveDate};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use crate::trade::Span;

/// The years a logbook date may lie in: before any of the trade's parts, and far enough ahead for due dates.
pub const YEARS: std::ops::RangeInclusive<i32> = 1900..=2199;

/// A remembered date: a day, a month, a year, or unknown. Written `1998-03-12`, `1998-03`, `1998` or nothing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum When {
    /// Nobody remembers.
    #[default]
    Unknown,
    /// Some day of this year.
    Year(i32),
    /// Some day of this month; the day stored is its first.
    Month(NaiveDate),
    /// This day.
    Day(NaiveDate),
}

/// A text that is no date, a part of one, or lies outside [`YEARS`].
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("“{0}” is no date: write a day (1998-03-12), a month (1998-03) or a year (1998) from 1900 to 2199")]
pub struct NoDate(pub String);

impl When {
    /// The days it may have been; `None` when unknown.
    pub fn span(self) -> Option<Span> {
        match self {
            Self::Unknown => None,
            Self::Year(year) => Span::year(year),
            Self::Month(first) => Span::month(first.year(), first.month()),
            Self::Day(day) => Some(Span::day(day)),
        }
    }

    /// Whether anything is known.
    pub fn is_known(self) -> bool {
        self != Self::Unknown
    }
}

impl From<NaiveDate> for When {
    fn from(day: NaiveDate) -> Self {
        Self::Day(day)
    }
}

impl fmt::Display for When {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Unknown => Ok(()),
            Self::Year(year) => write!(f, "{year:04}"),
            Self::Month(first) => write!(f, "{}", first.format("%Y-%m")),
            Self::Day(day) => write!(f, "{}", day.format("%Y-%m-%d")),
        }
    }
}

impl FromStr for When {
    type Err = NoDate;

    fn from_str(text: &str) -> Result<Self, NoDate> {
        let text = text.trim();
        let refuse = || NoDate(text.to_owned());
        if text.is_empty() {
            return Ok(Self::Unknown);
        }
        if !text.bytes().all(|byte| byte.is_ascii_digit() || byte == b'-') {
            return Err(refuse());
        }
        let numbers: Vec<&str> = text.split('-').collect();
        let widths_fit = numbers.iter().map(|part| part.len()).eq([4, 2, 2].into_iter().take(numbers.len()));
        if !widths_fit {
            return Err(refuse());
        }
        let number = |index: usize| numbers.get(index).and_then(|part| part.parse::<u32>().ok());
        let year = number(0).and_then(|year| i32::try_from(year).ok()).filter(|year| YEARS.contains(year));
        let date = |month, day| NaiveDate::from_ymd_opt(year?, month, day);
        match numbers.len() {
            1 => year.map(Self::Year),
            2 => number(1).and_then(|month| date(month, 1)).map(Self::Month),
            _ => number(1).zip(number(2)).and_then(|(month, day)| date(month, day)).map(Self::Day),
        }
        .ok_or_else(refuse)
    }
}

impl Serialize for When {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for When {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = std::borrow::Cow::<'de, str>::deserialize(deserializer)?;
        text.parse().map_err(serde::de::Error::custom)
    }
}

/// When something happened: its date, and its place in the order of entry.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Moment {
    /// The date, as remembered.
    pub on: When,
    /// The logbook's running number of events, from 1; it settles the order within one evening.
    pub sequence: u32,
}

impl Moment {
    /// A day's next event: the store gives it its number when it is written.
    pub fn on(day: NaiveDate) -> Self {
        Self { on: When::Day(day), sequence: 0 }
    }

    /// Whether this happened after `other`: by date where the dates are apart, else by order of entry.
    ///
    /// Meant for pairs; across fuzzy dates it need not be transitive. To sort, use [`Moment::order`].
    pub fn is_after(self, other: Self) -> bool {
        match (self.on.span(), other.on.span()) {
            (Some(mine), Some(theirs)) if mine.first > theirs.last => true,
            (Some(mine), Some(theirs)) if mine.last < theirs.first => false,
            _ => self.sequence > other.sequence,
        }
    }

    /// Whether this certainly happened after `other`: on a later date, or on the same day and entered later. Dates
    /// that overlap, or that nobody remembers, leave it open.
    pub fn is_surely_after(self, other: Self) -> bool {
        match (self.on.span(), other.on.span()) {
            (Some(mine), Some(theirs)) if mine.first > theirs.last => true,
            (Some(mine), Some(theirs)) => {
                let is_one_day = mine.first == mine.last && mine == theirs;
                is_one_day && self.sequence > other.sequence
            }
            _ => false,
        }
    }

    /// A key to sort by: the latest day it may have been, then order of entry. Unknown dates come first.
    pub fn order(self) -> (Option<NaiveDate>, u32) {
        (self.on.span().map(|span| span.last), self.sequence)
    }
}
