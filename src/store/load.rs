//! The whole logbook from its file, read by two connections at once.

use std::path::Path;
use std::sync::Arc;

use rusqlite::{Connection, TransactionBehavior};

use super::assemble::Files;
use super::error::StoreError;
use super::rows::Records;
use super::{connect, schema};
use crate::record::{EntryKind, Logbook, Word as _};

/// Tables of the second reader: about half of a full logbook's rows.
const SECOND: [EntryKind; 4] = [EntryKind::Capacitor, EntryKind::CapacitorLook, EntryKind::Survey, EntryKind::Marking];

/// Reads tables as they stand at one moment; gives back the number of the last change too.
fn read(path: &Path, kinds: impl Iterator<Item = EntryKind>) -> Result<(u64, Records), StoreError> {
    let mut connection = connect::reading(path)?;
    let transaction = connection.transaction_with_behavior(TransactionBehavior::Deferred)?;
    let number = revision(&transaction)?;
    let mut records = Records::default();
    for kind in kinds {
        records.read_table(&transaction, kind)?;
    }
    Ok((number, records))
}

/// The number of the last change.
pub fn revision(connection: &Connection) -> Result<u64, StoreError> {
    let number: i64 = connection.query_row("SELECT coalesce(max(number), 0) FROM change", [], |row| row.get(0))?;
    Ok(number as u64)
}

/// All records of a logbook's database, and the number of its last change.
pub fn records(path: &Path) -> Result<(u64, Records), StoreError> {
    {
        let connection = connect::reading(path).map_err(|error| error.about(path))?;
        if schema::version(&connection, path)? < schema::VERSION {
            return Err(StoreError::Older { path: path.to_owned() });
        }
    }
    // Each reader sees one moment; when a writer came between them they read again.
    loop {
        let rest = EntryKind::ALL.iter().copied().filter(|kind| !SECOND.contains(kind));
        let (first, second) = std::thread::scope(|scope| {
            let second = scope.spawn(|| read(path, SECOND.into_iter()));
            (read(path, rest), second.join().unwrap_or(Err(StoreError::Stopped)))
        });
        let (number, mut records) = first.map_err(|error| error.about(path))?;
        let (other, more) = second.map_err(|error| error.about(path))?;
        if number == other {
            records.join(more);
            return Ok((number, records));
        }
    }
}

/// The whole logbook of a database.
pub fn logbook(path: &Path) -> Result<Logbook, StoreError> {
    let (revision, records) = records(path)?;
    from_files(revision, records.assemble())
        .ok_or_else(|| StoreError::Damaged { reason: crate::text!("no title page").to_owned(), path: path.to_owned() })
}

/// A logbook of freshly filed records; `None` without exactly one title page.
pub fn from_files(revision: u64, files: Files) -> Option<Logbook> {
    let Files { workshops, places, lots, designs, parts, machines, materials, kits } = files;
    let [workshop] = workshops.try_into().ok()?;
    let workshop: Arc<_> = workshop;
    Some(Logbook { revision, workshop, places, lots, designs, parts, machines, materials, kits })
}
