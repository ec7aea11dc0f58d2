//! What each change did to which rows, and how it is taken back.

use rusqlite::types::Value;
use rusqlite::{Connection, params};
use serde_json::{Map, Value as Json};
use uuid::Uuid;

use super::error::StoreError;
use super::row::{Column, Shape};
use super::rows::{Table, image_of, upsert};
use crate::record::{Entry, EntryKind, Word as _};

/// A row's image: its columns by name.
pub type Image = Map<String, Json>;

/// What happened to one row in a change.
pub struct Touch {
    pub kind: EntryKind,
    pub key: Uuid,
    /// The row before; `None` when it was added.
    pub old: Option<Image>,
    /// The row after; `None` when it was removed.
    pub new: Option<Image>,
}

impl Touch {
    /// An entry as if it had just been added.
    pub fn of(entry: &Entry) -> Self {
        let key = entry.key();
        Self { kind: key.kind, key: key.uuid, old: None, new: Some(image_of(entry)) }
    }

    /// The images there are.
    pub fn images(&self) -> impl Iterator<Item = &Image> {
        self.old.iter().chain(&self.new)
    }
}

/// Why a change was written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Act {
    /// The logbook's own beginning, and what it was filled with from the start: nothing undoes that.
    New,
    Do,
    Undo,
    Redo,
}

impl Act {
    fn name(self) -> &'static str {
        match self {
            Self::New => "new",
            Self::Do => "do",
            Self::Undo => "undo",
            Self::Redo => "redo",
        }
    }
}

/// Opens a change; rows written from now on are filed under its number.
pub fn begin(
    connection: &Connection,
    name: &str,
    act: Act,
    reverses: Option<u64>,
    sequence: u32,
) -> Result<u64, StoreError> {
    let now = chrono::Utc::now().format("%Y-%m-%dT%H:%M:%S%.3fZ").to_string();
    connection
        .prepare_cached("INSERT INTO change (name, at, act, reverses, sequence) VALUES (?, ?, ?, ?, ?)")?
        .execute(params![name, now, act.name(), reverses.map(|number| number as i64), sequence])?;
    Ok(connection.last_insert_rowid() as u64)
}

/// Notes the highest number given to a moment where more were given since the change was opened.
pub fn renumber(connection: &Connection, change: u64, sequence: u32) -> Result<(), StoreError> {
    let mut statement = connection.prepare_cached("UPDATE change SET sequence = ? WHERE number = ?")?;
    statement.execute(params![sequence, change as i64])?;
    Ok(())
}

/// Rows that a change touched, in the order it did.
pub fn touches(connection: &Connection, change: u64) -> Result<Vec<Touch>, StoreError> {
    let mut statement =
        connection.prepare_cached("SELECT record, key, old, new FROM history WHERE change = ? ORDER BY step")?;
    let mut rows = statement.query([change as i64])?;
    let mut touches = Vec::new();
    while let Some(row) = rows.next()? {
        let image = |at: usize| -> Result<Option<Image>, rusqlite::Error> {
            let text: Option<String> = row.get(at)?;
            text.map(|text| {
                serde_json::from_str(&text).map_err(|error| {
                    rusqlite::Error::FromSqlConversionFailure(at, rusqlite::types::Type::Text, Box::new(error))
                })
            })
            .transpose()
        };
        let kind = EntryKind::named(&row.get::<_, String>(0)?);
        // A table that this program does not know any more holds nothing that it shows.
        let Some(kind) = kind else { continue };
        touches.push(Touch { kind, key: Uuid::from_bytes(row.get(1)?), old: image(2)?, new: image(3)? });
    }
    Ok(touches)
}

/// Writes the old images of a change's rows back, last first.
pub fn reverse(connection: &Connection, change: u64) -> Result<(), StoreError> {
    for touch in touches(connection, change)?.into_iter().rev() {
        let table = Table::of_kind(touch.kind);
        match touch.old {
            None => {
                connection.prepare_cached(&table.delete)?.execute([touch.key.as_bytes()])?;
            }
            Some(image) => {
                // An image of an older form lacks the columns that came later: they keep what the form gave them.
                let told: Vec<&Column> =
                    table.columns.iter().filter(|column| image.contains_key(&column.name)).collect();
                let values = told.iter().map(|column| value(image.get(&column.name), column.shape));
                let upsert = upsert(touch.kind, &told);
                connection.prepare_cached(&upsert)?.execute(rusqlite::params_from_iter(values))?;
            }
        }
    }
    Ok(())
}

/// A column's value from its image.
fn value(image: Option<&Json>, shape: Shape) -> Value {
    match (image, shape) {
        (Some(Json::String(text)), Shape::Key) => {
            Uuid::try_parse(text).map_or(Value::Null, |uuid| Value::Blob(uuid.as_bytes().to_vec()))
        }
        (Some(Json::String(text)), _) => Value::Text(text.clone()),
        (Some(Json::Number(number)), Shape::Real) => number.as_f64().map_or(Value::Null, Value::Real),
        (Some(Json::Number(number)), _) => number.as_i64().map_or(Value::Null, Value::Integer),
        _ => Value::Null,
    }
}

/// What can be undone and redone: (number of the change whose rows to take back, its name), the next one last.
#[derive(Clone, Debug, Default)]
pub struct Stacks {
    pub undo: Vec<(u64, String)>,
    pub redo: Vec<(u64, String)>,
}

/// How far back undo reaches after a restart.
const DEPTH: i64 = 1000;

impl Stacks {
    /// As the history of earlier sessions left them.
    pub fn of_history(connection: &Connection) -> Result<Self, StoreError> {
        let mut statement = connection.prepare(
            "SELECT * FROM (SELECT number, name, act FROM change ORDER BY number DESC LIMIT ?) ORDER BY number",
        )?;
        let mut rows = statement.query([DEPTH])?;
        let mut stacks = Self::default();
        while let Some(row) = rows.next()? {
            let act = match row.get::<_, String>(2)?.as_str() {
                "undo" => Act::Undo,
                "redo" => Act::Redo,
                "do" => Act::Do,
                _ => Act::New,
            };
            stacks.note(row.get::<_, i64>(0)? as u64, row.get(1)?, act);
        }
        Ok(stacks)
    }

    /// Takes note of a change that was written: a new one clears what could be redone.
    pub fn note(&mut self, number: u64, name: String, act: Act) {
        match act {
            Act::New => {}
            Act::Do => {
                self.undo.push((number, name));
                self.redo.clear();
            }
            Act::Undo => {
                self.undo.pop();
                self.redo.push((number, name));
            }
            Act::Redo => {
                self.redo.pop();
                self.undo.push((number, name));
            }
        }
    }
}
