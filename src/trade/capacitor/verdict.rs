//! A measured electrolytic: sound, worn or out of limits, each with the limit and where it stands.

use std::fmt;

use serde::{Deserialize, Serialize};

use super::codes::{Tolerance, ToleranceUnit};
use super::esr::{MAINS_HZ, esr_mohm};
use super::series::{Series, leakage_limit_ua, tan_delta_limit};
use crate::text;
use crate::trade::Source;

/// What a capacitor is by its print.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rated {
    /// Microfarads, above 0.
    pub capacitance_uf: f64,
    /// Volts, above 0.
    pub volts: f64,
    /// ±20 % when nothing is printed.
    pub tolerance: Option<Tolerance>,
    pub series: Series,
    /// Series resistance of a new one in milliohm at 100 kHz, where its data sheet gives it.
    pub esr_100khz_mohm: Option<f64>,
}

/// What was measured and seen; each reading is optional.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Measured {
    pub capacitance_uf: Option<f64>,
    /// Loss factor at 120 Hz.
    pub tan_delta: Option<f64>,
    /// Series resistance in milliohm, at `esr_hz`.
    pub esr_mohm: Option<f64>,
    /// The meter's frequency in hertz; 120 when not given.
    pub esr_hz: Option<f64>,
    /// Microamperes, two minutes after rated voltage.
    pub leakage_ua: Option<f64>,
    /// The can is domed, leaks or has vented.
    pub is_swollen: bool,
}

/// How a reading stands against its limits, worst last.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Grade {
    /// Nothing was measured that decides.
    Undecided,
    /// As a new one may be.
    Sound,
    /// No longer like a new one, not yet at its end: watch it.
    Worn,
    /// At its end: replace it.
    OutOfLimits,
}

impl fmt::Display for Grade {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Undecided => text!("undecided"),
            Self::Sound => text!("sound"),
            Self::Worn => text!("worn, watch it"),
            Self::OutOfLimits => text!("out of limits, replace it"),
        })
    }
}

/// What a check is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Quantity {
    CapacitanceUf,
    TanDelta,
    EsrMohm,
    LeakageUa,
    Looks,
}

impl fmt::Display for Quantity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::CapacitanceUf => text!("capacitance, µF"),
            Self::TanDelta => text!("loss factor"),
            Self::EsrMohm => text!("series resistance, mΩ"),
            Self::LeakageUa => text!("leakage, µA"),
            Self::Looks => text!("domed, leaking or vented"),
        })
    }
}

/// One reading against its limits.
#[derive(Clone, Debug, PartialEq)]
pub struct Check {
    pub quantity: Quantity,
    pub measured: f64,
    /// What a new one keeps to: least and most, in the quantity's unit.
    pub sound: (f64, f64),
    /// What one keeps to until its end.
    pub end: (f64, f64),
    pub grade: Grade,
    pub source: Source,
}

/// All checks of one capacitor; the grade is the worst of them.
#[derive(Clone, Debug, PartialEq)]
pub struct Verdict {
    pub grade: Grade,
    pub checks: Vec<Check>,
}

/// The frequency up to which a loss factor at 120 Hz still says something.
const LOW_HZ: f64 = 1000.0;

/// Judges a measured aluminium electrolytic.
///
/// A series resistance taken above 1 kHz is judged by the data sheet's own figure where there is one; otherwise the
/// limit from the loss factor at 120 Hz can only condemn it, since resistance falls with frequency.
pub fn verdict(rated: &Rated, measured: &Measured) -> Verdict {
    let end = rated.series.end(rated.volts);
    let mut checks = Vec::new();
    if let Some(value) = measured.capacitance_uf {
        checks.push(capacitance(rated, value));
    }
    let new = tan_delta_limit(rated.capacitance_uf, rated.volts);
    let loss = |quantity, value, limit: f64, source| {
        let (sound, end) = ((0.0, limit), (0.0, limit * end.loss_factor));
        Check { quantity, measured: value, sound, end, grade: graded(value, sound, end), source }
    };
    // The limit for a new one and the multiple at its end may stand in two places: the less sure one is named.
    let loss_source =
        || if new.source.sureness >= end.source.sureness { new.source.clone() } else { end.source.clone() };
    if let Some(value) = measured.tan_delta {
        checks.push(loss(Quantity::TanDelta, value, new.value, loss_source()));
    }
    if let Some(value) = measured.esr_mohm {
        let frequency_hz = measured.esr_hz.unwrap_or(MAINS_HZ);
        let low = loss(
            Quantity::EsrMohm,
            value,
            esr_mohm(new.value, rated.capacitance_uf, frequency_hz.min(MAINS_HZ)),
            loss_source(),
        );
        checks.push(match rated.esr_100khz_mohm {
            _ if frequency_hz <= LOW_HZ => low,
            Some(limit) => loss(Quantity::EsrMohm, value, limit, Source::published("the part's own data sheet")),
            None if low.grade == Grade::OutOfLimits => low,
            None => Check { grade: Grade::Undecided, ..low },
        });
    }
    if let Some(value) = measured.leakage_ua {
        let limit = leakage_limit_ua(rated.capacitance_uf, rated.volts);
        let bounds = (0.0, limit.value);
        let grade = graded(value, bounds, bounds);
        checks.push(Check {
            quantity: Quantity::LeakageUa,
            measured: value,
            sound: bounds,
            end: bounds,
            grade,
            source: limit.source,
        });
    }
    if measured.is_swollen {
        checks.push(Check {
            quantity: Quantity::Looks,
            measured: 1.0,
            sound: (0.0, 0.0),
            end: (0.0, 0.0),
            grade: Grade::OutOfLimits,
            source: Source::practice(""),
        });
    }
    let grade = checks.iter().map(|check| check.grade).max().unwrap_or(Grade::Undecided);
    Verdict { grade, checks }
}

/// Capacitance: new ones keep to the printed tolerance, old ones to that or to their series' end, the wider.
fn capacitance(rated: &Rated, value: f64) -> Check {
    let end = rated.series.end(rated.volts);
    let tolerance = rated.tolerance.filter(|tolerance| tolerance.unit == ToleranceUnit::Percent);
    let (minus, plus) = tolerance.map_or((20.0, 20.0), |tolerance| (tolerance.minus, tolerance.plus));
    let share = |percent: f64| rated.capacitance_uf * (1.0 + percent / 100.0);
    let sound = (share(-minus), share(plus));
    let end_bounds = (share(-end.minus_percent.max(minus)), share(end.plus_percent.max(plus)));
    Check {
        quantity: Quantity::CapacitanceUf,
        measured: value,
        sound,
        end: end_bounds,
        grade: graded(value, sound, end_bounds),
        source: end.source,
    }
}

/// A limit itself still passes; what arithmetic leaves behind decides nothing.
fn graded(value: f64, sound: (f64, f64), end: (f64, f64)) -> Grade {
    let within = |(least, most): (f64, f64)| value >= least - least.abs() * 1e-9 && value <= most + most.abs() * 1e-9;
    if within(sound) {
        Grade::Sound
    } else if within(end) {
        Grade::Worn
    } else {
        Grade::OutOfLimits
    }
}
