//! Why a gate holds or power may not be applied: as data, and as one sentence a reason.

use std::sync::Arc;

use super::fit::{self, Because};
use super::making::TrueTo;
use super::outstanding::Job;
use super::proofs::Standing;
use crate::record::{
    Custody, FaultCaseId, Finding, FindingId, Hold, Kind, Logbook, MachineId, PartId, RoleId, Word, WorkState,
};
use crate::rules::{Paper, ProofRule, Question, Rules};
use crate::{counted, text};

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
    Work { part: PartId, task: u16, job: Job, hold: Hold, state: WorkState },
    /// An open finding that no rule and nobody has decided any work for.
    Undecided { part: PartId, finding: FindingId },
    /// Kept apart.
    KeptApart { part: PartId },
    /// Never surveyed.
    Unsurveyed { part: PartId },
    /// A question about something that could hurt has no answer.
    NotLooked { part: PartId, question: Arc<Question> },
    /// A proof of a part that is asked for does not hold.
    PartProof { part: PartId, proof: Arc<ProofRule>, standing: Standing },
    /// A proof of the machine that is asked for does not hold.
    MachineProof { machine: MachineId, proof: Arc<ProofRule>, standing: Standing },
    /// No part is fitted or planned yet.
    NothingPlaced { machine: MachineId },
    /// No power supply is fitted or planned.
    SupplyMissing { machine: MachineId },
    /// A fault that is still looked for, on a part or else on the machine.
    FaultOpen { machine: Option<MachineId>, part: Option<PartId>, case: FaultCaseId },
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
            Self::PartProof { standing, .. } | Self::MachineProof { standing, .. } if *standing != Standing::Failed => {
                Weight::NotKnown
            }
            Self::ConnectorsUnknown { .. }
            | Self::Unsurveyed { .. }
            | Self::NotLooked { .. }
            | Self::NothingPlaced { .. }
            | Self::SupplyMissing { .. } => Weight::NotKnown,
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
            | Self::PartProof { part, .. }
            | Self::PaperMissing { part, .. } => Some(*part),
            Self::FaultOpen { part, .. } => *part,
            Self::Fit(because) => because.part(),
            Self::FiguresMissing { .. }
            | Self::RoleEmpty { .. }
            | Self::RoleCrowded { .. }
            | Self::MachineProof { .. }
            | Self::NothingPlaced { .. }
            | Self::SupplyMissing { .. } => None,
        }
    }

    /// The reason as one sentence that names the part by tag and title, or the machine.
    pub fn sentence(&self, logbook: &Logbook, rules: &Rules) -> String {
        let named = self.part().map(|part| part_name(logbook, part)).unwrap_or_default();
        match self {
            Self::RoleEmpty { machine, role, missing: 1 } => {
                text!("Nothing fills the role {role} yet.", role = role_name(logbook, *machine, *role))
            }
            Self::RoleEmpty { machine, role, missing } => text!(
                "The role {role} wants {missing} more parts.",
                role = role_name(logbook, *machine, *role),
                missing = missing
            ),
            Self::RoleCrowded { machine, role, over } => text!(
                "The role {role} has {over} more than it takes: they compete for it.",
                role = role_name(logbook, *machine, *role),
                over = over
            ),
            Self::WrongKind { machine, role, .. } => text!(
                "{part} is not of the kind that the role {role} asks for.",
                part = named,
                role = role_name(logbook, *machine, *role)
            ),
            Self::PluggedNowhere { machine, role, .. } => text!(
                "{part} is there but plugs into nothing: the role {role} wants one that does.",
                part = named,
                role = role_name(logbook, *machine, *role)
            ),
            Self::PlannedOnly { .. } => text!("{part} is planned, not yet fitted.", part = named),
            Self::FittedElsewhere { machine, .. } => text!(
                "{part} is planned here but fitted in {machine}.",
                part = named,
                machine = machine_name(logbook, *machine)
            ),
            Self::PlannedElsewhere { machine, .. } => text!(
                "{part} is planned for {machine} as well.",
                part = named,
                machine = machine_name(logbook, *machine)
            ),
            Self::Away { custody, .. } => {
                text!("{part} is not here: {custody}.", part = named, custody = custody.label().to_lowercase())
            }
            Self::NeedUnmet { connector, missing, is_certain, .. } => {
                let connector = rules.connectors.label(connector);
                let sentence = text!(
                    "{part} needs {missing} × {connector}, and nothing in the machine has it free.",
                    part = named,
                    missing = missing,
                    connector = connector
                );
                if *is_certain {
                    sentence
                } else {
                    let unknown = text!("A part that could offer it is not known, or still to come.");
                    format!("{sentence} {unknown}")
                }
            }
            Self::ConnectorsUnknown { .. } => text!("What {part} plugs into is not known.", part = named),
            Self::Fit(because) => because.sentence(logbook, rules),
            Self::FiguresMissing { figures, .. } => counted!(
                "{count} figure is missing by which fit would be judged further.",
                "{count} figures are missing by which fit would be judged further.",
                *figures as usize
            ),
            Self::Window { true_to, .. } => {
                text!("{part} and the window: {true_to}.", part = named, true_to = true_to.said())
            }
            Self::Work { job, hold, state, .. } => work_sentence(&named, job, *hold, *state),
            Self::Undecided { part, finding } => text!(
                "{part} has a finding that no work is decided for: {finding}.",
                part = named,
                finding = finding_name(logbook, rules, *part, *finding)
            ),
            Self::KeptApart { part } => {
                let why = logbook.part(*part).map(|file| file.part.quarantine.clone()).unwrap_or_default();
                text!("{part} is kept apart: {why}.", part = named, why = why.trim_end_matches('.'))
            }
            Self::Unsurveyed { .. } => text!("{part} was never surveyed.", part = named),
            Self::NotLooked { question, .. } => {
                text!("{part}: nobody has answered “{question}”", part = named, question = text::say(&question.ask))
            }
            Self::PartProof { proof, standing, .. } => {
                let proof = text::say(&proof.say);
                text!("{part}: {proof} {standing}.", part = named, proof = proof, standing = standing.said(logbook))
            }
            Self::MachineProof { machine, proof, standing } => text!(
                "{machine}: {proof} {standing}.",
                machine = machine_name(logbook, *machine),
                proof = text::say(&proof.say),
                standing = standing.said(logbook)
            ),
            Self::NothingPlaced { machine } => {
                text!("Nothing is fitted in or planned for {machine} yet.", machine = machine_name(logbook, *machine))
            }
            Self::SupplyMissing { machine } => text!(
                "{machine} has no power supply, so nothing says what would power it.",
                machine = machine_name(logbook, *machine)
            ),
            Self::FaultOpen { machine, part: None, .. } => text!(
                "A fault of {machine} is still being looked for.",
                machine = machine.map(|machine| machine_name(logbook, machine)).unwrap_or_default()
            ),
            Self::FaultOpen { .. } => text!("A fault of {part} is still being looked for.", part = named),
            Self::PaperMissing { paper, .. } => {
                text!("{part}: not on file yet: {paper}.", part = named, paper = paper.label().to_lowercase())
            }
        }
    }
}

fn work_sentence(part: &str, job: &Job, hold: Hold, state: WorkState) -> String {
    let work = lower_first(job.title());
    match (hold, state) {
        (_, WorkState::Doing) => text!("{part}: under way, not finished: {work}.", part = part, work = work),
        (_, WorkState::Failed) => text!("{part}: failed, to be settled: {work}.", part = part, work = work),
        (Hold::Storage, _) => text!("{part}, even before it is stored: {work}.", part = part, work = work),
        (Hold::Power, _) => text!("{part}, before power: {work}.", part = part, work = work),
        (Hold::Fitting, _) => text!("{part}, before it is fitted: {work}.", part = part, work = work),
        (Hold::Ready, _) => text!("{part}, before the machine is ready: {work}.", part = part, work = work),
        (Hold::Looks, _) => text!("{part}, for its looks: {work}.", part = part, work = work),
    }
}

fn lower_first(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_lowercase().chain(letters).collect()).unwrap_or_default()
}

/// A part by tag and title: "0042 (Corvane M5 board)".
pub fn part_name(logbook: &Logbook, part: PartId) -> String {
    logbook.part(part).map_or_else(
        || text!("a part that is not in this logbook").to_owned(),
        |file| format!("{} ({})", file.part.tag, logbook.title_of(file)),
    )
}

pub fn machine_name(logbook: &Logbook, machine: MachineId) -> String {
    logbook.machine(machine).map(|file| file.machine.name.clone()).unwrap_or_default()
}

/// A role by its own name, or else its kind's.
pub fn role_name(logbook: &Logbook, machine: MachineId, role: RoleId) -> String {
    let file = logbook.machine(machine);
    let role = file.and_then(|file| file.roles.iter().find(|known| known.id == role));
    role.map_or_else(
        || Kind::Other.label().to_owned(),
        |role| {
            if role.name.is_empty() { role.kind.label().to_owned() } else { role.name.clone() }
        },
    )
}

/// A finding by its rule's words, or the restorer's own.
pub fn finding_name(logbook: &Logbook, rules: &Rules, part: PartId, finding: FindingId) -> String {
    let file = logbook.part(part).and_then(|file| file.finding(finding));
    file.map_or_else(String::new, |file| finding_said(&file.finding, rules))
}

/// The same, for a finding that is at hand.
pub fn finding_said(finding: &Finding, rules: &Rules) -> String {
    match rules.finding(&finding.what) {
        Some(rule) => text::say(&rule.say).to_owned(),
        None if finding.what.is_empty() => finding.note.clone(),
        None => finding.what.to_string(),
    }
}

impl Standing {
    /// In words that go on from the proof's name: "was never run".
    pub fn said(self, logbook: &Logbook) -> String {
        match self {
            Self::NeverRun => text!("was never run").to_owned(),
            Self::Undecided => text!("came to no decision").to_owned(),
            Self::Failed => text!("failed when it was last run").to_owned(),
            Self::Voided { part, .. } => {
                text!("counts no longer: {part} was worked on after it", part = part_name(logbook, part))
            }
            Self::Changed { part } => {
                text!("counts no longer: {part} was fitted or taken out after it", part = part_name(logbook, part))
            }
            Self::Stale { since: None } => text!("has no date, so nobody knows whether it still holds").to_owned(),
            Self::Stale { since: Some(since) } => text!("is out of date since {since}", since = since),
            Self::Good { until: None } => text!("holds").to_owned(),
            Self::Good { until: Some(until) } => text!("holds until {until}", until = until),
        }
    }
}

/// "3 reasons", for a heading.
pub fn counted_reasons(count: usize) -> String {
    counted!("{count} reason", "{count} reasons", count)
}
