//! A disk that fills up: the change is refused, what was there stays, and writing goes on once there is room.

use std::path::Path;
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
    let script = r#""$1" new "$2/w.logbook" || exit 78
        "$1" import --keep-unknown "$2/w.logbook" "$3"; echo "left $?"
        "$1" check "$2/w.logbook""#;
    let Some((said, errors)) = on_small_disk(folder.path(), script, &document) else { return };
    assert!(said.contains("left 1") && said.contains("nothing is wrong"), "{said}\n{errors}");
    assert!(errors.contains("disk is full"), "{errors}");
}

#[test]
#[cfg(target_os = "linux")]
fn photographs_that_find_no_room_leave_nothing_behind() {
    let (folder, store) = fresh();
    put(&store, "Log", part("0042", Kind::Fan)).unwrap();
    let document = folder.path().join("document.json");
    std::fs::write(&document, store.export().unwrap()).unwrap();
    // Noise packs badly: 100 kB each, thirty times more than there is room for together with the database.
    for number in 0..30 {
        let mut dice = fastrand::Rng::with_seed(number);
        let noise = image::RgbImage::from_fn(200, 160, |_, _| image::Rgb([dice.u8(..), dice.u8(..), dice.u8(..)]));
        noise.save(folder.path().join(format!("{number:02}.png"))).unwrap();
    }
    let script = r#""$1" new "$2/w.logbook" || exit 78
        "$1" import "$2/w.logbook" "$3" || exit 79
        "$1" photos "$2/w.logbook" add 0042 "$2"/../*.png; echo "left $?"
        "$1" photos "$2/w.logbook" list 0042
        ls "$2/w.logbook/photos" | wc -l
        "$1" check "$2/w.logbook""#;
    let Some((said, errors)) = on_small_disk(folder.path(), script, &document) else { return };
    assert!(said.contains("left 1") && format!("{said}{errors}").contains("disk is full"), "{said}\n{errors}");
    assert!(said.contains("nothing is wrong") && !said.contains("no record names"), "{said}\n{errors}");
    let count = |end: &str| -> Option<u32> {
        said.lines().find_map(|line| line.strip_suffix(end)).and_then(|count| count.trim().parse().ok())
    };
    let listed = count(" photographs").or_else(|| count(" photograph")).unwrap();
    let files = said.lines().find_map(|line| line.trim().parse::<u32>().ok()).unwrap();
    assert_eq!(listed, files, "a file for every record and no other: {said}\n{errors}");
    assert!(listed < 30);
}

/// What a script says, with the program, a folder on a file system of 1 MB and a document as arguments, on stdout and
/// stderr; `None` where this user may not mount one.
#[cfg(target_os = "linux")]
fn on_small_disk(folder: &Path, script: &str, document: &Path) -> Option<(String, String)> {
    let small = folder.join("small");
    std::fs::create_dir(&small).unwrap();
    // In a mount namespace of its own, so that nothing outside sees the small file system.
    let script = format!("mount -t tmpfs -o size=1m tmpfs \"$2\" || exit 77\n{script}");
    let program = env!("CARGO_BIN_EXE_benchwright");
    let mut call = Command::new("unshare");
    let output = call.args(["-m", "sh", "-c", &script, "sh", program]).arg(&small).arg(document).output();
    let output = output.inspect_err(|error| eprintln!("unshare: {error}")).ok()?;
    let (said, errors) = (String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr));
    if output.status.code() == Some(77) || errors.contains("unshare failed") {
        eprintln!("not tried: this user may not mount a file system");
        return None;
    }
    Some((said.into_owned(), errors.into_owned()))
}
