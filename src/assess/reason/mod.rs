//! Why a gate holds or power may not be applied: as data, and as one sentence a reason.

mod names;
mod sentence;

use std::sync::Arc;

use super::fit::{self, Because};
use super::making::TrueTo;
use super::outstanding::Job;
use super::proofs::Standing;
use super::unknown_names::NameKind;
use crate::counted;
use crate::record::{
    CapacitorId, CapacitorState, Custody, FaultCaseId, Figure, FindingId, Hold, MachineId, Moment, PartId, PowerOnId,
    ReadingId, RoleId, WorkId, WorkState,
};
use crate::rules::{Paper, PowerEffect, ProofRule, Question};

pub(in crate::assess) use names::lower_first;
pub use names::{finding_name, finding_said, machine_name, part_name, role_name, work_name};

/// One reason. Ids lead back to what it is about.
#[derive(Clone, Debug)]
pub enum Reason {
    /// A required role has `missing` parts too few.
    RoleEmpty { machine: MachineId, role: RoleId, missing: u32 },
    /// More parts are fitted in or planned for a role than it takes.
    RoleCrowded { machine: MachineId, role: RoleId, over: u32 },
    /// A part of another kind than the role's.
    WrongKind { machine: MachineId, role: RoleId, part: PartId },
    /// In a role, and nobody in the machine offers what it plugs into.
    PluggedNowhere { machine: MachineId, role: RoleId, part: PartId },
    /// Planned, not yet fitted.
    PlannedOnly { part: PartId, role: Option<RoleId> },
    /// Planned here, fitted in another machine.
    FittedElsewhere { part: PartId, machine: MachineId },
    /// Planned for another machine too.
    PlannedElsewhere { part: PartId, machine: MachineId },
    /// Not in the workshop.
    Away { part: PartId, custody: Custody },
    /// `missing` connectors that the part needs are offered by none; not known while another part's are not known.
    NeedUnmet { part: PartId, connector: Box<str>, missing: u32, is_certain: bool },
    /// The part's design, or its connectors, are not known.
    ConnectorsUnknown { part: PartId },
    /// What else of fit holds, is not known, or is worth knowing.
    Fit(Because),
    /// So many figures are missing by which the rest of fit would be judged.
    FiguresMissing { machine: MachineId, figures: u32 },
    /// Made outside the machine's window, or by its design's years only, or nobody knows when. Holds only where it is
    /// apart from the window and not openly a modern replacement.
    Window { part: PartId, true_to: TrueTo, is_modern: bool },
    /// Outstanding work. `task` is its place in the part's list.
    Work { part: PartId, task: u16, job: Job, hold: Hold, state: WorkState, effect: PowerEffect },
    /// An open finding.
    Finding { part: PartId, finding: FindingId, effect: PowerEffect },
    /// A finding that is watched or accepted.
    Decided { part: PartId, finding: FindingId, effect: PowerEffect },
    /// Work that was waived.
    Waived { part: PartId, work: WorkId, effect: PowerEffect },
    /// Work in the restorer's own words of which nobody has said whether it touched anything electrical.
    TouchUnstated { part: PartId, work: WorkId },
    /// Work in the restorer's own words after which nobody has looked at the part or proven it.
    WorkedSince { part: PartId, work: WorkId },
    /// Two parts of a machine are not of the same plug, by what was seen.
    AnswersApart { part: PartId, question: Arc<Question>, other: PartId },
    /// A record of the part, or of its design, has a name that no table holds: what it means nobody knows.
    UnknownName { part: PartId, kind: NameKind, name: Box<str> },
    /// The design of a board or supply tells connectors, but not the plug between the two.
    PlugUntold { part: PartId },
    /// An open finding that no rule and nobody has decided any work for.
    Undecided { part: PartId, finding: FindingId },
    /// Kept apart.
    KeptApart { part: PartId },
    /// Never surveyed.
    Unsurveyed { part: PartId },
    /// A question about something that could hurt has no answer; `tried` is when somebody looked and could not tell.
    NotLooked { part: PartId, question: Arc<Question>, tried: Option<Moment> },
    /// What the last survey answered speaks against power, and no finding has followed it up. `said` is the answer's
    /// place in the question's list.
    AnswerSays { part: PartId, question: Arc<Question>, said: usize, effect: PowerEffect },
    /// Somebody said that the question does not apply.
    SaidNotToApply { part: PartId, question: Arc<Question>, why: Box<str>, effect: PowerEffect },
    /// A capacitor that is bad or was measured out of its limits, and that no finding has followed up.
    CapacitorState { part: PartId, position: CapacitorId, state: CapacitorState, effect: PowerEffect },
    /// A reading of a part or a machine out of its limits.
    ReadingOut { part: Option<PartId>, machine: Option<MachineId>, reading: ReadingId, effect: PowerEffect },
    /// Nobody has told what the part takes or gives.
    FigureUntold { part: PartId, figure: Figure },
    /// A proof of a part that is asked for does not hold.
    PartProof { part: PartId, proof: Arc<ProofRule>, standing: Standing },
    /// A proof of the machine that is asked for does not hold.
    MachineProof { machine: MachineId, proof: Arc<ProofRule>, standing: Standing },
    /// No part is fitted or planned yet.
    NothingPlaced { machine: MachineId },
    /// No power supply is fitted or planned.
    SupplyMissing { machine: MachineId },
    /// No mainboard is fitted or planned.
    BoardMissing { machine: MachineId },
    /// The supply or the mainboard is only planned.
    EssentialPlanned { part: PartId },
    /// A fault that is looked for, or was not found, on a part or else on the machine.
    FaultOpen { machine: Option<MachineId>, part: Option<PartId>, case: FaultCaseId, effect: PowerEffect },
    /// The last power-on did not go well.
    PowerOnWent { machine: MachineId, power_on: PowerOnId, effect: PowerEffect },
    /// A paper that the last gate asks for.
    PaperMissing { part: PartId, paper: Paper },
}

crate::words! {
    /// What a reason does to an answer.
    Weight {
        Remark = "remark", "To know";
        NotKnown = "not_known", "Not known";
        Holds = "holds", "Holds";
    }
}

impl Reason {
    /// Whether it holds, leaves the answer not known, or is only worth knowing.
    pub fn weight(&self) -> Weight {
        match self {
            Self::Window { true_to: TrueTo::Apart { .. }, is_modern: false, .. } => Weight::Holds,
            Self::Window { .. }
            | Self::RoleCrowded { .. }
            | Self::PlannedElsewhere { .. }
            | Self::FiguresMissing { .. } => Weight::Remark,
            Self::Fit(because) => match because.verdict() {
                fit::Verdict::No => Weight::Holds,
                fit::Verdict::NotKnown => Weight::NotKnown,
                fit::Verdict::Caveat | fit::Verdict::Fits => Weight::Remark,
            },
            Self::NeedUnmet { is_certain, .. } if !is_certain => Weight::NotKnown,
            Self::PartProof { standing, .. } | Self::MachineProof { standing, .. } if !standing.has_failed() => {
                Weight::NotKnown
            }
            Self::ConnectorsUnknown { .. }
            | Self::Unsurveyed { .. }
            | Self::NotLooked { .. }
            | Self::NothingPlaced { .. }
            | Self::SupplyMissing { .. }
            | Self::BoardMissing { .. } => Weight::NotKnown,
            _ => Weight::Holds,
        }
    }

    /// The part that it is about, where it is about one.
    pub fn part(&self) -> Option<PartId> {
        match self {
            Self::WrongKind { part, .. }
            | Self::PluggedNowhere { part, .. }
            | Self::PlannedOnly { part, .. }
            | Self::FittedElsewhere { part, .. }
            | Self::PlannedElsewhere { part, .. }
            | Self::Away { part, .. }
            | Self::NeedUnmet { part, .. }
            | Self::ConnectorsUnknown { part }
            | Self::Window { part, .. }
            | Self::Work { part, .. }
            | Self::Undecided { part, .. }
            | Self::KeptApart { part }
            | Self::Unsurveyed { part }
            | Self::NotLooked { part, .. }
            | Self::Finding { part, .. }
            | Self::Decided { part, .. }
            | Self::Waived { part, .. }
            | Self::TouchUnstated { part, .. }
            | Self::WorkedSince { part, .. }
            | Self::AnswersApart { part, .. }
            | Self::UnknownName { part, .. }
            | Self::PlugUntold { part }
            | Self::AnswerSays { part, .. }
            | Self::SaidNotToApply { part, .. }
            | Self::CapacitorState { part, .. }
            | Self::FigureUntold { part, .. }
            | Self::EssentialPlanned { part }
            | Self::PartProof { part, .. }
            | Self::PaperMissing { part, .. } => Some(*part),
            Self::FaultOpen { part, .. } | Self::ReadingOut { part, .. } => *part,
            Self::Fit(because) => because.part(),
            Self::FiguresMissing { .. }
            | Self::RoleEmpty { .. }
            | Self::RoleCrowded { .. }
            | Self::MachineProof { .. }
            | Self::NothingPlaced { .. }
            | Self::BoardMissing { .. }
            | Self::PowerOnWent { .. }
            | Self::SupplyMissing { .. } => None,
        }
    }
}

/// "3 reasons", for a heading.
pub fn counted_reasons(count: usize) -> String {
    counted!("{count} reason", "{count} reasons", count)
}
