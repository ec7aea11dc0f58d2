//! What is half typed stands outside the history and is offered again after a restart.

use benchwright::store::Store;

use crate::support::fresh;

#[test]
fn a_draft_survives_a_restart_until_it_is_dropped() {
    let (_folder, store) = fresh();
    let revision = store.logbook().revision;
    assert_eq!(store.draft("intake"), None);
    store.save_draft("intake", r#"{"tag": "00"}"#);
    store.save_draft("intake", r#"{"tag": "0042"}"#);
    store.save_draft("bench", "{}");
    assert_eq!(store.draft("intake").as_deref(), Some(r#"{"tag": "0042"}"#));
    let folder = store.folder().to_owned();
    drop(store);
    let store = Store::open(&folder).unwrap();
    assert_eq!(store.draft("intake").as_deref(), Some(r#"{"tag": "0042"}"#));
    assert_eq!(store.logbook().revision, revision);
    assert_eq!(store.undo_name(), None);
    store.drop_draft("intake");
    drop(store);
    let store = Store::open(&folder).unwrap();
    assert_eq!((store.draft("intake"), store.draft("bench").as_deref()), (None, Some("{}")));
}
