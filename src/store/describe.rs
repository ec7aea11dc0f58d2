//! What a record is called in a message: "look of finding of part 0042".

use rusqlite::types::{ToSqlOutput, Value, ValueRef};
use rusqlite::{Connection, OptionalExtension as _};
use uuid::Uuid;

use super::refusal::kind_label;
use super::reload::owners;
use super::rows::{Table, values_of};
use crate::record::{Entry, EntryKey, EntryKind, Word as _};
use crate::text;

/// The column that says best what a record of a kind is.
fn title_column(kind: EntryKind) -> Option<&'static str> {
    use EntryKind::{
        Capacitor, Design, DesignCapacitor, Finding, Kit, Lot, Machine, Material, Part, Place, Proof, Role, Setting,
        Work,
    };
    match kind {
        Part => Some("tag"),
        Machine | Place | Lot | Material | Role | Setting | Kit => Some("name"),
        Capacitor | DesignCapacitor => Some("designator"),
        Design => Some("model"),
        Finding => Some("what"),
        Proof => Some("test"),
        Work => Some("title"),
        _ => None,
    }
}

fn put_together(connection: &Connection, kind: EntryKind, title: &str, owner: Option<EntryKey>) -> String {
    let own = match title {
        "" => kind_label(kind),
        title => format!("{} {title}", kind_label(kind)),
    };
    match owner {
        None => own,
        Some(owner) => text!("{what} of {owner}", what = own, owner = describe(connection, owner)),
    }
}

/// A record that is in the database; its key when it is not.
pub fn describe(connection: &Connection, key: EntryKey) -> String {
    let EntryKey { kind, uuid } = key;
    let owners = owners(kind);
    let mut columns = vec![title_column(kind).unwrap_or("''").to_owned()];
    columns.extend(owners.iter().map(|(field, _)| format!("\"{field}\"")));
    let sql = format!("SELECT {} FROM {} WHERE id = ?", columns.join(", "), kind.name());
    let row = connection
        .query_row(&sql, [uuid.as_bytes()], |row| {
            let owner = |(at, (_, parent)): (usize, &(&str, EntryKind))| {
                let bytes: Option<[u8; 16]> = row.get(at + 1).ok()?;
                Some(EntryKey { kind: *parent, uuid: Uuid::from_bytes(bytes?) })
            };
            Ok((row.get::<_, String>(0)?, owners.iter().enumerate().find_map(owner)))
        })
        .optional();
    match row {
        Ok(Some((title, owner))) => put_together(connection, kind, &title, owner),
        _ => format!("{} {uuid}", kind_label(kind)),
    }
}

/// A record that is about to be written.
pub fn describe_entry(connection: &Connection, entry: &Entry) -> String {
    let kind = entry.key().kind;
    let values = values_of(entry);
    let columns = &Table::of_kind(kind).columns;
    let value = |name: &str| columns.iter().position(|column| column.name == name).map(|at| &values[at]);
    let title = match title_column(kind).and_then(value) {
        Some(ToSqlOutput::Borrowed(ValueRef::Text(text))) => String::from_utf8_lossy(text).into_owned(),
        _ => String::new(),
    };
    let owner = owners(kind).iter().find_map(|(field, parent)| match value(field)? {
        ToSqlOutput::Owned(Value::Blob(bytes)) => Some(EntryKey { kind: *parent, uuid: Uuid::from_slice(bytes).ok()? }),
        _ => None,
    });
    put_together(connection, kind, &title, owner)
}
