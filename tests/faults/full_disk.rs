//! A disk that fills up: the change is refused, what was there stays, and writing goes on once there is room.

use std::process::Command;
use std::sync::Arc;

use benchwright::record::{Change, Kind};
use benchwright::store::{Store, StoreError};

use crate::invent::Chance;
use crate::support::{assert_same, fresh, part, put};

#[test]
fn a_change_that_finds_no_room_changes_nothing() {
    let (_folder, store) = fresh();
    put(&store, "Log", part("1", Kind::Fan)).unwrap();
    let before = store.logbook();
    store.limit_pages(1); // SQLite takes it as: no larger than now.
    let mut chance = Chance(1);
    let mut change = Change::new("Log many");
    for number in 0..200 {
        change.put_all(chance.part(&format!("many {number}")));
    }
    let error = store.write(change.clone()).unwrap_err();
    assert!(matches!(error, StoreError::DiskFull { .. }), "{error}");
    assert!(error.to_string().contains("nothing was changed"));
    assert!(Arc::ptr_eq(&store.logbook(), &before));
    assert_same(&Store::open_reading(store.folder()).unwrap().logbook(), &before);
    store.limit_pages(u32::MAX - 1);
    assert_eq!(store.write(change).unwrap().parts.len(), 201);
}

#[test]
#[cfg(target_os = "linux")]
fn a_file_system_that_is_full_is_named() {
    let (folder, store) = fresh();
    let mut chance = Chance(2);
    let mut change = Change::new("Log many");
    for number in 0..500 {
        change.put_all(chance.part(&format!("many {number}")));
    }
    store.write(change).unwrap();
    let document = folder.path().join("document.json");
    std::fs::write(&document, store.export().unwrap()).unwrap();
    // In a mount namespace of its own, so that nothing outside sees the small file system.
    let small = folder.path().join("small");
    std::fs::create_dir(&small).unwrap();
    let script = r#"mount -t tmpfs -o size=1m tmpfs "$2" || exit 77
        "$1" new "$2/w.logbook" || exit 78
        "$1" import "$2/w.logbook" "$3"; echo "left $?"
        "$1" check "$2/w.logbook""#;
    let program = env!("CARGO_BIN_EXE_benchwright");
    let output =
        Command::new("unshare").args(["-m", "sh", "-c", script, "sh", program]).arg(&small).arg(&document).output();
    let Ok(output) = output.inspect_err(|error| eprintln!("unshare: {error}")) else { return };
    let (said, errors) = (String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr));
    if output.status.code() == Some(77) || errors.contains("unshare failed") {
        eprintln!("not tried: this user may not mount a file system");
        return;
    }
    assert!(said.contains("left 1") && said.contains("nothing is wrong"), "{said}\n{errors}");
    assert!(errors.contains("disk is full"), "{errors}");
}
