//! Files that are damaged, not ours, newer than the program, or cannot be brought up to date.

use std::fs;
use std::path::{Path, PathBuf};

use benchwright::record::Kind;
use benchwright::rules::Rules;
use benchwright::store::{APPLICATION_ID, Store, StoreError, VERSION, check};
use rusqlite::Connection;
use tempfile::TempDir;

use crate::invent::Chance;
use crate::support::{fresh, is_whole, part, put};

/// A closed logbook with a hundred parts: its folder and its database.
fn filled() -> (TempDir, PathBuf, PathBuf) {
    let (folder, store) = fresh();
    let mut chance = Chance(5);
    let mut change = benchwright::record::Change::new("Log");
    for number in 0..100 {
        change.put_all(chance.part(&format!("{number:03}")));
    }
    store.write(change).unwrap();
    let path = store.folder().to_owned();
    drop(store);
    let database = path.join("logbook.sqlite");
    (folder, path, database)
}

fn refused(path: &Path) -> StoreError {
    let (writing, reading) = (Store::open(path).err(), Store::open_reading(path).err());
    let (writing, reading) = (writing.expect("opened for writing"), reading.expect("opened for reading"));
    assert_eq!(std::mem::discriminant(&writing), std::mem::discriminant(&reading), "{writing} / {reading}");
    let text = writing.to_string();
    assert!(text.contains(&path.display().to_string()), "the path is missing: {text}");
    writing
}

/// A database made by `sql` in place of a logbook's, refused and left as it was, byte by byte.
fn refused_untouched(sql: &str) -> StoreError {
    let folder = tempfile::tempdir().unwrap();
    let database = folder.path().join("logbook.sqlite");
    Connection::open(&database).unwrap().execute_batch(sql).unwrap();
    let before = fs::read(&database).unwrap();
    let error = refused(folder.path());
    assert_eq!(fs::read(&database).unwrap(), before);
    error
}

#[test]
fn another_programs_file_is_refused_untouched() {
    let sql = "CREATE TABLE part (id); PRAGMA application_id = 77; PRAGMA user_version = 1;";
    assert!(matches!(refused_untouched(sql), StoreError::Foreign { .. }));
    assert!(matches!(refused_untouched("CREATE TABLE part (id);"), StoreError::Foreign { .. }));
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("letter.txt");
    fs::write(&file, "Dear Ida").unwrap();
    assert!(matches!(refused(&file), StoreError::Foreign { .. }));
    assert!(matches!(refused(&folder.path().join("gone")), StoreError::Absent { .. }));
    assert!(matches!(refused(folder.path()), StoreError::Absent { .. }));
}

#[test]
fn a_newer_logbook_is_refused_untouched() {
    let newer = VERSION + 1;
    let sql =
        format!("CREATE TABLE part (id); PRAGMA application_id = {APPLICATION_ID}; PRAGMA user_version = {newer};");
    let error = refused_untouched(&sql);
    let StoreError::Newer { found, known, .. } = error else { panic!("{error}") };
    assert_eq!((found, known), (newer, VERSION));
}

#[test]
fn a_failed_migration_leaves_the_file_as_it_was_and_a_backup_beside_it() {
    let folder = tempfile::tempdir().unwrap();
    let database = folder.path().join("logbook.sqlite");
    // A form before the first, in which a table of the first form stands in the way.
    let sql = format!(
        "PRAGMA application_id = {APPLICATION_ID}; CREATE TABLE machine (keep); INSERT INTO machine VALUES (7);"
    );
    Connection::open(&database).unwrap().execute_batch(&sql).unwrap();
    let before = fs::read(&database).unwrap();
    let error = Store::open(folder.path()).err().unwrap();
    assert!(matches!(error, StoreError::Migration { .. }), "{error}");
    assert_eq!(fs::read(&database).unwrap(), before);
    assert!(matches!(Store::open_reading(folder.path()), Err(StoreError::Older { .. })));
    let backups: Vec<_> =
        fs::read_dir(folder.path().join("backups")).unwrap().map(|entry| entry.unwrap().path()).collect();
    let [backup] = &backups[..] else { panic!("{backups:?}") };
    let kept: i64 =
        Connection::open(backup).unwrap().query_row("SELECT keep FROM machine", [], |row| row.get(0)).unwrap();
    assert_eq!(kept, 7);
}

#[test]
fn a_damaged_file_is_named_as_such() {
    let (_folder, path, database) = filled();
    let whole = fs::read(&database).unwrap();
    let mut overwritten = whole.clone();
    overwritten[..64].fill(b'x');
    fs::write(&database, &overwritten).unwrap();
    let error = refused(&path);
    assert!(matches!(error, StoreError::Damaged { .. }) && error.to_string().contains("backups"), "{error}");
    fs::write(&database, &whole[..whole.len() / 3]).unwrap();
    assert!(matches!(refused(&path), StoreError::Damaged { .. }));
    assert!(!is_whole(&check(&path, &Rules::shipped()).unwrap()));
}

#[test]
fn whatever_bytes_are_wrong_the_logbook_opens_or_says_what_is_wrong() {
    let (_folder, path, database) = filled();
    let whole = fs::read(&database).unwrap();
    let mut chance = Chance(11);
    let (mut refusals, mut found) = (0, 0);
    for _ in 0..40 {
        let mut bytes = whole.clone();
        for _ in 0..20 {
            let at = 100 + chance.below(bytes.len() - 132);
            let length = 1 + chance.below(32);
            bytes[at..at + length].fill(chance.below(256) as u8);
        }
        fs::write(&database, &bytes).unwrap();
        match Store::open_reading(&path) {
            Ok(store) => assert_eq!(store.logbook().workshop.name, "Old school workshop"),
            Err(
                StoreError::Damaged { .. }
                | StoreError::BadRow { .. }
                | StoreError::Foreign { .. }
                | StoreError::Newer { .. }
                | StoreError::Older { .. },
            ) => refusals += 1,
            Err(other) => panic!("{other:?}"),
        }
        found +=
            usize::from(!check(&path, &Rules::shipped()).is_ok_and(|report| is_whole(&report) && report.records > 500));
    }
    assert!(refusals > 10 && found >= refusals, "{refusals} refusals, {found} found by the check");
}

#[test]
fn a_backup_is_a_whole_logbook_of_its_moment() {
    let (_folder, store) = fresh();
    put(&store, "Log", part("1", Kind::Fan)).unwrap();
    let backup = store.backup().unwrap();
    assert_eq!(backup.parent().unwrap(), store.folder().join("backups"));
    put(&store, "Log", part("2", Kind::Fan)).unwrap();
    let path = store.folder().to_owned();
    drop(store);
    // Put back as the message about damage says.
    fs::remove_file(path.join("logbook.sqlite")).unwrap();
    fs::copy(&backup, path.join("logbook.sqlite")).unwrap();
    let store = Store::open(&path).unwrap();
    assert_eq!(store.logbook().parts.len(), 1);
    assert_eq!(store.undo_now().unwrap().parts.len(), 0);
}
