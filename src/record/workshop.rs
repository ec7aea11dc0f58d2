//! Whose logbook it is.

use serde::{Deserialize, Serialize};

use super::Id;

/// The key of the [`Workshop`].
pub type WorkshopId = Id<Workshop>;

/// The logbook's title page; there is exactly one.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Workshop {
    pub id: WorkshopId,
    pub name: String,
    /// The restorer who usually writes: the default for "who".
    pub keeper: String,
    /// ISO 4217 code of the money in this logbook.
    pub currency: String,
    pub note: String,
}

/// An amount in hundredths, with its currency: "12.50 EUR".
pub fn money_text(cents: i64, currency: &str) -> String {
    let sign = if cents < 0 { "-" } else { "" };
    let cents = cents.unsigned_abs();
    format!("{sign}{}.{:02} {currency}", cents / 100, cents % 100)
}
