//! A piece of work on a part, and its life.

use serde::{Deserialize, Serialize};

use super::{FindingId, Id, MaterialId, Moment, PartId};

/// The key of a [`Work`].
pub type WorkId = Id<Work>;

crate::words! {
    /// What a piece of work holds up until it is done, strictest first.
    Hold {
        Storage = "storage", "Storage";
        Power = "power", "Power";
        Fitting = "fitting", "Fitting";
        Ready = "ready", "Ready";
        Looks = "looks", "Looks only";
    }
}

crate::words! {
    /// The distinction of IPC-7711/7721, and work that changes nothing on the assembly.
    Nature {
        Care = "care", "Care";
        Rework = "rework", "Rework";
        Repair = "repair", "Repair";
        Modification = "modification", "Modification";
    }
}

crate::words! {
    /// What work in the restorer's own words touched: proofs that it may have voided hang on it.
    #[derive(Default)]
    Touches {
        /// Nobody said; taken as electrical, and asked about.
        #[default]
        Unstated = "unstated", "Not stated";
        Electrical = "electrical", "Something electrical";
        NothingElectrical = "nothing_electrical", "Nothing electrical";
    }
}

crate::words! {
    /// Who may do it.
    Competence {
        Oneself = "oneself", "Yourself";
        WithHelp = "with_help", "With help";
        SendOut = "send_out", "Send out";
    }
}

crate::words! {
    /// Where a piece of work stands in its life.
    ///
    /// | from | to | by |
    /// |---|---|---|
    /// | – | open | a finding by rule (kept unwritten until touched), or by hand |
    /// | open, doing | waiting | materials are missing |
    /// | open, waiting | doing | begun |
    /// | open, waiting, doing | done | with evidence: date, who, minutes, what was used |
    /// | open, waiting, doing | waived | with a reason |
    /// | open, waiting, doing | failed | with what happened; opens a finding |
    /// | waived, failed, done | open | taken up again |
    WorkState {
        Open = "open", "Open";
        Waiting = "waiting", "Waiting for materials";
        Doing = "doing", "Under way";
        Done = "done", "Done";
        Waived = "waived", "Waived";
        Failed = "failed", "Failed";
    }
}

impl WorkState {
    /// Whether the work is still to be done.
    pub fn is_outstanding(self) -> bool {
        matches!(self, Self::Open | Self::Waiting | Self::Doing)
    }

    /// Whether the part was touched: work that is done, failed or under way.
    pub fn has_touched(self) -> bool {
        matches!(self, Self::Done | Self::Failed | Self::Doing)
    }

    /// Whether the life allows the step from this state to `next`.
    pub fn may_become(self, next: Self) -> bool {
        if self.is_outstanding() { next != Self::Open || self == Self::Open } else { next == Self::Open }
    }
}

/// The key of a [`WorkAfter`].
pub type WorkAfterId = Id<WorkAfter>;

/// An order by hand: a piece of work is done only after another, on the same part or on another one.
///
/// The order that the tables ask for stands beside it; where both would go in a circle the tables' holds.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct WorkAfter {
    pub id: WorkAfterId,
    /// The part that the later piece is on.
    pub part: PartId,
    /// The later piece.
    pub work: WorkId,
    /// The piece that is done first.
    pub after: WorkId,
}

/// The key of a [`MaterialUse`].
pub type MaterialUseId = Id<MaterialUse>;

/// Material that went into a piece of work.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MaterialUse {
    pub id: MaterialUseId,
    /// The part that the piece is on.
    pub part: PartId,
    pub work: WorkId,
    pub material: MaterialId,
    /// In the material's own unit, above 0.
    pub amount: f64,
}

/// A piece of work that somebody has touched: added by hand, begun, done, waived or remarked on.
///
/// Work that follows by rule is keyed by (finding, rule): a waiver or a note survives an edited rule.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Work {
    pub id: WorkId,
    pub part: PartId,
    /// The finding it cures, where it follows by rule.
    pub finding: Option<FindingId>,
    /// Its name in `resources/rules/work.toml`; empty for work in the restorer's own words.
    pub rule: String,
    /// What to do, for work in the restorer's own words.
    pub title: String,
    /// What it holds up, for work in the restorer's own words.
    pub hold: Hold,
    /// What it is by IPC-7711/7721, for work in the restorer's own words.
    pub nature: Nature,
    pub state: WorkState,
    /// When the state was last changed; for done work, when it was done.
    pub changed: Moment,
    /// Who did it.
    pub who: String,
    /// Hands-on minutes it really took.
    pub minutes: Option<u32>,
    /// Materials used, in words.
    pub used: String,
    /// Why it was waived or how it failed.
    pub reason: String,
    /// Whether it can be undone; `None` when nobody said.
    pub reversible: Option<bool>,
    pub note: String,
    /// What it touches, for work in the restorer's own words.
    #[serde(default)]
    pub touches: Touches,
}

impl Work {
    /// Whether it is work in the restorer's own words.
    pub fn is_own(&self) -> bool {
        self.rule.is_empty()
    }
}
