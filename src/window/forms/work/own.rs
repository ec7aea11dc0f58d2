//! What work in the restorer's own words is, and what it touches.

use egui::{Role, Ui, WidgetInfo};

use crate::record::{Nature, Touches, Word, Work};
use crate::text;
use crate::window::theme::GRID;
use crate::window::widgets::{choice_ui, remark, target_ui};

/// The two that can be chosen.
pub const TOUCHES: [Touches; 2] = [Touches::Electrical, Touches::NothingElectrical];

/// What is told of a piece of work in the restorer's own words.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Own {
    pub nature: Nature,
    pub touches: Touches,
}

impl Own {
    /// A new piece: nobody has said yet what it touches.
    pub const NEW: Self = Self { nature: Nature::Care, touches: Touches::Unstated };

    /// What a record tells; `None` for work by rule, of which the tables know it.
    pub fn of(work: &Work) -> Option<Self> {
        work.is_own().then_some(Self { nature: work.nature, touches: work.touches })
    }

    /// The record with it.
    pub fn on(self, work: Work) -> Work {
        let Self { nature, touches } = self;
        if work.is_own() { Work { nature, touches, ..work } } else { work }
    }

    /// Draws both choices; `true` when another was chosen. `of` tells the targets from those of other pieces on the page.
    pub fn ui(&mut self, ui: &mut Ui, of: Option<&str>) -> bool {
        let natures: Vec<(Nature, &str)> = Nature::ALL.iter().map(|word| (*word, word.label())).collect();
        let mut is_other = false;
        ui.horizontal_wrapped(|ui| {
            is_other |= choice_ui(ui, text!("It is"), &mut self.nature, &natures, 36.0 * GRID);
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.y = 2.0;
                ui.label(remark(ui, text!("What it touches")));
                ui.horizontal_wrapped(|ui| {
                    for touches in TOUCHES {
                        let response = target_ui(ui, touches.label(), self.touches == touches);
                        if let Some(of) = of {
                            let name = format!("{}: {of}", touches.label());
                            response.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
                        }
                        if response.clicked() && self.touches != touches {
                            self.touches = touches;
                            is_other = true;
                        }
                    }
                });
            });
        });
        is_other
    }
}
