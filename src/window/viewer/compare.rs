//! Two photographs beside each other, or one over the other under a slider, near and far together.

use std::collections::HashMap;

use egui::accesskit::Action;
use egui::{ComboBox, Key, Modifiers, Rect, Response, RichText, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};

use super::paint::{Painted, picture_ui};
use super::placed::Placed;
use super::points::Points;
use crate::photo::align::Affine;
use crate::record::{Photo, PhotoId, PhotoView};
use crate::text;
use crate::window::outbox::View;
use crate::window::photographs::{Photograph, day_of, photo_text};
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{Asking, Pick, Picker, body, link_ui, remark};

/// How far a key moves the slider, as a share of the window.
const KEY_STEP: f32 = 0.05;

/// Two photographs that are compared.
pub struct Compare {
    shown: PhotoId,
    /// The second one; `None` until it is chosen.
    other: Option<PhotoId>,
    /// The second one as of a revision.
    found: Option<(u64, Photograph)>,
    /// One over the other under a slider.
    pub is_over: bool,
    /// Where the slider stands: the share of the window that shows the left one.
    split: f32,
    /// Whether points are being matched now.
    pub is_matching: bool,
    points: Points,
    /// Finds a photograph of something else; `None` while nobody asks for one.
    picker: Option<Picker<PhotoId>>,
}

/// Points that were matched, by the photographs they lie on.
pub type Matched = HashMap<[PhotoId; 2], Points>;

impl Compare {
    /// Compares a photograph with the one of the same thing that lies best beside it.
    pub fn of(shown: &Photograph, matched: &Matched) -> Self {
        let photos = shown.of.photos().iter().map(|file| &file.photo);
        let mut compare = Self {
            shown: shown.photo().id,
            other: None,
            found: None,
            is_over: false,
            split: 0.5,
            is_matching: false,
            points: Points::default(),
            picker: None,
        };
        if let Some(other) = counterpart(shown.photo(), photos) {
            compare.choose(other, matched);
        }
        compare
    }

    /// Whether there is a second one.
    pub fn has_two(&self) -> bool {
        self.other.is_some()
    }

    fn choose(&mut self, other: PhotoId, matched: &Matched) {
        self.other = Some(other);
        let turned = || matched.get(&[other, self.shown]).map(Points::turned_about);
        self.points = matched.get(&[self.shown, other]).cloned().or_else(turned).unwrap_or_default();
    }

    /// Keeps the points that were matched.
    pub fn keep(&self, matched: &mut Matched) {
        if let Some(other) = self.other {
            matched.insert([self.shown, other], self.points.clone());
        }
    }

    /// The second photograph.
    fn second(&mut self, view: &View<'_>) -> Option<Photograph> {
        let (revision, id) = (view.logbook.revision, self.other?);
        if !self.found.as_ref().is_some_and(|(at, found)| *at == revision && found.photo().id == id) {
            self.found = Photograph::find(view.logbook, id).map(|found| (revision, found));
        }
        self.found.as_ref().map(|(_, found)| found.clone())
    }

    /// The line that says what is compared, and lets another be chosen.
    pub fn head_ui(&mut self, ui: &mut Ui, view: &View<'_>, shown: &Photograph, matched: &mut Matched) {
        let second = self.second(view);
        let mut chosen = None;
        ui.horizontal_wrapped(|ui| {
            ui.label(remark(ui, text!("Compared with")));
            let said = second.as_ref().map_or_else(|| text!("nothing yet").to_owned(), |second| say(second.photo()));
            let list = ComboBox::from_id_salt("compared with").width(60.0 * GRID).height(140.0 * GRID);
            let list = list.selected_text(RichText::new(said).color(ui.tokens().ink)).show_ui(ui, |ui| {
                for file in shown.of.photos().iter().filter(|file| file.photo.id != self.shown) {
                    if ui.selectable_label(self.other == Some(file.photo.id), say(&file.photo)).clicked() {
                        chosen = Some(file.photo.id);
                    }
                }
            });
            ui.ctx().accesskit_node_builder(list.response.id, |node| node.set_label(text!("Compared with")));
            if let Some(second) = second.as_ref().filter(|second| second.of.name() != shown.of.name()) {
                ui.label(body(second.of.title(view.logbook)));
            }
            chosen = chosen.or(self.any_ui(ui, view));
            if self.is_matching {
                self.points.head_ui(ui);
            }
        });
        if let Some(chosen) = chosen {
            self.keep(matched);
            self.choose(chosen, matched);
        }
    }

    /// A photograph of something else, found by what is typed.
    fn any_ui(&mut self, ui: &mut Ui, view: &View<'_>) -> Option<PhotoId> {
        let Some(picker) = &mut self.picker else {
            if link_ui(ui, text!("With one of something else…")).clicked() {
                self.picker = Some(Picker::ready());
            }
            return None;
        };
        // The logbook is looked through only while something is typed.
        let asking = Asking { shows_all: false, ..Asking::one(text!("Tag, name or caption")) };
        let shown = self.shown;
        let pick = picker.ui(ui, asking, (view.logbook.revision, shown), || {
            let others = Photograph::all(view.logbook).filter(|other| other.photo().id != shown);
            others.map(|other| (other.photo().id, format!("{} {}", other.of.name(), say(other.photo()))))
        })?;
        self.picker = None;
        if let Pick::One(chosen) = pick { Some(chosen) } else { None }
    }

    /// The parts of the window that the two stand in: the one on show, and the second. The earlier one is at the left.
    pub fn areas(&mut self, view: &View<'_>, shown: &Photo, whole: Rect) -> [Rect; 2] {
        let second = self.second(view);
        if (self.is_over && !self.is_matching) || second.is_none() {
            return [whole, whole];
        }
        let gap = GRID / 2.0;
        let (left, right) = whole.split_left_right_at_fraction(0.5);
        let (left, right) = (left.with_max_x(left.max.x - gap), right.with_min_x(right.min.x + gap));
        if self.shown_is_left(shown) { [left, right] } else { [right, left] }
    }

    fn shown_is_left(&self, shown: &Photo) -> bool {
        self.found.as_ref().is_none_or(|(_, second)| day_of(shown) <= day_of(second.photo()))
    }

    /// Paints both; `placed` is where the one on show stands.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, placed: &Placed, shown: &Photo, response: &Response) -> Painted {
        let Some(second) = self.second(view) else { return picture_ui(ui, view, placed, shown, placed.area) };
        let [_, area] = self.areas(view, shown, response.rect);
        let size_px = [second.photo().width_px as f32, second.photo().height_px as f32];
        let laid = self.points.laid().filter(|_| !self.is_matching);
        let onto = laid.unwrap_or_else(|| centred(placed.size_px, size_px));
        let other = placed.moved_to(area).under(size_px, &onto);
        if self.is_matching || !self.is_over {
            let one = picture_ui(ui, view, placed, shown, placed.area);
            let two = picture_ui(ui, view, &other, second.photo(), area);
            Self::named_ui(ui, &other, second.photo());
            if self.is_matching {
                self.points.ui(ui, [placed, &other], response);
            }
            return worse(one, two);
        }
        let (left, right) = area.split_left_right_at_fraction(self.split);
        let (mine, its) = if self.shown_is_left(shown) { (left, right) } else { (right, left) };
        let painted =
            worse(picture_ui(ui, view, placed, shown, mine), picture_ui(ui, view, &other, second.photo(), its));
        Self::named_ui(ui, &other, second.photo());
        self.slider_ui(ui, area);
        painted
    }

    fn named_ui(ui: &Ui, placed: &Placed, photo: &Photo) {
        let response = ui.interact(placed.area, ui.scope_id().with("second picture"), Sense::empty());
        let percent = format!("{:.0}", placed.zoom() * 100.0);
        let photograph = photo_text(photo);
        let name = text!("Compared with {photograph}: zoom {percent} %", photograph = photograph, percent = percent);
        response.widget_info(|| WidgetInfo::labeled(egui::Role::Image, true, &name));
    }

    /// The line between the two, which can be dragged or moved by the arrows.
    fn slider_ui(&mut self, ui: &Ui, area: Rect) {
        let at = area.left() + area.width() * self.split;
        let grip = Rect::from_center_size(pos2(at, area.center().y), vec2(6.0 * GRID, area.height()));
        let response = ui.interact(grip, ui.scope_id().with("slider"), Sense::click_and_drag());
        if response.dragged() {
            self.split += response.drag_delta().x / area.width().max(1.0);
        }
        if response.has_focus() {
            let filter = egui::EventFilter { horizontal_arrows: true, ..egui::EventFilter::default() };
            ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
        }
        let asked = |action| ui.input(|input| input.num_accesskit_action_requests(response.id, action)) as f32;
        let pressed = |key| response.has_focus() && ui.input_mut(|input| input.consume_key(Modifiers::NONE, key));
        let keys = f32::from(u8::from(pressed(Key::ArrowRight))) - f32::from(u8::from(pressed(Key::ArrowLeft)));
        self.split += KEY_STEP * (keys + asked(Action::Increment) - asked(Action::Decrement));
        self.split = self.split.clamp(0.0, 1.0);
        let tokens = ui.tokens();
        let colour = if response.hovered() || response.has_focus() { tokens.press } else { tokens.ink };
        ui.painter().vline(at, area.y_range(), Stroke::new(4.0, tokens.page));
        ui.painter().vline(at, area.y_range(), Stroke::new(2.0, colour));
        ui.painter().circle_filled(grip.center(), 3.0 * GRID, tokens.page);
        ui.painter().circle_stroke(grip.center(), 3.0 * GRID, Stroke::new(2.0, colour));
        let percent = f64::from(self.split * 100.0).round();
        response.widget_info(|| WidgetInfo::slider(true, percent, text!("How much of the left one is seen")));
        ui.ctx().accesskit_node_builder(response.id, |node| {
            node.set_numeric_value(percent);
            node.set_min_numeric_value(0.0);
            node.set_max_numeric_value(100.0);
            node.add_action(Action::Increment);
            node.add_action(Action::Decrement);
        });
        response.on_hover_cursor(egui::CursorIcon::ResizeHorizontal);
    }
}

/// The state that two pictures are in together.
fn worse(one: Painted, two: Painted) -> Painted {
    match (one, two) {
        (Painted::Failed(why), _) | (_, Painted::Failed(why)) => Painted::Failed(why),
        (Painted::Whole, Painted::Whole) => Painted::Whole,
        _ => Painted::Waiting,
    }
}

/// Lays a picture of a size in the middle of another, as large as fits.
fn centred(onto: [f32; 2], size: [f32; 2]) -> Affine {
    let scale = f64::from((onto[0] / size[0].max(1.0)).min(onto[1] / size[1].max(1.0)));
    let shift = [0, 1].map(|axis| (f64::from(onto[axis]) - scale * f64::from(size[axis])) / 2.0);
    Affine::scale(scale, scale).then(&Affine::shift(shift[0], shift[1]))
}

/// A photograph in one line of a list.
fn say(photo: &Photo) -> String {
    let on = if photo.taken.is_known() { photo.taken } else { photo.added.on };
    [on.to_string(), photo_text(photo)].into_iter().filter(|said| !said.is_empty()).collect::<Vec<_>>().join(" · ")
}

/// The photograph that lies best beside another: after for before, else of the same view; the one furthest in time.
fn counterpart<'a>(shown: &Photo, photos: impl Iterator<Item = &'a Photo>) -> Option<PhotoId> {
    let wanted = match shown.view {
        PhotoView::Before => PhotoView::After,
        PhotoView::After => PhotoView::Before,
        same => same,
    };
    let apart =
        |photo: &Photo| day_of(photo).zip(day_of(shown)).map_or(0, |(one, other)| (one - other).num_days().abs());
    let others = photos.filter(|photo| photo.id != shown.id);
    others.max_by_key(|photo| (photo.view == wanted, apart(photo), std::cmp::Reverse(photo.id))).map(|photo| photo.id)
}
