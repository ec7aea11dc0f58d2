//! The Bench: what to do next.

use egui::Ui;

use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::widgets::title_ui;

/// What the desk keeps.
#[derive(Default)]
pub struct Bench;

impl Bench {
    /// Draws the desk.
    pub fn ui(&mut self, ui: &mut Ui, _view: &View<'_>, _outbox: &mut Outbox) {
        title_ui(ui, text!("Bench"));
    }
}
