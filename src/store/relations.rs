//! What one record may say of another: what it supersedes, whose design it has, what cannot fail to apply to it.

use rusqlite::{Connection, OptionalExtension as _};
use uuid::Uuid;

use super::consistency::{Laws, differs, key_in};
use super::describe::describe;
use super::error::StoreError;
use super::history::Image;
use super::limits::answers_in;
use super::refusal::Refusal;
use crate::record::{EntryKey, EntryKind, Given, Kind, Word as _};

/// A correction supersedes an earlier record of the same thing, and never itself over however many steps.
pub fn supersedes(connection: &Connection, key: EntryKey, old: Option<&Image>, new: &Image) -> Result<(), StoreError> {
    let owners = ["part", "machine"];
    if !["supersedes", "part", "machine"].iter().any(|field| differs(old, new, field)) {
        return Ok(());
    }
    let Some(earlier) = key_in(new, "supersedes") else { return Ok(()) };
    let table = key.kind.name();
    let ring = format!(
        "WITH RECURSIVE earlier(id) AS (
           SELECT supersedes FROM {table} WHERE id = ?1
           UNION SELECT {table}.supersedes FROM {table} JOIN earlier ON {table}.id = earlier.id
         ) SELECT 1 FROM earlier WHERE id = ?1"
    );
    if connection.prepare_cached(&ring)?.exists([key.uuid.as_bytes()])? {
        return Err(Refusal::SupersedesItself { at: describe(connection, key) }.into());
    }
    for owner in owners.iter().filter(|owner| new.contains_key(**owner)) {
        let mut statement = connection.prepare_cached(&format!("SELECT {owner} FROM {table} WHERE id = ?"))?;
        let theirs: Option<Option<[u8; 16]>> =
            statement.query_row([earlier.as_bytes()], |row| row.get(0)).optional()?;
        if theirs.is_some_and(|theirs| theirs.map(Uuid::from_bytes) != key_in(new, owner)) {
            let other = describe(connection, EntryKey { kind: key.kind, uuid: earlier });
            return Err(Refusal::SupersedesAnother { at: describe(connection, key), other }.into());
        }
    }
    Ok(())
}

/// A part's design is one of its own kind.
pub fn design_of_part(
    connection: &Connection,
    key: EntryKey,
    old: Option<&Image>,
    new: &Image,
) -> Result<(), StoreError> {
    if !differs(old, new, "design") && !differs(old, new, "kind") {
        return Ok(());
    }
    let Some(design) = key_in(new, "design") else { return Ok(()) };
    kinds_agree(connection, "part.id = ?1 AND design.id = ?2", [key.uuid, design])
}

/// A design whose kind changes is that of no part of another kind.
pub fn parts_of_design(
    connection: &Connection,
    key: EntryKey,
    old: Option<&Image>,
    new: &Image,
) -> Result<(), StoreError> {
    if old.is_none() || !differs(old, new, "kind") {
        return Ok(());
    }
    kinds_agree(connection, "design.id = ?1 AND design.id = ?2", [key.uuid, key.uuid])
}

fn kinds_agree(connection: &Connection, which: &str, keys: [Uuid; 2]) -> Result<(), StoreError> {
    let sql = format!(
        "SELECT part.id, part.kind, design.id, design.kind FROM part JOIN design ON design.id = part.design
         WHERE part.kind <> design.kind AND {which} LIMIT 1"
    );
    let mut statement = connection.prepare_cached(&sql)?;
    let row = |row: &rusqlite::Row<'_>| {
        Ok((row.get::<_, [u8; 16]>(0)?, row.get::<_, String>(1)?, row.get::<_, [u8; 16]>(2)?, row.get::<_, String>(3)?))
    };
    let keys = [keys[0].as_bytes(), keys[1].as_bytes()];
    let Some((part, kind, design, design_kind)) = statement.query_row(keys, row).optional()? else { return Ok(()) };
    let called = |kind: &str| Kind::named(kind).map_or_else(|| kind.to_owned(), |kind| kind.label().to_owned());
    let named = |kind, bytes| describe(connection, EntryKey { kind, uuid: Uuid::from_bytes(bytes) });
    Err(Refusal::DesignOfAnotherKind {
        at: named(EntryKind::Part, part),
        kind: called(&kind),
        design: named(EntryKind::Design, design),
        design_kind: called(&design_kind),
    }
    .into())
}

/// No answer says that a question does not apply to a part of a kind that always has what is asked about.
pub fn answers_apply(
    connection: &Connection,
    laws: &Laws,
    key: EntryKey,
    old: Option<&Image>,
    new: &Image,
) -> Result<(), StoreError> {
    if !differs(old, new, "answers") && !differs(old, new, "part") {
        return Ok(());
    }
    // The column is looked into only where the word stands in it at all.
    let says_so = |image: &Image| image.get("answers").is_some_and(|text| text.to_string().contains("does_not_apply"));
    let Some(part) = key_in(new, "part").filter(|_| says_so(new)) else { return Ok(()) };
    let mut statement = connection.prepare_cached("SELECT kind FROM part WHERE id = ?")?;
    let kind: Option<String> = statement.query_row([part.as_bytes()], |row| row.get(0)).optional()?;
    let Some(kind) = kind.and_then(|kind| Kind::named(&kind)) else { return Ok(()) };
    let before = old.filter(|_| !differs(old, new, "part")).map(answers_in).unwrap_or_default();
    let rules = (laws.rules)();
    let answers = answers_in(new);
    let is_new = |name: &str| !before.iter().any(|known| known.question == name && known.given == Given::DoesNotApply);
    let wrong: Vec<String> = answers
        .iter()
        .filter(|answer| answer.given == Given::DoesNotApply && is_new(&answer.question))
        .filter_map(|answer| rules.question(&answer.question))
        .filter(|question| question.always_on.contains(&kind))
        .map(|question| format!("{} (“{}”)", question.name, crate::text::say(&question.ask)))
        .collect();
    if !wrong.is_empty() {
        let (at, kind) = (describe(connection, key), kind.label().to_owned());
        return Err(Refusal::AlwaysApplies { at, questions: wrong.join(", "), kind }.into());
    }
    Ok(())
}
