//! A figure of hours that takes effect as it is typed.

use egui::Ui;

use crate::console::minutes_of_hours;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{field_ui, small};

/// What is typed; the figure in force while nothing is.
#[derive(Debug, Default)]
pub struct HoursField {
    typed: Option<String>,
}

/// Minutes as typed hours: 150 is "2.5".
fn hours_figure(minutes: u32) -> String {
    let figure = format!("{:.2}", f64::from(minutes) / 60.0);
    figure.trim_end_matches('0').trim_end_matches('.').to_owned()
}

impl HoursField {
    /// Draws the field; other minutes than those in force once they are typed, at most `most`.
    pub fn ui(&mut self, ui: &mut Ui, label: &str, minutes: u32, most: u32) -> Option<u32> {
        let mut typed = self.typed.clone().unwrap_or_else(|| hours_figure(minutes));
        let field = field_ui(ui, label, &mut typed, Some(24.0 * GRID));
        if field.changed() {
            self.typed = Some(typed);
        }
        let read = minutes_of_hours(self.typed.as_ref()?, f64::from(most) / 60.0);
        if field.lost_focus() {
            self.typed = None;
        }
        match read {
            Ok(told) => (told != minutes).then_some(told),
            Err(wrong) => {
                ui.label(small(wrong).color(ui.tokens().power_unknown));
                None
            }
        }
    }
}
