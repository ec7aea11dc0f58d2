//! A proof as it is run on a part or a whole machine: its figures with what they say, photographs and a log.

mod figures;
mod files;
mod rails;

use std::sync::Arc;

use egui::Ui;

use self::figures::Figures;
use self::files::Files;
use self::rails::Rails;
use super::past_date;
use crate::record::{Entry, MachineId, Moment, PartId, Proof, ProofResult, Reading, Word};
use crate::rules::ProofRule;
use crate::store::Store;
use crate::text;
use crate::window::outbox::{KeptFile, Outbox, View};
use crate::window::page::Page;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, caution_ui, choice_ui, field_ui, notes_ui, press_ui, remark, small};

/// What is typed so far.
#[derive(Debug)]
pub struct ProofForm {
    rule: Arc<ProofRule>,
    on: String,
    rig: String,
    minutes: String,
    criterion: String,
    rails: Option<Rails>,
    figures: Figures,
    files: Files,
    result: Option<ProofResult>,
    who: String,
    note: String,
}

/// What a person did with the form.
#[derive(Debug)]
pub enum ProofAct {
    /// The proof with its readings and files, to be written.
    Keep(Box<Proof>, Vec<Entry>),
    PutAway,
}

/// Whose proof it is.
#[derive(Clone, Copy, Debug)]
pub struct Owner {
    pub part: Option<PartId>,
    pub machine: Option<MachineId>,
    /// Files that are asked for come back to this page, and from there by [`ProofForm::kept`].
    pub page: Page,
}

impl Owner {
    /// A part's.
    pub fn part(part: PartId) -> Self {
        Self { part: Some(part), machine: None, page: Page::Part(part) }
    }

    /// A whole machine's.
    pub fn machine(machine: MachineId) -> Self {
        Self { part: None, machine: Some(machine), page: Page::Machine(machine) }
    }
}

impl ProofForm {
    /// A form that proposes what the rule says.
    pub fn new(rule: &Arc<ProofRule>, owner: Owner, view: &View<'_>) -> Self {
        Self {
            rule: Arc::clone(rule),
            on: view.today.to_string(),
            rig: crate::text::say(&rule.rig).to_owned(),
            minutes: rule.minutes.to_string(),
            criterion: crate::text::say(&rule.criterion).to_owned(),
            rails: rule.rails.then(|| Rails::new(owner, view)),
            figures: Figures::new(rule),
            files: Files::default(),
            result: None,
            who: view.logbook.workshop.keeper.clone(),
            note: String::new(),
        }
    }

    /// Takes photographs and a log that were copied into the logbook for this form.
    pub fn kept(&mut self, files: Vec<KeptFile>) {
        self.files.kept(files);
    }

    /// Whether a file of this content goes with the run.
    pub fn holds(&self, content: &str) -> bool {
        self.files.holds(content)
    }

    /// Draws the form for a part or a machine.
    pub fn ui(&mut self, ui: &mut Ui, owner: Owner, view: &View<'_>, outbox: &mut Outbox) -> Option<ProofAct> {
        let mut act = None;
        ui.set_max_width(ui.available_width().min(180.0 * GRID));
        ui.label(body(crate::text::say(&self.rule.say)));
        for caution in self.rule.cautions.rows() {
            caution_ui(ui, crate::text::say(&caution.say));
        }
        notes_ui(ui, text!("What has to hold"), &mut self.criterion, 2);
        ui.horizontal_wrapped(|ui| {
            field_ui(ui, text!("Run on"), &mut self.on, Some(28.0 * GRID));
            field_ui(ui, text!("On what rig"), &mut self.rig, Some(90.0 * GRID));
            field_ui(ui, text!("Minutes run"), &mut self.minutes, Some(24.0 * GRID));
            field_ui(ui, text!("Who"), &mut self.who, Some(40.0 * GRID));
        });
        if let Some(rails) = &mut self.rails {
            rails.ui(ui);
        }
        self.figures.ui(ui);
        notes_ui(ui, text!("What was seen and measured"), &mut self.note, 2);
        self.files.ui(ui, owner.page, outbox);
        let mut result = self.result;
        let mut choices: Vec<(Option<ProofResult>, &str)> = vec![(None, text!("Not told yet"))];
        choices.extend(ProofResult::ALL.iter().map(|word| (Some(*word), word.label())));
        choice_ui(ui, text!("How it came out"), &mut result, &choices, 40.0 * GRID);
        self.result = result;
        let read = self.read(owner, view);
        ui.add_space(GRID);
        ui.horizontal_wrapped(|ui| {
            let keep = ui.add_enabled_ui(read.is_ok(), |ui| press_ui(ui, text!("Keep the proof"), "", None)).inner;
            if press_ui(ui, text!("Put the form away"), "", None).clicked() {
                act = Some(ProofAct::PutAway);
            }
            match read {
                Ok((proof, beside)) if keep.clicked() => act = Some(ProofAct::Keep(Box::new(proof), beside)),
                Ok(_) => {}
                Err(wrong) => {
                    ui.label(small(wrong).color(ui.tokens().power_unknown));
                }
            }
        });
        ui.label(remark(ui, text!("It counts until later work voids it or it grows stale.")));
        act
    }

    /// The proof, and what is written beside it.
    fn read(&self, owner: Owner, view: &View<'_>) -> Result<(Proof, Vec<Entry>), String> {
        let Owner { part, machine, .. } = owner;
        let on = past_date(&self.on, view)?;
        let minutes = match self.minutes.trim() {
            "" => None,
            typed => Some(typed.parse().map_err(|_| {
                text!("“{typed}” is no number of minutes: write 90 for an hour and a half.", typed = typed)
            })?),
        };
        let mut measured = self.rails.as_ref().map_or(Ok(Vec::new()), Rails::read)?;
        measured.extend(self.figures.read()?);
        let result = self.result.ok_or_else(|| text!("Say how it came out.").to_owned())?;
        if let Some(against) = measured.iter().find(|measured| measured.speaks_against)
            && result == ProofResult::Passed
        {
            let said = format!("{} {} {}", crate::text::say(&against.quantity), against.value, against.unit);
            return Err(text!("{figure} speaks against a pass.", figure = said.trim()));
        }
        let run = Moment { on, sequence: 0 };
        let proof = Proof {
            id: Store::new_id(),
            part,
            machine,
            test: self.rule.name.clone(),
            run,
            rig: self.rig.trim().to_owned(),
            minutes,
            criterion: self.criterion.trim().to_owned(),
            result,
            who: self.who.trim().to_owned(),
            note: self.note.trim().to_owned(),
        };
        let reading = |measured: Measured| Reading {
            id: Store::new_id(),
            part,
            machine,
            measured: run,
            quantity: measured.quantity,
            value: measured.value,
            unit: measured.unit,
            condition: measured.condition,
            who: proof.who.clone(),
            supersedes: None,
            note: String::new(),
            proof: Some(proof.id),
            work: None,
        };
        let mut beside: Vec<Entry> = measured.into_iter().map(|measured| reading(measured).into()).collect();
        beside.extend(self.files.entries(owner, proof.id, run));
        Ok((proof, beside))
    }
}

/// A figure of a run.
#[derive(Clone, Debug)]
struct Measured {
    quantity: String,
    value: f64,
    unit: String,
    condition: String,
    /// Whether nothing has passed with it.
    speaks_against: bool,
}
