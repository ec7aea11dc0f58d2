//! What one act of a person writes: records put and removed under one name, done and undone as a whole.

use super::{Entry, EntryKey};

/// One step of a change.
#[derive(Clone, Debug, PartialEq)]
#[expect(clippy::large_enum_variant, reason = "nearly all steps put an entry")]
pub enum Step {
    /// Writes a record: adds it, or replaces the one of the same key.
    Put(Entry),
    /// Removes a record and nothing else; what hangs on it must be removed by steps of its own, before it.
    Remove(EntryKey),
}

/// An act: it is written whole or not at all, and is undone by one undo.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// What the person did, for the undo menu and the history: "Log part 0042".
    pub name: String,
    pub steps: Vec<Step>,
}

impl Change {
    /// A change without steps yet.
    pub fn new(name: impl Into<String>) -> Self {
        Self { name: name.into(), steps: Vec::new() }
    }

    /// Adds a record to be written.
    pub fn put(&mut self, entry: impl Into<Entry>) -> &mut Self {
        self.steps.push(Step::Put(entry.into()));
        self
    }

    /// Adds several records to be written, in their order.
    pub fn put_all(&mut self, entries: impl IntoIterator<Item = Entry>) -> &mut Self {
        self.steps.extend(entries.into_iter().map(Step::Put));
        self
    }

    /// Adds a record to be removed.
    pub fn remove(&mut self, key: impl Into<EntryKey>) -> &mut Self {
        self.steps.push(Step::Remove(key.into()));
        self
    }

    /// Whether nothing would be written.
    pub fn is_empty(&self) -> bool {
        self.steps.is_empty()
    }
}
