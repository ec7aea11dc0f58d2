//! Why a rule table was refused: file, line and reason.

/// A rule table that cannot be used; nothing of it is taken over.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
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
        Self::at(file, text, offset, error.message())
    }
}
