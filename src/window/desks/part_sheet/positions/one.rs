//! One position: its facts, changed where they stand, and what was seen and measured there over time.

use std::collections::HashSet;

use egui::{ScrollArea, Ui};

use super::super::about::{About, act_ui, day_text, figure};
use super::super::capacitors::{Look, look_form_ui};
use super::super::map::shown_or_marked_ui;
use super::super::verdict;
use super::plot::{Point, plot_ui};
use super::rows::state_text;
use crate::record::{Capacitor, CapacitorFile, CapacitorId, CapacitorUse, Change, Dielectric, Mounting, Word as _};
use crate::text;
use crate::trade::capacitor::series::Series;
use crate::window::marked::Tie;
use crate::window::outbox::Outbox;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{Edit, Fact, body, choice_ui, mark_button, press_ui, remark, section_ui};

/// What is half typed.
#[derive(Default)]
pub struct One {
    edit: Edit,
    look: Option<Look>,
}

impl One {
    /// Draws the position; `true` when it was put away.
    pub fn ui(&mut self, ui: &mut Ui, file: &CapacitorFile, about: &About<'_>, outbox: &mut Outbox) -> bool {
        let away = mark_button(ui, Mark::Away, text!("Put the position away")).clicked();
        ScrollArea::vertical().id_salt("position").auto_shrink(false).show(ui, |ui| {
            let name = &file.position.designator;
            section_ui(ui, if name.is_empty() { text!("A position without a name") } else { name });
            ui.horizontal_wrapped(|ui| {
                ui.label(body(state_text(file)));
                shown_or_marked_ui(ui, about, Tie::Capacitor(file.position.id), name, outbox);
            });
            self.look_ui(ui, file, about, outbox);
            seen_ui(ui, file);
            section_ui(ui, text!("What sat there"));
            self.facts_ui(ui, &file.position, about, outbox);
        });
        away
    }

    fn look_ui(&mut self, ui: &mut Ui, file: &CapacitorFile, about: &About<'_>, outbox: &mut Outbox) {
        let chosen: HashSet<CapacitorId> = HashSet::from([file.position.id]);
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
        if look_form_ui(ui, look, &chosen, about, outbox) {
            self.look = None;
        }
    }

    fn facts_ui(&mut self, ui: &mut Ui, position: &Capacitor, about: &About<'_>, outbox: &mut Outbox) {
        let mut new = position.clone();
        let Self { edit, .. } = self;
        for (key, label, value) in [
            ("designator", text!("Position"), &mut new.designator),
            ("place", text!("Place on the part"), &mut new.place_on_part),
            ("series", text!("Series"), &mut new.series),
            ("polarity", text!("Polarity marked"), &mut new.polarity),
        ] {
            let fact = Fact { is_printed: key != "place" && key != "polarity", ..Fact::line(key, label) };
            if let Some(typed) = edit.fact_ui(ui, fact, value) {
                *value = typed;
            }
        }
        for (key, label, unit, value) in [
            ("uf", text!("Value"), "µF", &mut new.capacitance_uf),
            ("volts", text!("Voltage"), "V", &mut new.voltage_v),
            ("celsius", text!("Temperature"), "°C", &mut new.temperature_c),
            ("across", text!("Across"), "mm", &mut new.diameter_mm),
            ("high", text!("Height"), "mm", &mut new.height_mm),
            ("pitch", text!("Pitch"), "mm", &mut new.pitch_mm),
        ] {
            let shown = value.map(|figure| figure.to_string()).unwrap_or_default();
            let Some(typed) = edit.fact_ui(ui, Fact { unit, ..Fact::line(key, label) }, &shown) else { continue };
            match figure(&typed) {
                Ok(Some(figure)) if figure <= 0.0 => {
                    edit.refuse(key, &typed, text!("“{typed}” cannot be: it is above 0.", typed = typed));
                }
                Ok(figure) => *value = figure,
                Err(wrong) => edit.refuse(key, &typed, wrong),
            }
        }
        ui.horizontal_wrapped(|ui| {
            let words: Vec<_> = Dielectric::ALL.iter().map(|word| (*word, word.label())).collect();
            choice_ui(ui, text!("Made of"), &mut new.dielectric, &words, 40.0 * GRID);
            let words: Vec<_> = Mounting::ALL.iter().map(|word| (*word, word.label())).collect();
            choice_ui(ui, text!("Mounting"), &mut new.mounting, &words, 36.0 * GRID);
            let uses = CapacitorUse::ALL.iter().map(|word| (Some(*word), word.label()));
            let words: Vec<_> = std::iter::once((None, text!("Not told"))).chain(uses).collect();
            choice_ui(ui, text!("What for"), &mut new.function, &words, 44.0 * GRID);
            let words = [(None, text!("Not known")), (Some(true), text!("Low")), (Some(false), text!("Usual"))];
            choice_ui(ui, text!("Series resistance"), &mut new.low_esr, &words, 36.0 * GRID);
        });
        let logged = text!("logged {day}", day = day_text(position.logged.on));
        ui.label(remark(ui, logged));
        if new != *position {
            let mut change =
                Change::new(text!("Change position {name} ({tag})", name = position.designator, tag = about.tag()));
            change.put(new);
            outbox.change(change);
        }
        if act_ui(ui, text!("Strike it out"), text!("Strike the position out")) {
            let mut change =
                Change::new(text!("Strike out position {name} ({tag})", name = position.designator, tag = about.tag()));
            let own = about.file.capacitors.iter().filter(|one| one.position.id == position.id);
            for look in own.flat_map(|one| &one.looks) {
                change.remove(look.id);
            }
            change.remove(position.id);
            outbox.change(change);
        }
    }
}

/// What was seen and measured, the latest first, and plotted.
fn seen_ui(ui: &mut Ui, file: &CapacitorFile) {
    let position = &file.position;
    if file.looks.is_empty() {
        return;
    }
    section_ui(ui, text!("Seen and measured"));
    let points = |of: fn(&crate::record::CapacitorLook) -> Option<f64>| -> Vec<Point> {
        file.looks.iter().filter_map(|look| Some(Point { on: look.looked.on, value: of(look)? })).collect()
    };
    // What one keeps to until its end, where its kind has published limits.
    let band = position.made_of().is_wet().then_some(position.capacitance_uf).flatten().map(|uf| {
        let end = Series::default().end(position.voltage_v.unwrap_or_default());
        (uf * (1.0 - end.minus_percent / 100.0), uf * (1.0 + end.plus_percent / 100.0))
    });
    plot_ui(ui, text!("Capacitance measured"), "µF", &points(|look| look.measured_uf), band);
    plot_ui(ui, text!("Series resistance measured"), "mΩ", &points(|look| look.esr_mohm), None);
    plot_ui(ui, text!("Leakage measured"), "µA", &points(|look| look.leakage_ua), None);
    for look in file.looks.iter().rev() {
        let mut words = vec![day_text(look.looked.on), look.state.label().to_owned()];
        words.extend(look.measured_uf.map(|uf| format!("{uf} µF")));
        words.extend(look.esr_mohm.map(|mohm| format!("{mohm} mΩ")));
        words.extend(look.leakage_ua.map(|ua| format!("{ua} µA")));
        if !look.replaced_by.is_empty() {
            words.push(text!("replaced by {what}", what = look.replaced_by));
        }
        words.extend((!look.note.is_empty()).then(|| look.note.clone()));
        ui.label(body(words.join(" · ")));
        // What was fitted later is not judged by what is printed on what sat there first.
        let is_original = file.looks.iter().take_while(|one| one.replaced_by.is_empty()).any(|one| one.id == look.id);
        let figures = (look.measured_uf, look.esr_mohm, look.leakage_ua);
        if let Some(said) = verdict::of_capacitor(position, figures).filter(|_| is_original) {
            verdict::ui(ui, &said);
        }
    }
    ui.label(remark(ui, text!("Latest first.")).color(ui.tokens().ink_weak));
}
