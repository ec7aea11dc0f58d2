//! `work-out corrosion --share PERCENT [--on DATE --before DATE=PERCENT]`.
//!
//! JSON: `share_percent`, `ri`, `d610`, `at_reference`, and `change` between the two looks where both are given.

use anyhow::{Context as _, anyhow};
use chrono::NaiveDate;
use clap::Args;
use serde::Serialize;

use crate::console::{Answer, as_json};
use crate::text;
use crate::trade::corrosion::{Change, Grades, change, grades};

#[derive(Args)]
pub struct Corrosion {
    #[arg(long, value_name = "PERCENT", help = text!("Share of the surface that is rusty, in per cent"))]
    share: String,
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
        if json {
            return as_json(&Form { grades, change });
        }
        let Grades { share_percent, ri, d610, at_reference } = grades;
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
