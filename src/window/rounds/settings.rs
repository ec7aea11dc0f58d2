//! Jumpers, switches and firmware versions as found, noted before a hand changes them.

use egui::{Ui, WidgetInfo};
use serde::{Deserialize, Serialize};

use super::new_uuid;
use crate::record::{Entry, Id, Kind, Moment, PartId, Setting, When};
use crate::text;
use crate::window::theme::GRID;
use crate::window::theme::marks::Mark;
use crate::window::widgets::{field_ui, link_ui, mark_button, remark};

/// Settings that are being noted.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct SettingsRound {
    typed: Vec<Typed>,
}

#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
struct Typed {
    name: String,
    value: String,
}

impl Typed {
    fn is_told(&self) -> bool {
        !self.name.trim().is_empty() && !self.value.trim().is_empty()
    }
}

impl SettingsRound {
    /// How many settings are told.
    pub fn count(&self) -> usize {
        self.typed.iter().filter(|typed| typed.is_told()).count()
    }

    /// What is told by half.
    pub fn fault(&self) -> Option<String> {
        let half = self.typed.iter().find(|typed| typed.name.trim().is_empty() != typed.value.trim().is_empty())?;
        Some(if half.name.trim().is_empty() {
            text!("Say which setting was found as “{value}”.", value = half.value.trim())
        } else {
            text!("Say how {setting} was found.", setting = half.name.trim())
        })
    }

    /// The settings as records.
    pub fn entries(&self, part: PartId, on: When) -> Vec<Entry> {
        let told = self.typed.iter().filter(|typed| typed.is_told());
        told.map(|typed| {
            Setting {
                id: Id::from_uuid(new_uuid()),
                part,
                found: Moment { on, sequence: 0 },
                name: typed.name.trim().to_owned(),
                value: typed.value.trim().to_owned(),
                source: String::new(),
            }
            .into()
        })
        .collect()
    }

    /// Draws what is noted, and a press for each thing that a part of this kind usually has.
    pub fn ui(&mut self, ui: &mut Ui, kind: Kind) {
        let mut away = None;
        for (at, typed) in self.typed.iter_mut().enumerate() {
            ui.push_id(("setting", at), |ui| {
                ui.horizontal_wrapped(|ui| {
                    field_ui(ui, text!("Jumper, switch or value"), &mut typed.name, Some(46.0 * GRID));
                    field_ui(ui, text!("Found as"), &mut typed.value, Some(46.0 * GRID));
                    if mark_button(ui, Mark::Away, &text!("Take setting {number} out", number = at + 1)).clicked() {
                        away = Some(at);
                    }
                });
            });
        }
        if let Some(at) = away {
            self.typed.remove(at);
        }
        ui.horizontal_wrapped(|ui| {
            ui.label(remark(ui, text!("Lost with the next hand:")));
            for word in usual(kind) {
                let response = link_ui(ui, word);
                let name = text!("Note as found: {what}", what = word);
                response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
                if response.clicked() {
                    self.typed.push(Typed { name: word.to_owned(), value: String::new() });
                }
            }
            if link_ui(ui, text!("Something else…")).clicked() {
                self.typed.push(Typed::default());
            }
        });
    }
}

/// Whether a part of this kind can be set or carries firmware.
pub fn has_settings(kind: Kind) -> bool {
    kind.is_card()
        || kind.is_drive()
        || matches!(
            kind,
            Kind::Mainboard
                | Kind::ProcessorAdapter
                | Kind::VoltageModule
                | Kind::FirmwareChip
                | Kind::Riser
                | Kind::Monitor
                | Kind::PowerSupply
                | Kind::TestRig
        )
}

/// What is usually noted on a part of this kind.
fn usual(kind: Kind) -> Vec<&'static str> {
    let has_firmware =
        matches!(kind, Kind::Mainboard | Kind::FirmwareChip | Kind::VideoCard | Kind::ControllerCard | Kind::Modem)
            || kind.is_drive();
    let has_jumpers = !matches!(kind, Kind::FirmwareChip | Kind::PowerSupply | Kind::Monitor);
    let words = [
        (has_firmware, text!("Firmware version")),
        (has_jumpers, text!("Jumper")),
        (kind == Kind::PowerSupply, text!("Mains voltage switch")),
    ];
    words.into_iter().filter(|(is_usual, _)| *is_usual).map(|(_, word)| word).collect()
}
