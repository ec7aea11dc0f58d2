//! A machine's six gates in a row: passed, the one it stands at, and those ahead.

use egui::{Color32, Role, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};

use crate::text;
use crate::window::theme::marks::{self, Mark};
use crate::window::theme::{GRID, TextRole, Themed};

/// Where a machine stands with one gate.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GateStand {
    Passed,
    Here,
    Ahead,
}

/// One gate of the strip.
#[derive(Clone, Copy, Debug)]
pub struct GateMark<'a> {
    pub mark: Mark,
    pub say: &'a str,
    pub stand: GateStand,
}

impl GateStand {
    fn label(self) -> &'static str {
        match self {
            Self::Passed => text!("passed"),
            Self::Here => text!("stands here"),
            Self::Ahead => text!("ahead"),
        }
    }
}

/// The strip, as wide as there is room, at most 200 points a gate; words below the marks where they fit.
pub fn gate_strip_ui(ui: &mut Ui, gates: &[GateMark<'_>]) {
    let tokens = ui.tokens();
    let step = (ui.available_width() / gates.len().max(1) as f32).min(50.0 * GRID);
    let height = if step < 30.0 * GRID { 16.0 } else { 12.0 } * GRID;
    let (rect, _) = ui.allocate_exact_size(vec2(step * gates.len() as f32, height), Sense::hover());
    for (index, gate) in gates.iter().enumerate() {
        let left = rect.left() + index as f32 * step;
        let cell = egui::Rect::from_min_size(pos2(left, rect.top()), vec2(step, height));
        let colour = match gate.stand {
            GateStand::Passed => tokens.gate_passed,
            GateStand::Here => tokens.gate_here,
            GateStand::Ahead => tokens.gate_ahead,
        };
        let side = 6.0 * GRID;
        let centre = pos2(left + side / 2.0, rect.top() + side / 2.0);
        let painter = ui.painter();
        marks::draw(painter, egui::Rect::from_center_size(centre, vec2(side, side) * 0.8), gate.mark, colour);
        // The way to the next gate: whole once passed, a few dots while ahead.
        let (from, to) = (centre.x + side / 2.0 + GRID, left + step - GRID);
        match gate.stand {
            GateStand::Passed => {
                painter.hline(from..=to, centre.y, Stroke::new(2.0, colour));
            }
            GateStand::Here | GateStand::Ahead => dotted(painter, from, to, centre.y, colour),
        }
        let font = if gate.stand == GateStand::Here { TextRole::Strong } else { TextRole::Small }.font();
        let mut job = egui::text::LayoutJob::simple_singleline(gate.say.to_owned(), font, colour);
        // Two lines of words where one is too narrow.
        job.wrap = egui::text::TextWrapping { max_width: step - GRID, max_rows: 2, ..Default::default() };
        let galley = painter.layout_job(job);
        painter.galley(pos2(left, rect.top() + side + GRID), galley, colour);
        let response = ui.interact(cell, ui.scope_id().with(("gate", index)), Sense::hover());
        response
            .widget_info(|| WidgetInfo::labeled(Role::Label, true, format!("{}: {}", gate.say, gate.stand.label())));
    }
}

fn dotted(painter: &egui::Painter, from: f32, to: f32, y: f32, colour: Color32) {
    let mut x = from;
    while x < to {
        painter.circle_filled(pos2(x, y), 1.0, colour);
        x += 2.0 * GRID;
    }
}
