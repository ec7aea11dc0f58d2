//! The records of photographs that were taken in for one thing.

use std::collections::HashSet;

use chrono::NaiveDate;

use super::target::Target;
use crate::counted;
use crate::photo::{Failure, TakenIn};
use crate::record::{Change, Logbook, Photo, PhotoView};
use crate::store::Store;

/// What came of writing records.
#[derive(Debug)]
pub struct Recorded {
    /// Photographs that the target had already.
    pub already: usize,
    pub failed: Vec<Failure>,
}

/// Writes the records of photographs that were taken in for a target. When that is refused nothing of them stays, and
/// each is told with the reason. Waits for the disk.
pub fn record(target: Target, taken_in: &[TakenIn], today: NaiveDate, store: &Store) -> Recorded {
    let photos = taken_in.iter().map(|one| one.photo(PhotoView::Detail, today)).collect();
    let (change, already) = put_photos(target, photos, &store.logbook());
    if change.is_empty() {
        return Recorded { already, failed: Vec::new() };
    }
    let Err(error) = store.write(change) else { return Recorded { already, failed: Vec::new() } };
    store.forget_photos(taken_in.iter().map(|one| &one.kept));
    let why = error.to_string();
    let failed = taken_in.iter().map(|one| Failure { path: one.path.clone(), why: why.clone() }).collect();
    Recorded { already, failed }
}

/// Photographs put on record as a target's, as one change, and how many of them it had already. Nothing is to be
/// written where it had all of them or is gone itself.
pub fn put_photos(target: Target, photos: Vec<Photo>, logbook: &Logbook) -> (Change, usize) {
    let mut known: HashSet<String> = target.photos(logbook).map(|photo| photo.content.clone()).collect();
    let has_none = known.is_empty();
    let count = photos.len();
    let mut new: Vec<Photo> = photos.into_iter().filter(|photo| known.insert(photo.content.clone())).collect();
    let already = count - new.len();
    if let Some(first) = new.first_mut().filter(|_| has_none) {
        first.view = PhotoView::Overview;
    }
    let name = counted!("Add {count} photograph", "Add {count} photographs", new.len());
    let Some(whose) = target.name(logbook) else { return (Change::new(name), 0) };
    let mut change = Change::new(format!("{name} ({whose})"));
    change.put_all(new.into_iter().map(|photo| target.own(photo).into()));
    (change, already)
}
