//! The cells of one table row, painted without a widget each.

use egui::text::{LayoutJob, TextWrapping};
use egui::{Color32, Rect, Ui, pos2, vec2};

use crate::window::theme::marks::{self, Mark};
use crate::window::theme::{GRID, TextRole, Themed};

/// The cells of one row.
pub struct Cells<'a> {
    ui: &'a Ui,
    row: Rect,
    widths: &'a [f32],
}

impl<'a> Cells<'a> {
    pub(super) fn new(ui: &'a Ui, row: Rect, widths: &'a [f32]) -> Self {
        Self { ui, row, widths }
    }

    /// What the cells are drawn in, for its tokens and painter.
    pub fn canvas(&self) -> &Ui {
        self.ui
    }

    /// A column's rectangle in this row, without its margins.
    pub fn rect(&self, column: usize) -> Rect {
        let left: f32 = self.row.left() + self.widths[..column].iter().sum::<f32>();
        let width = self.widths.get(column).copied().unwrap_or_default();
        Rect::from_min_size(pos2(left, self.row.top()), vec2(width, self.row.height()))
            .shrink2(vec2(GRID.min(width / 2.0), 0.0))
    }

    /// Text in the ink.
    pub fn text(&mut self, column: usize, words: &str) {
        self.text_in(column, words, TextRole::Body, self.ui.tokens().ink);
    }

    /// Text in the weak ink.
    pub fn remark(&mut self, column: usize, words: &str) {
        self.text_in(column, words, TextRole::Body, self.ui.tokens().ink_weak);
    }

    /// Characters as printed.
    pub fn marking(&mut self, column: usize, words: &str) {
        self.text_in(column, words, TextRole::Marking, self.ui.tokens().ink);
    }

    /// Text of a role and colour, cut where the column ends.
    pub fn text_in(&mut self, column: usize, words: &str, role: TextRole, colour: Color32) {
        let rect = self.rect(column);
        self.text_at(rect, words, role, colour);
    }

    /// A mark with its word.
    pub fn mark(&mut self, column: usize, mark: Mark, words: &str, colour: Color32) {
        let rect = self.rect(column);
        if rect.width() <= 0.0 {
            return;
        }
        let side = 4.0 * GRID;
        let centre = pos2(rect.left() + side / 2.0, rect.center().y);
        marks::draw(self.ui.painter(), Rect::from_center_size(centre, vec2(side, side)), mark, colour);
        let rest = Rect::from_min_max(pos2(rect.left() + side + 1.5 * GRID, rect.top()), rect.max);
        self.text_at(rest, words, TextRole::Body, colour);
    }

    fn text_at(&self, rect: Rect, words: &str, role: TextRole, colour: Color32) {
        if words.is_empty() || rect.width() <= 0.0 {
            return;
        }
        let mut job = LayoutJob::simple_singleline(words.to_owned(), role.font(), colour);
        job.wrap = TextWrapping::truncate_at_width(rect.width());
        let galley = self.ui.painter().layout_job(job);
        let at = pos2(rect.left(), rect.center().y - galley.size().y / 2.0);
        self.ui.painter().galley(at, galley, colour);
    }
}
