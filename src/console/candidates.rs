//! `candidates LOGBOOK MACHINE ROLE`: every part that could fill a role, ranked, and what another machine would lose.
//!
//! How they are ranked stands at the head of `assess::fit::candidates`. A role is named by its own name or its kind's.
//!
//! JSON: `{"machine": "Orla", "role": "Mainboard", "kinds": ["mainboard"], "candidates": [{"part": "0034", "title": "Velmar V5", "with": null, "here": true,
//! "verdict": "fits", "because": [because as in `fit`, …], "weeks": 0, "window": "made within the window", "state":
//! "proven", "minutes": 90, "proven": true, "originality": "original", "losses": [{"machine": "Tove", "role":
//! "Mainboard", "fitted": true, "empties": true, "stand_ins": 1}, …]}, …]}`. `weeks` from the window are negative before
//! it and null while not known; `minutes` are hands-on and leave out work for looks. `stand_ins` counts parts in no
//! machine that plug in alike. `with` is the adapter on the shelf through which it fits.

use std::fmt::Write as _;

use anyhow::anyhow;
use clap::Args;
use serde::Serialize;

use super::fit::{BecauseForm, On, mark};
use super::opened::{Opened, Which};
use super::{Answer, as_json};
use crate::assess::PartState;
use crate::assess::fit::Verdict;
use crate::assess::fit::candidates::{Candidate, Candidates, Loss};
use crate::assess::outstanding::hours_text;
use crate::assess::reason::{machine_name, role_name};
use crate::record::{Kind, MachineId, Originality, Role, RoleId, Word as _};
use crate::{counted, text};

#[derive(Args)]
pub struct OfRole {
    #[command(flatten)]
    which: Which,
    #[arg(help = text!("The machine"))]
    machine: String,
    #[arg(help = text!("The role, by its name or its kind’s: “Mainboard”"))]
    role: String,
    #[command(flatten)]
    on: On,
}

#[derive(Serialize)]
struct Form {
    machine: String,
    role: String,
    kinds: Vec<Kind>,
    candidates: Vec<CandidateForm>,
}

#[derive(Serialize)]
struct CandidateForm {
    part: String,
    title: String,
    with: Option<String>,
    here: bool,
    verdict: Verdict,
    because: Vec<BecauseForm>,
    weeks: Option<i64>,
    window: Option<String>,
    state: PartState,
    minutes: u32,
    proven: bool,
    originality: Originality,
    losses: Vec<LossForm>,
}

#[derive(Serialize)]
struct LossForm {
    machine: String,
    role: Option<String>,
    fitted: bool,
    empties: bool,
    stand_ins: usize,
    #[serde(skip)]
    say: String,
}

impl OfRole {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.which.open()?;
        let machine = opened.machine(&self.machine)?;
        let role = role(machine, &self.role, &opened)?;
        let found = Candidates::of(&opened.answers, &opened.rules, machine, role, self.on.file_system());
        let unanswered = || anyhow!(text!("the answers do not hold this machine; open the logbook again"));
        let mut found = found.ok_or_else(unanswered)?;
        let ranked = found.ranked.clone();
        let form = Form {
            machine: machine_name(&opened.logbook, machine),
            role: role_name(&opened.logbook, machine, role),
            kinds: kinds(machine, role, &opened),
            candidates: ranked.iter().map(|one| form(one, &mut found, &opened)).collect(),
        };
        if json { as_json(&form) } else { Ok(in_words(&form)) }
    }
}

/// The kinds that fill a role, its own first.
fn kinds(machine: MachineId, role: RoleId, opened: &Opened) -> Vec<Kind> {
    let roles = opened.logbook.machine(machine).map_or(&[][..], |file| &file.roles);
    roles.iter().filter(|known| known.id == role).flat_map(Role::kinds).collect()
}

/// The role of a name, or else of a kind's label or stored name.
fn role(machine: MachineId, typed: &str, opened: &Opened) -> anyhow::Result<RoleId> {
    let roles = opened.logbook.machine(machine).map_or(&[][..], |file| &file.roles);
    let wanted = typed.to_lowercase();
    let named = roles.iter().find(|role| !role.name.is_empty() && role.name.to_lowercase() == wanted);
    let of_kind = || roles.iter().find(|role| role.kind.label().to_lowercase() == wanted || role.kind.name() == wanted);
    named.or_else(of_kind).map(|role| role.id).ok_or_else(|| {
        let known: Vec<String> = roles.iter().map(|role| role_name(&opened.logbook, machine, role.id)).collect();
        if known.is_empty() {
            return anyhow!(text!("{machine} has no roles", machine = machine_name(&opened.logbook, machine)));
        }
        anyhow!(text!(
            "{machine} has no role “{role}”: {known}",
            machine = machine_name(&opened.logbook, machine),
            role = typed,
            known = known.join(", ")
        ))
    })
}

fn form(candidate: &Candidate, found: &mut Candidates, opened: &Opened) -> CandidateForm {
    let file = opened.logbook.part(candidate.part);
    let loss = |loss: &Loss| LossForm {
        machine: machine_name(&opened.logbook, loss.machine),
        role: loss.role.map(|role| role_name(&opened.logbook, loss.machine, role)),
        fitted: loss.is_fitted,
        empties: loss.empties,
        stand_ins: loss.stand_ins,
        say: loss.said(&opened.logbook),
    };
    CandidateForm {
        part: super::fit::tag(candidate.part, opened),
        title: file.map_or_else(String::new, |file| opened.logbook.title_of(file)),
        with: candidate.with.map(|adapter| super::fit::tag(adapter, opened)),
        here: candidate.is_here,
        verdict: candidate.verdict,
        because: found.because(candidate).iter().map(|one| BecauseForm::of(one, opened)).collect(),
        weeks: candidate.weeks(),
        window: candidate.true_to.map(crate::assess::TrueTo::said),
        state: candidate.state,
        minutes: candidate.minutes,
        proven: candidate.is_proven,
        originality: candidate.originality,
        losses: candidate.losses.iter().map(loss).collect(),
    }
}

fn in_words(form: &Form) -> String {
    let mut title = text!("{machine}, {role}", machine = form.machine, role = form.role);
    if form.kinds.len() > 1 {
        let kinds: Vec<&str> = form.kinds.iter().map(|kind| kind.label()).collect();
        title += &text!(" (takes {kinds})", kinds = kinds.join(", "));
    }
    let count = counted!("{count} candidate", "{count} candidates", form.candidates.len());
    let mut lines = format!("{title}: {count}");
    for (at, one) in form.candidates.iter().enumerate() {
        let here = if one.here { text!(" (in this role)") } else { "" };
        let with = one.with.as_ref().map(|tag| text!(" with {tag} (adapter)", tag = tag)).unwrap_or_default();
        let _ = write!(lines, "\n{:>3}. {} {}{with}{here}: {}", at + 1, one.part, one.title, one.verdict.label());
        let mut facts = vec![one.state.label().to_owned()];
        facts.extend(one.window.clone());
        if one.minutes > 0 {
            facts.push(text!("{time} of work left", time = hours_text(one.minutes)));
        }
        facts.push(one.originality.label().to_lowercase());
        let _ = write!(lines, "\n     {}", facts.join("; "));
        for because in &one.because {
            let _ = write!(lines, "\n     {} {}", mark(because.verdict), because.say);
        }
        for loss in &one.losses {
            let _ = write!(lines, "\n     - {}", loss.say);
        }
    }
    lines
}
