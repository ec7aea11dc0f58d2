//! What stands over the picture: what can be done, of what it is, and which of how many.

use egui::{Align, Layout, Ui};

use super::{Act, Viewer, percent};
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::photographs::Photograph;
use crate::window::widgets::{body, link_ui, press_ui, remark};

impl Viewer {
    /// Draws the lines over the picture.
    pub(super) fn head_ui(&mut self, ui: &mut Ui, view: &View<'_>, photograph: &Photograph, outbox: &mut Outbox) {
        let mut given = Vec::new();
        let mut act_ui = |ui: &mut Ui, act: Act, is_there: bool| {
            let press = |ui: &mut Ui| press_ui(ui, act.word(), act.tooltip(), Some(act.shortcut()));
            if ui.add_enabled_ui(is_there, press).inner.clicked() {
                given.push(act);
            }
        };
        ui.horizontal_wrapped(|ui| {
            act_ui(ui, Act::Leave, true);
            act_ui(ui, Act::Farther, true);
            ui.label(remark(ui, text!("{percent} %", percent = percent(self.zoom))));
            for act in [Act::Nearer, Act::Fit, Act::PixelForPixel, Act::TurnRight, Act::Compare] {
                act_ui(ui, act, true);
            }
            if self.compare.is_some() {
                act_ui(ui, Act::BesideOrOver, true);
                act_ui(ui, Act::MatchPoints, true);
            }
        });
        let (before, after) = (self.neighbour(-1).is_some(), self.neighbour(1).is_some());
        ui.horizontal(|ui| {
            let title = photograph.of.title(view.logbook);
            match photograph.of.page() {
                Some(page) => {
                    if link_ui(ui, &title).clicked() {
                        outbox.go(page);
                    }
                }
                None => drop(ui.label(body(title))),
            }
            if let Some(at) = self.among.iter().position(|photo| *photo == photograph.photo().id) {
                let count = self.among.len();
                ui.label(remark(ui, text!("{number} of {count}", number = at + 1, count = count)));
            }
            ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                act_ui(ui, Act::Next, after);
                act_ui(ui, Act::Previous, before);
            });
        });
        self.given.extend(given);
        if let Some(compare) = &mut self.compare {
            compare.head_ui(ui, view, photograph, &mut self.matched);
        }
    }
}
