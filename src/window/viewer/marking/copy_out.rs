//! A copy of the picture with its marks and their legend, to hand out.

use egui::{Key, Modifiers, Ui};

use super::Marking;
use crate::text;
use crate::window::outbox::{Ask, Outbox};
use crate::window::photographs::Photograph;
use crate::window::theme::GRID;
use crate::window::widgets::{link_ui, path_field_ui, press_ui, remark};

impl Marking {
    /// Draws the way out, or the path that is being typed.
    pub(super) fn copy_out_ui(&mut self, ui: &mut Ui, photograph: &Photograph, outbox: &mut Outbox) {
        let photo = photograph.photo().id;
        let Some(path) = &mut self.copy_to else {
            if !photograph.file().marks.is_empty() {
                if link_ui(ui, text!("Copy out with marks…")).clicked() {
                    self.copy_to = Some(String::new());
                }
                ui.add_space(GRID);
            }
            return;
        };
        let mut ask = false;
        let label = text!("File to be written, ending in .jpg or .png");
        if let Some(path) = path_field_ui(ui, label, path, text!("Write the copy"), &mut ask) {
            self.copy_to = None;
            outbox.copy_out(photo, path);
        }
        ui.label(remark(ui, text!("A legend stands below the picture; nothing that the camera noted goes with it.")));
        let is_given_up = press_ui(ui, text!("Give it up"), "", None).clicked()
            || ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Escape));
        if ask {
            outbox.ask(Ask::MarkedCopy(photo));
        }
        if ask || is_given_up {
            self.copy_to = None;
        }
        ui.add_space(2.0 * GRID);
    }
}
