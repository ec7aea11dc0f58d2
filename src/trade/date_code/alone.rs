//! One marking for itself: the readings that come into question before the part's other markings are asked.
//!
//! The design's own years choose among them. What such parts usually are, or when they were usually made, does not.

use super::design_years::{DesignYears, STOCK_WEEKS};
use super::weigh::design_cost;
use super::{Context, Habit, Kept, MarkingText, Reading, Span, Surface, USUAL, WIDEST, read};
use chrono::{Days, NaiveDate};

/// A marking's readings, and whether none of them lies in the design's years.
pub(super) struct Alone {
    pub kept: Kept,
    pub conflicts: bool,
}

/// A marking's readings: as the restorer has settled it, or all that the design's years leave. Those in question stand
/// first, and are counted.
pub(super) fn alone(marking: &MarkingText, design: DesignYears) -> Alone {
    // The design says nothing of what was put in later.
    let design = if marking.original == Some(false) { DesignYears::default() } else { design };
    let years = Some(scope(marking.not_after, design));
    let context = Context { design_years: design.within(WIDEST), surface: marking.surface, years, others: &[] };
    let mut readings = match read(marking.text, &context) {
        Ok(readings) => readings,
        Err(reason) => {
            let kept = Kept { readings: Vec::new(), kept_count: 0, unreadable: Some(reason) };
            return Alone { kept, conflicts: false };
        }
    };
    if let Some(scheme) = marking.settled
        && readings.iter().any(|reading| reading.scheme == scheme)
    {
        readings.retain(|reading| reading.scheme == scheme);
    }
    let fitting = choose(&mut readings, design, marking.surface);
    let kept_count = fitting.unwrap_or(readings.len());
    Alone { kept: Kept { readings, kept_count, unreadable: None }, conflicts: fitting.is_none() }
}

/// The days in question: as late as the marking was read at all, and as early as the design was made.
fn scope(not_after: Option<NaiveDate>, design: DesignYears) -> Span {
    let stock = Days::new(u64::from(STOCK_WEEKS) * 7);
    let first =
        design.from.and_then(|from| from.checked_sub_days(stock)).map_or(USUAL.first, |from| from.min(USUAL.first));
    let last = not_after.unwrap_or_else(|| design.from.max(design.to).map_or(USUAL.last, |day| day.max(USUAL.last)));
    Span { first: first.min(last), last }
}

/// Puts the readings in the design's years first and counts them; `None` where there is none. A scheme that is rare on
/// such surfaces does not save a marking that is usually read otherwise.
fn choose(readings: &mut [Reading], design: DesignYears, surface: Surface) -> Option<usize> {
    if !design.is_known() {
        return Some(readings.len());
    }
    let fits = |reading: &Reading| design.allow(reading, surface);
    let is_rare = |reading: &Reading| reading.why.habit == Habit::Rare;
    let all_rare = readings.iter().all(is_rare);
    if readings.iter().any(|reading| fits(reading) && (all_rare || !is_rare(reading))) {
        readings.sort_by_key(|reading| !fits(reading));
        return Some(readings.iter().filter(|reading| fits(reading)).count());
    }
    // Where the years choose nothing, the distance from them does not choose either.
    for reading in readings.iter_mut() {
        reading.cost -= design_cost(reading.why.design_weeks);
    }
    readings.sort_by_key(|reading| (reading.cost, reading.scheme, reading.span));
    None
}
