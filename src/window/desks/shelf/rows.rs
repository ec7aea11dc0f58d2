//! The rows of the Shelf's table.

use std::sync::Arc;

use egui::Id;

use crate::record::{Hold, Word};
use crate::text;
use crate::window::part_index::IndexRow;
use crate::window::theme::GRID;
use crate::window::theme::Themed;
use crate::window::theme::marks::Mark;
use crate::window::widgets::{Cells, Column, Rows, Width, years_text};

/// Where each column stands.
pub struct Columns {
    pub tag: usize,
    pub what: usize,
    pub span: usize,
    pub state: usize,
    pub work: usize,
    pub place: usize,
}

/// Where each column stands.
pub const COLUMNS: Columns = Columns { tag: 0, what: 1, span: 2, state: 3, work: 4, place: 5 };

/// The columns, in the reader's language.
pub fn columns() -> [Column<'static>; 6] {
    let column = |title, width, shown_from| Column { title, width, sorts: true, shown_from };
    [
        column(text!("Tag"), Width::Points(20.0 * GRID), 0.0),
        column(text!("What it is"), Width::Share(3.0), 0.0),
        column(text!("Made"), Width::Points(26.0 * GRID), 130.0 * GRID),
        column(text!("State"), Width::Points(48.0 * GRID), 0.0),
        column(text!("Open work"), Width::Points(24.0 * GRID), 150.0 * GRID),
        column(text!("Where"), Width::Share(2.0), 190.0 * GRID),
    ]
}

/// Parts as rows.
pub struct PartRows<'a> {
    pub parts: &'a [Arc<IndexRow>],
}

impl Rows for PartRows<'_> {
    fn count(&self) -> usize {
        self.parts.len()
    }

    fn key(&self, row: usize) -> Id {
        Id::unique(self.parts[row].id)
    }

    fn name(&self, row: usize) -> String {
        let part = &self.parts[row];
        let mut name = format!("{}, {}, {}", part.tag, part.what, part.state.label());
        if let Some(span) = part.span {
            name.push_str(&text!(", made {span}", span = years_text(span)));
        }
        if part.open_work > 0 {
            name.push_str(&text!(", open work {count}", count = part.open_work));
        }
        name
    }

    fn draw(&self, row: usize, cells: &mut Cells<'_>) {
        let part = &self.parts[row];
        let tokens = cells.canvas().tokens();
        cells.marking(COLUMNS.tag, &part.tag);
        cells.text(COLUMNS.what, &part.what);
        cells.remark(COLUMNS.span, &part.span.map(years_text).unwrap_or_default());
        match part.hold.filter(|hold| *hold != Hold::Looks) {
            Some(hold) => cells.mark(COLUMNS.state, Mark::of_hold(hold), part.state.label(), tokens.hold(hold)),
            None => cells.remark(COLUMNS.state, part.state.label()),
        }
        if part.open_work > 0 {
            cells.text(COLUMNS.work, &part.open_work.to_string());
        }
        cells.remark(COLUMNS.place, &part.place);
    }
}
