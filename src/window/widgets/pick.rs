//! One of many by a few letters: a field, and below it the choices that hold what is typed.

use egui::{Button, Key, Response, RichText, Ui, vec2};

use super::field::field_ui;
use crate::window::theme::{GRID, TextRole};

/// A field that narrows choices down; the choice that was pressed, or the first one on Enter. Nothing is shown below
/// while nothing is typed, unless `show_all`.
pub fn pick_ui<T>(
    ui: &mut Ui,
    label: &str,
    typed: &mut String,
    show_all: bool,
    choices: impl Iterator<Item = (T, String)>,
) -> Option<T> {
    ui.vertical(|ui| picked(ui, label, typed, show_all, choices)).inner
}

fn picked<T>(
    ui: &mut Ui,
    label: &str,
    typed: &mut String,
    show_all: bool,
    choices: impl Iterator<Item = (T, String)>,
) -> Option<T> {
    const MOST: usize = 8;
    let field = field_ui(ui, label, typed, Some(80.0 * GRID));
    let entered = field.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
    let words: Vec<String> = typed.split_whitespace().map(str::to_lowercase).collect();
    if words.is_empty() && !show_all {
        return None;
    }
    let holds = |said: &str| {
        let said = said.to_lowercase();
        words.iter().all(|word| said.contains(word.as_str()))
    };
    // What begins with the letters comes before what has a word that does, and that before what merely holds them.
    let rank = |said: &String| {
        let said = said.to_lowercase();
        let begins = |text: &str| words.first().is_none_or(|word| text.starts_with(word.as_str()));
        if begins(&said) { 0 } else { 2 - i32::from(said.split_whitespace().any(begins)) }
    };
    let mut found: Vec<(T, String)> = choices.filter(|(_, said)| holds(said)).collect();
    found.sort_by_cached_key(|(_, said)| rank(said));
    found.truncate(MOST);
    let mut picked = None;
    ui.horizontal_wrapped(|ui| {
        for (at, (_, said)) in found.iter().enumerate() {
            if target_ui(ui, said, false).clicked() {
                picked = Some(at);
            }
        }
    });
    if entered && !words.is_empty() && !found.is_empty() {
        picked = Some(0);
    }
    let at = picked?;
    typed.clear();
    found.into_iter().nth(at).map(|(choice, _)| choice)
}

/// A big target with a word; filled when it is the chosen one.
pub fn target_ui(ui: &mut Ui, word: &str, is_chosen: bool) -> Response {
    use crate::window::theme::Themed as _;
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
