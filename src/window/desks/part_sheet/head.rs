//! The head of the sheet: which part, what to do next, and whether power may be applied.

use egui::{Button, Ui, vec2};

use super::about::{About, act_ui};
use super::placing::Placing;
use super::section::Section;
use super::spot::Spot;
use crate::assess::{Reason, Task, Verdict};
use crate::counted;
use crate::record::{Custody, Hold, Kind, Word, WorkState};
use crate::text;
use crate::text::say;
use crate::window::outbox::Outbox;
use crate::window::page::Page;
use crate::window::photographs::thumbnail_ui;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{PowerWord, body, first_ui, hold_ui, marking, press_ui, remark, title_ui};

/// Reasons shown before the rest is asked for.
const REASONS: usize = 3;

/// What the head keeps.
#[derive(Debug, Default)]
pub struct Head {
    shows_all_reasons: bool,
}

impl Head {
    /// Draws the head.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, placing: &mut Placing, outbox: &mut Outbox) -> Option<Spot> {
        let mut wish = None;
        ui.horizontal_top(|ui| {
            if let Some(photo) = crate::window::pictures::face_of(&about.file.photos) {
                let size = if ui.available_width() < 160.0 * GRID { vec2(32.0, 24.0) } else { vec2(52.0, 39.0) };
                let name = text!("First photograph of {tag}", tag = about.tag());
                if thumbnail_ui(ui, about.view, photo, size * GRID, &name).clicked() {
                    outbox.look_at(photo.id, about.file.photos.iter().map(|file| file.photo.id));
                }
                ui.add_space(3.0 * GRID);
            }
            ui.vertical(|ui| {
                name_ui(ui, about);
                ui.add_space(2.0 * GRID);
                if let Some(next) = next_ui(ui, about) {
                    wish = Some(next);
                }
                ui.add_space(2.0 * GRID);
                where_ui(ui, about, outbox);
                placing.ui(ui, about, outbox);
            });
        });
        ui.add_space(2.0 * GRID);
        self.power_ui(ui, about, outbox).or(wish)
    }

    /// Whether power may be applied; the spot of the reason that was pressed.
    fn power_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) -> Option<Spot> {
        let power = about.view.answers.power_of_part(about.part().id)?;
        let mut spot = None;
        let word = match power.verdict {
            Verdict::No => PowerWord::No,
            Verdict::NotKnown => PowerWord::Unknown,
            Verdict::Yes => PowerWord::Yes,
        };
        crate::window::widgets::power_ui(ui, word);
        ui.label(remark(
            ui,
            if about.part().kind == Kind::PowerSupply {
                text!("on the bench, into a dummy load and nothing else")
            } else {
                text!("to this part alone, on the bench")
            },
        ));
        let shown = if self.shows_all_reasons { power.reasons.len() } else { REASONS };
        for reason in power.reasons.iter().take(shown) {
            let sentence = reason.sentence(about.view.logbook, about.view.rules);
            let button = Button::new(body(sentence).color(ui.tokens().ink)).frame(false).wrap();
            if ui.add(button).on_hover_text(text!("Shows where it is settled")).clicked() {
                match reason {
                    Reason::TouchUnstated { work, .. } => outbox.ask_touched(*work),
                    reason => spot = Spot::of(reason),
                }
            }
        }
        let rest = power.reasons.len().saturating_sub(REASONS);
        if rest > 0 {
            let more = counted!("and {count} reason more", "and {count} reasons more", rest);
            let word = if self.shows_all_reasons { text!("Fewer reasons") } else { &more };
            if act_ui(ui, word, word) {
                self.shows_all_reasons = !self.shows_all_reasons;
            }
        }
        spot
    }
}

/// Tag, title, kind and state.
fn name_ui(ui: &mut Ui, about: &About<'_>) {
    ui.horizontal_wrapped(|ui| {
        let tag = marking(about.tag()).font(egui::FontId::new(20.0, TextRole::Marking.font().family));
        ui.label(tag);
        title_ui(ui, about.view.logbook.title_of(about.file));
    });
    ui.horizontal_wrapped(|ui| {
        ui.label(body(about.part().kind.label()));
        ui.label(remark(ui, "·"));
        ui.label(body(about.answers.state.label()));
    });
}

/// The one thing that the eye meets: what to do next.
fn next_ui(ui: &mut Ui, about: &About<'_>) -> Option<Spot> {
    let answers = about.answers;
    if let Some(task) = answers.tasks.iter().find(|task| task.doable).or(answers.tasks.first()) {
        return next_task_ui(ui, about, task);
    }
    if matches!(about.file.custody_now(), Custody::GivenBack | Custody::Sold | Custody::Scrapped) {
        first_ui(ui, text!("Not in the workshop any more"));
        return None;
    }
    if about.part().design.is_none() && about.part().name.is_empty() {
        first_ui(ui, text!("Next: say what it is"));
        let go = press_ui(ui, text!("Identify it"), "", None).clicked();
        return go.then_some(Spot::Section(Section::Identity));
    }
    if about.file.surveys.is_empty() {
        first_ui(ui, text!("Next: look it over"));
        ui.label(remark(ui, text!("It was never surveyed: nobody knows what state it is in.")));
        return press_ui(ui, text!("Survey it"), "", None).clicked().then_some(Spot::Survey);
    }
    if !answers.undecided.is_empty() {
        first_ui(ui, text!("Next: decide what is to be done"));
        let undecided = answers.undecided.len();
        ui.label(remark(
            ui,
            counted!("{count} finding has no work yet", "{count} findings have no work yet", undecided),
        ));
        return press_ui(ui, text!("Look at the findings"), "", None)
            .clicked()
            .then_some(Spot::Section(Section::Condition));
    }
    if let Some(proof) = answers.proofs.iter().find(|proof| proof.is_lacking()) {
        first_ui(ui, text!("Next: {proof}", proof = say(&proof.rule.say)));
        ui.label(remark(ui, text!("It {standing}.", standing = proof.standing.said(about.view.logbook))));
        return press_ui(ui, text!("Go to the proofs"), "", None).clicked().then_some(Spot::Section(Section::Proofs));
    }
    first_ui(ui, text!("Nothing outstanding"));
    None
}

fn next_task_ui(ui: &mut Ui, about: &About<'_>, task: &Task) -> Option<Spot> {
    first_ui(ui, text!("Next: {work}", work = lower_first(task.title())));
    ui.horizontal_wrapped(|ui| {
        hold_ui(ui, task.hold);
        let mut words = vec![before_text(task.hold).to_owned()];
        if task.minutes() > 0 {
            words.push(counted!("{count} minute", "{count} minutes", task.minutes() as usize));
        }
        match task.state {
            WorkState::Doing => words.push(text!("under way").to_owned()),
            WorkState::Waiting => words.push(text!("waits for materials").to_owned()),
            WorkState::Failed => words.push(text!("failed when it was tried").to_owned()),
            _ => {}
        }
        let rest = about.answers.tasks.len() - 1;
        if rest > 0 {
            words.push(counted!("{count} more after it", "{count} more after it", rest));
        }
        ui.label(remark(ui, words.join(" · ")));
    });
    let go = press_ui(ui, text!("Go to the work"), "", None).clicked();
    go.then(|| Spot::Task(task.key()))
}

/// What a hold means, going on from the work.
pub fn before_text(hold: Hold) -> &'static str {
    match hold {
        Hold::Storage => text!("before it goes on the shelf"),
        Hold::Power => text!("before power is applied"),
        Hold::Fitting => text!("before it goes into a machine"),
        Hold::Ready => text!("before its machine is ready"),
        Hold::Looks => text!("for its looks; nothing waits for it"),
    }
}

/// Where it is, who has it, what it sits in.
fn where_ui(ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
    let logbook = about.view.logbook;
    let custody = about.file.custody_now();
    ui.horizontal_wrapped(|ui| {
        let place = about.part().place.map(|place| logbook.place_path(place));
        ui.label(body(place.unwrap_or_else(|| text!("No place told").to_owned())));
        if custody != Custody::Mine {
            ui.label(remark(ui, "·"));
            crate::window::widgets::badge_ui(
                ui,
                Mark::Heed,
                custody.label(),
                custody.label(),
                ui.tokens().hold_fitting,
            );
            if let Some(event) = about.file.custody.last().filter(|event| !event.party.is_empty()) {
                let party = text!("{party}, since {day}", party = event.party, day = event.happened.on);
                ui.label(body(party));
            }
        }
        if about.part().is_quarantined() {
            ui.label(remark(ui, "·"));
            let kept = text!("Kept apart: {why}", why = about.part().quarantine);
            crate::window::widgets::badge_ui(ui, Mark::HoldStorage, &kept, &kept, ui.tokens().hold_storage);
        }
        if let Some(outer) = about.part().inside.and_then(|outer| logbook.part(outer)) {
            ui.label(remark(ui, "·"));
            let name = text!("Inside {tag}", tag = outer.part.tag);
            if act_ui(ui, &name, &name) {
                outbox.go(Page::Part(outer.part.id));
            }
        }
    });
}

/// A sentence's first letter made small, to go on after a colon.
pub fn lower_first(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map(|first| first.to_lowercase().chain(letters).collect()).unwrap_or_default()
}
