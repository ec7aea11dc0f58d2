//! How a machine's parts fit: drawn as blocks and lines, with every reason, the rails and the clocks.

mod clocks;
mod drawing;
mod gathered;
mod layout;
mod list;
mod rails;
mod reasons;
mod tree;

use std::sync::Arc;

use egui::Ui;

use self::drawing::drawing_ui;
use self::gathered::Shown;
pub use self::gathered::{Told, mark_of};
use self::list::list_ui;
use self::reasons::Reasons;
pub use self::reasons::told_ui;
use self::tree::{Branch, branches};
use crate::assess::MachineAnswers;
use crate::assess::fit::Models;
use crate::record::Word;
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{badge_ui, body, remark, section_ui, strong};

/// Below this width, points, the drawing is a list.
const DRAWN: f32 = 170.0 * GRID;

/// What the section keeps: answers of one revision, and what is unfolded.
#[derive(Default)]
pub struct HowItFits {
    gathered: Option<Gathered>,
    reasons: Reasons,
    /// The line that is chosen.
    line: Option<usize>,
    shows_settings: bool,
}

struct Gathered {
    of: Arc<MachineAnswers>,
    rules_version: u64,
    shown: Shown,
    branches: Vec<Branch>,
}

impl HowItFits {
    /// Gathers anew what has changed; a machine's answers change whenever one of its parts or their designs does.
    fn gather(&mut self, answers: &MachineAnswers, view: &View<'_>) {
        let Some(now) = view.answers.machine(answers.machine) else { return };
        let is_same =
            |known: &Gathered| Arc::ptr_eq(&known.of, now) && known.rules_version == view.answers.rules_version;
        if self.gathered.as_ref().is_some_and(is_same) {
            return;
        }
        let mut models = Models::new(view.rules);
        let Some(build) = view.answers.build(answers.machine, &mut models, None) else { return };
        let shown = Shown::of(&build, view);
        let branches = branches(&shown);
        self.line = None;
        self.gathered =
            Some(Gathered { of: Arc::clone(now), rules_version: view.answers.rules_version, shown, branches });
    }

    /// Draws the section; nothing for a machine without parts.
    pub fn ui(&mut self, ui: &mut Ui, answers: &MachineAnswers, view: &View<'_>, outbox: &mut Outbox) {
        self.gather(answers, view);
        let Self { gathered: Some(gathered), reasons, line: chosen, shows_settings } = self else { return };
        let Gathered { shown, branches, .. } = gathered;
        if shown.blocks.is_empty() {
            return;
        }
        section_ui(ui, text!("How it fits"));
        let (mark, colour) = mark_of(shown.verdict, &ui.tokens());
        badge_ui(ui, mark, shown.verdict.label(), &text!("Fit: {verdict}", verdict = shown.verdict.label()), colour);
        ui.push_id("reasons", |ui| reasons.ui(ui, shown, outbox));
        ui.add_space(3.0 * GRID);
        let pressed = ui
            .push_id("drawing", |ui| {
                if ui.available_width() >= DRAWN {
                    drawing_ui(ui, shown, branches, *chosen, outbox)
                } else {
                    list_ui(ui, shown, branches, outbox)
                }
            })
            .inner;
        if pressed.is_some() {
            *chosen = if *chosen == pressed { None } else { pressed };
        }
        if let Some(line) = chosen.and_then(|line| shown.lines.get(line)) {
            ui.label(body(&line.sentence));
            ui.label(remark(ui, &line.source));
        }
        if let Some(rails) = &shown.rails {
            ui.add_space(2.0 * GRID);
            ui.label(strong(text!("Rails, against the supply’s label")));
            rails.ui(ui);
        }
        if let Some(clocks) = &shown.clocks {
            ui.add_space(3.0 * GRID);
            ui.label(strong(text!("Clocks")));
            clocks.ui(ui, shows_settings);
        }
    }
}
