//! The logbook's form: migrations by `user_version`, and the triggers that write history.

use std::path::Path;

use rusqlite::Connection;

use super::backup;
use super::connect;
use super::error::StoreError;
use super::rows::Table;
use crate::record::Word as _;

/// Marks a file as a logbook: "BwLb".
pub const APPLICATION_ID: i32 = 0x4277_4C62;

/// One SQL text a version; the first brings an empty file to version 1. Never changed once landed.
const MIGRATIONS: &[&str] = &[
    include_str!("../../resources/migrations/0001.sql"),
    include_str!("../../resources/migrations/0002.sql"),
    include_str!("../../resources/migrations/0003.sql"),
    include_str!("../../resources/migrations/0004.sql"),
    include_str!("../../resources/migrations/0005.sql"),
    include_str!("../../resources/migrations/0006.sql"),
    include_str!("../../resources/migrations/0007.sql"),
];

/// The form that this program writes.
pub const VERSION: u32 = MIGRATIONS.len() as u32;

/// The form a file is in. A database that is not ours, or newer than this program, is an error.
pub fn version(connection: &Connection, path: &Path) -> Result<u32, StoreError> {
    let pragma = |name: &str| -> Result<i64, StoreError> {
        connection.pragma_query_value(None, name, |row| row.get(0)).map_err(StoreError::from)
    };
    let about = |error: StoreError| error.about(path);
    let application = pragma("application_id").map_err(about)?;
    if application != i64::from(APPLICATION_ID) {
        return Err(StoreError::Foreign { path: path.to_owned() });
    }
    let version = u32::try_from(pragma("user_version").map_err(about)?).unwrap_or(u32::MAX);
    if version > VERSION {
        return Err(StoreError::Newer { found: version, known: VERSION, path: path.to_owned() });
    }
    Ok(version)
}

/// Brings an empty file to this program's form.
pub fn lay_out(connection: &mut Connection) -> Result<(), StoreError> {
    migrate(connection, 0)
}

/// Brings an older file to this program's form, after a backup. On failure the file is as it was.
pub fn bring_up_to_date(connection: &mut Connection, from: u32, path: &Path) -> Result<(), StoreError> {
    if from == VERSION {
        return Ok(());
    }
    let folder = path.parent().unwrap_or(path);
    backup::back_up(connection, folder, &format!("form-{from}"))?;
    migrate(connection, from).map_err(|error| match error.about(path) {
        StoreError::Database(error) => StoreError::Migration { reason: error.to_string(), path: path.to_owned() },
        other => other,
    })
}

fn migrate(connection: &mut Connection, from: u32) -> Result<(), StoreError> {
    let transaction = connection.transaction_with_behavior(rusqlite::TransactionBehavior::Exclusive)?;
    for migration in &MIGRATIONS[from as usize..] {
        transaction.execute_batch(migration)?;
    }
    lay_triggers(&transaction)?;
    transaction.pragma_update(None, "user_version", VERSION)?;
    connect::broken_reference(&transaction)?;
    transaction.commit()?;
    Ok(())
}

/// Writes the history triggers anew from the tables' columns.
fn lay_triggers(connection: &Connection) -> Result<(), StoreError> {
    for table in Table::all() {
        let name = table.kind.name();
        let columns = columns(connection, name)?;
        let (old, new) = (image("OLD", &columns), image("NEW", &columns));
        let differs: Vec<String> =
            columns.iter().map(|(column, _)| format!("OLD.\"{column}\" IS NOT NEW.\"{column}\"")).collect();
        let triggers = [
            ("INSERT", String::new(), "NEW", "NULL", new.as_str()),
            ("UPDATE", format!("WHEN {}", differs.join(" OR ")), "NEW", old.as_str(), new.as_str()),
            ("DELETE", String::new(), "OLD", old.as_str(), "NULL"),
        ];
        for (event, when, row, old, new) in triggers {
            let trigger = format!("history_{name}_{}", event.to_lowercase());
            connection.execute_batch(&format!(
                "DROP TRIGGER IF EXISTS {trigger};
                 CREATE TRIGGER {trigger} AFTER {event} ON {name} {when} BEGIN
                   INSERT INTO history (change, record, key, old, new)
                   VALUES ((SELECT max(number) FROM change), '{name}', {row}.id, {old}, {new});
                 END;"
            ))?;
        }
    }
    Ok(())
}

/// Names and types of a table's columns, from the schema.
pub fn columns(connection: &Connection, table: &str) -> Result<Vec<(String, String)>, StoreError> {
    let mut statement = connection.prepare("SELECT name, type FROM pragma_table_info(?)")?;
    let columns = statement.query_map([table], |row| Ok((row.get(0)?, row.get(1)?)))?;
    Ok(columns.collect::<Result<_, _>>()?)
}

/// A row as JSON that people can read; keys as hexadecimal digits, since JSON carries no bytes.
fn image(row: &str, columns: &[(String, String)]) -> String {
    let members: Vec<String> = columns
        .iter()
        .map(|(column, kind)| {
            let value = format!("{row}.\"{column}\"");
            match kind.as_str() {
                "BLOB" => format!("'{column}', iif({value} IS NULL, NULL, lower(hex({value})))"),
                _ => format!("'{column}', {value}"),
            }
        })
        .collect();
    format!("json_object({})", members.join(", "))
}
