//! Photographs taken into a logbook: looked at, decoded once as a proof, and kept as they are.

use std::ops::ControlFlow;
use std::path::{Path, PathBuf};

use super::thumbnail::{Cache, SIDES_PX, shrink_each};
use super::{Picture, PictureError, Shot, TakenAt};
use crate::record::{Moment, Photo, PhotoView, When};
use crate::store::{FileSource, Kept, Store, StoreError};

/// A file that was not taken in, and why.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Failure {
    pub path: PathBuf,
    pub why: String,
}

/// A photograph that the logbook keeps; a record of it is still to be written.
#[derive(Clone, Debug, PartialEq)]
pub struct TakenIn {
    pub path: PathBuf,
    pub kept: Kept,
    /// Width and height as a person sees it.
    pub size_px: (u32, u32),
    pub shot: Shot,
}

/// What became of several files.
#[derive(Debug, Default)]
pub struct Batch {
    pub taken_in: Vec<TakenIn>,
    pub failed: Vec<Failure>,
    /// Whether it was stopped before the end.
    pub is_stopped: bool,
}

impl TakenIn {
    /// The record of it; whose photograph it is, is still to be said.
    pub fn photo(&self, view: PhotoView, added: impl Into<When>) -> Photo {
        Photo {
            id: Store::new_id(),
            part: None,
            machine: None,
            lot: None,
            content: self.kept.content.clone(),
            extension: self.kept.extension.clone(),
            width_px: self.size_px.0,
            height_px: self.size_px.1,
            added: Moment { on: added.into(), sequence: 0 },
            taken: self.shot.taken.map_or(When::Unknown, TakenAt::day),
            view,
            caption: String::new(),
            is_map: false,
        }
    }
}

/// Takes files into a logbook, one after the other; small copies go into the cache where there is one. `watch` is told
/// how many are done, and may stop it. Once the disk is full the rest is not tried. Waits for the disk.
pub fn take_in(
    store: &Store,
    cache: Option<&Cache>,
    files: &[PathBuf],
    mut watch: impl FnMut(usize) -> ControlFlow<()>,
) -> Batch {
    let mut batch = Batch::default();
    let mut full = None;
    for (at, path) in files.iter().enumerate() {
        let taken_in = full.clone().map_or_else(|| take_in_one(store, cache, path), Err);
        match taken_in {
            Ok(taken_in) => batch.taken_in.push(taken_in),
            Err(Refused { why, is_full }) => {
                batch.failed.push(Failure { path: path.clone(), why: why.clone() });
                full = is_full.then_some(Refused { why, is_full });
            }
        }
        if watch(at + 1).is_break() {
            batch.is_stopped = at + 1 < files.len();
            break;
        }
    }
    batch
}

/// Why a file was not taken in, and whether the disk was full.
#[derive(Clone)]
struct Refused {
    why: String,
    is_full: bool,
}

impl From<PictureError> for Refused {
    fn from(error: PictureError) -> Self {
        Self { why: error.to_string(), is_full: false }
    }
}

impl From<StoreError> for Refused {
    fn from(error: StoreError) -> Self {
        Self { why: error.to_string(), is_full: matches!(error, StoreError::DiskFull { .. }) }
    }
}

/// Takes in a picture that has no file, as one pasted; `name` is for messages. Waits for the disk.
pub fn take_in_bytes(store: &Store, cache: Option<&Cache>, name: &str, bytes: Vec<u8>) -> Result<TakenIn, Failure> {
    let path = PathBuf::from(name);
    let taken_in = Picture::from_bytes(name, bytes).map_err(Refused::from);
    let taken_in = taken_in.and_then(|picture| keep(store, cache, &path, &picture));
    taken_in.map_err(|Refused { why, .. }| Failure { path, why })
}

fn take_in_one(store: &Store, cache: Option<&Cache>, path: &Path) -> Result<TakenIn, Refused> {
    keep(store, cache, path, &Picture::open(path)?)
}

/// A picture whose decoder gives up is not taken in.
fn keep(store: &Store, cache: Option<&Cache>, path: &Path, picture: &Picture) -> Result<TakenIn, Refused> {
    let copies = shrink_each(picture, SIDES_PX)?;
    let kept = store.keep_photo(FileSource::Bytes(picture.bytes()), picture.format().extension())?;
    if let Some(cache) = cache {
        cache.keep(&kept.content, &copies);
    }
    let size_px = (picture.width_px(), picture.height_px());
    Ok(TakenIn { path: path.to_owned(), kept, size_px, shot: picture.shot().clone() })
}
