//! Says, while files are held over the window, whose they become when they are dropped.

use egui::{Align2, Area, Context, Frame, Id, Margin, Order, Stroke, vec2};

use super::target::Target;
use crate::record::Logbook;
use crate::text;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::strong;

/// Draws it while files are held over the window; `target` is asked only then.
pub fn over_ui(ctx: &Context, logbook: Option<&Logbook>, target: impl FnOnce() -> Target) {
    if ctx.input(|input| input.raw.hovered_files.is_empty()) {
        return;
    }
    let said = match logbook {
        None => text!("Open a logbook first").to_owned(),
        Some(logbook) => match target() {
            Target::Sorting => text!("Drop: to be sorted").to_owned(),
            target => text!("Drop: for {whose}", whose = target.title(logbook).unwrap_or_default()),
        },
    };
    let tokens = ctx.tokens();
    let frame = Frame::new().fill(tokens.page).stroke(Stroke::new(2.0, tokens.press)).corner_radius(3);
    let area = Area::new(Id::unique("held over")).anchor(Align2::CENTER_BOTTOM, vec2(0.0, -16.0 * GRID));
    area.order(Order::Tooltip).interactable(false).show(ctx, |ui| {
        frame.inner_margin(Margin::same(16)).show(ui, |ui| ui.label(strong(said)));
    });
}
