//! The part in machines: planned for, fitted in, taken out.

use egui::Ui;

use super::about::{About, act_ui};
use crate::record::{MachineFile, MachineId, RoleId, Word};
use crate::text;
use crate::window::desks::machines::{Room, RoomAct, acts};
use crate::window::outbox::Outbox;
use crate::window::page::Page;
use crate::window::widgets::{Asking, Pick, Picker, body, remark};

/// The choice of a machine and role, while one is being made.
#[derive(Debug, Default)]
pub struct Placing {
    choosing: Option<(Act, Picker<(MachineId, RoleId)>)>,
    /// A role that has no room for the part.
    room: Option<Room>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Act {
    Plan,
    Fit,
}

impl Placing {
    /// Draws where it is fitted or planned, with what can be done about it.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let logbook = about.view.logbook;
        let id = about.part().id;
        let fitted = logbook.fitted_in(id);
        let planned: Vec<_> =
            logbook.machines.iter().filter(|machine| machine.placements.iter().any(|plan| plan.part == id)).collect();
        ui.horizontal_wrapped(|ui| {
            if let Some((machine, _)) = fitted {
                ui.label(body(text!("Fitted in")));
                machine_ui(ui, machine, outbox);
                if act_ui(ui, text!("Take it out"), &text!("Take {tag} out", tag = about.tag())) {
                    outbox.change(acts::take_out(machine, about.file, about.view.today));
                }
            }
            for machine in &planned {
                ui.label(body(text!("Planned for")));
                machine_ui(ui, machine, outbox);
                let plan = machine.placements.iter().find(|plan| plan.part == id);
                let role = plan.map(|plan| plan.role);
                if fitted.is_none() && act_ui(ui, text!("Fitted now"), &text!("{tag} is fitted now", tag = about.tag()))
                {
                    let machine = machine.machine.id;
                    if let Some(role) = role {
                        self.place(Room { machine, role, part: id, is_plan: false }, about, outbox);
                    }
                }
                if act_ui(ui, text!("Not any more"), &text!("Plan {tag} no longer", tag = about.tag())) {
                    outbox.change(acts::unplan(machine, about.file));
                }
            }
            if about.file.custody_now().is_at_hand() && !logbook.machines.is_empty() {
                if fitted.is_none() && planned.is_empty() {
                    ui.label(remark(ui, text!("In no machine.")));
                }
                if act_ui(ui, text!("Plan it for…"), text!("Plan it for a machine…")) {
                    self.choose(Act::Plan);
                }
                if fitted.is_none()
                    && planned.is_empty()
                    && act_ui(ui, text!("Fit it in…"), text!("Fit it in a machine…"))
                {
                    self.choose(Act::Fit);
                }
            }
        });
        self.choose_ui(ui, about, outbox);
        self.room_ui(ui, about, outbox);
    }

    fn choose(&mut self, act: Act) {
        let is_open = self.choosing.as_ref().is_some_and(|(open, _)| *open == act);
        self.room = None;
        self.choosing = (!is_open).then(|| (act, Picker::ready()));
    }

    /// Plans or fits the part, or asks what is to make room for it.
    fn place(&mut self, room: Room, about: &About<'_>, outbox: &mut Outbox) {
        self.choosing = None;
        if room.is_short(about.view) {
            self.room = Some(room);
        } else if let Some(machine) = about.view.logbook.machine(room.machine) {
            outbox.change(if room.is_plan {
                acts::plan(machine, room.role, about.file, about.view.today)
            } else {
                acts::fit(machine, Some(room.role), about.file, about.view.today)
            });
        }
    }

    fn room_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let Some(act) = self.room.as_ref().and_then(|room| room.ui(ui, about.view)) else { return };
        if let RoomAct::Exchange(change) = act {
            outbox.change(change);
        }
        self.room = None;
    }

    fn choose_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let Some((act, picker)) = &mut self.choosing else { return };
        let label = match act {
            Act::Plan => text!("Machine and role that it is planned for"),
            Act::Fit => text!("Machine and role that it is fitted in"),
        };
        let act = *act;
        match picker.ui(ui, Asking::one(label), about.view.logbook.revision, || roles(about)) {
            Some(Pick::One((machine, role))) => {
                let is_plan = act == Act::Plan;
                self.place(Room { machine, role, part: about.part().id, is_plan }, about, outbox);
            }
            Some(_) => self.choosing = None,
            None => {}
        }
    }
}

fn machine_ui(ui: &mut Ui, machine: &MachineFile, outbox: &mut Outbox) {
    if act_ui(ui, &machine.machine.name, &text!("Go to {machine}", machine = machine.machine.name)) {
        outbox.go(Page::Machine(machine.machine.id));
    }
}

/// Roles of the part's kind in all machines, free ones first.
fn roles(about: &About<'_>) -> Vec<((MachineId, RoleId), String)> {
    let kind = about.part().kind;
    let mut choices = Vec::new();
    for file in &about.view.logbook.machines {
        for role in file.roles.iter().filter(|role| role.takes(kind)) {
            let filled = file.parts().iter().filter(|(_, known, _)| *known == Some(role.id)).count();
            let title = if role.name.is_empty() { role.kind.label() } else { &role.name };
            let free = (filled as u32) < role.count.max(1);
            let stand = if free { text!("free") } else { text!("filled") };
            let said = format!("{}: {title} ({stand})", file.machine.name);
            choices.push((!free, file.machine.name.to_lowercase(), (file.machine.id, role.id), said));
        }
    }
    choices.sort_by(|one, other| (one.0, &one.1).cmp(&(other.0, &other.1)));
    choices.into_iter().map(|(_, _, what, said)| (what, said)).collect()
}
