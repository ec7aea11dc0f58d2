//! A capacitor position on a board, and what is seen and measured there.

use serde::{Deserialize, Serialize};

use super::{Id, Moment, PartId};

/// The key of a [`Capacitor`].
pub type CapacitorId = Id<Capacitor>;

crate::words! {
    /// What a capacitor is made of.
    Dielectric {
        WetAluminium = "wet_aluminium", "Wet aluminium";
        BipolarAluminium = "bipolar_aluminium", "Bipolar electrolytic";
        Polymer = "polymer", "Polymer";
        Tantalum = "tantalum", "Tantalum";
        Film = "film", "Film";
        Suppression = "suppression", "Mains suppression";
        Ceramic = "ceramic", "Ceramic";
        Unknown = "unknown", "Not known";
    }
}

impl Dielectric {
    /// Whether it is an aluminium electrolytic with a liquid in it, polar or not: it dries out and leaks.
    pub fn is_wet(self) -> bool {
        matches!(self, Self::WetAluminium | Self::BipolarAluminium)
    }
}

crate::words! {
    /// How it sits on the board.
    Mounting {
        Radial = "radial", "Radial";
        Axial = "axial", "Axial";
        Surface = "surface", "Surface mount";
        SnapIn = "snap_in", "Snap-in";
        Unknown = "unknown", "Not known";
    }
}

crate::words! {
    /// What a capacitor does where it sits.
    CapacitorUse {
        ProcessorSupply = "processor_supply", "Processor supply";
        RailSmoothing = "rail_smoothing", "Smooths a rail";
        SupplyOutput = "supply_output", "Output of a supply";
        MainsReservoir = "mains_reservoir", "Mains reservoir";
        MainsSuppression = "mains_suppression", "Across the mains";
        Coupling = "coupling", "Signal coupling";
        Timing = "timing", "Timing";
        Other = "other", "Something else";
    }
}

crate::words! {
    /// What a look at a capacitor says.
    CapacitorState {
        NotLooked = "not_looked", "Not looked at";
        Sound = "sound", "Sound";
        Bulged = "bulged", "Bulged";
        Leaking = "leaking", "Leaking";
        Burst = "burst", "Burst";
        Cracked = "cracked", "Cracked";
        Missing = "missing", "Missing";
        Reversed = "reversed", "Reversed";
        OutOfLimits = "out_of_limits", "Out of limits";
    }
}

impl CapacitorState {
    /// Whether the capacitor has to be replaced or set right.
    pub fn is_bad(self) -> bool {
        !matches!(self, Self::NotLooked | Self::Sound)
    }
}

/// A position on a board. What it carried when logged stands here; every later look is a [`CapacitorLook`].
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Capacitor {
    pub id: CapacitorId,
    pub part: PartId,
    /// As printed on the board ("C12"); may be empty in a group that was only counted.
    pub designator: String,
    /// Where or what for, in words: "near the processor".
    pub place_on_part: String,
    /// Microfarads, above 0; `None` when it cannot be read.
    pub capacitance_uf: Option<f64>,
    /// Rated volts, above 0.
    pub voltage_v: Option<f64>,
    /// Upper category temperature, °C.
    pub temperature_c: Option<f64>,
    pub diameter_mm: Option<f64>,
    pub height_mm: Option<f64>,
    pub pitch_mm: Option<f64>,
    pub dielectric: Dielectric,
    pub mounting: Mounting,
    /// Maker's series as printed.
    pub series: String,
    /// How polarity is marked here.
    pub polarity: String,
    pub logged: Moment,
    /// What was seen when it was logged.
    pub state: CapacitorState,
    /// What it does; `None` when not told.
    pub function: Option<CapacitorUse>,
    /// Whether the original is of low series resistance; `None` when not known.
    pub low_esr: Option<bool>,
}

/// The key of a [`CapacitorLook`].
pub type CapacitorLookId = Id<CapacitorLook>;

/// A later look at a position, a measurement, or its replacement. Never edited; a later one holds.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CapacitorLook {
    pub id: CapacitorLookId,
    pub capacitor: CapacitorId,
    pub looked: Moment,
    pub state: CapacitorState,
    /// Microfarads as measured.
    pub measured_uf: Option<f64>,
    /// Equivalent series resistance as measured, milliohms.
    pub esr_mohm: Option<f64>,
    /// Leakage at rated voltage, microamperes.
    pub leakage_ua: Option<f64>,
    /// What was fitted now, where this look is a replacement; empty otherwise.
    pub replaced_by: String,
    pub note: String,
}

/// A position with its later looks, oldest first.
#[derive(Clone, Debug, PartialEq)]
pub struct CapacitorFile {
    pub position: Capacitor,
    pub looks: Vec<CapacitorLook>,
}

impl Capacitor {
    /// What it is made of, as far as all that is logged of it tells: what has no polarity is no polar electrolytic.
    pub fn made_of(&self) -> Dielectric {
        let is_open = matches!(self.dielectric, Dielectric::WetAluminium | Dielectric::Unknown);
        if is_open && has_no_polarity(&self.polarity) { Dielectric::BipolarAluminium } else { self.dielectric }
    }
}

/// Whether words on the polarity of an electrolytic say that it has none.
fn has_no_polarity(polarity: &str) -> bool {
    let lower = polarity.to_lowercase();
    lower.split(|c: char| !c.is_alphanumeric() && c != '-').any(|word| {
        matches!(
            word,
            "np" | "bp"
                | "nonpolar"
                | "non-polar"
                | "unpolar"
                | "unpolarised"
                | "unpolarized"
                | "non-polarised"
                | "non-polarized"
                | "bipolar"
                | "bi-polar"
        )
    })
}

impl CapacitorFile {
    /// The state that holds now.
    pub fn state(&self) -> CapacitorState {
        self.looks.last().map_or(self.position.state, |look| look.state)
    }

    /// When it was last looked at.
    pub fn looked(&self) -> Moment {
        self.looks.last().map_or(self.position.logged, |look| look.looked)
    }

    /// Whether what sits there now is not what was logged.
    pub fn is_replaced(&self) -> bool {
        self.looks.iter().any(|look| !look.replaced_by.is_empty())
    }
}
