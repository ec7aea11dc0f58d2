//! A test that shows a part or a machine works.

use serde::{Deserialize, Serialize};

use super::{Id, MachineId, Moment, PartId};

/// The key of a [`Proof`].
pub type ProofId = Id<Proof>;

crate::words! {
    /// How a proof came out.
    ProofResult {
        Passed = "passed", "Passed";
        Failed = "failed", "Failed";
        Undecided = "undecided", "Undecided";
    }
}

/// A test that was run. It counts while nothing later has voided it and it has not grown stale.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Proof {
    pub id: ProofId,
    pub part: Option<PartId>,
    pub machine: Option<MachineId>,
    /// The test's name in `resources/rules/proofs.toml`.
    pub test: String,
    pub run: Moment,
    /// The rig or machine it was run in.
    pub rig: String,
    pub minutes: Option<u32>,
    /// What had to hold for a pass.
    pub criterion: String,
    pub result: ProofResult,
    pub who: String,
    pub note: String,
}
