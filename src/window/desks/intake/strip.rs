//! The steps of the round with what is said so far, beside the desk or, where room is short, above it.

use egui::text::{LayoutJob, TextWrapping};
use egui::{Rect, Role, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};

use super::typed::Step;
use crate::record::Word as _;
use crate::text;
use crate::window::theme::marks::{self, Mark};
use crate::window::theme::{GRID, TextRole, Themed};

/// One step as the strip shows it.
pub struct StepSaid {
    pub step: Step,
    /// What is said so far; empty when nothing.
    pub words: String,
    /// Whether something there cannot be written.
    pub is_wrong: bool,
}

/// The strip, one step under the other; the step that was pressed.
pub fn strip_ui(ui: &mut Ui, here: Step, steps: &[StepSaid]) -> Option<Step> {
    ui.spacing_mut().item_spacing.y = 0.0;
    let mut pressed = None;
    for said in steps {
        if step_ui(ui, said, said.step == here, vec2(ui.available_width(), 12.0 * GRID), true) {
            pressed = Some(said.step);
        }
    }
    pressed
}

/// The strip in a line or two, for a narrow window.
pub fn strip_line_ui(ui: &mut Ui, here: Step, steps: &[StepSaid]) -> Option<Step> {
    let mut pressed = None;
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing = vec2(2.0 * GRID, 0.0);
        for said in steps {
            let width =
                ui.painter().layout_no_wrap(said.step.label().to_owned(), TextRole::Strong.font(), ui.tokens().ink);
            let size = vec2(width.size().x + 8.0 * GRID, 8.0 * GRID);
            if step_ui(ui, said, said.step == here, size, false) {
                pressed = Some(said.step);
            }
        }
    });
    pressed
}

fn step_ui(ui: &mut Ui, said: &StepSaid, is_here: bool, size: egui::Vec2, two_lines: bool) -> bool {
    let tokens = ui.tokens();
    let (rect, response) = ui.allocate_exact_size(size, Sense::click());
    if response.hovered() {
        ui.painter().rect_filled(rect, 2.0, tokens.hover);
    }
    if response.has_focus() {
        let stroke = Stroke::new(2.0, tokens.press);
        ui.painter().rect_stroke(rect.shrink(1.0), 2.0, stroke, egui::StrokeKind::Inside);
    }
    if is_here {
        let bar = Rect::from_min_size(rect.min, vec2(0.75 * GRID, rect.height()));
        ui.painter().rect_filled(bar, 0.0, tokens.press);
    }
    let label = said.step.label();
    let first_line = if two_lines { rect.top() + 4.0 * GRID } else { rect.center().y };
    let mark = Rect::from_center_size(pos2(rect.left() + 4.0 * GRID, first_line), vec2(12.0, 12.0));
    let (state, mark_colour) = match (said.is_wrong, said.words.is_empty()) {
        (true, _) => (Some(Mark::Heed), tokens.hold_power),
        (false, false) => (Some(Mark::Done), tokens.gate_passed),
        (false, true) => (None, tokens.gate_ahead),
    };
    match state {
        Some(state) => marks::draw(ui.painter(), mark, state, mark_colour),
        None => drop(ui.painter().circle_stroke(mark.center(), 2.5, Stroke::new(1.0, mark_colour))),
    }
    let role = if is_here { TextRole::Strong } else { TextRole::Body };
    let ink = if is_here { tokens.ink } else { tokens.press };
    let left = rect.left() + 7.0 * GRID;
    let put = |centre: f32, words: &str, role: TextRole, colour| {
        let mut job = LayoutJob::simple_singleline(words.to_owned(), role.font(), colour);
        job.wrap = TextWrapping::truncate_at_width(rect.right() - left);
        let galley = ui.painter().layout_job(job);
        ui.painter().galley(pos2(left, centre - galley.size().y / 2.0), galley, colour);
    };
    put(first_line, label, role, ink);
    if two_lines && !said.words.is_empty() {
        put(rect.top() + 8.5 * GRID, &said.words, TextRole::Small, tokens.ink_weak);
    }
    let name = match (said.is_wrong, said.words.is_empty()) {
        (true, _) => text!("Step {step}: something is not right", step = label),
        (false, true) => text!("Step {step}", step = label),
        (false, false) => text!("Step {step}: {said}", step = label, said = said.words),
    };
    response.widget_info(|| WidgetInfo::selected(Role::Tab, true, is_here, &name));
    response.on_hover_text(&said.words).clicked()
}
