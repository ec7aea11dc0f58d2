//! Facts as they were recorded: answers of surveys, their figures, capacitors' states. They count by themselves; where
//! a finding has followed one up, the finding speaks instead.

use std::sync::Arc;

use super::asked::Asked;
use super::effect::of_severity;
use crate::assess::findings::raised;
use crate::assess::proofs::ProofStanding;
use crate::assess::reason::Reason;
use crate::record::{
    Answer, CapacitorFile, CapacitorState, Dielectric, Given, Moment, Nature, PartFile, Survey, Touches, Work,
};
use crate::rules::{PowerEffect, Question, Rules};
use crate::trade::capacitor::series::Series;
use crate::trade::capacitor::verdict::{Grade, Measured, Rated};

/// What the last answer to each question does.
pub(super) fn of_answers(file: &PartFile, asked: &Asked, rules: &Rules) -> Vec<Reason> {
    let says = |answer: &Answer| matches!(answer.given, Given::Is(_) | Given::DoesNotApply);
    let of_question = |(place, question): (usize, &Arc<Question>)| {
        let known = asked.until_today(place).filter_map(|(survey, answer)| Some((survey, answer?)));
        let last = known.rev().find(|(_, answer)| says(answer));
        // A survey with a date to come may have a slip in its date: what it found bad counts, what it found good not.
        let dated_ahead = asked.ever(place).rev().find(|(_, answer)| says(answer));
        let dated_ahead = dated_ahead.filter(|(ahead, _)| last.is_none_or(|(last, _)| last.id != ahead.id));
        let mut said = dated_ahead.into_iter().chain(last);
        said.find_map(|(survey, answer)| of_answer(file, question, survey, answer, rules))
    };
    asked.questions().filter_map(of_question).collect()
}

fn of_answer(
    file: &PartFile,
    question: &Arc<Question>,
    survey: &Survey,
    answer: &Answer,
    rules: &Rules,
) -> Option<Reason> {
    let part = file.part.id;
    let given = match &answer.given {
        Given::Is(given) => given,
        Given::DoesNotApply if question.power_on(file.part.kind) > PowerEffect::Nothing => {
            let always = question.always_on.contains(&file.part.kind);
            let effect = if always { PowerEffect::NotKnown } else { PowerEffect::Remark };
            let (question, why) = (Arc::clone(question), answer.note.as_str().into());
            return Some(Reason::SaidNotToApply { part, question, why, effect });
        }
        Given::DoesNotApply | Given::NotLooked | Given::CouldNotTell => return None,
    };
    // An answer that no table has is told among the names that are unknown.
    let said = question.answers.iter().position(|row| row.name == *given)?;
    let row = &question.answers[said];
    let raised = raised(question, row, answer, rules);
    let by_finding = raised.iter().map(|(what, severity)| {
        let follows = |moment: Moment| !survey.looked.is_after(moment);
        if is_followed_up(file, what, follows) {
            return PowerEffect::Nothing;
        }
        rules.finding(what).map_or(of_severity(*severity), |rule| rule.power_at(*severity))
    });
    let by_finding = by_finding.max().unwrap_or(PowerEffect::Nothing);
    let is_followed = !raised.is_empty() && by_finding == PowerEffect::Nothing;
    let effect = if is_followed { PowerEffect::Nothing } else { row.power.max(by_finding) };
    (effect > PowerEffect::Nothing).then(|| Reason::AnswerSays { part, question: Arc::clone(question), said, effect })
}

/// Whether a finding was looked at, or decided on, after the fact that calls for it.
fn is_followed_up(file: &PartFile, what: &str, follows: impl Fn(Moment) -> bool) -> bool {
    let mut known = file.findings.iter().filter(|known| known.finding.what == what);
    known.any(|known| known.last().is_some_and(|last| follows(last.looked)))
}

/// What capacitors in a bad state do, and those measured out of their limits.
pub(super) fn of_capacitors(file: &PartFile, rules: &Rules) -> Vec<Reason> {
    let bad = file.capacitors.iter().filter_map(|position| {
        let state = match position.state() {
            CapacitorState::Sound | CapacitorState::NotLooked if is_out_of_limits(position) => {
                CapacitorState::OutOfLimits
            }
            CapacitorState::Sound | CapacitorState::NotLooked => return None,
            state => state,
        };
        let rule = rules.capacitor_finding(state, position.position.made_of());
        let follows = |moment: Moment| !position.looked().is_after(moment);
        if rule.is_some_and(|rule| is_followed_up(file, &rule.name, follows)) {
            return None;
        }
        let effect = rule.map_or(PowerEffect::NotKnown, |rule| rule.power_at(rule.severity));
        Some(Reason::CapacitorState { part: file.part.id, position: position.position.id, state, effect })
    });
    bad.collect()
}

/// Whether what was last measured on an electrolytic is beyond what is printed on it.
fn is_out_of_limits(file: &CapacitorFile) -> bool {
    let position = &file.position;
    let Some(look) = file.looks.last().filter(|_| position.made_of().is_wet()) else { return false };
    // A bipolar one leaks more than the limits of polar ones say.
    let leakage_ua = look.leakage_ua.filter(|_| position.made_of() == Dielectric::WetAluminium);
    let measured =
        Measured { capacitance_uf: look.measured_uf, esr_mohm: look.esr_mohm, leakage_ua, ..Measured::default() };
    let (Some(capacitance_uf), Some(volts)) = (position.capacitance_uf, position.voltage_v) else { return false };
    let is_measured = look.measured_uf.is_some() || look.esr_mohm.is_some() || leakage_ua.is_some();
    let rated = Rated { capacitance_uf, volts, tolerance: None, series: Series::default(), esr_100khz_mohm: None };
    is_measured && crate::trade::capacitor::verdict(&rated, &measured).grade == Grade::OutOfLimits
}

/// What was not looked at on this part and could hurt under power.
pub(super) fn not_looked(file: &PartFile, asked: &Asked, proofs: &[ProofStanding], rules: &Rules) -> Vec<Reason> {
    let part = file.part.id;
    let could_hurt = |question: &Question| question.power_on(file.part.kind) > PowerEffect::Nothing;
    if !asked.is_surveyed() {
        let asks = rules.questions_for(file.part.kind).iter().any(|question| could_hurt(question));
        return asks.then_some(Reason::Unsurveyed { part }).into_iter().collect();
    }
    let months = rules.kind(file.part.kind).map_or(0, |rule| rule.look_again_months);
    let of_question = |(place, question): (usize, &Arc<Question>)| {
        let is_shown = || question.shown_by.as_deref().is_some_and(|proof| is_proven(proof, file, proofs));
        let tried = match answered(asked, place, months) {
            Ok(looked) if !is_void(question, file, looked, rules) => return None,
            _ if is_shown() => return None,
            Ok(_) => None,
            Err(tried) => tried,
        };
        Some(Reason::NotLooked { part, question: Arc::clone(question), tried })
    };
    asked.questions().filter(|(_, question)| could_hurt(question)).filter_map(of_question).collect()
}

/// Whether work that is not certainly before a look makes its answer say nothing any more.
fn is_void(question: &Question, file: &PartFile, looked: Moment, rules: &Rules) -> bool {
    let sets_anew = |work: &Work| question.void_after.contains(&work.rule) && work.state.has_touched();
    file.work.iter().any(|work| sets_anew(work) && !looked.is_surely_after(work.changed))
        || (question.shown_by.is_some() && is_touched_after(file, looked, rules))
}

/// Whether a test holds today, and no work has touched the part's circuits since.
fn is_proven(test: &str, file: &PartFile, proofs: &[ProofStanding]) -> bool {
    let standing = proofs.iter().find(|proof| proof.rule.name == test && proof.standing.is_good());
    standing.and_then(|proof| file.proofs.iter().find(|run| Some(run.id) == proof.proof)).is_some()
}

/// Whether work that changes circuits, or the replacement of a capacitor, is not certainly before a look.
fn is_touched_after(file: &PartFile, looked: Moment, rules: &Rules) -> bool {
    let changes = |work: &&Work| match (rules.work(&work.rule), work.touches) {
        (Some(rule), _) => rule.nature != Nature::Care,
        (None, Touches::NothingElectrical) => false,
        (None, Touches::Electrical | Touches::Unstated) => true,
    };
    let mut work = file.work.iter().filter(|work| work.state.has_touched()).filter(changes);
    let looks = file.capacitors.iter().flat_map(|position| &position.looks);
    let mut replaced = looks.filter(|look| !look.replaced_by.is_empty());
    work.any(|work| !looked.is_surely_after(work.changed)) || replaced.any(|look| !looked.is_surely_after(look.looked))
}

/// When the latest survey answered the question, or an earlier one within the kind's interval before it: a second look
/// at one thing does not make the rest unknown, a look years back says nothing any more.
///
/// # Errors
/// When somebody last looked and could not tell, which takes an earlier answer away; `None` where nobody looked.
fn answered(asked: &Asked, place: usize, months: u32) -> Result<Moment, Option<Moment>> {
    let mut answers = asked.until_today(place).rev().peekable();
    let Some((latest, _)) = answers.peek() else { return Err(None) };
    let oldest = latest.looked.on.span().and_then(|span| span.first.checked_sub_months(chrono::Months::new(months)));
    for (at, (survey, answer)) in answers.enumerate() {
        let is_recent = || survey.looked.on.span().zip(oldest).is_some_and(|(span, oldest)| span.first >= oldest);
        if at > 0 && !is_recent() {
            return Err(None);
        }
        match answer.map(|answer| &answer.given) {
            Some(Given::Is(_) | Given::DoesNotApply) => return Ok(survey.looked),
            Some(Given::CouldNotTell) => return Err(Some(survey.looked)),
            Some(Given::NotLooked) | None => {}
        }
    }
    Err(None)
}
