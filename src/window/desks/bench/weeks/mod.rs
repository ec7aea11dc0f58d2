//! Weeks ahead: every piece on a calendar, machine by machine, with each machine's longest path and expected date.

mod calendar;
mod lines;
mod machine;

use std::sync::{Arc, OnceLock};

use egui::Ui;

use self::calendar::{Calendar, Horizon};
use self::lines::{Line, Plan, Wanted};
use self::machine::MachinePanel;
use super::panel::{Beside, side_ui, sides};
use crate::assess::schedule::{Ground, Item, Terms};
use crate::record::{MachineId, Word};
use crate::text;
use crate::window::background::Background;
use crate::window::desks::part_sheet::{Section, Spot};
use crate::window::forms::HoursField;
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::settings::{Hours, MOST_DELIVERY_DAYS, MOST_WEEK_MINUTES};
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{Table, TableAct, TableState, body, field_ui, first_ui, remark, small, strong};

/// Up to this many tasks are scheduled at once; more on a thread of its own.
const AT_ONCE: usize = 500;

/// Below this height, points, the calendar needs what its head would take.
const LOW: f32 = 110.0 * GRID;

/// What the view keeps.
pub struct Weeks {
    hours: HoursField,
    /// Days until materials come, as they are typed.
    delivery: Option<String>,
    horizon: Horizon,
    only_longest: bool,
    plan: Background<(u64, u64, Wanted), Result<Plan, String>>,
    /// What plans of this revision and rules go by, once the first was made.
    ground: ((u64, u64), Arc<OnceLock<Ground>>),
    table: TableState,
    pub beside: Beside,
    /// The machine that is looked at.
    machine: Option<MachineId>,
    panel: MachinePanel,
}

impl Default for Weeks {
    fn default() -> Self {
        Self {
            hours: HoursField::default(),
            delivery: None,
            horizon: Horizon::Month,
            only_longest: false,
            plan: Background::default(),
            ground: Default::default(),
            table: TableState::default(),
            beside: Beside::default(),
            machine: None,
            panel: MachinePanel::default(),
        }
    }
}

impl Weeks {
    /// Draws the view.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let is_low = ui.available_height() < LOW;
        self.terms_ui(ui, view.settings.hours, outbox);
        let Some(plan) = self.plan(ui, view) else {
            ui.label(body(text!("Laying the work out…")));
            return;
        };
        let plan = match &*plan {
            Ok(plan) => plan,
            Err(circle) => {
                ui.label(body(circle).color(ui.tokens().power_unknown));
                return;
            }
        };
        if plan.made.machines.is_empty() {
            ui.label(body(text!("No machine is planned yet.")));
            return;
        }
        if is_low {
            // The calendar has what room there is; how to read it is told where there is more.
            ui.label(strong(plan.summary()));
        } else {
            first_ui(ui, plan.summary());
            ui.label(remark(ui, plan.made.pace.sentence()));
            ui.label(remark(
                ui,
                text!("Full bar: at the bench. Line after it: dries or runs by itself. Tall bar with a stem: on its machine’s longest path."),
            ));
        }
        let (list, beside) = sides(ui, self.beside.is_open() || self.machine.is_some());
        side_ui(ui, list, "list", |ui| self.list_ui(ui, plan, outbox));
        side_ui(ui, beside, "beside", |ui| self.beside_ui(ui, plan, view, outbox));
    }

    fn terms_ui(&mut self, ui: &mut Ui, hours: Hours, outbox: &mut Outbox) {
        ui.horizontal_wrapped(|ui| {
            let label = text!("Hours a week");
            if let Some(week_minutes) = self.hours.ui(ui, label, hours.week_minutes, MOST_WEEK_MINUTES) {
                outbox.hours = Some(Hours { week_minutes, ..hours });
            }
            if let Some(delivery_days) = self.delivery_ui(ui, hours.delivery_days) {
                outbox.hours = Some(Hours { delivery_days, ..hours });
            }
            ui.add_space(2.0 * GRID);
            for horizon in Horizon::ALL {
                ui.selectable_value(&mut self.horizon, *horizon, horizon.label());
            }
            ui.checkbox(&mut self.only_longest, text!("Only the longest paths"));
        });
    }

    fn delivery_ui(&mut self, ui: &mut Ui, days: u32) -> Option<u32> {
        let mut typed = self.delivery.clone().unwrap_or_else(|| days.to_string());
        let field = field_ui(ui, text!("Days until materials come"), &mut typed, Some(40.0 * GRID));
        if field.changed() {
            self.delivery = Some(typed);
        }
        let told = self.delivery.as_ref()?.trim().parse().ok().filter(|days| *days <= MOST_DELIVERY_DAYS);
        if field.lost_focus() {
            self.delivery = None;
        }
        if told.is_none() {
            let wrong = text!("whole days, at most {most}", most = MOST_DELIVERY_DAYS);
            ui.label(small(wrong).color(ui.tokens().power_unknown));
        }
        told.filter(|told| *told != days)
    }

    fn plan(&mut self, ui: &Ui, view: &View<'_>) -> Option<Arc<Result<Plan, String>>> {
        let Hours { week_minutes, delivery_days, .. } = view.settings.hours;
        let terms = Terms { minutes_per_week: week_minutes, delivery_days };
        let wanted = Wanted { terms, only_longest: self.only_longest };
        let (logbook, answers, rules) = (Arc::clone(view.logbook), Arc::clone(view.answers), Arc::clone(view.rules));
        let is_small = answers.totals().tasks <= AT_ONCE;
        let of = (answers.revision, rules.version);
        if self.ground.0 != of {
            self.ground = (of, Arc::default());
        }
        let ground = Arc::clone(&self.ground.1);
        // It takes less than a look at the clock: a newer figure lets go of the one before, and needs no stop.
        self.plan.get_newest((of.0, of.1, wanted), ui.ctx(), is_small, move |_| {
            let ground = ground.get_or_init(|| Ground::of(&logbook, &rules));
            Plan::of(answers, Arc::clone(&logbook), ground, wanted)
        })
    }

    fn list_ui(&mut self, ui: &mut Ui, plan: &Plan, outbox: &mut Outbox) {
        let calendar = Calendar::new(plan.answers.today, self.horizon, plan.end_minutes);
        let columns = lines::columns(ui);
        let table = Table { name: text!("Work ahead"), columns: &columns, row_height: 8.0 * GRID, sort: None };
        let rows = lines::Rows { plan, calendar };
        let Some(TableAct::Open(row)) = table.ui(ui, &mut self.table, &rows) else { return };
        match plan.lines.get(row) {
            Some(Line::Machine(at)) => {
                self.beside.close();
                self.machine = Some(plan.made.machines[*at].machine);
                self.panel = MachinePanel::default();
            }
            Some(Line::Piece(at)) => self.open_piece(plan, &plan.made.planned[*at].item, outbox),
            None => {}
        }
    }

    fn open_piece(&mut self, plan: &Plan, item: &Item, outbox: &mut Outbox) {
        match item {
            Item::Work { part, task } => {
                let part = &plan.answers.parts[*part];
                self.machine = None;
                self.beside.choose(part.part, part.tasks[*task].key());
            }
            Item::PartProof { part, .. } => {
                outbox.show(plan.answers.parts[*part].part, Some(Spot::Section(Section::Proofs)));
            }
            Item::Fit { machine, .. } | Item::MachineProof { machine, .. } => {
                outbox.go(Page::Machine(plan.answers.machines[*machine].machine));
            }
        }
    }

    fn beside_ui(&mut self, ui: &mut Ui, plan: &Plan, view: &View<'_>, outbox: &mut Outbox) {
        let Some(machine) = self.machine else {
            self.beside.ui(ui, view, outbox);
            return;
        };
        let known = view.logbook.machine(machine).zip(plan.made.machines.iter().find(|own| own.machine == machine));
        let is_away = known.is_none_or(|(file, own)| self.panel.ui(ui, file, own, plan, outbox));
        if is_away {
            self.machine = None;
        }
    }
}
