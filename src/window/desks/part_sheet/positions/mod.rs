//! The capacitor desk of a part: every position in one grid, entered, copied, measured, and turned into a recap.

mod copying;
mod one;
mod paste;
mod plot;
mod recap;
mod rows;

use std::collections::{HashMap, HashSet};
use std::sync::Arc;

use egui::{TextEdit, Ui, UiBuilder};

use self::one::One;
use self::rows::{Order, PositionRows, columns};
use super::about::About;
use crate::assess::findings::after_capacitors;
use crate::assess::positions::grown;
use crate::assess::supplies::served;
use crate::record::{Capacitor, CapacitorId, Change, Entry, KitId, PartFile, PartId};
use crate::window::forms::Pasted;
use crate::window::outbox::{Outbox, View};
use crate::window::rounds::CapacitorsRound;
use crate::window::theme::GRID;
use crate::window::widgets::{Sort, Table, TableAct, TableState, body, link_ui, press_ui, remark, title_ui};
use crate::{counted, text};

/// From this width on, points, the chosen position stands beside the grid.
const BESIDE: f32 = 230.0 * GRID;
/// How wide it then is, points.
const PANEL: f32 = 105.0 * GRID;

/// How positions are being added.
enum Adding {
    Groups(Box<CapacitorsRound>),
    Table(Pasted),
    Copies,
}

/// What the desk keeps of one part.
#[derive(Default)]
pub struct Positions {
    letters: String,
    sort: Option<Sort>,
    order: Option<Order>,
    table: TableState,
    chosen: Option<CapacitorId>,
    one: One,
    adding: Option<Adding>,
    /// Positions that an unfinished kit serves, of one revision.
    taken: Option<(u64, HashMap<CapacitorId, KitId>)>,
}

impl super::PartSheet {
    /// Draws the capacitor desk of a part.
    pub fn positions_ui(&mut self, ui: &mut Ui, part: PartId, view: &View<'_>, outbox: &mut Outbox) {
        let (Some(file), Some(answers)) = (view.logbook.part(part), view.answers.part(part)) else {
            self.ui(ui, part, view, outbox);
            return;
        };
        let about = About { view, file, answers };
        self.sheets.entry(part).or_default().positions.ui(ui, &about, outbox);
    }
}

impl Positions {
    fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        title_ui(ui, text!("Capacitors of {tag}", tag = about.tag()));
        let all = &about.file.capacitors;
        ui.horizontal_wrapped(|ui| {
            let title = about.view.logbook.title_of(about.file);
            if link_ui(ui, &title).on_hover_text(text!("Back to the part’s sheet")).clicked() {
                outbox.go(about.page());
            }
            let bad = all.iter().filter(|one| one.state().is_bad()).count();
            let said = counted!("{count} position", "{count} positions", all.len());
            ui.label(remark(ui, text!("{positions}, {bad} to be replaced", positions = said, bad = bad)));
        });
        let revision = about.view.logbook.revision;
        if self.taken.as_ref().is_none_or(|(of, _)| *of != revision) {
            self.taken = Some((revision, served(about.view.logbook)));
        }
        if let Some((_, taken)) = &self.taken {
            recap::recap_ui(ui, taken, about, outbox);
        }
        self.adding_ui(ui, about, outbox);
        if matches!(self.adding, Some(Adding::Table(_))) {
            // What the lines were read as takes the room.
            return;
        }
        if all.is_empty() {
            if self.adding.is_none() {
                ui.label(body(text!("No position is logged yet: log them in groups, paste a table, or copy them.")));
            }
            return;
        }
        let chosen = self.chosen.and_then(|id| all.iter().find(|one| one.position.id == id));
        match chosen {
            None => self.grid_ui(ui, about),
            Some(file) if ui.available_width() < BESIDE => {
                if self.one.ui(ui, file, about, outbox) {
                    self.chosen = None;
                }
            }
            Some(file) => {
                let room = ui.available_rect_before_wrap();
                let (grid, beside) = room.split_left_right_at_x(room.right() - PANEL);
                let beside = UiBuilder::new().max_rect(beside.with_min_x(beside.left() + 6.0 * GRID)).id_salt("one");
                ui.scope_builder(beside, |ui| {
                    if self.one.ui(ui, file, about, outbox) {
                        self.chosen = None;
                    }
                });
                ui.scope_builder(UiBuilder::new().max_rect(grid).id_salt("grid"), |ui| self.grid_ui(ui, about));
            }
        }
    }

    fn grid_ui(&mut self, ui: &mut Ui, about: &About<'_>) {
        let field = TextEdit::singleline(&mut self.letters)
            .hint_text(text!("Position, value or place"))
            .desired_width(50.0 * GRID);
        let field = ui.add(field);
        field.widget_info(|| egui::WidgetInfo::labeled(egui::Role::TextInput, true, text!("Search the positions")));
        let is_current = |order: &Order| {
            Arc::ptr_eq(&order.of, about.file) && order.letters == self.letters && order.sort == self.sort
        };
        if !self.order.as_ref().is_some_and(is_current) {
            self.order = Some(Order::of(about.file, &self.letters, self.sort));
        }
        let Some(order) = &self.order else { return };
        let rows = PositionRows { order };
        let table = Table { name: text!("Positions"), columns: &columns(), row_height: 7.0 * GRID, sort: self.sort };
        match table.ui(ui, &mut self.table, &rows) {
            Some(TableAct::Open(row)) => {
                self.chosen = rows.file(row).map(|file| file.position.id);
                self.one = One::default();
            }
            Some(TableAct::Sort(sort)) => self.sort = Some(sort),
            None => {}
        }
    }

    fn adding_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let mut over = false;
        match &mut self.adding {
            None => {
                ui.horizontal_wrapped(|ui| {
                    if press_ui(ui, text!("Log in groups…"), "", None).clicked() {
                        self.adding = Some(Adding::Groups(Box::default()));
                    }
                    if press_ui(ui, text!("Paste a table…"), text!("Lines of a spreadsheet, or CSV"), None).clicked()
                    {
                        self.adding = Some(Adding::Table(Pasted::default()));
                    }
                    if about.part().design.is_some() && press_ui(ui, text!("Copy positions…"), "", None).clicked() {
                        self.adding = Some(Adding::Copies);
                    }
                });
                ui.add_space(GRID);
            }
            Some(Adding::Groups(round)) => over = groups_ui(ui, round, about, outbox),
            Some(Adding::Table(pasted)) => over = paste::paste_ui(ui, pasted, about, outbox),
            Some(Adding::Copies) => over = copying::copying_ui(ui, about, outbox),
        }
        if over {
            self.adding = None;
        }
    }
}

fn groups_ui(ui: &mut Ui, round: &mut CapacitorsRound, about: &About<'_>, outbox: &mut Outbox) -> bool {
    round.ui(ui);
    let (mut keep, mut away) = (false, false);
    ui.horizontal(|ui| {
        keep = press_ui(ui, text!("Keep the capacitors"), "", None).clicked();
        away = press_ui(ui, text!("Put the capacitors away"), "", None).clicked();
    });
    if keep {
        if let Some(fault) = round.fault() {
            outbox.say(fault);
            return false;
        }
        let entries = round.entries(about.file, about.view.rules, about.view.today);
        let positions: Vec<Capacitor> = entries
            .iter()
            .filter_map(|entry| if let Entry::Capacitor(one) = entry { Some(one.clone()) } else { None })
            .collect();
        if positions.is_empty() {
            outbox.say(text!("Nothing is said yet, so there is nothing to keep."));
            return false;
        }
        outbox.change(logged(about, &positions));
    }
    keep || away
}

/// The change that logs positions: with the findings that they bring, and with what they tell of the design.
fn logged(about: &About<'_>, positions: &[Capacitor]) -> Change {
    let name = counted!("Log {count} capacitor", "Log {count} capacitors", positions.len());
    let mut change = Change::new(format!("{name} ({})", about.tag()));
    let mut would_be = PartFile::clone(about.file);
    for position in positions {
        would_be.hang(position.clone().into());
        change.put(position.clone());
    }
    change.put_all(after_capacitors(&would_be, about.view.rules, about.now(), &mut uuid::Uuid::now_v7));
    if let Some(design) = about.view.logbook.design_of(about.file) {
        let more = grown(design.design.id, &design.capacitors, positions, &mut uuid::Uuid::now_v7);
        change.put_all(more.into_iter().map(Entry::from));
    }
    change
}

/// Designators that the part has already.
fn designators<'a>(about: &About<'a>) -> HashSet<&'a str> {
    about.file.capacitors.iter().map(|one| one.position.designator.as_str()).collect()
}
