//! Photographs and attached files: copied beside the database under their content's hash, whole or not at all.

use std::fs::{self, File};
use std::io::{Read, Write as _};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU32, Ordering};

use sha2::{Digest as _, Sha256};

use super::error::StoreError;

/// Where a file's bytes come from.
#[derive(Clone, Copy, Debug)]
pub enum FileSource<'a> {
    Path(&'a Path),
    Bytes(&'a [u8]),
}

/// A file that the logbook now keeps.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Kept {
    /// SHA-256 of the bytes, in hexadecimal.
    pub content: String,
    pub bytes: u64,
    /// As it ends, in small letters; empty for an attachment.
    pub extension: String,
    /// Whether it was not there before.
    pub is_new: bool,
}

/// The file of a content in a folder of the logbook.
pub fn path(folder: &Path, content: &str, extension: &str) -> PathBuf {
    let mut name = content.to_owned();
    if !extension.is_empty() {
        name.push('.');
        name.push_str(extension);
    }
    folder.join(name)
}

/// Copies a file into `folder`: a temporary file, synced, then renamed. The same content is kept once.
pub fn keep(folder: &Path, source: FileSource<'_>, extension: &str) -> Result<Kept, StoreError> {
    static NUMBER: AtomicU32 = AtomicU32::new(0);
    let extension: String =
        extension.chars().filter(char::is_ascii_alphanumeric).map(|letter| letter.to_ascii_lowercase()).collect();
    fs::create_dir_all(folder).map_err(|error| StoreError::file("Making the folder", error, folder))?;
    let number = NUMBER.fetch_add(1, Ordering::Relaxed);
    let incoming = folder.join(format!("incoming-{}-{number}", std::process::id()));
    let kept = copy(source, &incoming).and_then(|(content, bytes)| {
        let target = path(folder, &content, &extension);
        let is_new = !target.exists();
        fs::rename(&incoming, &target).map_err(|error| StoreError::file("Naming the copy", error, &target))?;
        // The name itself must be on disk too; not every system can open a folder to say so.
        if let Ok(folder) = File::open(folder) {
            let _ = folder.sync_all();
        }
        Ok(Kept { content, bytes, extension, is_new })
    });
    if kept.is_err() {
        let _ = fs::remove_file(&incoming);
    }
    kept
}

fn copy(source: FileSource<'_>, target: &Path) -> Result<(String, u64), StoreError> {
    let writing = |error| StoreError::file("Writing the copy", error, target);
    let mut file = File::create(target).map_err(writing)?;
    let mut hash = Sha256::new();
    let mut bytes = 0;
    let mut add = |block: &[u8]| {
        hash.update(block);
        bytes += block.len() as u64;
        file.write_all(block).map_err(writing)
    };
    match source {
        FileSource::Bytes(all) => add(all)?,
        FileSource::Path(path) => {
            let reading = |error: std::io::Error| match error.kind() {
                std::io::ErrorKind::NotFound => StoreError::FileMissing { path: path.to_owned() },
                _ => StoreError::File { doing: "Reading the file", source: error, path: path.to_owned() },
            };
            let mut source = File::open(path).map_err(reading)?;
            let mut block = vec![0; 1 << 16];
            loop {
                match source.read(&mut block).map_err(reading)? {
                    0 => break,
                    length => add(&block[..length])?,
                }
            }
        }
    }
    file.sync_all().map_err(writing)?;
    Ok((hex(&hash.finalize()), bytes))
}

/// Removes a file again that no record came to name; one that was there before stays.
pub fn forget(folder: &Path, kept: &Kept) {
    if kept.is_new {
        // What cannot be removed is told by a look over the logbook.
        let _ = fs::remove_file(path(folder, &kept.content, &kept.extension));
    }
}

/// The SHA-256 of a file, in hexadecimal.
pub fn hash_of(path: &Path) -> std::io::Result<String> {
    let mut hash = Sha256::new();
    let mut file = File::open(path)?;
    let mut block = vec![0; 1 << 16];
    loop {
        match file.read(&mut block)? {
            0 => return Ok(hex(&hash.finalize())),
            length => hash.update(&block[..length]),
        }
    }
}

/// The SHA-256 of bytes, in hexadecimal.
pub fn hash_of_bytes(bytes: &[u8]) -> String {
    hex(&Sha256::digest(bytes))
}

fn hex(bytes: &[u8]) -> String {
    use std::fmt::Write as _;
    bytes.iter().fold(String::with_capacity(64), |mut text, byte| {
        let _ = write!(text, "{byte:02x}");
        text
    })
}
