//! Places by their path, and a place's own facts: what it is called, where it stands, how it is struck out.

use egui::Ui;

use crate::counted;
use crate::record::{Change, Entry, Logbook, Place, PlaceId};
use crate::store::Store;
use crate::text;
use crate::window::outbox::{Outbox, View};
use crate::window::widgets::{Asking, Edit, Fact, Pick, Picker, link_ui, remark};

/// The names on a path of places, outermost first: "Cellar / Shelf 2 / Box 4".
pub fn place_names(path: &str) -> Vec<&str> {
    path.split('/').map(str::trim).filter(|name| !name.is_empty()).collect()
}

/// The innermost place of a path; places that are not there yet are added to `before`.
pub fn place_of(path: &str, logbook: &Logbook, before: &mut Vec<Entry>) -> Option<PlaceId> {
    let mut within: Option<PlaceId> = None;
    let mut is_known = true;
    for name in place_names(path) {
        let known = logbook
            .places
            .iter()
            .find(|place| is_known && place.within == within && place.name.to_lowercase() == name.to_lowercase());
        if let Some(place) = known {
            within = Some(place.id);
            continue;
        }
        is_known = false;
        let place = Place { id: Store::new_id(), within, name: name.to_owned(), note: String::new() };
        within = Some(place.id);
        before.push(place.into());
    }
    within
}

/// The names of a path that no place carries yet.
pub fn new_places<'a>(path: &'a str, logbook: &Logbook) -> Vec<&'a str> {
    let mut before = Vec::new();
    place_of(path, logbook, &mut before);
    let names = place_names(path);
    names[names.len() - before.len()..].to_vec()
}

/// Every place with its whole path, by that path.
pub fn places(logbook: &Logbook) -> Vec<(PlaceId, String)> {
    let mut places: Vec<_> = logbook.places.iter().map(|place| (place.id, logbook.place_path(place.id))).collect();
    places.sort_by(|(_, one), (_, other)| one.cmp(other));
    places
}

/// Whether a place is the other one or stands in it, however deep.
fn is_within(logbook: &Logbook, place: PlaceId, outer: PlaceId) -> bool {
    let mut next = Some(place);
    // A damaged tree that bites its own tail must not hang us.
    for _ in 0..32 {
        match next {
            Some(id) if id == outer => return true,
            Some(id) => next = logbook.place(id).and_then(|place| place.within),
            None => return false,
        }
    }
    false
}

/// A place's own facts; another place may be being chosen for it to stand in.
#[derive(Debug, Default)]
pub struct PlaceFacts {
    choosing: Option<Picker<Option<PlaceId>>>,
}

impl PlaceFacts {
    /// Draws the facts; each is changed where it stands. A place moves with all that is in it.
    pub fn ui(&mut self, ui: &mut Ui, id: PlaceId, edit: &mut Edit, view: &View<'_>, outbox: &mut Outbox) {
        let logbook = view.logbook;
        let Some(place) = logbook.place(id) else { return };
        let is_taken = |name: &str, within: Option<PlaceId>| {
            logbook.places.iter().any(|other| {
                other.id != id && other.within == within && other.name.to_lowercase() == name.to_lowercase()
            })
        };
        let name = Fact::line("place name", text!("What the place is called"));
        if let Some(typed) = edit.fact_ui(ui, name, &place.name) {
            if typed.is_empty() || typed.contains('/') {
                edit.refuse(name.key, &typed, text!("Give the place a name without strokes."));
            } else if is_taken(&typed, place.within) {
                edit.refuse(name.key, &typed, text!("There is a place called {name} there already.", name = typed));
            } else {
                let mut change = Change::new(text!("Call {place} {name}", place = place.name, name = typed));
                change.put(Place { name: typed, ..Place::clone(place) });
                outbox.change(change);
            }
        }
        let label = text!("It stands in");
        if let Some(picker) = &mut self.choosing {
            let picked = picker.ui(ui, Asking::one(label), logbook.revision, || {
                let others = places(logbook).into_iter().filter(|(other, _)| !is_within(logbook, *other, id));
                let outermost = (None, text!("Nothing: it is outermost").to_owned());
                std::iter::once(outermost).chain(others.map(|(other, path)| (Some(other), path)))
            });
            match picked {
                Some(Pick::One(within)) if is_taken(&place.name, within) => {
                    outbox.say(text!("There is a place called {name} there already.", name = place.name));
                }
                Some(Pick::One(within)) if within != place.within => {
                    let to = within.map_or_else(|| text!("outermost").to_owned(), |id| logbook.place_path(id));
                    let mut change = Change::new(text!("Move {place} to {to}", place = place.name, to = to));
                    change.put(Place { within, ..Place::clone(place) });
                    outbox.change(change);
                }
                _ => {}
            }
            if picked.is_some() {
                self.choosing = None;
            }
        } else {
            let within = place.within.map(|within| logbook.place_path(within)).unwrap_or_default();
            if edit.pressed_ui(ui, label, &within) {
                self.choosing = Some(Picker::ready());
            }
        }
        let note = Fact::line("place note", text!("Note on the place"));
        if let Some(typed) = edit.fact_ui(ui, note, &place.note) {
            let mut change = Change::new(text!("Change “{what}” of {place}", what = note.label, place = place.name));
            change.put(Place { note: typed, ..Place::clone(place) });
            outbox.change(change);
        }
        strike_ui(ui, place, view, outbox);
    }
}

/// A place that nothing is kept in can be struck out.
fn strike_ui(ui: &mut Ui, place: &Place, view: &View<'_>, outbox: &mut Outbox) {
    let logbook = view.logbook;
    let parts = logbook.parts.iter().filter(|file| file.part.place == Some(place.id)).count();
    let inner = logbook.places.iter().filter(|other| other.within == Some(place.id)).count();
    let materials = logbook.materials.iter().filter(|material| material.place == Some(place.id)).count();
    if parts + inner + materials > 0 {
        let held = [
            (parts, counted!("{count} part", "{count} parts", parts)),
            (inner, counted!("{count} place", "{count} places", inner)),
            (materials, counted!("{count} material", "{count} materials", materials)),
        ];
        let held: Vec<String> = held.into_iter().filter(|(count, _)| *count > 0).map(|(_, said)| said).collect();
        ui.label(remark(ui, text!("It holds {held} and moves with them.", held = held.join(", "))));
    } else if link_ui(ui, text!("Strike the empty place out")).clicked() {
        let mut change = Change::new(text!("Strike out the place {place}", place = place.name));
        change.remove(place.id);
        outbox.change(change);
    }
}
