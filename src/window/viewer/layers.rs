//! What lies over a photograph: each layer paints where [`Placed`] says and takes what input it wants first.
//!
//! A layer takes the pointer by `ui.interact` on its own rectangles (over the whole of `placed.area` while it draws);
//! what it leaves moves the picture. It takes keys by `consume_key` before the viewer asks for its own. The wheel
//! always zooms.

use egui::{Rect, Sense, Stroke, Ui, WidgetInfo, vec2};

use super::placed::Placed;
use crate::record::{PhotoFile, PhotoMark};
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::theme::{GRID, Themed};

/// Every layer, with what it keeps while a photograph is looked at.
#[derive(Default)]
pub struct Layers {}

impl Layers {
    /// Draws the layers over a photograph that is shown by itself.
    pub fn ui(&mut self, ui: &mut Ui, placed: &Placed, file: &PhotoFile, _view: &View<'_>, _outbox: &mut Outbox) {
        for mark in &file.marks {
            mark_ui(ui, placed, mark);
        }
    }
}

/// A mark as it lies on the picture: a ring for a pin, a line around what is outlined.
fn mark_ui(ui: &Ui, placed: &Placed, mark: &PhotoMark) {
    let tokens = ui.tokens();
    let points: Vec<_> = mark.points.iter().map(|point| placed.at(*point)).collect();
    let painter = ui.painter().with_clip_rect(placed.area);
    let around = match points.as_slice() {
        [] => return,
        [pin] => {
            painter.circle_stroke(*pin, 2.0 * GRID, Stroke::new(4.0, tokens.page));
            painter.circle_stroke(*pin, 2.0 * GRID, Stroke::new(2.0, tokens.press));
            Rect::from_center_size(*pin, vec2(6.0 * GRID, 6.0 * GRID))
        }
        outline => {
            let closed: Vec<_> = outline.iter().chain(&outline[..1]).copied().collect();
            painter.add(egui::Shape::line(closed.clone(), Stroke::new(4.0, tokens.page)));
            painter.add(egui::Shape::line(closed, Stroke::new(2.0, tokens.press)));
            Rect::from_points(outline)
        }
    };
    let seen = around.intersect(placed.area);
    if seen.is_positive() {
        let response = ui.interact(seen, ui.scope_id().with(("mark", mark.id)), Sense::hover());
        response.widget_info(|| WidgetInfo::labeled(egui::Role::Label, true, text!("Mark: {note}", note = mark.note)));
        if !mark.note.is_empty() {
            response.on_hover_text(&mark.note);
        }
    }
}
