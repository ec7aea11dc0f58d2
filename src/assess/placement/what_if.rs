//! What if a part went elsewhere: the best proposal with it there, beside the best there is.

use super::ask::{Ask, Asked, ask};
use super::moves::Move;
use super::pins::Contradiction;
use super::propose::{Proposal, answer, of_answer};
use super::solve::TimeLeft;
use super::ties::settled;
use crate::record::{MachineId, PartId};

/// The best proposal with a part in a machine, and the question it answers. Where that leaves a choice, it is as in the
/// plain proposal.
///
/// # Errors
/// The part cannot go there, or a pin says otherwise.
pub fn what_if<'a>(
    (asked, plain): (&Asked<'a>, &Proposal),
    part: PartId,
    machine: MachineId,
    patience: TimeLeft,
) -> Result<(Asked<'a>, Proposal), Contradiction> {
    with((asked, plain), asked.ask.clone(), part, machine, patience)
}

/// The best proposal in which a rival takes a machine's place of another part, which goes elsewhere or nowhere.
///
/// # Errors
/// The rival cannot go there, or a pin says otherwise.
pub fn instead<'a>(
    (asked, plain): (&Asked<'a>, &Proposal),
    rival: PartId,
    (part, machine): (PartId, MachineId),
    patience: TimeLeft,
) -> Result<(Asked<'a>, Proposal), Contradiction> {
    let mut ask = asked.ask.clone();
    ask.pins.retain(|pin| *pin != (part, machine));
    ask.left_out.push((part, Some(machine)));
    with((asked, plain), ask, rival, machine, patience)
}

fn with<'a>(
    (base, plain): (&Asked<'a>, &Proposal),
    mut with: Ask,
    part: PartId,
    machine: MachineId,
    patience: TimeLeft,
) -> Result<(Asked<'a>, Proposal), Contradiction> {
    with.pins.retain(|(known, _)| *known != part);
    with.left_out.retain(|(known, _)| *known != part);
    with.pins.push((part, machine));
    let asked = ask(base.logbook, base.answers, base.rules, with)?;
    let best = answer(&asked, &asked.question, patience);
    let best = settled(&asked, settled(&asked, best, &asked.today), &positions(&asked, plain));
    let proposal = of_answer(&asked, best);
    Ok((asked, proposal))
}

/// Where a proposal puts the spares of another question.
fn positions(asked: &Asked, plain: &Proposal) -> Vec<Option<usize>> {
    let at = |(spare, part): (usize, &PartId)| {
        let seated = plain.seat_of(*part)?;
        let mut options = asked.question.spares[spare].options.iter();
        options.position(|choice| asked.seats[choice.seat] == (seated.machine, seated.role))
    };
    asked.parts.iter().enumerate().map(at).collect()
}

/// What follows from trying something, told apart from what the plain proposal does anyhow.
#[derive(Clone, Debug, Default)]
pub struct Consequences {
    /// Moves that only follow from it.
    pub only: Vec<Move>,
    /// Moves that the plain proposal makes as well.
    pub anyhow: Vec<Move>,
    /// Moves of the plain proposal that are no longer made.
    pub no_longer: Vec<Move>,
}

impl Consequences {
    /// Of a proposal, against the plain one.
    pub fn of(tried: &Proposal, plain: &Proposal) -> Self {
        let (anyhow, only) = tried.moves.iter().cloned().partition(|one| plain.moves.contains(one));
        let no_longer = plain.moves.iter().filter(|one| !tried.moves.contains(one)).cloned().collect();
        Self { only, anyhow, no_longer }
    }
}
