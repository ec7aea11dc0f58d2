//! What the Shelf is asked for: words, kind, place, state, a window of dates.

use egui::{Response, Ui};

use crate::assess::PartState;
use crate::record::{Kind, PlaceId, When, Word};
use crate::text;
use crate::trade::Span;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{choice_ui, field_ui, link_ui, small};

/// What parts are asked for; what is empty asks for nothing.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Filter {
    pub words: String,
    pub kind: Option<Kind>,
    pub place: Option<PlaceId>,
    pub state: Option<PartState>,
    /// As typed: a day, a month or a year.
    pub made_from: String,
    pub made_to: String,
}

impl Filter {
    /// Whether it asks for nothing.
    pub fn is_open(&self) -> bool {
        *self == Self::default()
    }

    /// What cannot be meant in the window of dates; it is left out of what is asked for.
    pub fn wrong_dates(&self) -> Vec<String> {
        let fault = |typed: &str| typed.parse::<When>().err().map(|fault| fault.to_string());
        let mut wrong: Vec<String> =
            [&self.made_from, &self.made_to].into_iter().filter_map(|typed| fault(typed)).collect();
        let span = |typed: &str| typed.parse::<When>().ok().and_then(When::span);
        if let Some((from, to)) = span(&self.made_from).zip(span(&self.made_to))
            && from.first > to.last
        {
            let says = text!(
                "Nothing was made from {from} to {to}: the second comes first",
                from = self.made_from.trim(),
                to = self.made_to.trim()
            );
            wrong.push(says);
        }
        wrong
    }

    /// The days that a part may have been made in; `None` while nothing, or nothing readable, is typed.
    pub fn window(&self) -> Option<Span> {
        days_between(&self.made_from, &self.made_to)
    }
}

/// The days from one typed date to another; `None` while nothing, or nothing readable, is typed.
pub fn days_between(from: &str, to: &str) -> Option<Span> {
    let read = |typed: &str| typed.parse::<When>().ok().and_then(When::span);
    let (from, to) = (read(from), read(to));
    from.or(to)?;
    let first = from.map_or(chrono::NaiveDate::MIN, |span| span.first);
    let last = to.map_or(chrono::NaiveDate::MAX, |span| span.last);
    (first <= last).then_some(Span { first, last })
}

/// Draws the fields in one line, wrapped where it is narrow; the text field is given back.
pub fn filter_ui(ui: &mut Ui, filter: &mut Filter, places: &[(PlaceId, String)]) -> Response {
    let text_field = ui.horizontal_wrapped(|ui| {
        let text_field = field_ui(ui, text!("Words, tag or marking"), &mut filter.words, Some(60.0 * GRID));
        let any = text!("Any");
        let kinds = with_any(any, Kind::ALL.iter().map(|kind| (*kind, kind.label())));
        choice_ui(ui, text!("Kind"), &mut filter.kind, &kinds, 34.0 * GRID);
        let states = with_any(any, PartState::ALL.iter().map(|state| (*state, state.label())));
        choice_ui(ui, text!("State"), &mut filter.state, &states, 34.0 * GRID);
        let places = with_any(any, places.iter().map(|(id, name)| (*id, name.as_str())));
        choice_ui(ui, text!("Place"), &mut filter.place, &places, 34.0 * GRID);
        field_ui(ui, text!("Made from"), &mut filter.made_from, Some(20.0 * GRID));
        field_ui(ui, text!("Made to"), &mut filter.made_to, Some(20.0 * GRID));
        if !filter.is_open() && link_ui(ui, text!("Show all")).clicked() {
            *filter = Filter::default();
        }
        text_field
    });
    // What comes and goes stands in a frame of its own, so that the field keeps the keys.
    ui.vertical(|ui| {
        for wrong in filter.wrong_dates() {
            ui.label(small(wrong).color(ui.tokens().power_unknown));
        }
    });
    text_field.inner
}

/// Choices with one more before them that asks for nothing.
pub fn with_any<'a, T>(any: &'a str, choices: impl Iterator<Item = (T, &'a str)>) -> Vec<(Option<T>, &'a str)> {
    std::iter::once((None, any)).chain(choices.map(|(choice, say)| (Some(choice), say))).collect()
}
