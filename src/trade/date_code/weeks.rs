//! Week codes: YYWW, WWYY, YWW, and weeks that say they are weeks.
//!
//! A makers' week need not be an ISO week: EANCOM's code list and one chip maker's marking key both count from the
//! week of 1 January (ref.gs1.org, CL23; onlinedocs.microchip.com, package marking), so every week is widened by
//! seven days on both sides.

use chrono::{NaiveDate, Weekday};

use super::found::{Found, Year};
use super::{Fault, Scheme, Span};

/// Days by which a week code is widened on both sides.
const WIDEN: u64 = 7;

/// Four digits in two halves, each of which may be the year.
pub(super) fn halves(front: u32, back: u32, found: &mut Found) {
    week(Scheme::YearWeek, Year::Rest(front as i32, 100), back, found);
    week(Scheme::WeekYear, Year::Rest(back as i32, 100), front, found);
}

/// A week of a year under a scheme.
pub(super) fn week(scheme: Scheme, year: Year, week: u32, found: &mut Found) {
    if !(1..=53).contains(&week) {
        return found.refuse(scheme, Fault::NoWeek(week));
    }
    found.each_year(scheme, year, |found, year| {
        let monday = NaiveDate::from_isoywd_opt(year, week, Weekday::Mon);
        let sunday = NaiveDate::from_isoywd_opt(year, week, Weekday::Sun);
        match monday.zip(sunday) {
            Some((first, last)) => found.keep(scheme, Span { first, last }, WIDEN),
            None => found.refuse(scheme, Fault::NoSuchWeek { week, year }),
        }
    });
}

/// A day of an ISO week (`1997-W12-3`), Monday 1 to Sunday 7: exact, since it follows the standard's own form.
pub(super) fn weekday(year: Year, week: u32, day: u32, found: &mut Found) {
    let scheme = Scheme::WrittenDay;
    let Some(weekday) = (1..=7).contains(&day).then(|| Weekday::try_from(day as u8 - 1).ok()).flatten() else {
        return found.refuse(scheme, Fault::NoSuchWeekday(day));
    };
    found.each_year(scheme, year, |found, year| match NaiveDate::from_isoywd_opt(year, week, weekday) {
        Some(date) => found.keep(scheme, Span::day(date), 0),
        None => found.refuse(scheme, Fault::NoSuchWeek { week, year }),
    });
}
