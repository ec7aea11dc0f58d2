//! What the part is: a further example of a known design, the first of a new one, or the restorer's own words.

use egui::Ui;

use super::typed::{Connector, NewDesign, Typed};
use crate::record::{DesignFile, Kind, Originality, Side, Word as _};
use crate::text;
use crate::window::outbox::View;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{
    body, choice_ui, field_ui, link_ui, mark_button, notes_ui, pick_ui, remark, section_ui, strong,
};

/// Draws the step.
pub fn what_ui(ui: &mut Ui, typed: &mut Typed, view: &View<'_>) {
    let kind = typed.kind;
    if let Some(design) = typed.what.design.and_then(|id| view.logbook.design(id)) {
        if known_ui(ui, design, view) {
            typed.what.design = None;
        }
    } else {
        // Designs of the part's kind come first, the others behind them.
        let designs = || view.logbook.designs.iter().map(|file| (&file.design, file.design.title()));
        let is_of_kind = |design_kind: Kind| kind.is_none_or(|kind| kind == design_kind);
        let ordered = designs()
            .filter(|(design, _)| is_of_kind(design.kind))
            .chain(designs().filter(|(design, _)| !is_of_kind(design.kind)))
            .map(|(design, title)| (design, format!("{title} ({})", design.kind.label())));
        let label = text!("A design that you have already");
        if let Some(design) = pick_ui(ui, label, &mut typed.what.search, false, ordered) {
            typed.what.design = Some(design.id);
            typed.pick_kind(design.kind);
        }
        section_ui(ui, text!("Or a new design"));
        ui.vertical(|ui| new_ui(ui, &mut typed.what.new, view));
    }
    section_ui(ui, text!("This one"));
    let what = &mut typed.what;
    ui.horizontal_wrapped(|ui| {
        field_ui(ui, text!("In your own words"), &mut what.name, Some(70.0 * GRID));
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
        field_ui(ui, text!("Maker"), &mut new.maker, Some(44.0 * GRID));
        field_ui(ui, text!("Model"), &mut new.model, Some(44.0 * GRID));
        field_ui(ui, text!("Revision"), &mut new.revision, Some(24.0 * GRID));
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

fn side_ui(ui: &mut Ui, side: Side, label: &str, typed: &mut String, connectors: &mut Vec<Connector>, view: &View<'_>) {
    let all = view.rules.connectors.all().map(|row| (row.id.clone(), crate::text::say(&row.label).to_owned()));
    if let Some(connector) = pick_ui(ui, label, typed, false, all) {
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
        let name = view.rules.connectors.label(&row.name).to_owned();
        ui.horizontal(|ui| {
            if mark_button(ui, Mark::Down, &text!("One {name} fewer", name = name)).clicked() && row.count > 1 {
                row.count -= 1;
            }
            ui.label(strong(row.count.to_string()));
            if mark_button(ui, Mark::Up, &text!("One {name} more", name = name)).clicked() && row.count < 99 {
                row.count += 1;
            }
            ui.label(body(&name));
            if mark_button(ui, Mark::Away, &text!("Take {name} out", name = name)).clicked() {
                away = Some(at);
            }
        });
    }
    away
}
