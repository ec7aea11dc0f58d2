//! What stands over the picture: what can be done, and which of how many it is.

use egui::Ui;

use super::compare::Compare;
use super::{Act, Viewer, percent};
use crate::text;
use crate::window::outbox::View;
use crate::window::photographs::Photograph;
use crate::window::theme::GRID;
use crate::window::widgets::{press_if_ui, remark};

impl Viewer {
    /// Draws the line over the picture, and a second one while two are compared.
    pub(super) fn head_ui(&mut self, ui: &mut Ui, view: &View<'_>, photograph: &Photograph) {
        let mut given = Vec::new();
        let mut act_ui = |ui: &mut Ui, act: Act, is_there: bool| {
            if press_if_ui(ui, is_there, act.word(), act.tooltip(), Some(act.shortcut())).clicked() {
                given.push(act);
            }
        };
        let (before, after) = (self.neighbour(-1).is_some(), self.neighbour(1).is_some());
        ui.horizontal_wrapped(|ui| {
            act_ui(ui, Act::Leave, true);
            act_ui(ui, Act::Previous, before);
            if let Some(at) = self.among.iter().position(|photo| *photo == photograph.photo().id) {
                let count = self.among.len();
                ui.label(remark(ui, text!("{number} of {count}", number = at + 1, count = count)));
            }
            act_ui(ui, Act::Next, after);
            ui.add_space(4.0 * GRID);
            act_ui(ui, Act::Farther, true);
            ui.label(remark(ui, text!("{percent} %", percent = percent(self.zoom))));
            for act in [Act::Nearer, Act::Fit, Act::PixelForPixel, Act::TurnRight] {
                act_ui(ui, act, true);
            }
            ui.add_space(4.0 * GRID);
            act_ui(ui, Act::Marks, true);
            act_ui(ui, Act::Compare, true);
            if self.compare.as_ref().is_some_and(Compare::has_two) {
                act_ui(ui, Act::BesideOrOver, true);
                act_ui(ui, Act::MatchPoints, true);
            }
        });
        self.given.extend(given);
        if let Some(compare) = &mut self.compare {
            compare.head_ui(ui, view, photograph, &mut self.matched);
        }
    }
}
