//! The shopping list: what kits, machines, work and minima ask for; what has come goes into stock with one press.

use egui::{Id, ScrollArea, Ui};

use super::files::Files;
use super::{Books, amount_text, put};
use crate::assess::supplies::{For, ToBuy};
use crate::paper::supplies::{SuppliesTable, shopping_csv};
use crate::record::{Logbook, Material};
use crate::window::forms::money_text;
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::theme::GRID;
use crate::window::widgets::{
    Cells, Column, Rows, Table, TableAct, TableState, Width, body, link_ui, press_ui, remark, strong,
};
use crate::{counted, text};

/// What the leaf keeps.
#[derive(Default)]
pub struct Buying {
    table: TableState,
    chosen: Option<usize>,
    files: Files,
}

fn columns() -> [Column<'static>; 4] {
    let column = |title, width, shown_from| Column { title, width, sorts: false, shown_from };
    [
        column(text!("What"), Width::Share(3.0), 0.0),
        column(text!("How much"), Width::Points(26.0 * GRID), 0.0),
        column(text!("For what"), Width::Share(2.0), 0.0),
        column(text!("Costs"), Width::Points(26.0 * GRID), 120.0 * GRID),
    ]
}

struct List<'a> {
    list: &'a [ToBuy],
    logbook: &'a Logbook,
}

fn amount(one: &ToBuy) -> String {
    one.amount.map(|amount| amount_text(amount, &one.unit)).unwrap_or_default()
}

impl List<'_> {
    fn reasons(&self, row: usize) -> String {
        let reasons = self.list[row].reasons.iter().map(|reason| reason.sentence(self.logbook));
        reasons.collect::<Vec<_>>().join("; ")
    }
}

impl Rows for List<'_> {
    fn count(&self) -> usize {
        self.list.len()
    }

    fn key(&self, row: usize) -> Id {
        Id::unique(("to buy", row, self.list[row].said()))
    }

    fn name(&self, row: usize) -> String {
        let one = &self.list[row];
        let mut words = vec![one.said(), amount(one), self.reasons(row)];
        words.retain(|word| !word.is_empty());
        words.join(", ")
    }

    fn draw(&self, row: usize, cells: &mut Cells<'_>) {
        let one = &self.list[row];
        cells.text(0, &one.said());
        cells.text(1, &amount(one));
        cells.remark(2, &self.reasons(row));
        let currency = &self.logbook.workshop.currency;
        cells.remark(3, &one.cost_cents().map(|cents| money_text(cents, currency)).unwrap_or_default());
    }
}

impl Buying {
    /// Draws the leaf.
    pub fn ui(&mut self, ui: &mut Ui, books: &Books, view: &View<'_>, outbox: &mut Outbox) {
        let list = List { list: &books.to_buy, logbook: view.logbook };
        if list.list.is_empty() {
            ui.label(body(text!(
                "Nothing to buy. Frozen kits, roles that no part fills and what runs low stand here."
            )));
            return;
        }
        ui.horizontal_wrapped(|ui| {
            let sum: i64 = list.list.iter().filter_map(ToBuy::cost_cents).sum();
            let things = counted!("{count} thing to buy", "{count} things to buy", list.list.len());
            ui.label(body(things));
            if sum > 0 {
                let money = money_text(sum, &view.logbook.workshop.currency);
                ui.label(remark(ui, text!("{money} where prices are told", money = money)));
            }
            if press_ui(ui, text!("Copy as CSV"), text!("The list for a shop or a spreadsheet"), None).clicked() {
                ui.ctx().copy_text(shopping_csv(list.list, view.logbook));
                outbox.say(text!("The shopping list is on the clipboard as CSV."));
            }
            self.files.ways_ui(ui, false);
        });
        self.files.path_ui(ui, SuppliesTable::ToBuy, outbox);
        if let Some(one) = self.chosen.and_then(|row| list.list.get(row)) {
            self.chosen_ui(ui, one, view, outbox);
        }
        ui.add_space(GRID);
        let table = Table { name: text!("To buy"), columns: &columns(), row_height: 8.0 * GRID, sort: None };
        if let Some(TableAct::Open(row)) = table.ui(ui, &mut self.table, &list) {
            self.chosen = Some(row);
        }
    }

    fn chosen_ui(&mut self, ui: &mut Ui, one: &ToBuy, view: &View<'_>, outbox: &mut Outbox) {
        ScrollArea::vertical().id_salt("chosen").max_height(40.0 * GRID).show(ui, |ui| {
            ui.label(strong(one.said()));
            ui.horizontal_wrapped(|ui| {
                for reason in &one.reasons {
                    let said = reason.sentence(view.logbook);
                    match *reason {
                        For::Kit { kit, .. } | For::Spares { kit, .. } => {
                            if link_ui(ui, &said).clicked() {
                                outbox.show_kit(kit);
                            }
                        }
                        For::Role { machine, .. } => {
                            if link_ui(ui, &said).clicked() {
                                outbox.go(Page::Machine(machine));
                            }
                        }
                        For::Work { .. } => {
                            if link_ui(ui, &said).clicked() {
                                outbox.go(Page::Bench);
                            }
                        }
                        For::Board { board } => {
                            if link_ui(ui, &said).clicked() {
                                outbox.go(Page::Part(board));
                            }
                        }
                        For::Minimum { .. } | For::OnOrder { .. } => drop(ui.label(remark(ui, said))),
                    }
                }
            });
            let is_of_kit = one.reasons.iter().any(|reason| matches!(reason, For::Kit { .. }));
            let known = one.material.and_then(|id| view.logbook.material(id)).filter(|_| !is_of_kit);
            if let Some(known) = known
                && acts_ui(ui, known, one, outbox)
            {
                self.chosen = None;
            }
        });
    }
}

/// What was ordered, has come or was cancelled; `true` once one of it was said.
fn acts_ui(ui: &mut Ui, known: &Material, one: &ToBuy, outbox: &mut Outbox) -> bool {
    let mut written = None;
    ui.horizontal_wrapped(|ui| {
        if let Some(amount) = one.amount {
            let word = text!("It is ordered: {amount}", amount = amount_text(amount, &one.unit));
            if press_ui(ui, &word, text!("It is not asked for again until it has come"), None).clicked() {
                let name = text!("Order {material}", material = known.name);
                written = Some((name, Material { on_order: known.on_order + amount, ..known.clone() }));
            }
        }
        // What was ordered is what comes; nothing ordered, it was bought over the counter.
        let coming = if known.on_order > 0.0 { Some(known.on_order) } else { one.amount };
        if let Some(amount) = coming {
            let word = text!("It has come: {amount} into stock", amount = amount_text(amount, &one.unit));
            if press_ui(ui, &word, "", None).clicked() {
                let name = text!("Receive {material}", material = known.name);
                written = Some((name, Material { stock: known.stock + amount, on_order: 0.0, ..known.clone() }));
            }
        }
        if known.on_order > 0.0 && link_ui(ui, text!("The order is cancelled")).clicked() {
            let name = text!("Cancel the order of {material}", material = known.name);
            written = Some((name, Material { on_order: 0.0, ..known.clone() }));
        }
    });
    let is_written = written.is_some();
    if let Some((name, material)) = written {
        outbox.change(put(name, material));
    }
    is_written
}
