//! Tonight: the work that brings most in the hours there are, in the order in which to do it, and why.

use std::sync::Arc;

use egui::{Button, ScrollArea, Ui, WidgetInfo};

use super::panel::{Beside, side_ui, sides};
use super::rows::takes_text;
use crate::assess::cautions::{self, JobCautions};
use crate::assess::outstanding::hours_text;
use crate::assess::tonight::{Chosen, Evening, Missed, PATIENCE, Tonight, Why, tonight};
use crate::assess::{Answers, PartAnswers, Patience, Task};
use crate::paper::WorkSheet;
use crate::record::{Logbook, WorkState};
use crate::rules::Rules;
use crate::text::say;
use crate::window::background::Background;
use crate::window::forms::work::begin;
use crate::window::forms::{Ending, HoursField};
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::settings::{Hours, MOST_TONIGHT_MINUTES};
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, caution_ui, first_ui, hold_ui, link_ui, press_ui, remark, section_ui, strong};
use crate::{counted, text};

/// Lines are no wider than this, points.
const COLUMN: f32 = 240.0 * GRID;

/// What the view keeps.
#[derive(Default)]
pub struct TonightView {
    hours: HoursField,
    plan: Background<(u64, u64, Evening), Plan>,
    pub beside: Beside,
}

/// A plan with what it was made of.
struct Plan {
    answers: Arc<Answers>,
    logbook: Arc<Logbook>,
    rules: Arc<Rules>,
    evening: Evening,
    tonight: Tonight,
}

impl Plan {
    fn task(&self, part_at: usize, task: usize) -> (&PartAnswers, &Task) {
        let part = &self.answers.parts[part_at];
        (part, &part.tasks[task])
    }

    /// A piece with its part: "Cut the cell out, 0042".
    fn named(&self, part_at: usize, task: usize) -> String {
        let (part, task) = self.task(part_at, task);
        format!("{}, {}", task.title(), part.file.part.tag)
    }
}

impl TonightView {
    /// Draws the view.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let hours = view.settings.hours;
        ui.horizontal_wrapped(|ui| {
            let label = text!("Hours tonight");
            let told = self.hours.ui(ui, label, hours.tonight_minutes, MOST_TONIGHT_MINUTES);
            if let Some(tonight_minutes) = told {
                outbox.hours = Some(Hours { tonight_minutes, ..hours });
            }
            let mut help = hours.help;
            if ui.checkbox(&mut help, text!("Somebody is there to help")).changed() {
                outbox.hours = Some(Hours { help, ..hours });
            }
        });
        let plan = self.plan(ui, view);
        if self.plan.is_running() {
            ui.horizontal_wrapped(|ui| {
                ui.label(body(text!("Working it out…")));
                if press_ui(ui, text!("Stop"), text!("Shows the best that was found so far"), None).clicked() {
                    self.plan.stop();
                }
            });
        }
        let Some(plan) = plan else { return };
        let (list, beside) = sides(ui, self.beside.is_open());
        side_ui(ui, list, "list", |ui| self.list_ui(ui, &plan, view, outbox));
        side_ui(ui, beside, "work", |ui| self.beside.ui(ui, view, outbox));
    }

    fn plan(&mut self, ui: &Ui, view: &View<'_>) -> Option<Arc<Plan>> {
        let Hours { tonight_minutes: minutes, help, .. } = view.settings.hours;
        let evening = Evening { minutes, help };
        let (logbook, answers, rules) = (Arc::clone(view.logbook), Arc::clone(view.answers), Arc::clone(view.rules));
        // Weighing may take a second even for little work.
        self.plan.get_newest((answers.revision, rules.version, evening), ui.ctx(), false, move |stop| {
            let patience = Patience::until(stop, PATIENCE);
            let tonight = tonight(&answers, &logbook, &rules, evening, patience);
            Plan { answers, logbook, rules, evening, tonight }
        })
    }

    fn list_ui(&mut self, ui: &mut Ui, plan: &Plan, view: &View<'_>, outbox: &mut Outbox) {
        let Plan { tonight, evening, .. } = plan;
        ScrollArea::vertical().id_salt("tonight").auto_shrink(false).show(ui, |ui| {
            ui.set_max_width(ui.available_width().min(COLUMN));
            if tonight.chosen.is_empty() {
                let nothing = text!("Nothing that can be done fits {time}.", time = hours_text(evening.minutes));
                ui.label(body(nothing));
            } else {
                let pieces = counted!("{count} piece of work", "{count} pieces of work", tonight.chosen.len());
                first_ui(ui, text!("{pieces} in {time}", pieces = pieces, time = hours_text(tonight.minutes)));
                ui.horizontal_wrapped(|ui| {
                    ui.label(remark(ui, sums_text(plan)));
                    if link_ui(ui, text!("Print the sheet…")).clicked() {
                        let Plan { answers, logbook, rules, .. } = plan;
                        let sheet = WorkSheet::of_evening(tonight, *evening, answers, logbook, rules);
                        outbox.print(text!("evening-{day}", day = answers.today), sheet.to_html());
                    }
                });
            }
            let mut sitting = None;
            for (at, chosen) in tonight.chosen.iter().enumerate() {
                let (_, task) = plan.task(chosen.part_at, chosen.task);
                if sitting != Some(task.sitting()) {
                    sitting = Some(task.sitting());
                    section_ui(ui, sitting_text(plan, task.sitting()));
                    let tasks = tonight.chosen.iter().map(|chosen| plan.task(chosen.part_at, chosen.task).1);
                    for caution in cautions::of_sitting(tasks.filter(|other| other.sitting() == task.sitting())) {
                        caution_ui(ui, &caution);
                    }
                }
                ui.push_id(at, |ui| self.piece_ui(ui, plan, at, chosen, view, outbox));
            }
            waits_ui(ui, plan);
            self.missed_ui(ui, plan);
            ui.add_space(8.0 * GRID);
        });
    }

    fn piece_ui(&mut self, ui: &mut Ui, plan: &Plan, at: usize, chosen: &Chosen, view: &View<'_>, outbox: &mut Outbox) {
        let (part, task) = plan.task(chosen.part_at, chosen.task);
        ui.horizontal_wrapped(|ui| {
            ui.label(strong(format!("{}", at + 1)));
            hold_ui(ui, task.hold);
            self.title_ui(ui, plan, chosen.part_at, chosen.task);
            let title = format!("{}  {}", part.file.part.tag, plan.logbook.title_of(&part.file));
            if link_ui(ui, &title).clicked() {
                outbox.go(Page::Part(part.part));
            }
            ui.label(remark(ui, takes_text(task)));
            self.act_ui(ui, plan, chosen, view, outbox);
        });
        ui.indent("why", |ui| {
            for caution in JobCautions::listed(task).first {
                caution_ui(ui, &caution);
            }
            // That work of one sitting stands together is seen from the list.
            let why = chosen.why.iter().filter(|why| !matches!(why, Why::SameSitting { .. }));
            let why: Vec<String> = why.map(|why| why.sentence(&plan.logbook)).collect();
            ui.label(remark(ui, why.join(" ")));
        });
        ui.add_space(GRID);
    }

    /// A piece's title; a press shows how it is done.
    fn title_ui(&mut self, ui: &mut Ui, plan: &Plan, part_at: usize, task_at: usize) {
        let (part, task) = plan.task(part_at, task_at);
        let response = ui.add(Button::new(body(task.title()).color(ui.tokens().press)).frame(false).wrap());
        let name = text!("How: {work}", work = plan.named(part_at, task_at));
        response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
        if response.clicked() {
            self.beside.choose(part.part, task.key());
        }
    }

    /// The next act: begin, or say that it is done.
    fn act_ui(&mut self, ui: &mut Ui, plan: &Plan, chosen: &Chosen, view: &View<'_>, outbox: &mut Outbox) {
        let (part, task) = plan.task(chosen.part_at, chosen.task);
        let named = plan.named(chosen.part_at, chosen.task);
        let is_begun = task.state == WorkState::Doing;
        let word = if is_begun { text!("Done…") } else { text!("Begin") };
        let response = press_ui(ui, word, "", None);
        let name = format!("{}: {named}", word.trim_end_matches('…'));
        response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
        if response.clicked() && is_begun {
            self.beside.end(task, Ending::Done, view);
        } else if response.clicked() {
            outbox.change(begin(&part.file, task, view.today, view.rules));
        }
        if is_begun {
            ui.label(remark(ui, text!("under way")));
        }
    }

    fn missed_ui(&mut self, ui: &mut Ui, plan: &Plan) {
        if plan.tonight.missed.is_empty() {
            return;
        }
        section_ui(ui, text!("With more time"));
        for (at, Missed { part_at, task, short, .. }) in plan.tonight.missed.iter().enumerate() {
            ui.push_id(("missed", at), |ui| {
                ui.horizontal_wrapped(|ui| {
                    self.title_ui(ui, plan, *part_at, *task);
                    let (part, _) = plan.task(*part_at, *task);
                    ui.label(remark(ui, &part.file.part.tag));
                    ui.label(remark(ui, text!("{time} lacking", time = hours_text(*short))));
                });
            });
        }
    }
}

/// What is left over of the time, and how sure the choice is.
fn sums_text(plan: &Plan) -> String {
    let Plan { tonight, evening, .. } = plan;
    let mut words = vec![text!("{time} left over", time = hours_text(evening.minutes - tonight.minutes))];
    if !tonight.is_best() {
        words.push(text!(
            "looking was broken off: another choice may be worth up to {bound} where this one is worth {worth}",
            bound = tonight.bound,
            worth = tonight.worth
        ));
    }
    words.join(" · ")
}

/// A sitting with the minutes that setting up for it takes.
fn sitting_text(plan: &Plan, name: &str) -> String {
    let Some(place) = plan.rules.sittings.iter().position(|sitting| sitting.name == name) else {
        return text!("Work of its own").to_owned();
    };
    let said = say(&plan.rules.sittings[place].say);
    match plan.tonight.set_ups.iter().find(|(known, _)| *known == place) {
        Some((_, minutes)) if *minutes > 0 => {
            text!("{sitting} ({minutes} min to set up)", sitting = said, minutes = minutes)
        }
        _ => said.to_owned(),
    }
}

/// What dries or runs by itself meanwhile and afterwards.
fn waits_ui(ui: &mut Ui, plan: &Plan) {
    let tasks = plan.tonight.chosen.iter().map(|chosen| (chosen, plan.task(chosen.part_at, chosen.task).1));
    let waiting: Vec<_> = tasks.filter(|(_, task)| task.wait_hours() > 0).collect();
    if waiting.is_empty() {
        return;
    }
    section_ui(ui, text!("Runs by itself"));
    for (chosen, task) in waiting {
        let named = plan.named(chosen.part_at, chosen.task);
        ui.label(body(text!("{work}: {hours} h that need nobody", work = named, hours = task.wait_hours())));
    }
}
