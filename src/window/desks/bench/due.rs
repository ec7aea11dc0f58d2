//! What should be looked at or proven again, and by when.

use std::sync::Arc;

use chrono::{Days, NaiveDate};
use egui::{Id, Ui};

use crate::assess::inspections::{Due, DueWhat, due};
use crate::record::Logbook;
use crate::rules::Rules;
use crate::text::say;
use crate::window::background::Background;
use crate::window::desks::part_sheet::{Section, Spot};
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{Cells, Column, Rows, Table, TableAct, TableState, Width, body, first_ui};
use crate::{counted, text};

/// How far ahead can be looked, days.
const AHEAD_DAYS: [u32; 4] = [0, 30, 90, 365];

/// What the view keeps.
pub struct DueList {
    days: u32,
    list: Background<(u64, u64, u32), List>,
    table: TableState,
}

impl Default for DueList {
    fn default() -> Self {
        Self { days: 90, list: Background::default(), table: TableState::default() }
    }
}

/// What is due, with what it was found in.
struct List {
    logbook: Arc<Logbook>,
    rules: Arc<Rules>,
    today: NaiveDate,
    due: Vec<Due>,
    overdue: usize,
}

impl DueList {
    /// Draws the view.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        ui.horizontal_wrapped(|ui| {
            for days in AHEAD_DAYS {
                let word = match days {
                    0 => text!("Due now").to_owned(),
                    days => text!("Within {days} days", days = days),
                };
                ui.selectable_value(&mut self.days, days, word);
            }
        });
        let Some(list) = self.list(ui, view) else {
            ui.label(body(text!("Looking what is due…")));
            return;
        };
        if list.due.is_empty() {
            ui.label(body(text!("Nothing is due by then.")));
            return;
        }
        let all = counted!("{count} to look at or to run again", "{count} to look at or to run again", list.due.len());
        first_ui(ui, text!("{all}, {now} of them due now", all = all, now = list.overdue));
        let table = Table { name: text!("What is due"), columns: &columns(), row_height: 8.0 * GRID, sort: None };
        if let Some(TableAct::Open(row)) = table.ui(ui, &mut self.table, &*list)
            && let Some(due) = list.due.get(row)
        {
            open(due, outbox);
        }
    }

    fn list(&mut self, ui: &Ui, view: &View<'_>) -> Option<Arc<List>> {
        let (logbook, answers, rules) = (Arc::clone(view.logbook), Arc::clone(view.answers), Arc::clone(view.rules));
        let (days, is_small) = (self.days, logbook.parts.len() <= 500);
        self.list.get((answers.revision, rules.version, days), ui.ctx(), is_small, move || {
            let today = answers.today;
            let by = today.checked_add_days(Days::new(u64::from(days))).unwrap_or(NaiveDate::MAX);
            let due = due(&answers, &logbook, &rules, by);
            let overdue = due.iter().filter(|due| due.on <= today).count();
            List { logbook, rules, today, due, overdue }
        })
    }
}

/// Goes to where it is looked at or proven.
fn open(due: &Due, outbox: &mut Outbox) {
    let spot = match due.what {
        DueWhat::Survey { .. } | DueWhat::FirstSurvey => Spot::Survey,
        DueWhat::Watched { .. } => Spot::Section(Section::Condition),
        DueWhat::Proof { .. } => Spot::Section(Section::Proofs),
    };
    match (due.part, due.machine) {
        (Some(part), _) => outbox.show(part, Some(spot)),
        (None, Some(machine)) => outbox.go(Page::Machine(machine)),
        (None, None) => {}
    }
}

const BY: usize = 0;
const STAND: usize = 1;
const WHAT: usize = 2;
const SOURCE: usize = 3;

fn columns() -> [Column<'static>; 4] {
    let column = |title, width, shown_from| Column { title, width, sorts: false, shown_from };
    [
        column(text!("By"), Width::Points(24.0 * GRID), 0.0),
        column(text!("Stands"), Width::Points(26.0 * GRID), 0.0),
        column(text!("What to look at or run again"), Width::Share(4.0), 0.0),
        column(text!("Why so soon"), Width::Share(1.5), 240.0 * GRID),
    ]
}

/// Where the interval comes from; empty where no table gives it.
fn source(due: &Due) -> &str {
    match &due.what {
        DueWhat::Survey { rule: Some(rule), .. } => say(&rule.source),
        DueWhat::Proof { rule } => say(&rule.source),
        _ => "",
    }
}

impl List {
    fn stand(&self, due: &Due) -> (Mark, &'static str) {
        match due.on {
            on if on < self.today => (Mark::Heed, text!("overdue")),
            on if on == self.today => (Mark::Heed, text!("today")),
            _ => (Mark::Forth, text!("ahead")),
        }
    }
}

impl Rows for List {
    fn count(&self) -> usize {
        self.due.len()
    }

    fn key(&self, row: usize) -> Id {
        let Due { part, machine, what, .. } = &self.due[row];
        let which = match what {
            DueWhat::Survey { .. } | DueWhat::FirstSurvey => String::new(),
            DueWhat::Watched { finding } => finding.uuid().to_string(),
            DueWhat::Proof { rule } => rule.name.clone(),
        };
        Id::unique((part, machine, self.due[row].name(), which))
    }

    fn name(&self, row: usize) -> String {
        let due = &self.due[row];
        format!("{}, {}: {}", due.on, self.stand(due).1, due.sentence(&self.logbook, &self.rules))
    }

    fn draw(&self, row: usize, cells: &mut Cells<'_>) {
        let due = &self.due[row];
        let tokens = cells.canvas().tokens();
        let (mark, stand) = self.stand(due);
        let colour = if due.on <= self.today { tokens.power_unknown } else { tokens.ink_weak };
        cells.text_in(BY, &due.on.to_string(), TextRole::Body, tokens.ink);
        cells.mark(STAND, mark, stand, colour);
        cells.text_in(WHAT, &due.sentence(&self.logbook, &self.rules), TextRole::Body, tokens.ink);
        cells.remark(SOURCE, source(due));
    }
}
