//! Dates in the sample's tables: as a logbook has them, or told from the day on which the sample is made.

use chrono::{Datelike, Days, Months, NaiveDate};
use serde::{Deserialize, Deserializer};

use crate::record::When;

/// A date as written: `1998-03-12`, `1998-03`, `1998`; or `-40d` and `-14m`, days and months before today.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Told {
    #[default]
    Unknown,
    At(When),
    DaysBefore(i64),
    MonthsBefore(u32),
}

impl Told {
    /// The date when today is `today`.
    pub fn when(self, today: NaiveDate) -> When {
        let date = match self {
            Self::Unknown => return When::Unknown,
            Self::At(when) => return when,
            Self::DaysBefore(days) if days >= 0 => today.checked_sub_days(Days::new(days.unsigned_abs())),
            Self::DaysBefore(days) => today.checked_add_days(Days::new(days.unsigned_abs())),
            Self::MonthsBefore(months) => {
                let month = today.checked_sub_months(Months::new(months)).and_then(|day| day.with_day(1));
                return month.map_or(When::Unknown, When::Month);
            }
        };
        date.map_or(When::Unknown, When::Day)
    }

    /// A number that sorts what was told from the oldest to the youngest; unknown dates first.
    pub fn order(self, today: NaiveDate) -> Option<NaiveDate> {
        self.when(today).span().map(|span| span.last)
    }
}

impl<'de> Deserialize<'de> for Told {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        let refuse = || serde::de::Error::custom(format!("“{text}” is no date: write 1998-03-12, 1998, -40d or -14m"));
        let signed = |rest: &str| rest.parse::<i64>().map_err(|_| refuse());
        if let Some(days) = text.strip_suffix('d') {
            return Ok(Self::DaysBefore(-signed(days)?));
        }
        if let Some(months) = text.strip_suffix('m') {
            let months = u32::try_from(-signed(months)?).map_err(|_| refuse())?;
            return Ok(Self::MonthsBefore(months));
        }
        text.parse().map(Self::At).map_err(|_| refuse())
    }
}
