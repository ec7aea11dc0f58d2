//! Orders by hand: a piece of work is put behind another one, on this part or on another.

use egui::Ui;

use super::about::{About, act_ui, wrong_ui};
use crate::assess::outstanding::TaskPlace;
use crate::assess::{Task, TaskKey};
use crate::record::{Change, PartFile, WorkAfter, WorkId};
use crate::text;
use crate::text::say;
use crate::window::forms::work::put_behind;
use crate::window::outbox::Outbox;
use crate::window::theme::GRID;
use crate::window::widgets::{Asking, Pick, Picker, remark};

/// What is being chosen.
#[derive(Default)]
pub struct Orders {
    picking: Option<(TaskKey, Picker<TaskPlace>)>,
    /// Why the last choice cannot be.
    wrong: String,
}

impl Orders {
    /// Draws the orders of one task, which stands at `at` in its part's list; `true` when one is being chosen.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, at: usize, task: &Task, outbox: &mut Outbox) -> bool {
        for order in own_orders(about.file, task) {
            let first = name_of(about, order.after);
            ui.horizontal_wrapped(|ui| {
                ui.label(remark(ui, text!("By hand after: {work}", work = first)));
                if act_ui(ui, text!("Strike"), &text!("Strike the order after: {work}", work = first)) {
                    let mut change = Change::new(text!("Strike an order on {tag}", tag = about.tag()));
                    change.remove(order.id);
                    outbox.change(change);
                }
            });
        }
        let key = task.key();
        if self.picking.as_ref().is_some_and(|(of, _)| *of == key) {
            self.pick_ui(ui, about, at, task, outbox);
        } else if act_ui(ui, text!("Put it behind another piece…"), &text!("Put behind: {work}", work = task.title()))
        {
            self.wrong.clear();
            self.picking = Some((key, Picker::ready()));
        }
        self.picking.is_some()
    }

    fn pick_ui(&mut self, ui: &mut Ui, about: &About<'_>, at: usize, task: &Task, outbox: &mut Outbox) {
        let Some((_, picker)) = &mut self.picking else { return };
        let (answers, own) = (about.view.answers, about.file.part.id);
        let choices = || {
            let said = |part: &crate::assess::PartAnswers, place: usize| {
                let title = about.view.logbook.title_of(&part.file);
                ((part.part, place as u16), format!("{}, {} {title}", part.tasks[place].title(), part.file.part.tag))
            };
            // This part's own work first.
            let here = (0..about.answers.tasks.len()).filter(|place| *place != at);
            let here = here.map(|place| said(about.answers, place));
            let others = answers.parts.iter().filter(|part| part.part != own);
            let others = others.flat_map(|part| (0..part.tasks.len()).map(|place| said(part, place)));
            here.chain(others).collect::<Vec<_>>()
        };
        let asking = Asking::one(text!("What is done first"));
        let picked = picker.ui(ui, asking, (answers.revision, own, at), choices);
        if !self.wrong.is_empty() {
            wrong_ui(ui, &self.wrong);
        }
        match picked {
            Some(Pick::One(first)) => match self::order(about, (own, at as u16), task, first) {
                Ok(change) => {
                    outbox.change(change);
                    self.picking = None;
                }
                Err(wrong) => self.wrong = wrong,
            },
            Some(_) => self.picking = None,
            None => {}
        }
        ui.add_space(GRID);
    }
}

/// The order, or why it cannot be.
fn order(about: &About<'_>, later: TaskPlace, task: &Task, first: TaskPlace) -> Result<Change, String> {
    let answers = about.view.answers;
    if let Some(way) = answers.way_back(later, first) {
        let named = way.into_iter().chain([later]).filter_map(|place| answers.task(place));
        let named: Vec<String> =
            named.map(|(part, task)| format!("{} ({})", task.title(), part.file.part.tag)).collect();
        return Err(text!("That would go in a circle: {work}.", work = named.join(" → ")));
    }
    let (part, first) = answers.task(first).ok_or_else(|| text!("That work is no longer outstanding.").to_owned())?;
    Ok(put_behind((about.file, task), (&part.file, first), about.view.today))
}

/// The orders by hand of which a task is the later piece.
fn own_orders<'a>(file: &'a PartFile, task: &'a Task) -> impl Iterator<Item = &'a WorkAfter> {
    file.work_after.iter().filter(|order| {
        let work = file.work.iter().find(|work| work.id == order.work);
        work.is_some_and(|work| task.is_carried_by(work))
    })
}

/// A piece of work by its title, on another part with that part's tag.
fn name_of(about: &About<'_>, work: WorkId) -> String {
    let logbook = about.view.logbook;
    let mut parts = std::iter::once(about.file).chain(&logbook.parts);
    let found = parts.find_map(|file| Some((file, file.work.iter().find(|known| known.id == work)?)));
    found.map_or_else(String::new, |(file, work)| {
        let title = about.view.rules.work(&work.rule).map_or(work.title.as_str(), |rule| say(&rule.say));
        if file.part.id == about.file.part.id { title.to_owned() } else { format!("{title} ({})", file.part.tag) }
    })
}
