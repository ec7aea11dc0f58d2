//! How much speaks against a reading: habit of the surface, the design's years, the part's other markings.
//!
//! Costs are in weeks, so that an unusual scheme and a distance in time can be set against each other. The figures
//! are common practice, no source.

use chrono::Datelike;

use super::design_years::STOCK_WEEKS;
use super::{Context, Habit, Reading, Scheme, Span, Surface, Why};

/// A scheme that is seen on such surfaces, but not the usual one.
const SEEN: u32 = 26;
/// A scheme that is rare there.
const RARE: u32 = 156;
/// A code found among other text may be half of a part number.
const AMONG_TEXT: u32 = 26;
/// No distance counts for more than this: past ten years all are equally wrong.
const FARTHEST: u32 = 520;

/// What readings are held against, in days of the common era, so that it is counted out only once.
pub(super) struct Evidence {
    surface: Surface,
    design_years: Option<Days>,
    others: Vec<Days>,
}

/// First and last day of a span, in days of the common era.
#[derive(Clone, Copy)]
struct Days(i32, i32);

impl From<Span> for Days {
    fn from(span: Span) -> Self {
        Self(span.first.num_days_from_ce(), span.last.num_days_from_ce())
    }
}

impl Days {
    /// As [`Span::weeks_from`].
    fn weeks_from(self, other: Self) -> i32 {
        if self.0 > other.1 {
            (self.0 - other.1 + 6) / 7
        } else if self.1 < other.0 {
            -((other.0 - self.1 + 6) / 7)
        } else {
            0
        }
    }
}

impl Evidence {
    pub fn new(context: &Context) -> Self {
        Self {
            surface: context.surface,
            design_years: context.design_years.map(Days::from),
            others: context.others.iter().copied().map(Days::from).collect(),
        }
    }

    /// A reading with what speaks against it.
    pub fn weighed(&self, span: Span, scheme: Scheme, among_text: bool) -> Reading {
        let Self { surface, design_years, ref others } = *self;
        let habit = scheme.habit(surface);
        let mut cost = match habit {
            Habit::Usual => 0,
            Habit::Seen => SEEN,
            Habit::Rare => RARE,
        };
        if among_text {
            cost += AMONG_TEXT;
        }
        let (mut design_weeks, mut other_weeks) = (None, None);
        if design_years.is_some() || !others.is_empty() {
            let days = Days::from(span);
            design_weeks = design_years.map(|years| days.weeks_from(years));
            other_weeks = others.iter().map(|other| days.weeks_from(*other)).min_by_key(|weeks| weeks.abs());
        }
        cost += design_cost(design_weeks);
        if let Some(weeks) = other_weeks {
            cost += weeks.unsigned_abs().min(FARTHEST);
        }
        Reading { span, scheme, cost, why: Why { habit, surface, design_weeks, other_weeks, among_text } }
    }
}

/// What a distance from the design's years costs.
pub(super) fn design_cost(weeks: Option<i32>) -> u32 {
    let weeks = weeks.unwrap_or(0);
    let apart = weeks.unsigned_abs();
    let counted = if weeks < 0 { apart.saturating_sub(STOCK_WEEKS) } else { apart };
    counted.min(FARTHEST)
}
