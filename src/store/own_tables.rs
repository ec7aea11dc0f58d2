//! The user's own tables of the trade, read from `rules/` in the configuration folder.

use std::fs;
use std::path::{Path, PathBuf};

/// Why the user's own tables could not be read.
#[derive(Debug, thiserror::Error)]
pub enum OwnTablesError {
    #[error("the folder of own tables cannot be listed ({source}): {}", folder.display())]
    Folder { folder: PathBuf, source: std::io::Error },
    #[error("the own table cannot be read ({source}): {}", file.display())]
    File { file: PathBuf, source: std::io::Error },
}

/// The user's own `*.toml` tables as (file name, content), by name; none when there is no such folder.
/// [`crate::rules::Rules::with_own`] reads and checks them.
///
/// # Errors
/// The folder or file that cannot be read.
pub fn own_tables(config_folder: &Path) -> Result<Vec<(String, String)>, OwnTablesError> {
    let folder = config_folder.join("rules");
    let listed = match fs::read_dir(&folder) {
        Ok(listed) => listed,
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => return Ok(Vec::new()),
        Err(source) => return Err(OwnTablesError::Folder { folder, source }),
    };
    let mut tables = Vec::new();
    for entry in listed {
        let file = match entry {
            Ok(entry) => entry.path(),
            Err(source) => return Err(OwnTablesError::Folder { folder, source }),
        };
        if file.extension().is_none_or(|extension| extension != "toml") {
            continue;
        }
        let name = file.file_name().unwrap_or_default().to_string_lossy().into_owned();
        match fs::read_to_string(&file) {
            Ok(content) => tables.push((name, content)),
            Err(source) => return Err(OwnTablesError::File { file, source }),
        }
    }
    tables.sort();
    Ok(tables)
}
