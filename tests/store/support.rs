//! Logbooks in temporary folders, and records to put into them.

use benchwright::record::{
    Change, CustodyAct, CustodyEvent, Finding, FindingId, FindingState, Fitting, Hold, Id, Kind, Logbook, Look,
    Machine, MachineId, Nature, Part, PartId, Severity, Work, WorkState, Workshop,
};
use benchwright::store::{Area, Report, Store, StoreError};
use tempfile::TempDir;

use crate::records;
pub use crate::records::{moment, place, when};

pub fn id<T>() -> Id<T> {
    Store::new_id()
}

pub fn workshop() -> Workshop {
    Workshop { keeper: "Ida Lund".into(), ..records::workshop("Old school workshop") }
}

/// A fresh logbook; the folder goes when the first value is dropped.
pub fn fresh() -> (TempDir, Store) {
    let folder = tempfile::tempdir().unwrap();
    let store = Store::create(&folder.path().join("w.logbook"), workshop()).unwrap();
    (folder, store)
}

pub fn part(tag: &str, kind: Kind) -> Part {
    records::part(tag, kind, "")
}

pub fn machine(name: &str) -> Machine {
    Machine {
        purpose: "Office machine of the exhibit".into(),
        window_from: when("1994"),
        window_to: when("1996-06"),
        priority: 1,
        ..records::machine(name)
    }
}

pub fn finding(part: PartId) -> Finding {
    Finding { place_on_part: "by the keyboard socket".into(), ..records::finding(part, "cell_leaked") }
}

pub fn look(finding: FindingId, on: &str, state: FindingState) -> Look {
    Look { share_percent: Some(12.5), ..records::look(finding, moment(on), state, Severity::Grave) }
}

pub fn work(part: PartId, state: WorkState) -> Work {
    Work {
        title: "Cut the cell out".into(),
        hold: Hold::Storage,
        nature: Nature::Repair,
        who: "Ida Lund".into(),
        minutes: Some(10),
        reversible: Some(false),
        ..records::work(part, state, moment("2024-03-01"))
    }
}

pub fn fitting(machine: MachineId, part: PartId) -> Fitting {
    records::fitting(machine, None, part, moment("2024-05-01"))
}

pub fn custody(part: PartId, on: &str, act: CustodyAct) -> CustodyEvent {
    CustodyEvent { party: "Museum of the next town".into(), ..records::custody(part, moment(on), act) }
}

/// Whether a logbook's file and its records hold together, whatever they say by the tables.
pub fn is_whole(report: &Report) -> bool {
    report.troubles.iter().all(|of| !matches!(of.area, Area::Database | Area::Records | Area::Files))
}

/// Writes one record.
pub fn put(store: &Store, name: &str, entry: impl Into<benchwright::record::Entry>) -> Result<(), StoreError> {
    let mut change = Change::new(name);
    change.put(entry);
    store.write(change).map(drop)
}

/// Everything that two revisions say, but for their numbers.
pub fn assert_same(one: &Logbook, other: &Logbook) {
    assert_eq!(one.workshop, other.workshop);
    assert_eq!(one.places, other.places);
    assert_eq!(one.lots, other.lots);
    assert_eq!(one.designs, other.designs);
    assert_eq!(one.parts, other.parts);
    assert_eq!(one.machines, other.machines);
    assert_eq!(one.materials, other.materials);
    assert_eq!(one.kits, other.kits);
}
