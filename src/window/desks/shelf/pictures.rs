//! The Shelf as pictures: what a part looks like finds it faster than what it is called.

use std::sync::Arc;

use egui::text::{LayoutJob, TextWrapping};
use egui::{Id, Pos2, Rect, Ui, vec2};

use super::grid::{PICTURE, Tiles, inside};
use crate::window::outbox::View;
use crate::window::part_index::IndexRow;
use crate::window::photographs::small_ui;
use crate::window::pictures::face_of;
use crate::window::theme::{GRID, TextRole, Themed};

/// Parts as pictures with their tags.
pub struct PartTiles<'a> {
    pub view: &'a View<'a>,
    pub parts: &'a [Arc<IndexRow>],
}

impl Tiles for PartTiles<'_> {
    fn count(&self) -> usize {
        self.parts.len()
    }

    fn key(&self, tile: usize) -> Id {
        Id::unique(("picture", self.parts[tile].id))
    }

    fn name(&self, tile: usize) -> String {
        let part = &self.parts[tile];
        format!("{}, {}", part.tag, part.what)
    }

    fn draw(&self, ui: &Ui, tile: usize, rect: Rect, is_held: bool) {
        let part = &self.parts[tile];
        let (picture, words) = inside(rect);
        small_ui(ui, self.view, picture, face_of(&part.answers().file.photos), is_held);
        words_ui(ui, words, &part.tag, &part.what);
    }
}

/// A tag or a name, and below it a line in the weak ink, both cut where they are too long.
pub fn words_ui(ui: &Ui, at: Pos2, tag: &str, below: &str) {
    let tokens = ui.tokens();
    let line = |at, said: &str, role: TextRole, ink| {
        let mut words = LayoutJob::simple_singleline(said.to_owned(), role.font(), ink);
        words.wrap = TextWrapping { max_rows: 1, ..TextWrapping::truncate_at_width(PICTURE.x) };
        let galley = ui.painter().layout_job(words);
        ui.painter().galley(at, galley, ink);
    };
    line(at, tag, TextRole::Marking, tokens.ink);
    line(at + vec2(0.0, 5.0 * GRID), below, TextRole::Small, tokens.ink_weak);
}
