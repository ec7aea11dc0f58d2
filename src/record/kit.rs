//! A kit of capacitors: order lines, and the positions that each of them serves.

use serde::{Deserialize, Serialize};

use super::{CapacitorId, Dielectric, Id, MaterialId, Moment, Mounting, When};

/// The key of a [`Kit`].
pub type KitId = Id<Kit>;

crate::words! {
    /// Where a kit stands in its life.
    ///
    /// | from | to | by |
    /// |---|---|---|
    /// | – | draft | gathered |
    /// | draft | frozen | its lines hold from here on; what is in stock is reserved |
    /// | frozen | draft | taken up again |
    /// | frozen | ordered | what is to be bought is on its way |
    /// | ordered | frozen | the order was cancelled |
    /// | frozen, ordered | received | what was bought is in stock, and reserved with the rest |
    /// | received | used | fitted: out of stock, and told at each position |
    KitState {
        Draft = "draft", "Draft";
        Frozen = "frozen", "Frozen";
        Ordered = "ordered", "Ordered";
        Received = "received", "Received";
        Used = "used", "Used up";
    }
}

impl KitState {
    /// Whether the life allows the step from this state to `next`.
    pub fn may_become(self, next: Self) -> bool {
        use KitState::{Draft, Frozen, Ordered, Received, Used};
        matches!(
            (self, next),
            (Draft | Ordered, Frozen) | (Frozen | Ordered, Received) | (Frozen, Draft | Ordered) | (Received, Used)
        )
    }

    /// Whether its positions wait for it still.
    pub fn is_unfinished(self) -> bool {
        self != Self::Used
    }
}

/// A kit of capacitors for a number of positions.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Kit {
    pub id: KitId,
    /// What people call it: "Recap of 0042".
    pub name: String,
    /// What it was gathered over, in words: "Part 0042, bad ones".
    pub scope: String,
    pub state: KitState,
    /// When the state was last changed.
    pub changed: Moment,
    /// When it was frozen, ordered, received and used up; unknown before.
    pub frozen: When,
    pub ordered: When,
    pub received: When,
    pub used: When,
    pub note: String,
}

/// The key of a [`KitLine`].
pub type KitLineId = Id<KitLine>;

/// One kind of capacitor of a kit: what it must be, and how many.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct KitLine {
    pub id: KitLineId,
    pub kit: KitId,
    /// What of the stock it is, or goes to when it is received.
    pub material: Option<MaterialId>,
    /// Microfarads, above 0.
    pub capacitance_uf: f64,
    /// Rated volts, above 0.
    pub voltage_v: f64,
    /// At least this upper category temperature, °C; `None` for any.
    pub temperature_c: Option<f64>,
    /// At most so wide; `None` where no position tells.
    pub diameter_mm: Option<f64>,
    /// At most so high; `None` where no position tells.
    pub height_mm: Option<f64>,
    pub pitch_mm: Option<f64>,
    pub dielectric: Dielectric,
    pub mounting: Mounting,
    /// Whether it has to be of low series resistance.
    pub low_esr: bool,
    /// Pieces taken from stock.
    pub from_stock: u32,
    /// Pieces to buy for positions.
    pub to_buy: u32,
    /// Pieces to buy beyond that.
    pub spares: u32,
    /// For one piece, in hundredths of the logbook's currency.
    pub price_cents: Option<i64>,
    pub supplier: String,
    pub note: String,
}

/// The key of a [`KitPosition`].
pub type KitPositionId = Id<KitPosition>;

/// A capacitor position that a line of a kit serves.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct KitPosition {
    pub id: KitPositionId,
    pub line: KitLineId,
    pub capacitor: CapacitorId,
}

/// A line with the positions that it serves.
#[derive(Clone, Debug, PartialEq)]
pub struct KitLineFile {
    pub line: KitLine,
    pub positions: Vec<KitPosition>,
}

/// A kit with its lines.
#[derive(Clone, Debug, PartialEq)]
pub struct KitFile {
    pub kit: Kit,
    pub lines: Vec<KitLineFile>,
}

impl KitFile {
    /// All positions that it serves.
    pub fn positions(&self) -> impl Iterator<Item = &KitPosition> {
        self.lines.iter().flat_map(|line| &line.positions)
    }
}
