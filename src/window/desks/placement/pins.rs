//! What is pinned or left out to try something: kept at the desk, each taken off again where it is told. A pin that has
//! been planned is the logbook's from then on.

use egui::Ui;

use crate::assess::reason::{machine_name, part_name};
use crate::record::{Logbook, MachineId, PartId};
use crate::text;
use crate::window::widgets::{body, link_ui, strong};

/// What is tried.
#[derive(Default)]
pub struct Pins {
    pub put: Vec<(PartId, MachineId)>,
    out: Vec<PartId>,
}

impl Pins {
    /// Whether nothing is tried.
    pub fn is_empty(&self) -> bool {
        self.put.is_empty() && self.out.is_empty()
    }

    /// Puts a part into a machine.
    pub fn put(&mut self, part: PartId, machine: MachineId) {
        self.free(part);
        self.put.push((part, machine));
    }

    /// Puts a part into a machine in the place of another.
    pub fn put_instead(&mut self, part: PartId, machine: MachineId, of: PartId) {
        self.put.retain(|pin| *pin != (of, machine));
        self.put(part, machine);
    }

    /// What the logbook holds pinned is no longer tried.
    pub fn let_go_of_written(&mut self, logbook: &Logbook) {
        self.put.retain(|(part, machine)| {
            let plans = logbook.machine(*machine).map_or(&[][..], |file| &file.placements);
            !plans.iter().any(|plan| plan.part == *part && plan.pinned)
        });
    }

    /// Leaves a part out of every machine.
    pub fn leave_out(&mut self, part: PartId) {
        self.free(part);
        self.out.push(part);
    }

    /// Lets a part go where it does best.
    fn free(&mut self, part: PartId) {
        self.put.retain(|(known, _)| *known != part);
        self.out.retain(|known| *known != part);
    }

    /// What is left out, as it is asked.
    pub fn left_out(&self) -> Vec<(PartId, Option<MachineId>)> {
        self.out.iter().map(|part| (*part, None)).collect()
    }

    /// Tells what is tried and what it costs: the proposal's worth and that without pins, each with whether it is proven.
    pub fn ui(&mut self, ui: &mut Ui, logbook: &Logbook, cost: Option<((i64, bool), (i64, bool))>) {
        if self.is_empty() {
            return;
        }
        let mut freed = None;
        ui.horizontal_wrapped(|ui| {
            let tag = |part: PartId| logbook.part(part).map_or("", |file| &file.part.tag);
            for (part, machine) in &self.put {
                let (part_said, machine) = (part_name(logbook, *part), machine_name(logbook, *machine));
                ui.label(body(text!("Pinned {part} to {machine}.", part = part_said, machine = machine)));
                if link_ui(ui, &text!("Take the pin off {tag}", tag = tag(*part))).clicked() {
                    freed = Some(*part);
                }
            }
            for part in &self.out {
                ui.label(body(text!("Left out {part}.", part = part_name(logbook, *part))));
                if link_ui(ui, &text!("Use {tag} again", tag = tag(*part))).clicked() {
                    freed = Some(*part);
                }
            }
            if let Some(((worth, is_proven), (free, is_free_proven))) = cost {
                ui.label(strong(cost_text(free - worth, is_proven && is_free_proven)));
            }
        });
        if let Some(part) = freed {
            self.free(part);
            ui.ctx().request_repaint();
        }
    }
}

fn cost_text(cost: i64, is_exact: bool) -> String {
    match (cost, is_exact) {
        (0, true) => text!("Costs nothing.").to_owned(),
        (cost, true) if cost > 0 => text!("Costs {cost} points in all.", cost = cost),
        (cost, true) => text!("Brings {more} points in all.", more = -cost),
        (cost, false) => text!("Costs about {cost} points in all, not proven.", cost = cost),
    }
}
