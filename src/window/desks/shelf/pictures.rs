//! The Shelf as pictures: what a part looks like finds it faster than what it is called.

use std::sync::Arc;

use egui::text::{LayoutJob, TextWrapping};
use egui::{EventFilter, Key, Modifiers, Rect, Response, Role, ScrollArea, Sense, Ui, WidgetInfo, pos2, vec2};

use crate::record::PartId;
use crate::window::outbox::View;
use crate::window::part_index::IndexRow;
use crate::window::photographs::small_ui;
use crate::window::pictures::face_of;
use crate::window::theme::{GRID, TextRole, Themed};

const PICTURE: egui::Vec2 = vec2(44.0 * GRID, 33.0 * GRID);
const TILE: egui::Vec2 = vec2(46.0 * GRID, 46.0 * GRID);

/// The picture that the keys are on.
#[derive(Debug, Default)]
pub struct Tiles {
    at: Option<PartId>,
}

const MOVES: [Key; 8] =
    [Key::ArrowLeft, Key::ArrowRight, Key::ArrowUp, Key::ArrowDown, Key::PageUp, Key::PageDown, Key::Home, Key::End];

impl Tiles {
    /// The place that the keys lead to, if one was pressed. From a text field only up and down lead anywhere.
    fn moved(&self, ui: &Ui, parts: &[Arc<IndexRow>], columns: usize, is_typing: bool) -> Option<usize> {
        let at = self.at.and_then(|at| parts.iter().position(|part| part.id == at));
        let is_on_tile = at.is_some_and(|at| ui.memory(|memory| memory.has_focus(tile_id(parts[at].id))));
        if !is_on_tile && !is_typing {
            return None;
        }
        let keys = if is_on_tile { &MOVES[..] } else { &[Key::ArrowDown] };
        let key = keys.iter().find(|key| ui.input_mut(|input| input.consume_key(Modifiers::NONE, **key)))?;
        let Some(at) = at.filter(|_| is_on_tile) else { return Some(0) };
        let screen = columns * ((ui.available_height() / TILE.y) as usize).max(1);
        let to = match key {
            Key::ArrowLeft => at.saturating_sub(1),
            Key::ArrowRight => at + 1,
            Key::ArrowUp => at.checked_sub(columns).unwrap_or(at),
            Key::ArrowDown => at + columns,
            Key::PageUp => at.saturating_sub(screen),
            Key::PageDown => at + screen,
            Key::Home => 0,
            _ => parts.len(),
        };
        Some(to.min(parts.len() - 1))
    }
}

fn tile_id(part: PartId) -> egui::Id {
    egui::Id::unique(("picture", part))
}

/// Draws the parts as pictures with their tags; the part that was pressed. `is_typing` tells whether the text field
/// above has the keys, from where the arrow down leads to the first picture.
// Lines of pictures are no table: each picture is a widget with a name of its own.
#[allow(clippy::disallowed_methods)]
pub fn tiles_ui(
    ui: &mut Ui,
    tiles: &mut Tiles,
    view: &View<'_>,
    parts: &[Arc<IndexRow>],
    is_typing: bool,
) -> Option<PartId> {
    let mut pressed = None;
    ui.spacing_mut().item_spacing = vec2(0.0, 0.0);
    let columns = ((ui.available_width() / TILE.x) as usize).max(1);
    let lines = parts.len().div_ceil(columns);
    let mut scroll = ScrollArea::vertical().id_salt("pictures").auto_shrink(false);
    if let Some(to) = tiles.moved(ui, parts, columns, is_typing) {
        tiles.at = Some(parts[to].id);
        ui.memory_mut(|memory| memory.request_focus(tile_id(parts[to].id)));
        // A picture out of sight is no widget: its line is brought into view in the same frame.
        let id = ui.make_persistent_id("pictures");
        let now = egui::scroll_area::State::load(ui.ctx(), id).map_or(0.0, |state| state.clamped_offset().y);
        let top = (to / columns) as f32 * TILE.y;
        scroll = scroll.vertical_scroll_offset(now.min(top).max(top + TILE.y - ui.available_height()).max(0.0));
    }
    scroll.show_rows(ui, TILE.y, lines, |ui, shown| {
        for line in shown {
            let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), TILE.y), Sense::hover());
            for column in 0..columns {
                let Some(part) = parts.get(line * columns + column) else { break };
                let corner = pos2(rect.left() + column as f32 * TILE.x, rect.top());
                let response = tile_ui(ui, view, part, Rect::from_min_size(corner, TILE));
                if response.has_focus() {
                    tiles.at = Some(part.id);
                    let filter =
                        EventFilter { horizontal_arrows: true, vertical_arrows: true, ..EventFilter::default() };
                    ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
                }
                if response.clicked() {
                    pressed = Some(part.id);
                }
            }
        }
    });
    pressed
}

fn tile_ui(ui: &mut Ui, view: &View<'_>, part: &IndexRow, rect: Rect) -> Response {
    let tokens = ui.tokens();
    let response = ui.interact(rect, tile_id(part.id), Sense::click());
    let picture = Rect::from_min_size(rect.min, PICTURE);
    small_ui(ui, view, picture, face_of(&part.answers().file.photos), &response);
    let tag = pos2(rect.left(), picture.bottom() + GRID);
    ui.painter().text(tag, egui::Align2::LEFT_TOP, &part.tag, TextRole::Marking.font(), tokens.ink);
    let mut what = LayoutJob::simple(part.what.clone(), TextRole::Small.font(), tokens.ink_weak, PICTURE.x);
    what.wrap = TextWrapping { max_rows: 1, ..TextWrapping::truncate_at_width(PICTURE.x) };
    let galley = ui.painter().layout_job(what);
    ui.painter().galley(tag + vec2(0.0, 5.0 * GRID), galley, tokens.ink_weak);
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, format!("{}, {}", part.tag, part.what)));
    response
}
