//! A kit that is used up: the recaps that it was for, marked done with it.

use std::collections::HashSet;
use std::sync::Arc;

use egui::Ui;

use super::kit::stepped;
use crate::assess::kits::acts::Hindrance;
use crate::assess::kits::used::recaps;
use crate::assess::{Task, TaskKey};
use crate::record::{Change, KitFile, KitId, KitState, Logbook, PartFile, PartId, Step};
use crate::text;
use crate::window::forms::work::done;
use crate::window::outbox::View;
use crate::window::theme::GRID;
use crate::window::widgets::{body, remark};

/// Which of a kit's recaps are marked done with it: all but those that were left out.
#[derive(Debug, Default)]
pub struct Recaps {
    left_out: HashSet<(PartId, TaskKey)>,
    known: Option<(Asked, Vec<(usize, usize)>)>,
}

/// Of which revision and rules, and of which kit.
type Asked = (u64, u64, KitId);

impl Recaps {
    /// Draws a box to tick for each recap, once all of the kit is here.
    pub fn ui(&mut self, ui: &mut Ui, file: &KitFile, view: &View<'_>) {
        if file.kit.state != KitState::Received {
            return;
        }
        let Self { left_out, known } = self;
        let key = (view.answers.revision, view.rules.version, file.kit.id);
        if known.as_ref().is_none_or(|(asked, _)| *asked != key) {
            *known = Some((key, recaps(file, view.answers, view.rules)));
        }
        let Some((_, recaps)) = known.as_ref().filter(|(_, recaps)| !recaps.is_empty()) else { return };
        for (part, task) in recaps {
            let part = &view.answers.parts[*part];
            let key = (part.part, part.tasks[*task].key());
            let mut is_ticked = !left_out.contains(&key);
            let said = format!("{}, {}", part.tasks[*task].title(), part.file.part.tag);
            if ui.checkbox(&mut is_ticked, body(text!("Mark done with it: {work}", work = said))).changed() {
                if is_ticked {
                    left_out.remove(&key)
                } else {
                    left_out.insert(key)
                };
            }
        }
        ui.label(remark(ui, text!("For minutes, readings and photographs, mark it done on the part’s sheet instead.")));
        ui.add_space(GRID);
    }

    fn ticked<'v>(&self, file: &KitFile, view: &View<'v>) -> Vec<(&'v Arc<PartFile>, &'v Task)> {
        let all = recaps(file, view.answers, view.rules);
        let tasks = all.into_iter().map(|(part, task)| (&view.answers.parts[part], task));
        tasks
            .map(|(part, task)| (&part.file, &part.tasks[task]))
            .filter(|(file, task)| !self.left_out.contains(&(file.part.id, task.key())))
            .collect()
    }

    /// Uses the kit up, and marks those that are ticked as done, as one change.
    ///
    /// # Errors
    /// The stock has too little of something.
    pub fn use_up(&self, file: &KitFile, view: &View<'_>) -> Result<Change, Hindrance> {
        let used = text!("Kit {name}", name = file.kit.name);
        let mut logbook = Logbook::clone(view.logbook);
        let mut work = Vec::new();
        for (part, task) in self.ticked(file, view) {
            let Ok(at) = logbook.parts.binary_search_by_key(&part.part.id, |file| file.part.id) else { continue };
            let keeper = &view.logbook.workshop.keeper;
            let Change { steps, .. } = done(&logbook.parts[at], task, keeper, &used, view.today, view.rules);
            // A finding closes by its positions where the work on them is done.
            let mut would_be = PartFile::clone(&logbook.parts[at]);
            for step in &steps {
                if let Step::Put(entry) = step {
                    would_be.hang(entry.clone());
                }
            }
            logbook.parts[at] = Arc::new(would_be);
            work.extend(steps);
        }
        let mut change = stepped(file, KitState::Used, &logbook, view)?;
        change.steps.splice(0..0, work);
        Ok(change)
    }
}
