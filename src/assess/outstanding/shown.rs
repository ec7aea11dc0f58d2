//! Whether done work was shown to have done its part.

use std::sync::Arc;

use crate::assess::PartAnswers;
use crate::record::{Work, WorkState};
use crate::rules::{ProofRule, Rules};

/// How done work is shown.
#[derive(Clone, Debug)]
pub enum Shown {
    /// Every test that shows it was passed after it, and holds.
    Proven,
    /// These tests are to be run first.
    Unproven(Vec<Arc<ProofRule>>),
    /// A look is enough, or nobody says what would show it.
    ByLook,
}

/// How a piece of done work is shown; `None` for work that is not done.
pub fn shown(work: &Work, part: &PartAnswers, rules: &Rules) -> Option<Shown> {
    if work.state != WorkState::Done {
        return None;
    }
    let named = rules.work(&work.rule).map_or(&[][..], |rule| &rule.proven_by);
    let asked: Vec<_> = part.proofs.iter().filter(|proof| named.contains(&proof.rule.name)).collect();
    if asked.is_empty() {
        return Some(Shown::ByLook);
    }
    let runs = &part.file.proofs;
    let was_after = |id| runs.iter().find(|run| Some(run.id) == id).is_some_and(|run| !work.changed.is_after(run.run));
    let lacking: Vec<_> = asked
        .iter()
        .filter(|proof| !proof.standing.is_good() || !was_after(proof.proof))
        .map(|proof| Arc::clone(&proof.rule))
        .collect();
    Some(if lacking.is_empty() { Shown::Proven } else { Shown::Unproven(lacking) })
}
