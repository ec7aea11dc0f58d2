//! What is printed on a part, as read.

use serde::{Deserialize, Serialize};

use super::{Id, Moment, PartId, Word};
use crate::text;
pub use crate::trade::date_code::Surface;

/// The key of a [`Marking`].
pub type MarkingId = Id<Marking>;

impl Word for Surface {
    const ALL: &'static [Self] = &Surface::ALL;

    fn name(self) -> &'static str {
        self.key()
    }

    fn label(self) -> &'static str {
        match self {
            Self::Board => text!("Board"),
            Self::Chip => text!("Chip"),
            Self::Sticker => text!("Sticker"),
            Self::Capacitor => text!("Capacitor"),
            Self::DriveLabel => text!("Drive label"),
            Self::Case => text!("Case"),
            Self::Other => text!("Something else"),
        }
    }
}

crate::words! {
    /// Whether a marking was there when the part left the factory.
    FromFactory {
        Unknown = "unknown", "Cannot tell";
        Yes = "yes", "From the factory";
        No = "no", "Added or replaced later";
    }
}

/// A marking as read: never edited into another; a better reading supersedes it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Marking {
    pub id: MarkingId,
    pub part: PartId,
    pub read: Moment,
    pub surface: Surface,
    /// Where on the part, in words.
    pub place_on_part: String,
    /// The characters as printed.
    pub text: String,
    pub from_factory: FromFactory,
    /// The date scheme that the restorer has settled on (a name of `trade::date_code::Scheme`); empty when open.
    pub scheme: String,
    /// The earlier reading that this one corrects.
    pub supersedes: Option<MarkingId>,
    pub note: String,
}
