//! The positions as rows of a grid.

use std::sync::Arc;

use egui::Id;

use super::super::about::day_text;
use crate::record::{CapacitorFile, CapacitorState, Dielectric, Mounting, PartFile, Word as _};
use crate::text;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{Cells, Column, Rows, Sort, Width};

const NAME: usize = 0;
const VALUE: usize = 1;
const VOLTS: usize = 2;
const CELSIUS: usize = 3;
const SIZE: usize = 4;
const PITCH: usize = 5;
const MADE_OF: usize = 6;
const SITS: usize = 7;
const SERIES: usize = 8;
const DOES: usize = 9;
const STATE: usize = 10;
const MEASURED: usize = 11;
const NOW: usize = 12;

/// The columns, in the reader's language.
pub fn columns() -> [Column<'static>; 13] {
    let column = |title, width, shown_from| Column { title, width, sorts: true, shown_from };
    let plain = |title, width, shown_from| Column { title, width, sorts: false, shown_from };
    [
        column(text!("Position"), Width::Points(18.0 * GRID), 0.0),
        column(text!("Value"), Width::Points(20.0 * GRID), 0.0),
        column(text!("Voltage"), Width::Points(16.0 * GRID), 0.0),
        plain(text!("Up to"), Width::Points(15.0 * GRID), 300.0 * GRID),
        plain(text!("Ø × height"), Width::Points(26.0 * GRID), 100.0 * GRID),
        plain(text!("Pitch"), Width::Points(16.0 * GRID), 340.0 * GRID),
        plain(text!("Made of"), Width::Share(1.2), 250.0 * GRID),
        plain(text!("Sits"), Width::Points(24.0 * GRID), 320.0 * GRID),
        column(text!("Series"), Width::Points(16.0 * GRID), 130.0 * GRID),
        plain(text!("What for"), Width::Share(1.2), 180.0 * GRID),
        column(text!("State"), Width::Points(34.0 * GRID), 0.0),
        plain(text!("Last measured"), Width::Share(1.5), 155.0 * GRID),
        plain(text!("What sits there now"), Width::Share(1.5), 220.0 * GRID),
    ]
}

/// A part's positions, found and put in order.
pub struct Order {
    pub of: Arc<PartFile>,
    pub letters: String,
    pub sort: Option<Sort>,
    /// Places in the part's list.
    places: Vec<usize>,
}

impl Order {
    pub fn of(file: &Arc<PartFile>, letters: &str, sort: Option<Sort>) -> Self {
        let words: Vec<String> = letters.split_whitespace().map(str::to_lowercase).collect();
        let holds = |one: &CapacitorFile| {
            let hay = format!("{} {} {}", cells(one).join(" "), one.position.place_on_part, one.state().label());
            let hay = hay.to_lowercase();
            words.iter().all(|word| hay.contains(word.as_str()))
        };
        let all = &file.capacitors;
        let mut places: Vec<usize> = (0..all.len()).filter(|at| words.is_empty() || holds(&all[*at])).collect();
        let Sort { column, descending } = sort.unwrap_or(Sort { column: NAME, descending: false });
        let figure = |figure: Option<f64>| figure.unwrap_or(-1.0);
        places.sort_by(|a, b| {
            let (a, b) = (&all[*a], &all[*b]);
            let by_name = natural(&a.position.designator).cmp(&natural(&b.position.designator));
            let order = match column {
                VALUE => figure(a.position.capacitance_uf).total_cmp(&figure(b.position.capacitance_uf)),
                VOLTS => figure(a.position.voltage_v).total_cmp(&figure(b.position.voltage_v)),
                SERIES => a.position.series.cmp(&b.position.series),
                // What is bad comes first.
                STATE => (!a.state().is_bad(), a.state()).cmp(&(!b.state().is_bad(), b.state())),
                _ => by_name,
            };
            let order = if descending { order.reverse() } else { order };
            order.then(by_name)
        });
        Self { of: Arc::clone(file), letters: letters.to_owned(), sort, places }
    }
}

/// Letters, then the number behind them: C9 comes before C10.
fn natural(name: &str) -> (&str, u32, &str) {
    let letters = name.find(|c: char| c.is_ascii_digit()).unwrap_or(name.len());
    (&name[..letters], name[letters..].parse().unwrap_or(u32::MAX), name)
}

/// The rows of an order.
pub struct PositionRows<'a> {
    pub order: &'a Order,
}

impl PositionRows<'_> {
    pub fn file(&self, row: usize) -> Option<&CapacitorFile> {
        self.order.of.capacitors.get(*self.order.places.get(row)?)
    }
}

fn unit(figure: Option<f64>, unit: &str) -> String {
    figure.map(|figure| format!("{figure} {unit}")).unwrap_or_default()
}

/// A position's cells but for its state.
fn cells(file: &CapacitorFile) -> [String; 13] {
    let one = &file.position;
    let size = match (one.diameter_mm, one.height_mm) {
        (Some(across), Some(high)) => format!("{across} × {high} mm"),
        (Some(across), None) => format!("Ø {across} mm"),
        (None, Some(high)) => format!("? × {high} mm"),
        (None, None) => String::new(),
    };
    let made_of = if one.dielectric == Dielectric::Unknown { "" } else { one.dielectric.label() };
    let sits = if one.mounting == Mounting::Unknown { "" } else { one.mounting.label() };
    let measured = file
        .looks
        .iter()
        .rfind(|look| look.measured_uf.is_some() || look.esr_mohm.is_some() || look.leakage_ua.is_some());
    let measured = measured.map_or_else(String::new, |look| {
        let mut words = vec![unit(look.measured_uf, "µF"), unit(look.esr_mohm, "mΩ"), unit(look.leakage_ua, "µA")];
        words.push(day_text(look.looked.on));
        words.retain(|word| !word.is_empty());
        words.join(", ")
    });
    let replaced = file.looks.iter().rfind(|look| !look.replaced_by.is_empty());
    [
        one.designator.clone(),
        unit(one.capacitance_uf, "µF"),
        unit(one.voltage_v, "V"),
        unit(one.temperature_c, "°C"),
        size,
        unit(one.pitch_mm, "mm"),
        made_of.to_owned(),
        sits.to_owned(),
        one.series.clone(),
        one.function.map_or(one.place_on_part.as_str(), |function| function.label()).to_owned(),
        String::new(),
        measured,
        replaced.map_or_else(String::new, |look| look.replaced_by.clone()),
    ]
}

impl Rows for PositionRows<'_> {
    fn count(&self) -> usize {
        self.order.places.len()
    }

    fn key(&self, row: usize) -> Id {
        Id::unique(self.file(row).map(|file| file.position.id))
    }

    fn name(&self, row: usize) -> String {
        let Some(file) = self.file(row) else { return String::new() };
        let mut words: Vec<String> = cells(file).into();
        words[STATE] = state_text(file);
        words.retain(|word| !word.is_empty());
        words.join(", ")
    }

    fn draw(&self, row: usize, drawn: &mut Cells<'_>) {
        let Some(file) = self.file(row) else { return };
        let said = cells(file);
        for (at, words) in said.iter().enumerate() {
            match at {
                NAME | SERIES => drawn.marking(at, words),
                VALUE | VOLTS => drawn.text(at, words),
                CELSIUS | SIZE | PITCH | MADE_OF | SITS | DOES | MEASURED | NOW => drawn.remark(at, words),
                _ => {}
            }
        }
        let tokens = drawn.canvas().tokens();
        let (mark, colour) = match file.state() {
            state if state.is_bad() => (Mark::SeverityGrave, tokens.severity_grave),
            CapacitorState::NotLooked => (Mark::Seek, tokens.ink_weak),
            _ => (Mark::Done, tokens.gate_passed),
        };
        drawn.mark(STATE, mark, &state_text(file), colour);
    }
}

/// How a position stands, in a word or two.
pub fn state_text(file: &CapacitorFile) -> String {
    let state = file.state().label();
    if file.is_replaced() { text!("{state}, replaced", state = state) } else { state.to_owned() }
}
