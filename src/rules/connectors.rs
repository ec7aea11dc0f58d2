//! The table of connectors: what a part can offer or need, with pins, voltages, clocks, and which accepts which.

use std::collections::{BTreeMap, HashMap, HashSet};

use serde::{Deserialize, Serialize};
use toml::Spanned;

use super::table_error::TableError;
use crate::text;
use crate::trade::{Source, Sureness};

/// What sort of connection a connector is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Family {
    /// Processor and coprocessor sockets and slots.
    Processor,
    /// Slots for expansion cards.
    Expansion,
    /// Sockets for memory, cache and firmware.
    Memory,
    /// Board outlines: a case offers one, a board needs one.
    Outline,
    /// Bays, supply and cooler mountings.
    Mounting,
    /// Plugs between supply and board.
    BoardPower,
    /// Plugs between supply and drives, and fan headers.
    DrivePower,
    /// Hard disk and optical drive channels.
    Disk,
    /// Floppy channels.
    Floppy,
    /// Video outputs and feature connectors.
    Video,
    /// Keyboards and pointing devices.
    Input,
    /// Other ports and headers.
    Port,
}

impl Family {
    /// In words.
    pub fn said(self) -> &'static str {
        match self {
            Self::Processor => text!("processor socket"),
            Self::Expansion => text!("expansion slot"),
            Self::Memory => text!("memory socket"),
            Self::Outline => text!("board outline"),
            Self::Mounting => text!("mounting"),
            Self::BoardPower => text!("board power"),
            Self::DrivePower => text!("drive power"),
            Self::Disk => text!("disk channel"),
            Self::Floppy => text!("floppy channel"),
            Self::Video => text!("video connector"),
            Self::Input => text!("keyboard or pointing device"),
            Self::Port => text!("port"),
        }
    }
}

/// One connector of the table.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Connector {
    /// Key in records: lower-case letters, digits, `-` and `.`.
    pub id: String,
    /// What sort of connection it is.
    pub family: Family,
    /// What people call it.
    pub label: String,
    /// Pins or contacts; `None` for outlines and mountings, and where no source was at hand.
    pub contacts: Option<u16>,
    /// Width of the data path in bits, without parity.
    pub width_bits: Option<u16>,
    /// Bus clocks it is specified for, in MHz, ascending; of double- and quad-pumped buses the clock itself.
    pub clocks_mhz: Vec<f64>,
    /// Voltages it is used at, ascending: signalling or supply; for processor sockets the ends of the core range.
    pub volts: Vec<f64>,
    /// Width and depth of an outline in mm, the largest that the outline allows.
    pub outline_mm: Option<[f64; 2]>,
    /// What it accepts besides its own kind.
    pub accepts: Vec<String>,
    /// What to look out for; empty when nothing.
    pub note: String,
    /// Where the figures come from.
    pub source: Source,
}

/// All connectors, checked: every id is unique, and every `accepts` names a connector of the same family.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Connectors {
    by_id: BTreeMap<String, Connector>,
    /// Places in the order of ids, for those that hold many parts against each other.
    places: HashMap<String, u16>,
    /// For each place as an offer, a bit for each that it takes.
    takes: Vec<Vec<u64>>,
}

/// The shipped table.
pub const SHIPPED: &str = include_str!("../../resources/rules/connectors.toml");

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Table {
    #[serde(default)]
    connector: Vec<Spanned<Row>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Row {
    id: Spanned<String>,
    family: Family,
    label: String,
    contacts: Option<u16>,
    width_bits: Option<u16>,
    clocks_mhz: Option<Spanned<Vec<f64>>>,
    volts: Option<Spanned<Vec<f64>>>,
    outline_mm: Option<Spanned<[f64; 2]>>,
    #[serde(default)]
    accepts: Vec<Spanned<String>>,
    #[serde(default)]
    note: String,
    source: String,
    sureness: Sureness,
}

impl Connectors {
    /// The shipped table.
    ///
    /// # Errors
    /// As [`Connectors::load`]; a test holds the shipped table clean.
    pub fn shipped() -> Result<Self, TableError> {
        Self::load(&[("connectors.toml", SHIPPED)])
    }

    /// Reads tables of (file name, text), each adding to the ones before and overriding rows of the same id.
    ///
    /// # Errors
    /// File, line and reason: not TOML, an unknown field or word, an id twice in one file or not in the form of an
    /// id, an `accepts` that names no connector, one of another family or itself, figures that are not positive
    /// and ascending, an empty source of a published row.
    pub fn load(tables: &[(&str, &str)]) -> Result<Self, TableError> {
        let mut by_id = BTreeMap::new();
        let mut accepts = Vec::new();
        for (file, text) in tables {
            let table: Table = toml::from_str(text).map_err(|error| TableError::toml(file, text, &error))?;
            let mut seen = HashSet::new();
            for row in table.connector {
                let fault = |offset, reason| TableError::at(file, text, offset, reason);
                let start = row.span().start;
                let row = row.into_inner();
                if let Some((offset, reason)) = row.fault(start) {
                    return Err(fault(offset, reason));
                }
                if !seen.insert(row.id.get_ref().clone()) {
                    return Err(fault(
                        row.id.span().start,
                        text!("connector {id} stands twice", id = row.id.get_ref()),
                    ));
                }
                for other in &row.accepts {
                    accepts.push((*file, *text, other.span().start, row.id.get_ref().clone(), other.get_ref().clone()));
                }
                by_id.insert(row.id.get_ref().clone(), row.into_connector());
            }
        }
        let families: HashMap<&str, Family> = by_id.iter().map(|(id, row)| (id.as_str(), row.family)).collect();
        for (file, text, offset, id, other) in &accepts {
            let reason = match families.get(other.as_str()) {
                None => text!("{id} accepts {other}, which is no connector", id = id, other = other),
                Some(_) if id == other => text!("{id} lists itself; every connector accepts its own kind", id = id),
                Some(family) if families.get(id.as_str()) != Some(family) => {
                    text!("{id} accepts {other}, which is of another family", id = id, other = other)
                }
                Some(_) => continue,
            };
            return Err(TableError::at(file, text, *offset, reason));
        }
        Ok(Self::of(by_id))
    }

    fn of(by_id: BTreeMap<String, Connector>) -> Self {
        let places: HashMap<String, u16> = by_id.keys().cloned().zip(0..).collect();
        let takes = by_id.values().map(|row| {
            let mut bits = vec![0; by_id.len().div_ceil(64)];
            for place in row.accepts.iter().chain([&row.id]).filter_map(|id| places.get(id)) {
                bits[usize::from(place / 64)] |= 1 << (place % 64);
            }
            bits
        });
        Self { takes: takes.collect(), places, by_id }
    }

    /// The connector with this id.
    pub fn get(&self, id: &str) -> Option<&Connector> {
        self.by_id.get(id)
    }

    /// Its place in the order of ids: a short name while this table lasts. `None` for what the table does not know.
    pub fn place(&self, id: &str) -> Option<u16> {
        self.places.get(id).copied()
    }

    /// [`Connectors::accepts`] by places.
    pub fn takes(&self, offer: u16, need: u16) -> bool {
        let bits = self.takes.get(usize::from(offer)).and_then(|bits| bits.get(usize::from(need / 64)));
        bits.is_some_and(|bits| bits >> (need % 64) & 1 == 1)
    }

    /// What people call it; the id itself when the table does not know it.
    pub fn label<'a>(&'a self, id: &'a str) -> &'a str {
        self.get(id).map_or(id, |connector| text::say(&connector.label))
    }

    /// All connectors in the order of their ids.
    pub fn all(&self) -> impl Iterator<Item = &Connector> {
        self.by_id.values()
    }

    /// Whether what is offered takes what is needed: its own kind, or one that its row lists. Not symmetric (a
    /// 16-bit slot takes an 8-bit card, never the reverse) and not transitive (a universal slot takes a 3.3 V card,
    /// a 3.3 V slot a universal card, yet neither says anything about 1.5 V).
    ///
    /// Says that it plugs in as the table's sources have it; clocks, voltages and counts are judged apart.
    pub fn accepts(&self, offer: &str, need: &str) -> bool {
        offer == need || self.get(offer).is_some_and(|row| row.accepts.iter().any(|other| other == need))
    }
}

impl Row {
    /// The first fault within the row, with the byte it stands at.
    fn fault(&self, start: usize) -> Option<(usize, String)> {
        let id = self.id.get_ref();
        let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-' || c == '.';
        if id.is_empty() || !id.chars().all(plain) || id.starts_with('-') || id.ends_with('-') || id.contains("--") {
            let reason = text!("\"{id}\" is no id: lower-case letters, digits, single hyphens and dots only", id = id);
            return Some((self.id.span().start, reason));
        }
        if self.label.trim().is_empty() {
            return Some((start, text!("{id} has no label", id = id)));
        }
        if self.source.trim().is_empty() && self.sureness == Sureness::Published {
            return Some((start, text!("{id} is marked as published but names no source", id = id)));
        }
        if self.contacts == Some(0) || self.width_bits == Some(0) {
            return Some((start, text!("{id} has zero contacts or bits; leave out what is not known", id = id)));
        }
        for figures in [&self.clocks_mhz, &self.volts].into_iter().flatten() {
            if !positive_and_ascending(figures.get_ref()) {
                return Some((figures.span().start, text!("{id}: figures must be positive and ascending", id = id)));
            }
        }
        let sides = self.outline_mm.as_ref()?;
        let fine = sides.get_ref().iter().all(|mm| mm.is_finite() && *mm > 0.0);
        (!fine).then(|| (sides.span().start, text!("{id}: both sides of an outline must be positive", id = id)))
    }

    fn into_connector(self) -> Connector {
        Connector {
            id: self.id.into_inner(),
            family: self.family,
            label: self.label,
            contacts: self.contacts,
            width_bits: self.width_bits,
            clocks_mhz: self.clocks_mhz.map(Spanned::into_inner).unwrap_or_default(),
            volts: self.volts.map(Spanned::into_inner).unwrap_or_default(),
            outline_mm: self.outline_mm.map(Spanned::into_inner),
            accepts: self.accepts.into_iter().map(Spanned::into_inner).collect(),
            note: self.note,
            source: Source { text: self.source.into(), sureness: self.sureness },
        }
    }
}

fn positive_and_ascending(figures: &[f64]) -> bool {
    figures.iter().all(|figure| figure.is_finite() && *figure > 0.0) && figures.windows(2).all(|pair| pair[0] < pair[1])
}
