//! The part with everything on it: its maps drawn large, each mark to be pressed, and which photograph is a map.

use egui::{Rect, Sense, Ui, WidgetInfo, vec2};

use super::about::{About, act_ui, put};
use crate::counted;
use crate::record::{Change, Photo, PhotoFile, PhotoId, PhotoMark};
use crate::text;
use crate::window::marked::{self, Tie, Tied, around, hits, tied, unplaced};
use crate::window::outbox::Outbox;
use crate::window::photographs::photo_text;
use crate::window::pictures::{LARGE_PX, Shown, paint_fitting};
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::viewer::{Aim, Look, Placed};
use crate::window::widgets::{body, link_ui, press_ui, remark};

/// A map is no higher than this, points.
const HIGHEST: f32 = 120.0 * GRID;

/// What is open.
#[derive(Default)]
pub struct Map {
    /// Whether photographs are offered as a further map.
    offers: bool,
    told: Option<Told>,
}

/// What the marks are tied to as of a revision.
struct Told {
    revision: u64,
    tied: Vec<Vec<Tied>>,
}

impl Map {
    /// Draws the section.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let maps: Vec<&PhotoFile> = about.file.photos.iter().filter(|file| file.photo.is_map).collect();
        let revision = about.view.logbook.revision;
        if self.told.as_ref().is_none_or(|told| told.revision != revision) {
            let tie = |mark| tied(about.view, Some(about.file), mark);
            let tied = maps.iter().map(|map| map.marks.iter().map(tie).collect()).collect();
            self.told = Some(Told { revision, tied });
        }
        let tied = self.told.as_ref().map_or(&[][..], |told| &told.tied);
        for (map, tied) in maps.iter().zip(tied) {
            ui.push_id(map.photo.id, |ui| map_ui(ui, about, map, tied, outbox));
        }
        if maps.is_empty() && !about.file.photos.is_empty() {
            ui.label(body(text!("No photograph is its map yet: the one on which its places are shown.")));
        } else if maps.is_empty() {
            ui.label(body(text!("Without a photograph there is no map of it.")));
            return;
        }
        self.offer_ui(ui, about, !maps.is_empty(), outbox);
    }

    /// The photographs that can become a map.
    fn offer_ui(&mut self, ui: &mut Ui, about: &About<'_>, has_map: bool, outbox: &mut Outbox) {
        let others: Vec<&Photo> =
            about.file.photos.iter().map(|file| &file.photo).filter(|photo| !photo.is_map).collect();
        if others.is_empty() {
            return;
        }
        if !self.offers {
            let word = if has_map { text!("Another map…") } else { text!("Choose its map…") };
            self.offers = link_ui(ui, word).clicked();
            return;
        }
        ui.horizontal_wrapped(|ui| {
            for photo in others {
                let name = photo_text(photo);
                if act_ui(ui, &name, &text!("Make it the map: {photograph}", photograph = name)) {
                    outbox.change(set_map(about.tag(), photo, true));
                    self.offers = false;
                }
            }
            if link_ui(ui, text!("None of them")).clicked() {
                self.offers = false;
            }
        });
    }
}

/// The change that makes a photograph a map, or no longer one.
pub fn set_map(tag: &str, photo: &Photo, is_map: bool) -> Change {
    let name = if is_map {
        text!("Make a photograph the map of {tag}", tag = tag)
    } else {
        text!("A photograph is no longer the map of {tag}", tag = tag)
    };
    put(name, Photo { is_map, ..photo.clone() })
}

fn map_ui(ui: &mut Ui, about: &About<'_>, map: &PhotoFile, tied: &[Tied], outbox: &mut Outbox) {
    let photo = &map.photo;
    let [width, height] = [photo.width_px, photo.height_px].map(|side| side.max(1) as f32);
    let room = ui.available_width();
    let scale = (room / width).min(HIGHEST / height);
    let (area, response) = ui.allocate_exact_size(vec2(width, height) * scale, Sense::click());
    let look_closer = |outbox: &mut Outbox| outbox.look_at(photo.id, all(about));
    response.widget_info(|| {
        let name = text!("Map: {photograph}", photograph = photo_text(photo));
        WidgetInfo::labeled(egui::Role::Button, true, name)
    });
    if response.on_hover_text_at_pointer(text!("Press to look at it closely")).clicked() {
        look_closer(outbox);
    }
    if ui.is_rect_visible(area) {
        picture_ui(ui, about, photo, area);
        marks_ui(ui, about, map, tied, area, outbox);
    }
    ui.horizontal_wrapped(|ui| {
        let left = unplaced(about.file).len();
        if left > 0 {
            let word = counted!("Place {count} capacitor…", "Place {count} capacitors…", left);
            if press_ui(ui, &word, text!("One position after the other: press where it is on the map"), None).clicked()
            {
                outbox.look_for(photo.id, all(about), Aim::PlaceCapacitors);
            }
        }
        let name = photo_text(photo);
        if act_ui(ui, text!("No longer a map"), &text!("No longer a map: {photograph}", photograph = name)) {
            outbox.change(set_map(about.tag(), photo, false));
        }
        ui.label(remark(ui, name));
    });
}

fn all(about: &About<'_>) -> Vec<PhotoId> {
    about.file.photos.iter().map(|file| file.photo.id).collect()
}

fn picture_ui(ui: &Ui, about: &About<'_>, photo: &Photo, area: Rect) {
    let tokens = ui.tokens();
    ui.painter().rect_filled(area, 2.0, tokens.rail);
    match about.view.pictures.get(about.view.store, photo, LARGE_PX) {
        Shown::Ready(texture) => paint_fitting(ui, area, &texture),
        Shown::Loading => {}
        Shown::Failed(why) => {
            let words =
                ui.painter().layout(why, TextRole::Body.font(), tokens.severity_grave, area.width() - 4.0 * GRID);
            ui.painter().galley(area.center() - words.size() / 2.0, words, tokens.ink);
        }
    }
}

/// Every mark on the map; a press goes to what it is tied to, or to the mark where it is tied to nothing.
fn marks_ui(ui: &Ui, about: &About<'_>, map: &PhotoFile, tied: &[Tied], area: Rect, outbox: &mut Outbox) {
    let size_px = [map.photo.width_px as f32, map.photo.height_px as f32];
    let placed = Placed::new(area, size_px, &Look::default(), ui.ctx().pixels_per_point());
    let painter = ui.painter().with_clip_rect(area.intersect(ui.clip_rect()));
    let tokens = ui.tokens();
    let mut pressed = None;
    for at in marked::from_large_to_small(&placed, &map.marks) {
        let (Some(mark), Some(tied)) = (map.marks.get(at), tied.get(at)) else { continue };
        let Some(around) = around(&placed, mark).map(|rect| rect.intersect(area)) else { continue };
        let response = ui.interact(around, ui.scope_id().with(("mark", mark.id)), Sense::click());
        let name = text!("On the map, {mark}", mark = marked::mark_name(mark, tied, at + 1));
        response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
        let is_held = response.hovered() || response.has_focus();
        marked::paint(&painter, &tokens, &placed, mark, tied, at + 1, is_held);
        if response.clicked() {
            let at = response.interact_pointer_pos();
            pressed = Some(at.and_then(|at| marked::nearest(&placed, &map.marks, at)).unwrap_or(mark.id));
        }
        let is_met = response.hover_pos().is_some_and(|at| hits(&placed, mark, at).is_some());
        if is_met {
            response.on_hover_text(marked::mark_name(mark, tied, at + 1));
        }
    }
    if let Some(mark) = pressed.and_then(|id| map.marks.iter().find(|mark| mark.id == id)) {
        press(about, map, mark, outbox);
    }
}

fn press(about: &About<'_>, map: &PhotoFile, mark: &PhotoMark, outbox: &mut Outbox) {
    match Tie::of(mark).spot() {
        Some(spot) => outbox.show(about.part().id, Some(spot)),
        None => outbox.look_for(map.photo.id, all(about), Aim::Mark(mark.id)),
    }
}

/// A way from what marks are tied to, to the photographs that show it.
pub fn shown_ui(ui: &mut Ui, about: &About<'_>, tie: Tie, what: &str, outbox: &mut Outbox) {
    let marks = about.file.photos.iter().flat_map(|file| file.marks.iter().map(move |mark| (file, mark)));
    let tied: Vec<_> = marks.filter(|(_, mark)| Tie::of(mark) == tie).collect();
    for (file, mark) in &tied {
        let name = text!("On the photograph “{photograph}”: {what}", photograph = photo_text(&file.photo), what = what);
        if act_ui(ui, text!("On the photograph"), &name) {
            outbox.look_for(file.photo.id, all(about), Aim::Mark(mark.id));
        }
    }
}

/// The same, and where no photograph shows it, a way to mark it on one: the map before any other.
pub fn shown_or_marked_ui(ui: &mut Ui, about: &About<'_>, tie: Tie, what: &str, outbox: &mut Outbox) {
    shown_ui(ui, about, tie, what, outbox);
    let mut marks = about.file.photos.iter().flat_map(|file| &file.marks);
    let is_marked = marks.any(|mark| Tie::of(mark) == tie);
    let map = about.file.photos.iter().find(|file| file.photo.is_map).or(about.file.photos.first());
    if let Some(map) = map.filter(|_| !is_marked)
        && act_ui(ui, text!("Mark it on a photograph…"), &text!("Mark on a photograph: {what}", what = what))
    {
        outbox.look_for(map.photo.id, all(about), Aim::Pin(tie));
    }
}
