//! The head of the desk: the part's tag, the one thing to press, what came of it; and the offer of a draft.

use egui::{Align, Button, Layout, RichText, Ui, vec2};

use super::{DRAFT, Intake, LOG, Stage};
use crate::record::Word as _;
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::page::Page;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{body, first_ui, link_ui, mark_ui, press_ui, remark, small, title_ui};

impl Intake {
    pub(super) fn offer_ui(&mut self, ui: &mut Ui, outbox: &mut Outbox) {
        let Some(draft) = &self.offered else { return };
        let tag = draft.tag.trim();
        let kind = draft.kind.map(|kind| kind.label().to_lowercase());
        let was = match kind {
            Some(kind) => text!("You were logging {tag}, a {kind}.", tag = tag, kind = kind),
            None => text!("You were logging {tag}.", tag = tag),
        };
        first_ui(ui, was);
        ui.label(body(text!("What you had typed is still here.")));
        ui.add_space(3.0 * GRID);
        ui.horizontal_wrapped(|ui| {
            if primary_ui(ui, text!("Go on with it"), "").clicked()
                && let Some(draft) = self.offered.take()
            {
                self.typed = *draft;
                self.ready = None;
            }
            if press_ui(ui, text!("Put it away"), text!("What was typed is forgotten"), None).clicked() {
                self.offered = None;
                self.saved = None;
                outbox.drop_draft(DRAFT);
            }
        });
    }

    pub(super) fn header_ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        let tokens = ui.tokens();
        let tag = self.typed.tag.trim().to_owned();
        let word = if tag.is_empty() { text!("Log the part").to_owned() } else { text!("Log part {tag}", tag = tag) };
        let mut log = false;
        ui.horizontal(|ui| {
            ui.set_height(10.0 * GRID);
            let title = if tag.is_empty() { "–".to_owned() } else { tag };
            first_ui(ui, title);
            if let Some(kind) = self.typed.kind {
                title_ui(ui, kind.label());
            }
            ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                let ready = self.stage == Stage::Typing;
                ui.add_enabled_ui(ready, |ui| {
                    let keys = ui.ctx().format_shortcut(&LOG);
                    log = primary_ui(ui, &word, &keys).clicked();
                });
                if !ready {
                    ui.label(remark(ui, text!("Being written…")));
                }
            });
        });
        if log {
            self.log(ui.ctx(), view);
        }
        if let Some((says, _)) = self.says.clone() {
            ui.horizontal_wrapped(|ui| {
                mark_ui(ui, Mark::Heed, tokens.severity_grave);
                ui.label(body(says).color(tokens.severity_grave));
            });
        } else if let Some((part, tag)) = self.logged.as_ref().filter(|(part, _)| view.logbook.part(*part).is_some()) {
            ui.horizontal_wrapped(|ui| {
                mark_ui(ui, Mark::Done, tokens.gate_passed);
                let what = view.logbook.part(*part).map(|file| view.logbook.title_of(file)).unwrap_or_default();
                ui.label(body(text!("{tag} is in the logbook: {what}.", tag = tag, what = what)));
                if link_ui(ui, &text!("Open the sheet of {tag}", tag = tag)).clicked() {
                    outbox.go(Page::Part(*part));
                }
                for why in &self.left_out {
                    ui.label(body(text!("Left out: {why}.", why = why)).color(tokens.severity_grave));
                }
            });
        } else {
            ui.label(remark(ui, text!("Pass over what you do not know; it can be said later. Page Down goes on.")));
        }
    }
}

/// The one thing to press on a desk, with its keys.
fn primary_ui(ui: &mut Ui, word: &str, keys: &str) -> egui::Response {
    let tokens = ui.tokens();
    let words = RichText::new(word).font(TextRole::Strong.font()).color(tokens.press_ink);
    let button =
        if keys.is_empty() { Button::new(words) } else { Button::new((words, small(keys).color(tokens.press_ink))) };
    ui.add(button.fill(tokens.press).min_size(vec2(0.0, 10.0 * GRID))).accessible_name(word)
}
