//! Beside the drawing while no part is chosen: the moves, what is missing, what counts, and which machines are ready first.

use egui::{ScrollArea, Slider, Ui};

use super::found::Found;
use crate::assess::placement::Goals;
use crate::text;
use crate::window::theme::GRID;
use crate::window::widgets::{body, press_ui, remark, strong};

crate::words! {
    /// What stands beside the drawing; in a narrow window the list takes turns with it.
    Leaf {
        Places = "places", "Places";
        Moves = "moves", "Moves";
        Missing = "missing", "Missing";
        Weights = "weights", "What counts";
        Tested = "tested", "Tested machines";
        Soonest = "soonest", "Soonest ready";
    }
}

/// How far a slider goes.
const MOST: u32 = 10;

/// What counts, while it is being changed.
#[derive(Default)]
pub struct Weights {
    /// The goals as a hand that has not let go yet has them.
    moving: Option<Goals>,
}

/// The moves in sentences.
pub fn moves_ui(ui: &mut Ui, found: &Found) {
    scrolled(ui, "moves", |ui| {
        if found.to_plan.is_empty() && found.at_bench.is_empty() {
            ui.label(body(text!("Nothing to move: everything is where it does best.")));
        }
        for (number, sentence) in found.to_plan.iter().enumerate() {
            ui.label(body(format!("{}. {sentence}", number + 1)));
            ui.add_space(GRID);
        }
        if !found.to_plan.is_empty() {
            ui.label(remark(ui, text!("Planned in one step, and undone in one. Fitting stays an act at the bench.")));
            ui.add_space(2.0 * GRID);
        }
        if !found.at_bench.is_empty() {
            ui.label(strong(text!("Left for the bench; nothing to plan")));
            for sentence in &found.at_bench {
                ui.label(body(sentence));
                ui.add_space(GRID);
            }
        }
        if found.left_alone > 0 {
            let said = crate::counted!(
                "{count} machine is past its tests and left as it is.",
                "{count} machines are past their tests and left as they are.",
                found.left_alone
            );
            ui.add_space(2.0 * GRID);
            ui.label(remark(ui, said));
        }
        if found.unknown > 0 {
            let said = crate::counted!(
                "Of {count} placed part nobody has said what it needs and offers: whether it fits is not known.",
                "Of {count} placed parts nobody has said what they need and offer: whether they fit is not known.",
                found.unknown
            );
            ui.add_space(2.0 * GRID);
            ui.label(body(said));
        }
    });
}

/// What is missing, machine by machine.
pub fn missing_ui(ui: &mut Ui, found: &Found) {
    scrolled(ui, "missing", |ui| {
        if found.wishes.is_empty() {
            ui.label(body(text!("Nothing is missing.")));
        }
        let mut last = None;
        for (machine, line) in &found.wishes {
            if last != Some(machine) {
                ui.add_space(2.0 * GRID);
                ui.label(strong(machine));
                last = Some(machine);
            }
            ui.label(body(line));
        }
    });
}

/// Machines in the order in which they can be ready.
pub fn soonest_ui(ui: &mut Ui, found: &Found, goals: Goals) -> Option<Goals> {
    let mut changed = None;
    let mut soonest = goals.soonest;
    if ui.checkbox(&mut soonest, text!("Soonest ready before all else")).changed() {
        changed = Some(Goals { soonest, ..goals });
    }
    ui.label(remark(ui, text!("Complete machines, and little work, count more than anything else.")));
    ui.add_space(2.0 * GRID);
    scrolled(ui, "soonest", |ui| {
        for (number, line) in found.outlook.iter().enumerate() {
            ui.label(body(format!("{}. {line}", number + 1)));
            ui.add_space(GRID);
        }
    });
    changed
}

impl Weights {
    /// The sliders; the goals once a hand lets go of one, or a key has moved it.
    pub fn ui(&mut self, ui: &mut Ui, goals: Goals) -> Option<Goals> {
        let mut changed = None;
        scrolled(ui, "weights", |ui| {
            ui.label(remark(ui, text!("From 0, does not count, to 10. All stand at 5 unless you move them.")));
            ui.spacing_mut().slider_width = (ui.available_width() - 12.0 * GRID).min(60.0 * GRID);
            let shown = self.moving.unwrap_or(goals);
            for (name, label, at) in shown.sliders() {
                ui.add_space(2.0 * GRID);
                let mut to = at;
                ui.label(body(label));
                let response = ui
                    .horizontal(|ui| {
                        let response = ui.add(Slider::new(&mut to, 0..=MOST).show_value(false));
                        ui.label(strong(to.to_string()));
                        response
                    })
                    .inner;
                ui.ctx().accesskit_node_builder(response.id, |node| node.set_label(label));
                if response.changed() {
                    let mut next = shown;
                    next.set(name, to);
                    self.moving = Some(next);
                }
                if !response.dragged() && self.moving.is_some_and(|moving| moving.sliders() != goals.sliders()) {
                    let is_own = response.drag_stopped() || response.changed();
                    changed = changed.or(self.moving.take_if(|_| is_own));
                }
            }
            ui.add_space(4.0 * GRID);
            let usual = Goals { soonest: goals.soonest, ..Goals::default() };
            if goals != usual && press_ui(ui, text!("As usual"), text!("All sliders back to 5"), None).clicked() {
                changed = Some(usual);
            }
        });
        changed
    }
}

pub(super) fn scrolled(ui: &mut Ui, salt: &str, inside: impl FnOnce(&mut Ui)) {
    ScrollArea::vertical().id_salt(salt).auto_shrink(false).show(ui, |ui| {
        ui.set_max_width(ui.available_width());
        inside(ui);
        ui.add_space(4.0 * GRID);
    });
}
