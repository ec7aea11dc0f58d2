//! Where on a part's sheet something is told, so that what is missed for an answer leads to where it can be given.

use super::section::Section;
use crate::assess::{Reason, TaskKey};

/// A spot on a part's sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Spot {
    Section(Section),
    /// A piece of work with its guide.
    Task(TaskKey),
    /// A round of questions, begun where none is open.
    Survey,
    /// What the part's design shares: connectors, figures, years.
    Design,
}

impl Spot {
    /// Where a reason is settled.
    pub fn of(reason: &Reason) -> Self {
        match reason {
            Reason::ConnectorsUnknown { .. } | Reason::NeedUnmet { .. } => Self::Design,
            Reason::Unsurveyed { .. } | Reason::NotLooked { .. } => Self::Survey,
            Reason::Undecided { .. } => Self::Section(Section::Condition),
            Reason::Work { .. } => Self::Section(Section::Work),
            Reason::PartProof { .. } => Self::Section(Section::Proofs),
            Reason::FaultOpen { .. } => Self::Section(Section::Faults),
            Reason::Away { .. } => Self::Section(Section::Custody),
            Reason::Window { .. } => Self::Section(Section::Made),
            Reason::PaperMissing { .. } => Self::Section(Section::Photographs),
            _ => Self::Section(Section::Identity),
        }
    }
}
