//! Candidates for a role, ranked: every part that could fill it, and two to four of them side by side.

use std::sync::Arc;

use egui::{Checkbox, Role as Accessible, Ui, WidgetInfo, vec2};

use super::acts;
use super::fit::{Told, mark_of, told_ui};
use crate::assess::fit::candidates::{Candidate, Candidates};
use crate::assess::outstanding::hours_text;
use crate::assess::{Answers, PartState};
use crate::record::{MachineFile, PartId, Role, RoleId, Word};
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::photographs::thumbnail_ui;
use crate::window::pictures::face_of;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{badge_ui, body, link_ui, press_if_ui, press_ui, remark, strong};

/// How many candidates are shown before the rest is folded away.
const SHOWN: usize = 8;
/// No more stand side by side.
const MOST: usize = 4;
/// A column of the comparison is no narrower than this, points.
const COLUMN: f32 = 50.0 * GRID;

/// The candidates of one role on show.
pub struct CandidateList {
    pub role: RoleId,
    ticked: Vec<PartId>,
    shows_all: bool,
    gathered: Option<Gathered>,
}

struct Gathered {
    of: Arc<Answers>,
    /// The parts whose reasons are gathered.
    compared: Vec<PartId>,
    rows: Vec<Row>,
}

/// A candidate in words.
struct Row {
    candidate: Candidate,
    name: String,
    facts: Vec<String>,
    losses: Vec<String>,
    /// Gathered only while it stands in the comparison.
    told: Vec<Told>,
}

/// What a person did.
pub enum CandidateAct {
    /// This part is meant for the role.
    Plan(PartId),
    Away,
}

impl CandidateList {
    pub fn new(role: RoleId) -> Self {
        Self { role, ticked: Vec::new(), shows_all: false, gathered: None }
    }

    fn gather(&mut self, machine: &MachineFile, view: &View<'_>) {
        let is_same = |known: &Gathered| Arc::ptr_eq(&known.of, view.answers) && known.compared == self.ticked;
        if self.gathered.as_ref().is_some_and(is_same) {
            return;
        }
        let found = Candidates::of(view.answers, view.rules, machine.machine.id, self.role, None);
        let mut rows = Vec::new();
        if let Some(mut found) = found {
            for candidate in found.ranked.clone() {
                let is_compared = self.ticked.contains(&candidate.part);
                let because = if is_compared { found.because(&candidate) } else { Vec::new() };
                rows.push(Row::of(
                    candidate,
                    because.iter().map(|because| Told::of(because, view.logbook, view.rules)).collect(),
                    view,
                ));
            }
        }
        self.ticked.retain(|part| rows.iter().any(|row| row.candidate.part == *part));
        self.gathered = Some(Gathered { of: Arc::clone(view.answers), compared: self.ticked.clone(), rows });
    }

    /// Draws the ranked list, and below it those that are ticked side by side.
    pub fn ui(
        &mut self,
        ui: &mut Ui,
        machine: &MachineFile,
        role: &Role,
        view: &View<'_>,
        outbox: &mut Outbox,
    ) -> Option<CandidateAct> {
        self.gather(machine, view);
        let Self { ticked, shows_all, gathered: Some(Gathered { rows, .. }), .. } = self else { return None };
        let mut act = None;
        ui.horizontal_wrapped(|ui| {
            let title = text!("Candidates for {role}, best first", role = acts::role_title(role));
            ui.label(strong(title));
            if link_ui(ui, text!("Put the candidates away")).clicked() {
                act = Some(CandidateAct::Away);
            }
        });
        if rows.is_empty() {
            ui.label(body(text!("No part of this kind is in the logbook.")));
            return act;
        }
        ui.label(remark(ui, text!("Tick two to four to see them side by side.")));
        let most = if *shows_all { rows.len() } else { SHOWN };
        for (at, row) in rows.iter().enumerate().take(most) {
            ui.push_id(row.candidate.part, |ui| row.ui(ui, at + 1, ticked, outbox));
        }
        let folded = rows.len().saturating_sub(SHOWN);
        if folded > 0 {
            let word = if *shows_all {
                text!("Fold them").to_owned()
            } else {
                crate::counted!("and {count} more candidate", "and {count} more candidates", folded)
            };
            *shows_all ^= link_ui(ui, &word).clicked();
        }
        let compared: Vec<&Row> = rows.iter().filter(|row| ticked.contains(&row.candidate.part)).collect();
        if compared.len() >= 2 {
            ui.add_space(2.0 * GRID);
            let in_row = ((ui.available_width() / COLUMN) as usize).clamp(1, compared.len());
            for chunk in compared.chunks(in_row) {
                ui.columns(in_row, |columns| {
                    for (ui, row) in columns.iter_mut().zip(chunk) {
                        let id = ("beside", row.candidate.part);
                        let beside = ui.push_id(id, |ui| ui.vertical(|ui| row.beside_ui(ui, view, outbox)).inner);
                        act = beside.inner.or(act.take());
                    }
                });
            }
        }
        act
    }
}

/// The adapter on the shelf through which a candidate fits.
pub fn with_adapter(adapter: PartId, view: &View<'_>) -> String {
    let tag = view.logbook.part(adapter).map_or("", |file| &file.part.tag);
    text!("with {tag} (adapter)", tag = tag)
}

impl Row {
    fn of(candidate: Candidate, told: Vec<Told>, view: &View<'_>) -> Self {
        let file = view.logbook.part(candidate.part);
        let mut name =
            file.map(|file| format!("{} {}", file.part.tag, view.logbook.title_of(file))).unwrap_or_default();
        if let Some(adapter) = candidate.with {
            name = format!("{name}, {}", with_adapter(adapter, view));
        }
        let mut facts: Vec<String> = candidate.true_to.map(crate::assess::TrueTo::said).into_iter().collect();
        facts.push(candidate.state.label().to_lowercase());
        facts.push(match candidate.minutes {
            0 => text!("no work left").to_owned(),
            minutes => text!("{time} of work left", time = hours_text(minutes)),
        });
        // Some states say it already.
        if !matches!(candidate.state, PartState::Proven | PartState::ToBeProven) {
            facts.push(if candidate.is_proven { text!("proven") } else { text!("not proven") }.to_owned());
        }
        facts.push(candidate.originality.label().to_lowercase());
        let losses = candidate.losses.iter().map(|loss| loss.said(view.logbook)).collect();
        Self { candidate, name, facts, losses, told }
    }

    fn verdict_ui(&self, ui: &mut Ui) {
        let verdict = self.candidate.verdict;
        let (mark, colour) = mark_of(verdict, &ui.tokens());
        badge_ui(ui, mark, verdict.label(), verdict.label(), colour);
    }

    fn ui(&self, ui: &mut Ui, place: usize, ticked: &mut Vec<PartId>, outbox: &mut Outbox) {
        let part = self.candidate.part;
        ui.horizontal_wrapped(|ui| {
            let mut is_ticked = ticked.contains(&part);
            let is_enabled = is_ticked || ticked.len() < MOST;
            let tick = ui.add_enabled(is_enabled, Checkbox::without_text(&mut is_ticked));
            let name = text!("Compare {part}", part = self.name);
            tick.widget_info(|| WidgetInfo::selected(Accessible::CheckBox, is_enabled, is_ticked, &name));
            if tick.changed() {
                ticked.retain(|known| *known != part);
                if is_ticked {
                    ticked.push(part);
                }
            }
            ui.label(remark(ui, format!("{place}.")));
            if link_ui(ui, &self.name).clicked() {
                outbox.go(Page::Part(part));
            }
            self.verdict_ui(ui);
            if self.candidate.is_here {
                ui.label(remark(ui, text!("in this role")));
            }
        });
        ui.horizontal_top(|ui| {
            ui.add_space(7.0 * GRID);
            let lines = std::iter::once(self.facts.join(" · ")).chain(self.losses.iter().cloned());
            let words = lines.collect::<Vec<_>>().join("\n");
            ui.add(egui::Label::new(remark(ui, words)).wrap());
        });
    }

    /// One column of the comparison.
    fn beside_ui(&self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) -> Option<CandidateAct> {
        let part = self.candidate.part;
        let file = view.logbook.part(part)?;
        let size = vec2(ui.available_width().min(60.0 * GRID), 36.0 * GRID);
        match face_of(&file.photos) {
            Some(photo) => {
                let name = text!("Photograph of {part}", part = self.name);
                if thumbnail_ui(ui, view, photo, size, &name).clicked() {
                    outbox.look_at(photo.id, file.photos.iter().map(|file| file.photo.id));
                }
            }
            None => {
                ui.label(remark(ui, text!("No photograph yet.")));
            }
        }
        ui.add(egui::Label::new(strong(&self.name)).wrap());
        self.verdict_ui(ui);
        for words in self.facts.iter().chain(&self.losses) {
            ui.add(egui::Label::new(body(words)).wrap());
        }
        for (at, told) in self.told.iter().enumerate() {
            ui.push_id(at, |ui| told_ui(ui, told, false, outbox));
        }
        if self.candidate.is_here {
            press_if_ui(ui, false, text!("It is in this role"), "", None);
            return None;
        }
        let plan = press_ui(ui, text!("Plan it here"), text!("Means this part for the role, as one change"), None);
        let name = text!("Plan {part} here", part = self.name);
        plan.widget_info(|| WidgetInfo::labeled(Accessible::Button, true, &name));
        plan.clicked().then_some(CandidateAct::Plan(part))
    }
}
