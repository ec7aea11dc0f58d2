//! What was written about the part, of all kinds, the newest first.

use std::sync::Arc;

use egui::Ui;

use super::about::{About, act_ui, day_text};
use crate::assess::reason::finding_name;
use crate::record::{Moment, PartFile, Word};
use crate::text;
use crate::window::theme::GRID;
use crate::window::widgets::{body, remark};

/// Lines shown before all are asked for.
const SHOWN: usize = 12;

/// The lines, gathered once a revision of the part.
#[derive(Default)]
pub struct Written {
    lines: Option<(Arc<PartFile>, Vec<Line>)>,
    shows_all: bool,
}

struct Line {
    moment: Moment,
    words: String,
}

impl Written {
    /// Draws the section.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>) {
        if self.lines.as_ref().is_none_or(|(file, _)| !Arc::ptr_eq(file, about.file)) {
            self.lines = Some((Arc::clone(about.file), lines(about)));
        }
        let Some((_, lines)) = &self.lines else { return };
        if lines.is_empty() {
            ui.label(body(text!("Nothing but what stands above.")));
        }
        let shown = if self.shows_all { lines.len() } else { SHOWN };
        for line in lines.iter().take(shown) {
            ui.horizontal_top(|ui| {
                ui.allocate_ui(egui::vec2(24.0 * GRID, 5.0 * GRID), |ui| {
                    ui.set_width(24.0 * GRID);
                    ui.label(remark(ui, day_text(line.moment.on)));
                });
                ui.vertical(|ui| ui.label(body(&line.words)));
            });
        }
        if lines.len() > SHOWN {
            let word = if self.shows_all {
                text!("Only the newest lines").to_owned()
            } else {
                text!("All {count} lines", count = lines.len())
            };
            if act_ui(ui, &word, &word) {
                self.shows_all = !self.shows_all;
            }
        }
    }
}

fn lines(about: &About<'_>) -> Vec<Line> {
    let file = about.file;
    let mut lines = Vec::new();
    let mut add = |moment: Moment, words: String| lines.push(Line { moment, words });
    for marking in &file.markings {
        add(marking.read, text!("Marking read: {text}", text = marking.text));
    }
    for survey in &file.surveys {
        let words = [&survey.who, &survey.why, &survey.note];
        let words: Vec<String> = words.into_iter().filter(|word| !word.is_empty()).cloned().collect();
        add(survey.looked, text!("Surveyed. {words}", words = words.join(". ")).trim_end().to_owned());
    }
    for finding in &file.findings {
        let name = finding_name(about.view.logbook, about.view.rules, file.part.id, finding.finding.id);
        for look in &finding.looks {
            let words = [&look.who, &look.reason].into_iter().filter(|word| !word.is_empty()).cloned();
            let state = look.state.label().to_lowercase();
            add(look.looked, std::iter::once(format!("{name}: {state}")).chain(words).collect::<Vec<_>>().join(", "));
        }
    }
    for work in file.work.iter().filter(|work| work.state != crate::record::WorkState::Open) {
        let title = super::work::title_of(work, about);
        let words = [&work.reason, &work.note].into_iter().filter(|word| !word.is_empty()).cloned();
        let words: Vec<String> = std::iter::once(format!("{}: {title}", work.state.label())).chain(words).collect();
        add(work.changed, words.join(". "));
    }
    for reading in &file.readings {
        add(reading.measured, format!("{}: {} {}", reading.quantity, reading.value, reading.unit));
    }
    for setting in &file.settings {
        add(setting.found, format!("{}: {}", setting.name, setting.value));
    }
    for proof in &file.proofs {
        let name = about.view.rules.proof(&proof.test).map_or(proof.test.as_str(), |rule| crate::text::say(&rule.say));
        add(
            proof.run,
            format!("{name}: {}. {}", proof.result.label().to_lowercase(), proof.note)
                .trim_end_matches(". ")
                .to_owned(),
        );
    }
    for case in &file.cases {
        add(case.case.opened, text!("Fault: {symptom}", symptom = case.case.symptom));
        for trial in &case.trials {
            add(trial.tried, text!("Tried: {step}", step = trial.step));
        }
    }
    for event in &file.custody {
        add(event.happened, format!("{}: {}", event.act.label(), event.party));
    }
    for photo in &file.photos {
        add(photo.photo.added, text!("Photograph: {what}", what = photo.photo.view.label().to_lowercase()));
    }
    for paper in &file.attachments {
        add(paper.added, text!("File: {name}", name = paper.file_name));
    }
    lines.sort_by_key(|line| std::cmp::Reverse(line.moment.order()));
    lines
}
