//! The strip at the bottom of the window: how far it is, what was not taken in, and what waits for a word.

use std::sync::Arc;

use egui::{Frame, Id, Margin, Panel, ProgressBar, Ui, UiBuilder};

use super::job::Wanted;
use super::{Remembered, TakingIn, Target};
use crate::record::Logbook;
use crate::store::Store;
use crate::window::outbox::Outbox;
use crate::window::page::Page;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::watched::Watched;
use crate::window::widgets::{body, link_ui, mark_button, mark_ui, press_ui, small};
use crate::{counted, text};

/// What waits to be sorted.
pub struct Offered<'a> {
    /// Photographs that are taken in.
    pub to_sort: usize,
    pub watched: Option<&'a mut Watched>,
}

impl TakingIn {
    /// Draws the strip where there is something to say; the files that are to be taken in after all.
    pub fn strip_ui(&mut self, ui: &mut Ui, store: &Arc<Store>, page: Page, offered: Offered<'_>, outbox: &mut Outbox) {
        let Offered { to_sort, watched } = offered;
        let waits = to_sort > 0 && page != Page::Sorting;
        let watched = watched.filter(|watched| watched.count() > 0);
        let is_idle = self.running.is_none() && self.failed.is_empty() && self.cut_off.is_empty();
        if is_idle && !waits && watched.is_none() {
            return;
        }
        let tokens = ui.tokens();
        let frame = Frame::new().fill(tokens.rail).inner_margin(Margin::symmetric(16, 4));
        Panel::bottom("taking in").resizable(false).show_separator_line(false).frame(frame).show(ui, |ui| {
            self.running_ui(ui, &store.logbook());
            self.cut_off_ui(ui, store);
            self.told_ui(ui);
            if waits {
                line_ui(ui, "to sort", |ui| {
                    mark_ui(ui, Mark::Part, tokens.ink_weak);
                    ui.label(body(counted!(
                        "{count} photograph waits to be sorted",
                        "{count} photographs wait to be sorted",
                        to_sort
                    )));
                    if link_ui(ui, text!("Sort them")).clicked() {
                        outbox.go(Page::Sorting);
                    }
                });
            }
            if let Some(watched) = watched {
                self.watched_ui(ui, watched, store, outbox);
            }
        });
    }

    fn watched_ui(&mut self, ui: &mut Ui, watched: &mut Watched, store: &Arc<Store>, outbox: &mut Outbox) {
        line_ui(ui, "watched", |ui| {
            mark_ui(ui, Mark::Add, ui.tokens().ink_weak);
            let new = counted!("{count} new photograph", "{count} new photographs", watched.count());
            ui.label(body(text!("{photographs} in {folder}", photographs = new, folder = watched.name())));
            if press_ui(ui, text!("Sort the new ones"), text!("Takes them in, in groups by time"), None).clicked() {
                let paths = watched.decide();
                self.take_in(Wanted { target: Target::Sorting, paths, pasted: None, attaches_others: false }, store);
                outbox.go(Page::Sorting);
            }
            if link_ui(ui, text!("Leave the new ones")).clicked() {
                watched.decide();
                ui.ctx().request_repaint();
            }
        });
    }

    fn running_ui(&self, ui: &mut Ui, logbook: &Logbook) {
        let Some(running) = &self.running else { return };
        line_ui(ui, "running", |ui| {
            let whose = running.remembered.target.title(logbook).unwrap_or_default();
            let (said, share) = match running.progress.so_far() {
                None => (text!("Looking for photographs…").to_owned(), 0.0),
                Some((done, count)) => {
                    let said =
                        text!("Taking in {done} of {count} for {whose}", done = done, count = count, whose = whose);
                    (said, done as f32 / count as f32)
                }
            };
            let bar = ProgressBar::new(share).desired_width(40.0 * GRID).desired_height(2.0 * GRID);
            let bar = ui.add(bar.fill(ui.tokens().press).corner_radius(2));
            bar.widget_info(|| egui::WidgetInfo::labeled(egui::Role::ProgressIndicator, true, &said));
            ui.label(body(&said));
            if !self.waiting.is_empty() {
                let count = self.waiting.len();
                ui.label(small(counted!("{count} batch waits", "{count} batches wait", count)));
            }
            if press_ui(ui, text!("Stop"), text!("What is in stays; the rest is left where it is"), None).clicked() {
                running.progress.stop();
            }
        });
    }

    fn cut_off_ui(&mut self, ui: &mut Ui, store: &Arc<Store>) {
        if self.cut_off.is_empty() {
            return;
        }
        line_ui(ui, "cut off", |ui| {
            mark_ui(ui, Mark::Heed, ui.tokens().notice_ink);
            let count = self.cut_off.iter().map(|remembered| remembered.paths.len()).sum();
            ui.label(body(counted!(
                "{count} file or folder was being taken in when the program ended.",
                "{count} files and folders were being taken in when the program ended.",
                count
            )));
            if press_ui(ui, text!("Take them in"), text!("The same picture is kept once"), None).clicked() {
                for Remembered { target, paths } in std::mem::take(&mut self.cut_off) {
                    self.take_in(Wanted { target, paths, pasted: None, attaches_others: false }, store);
                }
            }
            if link_ui(ui, text!("Leave them")).clicked() {
                self.cut_off.clear();
                self.remember(store);
                ui.ctx().request_repaint();
            }
        });
    }

    /// What could not be taken in: the reason of one, the number of several.
    fn told_ui(&mut self, ui: &mut Ui) {
        let Some(first) = self.failed.first() else { return };
        let (count, tried) = (self.failed.len(), self.tried);
        let said = match count {
            1 => first.why.clone(),
            _ => text!("{count} of {tried} files were not taken in", count = count, tried = tried),
        };
        line_ui(ui, "told", |ui| {
            mark_ui(ui, Mark::Heed, ui.tokens().severity_grave);
            ui.label(body(said));
            if link_ui(ui, text!("See which, and why…")).clicked() {
                self.shows_failed = true;
            }
            if mark_button(ui, Mark::Away, text!("Put what was not taken in away")).clicked() {
                self.put_failed_away();
                ui.ctx().request_repaint();
            }
        });
    }
}

/// A line of its own name, so that its buttons stay themselves when another line comes or goes.
fn line_ui(ui: &mut Ui, name: &str, inside: impl FnOnce(&mut Ui)) {
    let named = UiBuilder::new().scope_id(Id::unique(("taking in", name)));
    ui.scope_builder(named, |ui| ui.horizontal_wrapped(inside));
}
