//! Where on a part's sheet something is told, so that what is missed for an answer leads to where it can be given.

use super::section::Section;
use crate::assess::{Next, Reason, TaskKey};
use crate::record::{CapacitorId, Figure, FindingId, WorkId};
use crate::rules::Paper;
use crate::window::outbox::View;

/// A spot on a part's sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Spot {
    Section(Section),
    Finding(FindingId),
    /// A capacitor position among those that are alike.
    Capacitor(CapacitorId),
    /// A piece of work with its guide.
    Task(TaskKey),
    /// A record of work, outstanding or done.
    Work(WorkId),
    /// A round of questions, begun where none is open.
    Survey,
    /// What the part's design shares: connectors, figures, years.
    Design,
    /// One figure of the design, ready to be typed.
    Figure(Figure),
}

impl Spot {
    /// Where a reason is settled; `None` at the head of the sheet.
    pub fn of(reason: &Reason) -> Option<Self> {
        Some(match reason {
            Reason::Fit(because) => because.missing().map_or(Self::Design, |(_, figure)| Self::Figure(figure)),
            Reason::ConnectorsUnknown { .. } | Reason::NeedUnmet { .. } => Self::Design,
            Reason::FigureUntold { figure, .. } => Self::Figure(*figure),
            Reason::Unsurveyed { .. }
            | Reason::NotLooked { .. }
            | Reason::AnswerSays { .. }
            | Reason::SaidNotToApply { .. } => Self::Survey,
            Reason::Undecided { .. } | Reason::Finding { .. } | Reason::Decided { .. } => {
                Self::Section(Section::Condition)
            }
            Reason::Work { .. } | Reason::Waived { .. } | Reason::TouchUnstated { .. } => Self::Section(Section::Work),
            Reason::CapacitorState { .. } => Self::Section(Section::Capacitors),
            Reason::ReadingOut { .. } => Self::Section(Section::Readings),
            Reason::PartProof { .. } => Self::Section(Section::Proofs),
            Reason::FaultOpen { .. } => Self::Section(Section::Faults),
            Reason::Away { .. } => Self::Section(Section::Custody),
            Reason::Window { .. } => Self::Section(Section::Made),
            Reason::PaperMissing { paper, .. } => Self::Section(section_of(*paper)),
            Reason::KeptApart { .. } | Reason::WrongKind { .. } => Self::Section(Section::Identity),
            _ => return None,
        })
    }

    /// Where the next thing to do for a machine is done; `None` at the head of the sheet.
    pub fn of_next(next: &Next, view: &View<'_>) -> Option<Self> {
        Some(match next {
            Next::TellFigure { figure, .. } => Self::Figure(*figure),
            Next::Identify { .. } | Next::FindConnector { .. } => Self::Design,
            Next::Survey { .. } => Self::Survey,
            Next::Set { .. } => Self::Section(Section::Readings),
            Next::Work { part, task, .. } | Next::Wait { part, task, .. } => {
                Self::Task(view.answers.part(*part)?.tasks.get(usize::from(*task))?.key())
            }
            Next::Prove { .. } => Self::Section(Section::Proofs),
            Next::Decide { .. } => Self::Section(Section::Condition),
            Next::FindFault { .. } => Self::Section(Section::Faults),
            Next::File { paper, .. } => Self::Section(section_of(*paper)),
            Next::Release { .. } => Self::Section(Section::Identity),
            _ => return None,
        })
    }
}

/// Where a paper is put on record.
fn section_of(paper: Paper) -> Section {
    match paper {
        Paper::Photograph => Section::Photographs,
        Paper::Settings => Section::Readings,
        Paper::FirmwareImage => Section::Papers,
    }
}
