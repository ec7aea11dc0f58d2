//! What if a part went elsewhere: the best proposal with it there, beside the best there is.

use super::ask::{Ask, Asked, ask};
use super::pins::Contradiction;
use super::propose::{Proposal, propose};
use super::solve::TimeLeft;
use crate::record::{MachineId, PartId};

/// The best proposal with a part in a machine, and the question it answers.
///
/// # Errors
/// The part cannot go there, or a pin says otherwise.
pub fn what_if<'a>(
    asked: &Asked<'a>,
    part: PartId,
    machine: MachineId,
    patience: TimeLeft,
) -> Result<(Asked<'a>, Proposal), Contradiction> {
    let mut with: Ask = asked.ask.clone();
    with.pins.retain(|(known, _)| *known != part);
    with.left_out.retain(|(known, _)| *known != part);
    with.pins.push((part, machine));
    let asked = ask(asked.logbook, asked.answers, asked.rules, with)?;
    let proposal = propose(&asked, patience);
    Ok((asked, proposal))
}
