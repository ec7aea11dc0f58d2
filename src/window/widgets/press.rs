//! What can be pressed: a word, with its mark before it and its shortcut after it.

use egui::{Button, Color32, KeyboardShortcut, Response, RichText, Role, Sense, Ui, WidgetInfo, vec2};

use crate::window::theme::marks::{self, Mark};
use crate::window::theme::{GRID, TextRole, Themed};

/// A button with a word, its shortcut in its tooltip.
pub fn press_ui(ui: &mut Ui, word: &str, tooltip: &str, shortcut: Option<KeyboardShortcut>) -> Response {
    press_if_ui(ui, true, word, tooltip, shortcut)
}

/// Such a button that may be pressed only sometimes. Unlike one in a scope of its own it goes to the next line where a
/// line is full.
pub fn press_if_ui(
    ui: &mut Ui,
    is_enabled: bool,
    word: &str,
    tooltip: &str,
    shortcut: Option<KeyboardShortcut>,
) -> Response {
    let tooltip = match shortcut {
        Some(shortcut) => format!("{tooltip} ({})", ui.ctx().format_shortcut(&shortcut)),
        None => tooltip.to_owned(),
    };
    let button = Button::new(RichText::new(word).font(TextRole::Body.font())).min_size(vec2(0.0, 8.0 * GRID));
    let response = ui.add_enabled(is_enabled, button);
    if tooltip.is_empty() { response } else { response.on_hover_text(tooltip) }
}

/// A button without a frame, as a word to follow.
pub fn link_ui(ui: &mut Ui, word: &str) -> Response {
    ui.add(Button::new(RichText::new(word).font(TextRole::Body.font()).color(ui.tokens().press)).frame(false))
}

/// A square button that shows a mark only; its name is said and shown on hovering.
pub fn mark_button(ui: &mut Ui, mark: Mark, name: &str) -> Response {
    let side = 7.0 * GRID;
    let (rect, response) = ui.allocate_exact_size(vec2(side, side), Sense::click());
    let tokens = ui.tokens();
    if ui.is_rect_visible(rect) {
        let ground = if response.hovered() || response.has_focus() { tokens.press_wash } else { Color32::TRANSPARENT };
        ui.painter().rect_filled(rect, 3.0, ground);
        let colour = if response.enabled() { tokens.press } else { tokens.ink_weak };
        marks::draw(ui.painter(), rect.shrink(6.0), mark, colour);
    }
    let enabled = response.enabled();
    response.widget_info(|| WidgetInfo::labeled(Role::Button, enabled, name));
    response.on_hover_text(name)
}

/// A tool to take up; filled while it is in hand.
pub fn tool_ui(
    ui: &mut Ui,
    word: &str,
    tooltip: &str,
    shortcut: Option<KeyboardShortcut>,
    is_in_hand: bool,
) -> Response {
    let tokens = ui.tokens();
    let mut words = RichText::new(word).font(TextRole::Body.font());
    if is_in_hand {
        words = words.color(tokens.press_ink);
    }
    let mut button = Button::new(words).min_size(vec2(0.0, 8.0 * GRID));
    if is_in_hand {
        button = button.fill(tokens.press);
    }
    let response = ui.add(button);
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_toggled(egui::accesskit::Toggled::from(is_in_hand));
    });
    let keys = shortcut.map(|shortcut| format!(" ({})", ui.ctx().format_shortcut(&shortcut))).unwrap_or_default();
    response.on_hover_text(format!("{tooltip}{keys}"))
}

/// A big target with a word; filled when it is the chosen one.
pub fn target_ui(ui: &mut Ui, word: &str, is_chosen: bool) -> Response {
    let tokens = ui.tokens();
    let mut words = RichText::new(word).font(TextRole::Body.font());
    if is_chosen {
        words = words.color(tokens.press_ink);
    }
    let mut button = Button::new(words).min_size(vec2(24.0 * GRID, 9.0 * GRID)).selected(is_chosen);
    if is_chosen {
        button = button.fill(tokens.press);
    }
    let response = ui.add(button);
    ui.ctx().accesskit_node_builder(response.id, |node| {
        node.set_toggled(egui::accesskit::Toggled::from(is_chosen));
    });
    response
}
