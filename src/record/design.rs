//! What every example of one maker's model and revision shares.

use serde::{Deserialize, Serialize};

use super::{Id, Kind, When};

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
}

/// A design with all that hangs on it.
#[derive(Clone, Debug, PartialEq)]
pub struct DesignFile {
    pub design: Design,
    pub connectors: Vec<DesignConnector>,
    pub figures: Vec<DesignFigure>,
}

impl DesignFile {
    /// A design that nothing hangs on yet.
    pub fn new(design: Design) -> Self {
        Self { design, connectors: Vec::new(), figures: Vec::new() }
    }
}
