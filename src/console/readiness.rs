//! `readiness LOGBOOK [MACHINE]`: the gate at which each machine stands, why, and whether power may be applied.
//!
//! JSON: `{"machines": [{"machine": "Orla", "gate": "safe_to_switch_on", "power": {"verdict": "not_known", "reasons":
//! [reason, …]}, "gates": [{"gate": "roles_filled", "state": "passed", "reasons": []}, …], "left": totals as in
//! `outstanding`, "proof_minutes": 495, "materials": […], "next": {"act": "survey", "part": "0042", "say": "Survey 0042
//! (Velmar V5)"}}, …]}`. A reason is `{"weight": "holds", "part": "0042", "say": "…"}`: `holds`, `not_known` or
//! `remark` (to know only); `part` is null where it is about the machine. A gate's state is passed, held or not_known;
//! `verdict` is yes, no or not_known, which means: do not. `next` is null for a machine that is ready.

use std::fmt::Write as _;

use clap::Args;
use serde::Serialize;

use super::opened::{MaterialForm, Opened, TotalsForm, Which, material_forms, totals_in_words};
use super::{Answer, as_json};
use crate::assess::outstanding::hours_text;
use crate::assess::outstanding::materials;
use crate::assess::{Gate, GateState, MachineAnswers, Power, Reason, Verdict, Weight};
use crate::record::{Hold, PartId, Word as _};
use crate::text;

#[derive(Args)]
pub struct Readiness {
    #[command(flatten)]
    which: Which,
    #[arg(help = text!("Only this machine"))]
    machine: Option<String>,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    machines: Vec<MachineForm>,
}

#[derive(Serialize)]
struct MachineForm {
    machine: String,
    gate: Gate,
    power: PowerForm,
    gates: Vec<GateForm>,
    left: TotalsForm,
    proof_minutes: u32,
    materials: Vec<MaterialForm>,
    next: Option<NextForm>,
}

#[derive(Serialize)]
struct GateForm {
    gate: Gate,
    state: GateState,
    reasons: Vec<ReasonForm>,
}

/// Whether power may be applied.
#[derive(Serialize)]
pub struct PowerForm {
    pub verdict: Verdict,
    reasons: Vec<ReasonForm>,
}

#[derive(Serialize)]
struct ReasonForm {
    weight: Weight,
    part: Option<String>,
    say: String,
}

#[derive(Serialize)]
struct NextForm {
    act: &'static str,
    part: Option<String>,
    say: String,
}

fn tag(part: Option<PartId>, opened: &Opened) -> Option<String> {
    part.and_then(|part| opened.logbook.part(part)).map(|file| file.part.tag.clone())
}

fn reason_forms(gate: Gate, reasons: &[Reason], opened: &Opened) -> Vec<ReasonForm> {
    let form = |reason: &Reason| ReasonForm {
        weight: gate.weight(reason),
        part: tag(reason.part(), opened),
        say: reason.sentence(&opened.logbook, &opened.rules),
    };
    reasons.iter().map(form).collect()
}

impl PowerForm {
    pub fn of(power: &Power, opened: &Opened) -> Self {
        Self { verdict: power.verdict, reasons: reason_forms(Gate::SafeToSwitchOn, &power.reasons, opened) }
    }

    /// Its reasons as sentences.
    pub fn sentences(&self) -> impl Iterator<Item = &str> {
        self.reasons.iter().map(|reason| reason.say.as_str())
    }
}

impl Readiness {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.which.open()?;
        let only = self.machine.as_deref().map(|name| opened.machine(name)).transpose()?;
        let machines = opened.answers.machines.iter().filter(|machine| only.is_none_or(|only| machine.machine == only));
        let mut machines: Vec<&MachineAnswers> = machines.map(|machine| &**machine).collect();
        machines.sort_by_key(|machine| machine.file.machine.name.to_lowercase());
        if json {
            return as_json(&Form { machines: machines.iter().map(|machine| form(machine, &opened)).collect() });
        }
        if machines.is_empty() {
            return Ok(text!("No machine is planned yet.").to_owned());
        }
        let said: Vec<String> = machines.iter().map(|machine| in_words(machine, &opened)).collect();
        Ok(said.join("\n\n"))
    }
}

fn form(machine: &MachineAnswers, opened: &Opened) -> MachineForm {
    let readiness = &machine.readiness;
    let parts = machine.members.iter().filter_map(|part| opened.answers.part(*part));
    let tasks = parts.flat_map(|part| &part.tasks).filter(|task| task.hold != Hold::Looks);
    MachineForm {
        machine: machine.file.machine.name.clone(),
        gate: readiness.at,
        power: PowerForm::of(&readiness.power, opened),
        gates: readiness
            .gates
            .iter()
            .map(|gate| GateForm {
                gate: gate.gate,
                state: gate.state,
                reasons: reason_forms(gate.gate, &gate.reasons, opened),
            })
            .collect(),
        left: readiness.left.into(),
        proof_minutes: readiness.proof_minutes,
        materials: material_forms(materials(tasks, &opened.logbook.materials)),
        next: readiness.next.as_ref().map(|next| NextForm {
            act: next.name(),
            part: tag(next.part(), opened),
            say: next.sentence(&opened.logbook, &opened.rules),
        }),
    }
}

fn in_words(machine: &MachineAnswers, opened: &Opened) -> String {
    let readiness = &machine.readiness;
    let mut lines = format!("{}: {}", machine.file.machine.name, readiness.at.label());
    let power = text!("May power be applied? {verdict}", verdict = readiness.power.verdict.label());
    let _ = write!(lines, "\n  {power}");
    for gate in &readiness.gates {
        let _ = write!(lines, "\n  {}: {}", gate.gate.label(), gate.state.label());
        for reason in &gate.reasons {
            let mark = if gate.gate.weight(reason) == Weight::Remark { "·" } else { "-" };
            let _ = write!(lines, "\n    {mark} {}", reason.sentence(&opened.logbook, &opened.rules));
        }
    }
    let _ = write!(lines, "\n  {}", text!("Left: {work}", work = totals_in_words(readiness.left)));
    if readiness.proof_minutes > 0 {
        lines += &text!("; proofs {time}", time = hours_text(readiness.proof_minutes));
    }
    if let Some(next) = &readiness.next {
        let next = next.sentence(&opened.logbook, &opened.rules);
        let _ = write!(lines, "\n  {}", text!("Next: {next}", next = next));
    }
    lines
}
