//! Whether a capacitor may take a position's place, and why.

use super::demand::{Demand, SAME, Spec};
use crate::record::{Dielectric, Word as _};
use crate::rules::Rules;
use crate::text;

/// Why something is allowed in a position's place: one of these for each thing that was looked at.
#[derive(Clone, Debug, PartialEq)]
pub enum Reason {
    /// The same capacitance, or a larger one within the rule's limits.
    Capacitance {
        was_uf: f64,
        is_uf: f64,
    },
    Voltage {
        was_v: f64,
        is_v: f64,
        /// What was asked at the least.
        least_v: f64,
    },
    Temperature {
        was_c: f64,
        is_c: f64,
    },
    /// Diameter and height that fit; `None` where the position's was not logged.
    Size {
        room_mm: [Option<f64>; 2],
        is_mm: [Option<f64>; 2],
    },
    /// The lead pitch that sat there.
    Pitch {
        mm: f64,
    },
    /// Low series resistance is kept.
    LowEsr,
    /// Another dielectric, allowed by this row of the tables.
    Dielectric {
        was: Dielectric,
        with: Dielectric,
        rule: String,
    },
}

/// Why `spec` may take the place of what a demand is for; `None` when it may not.
pub fn allowed(demand: &Demand, spec: &Spec) -> Option<Vec<Reason>> {
    let was = &demand.was;
    let room = demand.room(spec.dielectric).filter(|_| fits(demand, spec))?;
    let mut reasons = vec![
        Reason::Capacitance { was_uf: was.uf, is_uf: spec.uf },
        Reason::Voltage { was_v: was.volts, is_v: spec.volts, least_v: room.least_volts },
    ];
    reasons.extend(was.celsius.zip(spec.celsius).map(|(was_c, is_c)| Reason::Temperature { was_c, is_c }));
    reasons.push(Reason::Size { room_mm: [was.diameter_mm, was.height_mm], is_mm: [spec.diameter_mm, spec.height_mm] });
    reasons.extend(was.pitch_mm.map(|mm| Reason::Pitch { mm }));
    reasons.extend(was.low_esr.then_some(Reason::LowEsr));
    if spec.dielectric != was.dielectric {
        reasons.push(Reason::Dielectric { was: was.dielectric, with: spec.dielectric, rule: room.rule.clone() });
    }
    Some(reasons)
}

/// Whether `spec` may take the place of what a demand is for.
pub fn fits(demand: &Demand, spec: &Spec) -> bool {
    let was = &demand.was;
    let Some(room) = demand.room(spec.dielectric) else { return false };
    let not_below = |is: f64, least: f64| is >= least * (1.0 - SAME);
    let not_above = |is: f64, most: f64| is <= most * (1.0 + SAME);
    // What nobody has told of the position asks for nothing; what nobody has told of the capacitor gives nothing.
    let told = |asked: Option<f64>, is: Option<f64>, holds: &dyn Fn(f64, f64) -> bool| {
        asked.is_none_or(|asked| is.is_some_and(|is| holds(is, asked)))
    };
    not_below(spec.uf, room.least_uf)
        && not_above(spec.uf, room.most_uf)
        && not_below(spec.volts, room.least_volts)
        && told(was.celsius, spec.celsius, &not_below)
        && told(was.diameter_mm, spec.diameter_mm, &not_above)
        && told(was.height_mm, spec.height_mm, &not_above)
        && told(was.pitch_mm, spec.pitch_mm, &|is, asked| (is - asked).abs() <= SAME * asked)
        && spec.mounting == was.mounting
        && (spec.low_esr || !was.low_esr)
        && room.most_uf_v_per_mm3.zip(spec.uf_v_per_mm3()).is_none_or(|(most, is)| not_above(is, most))
}

impl Reason {
    /// In words, for a person.
    pub fn sentence(&self, rules: &Rules) -> String {
        match self {
            Self::Capacitance { was_uf, is_uf } if was_uf == is_uf => text!("{uf} µF as it was", uf = is_uf),
            Self::Capacitance { was_uf, is_uf } => {
                text!("{is} µF for {was} µF, within the next preferred value", is = is_uf, was = was_uf)
            }
            Self::Voltage { was_v, is_v, .. } if was_v == is_v => text!("{volts} V as it was", volts = is_v),
            Self::Voltage { was_v, is_v, least_v } if least_v > was_v => text!(
                "{is} V for {was} V: tantalum is rated well above its rail, {least} V at least",
                is = is_v,
                was = was_v,
                least = least_v
            ),
            Self::Voltage { was_v, is_v, .. } => text!("{is} V for {was} V, not lower", is = is_v, was = was_v),
            Self::Temperature { was_c, is_c } => text!("{is} °C, asked {was} °C", is = is_c, was = was_c),
            Self::Size { room_mm: [None, None], .. } => {
                text!("its size was not logged: measure before ordering").to_owned()
            }
            Self::Size { room_mm, is_mm } => {
                let said = |[across, high]: [Option<f64>; 2]| {
                    let figure = |mm: Option<f64>| mm.map_or_else(|| "?".to_owned(), |mm| mm.to_string());
                    format!("{} × {}", figure(across), figure(high))
                };
                text!("Ø × height {is} mm, room for {room} mm", is = said(*is_mm), room = said(*room_mm))
            }
            Self::Pitch { mm } => text!("leads {mm} mm apart", mm = mm),
            Self::LowEsr => text!("low series resistance kept").to_owned(),
            Self::Dielectric { was, with, rule } => {
                let source = rules.substitutions.iter().find(|row| row.name == *rule).map_or("", |row| &row.source);
                let allowed =
                    text!("{with} allowed: {source}", with = with.label().to_lowercase(), source = text::say(source));
                match (was, with) {
                    (Dielectric::Tantalum, Dielectric::WetAluminium | Dielectric::Polymer) => {
                        let mind = text!("mind the polarity: a bead’s mark is plus, a can’s stripe is minus");
                        format!("{allowed}; {mind}")
                    }
                    _ => allowed,
                }
            }
        }
    }
}
