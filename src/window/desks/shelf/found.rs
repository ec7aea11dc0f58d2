//! Which parts the Shelf shows, in which order: worked out again only when revision, filter or sorting changed.

use std::cmp::Ordering;
use std::collections::HashSet;
use std::sync::Arc;

use super::filter::Filter;
use super::rows::COLUMNS;
use crate::record::{Logbook, PlaceId};
use crate::window::forms::places;
use crate::window::outbox::View;
use crate::window::part_index::{IndexRow, words_of};
use crate::window::widgets::Sort;

/// The parts found, and what they were found for.
#[derive(Default)]
pub struct Found {
    /// All parts in the order of `sorted_by`.
    sorted: Vec<Arc<IndexRow>>,
    sorted_by: Option<(u64, Sort)>,
    parts: Vec<Arc<IndexRow>>,
    /// Every place with its whole path, by that path.
    places: Vec<(PlaceId, String)>,
    asked_for: Option<(u64, Sort, Filter)>,
}

impl Found {
    /// The parts to be shown.
    pub fn parts(&self) -> &[Arc<IndexRow>] {
        &self.parts
    }

    /// Every place with its whole path, by that path.
    pub fn places(&self) -> &[(PlaceId, String)] {
        &self.places
    }

    /// Sorts and filters where something changed. Typing only filters: the order stands already.
    pub fn bring_up_to_date(&mut self, view: &View<'_>, filter: &Filter, sort: Sort) {
        let revision = view.index.revision;
        if self.sorted_by.is_none_or(|(at, _)| at != revision) {
            let logbook = view.logbook;
            self.places = places(logbook);
        }
        if self.sorted_by != Some((revision, sort)) {
            self.sorted.clone_from(&view.index.rows);
            self.sorted.sort_by(|one, other| {
                let order = compare(one, other, sort.column).then_with(|| one.tag_order.cmp(&other.tag_order));
                if sort.descending { order.reverse() } else { order }
            });
            self.sorted_by = Some((revision, sort));
        }
        if self.asked_for.as_ref().is_some_and(|(at, by, what)| (*at, *by) == (revision, sort) && what == filter) {
            return;
        }
        let words = words_of(&filter.words);
        let places = filter.place.map(|place| within(view.logbook, place));
        let window = filter.window();
        self.parts.clear();
        self.parts.extend(
            self.sorted
                .iter()
                .filter(|row| {
                    filter.kind.is_none_or(|kind| row.kind == kind)
                        && filter.state.is_none_or(|state| row.state == state)
                        && places.as_ref().is_none_or(|places| row.place_id.is_some_and(|id| places.contains(&id)))
                        && window.is_none_or(|window| row.span.is_some_and(|span| span.overlap(window).is_some()))
                        && row.holds(&words)
                })
                .cloned(),
        );
        self.asked_for = Some((revision, sort, filter.clone()));
    }
}

fn compare(one: &IndexRow, other: &IndexRow, column: usize) -> Ordering {
    match column {
        column if column == COLUMNS.what => one.what_order().cmp(other.what_order()),
        column if column == COLUMNS.span => one.span.cmp(&other.span),
        column if column == COLUMNS.state => one.state.cmp(&other.state),
        column if column == COLUMNS.work => one.open_work.cmp(&other.open_work),
        column if column == COLUMNS.place => one.place.cmp(&other.place),
        _ => Ordering::Equal,
    }
}

/// A place and all that stands in it.
fn within(logbook: &Logbook, place: PlaceId) -> HashSet<PlaceId> {
    let mut found = HashSet::from([place]);
    loop {
        let more: Vec<PlaceId> = logbook
            .places
            .iter()
            .filter(|place| place.within.is_some_and(|outer| found.contains(&outer)) && !found.contains(&place.id))
            .map(|place| place.id)
            .collect();
        if more.is_empty() {
            return found;
        }
        found.extend(more);
    }
}
