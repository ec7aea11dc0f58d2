//! Work as it is done: what to do and with what care, and the evidence of how it ended.

mod acts;
mod evidence;
mod from_kits;
mod guide;
mod own;

use egui::Ui;

pub use acts::{add_by_hand, add_own, begin, change_own, done, put_behind, take_up_again, wait};
pub use guide::guide_ui;
pub use own::{Own, TOUCHES};

use self::evidence::Evidence;
use self::from_kits::FromKits;
use super::past_date;
use crate::assess::{Task, TaskKey};
use crate::record::{
    Change, Entry, MarkUse, Moment, Nature, PartId, Photo, PhotoMark, PhotoView, Step, Touches, When, Work, WorkId,
    WorkState,
};
use crate::store::Store;
use crate::text;
use crate::window::outbox::{Ask, KeptFile, Outbox, View};
use crate::window::page::Page;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{
    body, choice_ui, field_ui, link_ui, notes_ui, path_field_ui, press_ui, remark, small, strong,
};

/// How a piece of work ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ending {
    Done,
    Waived,
    Failed,
}

impl Ending {
    fn state(self) -> WorkState {
        match self {
            Self::Done => WorkState::Done,
            Self::Waived => WorkState::Waived,
            Self::Failed => WorkState::Failed,
        }
    }
}

/// The evidence that is typed so far.
#[derive(Debug)]
pub struct WorkForm {
    part: PartId,
    task: TaskKey,
    ending: Ending,
    on: String,
    who: String,
    minutes: String,
    used: String,
    evidence: Evidence,
    kits: FromKits,
    reason: String,
    reversible: Option<bool>,
    /// Of work in the restorer's own words that touched the part.
    own: Option<Own>,
    note: String,
    path: String,
    photographs: Vec<KeptFile>,
}

/// What a person did with the form.
#[derive(Debug)]
pub enum WorkAct {
    /// The work with all that follows from it, to be written.
    Keep(Change),
    PutAway,
}

impl WorkForm {
    /// A form that proposes today and the logbook's keeper.
    pub fn new(task: &Task, ending: Ending, view: &View<'_>) -> Self {
        let own = task.work.filter(|_| ending != Ending::Waived).and_then(|id| own_of(task.part, id, view));
        Self {
            part: task.part,
            task: task.key(),
            ending,
            on: view.today.to_string(),
            who: view.logbook.workshop.keeper.clone(),
            minutes: String::new(),
            used: String::new(),
            evidence: Evidence::new(task, view),
            kits: if ending == Ending::Done { FromKits::new(task, view) } else { FromKits::default() },
            reason: String::new(),
            reversible: None,
            own,
            note: String::new(),
            path: String::new(),
            photographs: Vec::new(),
        }
    }

    /// Whether it is about this task.
    pub fn is_about(&self, task: &Task) -> bool {
        self.part == task.part && self.task == task.key()
    }

    /// The part that is worked on.
    pub fn part(&self) -> PartId {
        self.part
    }

    /// Takes photographs that came in while this form was open.
    pub fn kept(&mut self, files: Vec<KeptFile>) {
        self.photographs.extend(files.into_iter().filter(|file| file.photograph.is_some()));
    }

    /// Whether a photograph of this content goes with it.
    pub fn holds(&self, content: &str) -> bool {
        self.photographs.iter().any(|file| file.content == content)
    }

    /// Draws the form. `page` is where it stands: photographs come back to that page, and from there by
    /// [`WorkForm::kept`].
    pub fn ui(
        &mut self,
        ui: &mut Ui,
        task: &Task,
        view: &View<'_>,
        page: Page,
        outbox: &mut Outbox,
    ) -> Option<WorkAct> {
        ui.set_max_width(ui.available_width().min(180.0 * GRID));
        let title = match self.ending {
            Ending::Done => text!("Done: {work}", work = task.title()),
            Ending::Waived => text!("Not to be done: {work}", work = task.title()),
            Ending::Failed => text!("Failed: {work}", work = task.title()),
        };
        ui.label(strong(title));
        ui.horizontal_wrapped(|ui| {
            field_ui(ui, text!("On"), &mut self.on, Some(28.0 * GRID));
            field_ui(ui, text!("Who"), &mut self.who, Some(40.0 * GRID));
            if self.ending != Ending::Waived {
                field_ui(ui, text!("Minutes at it"), &mut self.minutes, Some(24.0 * GRID));
            }
        });
        match self.ending {
            Ending::Done => self.done_ui(ui, task, view, page, outbox),
            Ending::Waived => drop(notes_ui(ui, text!("Why it is left"), &mut self.reason, 2)),
            Ending::Failed => drop(notes_ui(ui, text!("What happened"), &mut self.reason, 2)),
        }
        if let Some(own) = &mut self.own {
            own.ui(ui, None);
        }
        notes_ui(ui, text!("Note"), &mut self.note, 1);
        self.ending_ui(ui, task, view)
    }

    fn done_ui(&mut self, ui: &mut Ui, task: &Task, view: &View<'_>, page: Page, outbox: &mut Outbox) {
        field_ui(ui, text!("What was used"), &mut self.used, None);
        if self.used.is_empty() && !task.materials().is_empty() {
            let usual: Vec<&str> = task.materials().iter().map(|material| text::say(material)).collect();
            let usual = usual.join(", ");
            if link_ui(ui, &text!("As usual: {materials}", materials = usual)).clicked() {
                self.used = usual;
            }
        }
        self.kits.ui(ui, view);
        self.evidence.ui(ui, view);
        if self.own.map_or(task.nature(), |own| own.nature) != Nature::Care {
            let choices = [
                (None, text!("Not told")),
                (Some(true), text!("Can be undone")),
                (Some(false), text!("Cannot be undone")),
            ];
            choice_ui(ui, text!("Can it be undone?"), &mut self.reversible, &choices, 44.0 * GRID);
        }
        let mut ask = false;
        let label = text!("Photograph after the work");
        if let Some(path) = path_field_ui(ui, label, &mut self.path, text!("Add the photograph"), &mut ask) {
            self.path.clear();
            outbox.keep_files(page, vec![path], true);
        }
        if ask {
            outbox.ask(Ask::Photographs(page));
        }
        for file in &self.photographs {
            ui.label(body(text!("Goes with it: {name}", name = file.file_name)));
        }
    }

    fn ending_ui(&mut self, ui: &mut Ui, task: &Task, view: &View<'_>) -> Option<WorkAct> {
        let mut act = None;
        let read = self.read(task, view);
        ui.add_space(GRID);
        ui.horizontal_wrapped(|ui| {
            let word = match self.ending {
                Ending::Done => text!("Keep: it is done"),
                Ending::Waived => text!("Keep: it is waived"),
                Ending::Failed => text!("Keep: it failed"),
            };
            let keep = ui.add_enabled_ui(read.is_ok(), |ui| press_ui(ui, word, "", None)).inner;
            if press_ui(ui, text!("Put the form away"), "", None).clicked() {
                act = Some(WorkAct::PutAway);
            }
            match read {
                Ok(change) if keep.clicked() => act = Some(WorkAct::Keep(change)),
                Ok(_) => {}
                Err(wrong) => drop(ui.label(small(wrong).color(ui.tokens().power_unknown))),
            }
        });
        if !task.voids().is_empty() && self.ending != Ending::Waived {
            let proofs: Vec<&str> =
                task.voids().iter().filter_map(|name| Some(text::say(&view.rules.proof(name)?.say))).collect();
            let said = text!("After it these proofs count no longer: {proofs}", proofs = proofs.join(", "));
            ui.label(remark(ui, said));
        }
        act
    }

    /// What would be written, or what is still wrong or missing.
    fn read(&self, task: &Task, view: &View<'_>) -> Result<Change, String> {
        let Some(file) = view.logbook.part(self.part) else {
            return Err(text!("This part is no longer in the logbook.").to_owned());
        };
        let on = past_date(&self.on, view)?;
        let minutes = minutes(&self.minutes)?;
        if self.ending == Ending::Waived && self.reason.trim().is_empty() {
            return Err(text!("Say why it is left: the reason stays with the part.").to_owned());
        }
        if self.ending == Ending::Failed && self.reason.trim().is_empty() {
            return Err(text!("Say what happened.").to_owned());
        }
        if self.own.is_some_and(|own| own.touches == Touches::Unstated) {
            return Err(text!("Choose whether it touched something electrical.").to_owned());
        }
        let ended = |work: Work| Work {
            state: self.ending.state(),
            changed: Moment { on, sequence: 0 },
            who: self.who.trim().to_owned(),
            minutes,
            used: self.used.trim().to_owned(),
            reason: self.reason.trim().to_owned(),
            reversible: self.reversible,
            note: self.note.trim().to_owned(),
            ..self.own.map_or_else(|| work.clone(), |own| own.on(work.clone()))
        };
        let mut change = acts::end(file, task, self.ending, ended, view.rules);
        let work = change.steps.iter().find_map(|step| match step {
            Step::Put(Entry::Work(work)) if work.state == self.ending.state() => Some(work.clone()),
            _ => None,
        });
        if let Some(work) = work.as_ref().filter(|_| self.ending == Ending::Done) {
            self.kits.check(self.evidence.materials(), view)?;
            self.evidence.write(&mut change, work, view)?;
            self.kits.write(&mut change, file, view)?;
        }
        let work = work.map(|work| work.id);
        for kept in &self.photographs {
            put_photograph(&mut change, file.part.id, kept, work, on);
        }
        Ok(change)
    }
}

/// What is told of a record in the restorer's own words.
fn own_of(part: PartId, work: WorkId, view: &View<'_>) -> Option<Own> {
    view.logbook.part(part)?.work.iter().find(|known| known.id == work).and_then(Own::of)
}

/// Puts a photograph taken after the work, with the mark that ties the two.
fn put_photograph(change: &mut Change, part: PartId, kept: &KeptFile, work: Option<WorkId>, on: When) {
    let Some((extension, [width_px, height_px])) = kept.photograph.clone() else { return };
    let photo = Photo {
        id: Store::new_id(),
        part: Some(part),
        machine: None,
        lot: None,
        content: kept.content.clone(),
        extension,
        width_px,
        height_px,
        added: Moment { on, sequence: 0 },
        taken: kept.taken,
        view: PhotoView::After,
        caption: String::new(),
        is_map: false,
    };
    // The whole picture shows the work: a pin in its middle ties the two.
    let place = PhotoMark::new(Store::new_id(), photo.id, MarkUse::Place, vec![[0.5, 0.5]]);
    let mark = PhotoMark { work, ..place };
    change.put(photo).put(mark);
}

/// Typed minutes; nothing typed is nothing told.
fn minutes(typed: &str) -> Result<Option<u32>, String> {
    match typed.trim() {
        "" => Ok(None),
        typed => typed
            .parse()
            .map(Some)
            .map_err(|_| text!("“{typed}” is no number of minutes: write 90 for an hour and a half.", typed = typed)),
    }
}
