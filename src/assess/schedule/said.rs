//! A schedule in sentences.

use super::{Item, MachinePlan, Pace, PaceSource, Undated};
use crate::assess::Answers;
use crate::{counted, text};

impl Item {
    /// What it is, without its part or machine.
    pub fn title(&self, answers: &Answers) -> String {
        let prove = |proof: &crate::assess::ProofStanding| text!("Prove: {proof}", proof = text::say(&proof.rule.say));
        match self {
            Self::Work { part, task } => answers.parts[*part].tasks[*task].title().to_owned(),
            Self::PartProof { part, proof } => prove(&answers.parts[*part].proofs[*proof]),
            Self::Fit { machine, .. } => {
                text!("Fit in {machine}", machine = answers.machines[*machine].file.machine.name)
            }
            Self::MachineProof { machine, proof } => prove(&answers.machines[*machine].readiness.proofs[*proof]),
        }
    }
}

impl Pace {
    /// How long work takes here beside the tables' minutes, and what that rests on.
    pub fn sentence(&self) -> String {
        let (overall, source) = self.overall();
        let factor = format!("{:.2}", overall.mean);
        match source {
            PaceSource::OwnRule => text!(
                "Too little is finished to know this workshop's pace: {factor} times the tables' minutes is assumed.",
                factor = factor
            ),
            _ => text!(
                "Work takes {factor} times the tables' minutes here, by {pieces} finished pieces.",
                factor = factor,
                pieces = overall.samples
            ),
        }
    }
}

impl Undated {
    /// In place of a date.
    pub fn said(self) -> &'static str {
        match self {
            Self::RolesEmpty { .. } => text!("when its roles are filled"),
            Self::NotHere { .. } => text!("cannot be dated"),
        }
    }
}

impl MachinePlan {
    /// When a machine of this name is ready.
    pub fn sentence(&self, name: &str) -> String {
        if let Some(Undated::RolesEmpty { missing }) = self.undated {
            let empty = counted!("{count} place is empty", "{count} places are empty", missing as usize);
            return text!("{machine}: when its roles are filled; {empty}.", machine = name, empty = empty);
        }
        match (self.ready, self.early, self.late) {
            (Some(_), ..) if self.needs.is_empty() => {
                text!("{machine}: no work and no proof is left.", machine = name)
            }
            (Some(ready), Some(early), Some(late)) => text!(
                "{machine}: {ready}; four chances in five between {early} and {late}.",
                machine = name,
                ready = ready,
                early = early,
                late = late
            ),
            _ => text!(
                "{machine}: cannot be dated, {count} pieces are on parts that are not here.",
                machine = name,
                count = self.unplanned
            ),
        }
    }
}

/// A circle of items, named in its order.
pub fn circle_sentence(circle: &[Item], answers: &Answers) -> String {
    let named: Vec<String> = circle.iter().map(|item| item.title(answers)).collect();
    text!("these come after each other in a circle: {work}", work = named.join(" → "))
}
