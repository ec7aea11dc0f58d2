//! Copies of the logbook's file in its `backups` folder, made by SQLite's own backup so that they are whole.

use std::path::{Path, PathBuf};
use std::time::Duration;

use rusqlite::Connection;
use rusqlite::backup::Backup;

use super::error::StoreError;

/// Copies the database to `backups/DATE-TIME-REASON.sqlite` (UTC) and gives back the copy's path.
pub fn back_up(connection: &Connection, folder: &Path, reason: &str) -> Result<PathBuf, StoreError> {
    let backups = folder.join("backups");
    std::fs::create_dir_all(&backups).map_err(|error| StoreError::file("Making the folder", error, &backups))?;
    let stamp = chrono::Utc::now().format("%Y-%m-%d-%H%M%S%.3f").to_string().replace('.', "-");
    let path = backups.join(format!("{stamp}-{reason}.sqlite"));
    let copy = || -> Result<(), StoreError> {
        let mut target = Connection::open(&path)?;
        let backup = Backup::new(connection, &mut target)?;
        backup.run_to_completion(4096, Duration::ZERO, None)?;
        Ok(())
    };
    copy().map_err(|error| error.about(&path))?;
    Ok(path)
}
