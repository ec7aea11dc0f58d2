//! `read date-code TEXT [--from YEAR] [--to YEAR] [--surface SURFACE]`.
//!
//! JSON: `{"text": "0203", "surface": "other", "readings": [{"first": "2002-01-07", "last": "2002-01-27", "scheme":
//! "year_week", "cost_weeks": 0, "why": …, "source": …}, …], "impossible": [{"scheme": …, "reason": …}]}`.
//! Readings stand best first, their days ISO 8601 and inclusive; `cost_weeks` is what speaks against one, 0 nothing.

use std::fmt::Write as _;

use anyhow::{anyhow, bail};
use chrono::NaiveDate;
use clap::Args;
use serde::Serialize;

use crate::console::{Answer, as_json};
use crate::text;
use crate::trade::Span;
use crate::trade::date_code::{Context, Explained, Scheme, Surface, explain};

#[derive(Args)]
pub struct DateCode {
    #[arg(help = text!("The code as printed"))]
    text: String,
    #[arg(long, value_name = "YEAR", help = text!("The first year in question; 1975 if not said"))]
    from: Option<i32>,
    #[arg(long, value_name = "YEAR", help = text!("The last year in question; 2014 if not said"))]
    to: Option<i32>,
    #[arg(
        long,
        default_value = "other",
        help = text!("What it is printed on: board, chip, sticker, capacitor, drive_label, case or other")
    )]
    surface: Surface,
}

/// The JSON form.
#[derive(Serialize)]
struct Form<'a> {
    text: &'a str,
    surface: Surface,
    readings: Vec<ReadingForm>,
    impossible: Vec<FaultForm>,
}

#[derive(Serialize)]
struct ReadingForm {
    first: NaiveDate,
    last: NaiveDate,
    scheme: Scheme,
    cost_weeks: u32,
    why: String,
    source: String,
}

#[derive(Serialize)]
struct FaultForm {
    scheme: Scheme,
    reason: String,
}

impl DateCode {
    pub fn answer(&self, json: bool) -> Answer {
        let Self { text, surface, .. } = self;
        let context = Context { surface: *surface, years: self.years()?, ..Context::default() };
        let explained = explain(text, &context).map_err(|reason| {
            anyhow!(text!("“{text}” cannot be read as a date: {reason}", text = text, reason = reason))
        })?;
        if json { as_json(&form(text, *surface, &explained)) } else { Ok(words(&explained)) }
    }

    fn years(&self) -> anyhow::Result<Option<Span>> {
        if self.from.is_none() && self.to.is_none() {
            return Ok(None);
        }
        let usual = Context::default().scope();
        let year = |year: Option<i32>, usual: NaiveDate| match year {
            None => Ok(Span::day(usual)),
            Some(year) => Span::year(year)
                .filter(|_| (1900..2100).contains(&year))
                .ok_or_else(|| anyhow!(text!("{year} is not a year from 1900 to 2099", year = year))),
        };
        let (first, last) = (year(self.from, usual.first)?.first, year(self.to, usual.last)?.last);
        if first > last {
            bail!(text!("the first year in question lies after the last"));
        }
        Ok(Some(Span { first, last }))
    }
}

fn form<'a>(text: &'a str, surface: Surface, explained: &Explained) -> Form<'a> {
    let Explained { readings, faults } = explained;
    Form {
        text,
        surface,
        readings: readings
            .iter()
            .map(|reading| ReadingForm {
                first: reading.span.first,
                last: reading.span.last,
                scheme: reading.scheme,
                cost_weeks: reading.cost,
                why: reading.why.to_string(),
                source: reading.scheme.source().said(),
            })
            .collect(),
        impossible: faults
            .iter()
            .map(|(scheme, fault)| FaultForm { scheme: *scheme, reason: fault.to_string() })
            .collect(),
    }
}

fn words(explained: &Explained) -> String {
    let mut words = String::new();
    for reading in &explained.readings {
        let Span { first, last } = reading.span;
        let days =
            if first == last { first.to_string() } else { text!("{first} to {last}", first = first, last = last) };
        let _ = writeln!(words, "{days}  {}: {}; {}", reading.scheme, reading.why, reading.scheme.source().said());
    }
    for (scheme, fault) in &explained.faults {
        let _ = writeln!(words, "{}", text!("not {scheme}: {fault}", scheme = scheme, fault = fault));
    }
    words
}
