//! Texts by their role.

use egui::{Response, RichText, Ui};

use crate::window::theme::{GRID, TextRole, Themed};

/// Reading text.
pub fn body(text: impl Into<String>) -> RichText {
    RichText::new(text).font(TextRole::Body.font())
}

/// Reading text that stands out.
pub fn strong(text: impl Into<String>) -> RichText {
    RichText::new(text).font(TextRole::Strong.font())
}

/// Small text.
pub fn small(text: impl Into<String>) -> RichText {
    RichText::new(text).font(TextRole::Small.font())
}

/// Small text in the weak ink.
pub fn remark(ui: &Ui, text: impl Into<String>) -> RichText {
    small(text).color(ui.tokens().ink_weak)
}

/// Characters as printed on a part.
pub fn marking(text: impl Into<String>) -> RichText {
    RichText::new(text).font(TextRole::Marking.font())
}

/// A desk's title.
pub fn title_ui(ui: &mut Ui, text: impl Into<String>) -> Response {
    named_heading(ui, text.into(), TextRole::Title)
}

/// The one thing on a desk that the eye meets first.
pub fn first_ui(ui: &mut Ui, text: impl Into<String>) -> Response {
    named_heading(ui, text.into(), TextRole::First)
}

/// A section's heading: white space above, no box around.
pub fn section_ui(ui: &mut Ui, text: impl Into<String>) -> Response {
    ui.add_space(4.0 * GRID);
    let response = named_heading(ui, text.into(), TextRole::Section);
    ui.add_space(GRID);
    response
}

fn named_heading(ui: &mut Ui, text: String, role: TextRole) -> Response {
    let response = ui.label(RichText::new(&text).font(role.font()).color(ui.tokens().ink));
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_role(egui::accesskit::Role::Heading);
        node.set_label(text);
    });
    response
}
