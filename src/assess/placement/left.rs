//! What a part lacks where it is not: of spares that are left over at their best use, and of any part in any machine.

use super::ask::Asked;
use super::misfits::reasons;
use super::propose::{Proposal, in_machine};
use super::solve::Answer;
use super::verify::{Fault, Placed, look};
use crate::assess::fit::Because;
use crate::assess::making::TrueTo;
use crate::record::{MachineId, Originality, PartId, RoleId};

/// Why a spare is left over.
#[derive(Clone, Debug, PartialEq)]
pub struct Left {
    pub part: PartId,
    /// Where it would be worth most.
    pub machine: MachineId,
    pub role: Option<RoleId>,
    pub worth: i64,
    /// Everything that speaks against it there.
    pub lacks: Vec<Lack>,
}

/// One thing that a part lacks in a machine.
#[derive(Clone, Debug, PartialEq)]
pub enum Lack {
    /// These connectors, needed and offered by none there, or held by others: (connector, how many).
    Connectors(Vec<(String, u32)>),
    /// It does not go together with the parts there.
    Fit(Because),
    /// Amperes: the supply there gives no more.
    Amperes,
    /// Another is there that is worth so much more.
    Better { part: PartId, more: i64 },
    /// Another is pinned in its place.
    Pinned { part: PartId },
    /// It is of other years.
    Dates(TrueTo),
    /// It costs more than it brings, as it stands.
    Worth,
}

/// For each spare that is left over its best use, and what it lacks there: the most worth first.
pub fn left_over(asked: &Asked, proposal: &Proposal) -> Vec<Left> {
    let spares = 0..asked.question.spares.len();
    let mut left: Vec<Left> = spares.filter_map(|spare| left_of(asked, proposal, spare)).collect();
    left.sort_by_key(|left| -left.worth);
    left
}

/// The best use of one spare, and what it lacks there; `None` for one that is placed.
pub fn left_of(asked: &Asked, proposal: &Proposal, spare: usize) -> Option<Left> {
    if proposal.answer.taken[spare].is_some() {
        return None;
    }
    let options = asked.question.spares[spare].options.iter().enumerate();
    let (option, choice) = options.max_by_key(|(_, choice)| choice.worth)?;
    let (machine, role) = asked.seats[choice.seat];
    let mut lacks = lacks(asked, &proposal.answer, (spare, option));
    if lacks.is_empty() {
        lacks.push(Lack::Worth);
    }
    Some(Left { part: asked.parts[spare], machine, role, worth: choice.worth, lacks })
}

/// Everything that speaks against a spare in a machine as it is proposed; nothing where it cannot be asked there.
pub fn lacks_in(asked: &Asked, proposal: &Proposal, spare: usize, machine: MachineId) -> Vec<Lack> {
    let of_machine = |seat: usize| asked.seats[seat].0 == machine;
    let options = asked.question.spares[spare].options.iter().enumerate();
    let option = options.filter(|(_, choice)| of_machine(choice.seat)).max_by_key(|(_, choice)| choice.worth);
    option.map_or_else(Vec::new, |(option, _)| lacks(asked, &proposal.answer, (spare, option)))
}

fn lacks(asked: &Asked, answer: &Answer, placed: Placed) -> Vec<Lack> {
    let question = &asked.question;
    let choice = question.spares[placed.0].options[placed.1];
    let machine = question.machine_of(choice.seat);
    let mut here = in_machine(question, answer, machine);
    here.retain(|(spare, _)| *spare != placed.0);
    let worth = |(spare, option): &Placed| question.spares[*spare].options[*option].worth;
    let in_seat: Vec<Placed> = here
        .iter()
        .filter(|(spare, option)| question.spares[*spare].options[*option].seat == choice.seat)
        .copied()
        .collect();
    // It takes the place of the one worth least where the seat is full.
    let rival = in_seat.iter().min_by_key(|placed| worth(placed)).copied();
    let rival = rival.filter(|_| in_seat.len() >= question.seats[choice.seat].count as usize);
    here.retain(|known| Some(*known) != rival);
    let spares = |here: &[Placed]| -> Vec<usize> { here.iter().map(|(spare, _)| *spare).collect() };
    let (before, fits_before) = (look(question, machine, &here), reasons(asked, &spares(&here)));
    here.push(placed);
    let (after, fits_after) = (look(question, machine, &here), reasons(asked, &spares(&here)));
    let part = asked.parts[placed.0];

    let mut lacks = Vec::new();
    let open_before = |need: usize| before.open.iter().find(|(known, _)| *known == need).map_or(0, |(_, count)| *count);
    let own = |need: &usize| question.spares[placed.0].needs.iter().any(|(known, _)| known == need);
    let unmet: Vec<(String, u32)> = after
        .open
        .iter()
        .filter(|(need, count)| own(need) && *count > open_before(*need))
        .map(|(need, count)| (question.connectors[*need].clone(), count - open_before(*need)))
        .collect();
    let pinned = rival.filter(|(spare, _)| question.spares[*spare].pinned);
    let better = rival.filter(|rival| pinned.is_none() && worth(rival) >= choice.worth);
    // What may stay open, since something that gives it is still to come, would be open with the other one too.
    let must_be_met = after.faults.iter().any(|fault| *fault != Fault::Overdrawn);
    if !unmet.is_empty() && (must_be_met || (better.is_none() && pinned.is_none())) {
        lacks.push(Lack::Connectors(unmet));
    }
    let new = fits_after.into_iter().filter(|because| because.names(part) || !fits_before.contains(because));
    lacks.extend(new.map(Lack::Fit));
    if after.faults.contains(&Fault::Overdrawn) && !before.faults.contains(&Fault::Overdrawn) {
        lacks.push(Lack::Amperes);
    }
    lacks.extend(pinned.map(|(spare, _)| Lack::Pinned { part: asked.parts[spare] }));
    if let Some(rival) = better {
        lacks.push(Lack::Better { part: asked.parts[rival.0], more: worth(&rival) - choice.worth });
    }
    // What stands between others, or is openly modern, need not be of the window.
    let is_modern = asked.pieces[placed.0].answers.file.part.originality == Originality::ModernReplacement;
    let is_between = question.seats[choice.seat].between;
    let true_to = asked.true_to(placed.0, machine).filter(|_| !is_modern && !is_between);
    lacks.extend(true_to.filter(|true_to| matches!(true_to, TrueTo::Apart { .. })).map(Lack::Dates));
    lacks
}
