//! Looking for a fault on a part or a machine: the symptom, trials, what they leave under suspicion, and the end.

mod end;
mod standing;
mod trial;

use std::collections::HashMap;

use egui::{Ui, WidgetInfo};

use self::end::EndForm;
use self::trial::TrialForm;
use crate::assess::faults::{CaseAnswer, Proposal, of_case};
use crate::record::{CaseState, Change, FaultCase, FaultCaseFile, FaultCaseId, MachineId, Moment, PartId, Word};
use crate::store::Store;
use crate::text;
use crate::window::desks::part_sheet::{Section, Spot};
use crate::window::outbox::{Outbox, View};
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, field_ui, link_ui, press_ui, remark, small, strong};

/// What the cases are of.
#[derive(Clone, Copy, Debug)]
pub struct Faulty<'a> {
    pub part: Option<PartId>,
    pub machine: Option<MachineId>,
    /// A part's tag, a machine's name.
    pub name: &'a str,
    pub cases: &'a [FaultCaseFile],
}

/// What is half typed, and what follows from the trials at the revision on show.
#[derive(Default)]
pub struct Faults {
    symptom: Option<String>,
    trial: Option<(FaultCaseId, TrialForm)>,
    end: Option<(FaultCaseId, EndForm)>,
    answers: HashMap<FaultCaseId, (u64, CaseAnswer)>,
}

impl Faults {
    /// Draws the cases, the newest first, and a word to press for another.
    pub fn ui(&mut self, ui: &mut Ui, of: Faulty<'_>, view: &View<'_>, outbox: &mut Outbox) {
        if of.cases.is_empty() {
            ui.label(body(text!("No fault is being looked for.")));
        }
        for file in of.cases.iter().rev() {
            ui.push_id(file.case.id, |ui| self.case_ui(ui, of, file, view, outbox));
            ui.add_space(2.0 * GRID);
        }
        self.new_ui(ui, of, view, outbox);
    }

    fn new_ui(&mut self, ui: &mut Ui, of: Faulty<'_>, view: &View<'_>, outbox: &mut Outbox) {
        let Some(symptom) = &mut self.symptom else {
            if link_ui(ui, text!("It shows a fault…")).clicked() {
                self.symptom = Some(String::new());
            }
            return;
        };
        field_ui(ui, text!("What was seen, heard or smelt"), symptom, None);
        let said = symptom.trim().to_owned();
        ui.horizontal_wrapped(|ui| {
            let keep = ui.add_enabled_ui(!said.is_empty(), |ui| press_ui(ui, text!("Open the case"), "", None)).inner;
            if keep.clicked() {
                let name = text!("Fault on {tag}: {symptom}", tag = of.name, symptom = said);
                let mut change = Change::new(name);
                change.put(FaultCase {
                    id: Store::new_id(),
                    part: of.part,
                    machine: of.machine,
                    opened: Moment::on(view.today),
                    symptom: said.clone(),
                    state: CaseState::Open,
                    outcome: String::new(),
                });
                outbox.change(change);
                self.symptom = None;
            }
            if press_ui(ui, text!("Put the case away"), "", None).clicked() {
                self.symptom = None;
            }
            if said.is_empty() {
                ui.label(remark(ui, text!("Say what is wrong: “no picture, three beeps”.")));
            }
        });
    }

    fn case_ui(&mut self, ui: &mut Ui, of: Faulty<'_>, file: &FaultCaseFile, view: &View<'_>, outbox: &mut Outbox) {
        let case = &file.case;
        ui.horizontal_wrapped(|ui| {
            ui.label(strong(&case.symptom));
            ui.label(remark(ui, format!("{} · {}", case.state.label().to_lowercase(), case.opened.on)));
        });
        if !case.outcome.is_empty() {
            ui.label(body(text!("Outcome: {outcome}", outcome = case.outcome)));
        }
        let answer = self.answer(file, view);
        for (at, trial) in file.trials.iter().enumerate() {
            standing::trial_ui(ui, at, trial, answer.doubtful.contains(&trial.id), view);
        }
        if case.state != CaseState::Open {
            let again = link_ui(ui, text!("Look for it again"));
            let name = text!("Look again for: {symptom}", symptom = case.symptom);
            again.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
            if again.clicked() {
                let name = text!("Look again on {tag} for: {symptom}", tag = of.name, symptom = case.symptom);
                let mut change = Change::new(name);
                change.put(FaultCase { state: CaseState::Open, ..case.clone() });
                outbox.change(change);
            }
            return;
        }
        standing::suspects_ui(ui, file, &answer, view, outbox);
        if self.trial.as_ref().is_some_and(|(open, _)| *open == case.id) {
            self.trial_ui(ui, of, file, &answer, view, outbox);
        } else if self.end.as_ref().is_some_and(|(open, _)| *open == case.id) {
            self.end_ui(ui, of, file, &answer, view, outbox);
        } else {
            self.next_ui(ui, file, &answer, view, outbox);
        }
    }

    /// What follows from the trials, worked out once a revision.
    fn answer(&mut self, file: &FaultCaseFile, view: &View<'_>) -> CaseAnswer {
        let revision = view.answers.revision;
        let known = self.answers.get(&file.case.id).filter(|(of, _)| *of == revision);
        if let Some((_, known)) = known {
            return known.clone();
        }
        let answer = of_case(file, view.answers, view.logbook, view.rules);
        self.answers.insert(file.case.id, (revision, answer.clone()));
        answer
    }

    /// The next trial with the rule it goes by, and what else can be done.
    fn next_ui(
        &mut self,
        ui: &mut Ui,
        file: &FaultCaseFile,
        answer: &CaseAnswer,
        view: &View<'_>,
        outbox: &mut Outbox,
    ) {
        if let Some(next) = &answer.next {
            ui.add_space(GRID);
            ui.label(strong(text!("Next: {next}", next = next.sentence(view.logbook))));
            ui.label(remark(ui, next.rule()));
        }
        ui.horizontal_wrapped(|ui| {
            let word = match &answer.next {
                Some(Proposal::MeasureRails { .. }) => Some(text!("Note the resistances…")),
                Some(Proposal::Exchange { .. } | Proposal::TakeOut { .. }) => Some(text!("It was tried…")),
                Some(Proposal::Settle { .. }) => Some(text!("Settle it…")),
                _ => None,
            };
            let is_pressed = word.is_some_and(|word| press_ui(ui, word, "", None).clicked());
            match &answer.next {
                Some(Proposal::MeasureRails { part }) if is_pressed => {
                    outbox.show(*part, Some(Spot::Section(Section::Proofs)));
                }
                Some(Proposal::Settle { part }) if is_pressed => {
                    self.end = Some((file.case.id, EndForm::new(Some(*part))));
                }
                Some(next) if is_pressed => {
                    self.trial = Some((file.case.id, TrialForm::proposed(file, next, view)));
                }
                _ => {}
            }
            if press_ui(ui, text!("Something else was tried…"), "", None).clicked() {
                self.trial = Some((file.case.id, TrialForm::new(file, view)));
            }
            if press_ui(ui, text!("Close the case…"), "", None).clicked() {
                let first = answer.suspects.first().map(|suspect| suspect.part);
                self.end = Some((file.case.id, EndForm::new(first)));
            }
        });
    }

    fn trial_ui(
        &mut self,
        ui: &mut Ui,
        of: Faulty<'_>,
        file: &FaultCaseFile,
        answer: &CaseAnswer,
        view: &View<'_>,
        outbox: &mut Outbox,
    ) {
        let Some((_, form)) = &mut self.trial else { return };
        form.ui(ui, answer, view);
        let read = form.read(file.case.id, view);
        let (mut kept, mut away) = (false, false);
        ui.horizontal_wrapped(|ui| {
            let keep = ui.add_enabled_ui(read.is_ok(), |ui| press_ui(ui, text!("Keep the trial"), "", None)).inner;
            away = press_ui(ui, text!("Put the trial away"), "", None).clicked();
            match read {
                Ok(trial) if keep.clicked() => {
                    let mut change = Change::new(text!("Try on {tag}: {step}", tag = of.name, step = trial.step));
                    change.put(trial);
                    outbox.change(change);
                    kept = true;
                }
                Ok(_) => {}
                Err(wrong) => drop(ui.label(small(wrong).color(ui.tokens().power_unknown))),
            }
        });
        if kept || away {
            self.trial = None;
        }
    }

    fn end_ui(
        &mut self,
        ui: &mut Ui,
        of: Faulty<'_>,
        file: &FaultCaseFile,
        answer: &CaseAnswer,
        view: &View<'_>,
        outbox: &mut Outbox,
    ) {
        let Some((_, form)) = &mut self.end else { return };
        form.ui(ui, answer, view);
        let read = form.read(file, of.name, view);
        let (mut kept, mut away) = (false, false);
        ui.horizontal_wrapped(|ui| {
            let keep =
                ui.add_enabled_ui(read.is_ok(), |ui| press_ui(ui, text!("Keep: the case is closed"), "", None)).inner;
            away = press_ui(ui, text!("Leave the case open"), "", None).clicked();
            match read {
                Ok(change) if keep.clicked() => {
                    outbox.change(change);
                    kept = true;
                }
                Ok(_) => {}
                Err(wrong) => drop(ui.label(small(wrong).color(ui.tokens().power_unknown))),
            }
        });
        if kept || away {
            self.end = None;
        }
    }
}
