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
    with(asked, asked.ask.clone(), part, machine, patience)
}

/// The best proposal in which a rival takes a machine's place of another part, which goes elsewhere or nowhere.
///
/// # Errors
/// The rival cannot go there, or a pin says otherwise.
pub fn instead<'a>(
    asked: &Asked<'a>,
    rival: PartId,
    (part, machine): (PartId, MachineId),
    patience: TimeLeft,
) -> Result<(Asked<'a>, Proposal), Contradiction> {
    let mut ask = asked.ask.clone();
    ask.pins.retain(|pin| *pin != (part, machine));
    ask.left_out.push((part, Some(machine)));
    with(asked, ask, rival, machine, patience)
}

fn with<'a>(
    asked: &Asked<'a>,
    mut with: Ask,
    part: PartId,
    machine: MachineId,
    patience: TimeLeft,
) -> Result<(Asked<'a>, Proposal), Contradiction> {
    with.pins.retain(|(known, _)| *known != part);
    with.left_out.retain(|(known, _)| *known != part);
    with.pins.push((part, machine));
    let asked = ask(asked.logbook, asked.answers, asked.rules, with)?;
    let proposal = propose(&asked, patience);
    Ok((asked, proposal))
}
