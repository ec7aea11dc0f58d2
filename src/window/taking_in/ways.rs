//! The ways in: a path to be typed, the desktop's dialog, dropping and pasting.

use egui::Ui;

use crate::text;
use crate::window::command::Command;
use crate::window::outbox::{Ask, Outbox, View};
use crate::window::page::Page;
use crate::window::widgets::{link_ui, path_field_ui, remark};

/// A path that is being typed, once somebody asks to add photographs.
#[derive(Debug, Default)]
pub struct Ways {
    path: Option<String>,
}

impl Ways {
    /// Draws a word to press that unfolds the ways in, for a page.
    pub fn ui(&mut self, ui: &mut Ui, page: Page, view: &View<'_>, outbox: &mut Outbox) {
        if self.path.is_some() {
            self.open_ui(ui, page, view, outbox);
        } else if link_ui(ui, text!("Add a photograph…")).clicked() {
            self.path = Some(String::new());
        }
    }

    /// Draws the ways in, unfolded.
    pub fn open_ui(&mut self, ui: &mut Ui, page: Page, view: &View<'_>, outbox: &mut Outbox) {
        let path = self.path.get_or_insert_default();
        let mut ask = false;
        let label = text!("Path of a photograph or of a folder");
        if let Some(path) = path_field_ui(ui, label, path, text!("Add the photograph"), &mut ask) {
            self.path = None;
            outbox.keep_files(page, vec![path], true);
        }
        if ask {
            outbox.ask(Ask::Photographs(page));
        }
        hint_ui(ui, view);
    }
}

/// Says how else photographs come in.
pub fn hint_ui(ui: &mut Ui, view: &View<'_>) {
    let keys = Command::Paste.shortcut().map(|keys| ui.ctx().format_shortcut(&keys)).unwrap_or_default();
    ui.label(remark(
        ui,
        if view.taking_in.receives_drops() {
            text!("Or drop files and folders on the window, or paste a picture ({keys}).", keys = keys)
        } else {
            text!(
                "Or paste a picture ({keys}). Files dropped on a Wayland window do not reach the program.",
                keys = keys
            )
        },
    ));
}
