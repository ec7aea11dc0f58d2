//! Where a machine stands on its way to ready: six gates in order, each with every reason, and what to do next.

mod next;

use chrono::NaiveDate;

pub use next::Next;

use super::answers::PartAnswers;
use super::fit::{self, Models, Placed, RoleFill, Uses};
use super::outstanding::Totals;
use super::power::{self, Member, Power};
use super::proofs::{self, ProofStanding};
use super::reason::{Reason, Weight};
use crate::record::{
    AttachmentKind, CaseState, FaultCaseFile, Hold, MachineFile, MachineId, PartFile, PartId, PhotoView,
};
use crate::rules::{Paper, Rules};

crate::words! {
    /// The gates in their order; a machine stands at the first that it has not passed.
    Gate {
        RolesFilled = "roles_filled", "Roles filled";
        PartsFit = "parts_fit", "Parts fit";
        SafeToSwitchOn = "safe_to_switch_on", "Safe to switch on";
        WorkDone = "work_done", "Work done";
        Proven = "proven", "Proven";
        PapersComplete = "papers_complete", "Papers complete";
        Ready = "ready", "Ready";
    }
}

crate::words! {
    /// How a gate stands.
    GateState {
        Passed = "passed", "Passed";
        Held = "held", "Held";
        NotKnown = "not_known", "Not known";
    }
}

impl Gate {
    /// What a reason does to this gate.
    pub fn weight(self, reason: &Reason) -> Weight {
        match self {
            Self::SafeToSwitchOn => reason.power_effect().into(),
            _ => reason.weight(),
        }
    }
}

/// One gate with every reason; a passed one may still carry remarks.
#[derive(Clone, Debug)]
pub struct GateAnswer {
    pub gate: Gate,
    pub state: GateState,
    pub reasons: Vec<Reason>,
}

impl GateAnswer {
    /// Remarks alone pass; anything not known is not passed, and is told apart only where nothing holds outright.
    fn new(gate: Gate, reasons: Vec<Reason>) -> Self {
        let state = match reasons.iter().map(|reason| gate.weight(reason)).max() {
            Some(Weight::Holds) => GateState::Held,
            Some(Weight::NotKnown) => GateState::NotKnown,
            Some(Weight::Remark) | None => GateState::Passed,
        };
        Self { gate, state, reasons }
    }

    /// Reasons that keep it from being passed.
    pub fn holding(&self) -> impl Iterator<Item = &Reason> {
        self.reasons.iter().filter(|reason| self.gate.weight(reason) != Weight::Remark)
    }
}

/// A machine's answer.
#[derive(Clone, Debug)]
pub struct Readiness {
    /// The first gate not passed; [`Gate::Ready`] when all are.
    pub at: Gate,
    /// The six gates before ready, in their order.
    pub gates: Vec<GateAnswer>,
    /// May power be applied to the machine?
    pub power: Power,
    pub roles: Vec<RoleFill>,
    /// The machine's own proofs.
    pub proofs: Vec<ProofStanding>,
    /// All outstanding work on its parts that is not for looks only.
    pub left: Totals,
    /// Minutes of the proofs still to be run, unattended ones included.
    pub proof_minutes: u32,
    /// The one next thing to do; `None` when it is ready.
    pub next: Option<Next>,
}

impl Readiness {
    /// Whether the machine is past its tests: what is left, if anything, is papers.
    pub fn is_tested(&self) -> bool {
        matches!(self.at, Gate::PapersComplete | Gate::Ready)
    }

    /// A gate's answer; `None` for [`Gate::Ready`], which has no reasons of its own.
    pub fn gate(&self, gate: Gate) -> Option<&GateAnswer> {
        self.gates.iter().find(|answer| answer.gate == gate)
    }
}

/// The answer for one machine; `placed` are its parts, fitted ones first, with all that is inside them.
pub(super) fn of_machine(
    file: &MachineFile,
    placed: &[Placed],
    uses: &Uses,
    rules: &Rules,
    today: NaiveDate,
) -> Readiness {
    let parts: Vec<&PartAnswers> =
        placed.iter().filter_map(|placed| placed.answers).map(|answers| &**answers).collect();
    let files: Vec<&PartFile> = parts.iter().map(|part| &*part.file).collect();

    let mut roles = fit::roles(file, placed);
    let build = fit::of_machine(file, placed, &roles, &mut Models::new(rules), None);
    fit::note_unplugged(file, &mut roles, &build);
    let mut fitting = work_reasons(&parts, |hold| hold <= Hold::Fitting);
    fitting.extend(fit::part_reasons(file, placed, uses, &build));
    let proofs = proofs::of_machine(file, &files, rules, today);
    let members =
        placed.iter().filter_map(|placed| Some(Member { answers: &**placed.answers?, is_fitted: placed.is_fitted }));
    let members: Vec<Member> = members.collect();
    let fits = build.because().cloned().map(Reason::Fit);
    let power = power::of_machine(file, &members, fits, &proofs, rules);

    let gates = vec![
        GateAnswer::new(Gate::RolesFilled, fit::role_reasons(file, &roles, placed)),
        GateAnswer::new(Gate::PartsFit, fitting),
        GateAnswer::new(Gate::SafeToSwitchOn, power.reasons.clone()),
        GateAnswer::new(Gate::WorkDone, ready_reasons(file, &parts)),
        held(Gate::Proven, proof_reasons(file, &parts, &proofs)),
        GateAnswer::new(Gate::PapersComplete, paper_reasons(&parts, rules)),
    ];
    let at = gates.iter().find(|gate| gate.state != GateState::Passed).map_or(Gate::Ready, |gate| gate.gate);
    let next = next::next(file, &gates, &parts);
    let tasks = parts.iter().flat_map(|part| &part.tasks).filter(|task| task.hold != Hold::Looks);
    let lacking = parts.iter().flat_map(|part| &part.proofs).chain(&proofs).filter(|proof| proof.is_lacking());
    Readiness {
        at,
        left: Totals::of(tasks),
        proof_minutes: lacking.map(|proof| proof.rule.minutes).sum(),
        gates,
        power,
        roles,
        proofs,
        next,
    }
}

/// A gate that any reason holds: what is not proven is not proven, whyever.
fn held(gate: Gate, reasons: Vec<Reason>) -> GateAnswer {
    let state = if reasons.is_empty() { GateState::Passed } else { GateState::Held };
    GateAnswer { gate, state, reasons }
}

fn work_reasons(parts: &[&PartAnswers], holds: impl Fn(Hold) -> bool) -> Vec<Reason> {
    parts
        .iter()
        .flat_map(|part| part.tasks.iter().enumerate())
        .filter(|(_, task)| holds(task.hold))
        .map(|(at, task)| power::work(at, task))
        .collect()
}

fn ready_reasons(file: &MachineFile, parts: &[&PartAnswers]) -> Vec<Reason> {
    let mut reasons = work_reasons(parts, |hold| hold == Hold::Ready);
    for part in parts {
        reasons.extend(part.undecided.iter().map(|finding| Reason::Undecided { part: part.part, finding: *finding }));
    }
    for part in parts {
        reasons.extend(open_faults(&part.file.cases, None, Some(part.part)));
    }
    reasons.extend(open_faults(&file.cases, Some(file.machine.id), None));
    reasons
}

fn open_faults(
    cases: &[FaultCaseFile],
    machine: Option<MachineId>,
    part: Option<PartId>,
) -> impl Iterator<Item = Reason> {
    let is_open = |reason: &Reason| {
        matches!(reason, Reason::FaultOpen { case, .. } if cases.iter().any(|file| {
            file.case.id == *case && file.case.state == CaseState::Open
        }))
    };
    power::faults(cases, machine, part).filter(is_open)
}

fn proof_reasons(file: &MachineFile, parts: &[&PartAnswers], own: &[ProofStanding]) -> Vec<Reason> {
    let mut reasons = Vec::new();
    for part in parts {
        reasons.extend(part.proofs.iter().filter(|proof| proof.is_lacking()).map(|proof| Reason::PartProof {
            part: part.part,
            proof: std::sync::Arc::clone(&proof.rule),
            standing: proof.standing,
        }));
    }
    reasons.extend(own.iter().filter(|proof| proof.is_lacking()).map(|proof| Reason::MachineProof {
        machine: file.machine.id,
        proof: std::sync::Arc::clone(&proof.rule),
        standing: proof.standing,
    }));
    reasons
}

fn paper_reasons(parts: &[&PartAnswers], rules: &Rules) -> Vec<Reason> {
    let mut reasons = Vec::new();
    for part in parts {
        let asked = rules.kind(part.file.part.kind).map_or(&[][..], |rule| &rule.papers);
        let missing = asked.iter().filter(|paper| !is_on_file(&part.file, **paper));
        reasons.extend(missing.map(|paper| Reason::PaperMissing { part: part.part, paper: *paper }));
    }
    reasons
}

fn is_on_file(file: &PartFile, paper: Paper) -> bool {
    let attached = |kind| file.attachments.iter().any(|attachment| attachment.kind == kind);
    match paper {
        Paper::Photograph => !file.photos.is_empty(),
        Paper::Settings => {
            !file.settings.is_empty()
                || attached(AttachmentKind::Settings)
                || file.photos.iter().any(|photo| photo.photo.view == PhotoView::Settings)
        }
        Paper::FirmwareImage => attached(AttachmentKind::FirmwareImage),
    }
}
