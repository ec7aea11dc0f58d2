//! `read capacitor TEXT [--body BODY]`.
//!
//! JSON: `{"text": "2A474J", "body": "unknown", "readings": [{"capacitance_uf": 0.47, "capacitance_pf": 470000.0,
//! "volts": 100.0, "tolerance": {"minus": 5.0, "plus": 5.0, "unit": "percent"}, "form": "three_figure", "polarity":
//! "depends_on_body", "suppression": null, "reminder": …, "source": …}]}`. Readings stand likeliest first; `volts` and `tolerance` are null
//! where they are not printed.

use std::fmt::Write as _;

use anyhow::anyhow;
use clap::Args;
use serde::Serialize;

use crate::console::{Answer, as_json};
use crate::text;
use crate::trade::capacitor::codes::Tolerance;
use crate::trade::capacitor::{Body, Form as MarkForm, Mark, Polarity, capacitance_words, read};

#[derive(Args)]
pub struct Capacitor {
    #[arg(help = text!("The mark as printed"))]
    text: String,
    #[arg(
        long,
        default_value = "unknown",
        help = text!("ceramic, film, tantalum_bead, tantalum_chip, aluminium_can, aluminium_chip or unknown")
    )]
    body: Body,
}

/// The JSON form.
#[derive(Serialize)]
struct Form<'a> {
    text: &'a str,
    body: Body,
    readings: Vec<ReadingForm>,
}

#[derive(Serialize)]
struct ReadingForm {
    capacitance_uf: f64,
    capacitance_pf: f64,
    volts: Option<f64>,
    tolerance: Option<Tolerance>,
    form: MarkForm,
    polarity: Polarity,
    suppression: Option<String>,
    reminder: String,
    source: String,
}

impl From<&Mark> for ReadingForm {
    fn from(mark: &Mark) -> Self {
        Self {
            capacitance_uf: mark.capacitance_uf(),
            capacitance_pf: mark.capacitance_pf,
            volts: mark.volts,
            tolerance: mark.tolerance,
            form: mark.form,
            polarity: mark.polarity,
            suppression: mark.suppression.map(|(class, nth)| format!("{class}{nth}")),
            reminder: mark.polarity.to_string(),
            source: mark.source().said(),
        }
    }
}

impl Capacitor {
    pub fn answer(&self, json: bool) -> Answer {
        let Self { text, body } = self;
        let readings = read(text, *body).map_err(|reason| {
            anyhow!(text!("“{text}” cannot be read as a capacitor's mark: {reason}", text = text, reason = reason))
        })?;
        if json {
            return as_json(&Form { text, body: *body, readings: readings.iter().map(ReadingForm::from).collect() });
        }
        let mut words = String::new();
        for mark in &readings {
            words.push_str(&capacitance_words(mark.capacitance_pf));
            if let Some(volts) = mark.volts {
                let _ = write!(words, ", {volts} V");
            }
            if let Some(tolerance) = mark.tolerance {
                let _ = write!(words, ", {tolerance}");
            }
            let _ = writeln!(words, "  {}", mark.form);
        }
        if let Some(mark) = readings.first() {
            let _ = writeln!(words, "{}", mark.polarity);
            if let Some((class, nth)) = mark.suppression {
                let _ = writeln!(
                    words,
                    "{}",
                    text!(
                        "Mains suppression, class {class}{nth}: replace it by the same class only.",
                        class = class,
                        nth = nth
                    )
                );
            }
        }
        Ok(words)
    }
}
