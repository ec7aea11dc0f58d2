//! What every example of one maker's model and revision shares.

use serde::{Deserialize, Serialize};

use super::{Capacitor, CapacitorState, CapacitorUse, Dielectric, Id, Kind, Moment, Mounting, PartId, When};

/// The key of a [`Design`].
pub type DesignId = Id<Design>;

/// A maker's model and revision; logging a second example of a known design costs a few keystrokes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Design {
    pub id: DesignId,
    pub kind: Kind,
    pub maker: String,
    pub model: String,
    pub revision: String,
    /// When the first examples were sold: bounds a part's making from below.
    pub introduced: When,
    /// When the last examples were made: bounds a part's making from above.
    pub discontinued: When,
    pub note: String,
}

impl Design {
    /// Maker, model and revision in one line.
    pub fn title(&self) -> String {
        [&self.maker, &self.model, &self.revision]
            .into_iter()
            .filter(|word| !word.is_empty())
            .map(String::as_str)
            .collect::<Vec<_>>()
            .join(" ")
    }
}

crate::words! {
    /// Whether a design gives a connector to others or asks for one.
    Side {
        Offers = "offers", "offers";
        Needs = "needs", "needs";
    }
}

/// The key of a [`DesignConnector`].
pub type DesignConnectorId = Id<DesignConnector>;

/// Connectors that a design offers or needs, by their name in the connector table.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct DesignConnector {
    pub id: DesignConnectorId,
    pub design: DesignId,
    pub side: Side,
    /// The connector's name in `resources/rules/connectors.toml`.
    pub connector: String,
    /// How many, 1 or more.
    pub count: u32,
    /// Which one, or what is special about it.
    pub note: String,
}

/// The key of a [`DesignFigure`].
pub type DesignFigureId = Id<DesignFigure>;

/// A figure of a design: a clock, a voltage, a current, a capacity.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct DesignFigure {
    pub id: DesignFigureId,
    pub design: DesignId,
    /// What is told, with its unit in the name: `bus_clock_mhz`, `core_voltage_v`, `current_5v_a`.
    pub figure: String,
    pub value: f64,
    /// Where the figure was read.
    pub source: String,
    /// Of a board's divider, the bus clock that it belongs to, MHz; `None` for any.
    #[serde(default)]
    pub at_bus_mhz: Option<f64>,
}

/// The key of a [`DesignCapacitor`].
pub type DesignCapacitorId = Id<DesignCapacitor>;

/// A capacitor position as the design has it: kept once, and grown with each part that is logged. Fields are those of
/// a part's [`Capacitor`].
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct DesignCapacitor {
    pub id: DesignCapacitorId,
    pub design: DesignId,
    /// As printed on the board; not empty, since by it the positions of two boards are told to be the same.
    pub designator: String,
    pub place_on_part: String,
    pub capacitance_uf: Option<f64>,
    pub voltage_v: Option<f64>,
    pub temperature_c: Option<f64>,
    pub diameter_mm: Option<f64>,
    pub height_mm: Option<f64>,
    pub pitch_mm: Option<f64>,
    pub dielectric: Dielectric,
    pub mounting: Mounting,
    pub series: String,
    pub polarity: String,
    pub function: Option<CapacitorUse>,
    pub low_esr: Option<bool>,
}

impl DesignCapacitor {
    /// A part's position as one of its design.
    pub fn of(position: &Capacitor, design: DesignId, id: DesignCapacitorId) -> Self {
        let Capacitor { capacitance_uf, voltage_v, temperature_c, diameter_mm, height_mm, pitch_mm, .. } = *position;
        let Capacitor { dielectric, mounting, function, low_esr, .. } = *position;
        Self {
            id,
            design,
            designator: position.designator.clone(),
            place_on_part: position.place_on_part.clone(),
            capacitance_uf,
            voltage_v,
            temperature_c,
            diameter_mm,
            height_mm,
            pitch_mm,
            dielectric,
            mounting,
            series: position.series.clone(),
            polarity: position.polarity.clone(),
            function,
            low_esr,
        }
    }
}

impl DesignCapacitor {
    /// The position on a part that has not been looked at yet; its key and moment are still to be given.
    pub fn on(&self, part: PartId) -> Capacitor {
        let Self { capacitance_uf, voltage_v, temperature_c, diameter_mm, height_mm, pitch_mm, .. } = *self;
        let Self { dielectric, mounting, function, low_esr, .. } = *self;
        Capacitor {
            id: Id::from_uuid(uuid::Uuid::nil()),
            part,
            designator: self.designator.clone(),
            place_on_part: self.place_on_part.clone(),
            capacitance_uf,
            voltage_v,
            temperature_c,
            diameter_mm,
            height_mm,
            pitch_mm,
            dielectric,
            mounting,
            series: self.series.clone(),
            polarity: self.polarity.clone(),
            logged: Moment::default(),
            state: CapacitorState::NotLooked,
            function,
            low_esr,
        }
    }
}

/// A design with all that hangs on it.
#[derive(Clone, Debug, PartialEq)]
pub struct DesignFile {
    pub design: Design,
    pub connectors: Vec<DesignConnector>,
    pub figures: Vec<DesignFigure>,
    pub capacitors: Vec<DesignCapacitor>,
}

impl DesignFile {
    /// A design that nothing hangs on yet.
    pub fn new(design: Design) -> Self {
        Self { design, connectors: Vec::new(), figures: Vec::new(), capacitors: Vec::new() }
    }
}
