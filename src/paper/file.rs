//! Files outside the logbook: written whole or not at all.

use std::fs::{self, OpenOptions};
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

/// Writes a file whole or not at all. One that is there already is refused, unless it may be replaced; then it stays as
/// it was until the new one is complete.
pub fn write_whole(bytes: &[u8], path: &Path, may_replace: bool) -> io::Result<()> {
    let mut beside = path.as_os_str().to_owned();
    beside.push(format!(".{}.part", std::process::id()));
    let beside = PathBuf::from(beside);
    let first = if may_replace { &beside } else { path };
    let mut options = OpenOptions::new();
    options.write(true).create_new(!may_replace).create(true).truncate(may_replace);
    options.open(first).and_then(|mut file| {
        let whole = file.write_all(bytes).and_then(|()| file.sync_all());
        let kept = whole.and_then(|()| if may_replace { fs::rename(&beside, path) } else { Ok(()) });
        kept.inspect_err(|_| {
            // Half a file is worse than none.
            let _ = fs::remove_file(first);
        })
    })
}
