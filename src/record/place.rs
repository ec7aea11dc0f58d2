//! Where things are kept: a tree of rooms, shelves and boxes.

use serde::{Deserialize, Serialize};

use super::Id;

/// The key of a [`Place`].
pub type PlaceId = Id<Place>;

/// A room, shelf, box or drawer. A box moves with all that is in it, since its parts name the box.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Place {
    pub id: PlaceId,
    /// The place this one stands in; `None` for a room or another outermost place.
    pub within: Option<PlaceId>,
    /// What people call it: "Shelf 3", "Box of sound cards".
    pub name: String,
    pub note: String,
}
