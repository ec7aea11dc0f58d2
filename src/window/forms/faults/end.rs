//! How a case ends: in a finding with its work, as not reproduced, or given up.

use egui::Ui;

use crate::assess::faults::{CaseAnswer, Found, found, not_reproduced};
use crate::assess::reason::part_name;
use crate::record::{CaseState, Change, FaultCase, FaultCaseFile, PartId, Severity, Word};
use crate::store::Store;
use crate::text;
use crate::text::say;
use crate::window::outbox::View;
use crate::window::theme::GRID;
use crate::window::widgets::{Asking, Pick, Picker, choice_ui, field_ui, link_ui, notes_ui, remark};

/// What is typed so far.
#[derive(Debug)]
pub struct EndForm {
    state: CaseState,
    part: Option<PartId>,
    /// The finding's name in the tables; empty for one in own words.
    what: String,
    picker: Option<Picker<String>>,
    place_on_part: String,
    severity: Severity,
    outcome: String,
}

impl EndForm {
    /// A form that proposes the part on which most suspicion lies.
    pub fn new(part: Option<PartId>) -> Self {
        Self {
            state: CaseState::Found,
            part,
            what: String::new(),
            picker: None,
            place_on_part: String::new(),
            severity: Severity::Plain,
            outcome: String::new(),
        }
    }

    /// Draws the fields.
    pub fn ui(&mut self, ui: &mut Ui, answer: &CaseAnswer, view: &View<'_>) {
        ui.set_max_width(ui.available_width().min(180.0 * GRID));
        let ends = CaseState::ALL.iter().filter(|state| **state != CaseState::Open);
        let ends: Vec<(CaseState, &str)> = ends.map(|word| (*word, word.label())).collect();
        choice_ui(ui, text!("How it ended"), &mut self.state, &ends, 44.0 * GRID);
        if self.state == CaseState::Found {
            let suspects: Vec<(PartId, String)> =
                answer.suspects.iter().map(|one| (one.part, part_name(view.logbook, one.part))).collect();
            let choices: Vec<(Option<PartId>, &str)> =
                suspects.iter().map(|(part, name)| (Some(*part), name.as_str())).collect();
            ui.horizontal_wrapped(|ui| {
                choice_ui(ui, text!("On which part"), &mut self.part, &choices, 80.0 * GRID);
                let how_bad: Vec<(Severity, &str)> = Severity::ALL.iter().map(|word| (*word, word.label())).collect();
                choice_ui(ui, text!("How bad"), &mut self.severity, &how_bad, 30.0 * GRID);
                field_ui(ui, text!("Where on the part"), &mut self.place_on_part, Some(60.0 * GRID));
            });
            self.what_ui(ui, view);
        }
        let label = match self.state {
            CaseState::Found => text!("What it was"),
            CaseState::NotReproduced => text!("How long and under what it was tried"),
            _ => text!("Why it is left"),
        };
        notes_ui(ui, label, &mut self.outcome, 2);
    }

    /// Which finding of the tables it is, so that its work follows by rule.
    fn what_ui(&mut self, ui: &mut Ui, view: &View<'_>) {
        let Some(picker) = &mut self.picker else {
            let named = view.rules.finding(&self.what).map_or(text!("in own words"), |rule| say(&rule.say));
            ui.horizontal_wrapped(|ui| {
                ui.label(remark(ui, text!("Finding: {finding}", finding = named)));
                if link_ui(ui, text!("Choose a finding of the tables…")).clicked() {
                    self.picker = Some(Picker::ready());
                }
            });
            return;
        };
        let choices = || {
            let all = view.rules.findings.iter();
            all.map(|rule| (rule.name.clone(), say(&rule.say).to_owned())).collect::<Vec<_>>()
        };
        let asking = Asking::one(text!("Which finding"));
        match picker.ui(ui, asking, view.rules.version, choices) {
            Some(Pick::One(what)) => {
                if let Some(rule) = view.rules.finding(&what) {
                    self.severity = rule.severity;
                }
                self.what = what;
                self.picker = None;
            }
            Some(_) => self.picker = None,
            None => {}
        }
    }

    /// The end with all that follows.
    ///
    /// # Errors
    /// Says what is missing.
    pub fn read(&self, file: &FaultCaseFile, name: &str, view: &View<'_>) -> Result<Change, String> {
        let outcome = self.outcome.trim();
        if outcome.is_empty() {
            return Err(text!("Say how the case ended: whoever has the part next will look for it.").to_owned());
        }
        match self.state {
            CaseState::Found => {
                let part = self.part.and_then(|part| view.logbook.part(part));
                let part = part.ok_or_else(|| text!("Say on which part it was found.").to_owned())?;
                let place_on_part = self.place_on_part.trim();
                let end = Found { what: &self.what, outcome, place_on_part, severity: self.severity };
                let mut ids = || Store::new_id::<FaultCase>().uuid();
                Ok(found(file, part, &end, view.rules, view.today, &mut ids))
            }
            CaseState::NotReproduced => Ok(not_reproduced(file, outcome)),
            CaseState::Open | CaseState::GivenUp => {
                let symptom = &file.case.symptom;
                let mut change = Change::new(text!("Close on {tag}: {symptom}", tag = name, symptom = symptom));
                change.put(FaultCase { state: self.state, outcome: outcome.to_owned(), ..file.case.clone() });
                Ok(change)
            }
        }
    }
}
