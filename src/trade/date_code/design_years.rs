//! The years in which a design was made, and whether a reading lies in them.

use std::fmt;

use chrono::{Days, NaiveDate};

use super::agree::is_free;
use super::{Reading, Span, Surface};
use crate::text;

/// Components may lie in stock this long before a design that uses them is introduced. Common practice, no source.
pub(super) const STOCK_WEEKS: u32 = 52;

/// First and last day on which a design was made; an end that nobody knows is open.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct DesignYears {
    pub from: Option<NaiveDate>,
    pub to: Option<NaiveDate>,
}

impl From<Span> for DesignYears {
    fn from(span: Span) -> Self {
        Self { from: Some(span.first), to: Some(span.last) }
    }
}

impl From<Option<Span>> for DesignYears {
    fn from(span: Option<Span>) -> Self {
        span.map_or_else(Self::default, Self::from)
    }
}

impl DesignYears {
    /// Whether either end is known.
    pub fn is_known(self) -> bool {
        self.from.is_some() || self.to.is_some()
    }

    /// The years as a span, an open end as far as `ends` reach; `None` when nothing is known.
    pub fn within(self, ends: Span) -> Option<Span> {
        let span = Span { first: self.from.unwrap_or(ends.first), last: self.to.unwrap_or(ends.last) };
        (self.is_known() && span.first <= span.last).then_some(span)
    }

    /// Whole weeks from the known ends: negative before the first, positive after the last, else 0.
    pub fn weeks_from(self, span: Span) -> i64 {
        let after = self.to.map_or(0, |to| span.weeks_from(Span::day(to)).max(0));
        let before = self.from.map_or(0, |from| span.weeks_from(Span::day(from)).min(0));
        if after > 0 { after } else { before }
    }

    /// Whether an original marking can say this on a part of the design.
    ///
    /// A drive's label dates the finished drive. Other markings date a component, which may have lain in stock, and a
    /// copyright year is early by nature; none can be later than the design's end.
    pub fn allow(self, reading: &Reading, surface: Surface) -> bool {
        let stock_days = if surface == Surface::DriveLabel { 0 } else { u64::from(STOCK_WEEKS) * 7 };
        let earliest =
            self.from.filter(|_| !is_free(reading)).and_then(|from| from.checked_sub_days(Days::new(stock_days)));
        earliest.is_none_or(|earliest| reading.span.last >= earliest)
            && self.to.is_none_or(|to| reading.span.first <= to)
    }
}

impl fmt::Display for DesignYears {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&match (self.from, self.to) {
            (Some(from), Some(to)) => text!("{first} to {last}", first = from, last = to),
            (Some(from), None) => text!("from {day} on", day = from),
            (None, Some(to)) => text!("until {day}", day = to),
            (None, None) => text!("not known").to_owned(),
        })
    }
}
