//! A measured figure, or a setting as found.

use serde::{Deserialize, Serialize};

use super::{Id, MachineId, Moment, PartId, ProofId, WorkId};

/// The key of a [`Reading`].
pub type ReadingId = Id<Reading>;

/// A figure measured on a part or a machine. Never edited; a correction supersedes it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Reading {
    pub id: ReadingId,
    pub part: Option<PartId>,
    pub machine: Option<MachineId>,
    pub measured: Moment,
    /// What was measured: "+5 V rail", "+5 V to ground, unpowered", "cell".
    pub quantity: String,
    pub value: f64,
    /// The unit as written: V, Ω, mV, °C.
    pub unit: String,
    /// Under what load or condition.
    pub condition: String,
    pub who: String,
    pub supersedes: Option<ReadingId>,
    pub note: String,
    /// The proof that it was taken in.
    pub proof: Option<ProofId>,
    /// The work that it shows done.
    pub work: Option<WorkId>,
}

/// The key of a [`Setting`].
pub type SettingId = Id<Setting>;

/// A jumper, switch, firmware version or setup value as found on a day. A later one of the same name holds.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Setting {
    pub id: SettingId,
    pub part: PartId,
    pub found: Moment,
    /// "JP12", "firmware version", "bus clock".
    pub name: String,
    pub value: String,
    /// How its meaning is known: manual, print on the board, guess.
    pub source: String,
}
