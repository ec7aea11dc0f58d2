//! One of many, found by a few letters: a field, and below it the choices that hold what is typed.

use std::hash::{DefaultHasher, Hash, Hasher};

use egui::text::{LayoutJob, TextWrapping};
use egui::{Key, Response, Sense, Ui, WidgetInfo, pos2, vec2};
use serde::{Deserialize, Serialize};

use super::field::field_ui;
use super::words::remark;
use crate::text;
use crate::window::theme::{GRID, TextRole, Themed};

/// How many of what was found are shown.
const SHOWN: usize = 8;
const WIDTH: f32 = 90.0 * GRID;

/// The letters typed so far, and what they found. Only the letters go into a draft.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[serde(bound = "", default)]
pub struct Picker<T> {
    letters: String,
    /// The place of the choice that Enter takes.
    #[serde(skip)]
    at: usize,
    #[serde(skip)]
    takes_keys: bool,
    #[serde(skip)]
    gathered: Option<Gathered<T>>,
}

#[derive(Clone, Debug)]
struct Gathered<T> {
    /// Stands for what the choices were gathered from.
    of: u64,
    choices: Vec<Choice<T>>,
    /// The letters that `found` holds the places of.
    letters: Option<String>,
    found: Vec<usize>,
}

#[derive(Clone, Debug)]
struct Choice<T> {
    what: T,
    said: String,
    lower: String,
}

/// How a picker asks.
#[derive(Clone, Copy, Debug)]
pub struct Asking<'a> {
    pub label: &'a str,
    /// Said before the letters where they may name a new one.
    pub new_word: Option<&'a str>,
    /// Whether choices are shown before a letter is typed.
    pub shows_all: bool,
}

/// What a person did with a picker.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Pick<T> {
    One(T),
    /// None of them: a new one of this name.
    New(String),
    Away,
}

impl<T> Default for Picker<T> {
    fn default() -> Self {
        Self { letters: String::new(), at: 0, takes_keys: false, gathered: None }
    }
}

impl<'a> Asking<'a> {
    /// Asks for one of those that are there, all of them on show.
    pub fn one(label: &'a str) -> Self {
        Self { label, new_word: None, shows_all: true }
    }
}

impl<T: Clone> Picker<T> {
    /// A picker that takes the keys when it is first drawn.
    pub fn ready() -> Self {
        Self { takes_keys: true, ..Self::default() }
    }

    /// Draws the field and what is found. The choices, in the order they are to be shown, are asked for again when
    /// `of`, which stands for what they are gathered from, has changed.
    pub fn ui<I>(
        &mut self,
        ui: &mut Ui,
        asking: Asking<'_>,
        of: impl Hash,
        choices: impl FnOnce() -> I,
    ) -> Option<Pick<T>>
    where
        I: IntoIterator<Item = (T, String)>,
    {
        let mut hasher = DefaultHasher::new();
        of.hash(&mut hasher);
        let of = hasher.finish();
        let is_asked = asking.shows_all || !self.letters.trim().is_empty();
        if is_asked && self.gathered.as_ref().is_none_or(|gathered| gathered.of != of) {
            self.gathered = Some(Gathered::of(of, choices()));
        }
        // What comes and goes below a field stands in a frame of its own, so that the next field keeps the keys.
        let pick = ui.vertical(|ui| self.shown_ui(ui, asking)).inner;
        if pick.is_some() {
            self.letters.clear();
            self.at = 0;
        }
        pick
    }

    fn shown_ui(&mut self, ui: &mut Ui, asking: Asking<'_>) -> Option<Pick<T>> {
        let width = ui.available_width().min(WIDTH);
        let field = field_ui(ui, asking.label, &mut self.letters, Some(width));
        if std::mem::take(&mut self.takes_keys) {
            field.request_focus();
        }
        if field.changed() {
            self.at = 0;
            // The first letter has the choices gathered in the next frame.
            ui.ctx().request_repaint();
        }
        let (entered, escaped, down, up) = ui.input(|input| {
            let pressed = |key| input.key_pressed(key);
            (pressed(Key::Enter), pressed(Key::Escape), pressed(Key::ArrowDown), pressed(Key::ArrowUp))
        });
        if field.lost_focus() && escaped {
            return Some(Pick::Away);
        }
        let letters = self.letters.trim();
        if letters.is_empty() && !asking.shows_all {
            return None;
        }
        let gathered = self.gathered.as_mut()?;
        gathered.find(letters);
        let all = gathered.found.len();
        let shown = &gathered.found[..all.min(SHOWN)];
        let new = asking.new_word.filter(|_| !letters.is_empty());
        if field.has_focus() {
            self.at = (self.at + usize::from(down)).saturating_sub(usize::from(up));
        }
        self.at = self.at.min((shown.len() + usize::from(new.is_some())).saturating_sub(1));
        let is_next = |place| place == self.at && (field.has_focus() || field.lost_focus());
        let enter = field.lost_focus() && entered;
        let mut pick = None;
        ui.spacing_mut().item_spacing.y = 0.0;
        for (place, choice) in shown.iter().filter_map(|at| gathered.choices.get(*at)).enumerate() {
            if choice_ui(ui, &choice.said, width, is_next(place)).clicked() || (enter && place == self.at) {
                pick = Some(Pick::One(choice.what.clone()));
            }
        }
        if let Some(word) = new {
            let said = format!("{word} “{letters}”");
            let place = shown.len();
            if choice_ui(ui, &said, width, is_next(place)).clicked() || (enter && place == self.at) {
                pick = Some(Pick::New(letters.to_owned()));
            }
        }
        if all > SHOWN {
            ui.label(remark(ui, text!("and {count} more: type a few letters", count = all - SHOWN)));
        } else if all == 0 && new.is_none() {
            ui.label(remark(ui, text!("Nothing found.")));
        }
        pick
    }
}

impl<T> Gathered<T> {
    fn of(of: u64, choices: impl IntoIterator<Item = (T, String)>) -> Self {
        let choices =
            choices.into_iter().map(|(what, said)| Choice { what, lower: said.to_lowercase(), said }).collect();
        Self { of, choices, letters: None, found: Vec::new() }
    }

    /// Finds the choices that hold every word. What begins with the letters comes first, then what has a word that
    /// does, then what merely holds them.
    fn find(&mut self, letters: &str) {
        if self.letters.as_deref() == Some(letters) {
            return;
        }
        let words: Vec<String> = letters.split_whitespace().map(str::to_lowercase).collect();
        let rank = |said: &str| {
            let begins = |text: &str| words.first().is_none_or(|word| text.starts_with(word.as_str()));
            if begins(said) { 0 } else { 2 - i32::from(said.split_whitespace().any(begins)) }
        };
        let holds = |choice: &Choice<T>| words.iter().all(|word| choice.lower.contains(word.as_str()));
        let found = self.choices.iter().enumerate().filter(|(_, choice)| holds(choice));
        let mut found: Vec<(i32, usize)> = found.map(|(at, choice)| (rank(&choice.lower), at)).collect();
        found.sort_unstable();
        self.found = found.into_iter().map(|(_, at)| at).collect();
        self.letters = Some(letters.to_owned());
    }
}

/// One choice as a line to press.
fn choice_ui(ui: &mut Ui, said: &str, width: f32, is_next: bool) -> Response {
    let tokens = ui.tokens();
    let (rect, response) = ui.allocate_exact_size(vec2(width, 7.0 * GRID), Sense::click());
    if is_next || response.hovered() || response.has_focus() {
        ui.painter().rect_filled(rect, 2.0, tokens.press_wash);
    }
    let mut job = LayoutJob::simple_singleline(said.to_owned(), TextRole::Body.font(), tokens.press);
    job.wrap = TextWrapping::truncate_at_width(width - 4.0 * GRID);
    let galley = ui.painter().layout_job(job);
    let at = pos2(rect.left() + 2.0 * GRID, rect.center().y - galley.size().y / 2.0);
    ui.painter().galley(at, galley, tokens.press);
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, said));
    response
}
