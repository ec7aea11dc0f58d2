//! A power-on as an event: what was fitted, how it was set, the steps and readings, what happened.

use egui::Ui;

use crate::assess::Verdict;
use crate::record::{Change, MachineFile, Moment, PowerOn, PowerOnResult, When, Word};
use crate::store::Store;
use crate::text;
use crate::window::forms::past_date;
use crate::window::outbox::{Outbox, View};
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, choice_ui, field_ui, notes_ui, press_ui, remark, small};

/// What is typed so far.
#[derive(Debug)]
pub struct PowerOnForm {
    on: String,
    configuration: String,
    settings: String,
    steps: String,
    result: PowerOnResult,
    happened: String,
    who: String,
}

impl PowerOnForm {
    /// A form that knows already what is fitted, and who usually writes.
    pub fn new(machine: &MachineFile, view: &View<'_>) -> Self {
        let fitted = machine.fitted().filter_map(|fitting| view.logbook.part(fitting.part));
        let configuration: Vec<String> =
            fitted.map(|file| format!("{} {}", file.part.tag, view.logbook.title_of(file))).collect();
        Self {
            on: view.today.to_string(),
            configuration: configuration.join(", "),
            settings: String::new(),
            steps: String::new(),
            result: PowerOnResult::Well,
            happened: String::new(),
            who: view.logbook.workshop.keeper.clone(),
        }
    }

    /// Draws the form; `true` once it was kept or put away.
    pub fn ui(
        &mut self,
        ui: &mut Ui,
        machine: &MachineFile,
        verdict: Verdict,
        view: &View<'_>,
        outbox: &mut Outbox,
    ) -> bool {
        let mut is_over = false;
        ui.set_max_width(ui.available_width().min(180.0 * GRID));
        if verdict != Verdict::Yes {
            ui.label(
                body(text!("The logbook says not to apply power yet. If you did all the same, note it here."))
                    .color(ui.tokens().power_unknown),
            );
        }
        ui.label(remark(
            ui,
            text!(
                "Mains and stored charge can kill: supply closed, one hand, somebody in the house. Watch the first \
                 thirty minutes without leaving the room."
            ),
        ));
        notes_ui(ui, text!("What was fitted"), &mut self.configuration, 2);
        field_ui(ui, text!("Jumpers and setup"), &mut self.settings, None);
        notes_ui(ui, text!("Steps and readings, in their order"), &mut self.steps, 3);
        notes_ui(ui, text!("What happened: pictures, beeps, codes, smells"), &mut self.happened, 2);
        ui.horizontal_wrapped(|ui| {
            let choices: Vec<_> = PowerOnResult::ALL.iter().map(|word| (*word, word.label())).collect();
            choice_ui(ui, text!("How it went"), &mut self.result, &choices, 50.0 * GRID);
            field_ui(ui, text!("Switched on"), &mut self.on, Some(28.0 * GRID));
            field_ui(ui, text!("Who"), &mut self.who, Some(40.0 * GRID));
        });
        let on = past_date(&self.on, view);
        ui.horizontal_wrapped(|ui| {
            let keep = ui.add_enabled_ui(on.is_ok(), |ui| press_ui(ui, text!("Keep the power-on"), "", None)).inner;
            match on {
                Ok(on) if keep.clicked() => {
                    outbox.change(self.change(machine, on));
                    is_over = true;
                }
                Ok(_) => {}
                Err(wrong) => drop(ui.label(small(wrong).color(ui.tokens().power_unknown))),
            }
            is_over |= press_ui(ui, text!("Put the form away"), "", None).clicked();
        });
        is_over
    }

    fn change(&self, machine: &MachineFile, on: When) -> Change {
        let name = &machine.machine.name;
        let title = if machine.power_ons.is_empty() {
            text!("First power-on of {machine}", machine = name)
        } else {
            text!("Power-on of {machine}", machine = name)
        };
        let mut change = Change::new(title);
        change.put(PowerOn {
            id: Store::new_id(),
            machine: machine.machine.id,
            switched: Moment { on, sequence: 0 },
            configuration: self.configuration.trim().to_owned(),
            settings: self.settings.trim().to_owned(),
            steps: self.steps.trim().to_owned(),
            result: self.result,
            happened: self.happened.trim().to_owned(),
            who: self.who.trim().to_owned(),
        });
        change
    }
}
