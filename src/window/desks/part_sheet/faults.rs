//! Looking for a fault on the part: the symptom, and what was tried.

use egui::Ui;

use super::about::{About, act_ui, day_text, put, wrong_ui};
use crate::record::{CaseState, FaultCase, FaultCaseFile, FaultCaseId, PartId, Trial, TrialResult, Word};
use crate::store::Store;
use crate::text;
use crate::window::outbox::Outbox;
use crate::window::theme::GRID;
use crate::window::widgets::{body, choice_ui, field_ui, link_ui, notes_ui, press_ui, remark, strong};

/// What is half typed.
#[derive(Default)]
pub struct Faults {
    symptom: Option<String>,
    trial: Option<(FaultCaseId, Try)>,
    close: Option<(FaultCaseId, CaseState, String)>,
}

struct Try {
    configuration: String,
    step: String,
    suspect: String,
    known_good: String,
    result: TrialResult,
    note: String,
}

impl Faults {
    /// Draws the section.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        if about.file.cases.is_empty() {
            ui.label(body(text!("No fault is being looked for.")));
        }
        for case in about.file.cases.iter().rev() {
            ui.push_id(case.case.id, |ui| self.case_ui(ui, about, case, outbox));
        }
        let Some(symptom) = &mut self.symptom else {
            if link_ui(ui, text!("It shows a fault…")).clicked() {
                self.symptom = Some(String::new());
            }
            return;
        };
        field_ui(ui, text!("What was seen, heard or smelt"), symptom, None);
        let (mut keep, mut away) = (false, false);
        ui.horizontal(|ui| {
            keep = press_ui(ui, text!("Open the case"), "", None).clicked();
            away = press_ui(ui, text!("Put the case away"), "", None).clicked();
        });
        let said = symptom.trim();
        if keep && said.is_empty() {
            wrong_ui(ui, text!("Say what is wrong: “no picture, three beeps”."));
        } else if keep {
            let case = FaultCase {
                id: Store::new_id(),
                part: Some(about.part().id),
                machine: None,
                opened: about.now(),
                symptom: said.to_owned(),
                state: CaseState::Open,
                outcome: String::new(),
            };
            outbox.change(put(text!("Fault on {tag}: {symptom}", tag = about.tag(), symptom = said), case));
            self.symptom = None;
        } else if away {
            self.symptom = None;
        }
    }

    fn case_ui(&mut self, ui: &mut Ui, about: &About<'_>, file: &FaultCaseFile, outbox: &mut Outbox) {
        let case = &file.case;
        ui.horizontal_wrapped(|ui| {
            ui.label(strong(&case.symptom));
            ui.label(remark(ui, format!("{} · {}", case.state.label().to_lowercase(), day_text(case.opened.on))));
        });
        for trial in &file.trials {
            ui.label(body(trial_text(trial, about)));
        }
        if !case.outcome.is_empty() {
            ui.label(body(text!("Outcome: {outcome}", outcome = case.outcome)));
        }
        let id = case.id;
        if case.state != CaseState::Open {
            if act_ui(ui, text!("Look for it again"), &text!("Look again for: {symptom}", symptom = case.symptom)) {
                let name = text!("Look again on {tag} for: {symptom}", tag = about.tag(), symptom = case.symptom);
                outbox.change(put(name, FaultCase { state: CaseState::Open, ..case.clone() }));
            }
            return;
        }
        if self.trial.as_ref().is_some_and(|(open, _)| *open == id) {
            self.trial_ui(ui, about, case, outbox);
        } else if self.close.as_ref().is_some_and(|(open, ..)| *open == id) {
            self.close_ui(ui, about, case, outbox);
        } else {
            ui.horizontal(|ui| {
                if press_ui(ui, text!("Something was tried…"), "", None).clicked() {
                    let last = file.trials.last();
                    self.trial = Some((
                        id,
                        Try {
                            configuration: last.map(|trial| trial.configuration.clone()).unwrap_or_default(),
                            step: String::new(),
                            suspect: String::new(),
                            known_good: String::new(),
                            result: TrialResult::Undecided,
                            note: String::new(),
                        },
                    ));
                }
                if press_ui(ui, text!("Close the case…"), "", None).clicked() {
                    self.close = Some((id, CaseState::Found, String::new()));
                }
            });
        }
    }

    fn trial_ui(&mut self, ui: &mut Ui, about: &About<'_>, case: &FaultCase, outbox: &mut Outbox) {
        let Some((_, typed)) = &mut self.trial else { return };
        field_ui(ui, text!("What was fitted and set"), &mut typed.configuration, None);
        field_ui(ui, text!("What was tried"), &mut typed.step, None);
        ui.horizontal_wrapped(|ui| {
            field_ui(ui, text!("Tag of the part taken out"), &mut typed.suspect, Some(40.0 * GRID));
            field_ui(ui, text!("Tag of the good part put in"), &mut typed.known_good, Some(40.0 * GRID));
            let results: Vec<(TrialResult, &str)> = TrialResult::ALL.iter().map(|word| (*word, word.label())).collect();
            choice_ui(ui, text!("What it showed"), &mut typed.result, &results, 40.0 * GRID);
        });
        field_ui(ui, text!("Note on the trial"), &mut typed.note, None);
        let read = typed.trial(about, case.id);
        let (mut keep, mut away) = (false, false);
        ui.horizontal(|ui| {
            keep = press_ui(ui, text!("Keep the trial"), "", None).clicked();
            away = press_ui(ui, text!("Put the trial away"), "", None).clicked();
        });
        match read {
            Ok(trial) if keep => {
                outbox.change(put(text!("Try on {tag}: {step}", tag = about.tag(), step = trial.step), trial));
                self.trial = None;
            }
            Err(wrong) if keep => outbox.say(wrong),
            _ => {}
        }
        if away {
            self.trial = None;
        }
    }

    fn close_ui(&mut self, ui: &mut Ui, about: &About<'_>, case: &FaultCase, outbox: &mut Outbox) {
        let Some((_, state, outcome)) = &mut self.close else { return };
        let states: Vec<(CaseState, &str)> = CaseState::ALL
            .iter()
            .filter(|state| **state != CaseState::Open)
            .map(|word| (*word, word.label()))
            .collect();
        choice_ui(ui, text!("How it ended"), state, &states, 44.0 * GRID);
        notes_ui(ui, text!("What it was, or why it is left"), outcome, 2);
        let (mut keep, mut away) = (false, false);
        ui.horizontal(|ui| {
            keep = press_ui(ui, text!("Keep: the case is closed"), "", None).clicked();
            away = press_ui(ui, text!("Leave the case open"), "", None).clicked();
        });
        if keep && outcome.trim().is_empty() {
            outbox.say(text!("Say how the case ended: whoever has the part next will look for it."));
        } else if keep {
            let closed = FaultCase { state: *state, outcome: outcome.trim().to_owned(), ..case.clone() };
            let name = text!("Close on {tag}: {symptom}", tag = about.tag(), symptom = case.symptom);
            outbox.change(put(name, closed));
            self.close = None;
        } else if away {
            self.close = None;
        }
    }
}

impl Try {
    fn trial(&self, about: &About<'_>, case: FaultCaseId) -> Result<Trial, String> {
        let part = |tag: &str| -> Result<Option<PartId>, String> {
            let tag = tag.trim();
            if tag.is_empty() {
                return Ok(None);
            }
            let known = about.view.logbook.part_tagged(tag).map(|file| file.part.id);
            known.map(Some).ok_or_else(|| text!("No part carries the tag {tag}.", tag = tag))
        };
        if self.step.trim().is_empty() {
            return Err(text!("Say what was tried.").to_owned());
        }
        Ok(Trial {
            id: Store::new_id(),
            case,
            tried: about.now(),
            configuration: self.configuration.trim().to_owned(),
            step: self.step.trim().to_owned(),
            suspect: part(&self.suspect)?,
            known_good: part(&self.known_good)?,
            result: self.result,
            note: self.note.trim().to_owned(),
            codes: String::new(),
        })
    }
}

/// One trial in a line.
fn trial_text(trial: &Trial, about: &About<'_>) -> String {
    let tag = |part: Option<PartId>| part.and_then(|id| about.view.logbook.part(id)).map(|file| file.part.tag.clone());
    let mut words = vec![day_text(trial.tried.on), trial.step.clone()];
    words.extend(tag(trial.suspect).map(|tag| text!("{tag} out", tag = tag)));
    words.extend(tag(trial.known_good).map(|tag| text!("{tag} in", tag = tag)));
    words.push(trial.result.label().to_lowercase());
    words.extend([&trial.configuration, &trial.note].into_iter().filter(|word| !word.is_empty()).cloned());
    words.join(" · ")
}
