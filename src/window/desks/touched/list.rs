//! The pieces that do not say what they touched, as rows of a table.

use egui::Id;

use crate::assess::touched::Piece;
use crate::record::{Logbook, WorkId, WorkState};
use crate::text;
use crate::window::desks::part_sheet::day_text;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{Cells, Column, Rows, Width};

const PART: usize = 0;
const WORK: usize = 1;
const STAND: usize = 2;
const ON: usize = 3;
const NOTE: usize = 4;

/// The columns, in the reader's language.
pub fn columns() -> [Column<'static>; 5] {
    let column = |title, width, shown_from| Column { title, width, sorts: false, shown_from };
    [
        column(text!("Part"), Width::Share(2.0), 0.0),
        column(text!("Work"), Width::Share(3.0), 0.0),
        column(text!("Stands"), Width::Points(28.0 * GRID), 140.0 * GRID),
        column(text!("On"), Width::Points(26.0 * GRID), 0.0),
        column(text!("Note"), Width::Share(2.0), 200.0 * GRID),
    ]
}

/// The rows.
pub struct Pieces<'a> {
    pub logbook: &'a Logbook,
    pub pieces: &'a [Piece<'a>],
}

/// The row of a piece.
pub fn key(work: WorkId) -> Id {
    Id::unique(("touched", work))
}

/// What the piece is called.
pub fn title<'a>(piece: &Piece<'a>) -> &'a str {
    if piece.work.title.is_empty() { text!("Work without a name") } else { &piece.work.title }
}

/// The part's tag and title.
pub fn part(piece: &Piece<'_>, logbook: &Logbook) -> String {
    format!("{}  {}", piece.file.part.tag, logbook.title_of(piece.file))
}

/// Done, failed or under way.
pub fn stand(piece: &Piece<'_>) -> (Mark, &'static str) {
    match piece.work.state {
        WorkState::Done => (Mark::Done, text!("done")),
        WorkState::Failed => (Mark::Heed, text!("failed")),
        _ => (Mark::Forth, text!("under way")),
    }
}

/// When.
pub fn day(piece: &Piece<'_>) -> String {
    day_text(piece.work.changed.on)
}

impl Rows for Pieces<'_> {
    fn count(&self) -> usize {
        self.pieces.len()
    }

    fn key(&self, row: usize) -> Id {
        key(self.pieces[row].work.id)
    }

    fn name(&self, row: usize) -> String {
        let piece = &self.pieces[row];
        let words =
            [title(piece), &part(piece, self.logbook), stand(piece).1, &day(piece), &piece.work.note].join(", ");
        words.trim_end_matches(", ").to_owned()
    }

    fn draw(&self, row: usize, cells: &mut Cells<'_>) {
        let piece = &self.pieces[row];
        let tokens = cells.canvas().tokens();
        cells.remark(PART, &part(piece, self.logbook));
        cells.text_in(WORK, title(piece), TextRole::Body, tokens.ink);
        let (mark, word) = stand(piece);
        cells.mark(STAND, mark, word, tokens.ink_weak);
        cells.remark(ON, &day(piece));
        cells.remark(NOTE, &piece.work.note);
    }
}
