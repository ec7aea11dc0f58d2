//! The difference between today and a proposal, as moves; and the change that writes them as plans.

use uuid::Uuid;

use super::propose::{Proposal, Seated};
use crate::assess::reason::{machine_name, part_name, role_name};
use crate::record::{Change, Id, Logbook, MachineId, Moment, PartId, Placement, RoleId};
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
}

impl Move {
    /// Whether there is nothing to be planned for it: what is left of it is done at the bench.
    pub fn is_for_bench(&self, logbook: &Logbook) -> bool {
        let has_plan = |part: PartId, (machine, role): Where| {
            let file = logbook.machine(machine);
            role.is_none_or(|role| {
                file.is_some_and(|file| file.placements.iter().any(|plan| plan.part == part && plan.role == role))
            })
        };
        match *self {
            Self::TakeOut { .. } => true,
            // What stands between others has no role to be planned for.
            Self::Plan { to, .. } => to.1.is_none(),
            Self::Refit { part, to, .. } => has_plan(part, to),
            Self::Replan { .. } | Self::Drop { .. } => false,
        }
    }

    /// In a sentence.
    pub fn sentence(&self, logbook: &Logbook) -> String {
        let seat = |(machine, role): &Where| {
            let name = machine_name(logbook, *machine);
            match role {
                Some(role) => text!("{machine}: {role}", machine = name, role = role_name(logbook, *machine, *role)),
                None => name,
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
        }
    }
}

/// What is to be moved so that a logbook becomes as proposed.
pub(super) fn moves(logbook: &Logbook, placed: &[Seated]) -> Vec<Move> {
    let mut moves = Vec::new();
    let fitted = |part: PartId| logbook.fitted_in(part).map(|(file, fitting)| (file.machine.id, fitting.role));
    let planned = |part: PartId| -> Vec<Where> {
        let all = logbook.machines.iter().flat_map(|file| &file.placements);
        all.filter(|plan| plan.part == part).map(|plan| (plan.machine, Some(plan.role))).collect()
    };
    for seated in placed {
        let (part, to) = (seated.part, (seated.machine, seated.role));
        let plans = planned(part);
        match fitted(part) {
            Some((machine, role)) if machine == to.0 && (role.is_none() || role == to.1) => {}
            Some(from) => moves.push(Move::Refit { part, from, to }),
            None if plans.contains(&to) => {}
            None => match plans.first() {
                Some(from) => moves.push(Move::Replan { part, from: *from, to }),
                None => moves.push(Move::Plan { part, to }),
            },
        }
    }
    let is_placed = |part: PartId| placed.iter().any(|seated| seated.part == part);
    for file in &logbook.machines {
        for fitting in file.fitted().filter(|fitting| !is_placed(fitting.part)) {
            // What is away, or kept apart, was never asked about.
            let stays = logbook.part(fitting.part).is_none_or(|known| {
                !known.custody_now().is_at_hand() || known.part.is_quarantined() || known.part.inside.is_some()
            });
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

/// The change that carries a proposal out, as plans: what is fitted stays fitted until somebody takes it out, and pinned
/// plans stay pinned. Nothing to be written for a proposal that changes nothing.
pub fn change(proposal: &Proposal, logbook: &Logbook, at: Moment, ids: &mut dyn FnMut() -> Uuid) -> Change {
    let mut change = Change::new(text!("Plan as proposed"));
    let is_fitted_there = |seated: &Seated| {
        let fitted = logbook.fitted_in(seated.part);
        fitted.is_some_and(|(file, fitting)| {
            file.machine.id == seated.machine && fitting.role.is_none_or(|role| Some(role) == seated.role)
        })
    };
    for file in &logbook.machines {
        for plan in file.placements.iter().filter(|plan| is_asked(logbook, plan)) {
            let kept = |seated: &Seated| {
                seated.part == plan.part && seated.machine == plan.machine && seated.role == Some(plan.role)
            };
            if !proposal.placed.iter().any(kept) {
                change.remove(plan.id);
            }
        }
    }
    for seated in &proposal.placed {
        let Some(role) = seated.role else { continue };
        let file = logbook.machine(seated.machine);
        let known =
            file.is_some_and(|file| file.placements.iter().any(|plan| plan.part == seated.part && plan.role == role));
        if known || is_fitted_there(seated) {
            continue;
        }
        change.put(Placement {
            id: Id::from_uuid(ids()),
            machine: seated.machine,
            role,
            part: seated.part,
            pinned: false,
            planned: at,
            reason: why_in_short(seated),
        });
    }
    change
}

/// The grounds that count most, for the plan's own reason.
fn why_in_short(seated: &Seated) -> String {
    let mut why = seated.why.clone();
    why.sort_by_key(|(_, worth)| -worth);
    let said: Vec<String> = why.iter().filter(|(_, worth)| *worth > 0).take(3).map(|(term, _)| term.said()).collect();
    text!("Proposed: {why}", why = said.join(", "))
}
