//! Intake: log a part that has just come in.

use egui::Ui;

use crate::record::{Change, Id, Kind, Originality, Part, PartId, When, Word};
use crate::text;
use crate::window::outbox::{KeptFile, Outbox, View};
use crate::window::theme::GRID;
use crate::window::widgets::{choice_ui, field_ui, press_ui, title_ui};

/// What is typed so far.
pub struct Intake {
    tag: String,
    kind: Kind,
    name: String,
    photographs: Vec<KeptFile>,
}

impl Default for Intake {
    fn default() -> Self {
        Self { tag: String::new(), kind: Kind::Mainboard, name: String::new(), photographs: Vec::new() }
    }
}

impl Intake {
    /// Takes photographs that were copied into the logbook.
    pub fn kept(&mut self, files: Vec<KeptFile>) {
        self.photographs.extend(files);
    }

    /// Draws the desk.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        title_ui(ui, text!("Intake"));
        ui.add_space(3.0 * GRID);
        ui.horizontal_top(|ui| {
            field_ui(ui, text!("Tag"), &mut self.tag, Some(30.0 * GRID));
            let kinds: Vec<(Kind, &str)> = Kind::ALL.iter().map(|kind| (*kind, kind.label())).collect();
            choice_ui(ui, text!("Kind"), &mut self.kind, &kinds, 50.0 * GRID);
            field_ui(ui, text!("What it is"), &mut self.name, Some(80.0 * GRID));
        });
        ui.add_space(2.0 * GRID);
        if press_ui(ui, text!("Log the part"), "", None).clicked() {
            let tag = self.tag.trim();
            if tag.is_empty() {
                outbox.say(text!("A part needs a tag: write the number that its label will carry."));
            } else if view.logbook.part_tagged(tag).is_some() {
                outbox.say(text!("Tag {tag} is taken; choose another.", tag = tag));
            } else {
                outbox.change(self.logged(tag));
                *self = Self::default();
            }
        }
    }

    fn logged(&self, tag: &str) -> Change {
        let id: PartId = Id::from_uuid(uuid::Uuid::now_v7());
        let mut change = Change::new(text!("Log part {tag}", tag = tag));
        change.put(Part {
            id,
            tag: tag.to_owned(),
            kind: self.kind,
            design: None,
            name: self.name.trim().to_owned(),
            serial: String::new(),
            originality: Originality::Unstated,
            lot: None,
            price_cents: None,
            acquired: When::Unknown,
            place: None,
            inside: None,
            quarantine: String::new(),
            quarantined: When::Unknown,
            note: String::new(),
        });
        change
    }
}
