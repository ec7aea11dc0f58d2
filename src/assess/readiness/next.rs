//! The one next thing to do for a machine.

use std::sync::Arc;

use super::{Gate, GateAnswer, GateState};
use crate::assess::answers::PartAnswers;
use crate::assess::fit::{self, Because};
use crate::assess::outstanding::{Job, Task};
use crate::assess::reason::{Reason, finding_name, lower_first, machine_name, part_name, role_name, work_name};
use crate::record::{
    FaultCaseId, Figure, FindingId, Hold, Logbook, MachineFile, MachineId, PartId, RoleId, Word, WorkId,
};
use crate::rules::{Paper, ProofRule, Rules};
use crate::text;

/// A thing to do, as a piece of work or as an act.
#[derive(Clone, Debug)]
pub enum Next {
    /// Work that can be started now; `task` is its place in the part's list.
    Work {
        part: PartId,
        task: u16,
        job: Job,
    },
    /// Work that cannot be started: material is missing, or the part is not here.
    Wait {
        part: PartId,
        task: u16,
        job: Job,
    },
    FillRole {
        machine: MachineId,
        role: RoleId,
    },
    /// Look at the part and answer its questions.
    Survey {
        part: PartId,
    },
    /// Say what the part is, and what its design plugs into.
    Identify {
        part: PartId,
    },
    /// Say what work in the restorer's own words touched.
    StateTouch {
        part: PartId,
        work: WorkId,
    },
    /// Tell a figure of the part's design.
    TellFigure {
        part: PartId,
        figure: Figure,
    },
    /// Put another part in its place, or change the brief.
    Exchange {
        part: PartId,
    },
    /// Set the board right, and note how.
    Set {
        part: PartId,
    },
    /// Find a cooler for a processor.
    Cool {
        part: PartId,
    },
    /// Find what offers this connector.
    FindConnector {
        part: PartId,
        connector: Box<str>,
    },
    /// Get the part here, out of another machine or back from whoever has it.
    Fetch {
        part: PartId,
    },
    /// Look after a part that is kept apart until it may join the others.
    Release {
        part: PartId,
    },
    Fit {
        part: PartId,
        role: Option<RoleId>,
    },
    Prove {
        part: PartId,
        proof: Arc<ProofRule>,
    },
    /// Switch the machine on for the first time.
    PowerOn {
        machine: MachineId,
    },
    ProveMachine {
        machine: MachineId,
        proof: Arc<ProofRule>,
    },
    /// Decide what a finding calls for.
    Decide {
        part: PartId,
        finding: FindingId,
    },
    FindFault {
        machine: MachineId,
        part: Option<PartId>,
        case: FaultCaseId,
    },
    File {
        part: PartId,
        paper: Paper,
    },
}

/// What is urgent even for storage first, else what the first gate not passed needs.
pub(super) fn next(file: &MachineFile, gates: &[GateAnswer], parts: &[&PartAnswers]) -> Option<Next> {
    let urgent = parts.iter().flat_map(|part| part.tasks.iter().enumerate());
    let urgent =
        urgent.filter(|(_, task)| task.hold == Hold::Storage).find_map(|(at, task)| startable(parts, task, at));
    if urgent.is_some() {
        return urgent;
    }
    let gate = gates.iter().find(|gate| gate.state != GateState::Passed)?;
    let machine = file.machine.id;
    if gate.gate == Gate::Proven && file.power_ons.is_empty() {
        return Some(Next::PowerOn { machine });
    }
    let reasons: Vec<&Reason> =
        if gate.gate == Gate::Proven { gate.reasons.iter().collect() } else { gate.holding().collect() };
    let work = reasons.iter().find_map(|reason| match reason {
        Reason::Work { part, task, .. } => {
            let of = parts.iter().find(|answers| answers.part == *part)?;
            startable(parts, of.tasks.get(usize::from(*task))?, usize::from(*task))
        }
        _ => None,
    });
    let is_late = |reason: &Reason| matches!(reason, Reason::Work { .. } | Reason::PlannedOnly { .. });
    work.or_else(|| reasons.iter().filter(|reason| !is_late(reason)).find_map(|reason| act(reason, machine)))
        .or_else(|| {
            reasons
                .iter()
                .filter(|reason| !matches!(reason, Reason::Work { .. }))
                .find_map(|reason| act(reason, machine))
        })
        .or_else(|| reasons.iter().find_map(|reason| act(reason, machine)))
}

/// A task, or the first of those that it waits for, that can be started now.
fn startable(parts: &[&PartAnswers], task: &Task, at: usize) -> Option<Next> {
    let of = parts.iter().find(|answers| answers.part == task.part)?;
    let places = task.waits_for.iter().map(|place| usize::from(*place)).chain(std::iter::once(at));
    let here: Vec<(PartId, usize, &Task)> =
        places.filter_map(|place| Some((task.part, place, of.tasks.get(place)?))).collect();
    // What it waits for on another part of the machine.
    let elsewhere = here.iter().flat_map(|(.., task)| &task.elsewhere).filter_map(|(part, place)| {
        let of = parts.iter().find(|answers| answers.part == *part)?;
        Some((*part, usize::from(*place), of.tasks.get(usize::from(*place))?))
    });
    let (part, place, first) = here.iter().copied().chain(elsewhere).find(|(.., task)| task.doable)?;
    Some(Next::Work { part, task: place as u16, job: first.job.clone() })
}

/// The act that a reason asks for; `None` for a remark.
fn act(reason: &Reason, machine: MachineId) -> Option<Next> {
    Some(match reason {
        Reason::RoleEmpty { machine, role, .. } => Next::FillRole { machine: *machine, role: *role },
        Reason::WrongKind { part, .. } | Reason::Window { part, .. } | Reason::PluggedNowhere { part, .. } => {
            Next::Exchange { part: *part }
        }
        Reason::PlannedOnly { part, role } => Next::Fit { part: *part, role: *role },
        Reason::FittedElsewhere { part, .. } | Reason::Away { part, .. } => Next::Fetch { part: *part },
        Reason::NeedUnmet { part, connector, .. } => Next::FindConnector { part: *part, connector: connector.clone() },
        Reason::ConnectorsUnknown { part } | Reason::PlugUntold { part } => Next::Identify { part: *part },
        Reason::Fit(because) => match (because.missing(), because.part()) {
            (Some((part, figure)), _) => Next::TellFigure { part, figure },
            (None, Some(part))
                if matches!(because, Because::NoCooler { .. } | Because::CoolerOfOther { is_weaker: true, .. }) =>
            {
                Next::Cool { part }
            }
            (None, Some(part)) => match because.to_set() {
                Some(board) => Next::Set { part: board },
                None if because.verdict() == fit::Verdict::No => Next::Exchange { part },
                None => return None,
            },
            (None, None) => return None,
        },
        Reason::Work { part, task, job, .. } => Next::Wait { part: *part, task: *task, job: job.clone() },
        Reason::Undecided { part, finding }
        | Reason::Finding { part, finding, .. }
        | Reason::Decided { part, finding, .. } => Next::Decide { part: *part, finding: *finding },
        Reason::KeptApart { part } => Next::Release { part: *part },
        Reason::Unsurveyed { part }
        | Reason::NotLooked { part, .. }
        | Reason::AnswerSays { part, .. }
        | Reason::SaidNotToApply { part, .. }
        | Reason::CapacitorState { part, .. }
        | Reason::WorkedSince { part, .. }
        | Reason::AnswersApart { part, .. } => Next::Survey { part: *part },
        Reason::TouchUnstated { part, work } => Next::StateTouch { part: *part, work: *work },
        Reason::FigureUntold { part, figure } => Next::TellFigure { part: *part, figure: *figure },
        Reason::EssentialPlanned { part } => Next::Fit { part: *part, role: None },
        Reason::PartProof { part, proof, .. } => Next::Prove { part: *part, proof: Arc::clone(proof) },
        Reason::MachineProof { machine, proof, .. } => {
            Next::ProveMachine { machine: *machine, proof: Arc::clone(proof) }
        }
        Reason::FaultOpen { part, case, .. } => Next::FindFault { machine, part: *part, case: *case },
        Reason::PaperMissing { part, paper } => Next::File { part: *part, paper: *paper },
        Reason::NothingPlaced { .. }
        | Reason::SupplyMissing { .. }
        | Reason::UnknownName { .. }
        | Reason::BoardMissing { .. }
        | Reason::Waived { .. }
        | Reason::ReadingOut { .. }
        | Reason::PowerOnWent { .. }
        | Reason::RoleCrowded { .. }
        | Reason::FiguresMissing { .. }
        | Reason::PlannedElsewhere { .. } => return None,
    })
}

impl Next {
    /// The part that it is about, where it is about one.
    pub fn part(&self) -> Option<PartId> {
        match self {
            Self::Work { part, .. }
            | Self::Wait { part, .. }
            | Self::Survey { part }
            | Self::Identify { part }
            | Self::TellFigure { part, .. }
            | Self::Exchange { part }
            | Self::Set { part }
            | Self::StateTouch { part, .. }
            | Self::Cool { part }
            | Self::FindConnector { part, .. }
            | Self::Fetch { part }
            | Self::Release { part }
            | Self::Fit { part, .. }
            | Self::Prove { part, .. }
            | Self::Decide { part, .. }
            | Self::File { part, .. } => Some(*part),
            Self::FindFault { part, .. } => *part,
            Self::FillRole { .. } | Self::PowerOn { .. } | Self::ProveMachine { .. } => None,
        }
    }

    /// What it is, by name, for the console's JSON form.
    pub fn name(&self) -> &'static str {
        match self {
            Self::Work { .. } => "work",
            Self::Wait { .. } => "wait",
            Self::FillRole { .. } => "fill_role",
            Self::Survey { .. } => "survey",
            Self::Identify { .. } => "identify",
            Self::StateTouch { .. } => "state_touch",
            Self::TellFigure { .. } => "tell_figure",
            Self::Exchange { .. } => "exchange",
            Self::Set { .. } => "set",
            Self::Cool { .. } => "cool",
            Self::FindConnector { .. } => "find_connector",
            Self::Fetch { .. } => "fetch",
            Self::Release { .. } => "release",
            Self::Fit { .. } => "fit",
            Self::Prove { .. } => "prove",
            Self::PowerOn { .. } => "power_on",
            Self::ProveMachine { .. } => "prove_machine",
            Self::Decide { .. } => "decide",
            Self::FindFault { .. } => "find_fault",
            Self::File { .. } => "file",
        }
    }

    /// In words, as an imperative.
    pub fn sentence(&self, logbook: &Logbook, rules: &Rules) -> String {
        let named = self.part().map(|part| part_name(logbook, part)).unwrap_or_default();
        match self {
            Self::Work { job, .. } => text!("{part}: {work}", part = named, work = job.title()),
            Self::Wait { job, .. } => {
                text!("Get what is missing for {part}: {work}", part = named, work = job.title())
            }
            Self::FillRole { machine, role } => {
                text!("Find a part for the role {role}", role = role_name(logbook, *machine, *role))
            }
            Self::Survey { .. } => text!("Survey {part}", part = named),
            Self::Identify { .. } => text!("Say what {part} is and what it plugs into", part = named),
            Self::StateTouch { part, work } => {
                let work = work_name(logbook, rules, *part, *work);
                text!("State what “{work}” touched on {part}", work = work, part = named)
            }
            Self::TellFigure { figure, .. } => {
                text!("Tell of {part}: {figure}", part = named, figure = lower_first(figure.label()))
            }
            Self::Exchange { .. } => text!("Put another part in the place of {part}", part = named),
            Self::Set { .. } => text!("Set {part} right, and note how it is set", part = named),
            Self::Cool { .. } => text!("Find a cooler for {part}", part = named),
            Self::FindConnector { connector, .. } => {
                text!("Find a free {connector} for {part}", part = named, connector = rules.connectors.label(connector))
            }
            Self::Fetch { .. } => text!("Get {part} here", part = named),
            Self::Release { .. } => text!("Settle why {part} is kept apart", part = named),
            Self::Fit { .. } => text!("Fit {part}", part = named),
            Self::Prove { proof, .. } => {
                text!("Prove {part}: {proof}", part = named, proof = text::say(&proof.say))
            }
            Self::PowerOn { machine } => {
                text!("Switch {machine} on for the first time", machine = machine_name(logbook, *machine))
            }
            Self::ProveMachine { machine, proof } => text!(
                "Prove {machine}: {proof}",
                machine = machine_name(logbook, *machine),
                proof = text::say(&proof.say)
            ),
            Self::Decide { part, finding } => text!(
                "Decide what to do about {finding} on {part}",
                part = named,
                finding = finding_name(logbook, rules, *part, *finding)
            ),
            Self::FindFault { machine, part: None, .. } => {
                text!("Find the fault of {machine}", machine = machine_name(logbook, *machine))
            }
            Self::FindFault { .. } => text!("Find the fault of {part}", part = named),
            Self::File { paper, .. } => {
                text!("Put on file for {part}: {paper}", part = named, paper = paper.label().to_lowercase())
            }
        }
    }
}
