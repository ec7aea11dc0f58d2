//! What own work touched, listed and stated on the console.

use benchwright::record::{Change, Kind, Nature, Work, WorkState};
use benchwright::store::Store;

use crate::records::{self, moment};
use crate::{json, list, reason, text};

/// A logbook with a card and its own work: one piece open, two done.
fn logbook() -> (tempfile::TempDir, String) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("trial.logbook");
    let store = Store::create(&path, records::workshop("Trial workshop")).unwrap();
    let card = records::part("0050", Kind::VideoCard, "Sorrel card");
    let own = |title: &str, state: WorkState, day: &str| Work {
        title: title.to_owned(),
        nature: Nature::Repair,
        ..records::work(card.id, state, moment(day))
    };
    let mut change = Change::new("Log a card");
    change.put(card.clone());
    change.put(own("Polish the bracket", WorkState::Open, "2026-03-01"));
    change.put(own("New bracket", WorkState::Done, "2026-03-05"));
    change.put(own("Bridge a cut trace", WorkState::Done, "2026-03-06"));
    store.write(change).unwrap();
    (folder, path.display().to_string())
}

#[test]
fn own_work_is_listed_until_it_says_what_it_touched() {
    let (_folder, path) = logbook();
    let answer = json(&["touched", &path]);
    assert!(answer["stated"].is_null());
    let left: Vec<_> = list(&answer, "left").iter().map(|piece| (piece["number"].as_u64(), &piece["title"])).collect();
    assert_eq!(left, [(Some(2), &"New bracket".into()), (Some(3), &"Bridge a cut trace".into())]);
    let power = |path: &str| text(&["part", path, "0050", "--on", "2026-03-14"]);
    assert!(power(&path).contains("did “New bracket” touch anything electrical? Not stated yet."));
    assert!(power(&path).contains("Polish the bracket [Ready], what it touches is not stated"));

    let said = text(&["touched", &path, "0050", "new bracket", "nothing"]);
    assert!(said.starts_with("0050  New bracket: touches nothing electrical\n1 piece of own work"), "{said}");
    // A number stays that of its piece.
    let said = text(&["touched", &path, "0050", "3", "electrical"]);
    assert_eq!(said.trim(), "0050  Bridge a cut trace: touches something electrical\nAll stated");
    let after = power(&path);
    assert!(after.contains("not looked at or tested since “Bridge a cut trace”."), "{after}");
    assert!(!after.contains("did “New bracket”") && !after.contains("Not stated yet"), "{after}");
    let open = json(&["outstanding", &path]);
    assert_eq!(list(&open, "work")[0]["touches"], "unstated");
}

#[test]
fn what_names_no_single_piece_is_refused_with_what_there_is() {
    let (_folder, path) = logbook();
    for wanted in ["bracket", "Recap", "4", "0"] {
        let told = reason(&["touched", &path, "0050", wanted, "nothing"]);
        assert!(told.contains("1 Polish the bracket; 2 New bracket; 3 Bridge a cut trace"), "{wanted}: {told}");
    }
    assert!(reason(&["touched", &path, "0051", "1", "nothing"]).contains("no part has the tag “0051”"));
    assert_eq!(list(&json(&["touched", &path]), "left").len(), 2, "nothing was written");
}
