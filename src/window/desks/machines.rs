//! Machines: how far each is, and why.

use egui::Ui;

use crate::record::MachineId;
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::widgets::{body, first_ui, link_ui, title_ui};

/// What the desk keeps.
#[derive(Default)]
pub struct Machines;

impl Machines {
    /// Draws the desk.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        title_ui(ui, text!("Machines"));
        for file in &view.logbook.machines {
            if link_ui(ui, &file.machine.name).clicked() {
                outbox.go(Page::Machine(file.machine.id));
            }
        }
    }

    /// Draws one machine's sheet.
    pub fn sheet_ui(&mut self, ui: &mut Ui, machine: MachineId, view: &View<'_>, _outbox: &mut Outbox) {
        let Some(file) = view.logbook.machine(machine) else {
            ui.label(body(text!("This machine is no longer in the logbook.")));
            return;
        };
        first_ui(ui, &file.machine.name);
        ui.label(body(&file.machine.purpose));
    }
}
