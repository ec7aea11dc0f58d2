//! What could not be taken in, each file with its reason: read at leisure, and copied.

use egui::{Align2, Area, Context, Frame, Id, Label, Margin, Modal, Order, ScrollArea, Stroke, Ui, vec2};

use super::TakingIn;
use crate::counted;
use crate::photo::Failure;
use crate::text;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, press_ui, remark, title_ui};

impl TakingIn {
    /// Draws the list while it is asked for.
    pub fn failed_ui(&mut self, ctx: &Context) {
        if !self.shows_failed {
            return;
        }
        let id = Id::unique("not taken in");
        let area = Area::new(id).anchor(Align2::CENTER_CENTER, vec2(0.0, 0.0)).order(Order::Foreground);
        let frame = Frame::new()
            .fill(ctx.tokens().page)
            .stroke(Stroke::new(1.0, ctx.tokens().ink_weak))
            .corner_radius(3)
            .inner_margin(Margin::same(16));
        let response = Modal::new(id).area(area).frame(frame).show(ctx, |ui| self.list_ui(ui));
        if response.should_close() {
            self.shows_failed = false;
        }
    }

    fn list_ui(&mut self, ui: &mut Ui) {
        let room = ui.ctx().content_rect().size() - vec2(24.0, 24.0) * GRID;
        ui.set_width(room.x.min(180.0 * GRID));
        title_ui(ui, counted!("{count} file was not taken in", "{count} files were not taken in", self.failed.len()));
        ui.add_space(GRID);
        ScrollArea::vertical().max_height((room.y - 30.0 * GRID).max(20.0 * GRID)).show(ui, |ui| {
            for Failure { path, why } in &self.failed {
                ui.add(Label::new(body(why)).wrap());
                ui.add(Label::new(remark(ui, path.display().to_string())).wrap());
                ui.add_space(2.0 * GRID);
            }
        });
        ui.add_space(GRID);
        ui.horizontal_wrapped(|ui| {
            if press_ui(ui, text!("Copy the list"), text!("Paths and reasons as text"), None).clicked() {
                let lines: Vec<String> =
                    self.failed.iter().map(|failure| format!("{}\t{}", failure.path.display(), failure.why)).collect();
                ui.ctx().copy_text(lines.join("\n"));
            }
            if press_ui(ui, text!("Close the list"), text!("It stays at the bottom of the window"), None).clicked() {
                self.shows_failed = false;
            }
            if press_ui(ui, text!("Put the list away"), text!("It is not shown again"), None).clicked() {
                self.put_failed_away();
                ui.ctx().request_repaint();
            }
        });
    }
}
