//! Readings of a supply's rails judged: pass, marginal or fail, with the margin and the limit's source.

use serde::{Deserialize, Serialize};

use super::rail::{Limits, Rail, Standard, limits};
use crate::text;
use crate::trade::Source;

/// What was measured on one rail at the board's plug.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct RailReading {
    /// Which rail.
    pub rail: Rail,
    /// Volts, with sign.
    pub volts: f64,
    /// Ripple and noise in mV peak to peak, where measured.
    pub ripple_mvpp: Option<f64>,
    /// Load on this rail in amperes while it was measured, where known.
    pub load_a: Option<f64>,
}

/// How a reading stands to its limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Verdict {
    /// Inside, and further from the limit than a hand-held meter errs.
    Pass,
    /// Inside, in the last fifth before the limit.
    Marginal,
    /// Outside.
    Fail,
}

impl Verdict {
    /// In words.
    pub fn said(self) -> &'static str {
        match self {
            Self::Pass => text!("pass"),
            Self::Marginal => text!("marginal"),
            Self::Fail => text!("fail"),
        }
    }
}

/// One rail judged.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct RailVerdict {
    /// What was measured.
    pub reading: RailReading,
    /// The worse of voltage and ripple.
    pub verdict: Verdict,
    /// Distance from the nearer voltage limit in per cent of the nominal voltage; negative outside.
    pub margin_percent: f64,
    /// Voltage alone.
    pub voltage: Verdict,
    /// Ripple alone; `None` when not measured.
    pub ripple: Option<Verdict>,
    /// What was judged against.
    pub limits: Limits,
    /// What a person should know about this reading.
    pub remarks: Vec<String>,
}

/// Share of the tolerance next to the limit that is called marginal: with ±5 % the last 1 % of the nominal voltage,
/// about what a hand-held meter's 0.5 % and last digits may hide. The project's own choice.
const MARGINAL_SHARE: f64 = 0.2;

/// Load on +5 V in amperes below which readings prove little. Published least loads of single supplies are 0.3, 1.0 and
/// 1.5 A; the project's own choice among them.
const LEAST_LOAD_A: f64 = 1.0;

/// Judges each reading by the limits of its standard. A rail that the standard does not have is left out and named in
/// the second list.
///
/// The readings only prove the supply under the load they were taken at: a reading without a load is remarked on.
pub fn judge(standard: Standard, readings: &[RailReading]) -> (Vec<RailVerdict>, Vec<Rail>) {
    let table = limits(standard);
    let mut judged = Vec::new();
    let mut foreign = Vec::new();
    let unloaded = readings
        .iter()
        .any(|reading| reading.rail == Rail::Plus5 && reading.load_a.is_some_and(|amps| amps < LEAST_LOAD_A));
    for reading in readings {
        match table.iter().find(|limits| limits.rail == reading.rail) {
            Some(limits) => {
                let mut verdict = judge_rail(*reading, limits.clone());
                if unloaded {
                    verdict
                        .remarks
                        .push(text!("Hardly any load on +5 V: many supplies do not regulate without.").to_owned());
                }
                judged.push(verdict);
            }
            None => foreign.push(reading.rail),
        }
    }
    (judged, foreign)
}

fn judge_rail(reading: RailReading, limits: Limits) -> RailVerdict {
    let nominal = reading.rail.nominal_v();
    // Everything in the direction of the nominal voltage, so that negative rails read like positive ones.
    let (volts, weakest, strongest, ideal) = if nominal < 0.0 {
        (-reading.volts, -limits.weakest_v, -limits.strongest_v, -nominal)
    } else {
        (reading.volts, limits.weakest_v, limits.strongest_v, nominal)
    };
    let to_weak = volts - weakest;
    let to_strong = strongest - volts;
    let (distance, tolerance) =
        if to_weak < to_strong { (to_weak, ideal - weakest) } else { (to_strong, strongest - ideal) };
    let voltage = grade(distance, tolerance);
    let ripple = reading.ripple_mvpp.zip(limits.ripple_mvpp).map(|(seen, limit)| grade(limit - seen, limit));
    let mut remarks = Vec::new();
    if volts < 0.0 {
        remarks.push(text!("The sign is wrong: swapped probes, or the wrong pin.").to_owned());
    } else if volts < 0.1 * ideal {
        remarks.push(text!("As good as nothing there: supply off, shut down, or no contact.").to_owned());
    }
    if reading.load_a.is_none() {
        remarks.push(text!("Load not stated: a reading without load proves little.").to_owned());
    }
    if reading.rail == Rail::Plus12 && voltage == Verdict::Fail && (0.9 * ideal..=1.1 * ideal).contains(&volts) {
        remarks.push(text!("±10 % is allowed on +12 V only while drives start.").to_owned());
    }
    RailVerdict {
        reading,
        verdict: voltage.max(ripple.unwrap_or(Verdict::Pass)),
        margin_percent: 100.0 * distance / ideal,
        voltage,
        ripple,
        limits,
        remarks,
    }
}

/// By the distance inside the limit, as a share of the whole tolerance. A hair (1 µV) is given to binary rounding, so
/// that 4.75 V itself is inside.
fn grade(distance: f64, tolerance: f64) -> Verdict {
    const HAIR: f64 = 1e-6;
    if distance.is_nan() || distance < -HAIR {
        Verdict::Fail
    } else if distance < MARGINAL_SHARE * tolerance - HAIR {
        Verdict::Marginal
    } else {
        Verdict::Pass
    }
}

impl RailVerdict {
    /// Where the limit stands.
    pub fn source(&self) -> &Source {
        &self.limits.source
    }
}

/// Reads `RAIL=FIGURE` pairs separated by spaces, commas or semicolons, such as `5=4.93 12=11.8 -12=-11.9`. A comma
/// between digits is a decimal comma only inside a figure that has no other, as in `5=4,93`.
///
/// # Errors
/// A sentence that names the pair: no `=`, unknown rail, not a finite number, a rail twice, nothing at all.
pub fn parse_pairs(text: &str) -> Result<Vec<(Rail, f64)>, String> {
    let mut pairs: Vec<(Rail, f64)> = Vec::new();
    for piece in text.split([' ', ';', '\t', '\n']).flat_map(split_at_list_commas) {
        let piece = piece.trim().trim_end_matches(',');
        if piece.is_empty() {
            continue;
        }
        let Some((rail, figure)) = piece.split_once('=') else {
            return Err(text!("\"{piece}\" is not RAIL=VALUE, such as 5=4.93", piece = piece));
        };
        let Some(rail) = Rail::parse(rail) else {
            return Err(text!("\"{rail}\" is no rail: 12, 5, 3.3, -5, -12 or 5sb", rail = rail));
        };
        // −0 is 0.
        let value = figure
            .trim()
            .replace(',', ".")
            .parse::<f64>()
            .ok()
            .filter(|value| value.is_finite())
            .map(|value| value + 0.0);
        let Some(value) = value else {
            return Err(text!("\"{figure}\" is no number ({rail})", figure = figure, rail = rail.label()));
        };
        if pairs.iter().any(|(known, _)| *known == rail) {
            return Err(text!("{rail} stands twice", rail = rail.label()));
        }
        pairs.push((rail, value));
    }
    if pairs.is_empty() { Err(text!("no reading given").to_owned()) } else { Ok(pairs) }
}

/// Splits `5=4.93,12=11.8` at the comma that starts a new pair: one between two `=`, the next before another comma.
fn split_at_list_commas(piece: &str) -> Vec<&str> {
    let mut parts = Vec::new();
    let mut start = 0;
    for (at, _) in piece.match_indices(',') {
        let after = &piece[at + 1..];
        let next = after.find(',').unwrap_or(after.len());
        if piece[start..at].contains('=') && after[..next].contains('=') {
            parts.push(&piece[start..at]);
            start = at + 1;
        }
    }
    parts.push(&piece[start..]);
    parts
}
