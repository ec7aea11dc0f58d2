//! The thread that looks into a watched folder every few seconds.
//!
//! It asks the folders for when they were last changed, and lists them only then: next to no work while nothing comes,
//! and unlike the systems' own notices it also sees folders that another machine writes to.

use std::collections::HashMap;
use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender};
use std::time::{Duration, SystemTime};

use super::seen::{Seen, Stamp};
use crate::photo::PICTURE_ENDINGS;
use crate::store::hash_of;

/// How often the folder is looked at.
pub const EVERY: Duration = Duration::from_secs(2);

/// A folder's time of change may be that coarse: it is listed once more until so long after.
const COARSE: Duration = Duration::from_secs(4);

/// A picture that has come, whole.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Found {
    pub path: PathBuf,
    pub content: String,
    pub stamp: Stamp,
}

/// What the watcher tells.
#[derive(Debug)]
pub enum News {
    Found(Vec<Found>),
    /// The folder cannot be read, and why; told once until it can.
    Gone(String),
}

/// Looks until nobody listens any more. What was dealt with comes by `decided` and is kept in `file`.
pub fn watch(folder: &Path, file: Option<&Path>, decided: &Receiver<Vec<Found>>, news: &Sender<News>, wake: &dyn Fn()) {
    let mut watcher = Watcher::default();
    let mut seen = Seen::load(file, folder);
    loop {
        let told = match watcher.look(folder, &mut seen, file) {
            Ok(found) if found.is_empty() => None,
            Ok(found) => Some(News::Found(found)),
            Err(_) if watcher.is_gone => None,
            Err(error) => {
                watcher = Watcher { is_gone: true, ..Watcher::default() };
                Some(News::Gone(error.to_string()))
            }
        };
        if let Some(told) = told {
            if news.send(told).is_err() {
                return;
            }
            wake();
        }
        match decided.recv_timeout(EVERY) {
            Ok(decided) => {
                if let Some(seen) = &mut seen {
                    for Found { path, content, stamp } in decided {
                        seen.add(path, stamp, content);
                    }
                    seen.keep(file);
                }
            }
            Err(RecvTimeoutError::Timeout) => {}
            Err(RecvTimeoutError::Disconnected) => return,
        }
    }
}

#[derive(Default)]
struct Watcher {
    /// The folders as they were when they were last listed.
    folders: HashMap<PathBuf, Stamp>,
    /// Files that may still grow.
    growing: HashMap<PathBuf, Stamp>,
    /// Files that were told of.
    told: HashMap<PathBuf, Stamp>,
    /// Whether a folder was changed so lately that more may come under the same time.
    looks_again: bool,
    is_gone: bool,
}

impl Watcher {
    /// The pictures that have come since the last look.
    fn look(&mut self, folder: &Path, seen: &mut Option<Seen>, file: Option<&Path>) -> io::Result<Vec<Found>> {
        let is_same = |(path, stamp): (&PathBuf, &Stamp)| fs::metadata(path).is_ok_and(|now| Stamp::of(&now) == *stamp);
        let is_quiet = !self.folders.is_empty() && self.folders.iter().all(is_same);
        if is_quiet && self.growing.is_empty() && !self.looks_again {
            return Ok(Vec::new());
        }
        let listed = Listed::of(folder)?;
        self.is_gone = false;
        self.looks_again = listed.is_fresh;
        self.folders = listed.folders;
        let Some(seen) = seen else {
            let beginning = Seen::beginning(folder, listed.files);
            beginning.keep(file);
            *seen = Some(beginning);
            return Ok(Vec::new());
        };
        let mut found = Vec::new();
        let mut growing = HashMap::new();
        for (path, stamp) in listed.files {
            if seen.has_file(&path, stamp) || self.told.get(&path) == Some(&stamp) {
                continue;
            }
            // Whole once it has stayed as it is from one look to the next.
            if stamp.bytes == 0 || self.growing.get(&path) != Some(&stamp) {
                growing.insert(path, stamp);
                continue;
            }
            let Ok(content) = hash_of(&path) else { continue };
            self.told.insert(path.clone(), stamp);
            if !seen.has_content(&content) {
                found.push(Found { path, content, stamp });
            }
        }
        self.growing = growing;
        Ok(found)
    }
}

/// What a folder and those in it hold.
#[derive(Default)]
struct Listed {
    folders: HashMap<PathBuf, Stamp>,
    files: Vec<(PathBuf, Stamp)>,
    is_fresh: bool,
}

impl Listed {
    fn of(folder: &Path) -> io::Result<Self> {
        let mut listed = Self::default();
        listed.add(folder)?;
        listed.files.sort_unstable_by(|one, other| one.0.cmp(&other.0));
        Ok(listed)
    }

    fn add(&mut self, folder: &Path) -> io::Result<()> {
        let metadata = fs::metadata(folder)?;
        let age = metadata.modified().ok().and_then(|time| SystemTime::now().duration_since(time).ok());
        self.is_fresh |= age.is_none_or(|age| age < COARSE);
        self.folders.insert(folder.to_owned(), Stamp::of(&metadata));
        for entry in fs::read_dir(folder)? {
            let entry = entry?;
            let (path, name) = (entry.path(), entry.file_name());
            if name.as_encoded_bytes().starts_with(b".") {
                continue;
            }
            // What goes away between the list and the look was a file on its way.
            let Ok(metadata) = entry.metadata() else { continue };
            if metadata.is_dir() {
                // One folder that cannot be read does not hide the others; links are not followed, so it ends.
                let _ = self.add(&path);
            } else if metadata.is_file() && is_named_picture(&path) {
                self.files.push((path, Stamp::of(&metadata)));
            }
        }
        Ok(())
    }
}

fn is_named_picture(path: &Path) -> bool {
    path.extension().is_some_and(|end| PICTURE_ENDINGS.iter().any(|known| end.eq_ignore_ascii_case(known)))
}
