//! A table that is being pasted: the field it goes into, and what each of its lines was read as.

use egui::{Id, ScrollArea, Ui};

use crate::text;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{Cells, Column, Rows, Table, TableState, Width, notes_ui};

/// What is pasted so far.
#[derive(Default)]
pub struct Pasted {
    pub text: String,
    table: TableState,
}

/// What a line of a table was read as, or what is wrong with it.
pub struct ReadLine {
    pub number: u64,
    pub said: Result<String, String>,
}

struct Lines<'a> {
    lines: &'a [ReadLine],
}

impl Rows for Lines<'_> {
    fn count(&self) -> usize {
        self.lines.len()
    }

    fn key(&self, row: usize) -> Id {
        Id::unique(("line of the table", self.lines[row].number))
    }

    fn name(&self, row: usize) -> String {
        let ReadLine { number, said } = &self.lines[row];
        match said {
            Ok(said) => text!("Line {line}: {said}", line = number, said = said),
            Err(wrong) => text!("Line {line} is wrong: {wrong}", line = number, wrong = wrong),
        }
    }

    fn draw(&self, row: usize, cells: &mut Cells<'_>) {
        let ReadLine { number, said } = &self.lines[row];
        let tokens = cells.canvas().tokens();
        cells.remark(0, &number.to_string());
        match said {
            Ok(said) => cells.mark(1, Mark::Done, said, tokens.ink),
            Err(wrong) => cells.mark(1, Mark::Heed, wrong, tokens.power_unknown),
        }
    }
}

impl Pasted {
    /// A table that was read from a file.
    pub fn of(text: String) -> Self {
        Self { text, table: TableState::default() }
    }

    /// The field that the table is pasted into.
    pub fn field_ui(&mut self, ui: &mut Ui, label: &str) {
        ScrollArea::vertical().id_salt("pasted").max_height(40.0 * GRID).show(ui, |ui| {
            notes_ui(ui, label, &mut self.text, 6);
        });
    }

    /// What its lines were read as.
    pub fn lines_ui(&mut self, ui: &mut Ui, lines: &[ReadLine]) {
        let columns = [
            Column { title: text!("Line"), width: Width::Points(14.0 * GRID), sorts: false, shown_from: 0.0 },
            Column { title: text!("Read as"), width: Width::Share(1.0), sorts: false, shown_from: 0.0 },
        ];
        let table = Table { name: text!("Lines read"), columns: &columns, row_height: 6.0 * GRID, sort: None };
        table.ui(ui, &mut self.table, &Lines { lines });
    }
}
