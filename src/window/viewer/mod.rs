//! A photograph over the whole window: near and far, turned, one after the other.

mod acts;
mod layers;
mod line;
mod paint;
mod placed;

use std::collections::HashMap;
use std::sync::Arc;

use egui::{
    Align, CentralPanel, EventFilter, Frame, Key, Layout, Margin, Modifiers, Panel, Response, Sense, Ui, WidgetInfo,
};

pub use acts::Act;
pub use layers::Layers;
pub use placed::{Look, Placed};

use crate::record::PhotoId;
use crate::text;
use crate::window::command::Command;
use crate::window::outbox::{Outbox, View};
use crate::window::photographs::{Photograph, photo_text};
use crate::window::pictures::LARGE_PX;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{Edit, body, link_ui, press_ui, remark};

/// How much a press of a key brings the picture nearer.
const KEY_ZOOM: f32 = 1.25;

/// How far the arrows move the picture, as a share of the window.
const KEY_STEP: f32 = 0.2;

/// What is looked at, and how.
#[derive(Default)]
pub struct Viewer {
    shown: Option<PhotoId>,
    /// The photographs that next and previous go through.
    among: Arc<[PhotoId]>,
    look: Look,
    /// Quarter turns of photographs that were turned.
    turns: HashMap<PhotoId, u8>,
    /// The photograph on show as of a revision.
    found: Option<(u64, Photograph)>,
    /// Acts given by menus, to be carried out where the picture is drawn.
    given: Vec<Act>,
    edit: Edit,
    layers: Layers,
    /// Set when the picture is to take the keys.
    wants_keys: bool,
}

impl Viewer {
    /// Looks at a photograph, with others to go on to.
    pub fn look_at(&mut self, photo: PhotoId, among: Arc<[PhotoId]>) {
        self.among = among;
        self.show(photo);
        self.wants_keys = true;
    }

    /// Does something with the photograph on show.
    pub fn act(&mut self, act: Act) {
        self.given.push(act);
    }

    /// How the photograph on show is looked at.
    pub fn look(&self) -> Look {
        self.look
    }

    fn show(&mut self, photo: PhotoId) {
        self.shown = Some(photo);
        self.look = Look { quarter_turns: self.turns.get(&photo).copied().unwrap_or(0), ..Look::default() };
        self.layers = Layers::default();
    }

    fn photograph(&mut self, view: &View<'_>) -> Option<Photograph> {
        let shown = self.shown?;
        let is_current =
            |(revision, found): &(u64, Photograph)| *revision == view.logbook.revision && found.photo().id == shown;
        if !self.found.as_ref().is_some_and(is_current) {
            self.found = Photograph::find(view.logbook, shown).map(|found| (view.logbook.revision, found));
        }
        self.found.as_ref().map(|(_, found)| found.clone())
    }

    /// The photographs before and after the one on show.
    fn neighbour(&self, step: isize) -> Option<PhotoId> {
        let at = self.among.iter().position(|photo| Some(*photo) == self.shown)?;
        at.checked_add_signed(step).and_then(|at| self.among.get(at)).copied()
    }

    /// Draws the photograph on show.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        ui.painter().rect_filled(ui.max_rect(), 0.0, ui.tokens().page);
        let Some(photograph) = self.photograph(view) else {
            Frame::new().inner_margin(Margin::same(24)).show(ui, |ui| {
                ui.label(body(text!("This photograph is no longer in the logbook.")));
                if link_ui(ui, text!("Go back")).clicked() || Act::pressed(ui.ctx()) == Some(Act::Leave) {
                    leave(outbox);
                }
            });
            return;
        };
        // Escape that gives a fact back must not leave as well.
        let takes_keys = !self.edit.is_editing();
        let edge = Frame::new().fill(ui.tokens().page).inner_margin(Margin::symmetric(16, 4));
        Panel::top("over the picture").show_separator_line(false).resizable(false).frame(edge).show(ui, |ui| {
            self.head_ui(ui, view, &photograph, outbox);
        });
        Panel::bottom("under the picture").show_separator_line(false).resizable(false).frame(edge).show(ui, |ui| {
            line::line_ui(ui, &photograph, &mut self.edit, outbox);
        });
        CentralPanel::no_frame().show(ui, |ui| self.picture_ui(ui, view, &photograph, takes_keys, outbox));
    }

    fn head_ui(&mut self, ui: &mut Ui, view: &View<'_>, photograph: &Photograph, outbox: &mut Outbox) {
        let there = [(Act::Next, self.neighbour(1).is_some()), (Act::Previous, self.neighbour(-1).is_some())];
        let mut given = Vec::new();
        let mut press = |ui: &mut Ui, act: Act, is_there: bool| {
            let button = |ui: &mut Ui| press_ui(ui, act.word(), act.tooltip(), Some(act.shortcut()));
            if ui.add_enabled_ui(is_there, button).inner.clicked() {
                given.push(act);
            }
        };
        ui.horizontal_wrapped(|ui| {
            for act in [Act::Leave, Act::Farther, Act::Nearer, Act::Fit, Act::PixelForPixel, Act::TurnRight] {
                press(ui, act, true);
            }
        });
        ui.horizontal_wrapped(|ui| {
            let title = photograph.of.title(view.logbook);
            match photograph.of.page() {
                Some(page) => {
                    if link_ui(ui, &title).clicked() {
                        outbox.go(page);
                    }
                }
                None => drop(ui.label(body(title))),
            }
            if let Some(at) = self.among.iter().position(|photo| *photo == photograph.photo().id) {
                let count = self.among.len();
                ui.label(remark(ui, text!("{number} of {count}", number = at + 1, count = count)));
            }
            ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                for (act, is_there) in there {
                    press(ui, act, is_there);
                }
            });
        });
        self.given.extend(given);
    }

    fn picture_ui(
        &mut self,
        ui: &mut Ui,
        view: &View<'_>,
        photograph: &Photograph,
        takes_keys: bool,
        outbox: &mut Outbox,
    ) {
        let area = ui.max_rect();
        let photo = photograph.photo();
        let size_px = [photo.width_px as f32, photo.height_px as f32];
        let screen = ui.ctx().pixels_per_point();
        let id = ui.scope_id().with("picture");
        let response = ui.interact(area, id, Sense::click_and_drag());
        self.hand(ui, &response, &Placed::new(area, size_px, &self.look, screen));
        let placed = Placed::new(area, size_px, &self.look, screen);
        if let Some(why) = paint::picture_ui(ui, view, &placed, photo) {
            let words = ui.painter().layout(
                why.clone(),
                crate::window::theme::TextRole::Body.font(),
                ui.tokens().severity_grave,
                area.width() - 8.0 * GRID,
            );
            ui.painter().galley(area.center() - words.size() / 2.0, words, ui.tokens().ink);
            response.widget_info(|| WidgetInfo::labeled(egui::Role::Image, true, &why));
        } else {
            let percent = format!("{:.0}", placed.zoom() * 100.0);
            let name = text!("{photograph}: zoom {percent} %", photograph = photo_text(photo), percent = percent);
            response.widget_info(|| WidgetInfo::labeled(egui::Role::Image, true, &name));
        }
        self.layers.ui(ui, &placed, photograph.file(), view, outbox);
        if takes_keys {
            self.keys(ui, &response, &placed);
        }
        for act in std::mem::take(&mut self.given) {
            self.carry_out(act, &placed, photo.id, outbox);
        }
        // The neighbours are made ready meanwhile.
        for neighbour in [1, -1].into_iter().filter_map(|step| self.neighbour(step)) {
            if let Some(file) = photograph.of.photos().iter().find(|file| file.photo.id == neighbour) {
                view.pictures.get(view.store, &file.photo, LARGE_PX);
            }
        }
    }

    /// What the pointer, the wheel and two fingers do.
    fn hand(&mut self, ui: &Ui, response: &Response, placed: &Placed) {
        if std::mem::take(&mut self.wants_keys) {
            response.request_focus();
        }
        if response.dragged() {
            self.look.drag(response.drag_delta(), placed);
        }
        if response.double_clicked()
            && let Some(at) = response.interact_pointer_pos()
        {
            if self.look.zoom.is_some() { self.look.fit() } else { self.look.zoom_to(1.0, at, placed) }
        }
        let pointer = ui.input(|input| input.pointer.hover_pos()).filter(|at| placed.area.contains(*at));
        let Some(pointer) = pointer.filter(|_| ui.ui_contains_pointer()) else { return };
        let (wheel, pinch) = ui.input(|input| (input.smooth_scroll_delta().y, input.zoom_delta()));
        // 400 points of wheel are about a factor of e, as for pinching.
        let factor = (wheel / 400.0).exp() * pinch;
        if factor != 1.0 {
            self.look.zoom_by(factor, pointer, placed);
        }
    }

    fn keys(&mut self, ui: &Ui, response: &Response, placed: &Placed) {
        if ui.ctx().text_edit_focused() || egui::Popup::is_any_open(ui.ctx()) {
            return;
        }
        if response.has_focus() || ui.memory(|memory| memory.focused().is_none()) {
            let filter = EventFilter { horizontal_arrows: true, vertical_arrows: true, escape: true, tab: false };
            ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
            let pressed = |key| ui.input_mut(|input| input.consume_key(Modifiers::NONE, key));
            let is_whole = self.look.zoom.is_none();
            for (key, right, down) in [
                (Key::ArrowRight, 1.0, 0.0),
                (Key::ArrowLeft, -1.0, 0.0),
                (Key::ArrowDown, 0.0, 1.0),
                (Key::ArrowUp, 0.0, -1.0),
            ] {
                if !pressed(key) {
                    continue;
                }
                if is_whole {
                    self.given.push(if right + down > 0.0 { Act::Next } else { Act::Previous });
                } else {
                    self.look.step(KEY_STEP * right, KEY_STEP * down, placed);
                }
            }
        }
        self.given.extend(Act::pressed(ui.ctx()));
    }

    fn carry_out(&mut self, act: Act, placed: &Placed, photo: PhotoId, outbox: &mut Outbox) {
        let middle = placed.area.center();
        match act {
            Act::Nearer => self.look.zoom_by(KEY_ZOOM, middle, placed),
            Act::Farther => self.look.zoom_by(1.0 / KEY_ZOOM, middle, placed),
            Act::Fit => self.look.fit(),
            Act::PixelForPixel => self.look.zoom_to(1.0, middle, placed),
            Act::TurnRight | Act::TurnLeft => {
                self.look.turn(if act == Act::TurnRight { 1 } else { -1 });
                self.turns.insert(photo, self.look.quarter_turns);
            }
            Act::Next | Act::Previous => {
                if let Some(neighbour) = self.neighbour(if act == Act::Next { 1 } else { -1 }) {
                    self.show(neighbour);
                }
            }
            Act::Leave => leave(outbox),
        }
    }
}

fn leave(outbox: &mut Outbox) {
    outbox.give(Command::GoBack);
}
