//! Connections to a logbook's file: their settings, and what the file system beneath can carry.

use std::path::{Path, PathBuf};
use std::time::Duration;

use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags};

use super::error::StoreError;

/// The database within a logbook's folder.
pub fn database(folder: &Path) -> PathBuf {
    folder.join("logbook.sqlite")
}

fn set_up(connection: &Connection) -> Result<(), StoreError> {
    connection.set_prepared_statement_cache_capacity(256);
    connection.busy_timeout(Duration::from_secs(5))?;
    connection.pragma_update(None, "foreign_keys", true)?;
    connection.pragma_update(None, "temp_store", "memory")?;
    // Else statements that may use a partial index are prepared anew with every value.
    connection.set_db_config(DbConfig::SQLITE_DBCONFIG_ENABLE_QPSG, true)?;
    // Stored functions and views of a file from elsewhere must not reach beyond it.
    connection.pragma_update(None, "trusted_schema", false)?;
    Ok(())
}

/// A connection that writes; the file must be there unless `create`.
pub fn writing(path: &Path, create: bool) -> Result<Connection, StoreError> {
    let mut flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    flags.set(OpenFlags::SQLITE_OPEN_CREATE, create);
    let connection = Connection::open_with_flags(path, flags).map_err(StoreError::from)?;
    set_up(&connection)?;
    connection.pragma_update(None, "synchronous", "FULL")?;
    // 16 MB: the upper pages of all trees stay at hand while one edit follows another.
    connection.pragma_update(None, "cache_size", -16_000)?;
    Ok(connection)
}

/// A connection that reads. On a medium that cannot be written the write-ahead log's index cannot be made; the file
/// is then read as it stands, which is safe as long as no write-ahead log lies beside it.
pub fn reading(path: &Path) -> Result<Connection, StoreError> {
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let connection = Connection::open_with_flags(path, flags).map_err(StoreError::from)?;
    set_up(&connection)?;
    let Err(error) = connection.query_row("SELECT count(*) FROM sqlite_schema", [], |_| Ok(())) else {
        return Ok(connection);
    };
    let log = path.with_extension("sqlite-wal");
    let logged = log.metadata().is_ok_and(|file| file.len() > 0);
    let cannot = matches!(
        error.sqlite_error_code(),
        Some(rusqlite::ErrorCode::CannotOpen | rusqlite::ErrorCode::ReadOnly | rusqlite::ErrorCode::SystemIoFailure)
    );
    if logged || !cannot {
        return Err(error.into());
    }
    let address = format!("file:{}?immutable=1", escaped(path));
    let connection =
        Connection::open_with_flags(address, flags | OpenFlags::SQLITE_OPEN_URI).map_err(StoreError::from)?;
    set_up(&connection)?;
    Ok(connection)
}

/// A path as SQLite's addresses want it.
fn escaped(path: &Path) -> String {
    path.to_string_lossy().replace('%', "%25").replace('?', "%3f").replace('#', "%23")
}

/// Turns the write-ahead log on where the file system carries it, else keeps the plain journal.
pub fn keep_log(connection: &Connection) -> Result<(), StoreError> {
    let log: Result<String, _> = connection.pragma_update_and_check(None, "journal_mode", "wal", |row| row.get(0));
    let carried = log.is_ok_and(|mode| mode == "wal") && connection.execute_batch("BEGIN IMMEDIATE; COMMIT").is_ok();
    if !carried {
        connection.pragma_update_and_check(None, "journal_mode", "delete", |_| Ok(()))?;
    }
    Ok(())
}

/// An error when some row refers to one that is not there.
pub fn broken_reference(connection: &Connection) -> Result<(), StoreError> {
    let mut statement = connection.prepare("PRAGMA foreign_key_check")?;
    let mut rows = statement.query([])?;
    match rows.next()? {
        None => Ok(()),
        Some(row) => {
            let (table, parent): (String, String) = (row.get(0)?, row.get(2)?);
            Err(super::refusal::Refusal::Constraint { reason: format!("{table} → {parent}") }.into())
        }
    }
}
