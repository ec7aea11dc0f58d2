//! Where the part is from, and where it goes.

use egui::Ui;

use super::records::new_places;
use super::typed::{Typed, cents};
use crate::record::{Lot, When};
use crate::text;
use crate::window::outbox::View;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, field_ui, link_ui, pick_ui, remark, section_ui, strong, target_ui};

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
        // The lots of late first: what is unpacked came in last.
        let lots = view.logbook.lots.iter().rev().map(|file| (file.lot.id, file.lot.name.clone()));
        let label = text!("The lot it came with");
        if let Some(lot) = pick_ui(ui, label, &mut from.search, !from.new_lot.is_told(), lots) {
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
    let paths = view.logbook.places.iter().map(|known| view.logbook.place_path(known.id));
    let mut found: Vec<String> = paths.filter(|path| path.to_lowercase().contains(&typed) && path != place).collect();
    found.sort_unstable();
    ui.horizontal_wrapped(|ui| {
        for path in found.iter().take(MOST) {
            if target_ui(ui, path, false).clicked() {
                place.clone_from(path);
            }
        }
    });
    let new = new_places(place, view);
    if new.is_empty() {
        ui.label(remark(ui, text!("From the outside in, with strokes between: Cellar / Shelf 2 / Box 4")));
    } else {
        ui.label(remark(ui, text!("Will be made: {places}", places = new.join(" / "))));
    }
}
