//! What a long-shelved aluminium electrolytic needs before it is trusted: re-forming by published practice.

use std::fmt;

use serde::{Deserialize, Serialize};

use crate::text;
use crate::trade::Source;

/// What the years on the shelf call for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Need {
    /// Use it as it is.
    Nothing,
    /// Measure its leakage first.
    Test,
    /// Re-form it, then measure.
    Reform,
    /// Past its shelf life: replace it, re-form only what cannot be had again.
    PastShelfLife,
}

impl fmt::Display for Need {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Nothing => text!("needs nothing before use"),
            Self::Test => text!("measure its leakage before use"),
            Self::Reform => text!("re-form it, then measure its leakage"),
            Self::PastShelfLife => text!("past its shelf life: replace it; re-form only what cannot be had again"),
        })
    }
}

/// The need by years since a voltage was last on it; below 0 counts as 0.
///
/// Source: CDE, October 1993 (wa4bpj.com copy): one year good, test after three, re-age after four, ten years the
/// usual end. That two years need nothing: shelf limits of EPCOS and Nichicon (itecnotes.com).
pub fn need(years_shelved: f64) -> Need {
    match years_shelved {
        years if years <= 2.0 => Need::Nothing,
        years if years < 4.0 => Need::Test,
        years if years <= 10.0 => Need::Reform,
        _ => Need::PastShelfLife,
    }
}

/// One published way to re-form a capacitor of a rated voltage.
#[derive(Clone, Debug, PartialEq)]
pub struct Practice {
    /// In series with the capacitor, ohm.
    pub resistor_ohm: f64,
    /// At rated voltage, minutes at least.
    pub minutes: u32,
    pub source: Source,
}

/// Published practices for a rated voltage, the gentlest first: they disagree, and the gentlest is the safest.
pub fn practices(rated_volts: f64) -> [Practice; 3] {
    let published =
        |resistor_ohm, minutes, source| Practice { resistor_ohm, minutes, source: Source::published(source) };
    [
        published(if rated_volts <= 75.0 { 10_000.0 } else { 100_000.0 }, 240, "CDE, October 1993 (wa4bpj.com copy)"),
        published(1000.0, 60, "Chemi-Con FAQ 29BDH9T, 30 to 60 minutes"),
        published(if rated_volts <= 100.0 { 100.0 } else { 1000.0 }, 60, "EIA-815 (1999)"),
    ]
}

/// The most current that may flow while re-forming, milliampere. Source: CDE, October 1993 (wa4bpj.com copy).
pub const MOST_MA: f64 = 1.0;

/// Ohm for each volt to discharge through afterwards. Source: EIA-815 (1999).
pub const DISCHARGE_OHM_PER_VOLT: f64 = 1.0;

/// Hours of rest before it is measured again, at least. Source: EIA-815 (1999).
pub const REST_HOURS: u32 = 12;

/// What to do, in order, for a capacitor that needs re-forming.
pub fn steps(rated_volts: f64) -> Vec<String> {
    let [gentlest, ..] = practices(rated_volts);
    // EIA-815 asks for an ohm a volt; no less than that, so that the discharge does not spark.
    let discharge_ohm = (rated_volts * DISCHARGE_OHM_PER_VOLT).ceil();
    vec![
        text!("Take it off the board. Mark plus and minus. Do not re-form one that is domed or leaks.").to_owned(),
        text!(
            "Put it to a current-limited supply through {resistor} Ω and start at half of {volts} V for ten minutes.",
            resistor = gentlest.resistor_ohm,
            volts = rated_volts
        ),
        text!(
            "Raise to {volts} V; never let more than {most} mA flow, and stop if it grows warm.",
            volts = rated_volts,
            most = MOST_MA
        ),
        text!("Hold for {minutes} minutes at least.", minutes = gentlest.minutes),
        text!("Discharge through {resistor} Ω and measure that no voltage is left.", resistor = discharge_ohm),
        text!(
            "Let it rest for {hours} hours at least, then measure capacitance, loss and leakage.",
            hours = REST_HOURS
        ),
    ]
}

/// What can hurt while re-forming. Common practice; defers to local rules and to people licensed for the work.
pub fn cautions(rated_volts: f64) -> Vec<&'static str> {
    let mut cautions = vec![
        text!("Wear eye protection and cover it: a capacitor that is reversed or fails can vent hot electrolyte."),
        text!(
            "Only aluminium electrolytics are re-formed. A tantalum that leaks is replaced: it fails short and burns."
        ),
    ];
    // Above 60 V DC touch is dangerous by common limits for extra-low voltage (from memory: IEC 61140).
    if rated_volts > 60.0 {
        cautions.push(text!(
            "This voltage can kill, and stays in the capacitor: measure before touching, do not trust a waiting time. Leave it to people licensed for such work where local rules say so."
        ));
    }
    cautions
}
