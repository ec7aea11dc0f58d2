//! Reasons: why a reading stands where it does in the list, and why a code cannot be read in some way.
//!
//! Both are plain data and become words only when shown, since readings are made far more often than read.

use std::fmt;

use super::{Habit, Scheme, Surface};
use crate::{counted, text};

/// What a reading's place in the list rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Why {
    /// How usual the scheme is on that surface.
    pub habit: Habit,
    pub surface: Surface,
    /// Whole weeks from the design's years, negative before them, 0 within; `None` when they are not known.
    pub design_weeks: Option<i32>,
    /// Whole weeks from the nearest other marking, negative before it, 0 on it; `None` when there is none.
    pub other_weeks: Option<i32>,
    /// Whether the code was found among other text.
    pub among_text: bool,
}

impl fmt::Display for Why {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { habit, surface, design_weeks, other_weeks, among_text } = *self;
        f.write_str(&match habit {
            Habit::Usual => text!("usual on {surface}", surface = surface),
            Habit::Seen => text!("seen on {surface}", surface = surface),
            Habit::Rare => text!("rare on {surface}", surface = surface),
        })?;
        if let Some(weeks) = design_weeks {
            let apart = weeks.unsigned_abs() as usize;
            f.write_str("; ")?;
            f.write_str(&match weeks {
                0 => text!("within the design's years").to_owned(),
                1.. => {
                    counted!("{count} week after the design's years", "{count} weeks after the design's years", apart)
                }
                _ => {
                    counted!("{count} week before the design's years", "{count} weeks before the design's years", apart)
                }
            })?;
        }
        if let Some(weeks) = other_weeks {
            let apart = weeks.unsigned_abs() as usize;
            f.write_str("; ")?;
            f.write_str(&match weeks {
                0 => text!("agrees with another marking").to_owned(),
                _ => counted!("{count} week from another marking", "{count} weeks from another marking", apart),
            })?;
        }
        if among_text {
            f.write_str("; ")?;
            f.write_str(text!("found among other text"))?;
        }
        Ok(())
    }
}

/// Why a code cannot be a date in one scheme.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// The week is 0 or above 53.
    NoWeek(u32),
    /// That year has fewer weeks.
    NoSuchWeek { week: u32, year: i32 },
    /// The month is 0 or above 12.
    NoSuchMonth(u32),
    /// That month has no such day.
    NoSuchDay { day: u32, month: u32, year: i32 },
    /// The day of the year is 0 or above 366.
    NoOrdinal(u32),
    /// That year has no such day of the year.
    NoSuchOrdinal { day: u32, year: i32 },
    /// The weekday is not 1 to 7.
    NoSuchWeekday(u32),
    /// No year of the scope ends that way, or that date lies outside the scope.
    OutsideScope,
    /// IEC 60062 gives that letter to no year.
    NoSuchYearLetter(char),
    /// IEC 60062 gives that sign to no month.
    NoSuchMonthSign(char),
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&match *self {
            Self::NoWeek(week) => text!("there is no week {week}", week = week),
            Self::NoSuchWeek { week, year } => text!("{year} has no week {week}", week = week, year = year),
            Self::NoSuchMonth(month) => text!("there is no month {month}", month = month),
            Self::NoSuchDay { day, month, year } => {
                text!("month {month} of {year} has no day {day}", day = day, month = month, year = year)
            }
            Self::NoOrdinal(day) => text!("no year has a day {day}", day = day),
            Self::NoSuchOrdinal { day, year } => text!("{year} has no day {day}", day = day, year = year),
            Self::NoSuchWeekday(day) => text!("there is no weekday {day}", day = day),
            Self::OutsideScope => text!("outside the years in question").to_owned(),
            Self::NoSuchYearLetter(letter) => {
                text!("{letter} is no year letter (A–X without G, I, O, Q)", letter = letter)
            }
            Self::NoSuchMonthSign('0') => text!("0 is no month sign (October is the letter O)").to_owned(),
            Self::NoSuchMonthSign(sign) => text!("{sign} is no month sign (1–9, O, N, D)", sign = sign),
        })
    }
}

/// Why a text gives no date at all.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Unreadable {
    /// Nothing was printed.
    Empty,
    /// More signs than any date has.
    TooLong,
    /// A sign that no date carries.
    Sign(char),
    /// No scheme is written like this.
    NoForm,
    /// Each scheme that is written like this, and why it cannot be that.
    Impossible(Vec<(Scheme, Fault)>),
}

impl fmt::Display for Unreadable {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => f.write_str(text!("there is nothing to read")),
            Self::TooLong => f.write_str(text!("this is longer than any date code")),
            Self::Sign(sign) => f.write_str(&text!("no date code has “{sign}” in it", sign = sign)),
            Self::NoForm => f.write_str(text!("no date code is written like this")),
            Self::Impossible(faults) => {
                for (nth, (scheme, fault)) in faults.iter().enumerate() {
                    let join = if nth == 0 { "" } else { "; " };
                    write!(f, "{join}{}", text!("not {scheme}: {fault}", scheme = scheme, fault = fault))?;
                }
                Ok(())
            }
        }
    }
}
