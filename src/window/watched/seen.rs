//! What of a watched folder was dealt with already: files that need not be read again, and pictures by their content.

use std::collections::{BTreeMap, BTreeSet};
use std::fs::{self, Metadata};
use std::path::{Path, PathBuf};
use std::time::UNIX_EPOCH;

use serde::{Deserialize, Serialize};

/// Tells that a file is the one it was.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Stamp {
    pub bytes: u64,
    /// When it was last written, milliseconds since 1970; 0 where the system does not tell.
    pub written_ms: u64,
}

impl Stamp {
    /// The stamp of a file or folder.
    pub fn of(metadata: &Metadata) -> Self {
        let written = metadata.modified().ok().and_then(|time| time.duration_since(UNIX_EPOCH).ok());
        Self { bytes: metadata.len(), written_ms: written.map_or(0, |time| time.as_millis() as u64) }
    }
}

/// What was dealt with.
#[derive(Debug, Default, Serialize, Deserialize)]
pub struct Seen {
    /// The folder that it is about.
    folder: PathBuf,
    files: BTreeMap<PathBuf, Stamp>,
    contents: BTreeSet<String>,
}

impl Seen {
    /// What was seen of a folder, as kept in `file`; `None` when nothing was: it is watched for the first time.
    pub fn load(file: Option<&Path>, folder: &Path) -> Option<Self> {
        let seen: Self = serde_json::from_str(&fs::read_to_string(file?).ok()?).ok()?;
        (seen.folder == folder).then_some(seen)
    }

    /// Nothing seen of a folder but the files that are there.
    pub fn beginning(folder: &Path, files: impl IntoIterator<Item = (PathBuf, Stamp)>) -> Self {
        Self { folder: folder.to_owned(), files: files.into_iter().collect(), contents: BTreeSet::new() }
    }

    /// Keeps it. That it cannot be kept costs no picture: some would be offered again.
    pub fn keep(&self, file: Option<&Path>) {
        if let (Some(file), Ok(json)) = (file, serde_json::to_string(self)) {
            let beside = file.with_extension("part");
            let folder = file.parent().unwrap_or(file);
            let _ = fs::create_dir_all(folder)
                .and_then(|()| fs::write(&beside, json))
                .and_then(|()| fs::rename(&beside, file));
        }
    }

    /// Whether a file is one that was there before, or was dealt with.
    pub fn has_file(&self, path: &Path, stamp: Stamp) -> bool {
        self.files.get(path) == Some(&stamp)
    }

    /// Whether a picture was dealt with, under whatever name.
    pub fn has_content(&self, content: &str) -> bool {
        self.contents.contains(content)
    }

    /// Notes that a file was dealt with.
    pub fn add(&mut self, path: PathBuf, stamp: Stamp, content: String) {
        self.files.insert(path, stamp);
        self.contents.insert(content);
    }
}
