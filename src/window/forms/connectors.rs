//! Connectors that a design offers or needs: found by a few letters, counted up and down.

use egui::Ui;

use crate::rules::Rules;
use crate::text;
use crate::window::theme::marks::Mark;
use crate::window::widgets::{body, mark_button, strong};

/// The most of one connector that a design is given.
const MOST: u32 = 99;

/// Every connector of the table by its name there, as a choice.
pub fn all_connectors(rules: &Rules) -> Vec<(String, String)> {
    rules.connectors.all().map(|row| (row.id.clone(), crate::text::say(&row.label).to_owned())).collect()
}

/// One connector with its count; the count that it is to have instead, 0 when it is taken out.
pub fn connector_row_ui(ui: &mut Ui, name: &str, count: u32) -> Option<u32> {
    let mut wanted = None;
    ui.horizontal(|ui| {
        if mark_button(ui, Mark::Down, &text!("One {name} fewer", name = name)).clicked() && count > 1 {
            wanted = Some(count - 1);
        }
        ui.label(strong(count.to_string()));
        if mark_button(ui, Mark::Up, &text!("One {name} more", name = name)).clicked() && count < MOST {
            wanted = Some(count + 1);
        }
        ui.label(body(name));
        if mark_button(ui, Mark::Away, &text!("Take {name} out", name = name)).clicked() {
            wanted = Some(0);
        }
    });
    wanted
}
