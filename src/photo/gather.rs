//! Which files are meant when files and folders are named: folders are walked, each once, whatever links say.

use std::collections::HashSet;
use std::fs::{self, File};
use std::io::Read as _;
use std::ops::ControlFlow;
use std::path::{Path, PathBuf};

use super::read::HEAD_BYTES;
use super::take_in::Failure;
use super::{Format, PICTURE_ENDINGS, PictureError};

/// The files that were found.
#[derive(Debug, Default)]
pub struct Gathered {
    /// Named files as they were named, and those of folders by name.
    pub files: Vec<PathBuf>,
    /// Folders and files that cannot be looked into.
    pub failed: Vec<Failure>,
    /// Files of folders that are no pictures, neither by name nor by content.
    pub passed_over: usize,
    /// Whether it was stopped before the end.
    pub is_stopped: bool,
}

/// Gathers files and the files of folders, at any depth. `watch` is told how many were found so far, and may stop it.
/// Hidden files and folders are left out unless they are named. Waits for the disk.
pub fn gather(named: &[PathBuf], mut watch: impl FnMut(usize) -> ControlFlow<()>) -> Gathered {
    let mut gathered = Gathered::default();
    let mut walk = Walk { gathered: &mut gathered, walked: HashSet::new(), watch: &mut watch };
    if named.iter().try_for_each(|path| walk.named(path)).is_break() {
        gathered.is_stopped = true;
    }
    gathered
}

struct Walk<'a> {
    gathered: &'a mut Gathered,
    /// Folders by their true place, so that a link to one above leads nowhere.
    walked: HashSet<PathBuf>,
    watch: &'a mut dyn FnMut(usize) -> ControlFlow<()>,
}

impl Walk<'_> {
    fn named(&mut self, path: &Path) -> ControlFlow<()> {
        if path.is_dir() { self.folder(path) } else { self.found(path.to_owned()) }
    }

    fn found(&mut self, path: PathBuf) -> ControlFlow<()> {
        self.gathered.files.push(path);
        (self.watch)(self.gathered.files.len())
    }

    fn fail(&mut self, path: &Path, reason: std::io::Error) {
        let error = PictureError::Unreadable { name: path.display().to_string(), reason };
        self.gathered.failed.push(Failure { path: path.to_owned(), why: error.to_string() });
    }

    /// The folders of a folder are walked after its files; a list instead of recursion, since nesting has no limit.
    fn folder(&mut self, top: &Path) -> ControlFlow<()> {
        let mut folders = vec![top.to_owned()];
        while let Some(folder) = folders.pop() {
            let entries = fs::canonicalize(&folder)
                .and_then(|place| if self.walked.insert(place) { entries(&folder) } else { Ok(Vec::new()) });
            let entries = match entries {
                Ok(entries) => entries,
                Err(reason) => {
                    self.fail(&folder, reason);
                    continue;
                }
            };
            let (inner, files): (Vec<_>, Vec<_>) = entries.into_iter().partition(|path| path.is_dir());
            folders.extend(inner.into_iter().rev());
            for file in files {
                if is_picture(&file) {
                    self.found(file)?;
                } else {
                    self.gathered.passed_over += 1;
                }
            }
            (self.watch)(self.gathered.files.len())?;
        }
        ControlFlow::Continue(())
    }
}

/// What a folder holds, by name, without what is hidden.
fn entries(folder: &Path) -> std::io::Result<Vec<PathBuf>> {
    let entries = fs::read_dir(folder)?.map(|entry| entry.map(|entry| entry.path()));
    let mut paths = entries.collect::<Result<Vec<_>, _>>()?;
    let is_hidden = |path: &PathBuf| path.file_name().is_some_and(|name| name.as_encoded_bytes().starts_with(b"."));
    paths.retain(|path| !is_hidden(path));
    paths.sort_unstable();
    Ok(paths)
}

/// Whether a file is a picture by its name, even when it turns out to be none, or by its content. Waits for the disk.
pub fn is_picture(file: &Path) -> bool {
    let is_named =
        file.extension().is_some_and(|end| PICTURE_ENDINGS.iter().any(|known| end.eq_ignore_ascii_case(known)));
    is_named || (file.is_file() && head(file).is_ok_and(|head| Format::of(&head).is_some()))
}

fn head(file: &Path) -> std::io::Result<Vec<u8>> {
    let mut head = Vec::new();
    File::open(file)?.take(HEAD_BYTES as u64).read_to_end(&mut head)?;
    Ok(head)
}
