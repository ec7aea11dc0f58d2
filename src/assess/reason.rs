//! Why a gate holds or power may not be applied: as data, and as one sentence a reason.

use std::sync::Arc;

use super::fit::{self, Because};
use super::making::TrueTo;
use super::outstanding::Job;
use super::proofs::Standing;
use super::unknown_names::NameKind;
use crate::record::{
    Capacitor, CapacitorId, CapacitorState, CaseState, Custody, FaultCaseId, Figure, Finding, FindingFile, FindingId,
    FindingState, Hold, Kind, Logbook, MachineId, Moment, PartId, PowerOnId, PowerOnResult, Reading, ReadingId, RoleId,
    When, Word, WorkId, WorkState,
};
use crate::rules::{Paper, PowerEffect, ProofRule, Question, Rules};
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
            Self::Finding { part, finding, .. } => {
                text!("{part}: {finding}.", part = named, finding = finding_name(logbook, rules, *part, *finding))
            }
            Self::Decided { part, finding, .. } => decided_sentence(&named, logbook, rules, *part, *finding),
            Self::Waived { part, work, .. } => waived_sentence(&named, logbook, rules, *part, *work),
            Self::TouchUnstated { part, work } => text!(
                "{part}: did “{work}” touch anything electrical? Not stated yet.",
                part = named,
                work = work_name(logbook, rules, *part, *work)
            ),
            Self::WorkedSince { part, work } => text!(
                "{part}: not looked at or tested since “{work}”.",
                part = named,
                work = work_name(logbook, rules, *part, *work)
            ),
            Self::AnswersApart { question, other, .. } => text!(
                "{part} and {other} are not of the same plug: “{question}”",
                part = named,
                other = part_name(logbook, *other),
                question = text::say(&question.ask)
            ),
            Self::UnknownName { kind, name, .. } => text!(
                "{part}: {kind} “{name}” is in no table: what it means is not known.",
                part = named,
                kind = kind.label().to_lowercase(),
                name = name
            ),
            Self::PlugUntold { .. } => {
                text!("{part}: its design does not say which plug joins board and supply.", part = named)
            }
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
            Self::NotLooked { question, tried: None, .. } => {
                text!("{part}: not looked at yet: “{question}”", part = named, question = text::say(&question.ask))
            }
            Self::NotLooked { question, tried: Some(moment), .. } => text!(
                "{part}: “{question}” could not be told{when}.",
                part = named,
                question = text::say(&question.ask),
                when = on_day(*moment)
            ),
            Self::AnswerSays { question, said, .. } => {
                let answer = question.answers.get(*said).map_or("", |row| text::say(&row.say));
                let question = text::say(&question.ask);
                text!(
                    "{part}: “{question}” was answered: {answer}.",
                    part = named,
                    question = question,
                    answer = answer
                )
            }
            Self::SaidNotToApply { question, why, .. } => {
                let question = text::say(&question.ask);
                let why = if why.is_empty() { text!("no reason given") } else { why.trim_end_matches('.') };
                text!("{part}: “{question}” is said not to apply: {why}.", part = named, question = question, why = why)
            }
            Self::CapacitorState { part, position, state, .. } => {
                let file = logbook.part(*part);
                let position = file.and_then(|file| file.capacitors.iter().find(|one| one.position.id == *position));
                let place = position.map(|file| position_name(&file.position)).unwrap_or_default();
                let state = state.label().to_lowercase();
                text!("{part}: capacitor {place}: {state}.", part = named, place = place, state = state)
            }
            Self::ReadingOut { part, machine, reading, .. } => {
                let of_part = part.and_then(|part| logbook.part(part)).map(|file| &file.readings);
                let of_machine = machine.and_then(|machine| logbook.machine(machine)).map(|file| &file.readings);
                let all = of_part.or(of_machine);
                let read = all.and_then(|all| all.iter().find(|known| known.id == *reading)).map(reading_text);
                let whose = if part.is_some() {
                    named
                } else {
                    machine.map(|id| machine_name(logbook, id)).unwrap_or_default()
                };
                let read = read.unwrap_or_default();
                text!("{whose}: a reading is out of its limits: {read}.", whose = whose, read = read)
            }
            Self::FigureUntold { figure, .. } => {
                let figure = lower_first(figure.label());
                text!("{part}: its design does not say: {figure}.", part = named, figure = figure)
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
            Self::BoardMissing { machine } => {
                text!("{machine} has no mainboard.", machine = machine_name(logbook, *machine))
            }
            Self::EssentialPlanned { .. } => {
                text!("{part} is planned, not fitted: nothing is known about power before it is.", part = named)
            }
            Self::PowerOnWent { machine, power_on, .. } => power_on_sentence(logbook, *machine, *power_on),
            Self::FaultOpen { machine, part, case, .. } => fault_sentence(logbook, *machine, *part, *case),
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

/// " on 2026-03-12", or nothing where nobody remembers.
fn on_day(moment: Moment) -> String {
    if moment.on == When::Unknown { String::new() } else { text!(" on {day}", day = moment.on) }
}

/// " by Mara", or nothing where nobody said.
fn by_whom(who: &str) -> String {
    if who.is_empty() { String::new() } else { text!(" by {who}", who = who) }
}

/// ": its reason", or nothing where none was given.
fn because(reason: &str) -> String {
    let reason = reason.trim().trim_end_matches('.');
    if reason.is_empty() { String::new() } else { format!(": {reason}") }
}

fn decided_sentence(named: &str, logbook: &Logbook, rules: &Rules, part: PartId, finding: FindingId) -> String {
    let what = lower_first(&finding_name(logbook, rules, part, finding));
    let file = logbook.part(part).and_then(|file| file.finding(finding));
    // The decision is the first look of the run of looks in the state that holds.
    let decision = file.and_then(|file| file.looks.iter().rev().take_while(|look| look.state == file.state()).last());
    let (when, who, why) =
        decision.map_or_else(Default::default, |look| (on_day(look.looked), by_whom(&look.who), because(&look.reason)));
    match file.map(FindingFile::state) {
        Some(FindingState::Watched) => {
            text!(
                "{part}: {what}, watched{when}{who}{why}.",
                part = named,
                what = what,
                when = when,
                who = who,
                why = why
            )
        }
        _ => {
            text!(
                "{part}: {what}, accepted{when}{who}{why}.",
                part = named,
                what = what,
                when = when,
                who = who,
                why = why
            )
        }
    }
}

fn waived_sentence(named: &str, logbook: &Logbook, rules: &Rules, part: PartId, work: WorkId) -> String {
    let name = lower_first(&work_name(logbook, rules, part, work));
    let record = logbook.part(part).and_then(|file| file.work.iter().find(|known| known.id == work));
    let (when, who, why) =
        record.map_or_else(Default::default, |work| (on_day(work.changed), by_whom(&work.who), because(&work.reason)));
    text!("{part}: waived{when}{who}: {work}{why}.", part = named, when = when, who = who, work = name, why = why)
}

/// A piece of work by its rule's words, or the restorer's own.
pub fn work_name(logbook: &Logbook, rules: &Rules, part: PartId, work: WorkId) -> String {
    let record = logbook.part(part).and_then(|file| file.work.iter().find(|known| known.id == work));
    record.map_or_else(String::new, |work| match rules.work(&work.rule) {
        Some(rule) => text::say(&rule.say).to_owned(),
        None if work.title.is_empty() => work.rule.clone(),
        None => work.title.clone(),
    })
}

/// A position by its designator, else by where it sits.
fn position_name(position: &Capacitor) -> String {
    if position.designator.is_empty() { position.place_on_part.clone() } else { position.designator.clone() }
}

fn reading_text(reading: &Reading) -> String {
    let Reading { quantity, value, unit, measured, .. } = reading;
    format!("{quantity} {value} {unit}{}", on_day(*measured))
}

fn fault_sentence(logbook: &Logbook, machine: Option<MachineId>, part: Option<PartId>, case: FaultCaseId) -> String {
    let whose = match part {
        Some(part) => part_name(logbook, part),
        None => machine.map(|machine| machine_name(logbook, machine)).unwrap_or_default(),
    };
    let of_part = part.and_then(|part| logbook.part(part)).map(|file| &file.cases);
    let of_machine = machine.and_then(|machine| logbook.machine(machine)).map(|file| &file.cases);
    let known = of_part.or(of_machine).and_then(|cases| cases.iter().find(|file| file.case.id == case));
    let symptom = known.map(|file| file.case.symptom.trim_end_matches('.')).unwrap_or_default();
    match known.map(|file| file.case.state) {
        Some(CaseState::Found) => text!("{whose}: a fault was found: {symptom}.", whose = whose, symptom = symptom),
        Some(CaseState::NotReproduced) => {
            text!("{whose}: a fault could not be reproduced: {symptom}.", whose = whose, symptom = symptom)
        }
        Some(CaseState::GivenUp) => {
            text!("{whose}: the search for a fault was given up: {symptom}.", whose = whose, symptom = symptom)
        }
        Some(CaseState::Open) | None => {
            text!("{whose}: a fault is still being looked for: {symptom}.", whose = whose, symptom = symptom)
        }
    }
}

fn power_on_sentence(logbook: &Logbook, machine: MachineId, power_on: PowerOnId) -> String {
    let file = logbook.machine(machine);
    let event = file.and_then(|file| file.power_ons.iter().find(|known| known.id == power_on));
    let machine = machine_name(logbook, machine);
    let (when, what) = event.map_or_else(Default::default, |event| (on_day(event.switched), because(&event.happened)));
    match event.map(|event| event.result) {
        Some(PowerOnResult::Stopped) => {
            text!("{machine} was switched off at once{when}{what}.", machine = machine, when = when, what = what)
        }
        _ => text!("{machine} did not run well{when}{what}.", machine = machine, when = when, what = what),
    }
}

/// A label within a sentence: units and names keep their capitals.
pub(in crate::assess) fn lower_first(text: &str) -> String {
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
            Self::OutOfBounds { .. } => {
                text!("is said to have passed, but a figure of it is out of its limits").to_owned()
            }
            Self::InFuture => text!("is dated after today").to_owned(),
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
