//! A recap that is done: the kits that lie ready for it, used up with it.

use egui::Ui;

use crate::assess::Task;
use crate::assess::kits::used::{at_hand, is_recap, use_up};
use crate::record::{Change, KitFile, KitId, MaterialId, Moment, PartFile, Step};
use crate::text;
use crate::window::outbox::View;
use crate::window::widgets::body;

/// The kits from which the work can be done, and whether each is used up with it.
#[derive(Debug, Default)]
pub struct FromKits {
    kits: Vec<(KitId, bool)>,
}

impl FromKits {
    /// Proposes to use up all that lies ready.
    pub fn new(task: &Task, view: &View<'_>) -> Self {
        if !is_recap(task, view.rules) {
            return Self::default();
        }
        let kits = at_hand(task.part, view.logbook);
        Self { kits: kits.iter().map(|waiting| (waiting.kit.kit.id, true)).collect() }
    }

    /// Draws a box to tick for each kit.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>) {
        for (kit, is_ticked) in &mut self.kits {
            let Some(file) = view.logbook.kit(*kit).filter(|file| file.kit.state.is_unfinished()) else { continue };
            ui.checkbox(is_ticked, body(text!("Use up the kit: {name}", name = file.kit.name)));
        }
    }

    fn ticked<'v>(&self, view: &View<'v>) -> Vec<&'v KitFile> {
        let ticked = self.kits.iter().filter(|(_, is_ticked)| *is_ticked);
        let files = ticked.filter_map(|(kit, _)| view.logbook.kit(*kit)).map(|file| &**file);
        files.filter(|file| file.kit.state.is_unfinished()).collect()
    }

    /// Whether nothing that the kits take out of stock is told as used once more.
    ///
    /// # Errors
    /// Says which material is.
    pub fn check(&self, used: impl Iterator<Item = MaterialId>, view: &View<'_>) -> Result<(), String> {
        let kits = self.ticked(view);
        let lines = || kits.iter().flat_map(|file| &file.lines);
        for material in used {
            if lines().any(|line| line.line.material == Some(material)) {
                let name = view.logbook.material(material).map_or("", |known| &known.name);
                return Err(text!(
                    "The kit takes {material} out of stock already: leave its amount empty.",
                    material = name
                ));
            }
        }
        Ok(())
    }

    /// Uses the kits up, as far as they are for this part; `change` is what the work itself writes.
    ///
    /// # Errors
    /// Says what the stock has too little of.
    pub fn write(&self, change: &mut Change, file: &PartFile, view: &View<'_>) -> Result<(), String> {
        let kits = self.ticked(view);
        if kits.is_empty() {
            return Ok(());
        }
        let mut would_be = file.clone();
        for step in &change.steps {
            if let Step::Put(entry) = step {
                would_be.hang(entry.clone());
            }
        }
        let at = Moment::on(view.today);
        use_up(change, &kits, &would_be, view.logbook, view.rules, at, &mut uuid::Uuid::now_v7)
            .map_err(|hindrance| hindrance.to_string())
    }
}
