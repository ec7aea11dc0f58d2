//! What can go wrong with a logbook's files, each with what to do about it; paths stand last.

use std::path::PathBuf;

use super::refusal::Refusal;
use super::row::Unreadable;
use super::unknown::UnknownList;
use crate::record::EntryKind;
use crate::{record::Word as _, text};

/// Why a logbook could not be opened, read or written.
#[derive(Debug, thiserror::Error)]
pub enum StoreError {
    #[error("{}", text!("There is something at this place already; choose another name: {path}", path = .path.display()))]
    Exists { path: PathBuf },

    #[error("{}", text!("There is no logbook here; choose the folder that holds logbook.sqlite: {path}", path = .path.display()))]
    Absent { path: PathBuf },

    #[error("{}", text!("This file belongs to another program and was left untouched: {path}", path = .path.display()))]
    Foreign { path: PathBuf },

    #[error("{}", text!("The logbook's file is damaged ({reason}); keep it, and open a copy from the backups folder beside it: {path}", reason = .reason, path = .path.display()))]
    Damaged { reason: String, path: PathBuf },

    #[error("{}", text!("This logbook was written by a newer Benchwright (form {found}, this program knows {known}) and was left untouched; update the program: {path}", found = .found, known = .known, path = .path.display()))]
    Newer { found: u32, known: u32, path: PathBuf },

    #[error("{}", text!("This logbook is of an older form; open it once for writing, which brings it up to date: {path}", path = .path.display()))]
    Older { path: PathBuf },

    #[error("{}", text!("The logbook could not be brought up to date ({reason}) and is as it was before: {path}", reason = .reason, path = .path.display()))]
    Migration { reason: String, path: PathBuf },

    #[error("{}", text!("The logbook is open for writing elsewhere ({holder}); close it there first: {path}", holder = .holder, path = .path.display()))]
    Held { holder: String, path: PathBuf },

    #[error("{}", text!("The folder or file is write-protected; give yourself the right to write there or copy the logbook elsewhere: {path}", path = .path.display()))]
    WriteProtected { path: PathBuf },

    #[error("{}", text!("The disk is full; nothing was changed. Make room and try again: {path}", path = .path.display()))]
    DiskFull { path: PathBuf },

    #[error("{}", text!("{doing} failed ({source}): {path}", doing = .doing, source = .source, path = .path.display()))]
    File { doing: &'static str, source: std::io::Error, path: PathBuf },

    #[error("{}", text!("A file of the logbook is missing; put it back from a backup: {path}", path = .path.display()))]
    FileMissing { path: PathBuf },

    #[error("{}", text!("A row of “{table}” cannot be read ({reason}); look for the cause with the command “check”", table = .kind.name(), reason = .source))]
    BadRow { kind: EntryKind, source: Unreadable },

    #[error(transparent)]
    Refused(#[from] Refusal),

    #[error("{}", text!("The logbook is open for reading only"))]
    ReadingOnly,

    #[error("{}", text!("There is nothing to undo"))]
    NothingToUndo,

    #[error("{}", text!("There is nothing to redo"))]
    NothingToRedo,

    #[error("{}", text!("In the exchange document, {place}: {reason}", place = .place, reason = .reason))]
    BadDocument { place: String, reason: String },

    #[error("{0}")]
    UnknownNames(UnknownList),

    #[error("{}", text!("The logbook's writer has stopped; close the logbook and open it again"))]
    Stopped,

    #[error("{}", text!("The database answered: {error}", error = .0))]
    Database(#[from] rusqlite::Error),
}

impl StoreError {
    /// Whether nothing is wrong with the logbook, only with what was to be written.
    pub fn is_refusal(&self) -> bool {
        matches!(
            self,
            Self::Refused(_)
                | Self::NothingToUndo
                | Self::NothingToRedo
                | Self::BadDocument { .. }
                | Self::UnknownNames(_)
        )
    }

    /// What an error of the file system means.
    pub fn file(doing: &'static str, source: std::io::Error, path: impl Into<PathBuf>) -> Self {
        use std::io::ErrorKind::{PermissionDenied, ReadOnlyFilesystem, StorageFull};
        let path = path.into();
        match source.kind() {
            PermissionDenied | ReadOnlyFilesystem => Self::WriteProtected { path },
            StorageFull => Self::DiskFull { path },
            _ => Self::File { doing, source, path },
        }
    }

    /// What an answer of SQLite means, for the file at `path`.
    #[must_use]
    pub fn about(self, path: &std::path::Path) -> Self {
        use rusqlite::ErrorCode::{CannotOpen, DatabaseCorrupt, DiskFull, NotADatabase, PermissionDenied, ReadOnly};
        let Self::Database(error) = self else { return self };
        let path = path.to_owned();
        match error.sqlite_error_code() {
            Some(DatabaseCorrupt | NotADatabase) => Self::Damaged { reason: error.to_string(), path },
            Some(ReadOnly | PermissionDenied) => Self::WriteProtected { path },
            Some(CannotOpen) if path.exists() => Self::WriteProtected { path },
            Some(CannotOpen) => Self::Absent { path },
            Some(DiskFull) => Self::DiskFull { path },
            _ => Self::Database(error),
        }
    }
}
