//! Lines from the chosen slip to every place that it could take, each with what that costs, and from its rivals to its own.

use egui::{Painter, Pos2, Rect, Role, Sense, Shape, Stroke, Ui, WidgetInfo, pos2, vec2};

use super::about::Said;
use super::drawing::{Drawing, Room};
use super::grid::{BAND, LABEL, Placed, SHELF};
use super::priced::Priced;
use crate::record::PartId;
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
        Some(column) => room.origin.x + room.columns.middle(column),
        None => room.shelf_x + SHELF / 2.0,
    };
    // Lines to machines end where the shelf begins.
    let over_machines = painter.with_clip_rect(room.machines);
    // Rivals hang on a dashed line beside the shelf, each with what it costs to give them the place.
    let shelf = placed.lane.shelf[..placed.shown].iter().map(|slip| &found.slips[*slip]);
    let mut rivals = shelf.enumerate().filter(|(_, slip)| rival(drawing.about, slip.part).is_some());
    if let Some((lowest, _)) = rivals.next_back() {
        let stroke = Stroke::new(1.0, tokens.ink_weak);
        let (beside, along) = (room.shelf_x + GRID, rail + 0.5 * GRID);
        dashed(&painter, [pos2(from, along), pos2(beside, along)], stroke);
        dashed(&painter, [pos2(beside, along), pos2(beside, room.on_shelf(placed, lowest).center().y)], stroke);
    }
    for said in drawing.about {
        let Said::Elsewhere(there) = said else { continue };
        let Some(column) = found.columns.iter().position(|column| column.machine == there.machine) else { continue };
        let to = room.origin.x + room.columns.middle(column);
        let stroke = Stroke::new(1.5, if there.cost.is_some() { tokens.press } else { tokens.ink_weak });
        over_machines.hline(from.min(to)..=from.max(to), rail, stroke);
        over_machines.vline(to, rail..=rail + GRID, stroke);
        if chosen.column.is_none() {
            painter.hline(room.shelf_x..=from, rail, stroke);
            painter.vline(from, rail..=rail + GRID, stroke);
        } else {
            over_machines.vline(from, rail..=rail + GRID, stroke);
        }
        cost_ui(ui, there, column, rail, room);
    }
}

/// What a place costs, above it.
fn cost_ui(ui: &Ui, there: &Priced, column: usize, rail: f32, room: &Room) {
    let tokens = ui.tokens();
    let painter = ui.painter().with_clip_rect(room.machines);
    let (left, width) = (room.origin.x + room.columns.left(column) + 2.0 * GRID, room.columns.width);
    let figure = there.figure();
    let galley = painter.layout_no_wrap(figure, TextRole::Strong.font(), tokens.press);
    let rect = Rect::from_min_size(pos2(left, rail - GRID - galley.size().y), galley.size());
    painter.rect_filled(rect.expand2(vec2(GRID, 0.0)), 2.0, tokens.page);
    painter.galley(rect.min, galley, tokens.press);
    let room_left = width - 5.0 * GRID - rect.width();
    super::slip::line_of(
        &painter,
        rect.right_center() + vec2(1.5 * GRID, 0.0),
        room_left,
        &there.against,
        tokens.ink_weak,
    );
    let whole = Rect::from_min_size(rect.min, vec2(width - 4.0 * GRID, rect.height())).intersect(room.machines);
    let response = ui.interact(whole, ui.scope_id().with(("cost", there.machine)), Sense::HOVER);
    let sentence = there.sentence();
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, &sentence));
    response.on_hover_text(&sentence);
}

/// What is told about a spare in the place of the chosen part.
fn rival(about: &[Said], part: PartId) -> Option<&Priced> {
    about.iter().find_map(|said| match said {
        Said::Rival(rival) if rival.part == part => Some(rival),
        _ => None,
    })
}

/// What it costs to give a spare the place of the chosen part, on its slip.
pub fn rival_ui(ui: &Ui, slip: Rect, about: &[Said], part: PartId) {
    let Some(rival) = rival(about, part) else { return };
    let tokens = ui.tokens();
    let painter = ui.painter();
    painter.hline(slip.left() - GRID..=slip.left(), slip.center().y, Stroke::new(1.0, tokens.ink_weak));
    let galley = painter.layout_no_wrap(rival.figure(), TextRole::Strong.font(), tokens.press);
    let corner = slip.right_bottom() - vec2(2.0 * GRID, 0.5 * GRID) - galley.size();
    let rect = Rect::from_min_size(corner, galley.size());
    painter.rect_filled(rect.expand2(vec2(GRID, 0.0)), 2.0, tokens.page);
    painter.galley(corner, galley, tokens.press);
    let response = ui.interact(rect, ui.scope_id().with(("rival", part)), Sense::HOVER);
    let sentence = rival.sentence();
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, &sentence));
    response.on_hover_text(&sentence);
}

fn dashed(painter: &Painter, line: [Pos2; 2], stroke: Stroke) {
    painter.extend(Shape::dashed_line(&line, stroke, GRID, GRID));
}
