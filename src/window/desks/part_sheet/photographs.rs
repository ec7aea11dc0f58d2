//! The part's photographs: small ones in a row, each to be looked at on a press, and more to be added.

use egui::Ui;

use super::about::About;
use crate::text;
use crate::window::outbox::Outbox;
use crate::window::photographs::strip_ui;
use crate::window::taking_in::Ways;
use crate::window::widgets::body;

/// Draws the section.
pub fn photographs_ui(ui: &mut Ui, about: &About<'_>, ways: &mut Ways, outbox: &mut Outbox) {
    let photos = &about.file.photos;
    if photos.is_empty() {
        ui.label(body(text!("No photograph yet. One before the work is worth ten after it.")));
    }
    strip_ui(ui, about.view, photos, outbox);
    ways.ui(ui, about.page(), about.view, outbox);
}
