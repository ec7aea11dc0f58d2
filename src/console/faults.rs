//! `faults LOGBOOK [TAG|MACHINE]`: the faults that are looked for, or all cases of one part or machine.
//!
//! By which rule trials clear and accuse, and the next one is proposed, stands at the head of `assess::faults`.
//!
//! JSON: `{"cases": [{"part": "0090", "machine": null, "symptom": "…", "opened": "2026-01-05", "state": "open",
//! "outcome": "", "trials": [{"on": "2026-01-05", "configuration": "…", "step": "…", "out": "0090", "in": "0050",
//! "result": "symptom_gone", "note": "", "doubtful": false}, …], "suspects": [{"part": "0090", "share": 0.9,
//! "standing": "accused", "by": 0}, …], "elsewhere": 0.02, "rails_measured": true, "next": {"act": "settle", "part":
//! "0090", "known_good": null, "bits": null, "say": "…"}}, …]}`. One of `part` and `machine` is told. `standing` is
//! suspected, cleared or accused, `by` the place of the trial that settled it; `share` and `elsewhere` add up to 1.
//! `doubtful` marks a trial in which the symptom stayed with a part that had passed no proof. `next` is null for a case that is closed.

use std::fmt::Write as _;

use clap::Args;
use serde::Serialize;

use super::opened::{Opened, Which};
use super::{Answer, as_json};
use crate::assess::faults::{CaseAnswer, Proposal, Suspicion, of_case};
use crate::assess::reason::{machine_name, part_name};
use crate::record::{CaseState, FaultCaseFile, PartId, Trial, TrialResult, When, Word as _};
use crate::text;

#[derive(Args)]
pub struct Faults {
    #[command(flatten)]
    which: Which,
    #[arg(value_name = "TAG|MACHINE", help = text!("All cases of this part or machine, closed ones too"))]
    of: Option<String>,
}

#[derive(Serialize)]
struct Form {
    cases: Vec<CaseForm>,
}

#[derive(Serialize)]
struct CaseForm {
    part: Option<String>,
    machine: Option<String>,
    symptom: String,
    opened: When,
    state: CaseState,
    outcome: String,
    trials: Vec<TrialForm>,
    suspects: Vec<SuspectForm>,
    elsewhere: f64,
    rails_measured: bool,
    next: Option<NextForm>,
}

#[derive(Serialize)]
struct TrialForm {
    on: When,
    configuration: String,
    step: String,
    out: Option<String>,
    #[serde(rename = "in")]
    good: Option<String>,
    result: TrialResult,
    note: String,
    doubtful: bool,
}

#[derive(Serialize)]
struct SuspectForm {
    part: String,
    share: f64,
    standing: &'static str,
    by: Option<usize>,
}

#[derive(Serialize)]
struct NextForm {
    act: &'static str,
    part: Option<String>,
    known_good: Option<String>,
    bits: Option<f64>,
    say: String,
}

impl Faults {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.which.open()?;
        let cases = self.cases(&opened)?;
        let answered = |file: &FaultCaseFile| of_case(file, &opened.answers, &opened.logbook, &opened.rules);
        if json {
            return as_json(&Form { cases: cases.iter().map(|file| form(file, &answered(file), &opened)).collect() });
        }
        if cases.is_empty() {
            return Ok(text!("No fault is being looked for.").to_owned());
        }
        let said: Vec<String> = cases.iter().map(|file| in_words(file, &answered(file), &opened)).collect();
        Ok(said.join("\n\n"))
    }

    fn cases<'o>(&self, opened: &'o Opened) -> anyhow::Result<Vec<&'o FaultCaseFile>> {
        let logbook = &opened.logbook;
        let mut cases: Vec<&FaultCaseFile> = match &self.of {
            None => {
                let of_parts = logbook.parts.iter().flat_map(|file| &file.cases);
                let of_machines = logbook.machines.iter().flat_map(|file| &file.cases);
                of_parts.chain(of_machines).filter(|file| file.case.state == CaseState::Open).collect()
            }
            Some(name) => match (logbook.part_tagged(name), logbook.machine_named(name)) {
                (Some(part), _) => part.cases.iter().collect(),
                (None, Some(machine)) => machine.cases.iter().collect(),
                (None, None) => {
                    anyhow::bail!(text!("no part has the tag and no machine the name “{name}”", name = name))
                }
            },
        };
        cases.sort_by_key(|file| file.case.opened.order());
        Ok(cases)
    }
}

fn tag(part: Option<PartId>, opened: &Opened) -> Option<String> {
    part.and_then(|part| opened.logbook.part(part)).map(|file| file.part.tag.clone())
}

fn form(file: &FaultCaseFile, answer: &CaseAnswer, opened: &Opened) -> CaseForm {
    let trial = |trial: &Trial| TrialForm {
        on: trial.tried.on,
        configuration: trial.configuration.clone(),
        step: trial.step.clone(),
        out: tag(trial.suspect, opened),
        good: tag(trial.known_good, opened),
        result: trial.result,
        note: trial.note.clone(),
        doubtful: answer.doubtful.contains(&trial.id),
    };
    let suspects = answer.suspects.iter().map(|suspect| {
        let (standing, by) = match suspect.suspicion {
            Suspicion::Suspected => ("suspected", None),
            Suspicion::Cleared { by } => ("cleared", Some(by)),
            Suspicion::Accused { by } => ("accused", Some(by)),
        };
        SuspectForm {
            part: tag(Some(suspect.part), opened).unwrap_or_default(),
            share: suspect.share,
            standing,
            by: by.and_then(|by| file.trials.iter().position(|trial| trial.id == by)),
        }
    });
    let next = answer.next.as_ref().map(|next| {
        let (known_good, bits) = match next {
            Proposal::Exchange { known_good, bits, .. } => (tag(Some(*known_good), opened), Some(*bits)),
            Proposal::TakeOut { bits, .. } => (None, Some(*bits)),
            _ => (None, None),
        };
        let say = next.sentence(&opened.logbook);
        NextForm { act: next.name(), part: tag(next.part(), opened), known_good, bits, say }
    });
    CaseForm {
        part: tag(file.case.part, opened),
        machine: file.case.machine.map(|machine| machine_name(&opened.logbook, machine)),
        symptom: file.case.symptom.clone(),
        opened: file.case.opened.on,
        state: file.case.state,
        outcome: file.case.outcome.clone(),
        trials: file.trials.iter().map(trial).collect(),
        suspects: suspects.collect(),
        elsewhere: answer.elsewhere,
        rails_measured: answer.rails_measured,
        next,
    }
}

fn in_words(file: &FaultCaseFile, answer: &CaseAnswer, opened: &Opened) -> String {
    let case = &file.case;
    let on = match (case.part, case.machine) {
        (Some(part), _) => part_name(&opened.logbook, part),
        (None, Some(machine)) => machine_name(&opened.logbook, machine),
        (None, None) => String::new(),
    };
    let mut lines = format!("{on}: {} ({}, {})", case.symptom, case.state.label(), case.opened.on);
    if !case.outcome.is_empty() {
        let _ = write!(lines, "\n  {}", case.outcome);
    }
    for trial in &file.trials {
        let _ = write!(lines, "\n  {}  {}: {}", trial.tried.on, trial.step, trial.result.label());
        if !trial.note.is_empty() {
            let _ = write!(lines, " ({})", trial.note);
        }
        if answer.doubtful.contains(&trial.id) {
            let doubt = text!("the part put in had passed no proof, so it settles little");
            let _ = write!(lines, "\n      ! {doubt}");
        }
    }
    for suspect in &answer.suspects {
        let standing = match suspect.suspicion {
            Suspicion::Suspected => text!("suspected"),
            Suspicion::Cleared { .. } => text!("cleared"),
            Suspicion::Accused { .. } => text!("accused"),
        };
        let part = part_name(&opened.logbook, suspect.part);
        let _ = write!(lines, "\n  {:>3.0} %  {part}: {standing}", suspect.share * 100.0);
    }
    let _ =
        write!(lines, "\n  {:>3.0} %  {}", answer.elsewhere * 100.0, text!("no part: contacts, settings, programs"));
    if let Some(next) = &answer.next {
        let next = next.sentence(&opened.logbook);
        let _ = write!(lines, "\n  {}", text!("Next: {next}", next = next));
    }
    lines
}
