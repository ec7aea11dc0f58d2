//! What machines and parts cost so far: bought for, spent on, hours at them.

use std::cmp::Reverse;

use egui::{Id, Ui};

use super::Books;
use crate::assess::Answers;
use crate::assess::outstanding::hours_text;
use crate::assess::supplies::{Costs, machine_costs, part_costs};
use crate::record::{Logbook, MachineId, PartId};
use crate::text;
use crate::window::forms::money_text;
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{Cells, Column, Rows, Table, TableAct, TableState, Width, remark};

/// What the leaf keeps.
#[derive(Default)]
pub struct CostsLeaf {
    table: TableState,
}

#[derive(Clone, Copy)]
enum Of {
    Machine(MachineId),
    Part(PartId),
}

/// One line of the table.
pub struct Row {
    of: Of,
    name: String,
    costs: Costs,
}

struct List<'a> {
    rows: &'a [Row],
    currency: &'a str,
}

fn columns() -> [Column<'static>; 4] {
    let column = |title, width, shown_from| Column { title, width, sorts: false, shown_from };
    [
        column(text!("Machine or part"), Width::Share(3.0), 0.0),
        column(text!("Bought for"), Width::Points(40.0 * GRID), 0.0),
        column(text!("Materials"), Width::Points(40.0 * GRID), 150.0 * GRID),
        column(text!("Hours"), Width::Points(24.0 * GRID), 0.0),
    ]
}

impl List<'_> {
    /// A sum; not every price in it may be told.
    fn money(&self, cents: i64, unpriced: usize) -> String {
        match (cents, unpriced) {
            (0, 0) => String::new(),
            (0, _) => text!("not told").to_owned(),
            (cents, 0) => money_text(cents, self.currency),
            (cents, _) => text!("{money} and more", money = money_text(cents, self.currency)),
        }
    }

    fn cells(&self, row: usize) -> [String; 4] {
        let Row { name, costs, .. } = &self.rows[row];
        let hours = if costs.minutes > 0 { hours_text(costs.minutes) } else { String::new() };
        [
            name.clone(),
            self.money(costs.bought_cents, costs.unpriced_parts),
            self.money(costs.spent_cents, costs.unpriced_uses),
            hours,
        ]
    }
}

impl Rows for List<'_> {
    fn count(&self) -> usize {
        self.rows.len()
    }

    fn key(&self, row: usize) -> Id {
        match self.rows[row].of {
            Of::Machine(machine) => Id::unique(machine),
            Of::Part(part) => Id::unique(part),
        }
    }

    fn name(&self, row: usize) -> String {
        let [name, bought, spent, hours] = self.cells(row);
        text!(
            "{name}, bought for {bought}, materials {spent}, hours {hours}",
            name = name,
            bought = bought,
            spent = spent,
            hours = hours
        )
    }

    fn draw(&self, row: usize, cells: &mut Cells<'_>) {
        let [name, bought, spent, hours] = self.cells(row);
        let ink = cells.canvas().tokens().ink;
        let role = if matches!(self.rows[row].of, Of::Machine(_)) { TextRole::Strong } else { TextRole::Body };
        cells.text_in(0, &name, role, ink);
        cells.text(1, &bought);
        cells.text(2, &spent);
        cells.text(3, &hours);
    }
}

/// Machines first, then parts, the dearest first.
pub fn rows(logbook: &Logbook, answers: &Answers) -> Vec<Row> {
    let all = part_costs(logbook);
    let machines = answers.machines.iter().map(|of| Row {
        of: Of::Machine(of.machine),
        name: of.file.machine.name.clone(),
        costs: machine_costs(&all, of),
    });
    let told = |costs: &Costs| costs.bought_cents > 0 || costs.spent_cents > 0 || costs.minutes > 0;
    let parts = logbook.parts.iter().filter_map(|file| {
        let costs = *all.get(&file.part.id)?;
        let name = || format!("{}  {}", file.part.tag, logbook.title_of(file));
        told(&costs).then(|| Row { of: Of::Part(file.part.id), name: name(), costs })
    });
    let mut parts: Vec<Row> = parts.collect();
    parts.sort_by_key(|row| Reverse(row.costs.bought_cents + row.costs.spent_cents));
    machines.chain(parts).collect()
}

impl CostsLeaf {
    /// Draws the leaf.
    pub fn ui(&mut self, ui: &mut Ui, books: &Books, view: &View<'_>, outbox: &mut Outbox) {
        ui.label(remark(ui, text!("A lot’s price is shared out over its parts that have none of their own.")));
        let list = List { rows: &books.costs, currency: &view.logbook.workshop.currency };
        let table = Table { name: text!("What it cost"), columns: &columns(), row_height: 8.0 * GRID, sort: None };
        if let Some(TableAct::Open(row)) = table.ui(ui, &mut self.table, &list) {
            match books.costs[row].of {
                Of::Machine(machine) => outbox.go(Page::Machine(machine)),
                Of::Part(part) => outbox.go(Page::Part(part)),
            }
        }
    }
}
