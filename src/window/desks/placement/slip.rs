//! A part as a slip, and a place that stays empty as a gap.

use egui::{Color32, Id, Painter, Rect, Response, Role, Sense, Shape, Stroke, Ui, WidgetInfo, pos2, vec2};

use super::found::{Gap, Slip, Standing};
use crate::window::theme::marks::{self, Mark};
use crate::window::theme::{GRID, TextRole, Themed, Tokens};

/// The identity of a part's slip.
pub fn id(slip: &Slip) -> Id {
    Id::unique(("slip", slip.part))
}

impl Standing {
    fn colour(self, tokens: &Tokens) -> Color32 {
        match self {
            Self::Stays => tokens.gate_passed,
            Self::Comes | Self::Tried => tokens.press,
            Self::Pinned => tokens.gate_here,
            Self::LeftOver => tokens.ink_weak,
        }
    }

    fn mark(self) -> Mark {
        match self {
            Self::Stays => Mark::Done,
            Self::Comes => Mark::Add,
            Self::Pinned | Self::Tried => Mark::Heed,
            Self::LeftOver => Mark::Shelf,
        }
    }
}

/// Draws a slip; it can be pressed and dragged, and is no stop of its own for the Tab key: that is the drawing's.
pub fn slip_ui(ui: &Ui, rect: Rect, slip: &Slip, is_chosen: bool, has_focus: bool) -> Response {
    let tokens = ui.tokens();
    let response = ui.interact(rect, id(slip), Sense::CLICK | Sense::DRAG);
    let ground = match (is_chosen, response.hovered()) {
        (true, _) => tokens.selected,
        (false, true) => tokens.hover,
        (false, false) => tokens.field,
    };
    paint(ui.painter(), rect, slip, ground, &tokens);
    if is_chosen && has_focus {
        ui.painter().rect_stroke(rect, 2.0, Stroke::new(2.0, tokens.press), egui::StrokeKind::Outside);
    }
    response.widget_info(|| WidgetInfo::selected(Role::ListBoxOption, true, is_chosen, &slip.name));
    ui.ctx().accesskit_node_builder(response.id, |node| node.set_selected(is_chosen));
    response
}

/// Paints a slip.
pub fn paint(painter: &Painter, rect: Rect, slip: &Slip, ground: Color32, tokens: &Tokens) {
    let colour = slip.standing.colour(tokens);
    painter.rect_filled(rect, 2.0, ground);
    painter.rect_filled(Rect::from_min_size(rect.min, vec2(0.75 * GRID, rect.height())), 0.0, colour);
    painter.rect_stroke(rect, 2.0, Stroke::new(1.0, tokens.hairline), egui::StrokeKind::Inside);
    let inner = rect.shrink2(vec2(2.0 * GRID, 0.5 * GRID));
    let line = inner.height() / 2.0;
    let side = 3.0 * GRID;
    let (first, second) = (inner.top() + line / 2.0, inner.bottom() - line / 2.0);
    let tag = painter.text(
        pos2(inner.left(), first),
        egui::Align2::LEFT_CENTER,
        &slip.tag,
        TextRole::Marking.font(),
        tokens.ink,
    );
    let mark = Rect::from_center_size(pos2(inner.right() - side / 2.0, first), vec2(side, side));
    marks::draw(painter, mark, slip.standing.mark(), colour);
    let word = Rect::from_x_y_ranges(tag.right() + GRID..=mark.left() - GRID, rect.y_range());
    painter.with_clip_rect(word.intersect(painter.clip_rect())).text(
        pos2(word.right(), first),
        egui::Align2::RIGHT_CENTER,
        slip.standing.word(),
        TextRole::Small.font(),
        tokens.ink_weak,
    );
    line_of(painter, pos2(inner.left(), second), inner.width(), &slip.title, tokens.ink);
}

/// Draws a gap: a dashed outline around what is wanted.
pub fn gap_ui(ui: &Ui, rect: Rect, gap: &Gap, id: Id) {
    let tokens = ui.tokens();
    let colour = if gap.required { tokens.power_unknown } else { tokens.ink_weak };
    let corners = [rect.left_top(), rect.right_top(), rect.right_bottom(), rect.left_bottom(), rect.left_top()];
    ui.painter().extend(Shape::dashed_line(&corners, Stroke::new(1.0, colour), GRID, GRID));
    let inner = rect.shrink2(vec2(2.0 * GRID, 0.5 * GRID));
    let line = inner.height() / 2.0;
    let word = gap.word();
    line_of(ui.painter(), pos2(inner.left(), inner.top() + line / 2.0), inner.width(), word, colour);
    line_of(ui.painter(), pos2(inner.left(), inner.bottom() - line / 2.0), inner.width(), &gap.wish, tokens.ink);
    let response = ui.interact(rect, id, Sense::HOVER);
    let name = format!("{word}: {}", gap.wish);
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, &name));
    response.on_hover_text(&gap.wish);
}

/// One line of small text from a point on, cut where there is no more room.
pub fn line_of(painter: &Painter, from: egui::Pos2, width: f32, text: &str, colour: Color32) {
    let mut job = egui::text::LayoutJob::simple_singleline(text.to_owned(), TextRole::Small.font(), colour);
    job.wrap = egui::text::TextWrapping::truncate_at_width(width);
    let galley = painter.layout_job(job);
    painter.galley(from - vec2(0.0, galley.size().y / 2.0), galley, colour);
}
