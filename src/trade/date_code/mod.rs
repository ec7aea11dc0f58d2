//! Date codes: what a marking says about when a part was made.
//!
//! [`read`] gives every reading of one marking that is possible, best first, each with its reason;
//! [`joint`] reads all markings of a part together.

mod agree;
mod alone;
mod code;
mod design_years;
mod fiscal;
mod forms;
mod found;
mod joint;
mod letters;
mod outliers;
mod scheme;
mod weeks;
mod weigh;
mod why;

use chrono::NaiveDate;

pub use design_years::DesignYears;
pub use joint::{
    Confidence, Conflict, Grade, Joint, Kept, MarkingText, NotBefore, NotBeforeCause, Outlier, OutlierCause, joint,
};
pub use scheme::{Habit, Scheme, Surface};
pub use why::{Fault, Unreadable, Why};

use super::Span;
use found::Found;

/// What else is known about a marking that is to be read.
#[derive(Clone, Copy, Debug, Default)]
pub struct Context<'a> {
    /// The years in which the part's design was made; ranks readings, forbids none.
    pub design_years: Option<Span>,
    /// What the marking is printed on.
    pub surface: Surface,
    /// The only days that come into question; 1975 to 2014 when not given.
    pub years: Option<Span>,
    /// The part's other markings, as far as they are read.
    pub others: &'a [Span],
}

/// The widest scope: beyond it no two-digit year could be told apart from a part number.
const WIDEST: Span = years(1900, 2099);
/// The scope where none is asked for, and nothing is known of the design or of the day on which the marking was read.
const USUAL: Span = years(1975, 2014);

const fn years(from: i32, to: i32) -> Span {
    Span {
        first: NaiveDate::from_ymd_opt(from, 1, 1).expect("a new year's day exists"),
        last: NaiveDate::from_ymd_opt(to, 12, 31).expect("a new year's eve exists"),
    }
}

impl Context<'_> {
    /// The days in question, within 1900 to 2099 whatever was asked.
    pub fn scope(&self) -> Span {
        let asked = self.years.unwrap_or(USUAL);
        Span { first: asked.first.clamp(WIDEST.first, WIDEST.last), last: asked.last.clamp(WIDEST.first, WIDEST.last) }
    }
}

/// One possible reading of a marking.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Reading {
    /// The days in question, week codes already widened by a week on both sides.
    pub span: Span,
    pub scheme: Scheme,
    /// What speaks against it, in weeks: 0 is best. See [`Why`] for what it rests on.
    pub cost: u32,
    pub why: Why,
}

/// All that can be said about one marking: what it may mean, and what it cannot.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Explained {
    /// Best first.
    pub readings: Vec<Reading>,
    /// Schemes written like this that are impossible here, each with its reason.
    pub faults: Vec<(Scheme, Fault)>,
}

/// Every possible reading of a marking, best first; never an empty list.
///
/// # Errors
/// [`Unreadable`] says why no scheme gives a date.
pub fn read(text: &str, context: &Context) -> Result<Vec<Reading>, Unreadable> {
    explain(text, context).map(|explained| explained.readings)
}

/// As [`read`], with the schemes that the marking looks like but cannot be.
///
/// # Errors
/// As [`read`].
pub fn explain(text: &str, context: &Context) -> Result<Explained, Unreadable> {
    let code = code::Code::new(text)?;
    let mut found = Found::new(context);
    forms::gather(&code, &mut found);
    let Found { mut readings, faults, .. } = found;
    if readings.is_empty() {
        return Err(if faults.is_empty() { Unreadable::NoForm } else { Unreadable::Impossible(faults) });
    }
    readings.sort_unstable_by_key(|reading| (reading.cost, reading.scheme, reading.span));
    let faults = faults.into_iter().filter(|(scheme, _)| readings.iter().all(|r| r.scheme != *scheme)).collect();
    Ok(Explained { readings, faults })
}
