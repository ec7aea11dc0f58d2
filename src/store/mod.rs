//! Where it is kept: SQLite, photograph files, changes, history and undo, exchange documents.
//!
//! A logbook is a folder: `logbook.sqlite`, `photos/` and `files/` (named by their content's hash), `backups/`. One
//! thread of the [`Store`] owns the writing connection. A [`Change`](crate::record::Change) is written there in one
//! transaction, what it touched is read back from the database, and the next [`Logbook`](crate::record::Logbook) is
//! published. Triggers write every row's old and new image into the history, from which undo and redo work.

mod assemble;
mod authoring;
mod backup;
mod check;
mod connect;
mod consistency;
mod describe;
mod error;
mod exchange;
mod exchange_faults;
mod fields;
mod files;
mod history;
pub mod invent;
mod limits;
mod load;
mod lock;
mod marks;
mod orders;
mod own_tables;
mod refusal;
mod relations;
mod reload;
mod row;
mod rows;
pub mod sample;
mod schema;
#[allow(clippy::module_inception)]
mod store;
mod take;
mod unknown;
mod write;
mod writer;

pub use check::{Area, Report, Trouble, check};
pub use error::StoreError;
pub use exchange::SCHEMA;
pub use files::{FileSource, Kept, hash_of};
pub use own_tables::{OwnTablesError, own_tables};
pub use refusal::Refusal;
pub use row::{Column, Shape};
pub use schema::{APPLICATION_ID, VERSION};
pub use store::{Event, Store};
pub use unknown::{UnknownNames, unknown_in_words};

use crate::record::EntryKind;

/// The columns in which records of a kind are kept, in their order.
pub fn columns(kind: EntryKind) -> &'static [Column] {
    &rows::Table::of_kind(kind).columns
}
