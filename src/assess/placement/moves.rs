//! The difference between today and a proposal, as moves; and the change that writes them as plans.

use uuid::Uuid;

use super::ask::Asked;
use super::propose::{Proposal, Seated};
use crate::assess::reason::{machine_name, part_name, role_name};
use crate::record::{Change, Id, Logbook, MachineId, Moment, PartId, Placement, Role, RoleId};
use crate::text;

/// A machine, and the role in it.
pub type Where = (MachineId, Option<RoleId>);

/// One move.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Move {
    /// From the shelf into a machine.
    Plan { part: PartId, to: Where },
    /// Planned for one, now for another.
    Replan { part: PartId, from: Where, to: Where },
    /// Fitted in one, to be taken out and fitted in another.
    Refit { part: PartId, from: Where, to: Where },
    /// Planned, and no longer.
    Drop { part: PartId, from: Where },
    /// Fitted, and no longer wanted there.
    TakeOut { part: PartId, from: Where },
    /// There already, and from now on to be kept there.
    Pin { part: PartId, to: Where },
}

impl Move {
    /// Whether there is nothing to be planned for it: what is left of it is done at the bench.
    pub fn is_for_bench(&self, logbook: &Logbook) -> bool {
        match *self {
            Self::TakeOut { .. } => true,
            Self::Refit { part, to, .. } => plan_of(logbook, part, to).is_some(),
            Self::Plan { .. } | Self::Replan { .. } | Self::Drop { .. } | Self::Pin { .. } => false,
        }
    }

    /// In a sentence.
    pub fn sentence(&self, logbook: &Logbook) -> String {
        let seat = |(machine, role): &Where| {
            let name = machine_name(logbook, *machine);
            match role {
                Some(role) => text!("{machine}: {role}", machine = name, role = role_name(logbook, *machine, *role)),
                None => text!("{machine}, between other parts", machine = name),
            }
        };
        let part = |part: &PartId| part_name(logbook, *part);
        match self {
            Self::Plan { part: of, to } => text!("Plan {part} for {to}.", part = part(of), to = seat(to)),
            Self::Replan { part: of, from, to } => {
                text!("Plan {part} for {to} instead of {from}.", part = part(of), to = seat(to), from = seat(from))
            }
            Self::Refit { part: of, from, to } => {
                text!(
                    "Take {part} out of {from} and fit it in {to}.",
                    part = part(of),
                    to = seat(to),
                    from = seat(from)
                )
            }
            Self::Drop { part: of, from } => {
                text!("{part} is no longer planned for {from}.", part = part(of), from = seat(from))
            }
            Self::TakeOut { part: of, from } => text!("Take {part} out of {from}.", part = part(of), from = seat(from)),
            Self::Pin { part: of, to } => {
                text!("Keep {part} in {to}: it is pinned there.", part = part(of), to = seat(to))
            }
        }
    }
}

/// The plan of a part for a seat; what stands between others may be planned for any role of the machine.
fn plan_of(logbook: &Logbook, part: PartId, (machine, role): Where) -> Option<&Placement> {
    let mut plans = logbook.machine(machine)?.placements.iter().filter(|plan| plan.part == part);
    plans.find(|plan| role.is_none_or(|role| plan.role == role))
}

/// Whether a part is fitted in a seat.
fn is_fitted(logbook: &Logbook, part: PartId, (machine, role): Where) -> bool {
    let fitted = logbook.fitted_in(part);
    fitted.is_some_and(|(file, fitting)| {
        file.machine.id == machine && (role.is_none() || fitting.role.is_none() || fitting.role == role)
    })
}

/// What is to be moved so that a logbook becomes as proposed.
pub(super) fn moves(asked: &Asked, placed: &[Seated]) -> Vec<Move> {
    let (logbook, pins) = (asked.logbook, &asked.ask.pins);
    let mut moves = Vec::new();
    let fitted = |part: PartId| logbook.fitted_in(part).map(|(file, fitting)| (file.machine.id, fitting.role));
    let planned = |part: PartId| {
        let mut all = logbook.machines.iter().flat_map(|file| &file.placements);
        all.find(|plan| plan.part == part).map(|plan| (plan.machine, Some(plan.role)))
    };
    for seated in placed {
        let (part, to) = (seated.part, (seated.machine, seated.role));
        let plan = plan_of(logbook, part, to);
        let is_there = is_fitted(logbook, part, to) || (plan.is_some() && fitted(part).is_none());
        if is_there {
            let is_kept = plan.is_some_and(|plan| plan.pinned);
            if pins.contains(&(part, to.0)) && !is_kept {
                moves.push(Move::Pin { part, to });
            }
            continue;
        }
        moves.push(match (fitted(part), planned(part)) {
            (Some(from), _) => Move::Refit { part, from, to },
            (None, Some(from)) => Move::Replan { part, from, to },
            (None, None) => Move::Plan { part, to },
        });
    }
    let is_placed = |part: PartId| placed.iter().any(|seated| seated.part == part);
    for file in &logbook.machines {
        for fitting in file.fitted().filter(|fitting| !is_placed(fitting.part)) {
            // What is away, or kept apart, or fitted where it fills no role, was never asked about.
            let stays = logbook.part(fitting.part).is_none_or(|known| {
                !known.custody_now().is_at_hand() || known.part.is_quarantined() || known.part.inside.is_some()
            }) || asked.aside.contains(&fitting.part);
            if !stays {
                moves.push(Move::TakeOut { part: fitting.part, from: (file.machine.id, fitting.role) });
            }
        }
        for plan in file.placements.iter().filter(|plan| !is_placed(plan.part) && is_asked(logbook, plan)) {
            moves.push(Move::Drop { part: plan.part, from: (file.machine.id, Some(plan.role)) });
        }
    }
    moves
}

/// Whether a plan is for a part that a proposal may use.
fn is_asked(logbook: &Logbook, plan: &Placement) -> bool {
    let free = logbook.part(plan.part).is_some_and(|known| {
        known.custody_now().is_at_hand() && !known.part.is_quarantined() && known.part.inside.is_none()
    });
    free && !plan.pinned
}

/// The change that carries a proposal out, as plans: what is fitted stays fitted until somebody takes it out, pinned
/// plans stay pinned, and what was pinned to ask (`pins`) is pinned from then on. What stands between others, an
/// adapter, is planned for an optional role of its own. Nothing to be written for a proposal that changes nothing.
pub fn change(
    proposal: &Proposal,
    logbook: &Logbook,
    pins: &[(PartId, MachineId)],
    at: Moment,
    ids: &mut dyn FnMut() -> Uuid,
) -> Change {
    let mut change = Change::new(text!("Plan as proposed"));
    for file in &logbook.machines {
        for plan in file.placements.iter().filter(|plan| is_asked(logbook, plan)) {
            let kept = |seated: &Seated| {
                let to = (seated.machine, seated.role);
                plan_of(logbook, seated.part, to).is_some_and(|known| known.id == plan.id)
            };
            if !proposal.placed.iter().any(kept) {
                change.remove(plan.id);
            }
        }
    }
    for seated in &proposal.placed {
        let to = (seated.machine, seated.role);
        let is_tried = pins.contains(&(seated.part, seated.machine));
        if let Some(plan) = plan_of(logbook, seated.part, to) {
            if is_tried && !plan.pinned {
                change.put(Placement { pinned: true, ..plan.clone() });
            }
            continue;
        }
        if is_fitted(logbook, seated.part, to) && !is_tried {
            continue;
        }
        let Some(role) = seated.role.or_else(|| own_role(logbook, seated, &mut change, ids)) else { continue };
        change.put(Placement {
            id: Id::from_uuid(ids()),
            machine: seated.machine,
            role,
            part: seated.part,
            pinned: is_tried,
            planned: at,
            reason: why_in_short(seated),
        });
    }
    change
}

/// A new role for what stands between others, which may stay empty.
fn own_role(logbook: &Logbook, seated: &Seated, change: &mut Change, ids: &mut dyn FnMut() -> Uuid) -> Option<RoleId> {
    let kind = logbook.part(seated.part)?.part.kind;
    let role = Role {
        id: Id::from_uuid(ids()),
        machine: seated.machine,
        kind,
        name: String::new(),
        required: false,
        count: 1,
        note: text!("Added with a proposal").to_owned(),
        or_kinds: Vec::new(),
    };
    let id = role.id;
    change.put(role);
    Some(id)
}

/// The grounds that count most, for the plan's own reason.
fn why_in_short(seated: &Seated) -> String {
    let mut why = seated.why.clone();
    why.sort_by_key(|(_, worth)| -worth);
    let said: Vec<String> = why.iter().filter(|(_, worth)| *worth > 0).take(3).map(|(term, _)| term.said()).collect();
    if said.is_empty() {
        return text!("Proposed").to_owned();
    }
    text!("Proposed: {why}", why = said.join(", "))
}
