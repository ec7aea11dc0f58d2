//! A span of days: what a date code, a design's years or a machine's window really says.

use chrono::{Days, NaiveDate};
use serde::{Deserialize, Serialize};

/// An inclusive span of days; `first` is never after `last`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub struct Span {
    /// First day of the span.
    pub first: NaiveDate,
    /// Last day of the span, included.
    pub last: NaiveDate,
}

impl Span {
    /// From two days in either order.
    pub fn new(one: NaiveDate, other: NaiveDate) -> Self {
        Self { first: one.min(other), last: one.max(other) }
    }

    /// A single day.
    pub fn day(day: NaiveDate) -> Self {
        Self { first: day, last: day }
    }

    /// A whole calendar year; `None` outside the years that `chrono` can tell.
    pub fn year(year: i32) -> Option<Self> {
        Some(Self { first: NaiveDate::from_ymd_opt(year, 1, 1)?, last: NaiveDate::from_ymd_opt(year, 12, 31)? })
    }

    /// A whole calendar month; `None` when there is no such month.
    pub fn month(year: i32, month: u32) -> Option<Self> {
        let first = NaiveDate::from_ymd_opt(year, month, 1)?;
        let next = first.checked_add_months(chrono::Months::new(1))?;
        Some(Self { first, last: next.pred_opt()? })
    }

    /// The span widened by `days` on both sides, as far as dates reach.
    #[must_use]
    pub fn widened(self, days: u64) -> Self {
        Self {
            first: self.first.checked_sub_days(Days::new(days)).unwrap_or(self.first),
            last: self.last.checked_add_days(Days::new(days)).unwrap_or(self.last),
        }
    }

    /// What both spans share; `None` when they are apart.
    pub fn overlap(self, other: Self) -> Option<Self> {
        let shared = Self { first: self.first.max(other.first), last: self.last.min(other.last) };
        (shared.first <= shared.last).then_some(shared)
    }

    /// Days between two spans that do not touch: positive when `self` lies after `other`, negative when before,
    /// 0 when they share a day.
    pub fn days_from(self, other: Self) -> i64 {
        if self.first > other.last {
            (self.first - other.last).num_days()
        } else if self.last < other.first {
            (self.last - other.first).num_days()
        } else {
            0
        }
    }

    /// Whole weeks between two spans, rounded away from zero: 1 day apart counts as a week.
    pub fn weeks_from(self, other: Self) -> i64 {
        let days = self.days_from(other);
        days.signum() * (days.abs() + 6).div_euclid(7)
    }
}
