//! How long an electrolytic lasts: twice as long for each ten degrees cooler.

use std::fmt;

use crate::text;

/// Hours in a year of 365 days.
pub const YEAR_HOURS: f64 = 8760.0;
/// Makers claim nothing past fifteen years, whatever the rule says (Nichicon, life calculator).
pub const LONGEST_YEARS: f64 = 15.0;
/// Below this the rule is not followed further down (Nichicon, life calculator).
pub const COOLEST_CELSIUS: f64 = 40.0;

/// Hours spent at one temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stretch {
    pub celsius: f64,
    /// In any common measure: hours a day, or hours in all.
    pub hours: f64,
}

/// An estimate of life.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Life {
    /// Hours energised by the rule alone.
    pub rule_hours: f64,
    /// Hours that may be claimed: [`Self::rule_hours`], at most fifteen years.
    pub hours: f64,
    /// The one temperature that would wear as the stretches do.
    pub equivalent_celsius: f64,
    /// The share of life that the stretches, taken as hours in all, have used up.
    pub used: f64,
    /// A stretch was cooler than 40 °C and counted as 40 °C.
    pub is_floored: bool,
}

impl Life {
    pub fn is_capped(&self) -> bool {
        self.rule_hours > self.hours
    }

    pub fn years(&self) -> f64 {
        self.hours / YEAR_HOURS
    }
}

/// Why no life can be told.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum LifeFault {
    /// Nothing above 0 hours.
    NoHours,
    /// A figure that is not finite, a rated life that is not above 0, or hours below 0.
    NotAFigure,
    /// Hotter than the part is rated for: no rule covers that.
    AboveRated { celsius: f64, rated_celsius: f64 },
}

impl fmt::Display for LifeFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&match *self {
            Self::NoHours => text!("no hours are given").to_owned(),
            Self::NotAFigure => text!("hours must be numbers above 0, and temperatures numbers").to_owned(),
            Self::AboveRated { celsius, rated_celsius } => text!(
                "{celsius} °C is hotter than the {rated} °C that the part is made for",
                celsius = celsius,
                rated = rated_celsius
            ),
        })
    }
}

/// The ten-degree rule, L = L₀ · 2^((T₀ − T)/10), over several temperatures in turn: Σh / Σ(h / L).
///
/// `rated_hours` at `rated_celsius` as on the data sheet. The rule is about hours energised, not age on a shelf; it
/// holds well from about 70 to 90 °C (Rubycon, technical note 4) and is not followed below 40 °C (Nichicon).
/// Sources: TDK power supplies FAQ; several temperatures: Cosel Q&A a0057.
pub fn life(rated_hours: f64, rated_celsius: f64, stretches: &[Stretch]) -> Result<Life, LifeFault> {
    let finite = |figure: f64| figure.is_finite();
    if !(finite(rated_hours) && rated_hours > 0.0 && finite(rated_celsius)) {
        return Err(LifeFault::NotAFigure);
    }
    let (mut hours, mut used, mut is_floored) = (0.0, 0.0, false);
    for stretch in stretches {
        if !(finite(stretch.celsius) && finite(stretch.hours) && stretch.hours >= 0.0) {
            return Err(LifeFault::NotAFigure);
        }
        if stretch.celsius > rated_celsius {
            return Err(LifeFault::AboveRated { celsius: stretch.celsius, rated_celsius });
        }
        let floor = COOLEST_CELSIUS.min(rated_celsius);
        is_floored |= stretch.celsius < floor;
        let celsius = stretch.celsius.max(floor);
        hours += stretch.hours;
        used += stretch.hours / (rated_hours * ((rated_celsius - celsius) / 10.0).exp2());
    }
    if hours <= 0.0 {
        return Err(LifeFault::NoHours);
    }
    let rule_hours = hours / used;
    Ok(Life {
        rule_hours,
        hours: rule_hours.min(LONGEST_YEARS * YEAR_HOURS),
        equivalent_celsius: rated_celsius - 10.0 * (rule_hours / rated_hours).log2(),
        used,
        is_floored,
    })
}
