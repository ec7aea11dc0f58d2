//! Work on the part: what is outstanding, in order, and what was done, with its evidence.

use egui::Ui;

use super::about::{About, act_ui, day_text, wrong_ui};
use super::head::before_text;
use super::map::shown_ui;
use super::order::Orders;
use super::overhaul::Overhaul;
use crate::assess::outstanding::{Shown, shown};
use crate::assess::touched::{is_unstated, own_work};
use crate::assess::{Task, TaskKey};
use crate::counted;
use crate::paper::WorkSheet;
use crate::record::{Hold, Word, Work, WorkId, WorkState};
use crate::text;
use crate::text::say;
use crate::window::desks::touched::unstated_text;
use crate::window::forms::work::{Own, add_own, begin, change_own, take_up_again, wait};
use crate::window::forms::{Ending, WorkAct, WorkForm, guide_ui};
use crate::window::marked::Tie;
use crate::window::outbox::Outbox;
use crate::window::photographs::strip_ui;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, choice_ui, field_ui, hold_ui, link_ui, mark_ui, press_ui, remark, strong};

/// Done pieces shown before all are asked for.
const DONE: usize = 5;

/// What is open and half typed.
#[derive(Default)]
pub struct WorkList {
    /// The task whose guide is on show; the next one when nothing was chosen.
    open: Option<TaskKey>,
    form: Option<WorkForm>,
    by_hand: Option<ByHand>,
    shown: Option<WorkId>,
    shows_all_done: bool,
    orders: Orders,
    overhaul: Overhaul,
}

#[derive(Debug)]
struct ByHand {
    title: String,
    hold: Hold,
    own: Own,
}

impl WorkList {
    /// Shows a task's guide.
    pub fn open(&mut self, task: TaskKey) {
        self.open = Some(task);
    }

    /// Shows a record of work: its task while that is outstanding, else its evidence.
    pub fn show(&mut self, work: WorkId, about: &About<'_>) {
        if let Some(task) = about.answers.tasks.iter().find(|task| task.work == Some(work)) {
            self.open(task.key());
        } else {
            self.shown = Some(work);
            self.shows_all_done = true;
        }
    }

    /// The form that is being filled in.
    pub fn form(&mut self) -> Option<&mut WorkForm> {
        self.form.as_mut()
    }

    /// Draws the section.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let tasks = &about.answers.tasks;
        if self.form.as_ref().is_some_and(|form| !tasks.iter().any(|task| form.is_about(task))) {
            self.form = None;
        }
        if tasks.is_empty() {
            ui.label(body(text!("Nothing is outstanding on this part.")));
        } else {
            ui.horizontal_wrapped(|ui| {
                ui.label(remark(ui, totals_text(about)));
                if link_ui(ui, text!("Print the sheet…")).clicked() {
                    let sheet = WorkSheet::of_part(about.answers, about.view.answers, about.view.logbook);
                    outbox.print(page_name(about.tag()), sheet.to_html());
                }
            });
        }
        let next = tasks.iter().find(|task| task.doable).map(Task::key);
        for (at, task) in tasks.iter().enumerate() {
            ui.push_id(at, |ui| self.task_ui(ui, about, at, task, next.as_ref(), outbox));
        }
        unstated_ui(ui, about, outbox);
        self.by_hand_ui(ui, about, outbox);
        self.overhaul.ui(ui, about, outbox);
        self.done_ui(ui, about, outbox);
    }

    fn task_ui(
        &mut self,
        ui: &mut Ui,
        about: &About<'_>,
        at: usize,
        task: &Task,
        next: Option<&TaskKey>,
        outbox: &mut Outbox,
    ) {
        let key = task.key();
        let is_open = self.open.as_ref().or(next) == Some(&key);
        ui.add_space(GRID);
        ui.horizontal_wrapped(|ui| {
            hold_ui(ui, task.hold);
            let title = if is_open { strong(task.title()) } else { body(task.title()) };
            let response = ui.add(egui::Button::new(title.color(ui.tokens().ink)).frame(false).wrap());
            let name = text!("Work: {work}", work = task.title());
            response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, &name));
            if response.clicked() {
                self.open = Some(key);
            }
            ui.label(remark(ui, stand_text(task, about)));
        });
        if !is_open {
            return;
        }
        ui.indent("open task", |ui| {
            guide_ui(ui, task, about.view);
            if let Some(work) = task.work {
                ui.horizontal_wrapped(|ui| shown_ui(ui, about, Tie::Work(work), task.title(), outbox));
            }
            if self.form.as_ref().is_some_and(|form| form.is_about(task)) {
                ui.add_space(2.0 * GRID);
                self.form_ui(ui, about, task, outbox);
            } else {
                self.acts_ui(ui, about, task, outbox);
                let record = about.file.work.iter().find(|work| task.work == Some(work.id));
                own_ui(ui, about, record, outbox);
                // It stays on show, though it may no longer be the next.
                if self.orders.ui(ui, about, at, task, outbox) {
                    self.open = Some(task.key());
                }
            }
        });
    }

    fn acts_ui(&mut self, ui: &mut Ui, about: &About<'_>, task: &Task, outbox: &mut Outbox) {
        let (file, today, rules) = (about.file, about.view.today, about.view.rules);
        let named = |ui: &mut Ui, word: &str| {
            let response = press_ui(ui, word, "", None);
            let name = format!("{}: {}", word.trim_end_matches('…'), task.title());
            response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, &name));
            response.clicked()
        };
        ui.horizontal_wrapped(|ui| {
            if task.state == WorkState::Failed {
                if named(ui, text!("Take up again"))
                    && let Some(work) = file.work.iter().find(|work| task.work == Some(work.id))
                {
                    outbox.change(take_up_again(file, work, today, rules));
                }
                return;
            }
            if named(ui, text!("Done…")) {
                self.form = Some(WorkForm::new(task, Ending::Done, about.view));
            }
            if task.state != WorkState::Doing && named(ui, text!("Begin")) {
                outbox.change(begin(file, task, today, rules));
            }
            if task.state != WorkState::Waiting && named(ui, text!("Materials missing")) {
                outbox.change(wait(file, task, today, rules));
            }
            if named(ui, text!("Waive…")) {
                self.form = Some(WorkForm::new(task, Ending::Waived, about.view));
            }
            if named(ui, text!("Failed…")) {
                self.form = Some(WorkForm::new(task, Ending::Failed, about.view));
            }
        });
    }

    fn form_ui(&mut self, ui: &mut Ui, about: &About<'_>, task: &Task, outbox: &mut Outbox) {
        let Some(form) = &mut self.form else { return };
        match form.ui(ui, task, about.view, about.page(), outbox) {
            Some(WorkAct::Keep(change)) => {
                outbox.change(change);
                self.form = None;
                // The next piece comes up by itself.
                self.open = None;
            }
            Some(WorkAct::PutAway) => self.form = None,
            None => {}
        }
    }

    fn by_hand_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        ui.add_space(2.0 * GRID);
        let Some(by_hand) = &mut self.by_hand else {
            if link_ui(ui, text!("Add work of your own…")).clicked() {
                self.by_hand = Some(ByHand { title: String::new(), hold: Hold::Ready, own: Own::NEW });
            }
            return;
        };
        field_ui(ui, text!("What is to be done"), &mut by_hand.title, Some(120.0 * GRID));
        ui.horizontal_wrapped(|ui| {
            let holds: Vec<(Hold, &str)> = Hold::ALL.iter().map(|hold| (*hold, before_text(*hold))).collect();
            choice_ui(ui, text!("To be done"), &mut by_hand.hold, &holds, 60.0 * GRID);
            by_hand.own.ui(ui, None);
        });
        let (mut keep, mut away) = (false, false);
        ui.horizontal(|ui| {
            keep = press_ui(ui, text!("Add the work"), "", None).clicked();
            away = press_ui(ui, text!("Put it away"), "", None).clicked();
        });
        let title = by_hand.title.trim();
        if keep && title.is_empty() {
            wrong_ui(ui, text!("Say what is to be done."));
        } else if keep {
            outbox.change(add_own(about.file, title, by_hand.hold, by_hand.own, about.view.today));
            self.by_hand = None;
        } else if away {
            self.by_hand = None;
        }
    }

    fn done_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let mut done: Vec<&Work> = about.file.work.iter().filter(|work| !work.state.is_outstanding()).collect();
        if done.is_empty() {
            return;
        }
        done.sort_by_key(|work| std::cmp::Reverse(work.changed.order()));
        ui.add_space(3.0 * GRID);
        ui.label(strong(text!("Done so far")));
        let shown = if self.shows_all_done { done.len() } else { DONE };
        for work in done.iter().take(shown) {
            ui.push_id(work.id, |ui| self.done_line_ui(ui, about, work, outbox));
        }
        if done.len() > DONE {
            let word = if self.shows_all_done {
                text!("Fewer").to_owned()
            } else {
                text!("All {count} pieces", count = done.len())
            };
            if act_ui(ui, &word, &word) {
                self.shows_all_done = !self.shows_all_done;
            }
        }
    }

    fn done_line_ui(&mut self, ui: &mut Ui, about: &About<'_>, work: &Work, outbox: &mut Outbox) {
        let title = title_of(work, about);
        let is_shown = self.shown == Some(work.id);
        ui.horizontal_wrapped(|ui| {
            let tokens = ui.tokens();
            let (mark, colour) = match work.state {
                WorkState::Done => (Mark::Done, tokens.gate_passed),
                _ => (Mark::Away, tokens.ink_weak),
            };
            mark_ui(ui, mark, colour);
            let line = format!("{}: {title}", work.state.label());
            let response = ui.add(egui::Button::new(body(&line).color(tokens.ink)).frame(false).wrap());
            if response.clicked() {
                self.shown = if is_shown { None } else { Some(work.id) };
            }
            ui.label(remark(ui, evidence_text(work)));
            ui.label(remark(ui, shown_text(work, about)));
        });
        if !is_shown {
            return;
        }
        ui.indent("evidence", |ui| {
            for words in [&work.used, &work.reason, &work.note] {
                if !words.is_empty() {
                    ui.label(body(words));
                }
            }
            for words in evidence_lines(work, about) {
                ui.label(body(words));
            }
            match work.reversible {
                Some(true) => drop(ui.label(remark(ui, text!("It can be undone.")))),
                Some(false) => drop(ui.label(remark(ui, text!("It cannot be undone.")))),
                None => {}
            }
            // What failed is outstanding too, and asked about there.
            own_ui(ui, about, Some(work).filter(|work| work.state != WorkState::Failed), outbox);
            let marks =
                about.file.photos.iter().filter(|file| file.marks.iter().any(|mark| mark.work == Some(work.id)));
            strip_ui(ui, about.view, marks, outbox);
            if act_ui(ui, text!("Take up again"), &text!("Take up again: {work}", work = title)) {
                outbox.change(take_up_again(about.file, work, about.view.today, about.view.rules));
            }
        });
    }
}

/// What a piece in own words is and touches, to be changed where it stands.
fn own_ui(ui: &mut Ui, about: &About<'_>, work: Option<&Work>, outbox: &mut Outbox) {
    let Some((work, mut own)) = work.and_then(|work| Some((work, Own::of(work)?))) else { return };
    if own.ui(ui, Some(&title_of(work, about))) {
        outbox.change(change_own(about.file, work, own));
    }
}

/// The way to the list on which it is said what own work touched, while some does not say so.
fn unstated_ui(ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
    let unstated: Vec<&Work> = own_work(about.file).into_iter().filter(|work| is_unstated(work)).collect();
    let Some(first) = unstated.first() else { return };
    ui.add_space(2.0 * GRID);
    ui.horizontal_wrapped(|ui| {
        mark_ui(ui, Mark::PowerUnknown, ui.tokens().power_unknown);
        ui.label(body(unstated_text(unstated.len())));
        if link_ui(ui, text!("State it…")).clicked() {
            outbox.ask_touched(first.id);
        }
    });
}

/// What a page about a part is called: its tag, but for what no file name carries.
fn page_name(tag: &str) -> String {
    let safe: String = tag.chars().map(|letter| if letter.is_alphanumeric() { letter } else { '-' }).collect();
    format!("work-{safe}")
}

/// What a record of work is called.
pub fn title_of(work: &Work, about: &About<'_>) -> String {
    match about.view.rules.work(&work.rule) {
        Some(rule) => say(&rule.say).to_owned(),
        None if work.title.is_empty() => work.rule.clone(),
        None => work.title.clone(),
    }
}

fn totals_text(about: &About<'_>) -> String {
    let totals = about.answers.totals;
    let mut words = vec![counted!("{count} piece of work", "{count} pieces of work", totals.tasks)];
    words.push(text!("{count} can be started now", count = totals.doable));
    if totals.minutes > 0 {
        words.push(text!("{time} hands-on", time = time_text(totals.minutes)));
    }
    if totals.wait_hours > 0 {
        words.push(text!("{hours} h of drying and running", hours = totals.wait_hours));
    }
    words.join(" · ")
}

/// Minutes as people say them: "45 min", "2 h 30 min".
pub fn time_text(minutes: u32) -> String {
    match (minutes / 60, minutes % 60) {
        (0, minutes) => text!("{minutes} min", minutes = minutes),
        (hours, 0) => text!("{hours} h", hours = hours),
        (hours, minutes) => text!("{hours} h {minutes} min", hours = hours, minutes = minutes),
    }
}

fn stand_text(task: &Task, about: &About<'_>) -> String {
    let mut words = Vec::new();
    match task.state {
        WorkState::Doing => words.push(text!("under way").to_owned()),
        WorkState::Waiting => words.push(text!("waits for materials").to_owned()),
        WorkState::Failed => words.push(text!("failed, to be settled").to_owned()),
        _ => {}
    }
    if task.minutes() > 0 {
        words.push(time_text(task.minutes()));
    }
    let mut first = about.view.answers.firsts(about.answers, task);
    if !first.is_empty() {
        let more = first.len().saturating_sub(2);
        first.truncate(2);
        let mut said = text!("after: {work}", work = first.join("; "));
        if more > 0 {
            said.push_str(&counted!(" and {count} more", " and {count} more", more));
        }
        words.push(said);
    } else if task.doable && task.state == WorkState::Open {
        words.push(text!("can be started now").to_owned());
    }
    words.join(" · ")
}

/// Whether done work was shown to have done its part.
fn shown_text(work: &Work, about: &About<'_>) -> String {
    match shown(work, about.answers, about.view.rules) {
        Some(Shown::Proven) => text!("proven").to_owned(),
        Some(Shown::Unproven(proofs)) => {
            let proofs: Vec<&str> = proofs.iter().map(|rule| say(&rule.say)).collect();
            text!("to be shown by: {proofs}", proofs = proofs.join(", "))
        }
        Some(Shown::ByLook) | None => String::new(),
    }
}

/// Material that went into it, and readings that show it.
fn evidence_lines(work: &Work, about: &About<'_>) -> Vec<String> {
    let material = |id| about.view.logbook.materials.iter().find(move |material| material.id == id);
    let used = about.file.uses.iter().filter(|used| used.work == work.id).filter_map(|used| {
        let material = material(used.material)?;
        Some(text!(
            "Used: {amount} {unit} of {material}",
            amount = used.amount,
            unit = material.unit,
            material = material.name
        ))
    });
    let read = about.file.readings.iter().filter(|reading| reading.work == Some(work.id));
    let read = read.map(|reading| format!("{}: {} {}", reading.quantity, reading.value, reading.unit));
    used.chain(read).collect()
}

fn evidence_text(work: &Work) -> String {
    let mut words = vec![day_text(work.changed.on)];
    if !work.who.is_empty() {
        words.push(work.who.clone());
    }
    words.extend(work.minutes.map(time_text));
    words.join(" · ")
}
