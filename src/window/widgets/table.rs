//! A table of uniform rows: only those on show are laid out, and each has a name and can be reached by keys.
//!
//! The table itself takes the focus and holds one chosen row; arrows move it, Enter opens it. A desk hands over its
//! rows by [`Rows`]; sorting and filtering are the desk's, since it knows when they change.

use egui::{EventFilter, Id, Key, Rect, Role, ScrollArea, Sense, Stroke, Ui, UiBuilder, WidgetInfo, vec2};

use super::cells::Cells;
use crate::window::theme::marks::{self, Mark};
use crate::window::theme::{GRID, TextRole, Themed};
use crate::{counted, text};

/// How wide a column is.
#[derive(Clone, Copy, Debug)]
pub enum Width {
    /// In points.
    Points(f32),
    /// A share of what the fixed columns leave.
    Share(f32),
}

/// One column.
#[derive(Clone, Copy, Debug)]
pub struct Column<'a> {
    pub title: &'a str,
    pub width: Width,
    /// Whether a press on its heading sorts by it.
    pub sorts: bool,
    /// Left out where the table is narrower than this, points; 0 to stay always.
    pub shown_from: f32,
}

/// Which column a table is sorted by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Sort {
    pub column: usize,
    pub descending: bool,
}

/// What a table shows.
pub trait Rows {
    /// How many there are.
    fn count(&self) -> usize;
    /// What stays the same for a row when others come and go.
    fn key(&self, row: usize) -> Id;
    /// What a screen reader says of a row; the place in the table is added.
    fn name(&self, row: usize) -> String;
    /// Draws a row's cells.
    fn draw(&self, row: usize, cells: &mut Cells<'_>);
    /// Draws over a column's heading, where its title does not say all.
    fn heading(&self, _column: usize, _ui: &Ui, _cell: Rect) {}
}

/// What a table keeps between frames.
#[derive(Clone, Debug, Default)]
pub struct TableState {
    /// The chosen row's key.
    pub chosen: Option<Id>,
    /// Its index when last drawn, from which arrows go on.
    at: usize,
    /// Set when the chosen row must come into view.
    follow: bool,
    /// Set when the table is to take the focus.
    takes_keys: bool,
}

/// What was done in a table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TableAct {
    /// A row was opened, by a click or by Enter.
    Open(usize),
    /// A heading was pressed.
    Sort(Sort),
}

/// A table about to be drawn.
pub struct Table<'a> {
    /// Its name for a screen reader, and its key.
    pub name: &'a str,
    pub columns: &'a [Column<'a>],
    /// Points; a multiple of [`GRID`].
    pub row_height: f32,
    pub sort: Option<Sort>,
}

const MOVES: [Key; 6] = [Key::ArrowUp, Key::ArrowDown, Key::PageUp, Key::PageDown, Key::Home, Key::End];

impl Table<'_> {
    /// Draws it into the room that is left.
    pub fn ui(&self, ui: &mut Ui, state: &mut TableState, rows: &impl Rows) -> Option<TableAct> {
        let count = rows.count();
        let name = format!("{}: {}", self.name, counted!("{count} row", "{count} rows", count));
        ui.scope_builder(UiBuilder::new().id_salt(self.name), |ui| {
            ui.spacing_mut().item_spacing = vec2(0.0, 0.0);
            let widths = self.widths(ui.available_width() - ui.spacing().scroll.bar_width - GRID);
            let sorted = self.heading_ui(ui, &widths, rows);
            let opened = self.body_ui(ui, state, rows, &widths, &name);
            sorted.map(TableAct::Sort).or(opened.map(TableAct::Open))
        })
        .inner
    }

    /// How wide each column is; 0 for one that is left out.
    fn widths(&self, room: f32) -> Vec<f32> {
        let shown = |column: &Column<'_>| room >= column.shown_from;
        let (mut fixed, mut shares) = (0.0, 0.0);
        for column in self.columns.iter().filter(|column| shown(column)) {
            match column.width {
                Width::Points(points) => fixed += points,
                Width::Share(share) => shares += share,
            }
        }
        let share = ((room - fixed) / f32::max(shares, 0.01)).max(0.0);
        self.columns
            .iter()
            .map(|column| match column.width {
                _ if !shown(column) => 0.0,
                Width::Points(points) => points,
                Width::Share(part) => part * share,
            })
            .collect()
    }

    fn heading_ui(&self, ui: &mut Ui, widths: &[f32], rows: &impl Rows) -> Option<Sort> {
        let tokens = ui.tokens();
        let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), 7.0 * GRID), Sense::hover());
        let mut pressed = None;
        let mut left = rect.left();
        for (index, (column, width)) in
            self.columns.iter().zip(widths).enumerate().filter(|(_, (_, width))| **width > 0.0)
        {
            let cell = Rect::from_min_size(egui::pos2(left, rect.top()), vec2(*width, rect.height()));
            left += width;
            let is_sorted = self.sort.filter(|sort| sort.column == index);
            let colour = if column.sorts { tokens.press } else { tokens.ink_weak };
            let galley = ui.painter().layout_no_wrap(column.title.to_owned(), TextRole::Small.font(), colour);
            let at = egui::pos2(cell.left() + GRID, cell.center().y - galley.size().y / 2.0);
            let end = at.x + galley.size().x;
            ui.painter().with_clip_rect(cell).galley(at, galley, colour);
            rows.heading(index, ui, cell.shrink2(vec2(GRID.min(width / 2.0), 0.0)));
            if let Some(sort) = is_sorted {
                let mark = if sort.descending { Mark::Down } else { Mark::Up };
                let side = 3.0 * GRID;
                let at = Rect::from_center_size(egui::pos2(end + side, cell.center().y), vec2(side, side));
                marks::draw(ui.painter(), at, mark, colour);
            }
            if column.sorts {
                let response = ui.interact(cell, ui.scope_id().with(("heading", index)), Sense::click());
                let descends = is_sorted.is_some_and(|sort| !sort.descending);
                response.widget_info(|| {
                    WidgetInfo::labeled(Role::Button, true, text!("Sort by {column}", column = column.title))
                });
                if response.has_focus() {
                    ui.painter().rect_stroke(cell, 2.0, Stroke::new(2.0, tokens.press), egui::StrokeKind::Inside);
                }
                if response.clicked() {
                    pressed = Some(Sort { column: index, descending: descends });
                }
            }
        }
        ui.painter().hline(rect.x_range(), rect.bottom(), Stroke::new(1.0, tokens.ink_weak));
        pressed
    }

    fn body_ui(
        &self,
        ui: &mut Ui,
        state: &mut TableState,
        rows: &impl Rows,
        widths: &[f32],
        name: &str,
    ) -> Option<usize> {
        let count = rows.count();
        let body = ui.available_rect_before_wrap();
        let id = ui.scope_id().with("body");
        let response = ui.interact(body, id, Sense::focusable_noninteractive());
        response.widget_info(|| WidgetInfo::labeled(Role::Table, true, name));
        let mut opened = None;
        if std::mem::take(&mut state.takes_keys) {
            response.request_focus();
        }
        if response.has_focus() {
            ui.memory_mut(|memory| {
                let filter = EventFilter { vertical_arrows: true, ..EventFilter::default() };
                memory.set_focus_lock_filter(id, filter);
            });
            opened = self.keys(ui, state, rows, body.height());
        }
        let mut scroll = ScrollArea::vertical().id_salt("rows").auto_shrink(false);
        if std::mem::take(&mut state.follow) && count > 0 {
            scroll = scroll.vertical_scroll_offset(self.offset_showing(ui, state.at.min(count - 1), body.height()));
        }
        scroll.show_viewport(ui, |ui, viewport| {
            ui.set_height(self.row_height * count as f32);
            let top = ui.max_rect().top();
            let first = (viewport.min.y / self.row_height).floor().max(0.0) as usize;
            let last = ((viewport.max.y / self.row_height).ceil().max(0.0) as usize).min(count);
            for row in first..last {
                let y = top + row as f32 * self.row_height;
                let rect = Rect::from_x_y_ranges(ui.max_rect().x_range(), y..=y + self.row_height);
                if Self::row_ui(ui, state, rows, row, rect, widths, response.has_focus()) {
                    opened = Some(row);
                    response.request_focus();
                }
            }
        });
        opened
    }

    /// Draws one row; `true` when it was pressed.
    #[allow(clippy::too_many_arguments)]
    fn row_ui(
        ui: &mut Ui,
        state: &mut TableState,
        rows: &impl Rows,
        row: usize,
        rect: Rect,
        widths: &[f32],
        has_focus: bool,
    ) -> bool {
        let tokens = ui.tokens();
        let key = rows.key(row);
        // A click, but no stop of its own for the Tab key: that is the table's.
        let response = ui.interact(rect, key, Sense::CLICK);
        let is_chosen = state.chosen == Some(key);
        if is_chosen {
            state.at = row;
            ui.painter().rect_filled(rect, 0.0, tokens.selected);
            if has_focus {
                ui.painter().rect_stroke(rect, 2.0, Stroke::new(2.0, tokens.press), egui::StrokeKind::Inside);
            }
        } else if response.hovered() {
            ui.painter().rect_filled(rect, 0.0, tokens.hover);
        }
        ui.painter().hline(rect.x_range(), rect.bottom(), Stroke::new(1.0, tokens.hairline));
        rows.draw(row, &mut Cells::new(ui, rect, widths));
        response.widget_info(|| {
            let name =
                text!("{row}, row {number} of {count}", row = rows.name(row), number = row + 1, count = rows.count());
            WidgetInfo::selected(Role::Row, true, is_chosen, name)
        });
        ui.ctx().accesskit_node_builder(key, |node| {
            node.set_row_index(row);
            node.set_selected(is_chosen);
        });
        if response.clicked() {
            state.chosen = Some(key);
            state.at = row;
        }
        response.clicked()
    }

    /// Moves the chosen row by the keys pressed; the row that Enter opened.
    pub fn keys(&self, ui: &mut Ui, state: &mut TableState, rows: &impl Rows, height: f32) -> Option<usize> {
        let count = rows.count();
        if count == 0 {
            return None;
        }
        let page = ((height / self.row_height) as usize).saturating_sub(1).max(1);
        let is_chosen = state.at < count && state.chosen == Some(rows.key(state.at));
        for key in MOVES {
            if !ui.input_mut(|input| input.consume_key(egui::Modifiers::NONE, key)) {
                continue;
            }
            let at = state.at.min(count - 1);
            state.at = match key {
                Key::ArrowUp if is_chosen => at.saturating_sub(1),
                Key::ArrowDown if is_chosen => (at + 1).min(count - 1),
                Key::ArrowUp | Key::ArrowDown | Key::Home => 0,
                Key::PageUp => at.saturating_sub(page),
                Key::PageDown => (at + page).min(count - 1),
                _ => count - 1,
            };
            state.chosen = Some(rows.key(state.at));
            state.follow = true;
        }
        let enter = ui.input_mut(|input| input.consume_key(egui::Modifiers::NONE, Key::Enter));
        let is_chosen = state.at < count && state.chosen == Some(rows.key(state.at));
        (enter && is_chosen).then_some(state.at)
    }

    /// The scroll offset nearest to the one on show at which a row is wholly seen.
    fn offset_showing(&self, ui: &Ui, row: usize, height: f32) -> f32 {
        let id = ui.make_persistent_id("rows");
        let now = egui::scroll_area::State::load(ui.ctx(), id).map_or(0.0, |state| state.clamped_offset().y);
        let top = row as f32 * self.row_height;
        now.min(top).max(top + self.row_height - height).max(0.0)
    }
}

impl TableState {
    /// Chooses a row, and brings it into view when next drawn.
    pub fn choose(&mut self, key: Id, at: usize) {
        self.chosen = Some(key);
        self.at = at;
        self.follow = true;
    }

    /// Has the table take the focus when next drawn.
    pub fn take_keys(&mut self) {
        self.takes_keys = true;
    }

    /// Brings the chosen row into view when next drawn, or the top when there is none.
    pub fn show_top(&mut self) {
        self.chosen = None;
        self.at = 0;
        self.follow = true;
    }
}
