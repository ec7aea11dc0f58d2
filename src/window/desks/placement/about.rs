//! What is told about one part of a proposal: what is next best, what it lacks, what its rivals and other places cost.

use std::time::{Duration, Instant};

use super::asking::left_until;
use super::grid::SHOWN;
use super::priced::Priced;
use crate::assess::Stop;
use crate::assess::placement::{
    Asked, Contradiction, Lack, Proposal, SHORT, instead, lacks_in, left_of, next_best, what_if,
};
use crate::assess::reason::{machine_name, part_name, role_name};
use crate::record::{Kind, MachineId, PartId};
use crate::text;

/// What is told, one after the other.
#[derive(Clone, Debug, PartialEq)]
pub enum Said {
    /// What would take its place, and what that costs.
    NextBest(String),
    /// The best use of a spare that is left over, and what it lacks there.
    LeftOver(String),
    /// A spare that is left over in its place.
    Rival(Priced),
    /// The part in another machine.
    Elsewhere(Priced),
    /// Nothing more comes.
    All,
}

/// Tells all about a part, as long as it is wanted.
pub fn tell(asked: &Asked, proposal: &Proposal, part: PartId, stop: &Stop, say: &dyn Fn(Said)) {
    let Some(spare) = asked.parts.iter().position(|known| *known == part) else {
        return say(Said::All);
    };
    let patience = || {
        let end = Instant::now() + SHORT;
        move || -> Duration { left_until(end, stop) }
    };
    if let Some(next) = next_best(asked, proposal, part, &patience()) {
        say(Said::NextBest(next.sentence(asked.logbook)));
    }
    if let Some(left) = left_of(asked, proposal, spare) {
        let machine = machine_name(asked.logbook, left.machine);
        let best = match left.role {
            Some(role) => text!(
                "Best use: {machine}, {role}.",
                machine = machine,
                role = role_name(asked.logbook, left.machine, role)
            ),
            None => text!("Best use: {machine}.", machine = machine),
        };
        say(Said::LeftOver(text!(
            "{best} It is left over: {lacks}.",
            best = best,
            lacks = Lack::all(&left.lacks, asked)
        )));
    }
    let here = proposal.seat_of(part).map(|seated| seated.machine);
    for (rival, machine) in rivals(asked, proposal, part).into_iter().zip(here.into_iter().cycle()) {
        if stop.is_stopped() {
            return;
        }
        let other = instead((asked, proposal), asked.parts[rival], (part, machine), &patience());
        let name = part_name(asked.logbook, asked.parts[rival]);
        say(Said::Rival(priced(asked, proposal, rival, machine, name, other.as_ref()).0));
    }
    let kind = asked.pieces[spare].kind();
    for machine in elsewhere(asked, kind, here) {
        if stop.is_stopped() {
            return;
        }
        say(Said::Elsewhere(there(asked, proposal, spare, machine, &patience())));
    }
    say(Said::All);
}

/// Spares that are left over and could take the seat of a part, those first that are worth most there.
fn rivals(asked: &Asked, proposal: &Proposal, part: PartId) -> Vec<usize> {
    let Some(seated) = proposal.seat_of(part) else { return Vec::new() };
    let seat = |spare: usize| {
        let options = &asked.question.spares[spare].options;
        options.iter().find(|choice| asked.seats[choice.seat] == (seated.machine, seated.role))
    };
    let left = (0..asked.parts.len()).filter(|spare| proposal.answer.taken[*spare].is_none());
    let mut rivals: Vec<(i64, usize)> = left.filter_map(|spare| Some((-seat(spare)?.worth, spare))).collect();
    rivals.sort_unstable();
    rivals.into_iter().map(|(_, spare)| spare).take(SHOWN).collect()
}

/// Machines with a role for a kind, but for one.
fn elsewhere(asked: &Asked, kind: Kind, here: Option<MachineId>) -> Vec<MachineId> {
    let files = asked.logbook.machines.iter().filter(|file| file.roles.iter().any(|role| role.takes(kind)));
    files.map(|file| file.machine.id).filter(|machine| Some(*machine) != here).collect()
}

fn there(
    asked: &Asked,
    proposal: &Proposal,
    spare: usize,
    machine: MachineId,
    patience: &dyn Fn() -> Duration,
) -> Priced {
    let part = asked.parts[spare];
    let other = what_if((asked, proposal), part, machine, patience);
    let name = machine_name(asked.logbook, machine);
    let (mut priced, gone) = priced(asked, proposal, spare, machine, name, other.as_ref());
    if let Some(gone) = gone {
        let instead = text!("instead of {part}", part = part_name(asked.logbook, gone));
        let clauses = [priced.against, instead];
        priced.against = clauses.into_iter().filter(|clause| !clause.is_empty()).collect::<Vec<_>>().join("; ");
    }
    priced
}

/// What another proposal costs that has a spare in a machine, with everything that speaks against the spare there; and
/// the part that is no longer in its role.
fn priced(
    asked: &Asked,
    proposal: &Proposal,
    spare: usize,
    machine: MachineId,
    name: String,
    other: Result<&(Asked, Proposal), &Contradiction>,
) -> (Priced, Option<PartId>) {
    let part = asked.parts[spare];
    let (with, other) = match other {
        Ok((with, other)) => (with, other),
        Err(contradiction) => {
            return (Priced { part, machine, name, cost: None, against: contradiction.to_string() }, None);
        }
    };
    let mut lacks = lacks_in(asked, proposal, spare, machine);
    if lacks.is_empty()
        && let Some(spare) = with.parts.iter().position(|known| *known == part)
    {
        // What is pinned elsewhere was not asked about there.
        lacks = lacks_in(with, other, spare, machine);
    }
    // What it takes the place of is told by itself.
    lacks.retain(|lack| !matches!(lack, Lack::Better { .. } | Lack::Pinned { .. }));
    // Neither is worth more than its bound.
    let cost = (proposal.worth - other.bound, proposal.bound - other.worth);
    let against = Lack::all(&lacks, asked);
    (Priced { part, machine, name, cost: Some(cost), against }, out(proposal, other, machine, part))
}

/// The part of the same role that is no longer in a machine.
fn out(before: &Proposal, after: &Proposal, machine: MachineId, part: PartId) -> Option<PartId> {
    let role = after.seat_of(part)?.role;
    let there = before.placed.iter().filter(|seated| seated.machine == machine && seated.role == role);
    there.map(|seated| seated.part).find(|known| after.seat_of(*known).is_none_or(|seat| seat.machine != machine))
}
