//! Fault-finding: what the trials of a case clear, what stays under suspicion, and the next trial that tells most.
//!
//! One fault is taken to be behind one symptom (our own rule, as are all its figures). Each suspect starts with a
//! weight: 3, or 1 where it is proven; 4 more where a proof of it failed, 3 more for a grave open finding and 1 more
//! for any other; what is no part at all (a contact, a setting, a program) starts with 2. A trial then says of each
//! suspect how well it goes with what happened, and weights are multiplied by that:
//!
//! | a suspect was exchanged for a known-good part, or taken out, and the symptom | that suspect | each other |
//! |---|---|---|
//! | stayed | × 0.05 | – |
//! | stayed, with a part that was not proven | × 0.5 | – |
//! | went | – | × 0.05 |
//! | changed | – | × 0.5 |
//!
//! A suspect is cleared by a trial of the first row, unless the symptom went in another trial of it. Known-good is a
//! part that has passed a proof which was not failed since.
//!
//! Before any exchange, the rails' resistance to ground is measured. The next trial is then the exchange that is
//! expected to tell most: whose suspect is nearest to even odds (most bits by Shannon's measure), of those for which
//! a known-good part of the same kind is at hand and not in use, or which the rest runs without. What nobody can
//! exchange asks for a known-good part first.

mod end;
mod next;

use std::collections::HashMap;

pub use end::{Found, found, not_reproduced};
pub use next::Proposal;

use super::{Answers, PartAnswers, PartState};
use crate::record::{
    FaultCaseFile, Kind, Logbook, Moment, PartFile, PartId, ProofResult, Reading, Severity, Trial, TrialId, TrialResult,
};
use crate::rules::Rules;

const STAYED: f64 = 0.05;
const STAYED_UNPROVEN: f64 = 0.5;
const CHANGED: f64 = 0.5;
const ELSEWHERE: f64 = 2.0;
/// A share from which the search may end.
const ENOUGH: f64 = 0.8;
/// The test that settles the rails' resistance.
const RAILS: &str = "rails-to-ground";

/// How a suspect stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Suspicion {
    /// Nothing was tried on it, or nothing that settles it.
    Suspected,
    /// The symptom stayed without it.
    Cleared { by: TrialId },
    /// The symptom went without it.
    Accused { by: TrialId },
}

/// A part that may be behind the symptom.
#[derive(Clone, Debug)]
pub struct Suspect {
    pub part: PartId,
    /// Share of all suspicion, 0–1.
    pub share: f64,
    pub suspicion: Suspicion,
}

/// What follows from a case's trials.
#[derive(Clone, Debug)]
pub struct CaseAnswer {
    /// Most suspected first.
    pub suspects: Vec<Suspect>,
    /// Share of what is no part at all, 0–1.
    pub elsewhere: f64,
    /// Trials in which the symptom stayed with a part that had passed no proof then: they settle little.
    pub doubtful: Vec<TrialId>,
    /// Whether the rails' resistance to ground was measured since the case was opened.
    pub rails_measured: bool,
    /// What to do next; `None` for a case that is closed.
    pub next: Option<Proposal>,
}

/// The answer for a case of a part or of a machine. Suspects are the part with all that is inside it, or the
/// machine's parts that current reaches, and every part that was exchanged in a trial.
pub fn of_case(file: &FaultCaseFile, answers: &Answers, logbook: &Logbook, rules: &Rules) -> CaseAnswer {
    let suspects = suspects(file, answers);
    let mut weights: Vec<f64> = suspects.iter().map(|part| prior(part)).collect();
    let mut elsewhere = ELSEWHERE;
    let mut standing: HashMap<PartId, Suspicion> = HashMap::new();
    let mut doubtful = Vec::new();
    for trial in &file.trials {
        let Some(out) = trial.suspect else { continue };
        let proven = trial.known_good.is_none_or(|good| was_proven(logbook, good, trial.tried));
        if !proven && trial.result == TrialResult::SymptomStays {
            doubtful.push(trial.id);
        }
        let (own, others) = match (trial.result, proven) {
            (TrialResult::SymptomStays, true) => (STAYED, 1.0),
            (TrialResult::SymptomStays, false) => (STAYED_UNPROVEN, 1.0),
            (TrialResult::SymptomGone, _) => (1.0, STAYED),
            (TrialResult::SymptomChanged, _) => (1.0, CHANGED),
            (TrialResult::Undecided, _) => (1.0, 1.0),
        };
        for (weight, part) in weights.iter_mut().zip(&suspects) {
            *weight *= if part.part == out { own } else { others };
        }
        elsewhere *= others;
        note(&mut standing, trial, out, proven);
    }
    let sum = weights.iter().sum::<f64>() + elsewhere;
    let mut shares: Vec<Suspect> = suspects
        .iter()
        .zip(&weights)
        .map(|(part, weight)| Suspect {
            part: part.part,
            share: weight / sum,
            suspicion: standing.get(&part.part).copied().unwrap_or(Suspicion::Suspected),
        })
        .collect();
    // Equal ones in the order of their tags.
    let tag = |part: PartId| answers.part(part).map(|answers| answers.file.part.tag.as_str());
    shares.sort_by(|one, other| other.share.total_cmp(&one.share).then_with(|| tag(one.part).cmp(&tag(other.part))));
    let rails_measured = rails_measured(file, &suspects, answers);
    let mut answer = CaseAnswer { suspects: shares, elsewhere: elsewhere / sum, doubtful, rails_measured, next: None };
    answer.next = next::next(file, &answer, answers, rules);
    answer
}

/// What one trial says of the part that was out.
fn note(standing: &mut HashMap<PartId, Suspicion>, trial: &Trial, out: PartId, proven: bool) {
    let accused = matches!(standing.get(&out), Some(Suspicion::Accused { .. }));
    match trial.result {
        TrialResult::SymptomGone => {
            standing.insert(out, Suspicion::Accused { by: trial.id });
        }
        TrialResult::SymptomStays if proven && !accused => {
            standing.insert(out, Suspicion::Cleared { by: trial.id });
        }
        _ => {}
    }
}

fn suspects<'a>(file: &FaultCaseFile, answers: &'a Answers) -> Vec<&'a PartAnswers> {
    let mut ids: Vec<PartId> = Vec::new();
    if let Some(part) = file.case.part {
        ids.push(part);
        ids.extend(answers.inside(part));
    }
    if let Some(machine) = file.case.machine.and_then(|machine| answers.machine(machine)) {
        ids.extend(&machine.members);
    }
    ids.extend(file.trials.iter().filter_map(|trial| trial.suspect));
    let mut seen = std::collections::HashSet::new();
    let known = ids.into_iter().filter(|part| seen.insert(*part)).filter_map(|part| answers.part(part));
    known.map(|part| &**part).filter(|part| part.takes_current && part.file.part.kind != Kind::TestRig).collect()
}

/// The weight of a suspect before any trial.
fn prior(part: &PartAnswers) -> f64 {
    let start = if is_known_good(part) { 1.0 } else { 3.0 };
    let failed = part.proofs.iter().any(|proof| proof.standing == super::Standing::Failed);
    let open = part.file.findings.iter().filter(|finding| finding.state().calls_for_work());
    let worst = open.map(crate::record::FindingFile::severity).max();
    let finding = match worst {
        Some(Severity::Grave) => 3.0,
        Some(_) => 1.0,
        None => 0.0,
    };
    start + if failed { 4.0 } else { 0.0 } + finding
}

/// Whether a part is good to exchange a suspect for today.
fn is_known_good(part: &PartAnswers) -> bool {
    part.state == PartState::Proven
}

/// Whether a part had passed a proof by a moment, with none of the same test failed since.
fn was_proven(logbook: &Logbook, part: PartId, by: Moment) -> bool {
    let Some(file) = logbook.part(part) else { return false };
    let decided = |proof: &&crate::record::Proof| proof.result != ProofResult::Undecided && !proof.run.is_after(by);
    let mut last: HashMap<&str, ProofResult> = HashMap::new();
    for proof in file.proofs.iter().filter(decided) {
        last.insert(&proof.test, proof.result);
    }
    last.values().any(|result| *result == ProofResult::Passed)
        && last.values().all(|result| *result != ProofResult::Failed)
}

/// Whether any suspect's rails were measured to ground, or its proof run, since the case was opened.
fn rails_measured(file: &FaultCaseFile, suspects: &[&PartAnswers], answers: &Answers) -> bool {
    let since = |moment: Moment| !file.case.opened.is_after(moment);
    let to_ground = |reading: &Reading| since(reading.measured) && reading.quantity.contains("to ground");
    let of_part = |part: &PartFile| {
        part.readings.iter().any(to_ground) || part.proofs.iter().any(|proof| proof.test == RAILS && since(proof.run))
    };
    let machine = file.case.machine.and_then(|machine| answers.machine(machine));
    suspects.iter().any(|part| of_part(&part.file))
        || machine.is_some_and(|machine| machine.file.readings.iter().any(to_ground))
}
