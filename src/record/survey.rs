//! A dated round of questions about a part's condition.

use serde::{Deserialize, Deserializer, Serialize};

use super::{Id, Moment, Name, PartId};

/// The key of a [`Survey`].
pub type SurveyId = Id<Survey>;

/// One look at a part. A later survey answers again; an earlier one is never changed.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Survey {
    pub id: SurveyId,
    pub part: PartId,
    pub looked: Moment,
    /// Who looked.
    pub who: String,
    /// Why: on arrival, before fitting, yearly look.
    pub why: String,
    /// The earlier survey that this one corrects (a slip of the pen, not a change of the part).
    pub supersedes: Option<SurveyId>,
    pub note: String,
    /// Answers in the order they were asked; a question left out was not looked at.
    pub answers: Vec<Answer>,
}

/// What was answered to one question.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Answer {
    /// The question's name in `resources/rules/questions.toml`.
    pub question: Name,
    pub given: Given,
    /// Where on the part, in words.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub place_on_part: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
    /// A figure that goes with the answer, in the question's unit (cell voltage, share of a surface).
    #[serde(default, skip_serializing_if = "Option::is_none", deserialize_with = "figure")]
    pub figure: Option<f64>,
}

/// A figure as it was told; −0 is 0.
fn figure<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Option<f64>, D::Error> {
    Ok(Option::<f64>::deserialize(deserializer)?.map(|figure| figure + 0.0))
}

/// An answer: one of the question's own, or one of the three that say nothing about the part. Never stored alike.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Given {
    NotLooked,
    CouldNotTell,
    DoesNotApply,
    /// The answer's name in the question's list.
    Is(Name),
}

impl Survey {
    /// The answer to a question; `None` when it was left out.
    pub fn answer(&self, question: &str) -> Option<&Answer> {
        self.answers.iter().find(|answer| answer.question == question)
    }
}
