//! How much speaks against a reading: habit of the surface, the design's years, the part's other markings.
//!
//! Costs are in weeks, so that an unusual scheme and a distance in time can be set against each other. The figures
//! are common practice, no source.

use super::{Context, Habit, Reading, Scheme, Span, Why};

/// A scheme that is seen on such surfaces, but not the usual one.
const SEEN: u32 = 26;
/// A scheme that is rare there.
const RARE: u32 = 156;
/// A code found among other text may be half of a part number.
const AMONG_TEXT: u32 = 26;
/// Chips and boards may lie in stock this long before a design is introduced.
const STOCK_WEEKS: u32 = 52;
/// No distance counts for more than this: past ten years all are equally wrong.
const FARTHEST: u32 = 520;

pub(super) fn weighed(span: Span, scheme: Scheme, context: &Context, among_text: bool) -> Reading {
    let habit = scheme.habit(context.surface);
    let mut cost = match habit {
        Habit::Usual => 0,
        Habit::Seen => SEEN,
        Habit::Rare => RARE,
    };
    if among_text {
        cost += AMONG_TEXT;
    }
    let design_weeks = context.design_years.map(|years| weeks(span, years));
    if let Some(weeks) = design_weeks {
        let apart = weeks.unsigned_abs();
        let counted = if weeks < 0 { apart.saturating_sub(STOCK_WEEKS) } else { apart };
        cost += counted.min(FARTHEST);
    }
    let other_weeks = context.others.iter().map(|other| weeks(span, *other)).min_by_key(|weeks| weeks.abs());
    if let Some(weeks) = other_weeks {
        cost += weeks.unsigned_abs().min(FARTHEST);
    }
    Reading { span, scheme, cost, why: Why { habit, surface: context.surface, design_weeks, other_weeks, among_text } }
}

fn weeks(span: Span, other: Span) -> i32 {
    span.weeks_from(other) as i32
}
