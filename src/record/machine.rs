//! A machine that is being put together: its brief, its roles and what is planned for or fitted in it.

use serde::{Deserialize, Serialize};

use super::{Attachment, FaultCaseFile, Id, Kind, Moment, PartId, PhotoFile, Proof, Reading, When};
use crate::trade::Span;

/// The key of a [`Machine`].
pub type MachineId = Id<Machine>;

crate::words! {
    /// What a machine should be for its time.
    Standing {
        Modest = "modest", "Modest for its time";
        Typical = "typical", "Typical of its time";
        Best = "best", "The best that money bought";
    }
}

/// A machine's brief.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Machine {
    pub id: MachineId,
    /// What people call it; unique in the logbook.
    pub name: String,
    /// What it is for, in words.
    pub purpose: String,
    /// First date that its parts may be of; unknown for no bound.
    pub window_from: When,
    /// Last date that its parts may be of; unknown for no bound.
    pub window_to: When,
    pub standing: Standing,
    /// 1 is the most urgent; 0 when not told.
    pub priority: u32,
    pub note: String,
}

impl Machine {
    /// The window of dates it is true to; `None` while either end is open.
    pub fn window(&self) -> Option<Span> {
        let (from, to) = (self.window_from.span()?, self.window_to.span()?);
        (from.first <= to.last).then(|| Span::new(from.first, to.last))
    }
}

/// The key of a [`Role`].
pub type RoleId = Id<Role>;

/// A place in a machine that a kind of part fills.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Role {
    pub id: RoleId,
    pub machine: MachineId,
    pub kind: Kind,
    /// What people call it ("boot disk"); empty for the kind's own label.
    pub name: String,
    pub required: bool,
    /// How many parts it takes, 1 or more.
    pub count: u32,
    pub note: String,
    /// Other kinds that fill it as well: a flash-card adapter in a disk's place.
    #[serde(default)]
    pub or_kinds: Vec<Kind>,
}

impl Role {
    /// Whether a part of this kind fills it.
    pub fn takes(&self, kind: Kind) -> bool {
        self.kind == kind || self.or_kinds.contains(&kind)
    }

    /// Every kind that fills it, its own first.
    pub fn kinds(&self) -> impl Iterator<Item = Kind> {
        std::iter::once(self.kind).chain(self.or_kinds.iter().copied().filter(|kind| *kind != self.kind))
    }
}

/// The key of a [`Placement`].
pub type PlacementId = Id<Placement>;

/// A plan: this part is meant for this role.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Placement {
    pub id: PlacementId,
    pub machine: MachineId,
    pub role: RoleId,
    pub part: PartId,
    /// Kept where it is by any later proposal.
    pub pinned: bool,
    pub planned: Moment,
    pub reason: String,
}

/// The key of a [`Fitting`].
pub type FittingId = Id<Fitting>;

/// A part was fitted in a machine, and perhaps taken out again.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Fitting {
    pub id: FittingId,
    pub machine: MachineId,
    pub role: Option<RoleId>,
    pub part: PartId,
    pub fitted: Moment,
    pub removed: Option<Moment>,
    pub note: String,
}

/// The key of a [`PowerOn`].
pub type PowerOnId = Id<PowerOn>;

crate::words! {
    /// How a power-on went.
    PowerOnResult {
        Well = "well", "Went well";
        Faulty = "faulty", "Something was wrong";
        Stopped = "stopped", "Switched off at once";
    }
}

/// Power was applied to a machine, on a dated evening.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PowerOn {
    pub id: PowerOnId,
    pub machine: MachineId,
    pub switched: Moment,
    /// What was fitted.
    pub configuration: String,
    /// Jumpers and setup.
    pub settings: String,
    /// Order of steps, and readings on the way.
    pub steps: String,
    pub result: PowerOnResult,
    /// What happened.
    pub happened: String,
    pub who: String,
}

/// A machine with all that hangs on it.
#[derive(Clone, Debug, PartialEq)]
pub struct MachineFile {
    pub machine: Machine,
    pub roles: Vec<Role>,
    pub placements: Vec<Placement>,
    pub fittings: Vec<Fitting>,
    pub power_ons: Vec<PowerOn>,
    pub proofs: Vec<Proof>,
    pub readings: Vec<Reading>,
    pub cases: Vec<FaultCaseFile>,
    pub photos: Vec<PhotoFile>,
    pub attachments: Vec<Attachment>,
}

impl MachineFile {
    /// A machine that nothing hangs on yet.
    pub fn new(machine: Machine) -> Self {
        Self {
            machine,
            roles: Vec::new(),
            placements: Vec::new(),
            fittings: Vec::new(),
            power_ons: Vec::new(),
            proofs: Vec::new(),
            readings: Vec::new(),
            cases: Vec::new(),
            photos: Vec::new(),
            attachments: Vec::new(),
        }
    }

    /// The first role that a part of this kind fills: one of its own kind before one that takes it too.
    pub fn role_for(&self, kind: Kind) -> Option<&Role> {
        let own = self.roles.iter().find(|role| role.kind == kind);
        own.or_else(|| self.roles.iter().find(|role| role.takes(kind)))
    }

    /// Fittings that hold now.
    pub fn fitted(&self) -> impl Iterator<Item = &Fitting> {
        self.fittings.iter().filter(|fitting| fitting.removed.is_none())
    }

    /// Parts of the machine, fitted ones first, each once: (part, its role, whether it is fitted).
    pub fn parts(&self) -> Vec<(PartId, Option<RoleId>, bool)> {
        let mut parts: Vec<_> = self.fitted().map(|fitting| (fitting.part, fitting.role, true)).collect();
        for placement in &self.placements {
            if parts.iter().all(|(part, ..)| *part != placement.part) {
                parts.push((placement.part, Some(placement.role), false));
            }
        }
        parts
    }
}
