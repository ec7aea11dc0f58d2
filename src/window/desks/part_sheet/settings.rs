//! Jumpers, firmware versions and set-up values as found.

use egui::Ui;

use super::about::{About, act_ui, day_text, put, wrong_ui};
use crate::record::{Moment, Setting};
use crate::store::Store;
use crate::text;
use crate::window::forms::past_date;
use crate::window::outbox::Outbox;
use crate::window::theme::GRID;
use crate::window::widgets::{body, field_ui, link_ui, marking, press_ui, remark, strong};

/// What is half typed.
#[derive(Default)]
pub struct Settings {
    form: Option<Form>,
}

#[derive(Default)]
struct Form {
    on: String,
    name: String,
    value: String,
    source: String,
}

impl Settings {
    /// Draws the settings that hold, and the form for another.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        ui.add_space(3.0 * GRID);
        ui.label(strong(text!("Settings as found")));
        let all = &about.file.settings;
        if all.is_empty() {
            ui.label(body(text!("None noted: jumpers, firmware version and set-up are lost with the next hand.")));
        }
        let mut again = None;
        for (at, setting) in all.iter().enumerate() {
            let later = all[at + 1..].iter().any(|new| new.name.eq_ignore_ascii_case(&setting.name));
            if later {
                continue;
            }
            let before = all[..at].iter().rev().find(|old| old.name.eq_ignore_ascii_case(&setting.name));
            ui.push_id(setting.id, |ui| {
                ui.horizontal_wrapped(|ui| {
                    ui.label(body(&setting.name));
                    ui.label(marking(&setting.value));
                    let mut words = vec![day_text(setting.found.on)];
                    if !setting.source.is_empty() {
                        words.push(setting.source.clone());
                    }
                    words.extend(before.map(|old| text!("before: {value}", value = old.value)));
                    ui.label(remark(ui, words.join(" · ")));
                    if act_ui(ui, text!("Found otherwise…"), &text!("Found otherwise: {name}…", name = setting.name))
                    {
                        again = Some(Form {
                            on: about.view.today.to_string(),
                            name: setting.name.clone(),
                            value: setting.value.clone(),
                            source: setting.source.clone(),
                        });
                    }
                });
            });
        }
        if again.is_some() {
            self.form = again;
        }
        self.form_ui(ui, about, outbox);
    }

    fn form_ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let Some(form) = &mut self.form else {
            if link_ui(ui, text!("Note a setting…")).clicked() {
                self.form = Some(Form { on: about.view.today.to_string(), ..Form::default() });
            }
            return;
        };
        ui.horizontal_wrapped(|ui| {
            field_ui(ui, text!("Jumper, switch or value"), &mut form.name, Some(50.0 * GRID));
            field_ui(ui, text!("Found as"), &mut form.value, Some(40.0 * GRID));
            field_ui(ui, text!("Found on"), &mut form.on, Some(28.0 * GRID));
            field_ui(ui, text!("How it is known: manual, print, guess"), &mut form.source, Some(60.0 * GRID));
        });
        let (mut keep, mut away) = (false, false);
        ui.horizontal(|ui| {
            keep = press_ui(ui, text!("Keep the setting"), "", None).clicked();
            away = press_ui(ui, text!("Put the setting away"), "", None).clicked();
        });
        let (name, value) = (form.name.trim(), form.value.trim());
        let on = past_date(&form.on, about.view);
        if let Err(wrong) = &on {
            wrong_ui(ui, wrong);
        }
        if keep && (name.is_empty() || value.is_empty()) {
            wrong_ui(ui, text!("Say which setting it is and how it was found."));
        } else if keep && let Ok(on) = on {
            let setting = Setting {
                id: Store::new_id(),
                part: about.part().id,
                found: Moment { on, sequence: 0 },
                name: name.to_owned(),
                value: value.to_owned(),
                source: form.source.trim().to_owned(),
            };
            outbox.change(put(text!("Note {setting} of {tag}", setting = name, tag = about.tag()), setting));
            self.form = None;
        } else if away {
            self.form = None;
        }
    }
}
