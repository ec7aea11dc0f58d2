//! Which positions a kit is gathered over, and which of them cannot be in it.

use std::collections::{HashMap, HashSet};
use std::sync::Arc;

use super::demand::{Demand, is_low_esr};
use crate::record::{
    Capacitor, CapacitorFile, CapacitorId, CapacitorUse, Custody, Dielectric, KitId, Logbook, MachineId, Mounting,
    PartFile, PartId, Word as _,
};
use crate::rules::Rules;
use crate::text;
use crate::trade::supply::{Rail, rail_in};

/// The parts that a kit is gathered over.
#[derive(Clone, Debug, PartialEq)]
pub enum Scope {
    Part(PartId),
    Machine(MachineId),
    /// Positions chosen one by one.
    Chosen(HashSet<CapacitorId>),
    All,
}

/// Which of their positions.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub enum Which {
    /// All that still carry what was logged.
    All,
    /// Those that have to be replaced.
    Bad,
    /// Wet aluminium that still is what was logged.
    Wet,
    /// All of one series that still are what was logged, by its print without regard to case.
    Series(String),
}

/// Why a position in scope is not in the kit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// Its capacitance or voltage is not known.
    NoValue,
    /// No row of the tables allows anything in its place.
    NoRule(Dielectric),
    /// Nothing that is in stock or can be bought is allowed there.
    NothingMade,
    /// Another kit serves it already.
    InKit(KitId),
}

/// A position in scope that is not in the kit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LeftOut {
    pub part: PartId,
    pub capacitor: CapacitorId,
    pub why: Why,
}

/// A position that a kit is to serve.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Position {
    pub part: PartId,
    pub capacitor: CapacitorId,
    /// Its place in the list of demands.
    pub demand: u32,
}

/// The positions of a kit to be, with what they ask for: each demand once.
#[derive(Clone, Debug, Default)]
pub struct Positions {
    pub positions: Vec<Position>,
    pub demands: Vec<Demand>,
}

impl Which {
    /// Whether a position is meant.
    pub fn means(&self, file: &CapacitorFile) -> bool {
        let as_logged = || !file.is_replaced() || file.state().is_bad();
        match self {
            Self::Bad => file.state().is_bad(),
            Self::All => as_logged(),
            Self::Wet => file.position.made_of().is_wet() && as_logged(),
            Self::Series(series) => file.position.series.eq_ignore_ascii_case(series) && as_logged(),
        }
    }

    /// In words, for a person.
    pub fn said(&self) -> String {
        match self {
            Self::All => text!("all positions").to_owned(),
            Self::Bad => text!("bad ones").to_owned(),
            Self::Wet => text!("wet aluminium").to_owned(),
            Self::Series(series) => text!("series {series}", series = series),
        }
    }
}

impl Scope {
    /// In words, for a person.
    pub fn said(&self, logbook: &Logbook) -> String {
        match self {
            Self::Part(part) => logbook.part(*part).map_or_else(String::new, |file| file.part.tag.clone()),
            Self::Machine(machine) => logbook.machine(*machine).map_or_else(String::new, |of| of.machine.name.clone()),
            Self::Chosen(chosen) => {
                crate::counted!("{count} chosen position", "{count} chosen positions", chosen.len())
            }
            Self::All => text!("everything").to_owned(),
        }
    }

    fn parts<'l>(&self, logbook: &'l Logbook) -> Vec<&'l Arc<PartFile>> {
        match self {
            Self::Part(part) => logbook.part(*part).into_iter().collect(),
            Self::Machine(machine) => {
                let parts = logbook.machine(*machine).map(|file| file.parts()).unwrap_or_default();
                parts.into_iter().filter_map(|(part, ..)| logbook.part(part)).collect()
            }
            Self::Chosen(_) | Self::All => logbook.parts.iter().collect(),
        }
    }
}

impl Why {
    /// In words, for a person.
    pub fn sentence(&self, logbook: &Logbook) -> String {
        match self {
            Self::NoValue => text!("its capacitance or voltage is not known").to_owned(),
            Self::NoRule(dielectric) => text!(
                "no rule says what may take the place of “{dielectric}”: order it by its print",
                dielectric = dielectric.label()
            ),
            Self::NothingMade => text!("nothing that is made in its size may take its place").to_owned(),
            Self::InKit(kit) => {
                let name = logbook.kit(*kit).map_or("", |file| &file.kit.name);
                text!("the kit “{kit}” serves it already", kit = name)
            }
        }
    }
}

/// All of a position that decides what it asks for.
#[derive(PartialEq, Eq, Hash)]
struct Alike {
    figures: [Option<u64>; 6],
    dielectric: Dielectric,
    mounting: Mounting,
    function: Option<CapacitorUse>,
    low_esr: bool,
    rail: Option<Rail>,
}

/// The positions in scope that can be in a kit, and those that cannot.
pub fn positions(logbook: &Logbook, rules: &Rules, scope: &Scope, which: &Which) -> (Positions, Vec<LeftOut>) {
    let served = super::super::supplies::served(logbook);
    let (mut found, mut left_out) = (Positions::default(), Vec::new());
    let mut known: HashMap<Alike, Option<u32>> = HashMap::new();
    let mut places: HashMap<(&str, Option<CapacitorUse>, Dielectric), bool> = HashMap::new();
    for file in scope.parts(logbook) {
        if matches!(file.custody_now(), Custody::GivenBack | Custody::Sold | Custody::Scrapped) {
            continue;
        }
        for capacitor in file.capacitors.iter().filter(|one| which.means(one)) {
            let position = &capacitor.position;
            if matches!(scope, Scope::Chosen(chosen) if !chosen.contains(&position.id)) {
                continue;
            }
            let mut leave = |why| left_out.push(LeftOut { part: position.part, capacitor: position.id, why });
            if let Some(kit) = served.get(&position.id) {
                leave(Why::InKit(*kit));
                continue;
            }
            if position.capacitance_uf.is_none() || position.voltage_v.is_none() {
                leave(Why::NoValue);
                continue;
            }
            let place = (position.place_on_part.as_str(), position.function, position.dielectric);
            let low_esr = match position.low_esr {
                Some(told) => told,
                None => *places.entry(place).or_insert_with(|| is_low_esr(position, rules)),
            };
            let demand = *known.entry(alike(position, low_esr)).or_insert_with(|| {
                let demand = Demand::of(position, low_esr, rules)?;
                found.demands.push(demand);
                Some(found.demands.len() as u32 - 1)
            });
            match demand {
                Some(demand) => {
                    found.positions.push(Position { part: position.part, capacitor: position.id, demand });
                }
                None => leave(Why::NoRule(position.made_of())),
            }
        }
    }
    (found, left_out)
}

fn alike(position: &Capacitor, low_esr: bool) -> Alike {
    let Capacitor { capacitance_uf, voltage_v, temperature_c, diameter_mm, height_mm, pitch_mm, .. } = *position;
    Alike {
        figures: [capacitance_uf, voltage_v, temperature_c, diameter_mm, height_mm, pitch_mm]
            .map(|figure| figure.map(f64::to_bits)),
        dielectric: position.made_of(),
        mounting: position.mounting,
        function: position.function,
        low_esr,
        rail: rail_in(&position.place_on_part),
    }
}
