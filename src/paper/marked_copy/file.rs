//! A marked copy as a file outside the logbook.

use std::path::Path;

use super::{CopyError, CopyFormat, copy, title};
use crate::paper::file::write_whole;
use crate::photo::Picture;
use crate::photo::measure::sample_missing;
use crate::record::{Logbook, PhotoId, Word as _};
use crate::rules::Rules;
use crate::store::Store;

/// Writes a photograph's marked copy to a path that ends in .png, .jpg or .jpeg. A file that is there already is left
/// alone, unless it may be replaced. Takes long, and waits for the disk.
pub fn write_out(
    store: &Store,
    logbook: &Logbook,
    rules: &Rules,
    photo: PhotoId,
    path: &Path,
    may_replace: bool,
) -> Result<(), CopyError> {
    let format = format_of(path)?;
    if !may_replace && path.exists() {
        return Err(CopyError::There { path: path.to_owned() });
    }
    let mut file = logbook.photo_files().find(|file| file.photo.id == photo).cloned().ok_or(CopyError::Gone)?;
    let part = file.photo.part.and_then(|part| logbook.part(part));
    let picture = Picture::open(&store.photo_path(&file.photo))?;
    sample_missing(&mut file.marks, &picture)?;
    let title = title(logbook, &file.photo);
    let bytes = copy(&picture, &file, part.map(AsRef::as_ref), rules, &title, format)?;
    write(&bytes, path, may_replace)
}

/// What a path's ending asks for.
fn format_of(path: &Path) -> Result<CopyFormat, CopyError> {
    let ending = path.extension().map(|ending| ending.to_string_lossy().to_lowercase()).unwrap_or_default();
    let format = if ending == "jpeg" { Some(CopyFormat::Jpeg) } else { CopyFormat::named(&ending) };
    format.ok_or_else(|| CopyError::Ending { path: path.to_owned() })
}

fn write(bytes: &[u8], path: &Path, may_replace: bool) -> Result<(), CopyError> {
    write_whole(bytes, path, may_replace).map_err(|source| match source.kind() {
        std::io::ErrorKind::AlreadyExists => CopyError::There { path: path.to_owned() },
        _ => CopyError::Unwritten { path: path.to_owned(), source },
    })
}
