//! Figures of a part's design (clocks, voltages, consumption, sizes) with their units, changed where they stand.

use egui::Ui;

use super::about::About;
use crate::record::{Change, DesignFigure, DesignFile, Figure, Word, figure_unit};
use crate::store::Store;
use crate::text;
use crate::window::forms::{Divider, dividers, figures};
use crate::window::outbox::Outbox;
use crate::window::widgets::{Edit, Fact, remark, row_ui};

/// A figure of a design, with its rows: several where a board can be set to several.
struct Told<'f> {
    file: &'f DesignFile,
    name: &'f str,
    label: &'f str,
    rows: Vec<&'f DesignFigure>,
    may_repeat: bool,
    /// Whether each is a divider, that may belong to one bus clock.
    divides: bool,
}

/// Turns a figure of the part's design into a field.
pub fn open(figure: Figure, about: &About<'_>, edit: &mut Edit) {
    let Some(file) = about.view.logbook.design_of(about.file) else { return };
    let rows: Vec<&DesignFigure> = file.figures.iter().filter(|row| row.figure == figure.name()).collect();
    edit.open(&key(figure.name()), &values(&rows));
}

fn key(name: &str) -> String {
    format!("design {name}")
}

fn values(rows: &[&DesignFigure]) -> String {
    let said = |row: &&DesignFigure| match row.at_bus_mhz {
        Some(bus_mhz) => text!("{divider} at {bus} MHz", divider = row.value, bus = bus_mhz),
        None => row.value.to_string(),
    };
    rows.iter().map(said).collect::<Vec<_>>().join("; ")
}

/// Draws the figures that are told or asked of the design's kind.
pub fn figures_ui(ui: &mut Ui, file: &DesignFile, edit: &mut Edit, outbox: &mut Outbox) {
    let asked = Figure::asked_of(file.design.kind);
    let mut names: Vec<&str> = asked.iter().map(|figure| figure.name()).collect();
    for row in &file.figures {
        if !names.contains(&row.figure.as_str()) {
            names.push(&row.figure);
        }
    }
    for name in names {
        let known = Figure::named(name);
        let told = Told {
            file,
            name,
            label: known.map_or(name, |figure| figure.label()),
            rows: file.figures.iter().filter(|row| row.figure == name).collect(),
            may_repeat: known.is_some_and(|figure| figure.repeats_on(file.design.kind)),
            divides: matches!(known, Some(Figure::PciDivider | Figure::AgpDivider)),
        };
        figure_ui(ui, &told, edit, outbox);
    }
}

fn figure_ui(ui: &mut Ui, told: &Told<'_>, edit: &mut Edit, outbox: &mut Outbox) {
    let key = key(told.name);
    let fact = Fact { unit: figure_unit(told.name), ..Fact::line(&key, told.label) };
    if told.rows.is_empty() {
        if let Some(typed) = edit.fact_ui(ui, fact, "") {
            keep(told, &typed, edit, fact.key, outbox);
        }
        return;
    }
    let value = values(&told.rows);
    row_ui(ui, told.label, |ui| {
        ui.horizontal_wrapped(|ui| {
            if let Some(typed) = edit.value_ui(ui, fact, &value) {
                keep(told, &typed, edit, fact.key, outbox);
            }
            source_ui(ui, told, edit, outbox);
        });
    });
}

/// Where a figure was read, behind it; that of the first row stands for all.
fn source_ui(ui: &mut Ui, told: &Told<'_>, edit: &mut Edit, outbox: &mut Outbox) {
    let Some(first) = told.rows.first() else { return };
    ui.label(remark(ui, text!("read in")));
    let key = format!("design source {}", told.name);
    let what = text!("Source of “{figure}”", figure = told.label);
    if let Some(source) = edit.value_ui(ui, Fact::line(&key, &what), &first.source) {
        let mut change =
            Change::new(text!("Change “{what}” of {design}", what = what, design = told.file.design.title()));
        change.put_all(told.rows.iter().map(|row| DesignFigure { source: source.clone(), ..(*row).clone() }.into()));
        outbox.change(change);
    }
}

/// Writes what is typed, takes out what is not there any more, or says what is wrong beside it. Rows keep their keys
/// and sources in their order.
fn keep(told: &Told<'_>, typed: &str, edit: &mut Edit, key: &str, outbox: &mut Outbox) {
    let plain = || Ok(figures(typed, figure_unit(told.name))?.into_iter().map(|value| (value, None)).collect());
    let values: Vec<Divider> = match if told.divides { dividers(typed) } else { plain() } {
        Ok(values) => values,
        Err(wrong) => return edit.refuse(key, typed, wrong),
    };
    if values.iter().any(|(value, _)| *value < 0.0) {
        return edit.refuse(key, typed, text!("“{typed}” cannot be: it is 0 or more.", typed = typed));
    }
    if values.len() > 1 && !told.may_repeat {
        return edit.refuse(key, typed, text!("“{typed}” is more than one figure, and one is asked.", typed = typed));
    }
    let title = text!("Change “{what}” of {design}", what = told.label, design = told.file.design.title());
    let mut change = Change::new(title);
    let source = told.rows.first().map(|row| row.source.clone()).unwrap_or_default();
    for (at, (value, at_bus_mhz)) in values.iter().copied().enumerate() {
        change.put(match told.rows.get(at) {
            Some(row) => DesignFigure { value, at_bus_mhz, ..(*row).clone() },
            None => DesignFigure {
                id: Store::new_id(),
                design: told.file.design.id,
                figure: told.name.to_owned(),
                value,
                source: source.clone(),
                at_bus_mhz,
            },
        });
    }
    for row in told.rows.iter().skip(values.len()) {
        change.remove(row.id);
    }
    if !(values.is_empty() && told.rows.is_empty()) {
        outbox.change(change);
    }
}
