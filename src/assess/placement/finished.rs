//! Machines past their tests: left as they are, unless they are asked about.

use std::collections::{BTreeMap, BTreeSet};

use super::ask::Ask;
use crate::assess::Answers;
use crate::record::{Logbook, MachineId, PartId, RoleId, Side};

/// Machines that are left as they are.
#[derive(Clone, Debug, Default)]
pub struct LeftAlone {
    /// Each with the roles that are asked about all the same.
    machines: BTreeMap<MachineId, BTreeSet<RoleId>>,
}

impl LeftAlone {
    /// Machines past their tests that may not be touched. What is pinned into one, out of one, or left out of one opens
    /// the roles of its kind there; a part that others plug into opens the whole machine.
    pub fn of(logbook: &Logbook, answers: &Answers, ask: &Ask) -> Self {
        if ask.may_touch_all {
            return Self::default();
        }
        let tested = answers.machines.iter().filter(|machine| machine.readiness.is_tested());
        let mut alone = Self {
            machines: tested
                .map(|machine| machine.machine)
                .filter(|machine| !ask.may_touch.contains(machine))
                .map(|machine| (machine, BTreeSet::new()))
                .collect(),
        };
        let home = |part: PartId| logbook.fitted_in(part).map(|(file, _)| file.machine.id);
        let planned = logbook.machines.iter().flat_map(|file| &file.placements).filter(|plan| plan.pinned);
        let pins = planned.map(|plan| (plan.part, plan.machine)).chain(ask.pins.iter().copied());
        let moved = pins.filter(|(part, machine)| home(*part) != Some(*machine));
        for (part, machine) in moved.collect::<Vec<_>>() {
            alone.open(logbook, part, machine);
            if let Some(from) = home(part) {
                alone.open(logbook, part, from);
            }
        }
        for (part, machine) in &ask.left_out {
            if let Some(from) = home(*part).filter(|from| machine.is_none_or(|machine| machine == *from)) {
                alone.open(logbook, *part, from);
            }
        }
        alone
    }

    fn open(&mut self, logbook: &Logbook, part: PartId, machine: MachineId) {
        let Some(file) = logbook.part(part) else { return };
        let design = logbook.design_of(file);
        if design.is_some_and(|design| design.connectors.iter().any(|row| row.side == Side::Offers)) {
            self.machines.remove(&machine);
            return;
        }
        let (Some(open), Some(of)) = (self.machines.get_mut(&machine), logbook.machine(machine)) else { return };
        open.extend(of.roles.iter().filter(|role| role.takes(file.part.kind)).map(|role| role.id));
        open.extend(of.fitted().filter(|fitting| fitting.part == part).filter_map(|fitting| fitting.role));
    }

    /// Whether a machine is left as it is, but perhaps for some of its roles.
    pub fn holds(&self, machine: MachineId) -> bool {
        self.machines.contains_key(&machine)
    }

    /// Whether a role of a machine, or what stands between its parts, is left as it is.
    pub fn holds_role(&self, machine: MachineId, role: Option<RoleId>) -> bool {
        self.machines.get(&machine).is_some_and(|open| role.is_none_or(|role| !open.contains(&role)))
    }
}
