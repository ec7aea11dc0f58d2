//! Undo and redo of whole changes, also across a restart, and the history they leave.

use benchwright::record::{Change, FindingState, Kind, Reading};
use benchwright::store::{Store, StoreError};

use crate::invent::Chance;
use crate::records;
use crate::support::{assert_same, finding, fresh, look, machine, moment, part, place, put};

#[test]
fn undo_takes_a_whole_change_back_and_redo_writes_it_again() {
    let (_folder, store) = fresh();
    let start = store.logbook();
    let board = part("1", Kind::Mainboard);
    let leak = finding(board.id);
    let mut change = Change::new("Log part 1");
    change.put(board.clone()).put(leak.clone()).put(look(leak.id, "2024", FindingState::Open));
    let logged = store.write(change).unwrap();
    let mut edited = board.clone();
    edited.serial = "K-7731".into();
    edited.price_cents = Some(1250);
    let changed = {
        put(&store, "Serial", edited).unwrap();
        store.logbook()
    };

    assert_eq!(store.undo_name().as_deref(), Some("Serial"));
    assert_same(&store.undo_now().unwrap(), &logged);
    assert_eq!((store.undo_name().as_deref(), store.redo_name().as_deref()), (Some("Log part 1"), Some("Serial")));
    assert_same(&store.undo_now().unwrap(), &start);
    assert!(matches!(store.undo_now(), Err(StoreError::NothingToUndo)));
    assert_same(&store.redo_now().unwrap(), &logged);
    assert_same(&store.redo_now().unwrap(), &changed);
    assert!(matches!(store.redo_now(), Err(StoreError::NothingToRedo)));
    assert_same(&store.undo_now().unwrap(), &logged);
}

#[test]
fn undo_and_redo_work_across_restarts() {
    let (_folder, store) = fresh();
    put(&store, "Log 1", part("1", Kind::Fan)).unwrap();
    put(&store, "Log 2", part("2", Kind::Fan)).unwrap();
    store.undo_now().unwrap();
    let folder = store.folder().to_owned();
    drop(store);
    let store = Store::open(&folder).unwrap();
    assert_eq!((store.undo_name().as_deref(), store.redo_name().as_deref()), (Some("Log 1"), Some("Log 2")));
    assert_eq!(store.redo_now().unwrap().parts.len(), 2);
    store.undo_now().unwrap();
    drop(store);
    let store = Store::open(&folder).unwrap();
    assert_eq!(store.undo_now().unwrap().parts.len(), 0);
    assert_eq!(store.redo_name().as_deref(), Some("Log 1"));
}

#[test]
fn a_new_change_after_an_undo_leaves_nothing_to_redo() {
    let (_folder, store) = fresh();
    put(&store, "Log 1", part("1", Kind::Fan)).unwrap();
    store.undo_now().unwrap();
    put(&store, "Log 2", part("2", Kind::Fan)).unwrap();
    assert_eq!(store.redo_name(), None);
    assert!(matches!(store.redo_now(), Err(StoreError::NothingToRedo)));
}

#[test]
fn undo_brings_back_what_was_removed_with_every_figure_as_it_was() {
    let (_folder, store) = fresh();
    let board = part("1", Kind::Mainboard);
    let leak = finding(board.id);
    // Figures whose shortest decimal form is long: what is read back must be the very same.
    let mut first = look(leak.id, "1999-12-31", FindingState::Open);
    first.share_percent = Some(0.1 + 0.2);
    let mut second = look(leak.id, "2001", FindingState::Cured);
    second.share_percent = Some(100.0 / 3.0);
    let mut change = Change::new("Log");
    change.put(board.clone()).put(leak.clone()).put(first.clone()).put(second.clone());
    let before = store.write(change).unwrap();
    let mut removal = Change::new("Remove part 1");
    removal.remove(first.id).remove(second.id).remove(leak.id).remove(board.id);
    assert!(store.write(removal).unwrap().parts.is_empty());
    assert_same(&store.undo_now().unwrap(), &before);
    assert_same(&Store::open_reading(store.folder()).unwrap().logbook(), &before);
}

#[test]
fn a_figure_comes_back_from_the_history_bit_for_bit() {
    let (_folder, store) = fresh();
    let board = part("1", Kind::Mainboard);
    put(&store, "Log", board.clone()).unwrap();
    let mut chance = Chance(20);
    let mut readings: Vec<Reading> = Vec::new();
    while readings.len() < 3000 {
        let value = f64::from_bits(chance.next());
        if value.is_finite() && value.abs() < 1e12 {
            readings.push(records::reading(board.id, moment("2024"), "rail", value, "V"));
        }
    }
    let (mut change, mut removal) = (Change::new("Measure"), Change::new("Remove"));
    for reading in &readings {
        change.put(reading.clone());
        removal.remove(reading.id);
    }
    store.write(change).unwrap();
    store.write(removal).unwrap();
    let logbook = store.undo_now().unwrap();
    let bits = |readings: &[Reading]| readings.iter().map(|one| (one.id, one.value.to_bits())).collect::<Vec<_>>();
    let mut back = logbook.parts[0].readings.clone();
    back.sort_by_key(|one| one.id);
    assert_eq!(bits(&back), bits(&readings));
}

#[test]
fn the_history_can_be_read_by_people() {
    let (_folder, store) = fresh();
    let mut box_four = place("Box 4", None);
    put(&store, "New place", box_four.clone()).unwrap();
    box_four.name = "Box 5".into();
    put(&store, "Rename place", box_four.clone()).unwrap();
    put(&store, "New machine", machine("Front desk")).unwrap();
    let database = rusqlite::Connection::open(store.folder().join("logbook.sqlite")).unwrap();
    let (name, record, old, new): (String, String, String, String) = database
        .query_row(
            "SELECT change.name, record, old ->> 'name', new ->> 'name' FROM history JOIN change ON change = number
             WHERE old IS NOT NULL",
            [],
            |row| Ok((row.get(0)?, row.get(1)?, row.get(2)?, row.get(3)?)),
        )
        .unwrap();
    assert_eq!([name, record, old, new], ["Rename place", "place", "Box 4", "Box 5"]);
    let names: Vec<String> = database
        .prepare("SELECT name FROM change ORDER BY number")
        .unwrap()
        .query_map([], |row| row.get(0))
        .unwrap()
        .map(Result::unwrap)
        .collect();
    assert_eq!(names, ["New logbook", "New place", "Rename place", "New machine"]);
}
