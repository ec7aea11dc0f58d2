//! The list of the marks: what each says, and what can be done with the one that is chosen.

use std::borrow::Cow;

use egui::{Align, Ui, WidgetInfo};

use super::asks::millimetres;
use super::edit::without;
use super::panel::{Choice, Tying};
use super::record::record_ui;
use super::{Marking, go_to, part_of, told_of};
use crate::photo::measure::Measured;
use crate::record::{Change, MarkUse, PhotoMark};
use crate::text;
use crate::window::marked::{Tie, Tied, mark_name};
use crate::window::outbox::{Outbox, View};
use crate::window::photographs::Photograph;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{Fact, body, link_ui, press_ui, remark, small, strong};

/// So far beyond what is seen lines are laid out, for the Tab key to go on to, points.
const SIGHT: f32 = 50.0 * GRID;

impl Marking {
    /// Draws the list.
    pub(super) fn list_ui(&mut self, ui: &mut Ui, photograph: &Photograph, view: &View<'_>, outbox: &mut Outbox) {
        let marks: Vec<PhotoMark> = self.shown(photograph.file()).into_iter().map(Cow::into_owned).collect();
        if marks.is_empty() {
            ui.label(body(text!("Nothing is marked yet.")));
            return;
        }
        let measured = self.measured(ui.ctx(), photograph, view);
        if let Some(measured) = &measured {
            ui.label(remark(ui, measured.basis_said()));
        }
        let told = self.told(photograph, view);
        // Of hundreds of lines only those are laid out that are in sight or next to it.
        let sight = ui.clip_rect().expand(SIGHT);
        for (at, mark) in marks.iter().enumerate() {
            let top = ui.cursor().top();
            let known = self.heights.get(&mark.id).filter(|_| self.selected != Some(mark.id));
            if let Some(height) = known.filter(|height| top > sight.bottom() || top + **height < sight.top()) {
                ui.add_space(*height);
                continue;
            }
            let tied = told_of(&told, at, view, photograph, mark);
            ui.push_id(mark.id, |ui| {
                self.line_ui(ui, photograph, view, (mark, &tied, at + 1), measured.as_deref(), outbox);
            });
            self.heights.insert(mark.id, ui.cursor().top() - top);
        }
    }

    fn line_ui(
        &mut self,
        ui: &mut Ui,
        photograph: &Photograph,
        view: &View<'_>,
        (mark, tied, number): (&PhotoMark, &Tied, usize),
        measured: Option<&Measured>,
        outbox: &mut Outbox,
    ) {
        let is_chosen = self.selected == Some(mark.id);
        let name = mark_name(mark, tied, number);
        ui.add_space(GRID);
        let words = if is_chosen { strong(&name) } else { body(&name) };
        let response = ui.add(egui::Button::new(words.color(ui.tokens().press)).frame(false).wrap());
        let said = text!("In the list: {mark}", mark = name);
        response.widget_info(|| WidgetInfo::selected(egui::Role::Button, true, is_chosen, &said));
        if response.clicked() {
            self.select(if is_chosen { None } else { Some(mark.id) });
        }
        if is_chosen && std::mem::take(&mut self.shows_line) {
            response.scroll_to_me(Some(Align::Center));
        }
        if let Some(line) = measured.and_then(|measured| measured.line(mark.id)) {
            let said = measured.map(|measured| measured.said(line, photograph.file())).unwrap_or_default();
            for figure in &said.figures {
                ui.label(small(figure));
            }
            for heed in &said.heeds {
                ui.label(small(heed).color(ui.tokens().power_unknown));
            }
        }
        if is_chosen {
            ui.indent("chosen", |ui| self.chosen_ui(ui, photograph, view, mark, measured, outbox));
        }
    }

    /// What can be done with the chosen mark.
    fn chosen_ui(
        &mut self,
        ui: &mut Ui,
        photograph: &Photograph,
        view: &View<'_>,
        mark: &PhotoMark,
        measured: Option<&Measured>,
        outbox: &mut Outbox,
    ) {
        if let Some((part, measured)) = part_of(photograph).zip(measured) {
            record_ui(ui, view, part, photograph.photo(), mark, measured, outbox);
        }
        self.tie_ui(ui, photograph, view, mark, outbox);
        self.facts_ui(ui, photograph, mark, outbox);
        ui.horizontal_wrapped(|ui| {
            if let Some(point) = self.handles.point
                && let Some(points) = without(mark, &mark.points, point)
                && press_ui(ui, &text!("Take point {number} away", number = point + 1), "", None).clicked()
            {
                self.handles.point = None;
                self.reshape(photograph, view, mark, points, outbox);
            }
            if press_ui(ui, text!("Take the mark off"), "", None).clicked() {
                self.take_off(photograph, view, mark, outbox);
            }
        });
        ui.add_space(2.0 * GRID);
    }

    fn tie_ui(&mut self, ui: &mut Ui, photograph: &Photograph, view: &View<'_>, mark: &PhotoMark, outbox: &mut Outbox) {
        let Some(part) = part_of(photograph) else { return };
        let tag = photograph.of.name();
        if let Some(tying) = self.tying.as_mut().filter(|tying| tying.mark == Some(mark.id)) {
            let Some(choice) = tying.ui(ui, view, part) else { return };
            self.tying = None;
            let Choice::Tie(tie, entries) = choice else { return };
            let mut change = Change::new(text!("Say what a mark on a photograph of {tag} shows", tag = tag));
            change.put_all(entries).put(tie.on(mark.clone()));
            outbox.change(change);
            return;
        }
        ui.horizontal_wrapped(|ui| {
            let is_tied = Tie::of(mark) != Tie::Nothing;
            if is_tied && press_ui(ui, text!("Go to it"), text!("Shows it on the part’s sheet"), None).clicked() {
                go_to(photograph, mark, outbox);
            }
            let word = if is_tied { text!("It shows something else…") } else { text!("Say what it shows…") };
            if link_ui(ui, word).clicked() {
                self.tying = Some(Tying::of_mark(mark.id));
            }
            if is_tied && link_ui(ui, text!("Tie it to nothing")).clicked() {
                let name = text!("Say what a mark on a photograph of {tag} shows", tag = tag);
                self.write(name, Tie::Nothing.on(mark.clone()), photograph, outbox);
            }
        });
    }

    /// The note and the lengths that were told.
    fn facts_ui(&mut self, ui: &mut Ui, photograph: &Photograph, mark: &PhotoMark, outbox: &mut Outbox) {
        let tag = photograph.of.name();
        let key = format!("note {}", mark.id);
        let note = self.edit.fact_ui(ui, Fact::line(&key, text!("Note on the mark")), &mark.note);
        if let Some(note) = note {
            let name = text!("Note on a mark on a photograph of {tag}", tag = tag);
            self.write(name, PhotoMark { note, ..mark.clone() }, photograph, outbox);
        }
        let lengths = [
            (text!("Length"), mark.length_mm, matches!(mark.role, MarkUse::Scale | MarkUse::Rectangle)),
            (text!("Breadth"), mark.breadth_mm, mark.role == MarkUse::Rectangle),
        ];
        for (at, (label, length, _)) in lengths.into_iter().enumerate().filter(|(_, (_, _, is_told))| *is_told) {
            let key = format!("length {at} {}", mark.id);
            let fact = Fact { unit: "mm", ..Fact::line(&key, label) };
            let value = length.map_or_else(String::new, |length| length.to_string());
            let Some(typed) = self.edit.fact_ui(ui, fact, &value) else { continue };
            match millimetres(&typed) {
                Err(wrong) => self.edit.refuse(&key, &typed, wrong),
                Ok(mm) => {
                    let mut mark = mark.clone();
                    *(if at == 0 { &mut mark.length_mm } else { &mut mark.breadth_mm }) = Some(mm);
                    let name = text!("Say how long a mark on a photograph of {tag} is", tag = tag);
                    self.write(name, mark, photograph, outbox);
                }
            }
        }
    }
}
