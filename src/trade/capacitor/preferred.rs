//! Preferred values: the E series of IEC 60063 that capacitors and resistors are made in.

use std::fmt;
use std::str::FromStr;

use serde::{Deserialize, Serialize};

/// A series of preferred values, by how many there are to the decade.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub enum ESeries {
    E3,
    E6,
    E12,
    E24,
}

impl ESeries {
    pub const ALL: [Self; 4] = [Self::E3, Self::E6, Self::E12, Self::E24];

    /// The two-digit values of one decade, ascending. Source: IEC 60063.
    pub fn decade(self) -> &'static [u8] {
        match self {
            Self::E3 => &[10, 22, 47],
            Self::E6 => &[10, 15, 22, 33, 47, 68],
            Self::E12 => &[10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82],
            Self::E24 => {
                &[10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91]
            }
        }
    }
}

impl fmt::Display for ESeries {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Debug::fmt(self, f)
    }
}

impl FromStr for ESeries {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        Self::ALL
            .into_iter()
            .find(|series| series.to_string().eq_ignore_ascii_case(text.trim()))
            .ok_or_else(|| crate::text!("“{text}” is none of E3, E6, E12, E24", text = text))
    }
}

/// The preferred values on both sides of a value, in the value's own unit; the same twice when it is one itself.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Neighbours {
    /// The largest preferred value that is not above.
    pub down: f64,
    /// The smallest preferred value that is not below.
    pub up: f64,
}

impl Neighbours {
    /// Whether the value is a preferred value itself.
    pub fn is_exact(self) -> bool {
        self.down == self.up
    }
}

/// How far a float may be from a preferred value and still be it: only what arithmetic leaves behind.
const SAME: f64 = 1e-9;

/// The nearest preferred values down and up, for a value in any unit between 10⁻¹⁵ and 10¹⁵; `None` outside.
pub fn neighbours(value: f64, series: ESeries) -> Option<Neighbours> {
    if !(1e-15..=1e15).contains(&value) {
        return None;
    }
    let exponent = value.log10().floor() as i32 - 1;
    // From one decade below to one above, so that rounding at a decade's edge cannot lose the neighbour.
    let candidates = (exponent - 1..=exponent + 1)
        .flat_map(|exponent| series.decade().iter().map(move |&digits| scaled(f64::from(digits), exponent)));
    let mut found = Neighbours { down: f64::NEG_INFINITY, up: f64::INFINITY };
    for candidate in candidates {
        if candidate <= value * (1.0 + SAME) {
            found.down = found.down.max(candidate);
        }
        if candidate >= value * (1.0 - SAME) {
            found.up = found.up.min(candidate);
        }
    }
    (found.down.is_finite() && found.up.is_finite()).then_some(found)
}

/// `digits` × 10^`exponent`, dividing below zero: powers of ten are exact floats, their inverses are not.
pub(super) fn scaled(digits: f64, exponent: i32) -> f64 {
    if exponent < 0 { digits / 10f64.powi(-exponent) } else { digits * 10f64.powi(exponent) }
}
