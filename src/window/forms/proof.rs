//! A proof as it is run on a part or a whole machine.

use std::sync::Arc;

use egui::Ui;

use super::past_date;
use crate::record::{MachineId, Moment, PartId, Proof, ProofResult, Word};
use crate::rules::ProofRule;
use crate::store::Store;
use crate::text;
use crate::window::outbox::View;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, choice_ui, field_ui, notes_ui, press_ui, remark, small};

/// What is typed so far.
#[derive(Debug)]
pub struct ProofForm {
    rule: Arc<ProofRule>,
    on: String,
    rig: String,
    minutes: String,
    criterion: String,
    result: Option<ProofResult>,
    who: String,
    note: String,
}

/// What a person did with the form.
#[derive(Debug)]
pub enum ProofAct {
    Keep(Proof),
    PutAway,
}

impl ProofForm {
    /// A form that proposes what the rule says.
    pub fn new(rule: &Arc<ProofRule>, view: &View<'_>) -> Self {
        Self {
            rule: Arc::clone(rule),
            on: view.today.to_string(),
            rig: crate::text::say(&rule.rig).to_owned(),
            minutes: rule.minutes.to_string(),
            criterion: crate::text::say(&rule.criterion).to_owned(),
            result: None,
            who: view.logbook.workshop.keeper.clone(),
            note: String::new(),
        }
    }

    /// Draws the form for a part or a machine.
    pub fn ui(
        &mut self,
        ui: &mut Ui,
        part: Option<PartId>,
        machine: Option<MachineId>,
        view: &View<'_>,
    ) -> Option<ProofAct> {
        let mut act = None;
        ui.set_max_width(ui.available_width().min(180.0 * GRID));
        ui.label(body(crate::text::say(&self.rule.say)));
        for caution in &self.rule.cautions {
            ui.label(body(crate::text::say(caution)).color(ui.tokens().power_unknown));
        }
        notes_ui(ui, text!("What has to hold"), &mut self.criterion, 2);
        ui.horizontal_wrapped(|ui| {
            field_ui(ui, text!("Run on"), &mut self.on, Some(28.0 * GRID));
            field_ui(ui, text!("On what rig"), &mut self.rig, Some(90.0 * GRID));
            field_ui(ui, text!("Minutes run"), &mut self.minutes, Some(24.0 * GRID));
            field_ui(ui, text!("Who"), &mut self.who, Some(40.0 * GRID));
        });
        notes_ui(ui, text!("What was seen and measured"), &mut self.note, 2);
        let mut result = self.result;
        let mut choices: Vec<(Option<ProofResult>, &str)> = vec![(None, text!("Not told yet"))];
        choices.extend(ProofResult::ALL.iter().map(|word| (Some(*word), word.label())));
        choice_ui(ui, text!("How it came out"), &mut result, &choices, 40.0 * GRID);
        self.result = result;
        let read = self.read(part, machine, view);
        ui.add_space(GRID);
        ui.horizontal(|ui| {
            let keep = ui.add_enabled_ui(read.is_ok(), |ui| press_ui(ui, text!("Keep the proof"), "", None)).inner;
            match read {
                Ok(proof) if keep.clicked() => act = Some(ProofAct::Keep(proof)),
                Ok(_) => {}
                Err(wrong) => {
                    ui.label(small(wrong).color(ui.tokens().power_unknown));
                }
            }
            if press_ui(ui, text!("Put the form away"), "", None).clicked() {
                act = Some(ProofAct::PutAway);
            }
        });
        ui.label(remark(ui, text!("It counts until later work voids it or it grows stale.")));
        act
    }

    fn read(&self, part: Option<PartId>, machine: Option<MachineId>, view: &View<'_>) -> Result<Proof, String> {
        let on = past_date(&self.on, view)?;
        let result = self.result.ok_or_else(|| text!("Say how it came out.").to_owned())?;
        let minutes = match self.minutes.trim() {
            "" => None,
            typed => Some(typed.parse().map_err(|_| {
                text!("“{typed}” is no number of minutes: write 90 for an hour and a half.", typed = typed)
            })?),
        };
        Ok(Proof {
            id: Store::new_id(),
            part,
            machine,
            test: self.rule.name.clone(),
            run: Moment { on, sequence: 0 },
            rig: self.rig.trim().to_owned(),
            minutes,
            criterion: self.criterion.trim().to_owned(),
            result,
            who: self.who.trim().to_owned(),
            note: self.note.trim().to_owned(),
        })
    }
}
