//! The part's proofs: which are needed, how each stands, and a form to record one.

use egui::Ui;

use super::about::{About, act_ui, day_text, put};
use crate::record::{Proof, Word};
use crate::text;
use crate::text::say;
use crate::window::forms::{Owner, ProofAct, ProofForm};
use crate::window::outbox::Outbox;
use crate::window::photographs::strip_ui;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, mark_ui, remark};

/// What is half typed.
#[derive(Default)]
pub struct Proofs {
    form: Option<(String, ProofForm)>,
    shows_runs: bool,
}

impl Proofs {
    /// The form that is being filled in.
    pub fn form(&mut self) -> Option<&mut ProofForm> {
        self.form.as_mut().map(|(_, form)| form)
    }

    /// Draws the section.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        if about.answers.proofs.is_empty() {
            ui.label(body(text!("No test is asked of this kind.")));
        }
        for asked in &about.answers.proofs {
            let rule = &asked.rule;
            let say_rule = say(&rule.say);
            ui.horizontal_wrapped(|ui| {
                let tokens = ui.tokens();
                let (mark, colour) = if asked.standing.is_good() {
                    (Mark::Done, tokens.gate_passed)
                } else if rule.required {
                    (Mark::Heed, tokens.power_unknown)
                } else {
                    (Mark::GateProven, tokens.ink_weak)
                };
                mark_ui(ui, mark, colour);
                ui.label(body(say_rule));
                let standing = asked.standing.said(about.view.logbook);
                ui.label(body(standing).color(colour));
                if !rule.required {
                    ui.label(remark(ui, text!("not required")));
                }
                if act_ui(ui, text!("Record it…"), &text!("Record: {proof}…", proof = say_rule)) {
                    self.form =
                        Some((rule.name.clone(), ProofForm::new(rule, Owner::part(about.part().id), about.view)));
                }
            });
            if self.form.as_ref().is_some_and(|(name, _)| *name == rule.name) {
                ui.indent(&rule.name, |ui| self.form_ui(ui, about, say_rule, outbox));
                ui.add_space(2.0 * GRID);
            }
        }
        self.runs_ui(ui, about, outbox);
    }

    fn form_ui(&mut self, ui: &mut Ui, about: &About<'_>, name: &str, outbox: &mut Outbox) {
        let Some((_, form)) = &mut self.form else { return };
        match form.ui(ui, Owner::part(about.part().id), about.view, outbox) {
            Some(ProofAct::Keep(proof, beside)) => {
                let result = proof.result.label().to_lowercase();
                let name = text!("{proof} of {tag}: {result}", proof = name, tag = about.tag(), result = result);
                let mut change = put(name, *proof);
                change.put_all(beside);
                outbox.change(change);
                self.form = None;
            }
            Some(ProofAct::PutAway) => self.form = None,
            None => {}
        }
    }

    /// All runs so far, newest first, once they are asked for.
    fn runs_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let runs = &about.file.proofs;
        if runs.is_empty() {
            return;
        }
        let word = if self.shows_runs {
            text!("Fold the runs").to_owned()
        } else {
            crate::counted!("Show {count} run", "Show {count} runs", runs.len())
        };
        if act_ui(ui, &word, &word) {
            self.shows_runs = !self.shows_runs;
        }
        if self.shows_runs {
            for run in runs.iter().rev() {
                ui.label(body(run_text(run, about)));
                if !run.note.is_empty() {
                    ui.label(remark(ui, &run.note));
                }
                let measured = about.file.readings.iter().filter(|reading| reading.proof == Some(run.id));
                let measured: Vec<String> = measured
                    .map(|reading| format!("{} {} {}", say(&reading.quantity), reading.value, reading.unit))
                    .collect();
                if !measured.is_empty() {
                    ui.label(remark(ui, measured.join(" · ")));
                }
                let logs = about.file.attachments.iter().filter(|file| file.proof == Some(run.id));
                let logs: Vec<&str> = logs.map(|file| file.file_name.as_str()).collect();
                if !logs.is_empty() {
                    ui.label(remark(ui, text!("Log: {files}", files = logs.join(", "))));
                }
                let of_run = |mark: &crate::record::PhotoMark| mark.proof == Some(run.id);
                strip_ui(ui, about.view, about.file.photos.iter().filter(|file| file.marks.iter().any(of_run)), outbox);
            }
        }
    }
}

/// One run of a test in a line.
pub fn run_text(run: &Proof, about: &About<'_>) -> String {
    let name = about.view.rules.proof(&run.test).map_or(run.test.as_str(), |rule| say(&rule.say));
    let mut words = vec![day_text(run.run.on), format!("{name}: {}", run.result.label().to_lowercase())];
    words.extend([&run.rig, &run.who].into_iter().filter(|word| !word.is_empty()).cloned());
    words.extend(run.minutes.map(super::work::time_text));
    words.join(" · ")
}
