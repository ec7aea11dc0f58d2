//! May power be applied? No, not known, or yes: for a part on the bench, a supply on a load, a machine.

use super::answers::PartAnswers;
use super::findings::CAPACITOR_TOPIC;
use super::outstanding::Task;
use super::proofs::ProofStanding;
use super::reason::{Reason, Weight};
use crate::record::{CapacitorState, Custody, FindingId, Given, Kind, PartFile, Severity, Survey};
use crate::rules::{PowerEffect, Question, Rules};

crate::words! {
    /// Whether power may be applied; *not known* is shown as "do not".
    Verdict {
        No = "no", "No";
        NotKnown = "not_known", "Not known: do not";
        Yes = "yes", "Yes";
    }
}

/// The answer, with every reason that speaks against it.
#[derive(Clone, Debug)]
pub struct Power {
    pub verdict: Verdict,
    /// Those that say no first.
    pub reasons: Vec<Reason>,
}

impl Power {
    fn from_reasons(mut reasons: Vec<Reason>) -> Self {
        reasons.sort_by_key(|reason| std::cmp::Reverse(reason.weight()));
        let verdict = match reasons.first().map(Reason::weight) {
            Some(Weight::Holds) => Verdict::No,
            Some(Weight::NotKnown) => Verdict::NotKnown,
            Some(Weight::Remark) | None => Verdict::Yes,
        };
        Self { verdict, reasons }
    }

    /// Whether power may be applied, nothing speaking against it.
    pub fn may_be_applied(&self) -> bool {
        self.verdict == Verdict::Yes
    }
}

/// A part on the bench with all that is inside it, `parts[0]` being the part itself; a supply's own answer is about
/// the dummy load, so it is judged without the proof that it would give. `None` where nothing takes current.
pub fn of_part(parts: &[&PartAnswers]) -> Option<Power> {
    if parts.iter().all(|part| !part.takes_current) {
        return None;
    }
    let mut reasons = Vec::new();
    for (place, part) in parts.iter().enumerate() {
        reasons.extend(part.power.iter().cloned());
        if place > 0 {
            reasons.extend(lacking_before_power(part));
        }
    }
    Some(Power::from_reasons(reasons))
}

/// A machine with these parts and all that is inside them; `own` are reasons of the machine itself.
pub fn of_machine(parts: &[&PartAnswers], own: Vec<Reason>) -> Power {
    let mut reasons = own;
    for part in parts {
        reasons.extend(part.power.iter().cloned());
        reasons.extend(lacking_before_power(part));
        let custody = part.file.custody_now();
        if !custody.is_at_hand() {
            reasons.push(Reason::Away { part: part.part, custody });
        }
    }
    Power::from_reasons(reasons)
}

/// Whether any of the parts is a supply.
pub fn has_supply(parts: &[&PartAnswers]) -> bool {
    parts.iter().any(|part| part.file.part.kind == Kind::PowerSupply)
}

fn lacking_before_power(part: &PartAnswers) -> impl Iterator<Item = Reason> {
    let lacking = |proof: &&ProofStanding| proof.rule.power > PowerEffect::Nothing && !proof.standing.is_good();
    part.proofs.iter().filter(lacking).map(|proof| Reason::PartProof {
        part: part.part,
        proof: std::sync::Arc::clone(&proof.rule),
        standing: proof.standing,
    })
}

/// What speaks against power on this part, taken for itself.
pub(super) fn own_reasons(
    file: &PartFile,
    tasks: &[Task],
    undecided: &[FindingId],
    takes_current: bool,
    rules: &Rules,
) -> Vec<Reason> {
    let part = file.part.id;
    if matches!(file.custody_now(), Custody::Sold | Custody::Scrapped | Custody::GivenBack) {
        return Vec::new();
    }
    let mut reasons: Vec<Reason> = Vec::new();
    if file.part.is_quarantined() {
        reasons.push(Reason::KeptApart { part });
    }
    reasons.extend(tasks.iter().enumerate().filter(|(_, task)| task.holds_power()).map(|(at, task)| work(at, task)));
    let grave = |id: &&FindingId| file.finding(**id).is_some_and(|finding| finding.severity() == Severity::Grave);
    reasons.extend(undecided.iter().filter(grave).map(|finding| Reason::Undecided { part, finding: *finding }));
    if takes_current {
        reasons.extend(not_looked(file, rules));
    }
    reasons
}

/// The reason that a task is.
pub(super) fn work(at: usize, task: &Task) -> Reason {
    Reason::Work { part: task.part, task: at as u16, job: task.job.clone(), hold: task.hold, state: task.state }
}

/// What was not looked at on this part and could hurt under power.
fn not_looked(file: &PartFile, rules: &Rules) -> Vec<Reason> {
    let part = file.part.id;
    let surveys: Vec<&Survey> = file.surveys_now().collect();
    if surveys.is_empty() {
        return vec![Reason::Unsurveyed { part }];
    }
    let months = rules.kind(file.part.kind).map_or(0, |rule| rule.look_again_months);
    let holds_power = |question: &Question| question.power > PowerEffect::Nothing;
    rules
        .questions_for(file.part.kind)
        .iter()
        .filter(|question| holds_power(question))
        .filter(|question| !is_answered(question, &surveys, months) && !positions_answer(question, file))
        .map(|question| Reason::NotLooked { part, question: std::sync::Arc::clone(question) })
        .collect()
}

/// Whether the latest survey answers the question, or an earlier one within the kind's interval before it: a second
/// look at one thing does not make the rest unknown, a look years back says nothing any more. *Could not tell* in
/// between takes an earlier answer away.
fn is_answered(question: &Question, surveys: &[&Survey], months: u32) -> bool {
    let Some(latest) = surveys.last() else { return false };
    let oldest = latest.looked.on.span().and_then(|span| span.first.checked_sub_months(chrono::Months::new(months)));
    for (at, survey) in surveys.iter().enumerate().rev() {
        let is_recent = || survey.looked.on.span().zip(oldest).is_some_and(|(span, oldest)| span.first >= oldest);
        if at + 1 < surveys.len() && !is_recent() {
            return false;
        }
        match survey.answer(&question.name).map(|answer| &answer.given) {
            Some(Given::Is(_) | Given::DoesNotApply) => return true,
            Some(Given::CouldNotTell) => return false,
            Some(Given::NotLooked) | None => {}
        }
    }
    false
}

/// Whether logged capacitor positions, each of them looked at, answer for the survey.
fn positions_answer(question: &Question, file: &PartFile) -> bool {
    question.topic == CAPACITOR_TOPIC
        && !file.capacitors.is_empty()
        && file.capacitors.iter().all(|position| position.state() != CapacitorState::NotLooked)
}
