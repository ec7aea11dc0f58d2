//! The desks: one folder or file each.

pub mod bench;
pub mod intake;
pub mod machines;
pub mod offer;
pub mod part_sheet;
pub mod placement;
pub mod shelf;
pub mod sorting;
pub mod supplies;
pub mod touched;
pub mod welcome;

use egui::Ui;

use super::outbox::KeptFile;
use super::outbox::{Outbox, View};
use super::page::Page;
use super::taking_in::Target;
use super::viewer::Viewer;
use crate::record::PartId;

/// Every desk with what it keeps while another is on show.
#[derive(Default)]
pub struct Desks {
    pub welcome: welcome::Welcome,
    pub intake: intake::Intake,
    pub shelf: shelf::Shelf,
    pub part_sheet: part_sheet::PartSheet,
    pub bench: bench::Bench,
    pub machines: machines::Machines,
    pub offer: offer::OfferDesk,
    pub placement: placement::Placement,
    pub sorting: sorting::Sorting,
    pub supplies: supplies::Supplies,
    pub touched: touched::Touched,
    pub viewer: Viewer,
}

impl Desks {
    /// Whose photographs are those that come in while a page is on show.
    pub fn target(&self, page: Page) -> Target {
        let part = match page {
            Page::Part(part) => Some(Target::Work(page, part)),
            Page::Bench => self.bench.part_in_view().map(|part| Target::Work(page, part)),
            Page::Shelf => self.shelf.chosen_part().map(Target::Part),
            Page::Machine(machine) => Some(Target::Machine(machine)),
            Page::Photograph => self.viewer.subject(),
            Page::Intake => Some(Target::Intake),
            Page::Capacitors(part) => Some(Target::Part(part)),
            Page::Welcome
            | Page::Machines
            | Page::Placement
            | Page::Sorting
            | Page::Supplies
            | Page::Touched
            | Page::Offer => None,
        };
        part.unwrap_or(Target::Sorting)
    }

    /// Whether photographs, or any files, that come in on a page belong to a form that is open there: of a part on its
    /// sheet or the Bench, or of a machine.
    pub fn takes(&mut self, page: Page, part: Option<PartId>, are_photographs: bool) -> bool {
        match page {
            Page::Part(part) => self.part_sheet.takes_files(part, are_photographs),
            Page::Bench => are_photographs && self.bench.form().is_some_and(|form| Some(form.part()) == part),
            Page::Machine(machine) => self.machines.takes_files(machine),
            _ => false,
        }
    }

    /// Hands files that were copied into the logbook to the form that takes them.
    pub fn kept(&mut self, page: Page, files: Vec<KeptFile>) {
        match page {
            Page::Part(part) => self.part_sheet.kept(part, files),
            Page::Bench => {
                if let Some(form) = self.bench.form() {
                    form.kept(files);
                }
            }
            Page::Machine(machine) => self.machines.kept(machine, files),
            _ => {}
        }
    }

    /// Whether a desk keeps a photograph of this content for a record that is still to be written.
    pub fn holds(&mut self, content: &str) -> bool {
        self.intake.holds(content)
            || self.sorting.holds(content)
            || self.part_sheet.holds(content)
            || self.bench.holds(content)
            || self.machines.holds(content)
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
            Page::Placement => self.placement.ui(ui, view, outbox),
            Page::Sorting => {
                let logged = self.intake.half_typed();
                if let Some(to_intake) = self.sorting.ui(ui, view, logged, outbox) {
                    self.intake.bring(to_intake);
                    outbox.go(Page::Intake);
                }
            }
            Page::Offer => self.offer.ui(ui, view, outbox),
            Page::Supplies => self.supplies.ui(ui, view, outbox),
            Page::Touched => self.touched.ui(ui, view, outbox),
            Page::Capacitors(part) => self.part_sheet.positions_ui(ui, part, view, outbox),
            Page::Photograph => self.viewer.ui(ui, view, outbox),
        }
    }
}
