//! The next revision: what a change touched is read again from the database, all else is shared with the last one.

use std::collections::BTreeSet;
use std::sync::Arc;

use rusqlite::{Connection, OptionalExtension as _};
use uuid::Uuid;

use super::assemble::Files;
use super::error::StoreError;
use super::history::Touch;
use super::load;
use super::refusal::Refusal;
use super::rows::Records;
use crate::record::{EntryKey, EntryKind, Id, Logbook, Word as _};

/// From this many on, reading everything again is quicker.
const MANY: usize = 2000;

/// By which field a kind of record names what it hangs on, and what that is; nothing for what stands by itself.
pub fn owners(kind: EntryKind) -> &'static [(&'static str, EntryKind)] {
    use EntryKind::{
        Attachment, Capacitor, CapacitorLook, CustodyEvent, Design, DesignCapacitor, DesignConnector, DesignFigure,
        FaultCase, Finding, Fitting, Kit, KitLine, KitPosition, Look, Lot, Machine, Marking, Material, MaterialUse,
        Part, Photo, PhotoMark, Place, Placement, PowerOn, Proof, Reading, Role, Setting, Survey, Trial, Valuation,
        Work, WorkAfter, Workshop,
    };
    match kind {
        Workshop | Place | Lot | Design | Material | Part | Machine | Kit => &[],
        DesignConnector | DesignFigure | DesignCapacitor => &[("design", Design)],
        Role | Placement | Fitting | PowerOn => &[("machine", Machine)],
        Marking | Survey | Finding | Work | WorkAfter | MaterialUse | Capacitor | Setting | CustodyEvent
        | Valuation => &[("part", Part)],
        Look => &[("finding", Finding)],
        CapacitorLook => &[("capacitor", Capacitor)],
        Trial => &[("case", FaultCase)],
        KitLine => &[("kit", Kit)],
        KitPosition => &[("line", KitLine)],
        PhotoMark => &[("photo", Photo)],
        Reading | Proof | FaultCase => &[("part", Part), ("machine", Machine)],
        Photo | Attachment => &[("part", Part), ("machine", Machine), ("lot", Lot)],
    }
}

/// What stands by itself and is to be read again after a change.
fn touched(connection: &Connection, touches: &[Touch]) -> Result<BTreeSet<EntryKey>, StoreError> {
    let mut found = BTreeSet::new();
    for touch in touches {
        let owners = owners(touch.kind);
        if owners.is_empty() {
            found.insert(EntryKey { kind: touch.kind, uuid: touch.key });
        }
        for image in touch.images() {
            for (field, parent) in owners {
                if let Some(uuid) = image.get(*field).and_then(|value| value.as_str()?.parse().ok()) {
                    climb(connection, EntryKey { kind: *parent, uuid }, &mut found)?;
                }
            }
        }
    }
    Ok(found)
}

/// Goes up from a record to what it hangs on. A record that is gone has a step of its own in the history.
fn climb(connection: &Connection, from: EntryKey, found: &mut BTreeSet<EntryKey>) -> Result<(), StoreError> {
    let owners = owners(from.kind);
    if owners.is_empty() {
        found.insert(from);
    }
    for (field, parent) in owners {
        let sql = format!("SELECT \"{field}\" FROM {} WHERE id = ?", from.kind.name());
        let mut statement = connection.prepare_cached(&sql)?;
        let owner: Option<Option<[u8; 16]>> =
            statement.query_row([from.uuid.as_bytes()], |row| row.get(0)).optional()?;
        if let Some(bytes) = owner.flatten() {
            climb(connection, EntryKey { kind: *parent, uuid: Uuid::from_bytes(bytes) }, found)?;
        }
    }
    Ok(())
}

/// Kinds of record whose rows have to be read again where these were touched: what hangs on a finding goes with it to
/// another part. What hangs on a part stays, since nothing carries a part elsewhere.
fn stale(touches: &[Touch]) -> BTreeSet<EntryKind> {
    let touched: BTreeSet<EntryKind> = touches.iter().map(|touch| touch.kind).collect();
    let follows = |kind: &EntryKind| {
        owners(*kind).iter().any(|(_, parent)| touched.contains(parent) && !owners(*parent).is_empty())
    };
    let following: Vec<EntryKind> = EntryKind::ALL.iter().copied().filter(follows).collect();
    touched.into_iter().chain(following).collect()
}

/// Reads one thing with all that hangs on it, walking down the owners; only kinds that are `wanted`.
fn read_file(
    connection: &Connection,
    key: EntryKey,
    wanted: impl Fn(EntryKind) -> bool,
    records: &mut Records,
) -> Result<(), StoreError> {
    if wanted(key.kind) {
        records.read_some(connection, key.kind, "WHERE id = ?", key.uuid)?;
    }
    for child in EntryKind::ALL {
        for (field, _) in owners(*child).iter().filter(|(_, parent)| *parent == key.kind) {
            if wanted(*child) {
                records.read_some(connection, *child, &format!("WHERE \"{field}\" = ?"), key.uuid)?;
            }
            for grandchild in EntryKind::ALL.iter().filter(|kind| wanted(**kind)) {
                for (link, _) in owners(*grandchild).iter().filter(|(_, parent)| parent == child) {
                    let within = format!("WHERE \"{link}\" IN (SELECT id FROM {} WHERE \"{field}\" = ?)", child.name());
                    records.read_some(connection, *grandchild, &within, key.uuid)?;
                }
            }
        }
    }
    Ok(())
}

/// The revision after a change that touched these rows. Of a part or machine, the tables that were touched are read
/// again; the rest is taken from the last revision.
pub fn next(connection: &Connection, last: &Logbook, revision: u64, touches: &[Touch]) -> Result<Logbook, StoreError> {
    let touched = touched(connection, touches)?;
    let mut records = Records::default();
    if touched.len() > MANY {
        for kind in EntryKind::ALL {
            records.read_table(connection, *kind)?;
        }
        return load::from_files(revision, records.assemble()).ok_or(Refusal::OneWorkshop.into());
    }
    let stale = stale(touches);
    for key in &touched {
        let kept = match key.kind {
            EntryKind::Part => last.part(Id::from_uuid(key.uuid)).map(|file| records.take_part(file, &stale)),
            EntryKind::Machine => last.machine(Id::from_uuid(key.uuid)).map(|file| records.take_machine(file, &stale)),
            _ => None,
        };
        read_file(connection, *key, |kind| kept.is_none() || stale.contains(&kind), &mut records)?;
    }
    let Files { workshops, places, lots, designs, parts, machines, materials, kits } = records.assemble();
    let mut next = Logbook { revision, ..last.clone() };
    let of = |kind| touched.iter().filter(move |key| key.kind == kind).map(|key| key.uuid);
    if of(EntryKind::Workshop).next().is_some() {
        let [workshop] = <[_; 1]>::try_from(workshops).map_err(|_| Refusal::OneWorkshop)?;
        next.workshop = workshop;
    }
    replace(&mut next.places, of(EntryKind::Place), places, |file| file.id.uuid());
    replace(&mut next.lots, of(EntryKind::Lot), lots, |file| file.lot.id.uuid());
    replace(&mut next.designs, of(EntryKind::Design), designs, |file| file.design.id.uuid());
    replace(&mut next.parts, of(EntryKind::Part), parts, |file| file.part.id.uuid());
    replace(&mut next.machines, of(EntryKind::Machine), machines, |file| file.machine.id.uuid());
    replace(&mut next.materials, of(EntryKind::Material), materials, |file| file.id.uuid());
    replace(&mut next.kits, of(EntryKind::Kit), kits, |file| file.kit.id.uuid());
    Ok(next)
}

/// Takes `gone` out of a list in key order and puts `fresh` in, keeping the order.
fn replace<T>(list: &mut Vec<Arc<T>>, gone: impl Iterator<Item = Uuid>, fresh: Vec<Arc<T>>, key: impl Fn(&T) -> Uuid) {
    let mut fresh = fresh.into_iter().peekable();
    for uuid in gone {
        let place = list.binary_search_by_key(&uuid, |file| key(file));
        let file = fresh.next_if(|file| key(file) == uuid);
        match (place, file) {
            (Ok(at), Some(file)) => list[at] = file,
            (Ok(at), None) => drop(list.remove(at)),
            (Err(at), Some(file)) => list.insert(at, file),
            (Err(_), None) => {}
        }
    }
}
