//! One writer at a time: a locked file in the logbook's folder that says who holds it.

use std::fs::{File, OpenOptions, TryLockError};
use std::io::{Read as _, Seek as _, Write as _};
use std::path::Path;

use super::error::StoreError;
use crate::text;

/// Held as long as a logbook is open for writing; the system lets it go when the program ends, however it ends.
#[derive(Debug)]
pub struct WriterLock {
    _file: File,
}

impl WriterLock {
    /// Takes the lock of the logbook in `folder`.
    pub fn take(folder: &Path) -> Result<Self, StoreError> {
        let path = folder.join("writer.lock");
        let failed = |error| StoreError::file("Opening the lock file", error, &path);
        let mut file =
            OpenOptions::new().read(true).write(true).create(true).truncate(false).open(&path).map_err(failed)?;
        match file.try_lock() {
            Ok(()) => {}
            Err(TryLockError::WouldBlock) => {
                let mut holder = String::new();
                let told = file.read_to_string(&mut holder).is_ok() && !holder.trim().is_empty();
                let holder = if told { holder.trim().to_owned() } else { text!("by another program").to_owned() };
                return Err(StoreError::Held { holder, path: folder.to_owned() });
            }
            Err(TryLockError::Error(error)) => return Err(failed(error)),
        }
        let holder = text!(
            "{program}, process {process} on {host}",
            program = env!("CARGO_PKG_NAME"),
            process = std::process::id(),
            host = host()
        );
        file.set_len(0).and_then(|()| file.rewind()).and_then(|()| writeln!(file, "{holder}")).map_err(failed)?;
        Ok(Self { _file: file })
    }
}

/// This computer's name, where the system tells it.
fn host() -> String {
    let told = std::fs::read_to_string("/proc/sys/kernel/hostname")
        .ok()
        .or_else(|| std::env::var("HOSTNAME").ok())
        .or_else(|| std::env::var("COMPUTERNAME").ok());
    told.map(|name| name.trim().to_owned())
        .filter(|name| !name.is_empty())
        .unwrap_or_else(|| "this computer".to_owned())
}
