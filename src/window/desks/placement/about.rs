//! What is told about one part of a proposal: what is next best, what it lacks, and what it costs elsewhere.

use std::time::{Duration, Instant};

use super::asking::left_until;
use crate::assess::Stop;
use crate::assess::making::TrueTo;
use crate::assess::placement::{Asked, Proposal, SHORT, left_of, next_best, what_if};
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
    Elsewhere(Elsewhere),
    /// Nothing more comes.
    All,
}

/// A part in another machine.
#[derive(Clone, Debug, PartialEq)]
pub struct Elsewhere {
    pub machine: MachineId,
    pub name: String,
    /// What the whole proposal is worth less, and whether that is exact; `None` where it cannot go.
    pub cost: Option<(i64, bool)>,
    /// What speaks against it there, in a word; empty for nothing.
    pub against: String,
}

impl Elsewhere {
    /// What it costs, short: "−34".
    pub fn figure(&self) -> String {
        match self.cost {
            None => text!("no").to_owned(),
            Some((0, true)) => "±0".to_owned(),
            Some((cost, is_exact)) => {
                let sign = if cost > 0 { '−' } else { '+' };
                let about = if is_exact { "" } else { "≈ " };
                format!("{about}{sign}{}", cost.abs())
            }
        }
    }

    /// In a sentence.
    pub fn sentence(&self) -> String {
        let name = &self.name;
        let mut said = match self.cost {
            None => text!("{machine}: cannot go there", machine = name),
            Some((0, true)) => text!("{machine}: costs nothing", machine = name),
            Some((cost, true)) if cost > 0 => text!("{machine}: costs {cost} points", machine = name, cost = cost),
            Some((cost, true)) => text!("{machine}: brings {more} points", machine = name, more = -cost),
            Some((cost, false)) => {
                text!("{machine}: costs about {cost} points, not proven", machine = name, cost = cost)
            }
        };
        if !self.against.is_empty() {
            said.push_str(" (");
            said.push_str(&self.against);
            said.push(')');
        }
        said
    }
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
        say(Said::LeftOver(text!("{best} It is left over: {lacks}.", best = best, lacks = left.lacks.sentence(asked))));
    }
    let here = proposal.seat_of(part).map(|seated| seated.machine);
    let kind = asked.pieces[spare].kind();
    for machine in elsewhere(asked, kind, here) {
        if stop.is_stopped() {
            return;
        }
        say(Said::Elsewhere(there(asked, proposal, (part, spare), machine, &patience())));
    }
    say(Said::All);
}

/// Machines with a role for a kind, but for one.
fn elsewhere(asked: &Asked, kind: Kind, here: Option<MachineId>) -> Vec<MachineId> {
    let files = asked.logbook.machines.iter().filter(|file| file.roles.iter().any(|role| role.kind == kind));
    files.map(|file| file.machine.id).filter(|machine| Some(*machine) != here).collect()
}

fn there(
    asked: &Asked,
    proposal: &Proposal,
    (part, spare): (PartId, usize),
    machine: MachineId,
    patience: &dyn Fn() -> Duration,
) -> Elsewhere {
    let name = machine_name(asked.logbook, machine);
    match what_if(asked, part, machine, patience) {
        Err(contradiction) => Elsewhere { machine, name, cost: None, against: contradiction.to_string() },
        Ok((with, other)) => {
            let is_exact = proposal.is_proven() && other.is_proven();
            let mut against = waits(&with, &other, part);
            let at = asked.machines.iter().position(|known| *known == machine);
            if let Some(TrueTo::Apart { weeks }) = at.and_then(|at| asked.true_to(spare, at)) {
                against.push(text!("dates: {said}", said = TrueTo::Apart { weeks }.said()));
            }
            let gone = out(proposal, &other, machine, part);
            against.extend(gone.map(|gone| text!("instead of {part}", part = part_name(asked.logbook, gone))));
            Elsewhere {
                machine,
                name,
                cost: Some((proposal.worth - other.worth, is_exact)),
                against: against.join("; "),
            }
        }
    }
}

/// The connectors that would stay open for a part.
fn waits(asked: &Asked, proposal: &Proposal, part: PartId) -> Vec<String> {
    let wishes = proposal.wishes.iter().filter(|wish| wish.waits.contains(&part));
    let lacks = wishes.flat_map(|wish| &wish.must_offer).map(|(id, _)| asked.rules.connectors.label(id).to_owned());
    lacks.map(|label| text!("nothing free gives {connector}", connector = label)).collect()
}

/// The part of the same role that is no longer in a machine.
fn out(before: &Proposal, after: &Proposal, machine: MachineId, part: PartId) -> Option<PartId> {
    let role = after.seat_of(part)?.role;
    let there = before.placed.iter().filter(|seated| seated.machine == machine && seated.role == role);
    there.map(|seated| seated.part).find(|known| after.seat_of(*known).is_none_or(|seat| seat.machine != machine))
}
