//! A part's surveys with their answers in the order of the questions, so that each answer is looked for once.

use std::sync::Arc;

use chrono::NaiveDate;

use crate::assess::findings::CAPACITOR_TOPIC;
use crate::record::{Answer, CapacitorState, PartFile, Survey};
use crate::rules::{Question, Rules, find_question};

/// What a part was asked, and what was answered.
pub(super) struct Asked<'a> {
    questions: &'a [Arc<Question>],
    /// Surveys that no correction supersedes, oldest first.
    surveys: Vec<Answers<'a>>,
    /// Whether logged capacitor positions, each of them looked at, answer for the surveys.
    positions_answer: bool,
}

/// A survey's answers by the places of the questions.
struct Answers<'a> {
    survey: &'a Survey,
    given: Vec<Option<&'a Answer>>,
    /// Dated after today.
    is_ahead: bool,
}

impl<'a> Asked<'a> {
    pub fn of(file: &'a PartFile, rules: &'a Rules, today: NaiveDate) -> Self {
        let questions = rules.questions_for(file.part.kind);
        let surveys = file.surveys_now().map(|survey| {
            let mut given = vec![None; questions.len()];
            let mut last = 0;
            for answer in &survey.answers {
                if let Some(place) = find_question(questions, answer.question, last) {
                    given[place] = given[place].or(Some(answer));
                    last = place;
                }
            }
            let is_ahead = survey.looked.on.span().is_some_and(|span| span.first > today);
            Answers { survey, given, is_ahead }
        });
        let is_looked_at = |state: CapacitorState| state != CapacitorState::NotLooked;
        let positions_answer =
            !file.capacitors.is_empty() && file.capacitors.iter().all(|position| is_looked_at(position.state()));
        Self { questions, surveys: surveys.collect(), positions_answer }
    }

    /// The questions that surveys answer, with their places.
    pub fn questions(&self) -> impl Iterator<Item = (usize, &'a Arc<Question>)> + use<'a> {
        let positions_answer = self.positions_answer;
        let asked =
            move |(_, question): &(usize, &Arc<Question>)| !(positions_answer && question.topic == CAPACITOR_TOPIC);
        self.questions.iter().enumerate().filter(asked)
    }

    /// Whether it was surveyed up to today.
    pub fn is_surveyed(&self) -> bool {
        self.surveys.iter().any(|row| !row.is_ahead)
    }

    /// The answers to a question up to today, each with its survey, oldest first; `None` where it was left out.
    pub fn until_today(
        &self,
        place: usize,
    ) -> impl DoubleEndedIterator<Item = (&'a Survey, Option<&'a Answer>)> + use<'_, 'a> {
        self.surveys.iter().filter(|row| !row.is_ahead).map(move |row| (row.survey, row.given[place]))
    }

    /// The same with those that are dated after today.
    pub fn ever(&self, place: usize) -> impl DoubleEndedIterator<Item = (&'a Survey, &'a Answer)> + use<'_, 'a> {
        self.surveys.iter().filter_map(move |row| Some((row.survey, row.given[place]?)))
    }
}
