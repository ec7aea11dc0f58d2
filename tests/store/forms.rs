//! Logbooks of every older form open, keep all they held, and stay as they were where that cannot be.
//!
//! `forms/N.sql` is a logbook as the program of form N wrote it, dumped by SQLite's own shell.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use benchwright::record::{Capacitor, Change, Dielectric, Logbook, MarkUse, Material, PhotoMark};
use benchwright::rules::Rules;
use benchwright::store::{Area, Store, StoreError, Trouble, VERSION, check};
use rusqlite::Connection;
use tempfile::TempDir;

use crate::support::{assert_same, id, put};

const FORMS: [&str; 6] = [
    include_str!("forms/1.sql"),
    include_str!("forms/2.sql"),
    include_str!("forms/3.sql"),
    include_str!("forms/4.sql"),
    include_str!("forms/5.sql"),
    include_str!("forms/6.sql"),
];

/// A logbook of a form in a folder of its own.
fn laid(form: usize) -> (TempDir, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("old.logbook");
    for part in ["photos", "files", "backups"] {
        std::fs::create_dir_all(path.join(part)).unwrap();
    }
    database(&path).execute_batch(FORMS[form - 1]).unwrap();
    (folder, path)
}

fn database(logbook: &Path) -> Connection {
    Connection::open(logbook.join("logbook.sqlite")).unwrap()
}

fn form_of(database: &Connection) -> u32 {
    database.pragma_query_value(None, "user_version", |row| row.get(0)).unwrap()
}

/// The columns of each table.
type Columns = BTreeMap<String, Vec<String>>;

fn columns(database: &Connection) -> Columns {
    let sql = "SELECT t.name, c.name FROM pragma_table_list t JOIN pragma_table_info(t.name) c
               WHERE t.type = 'table' AND t.name NOT LIKE 'sqlite_%'";
    let mut statement = database.prepare(sql).unwrap();
    let mut columns = Columns::new();
    for pair in statement.query_map([], |row| Ok((row.get(0)?, row.get(1)?))).unwrap() {
        let (table, column): (String, String) = pair.unwrap();
        columns.entry(table).or_default().push(column);
    }
    columns
}

/// Everything that stands in these columns, as SQL would write it.
fn held(database: &Connection, columns: &Columns) -> BTreeMap<String, Vec<String>> {
    let rows = |(table, columns): (&String, &Vec<String>)| {
        let quoted: Vec<String> = columns.iter().map(|column| format!("quote(\"{column}\")")).collect();
        let sql = format!("SELECT {} AS row FROM {table} ORDER BY row", quoted.join(" || ', ' || "));
        let mut statement = database.prepare(&sql).unwrap();
        let rows = statement.query_map([], |row| row.get(0)).unwrap().map(Result::unwrap).collect();
        (table.clone(), rows)
    };
    columns.iter().map(rows).collect()
}

#[test]
fn each_older_form_has_a_logbook_that_is_walked_from() {
    assert_eq!(FORMS.len() as u32, VERSION - 1, "add tests/store/forms/N.sql for the form before the newest");
}

#[test]
fn an_older_logbook_opens_and_keeps_everything_with_a_backup_beside_it() {
    for form in 1..=FORMS.len() {
        let (_folder, path) = laid(form);
        let columns = columns(&database(&path));
        let before = held(&database(&path), &columns);
        assert!(before.values().filter(|rows| !rows.is_empty()).count() > 30, "something of every kind");
        assert_eq!(form_of(&database(&path)) as usize, form);

        let logbook = Store::open(&path).unwrap().logbook();
        assert_eq!(form_of(&database(&path)), VERSION);
        assert_eq!(held(&database(&path), &columns), before);
        assert_eq!(logbook.parts.len(), before["part"].len());
        let marks = logbook.parts.iter().flat_map(|part| &part.photos).map(|file| file.marks.len()).sum::<usize>();
        assert_eq!(marks, before["photo_mark"].len());
        assert_same(&Store::open_reading(&path).unwrap().logbook(), &logbook);
        let troubles = check(&path, &Rules::shipped()).unwrap().troubles;
        // The dump holds no pictures, and names and figures that could be written then; they stay, and are told.
        let could_be = |text: &str| text.contains("bus_clock_mhz” is -") || text.contains("is of the kind");
        let is_told = |of: &Trouble| match of.area {
            Area::Database => false,
            Area::Records => could_be(&of.text),
            _ => true,
        };
        assert!(troubles.iter().all(is_told), "{troubles:?}");

        let backups: Vec<PathBuf> =
            std::fs::read_dir(path.join("backups")).unwrap().map(|entry| entry.unwrap().path()).collect();
        let [backup] = backups.as_slice() else { panic!("{backups:?}") };
        assert!(backup.to_string_lossy().ends_with(&format!("form-{form}.sqlite")), "{backup:?}");
        let backup = Connection::open(backup).unwrap();
        assert_eq!((form_of(&backup) as usize, held(&backup, &columns)), (form, before));
        // Once is enough.
        drop(Store::open(&path).unwrap());
        assert_eq!(std::fs::read_dir(path.join("backups")).unwrap().count(), 1);
    }
}

#[test]
fn what_was_done_in_an_older_form_is_undone_and_redone_in_the_newer() {
    let (_folder, path) = laid(1);
    let store = Store::open(&path).unwrap();
    let opened = store.logbook();
    let line = |store: &Store| {
        let logbook = store.logbook();
        let marks: Vec<PhotoMark> =
            logbook.parts.iter().flat_map(|part| &part.photos).flat_map(|file| file.marks.clone()).collect();
        marks.into_iter().find(|mark| mark.note == "a line")
    };
    let is_captioned = |store: &Store| store.logbook().photos().any(|photo| photo.caption == "The corner by the cell");
    assert_eq!((line(&store), is_captioned(&store)), (None, true));
    assert_eq!(store.undo_name().as_deref(), Some("Take a mark off"));
    store.undo_now().unwrap();
    let back = line(&store).unwrap();
    assert_eq!((back.role, back.points), (MarkUse::Place, vec![[0.25, 0.5], [0.75, 0.5]]));
    store.undo_now().unwrap();
    assert!(!is_captioned(&store));
    store.redo_now().unwrap();
    assert_same(&store.redo_now().unwrap(), &opened);
}

/// Tables whose bounds were widened are laid anew: what they held is still undone, and the new word is taken.
#[test]
fn bipolar_electrolytics_are_kept_in_a_logbook_of_an_older_form() {
    let (_folder, path) = laid(6);
    let store = Store::open(&path).unwrap();
    let before = store.logbook();
    let held = before.parts.iter().flat_map(|part| &part.capacitors).next().unwrap().position.clone();
    let bipolar = Capacitor { dielectric: Dielectric::BipolarAluminium, ..held };
    let stocked = Material { dielectric: Some(Dielectric::BipolarAluminium), ..Material::new(id(), "10 µF NP") };
    let mut change = Change::new("Bipolar");
    change.put(bipolar.clone()).put(stocked.clone());
    let after = store.write(change).unwrap();
    let position = |logbook: &Logbook| {
        let mut all = logbook.parts.iter().flat_map(|part| &part.capacitors);
        all.find(|one| one.position.id == bipolar.id).unwrap().position.clone()
    };
    assert_eq!(position(&after), bipolar);
    assert!(after.materials.iter().any(|one| **one == stocked));
    assert_same(&store.undo_now().unwrap(), &before);
    assert_same(&store.redo_now().unwrap(), &after);
    drop(store);
    assert_same(&Store::open(&path).unwrap().logbook(), &after);
}

#[test]
fn what_the_newer_form_adds_has_its_history_too() {
    let (_folder, path) = laid(1);
    let store = Store::open(&path).unwrap();
    let before = store.logbook();
    let mut photo = before.photos().next().unwrap().clone();
    photo.is_map = true;
    let scale = PhotoMark {
        length_mm: Some(25.4),
        ..PhotoMark::new(id(), photo.id, MarkUse::Scale, vec![[0.0, 0.0], [1.0, 0.0]])
    };
    let mut change = Change::new("Map");
    change.put(photo).put(scale.clone());
    let after = store.write(change).unwrap();
    put(&store, "Longer", PhotoMark { length_mm: Some(30.0), ..scale }).unwrap();
    assert_same(&store.undo_now().unwrap(), &after);
    assert_same(&store.undo_now().unwrap(), &before);
}

#[test]
fn an_older_logbook_that_cannot_be_brought_up_to_date_stays_as_it_was() {
    let (_folder, path) = laid(1);
    database(&path).execute_batch("ALTER TABLE photo ADD COLUMN is_map TEXT").unwrap();
    let columns = columns(&database(&path));
    let before = held(&database(&path), &columns);
    let Err(error) = Store::open(&path) else { panic!("opened") };
    let StoreError::Migration { reason, .. } = &error else { panic!("{error}") };
    assert!(reason.contains("is_map") && error.to_string().contains(&path.display().to_string()), "{error}");
    assert_eq!((form_of(&database(&path)), held(&database(&path), &columns)), (1, before));
}

#[test]
fn reading_alone_leaves_an_older_logbook_untouched_and_says_what_to_do() {
    let (_folder, path) = laid(1);
    let Err(error) = Store::open_reading(&path) else { panic!("opened") };
    assert!(matches!(error, StoreError::Older { .. }) && error.to_string().contains("open it once"), "{error}");
    assert_eq!(form_of(&database(&path)), 1);
}
