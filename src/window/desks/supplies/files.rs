//! Tables of supplies from a file and to a file: by the desktop's dialog, or by a path that is typed.

use egui::Ui;

use crate::paper::supplies::SuppliesTable;
use crate::text;
use crate::window::outbox::{Ask, Outbox};
use crate::window::theme::GRID;
use crate::window::widgets::{path_field_ui, press_ui};

/// Which way, with the path as far as it is typed.
#[derive(Debug, Default)]
pub struct Files {
    open: Option<(Way, String)>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Way {
    Read,
    Write,
}

impl Files {
    /// Draws the words to press; reading is offered where a table can be taken in.
    pub fn ways_ui(&mut self, ui: &mut Ui, can_read: bool) {
        if can_read && press_ui(ui, text!("Read a table from a file…"), text!("CSV or tabs, as text"), None).clicked()
        {
            self.open = Some((Way::Read, String::new()));
        }
        if press_ui(ui, text!("Write the table to a file…"), text!("As CSV"), None).clicked() {
            self.open = Some((Way::Write, String::new()));
        }
    }

    /// Draws the field for the path, while one is asked for.
    pub fn path_ui(&mut self, ui: &mut Ui, table: SuppliesTable, outbox: &mut Outbox) {
        let Some((way, path)) = &mut self.open else { return };
        let way = *way;
        let (label, word) = match way {
            Way::Read => (text!("File with the table"), text!("Read the table")),
            Way::Write => (text!("File to be written, ending in .csv"), text!("Write the table")),
        };
        let (mut ask, mut is_over) = (false, false);
        if let Some(path) = path_field_ui(ui, label, path, word, &mut ask) {
            match way {
                Way::Read => outbox.read_table(path),
                Way::Write => outbox.write_table(table, path),
            }
            is_over = true;
        }
        is_over |= press_ui(ui, text!("Give it up"), "", None).clicked();
        if ask {
            outbox.ask(match way {
                Way::Read => Ask::TableToRead,
                Way::Write => Ask::TableToWrite(table),
            });
        }
        if is_over || ask {
            self.open = None;
        }
        ui.add_space(2.0 * GRID);
    }
}
