//! Why a rule table was refused: file, line and reason.

use std::fmt;
use std::sync::Arc;

use super::plain::plain;

/// A rule table that cannot be used; nothing of it is taken over.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, thiserror::Error)]
#[error("{file}, line {line}: {reason}")]
pub struct TableError {
    /// The table's file name as given to the loader.
    pub file: String,
    /// Line the fault stands on, from 1.
    pub line: usize,
    /// What is wrong, in a sentence that names the entry.
    pub reason: String,
}

impl TableError {
    /// A fault at byte `offset` of `text`; offsets past the end mean the last line.
    pub fn at(file: &str, text: &str, offset: usize, reason: impl Into<String>) -> Self {
        let before = text.as_bytes().iter().take(offset);
        let line = 1 + before.filter(|byte| **byte == b'\n').count();
        Self { file: file.to_owned(), line, reason: reason.into() }
    }

    /// A fault that the TOML reader found itself.
    pub fn toml(file: &str, text: &str, error: &toml::de::Error) -> Self {
        let offset = error.span().map_or(0, |span| span.start);
        Self::at(file, text, offset, plain(error.message()))
    }
}

/// Everything that was found wrong, by file and line.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub struct TableErrors(pub Vec<TableError>);

impl fmt::Display for TableErrors {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (index, error) in self.0.iter().enumerate() {
            if index > 0 {
                writeln!(f)?;
            }
            write!(f, "{error}")?;
        }
        Ok(())
    }
}

/// Where a row stands: its file and the byte that it begins at.
#[derive(Clone, Debug)]
pub(super) struct At {
    pub file: Arc<str>,
    pub text: Arc<str>,
    pub offset: usize,
}

impl At {
    /// A fault of the whole row.
    pub fn error(&self, reason: impl Into<String>) -> TableError {
        TableError::at(&self.file, &self.text, self.offset, reason)
    }

    /// A fault of a word that stands in the row: on its line, as near as the text tells.
    pub fn error_at(&self, word: &str, reason: impl Into<String>) -> TableError {
        self.from(word).error(reason)
    }

    /// The row from a word on that stands in it.
    pub fn from(&self, word: &str) -> Self {
        let further = self.text.get(self.offset..).and_then(|row| row.find(&format!("\"{word}\"")));
        Self { offset: self.offset + further.unwrap_or(0), ..self.clone() }
    }
}
