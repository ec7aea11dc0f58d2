//! What must hold between records after a change: references, trees, fittings and the lives of things.

use std::collections::BTreeSet;

use rusqlite::{Connection, OptionalExtension as _};
use uuid::Uuid;

use super::describe::describe;
use super::error::StoreError;
use super::history::{Image, Touch};
use super::orders;
use super::refusal::Refusal;
use super::rows::Records;
use super::write::Fault;
use crate::record::{Custody, EntryKey, EntryKind, FindingState, KitState, Look, Word as _, WorkState};

/// A column that names a record of another table.
pub struct Link {
    pub child: EntryKind,
    pub column: String,
    pub parent: EntryKind,
}

/// All links, from the schema.
pub fn links(connection: &Connection) -> Result<Vec<Link>, StoreError> {
    let mut links = Vec::new();
    for child in EntryKind::ALL {
        let mut statement = connection.prepare("SELECT \"from\", \"table\" FROM pragma_foreign_key_list(?)")?;
        let mut rows = statement.query([child.name()])?;
        while let Some(row) = rows.next()? {
            let parent: String = row.get(1)?;
            if let Some(parent) = EntryKind::named(&parent) {
                links.push(Link { child: *child, column: row.get(0)?, parent });
            }
        }
    }
    Ok(links)
}

pub fn key_in(image: &Image, field: &str) -> Option<Uuid> {
    image.get(field)?.as_str()?.parse().ok()
}

/// Checks what a change left behind.
pub fn check(connection: &Connection, links: &[Link], touches: &[Touch]) -> Result<(), Fault> {
    let mut findings = BTreeSet::new();
    let mut custodies = BTreeSet::new();
    for touch in touches {
        let key = EntryKey { kind: touch.kind, uuid: touch.key };
        match &touch.new {
            None => unused(connection, links, key),
            Some(image) => {
                let old = touch.old.as_ref();
                known(connection, links, key, old, image).and_then(|()| lives(connection, key, old, image))
            }
        }
        .map_err(|error| Fault::at(key, error))?;
        match touch.kind {
            EntryKind::Finding => drop(findings.insert(touch.key)),
            EntryKind::Look => findings.extend(touch.images().filter_map(|image| key_in(image, "finding"))),
            EntryKind::CustodyEvent => custodies.extend(touch.images().filter_map(|image| key_in(image, "part"))),
            EntryKind::Workshop => {
                let pages: i64 = connection.query_row("SELECT count(*) FROM workshop", [], |row| row.get(0))?;
                if pages != 1 {
                    return Err(Fault::at(key, Refusal::OneWorkshop));
                }
            }
            _ => {}
        }
    }
    for uuid in findings {
        let key = EntryKey { kind: EntryKind::Finding, uuid };
        finding_life(connection, key).map_err(|error| Fault::at(key, error))?;
    }
    for uuid in custodies {
        let key = EntryKey { kind: EntryKind::Part, uuid };
        custody_life(connection, key).map_err(|error| Fault::at(key, error))?;
    }
    Ok(())
}

fn exists(connection: &Connection, key: EntryKey) -> Result<bool, StoreError> {
    let mut statement = connection.prepare_cached(&format!("SELECT 1 FROM {} WHERE id = ?", key.kind.name()))?;
    Ok(statement.exists([key.uuid.as_bytes()])?)
}

/// Whether a row says something else in a field than it did before; a new row does.
fn differs(old: Option<&Image>, new: &Image, field: &str) -> bool {
    old.is_none_or(|old| old.get(field) != new.get(field))
}

/// Everything that a record names anew is there; what it named before is seen to where that is removed.
fn known(
    connection: &Connection,
    links: &[Link],
    key: EntryKey,
    old: Option<&Image>,
    image: &Image,
) -> Result<(), StoreError> {
    for link in links.iter().filter(|link| link.child == key.kind && differs(old, image, &link.column)) {
        if let Some(uuid) = key_in(image, &link.column)
            && !exists(connection, EntryKey { kind: link.parent, uuid })?
        {
            let (at, field) = (describe(connection, key), link.column.clone());
            return Err(Refusal::Unknown { at, field, kind: link.parent }.into());
        }
    }
    Ok(())
}

/// Nothing names a record that was removed.
fn unused(connection: &Connection, links: &[Link], key: EntryKey) -> Result<(), StoreError> {
    if exists(connection, key)? {
        return Ok(());
    }
    for Link { child, column, .. } in links.iter().filter(|link| link.parent == key.kind) {
        let sql = format!("SELECT id FROM {} WHERE \"{column}\" = ? LIMIT 1", child.name());
        let mut statement = connection.prepare_cached(&sql)?;
        let user: Option<[u8; 16]> = statement.query_row([key.uuid.as_bytes()], |row| row.get(0)).optional()?;
        if let Some(bytes) = user {
            let by = describe(connection, EntryKey { kind: *child, uuid: Uuid::from_bytes(bytes) });
            return Err(Refusal::StillUsed { at: describe(connection, key), by }.into());
        }
    }
    Ok(())
}

/// What the kinds ask of a row, and of the step from its old image.
fn lives(connection: &Connection, key: EntryKey, old: Option<&Image>, new: &Image) -> Result<(), StoreError> {
    match key.kind {
        EntryKind::Place if differs(old, new, "within") => tree(connection, key, "within"),
        EntryKind::Part if differs(old, new, "inside") => tree(connection, key, "inside"),
        EntryKind::Placement => role_of_machine(connection, key, new),
        EntryKind::Fitting => {
            role_of_machine(connection, key, new)?;
            fitted_once(connection, key, new)
        }
        EntryKind::WorkAfter => {
            work_of_part(connection, key, new)?;
            orders::check(connection, new)
        }
        EntryKind::MaterialUse => work_of_part(connection, key, new),
        EntryKind::Kit => {
            let state = |image: &Image| image.get("state")?.as_str().and_then(KitState::named);
            match old.and_then(state).zip(state(new)) {
                Some((from, to)) if from != to && !from.may_become(to) => {
                    Err(Refusal::KitStep { at: describe(connection, key), from, to }.into())
                }
                _ => Ok(()),
            }
        }
        EntryKind::Work => {
            let state = |image: &Image| image.get("state")?.as_str().and_then(WorkState::named);
            match old.and_then(state).zip(state(new)) {
                Some((from, to)) if from != to && !from.may_become(to) => {
                    Err(Refusal::WorkStep { at: describe(connection, key), from, to }.into())
                }
                _ => Ok(()),
            }
        }
        _ => Ok(()),
    }
}

/// Going outwards from a record never leads back to it.
fn tree(connection: &Connection, key: EntryKey, field: &str) -> Result<(), StoreError> {
    let table = key.kind.name();
    // UNION and not UNION ALL: a ring that the record itself is no part of must not hang the search.
    let sql = format!(
        "WITH RECURSIVE outer(id) AS (
           SELECT {field} FROM {table} WHERE id = ?1
           UNION SELECT {table}.{field} FROM {table} JOIN outer ON {table}.id = outer.id
         ) SELECT 1 FROM outer WHERE id = ?1"
    );
    if connection.prepare_cached(&sql)?.exists([key.uuid.as_bytes()])? {
        return Err(Refusal::InsideItself { at: describe(connection, key) }.into());
    }
    Ok(())
}

fn role_of_machine(connection: &Connection, key: EntryKey, image: &Image) -> Result<(), StoreError> {
    let Some((role, machine)) = key_in(image, "role").zip(key_in(image, "machine")) else { return Ok(()) };
    let mut statement = connection.prepare_cached("SELECT 1 FROM role WHERE id = ? AND machine = ?")?;
    if statement.exists([role.as_bytes(), machine.as_bytes()])? {
        return Ok(());
    }
    Err(Refusal::RoleOfAnother { at: describe(connection, key) }.into())
}

/// What hangs on a piece of work names the part that it is on.
fn work_of_part(connection: &Connection, key: EntryKey, image: &Image) -> Result<(), StoreError> {
    let Some((work, part)) = key_in(image, "work").zip(key_in(image, "part")) else { return Ok(()) };
    let mut statement = connection.prepare_cached("SELECT 1 FROM work WHERE id = ? AND part = ?")?;
    if statement.exists([work.as_bytes(), part.as_bytes()])? {
        return Ok(());
    }
    Err(Refusal::WorkOfAnother { at: describe(connection, key) }.into())
}

fn fitted_once(connection: &Connection, key: EntryKey, image: &Image) -> Result<(), StoreError> {
    let is_removed = image.get("removed_sequence").is_some_and(|sequence| !sequence.is_null());
    let Some(part) = key_in(image, "part").filter(|_| !is_removed) else { return Ok(()) };
    let mut statement = connection.prepare_cached(
        "SELECT machine.name FROM fitting JOIN machine ON machine.id = fitting.machine
         WHERE fitting.part = ?1 AND fitting.removed_sequence IS NULL AND fitting.id <> ?2
           AND EXISTS (SELECT 1 FROM fitting WHERE id = ?2 AND removed_sequence IS NULL)",
    )?;
    let other: Option<String> =
        statement.query_row([part.as_bytes(), key.uuid.as_bytes()], |row| row.get(0)).optional()?;
    match other {
        None => Ok(()),
        Some(machine) => {
            let at = describe(connection, EntryKey { kind: EntryKind::Part, uuid: part });
            Err(Refusal::FittedTwice { at, machine }.into())
        }
    }
}

/// A finding's looks, oldest first, go only where its life leads.
fn finding_life(connection: &Connection, key: EntryKey) -> Result<(), StoreError> {
    if !exists(connection, key)? {
        return Ok(());
    }
    let mut records = Records::default();
    records.read_some(connection, EntryKind::Look, "WHERE finding = ?", key.uuid)?;
    let mut looks: Vec<Look> = records.look;
    looks.sort_by_key(|look| (look.looked.order(), look.id));
    let states: Vec<FindingState> = looks.iter().map(|look| look.state).collect();
    if !matches!(states.first(), Some(FindingState::Open | FindingState::Watched)) {
        return Err(Refusal::FindingUnborn { at: describe(connection, key) }.into());
    }
    match states.windows(2).find(|pair| !pair[0].may_become(pair[1])) {
        Some(pair) => Err(Refusal::FindingStep { at: describe(connection, key), from: pair[0], to: pair[1] }.into()),
        None => Ok(()),
    }
}

/// A part's changes of hands, oldest first, are each possible after the last.
fn custody_life(connection: &Connection, key: EntryKey) -> Result<(), StoreError> {
    let mut records = Records::default();
    records.read_some(connection, EntryKind::CustodyEvent, "WHERE part = ?", key.uuid)?;
    let mut events = records.custody_event;
    events.sort_by_key(|event| (event.happened.order(), event.id));
    let mut custody = Custody::Mine;
    for event in events {
        custody = custody.after(event.act).ok_or_else(|| Refusal::CustodyStep {
            at: describe(connection, key),
            act: event.act,
            custody: custody.label().to_owned(),
        })?;
    }
    Ok(())
}
