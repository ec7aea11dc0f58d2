//! What must stay where it is: pinned plans, pins asked for, and fitted parts that nothing moves; contradictions named.

use std::collections::{HashMap, HashSet};

use super::ask::{Ask, stands_between};
use super::finished::LeftAlone;
use super::goals::MOST;
use crate::assess::reason::{machine_name, part_name, role_name};
use crate::record::{Custody, Logbook, MachineId, PartId, RoleId, Word as _};
use crate::text;

/// A part's only seat.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pin {
    pub machine: MachineId,
    /// `None` for what stands between.
    pub role: Option<RoleId>,
}

/// Why pins cannot be followed.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Contradiction {
    #[error("{}", text!("{part} is pinned in {one} and in {other}: take one of the pins away.", part = .part, one = .one, other = .other))]
    TwoMachines { part: String, one: String, other: String },
    #[error("{}", text!("{machine} has room for {room} in the role {role}, and these are pinned there: {parts}.", machine = .machine, room = .room, role = .role, parts = .parts.join(", ")))]
    Crowded { machine: String, role: String, room: u32, parts: Vec<String> },
    #[error("{}", text!("{machine} has no role for {part}: a part of this kind ({kind}) fills none of its roles.", machine = .machine, part = .part, kind = .kind))]
    NoRole { machine: String, part: String, kind: String },
    #[error("{}", text!("{part} cannot be pinned in {machine}: {why}.", part = .part, machine = .machine, why = .why))]
    NotFree { part: String, machine: String, why: String },
}

/// Parts that have one seat only.
#[derive(Debug, Default)]
pub struct Pins {
    pub seats: HashMap<PartId, Pin>,
    /// Fitted in a machine that is left as it is, in none of its roles: they are not asked about.
    pub aside: HashSet<PartId>,
}

/// Every part that has one seat only, or none and stays all the same.
pub(super) fn pins(logbook: &Logbook, ask: &Ask, alone: &LeftAlone) -> Result<Pins, Contradiction> {
    let mut pins: HashMap<PartId, Pin> = HashMap::new();
    let mut add = |part: PartId, pin: Pin| match pins.insert(part, pin) {
        Some(known) if known.machine != pin.machine => Err(Contradiction::TwoMachines {
            part: part_name(logbook, part),
            one: machine_name(logbook, known.machine),
            other: machine_name(logbook, pin.machine),
        }),
        _ => Ok(()),
    };
    for file in &logbook.machines {
        for plan in file.placements.iter().filter(|plan| plan.pinned) {
            add(plan.part, Pin { machine: file.machine.id, role: Some(plan.role) })?;
        }
        // Fitted parts stay where nothing else is wanted, and with what is inside them or what they are inside of.
        for fitting in file.fitted() {
            let holds = logbook.parts.iter().any(|inner| inner.part.inside == Some(fitting.part));
            let inside = logbook.part(fitting.part).is_some_and(|outer| outer.part.inside.is_some());
            let is_known = |role: RoleId| file.roles.iter().any(|known| known.id == role);
            let kind = logbook.part(fitting.part).map(|outer| outer.part.kind);
            let of_kind = || kind.and_then(|kind| file.role_for(kind)).map(|role| role.id);
            let role = fitting.role.filter(|role| is_known(*role)).or_else(of_kind);
            let asked = ask.pins.iter().any(|(part, _)| *part == fitting.part);
            if (ask.goals.stay == MOST || holds || inside) && !asked {
                add(fitting.part, Pin { machine: file.machine.id, role })?;
            }
        }
    }
    for (part, machine) in &ask.pins {
        let pin = asked_pin(logbook, *part, *machine)?;
        add(*part, pin)?;
    }
    is_room(logbook, &pins)?;
    Ok(left_alone(logbook, ask, alone, pins))
}

/// Pins what is fitted in machines that are left as they are: each part in its role, as far as there is room.
fn left_alone(logbook: &Logbook, ask: &Ask, alone: &LeftAlone, pins: HashMap<PartId, Pin>) -> Pins {
    let mut pins = Pins { seats: pins, aside: HashSet::new() };
    for file in logbook.machines.iter().filter(|file| alone.holds(file.machine.id)) {
        let machine = file.machine.id;
        let mut room: HashMap<RoleId, u32> = file.roles.iter().map(|role| (role.id, role.count.max(1))).collect();
        for pin in pins.seats.values().filter(|pin| pin.machine == machine) {
            if let Some(room) = pin.role.and_then(|role| room.get_mut(&role)) {
                *room = room.saturating_sub(1);
            }
        }
        let fitted: Vec<(PartId, Option<RoleId>)> = file.fitted().map(|fitting| (fitting.part, fitting.role)).collect();
        // Those whose role is known come before those that take what is free.
        let (told, untold): (Vec<_>, Vec<_>) =
            fitted.into_iter().partition(|(_, role)| role.is_some_and(|role| room.contains_key(&role)));
        for (part, role) in told.into_iter().chain(untold) {
            let Some(known) = logbook.part(part).filter(|_| !pins.seats.contains_key(&part)) else { continue };
            let has_room = |role: &RoleId| room.get(role).is_some_and(|room| *room > 0);
            let mut of_kind = file.roles.iter().filter(|role| role.takes(known.part.kind)).map(|role| role.id);
            let is_out = ask.left_out.iter().any(|(out, of)| *out == part && of.is_none_or(|of| of == machine));
            let is_open = match role.filter(|role| room.contains_key(role)) {
                Some(role) => !alone.holds_role(machine, Some(role)),
                None => of_kind.clone().any(|role| !alone.holds_role(machine, Some(role))),
            };
            if is_out || is_open {
                continue;
            }
            match role.filter(has_room).or_else(|| of_kind.find(has_room)) {
                Some(role) => {
                    *room.entry(role).or_default() -= 1;
                    pins.seats.insert(part, Pin { machine, role: Some(role) });
                }
                None if stands_between(known.part.kind) => {
                    pins.seats.insert(part, Pin { machine, role: None });
                }
                None => drop(pins.aside.insert(part)),
            }
        }
    }
    pins
}

/// The seat of a part that is asked into a machine: the role it has there already, or the first of its kind.
fn asked_pin(logbook: &Logbook, part: PartId, machine: MachineId) -> Result<Pin, Contradiction> {
    let (name, of) = (part_name(logbook, part), machine_name(logbook, machine));
    let not_free = |why: String| Contradiction::NotFree { part: name.clone(), machine: of.clone(), why };
    let (Some(file), Some(known)) = (logbook.machine(machine), logbook.part(part)) else {
        return Err(not_free(text!("it is not in this logbook").to_owned()));
    };
    match known.custody_now() {
        Custody::Mine | Custody::BorrowedIn => {}
        custody => return Err(not_free(text!("it is not at hand ({custody})", custody = custody.label()))),
    }
    if known.part.is_quarantined() {
        return Err(not_free(text!("it is kept apart ({why})", why = known.part.quarantine)));
    }
    let kind = known.part.kind;
    let there = file.parts().into_iter().find(|(own, ..)| *own == part).and_then(|(_, role, _)| role);
    let of_kind = || file.role_for(kind).map(|role| role.id);
    match there.or_else(of_kind) {
        Some(role) => Ok(Pin { machine, role: Some(role) }),
        None if stands_between(kind) => Ok(Pin { machine, role: None }),
        None => Err(Contradiction::NoRole { machine: of, part: name, kind: kind.label().to_owned() }),
    }
}

/// Whether each role has room for all that is pinned in it.
fn is_room(logbook: &Logbook, pins: &HashMap<PartId, Pin>) -> Result<(), Contradiction> {
    for file in &logbook.machines {
        for role in &file.roles {
            let seat = Pin { machine: file.machine.id, role: Some(role.id) };
            let mut there: Vec<PartId> = pins.iter().filter(|(_, pin)| **pin == seat).map(|(part, _)| *part).collect();
            if there.len() > role.count.max(1) as usize {
                there.sort_unstable();
                return Err(Contradiction::Crowded {
                    machine: file.machine.name.clone(),
                    role: role_name(logbook, file.machine.id, role.id),
                    room: role.count.max(1),
                    parts: there.into_iter().map(|part| part_name(logbook, part)).collect(),
                });
            }
        }
    }
    Ok(())
}
