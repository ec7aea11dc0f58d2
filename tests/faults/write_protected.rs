//! A logbook on a medium or in a folder that cannot be written: it can be read, and what would write says why not.
#![cfg(target_os = "linux")]

use std::fs;
use std::os::unix::fs::PermissionsExt as _;
use std::path::Path;
use std::process::{Command, Output};

use benchwright::record::Kind;

use crate::support::{fresh, part, put};

fn protect(path: &Path, mode: u32) {
    fs::set_permissions(path, fs::Permissions::from_mode(mode)).unwrap();
}

/// Runs the program as a user whom permissions bind; `None` where that cannot be done.
fn as_nobody(arguments: &[&Path]) -> Option<Output> {
    let program = env!("CARGO_BIN_EXE_benchwright");
    let is_root = Command::new("id").arg("-u").output().is_ok_and(|output| output.stdout.trim_ascii() == b"0");
    if !is_root {
        return Some(Command::new(program).args(arguments).output().unwrap());
    }
    let user = ["--reuid=65534", "--regid=65534", "--clear-groups"];
    let output = Command::new("setpriv").args(user).arg(program).args(arguments).output().ok()?;
    // Where another user cannot even start the program there is nothing to see.
    (!String::from_utf8_lossy(&output.stderr).contains("setpriv:")).then_some(output)
}

#[test]
fn a_write_protected_logbook_is_read_and_not_written() {
    let (folder, store) = fresh();
    put(&store, "Log", part("0042", Kind::Fan)).unwrap();
    let path = store.folder().to_owned();
    let document = folder.path().join("document.json");
    fs::write(&document, store.export().unwrap()).unwrap();
    drop(store);
    protect(folder.path(), 0o755);
    for entry in fs::read_dir(&path).unwrap() {
        let entry = entry.unwrap().path();
        protect(&entry, if entry.is_dir() { 0o555 } else { 0o444 });
    }
    protect(&path, 0o555);
    let database = fs::read(path.join("logbook.sqlite")).unwrap();

    let read = as_nobody(&[Path::new("export"), &path, Path::new("-")]);
    let Some(read) = read else { return eprintln!("not tried: no other user to try it as") };
    assert!(read.status.success(), "{}", String::from_utf8_lossy(&read.stderr));
    assert!(String::from_utf8_lossy(&read.stdout).contains("\"0042\""));
    let beside = path.with_file_name("beside.logbook");
    for attempt in [
        [Path::new("import"), &path, &document],
        [Path::new("new"), &path.join("inner.logbook"), Path::new("--keeper=I")],
    ] {
        let output = as_nobody(&attempt).unwrap();
        let text = String::from_utf8_lossy(&output.stderr).into_owned();
        assert_eq!(output.status.code(), Some(1), "{text}");
        assert!(text.contains("write-protected") && text.trim_end().contains("w.logbook"), "{text}");
    }
    assert!(!beside.exists());
    assert_eq!(fs::read(path.join("logbook.sqlite")).unwrap(), database);
    protect(&path, 0o755);
    for folder in ["photos", "files", "backups"] {
        protect(&path.join(folder), 0o755);
    }
}
