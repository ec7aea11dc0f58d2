//! Intake: log a part that has just come in, in one go.
//!
//! A tag, a kind and a photograph make a part; the other steps of the round follow in the order of the trade, and
//! each may be passed over. All that is typed is kept as a draft from letter to letter and offered again after a
//! restart.

mod first;
mod from;
mod header;
mod logging;
mod margin;
mod records;
mod strip;
mod typed;
mod what;

use std::sync::Arc;

use chrono::NaiveDate;
use egui::{Key, KeyboardShortcut, Modifiers, ScrollArea, Ui, UiBuilder, vec2};

use self::first::Ready;
use self::records::{faults, records, said};
use self::strip::StepSaid;
use self::typed::{Step, Typed, next_tag};
use crate::assess::PartAnswers;
use crate::photo::{Failure, TakenIn};
use crate::record::{Id, Kind, LotId, PartId, Word as _};
use crate::text;
use crate::window::desks::sorting::ToIntake;
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::rounds::{PhotosRound, has_settings, new_uuid};
use crate::window::theme::GRID;
use crate::window::widgets::{body, press_ui, section_ui, title_ui};

/// The name under which the store keeps the draft.
const DRAFT: &str = "intake";
/// Below this width the strip lies above the step and the margin below it, points.
const WIDE: f32 = 190.0 * GRID;
/// Below this width the margin goes below the step while the strip stays beside it.
const WIDER: f32 = 230.0 * GRID;

/// On a large screen the desk keeps together.
const WIDEST: f32 = 330.0 * GRID;

const LOG: KeyboardShortcut = KeyboardShortcut::new(Modifiers::COMMAND, Key::Enter);

/// Where the part that is being logged stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Stage {
    #[default]
    Typing,
    /// Photographs are being looked at and copied.
    Keeping,
    /// The change is on its way to the disk.
    Writing { refusals: u32, lot: Option<LotId> },
}

/// What follows from what is typed, worked out when it changes.
struct Follows {
    revision: u64,
    json: String,
    /// Photographs that cannot go in.
    refused: usize,
    answers: PartAnswers,
    steps: Vec<StepSaid>,
    /// What is wrong with tag or kind, to be said beside them.
    tag_says: Vec<String>,
}

/// The desk.
#[derive(Default)]
pub struct Intake {
    typed: Typed,
    /// The key of the part that is being logged.
    part: Option<PartId>,
    /// What was typed when nothing was typed yet.
    fresh: String,
    /// The draft as the store has it.
    saved: Option<String>,
    /// A draft of an earlier run, until it is taken up or put away.
    offered: Option<Box<Typed>>,
    stage: Stage,
    follows: Option<Follows>,
    of_late: (u64, Vec<Kind>),
    ready: Option<Ready>,
    /// How many photographs had been refused when the part was to be logged.
    told: usize,
    /// The frame that the desk was drawn in last.
    drawn: u64,
    /// What the last attempt to log said, and what was typed then.
    says: Option<(String, String)>,
    /// The part that was logged last.
    logged: Option<(PartId, String)>,
    /// Why photographs were left out of it.
    left_out: Vec<String>,
    /// Photographs that came in since the desk was drawn.
    coming: PhotosRound,
    /// The tag that was typed for them.
    coming_tag: Option<String>,
}

impl Intake {
    /// Takes photographs that came in for the part that is being logged, and those that could not, each with why.
    pub fn arrived(&mut self, taken_in: &[TakenIn], failed: &[Failure], today: NaiveDate) {
        self.coming.arrived(taken_in, failed, today);
    }

    /// Takes photographs that the logbook keeps already, for the part that is being logged or a new one.
    pub fn bring(&mut self, to_intake: ToIntake) {
        for (name, photo) in to_intake.photos {
            self.coming.bring(name, photo);
        }
        self.coming_tag = to_intake.tag;
    }

    /// The tag of a part of which something was typed already.
    pub fn half_typed(&self) -> Option<&str> {
        let typed = self.offered.as_deref().unwrap_or(&self.typed);
        let is_typed = self.offered.is_some() || (self.part.is_some() && json(typed) != self.fresh);
        is_typed.then(|| typed.tag.trim())
    }

    /// Whether it keeps a photograph of this content.
    pub fn holds(&self, content: &str) -> bool {
        let offered = self.offered.iter().map(|typed| &typed.photos);
        [&self.coming, &self.typed.photos].into_iter().chain(offered).any(|photos| photos.holds(content))
    }

    /// Puts what came in with what is typed.
    fn take_coming(&mut self) {
        self.typed.photos.append(std::mem::take(&mut self.coming));
        if let Some(tag) = self.coming_tag.take() {
            self.typed.tag = tag;
        }
    }

    /// Draws the desk.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        if self.part.is_none() {
            self.begin(view, outbox);
        }
        if self.offered.is_some() {
            self.offer_ui(ui, outbox);
            return;
        }
        self.arrive(ui.ctx());
        self.take_coming();
        self.go_on(view, outbox);
        self.keys(ui, view);
        self.follow(view);
        ui.set_max_width(ui.available_width().min(WIDEST));
        self.header_ui(ui, view, outbox);
        ui.add_space(2.0 * GRID);
        self.desk_ui(ui, view, outbox);
        if self.follow(view) {
            ui.ctx().request_repaint();
        }
        self.typed.photos.hand_over(Page::Intake, outbox);
        self.save(outbox);
    }

    /// Starts the first part after the logbook was opened, and looks for a draft.
    fn begin(&mut self, view: &View<'_>, outbox: &mut Outbox) {
        self.start(Typed { tag: proposed(view), ..Typed::default() });
        if let Some(draft) = view.store.draft(DRAFT) {
            match serde_json::from_str::<Typed>(&draft) {
                Ok(typed) => self.offered = Some(Box::new(typed)),
                Err(_) => outbox.say(text!("What was half typed at Intake cannot be read by this version.")),
            }
            self.saved = Some(draft);
        }
    }

    fn start(&mut self, typed: Typed) {
        self.fresh = json(&typed);
        self.typed = typed;
        self.part = Some(Id::from_uuid(new_uuid()));
        self.stage = Stage::Typing;
        self.follows = None;
        self.says = None;
        self.ready = Some(Ready::Tag);
    }

    /// Makes the tag ready for the scanner when the desk comes on show.
    fn arrive(&mut self, ctx: &egui::Context) {
        let now = ctx.cumulative_frame_nr();
        if now > self.drawn + 1 && self.typed.step == Step::Tag {
            self.ready = Some(Ready::Tag);
        }
        self.drawn = now;
    }

    /// Keeps the draft up to date: it is on its way to the disk as soon as something was typed.
    fn save(&mut self, outbox: &mut Outbox) {
        let Some(follows) = &self.follows else { return };
        if follows.json == self.fresh {
            if self.saved.take().is_some() {
                outbox.drop_draft(DRAFT);
            }
        } else if self.saved.as_ref() != Some(&follows.json) {
            outbox.save_draft(DRAFT, follows.json.clone());
            self.saved = Some(follows.json.clone());
        }
    }

    fn keys(&mut self, ui: &Ui, view: &View<'_>) {
        let (log, next, back) = ui.input_mut(|input| {
            (
                input.consume_shortcut(&LOG),
                input.consume_key(Modifiers::NONE, Key::PageDown),
                input.consume_key(Modifiers::NONE, Key::PageUp),
            )
        });
        if next || back {
            self.typed.step = self.typed.step.moved(if next { 1 } else { -1 });
            ui.memory_mut(|memory| {
                if let Some(focused) = memory.focused() {
                    memory.surrender_focus(focused);
                }
            });
            if self.typed.step == Step::Tag {
                self.ready = Some(Ready::Tag);
            }
        }
        if log {
            self.log(ui.ctx(), view);
        }
    }

    /// Works out what follows when something was typed or the logbook changed; `true` if it did.
    fn follow(&mut self, view: &View<'_>) -> bool {
        if self.of_late.0 != view.logbook.revision || self.of_late.1.is_empty() {
            self.of_late = (view.logbook.revision, of_late(view));
        }
        let json = json(&self.typed);
        let refused = self.typed.photos.refused().count();
        let known = self.follows.as_ref();
        if known.is_some_and(|follows| {
            follows.revision == view.logbook.revision && follows.json == json && follows.refused == refused
        }) {
            return false;
        }
        let Some(part) = self.part else { return false };
        // What stopped the last attempt is told until something is changed.
        self.says.take_if(|(_, said_of)| *said_of != json);
        let would_be = records(&self.typed, view, part);
        let faults = faults(&self.typed, view);
        let steps = Step::ALL.iter().map(|step| StepSaid {
            step: *step,
            words: said(*step, &self.typed, view, &would_be.file),
            is_wrong: faults.iter().any(|fault| fault.step == *step && !fault.is_missing)
                || (*step == Step::Photos && refused > 0),
        });
        let steps = steps.collect();
        let tag_faults = faults.iter().filter(|fault| fault.step == Step::Tag && !fault.is_missing);
        let tag_says = tag_faults.map(|fault| fault.say.clone()).collect();
        let file = Arc::new(would_be.file);
        let answers = PartAnswers::of(&file, would_be.design.as_ref(), view.rules, view.today);
        self.follows = Some(Follows { revision: view.logbook.revision, json, refused, answers, steps, tag_says });
        true
    }

    /// Strip, step and margin, side by side as far as there is room.
    fn desk_ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let mut room = ui.available_rect_before_wrap();
        room.set_width(room.width().min(WIDEST));
        let here = self.typed.step;
        let steps = self.follows.as_ref().map_or(&[][..], |follows| &follows.steps);
        let mut pressed = None;
        let mut body_rect = room;
        if room.width() >= WIDE {
            let strip = egui::Rect::from_min_size(room.min, vec2(46.0 * GRID, room.height()));
            ui.scope_builder(UiBuilder::new().max_rect(strip), |ui| pressed = strip::strip_ui(ui, here, steps));
            body_rect.min.x = strip.right() + 6.0 * GRID;
        } else {
            let line = ui.scope(|ui| pressed = strip::strip_line_ui(ui, here, steps)).response.rect;
            body_rect.min.y = line.bottom() + 2.0 * GRID;
        }
        let beside = room.width() >= WIDER;
        if beside {
            let margin = egui::Rect::from_min_max(egui::pos2(room.right() - 66.0 * GRID, room.top()), room.max);
            body_rect.max.x = margin.left() - 8.0 * GRID;
            ui.scope_builder(UiBuilder::new().max_rect(margin).id_salt("margin"), |ui| {
                ScrollArea::vertical().id_salt("calls for").auto_shrink(false).show(ui, |ui| self.margin_ui(ui));
            });
        }
        ui.scope_builder(UiBuilder::new().max_rect(body_rect).id_salt("step"), |ui| {
            ScrollArea::vertical().id_salt(("round", here.name())).auto_shrink(false).show(ui, |ui| {
                ui.set_max_width(ui.available_width() - 2.0 * GRID);
                self.step_ui(ui, view, outbox);
                if !beside {
                    section_ui(ui, "");
                    self.margin_ui(ui);
                }
                ui.add_space(6.0 * GRID);
            });
        });
        if let Some(step) = pressed {
            self.typed.step = step;
        }
    }

    fn margin_ui(&self, ui: &mut Ui) {
        if let Some(follows) = &self.follows {
            margin::margin_ui(ui, &follows.answers);
        }
    }

    fn step_ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let Self { typed, of_late, ready, follows, .. } = self;
        let kind = typed.kind.unwrap_or(Kind::Other);
        let file = follows.as_ref().map(|follows| Arc::clone(&follows.answers.file));
        let design = follows.as_ref().and_then(|follows| follows.answers.design.clone());
        if typed.step != Step::Tag {
            title_ui(ui, typed.step.label());
            ui.add_space(GRID);
        }
        match typed.step {
            Step::Tag => {
                let says = follows.as_ref().map_or(&[][..], |follows| &follows.tag_says);
                first::first_ui(ui, typed, &of_late.1, says, ready, view, outbox);
            }
            Step::What => what::what_ui(ui, typed, view),
            Step::From => from::from_ui(ui, typed, view),
            Step::Markings => {
                if let Some(file) = file {
                    // The file as it would be holds what is typed; the round adds that itself.
                    let bare = crate::record::PartFile::new(file.part.clone());
                    typed.markings.ui(ui, &bare, design.as_ref().map(|file| &file.design), view.today);
                    if has_settings(kind) {
                        section_ui(ui, text!("Settings as found"));
                        typed.settings.ui(ui, kind);
                    }
                }
            }
            Step::Survey if typed.kind.is_none() => {
                ui.label(body(text!("Choose a kind first: the questions depend on it.")));
            }
            Step::Survey => typed.survey.ui(ui, view.rules, kind),
            Step::Capacitors => typed.capacitors.ui(ui),
            Step::Photos => typed.photos.ui(ui, Page::Intake, view, outbox),
        }
        if typed.step != typed.step.moved(1) {
            ui.add_space(4.0 * GRID);
            let next = typed.step.moved(1);
            let word = text!("Next: {step}", step = next.label());
            if press_ui(ui, &word, text!("Page Down"), None).clicked() {
                typed.step = next;
            }
        }
    }
}

/// Kinds that were logged of late, the last one first.
fn of_late(view: &View<'_>) -> Vec<Kind> {
    let mut kinds = Vec::new();
    // Keys made later sort later.
    for file in view.logbook.parts.iter().rev().take(60) {
        if !kinds.contains(&file.part.kind) {
            kinds.push(file.part.kind);
        }
    }
    kinds.truncate(5);
    kinds
}

fn proposed(view: &View<'_>) -> String {
    let last = view.logbook.parts.last().map(|file| file.part.tag.as_str());
    next_tag(last, |tag| view.logbook.part_tagged(tag).is_some())
}

fn json(typed: &Typed) -> String {
    // Plain values only: nothing in them can fail to be written.
    serde_json::to_string(typed).unwrap_or_default()
}
