//! The part sheet: everything about one part.

use egui::Ui;

use crate::record::{PartId, Word};
use crate::text;
use crate::window::outbox::{KeptFile, Outbox, View};
use crate::window::widgets::{body, first_ui, marking, section_ui};

/// What is typed so far.
#[derive(Default)]
pub struct PartSheet {
    files: Vec<(PartId, KeptFile)>,
}

impl PartSheet {
    /// Takes files that were copied into the logbook for a part.
    pub fn kept(&mut self, part: PartId, files: Vec<KeptFile>) {
        self.files.extend(files.into_iter().map(|file| (part, file)));
    }

    /// Draws the sheet.
    pub fn ui(&mut self, ui: &mut Ui, part: PartId, view: &View<'_>, _outbox: &mut Outbox) {
        let Some(file) = view.logbook.part(part) else {
            ui.label(body(text!("This part is no longer in the logbook.")));
            return;
        };
        first_ui(ui, format!("{}  {}", file.part.tag, view.logbook.title_of(file)));
        ui.label(body(file.part.kind.label()));
        section_ui(ui, text!("Markings"));
        for read in file.markings_now() {
            ui.label(marking(&read.text));
        }
    }
}
