//! The part's capacitor positions, alike ones in one line; looks, measurements and replacements of chosen ones.

use std::collections::HashSet;

use egui::Ui;

use super::about::{About, act_ui, day_text, figure, wrong_ui};
use super::map::shown_ui;
use super::verdict;
use crate::assess::findings::after_capacitors;
use crate::assess::positions::grown_by;
use crate::counted;
use crate::record::{
    CapacitorFile, CapacitorId, CapacitorLook, CapacitorState, Change, Dielectric, Entry, PartFile, Word,
};
use crate::store::Store;
use crate::text;
use crate::window::marked::Tie;
use crate::window::outbox::Outbox;
use crate::window::page::Page;
use crate::window::rounds::CapacitorsRound;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, choice_ui, field_ui, link_ui, press_ui, remark};

/// What is open, chosen and half typed.
#[derive(Default)]
pub struct Capacitors {
    round: Option<CapacitorsRound>,
    /// The line whose positions are on show.
    open: Option<CapacitorId>,
    chosen: HashSet<CapacitorId>,
    look: Option<Look>,
}

/// A look at the chosen positions, half typed.
pub struct Look {
    is_replacement: bool,
    state: CapacitorState,
    measured_uf: String,
    esr_mohm: String,
    leakage_ua: String,
    replaced_by: String,
    note: String,
}

impl Look {
    /// A look at positions, or at what was fitted there now.
    pub fn new(is_replacement: bool) -> Self {
        let state = if is_replacement { CapacitorState::Sound } else { CapacitorState::NotLooked };
        let none = String::new;
        Self {
            is_replacement,
            state,
            measured_uf: none(),
            esr_mohm: none(),
            leakage_ua: none(),
            replaced_by: none(),
            note: none(),
        }
    }
}

impl Capacitors {
    /// Opens the line that a position stands in, with that position chosen.
    pub fn open(&mut self, capacitor: CapacitorId, about: &About<'_>) {
        let groups = groups(&about.file.capacitors);
        let holds = |group: &&Vec<&CapacitorFile>| group.iter().any(|file| file.position.id == capacitor);
        self.open = groups.iter().find(holds).map(|group| group[0].position.id);
        self.chosen = HashSet::from([capacitor]);
    }

    /// Draws the section.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let groups = groups(&about.file.capacitors);
        if groups.is_empty() && self.round.is_none() {
            ui.label(body(text!("No position is logged yet.")));
        } else if !groups.is_empty() {
            let bad = about.file.capacitors.iter().filter(|position| position.state().is_bad()).count();
            let all = about.file.capacitors.len();
            let said = counted!("{count} position", "{count} positions", all);
            ui.label(remark(ui, text!("{positions}, {bad} to be replaced", positions = said, bad = bad)));
        }
        if link_ui(ui, text!("The capacitor desk: every position, recaps, tables")).clicked() {
            outbox.go(Page::Capacitors(about.part().id));
        }
        for group in &groups {
            ui.push_id(group[0].position.id, |ui| self.group_ui(ui, about, group, outbox));
        }
        let known: HashSet<CapacitorId> = about.file.capacitors.iter().map(|position| position.position.id).collect();
        self.chosen.retain(|id| known.contains(id));
        self.look_ui(ui, about, outbox);
        self.round_ui(ui, about, outbox);
    }

    /// One line for positions that are alike, and each of them once it is pressed.
    fn group_ui(&mut self, ui: &mut Ui, about: &About<'_>, group: &[&CapacitorFile], outbox: &mut Outbox) {
        let first = group[0];
        let id = first.position.id;
        let state = first.state();
        let is_open = self.open == Some(id);
        let said = group_text(group);
        ui.horizontal_wrapped(|ui| {
            let colour = if state.is_bad() { ui.tokens().severity_grave } else { ui.tokens().ink };
            let response = ui.add(egui::Button::new(body(&said).color(colour)).frame(false).wrap());
            let name = text!("Capacitors: {line}", line = said);
            response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, true, &name));
            if response.clicked() {
                self.open = if is_open { None } else { Some(id) };
            }
        });
        if !is_open {
            return;
        }
        ui.indent("positions", |ui| {
            let ids: Vec<CapacitorId> = group.iter().map(|position| position.position.id).collect();
            let are_all = ids.iter().all(|id| self.chosen.contains(id));
            let word = if are_all { text!("Choose none of them") } else { text!("Choose all of them") };
            if act_ui(ui, word, word) {
                for id in &ids {
                    if are_all {
                        self.chosen.remove(id);
                    } else {
                        self.chosen.insert(*id);
                    }
                }
            }
            for (at, position) in group.iter().enumerate() {
                self.position_ui(ui, about, at, position, outbox);
            }
        });
    }

    fn position_ui(&mut self, ui: &mut Ui, about: &About<'_>, at: usize, file: &CapacitorFile, outbox: &mut Outbox) {
        let id = file.position.id;
        let mut is_chosen = self.chosen.contains(&id);
        let name = if file.position.designator.is_empty() {
            text!("Number {number}", number = at + 1)
        } else {
            file.position.designator.clone()
        };
        ui.horizontal_wrapped(|ui| {
            if ui.checkbox(&mut is_chosen, body(&name)).changed() {
                if is_chosen {
                    self.chosen.insert(id);
                } else {
                    self.chosen.remove(&id);
                }
            }
            ui.label(remark(ui, position_text(file)));
            shown_ui(ui, about, Tie::Capacitor(id), &name, outbox);
        });
    }

    fn look_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        if self.chosen.is_empty() {
            self.look = None;
            return;
        }
        ui.add_space(GRID);
        ui.label(body(counted!("{count} position is chosen", "{count} positions are chosen", self.chosen.len())));
        let Some(look) = &mut self.look else {
            ui.horizontal_wrapped(|ui| {
                if press_ui(ui, text!("Looked at or measured…"), "", None).clicked() {
                    self.look = Some(Look::new(false));
                }
                if press_ui(ui, text!("Replaced…"), "", None).clicked() {
                    self.look = Some(Look::new(true));
                }
            });
            return;
        };
        if look_form_ui(ui, look, &self.chosen, about, outbox) {
            self.look = None;
        }
    }

    fn round_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        ui.add_space(GRID);
        let Some(round) = &mut self.round else {
            if link_ui(ui, text!("Log capacitors…")).clicked() {
                self.round = Some(CapacitorsRound::default());
            }
            return;
        };
        round.ui(ui);
        let (mut keep, mut away) = (false, false);
        ui.horizontal(|ui| {
            keep = press_ui(ui, text!("Keep the capacitors"), "", None).clicked();
            away = press_ui(ui, text!("Put the capacitors away"), "", None).clicked();
        });
        if keep {
            if let Some(fault) = round.fault() {
                outbox.say(fault);
                return;
            }
            let count = round.positions();
            let mut change = Change::new(counted!("Log {count} capacitor", "Log {count} capacitors", count));
            change.name = format!("{} ({})", change.name, about.tag());
            let entries = round.entries(about.file, about.view.rules, about.view.today);
            let design = about.view.logbook.design_of(about.file);
            let more = design.map(|design| grown_by(&entries, design, &mut uuid::Uuid::now_v7));
            change.put_all(entries).put_all(more.unwrap_or_default());
            if change.is_empty() {
                outbox.say(text!("Nothing is said yet, so there is nothing to keep."));
            } else {
                outbox.change(change);
                self.round = None;
            }
        } else if away {
            self.round = None;
        }
    }
}

/// Draws the form of a look at the chosen positions; `true` when it was kept or put away.
pub fn look_form_ui(
    ui: &mut Ui,
    look: &mut Look,
    chosen: &HashSet<CapacitorId>,
    about: &About<'_>,
    outbox: &mut Outbox,
) -> bool {
    ui.horizontal_wrapped(|ui| {
        let states: Vec<_> = CapacitorState::ALL.iter().map(|word| (*word, word.label())).collect();
        choice_ui(ui, text!("State now"), &mut look.state, &states, 34.0 * GRID);
        field_ui(ui, text!("Measured (µF)"), &mut look.measured_uf, Some(24.0 * GRID));
        field_ui(ui, text!("Series resistance (mΩ)"), &mut look.esr_mohm, Some(36.0 * GRID));
        field_ui(ui, text!("Leakage (µA)"), &mut look.leakage_ua, Some(24.0 * GRID));
        field_ui(ui, text!("Replaced by"), &mut look.replaced_by, Some(60.0 * GRID));
        field_ui(ui, text!("Note on the look"), &mut look.note, Some(60.0 * GRID));
    });
    let read = read(look);
    if let Ok(figures) = &read
        && let Some(position) = about.file.capacitors.iter().find(|file| chosen.contains(&file.position.id))
        && let Some(said) = verdict::of_capacitor(&position.position, *figures)
    {
        verdict::ui(ui, &said);
    }
    let nothing = look.state == CapacitorState::NotLooked;
    let (mut keep, mut away) = (false, false);
    ui.horizontal_wrapped(|ui| {
        keep = press_ui(ui, text!("Keep the look"), "", None).clicked();
        away = press_ui(ui, text!("Put the look away"), "", None).clicked();
    });
    match read {
        Err(wrong) => wrong_ui(ui, &wrong),
        Ok(_) if nothing => wrong_ui(ui, text!("Say in what state they are now.")),
        Ok(_) if look.is_replacement && look.replaced_by.trim().is_empty() => {
            wrong_ui(ui, text!("Say what was fitted: value, voltage, series."));
        }
        Ok(figures) if keep => {
            outbox.change(looked(about, chosen, look, figures));
            return true;
        }
        Ok(_) => {}
    }
    away
}

/// Capacitance in µF, series resistance in mΩ, leakage in µA, as measured.
pub type Figures = (Option<f64>, Option<f64>, Option<f64>);

fn read(look: &Look) -> Result<Figures, String> {
    let positive = |typed: &str| match figure(typed)? {
        Some(value) if value < 0.0 => Err(text!("“{typed}” cannot be: it is 0 or more.", typed = typed.trim())),
        value => Ok(value),
    };
    Ok((positive(&look.measured_uf)?, positive(&look.esr_mohm)?, positive(&look.leakage_ua)?))
}

/// The looks at the chosen positions, and what follows from them for the findings.
fn looked(about: &About<'_>, chosen: &HashSet<CapacitorId>, look: &Look, figures: Figures) -> Change {
    let count = chosen.len();
    let name = if look.replaced_by.trim().is_empty() {
        counted!("Look at {count} capacitor", "Look at {count} capacitors", count)
    } else {
        counted!("Replace {count} capacitor", "Replace {count} capacitors", count)
    };
    let mut change = Change::new(format!("{name} ({})", about.tag()));
    let mut would_be = PartFile::clone(about.file);
    for file in would_be.capacitors.iter_mut().filter(|file| chosen.contains(&file.position.id)) {
        let mut looked = about.now();
        // What is written next comes after all that is written.
        looked.sequence = u32::MAX;
        let new = CapacitorLook {
            id: Store::new_id(),
            capacitor: file.position.id,
            looked,
            state: look.state,
            measured_uf: figures.0,
            esr_mohm: figures.1,
            leakage_ua: figures.2,
            replaced_by: look.replaced_by.trim().to_owned(),
            note: look.note.trim().to_owned(),
        };
        change.put(CapacitorLook { looked: about.now(), ..new.clone() });
        file.looks.push(new);
    }
    let follows: Vec<Entry> = after_capacitors(&would_be, about.view.rules, about.now(), &mut uuid::Uuid::now_v7);
    change.put_all(follows);
    change
}

/// Positions that are alike, in the order they were logged.
fn groups(positions: &[CapacitorFile]) -> Vec<Vec<&CapacitorFile>> {
    let alike = |one: &CapacitorFile, other: &CapacitorFile| {
        let (a, b) = (&one.position, &other.position);
        one.state() == other.state()
            && one.is_replaced() == other.is_replaced()
            && (a.capacitance_uf, a.voltage_v, a.diameter_mm, a.height_mm)
                == (b.capacitance_uf, b.voltage_v, b.diameter_mm, b.height_mm)
            && (a.dielectric, &a.place_on_part, &a.series) == (b.dielectric, &b.place_on_part, &b.series)
    };
    let mut groups: Vec<Vec<&CapacitorFile>> = Vec::new();
    for position in positions {
        match groups.iter_mut().find(|group| alike(group[0], position)) {
            Some(group) => group.push(position),
            None => groups.push(vec![position]),
        }
    }
    groups
}

/// A line for positions that are alike: "6 × 1000 µF 6.3 V Ø 8 mm, near the processor: sound".
fn group_text(group: &[&CapacitorFile]) -> String {
    let first = group[0];
    let position = &first.position;
    let mut words = vec![text!("{count} ×", count = group.len())];
    words.extend(position.capacitance_uf.map(|uf| format!("{uf} µF")));
    words.extend(position.voltage_v.map(|volts| format!("{volts} V")));
    match (position.diameter_mm, position.height_mm) {
        (Some(diameter), Some(height)) => words.push(format!("Ø {diameter} × {height} mm")),
        (Some(diameter), None) => words.push(format!("Ø {diameter} mm")),
        _ => {}
    }
    if position.dielectric != Dielectric::Unknown {
        words.push(position.dielectric.label().to_lowercase());
    }
    let mut said = words.join(" ");
    if !position.place_on_part.is_empty() {
        said = format!("{said}, {}", position.place_on_part);
    }
    let state = first.state().label().to_lowercase();
    if first.is_replaced() {
        text!("{line}: replaced, {state}", line = said, state = state)
    } else {
        format!("{said}: {state}")
    }
}

/// What was last seen and measured at one position.
fn position_text(file: &CapacitorFile) -> String {
    let Some(look) = file.looks.last() else {
        return text!(
            "{state} when logged, {day}",
            state = file.position.state.label().to_lowercase(),
            day = day_text(file.position.logged.on)
        );
    };
    let mut words = vec![look.state.label().to_lowercase()];
    words.extend(look.measured_uf.map(|uf| format!("{uf} µF")));
    words.extend(look.esr_mohm.map(|mohm| format!("{mohm} mΩ")));
    words.extend(look.leakage_ua.map(|ua| format!("{ua} µA")));
    if !look.replaced_by.is_empty() {
        words.push(text!("replaced by {what}", what = look.replaced_by));
    }
    if !look.note.is_empty() {
        words.push(look.note.clone());
    }
    words.push(day_text(look.looked.on));
    words.join(" · ")
}
