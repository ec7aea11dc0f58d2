//! Machines: how far each is, and why; and one machine's sheet.

pub mod acts;
mod brief;
mod candidates;
mod fit;
mod gates;
mod list;
mod power_on;
mod roles;
mod room;
mod sheet;

use egui::Ui;

use self::brief::{Brief, BriefAct};
use self::sheet::Sheet;
use crate::record::MachineId;
use crate::text;
use crate::window::outbox::{KeptFile, Outbox, View};
use crate::window::page::Page;
use crate::window::theme::GRID;
use crate::window::widgets::{body, first_ui, press_ui, title_ui};

pub use fit::{Told, mark_of, told_ui};
pub use gates::power_word;
pub use list::window_text;
pub use room::{Room, RoomAct};

/// What the desk keeps.
#[derive(Default)]
pub struct Machines {
    sheet: Option<Sheet>,
    new: Option<Brief>,
}

impl Machines {
    /// Whether files that come in belong to a form of a machine's sheet.
    pub fn takes_files(&self, machine: MachineId) -> bool {
        self.sheet.as_ref().is_some_and(|sheet| sheet.machine() == machine && sheet.takes_files())
    }

    /// Whether a form that is open on a machine's sheet keeps a file of this content.
    pub fn holds(&self, content: &str) -> bool {
        self.sheet.as_ref().is_some_and(|sheet| sheet.holds(content))
    }

    /// Takes files that were copied into the logbook for a machine's sheet.
    pub fn kept(&mut self, machine: MachineId, files: Vec<KeptFile>) {
        if let Some(sheet) = self.sheet.as_mut().filter(|sheet| sheet.machine() == machine) {
            sheet.kept(files);
        }
    }

    /// Draws the desk.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let machines = list::in_order(view);
        ui.horizontal(|ui| {
            title_ui(ui, text!("Machines"));
            if self.new.is_none()
                && press_ui(ui, text!("New machine…"), text!("Starts a machine with its brief"), None).clicked()
            {
                self.new = Some(Brief::new());
            }
        });
        if let Some(brief) = &mut self.new {
            match brief.ui(ui, |name| view.logbook.machine_named(name).is_some()) {
                Some(BriefAct::Keep(machine)) => {
                    outbox.go(Page::Machine(machine.id));
                    outbox.change(acts::start(machine));
                    self.new = None;
                }
                Some(BriefAct::PutAway) => self.new = None,
                None => {}
            }
            ui.add_space(4.0 * GRID);
        }
        if machines.is_empty() {
            if self.new.is_none() {
                ui.label(body(text!(
                    "No machine yet. Start one with its brief: what it is for, and the dates its parts may be of."
                )));
            }
            return;
        }
        first_ui(ui, list::summary(&machines));
        ui.add_space(2.0 * GRID);
        list::list_ui(ui, &machines, view, outbox);
    }

    /// Draws one machine's sheet.
    pub fn sheet_ui(&mut self, ui: &mut Ui, machine: MachineId, view: &View<'_>, outbox: &mut Outbox) {
        let (Some(file), Some(answers)) = (view.logbook.machine(machine), view.answers.machine(machine)) else {
            ui.label(body(text!("This machine is not in the logbook, or not yet.")));
            return;
        };
        let sheet = match &mut self.sheet {
            Some(sheet) if sheet.machine() == machine => sheet,
            sheet => sheet.insert(Sheet::new(file.machine.id)),
        };
        sheet.ui(ui, answers, view, outbox);
    }
}
