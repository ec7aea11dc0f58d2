//! Lines from the chosen slip to every place that it could take, each with what that costs, and from its rivals to its own.

use egui::{Painter, Rect, Role, Sense, Shape, Stroke, Ui, WidgetInfo, pos2, vec2};

use super::about::{Elsewhere, Said};
use super::drawing::{Drawing, Room};
use super::grid::{BAND, COLUMN, Grid, LABEL, Placed};
use crate::window::theme::{GRID, TextRole, Themed};

/// Draws the lines of a lane, where the chosen slip is in it.
pub fn lines_ui(ui: &Ui, placed: &Placed, drawing: &Drawing, room: &Room) {
    let found = drawing.found;
    let Some(chosen) = drawing.chosen.and_then(|part| found.slip(part)).filter(|slip| slip.kind == placed.lane.kind)
    else {
        return;
    };
    let tokens = ui.tokens();
    let painter = ui.painter().with_clip_rect(room.below);
    let rail = room.origin.y + placed.top + LABEL + BAND - GRID;
    let from = match chosen.column {
        Some(column) => middle(room, column),
        None => room.shelf_x + COLUMN / 2.0,
    };
    // Rivals: spares of its kind that are left over could take its place.
    if chosen.column.is_some() && placed.shown > 0 {
        let rival = room.on_shelf(placed, 0).center().x;
        dashed(&painter, [from, rival], rail + 0.5 * GRID, Stroke::new(1.0, tokens.ink_weak));
    }
    for said in drawing.about {
        let Said::Elsewhere(there) = said else { continue };
        let Some(column) = found.columns.iter().position(|column| column.machine == there.machine) else { continue };
        let to = middle(room, column);
        let stroke = Stroke::new(1.5, if there.cost.is_some() { tokens.press } else { tokens.ink_weak });
        painter.hline(from.min(to)..=from.max(to), rail, stroke);
        painter.vline(to, rail..=rail + GRID, stroke);
        painter.vline(from, rail..=rail + GRID, stroke);
        cost_ui(ui, there, column, rail, room);
    }
}

fn middle(room: &Room, column: usize) -> f32 {
    room.origin.x + Grid::left(column) + COLUMN / 2.0
}

/// What a place costs, above it.
fn cost_ui(ui: &Ui, there: &Elsewhere, column: usize, rail: f32, room: &Room) {
    let tokens = ui.tokens();
    let painter = ui.painter().with_clip_rect(room.machines);
    let left = room.origin.x + Grid::left(column) + 2.0 * GRID;
    let figure = there.figure();
    let galley = painter.layout_no_wrap(figure, TextRole::Strong.font(), tokens.press);
    let rect = Rect::from_min_size(pos2(left, rail - GRID - galley.size().y), galley.size());
    painter.rect_filled(rect.expand2(vec2(GRID, 0.0)), 2.0, tokens.page);
    painter.galley(rect.min, galley, tokens.press);
    let room_left = COLUMN - 5.0 * GRID - rect.width();
    super::slip::line_of(
        &painter,
        rect.right_center() + vec2(1.5 * GRID, 0.0),
        room_left,
        &there.against,
        tokens.ink_weak,
    );
    let whole = Rect::from_min_size(rect.min, vec2(COLUMN - 4.0 * GRID, rect.height())).intersect(room.machines);
    let response = ui.interact(whole, ui.scope_id().with(("cost", there.machine)), Sense::HOVER);
    let sentence = there.sentence();
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, &sentence));
    response.on_hover_text(&sentence);
}

fn dashed(painter: &Painter, [from, to]: [f32; 2], y: f32, stroke: Stroke) {
    painter.extend(Shape::dashed_line(&[pos2(from, y), pos2(to, y)], stroke, GRID, GRID));
}
