//! Which folder is watched for new photographs.

use egui::Ui;

use crate::text;
use crate::window::command::Command;
use crate::window::outbox::{Ask, Outbox, View};
use crate::window::page::Page;
use crate::window::widgets::{body, link_ui, path_field_ui, remark};

/// The path that is being typed.
#[derive(Debug, Default)]
pub struct WatchedUi {
    path: String,
}

impl WatchedUi {
    /// Draws the watched folder, or asks for one.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let Some(folder) = &view.settings.watched else {
            ui.label(remark(
                ui,
                text!("Name the folder that your phone copies its pictures to: new ones are then offered here."),
            ));
            let mut ask = false;
            let label = text!("Folder to watch");
            if let Some(path) = path_field_ui(ui, label, &mut self.path, text!("Watch it"), &mut ask) {
                self.path.clear();
                outbox.give(Command::Watch(Some(path)));
            }
            if ask {
                outbox.ask(Ask::WatchedFolder);
            }
            return;
        };
        ui.horizontal_wrapped(|ui| {
            ui.label(body(folder.display().to_string()));
            if link_ui(ui, text!("Watch it no more")).clicked() {
                outbox.give(Command::Watch(None));
            }
        });
        ui.label(remark(ui, text!("Pictures that come from now on are offered. Those before are not, but can be:")));
        if link_ui(ui, text!("Take in all that is there")).clicked() {
            outbox.keep_files(Page::Sorting, vec![folder.clone()], true);
        }
    }
}
