//! What is gathered while a code is read: possible readings, and faults of the impossible ones.

use chrono::{Datelike, NaiveDate};

use super::weigh::Evidence;
use super::{Context, Fault, Reading, Scheme, Span};

/// Readings and faults of one code.
pub(super) struct Found {
    pub readings: Vec<Reading>,
    pub faults: Vec<(Scheme, Fault)>,
    /// Set while the code is looked for among other text.
    pub among_text: bool,
    scope: Span,
    evidence: Evidence,
}

impl Found {
    pub fn new(context: &Context) -> Self {
        Self {
            readings: Vec::new(),
            faults: Vec::new(),
            among_text: false,
            scope: context.scope(),
            evidence: Evidence::new(context),
        }
    }

    /// Keeps a reading if its days, as printed, touch the scope; `widen` days are then added on both sides.
    pub fn keep(&mut self, scheme: Scheme, span: Span, widen: u64) {
        if span.overlap(self.scope).is_none() {
            return self.refuse(scheme, Fault::OutsideScope);
        }
        self.readings.push(self.evidence.weighed(span.widened(widen), scheme, self.among_text));
    }

    pub fn refuse(&mut self, scheme: Scheme, fault: Fault) {
        if !self.faults.iter().any(|(known, _)| *known == scheme) {
            self.faults.push((scheme, fault));
        }
    }

    /// The years of the scope that leave `rest` when divided by `cycle`: 100 for two digits, 10 for one, 20 for a
    /// letter. One year on each side is added, since a week or a fiscal year reaches over the year's end.
    pub fn years(&self, rest: i32, cycle: i32) -> impl Iterator<Item = i32> + use<> {
        let (first, last) = (self.scope.first.year() - 1, self.scope.last.year() + 1);
        let start = first + (rest - first).rem_euclid(cycle);
        (start..=last).step_by(cycle as usize)
    }

    /// Tries each year that a written year may mean; refuses the scheme when there is none.
    pub fn each_year(&mut self, scheme: Scheme, year: Year, mut look: impl FnMut(&mut Self, i32)) {
        match year {
            Year::Full(year) => look(self, year),
            Year::Rest(rest, cycle) => {
                let mut any = false;
                for year in self.years(rest, cycle) {
                    any = true;
                    look(self, year);
                }
                if !any {
                    self.refuse(scheme, Fault::OutsideScope);
                }
            }
        }
    }

    /// A calendar day, or the fault that says why there is none.
    pub fn day(&mut self, scheme: Scheme, year: Year, month: u32, day: u32) {
        if !(1..=12).contains(&month) {
            return self.refuse(scheme, Fault::NoSuchMonth(month));
        }
        self.each_year(scheme, year, |found, year| match NaiveDate::from_ymd_opt(year, month, day) {
            Some(date) => found.keep(scheme, Span::day(date), 0),
            None => found.refuse(scheme, Fault::NoSuchDay { day, month, year }),
        });
    }

    /// A calendar month.
    pub fn month(&mut self, scheme: Scheme, year: Year, month: u32) {
        if !(1..=12).contains(&month) {
            return self.refuse(scheme, Fault::NoSuchMonth(month));
        }
        self.each_year(scheme, year, |found, year| {
            if let Some(span) = Span::month(year, month) {
                found.keep(scheme, span, 0);
            }
        });
    }

    /// A day of the year, 1 to 366.
    pub fn ordinal(&mut self, scheme: Scheme, year: Year, day: u32) {
        if !(1..=366).contains(&day) {
            return self.refuse(scheme, Fault::NoOrdinal(day));
        }
        self.each_year(scheme, year, |found, year| match NaiveDate::from_yo_opt(year, day) {
            Some(date) => found.keep(scheme, Span::day(date), 0),
            None => found.refuse(scheme, Fault::NoSuchOrdinal { day, year }),
        });
    }

    /// A whole year.
    pub fn year(&mut self, scheme: Scheme, year: Year) {
        self.each_year(scheme, year, |found, year| {
            if let Some(span) = Span::year(year) {
                found.keep(scheme, span, 0);
            }
        });
    }
}

/// A year as it is written.
#[derive(Clone, Copy, Debug)]
pub(super) enum Year {
    /// All four digits.
    Full(i32),
    /// What is left of it, and the years after which that comes round again.
    Rest(i32, i32),
}

impl Year {
    /// From `digits` digits that make `number`; `None` unless there are 1, 2 or 4 of them.
    pub fn written(digits: usize, number: u32) -> Option<Self> {
        let number = i32::try_from(number).ok()?;
        match digits {
            1 => Some(Self::Rest(number, 10)),
            2 => Some(Self::Rest(number, 100)),
            4 if (1900..2100).contains(&number) => Some(Self::Full(number)),
            _ => None,
        }
    }
}
