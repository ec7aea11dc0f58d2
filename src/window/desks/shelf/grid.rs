//! A grid of tiles: only those on show are laid out, and each has a name and can be reached by keys.
//!
//! The grid itself takes the focus and holds one chosen tile; arrows move it, Enter opens it.

use egui::{
    EventFilter, Id, Key, Modifiers, Rect, Response, Role, ScrollArea, Sense, Ui, UiBuilder, Vec2, WidgetInfo, pos2,
    vec2,
};

use crate::text;
use crate::window::theme::GRID;

/// The size of a tile, points.
pub const TILE: Vec2 = vec2(46.0 * GRID, 46.0 * GRID);

/// The size of the picture in it, points.
pub const PICTURE: Vec2 = vec2(44.0 * GRID, 33.0 * GRID);

/// What a grid shows.
pub trait Tiles {
    /// How many there are.
    fn count(&self) -> usize;
    /// What stays the same for a tile when others come and go.
    fn key(&self, tile: usize) -> Id;
    /// What a screen reader says of a tile.
    fn name(&self, tile: usize) -> String;
    /// Draws a tile; it is held while the pointer is on it or the keys have chosen it.
    fn draw(&self, ui: &Ui, tile: usize, rect: Rect, is_held: bool);
}

/// What a grid keeps between frames.
#[derive(Clone, Debug, Default)]
pub struct Grid {
    /// The tile that the keys have chosen.
    at: usize,
    /// Set when it must come into view.
    follow: bool,
    /// Whether the grid has the keys.
    has_keys: bool,
}

const MOVES: [Key; 8] =
    [Key::ArrowLeft, Key::ArrowRight, Key::ArrowUp, Key::ArrowDown, Key::PageUp, Key::PageDown, Key::Home, Key::End];

impl Grid {
    /// Goes to the first tile.
    pub fn show_top(&mut self) {
        *self = Self { at: 0, follow: true, ..*self };
    }

    /// The tile that the keys have chosen, while the grid has them.
    pub fn chosen(&self) -> Option<usize> {
        self.has_keys.then_some(self.at)
    }

    /// Draws the tiles into the room that is left; the tile that was opened.
    pub fn ui(&mut self, ui: &mut Ui, name: &str, tiles: &impl Tiles) -> Option<usize> {
        ui.scope_builder(UiBuilder::new().id_salt(name), |ui| self.body_ui(ui, name, tiles)).inner
    }

    fn body_ui(&mut self, ui: &mut Ui, name: &str, tiles: &impl Tiles) -> Option<usize> {
        ui.spacing_mut().item_spacing = Vec2::ZERO;
        let body = ui.available_rect_before_wrap();
        let count = tiles.count();
        let columns = ((body.width() - ui.spacing().scroll.bar_width - GRID) / TILE.x).max(1.0) as usize;
        let lines = count.div_ceil(columns);
        self.at = self.at.min(count.saturating_sub(1));
        let response = ui.interact(body, ui.scope_id().with("body"), Sense::focusable_noninteractive());
        response.widget_info(|| WidgetInfo::labeled(Role::List, true, name));
        let mut opened = None;
        self.has_keys = response.has_focus();
        if self.has_keys {
            let filter = EventFilter { horizontal_arrows: true, vertical_arrows: true, ..EventFilter::default() };
            ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
            opened = self.keys(ui, count, columns, body.height());
        }
        let mut scroll = ScrollArea::vertical().id_salt("tiles").auto_shrink(false);
        if std::mem::take(&mut self.follow) {
            let line = self.at / columns;
            let id = ui.make_persistent_id("tiles");
            let now = egui::scroll_area::State::load(ui.ctx(), id).map_or(0.0, |state| state.clamped_offset().y);
            let top = line as f32 * TILE.y;
            scroll = scroll.vertical_scroll_offset(now.min(top).max(top + TILE.y - body.height()).max(0.0));
        }
        scroll.show_viewport(ui, |ui, viewport| {
            ui.set_height(TILE.y * lines as f32);
            let corner = ui.max_rect().min;
            let first = (viewport.min.y / TILE.y).floor().max(0.0) as usize;
            let last = ((viewport.max.y / TILE.y).ceil().max(0.0) as usize).min(lines);
            for tile in first * columns..(last * columns).min(count) {
                let at = corner + vec2((tile % columns) as f32, (tile / columns) as f32) * TILE;
                if self.tile_ui(ui, tiles, tile, Rect::from_min_size(at, TILE), &response) {
                    opened = Some(tile);
                }
            }
        });
        opened
    }

    fn tile_ui(&mut self, ui: &Ui, tiles: &impl Tiles, tile: usize, rect: Rect, body: &Response) -> bool {
        // A click, but no stop of its own for the Tab key: that is the grid's.
        let response = ui.interact(rect, tiles.key(tile), Sense::CLICK);
        let is_chosen = self.at == tile && body.has_focus();
        tiles.draw(ui, tile, rect, is_chosen || response.hovered());
        response.widget_info(|| {
            let (name, number, count) = (tiles.name(tile), tile + 1, tiles.count());
            let name = text!("{tile}, {number} of {count}", tile = name, number = number, count = count);
            WidgetInfo::selected(Role::Button, true, is_chosen, name)
        });
        if response.clicked() {
            self.at = tile;
            body.request_focus();
        }
        response.clicked()
    }

    /// Moves the chosen tile by the keys pressed; the tile that Enter opened.
    fn keys(&mut self, ui: &Ui, count: usize, columns: usize, height: f32) -> Option<usize> {
        let last = count.checked_sub(1)?;
        let page = columns * ((height / TILE.y) as usize).max(1);
        for key in MOVES {
            if !ui.input_mut(|input| input.consume_key(Modifiers::NONE, key)) {
                continue;
            }
            self.at = match key {
                Key::ArrowLeft => self.at.saturating_sub(1),
                Key::ArrowRight => self.at + 1,
                Key::ArrowUp => self.at.checked_sub(columns).unwrap_or(self.at),
                // Nothing stands below the last line.
                Key::ArrowDown if self.at / columns == last / columns => self.at,
                Key::ArrowDown => self.at + columns,
                Key::PageUp => self.at.saturating_sub(page),
                Key::PageDown => self.at + page,
                Key::Home => 0,
                _ => last,
            };
            self.at = self.at.min(last);
            self.follow = true;
        }
        ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Enter)).then_some(self.at)
    }
}

/// The picture's rectangle in a tile, and where its words begin.
pub fn inside(tile: Rect) -> (Rect, egui::Pos2) {
    let picture = Rect::from_min_size(tile.min, PICTURE);
    (picture, pos2(tile.left(), picture.bottom() + GRID))
}
