//! The sections of a part's sheet, and their list.

use egui::{Button, Key, Ui, WidgetInfo};

use super::about::About;
use crate::record::FindingState;
use crate::text;
use crate::window::theme::Themed;
use crate::window::widgets::{body, remark};

/// Keys that with Alt show the first ten sections.
pub const DIGITS: [Key; 10] =
    [Key::Num1, Key::Num2, Key::Num3, Key::Num4, Key::Num5, Key::Num6, Key::Num7, Key::Num8, Key::Num9, Key::Num0];

/// A section of the sheet.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Section {
    #[default]
    Identity,
    Made,
    Map,
    Condition,
    Work,
    Capacitors,
    Readings,
    Proofs,
    Photographs,
    Papers,
    Custody,
    Faults,
    Written,
}

impl Section {
    /// All of them, in the order of the page.
    pub const ALL: [Self; 13] = [
        Self::Identity,
        Self::Made,
        Self::Map,
        Self::Condition,
        Self::Work,
        Self::Capacitors,
        Self::Readings,
        Self::Proofs,
        Self::Photographs,
        Self::Papers,
        Self::Custody,
        Self::Faults,
        Self::Written,
    ];

    /// Its heading.
    pub fn label(self) -> &'static str {
        match self {
            Self::Identity => text!("What it is"),
            Self::Made => text!("When it was made"),
            Self::Map => text!("On the part"),
            Self::Condition => text!("Condition"),
            Self::Work => text!("Work"),
            Self::Capacitors => text!("Capacitors"),
            Self::Readings => text!("Readings and settings"),
            Self::Proofs => text!("Proofs"),
            Self::Photographs => text!("Photographs"),
            Self::Papers => text!("Other files"),
            Self::Custody => text!("Whose it is"),
            Self::Faults => text!("Looking for faults"),
            Self::Written => text!("What was written"),
        }
    }

    /// How many things that ask for attention, or simply are there, it holds.
    pub fn count(self, about: &About<'_>) -> usize {
        let file = about.file;
        match self {
            Self::Identity | Self::Custody | Self::Written => 0,
            Self::Made => file.markings_now().count(),
            Self::Map => file.photos.iter().filter(|file| file.photo.is_map).map(|file| file.marks.len()).sum(),
            Self::Condition => {
                let holds = |state: FindingState| state.calls_for_work() || state == FindingState::Watched;
                file.findings.iter().filter(|finding| holds(finding.state())).count()
            }
            Self::Work => about.answers.tasks.len(),
            Self::Capacitors => file.capacitors.len(),
            Self::Readings => file.readings.len() + file.settings.len(),
            Self::Proofs => about.answers.proofs.iter().filter(|proof| proof.is_lacking()).count(),
            Self::Photographs => file.photos.len(),
            Self::Papers => file.attachments.len(),
            Self::Faults => file.cases.iter().filter(|case| case.case.state == crate::record::CaseState::Open).count(),
        }
    }
}

/// A section's name in the list, with its count behind it; `true` when it was pressed.
pub fn name_ui(ui: &mut Ui, at: usize, section: Section, count: usize, is_here: bool) -> bool {
    let tokens = ui.tokens();
    let words = body(section.label()).color(if is_here { tokens.ink } else { tokens.press });
    let button = if count > 0 {
        let count = remark(ui, count.to_string());
        Button::new((words, count))
    } else {
        Button::new(words)
    };
    let ground = if is_here { tokens.press_wash } else { egui::Color32::TRANSPARENT };
    let mut response = ui.add(button.fill(ground).stroke(egui::Stroke::NONE).wrap_mode(egui::TextWrapMode::Extend));
    if let Some(digit) = DIGITS.get(at) {
        response = response.on_hover_text(format!("Alt+{}", digit.symbol_or_name()));
    }
    let name = text!("Go to: {section}", section = section.label());
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
    response.clicked()
}
