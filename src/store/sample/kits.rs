//! The sample's kits, gathered and brought on their way as a person would, and what its parts told of their designs.

use super::super::authoring::{Ids, moment};
use super::super::{Store, StoreError};
use super::tables::KitRow;
use super::{Book, Fault};
use crate::assess::kits::acts::{draft, step};
use crate::assess::kits::{PATIENCE, Scope, Which, gather};
use crate::assess::positions::grown;
use crate::record::{Capacitor, Change, Entry, KitId, KitState};
use crate::text;

/// Writes a kit with all that happened to it.
pub fn write(row: &KitRow, store: &Store, book: &Book, ids: &mut Ids) -> Result<(), StoreError> {
    let fault = |fault: String| Fault { at: format!("kit {}", row.name), fault };
    let part = book.parts.get(&row.part).copied();
    let Some(part) = part else { return Err(sound(fault(format!("“{}” stands nowhere", row.part)))) };
    let logbook = store.logbook();
    let proposal = gather(&logbook, book.rules, &Scope::Part(part), &Which::Bad, PATIENCE);
    let scope = format!("{}, {}", row.part, Which::Bad.said());
    let made = moment(row.gathered.when(book.today));
    let entries = draft(&proposal, &logbook, &row.name, &scope, made, &mut || ids());
    let Some(kit) = entries.iter().find_map(key_of) else { return Ok(()) };
    found(store, &row.name, entries)?;
    for (to, on) in [(KitState::Frozen, row.frozen), (KitState::Ordered, row.ordered)] {
        let Some(on) = on else { continue };
        let logbook = store.logbook();
        let Some(file) = logbook.kit(kit) else { continue };
        let at = moment(on.when(book.today));
        let entries = step(file, to, &logbook, book.rules, at, &mut || ids())
            .map_err(|hindrance| sound(fault(hindrance.to_string())))?;
        found(store, &row.name, entries)?;
    }
    Ok(())
}

fn key_of(entry: &Entry) -> Option<KitId> {
    if let Entry::Kit(kit) = entry { Some(kit.id) } else { None }
}

/// A fault in the shipped sample is found by a test.
fn sound(fault: Fault) -> StoreError {
    StoreError::BadDocument { place: fault.at, reason: fault.fault }
}

fn found(store: &Store, name: &str, entries: Vec<Entry>) -> Result<(), StoreError> {
    let mut change = Change::new(text!("Gather kit {name}", name = name));
    change.put_all(entries);
    store.found(change).map(drop)
}

/// Each design's positions, from those of its parts.
pub fn grow_designs(store: &Store, ids: &mut Ids) -> Result<(), StoreError> {
    let logbook = store.logbook();
    let mut change = Change::new(text!("Positions of designs"));
    for design in &logbook.designs {
        let mut known = design.capacitors.clone();
        let of_design = logbook.parts.iter().filter(|file| file.part.design == Some(design.design.id));
        for part in of_design {
            let logged: Vec<Capacitor> = part.capacitors.iter().map(|one| one.position.clone()).collect();
            let more = grown(design.design.id, &known, &logged, &mut || ids());
            change.put_all(more.iter().cloned().map(Entry::from));
            known.extend(more);
        }
    }
    store.found(change).map(drop)
}
