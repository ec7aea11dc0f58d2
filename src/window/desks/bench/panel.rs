//! One piece of work: what to do and with what care, and how it goes on or ends.

use egui::{ScrollArea, Ui};

use crate::assess::{PartAnswers, Task};
use crate::record::WorkState;
use crate::text;
use crate::window::forms::work::{begin, wait};
use crate::window::forms::{Ending, WorkAct, WorkForm, guide_ui};
use crate::window::outbox::{KeptFile, Outbox, View};
use crate::window::page::Page;
use crate::window::theme::GRID;
use crate::window::theme::marks::Mark;
use crate::window::widgets::{body, hold_ui, link_ui, mark_button, press_ui, remark, section_ui};

/// What the panel keeps.
#[derive(Debug, Default)]
pub struct Panel {
    form: Option<WorkForm>,
}

impl Panel {
    /// Takes photographs that were copied into the logbook for the form.
    pub fn kept(&mut self, files: Vec<KeptFile>) {
        if let Some(form) = &mut self.form {
            form.kept(files);
        }
    }

    /// Opens the form for how a task ended.
    fn end(&mut self, task: &Task, ending: Ending, view: &View<'_>) {
        self.form = Some(WorkForm::new(task, ending, view));
    }

    /// Draws the panel; `true` when it was put away or the work is at an end.
    pub fn ui(
        &mut self,
        ui: &mut Ui,
        answers: &PartAnswers,
        task: &Task,
        view: &View<'_>,
        outbox: &mut Outbox,
    ) -> bool {
        let mut is_over = false;
        ui.horizontal(|ui| {
            is_over = mark_button(ui, Mark::Away, text!("Put the work away")).clicked();
            let title = format!("{}  {}", answers.file.part.tag, view.logbook.title_of(&answers.file));
            if link_ui(ui, &title).clicked() {
                outbox.go(Page::Part(answers.part));
            }
        });
        ScrollArea::vertical().id_salt("work").auto_shrink(false).show(ui, |ui| {
            section_ui(ui, task.title());
            hold_ui(ui, task.hold);
            let first: Vec<&str> =
                task.waits_for.iter().filter_map(|at| answers.tasks.get(usize::from(*at)).map(Task::title)).collect();
            if !first.is_empty() {
                ui.label(body(text!("First: {work}", work = first.join("; "))));
            }
            ui.add_space(GRID);
            if self.form.is_none() {
                self.acts_ui(ui, answers, task, view, outbox);
            }
            match self.form.as_mut().and_then(|form| form.ui(ui, task, view, Page::Bench, outbox)) {
                Some(WorkAct::Keep(change)) => {
                    outbox.change(change);
                    is_over = true;
                }
                Some(WorkAct::PutAway) => self.form = None,
                None => {}
            }
            ui.add_space(2.0 * GRID);
            guide_ui(ui, task, view);
        });
        is_over
    }

    fn acts_ui(&mut self, ui: &mut Ui, answers: &PartAnswers, task: &Task, view: &View<'_>, outbox: &mut Outbox) {
        ui.horizontal_wrapped(|ui| {
            if press_ui(ui, text!("Done…"), text!("Asks for the evidence"), None).clicked() {
                self.end(task, Ending::Done, view);
            }
            if task.state != WorkState::Doing && press_ui(ui, text!("Begin"), "", None).clicked() {
                outbox.change(begin(&answers.file, task, view.today, view.rules));
            }
            if task.state != WorkState::Waiting && link_ui(ui, text!("Material is missing")).clicked() {
                outbox.change(wait(&answers.file, task, view.today, view.rules));
            }
            if link_ui(ui, text!("Leave it, with a reason…")).clicked() {
                self.end(task, Ending::Waived, view);
            }
            if link_ui(ui, text!("It failed…")).clicked() {
                self.end(task, Ending::Failed, view);
            }
        });
        if !task.doable && task.waits_for.is_empty() {
            ui.label(remark(ui, text!("It cannot be started: material is missing, or the part is not here.")));
        }
    }
}
