//! What a reading must keep to: rails under power, ripple, rails to ground, and the figures of a test.

use crate::record::Reading;
use crate::rules::{ProofRule, Rules};
use crate::trade::supply::{Rail, Standard, limits, rail_in};

/// Whether a reading of a rail is out of its limits; `None` where it is no such reading. Voltages and ripple are held
/// against the published tolerance (ATX design guide 0.9: 5 %, on negative rails 10 %), resistances to ground against
/// the bounds that the tables' tests have for the rail.
pub fn is_out(reading: &Reading, rules: &Rules) -> Option<bool> {
    let quantity = reading.quantity.to_lowercase();
    let rail = rail_in(&quantity)?;
    let names = |words: &[&str]| words.iter().any(|word| quantity.contains(word));
    if names(&["core", "vid"]) {
        return None;
    }
    match unit_of(&reading.unit)? {
        (Unit::Ohm, factor) => Some(reading.value * factor < bound_to_ground(rail, rules)?),
        (Unit::Volt, _) if names(&["unpowered"]) => None,
        (Unit::Volt, factor) => {
            let volts = reading.value * factor;
            let table = limits(Standard::Atx);
            let row = table.iter().find(|row| row.rail == rail)?;
            if names(&["ripple", "noise"]) {
                return Some(volts * 1000.0 > row.ripple_mvpp?);
            }
            let (least, most) = (row.weakest_v.min(row.strongest_v), row.weakest_v.max(row.strongest_v));
            Some(!(least..=most).contains(&volts))
        }
    }
}

enum Unit {
    Volt,
    Ohm,
}

/// A unit as written, and by what its figures are multiplied.
fn unit_of(unit: &str) -> Option<(Unit, f64)> {
    let unit = unit.trim();
    Some(match unit {
        "V" | "v" | "volt" | "volts" | "Volt" | "Volts" => (Unit::Volt, 1.0),
        "mV" => (Unit::Volt, 1e-3),
        "mΩ" | "mohm" | "mOhm" => (Unit::Ohm, 1e-3),
        "Ω" | "\u{2126}" | "ohm" | "ohms" | "Ohm" | "Ohms" | "R" => (Unit::Ohm, 1.0),
        "kΩ" | "k\u{2126}" | "kohm" | "kOhm" | "k" => (Unit::Ohm, 1e3),
        "MΩ" | "M\u{2126}" | "Mohm" | "MOhm" | "M" => (Unit::Ohm, 1e6),
        _ => return None,
    })
}

/// The least ohms of a rail to ground, by the tests that measure it.
fn bound_to_ground(rail: Rail, rules: &Rules) -> Option<f64> {
    let figures = rules.proofs.iter().flat_map(|proof| &proof.figures);
    let of_rail = figures.filter(|figure| figure.say.contains("to ground") && rail_in(&figure.say) == Some(rail));
    of_rail.filter_map(|figure| figure.fails_below).reduce(f64::max)
}

/// Whether a reading breaks a bound of a test's own figure.
pub fn breaks_figure(reading: &Reading, rule: &ProofRule) -> bool {
    rule.figures.iter().filter(|figure| figure.say == reading.quantity).any(|figure| {
        !reading.value.is_finite()
            || figure.fails_below.is_some_and(|bound| reading.value < bound)
            || figure.fails_above.is_some_and(|bound| reading.value > bound)
    })
}
