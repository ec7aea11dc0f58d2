//! Capacitor positions in groups: a line in plain words, or field by field; each group stands for its positions.

use egui::{Key, Response, Ui};
use serde::{Deserialize, Serialize};

use super::new_uuid;
use crate::assess::findings::after_capacitors;
use crate::counted;
use crate::record::{
    BadPhrase, CapacitorGroup, CapacitorState, Dielectric, Entry, Moment, Mounting, PartFile, When, Word as _,
    read_phrase,
};
use crate::text;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, choice_ui, field_ui, link_ui, mark_button, mark_ui, press_ui, remark};

/// Groups of positions that are being logged.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct CapacitorsRound {
    /// The line that is being typed.
    line: String,
    groups: Vec<CapacitorGroup>,
    /// The fields, while a group is given by them.
    fields: Option<Fields>,
}

/// A group as it is typed into fields.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
struct Fields {
    count: String,
    designators: String,
    capacitance_uf: String,
    voltage_v: String,
    diameter_mm: String,
    height_mm: String,
    pitch_mm: String,
    temperature_c: String,
    series: String,
    place: String,
    dielectric: Dielectric,
    mounting: Mounting,
    state: CapacitorState,
}

impl Default for Fields {
    fn default() -> Self {
        let none = String::new;
        Self {
            count: none(),
            designators: none(),
            capacitance_uf: none(),
            voltage_v: none(),
            diameter_mm: none(),
            height_mm: none(),
            pitch_mm: none(),
            temperature_c: none(),
            series: none(),
            place: none(),
            dielectric: Dielectric::Unknown,
            mounting: Mounting::Unknown,
            state: CapacitorState::NotLooked,
        }
    }
}

impl Fields {
    /// The group that the fields tell: figures are held to the same bounds as in a line.
    fn group(&self) -> Result<CapacitorGroup, BadPhrase> {
        let mut line = String::new();
        let figures = [
            (&self.count, " of "),
            (&self.designators, ", "),
            (&self.capacitance_uf, " µF "),
            (&self.voltage_v, " V "),
            (&self.diameter_mm, " mm across "),
            (&self.height_mm, " mm high "),
            (&self.pitch_mm, " mm pitch "),
            (&self.temperature_c, " °C "),
        ];
        for (typed, unit) in figures {
            if !typed.trim().is_empty() {
                line.push_str(typed.trim());
                line.push_str(unit);
            }
        }
        let mut group = match read_phrase(&line) {
            Err(BadPhrase::Empty) => CapacitorGroup::new(),
            read => read?,
        };
        self.series.trim().clone_into(&mut group.series);
        self.place.trim().clone_into(&mut group.place_on_part);
        group.dielectric = self.dielectric;
        group.mounting = self.mounting;
        group.state = self.state;
        if group == CapacitorGroup::new() { Err(BadPhrase::Empty) } else { Ok(group) }
    }
}

impl CapacitorsRound {
    /// How many positions the groups stand for, with the one that is being typed when it is understood.
    pub fn positions(&self) -> usize {
        self.all().map(|group| group.count).sum()
    }

    /// Every group, the one still in the line or in the fields last.
    fn all(&self) -> impl Iterator<Item = CapacitorGroup> {
        let pending = [read_phrase(&self.line).ok(), self.fields.as_ref().and_then(|fields| fields.group().ok())];
        self.groups.iter().cloned().chain(pending.into_iter().flatten())
    }

    /// What is wrong with the line or the fields.
    pub fn fault(&self) -> Option<String> {
        let line = read_phrase(&self.line).err();
        let fields = self.fields.as_ref().and_then(|fields| fields.group().err());
        line.into_iter().chain(fields).find(|error| *error != BadPhrase::Empty).map(|error| error.to_string())
    }

    /// The positions, and what follows from them for the findings of a part as its file stands.
    pub fn entries(&self, file: &PartFile, rules: &crate::rules::Rules, on: impl Into<When>) -> Vec<Entry> {
        let logged = Moment { on: on.into(), sequence: 0 };
        let groups: Vec<CapacitorGroup> = self.all().collect();
        let positions = groups.iter().flat_map(|group| group.positions(file.part.id, logged, &mut new_uuid));
        let mut entries: Vec<Entry> = positions.map(Entry::from).collect();
        if entries.is_empty() {
            return entries;
        }
        let mut would_be = file.clone();
        would_be.hang_all(&entries);
        entries.extend(after_capacitors(&would_be, rules, logged, &mut new_uuid));
        entries
    }

    /// Draws the round.
    pub fn ui(&mut self, ui: &mut Ui) {
        ui.vertical(|ui| self.groups_ui(ui));
        self.line_ui(ui);
        ui.add_space(2.0 * GRID);
        self.fields_ui(ui);
    }

    fn groups_ui(&mut self, ui: &mut Ui) {
        let (mut edit, mut away) = (None, None);
        for (at, group) in self.groups.iter().enumerate() {
            ui.horizontal_wrapped(|ui| {
                let said = group.said();
                if mark_button(ui, Mark::Away, &text!("Take out: {group}", group = said)).clicked() {
                    away = Some(at);
                }
                let colour = if group.state.is_bad() { ui.tokens().severity_grave } else { ui.tokens().ink };
                ui.label(body(said).color(colour));
                if link_ui(ui, text!("Change it")).clicked() {
                    edit = Some(at);
                }
            });
        }
        if let Some(at) = edit {
            self.fields = Some(Fields::of(&self.groups.remove(at)));
        }
        if let Some(at) = away {
            self.groups.remove(at);
        }
        if !self.groups.is_empty() {
            ui.label(remark(ui, counted!("{count} position in all", "{count} positions in all", self.positions())));
            ui.add_space(2.0 * GRID);
        }
    }

    fn line_ui(&mut self, ui: &mut Ui) {
        let label = text!("Capacitors in plain words");
        let line = field_ui(ui, label, &mut self.line, None);
        let ended = line.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
        ui.vertical(|ui| self.understood_ui(ui, &line, ended));
    }

    fn understood_ui(&mut self, ui: &mut Ui, line: &Response, ended: bool) {
        match read_phrase(&self.line) {
            Ok(group) => {
                let mut add = ended;
                ui.horizontal_wrapped(|ui| {
                    mark_ui(ui, Mark::Done, ui.tokens().gate_passed);
                    ui.label(body(text!("Understood: {group}", group = group.said())));
                    add |= press_ui(ui, text!("Add them"), text!("Enter"), None).clicked();
                });
                if add {
                    self.groups.push(group);
                    self.line.clear();
                    line.request_focus();
                }
            }
            Err(BadPhrase::Empty) => {
                let example = text!("For example: six of 1000 µF 6.3 V 8 mm near the processor, sound");
                ui.label(remark(ui, example));
            }
            Err(fault) => {
                ui.label(body(fault.to_string()).color(ui.tokens().severity_grave));
            }
        }
    }

    fn fields_ui(&mut self, ui: &mut Ui) {
        let Some(fields) = &mut self.fields else {
            if link_ui(ui, text!("Or field by field")).clicked() {
                self.fields = Some(Fields::default());
            }
            return;
        };
        ui.horizontal_wrapped(|ui| {
            let small = Some(22.0 * GRID);
            field_ui(ui, text!("How many"), &mut fields.count, small);
            field_ui(ui, text!("Designators (C1–C6)"), &mut fields.designators, Some(34.0 * GRID));
            field_ui(ui, text!("Value (µF)"), &mut fields.capacitance_uf, small);
            field_ui(ui, text!("Voltage (V)"), &mut fields.voltage_v, small);
            field_ui(ui, text!("Across (mm)"), &mut fields.diameter_mm, small);
            field_ui(ui, text!("Height (mm)"), &mut fields.height_mm, small);
            field_ui(ui, text!("Pitch (mm)"), &mut fields.pitch_mm, small);
            field_ui(ui, text!("Up to (°C)"), &mut fields.temperature_c, small);
            let states: Vec<_> = CapacitorState::ALL.iter().map(|word| (*word, word.label())).collect();
            choice_ui(ui, text!("State"), &mut fields.state, &states, 34.0 * GRID);
            let dielectrics: Vec<_> = Dielectric::ALL.iter().map(|word| (*word, word.label())).collect();
            choice_ui(ui, text!("Made of"), &mut fields.dielectric, &dielectrics, 36.0 * GRID);
            let mountings: Vec<_> = Mounting::ALL.iter().map(|word| (*word, word.label())).collect();
            choice_ui(ui, text!("Mounting"), &mut fields.mounting, &mountings, 32.0 * GRID);
            field_ui(ui, text!("Series"), &mut fields.series, small);
            field_ui(ui, text!("Place of the group"), &mut fields.place, Some(50.0 * GRID));
        });
        let read = fields.group();
        let mut done = false;
        ui.horizontal_wrapped(|ui| match read {
            Ok(group) => {
                if press_ui(ui, text!("Add the group"), "", None).clicked() {
                    self.groups.push(group.clone());
                    done = true;
                }
                ui.label(body(group.said()));
            }
            Err(BadPhrase::Empty) => {
                ui.label(remark(ui, text!("Fill in what can be read; the rest may stay empty.")));
            }
            Err(fault) => drop(ui.label(body(fault.to_string()).color(ui.tokens().severity_grave))),
        });
        if done || link_ui(ui, text!("Put the fields away")).clicked() {
            self.fields = None;
        }
    }
}

impl Fields {
    fn of(group: &CapacitorGroup) -> Self {
        let figure = |figure: Option<f64>| figure.map(|figure| figure.to_string()).unwrap_or_default();
        Self {
            count: group.count.to_string(),
            designators: group.designators.join(", "),
            capacitance_uf: figure(group.capacitance_uf),
            voltage_v: figure(group.voltage_v),
            diameter_mm: figure(group.diameter_mm),
            height_mm: figure(group.height_mm),
            pitch_mm: figure(group.pitch_mm),
            temperature_c: figure(group.temperature_c),
            series: group.series.clone(),
            place: group.place_on_part.clone(),
            dielectric: group.dielectric,
            mounting: group.mounting,
            state: group.state,
        }
    }
}
