//! The desks: one folder or file each.

pub mod bench;
pub mod intake;
pub mod machines;
pub mod part_sheet;
pub mod shelf;
pub mod supplies;
pub mod welcome;

use egui::Ui;

use super::outbox::{KeptFile, Outbox, View};
use super::page::Page;
use super::viewer::Viewer;

/// Every desk with what it keeps while another is on show.
#[derive(Default)]
pub struct Desks {
    pub welcome: welcome::Welcome,
    pub intake: intake::Intake,
    pub shelf: shelf::Shelf,
    pub part_sheet: part_sheet::PartSheet,
    pub bench: bench::Bench,
    pub machines: machines::Machines,
    pub supplies: supplies::Supplies,
    pub viewer: Viewer,
}

impl Desks {
    /// Hands files that were copied into the logbook to the page that asked for them.
    pub fn kept(&mut self, page: Page, files: Vec<KeptFile>) {
        match page {
            Page::Part(part) => self.part_sheet.kept(part, files),
            Page::Bench => self.bench.kept(files),
            Page::Machine(machine) => self.machines.kept(machine, files),
            _ => {}
        }
    }

    /// Draws the page on show.
    pub fn ui(&mut self, ui: &mut Ui, page: Page, view: &View<'_>, outbox: &mut Outbox) {
        match page {
            // Needs no logbook, and is drawn by the window itself.
            Page::Welcome => {}
            Page::Intake => self.intake.ui(ui, view, outbox),
            Page::Shelf => self.shelf.ui(ui, view, outbox),
            Page::Part(part) => self.part_sheet.ui(ui, part, view, outbox),
            Page::Bench => self.bench.ui(ui, view, outbox),
            Page::Machines => self.machines.ui(ui, view, outbox),
            Page::Machine(machine) => self.machines.sheet_ui(ui, machine, view, outbox),
            Page::Supplies => self.supplies.ui(ui, view, outbox),
            Page::Capacitors(part) => self.part_sheet.positions_ui(ui, part, view, outbox),
            Page::Photograph => self.viewer.ui(ui, view, outbox),
        }
    }
}
