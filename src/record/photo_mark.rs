//! A mark on a photograph: where, what it is for, and what it is tied to.

use serde::{Deserialize, Serialize};

use super::{CapacitorId, FindingId, Id, MarkingId, PhotoId, ProofId, WorkId};

/// The key of a [`PhotoMark`].
pub type PhotoMarkId = Id<PhotoMark>;

crate::words! {
    /// What a mark is for.
    #[derive(Default)]
    MarkUse {
        /// Shows where something is: none or any number of points; one is a pin, three or more an outline.
        #[default]
        Place = "place", "Place";
        /// An outline within which damage is measured.
        Surface = "surface", "Surface";
        /// An outline of what is damaged.
        Damage = "damage", "Damage";
        /// A line of two or more points whose length is asked.
        Length = "length", "Length";
        /// Two points so many millimetres apart.
        Scale = "scale", "Scale";
        /// The four corners, one after the other, of what is a rectangle of known sides.
        Rectangle = "rectangle", "Known rectangle";
        /// A patch whose colour is asked.
        Sample = "sample", "Colour sample";
        /// A patch known to be neutral, white or grey.
        Reference = "reference", "Neutral reference";
        /// A patch of the side that no light reached: the colour as it was.
        Hidden = "hidden", "Hidden side";
    }
}

impl MarkUse {
    /// Whether it is a patch whose colour is taken off the picture.
    pub fn is_patch(self) -> bool {
        matches!(self, Self::Sample | Self::Reference | Self::Hidden)
    }

    /// Whether its points stand around something.
    pub fn is_outline(self) -> bool {
        matches!(self, Self::Surface | Self::Damage | Self::Rectangle) || self.is_patch()
    }

    /// The fewest and the most points it can have; no most where there is none.
    pub fn points(self) -> (usize, Option<usize>) {
        match self {
            Self::Place => (0, None),
            Self::Length => (2, None),
            Self::Scale => (2, Some(2)),
            Self::Rectangle => (4, Some(4)),
            Self::Surface | Self::Damage | Self::Sample | Self::Reference | Self::Hidden => (3, None),
        }
    }
}

/// A place on a photograph, tied to what it shows there.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PhotoMark {
    pub id: PhotoMarkId,
    pub photo: PhotoId,
    /// Points as shares of the picture's width and height (0–1), as many as [`MarkUse::points`] says.
    pub points: Vec<[f32; 2]>,
    pub finding: Option<FindingId>,
    pub capacitor: Option<CapacitorId>,
    pub marking: Option<MarkingId>,
    pub work: Option<WorkId>,
    pub note: String,
    #[serde(default)]
    pub role: MarkUse,
    /// Of a scale, how far its points are apart; of a rectangle, its first side.
    pub length_mm: Option<f64>,
    /// Of a rectangle, its second side.
    pub breadth_mm: Option<f64>,
    /// The mean colour of a patch in sRGB, each 0–1; all three or none.
    pub red: Option<f64>,
    pub green: Option<f64>,
    pub blue: Option<f64>,
    /// How much of a patch has some channel at its end, where the picture cannot tell the colour any more.
    pub clipped_percent: Option<f64>,
    /// The proof that the photograph belongs to.
    pub proof: Option<ProofId>,
}

impl PhotoMark {
    /// A mark that is tied to nothing yet.
    pub fn new(id: PhotoMarkId, photo: PhotoId, role: MarkUse, points: Vec<[f32; 2]>) -> Self {
        Self {
            id,
            photo,
            points,
            finding: None,
            capacitor: None,
            marking: None,
            work: None,
            proof: None,
            note: String::new(),
            role,
            length_mm: None,
            breadth_mm: None,
            red: None,
            green: None,
            blue: None,
            clipped_percent: None,
        }
    }

    /// The mean colour of a patch in sRGB, once it was taken off the picture.
    pub fn colour(&self) -> Option<[f64; 3]> {
        Some([self.red?, self.green?, self.blue?])
    }

    /// Whether its four corners, one after the other, go round a rectangle as a camera may see it.
    pub fn is_convex(&self) -> bool {
        let turn = |at: usize| {
            let [[ax, ay], [bx, by], [cx, cy]] = [0, 1, 2].map(|on| self.points[(at + on) % self.points.len()]);
            (bx - ax) * (cy - by) - (by - ay) * (cx - bx)
        };
        let turns: Vec<f32> = (0..self.points.len()).map(turn).collect();
        turns.iter().all(|turn| *turn > 0.0) || turns.iter().all(|turn| *turn < 0.0)
    }
}
