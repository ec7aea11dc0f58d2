//! What each reason does to the answer on power: one exhaustive match, so that no new reason can be forgotten.

use crate::assess::proofs::Standing;
use crate::assess::reason::{Reason, Weight};
use crate::record::{Hold, Severity};
use crate::rules::PowerEffect;

impl Reason {
    /// What it does to "may power be applied?".
    pub fn power_effect(&self) -> PowerEffect {
        match self {
            Self::Work { effect, .. }
            | Self::Finding { effect, .. }
            | Self::Decided { effect, .. }
            | Self::Waived { effect, .. }
            | Self::AnswerSays { effect, .. }
            | Self::CapacitorState { effect, .. }
            | Self::ReadingOut { effect, .. }
            | Self::SaidNotToApply { effect, .. }
            | Self::FaultOpen { effect, .. }
            | Self::PowerOnWent { effect, .. } => *effect,
            Self::NotLooked { question, .. } => question.power,
            Self::PartProof { proof, standing, .. } | Self::MachineProof { proof, standing, .. } => match standing {
                Standing::Failed | Standing::OutOfBounds { .. } => {
                    proof.power_when_failed.map_or(proof.power, |effect| effect.max(proof.power))
                }
                // What nobody could decide, or has tested again, is not known where a failure would say no.
                Standing::Undecided | Standing::Repaired { .. } if proof.power_when_failed == Some(PowerEffect::No) => {
                    PowerEffect::NotKnown
                }
                Standing::Undecided | Standing::Repaired { .. } if proof.power_when_failed.is_some() => {
                    PowerEffect::Remark.max(proof.power)
                }
                Standing::NeverRun
                | Standing::Undecided
                | Standing::Repaired { .. }
                | Standing::InFuture
                | Standing::Voided { .. }
                | Standing::Changed { .. }
                | Standing::Stale { .. } => proof.power,
                Standing::Good { .. } => PowerEffect::Nothing,
            },
            Self::Fit(because) => because.power_effect(),
            Self::KeptApart { .. } | Self::Away { .. } | Self::AnswersApart { .. } => PowerEffect::No,
            Self::Unsurveyed { .. }
            | Self::TouchUnstated { .. }
            | Self::WorkedSince { .. }
            | Self::PlugUntold { .. }
            | Self::UnknownName { .. }
            | Self::FigureUntold { .. }
            | Self::NothingPlaced { .. }
            | Self::SupplyMissing { .. }
            | Self::BoardMissing { .. }
            | Self::EssentialPlanned { .. }
            | Self::ConnectorsUnknown { .. }
            | Self::NeedUnmet { .. }
            | Self::Undecided { .. } => PowerEffect::NotKnown,
            Self::PlannedOnly { .. } => PowerEffect::Remark,
            Self::RoleEmpty { .. }
            | Self::RoleCrowded { .. }
            | Self::WrongKind { .. }
            | Self::FittedElsewhere { .. }
            | Self::PlannedElsewhere { .. }
            | Self::FiguresMissing { .. }
            | Self::Window { .. }
            | Self::PluggedNowhere { .. }
            | Self::PaperMissing { .. } => PowerEffect::Nothing,
        }
    }
}

impl From<PowerEffect> for Weight {
    fn from(effect: PowerEffect) -> Self {
        match effect {
            PowerEffect::No => Self::Holds,
            PowerEffect::NotKnown => Self::NotKnown,
            PowerEffect::Remark | PowerEffect::Nothing => Self::Remark,
        }
    }
}

/// What work in the restorer's own words, or of a rule that no table has, does while it is to be done.
pub(in crate::assess) fn of_hold(hold: Hold) -> PowerEffect {
    match hold {
        Hold::Storage | Hold::Power => PowerEffect::No,
        Hold::Fitting | Hold::Ready => PowerEffect::Remark,
        Hold::Looks => PowerEffect::Nothing,
    }
}

/// What a finding in the restorer's own words does while it is open.
pub(super) fn of_severity(severity: Severity) -> PowerEffect {
    match severity {
        Severity::Slight => PowerEffect::Remark,
        Severity::Plain => PowerEffect::NotKnown,
        Severity::Grave => PowerEffect::No,
    }
}

/// What is left of an effect that somebody has decided to live with (watched, accepted, waived): it is to be known. The
/// gravest is never a yes.
pub(super) fn decided(effect: PowerEffect, severity: Severity) -> PowerEffect {
    match (effect, severity) {
        (PowerEffect::No, Severity::Grave) => PowerEffect::NotKnown,
        (PowerEffect::Nothing, Severity::Slight | Severity::Plain) => PowerEffect::Nothing,
        _ => PowerEffect::Remark,
    }
}
