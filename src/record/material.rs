//! What is used up at the bench.

use serde::{Deserialize, Serialize};

use super::{Dielectric, Id, Mounting, PlaceId};

/// The key of a [`Material`].
pub type MaterialId = Id<Material>;

/// A material with its stock.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Material {
    pub id: MaterialId,
    /// Its name, as the work rules and kits call it.
    pub name: String,
    /// What it is counted in: piece, ml, m.
    pub unit: String,
    /// In stock, 0 or more.
    pub stock: f64,
    /// To be bought again below this, 0 or more.
    pub minimum: f64,
    pub place: Option<PlaceId>,
    /// In hundredths of the logbook's currency, for one unit.
    pub price_cents: Option<i64>,
    /// Where to buy it.
    pub supplier: String,
    pub note: String,
    /// Of a capacitor, microfarads; a material with both this and [`Self::voltage_v`] is one.
    pub capacitance_uf: Option<f64>,
    /// Of a capacitor, rated volts.
    pub voltage_v: Option<f64>,
    /// Of a capacitor, upper category temperature, °C.
    pub temperature_c: Option<f64>,
    pub diameter_mm: Option<f64>,
    pub height_mm: Option<f64>,
    pub pitch_mm: Option<f64>,
    pub dielectric: Option<Dielectric>,
    pub mounting: Option<Mounting>,
    /// Of a capacitor: whether it is of low series resistance; `None` when not known.
    pub low_esr: Option<bool>,
    /// Ordered by hand and not yet here, 0 or more; what kits have ordered stands with them.
    #[serde(default)]
    pub on_order: f64,
}

impl Material {
    /// A piece of something, of which there is none yet.
    pub fn new(id: MaterialId, name: &str) -> Self {
        Self {
            id,
            name: name.to_owned(),
            unit: crate::text!("piece").to_owned(),
            stock: 0.0,
            minimum: 0.0,
            place: None,
            price_cents: None,
            supplier: String::new(),
            note: String::new(),
            capacitance_uf: None,
            voltage_v: None,
            temperature_c: None,
            diameter_mm: None,
            height_mm: None,
            pitch_mm: None,
            dielectric: None,
            mounting: None,
            low_esr: None,
            on_order: 0.0,
        }
    }

    /// Whether it is a capacitor of known value.
    pub fn is_capacitor(&self) -> bool {
        self.capacitance_uf.is_some() && self.voltage_v.is_some()
    }
}
