//! One physical thing with a tag.

use serde::{Deserialize, Serialize};

use super::{DesignId, Id, Kind, LotId, PlaceId, When};

/// The key of a [`Part`].
pub type PartId = Id<Part>;

crate::words! {
    /// How much of the part is as it left the factory.
    Originality {
        Unstated = "unstated", "Not stated";
        Original = "original", "Original";
        PeriodReplacement = "period_replacement", "Period replacement";
        ModernReplacement = "modern_replacement", "Modern replacement";
        Altered = "altered", "Altered";
    }
}

/// One physical thing. What it is called falls back from its own words to its design's.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Part {
    pub id: PartId,
    /// What people say and scan; unique in the logbook, kept for life.
    pub tag: String,
    pub kind: Kind,
    pub design: Option<DesignId>,
    /// What it is in the restorer's words, where no design is known yet or the design does not say it all.
    pub name: String,
    pub serial: String,
    pub originality: Originality,
    pub lot: Option<LotId>,
    /// Its own price or its share of the lot's, in hundredths of the logbook's currency.
    pub price_cents: Option<i64>,
    /// When it came, where it differs from its lot's date or has no lot.
    pub acquired: When,
    pub place: Option<PlaceId>,
    /// The part it sits in: a supply in a case, chips on a board, what is left in a donor.
    pub inside: Option<PartId>,
    /// Why it is kept apart (something leaks); empty when it is not.
    pub quarantine: String,
    /// Since when it is kept apart.
    pub quarantined: When,
    pub note: String,
}

impl Part {
    /// Whether the part is kept apart from others.
    pub fn is_quarantined(&self) -> bool {
        !self.quarantine.is_empty()
    }
}
