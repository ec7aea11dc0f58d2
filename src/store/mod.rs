//! Where it is kept: SQLite, photograph files, changes, history and undo, exchange documents.

mod own_tables;

pub use own_tables::{OwnTablesError, own_tables};
