//! All kits, and the one that was chosen; a new one is gathered here.

use egui::{Id, Ui, UiBuilder};

use super::gather::{Gather, Gathered};
use super::kit::KitSheet;
use super::{BESIDE, PANEL};
use crate::record::{KitFile, KitId, KitState, Word as _};
use crate::window::outbox::{Outbox, View};
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed, Tokens};
use crate::window::widgets::{Cells, Column, Rows, Table, TableAct, TableState, Width, body, press_ui};
use crate::{counted, text};

/// What the leaf keeps.
#[derive(Default)]
pub struct Kits {
    table: TableState,
    chosen: Option<KitId>,
    sheet: KitSheet,
    gather: Option<Gather>,
}

/// A kit's state as mark and hue beside its word.
pub fn mark_of(state: KitState, tokens: &Tokens) -> (Mark, egui::Color32) {
    match state {
        KitState::Draft => (Mark::Part, tokens.ink_weak),
        KitState::Frozen => (Mark::HoldStorage, tokens.gate_here),
        KitState::Ordered => (Mark::Forth, tokens.gate_here),
        KitState::Received => (Mark::Add, tokens.gate_passed),
        KitState::Used => (Mark::Done, tokens.gate_passed),
    }
}

fn columns() -> [Column<'static>; 5] {
    let column = |title, width, shown_from| Column { title, width, sorts: false, shown_from };
    [
        column(text!("Kit"), Width::Share(2.0), 0.0),
        column(text!("Over"), Width::Share(2.0), 110.0 * GRID),
        column(text!("Stands"), Width::Points(30.0 * GRID), 0.0),
        column(text!("Lines"), Width::Points(16.0 * GRID), 90.0 * GRID),
        column(text!("Since"), Width::Points(26.0 * GRID), 130.0 * GRID),
    ]
}

struct KitRows<'a> {
    kits: &'a [&'a KitFile],
}

impl Rows for KitRows<'_> {
    fn count(&self) -> usize {
        self.kits.len()
    }

    fn key(&self, row: usize) -> Id {
        Id::unique(self.kits[row].kit.id)
    }

    fn name(&self, row: usize) -> String {
        let file = self.kits[row];
        let positions = counted!("{count} position", "{count} positions", file.positions().count());
        format!("{}, {}, {}, {positions}", file.kit.name, file.kit.scope, file.kit.state.label())
    }

    fn draw(&self, row: usize, cells: &mut Cells<'_>) {
        let file = self.kits[row];
        let tokens = cells.canvas().tokens();
        cells.text(0, &file.kit.name);
        cells.remark(1, &file.kit.scope);
        let (mark, colour) = mark_of(file.kit.state, &tokens);
        cells.mark(2, mark, file.kit.state.label(), colour);
        cells.remark(3, &file.lines.len().to_string());
        cells.remark(4, &file.kit.changed.on.to_string());
    }
}

impl Kits {
    /// Chooses a kit.
    pub fn show(&mut self, kit: KitId) {
        self.chosen = Some(kit);
        self.gather = None;
    }

    /// Draws the leaf.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        if let Some(gather) = &mut self.gather {
            match gather.ui(ui, view, outbox) {
                Some(Gathered::Kept(kit)) => self.show(kit),
                Some(Gathered::PutAway) => self.gather = None,
                None => {}
            }
            return;
        }
        let tooltip = text!("Capacitor positions into as few order lines as the rules allow");
        if press_ui(ui, text!("Gather a kit…"), tooltip, None).clicked() {
            self.gather = Some(Gather::default());
            return;
        }
        ui.add_space(GRID);
        let mut kits: Vec<&KitFile> = view.logbook.kits.iter().map(|file| &**file).collect();
        // What is going on comes first, the newest of it at the top.
        kits.sort_by_key(|file| (file.kit.state == KitState::Used, std::cmp::Reverse(file.kit.id)));
        if kits.is_empty() {
            ui.label(body(text!("No kit yet. Gather one over a part, a machine or everything.")));
            return;
        }
        let chosen = self.chosen.and_then(|id| view.logbook.kit(id));
        match chosen {
            None => self.list_ui(ui, &kits),
            Some(file) if ui.available_width() < BESIDE + PANEL => {
                if self.sheet.ui(ui, file, view, outbox) {
                    self.chosen = None;
                }
            }
            Some(file) => {
                let room = ui.available_rect_before_wrap();
                let (list, beside) = room.split_left_right_at_x(room.left() + room.width() * 0.4);
                let beside = UiBuilder::new().max_rect(beside.with_min_x(beside.left() + 6.0 * GRID)).id_salt("kit");
                ui.scope_builder(beside, |ui| {
                    if self.sheet.ui(ui, file, view, outbox) {
                        self.chosen = None;
                    }
                });
                ui.scope_builder(UiBuilder::new().max_rect(list).id_salt("list"), |ui| self.list_ui(ui, &kits));
            }
        }
    }

    fn list_ui(&mut self, ui: &mut Ui, kits: &[&KitFile]) {
        let table = Table { name: text!("Kits"), columns: &columns(), row_height: 8.0 * GRID, sort: None };
        if let Some(TableAct::Open(row)) = table.ui(ui, &mut self.table, &KitRows { kits }) {
            self.chosen = kits.get(row).map(|file| file.kit.id);
        }
    }
}
