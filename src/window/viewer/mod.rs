//! A photograph over the whole window: near and far, turned, one after the other, and two compared.

mod acts;
mod compare;
mod hand;
mod head;
mod layers;
mod line;
mod marking;
mod paint;
mod placed;
mod points;
mod tool;

use std::collections::HashMap;
use std::sync::Arc;

use egui::{CentralPanel, Frame, Margin, Panel, Response, Sense, Ui, WidgetInfo};

pub use acts::Act;
pub use layers::Layers;
pub use marking::Aim;
pub use placed::{Look, Placed};
pub use tool::Tool;

use self::compare::{Compare, Matched};
use self::paint::Painted;
use crate::record::{Photo, PhotoId};
use crate::text;
use crate::window::command::Command;
use crate::window::outbox::{Outbox, View};
use crate::window::photographs::{Photograph, Subject, photo_text};
use crate::window::pictures::LARGE_PX;
use crate::window::taking_in::Target;
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{Edit, body, link_ui};

/// How much a press of a key brings the picture nearer.
const KEY_ZOOM: f32 = 1.25;

/// So wide must the window be for marks to stand beside the picture unasked, points.
const ROOM: f32 = 225.0 * GRID;

/// What is looked at, and how.
#[derive(Default)]
pub struct Viewer {
    shown: Option<PhotoId>,
    /// The photographs that next and previous go through.
    among: Arc<[PhotoId]>,
    look: Look,
    /// Quarter turns of photographs that were turned.
    turns: HashMap<PhotoId, u8>,
    found: Option<Found>,
    /// The second photograph, while two are compared.
    compare: Option<Compare>,
    matched: Matched,
    /// Acts given by menus, to be carried out where the picture is drawn.
    given: Vec<Act>,
    edit: Edit,
    layers: Layers,
    /// Whether the list of marks is beside the picture; as the photograph asks for until a person has chosen.
    shows_marks: Option<bool>,
    /// Whether letters went to a field when last drawn: Escape takes the keys from it before anything is drawn.
    was_typing: bool,
    /// Set when the picture is to take the keys.
    wants_keys: bool,
    /// Pixels of the screen for one of the picture, as last drawn.
    zoom: f32,
    /// Whether all of it was there when last drawn.
    is_sharp: bool,
}

/// The photograph on show as of a revision.
struct Found {
    revision: u64,
    photograph: Photograph,
    /// The next one and the one before, which are made ready.
    beside: Vec<Photo>,
}

impl Viewer {
    /// Looks at a photograph, with others to go on to.
    pub fn look_at(&mut self, photo: PhotoId, among: Arc<[PhotoId]>) {
        self.among = among;
        self.show(photo);
        self.wants_keys = true;
    }

    /// What the photograph on show is of.
    pub fn subject(&self) -> Option<Target> {
        Some(match &self.found.as_ref()?.photograph.of {
            Subject::Part(file) => Target::Part(file.part.id),
            Subject::Machine(file) => Target::Machine(file.machine.id),
            Subject::Lot(file) => Target::Lot(file.lot.id),
        })
    }

    /// Does something with the photograph on show.
    pub fn act(&mut self, act: Act) {
        self.given.push(act);
    }

    /// Says what the photograph on show is opened for.
    pub fn aim(&mut self, aim: Aim) {
        self.shows_marks = Some(true);
        self.layers.marking.aim(aim);
    }

    /// How the photograph on show is looked at.
    pub fn look(&self) -> Look {
        self.look
    }

    /// Whether the photograph on show was last drawn as sharp as the screen.
    pub fn is_sharp(&self) -> bool {
        self.is_sharp
    }

    fn show(&mut self, photo: PhotoId) {
        self.is_sharp = false;
        self.shown = Some(photo);
        self.look = Look { quarter_turns: self.turns.get(&photo).copied().unwrap_or(0), ..Look::default() };
        self.layers = Layers::default();
        self.stop_comparing();
    }

    fn stop_comparing(&mut self) {
        if let Some(compare) = self.compare.take() {
            compare.keep(&mut self.matched);
        }
    }

    fn photograph(&mut self, view: &View<'_>) -> Option<Photograph> {
        let (shown, revision) = (self.shown?, view.logbook.revision);
        let is_current = |found: &Found| found.revision == revision && found.photograph.photo().id == shown;
        if !self.found.as_ref().is_some_and(is_current) {
            let find = |id| Photograph::find(view.logbook, id);
            let beside = [1, -1].into_iter().filter_map(|step| self.neighbour(step)).filter_map(find);
            let beside = beside.map(|found| found.photo().clone()).collect();
            self.found = find(shown).map(|photograph| Found { revision, photograph, beside });
        }
        self.found.as_ref().map(|found| found.photograph.clone())
    }

    /// The photograph so many after the one on show, or before it.
    fn neighbour(&self, step: isize) -> Option<PhotoId> {
        let at = self.among.iter().position(|photo| Some(*photo) == self.shown)?;
        at.checked_add_signed(step).and_then(|at| self.among.get(at)).copied()
    }

    /// Draws the photograph on show.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) {
        ui.painter().rect_filled(ui.max_rect(), 0.0, ui.tokens().page);
        let Some(photograph) = self.photograph(view) else {
            self.gone_ui(ui, outbox);
            return;
        };
        // Escape that gives a fact back must not leave as well.
        let is_editing = self.edit.is_editing() || self.layers.marking.is_editing();
        let takes_keys = !is_editing && !std::mem::take(&mut self.was_typing);
        let edge = Frame::new().fill(ui.tokens().page).inner_margin(Margin::symmetric(16, 4));
        Panel::top("over the picture").show_separator_line(false).resizable(false).frame(edge).show(ui, |ui| {
            self.head_ui(ui, view, &photograph);
        });
        Panel::bottom("under the picture").show_separator_line(false).resizable(false).frame(edge).show(ui, |ui| {
            line::line_ui(ui, view, &photograph, &mut self.edit, outbox);
        });
        if self.compare.is_none() && self.shows_marks(&photograph, ui.available_width()) {
            let width = (0.28 * ui.available_width()).clamp(56.0 * GRID, 88.0 * GRID);
            let marks =
                Panel::right("beside the picture").show_separator_line(false).resizable(false).exact_size(width);
            marks.frame(edge).show(ui, |ui| {
                let taken = self.layers.marking.panel_ui(ui, &photograph, view, outbox);
                self.given.extend(taken.map(Act::Take));
            });
        }
        CentralPanel::no_frame().show(ui, |ui| self.picture_ui(ui, view, &photograph, takes_keys, outbox));
        self.was_typing = ui.ctx().text_edit_focused();
    }

    /// Whether the list of marks is beside the picture: where there are some and there is room, unless a person chose.
    fn shows_marks(&self, photograph: &Photograph, width: f32) -> bool {
        self.shows_marks.unwrap_or(!photograph.file().marks.is_empty() && width >= ROOM)
    }

    /// The photograph was taken out of the logbook: another one takes its place.
    fn gone_ui(&mut self, ui: &mut Ui, outbox: &mut Outbox) {
        let next = self.neighbour(1).or_else(|| self.neighbour(-1));
        self.among = self.among.iter().filter(|photo| Some(**photo) != self.shown).copied().collect();
        if let Some(next) = next {
            self.show(next);
            ui.ctx().request_repaint();
            return;
        }
        Frame::new().inner_margin(Margin::same(24)).show(ui, |ui| {
            ui.label(body(text!("This photograph is no longer in the logbook.")));
            if link_ui(ui, text!("Go back")).clicked() || Act::pressed(ui.ctx()) == Some(Act::Leave) {
                outbox.give(Command::GoBack);
            }
        });
    }

    fn picture_ui(
        &mut self,
        ui: &mut Ui,
        view: &View<'_>,
        photograph: &Photograph,
        takes_keys: bool,
        outbox: &mut Outbox,
    ) {
        let photo = photograph.photo();
        let whole = ui.max_rect();
        let areas = self.compare.as_mut().map_or([whole, whole], |compare| compare.areas(view, photo, whole));
        let size_px = [photo.width_px as f32, photo.height_px as f32];
        let screen = ui.ctx().pixels_per_point();
        let response = ui.interact(whole, ui.scope_id().with("picture"), Sense::click_and_drag());
        self.hand(ui, &response, &Placed::new(areas[0], size_px, &self.look, screen), areas[1]);
        let placed = Placed::new(areas[0], size_px, &self.look, screen);
        self.zoom = placed.zoom();
        let painted = match &mut self.compare {
            Some(compare) => compare.ui(ui, view, &placed, photo, &response),
            None => paint::picture_ui(ui, view, &placed, photo, whole),
        };
        self.is_sharp = painted == Painted::Whole;
        say_ui(ui, &response, &painted, photo, self.zoom);
        if self.compare.is_none() {
            let pan = self.layers.ui(ui, &placed, photograph, view, outbox);
            self.look.drag(pan, &placed);
        }
        if takes_keys {
            self.keys(ui, &response, &placed);
        }
        // What an act changes is seen in the next frame.
        if !self.given.is_empty() {
            ui.ctx().request_repaint();
        }
        for act in std::mem::take(&mut self.given) {
            self.carry_out(act, &placed, photograph, outbox);
        }
        if self.is_sharp
            && let Some(found) = &self.found
        {
            for photo in &found.beside {
                view.pictures.get(view.store, photo, LARGE_PX);
            }
        }
    }

    fn carry_out(&mut self, act: Act, placed: &Placed, photograph: &Photograph, outbox: &mut Outbox) {
        let middle = placed.area.center();
        match act {
            Act::Nearer => self.look.zoom_by(KEY_ZOOM, middle, placed),
            Act::Farther => self.look.zoom_by(1.0 / KEY_ZOOM, middle, placed),
            Act::Fit => self.look.fit(),
            Act::PixelForPixel => self.look.zoom_to(1.0, middle, placed),
            Act::TurnRight | Act::TurnLeft => {
                self.look.turn(if act == Act::TurnRight { 1 } else { -1 });
                self.turns.insert(photograph.photo().id, self.look.quarter_turns);
            }
            Act::Next | Act::Previous => {
                if let Some(neighbour) = self.neighbour(if act == Act::Next { 1 } else { -1 }) {
                    self.show(neighbour);
                }
            }
            Act::Compare if self.compare.is_some() => self.stop_comparing(),
            Act::Compare => self.compare = Some(Compare::of(photograph, &self.matched)),
            Act::BesideOrOver | Act::MatchPoints => {
                let matched = &self.matched;
                let compare = self.compare.get_or_insert_with(|| Compare::of(photograph, matched));
                if !compare.has_two() {
                    return;
                }
                let turned = if act == Act::MatchPoints { &mut compare.is_matching } else { &mut compare.is_over };
                *turned = !*turned;
            }
            Act::Marks => {
                let width = placed.area.width();
                self.shows_marks = Some(!self.shows_marks(photograph, width));
                self.layers.marking.take(Tool::Hand);
            }
            Act::Take(tool) => {
                self.stop_comparing();
                self.shows_marks = Some(true);
                self.layers.marking.take(tool);
                self.wants_keys = tool == Tool::Hand;
            }
            // One thing after the other is put away.
            Act::Leave if self.compare.is_none() && self.layers.marking.put_away() => self.wants_keys = true,
            Act::Leave => match &mut self.compare {
                Some(compare) if compare.is_matching => compare.is_matching = false,
                Some(_) => self.stop_comparing(),
                None => outbox.give(Command::GoBack),
            },
        }
    }
}

/// Names the picture, or says why there is none.
fn say_ui(ui: &Ui, response: &Response, painted: &Painted, photo: &Photo, zoom: f32) {
    let name = if let Painted::Failed(why) = painted {
        let room = response.rect.width() - 8.0 * GRID;
        let words = ui.painter().layout(why.clone(), TextRole::Body.font(), ui.tokens().severity_grave, room);
        ui.painter().galley(response.rect.center() - words.size() / 2.0, words, ui.tokens().ink);
        why.clone()
    } else {
        text!("{photograph}: zoom {percent} %", photograph = photo_text(photo), percent = percent(zoom))
    };
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Image, true, &name));
}

/// A zoom in whole per cent.
fn percent(zoom: f32) -> String {
    format!("{:.0}", zoom * 100.0)
}
