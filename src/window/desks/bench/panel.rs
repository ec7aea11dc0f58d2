//! One piece of work: what to do and with what care, and how it goes on or ends.

use egui::{Rect, ScrollArea, Ui, UiBuilder};

use crate::assess::{PartAnswers, Task, TaskKey};
use crate::record::{PartId, WorkState};
use crate::text;
use crate::window::forms::work::{begin, wait};
use crate::window::forms::{Ending, WorkAct, WorkForm, guide_ui};
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::theme::GRID;
use crate::window::theme::marks::Mark;
use crate::window::widgets::{body, hold_ui, link_ui, mark_button, press_ui, remark, section_ui};

/// From this width on, points, what is looked at stands beside the list.
const BESIDE: f32 = 200.0 * GRID;
/// How wide it then is, points.
const PANEL: f32 = 100.0 * GRID;

/// Where the list goes and what is looked at: side by side where there is room for both, else the latter alone.
pub fn sides(ui: &Ui, is_open: bool) -> (Option<Rect>, Option<Rect>) {
    let room = ui.available_rect_before_wrap();
    if !is_open {
        return (Some(room), None);
    }
    if room.width() < BESIDE {
        return (None, Some(room));
    }
    let (list, beside) = room.split_left_right_at_x(room.right() - PANEL);
    (Some(list), Some(beside.with_min_x(beside.left() + 6.0 * GRID)))
}

/// Draws one of the sides, where it is on show.
pub fn side_ui(ui: &mut Ui, side: Option<Rect>, salt: &str, draw: impl FnOnce(&mut Ui)) {
    if let Some(side) = side {
        ui.scope_builder(UiBuilder::new().max_rect(side).id_salt(salt), draw);
    }
}

/// The piece of work that is looked at beside a list.
#[derive(Debug, Default)]
pub struct Beside {
    chosen: Option<(PartId, TaskKey)>,
    panel: Panel,
}

impl Beside {
    /// Looks at a piece.
    pub fn choose(&mut self, part: PartId, task: TaskKey) {
        *self = Self { chosen: Some((part, task)), panel: Panel::default() };
    }

    /// Opens the form for how a piece ended.
    pub fn end(&mut self, task: &Task, ending: Ending, view: &View<'_>) {
        self.choose(task.part, task.key());
        self.panel.end(task, ending, view);
    }

    /// Whether a piece is looked at.
    pub fn is_open(&self) -> bool {
        self.chosen.is_some()
    }

    /// Puts the piece away.
    pub fn close(&mut self) {
        self.chosen = None;
    }

    /// The part of the piece that is looked at.
    pub fn part(&self) -> Option<PartId> {
        self.chosen.as_ref().map(|(part, _)| *part)
    }

    /// The form that is filled in for it.
    pub fn form(&mut self) -> Option<&mut WorkForm> {
        self.panel.form()
    }

    /// Draws the piece.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let Some((part, key)) = &self.chosen else { return };
        let answers = view.answers.part(*part);
        let task = answers.and_then(|answers| answers.tasks.iter().find(|task| task.key() == *key));
        match answers.zip(task) {
            Some((answers, task)) => {
                if self.panel.ui(ui, answers, task, view, outbox) {
                    self.chosen = None;
                }
            }
            // It was done, waived or undone meanwhile.
            None => self.chosen = None,
        }
    }
}

/// What the panel keeps.
#[derive(Debug, Default)]
struct Panel {
    form: Option<WorkForm>,
}

impl Panel {
    /// The form that is filled in.
    fn form(&mut self) -> Option<&mut WorkForm> {
        self.form.as_mut()
    }

    /// Opens the form for how a task ended.
    fn end(&mut self, task: &Task, ending: Ending, view: &View<'_>) {
        self.form = Some(WorkForm::new(task, ending, view));
    }

    /// Draws the panel; `true` when it was put away or the work is at an end.
    fn ui(&mut self, ui: &mut Ui, answers: &PartAnswers, task: &Task, view: &View<'_>, outbox: &mut Outbox) -> bool {
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
            let first = view.answers.firsts(answers, task);
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
        if !task.doable && task.waits_for.is_empty() && task.elsewhere.is_empty() {
            ui.label(remark(ui, text!("It cannot be started: material is missing, or the part is not here.")));
        }
    }
}
