//! Answers to one question as big targets, each with a key.

use egui::{Button, Key, RichText, Ui, vec2};

use super::words::strong;
use crate::window::theme::{GRID, TextRole, Themed};

/// One answer that can be given.
#[derive(Clone, Debug)]
pub struct AnswerChoice<'a> {
    /// The key that gives it while the question is the one being asked.
    pub key: Option<Key>,
    pub say: &'a str,
}

/// A question with its answers; the index of the answer that was just given. Keys answer only while it `is_asked`.
pub fn answer_row_ui(
    ui: &mut Ui,
    question: &str,
    choices: &[AnswerChoice<'_>],
    chosen: Option<usize>,
    is_asked: bool,
) -> Option<usize> {
    let tokens = ui.tokens();
    let mut given = None;
    ui.label(if is_asked { strong(question) } else { super::words::body(question) });
    ui.horizontal_wrapped(|ui| {
        for (index, choice) in choices.iter().enumerate() {
            let is_chosen = chosen == Some(index);
            let mut words = RichText::new(choice.say).font(TextRole::Body.font());
            if is_chosen {
                words = words.color(tokens.press_ink);
            }
            let key = choice.key.filter(|_| is_asked);
            let key_colour = if is_chosen { tokens.press_ink } else { tokens.ink_weak };
            let key_word =
                key.map(|key| RichText::new(key.symbol_or_name()).font(TextRole::Small.font()).color(key_colour));
            let button = match key_word {
                Some(key_word) => Button::new((key_word, words)),
                None => Button::new(words),
            };
            let mut button = button.min_size(vec2(16.0 * GRID, 10.0 * GRID)).selected(is_chosen);
            if is_chosen {
                button = button.fill(tokens.press);
            }
            let response = ui.add(button).accessible_name(format!("{question} {}", choice.say));
            ui.ctx().accesskit_node_builder(response.id, |node| {
                node.set_toggled(egui::accesskit::Toggled::from(is_chosen));
            });
            let by_key =
                key.is_some_and(|key| !ui.ctx().text_edit_focused() && ui.input(|input| input.key_pressed(key)));
            if response.clicked() || by_key {
                given = Some(index);
            }
        }
    });
    given
}
