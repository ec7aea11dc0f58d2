//! A part for a role that is filled already: says by what, and asks which is to make room.

use egui::Ui;

use super::acts;
use crate::record::{Change, MachineFile, MachineId, PartFile, PartId, Role, RoleId};
use crate::text;
use crate::window::outbox::View;
use crate::window::theme::Themed;
use crate::window::widgets::{body, link_ui, press_ui};

/// A part that is to be planned for or fitted in a role without room for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Room {
    pub machine: MachineId,
    pub role: RoleId,
    pub part: PartId,
    /// Whether it is only planned.
    pub is_plan: bool,
}

/// What was answered.
#[derive(Debug)]
pub enum RoomAct {
    /// One makes room for the other, as one change.
    Exchange(Change),
    Leave,
}

impl Room {
    /// Whether the role has no room for the part, so that one has to be asked.
    pub fn is_short(&self, view: &View<'_>) -> bool {
        let machine = view.logbook.machine(self.machine);
        let role = machine.and_then(|file| file.roles.iter().find(|known| known.id == self.role));
        machine.zip(role).is_some_and(|(machine, role)| !self.in_the_way(machine, role, view).is_empty())
    }

    /// What fills the role: fitted parts, and for a plan those that are planned as well.
    fn in_the_way<'a>(&self, machine: &MachineFile, role: &Role, view: &View<'a>) -> Vec<(&'a PartFile, bool)> {
        let fitted = machine.fitted().filter(|fitting| fitting.role == Some(role.id));
        let planned = machine.placements.iter().filter(|plan| self.is_plan && plan.role == role.id);
        let all = fitted.map(|fitting| (fitting.part, true)).chain(planned.map(|plan| (plan.part, false)));
        let others = all.filter(|(part, _)| *part != self.part);
        let found: Vec<_> = others.filter_map(|(part, is)| Some((&**view.logbook.part(part)?, is))).collect();
        if found.len() < role.count.max(1) as usize { Vec::new() } else { found }
    }

    /// Draws the question.
    pub fn ui(&self, ui: &mut Ui, view: &View<'_>) -> Option<RoomAct> {
        let Self { machine, role, part, .. } = *self;
        let (Some(machine), Some(file)) = (view.logbook.machine(machine), view.logbook.part(part)) else {
            return Some(RoomAct::Leave);
        };
        let Some(role) = machine.roles.iter().find(|known| known.id == role) else { return Some(RoomAct::Leave) };
        let in_the_way = self.in_the_way(machine, role, view);
        if in_the_way.is_empty() {
            return Some(RoomAct::Leave);
        }
        let mut act = None;
        let title = acts::role_title(role);
        let full = text!("{role} of {machine} is filled already.", role = title, machine = machine.machine.name);
        ui.label(body(full).color(ui.tokens().power_unknown));
        ui.horizontal_wrapped(|ui| {
            for (out, is_fitted) in in_the_way {
                let (tag, old, today) = (&file.part.tag, &out.part.tag, view.today);
                let (word, change) = match (self.is_plan, is_fitted) {
                    (false, _) => (
                        text!("Take {out} out and fit {tag}", out = old, tag = tag),
                        acts::exchange(machine, role.id, out, file, today),
                    ),
                    (true, true) => (
                        text!("Plan {tag} for when {out} comes out", out = old, tag = tag),
                        acts::plan(machine, role.id, file, today),
                    ),
                    (true, false) => (
                        text!("Plan {tag} instead of {out}", out = old, tag = tag),
                        acts::plan_instead(machine, role.id, out, file, today),
                    ),
                };
                if press_ui(ui, &word, &view.logbook.title_of(out), None).clicked() {
                    act = Some(RoomAct::Exchange(change));
                }
            }
            if link_ui(ui, text!("Leave it as it is")).clicked() {
                act = Some(RoomAct::Leave);
            }
        });
        act
    }
}
