//! Machines past their tests: which of them a proposal may touch.

use egui::Ui;

use super::leaves::scrolled;
use crate::assess::Answers;
use crate::assess::reason::machine_name;
use crate::record::Logbook;
use crate::text;
use crate::window::settings::Touch;
use crate::window::theme::GRID;
use crate::window::widgets::{body, remark};

/// A switch for all and one for each; what may be touched once one of them was moved.
pub fn touch_ui(ui: &mut Ui, answers: &Answers, logbook: &Logbook, touch: &Touch) -> Option<Touch> {
    let mut changed = None;
    scrolled(ui, "tested", |ui| {
        ui.label(remark(
            ui,
            text!("A machine past its tests is left as it is: a part that comes or goes voids the tests of the whole machine."),
        ));
        ui.add_space(2.0 * GRID);
        let mut all = touch.all;
        if ui.checkbox(&mut all, text!("May touch all tested machines")).changed() {
            changed = Some(Touch { all, ..touch.clone() });
        }
        ui.add_space(2.0 * GRID);
        let tested = answers.machines.iter().filter(|machine| machine.readiness.is_tested());
        let tested: Vec<_> = tested.map(|machine| machine.machine).collect();
        if tested.is_empty() {
            ui.label(body(text!("No machine is past its tests yet.")));
        }
        for machine in tested {
            let mut may = all || touch.machines.contains(&machine);
            let word = text!("May touch {machine}", machine = machine_name(logbook, machine));
            let response = ui.add_enabled_ui(!all, |ui| ui.checkbox(&mut may, word)).inner;
            if response.changed() {
                let mut machines = touch.machines.clone();
                machines.retain(|known| *known != machine);
                machines.extend(may.then_some(machine));
                changed = Some(Touch { all, machines });
            }
        }
    });
    changed
}
