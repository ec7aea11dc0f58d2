//! The power-good signal: when it must come, and at what level.

use serde::{Deserialize, Serialize};

use super::reading::Verdict;
use crate::text;
use crate::trade::Source;

/// What was measured of power-good; leave out what was not.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct PowerGood {
    /// From all outputs in regulation to power-good rising, in ms.
    pub delay_ms: Option<f64>,
    /// Rise time in ms.
    pub rise_ms: Option<f64>,
    /// From power-good falling to the outputs leaving regulation when switched off, in ms.
    pub warning_ms: Option<f64>,
    /// Level while the supply is good, in volts.
    pub high_v: Option<f64>,
    /// Level while it is not, in volts, at no more than 4 mA.
    pub low_v: Option<f64>,
}

/// One figure of power-good judged.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PowerGoodVerdict {
    /// Which figure, in words.
    pub what: String,
    /// Measured, in the unit that `what` names.
    pub seen: f64,
    /// Pass or fail; there is no marginal here.
    pub verdict: Verdict,
    /// The limit in words.
    pub limit: String,
    /// Where the limit stands.
    pub source: Source,
}

const TIMING: Source = Source::published("ATX power supply design guide 0.9, p. 16");

/// Judges what was measured: delay over 100 and under 500 ms, rise within 10 ms, warning over 1 ms, high 2.4 to 5 V,
/// low under 0.4 V (ATX power supply design guide 0.9). AT supplies are held to the same, as common practice.
pub fn judge_power_good(seen: &PowerGood) -> Vec<PowerGoodVerdict> {
    let PowerGood { delay_ms, rise_ms, warning_ms, high_v, low_v } = *seen;
    let rows = [
        (
            delay_ms,
            text!("power-good delay (ms)"),
            text!("over 100 and under 500 ms"),
            delay_ms.is_some_and(|ms| ms > 100.0 && ms < 500.0),
        ),
        (
            rise_ms,
            text!("power-good rise (ms)"),
            text!("10 ms at most"),
            rise_ms.is_some_and(|ms| (0.0..=10.0).contains(&ms)),
        ),
        (warning_ms, text!("power-good warning (ms)"), text!("over 1 ms"), warning_ms.is_some_and(|ms| ms > 1.0)),
        (high_v, text!("power-good high (V)"), text!("2.4 to 5 V"), high_v.is_some_and(|v| (2.4..=5.0).contains(&v))),
        (low_v, text!("power-good low (V)"), text!("under 0.4 V"), low_v.is_some_and(|v| (-0.1..0.4).contains(&v))),
    ];
    let judged = |(seen, what, limit, fine): (Option<f64>, &str, &str, bool)| {
        Some(PowerGoodVerdict {
            what: what.to_owned(),
            seen: seen?,
            verdict: if fine { Verdict::Pass } else { Verdict::Fail },
            limit: limit.to_owned(),
            source: TIMING,
        })
    };
    rows.into_iter().filter_map(judged).collect()
}
