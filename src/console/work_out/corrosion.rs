//! `work-out corrosion --share PERCENT [--distribution LETTER] [--on DATE --before DATE=PERCENT]`.
//!
//! JSON: `share_percent`, `ri`, `d610`, `at_reference`, and `change` between the two looks where both are given.

use anyhow::{Context as _, anyhow};
use chrono::NaiveDate;
use clap::Args;
use serde::Serialize;

use crate::console::{Answer, as_json};
use crate::text;
use crate::trade::corrosion::{Change, Distribution, Grades, change, grades};

#[derive(Args)]
pub struct Corrosion {
    #[arg(long, value_name = "PERCENT", help = text!("Share of the surface that is rusty, in per cent"))]
    share: String,
    #[arg(long, value_name = "LETTER", help = text!("Distribution after ASTM D610: S spots, G general, P pinpoint, H hybrid"))]
    distribution: Option<String>,
    #[arg(long, value_name = "DATE", requires = "before", help = text!("Day of this look, such as 2025-03-01"))]
    on: Option<String>,
    #[arg(long, value_name = "DATE=PERCENT", requires = "on", help = text!("An earlier look: its day and share"))]
    before: Option<String>,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    #[serde(flatten)]
    grades: Grades,
    #[serde(skip_serializing_if = "Option::is_none")]
    distribution: Option<Distribution>,
    #[serde(skip_serializing_if = "Option::is_none")]
    change: Option<Change>,
}

impl Corrosion {
    pub fn answer(&self, json: bool) -> Answer {
        let share = super::figure(self.share.trim().trim_end_matches('%'))?;
        let grades = grades(share)?;
        let change = match (&self.on, &self.before) {
            (Some(on), Some(before)) => {
                let (day, earlier) = before
                    .split_once('=')
                    .with_context(|| text!("\"{text}\" is not DATE=PERCENT, such as 2023-03-01=1.5", text = before))?;
                Some(change((date(day)?, super::figure(earlier.trim_end_matches('%'))?), (date(on)?, share))?)
            }
            _ => None,
        };
        let distribution = match &self.distribution {
            None => None,
            Some(typed) => {
                let lettered = |known: &Distribution| typed.trim().eq_ignore_ascii_case(&known.letter().to_string());
                let found = Distribution::ALL.into_iter().find(lettered);
                Some(found.with_context(|| text!("\"{text}\" is none of S, G, P and H", text = typed))?)
            }
        };
        if json {
            return as_json(&Form { grades, distribution, change });
        }
        let Grades { share_percent, ri, d610, at_reference } = grades;
        let d610 = distribution.map_or(d610.to_string(), |known| format!("{d610}-{}", known.letter()));
        let mut said = text!(
            "{share} % rusty: ISO 4628-3 Ri {ri}, ASTM D610 grade {d610}",
            share = share_percent,
            ri = ri,
            d610 = d610
        );
        if !at_reference {
            said.push('\n');
            said.push_str(text!("Between two ISO reference areas; graded as the worse of them."));
        }
        if let Some(Change { days, points_per_year, grade_worse }) = change {
            let points = format!("{points_per_year:+.2}");
            said.push('\n');
            said.push_str(&text!("{points} points of area a year over {days} days", points = points, days = days));
            if grade_worse {
                said.push_str(text!(", a grade worse"));
            }
        }
        Ok(said)
    }
}

fn date(typed: &str) -> anyhow::Result<NaiveDate> {
    NaiveDate::parse_from_str(typed.trim(), "%Y-%m-%d")
        .map_err(|_| anyhow!(text!("\"{text}\" is no day, such as 2025-03-01", text = typed)))
}
