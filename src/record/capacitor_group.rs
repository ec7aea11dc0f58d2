//! Capacitor positions that are alike, entered in one go: six of one value, near the processor, all sound.

use std::fmt::Write as _;

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use super::{Capacitor, CapacitorState, CapacitorUse, Dielectric, Id, Moment, Mounting, PartId, Word as _};
use crate::{counted, text};

/// The most positions that one group may stand for; no board of the trade carries more of one value.
pub const MOST_POSITIONS: usize = 200;

/// Positions that are alike. Figures that were not told are `None`; bounds are those of
/// [`read_phrase`](super::read_phrase).
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct CapacitorGroup {
    /// How many positions, 1 to [`MOST_POSITIONS`].
    pub count: usize,
    /// As printed on the board, as many as positions; empty when they were only counted.
    pub designators: Vec<String>,
    /// Microfarads.
    pub capacitance_uf: Option<f64>,
    /// Rated volts.
    pub voltage_v: Option<f64>,
    /// Upper category temperature, °C.
    pub temperature_c: Option<f64>,
    pub diameter_mm: Option<f64>,
    pub height_mm: Option<f64>,
    /// Lead spacing.
    pub pitch_mm: Option<f64>,
    pub dielectric: Dielectric,
    pub mounting: Mounting,
    /// Maker's series as printed; empty when not told.
    pub series: String,
    /// Where on the part, in words: "near the processor".
    pub place_on_part: String,
    pub state: CapacitorState,
    /// How polarity is marked; empty when not told.
    #[serde(default)]
    pub polarity: String,
    #[serde(default)]
    pub function: Option<CapacitorUse>,
    #[serde(default)]
    pub low_esr: Option<bool>,
}

impl CapacitorGroup {
    /// One position of which nothing is told.
    pub fn new() -> Self {
        Self {
            count: 1,
            designators: Vec::new(),
            capacitance_uf: None,
            voltage_v: None,
            temperature_c: None,
            diameter_mm: None,
            height_mm: None,
            pitch_mm: None,
            dielectric: Dielectric::Unknown,
            mounting: Mounting::Unknown,
            series: String::new(),
            place_on_part: String::new(),
            state: CapacitorState::NotLooked,
            polarity: String::new(),
            function: None,
            low_esr: None,
        }
    }

    /// Each position of the group, to be written.
    pub fn positions(&self, part: PartId, logged: Moment, ids: &mut dyn FnMut() -> Uuid) -> Vec<Capacitor> {
        (0..self.count)
            .map(|at| Capacitor {
                id: Id::from_uuid(ids()),
                part,
                designator: self.designators.get(at).cloned().unwrap_or_default(),
                place_on_part: self.place_on_part.clone(),
                capacitance_uf: self.capacitance_uf,
                voltage_v: self.voltage_v,
                temperature_c: self.temperature_c,
                diameter_mm: self.diameter_mm,
                height_mm: self.height_mm,
                pitch_mm: self.pitch_mm,
                dielectric: self.dielectric,
                mounting: self.mounting,
                series: self.series.clone(),
                polarity: self.polarity.clone(),
                logged,
                state: self.state,
                function: self.function,
                low_esr: self.low_esr,
            })
            .collect()
    }

    /// What was understood, for a person: "6 positions, 1000 µF, 6.3 V, Ø 8 mm, near the processor: Sound".
    pub fn said(&self) -> String {
        let mut said = counted!("{count} position", "{count} positions", self.count);
        if let (Some(first), Some(last)) = (self.designators.first(), self.designators.last()) {
            let names =
                if self.designators.len() > 3 { format!("{first} … {last}") } else { self.designators.join(", ") };
            let _ = write!(said, " ({names})");
        }
        let mut and = |word: String| {
            let _ = write!(said, ", {word}");
        };
        if let Some(uf) = self.capacitance_uf {
            and(format!("{uf} µF"));
        }
        if let Some(volts) = self.voltage_v {
            and(format!("{volts} V"));
        }
        match (self.diameter_mm, self.height_mm) {
            (Some(diameter), Some(height)) => and(format!("Ø {diameter} × {height} mm")),
            (Some(diameter), None) => and(format!("Ø {diameter} mm")),
            (None, Some(height)) => and(text!("{mm} mm high", mm = height)),
            (None, None) => {}
        }
        if let Some(pitch) = self.pitch_mm {
            and(text!("{mm} mm between the leads", mm = pitch));
        }
        if let Some(celsius) = self.temperature_c {
            and(format!("{celsius} °C"));
        }
        if self.dielectric != Dielectric::Unknown {
            and(self.dielectric.label().to_lowercase());
        }
        if self.mounting != Mounting::Unknown {
            and(self.mounting.label().to_lowercase());
        }
        if !self.series.is_empty() {
            and(text!("series {series}", series = self.series));
        }
        if !self.place_on_part.is_empty() {
            and(self.place_on_part.clone());
        }
        format!("{said}: {}", self.state.label().to_lowercase())
    }
}

impl Default for CapacitorGroup {
    fn default() -> Self {
        Self::new()
    }
}
