//! `work-out capacitor --uf 1000 --volts 16 [--series …] [--tolerance J] [--measured-uf … --esr-mohm … --esr-hz …
//! --tan-delta … --leakage-ua … --swollen]`: the limits, and how a measured one stands.
//!
//! JSON: `{"capacitance_uf", "volts", "series", "limits": {"least_uf", "most_uf", "tan_delta", "esr_mohm_120hz",
//! "leakage_ua", "sources"}, "grade", "checks": [{"quantity", "measured", "sound": [least, most], "end": [least, most],
//! "grade", "source"}]}`. Units stand in names; `grade` is undecided, sound, worn or out_of_limits.

use std::fmt::Write as _;

use anyhow::{Context as _, bail};
use clap::Args;
use serde::Serialize;

use super::figure;
use crate::console::{Answer, as_json};
use crate::text;
use crate::trade::capacitor::codes::{Tolerance, tolerance};
use crate::trade::capacitor::esr::{MAINS_HZ, esr_mohm};
use crate::trade::capacitor::series::{Series, leakage_limit_ua, tan_delta_limit};
use crate::trade::capacitor::verdict::{Check, Grade, Measured, Quantity, Rated, verdict};

#[derive(Args)]
pub struct Capacitor {
    #[arg(long, value_name = "UF", value_parser = figure, help = text!("Printed capacitance in microfarads"))]
    uf: f64,
    #[arg(long, value_name = "V", value_parser = figure, help = text!("Printed voltage"))]
    volts: f64,
    #[arg(long, value_name = "LETTER", help = text!("Printed tolerance letter; M, that is ±20 %, if not said"))]
    tolerance: Option<char>,
    #[arg(
        long,
        default_value = "general",
        help = text!("general, leads85, surface_small, surface_large, axial_useful or long_life105")
    )]
    series: Series,
    #[arg(long, value_name = "MOHM", value_parser = figure, help = text!("The data sheet's series resistance at 100 kHz"))]
    sheet_esr_mohm: Option<f64>,
    #[arg(long, value_name = "UF", value_parser = figure, help = text!("Measured capacitance in microfarads"))]
    measured_uf: Option<f64>,
    #[arg(long, value_name = "MOHM", value_parser = figure, help = text!("Measured series resistance in milliohm"))]
    esr_mohm: Option<f64>,
    #[arg(long, value_name = "HZ", value_parser = figure, help = text!("The frequency it was measured at; 120 if not said"))]
    esr_hz: Option<f64>,
    #[arg(long, value_name = "FIGURE", value_parser = figure, help = text!("Measured loss factor at 120 Hz"))]
    tan_delta: Option<f64>,
    #[arg(long, value_name = "UA", value_parser = figure, help = text!("Leakage in microamperes after two minutes"))]
    leakage_ua: Option<f64>,
    #[arg(long, help = text!("It is domed, leaks or has vented"))]
    swollen: bool,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    capacitance_uf: f64,
    volts: f64,
    series: Series,
    limits: LimitsForm,
    grade: Grade,
    checks: Vec<CheckForm>,
}

#[derive(Serialize)]
struct LimitsForm {
    least_uf: f64,
    most_uf: f64,
    tan_delta: f64,
    esr_mohm_120hz: f64,
    leakage_ua: f64,
    sources: Vec<String>,
}

#[derive(Serialize)]
struct CheckForm {
    quantity: Quantity,
    measured: f64,
    sound: (f64, f64),
    end: (f64, f64),
    grade: Grade,
    source: String,
}

impl From<&Check> for CheckForm {
    fn from(check: &Check) -> Self {
        let Check { quantity, measured, sound, end, grade, source } = check;
        Self {
            quantity: *quantity,
            measured: *measured,
            sound: *sound,
            end: *end,
            grade: *grade,
            source: source.said(),
        }
    }
}

impl Capacitor {
    pub fn answer(&self, json: bool) -> Answer {
        let (rated, measured) = (self.rated()?, self.measured()?);
        let verdict = verdict(&rated, &measured);
        let limits = limits(&rated);
        if json {
            return as_json(&Form {
                capacitance_uf: rated.capacitance_uf,
                volts: rated.volts,
                series: rated.series,
                limits,
                grade: verdict.grade,
                checks: verdict.checks.iter().map(CheckForm::from).collect(),
            });
        }
        let mut words = text!(
            "new: {least} to {most} µF, loss factor to {loss}, {esr} mΩ at 120 Hz, leakage to {leakage} µA",
            least = short(limits.least_uf),
            most = short(limits.most_uf),
            loss = short(limits.tan_delta),
            esr = short(limits.esr_mohm_120hz),
            leakage = short(limits.leakage_ua)
        );
        words.push('\n');
        for check in &verdict.checks {
            let Check { quantity, measured, end: (least, most), grade, source, .. } = check;
            let bounds = match (quantity, *least, *most) {
                (Quantity::Looks, ..) => String::new(),
                (_, 0.0, most) => {
                    text!(": {measured}, at its end above {most}", measured = short(*measured), most = short(most))
                }
                (_, least, most) => text!(
                    ": {measured}, at its end below {least} or above {most}",
                    measured = short(*measured),
                    least = short(least),
                    most = short(most)
                ),
            };
            let _ = writeln!(words, "{quantity}{bounds}: {grade}; {}", source.said());
        }
        if !verdict.checks.is_empty() {
            let _ = writeln!(words, "{}", verdict.grade);
        }
        Ok(words)
    }

    fn rated(&self) -> anyhow::Result<Rated> {
        let printed = match self.tolerance {
            None => Tolerance::percent(20.0),
            Some(letter) => u8::try_from(letter)
                .ok()
                .and_then(|letter| tolerance(letter, self.uf * 1e6))
                .with_context(|| text!("{letter} is no tolerance letter", letter = letter))?,
        };
        Ok(Rated {
            capacitance_uf: positive("uf", self.uf)?,
            volts: positive("volts", self.volts)?,
            tolerance: Some(printed),
            series: self.series,
            esr_100khz_mohm: self.sheet_esr_mohm.map(|figure| positive("sheet-esr-mohm", figure)).transpose()?,
        })
    }

    fn measured(&self) -> anyhow::Result<Measured> {
        let readings = [
            ("measured-uf", self.measured_uf),
            ("esr-mohm", self.esr_mohm),
            ("tan-delta", self.tan_delta),
            ("leakage-ua", self.leakage_ua),
        ];
        for (name, figure) in readings {
            if figure.is_some_and(|figure| figure < 0.0) {
                bail!(text!("--{name} must not be below 0", name = name));
            }
        }
        Ok(Measured {
            capacitance_uf: self.measured_uf,
            tan_delta: self.tan_delta,
            esr_mohm: self.esr_mohm,
            esr_hz: self.esr_hz.map(|figure| positive("esr-hz", figure)).transpose()?,
            leakage_ua: self.leakage_ua,
            is_swollen: self.swollen,
        })
    }
}

fn limits(rated: &Rated) -> LimitsForm {
    let Rated { capacitance_uf, volts, tolerance, .. } = *rated;
    let (minus, plus) = tolerance.map_or((20.0, 20.0), |tolerance| (tolerance.minus, tolerance.plus));
    let (loss, leakage) = (tan_delta_limit(capacitance_uf, volts), leakage_limit_ua(capacitance_uf, volts));
    LimitsForm {
        least_uf: capacitance_uf * (100.0 - minus) / 100.0,
        most_uf: capacitance_uf * (100.0 + plus) / 100.0,
        tan_delta: loss.value,
        esr_mohm_120hz: esr_mohm(loss.value, capacitance_uf, MAINS_HZ),
        leakage_ua: leakage.value,
        sources: vec![loss.source.said(), leakage.source.said()],
    }
}

/// An option's figure, which must lie above 0.
pub(super) fn positive(name: &str, figure: f64) -> anyhow::Result<f64> {
    if figure > 0.0 { Ok(figure) } else { bail!(text!("--{name} must be above 0", name = name)) }
}

/// Four significant places at most: no meter shows more.
pub(super) fn short(figure: f64) -> String {
    let rounded: f64 = format!("{figure:.3e}").parse().unwrap_or(figure);
    rounded.to_string()
}
