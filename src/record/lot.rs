//! What was acquired together, from whom, for one price.

use serde::{Deserialize, Serialize};

use super::{Id, When};

/// The key of a [`Lot`].
pub type LotId = Id<Lot>;

/// Parts that came together are evidence about each other; one price is shared out over them.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Lot {
    pub id: LotId,
    /// What people call it: "Attic clearance, March".
    pub name: String,
    /// When it was acquired.
    pub acquired: When,
    /// From whom or where.
    pub source: String,
    /// What was paid for all of it, in hundredths of the logbook's currency; `None` when not told.
    pub price_cents: Option<i64>,
    pub note: String,
}
