//! Whether a machine's parts fit: kinds and counts of its roles, connectors, and the window of dates.

pub mod matching;

use std::collections::HashMap;

use self::matching::Item;
use super::answers::PartAnswers;
use super::making::{self, TrueTo};
use super::reason::Reason;
use crate::record::{Kind, MachineFile, MachineId, Originality, PartId, RoleId, Side};
use crate::rules::Connectors;

/// A part of a machine.
#[derive(Clone, Copy, Debug)]
pub struct Placed<'a> {
    pub part: PartId,
    pub role: Option<RoleId>,
    /// Fitted, not only planned.
    pub is_fitted: bool,
    /// Not itself fitted or planned, but inside a part that is.
    pub is_inside: bool,
    /// `None` for a part that the logbook does not hold.
    pub answers: Option<&'a PartAnswers>,
}

/// How a role is filled.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RoleFill {
    pub role: RoleId,
    pub fitted: Vec<PartId>,
    /// Planned and not fitted.
    pub planned: Vec<PartId>,
    /// How many parts it lacks; 0 for an optional role.
    pub missing: u32,
}

/// The machines that each part is fitted in (`true`) or planned for.
pub type Uses = HashMap<PartId, Vec<(MachineId, bool)>>;

/// Who is fitted in or planned for what, over all machines.
pub fn uses<'a>(machines: impl IntoIterator<Item = &'a MachineFile>) -> Uses {
    let mut uses = Uses::new();
    for file in machines {
        for (part, _, is_fitted) in file.parts() {
            uses.entry(part).or_default().push((file.machine.id, is_fitted));
        }
    }
    uses
}

/// Which parts fill which role. A part fitted without a role, or inside another (a supply in a case), fills the first
/// role of its kind that has room.
pub fn roles(file: &MachineFile, placed: &[Placed]) -> Vec<RoleFill> {
    let mut fills: Vec<RoleFill> = file
        .roles
        .iter()
        .map(|role| RoleFill { role: role.id, fitted: Vec::new(), planned: Vec::new(), missing: 0 })
        .collect();
    let (with_role, without): (Vec<&Placed>, Vec<&Placed>) =
        placed.iter().partition(|part| part.role.is_some_and(|role| file.roles.iter().any(|known| known.id == role)));
    for part in with_role.into_iter().chain(without) {
        let kind = part.answers.map(|answers| answers.file.part.kind);
        let has_room = |at: &usize| {
            let taken = fills[*at].fitted.len() + fills[*at].planned.len();
            Some(file.roles[*at].kind) == kind && taken < file.roles[*at].count as usize
        };
        let own = file.roles.iter().position(|role| Some(role.id) == part.role);
        if let Some(at) = own.or_else(|| (0..fills.len()).find(has_room)) {
            let list = if part.is_fitted { &mut fills[at].fitted } else { &mut fills[at].planned };
            list.push(part.part);
        }
    }
    for (fill, role) in fills.iter_mut().zip(&file.roles) {
        let filled = (fill.fitted.len() + fill.planned.len()) as u32;
        fill.missing = if role.required { role.count.max(1).saturating_sub(filled) } else { 0 };
    }
    fills
}

/// Why the first gate holds: roles with too few parts, too many, or parts of another kind.
pub fn role_reasons(file: &MachineFile, fills: &[RoleFill], placed: &[Placed]) -> Vec<Reason> {
    let machine = file.machine.id;
    let mut reasons = Vec::new();
    for (role, fill) in file.roles.iter().zip(fills) {
        if fill.missing > 0 {
            reasons.push(Reason::RoleEmpty { machine, role: role.id, missing: fill.missing });
        }
        let filled = (fill.fitted.len() + fill.planned.len()) as u32;
        if filled > role.count.max(1) {
            reasons.push(Reason::RoleCrowded { machine, role: role.id, over: filled - role.count.max(1) });
        }
        for part in fill.fitted.iter().chain(&fill.planned) {
            let answers = placed.iter().find(|placed| placed.part == *part).and_then(|placed| placed.answers);
            if answers.is_some_and(|answers| answers.file.part.kind != role.kind) {
                reasons.push(Reason::WrongKind { machine, role: role.id, part: *part });
            }
        }
    }
    reasons
}

/// Why the second gate holds, but for work: parts that are elsewhere or only planned, connectors, dates.
pub fn part_reasons(file: &MachineFile, placed: &[Placed], uses: &Uses, connectors: &Connectors) -> Vec<Reason> {
    let mut reasons = Vec::new();
    let here = file.machine.id;
    for placed in placed {
        let Some(answers) = placed.answers else { continue };
        let custody = answers.file.custody_now();
        let part = placed.part;
        if !custody.is_at_hand() {
            reasons.push(Reason::Away { part, custody });
        }
        if answers.file.part.is_quarantined() {
            reasons.push(Reason::KeptApart { part });
        }
        let others = uses.get(&part).map_or(&[][..], Vec::as_slice).iter().filter(|(machine, _)| *machine != here);
        for (machine, is_fitted) in others {
            if *is_fitted {
                reasons.push(Reason::FittedElsewhere { part, machine: *machine });
            } else {
                reasons.push(Reason::PlannedElsewhere { part, machine: *machine });
            }
        }
    }
    reasons.extend(connector_reasons(placed, connectors));
    reasons.extend(window_reasons(file, placed));
    let planned = placed.iter().filter(|placed| !placed.is_fitted && !placed.is_inside && placed.answers.is_some());
    reasons.extend(planned.map(|placed| Reason::PlannedOnly { part: placed.part, role: placed.role }));
    reasons
}

/// Kinds that plug into nothing.
fn is_loose(kind: Kind) -> bool {
    matches!(kind, Kind::Media | Kind::TestRig | Kind::Other)
}

fn connector_reasons(placed: &[Placed], connectors: &Connectors) -> Vec<Reason> {
    let (mut needs, mut offers, mut unknown) = (Vec::new(), Vec::new(), Vec::new());
    for (part, placed) in placed.iter().enumerate() {
        let Some(answers) = placed.answers else { continue };
        let known = answers.design.as_ref().map_or(&[][..], |design| &design.connectors);
        if known.is_empty() && !placed.is_inside && !is_loose(answers.file.part.kind) {
            unknown.push(Reason::ConnectorsUnknown { part: placed.part });
        }
        for row in known {
            let item = Item { part, connector: &row.connector, count: row.count };
            if row.side == Side::Offers { offers.push(item) } else { needs.push(item) }
        }
    }
    let missing = matching::unmet(&needs, &offers, |offer, need| connectors.accepts(offer, need));
    let is_certain = unknown.is_empty();
    let unmet = needs.iter().zip(missing).filter(|(_, missing)| *missing > 0).map(|(need, missing)| {
        let connector = need.connector.into();
        Reason::NeedUnmet { part: placed[need.part].part, connector, missing, is_certain }
    });
    unmet.chain(unknown.clone()).collect()
}

fn window_reasons(file: &MachineFile, placed: &[Placed]) -> Vec<Reason> {
    let Some(window) = making::window(&file.machine) else { return Vec::new() };
    let told = |placed: &Placed| {
        let true_to = placed.answers?.making.true_to(window);
        (true_to != TrueTo::Comfortable).then_some(Reason::Window {
            part: placed.part,
            true_to,
            // What is openly a modern part is not meant to be of the window.
            is_modern: placed.answers?.file.part.originality == Originality::ModernReplacement,
        })
    };
    placed.iter().filter_map(told).collect()
}
