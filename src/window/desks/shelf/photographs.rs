//! Every photograph of the logbook, the newest first.

use std::cmp::Reverse;
use std::sync::Arc;

use egui::{Id, Rect, Response, Ui};

use super::filter::{days_between, with_any};
use super::grid::{Grid, Tiles, inside};
use super::pictures::words_ui;
use crate::record::{Kind, Logbook, PhotoView, Word as _};
use crate::window::background::Background;
use crate::window::outbox::{Outbox, View};
use crate::window::part_index::words_of;
use crate::window::photographs::{Photograph, Subject, day_of, photo_text, small_ui};
use crate::window::theme::GRID;
use crate::window::widgets::{body, choice_ui, field_ui, link_ui, remark};
use crate::{counted, text};

/// Up to this many parts, photographs are found between two frames; above, beside the window.
const PARTS_AT_ONCE: usize = 500;

/// What photographs are asked for; what is empty asks for nothing.
#[derive(Clone, Debug, Default, PartialEq)]
struct Filter {
    words: String,
    kind: Option<Kind>,
    shows: Option<PhotoView>,
    taken_from: String,
    taken_to: String,
}

/// The photographs with what they are asked for.
#[derive(Default)]
pub struct Photographs {
    filter: Filter,
    found: Background<(u64, Filter), Vec<Photograph>>,
    grid: Grid,
}

struct PhotoTiles<'a> {
    view: &'a View<'a>,
    photographs: &'a [Photograph],
}

impl Photographs {
    /// The photographs to be shown; the last ones while others are looked for.
    fn found(&mut self, ui: &Ui, view: &View<'_>) -> Arc<Vec<Photograph>> {
        let (logbook, filter) = (Arc::clone(view.logbook), self.filter.clone());
        let is_small = logbook.parts.len() <= PARTS_AT_ONCE;
        let key = (logbook.revision, filter.clone());
        self.found.get(key, ui.ctx(), is_small, move || found(&logbook, &filter)).unwrap_or_default()
    }

    /// Says how many photographs there are.
    pub fn heading(&mut self, ui: &Ui, view: &View<'_>) -> String {
        let count = self.found(ui, view).len();
        counted!("{count} photograph", "{count} photographs", count)
    }

    /// Draws what they are asked for, and the photographs; the field for words is given back.
    pub fn ui(&mut self, ui: &mut Ui, view: &View<'_>, outbox: &mut Outbox) -> Response {
        let before = self.filter.clone();
        let text_field = self.filter.ui(ui);
        if self.filter != before {
            self.grid.show_top();
        }
        ui.add_space(2.0 * GRID);
        let photographs = self.found(ui, view);
        if photographs.is_empty() {
            self.nothing_ui(ui);
            return text_field;
        }
        let tiles = PhotoTiles { view, photographs: &photographs };
        if let Some(opened) = self.grid.ui(ui, text!("Photographs"), &tiles) {
            let ids = photographs.iter().map(|photograph| photograph.photo().id);
            outbox.look_at(photographs[opened].photo().id, ids);
        }
        text_field
    }

    fn nothing_ui(&mut self, ui: &mut Ui) {
        if self.filter == Filter::default() {
            ui.label(body(text!("No photograph yet. Drop some on a part’s sheet, or add them while logging a part.")));
            return;
        }
        ui.label(body(text!("No photograph answers to all of this.")));
        ui.label(remark(ui, text!("Captions, what is shown, tags and names are searched.")));
        if link_ui(ui, text!("Show all photographs")).clicked() {
            self.filter = Filter::default();
        }
    }
}

impl Filter {
    fn ui(&mut self, ui: &mut Ui) -> Response {
        ui.horizontal_wrapped(|ui| {
            let text_field = field_ui(ui, text!("Words, tag or caption"), &mut self.words, Some(60.0 * GRID));
            let any = text!("Any");
            let kinds = with_any(any, Kind::ALL.iter().map(|kind| (*kind, kind.label())));
            choice_ui(ui, text!("Kind of part"), &mut self.kind, &kinds, 34.0 * GRID);
            let shows = with_any(any, PhotoView::ALL.iter().map(|shows| (*shows, shows.label())));
            choice_ui(ui, text!("It shows"), &mut self.shows, &shows, 40.0 * GRID);
            field_ui(ui, text!("Taken from"), &mut self.taken_from, Some(20.0 * GRID));
            field_ui(ui, text!("Taken to"), &mut self.taken_to, Some(20.0 * GRID));
            if *self != Self::default() && link_ui(ui, text!("Show all")).clicked() {
                *self = Self::default();
            }
            text_field
        })
        .inner
    }
}

/// The photographs that answer to a filter, the newest first, those without a day last.
fn found(logbook: &Logbook, filter: &Filter) -> Vec<Photograph> {
    let words = words_of(&filter.words);
    let days = days_between(&filter.taken_from, &filter.taken_to);
    let answers = |photograph: &Photograph| {
        let photo = photograph.photo();
        let kind = if let Subject::Part(file) = &photograph.of { Some(file.part.kind) } else { None };
        let says = || format!("{} {}", photograph.of.title(logbook), photo_text(photo)).to_lowercase();
        (filter.kind.is_none() || filter.kind == kind)
            && filter.shows.is_none_or(|shows| shows == photo.view)
            && days.is_none_or(|days| photo.taken.span().is_some_and(|span| span.overlap(days).is_some()))
            && (words.is_empty() || {
                let says = says();
                words.iter().all(|word| says.contains(word.as_str()))
            })
    };
    let mut found: Vec<Photograph> = Photograph::all(logbook).filter(answers).collect();
    // Those of one day stay in the order they came in.
    found.sort_by_key(|photograph| Reverse(day_of(photograph.photo())));
    found
}

impl Tiles for PhotoTiles<'_> {
    fn count(&self) -> usize {
        self.photographs.len()
    }

    fn key(&self, tile: usize) -> Id {
        Id::unique(("photograph", self.photographs[tile].photo().id))
    }

    fn name(&self, tile: usize) -> String {
        let photograph = &self.photographs[tile];
        let said =
            [photograph.of.name().to_owned(), photo_text(photograph.photo()), photograph.photo().taken.to_string()];
        said.into_iter().filter(|said| !said.is_empty()).collect::<Vec<_>>().join(", ")
    }

    fn draw(&self, ui: &Ui, tile: usize, rect: Rect, is_held: bool) {
        let photograph = &self.photographs[tile];
        let (picture, words) = inside(rect);
        small_ui(ui, self.view, picture, Some(photograph.photo()), is_held);
        let taken = photograph.photo().taken;
        let below = if taken.is_known() {
            format!("{taken} · {}", photo_text(photograph.photo()))
        } else {
            photo_text(photograph.photo())
        };
        words_ui(ui, words, photograph.of.name(), &below);
    }
}
