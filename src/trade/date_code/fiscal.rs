//! A drive maker's fiscal code: two digits of the fiscal year, one or two of its week, one of the weekday.
//!
//! Published decoders (bugaco.com, johnlane.ie) count from the first Saturday of July before, Saturday being day 1;
//! another (dmares.com) counts days from 0 and comes out eight days later; os2museum.com found such tools off by
//! days or a week against labels that carry a plain date. So eight days are added on both sides.

use chrono::{Datelike, Days, NaiveDate};

use super::found::{Found, Year};
use super::{Fault, Scheme, Span};

/// Days by which published readings of one code differ.
const WIDEN: u64 = 8;

pub(super) fn day(year: u32, week: u32, day: u32, found: &mut Found) {
    let scheme = Scheme::FiscalDay;
    if !(1..=7).contains(&day) {
        return found.refuse(scheme, Fault::NoSuchWeekday(day));
    }
    if !(1..=53).contains(&week) {
        return found.refuse(scheme, Fault::NoWeek(week));
    }
    found.each_year(scheme, Year::Rest(year as i32, 100), |found, year| {
        if let Some(date) = fiscal_start(year)
            .and_then(|start| start.checked_add_days(Days::new(u64::from(week - 1) * 7 + u64::from(day - 1))))
        {
            found.keep(scheme, Span::day(date), WIDEN);
        }
    });
}

/// The first Saturday of July in the year before.
fn fiscal_start(year: i32) -> Option<NaiveDate> {
    let july = NaiveDate::from_ymd_opt(year - 1, 7, 1)?;
    // Days from Sunday: Saturday is 6, so 1 July needs 6 − its own number more days.
    july.checked_add_days(Days::new(u64::from(6 - july.weekday().num_days_from_sunday())))
}
