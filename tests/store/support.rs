//! Logbooks in temporary folders, and records to put into them.

use benchwright::record::{
    Change, CustodyAct, CustodyEvent, Finding, FindingId, FindingSource, FindingState, Fitting, Hold, Id, Kind,
    Logbook, Look, Machine, MachineId, Moment, Nature, Originality, Part, PartId, Place, PlaceId, Severity, Standing,
    When, Work, WorkState, Workshop,
};
use benchwright::store::{Store, StoreError};
use tempfile::TempDir;

pub fn id<T>() -> Id<T> {
    Store::new_id()
}

pub fn when(text: &str) -> When {
    text.parse().unwrap()
}

/// A moment that the store is to number.
pub fn moment(text: &str) -> Moment {
    Moment { on: when(text), sequence: 0 }
}

pub fn workshop() -> Workshop {
    Workshop {
        id: id(),
        name: "Old school workshop".into(),
        keeper: "Ida Lund".into(),
        currency: "EUR".into(),
        note: String::new(),
    }
}

/// A fresh logbook; the folder goes when the first value is dropped.
pub fn fresh() -> (TempDir, Store) {
    let folder = tempfile::tempdir().unwrap();
    let store = Store::create(&folder.path().join("w.logbook"), workshop()).unwrap();
    (folder, store)
}

pub fn part(tag: &str, kind: Kind) -> Part {
    Part {
        id: id(),
        tag: tag.into(),
        kind,
        design: None,
        name: String::new(),
        serial: String::new(),
        originality: Originality::Unstated,
        lot: None,
        price_cents: None,
        acquired: When::Unknown,
        place: None,
        inside: None,
        quarantine: String::new(),
        quarantined: When::Unknown,
        note: String::new(),
    }
}

pub fn place(name: &str, within: Option<PlaceId>) -> Place {
    Place { id: id(), within, name: name.into(), note: String::new() }
}

pub fn machine(name: &str) -> Machine {
    Machine {
        id: id(),
        name: name.into(),
        purpose: "Office machine of the exhibit".into(),
        window_from: when("1994"),
        window_to: when("1996-06"),
        standing: Standing::Typical,
        priority: 1,
        note: String::new(),
    }
}

pub fn finding(part: PartId) -> Finding {
    Finding {
        id: id(),
        part,
        what: "cell_leaked".into(),
        place_on_part: "by the keyboard socket".into(),
        source: FindingSource::Hand,
        question: String::new(),
        note: String::new(),
    }
}

pub fn look(finding: FindingId, on: &str, state: FindingState) -> Look {
    Look {
        id: id(),
        finding,
        looked: moment(on),
        state,
        severity: Severity::Grave,
        share_percent: Some(12.5),
        again_by: When::Unknown,
        reason: String::new(),
        survey: None,
        work: None,
    }
}

pub fn work(part: PartId, state: WorkState) -> Work {
    Work {
        id: id(),
        part,
        finding: None,
        rule: String::new(),
        title: "Cut the cell out".into(),
        hold: Hold::Storage,
        nature: Nature::Repair,
        state,
        changed: moment("2024-03-01"),
        who: "Ida Lund".into(),
        minutes: Some(10),
        used: String::new(),
        reason: String::new(),
        reversible: Some(false),
        note: String::new(),
    }
}

pub fn fitting(machine: MachineId, part: PartId) -> Fitting {
    Fitting { id: id(), machine, role: None, part, fitted: moment("2024-05-01"), removed: None, note: String::new() }
}

pub fn custody(part: PartId, on: &str, act: CustodyAct) -> CustodyEvent {
    CustodyEvent {
        id: id(),
        part,
        happened: moment(on),
        act,
        party: "Museum of the next town".into(),
        until: When::Unknown,
        price_cents: None,
        condition: String::new(),
        note: String::new(),
    }
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
}
