//! Reasons as sentences.

use super::Reason;
use super::names::{finding_name, lower_first, machine_name, part_name, role_name, work_name};
use crate::assess::outstanding::Job;
use crate::assess::proofs::Standing;
use crate::record::{
    Capacitor, CaseState, FaultCaseId, FindingFile, FindingId, FindingState, Hold, Logbook, MachineId, Moment, PartId,
    PowerOnId, PowerOnResult, Reading, When, Word, WorkId, WorkState,
};
use crate::rules::Rules;
use crate::{counted, text};

impl Reason {
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
            Self::Repaired { part, .. } => {
                text!("failed, and {part} was worked on since: it is to be run again", part = part_name(logbook, part))
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
