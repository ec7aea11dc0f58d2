//! `work-out life --hours 2000 --rated 105 --at 45:8 --at 55:8`: life of an electrolytic by the ten-degree rule.
//!
//! JSON: `{"rule_hours", "hours", "years", "capped", "equivalent_celsius", "used", "floored"}`: hours by the rule alone
//! and as may be claimed (fifteen years at most), the one temperature that wears alike, the share of life that the
//! hours given would use up, and whether a stretch below 40 °C was counted as 40 °C.

use std::fmt::Write as _;

use anyhow::Context as _;
use clap::Args;
use serde::Serialize;

use super::capacitor::short;
use super::figure;
use crate::console::{Answer, as_json};
use crate::text;
use crate::trade::capacitor::life::{COOLEST_CELSIUS, LONGEST_YEARS, Stretch, life};

#[derive(Args)]
pub struct Life {
    #[arg(long, value_name = "HOURS", value_parser = figure, help = text!("Rated life in hours"))]
    hours: f64,
    #[arg(long, value_name = "CELSIUS", value_parser = figure, help = text!("The temperature it is rated for"))]
    rated: f64,
    #[arg(long, value_name = "CELSIUS[:HOURS]", required = true, help = text!("A temperature in use, and hours at it; can be given again"))]
    at: Vec<String>,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    rule_hours: f64,
    hours: f64,
    years: f64,
    capped: bool,
    equivalent_celsius: f64,
    used: f64,
    floored: bool,
}

impl Life {
    pub fn answer(&self, json: bool) -> Answer {
        let stretches = self.at.iter().map(|typed| stretch(typed)).collect::<anyhow::Result<Vec<_>>>()?;
        let life = life(self.hours, self.rated, &stretches)?;
        if json {
            return as_json(&Form {
                rule_hours: life.rule_hours,
                hours: life.hours,
                years: life.years(),
                capped: life.is_capped(),
                equivalent_celsius: life.equivalent_celsius,
                used: life.used,
                floored: life.is_floored,
            });
        }
        let mut words = text!(
            "{hours} hours energised, {years} years without a break, as at {celsius} °C throughout",
            hours = life.hours.round(),
            years = short(life.years()),
            celsius = short(life.equivalent_celsius)
        );
        if life.is_capped() {
            let _ = write!(words, "\n{}", text!("No more than {years} years is claimed.", years = LONGEST_YEARS));
        }
        if life.is_floored {
            let _ =
                write!(words, "\n{}", text!("Below {celsius} °C counts as {celsius} °C.", celsius = COOLEST_CELSIUS));
        }
        Ok(words)
    }
}

/// `45` or `45:8`; one hour where none is said.
fn stretch(typed: &str) -> anyhow::Result<Stretch> {
    let (celsius, hours) = typed.split_once(':').unwrap_or((typed, "1"));
    let read = || -> anyhow::Result<Stretch> { Ok(Stretch { celsius: figure(celsius)?, hours: figure(hours)? }) };
    read().with_context(|| text!("--at {text}", text = typed))
}
