//! What a survey's answers mean for a part's findings.

use std::cmp::Ordering;

use uuid::Uuid;

use super::{Opening, Seen, as_latest, further_look, is_overtaken, is_worse, open, seen_again};
use crate::record::{
    Answer, Entry, FindingFile, FindingSource, FindingState, Given, Look, PartFile, Severity, Survey, SurveyId,
};
use crate::rules::{AnswerRule, Question, Rules};
use crate::text;

/// The topic whose findings come from logged capacitor positions where there are any.
pub(crate) const CAPACITOR_TOPIC: &str = "capacitors";

/// The findings and looks that a new survey brings.
///
/// An answer raises its finding, keeps it, or worsens it, and brings a cured or confirmed one back; an answer that
/// raises nothing confirms the open and cured findings of its question. *Not looked*, *could not tell* and *does not
/// apply* change nothing. A survey that corrects another takes back what that one did and this one does not say.
/// What a later look or survey has already answered stays as that one left it.
pub fn after_survey(file: &PartFile, survey: &Survey, rules: &Rules, ids: &mut dyn FnMut() -> Uuid) -> Vec<Entry> {
    let mut entries = Vec::new();
    let positions_hold = !file.capacitors.is_empty();
    for answer in &survey.answers {
        let Given::Is(given) = &answer.given else { continue };
        let Some(question) = rules.question(&answer.question) else { continue };
        let Some(said) = question.answers.iter().find(|row| row.name == *given) else { continue };
        if (positions_hold && question.topic == CAPACITOR_TOPIC) || answered_later(file, survey, &question.name) {
            continue;
        }
        let raised = raised(question, said, answer, rules);
        for (what, severity) in &raised {
            let share_percent = share_percent(question, answer);
            let seen =
                Seen { what, severity: *severity, share_percent, looked: survey.looked, survey: Some(survey.id) };
            // What can be used by eye calls for nothing but to be watched, unless it is grave.
            let by_eye = *severity < Severity::Grave && rules.finding(what).is_some_and(|rule| rule.by_eye);
            let state = if by_eye { FindingState::Watched } else { FindingState::Open };
            raise((file, survey, answer), &seen, state, &mut entries, ids);
        }
        if raised.is_empty() {
            entries.extend(confirmed(file, survey, &question.name, ids));
        }
    }
    if let Some(slip) = survey.supersedes {
        entries.extend(taken_back(file, survey, slip, &entries, ids));
    }
    entries
}

/// The findings that an answer and its figure raise, each once with its worst severity.
pub(in crate::assess) fn raised<'a>(
    question: &'a Question,
    said: &'a AnswerRule,
    answer: &Answer,
    rules: &Rules,
) -> Vec<(&'a str, Severity)> {
    let usual = |what: &str| rules.finding(what).map_or(Severity::Plain, |rule| rule.severity);
    let mut raised: Vec<(&str, Severity)> = Vec::new();
    let mut raise = |what: &'a str, severity: Severity| match raised.iter_mut().find(|(name, _)| *name == what) {
        Some((_, worst)) => *worst = severity.max(*worst),
        None => raised.push((what, severity)),
    };
    if let Some(what) = &said.finding {
        raise(what, said.severity.unwrap_or_else(|| usual(what)));
    }
    if let (Some(rule), Some(figure)) = (&question.figure, answer.figure) {
        let below = rule.bounds.iter().filter(|bound| bound.below.is_some_and(|least| figure < least));
        let above = rule.bounds.iter().filter(|bound| bound.above.is_some_and(|most| figure > most));
        let furthest = [
            below.min_by(|a, b| a.below.partial_cmp(&b.below).unwrap_or(Ordering::Equal)),
            above.max_by(|a, b| a.above.partial_cmp(&b.above).unwrap_or(Ordering::Equal)),
        ];
        for bound in furthest.into_iter().flatten() {
            raise(&bound.finding, bound.severity.unwrap_or_else(|| usual(&bound.finding)));
        }
    }
    raised
}

fn share_percent(question: &Question, answer: &Answer) -> Option<f64> {
    answer.figure.filter(|_| question.figure.as_ref().is_some_and(|figure| figure.unit == "%"))
}

/// Whether a later survey has answered the question, so that this one only adds to the past.
fn answered_later(file: &PartFile, survey: &Survey, question: &str) -> bool {
    file.surveys_now()
        .filter(|other| other.id != survey.id && Some(other.id) != survey.supersedes)
        .filter(|other| other.looked.is_after(as_latest(survey.looked)))
        .any(|other| other.answer(question).is_some_and(|answer| matches!(answer.given, Given::Is(_))))
}

fn of_question<'a>(file: &'a PartFile, question: &'a str) -> impl Iterator<Item = &'a FindingFile> {
    file.findings.iter().filter(move |known| known.finding.question == question)
}

fn raise(
    (file, survey, answer): (&PartFile, &Survey, &Answer),
    seen: &Seen,
    state: FindingState,
    entries: &mut Vec<Entry>,
    ids: &mut dyn FnMut() -> Uuid,
) {
    let known = of_question(file, &answer.question).filter(|known| known.finding.what == seen.what).last();
    let Some(known) = known else {
        let opening = Opening {
            part: file.part.id,
            place_on_part: &answer.place_on_part,
            source: FindingSource::Survey,
            question: &answer.question,
            note: answer.note.clone(),
            work: None,
            state,
        };
        entries.extend(open(opening, seen, ids));
        return;
    };
    if is_overtaken(known, survey.looked) {
        return;
    }
    let before = last_look_but(known, survey.supersedes);
    let worse = before.is_some_and(|before| is_worse(seen.severity, seen.share_percent, before));
    let state = seen_again(known.state(), worse);
    entries.extend(further_look(known, state, seen, ids).map(Entry::from));
}

/// Looks that confirm what the question found before and does not find any more.
fn confirmed(file: &PartFile, survey: &Survey, question: &str, ids: &mut dyn FnMut() -> Uuid) -> Vec<Entry> {
    of_question(file, question)
        .filter(|known| known.state() != FindingState::Confirmed && !is_overtaken(known, survey.looked))
        .filter_map(|known| {
            let seen = Seen {
                what: &known.finding.what,
                severity: known.severity(),
                share_percent: None,
                looked: survey.looked,
                survey: Some(survey.id),
            };
            further_look(known, FindingState::Confirmed, &seen, ids).map(Entry::from)
        })
        .collect()
}

/// The last look that the corrected survey did not bring.
fn last_look_but(file: &FindingFile, slip: Option<SurveyId>) -> Option<&Look> {
    file.looks.iter().rev().find(|look| slip.is_none() || look.survey != slip)
}

/// Looks that set findings back to where they stood before a survey that is now corrected.
fn taken_back(
    file: &PartFile,
    survey: &Survey,
    slip: SurveyId,
    said: &[Entry],
    ids: &mut dyn FnMut() -> Uuid,
) -> Vec<Entry> {
    let is_said = |known: &FindingFile| {
        said.iter().any(|entry| matches!(entry, Entry::Look(look) if look.finding == known.finding.id))
    };
    let undone = file.findings.iter().filter(|known| known.last().is_some_and(|last| last.survey == Some(slip)));
    undone
        .filter(|known| !is_said(known))
        .filter_map(|known| {
            let before = last_look_but(known, Some(slip));
            let state = match (before.map(|look| look.state), known.state()) {
                (None, _) => FindingState::Accepted,
                (Some(then), FindingState::Confirmed) if then.calls_for_work() => FindingState::Returned,
                (Some(then), _) => then,
            };
            let seen = Seen {
                what: &known.finding.what,
                severity: before.map_or(known.severity(), |look| look.severity),
                share_percent: before.and_then(|look| look.share_percent),
                looked: survey.looked,
                survey: Some(survey.id),
            };
            let mut look = further_look(known, state, &seen, ids)?;
            look.again_by = before.map(|look| look.again_by).unwrap_or_default();
            text!("The survey that said so was corrected").clone_into(&mut look.reason);
            Some(look.into())
        })
        .collect()
}
