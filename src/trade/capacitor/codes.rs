//! The letters on capacitors: voltage, tolerance, and value letters.

use std::fmt;

use serde::{Deserialize, Serialize};

use super::preferred::scaled;
use crate::text;

/// Volts of a two-character EIA/EIAJ voltage code: a power of ten, then a letter (`1C` 16 V, `2A` 100 V).
///
/// Source: oriedza.blogspot.com (table 2) and a maker's part-number chart (pdf.jiepei.com), which agree; 0E, 1D, 1V
/// and 1G from pedalprojects.co.uk. The letters' values follow from both.
pub fn voltage_code(power: u8, letter: u8) -> Option<f64> {
    // Four letters are seen under one digit only.
    match (power, letter) {
        (b'0', b'L') => return Some(5.5),
        (b'2', b'Z') => return Some(180.0),
        (b'2', b'P') => return Some(220.0),
        (b'2', b'Q') => return Some(110.0),
        _ => {}
    }
    let hundredths = match letter {
        b'A' => 100.0,
        b'B' => 125.0,
        b'C' => 160.0,
        b'D' => 200.0,
        b'E' => 250.0,
        b'F' => 315.0,
        b'V' => 350.0,
        b'G' => 400.0,
        b'W' => 450.0,
        b'H' => 500.0,
        b'J' => 630.0,
        b'K' => 800.0,
        _ => return None,
    };
    matches!(power, b'0'..=b'3').then(|| scaled(hundredths, i32::from(power - b'0') - 2))
}

/// Volts of the single letter on a tantalum chip or a surface-mounted can.
///
/// G to V: a maker's tantalum chip data sheet (mmic.net.cn copy). T, and the small letters e, g, j: memory.
/// Pages that give A = 10, B = 16, C = 20, D = 25, E = 35 contradict the data sheet and are not followed.
pub fn voltage_letter(letter: u8) -> Option<f64> {
    Some(match letter {
        b'e' => 2.5,
        b'G' | b'g' => 4.0,
        b'J' | b'j' => 6.3,
        b'A' => 10.0,
        b'C' => 16.0,
        b'D' => 20.0,
        b'E' => 25.0,
        b'V' => 35.0,
        b'T' => 50.0,
        _ => return None,
    })
}

/// Picofarads before the power of ten of a letter-and-digit code (`S3` 4.7 nF).
///
/// Source: EIA-198 as given by marsport.org.uk (chip capacitors) and gfaelectronics.com.
pub fn value_letter(letter: u8) -> Option<f64> {
    const CAPITALS: &[u8; 24] = b"ABCDEFGHJKLMNPQRSTUVWXYZ";
    /// The decade of E24, in the letters' order.
    const TENTHS: [u8; 24] =
        [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];
    if let Some(at) = CAPITALS.iter().position(|known| *known == letter) {
        return Some(f64::from(TENTHS[at]) / 10.0);
    }
    Some(match letter {
        b'a' => 2.5,
        b'b' => 3.5,
        b'd' => 4.0,
        b'e' => 4.5,
        b'f' => 5.0,
        b'm' => 6.0,
        b'n' => 7.0,
        b't' => 8.0,
        b'y' => 9.0,
        _ => return None,
    })
}

/// Whether a single voltage letter's meaning is from memory only.
pub fn is_remembered_voltage(letter: u8) -> bool {
    matches!(letter, b'T' | b'e' | b'g' | b'j')
}

/// How far a capacitor may be from its printed value when it is new.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Tolerance {
    /// Below the printed value.
    pub minus: f64,
    /// Above the printed value.
    pub plus: f64,
    pub unit: ToleranceUnit,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ToleranceUnit {
    Percent,
    Picofarad,
}

impl Tolerance {
    /// The same per cent both ways.
    pub fn percent(both: f64) -> Self {
        Self { minus: both, plus: both, unit: ToleranceUnit::Percent }
    }

    fn picofarad(both: f64) -> Self {
        Self { minus: both, plus: both, unit: ToleranceUnit::Picofarad }
    }
}

impl fmt::Display for Tolerance {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { minus, plus, unit } = *self;
        let unit = match unit {
            ToleranceUnit::Percent => text!("%"),
            ToleranceUnit::Picofarad => text!("pF"),
        };
        if minus == plus { write!(f, "±{plus} {unit}") } else { write!(f, "−{minus}/+{plus} {unit}") }
    }
}

/// What a tolerance letter means on a capacitor of that many picofarads.
///
/// Sources: dummies.com, a television maker's parts chart (p. 41) and electro-tech-online.com; that F and G are
/// picofarads below 10 pF: signalpro.biz; Q: memory.
pub fn tolerance(letter: u8, capacitance_pf: f64) -> Option<Tolerance> {
    let lopsided = |minus, plus| Tolerance { minus, plus, unit: ToleranceUnit::Percent };
    let small = capacitance_pf < 10.0;
    Some(match letter {
        b'B' => Tolerance::picofarad(0.1),
        b'C' => Tolerance::picofarad(0.25),
        b'D' => Tolerance::picofarad(0.5),
        b'F' if small => Tolerance::picofarad(1.0),
        b'F' => Tolerance::percent(1.0),
        b'G' if small => Tolerance::picofarad(2.0),
        b'G' => Tolerance::percent(2.0),
        b'J' => Tolerance::percent(5.0),
        b'K' => Tolerance::percent(10.0),
        b'M' => Tolerance::percent(20.0),
        b'N' => Tolerance::percent(30.0),
        b'P' => lopsided(0.0, 100.0),
        b'Q' => lopsided(10.0, 30.0),
        b'S' => lopsided(20.0, 50.0),
        b'T' => lopsided(10.0, 50.0),
        b'Z' => lopsided(20.0, 80.0),
        _ => return None,
    })
}
