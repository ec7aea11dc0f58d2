//! One of many, found by a few letters.

use egui::{Key, Ui, WidgetInfo};

use super::field::field_ui;
use super::words::{body, remark};
use crate::text;
use crate::window::theme::{GRID, Themed};

/// How many of what was found are shown.
const SHOWN: usize = 8;

/// What can be chosen, and the letters typed so far.
#[derive(Debug)]
pub struct Picker<T> {
    letters: String,
    choices: Vec<Choice<T>>,
    /// The place of the choice that Enter takes.
    at: usize,
    is_fresh: bool,
}

#[derive(Debug)]
struct Choice<T> {
    what: T,
    said: String,
    lower: String,
}

/// What a person did with a picker.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Pick<T> {
    One(T),
    /// None of them: a new one of this name.
    New(String),
    Away,
}

impl<T: Copy> Picker<T> {
    /// A picker over choices, in the order they are to be shown.
    pub fn new(choices: impl IntoIterator<Item = (T, String)>) -> Self {
        let choices =
            choices.into_iter().map(|(what, said)| Choice { what, lower: said.to_lowercase(), said }).collect();
        Self { letters: String::new(), choices, at: 0, is_fresh: true }
    }

    /// Draws the field and what is found. `new_word` is said before the letters where they may name a new one.
    pub fn ui(&mut self, ui: &mut Ui, label: &str, new_word: Option<&str>) -> Option<Pick<T>> {
        let mut pick = None;
        ui.vertical(|ui| {
            let field = field_ui(ui, label, &mut self.letters, Some(ui.available_width().min(90.0 * GRID)));
            if std::mem::take(&mut self.is_fresh) {
                field.request_focus();
            }
            if field.changed() {
                self.at = 0;
            }
            let words: Vec<String> = self.letters.split_whitespace().map(str::to_lowercase).collect();
            let is_found = |choice: &&Choice<T>| words.iter().all(|word| choice.lower.contains(word.as_str()));
            let all: Vec<&Choice<T>> = self.choices.iter().filter(is_found).collect();
            let found = &all[..all.len().min(SHOWN)];
            let letters = self.letters.trim().to_owned();
            let new = new_word.filter(|_| !letters.is_empty());
            let last = (found.len() + usize::from(new.is_some())).saturating_sub(1);
            let (entered, escaped, down, up) = ui.input(|input| {
                let pressed = |key| input.key_pressed(key);
                (pressed(Key::Enter), pressed(Key::Escape), pressed(Key::ArrowDown), pressed(Key::ArrowUp))
            });
            if field.has_focus() {
                self.at = (self.at + usize::from(down)).saturating_sub(usize::from(up));
            }
            self.at = self.at.min(last);
            let enter = field.lost_focus() && entered;
            for (place, choice) in found.iter().enumerate() {
                if choice_ui(ui, &choice.said, place == self.at) || (enter && place == self.at) {
                    pick = Some(Pick::One(choice.what));
                }
            }
            if let Some(word) = new {
                let said = format!("{word} “{letters}”");
                if choice_ui(ui, &said, self.at == found.len()) || (enter && self.at == found.len()) {
                    pick = Some(Pick::New(letters.clone()));
                }
            }
            if all.len() > SHOWN {
                ui.label(remark(ui, text!("and {count} more: type a few letters", count = all.len() - SHOWN)));
            } else if all.is_empty() && new.is_none() {
                ui.label(remark(ui, text!("Nothing found.")));
            }
            if field.lost_focus() && escaped {
                pick = Some(Pick::Away);
            }
        });
        pick
    }
}

/// One choice as a word to press; `true` when it was pressed.
fn choice_ui(ui: &mut Ui, said: &str, is_next: bool) -> bool {
    let tokens = ui.tokens();
    let mut button = egui::Button::new(body(said).color(tokens.press)).frame(is_next).truncate();
    if is_next {
        button = button.fill(tokens.press_wash);
    }
    let response = ui.add(button);
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, said));
    response.clicked()
}
