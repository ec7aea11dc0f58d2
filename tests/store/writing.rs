//! Changes are written whole, numbered, published, and there again after a restart.

use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::{Duration, Instant};

use benchwright::record::{Change, FindingState, Kind};
use benchwright::store::{Event, Refusal, Store, StoreError};

use crate::support::{assert_same, finding, fresh, look, part, place, put, workshop};

#[test]
fn a_part_with_what_hangs_on_it_is_there_again_after_a_restart() {
    let (_folder, store) = fresh();
    let cellar = place("Cellar", None);
    let shelf = place("Shelf 2", Some(cellar.id));
    let mut board = part("0042", Kind::Mainboard);
    board.place = Some(shelf.id);
    board.price_cents = Some(-250);
    let leak = finding(board.id);
    let mut change = Change::new("Log part 0042");
    change.put(cellar).put(shelf.clone()).put(board.clone()).put(leak.clone());
    change.put(look(leak.id, "2024-02-29", FindingState::Open)).put(look(leak.id, "2024-03", FindingState::Cured));
    let logbook = store.write(change).unwrap();
    let file = logbook.part_tagged("0042").unwrap();
    assert_eq!(file.part, board);
    assert_eq!(logbook.place_path(shelf.id), "Cellar / Shelf 2");
    assert_eq!(file.findings[0].state(), FindingState::Cured);
    assert_eq!(file.findings[0].looks.iter().map(|look| look.looked.sequence).collect::<Vec<_>>(), [1, 2]);

    let folder = store.folder().to_owned();
    drop(store);
    let again = Store::open(&folder).unwrap();
    assert_same(&again.logbook(), &logbook);
    assert_eq!(again.logbook().revision, logbook.revision);
}

#[test]
fn moments_are_numbered_on_after_a_restart_and_an_undo() {
    let (_folder, store) = fresh();
    let board = part("1", Kind::Mainboard);
    let leak = finding(board.id);
    let mut change = Change::new("Log");
    change.put(board).put(leak.clone()).put(look(leak.id, "2024", FindingState::Open));
    store.write(change).unwrap();
    put(&store, "Look", look(leak.id, "2024", FindingState::Watched)).unwrap();
    store.undo_now().unwrap();
    let folder = store.folder().to_owned();
    drop(store);
    let store = Store::open(&folder).unwrap();
    put(&store, "Look", look(leak.id, "2024", FindingState::Cured)).unwrap();
    let logbook = store.logbook();
    let looks = &logbook.parts[0].findings[0].looks;
    assert_eq!(looks.iter().map(|look| look.looked.sequence).collect::<Vec<_>>(), [1, 3]);
}

#[test]
fn only_what_a_change_touched_is_replaced_in_the_next_revision() {
    let (_folder, store) = fresh();
    let (one, other) = (part("1", Kind::Fan), part("2", Kind::Fan));
    let mut change = Change::new("Log two fans");
    change.put(one.clone()).put(other.clone());
    let before = store.write(change).unwrap();
    let mut noisy = one.clone();
    noisy.note = "rattles".into();
    put(&store, "Remark", noisy).unwrap();
    let after = store.logbook();
    assert!(Arc::ptr_eq(before.part(other.id).unwrap(), after.part(other.id).unwrap()));
    assert_eq!(before.part(one.id).unwrap().part.note, "");
    assert_eq!(after.part(one.id).unwrap().part.note, "rattles");
    assert_eq!(after.revision, before.revision + 1);
}

#[test]
fn a_change_that_differs_in_nothing_makes_no_revision() {
    let (_folder, store) = fresh();
    let fan = part("1", Kind::Fan);
    put(&store, "Log", fan.clone()).unwrap();
    let before = store.logbook();
    put(&store, "Log again", fan).unwrap();
    assert!(Arc::ptr_eq(&before, &store.logbook()));
    assert_eq!(store.undo_name().as_deref(), Some("Log"));
}

#[test]
fn a_refused_change_leaves_nothing_of_itself() {
    let (_folder, store) = fresh();
    put(&store, "Log", part("0042", Kind::Fan)).unwrap();
    let before = store.logbook();
    let mut change = Change::new("Log two");
    change.put(part("0043", Kind::Fan)).put(part("0042", Kind::Cooler));
    let error = store.write(change).unwrap_err();
    assert!(matches!(&error, StoreError::Refused(Refusal::DoubledTag { tag }) if tag == "0042"), "{error}");
    assert!(Arc::ptr_eq(&before, &store.logbook()));
    let read = Store::open_reading(store.folder()).unwrap();
    assert_same(&read.logbook(), &before);
}

#[test]
fn what_is_sent_comes_back_as_an_event_in_its_order() {
    let (_folder, store) = fresh();
    let calls = Arc::new(AtomicUsize::new(0));
    let counter = Arc::clone(&calls);
    store.on_event(move || {
        counter.fetch_add(1, Ordering::SeqCst);
    });
    let mut change = Change::new("Log 1");
    change.put(part("1", Kind::Fan));
    store.send(change);
    let mut change = Change::new("Log 1 again");
    change.put(part("1", Kind::Fan));
    store.send(change);
    let until = Instant::now() + Duration::from_secs(20);
    while calls.load(Ordering::SeqCst) < 2 && Instant::now() < until {
        std::thread::sleep(Duration::from_millis(2));
    }
    let events = store.take_events();
    let [Event::Published { logbook, name }, Event::Refused { name: refused, error }] = &events[..] else {
        panic!("{events:?}")
    };
    assert_eq!((name.as_str(), refused.as_str()), ("Log 1", "Log 1 again"));
    assert_eq!(logbook.parts.len(), 1);
    assert!(error.is_refusal());
    assert!(store.take_events().is_empty());
}

#[test]
fn what_is_open_for_reading_sees_the_writers_work_and_writes_nothing() {
    let (_folder, store) = fresh();
    put(&store, "Log", part("1", Kind::Fan)).unwrap();
    let reader = Store::open_reading(store.folder()).unwrap();
    assert_same(&reader.logbook(), &store.logbook());
    let error = put(&reader, "Log", part("2", Kind::Fan)).unwrap_err();
    assert!(matches!(error, StoreError::ReadingOnly));
}

#[test]
fn a_new_logbook_takes_an_empty_folder_but_no_other() {
    let folder = tempfile::tempdir().unwrap();
    let empty = folder.path().join("empty.logbook");
    std::fs::create_dir(&empty).unwrap();
    let store = Store::create(&empty, workshop()).unwrap();
    assert_eq!(store.logbook().workshop.keeper, "Ida Lund");
    drop(store);
    assert!(matches!(Store::create(&empty, workshop()), Err(StoreError::Exists { .. })));
    assert!(matches!(
        Store::create(&folder.path().join("no/such/place"), workshop()).err().unwrap(),
        StoreError::File { .. }
    ));
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 1, "nothing half made is left beside it");
}
