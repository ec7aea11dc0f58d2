//! How a case stands: its trials, and how much suspicion lies on each part.

use egui::Ui;

use crate::assess::faults::{CaseAnswer, Suspicion};
use crate::assess::reason::part_name;
use crate::record::{FaultCaseFile, PartId, Trial, TrialId, Word};
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, link_ui, mark_ui, remark, small};

/// One trial in a line, with what it was made in below it.
pub fn trial_ui(ui: &mut Ui, at: usize, trial: &Trial, is_doubtful: bool, view: &View<'_>) {
    let tag = |part: Option<PartId>| part.and_then(|id| view.logbook.part(id)).map(|file| file.part.tag.clone());
    let mut words = vec![trial.step.clone()];
    words.extend(tag(trial.suspect).map(|tag| text!("{tag} out", tag = tag)));
    words.extend(tag(trial.known_good).map(|tag| text!("{tag} in", tag = tag)));
    words.push(trial.result.label().to_lowercase());
    ui.label(body(format!("{}  {}", at + 1, words.join(" · "))));
    let mut beside = vec![trial.tried.on.to_string()];
    if !trial.codes.is_empty() {
        beside.push(text!("codes: {codes}", codes = trial.codes));
    }
    beside.extend([&trial.configuration, &trial.note].into_iter().filter(|word| !word.is_empty()).cloned());
    ui.indent(("trial", at), |ui| {
        ui.label(remark(ui, beside.join(" · ")));
        if is_doubtful {
            let doubt = text!("The part put in had passed no proof, so it settles little.");
            ui.label(small(doubt).color(ui.tokens().power_unknown));
        }
    });
}

/// The suspects, most suspected first, and what is no part at all.
pub fn suspects_ui(ui: &mut Ui, file: &FaultCaseFile, answer: &CaseAnswer, view: &View<'_>, outbox: &mut Outbox) {
    let tokens = ui.tokens();
    let place = |by: TrialId| file.trials.iter().position(|trial| trial.id == by).map_or(0, |at| at + 1);
    ui.add_space(GRID);
    for suspect in &answer.suspects {
        let (mark, word, colour) = match suspect.suspicion {
            Suspicion::Suspected => (Mark::PowerUnknown, text!("suspected").to_owned(), tokens.ink_weak),
            Suspicion::Cleared { by } => {
                (Mark::Done, text!("cleared by trial {number}", number = place(by)), tokens.power_yes)
            }
            Suspicion::Accused { by } => {
                (Mark::Heed, text!("accused by trial {number}", number = place(by)), tokens.power_no)
            }
        };
        ui.horizontal_wrapped(|ui| {
            mark_ui(ui, mark, colour);
            ui.label(body(share_text(suspect.share)));
            if link_ui(ui, &part_name(view.logbook, suspect.part)).clicked() {
                outbox.go(Page::Part(suspect.part));
            }
            ui.label(body(word).color(colour));
        });
    }
    ui.horizontal_wrapped(|ui| {
        mark_ui(ui, Mark::PowerUnknown, tokens.ink_weak);
        ui.label(body(share_text(answer.elsewhere)));
        ui.label(body(text!("no part: contacts, settings, programs")).color(tokens.ink_weak));
    });
}

/// "34 %".
fn share_text(share: f64) -> String {
    text!("{share} % of suspicion", share = format!("{:.0}", share * 100.0))
}
