//! What a person does with a machine, each act as one change.

use chrono::NaiveDate;

use crate::record::{
    Change, Fitting, Kind, Machine, MachineFile, MachineId, Moment, PartFile, Placement, Role, RoleId, Word,
};
use crate::store::Store;
use crate::text;

/// What people call a role: its own name, else its kind.
pub fn role_title(role: &Role) -> String {
    if role.name.is_empty() { role.kind.label().to_owned() } else { role.name.clone() }
}

/// The same with the other kinds that fill it.
pub fn role_kinds(role: &Role) -> String {
    let others = role.kinds().skip(1).map(|kind| kind.label().to_lowercase());
    std::iter::once(role_title(role)).chain(others).collect::<Vec<_>>().join(text!(" or "))
}

/// Means a part for a role.
pub fn plan(machine: &MachineFile, role: RoleId, part: &PartFile, today: NaiveDate) -> Change {
    let mut change =
        Change::new(text!("Plan {tag} for {machine}", tag = part.part.tag, machine = machine.machine.name));
    change.put(Placement {
        id: Store::new_id(),
        machine: machine.machine.id,
        role,
        part: part.part.id,
        pinned: false,
        planned: Moment::on(today),
        reason: String::new(),
    });
    change
}

/// Takes a plan back.
pub fn unplan(machine: &MachineFile, part: &PartFile) -> Change {
    let mut change =
        Change::new(text!("Plan {tag} for {machine} no longer", tag = part.part.tag, machine = machine.machine.name));
    for plan in machine.placements.iter().filter(|plan| plan.part == part.part.id) {
        change.remove(plan.id);
    }
    change
}

/// Notes that a part was fitted today; the plan that this fulfils is struck out.
pub fn fit(machine: &MachineFile, role: Option<RoleId>, part: &PartFile, today: NaiveDate) -> Change {
    let mut change = unplan(machine, part);
    change.name = text!("Fit {tag} in {machine}", tag = part.part.tag, machine = machine.machine.name);
    change.put(Fitting {
        id: Store::new_id(),
        machine: machine.machine.id,
        role,
        part: part.part.id,
        fitted: Moment::on(today),
        removed: None,
        note: String::new(),
    });
    change
}

/// Notes that a part was fitted today in the place of another, which was taken out.
pub fn exchange(machine: &MachineFile, role: RoleId, out: &PartFile, part: &PartFile, today: NaiveDate) -> Change {
    let mut change = take_out(machine, out, today);
    change.steps.extend(fit(machine, Some(role), part, today).steps);
    change.name = text!(
        "Fit {tag} in {machine} in place of {out}",
        tag = part.part.tag,
        machine = machine.machine.name,
        out = out.part.tag
    );
    change
}

/// Means a part for a role instead of another that was planned for it.
pub fn plan_instead(machine: &MachineFile, role: RoleId, out: &PartFile, part: &PartFile, today: NaiveDate) -> Change {
    let mut change = unplan(machine, out);
    change.steps.extend(plan(machine, role, part, today).steps);
    change.name = text!(
        "Plan {tag} for {machine} instead of {out}",
        tag = part.part.tag,
        machine = machine.machine.name,
        out = out.part.tag
    );
    change
}

/// Notes that a part was taken out today.
pub fn take_out(machine: &MachineFile, part: &PartFile, today: NaiveDate) -> Change {
    let mut change =
        Change::new(text!("Take {tag} out of {machine}", tag = part.part.tag, machine = machine.machine.name));
    for fitting in machine.fitted().filter(|fitting| fitting.part == part.part.id) {
        change.put(Fitting { removed: Some(Moment::on(today)), ..fitting.clone() });
    }
    change
}

/// Adds a role of a kind.
pub fn add_role(machine: &MachineFile, kind: Kind) -> Change {
    let mut change =
        Change::new(text!("Add the role {role} to {machine}", role = kind.label(), machine = machine.machine.name));
    change.put(role(machine.machine.id, kind, true));
    change
}

/// Strikes out a role that nothing is planned for or fitted in.
pub fn drop_role(machine: &MachineFile, role: &Role) -> Change {
    let mut change = Change::new(text!(
        "Strike the role {role} from {machine}",
        role = role_title(role),
        machine = machine.machine.name
    ));
    change.remove(role.id);
    change
}

/// Changes a role.
pub fn change_role(machine: &MachineFile, role: Role) -> Change {
    let mut change = Change::new(text!(
        "Change the role {role} of {machine}",
        role = role_title(&role),
        machine = machine.machine.name
    ));
    change.put(role);
    change
}

/// The kinds that almost every machine of the period has, and whether it is incomplete without.
const USUAL_ROLES: [(Kind, bool); 15] = [
    (Kind::Case, true),
    (Kind::PowerSupply, true),
    (Kind::Mainboard, true),
    (Kind::Processor, true),
    (Kind::Cooler, false),
    (Kind::MemoryModule, true),
    (Kind::VideoCard, true),
    (Kind::ControllerCard, false),
    (Kind::HardDisk, true),
    (Kind::FloppyDrive, false),
    (Kind::OpticalDrive, false),
    (Kind::SoundCard, false),
    (Kind::Keyboard, true),
    (Kind::PointingDevice, false),
    (Kind::Monitor, true),
];

/// Starts a machine with the roles that most machines have.
pub fn start(machine: Machine) -> Change {
    let mut change = Change::new(text!("Start the machine {machine}", machine = machine.name));
    let id = machine.id;
    change.put(machine);
    for (kind, required) in USUAL_ROLES {
        change.put(role(id, kind, required));
    }
    change
}

/// Changes a machine's brief.
pub fn change_brief(machine: Machine) -> Change {
    let mut change = Change::new(text!("Change the brief of {machine}", machine = machine.name));
    change.put(machine);
    change
}

fn role(machine: MachineId, kind: Kind, required: bool) -> Role {
    Role {
        id: Store::new_id(),
        machine,
        kind,
        name: String::new(),
        required,
        count: 1,
        note: String::new(),
        or_kinds: Vec::new(),
    }
}
