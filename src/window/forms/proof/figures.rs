//! The figures that a test's row asks for.

use egui::Ui;

use super::Measured;
use crate::rules::{ProofFigure, ProofRule};
use crate::text;
use crate::text::say;
use crate::window::forms::figure;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{field_ui, small};

/// Each figure with what is typed for it.
#[derive(Debug)]
pub struct Figures {
    figures: Vec<(ProofFigure, String)>,
}

impl Figures {
    /// Those of a test, nothing typed yet.
    pub fn new(rule: &ProofRule) -> Self {
        Self { figures: rule.figures.iter().map(|figure| (figure.clone(), String::new())).collect() }
    }

    /// Draws a field for each, and below them what speaks against a pass.
    pub fn ui(&mut self, ui: &mut Ui) {
        ui.horizontal_wrapped(|ui| {
            for (figure, typed) in &mut self.figures {
                let label = match figure.unit.as_str() {
                    "" => say(&figure.say).to_owned(),
                    unit => format!("{}, {unit}", say(&figure.say)),
                };
                field_ui(ui, &label, typed, Some(52.0 * GRID));
            }
        });
        for (asked, typed) in &self.figures {
            if let Ok(Some(value)) = figure(typed)
                && let Some(bound) = broken(asked, value)
            {
                let said = text!("{what}: {bound}", what = say(&asked.say), bound = bound);
                ui.label(small(said).color(ui.tokens().power_no));
            }
        }
    }

    /// What was typed.
    ///
    /// # Errors
    /// Says which cannot be read.
    pub fn read(&self) -> Result<Vec<Measured>, String> {
        let mut measured = Vec::new();
        for (asked, typed) in &self.figures {
            let read = figure(typed).map_err(|wrong| format!("{}: {wrong}", say(&asked.say)))?;
            let Some(value) = read else { continue };
            measured.push(Measured {
                quantity: asked.say.clone(),
                value,
                unit: asked.unit.clone(),
                condition: String::new(),
                speaks_against: broken(asked, value).is_some(),
            });
        }
        Ok(measured)
    }
}

/// The bound that a figure breaks, in words.
fn broken(asked: &ProofFigure, value: f64) -> Option<String> {
    let below = asked.fails_below.filter(|bound| value < *bound);
    let above = asked.fails_above.filter(|bound| value > *bound);
    below
        .map(|bound| text!("a pass wants {bound} or more", bound = bound))
        .or_else(|| above.map(|bound| text!("a pass wants {bound} or less", bound = bound)))
}
