//! Where the part is from, and where it goes.

use egui::Ui;

use super::typed::{From, Typed, cents};
use crate::record::{Lot, When};
use crate::text;
use crate::window::forms::{new_places, places};
use crate::window::outbox::View;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{Asking, Pick, body, field_ui, link_ui, remark, section_ui, strong, target_ui};

/// Draws the step.
pub fn from_ui(ui: &mut Ui, typed: &mut Typed, view: &View<'_>) {
    let from = &mut typed.from;
    let currency = &view.logbook.workshop.currency;
    if let Some(file) = from.lot.and_then(|id| view.logbook.lot(id)) {
        let mut other = false;
        ui.horizontal_wrapped(|ui| {
            ui.label(strong(&file.lot.name));
            ui.label(remark(ui, lot_says(&file.lot)));
            other = link_ui(ui, text!("Not this lot")).clicked();
        });
        if other {
            from.lot = None;
        }
    } else {
        let label = text!("The lot it came with");
        let asking = Asking { shows_all: !from.new_lot.is_told(), ..Asking::one(label) };
        let picked = from.search.ui(ui, asking, view.logbook.revision, || {
            // The lots of late first: what is unpacked came in last.
            view.logbook.lots.iter().rev().map(|file| (file.lot.id, file.lot.name.clone()))
        });
        if let Some(Pick::One(lot)) = picked {
            from.lot = Some(lot);
        }
        section_ui(ui, text!("Or a new lot"));
        let new = &mut from.new_lot;
        ui.horizontal_wrapped(|ui| {
            field_ui(ui, text!("What you call it"), &mut new.name, Some(60.0 * GRID));
            field_ui(ui, text!("From whom or where"), &mut new.source, Some(60.0 * GRID));
        });
        ui.horizontal_wrapped(|ui| {
            field_ui(ui, text!("When it came"), &mut new.acquired, Some(32.0 * GRID));
            let price = text!("Price of the lot ({currency})", currency = currency);
            field_ui(ui, &price, &mut new.price, Some(36.0 * GRID));
        });
        ui.vertical(|ui| {
            date_says_ui(ui, &new.acquired);
            price_says_ui(ui, &new.price);
        });
    }
    section_ui(ui, text!("This part"));
    ui.horizontal_wrapped(|ui| {
        let price = text!("Its own price or share ({currency})", currency = currency);
        field_ui(ui, &price, &mut from.price, Some(44.0 * GRID));
        if from.lot.is_none() && !from.new_lot.is_told() {
            field_ui(ui, text!("When the part came"), &mut from.acquired, Some(32.0 * GRID));
        }
    });
    ui.vertical(|ui| {
        price_says_ui(ui, &from.price);
        if from.lot.is_none() && !from.new_lot.is_told() {
            date_says_ui(ui, &from.acquired);
        }
    });
    section_ui(ui, text!("Where it goes"));
    place_ui(ui, &mut from.place, view);
    ui.add_space(2.0 * GRID);
    inside_ui(ui, from, view);
    apart_ui(ui, from);
}

/// The part that it sits in; asked for only where there is one.
fn inside_ui(ui: &mut Ui, from: &mut From, view: &View<'_>) {
    if let Some(outer) = from.inside.and_then(|id| view.logbook.part(id)) {
        let mut other = false;
        ui.horizontal_wrapped(|ui| {
            let title = view.logbook.title_of(outer);
            ui.label(body(text!("It sits in {tag}  {title}", tag = outer.part.tag, title = title)));
            other = link_ui(ui, text!("Not in that one")).clicked();
        });
        if other {
            from.inside = None;
        }
    } else if from.asks_inside {
        let asking = Asking { shows_all: false, ..Asking::one(text!("The part that it sits in")) };
        let picked = from.inside_search.ui(ui, asking, view.logbook.revision, || {
            let parts = view.logbook.parts.iter().rev();
            parts.map(|file| (file.part.id, format!("{}  {}", file.part.tag, view.logbook.title_of(file))))
        });
        if let Some(Pick::One(outer)) = picked {
            from.inside = Some(outer);
        }
    } else if !view.logbook.parts.is_empty() && link_ui(ui, text!("It sits inside another part…")).clicked() {
        from.asks_inside = true;
    }
}

/// Why it is kept apart; asked for only where it is.
fn apart_ui(ui: &mut Ui, from: &mut From) {
    if from.keeps_apart {
        field_ui(ui, text!("Kept apart because"), &mut from.quarantine, Some(120.0 * GRID));
    } else if link_ui(ui, text!("Keep it apart: it leaks, smells or crawls…")).clicked() {
        from.keeps_apart = true;
    }
}

fn lot_says(lot: &Lot) -> String {
    let when = lot.acquired.to_string();
    [lot.source.clone(), when].into_iter().filter(|word| !word.is_empty()).collect::<Vec<_>>().join(", ")
}

fn date_says_ui(ui: &mut Ui, typed: &str) {
    if let Err(fault) = typed.parse::<When>() {
        ui.label(body(fault.to_string()).color(ui.tokens().severity_grave));
    }
}

fn price_says_ui(ui: &mut Ui, typed: &str) {
    if cents(typed).is_err() {
        let says = text!("“{price}” is no price: write 12 or 12.50", price = typed.trim());
        ui.label(body(says).color(ui.tokens().severity_grave));
    }
}

/// A path of places: known ones are offered, the others are made.
fn place_ui(ui: &mut Ui, place: &mut String, view: &View<'_>) {
    const MOST: usize = 8;
    field_ui(ui, text!("Place"), place, Some(120.0 * GRID));
    let typed = place.trim().to_lowercase();
    let paths = places(view.logbook).into_iter().map(|(_, path)| path);
    let found: Vec<String> = paths.filter(|path| path.to_lowercase().contains(&typed) && path != place).collect();
    ui.horizontal_wrapped(|ui| {
        for path in found.iter().take(MOST) {
            if target_ui(ui, path, false).clicked() {
                place.clone_from(path);
            }
        }
    });
    let new = new_places(place, view.logbook);
    if new.is_empty() {
        ui.label(remark(ui, text!("From the outside in, with strokes between: Cellar / Shelf 2 / Box 4")));
    } else {
        ui.label(remark(ui, text!("Will be made: {places}", places = new.join(" / "))));
    }
}
