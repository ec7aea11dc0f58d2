//! Fault-finding: a symptom, and the trials made on it.

use serde::{Deserialize, Serialize};

use super::{Id, MachineId, Moment, PartId};

/// The key of a [`FaultCase`].
pub type FaultCaseId = Id<FaultCase>;

crate::words! {
    /// How a case stands.
    CaseState {
        Open = "open", "Open";
        Found = "found", "Fault found";
        NotReproduced = "not_reproduced", "Not reproduced";
        GivenUp = "given_up", "Given up";
    }
}

/// A symptom on a part or a machine.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FaultCase {
    pub id: FaultCaseId,
    pub part: Option<PartId>,
    pub machine: Option<MachineId>,
    pub opened: Moment,
    /// What was seen, heard or smelt: "no picture, three beeps".
    pub symptom: String,
    pub state: CaseState,
    pub outcome: String,
}

/// The key of a [`Trial`].
pub type TrialId = Id<Trial>;

crate::words! {
    /// What a trial showed.
    TrialResult {
        SymptomStays = "symptom_stays", "Symptom stays";
        SymptomGone = "symptom_gone", "Symptom gone";
        SymptomChanged = "symptom_changed", "Symptom changed";
        Undecided = "undecided", "Undecided";
    }
}

/// One thing tried, with the configuration it was tried in. Never edited.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Trial {
    pub id: TrialId,
    pub case: FaultCaseId,
    pub tried: Moment,
    /// What was fitted and set, in words.
    pub configuration: String,
    /// What was done.
    pub step: String,
    /// The part taken out.
    pub suspect: Option<PartId>,
    /// The known-good part put in its place.
    pub known_good: Option<PartId>,
    pub result: TrialResult,
    pub note: String,
    /// Codes heard or seen: "1 long 2 short", "0D on the test card".
    #[serde(default)]
    pub codes: String,
}

/// A case with its trials, oldest first.
#[derive(Clone, Debug, PartialEq)]
pub struct FaultCaseFile {
    pub case: FaultCase,
    pub trials: Vec<Trial>,
}
