//! Figures of a part's design (clocks, voltages, consumption, sizes) with their units, changed where they stand.

use egui::Ui;

use super::about::{figure, put};
use crate::record::{Change, DesignFigure, DesignFile, Figure, Word, figure_unit};
use crate::store::Store;
use crate::text;
use crate::window::outbox::Outbox;
use crate::window::widgets::{Edit, Fact, remark, row_ui};

/// Draws the figures that are told or asked of the design's kind.
pub fn figures_ui(ui: &mut Ui, file: &DesignFile, edit: &mut Edit, outbox: &mut Outbox) {
    let asked = Figure::asked_of(file.design.kind);
    let further = file.figures.iter().filter(|row| asked.iter().all(|figure| figure.name() != row.figure));
    let names: Vec<&str> =
        asked.iter().map(|figure| figure.name()).chain(further.map(|row| row.figure.as_str())).collect();
    for name in names {
        figure_ui(ui, file, name, edit, outbox);
    }
}

fn figure_ui(ui: &mut Ui, file: &DesignFile, name: &str, edit: &mut Edit, outbox: &mut Outbox) {
    let label = Figure::named(name).map_or(name, |figure| figure.label());
    let told = file.figures.iter().find(|row| row.figure == name);
    let key = format!("design {name}");
    let fact = Fact { unit: figure_unit(name), ..Fact::line(&key, label) };
    let value = told.map(|row| row.value.to_string()).unwrap_or_default();
    if told.is_none() {
        if let Some(typed) = edit.fact_ui(ui, fact, "") {
            keep(file, name, label, &typed, edit, fact.key, outbox);
        }
        return;
    }
    row_ui(ui, label, |ui| {
        ui.horizontal_wrapped(|ui| {
            if let Some(typed) = edit.value_ui(ui, fact, &value) {
                keep(file, name, label, &typed, edit, fact.key, outbox);
            }
            source_ui(ui, file, told, label, edit, outbox);
        });
    });
}

/// Where a figure was read, behind it.
fn source_ui(
    ui: &mut Ui,
    file: &DesignFile,
    told: Option<&DesignFigure>,
    label: &str,
    edit: &mut Edit,
    outbox: &mut Outbox,
) {
    let Some(row) = told else { return };
    ui.label(remark(ui, text!("read in")));
    let key = format!("design source {}", row.figure);
    let what = text!("Source of “{figure}”", figure = label);
    if let Some(source) = edit.value_ui(ui, Fact::line(&key, &what), &row.source) {
        let name = text!("Change “{what}” of {design}", what = what, design = file.design.title());
        outbox.change(put(name, DesignFigure { source, ..row.clone() }));
    }
}

/// Writes a figure as typed, takes it out where nothing is typed, or says what is wrong beside it.
fn keep(file: &DesignFile, name: &str, label: &str, typed: &str, edit: &mut Edit, key: &str, outbox: &mut Outbox) {
    let unit = figure_unit(name);
    let bare = typed.strip_suffix(unit).unwrap_or(typed);
    let told = file.figures.iter().find(|row| row.figure == name);
    let title = text!("Change “{what}” of {design}", what = label, design = file.design.title());
    match (figure(bare), told) {
        (Err(wrong), _) => edit.refuse(key, typed, wrong),
        (Ok(Some(value)), _) if value < 0.0 => {
            edit.refuse(key, typed, text!("“{typed}” cannot be: it is 0 or more.", typed = typed));
        }
        (Ok(Some(value)), Some(row)) => outbox.change(put(title, DesignFigure { value, ..row.clone() })),
        (Ok(Some(value)), None) => outbox.change(put(
            title,
            DesignFigure {
                id: Store::new_id(),
                design: file.design.id,
                figure: name.to_owned(),
                value,
                source: String::new(),
            },
        )),
        (Ok(None), Some(row)) => {
            let mut change = Change::new(title);
            change.remove(row.id);
            outbox.change(change);
        }
        (Ok(None), None) => {}
    }
}
