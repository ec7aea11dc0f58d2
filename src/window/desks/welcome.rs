//! Welcome: open a logbook, start one, look around in the sample workshop.

use std::path::Path;

use egui::{ScrollArea, Ui};

use crate::text;
use crate::window::command::Command;
use crate::window::forms::workshop_ui;
use crate::window::outbox::{Ask, Outbox, View};
use crate::window::page::Page;
use crate::window::settings::Settings;
use crate::window::theme::GRID;
use crate::window::widgets::{Edit, body, first_ui, link_ui, path_field_ui, press_ui, remark, section_ui};

/// What is typed so far.
#[derive(Default)]
pub struct Welcome {
    open_at: String,
    new_at: String,
    edit: Edit,
}

const MEASURE: f32 = 160.0 * GRID;

impl Welcome {
    /// Draws the desk; it needs no logbook.
    pub fn ui(
        &mut self,
        ui: &mut Ui,
        settings: &Settings,
        opening: Option<&Path>,
        view: Option<&View<'_>>,
        outbox: &mut Outbox,
    ) {
        ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
            ui.set_max_width(MEASURE.min(ui.available_width()));
            first_ui(ui, "Benchwright");
            ui.label(body(text!(
                "A logbook for people who restore period personal computers: what each part is, what was found and done, what to do next, and whether a machine may be switched on."
            )));
            if let Some(path) = opening {
                ui.add_space(2.0 * GRID);
                ui.label(body(text!("Opening {path}…", path = path.display())));
                return;
            }
            if let Some(view) = view {
                ui.add_space(2.0 * GRID);
                let word = text!("Go on with {name}", name = view.logbook.workshop.name);
                if press_ui(ui, &word, "", None).clicked() {
                    outbox.go(Page::Shelf);
                }
                ui.add_space(2.0 * GRID);
                workshop_ui(ui, &mut self.edit, view, outbox);
            }
            recent_ui(ui, settings, outbox);
            self.open_ui(ui, outbox);
            self.new_ui(ui, outbox);
            section_ui(ui, text!("Look around first"));
            ui.label(body(text!("An invented workshop with its machines and a shelf of parts, to try everything on.")));
            let sample = Command::OpenSample;
            if press_ui(ui, &sample.label(), sample.tooltip(), None).clicked() {
                outbox.give(sample);
            }
        });
    }

    fn open_ui(&mut self, ui: &mut Ui, outbox: &mut Outbox) {
        section_ui(ui, text!("Open a logbook"));
        let mut ask = false;
        let label = text!("Folder of the logbook");
        if let Some(path) = path_field_ui(ui, label, &mut self.open_at, text!("Open"), &mut ask) {
            outbox.give(Command::OpenAt(path));
        }
        if ask {
            outbox.ask(Ask::Logbook);
        }
    }

    fn new_ui(&mut self, ui: &mut Ui, outbox: &mut Outbox) {
        section_ui(ui, text!("Start a new one"));
        let mut ask = false;
        let label = text!("Folder to be made for it");
        if let Some(path) = path_field_ui(ui, label, &mut self.new_at, text!("Start"), &mut ask) {
            outbox.give(Command::NewAt(path));
        }
        if ask {
            outbox.ask(Ask::NewLogbook);
        }
    }
}

fn recent_ui(ui: &mut Ui, settings: &Settings, outbox: &mut Outbox) {
    if settings.recent.is_empty() {
        return;
    }
    section_ui(ui, text!("Opened of late"));
    for path in &settings.recent {
        let name = path.file_stem().unwrap_or(path.as_os_str()).to_string_lossy();
        ui.horizontal(|ui| {
            if link_ui(ui, &name).accessible_name(text!("Open {path}", path = path.display())).clicked() {
                outbox.give(Command::OpenAt(path.clone()));
            }
            ui.label(remark(ui, path.display().to_string()));
        });
    }
}
