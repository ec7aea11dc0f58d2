//! What a capacitor position asks of whatever takes its place, and what a capacitor is.

use crate::record::{Capacitor, CapacitorUse, Dielectric, KitLine, Material, Mounting, Word as _};
use crate::rules::{OrderRule, Rules, SubstitutionRule};
use crate::text;
use crate::trade::capacitor::preferred::neighbours;
use crate::trade::supply::{Rail, rail_in};

/// What arithmetic may leave behind between two figures that are the same.
pub(super) const SAME: f64 = 1e-9;

/// What a capacitor is: the line of a kit, or something in stock.
#[derive(Clone, Debug, PartialEq)]
pub struct Spec {
    /// Microfarads.
    pub uf: f64,
    /// Rated volts.
    pub volts: f64,
    /// Upper category temperature, °C; `None` when not known.
    pub celsius: Option<f64>,
    pub diameter_mm: Option<f64>,
    pub height_mm: Option<f64>,
    pub pitch_mm: Option<f64>,
    pub dielectric: Dielectric,
    pub mounting: Mounting,
    pub low_esr: bool,
}

impl Spec {
    /// A capacitor in stock; `None` for any other material.
    pub fn of_material(material: &Material) -> Option<Self> {
        let dielectric = material.dielectric.unwrap_or(Dielectric::Unknown);
        Some(Self {
            uf: material.capacitance_uf?,
            volts: material.voltage_v?,
            celsius: material.temperature_c,
            diameter_mm: material.diameter_mm,
            height_mm: material.height_mm,
            pitch_mm: material.pitch_mm,
            dielectric,
            mounting: material.mounting.unwrap_or(Mounting::Unknown),
            low_esr: material.low_esr == Some(true) || dielectric == Dielectric::Polymer,
        })
    }

    /// A line of a kit that was written.
    pub fn of_line(line: &KitLine) -> Self {
        Self {
            uf: line.capacitance_uf,
            volts: line.voltage_v,
            celsius: line.temperature_c,
            diameter_mm: line.diameter_mm,
            height_mm: line.height_mm,
            pitch_mm: line.pitch_mm,
            dielectric: line.dielectric,
            mounting: line.mounting,
            low_esr: line.low_esr,
        }
    }

    /// What it is called in short: "1000 µF 16 V 105 °C 8 × 12 mm low resistance".
    pub fn name(&self) -> String {
        let mut words = vec![format!("{} µF", self.uf), format!("{} V", self.volts)];
        words.extend(self.celsius.map(|celsius| format!("{celsius} °C")));
        match (self.diameter_mm, self.height_mm) {
            (Some(across), Some(high)) => words.push(format!("{across} × {high} mm")),
            (Some(across), None) => words.push(format!("Ø {across} mm")),
            _ => {}
        }
        if self.dielectric != Dielectric::WetAluminium {
            words.push(self.dielectric.label().to_lowercase());
        } else if self.low_esr {
            words.push(text!("low resistance").to_owned());
        }
        if self.mounting == Mounting::Surface {
            words.push(self.mounting.label().to_lowercase());
        }
        words.join(" ")
    }

    /// In words, for a person, as a line to be ordered: "1000 µF, 16 V, at most Ø 8 × 12 mm, wet aluminium, radial".
    pub fn said(&self) -> String {
        let mut words = vec![format!("{} µF", self.uf), format!("{} V", self.volts)];
        words.extend(self.celsius.map(|celsius| format!("{celsius} °C")));
        match (self.diameter_mm, self.height_mm) {
            (Some(across), Some(high)) => {
                words.push(text!("at most Ø {across} × {high} mm", across = across, high = high));
            }
            (Some(across), None) => words.push(text!("at most Ø {across} mm", across = across)),
            (None, Some(high)) => words.push(text!("at most {high} mm high", high = high)),
            (None, None) => {}
        }
        words.extend(self.pitch_mm.map(|pitch| text!("leads {mm} mm apart", mm = pitch)));
        if self.low_esr && self.dielectric != Dielectric::Polymer {
            words.push(text!("low series resistance").to_owned());
        }
        words.push(self.dielectric.label().to_lowercase());
        words.push(self.mounting.label().to_lowercase());
        words.join(", ")
    }

    /// Microfarads times volts for a cubic millimetre of the body; `None` where its size is not known.
    pub fn uf_v_per_mm3(&self) -> Option<f64> {
        let (diameter, height) = self.diameter_mm.zip(self.height_mm)?;
        Some(self.uf * self.volts / (std::f64::consts::FRAC_PI_4 * diameter * diameter * height))
    }
}

/// What one row of the tables lets take a position's place.
#[derive(Clone, Debug, PartialEq)]
pub struct Room {
    pub with: Dielectric,
    /// Microfarads, from the position's own …
    pub least_uf: f64,
    /// … to the most that the row allows.
    pub most_uf: f64,
    /// Rated volts at the least: the position's own, or more where the row asks for it.
    pub least_volts: f64,
    /// The densest that is made, or that sat there; `None` for no limit.
    pub most_uf_v_per_mm3: Option<f64>,
    /// The row's name.
    pub rule: String,
}

/// What positions that are alike ask for.
#[derive(Clone, Debug, PartialEq)]
pub struct Demand {
    /// What sits there.
    pub was: Spec,
    /// What may take its place; at least one.
    pub rooms: Vec<Room>,
}

impl Demand {
    /// What a position asks for, low series resistance as [`is_low_esr`] has it; `None` when its value is not known or no row allows anything in its place.
    pub fn of(position: &Capacitor, low_esr: bool, rules: &Rules) -> Option<Self> {
        let order = rules.orders.first()?;
        let was = Spec {
            uf: position.capacitance_uf?,
            volts: position.voltage_v?,
            celsius: position.temperature_c,
            diameter_mm: position.diameter_mm,
            height_mm: position.height_mm,
            pitch_mm: position.pitch_mm.map(|mm| nearest(&order.pitches_mm, mm)),
            dielectric: position.made_of(),
            mounting: if position.mounting == Mounting::Unknown { order.mounting } else { position.mounting },
            low_esr,
        };
        let rooms: Vec<Room> = rows(position, &was, rules)
            .filter_map(|row| room(row, &was, rail_in(&position.place_on_part), order))
            .collect();
        (!rooms.is_empty()).then_some(Self { was, rooms })
    }

    /// What it leaves to a dielectric.
    pub fn room(&self, with: Dielectric) -> Option<&Room> {
        self.rooms.iter().find(|room| room.with == with)
    }
}

/// The rows for a position: for each dielectric that may take its place, one that names what it does before others.
fn rows<'r>(position: &Capacitor, was: &Spec, rules: &'r Rules) -> impl Iterator<Item = &'r SubstitutionRule> {
    let applies = |row: &SubstitutionRule| {
        row.dielectrics.contains(&was.dielectric)
            && row.from_uf.is_none_or(|least| was.uf >= least)
            && row.to_volts.is_none_or(|most| was.volts <= most)
            && (row.functions.is_empty() || names(&row.functions, position.function))
    };
    let rows: Vec<&SubstitutionRule> =
        rules.substitutions.iter().map(|row| &**row).filter(|row| applies(row)).collect();
    let first = |with: Dielectric| {
        let of = || rows.iter().copied().filter(move |row| row.with == with);
        of().find(|row| !row.functions.is_empty()).or_else(|| of().next())
    };
    let found: Vec<&SubstitutionRule> = Dielectric::ALL.iter().filter_map(|with| first(*with)).collect();
    found.into_iter()
}

fn names(functions: &[CapacitorUse], function: Option<CapacitorUse>) -> bool {
    function.is_some_and(|function| functions.contains(&function))
}

fn room(row: &SubstitutionRule, was: &Spec, rail: Option<Rail>, order: &OrderRule) -> Option<Room> {
    // The next preferred value is above the original, also where that is a preferred value itself.
    let next = neighbours(was.uf * (1.0 + 1e-6), row.series)?.up;
    let most_uf = next.min(was.uf * (1.0 + row.most_above_percent / 100.0));
    let denser = |limit: f64| was.uf_v_per_mm3().map_or(limit, |was| was.max(limit));
    Some(Room {
        with: row.with,
        least_uf: was.uf,
        most_uf,
        least_volts: least_volts(row, was, rail, order)?,
        most_uf_v_per_mm3: row.most_uf_v_per_mm3.map(denser),
        rule: row.name.clone(),
    })
}

/// What a row asks of the rated voltage: as many times the rail as it says, where the position's place names the rail;
/// where nothing names it, the next rated voltage above what sat there.
fn least_volts(row: &SubstitutionRule, was: &Spec, rail: Option<Rail>, order: &OrderRule) -> Option<f64> {
    match (row.times_rail, rail) {
        (None, _) => Some(was.volts),
        (Some(times), Some(rail)) => Some(was.volts.max(times * rail.nominal_v().abs())),
        (Some(_), None) => order.volts.iter().copied().find(|made| *made > was.volts * (1.0 + SAME)),
    }
}

/// Whether what sits at a position is of low series resistance: as told, else as the tables take it.
pub fn is_low_esr(position: &Capacitor, rules: &Rules) -> bool {
    if let Some(told) = position.low_esr {
        return told;
    }
    if position.dielectric == Dielectric::Polymer {
        return true;
    }
    let place = position.place_on_part.to_lowercase();
    rules.low_esr.iter().any(|row| {
        names(&row.functions, position.function) || row.places.iter().any(|word| place.contains(word.as_str()))
    })
}

fn nearest(figures: &[f64], to: f64) -> f64 {
    figures.iter().copied().min_by(|a, b| (a - to).abs().total_cmp(&(b - to).abs())).unwrap_or(to)
}

/// The smallest value that can be bought and is not below.
pub fn value_to_buy(order: &OrderRule, uf: f64) -> Option<f64> {
    neighbours(uf, order.series).map(|neighbours| neighbours.up)
}

/// The smallest rated voltage that can be bought and is not below.
pub fn volts_to_buy(order: &OrderRule, volts: f64) -> Option<f64> {
    order.volts.iter().copied().find(|made| *made >= volts * (1.0 - SAME))
}
