//! What is used up at the bench.

use serde::{Deserialize, Serialize};

use super::{Id, PlaceId};

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
}
