//! The Shelf as pictures: what a part looks like finds it faster than what it is called.

use std::sync::Arc;

use egui::text::{LayoutJob, TextWrapping};
use egui::{Rect, Role, ScrollArea, Sense, Ui, WidgetInfo, pos2, vec2};

use crate::record::PartId;
use crate::window::outbox::View;
use crate::window::part_index::IndexRow;
use crate::window::photographs::small_ui;
use crate::window::pictures::face_of;
use crate::window::theme::{GRID, TextRole, Themed};

const PICTURE: egui::Vec2 = vec2(44.0 * GRID, 33.0 * GRID);
const TILE: egui::Vec2 = vec2(46.0 * GRID, 46.0 * GRID);

/// Draws the parts as pictures with their tags; the part that was pressed.
// Lines of pictures are no table: each picture is a widget with a name of its own.
#[allow(clippy::disallowed_methods)]
pub fn tiles_ui(ui: &mut Ui, view: &View<'_>, parts: &[Arc<IndexRow>]) -> Option<PartId> {
    let mut pressed = None;
    ui.spacing_mut().item_spacing = vec2(0.0, 0.0);
    let columns = ((ui.available_width() / TILE.x) as usize).max(1);
    let lines = parts.len().div_ceil(columns);
    ScrollArea::vertical().id_salt("pictures").auto_shrink(false).show_rows(ui, TILE.y, lines, |ui, shown| {
        for line in shown {
            let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), TILE.y), Sense::hover());
            for column in 0..columns {
                let Some(part) = parts.get(line * columns + column) else { break };
                let corner = pos2(rect.left() + column as f32 * TILE.x, rect.top());
                if tile_ui(ui, view, part, Rect::from_min_size(corner, TILE)) {
                    pressed = Some(part.id);
                }
            }
        }
    });
    pressed
}

fn tile_ui(ui: &mut Ui, view: &View<'_>, part: &IndexRow, rect: Rect) -> bool {
    let tokens = ui.tokens();
    let response = ui.interact(rect, egui::Id::unique(("picture", part.id)), Sense::click());
    let picture = Rect::from_min_size(rect.min, PICTURE);
    small_ui(ui, view, picture, face_of(&part.answers().file.photos), &response);
    let tag = pos2(rect.left(), picture.bottom() + GRID);
    ui.painter().text(tag, egui::Align2::LEFT_TOP, &part.tag, TextRole::Marking.font(), tokens.ink);
    let mut what = LayoutJob::simple(part.what.clone(), TextRole::Small.font(), tokens.ink_weak, PICTURE.x);
    what.wrap = TextWrapping { max_rows: 1, ..TextWrapping::truncate_at_width(PICTURE.x) };
    let galley = ui.painter().layout_job(what);
    ui.painter().galley(tag + vec2(0.0, 5.0 * GRID), galley, tokens.ink_weak);
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, format!("{}, {}", part.tag, part.what)));
    response.clicked()
}
