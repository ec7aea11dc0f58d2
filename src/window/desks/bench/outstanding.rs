//! Outstanding work over all parts, what can be started now first, and the one thing to do next.

use std::sync::Arc;

use egui::{TextEdit, Ui};

use super::order::{Grouping, Line, Order, Wanted};
use super::panel::{Beside, side_ui, sides};
use super::rows::{self, Lines, columns};
use crate::assess::outstanding::hours_text;
use crate::record::Word;
use crate::text;
use crate::window::background::Background;
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{Table, TableAct, TableState, body, hold_ui, remark};

/// What the view keeps.
pub struct Outstanding {
    wanted: Wanted,
    order: Background<(u64, u64, Wanted), Order>,
    table: TableState,
    pub beside: Beside,
}

impl Default for Outstanding {
    fn default() -> Self {
        Self {
            wanted: Wanted { grouping: Grouping::Machine, only_doable: false, letters: String::new() },
            order: Background::default(),
            table: TableState::default(),
            beside: Beside::default(),
        }
    }
}

/// Up to this many tasks are put in order at once; more on a thread of its own.
const AT_ONCE: usize = 2_000;

impl Outstanding {
    /// Draws the view.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let order = self.order(ui, view);
        let Some(order) = order else {
            ui.label(body(text!("Putting the work in order…")));
            return;
        };
        self.head_ui(ui, &order, outbox);
        self.wanted_ui(ui, &order);
        if order.lines.is_empty() {
            ui.add_space(4.0 * GRID);
            ui.label(body(if self.wanted.letters.is_empty() && !self.wanted.only_doable {
                text!("Nothing outstanding. A survey that finds something puts its work here.")
            } else {
                text!("No outstanding work is like that.")
            }));
            return;
        }
        let (list, beside) = sides(ui, self.beside.is_open());
        side_ui(ui, list, "list", |ui| self.list_ui(ui, &order));
        side_ui(ui, beside, "work", |ui| self.beside.ui(ui, view, outbox));
    }

    fn list_ui(&mut self, ui: &mut Ui, order: &Order) {
        let table = Table { name: text!("Outstanding work"), columns: &columns(), row_height: 8.0 * GRID, sort: None };
        let rows = Lines { order };
        if let Some(TableAct::Open(row)) = table.ui(ui, &mut self.table, &rows)
            && let Some(Line::Task { part, task }) = order.lines.get(row)
        {
            self.choose(order, *part, *task);
        }
    }

    fn choose(&mut self, order: &Order, part: u32, task: u16) {
        if let Some((part, task)) = order.task(part, task) {
            self.beside.choose(part.part, task.key());
        }
    }

    fn order(&mut self, ui: &Ui, view: &View<'_>) -> Option<Arc<Order>> {
        let key = (view.answers.revision, view.rules.version, self.wanted.clone());
        let (logbook, answers, rules) = (Arc::clone(view.logbook), Arc::clone(view.answers), Arc::clone(view.rules));
        let wanted = self.wanted.clone();
        let is_small = view.answers.totals().tasks <= AT_ONCE;
        self.order.get(key, ui.ctx(), is_small, move || Order::of(&logbook, &answers, &rules, &wanted))
    }

    /// The one thing to do next.
    fn head_ui(&mut self, ui: &mut Ui, order: &Order, outbox: &mut Outbox) {
        let Some((part_at, task_at)) = order.next else { return };
        let Some((part, task)) = order.task(part_at, task_at) else { return };
        let line = text!("Next: {what}", what = task.title());
        let word = egui::RichText::new(line).font(TextRole::First.font()).color(ui.tokens().press);
        let response = ui.add(egui::Button::new(word).frame(false).wrap());
        if response.on_hover_text(text!("Shows how, what it takes, and marks it done")).clicked() {
            self.choose(order, part_at, task_at);
        }
        ui.horizontal_wrapped(|ui| {
            let title = format!("{}  {}", part.file.part.tag, order.logbook.title_of(&part.file));
            if crate::window::widgets::link_ui(ui, &title).clicked() {
                outbox.go(Page::Part(part.part));
            }
            hold_ui(ui, task.hold);
            ui.label(remark(ui, rows::takes_text(task)));
        });
        ui.add_space(2.0 * GRID);
    }

    fn wanted_ui(&mut self, ui: &mut Ui, order: &Order) {
        ui.horizontal_wrapped(|ui| {
            for grouping in Grouping::ALL {
                ui.selectable_value(&mut self.wanted.grouping, *grouping, grouping.label());
            }
            ui.add_space(3.0 * GRID);
            ui.checkbox(&mut self.wanted.only_doable, text!("Only what can start now"));
            let field = TextEdit::singleline(&mut self.wanted.letters)
                .hint_text(text!("Tag, part or work"))
                .desired_width(50.0 * GRID);
            let field = ui.add(field);
            field.widget_info(|| {
                egui::WidgetInfo::labeled(egui::Role::TextInput, true, text!("Search the outstanding work"))
            });
        });
        let totals = order.totals;
        ui.label(remark(
            ui,
            text!(
                "{all} pieces, {doable} can start now, {hours} at the bench",
                all = totals.tasks,
                doable = totals.doable,
                hours = hours_text(totals.minutes)
            ),
        ));
        ui.add_space(GRID);
    }
}
