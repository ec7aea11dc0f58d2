//! `work-out reform --years 12 --volts 16`: what a shelved aluminium electrolytic needs before it is trusted.
//!
//! JSON: `{"years", "volts", "need", "steps": […], "practices": [{"resistor_ohm", "minutes", "source"}], "cautions":
//! […]}`. `need` is nothing, test, reform or past_shelf_life; steps follow the first, gentlest practice.

use std::fmt::Write as _;

use anyhow::ensure;
use clap::Args;
use serde::Serialize;

use super::capacitor::positive;
use super::figure;
use crate::console::{Answer, as_json};
use crate::text;
use crate::trade::capacitor::reform::{Need, cautions, need, practices, steps};

#[derive(Args)]
pub struct Reform {
    #[arg(long, value_name = "YEARS", value_parser = figure, help = text!("Years since a voltage was last on it"))]
    years: f64,
    #[arg(long, value_name = "V", value_parser = figure, help = text!("Printed voltage"))]
    volts: f64,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    years: f64,
    volts: f64,
    need: Need,
    steps: Vec<String>,
    practices: Vec<PracticeForm>,
    cautions: Vec<&'static str>,
}

#[derive(Serialize)]
struct PracticeForm {
    resistor_ohm: f64,
    minutes: u32,
    source: String,
}

impl Reform {
    pub fn answer(&self, json: bool) -> Answer {
        ensure!(self.years >= 0.0, text!("--years must not be below 0"));
        let volts = positive("volts", self.volts)?;
        let need = need(self.years);
        let is_treated = need >= Need::Reform;
        let form = Form {
            years: self.years,
            volts,
            need,
            steps: if is_treated { steps(volts) } else { Vec::new() },
            practices: practices(volts)
                .into_iter()
                .map(|practice| PracticeForm {
                    resistor_ohm: practice.resistor_ohm,
                    minutes: practice.minutes,
                    source: practice.source.said(),
                })
                .collect(),
            cautions: if is_treated { cautions(volts) } else { Vec::new() },
        };
        if json {
            return as_json(&form);
        }
        let mut words = format!("{need}\n");
        for caution in &form.cautions {
            let _ = writeln!(words, "! {caution}");
        }
        for (nth, step) in form.steps.iter().enumerate() {
            let _ = writeln!(words, "{}. {step}", nth + 1);
        }
        for practice in form.practices.iter().filter(|_| is_treated) {
            let PracticeForm { resistor_ohm, minutes, source } = practice;
            let _ = writeln!(
                words,
                "{}",
                text!("{source}: {ohm} Ω, {minutes} minutes", source = source, ohm = resistor_ohm, minutes = minutes)
            );
        }
        Ok(words)
    }
}
