//! What the part is: a further example of a known design, the first of a new one, or the restorer's own words.

use egui::Ui;

use super::typed::{Connector, NewDesign, Typed};
use crate::record::{DesignFile, NAME_MOST, Originality, Side, Word as _};
use crate::text;
use crate::window::forms::{all_connectors, connector_row_ui};
use crate::window::outbox::View;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{
    Asking, Pick, Picker, body, choice_ui, field_ui, link_ui, notes_ui, remark, section_ui, short_field_ui, strong,
};

/// Draws the step.
pub fn what_ui(ui: &mut Ui, typed: &mut Typed, view: &View<'_>) {
    let kind = typed.kind;
    if let Some(design) = typed.what.design.and_then(|id| view.logbook.design(id)) {
        if known_ui(ui, design, view) {
            typed.what.design = None;
        }
    } else {
        let asking = Asking { shows_all: false, ..Asking::one(text!("A design that you have already")) };
        let picked = typed.what.search.ui(ui, asking, (view.logbook.revision, kind), || {
            // Designs of the part's kind come first, the others behind them.
            let mut designs: Vec<_> = view.logbook.designs.iter().map(|file| &file.design).collect();
            designs.sort_by_key(|design| kind.is_some_and(|kind| kind != design.kind));
            designs.into_iter().map(|design| (design.id, format!("{} ({})", design.title(), design.kind.label())))
        });
        if let Some(Pick::One(design)) = picked
            && let Some(file) = view.logbook.design(design)
        {
            typed.what.design = Some(design);
            typed.pick_kind(file.design.kind);
        }
        section_ui(ui, text!("Or a new design"));
        ui.vertical(|ui| new_ui(ui, &mut typed.what.new, view));
    }
    section_ui(ui, text!("This one"));
    let what = &mut typed.what;
    ui.horizontal_wrapped(|ui| {
        short_field_ui(ui, text!("In your own words"), &mut what.name, Some(70.0 * GRID), NAME_MOST);
        field_ui(ui, text!("Serial number"), &mut what.serial, Some(44.0 * GRID));
        let words: Vec<_> = Originality::ALL.iter().map(|word| (*word, word.label())).collect();
        choice_ui(ui, text!("Originality"), &mut what.originality, &words, 44.0 * GRID);
    });
    notes_ui(ui, text!("Remarks"), &mut what.note, 2);
}

/// A known design; `true` when another is wanted.
fn known_ui(ui: &mut Ui, file: &DesignFile, view: &View<'_>) -> bool {
    let design = &file.design;
    let mut other = false;
    ui.horizontal_wrapped(|ui| {
        ui.label(strong(design.title()));
        ui.label(remark(ui, design.kind.label()));
        other = link_ui(ui, text!("Not this one")).clicked();
    });
    if design.introduced.is_known() || design.discontinued.is_known() {
        ui.label(body(text!("Made {from} – {to}", from = design.introduced, to = design.discontinued)));
    }
    for side in [Side::Offers, Side::Needs] {
        let rows = file.connectors.iter().filter(|row| row.side == side);
        let list: Vec<String> =
            rows.map(|row| format!("{} × {}", row.count, view.rules.connectors.label(&row.connector))).collect();
        if !list.is_empty() {
            ui.label(body(format!("{} {}", side.label(), list.join(", "))));
        }
    }
    other
}

fn new_ui(ui: &mut Ui, new: &mut NewDesign, view: &View<'_>) {
    ui.horizontal_wrapped(|ui| {
        short_field_ui(ui, text!("Maker"), &mut new.maker, Some(44.0 * GRID), NAME_MOST);
        short_field_ui(ui, text!("Model"), &mut new.model, Some(44.0 * GRID), NAME_MOST);
        short_field_ui(ui, text!("Revision"), &mut new.revision, Some(24.0 * GRID), NAME_MOST);
    });
    ui.horizontal_wrapped(|ui| {
        for (label, typed) in [(text!("First sold"), &mut new.introduced), (text!("Last made"), &mut new.discontinued)]
        {
            field_ui(ui, label, typed, Some(28.0 * GRID));
        }
        ui.label(remark(ui, text!("A year, a month or a day: 1996, 1996-03")));
    });
    ui.vertical(|ui| {
        for typed in [&new.introduced, &new.discontinued] {
            if let Err(fault) = typed.parse::<crate::record::When>() {
                ui.label(body(fault.to_string()).color(ui.tokens().severity_grave));
            }
        }
    });
    if !new.is_told() {
        return;
    }
    ui.add_space(GRID);
    side_ui(ui, Side::Offers, text!("Connectors it offers"), &mut new.offers_typed, &mut new.connectors, view);
    side_ui(ui, Side::Needs, text!("Connectors it needs"), &mut new.needs_typed, &mut new.connectors, view);
}

fn side_ui(
    ui: &mut Ui,
    side: Side,
    label: &str,
    typed: &mut Picker<String>,
    connectors: &mut Vec<Connector>,
    view: &View<'_>,
) {
    let asking = Asking { shows_all: false, ..Asking::one(label) };
    if let Some(Pick::One(connector)) = typed.ui(ui, asking, (), || all_connectors(view.rules)) {
        match connectors.iter_mut().find(|row| row.side == side && row.name == connector) {
            Some(row) => row.count += 1,
            None => connectors.push(Connector { side, name: connector, count: 1 }),
        }
    }
    let away = ui.vertical(|ui| counts_ui(ui, side, connectors, view)).inner;
    if let Some(at) = away {
        connectors.remove(at);
    }
}

/// The connectors of one side with their counts; the place of one that was taken out.
fn counts_ui(ui: &mut Ui, side: Side, connectors: &mut [Connector], view: &View<'_>) -> Option<usize> {
    let mut away = None;
    for (at, row) in connectors.iter_mut().enumerate().filter(|(_, row)| row.side == side) {
        match connector_row_ui(ui, view.rules.connectors.label(&row.name), row.count) {
            Some(0) => away = Some(at),
            Some(count) => row.count = count,
            None => {}
        }
    }
    away
}
