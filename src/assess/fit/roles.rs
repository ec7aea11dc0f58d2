//! A machine's roles: which part fills which, who is wanted elsewhere, and what of fit holds the machine's gates.

use std::collections::HashMap;
use std::sync::Arc;

use super::because::{Because, Constraint, Verdict};
use super::build::{Asked, Build};
use super::model::Models;
use crate::assess::answers::PartAnswers;
use crate::assess::making;
use crate::assess::reason::Reason;
use crate::record::{Kind, MachineFile, MachineId, PartId, Role, RoleId};
use crate::rules::connectors::Family;
use crate::trade::drive::FileSystem;

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
    pub answers: Option<&'a Arc<PartAnswers>>,
}

/// How a role is filled.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RoleFill {
    pub role: RoleId,
    pub fitted: Vec<PartId>,
    /// Planned and not fitted.
    pub planned: Vec<PartId>,
    /// Of those, parts that plug into nothing for certain: they fill nothing.
    pub unplugged: Vec<PartId>,
    /// How many parts it lacks; 0 for an optional role.
    pub missing: u32,
}

impl RoleFill {
    /// Its parts, fitted ones first.
    pub fn parts(&self) -> impl Iterator<Item = PartId> {
        self.fitted.iter().chain(&self.planned).copied()
    }

    /// How many parts fill it.
    pub fn filled(&self) -> u32 {
        (self.fitted.len() + self.planned.len()).saturating_sub(self.unplugged.len()) as u32
    }

    fn count_missing(&mut self, role: &Role) {
        self.missing = if role.required { role.count.max(1).saturating_sub(self.filled()) } else { 0 };
    }
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
        .map(|role| RoleFill {
            role: role.id,
            fitted: Vec::new(),
            planned: Vec::new(),
            unplugged: Vec::new(),
            missing: 0,
        })
        .collect();
    let (with_role, without): (Vec<&Placed>, Vec<&Placed>) =
        placed.iter().partition(|part| part.role.is_some_and(|role| file.roles.iter().any(|known| known.id == role)));
    for part in with_role.into_iter().chain(without) {
        let kind = part.answers.map(|answers| answers.file.part.kind);
        let has_room = |at: &usize| {
            let taken = fills[*at].fitted.len() + fills[*at].planned.len();
            taken < file.roles[*at].count as usize
        };
        let of_kind = |at: &usize| has_room(at) && Some(file.roles[*at].kind) == kind;
        let taking = |at: &usize| has_room(at) && kind.is_some_and(|kind| file.roles[*at].takes(kind));
        let own = file.roles.iter().position(|role| Some(role.id) == part.role);
        let free = || (0..fills.len()).find(of_kind).or_else(|| (0..fills.len()).find(taking));
        if let Some(at) = own.or_else(free) {
            let list = if part.is_fitted { &mut fills[at].fitted } else { &mut fills[at].planned };
            list.push(part.part);
        }
    }
    for (fill, role) in fills.iter_mut().zip(&file.roles) {
        fill.count_missing(role);
    }
    fills
}

/// Notes the parts that plug into nothing for certain: of what each does in a machine, nobody there offers the
/// connector. They fill no role.
pub fn note_unplugged(file: &MachineFile, fills: &mut [RoleFill], build: &Build) {
    for because in build.because() {
        let Because::NeedUnmet { part, family, is_certain: true, held_by, .. } = because else { continue };
        let kind = build.place(*part).map(|at| build.pieces()[at].kind());
        if !held_by.is_empty() || !kind.is_some_and(|kind| is_its_own(kind, *family)) {
            continue;
        }
        for (fill, role) in fills.iter_mut().zip(&file.roles) {
            if fill.parts().any(|known| known == *part) && !fill.unplugged.contains(part) {
                fill.unplugged.push(*part);
                fill.count_missing(role);
            }
        }
    }
}

/// Whether a part of a kind is nothing in a machine without a connector of this family; leads for sound and lamps are
/// not such. Common practice, no source.
fn is_its_own(kind: Kind, family: Option<Family>) -> bool {
    match family {
        Some(Family::Processor | Family::Expansion | Family::Memory) => kind != Kind::Mainboard,
        Some(Family::Disk | Family::Floppy) => kind.is_drive(),
        Some(Family::Video) => kind == Kind::Monitor,
        Some(Family::Input) => matches!(kind, Kind::Keyboard | Kind::PointingDevice),
        Some(Family::Outline | Family::Mounting | Family::BoardPower | Family::DrivePower | Family::Port) | None => {
            false
        }
    }
}

/// Why the first gate holds: roles with too few parts, too many, or parts of another kind.
pub fn role_reasons(file: &MachineFile, fills: &[RoleFill], placed: &[Placed]) -> Vec<Reason> {
    let machine = file.machine.id;
    let mut reasons = Vec::new();
    for (role, fill) in file.roles.iter().zip(fills) {
        let unplugged = fill.unplugged.iter().filter(|_| role.required);
        reasons.extend(unplugged.map(|part| Reason::PluggedNowhere { machine, role: role.id, part: *part }));
        let empty = fill.missing.saturating_sub(fill.unplugged.len() as u32);
        if empty > 0 {
            reasons.push(Reason::RoleEmpty { machine, role: role.id, missing: empty });
        }
        let filled = (fill.fitted.len() + fill.planned.len()) as u32;
        if filled > role.count.max(1) {
            reasons.push(Reason::RoleCrowded { machine, role: role.id, over: filled - role.count.max(1) });
        }
        for part in fill.fitted.iter().chain(&fill.planned) {
            let answers = placed.iter().find(|placed| placed.part == *part).and_then(|placed| placed.answers);
            if answers.is_some_and(|answers| !role.takes(answers.file.part.kind)) {
                reasons.push(Reason::WrongKind { machine, role: role.id, part: *part });
            }
        }
    }
    reasons
}

/// Why the second gate holds, but for work: parts that are elsewhere or only planned, connectors, dates.
pub fn part_reasons(file: &MachineFile, placed: &[Placed], uses: &Uses, build: &Build) -> Vec<Reason> {
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
    reasons.extend(build.because().filter_map(reason));
    let unknown = build.because().filter(|one| one.missing().is_some() && reason(one).is_none()).count() as u32;
    if unknown > 0 {
        reasons.push(Reason::FiguresMissing { machine: here, figures: unknown });
    }
    let planned = placed.iter().filter(|placed| !placed.is_fitted && !placed.is_inside && placed.answers.is_some());
    reasons.extend(planned.map(|placed| Reason::PlannedOnly { part: placed.part, role: placed.role }));
    reasons
}

/// What holds a gate, or is worth knowing there. A core voltage that is not known leaves the gate not known, since it
/// destroys; other figures that are missing are counted together.
fn reason(because: &Because) -> Option<Reason> {
    match because {
        Because::ConnectorsUnknown { part } => Some(Reason::ConnectorsUnknown { part: *part }),
        Because::NeedUnmet { part, connector, missing, is_certain, .. } => Some(Reason::NeedUnmet {
            part: *part,
            connector: (**connector).into(),
            missing: *missing,
            is_certain: *is_certain,
        }),
        Because::Dates { part, true_to, is_modern } => {
            Some(Reason::Window { part: *part, true_to: *true_to, is_modern: *is_modern })
        }
        Because::FigureMissing { constraint, .. } if *constraint != Constraint::Voltage => None,
        other if other.verdict() == Verdict::Fits => None,
        other => Some(Reason::Fit(other.clone())),
    }
}

/// More parts to come than this tell no more of what they could offer.
const MOST_TO_COME: usize = 64;

/// Parts that stand behind others for a role that is full: the machine is judged without them.
pub fn competing(file: &MachineFile, fills: &[RoleFill]) -> Vec<PartId> {
    let behind = file
        .roles
        .iter()
        .zip(fills)
        .flat_map(|(role, fill)| fill.fitted.iter().chain(&fill.planned).skip(role.count.max(1) as usize));
    behind.copied().collect()
}

/// A machine's parts put together, without those that only compete for a role that is full.
pub fn of_machine<'r>(
    file: &MachineFile,
    placed: &[Placed],
    fills: &[RoleFill],
    models: &mut Models<'r>,
    file_system: Option<FileSystem>,
) -> Build<'r> {
    let behind = competing(file, fills);
    let chosen = placed.iter().filter(|placed| !behind.contains(&placed.part));
    let pieces = chosen.filter_map(|placed| Some(models.piece(placed.answers?, placed.is_inside))).collect();
    let to_come = file.roles.iter().zip(fills).flat_map(|(role, fill)| {
        let places = 0..fill.missing.saturating_sub(fill.unplugged.len() as u32);
        places.flat_map(|_| role.kinds())
    });
    let to_come = to_come.take(MOST_TO_COME).collect();
    let window = making::window(&file.machine);
    Build::new(models.rules(), pieces, Asked { window, file_system, to_come, is_trial: false })
}
