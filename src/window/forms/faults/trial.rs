//! One trial as it is noted: in what configuration, one swap, codes heard or seen, what it showed.

use egui::Ui;

use crate::assess::PartState;
use crate::assess::faults::{CaseAnswer, Proposal};
use crate::assess::reason::part_name;
use crate::record::{FaultCaseFile, FaultCaseId, Moment, PartId, Trial, TrialResult, Word};
use crate::store::Store;
use crate::text;
use crate::window::forms::past_date;
use crate::window::outbox::View;
use crate::window::theme::GRID;
use crate::window::widgets::{Asking, Pick, Picker, choice_ui, field_ui, link_ui, notes_ui, remark};

/// What is typed so far.
#[derive(Debug)]
pub struct TrialForm {
    on: String,
    configuration: String,
    step: String,
    suspect: Option<PartId>,
    known_good: Option<PartId>,
    picker: Option<Picker<PartId>>,
    codes: String,
    result: TrialResult,
    note: String,
}

impl TrialForm {
    /// A form that knows what is fitted.
    pub fn new(file: &FaultCaseFile, view: &View<'_>) -> Self {
        Self {
            on: view.today.to_string(),
            configuration: configuration(file, view),
            step: String::new(),
            suspect: None,
            known_good: None,
            picker: None,
            codes: String::new(),
            result: TrialResult::Undecided,
            note: String::new(),
        }
    }

    /// A form of the trial that was proposed.
    pub fn proposed(file: &FaultCaseFile, next: &Proposal, view: &View<'_>) -> Self {
        let (suspect, known_good) = match next {
            Proposal::Exchange { suspect, known_good, .. } => (Some(*suspect), Some(*known_good)),
            Proposal::TakeOut { suspect, .. } => (Some(*suspect), None),
            _ => (None, None),
        };
        let named = |part: PartId| part_name(view.logbook, part);
        let step = match (suspect.map(named), known_good.map(named)) {
            (Some(out), Some(good)) => text!("Exchanged {part} for {good}", part = out, good = good),
            (Some(out), None) => text!("Took {part} out", part = out),
            _ => String::new(),
        };
        Self { step, suspect, known_good, ..Self::new(file, view) }
    }

    /// Draws the fields.
    pub fn ui(&mut self, ui: &mut Ui, answer: &CaseAnswer, view: &View<'_>) {
        ui.set_max_width(ui.available_width().min(180.0 * GRID));
        notes_ui(ui, text!("What was fitted and set"), &mut self.configuration, 2);
        field_ui(ui, text!("What was tried"), &mut self.step, None);
        let mut suspects: Vec<(Option<PartId>, String)> = vec![(None, text!("None").to_owned())];
        suspects.extend(answer.suspects.iter().map(|one| (Some(one.part), part_name(view.logbook, one.part))));
        let suspects: Vec<(Option<PartId>, &str)> =
            suspects.iter().map(|(part, name)| (*part, name.as_str())).collect();
        ui.horizontal_wrapped(|ui| {
            if choice_ui(ui, text!("Which part was out"), &mut self.suspect, &suspects, 80.0 * GRID) {
                self.known_good = None;
            }
            let results: Vec<(TrialResult, &str)> = TrialResult::ALL.iter().map(|word| (*word, word.label())).collect();
            choice_ui(ui, text!("What it showed"), &mut self.result, &results, 44.0 * GRID);
        });
        self.known_good_ui(ui, view);
        ui.horizontal_wrapped(|ui| {
            field_ui(ui, text!("Codes heard or seen"), &mut self.codes, Some(70.0 * GRID));
            field_ui(ui, text!("Tried on"), &mut self.on, Some(28.0 * GRID));
        });
        field_ui(ui, text!("Note on the trial"), &mut self.note, None);
    }

    /// The part put in: one of the same kind, the proven ones first.
    fn known_good_ui(&mut self, ui: &mut Ui, view: &View<'_>) {
        let Some(out) = self.suspect else { return };
        let named = self.known_good.map_or_else(|| text!("none").to_owned(), |part| part_name(view.logbook, part));
        let Some(picker) = &mut self.picker else {
            ui.horizontal_wrapped(|ui| {
                ui.label(remark(ui, text!("Part put in for it: {part}", part = named)));
                if link_ui(ui, text!("Choose the part put in…")).clicked() {
                    self.picker = Some(Picker::ready());
                }
            });
            return;
        };
        let kind = view.answers.part(out).map(|part| part.file.part.kind);
        let choices = || {
            let like = view.answers.parts.iter().filter(|part| part.part != out);
            let like = like.filter(|part| Some(part.file.part.kind) == kind && part.file.custody_now().is_at_hand());
            let mut like: Vec<_> = like.map(|part| (part.state != PartState::Proven, part)).collect();
            like.sort_by_key(|(is_unproven, part)| (*is_unproven, part.file.part.tag.clone()));
            let said = like.into_iter().map(|(_, part)| {
                let title = view.logbook.title_of(&part.file);
                (part.part, format!("{}  {title}, {}", part.file.part.tag, part.state.label().to_lowercase()))
            });
            said.collect::<Vec<_>>()
        };
        let asking = Asking::one(text!("Known-good part put in"));
        match picker.ui(ui, asking, (view.answers.revision, out), choices) {
            Some(Pick::One(part)) => {
                self.known_good = Some(part);
                self.picker = None;
            }
            Some(_) => self.picker = None,
            None => {}
        }
    }

    /// The trial.
    ///
    /// # Errors
    /// Says what is missing.
    pub fn read(&self, case: FaultCaseId, view: &View<'_>) -> Result<Trial, String> {
        if self.step.trim().is_empty() {
            return Err(text!("Say what was tried.").to_owned());
        }
        Ok(Trial {
            id: Store::new_id(),
            case,
            tried: Moment { on: past_date(&self.on, view)?, sequence: 0 },
            configuration: self.configuration.trim().to_owned(),
            step: self.step.trim().to_owned(),
            suspect: self.suspect,
            known_good: self.suspect.and(self.known_good),
            result: self.result,
            note: self.note.trim().to_owned(),
            codes: self.codes.trim().to_owned(),
        })
    }
}

/// The configuration of the last trial; before any, all that is fitted in the machine or inside the part.
fn configuration(file: &FaultCaseFile, view: &View<'_>) -> String {
    if let Some(last) = file.trials.last() {
        return last.configuration.clone();
    }
    let parts: Vec<PartId> = match (file.case.part, file.case.machine.and_then(|id| view.logbook.machine(id))) {
        (Some(part), _) => std::iter::once(part).chain(view.answers.inside(part)).collect(),
        (None, Some(machine)) => machine.fitted().map(|fitting| fitting.part).collect(),
        (None, None) => Vec::new(),
    };
    let named: Vec<String> = parts.into_iter().map(|part| part_name(view.logbook, part)).collect();
    named.join(", ")
}
