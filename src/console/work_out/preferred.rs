//! `work-out preferred VALUE [--series E12]`: `{"value": 50.0, "series": "E12", "down": 47.0, "up": 56.0}`.

use anyhow::Context as _;
use clap::Args;
use serde::Serialize;

use super::figure;
use crate::console::{Answer, as_json};
use crate::text;
use crate::trade::capacitor::preferred::{ESeries, Neighbours, neighbours};

#[derive(Args)]
pub struct Preferred {
    #[arg(value_parser = figure, help = text!("A value in any unit"))]
    value: f64,
    #[arg(long, default_value = "E12", help = text!("E3, E6, E12 or E24"))]
    series: ESeries,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    value: f64,
    series: ESeries,
    #[serde(flatten)]
    neighbours: Neighbours,
}

impl Preferred {
    pub fn answer(&self, json: bool) -> Answer {
        let Self { value, series } = *self;
        let found = neighbours(value, series).context(text!("A value must lie between 1e-15 and 1e15"))?;
        if json {
            return as_json(&Form { value, series, neighbours: found });
        }
        Ok(if found.is_exact() {
            text!("{value} is a preferred value of {series}", value = found.down, series = series)
        } else {
            text!("{series}: {down} below, {up} above", series = series, down = found.down, up = found.up)
        })
    }
}
