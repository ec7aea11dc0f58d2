//! What to beware of in a job: the worst before the first step, at most three; what holds for a whole sitting once.

use std::sync::Arc;

use super::Task;
use crate::record::Competence;
use crate::rules::{CautionRule, Cautions, worst_first};
use crate::text;
use crate::text::say;

/// The cautions of a job in the order they are read.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct JobCautions {
    /// Before the first step.
    pub first: Vec<String>,
    /// After the steps.
    pub later: Vec<String>,
}

impl JobCautions {
    /// Of a job that is read by itself: what holds for its sitting too.
    pub fn alone(task: &Task) -> Self {
        Self::of(task, task.cautions().rows().iter().map(|row| &**row))
    }

    /// Of a job in a list that says once what holds for the sitting.
    pub fn listed(task: &Task) -> Self {
        Self::of(task, task.cautions().of_job().map(|row| &**row))
    }

    fn of<'a>(task: &Task, cautions: impl Iterator<Item = &'a CautionRule>) -> Self {
        let who = match task.who() {
            Competence::Oneself => None,
            Competence::WithHelp => {
                Some(text!("Not alone: have somebody with you who knows this work. Local codes come first."))
            }
            Competence::SendOut => {
                Some(text!("Send it out to somebody licensed for this work. Local codes come first."))
            }
        };
        let cautions = cautions.map(|row| say(&row.say));
        let mut first: Vec<String> = who.into_iter().chain(cautions).map(str::to_owned).collect();
        let later = first.split_off(first.len().min(Cautions::MOST_FIRST));
        Self { first, later }
    }

    /// All of it.
    pub fn into_all(self) -> Vec<String> {
        self.first.into_iter().chain(self.later).collect()
    }
}

/// What a list of jobs says once for all of them, the worst first.
pub fn of_sitting<'a>(tasks: impl Iterator<Item = &'a Task>) -> Vec<String> {
    let mut rows: Vec<Arc<CautionRule>> = Vec::new();
    for row in tasks.flat_map(|task| task.cautions().of_sitting()) {
        if !rows.iter().any(|known| known.name == row.name) {
            rows.push(Arc::clone(row));
        }
    }
    worst_first(&mut rows);
    rows.iter().map(|row| say(&row.say).to_owned()).collect()
}
