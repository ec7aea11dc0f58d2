//! How a record's field becomes one column or two, so that every table is written and read in the same way.

use rusqlite::types::{ToSqlOutput, Value, ValueRef};
use uuid::Uuid;

use crate::record::{Answer, EntryKind, Id, Kind, Moment, Name, When, Word};
use crate::text;

/// What a column holds; tells how its image in the history is read back.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shape {
    /// A UUID's 16 bytes.
    Key,
    Text,
    /// A remembered date as text.
    Date,
    Integer,
    Real,
}

/// A column of a table.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Column {
    pub name: String,
    pub shape: Shape,
}

/// A stored value that is none of its field's.
#[derive(Debug, thiserror::Error)]
#[error("{column}: {reason}")]
pub struct Unreadable {
    pub column: String,
    pub reason: String,
}

/// Walks over the columns of a row that was read.
pub struct Cursor<'r> {
    row: &'r rusqlite::Row<'r>,
    at: usize,
}

impl<'r> Cursor<'r> {
    pub fn new(row: &'r rusqlite::Row<'r>) -> Self {
        Self { row, at: 0 }
    }

    fn take<T>(&mut self, read: impl FnOnce(ValueRef<'r>) -> Result<T, String>) -> Result<T, Unreadable> {
        let at = self.at;
        self.at += 1;
        let value = self.row.get_ref(at).map_err(|error| error.to_string());
        value.and_then(read).map_err(|reason| Unreadable {
            column: self.row.as_ref().column_name(at).unwrap_or_default().to_owned(),
            reason,
        })
    }
}

/// A field that lies in one column.
pub trait Scalar: Sized {
    const SHAPE: Shape;

    fn value(&self) -> ToSqlOutput<'_>;

    /// # Errors
    /// Says what stands there instead.
    fn read(value: ValueRef<'_>) -> Result<Self, String>;
}

/// A field of a record: one column, or two for a moment.
pub trait Field: Sized {
    fn columns(name: &str, into: &mut Vec<Column>);
    fn put<'a>(&'a self, into: &mut Vec<ToSqlOutput<'a>>);
    fn take(cursor: &mut Cursor<'_>) -> Result<Self, Unreadable>;
}

/// A record that has a table of its own.
pub trait Row: Sized {
    const KIND: EntryKind;

    fn columns() -> Vec<Column>;
    fn values(&self) -> Vec<ToSqlOutput<'_>>;
    fn take(cursor: &mut Cursor<'_>) -> Result<Self, Unreadable>;
}

/// The columns of a field, its type told by a function that borrows it.
pub fn columns_of<R, F: Field>(_field: fn(&R) -> &F, name: &str, into: &mut Vec<Column>) {
    F::columns(name, into);
}

impl<S: Scalar> Field for S {
    fn columns(name: &str, into: &mut Vec<Column>) {
        into.push(Column { name: name.to_owned(), shape: S::SHAPE });
    }

    fn put<'a>(&'a self, into: &mut Vec<ToSqlOutput<'a>>) {
        into.push(self.value());
    }

    fn take(cursor: &mut Cursor<'_>) -> Result<Self, Unreadable> {
        cursor.take(S::read)
    }
}

const NULL: ToSqlOutput<'static> = ToSqlOutput::Owned(Value::Null);

impl<S: Scalar> Field for Option<S> {
    fn columns(name: &str, into: &mut Vec<Column>) {
        S::columns(name, into);
    }

    fn put<'a>(&'a self, into: &mut Vec<ToSqlOutput<'a>>) {
        into.push(self.as_ref().map_or(NULL, Scalar::value));
    }

    fn take(cursor: &mut Cursor<'_>) -> Result<Self, Unreadable> {
        cursor.take(|value| if value == ValueRef::Null { Ok(None) } else { S::read(value).map(Some) })
    }
}

impl Field for Moment {
    fn columns(name: &str, into: &mut Vec<Column>) {
        When::columns(&format!("{name}_on"), into);
        u32::columns(&format!("{name}_sequence"), into);
    }

    fn put<'a>(&'a self, into: &mut Vec<ToSqlOutput<'a>>) {
        self.on.put(into);
        self.sequence.put(into);
    }

    fn take(cursor: &mut Cursor<'_>) -> Result<Self, Unreadable> {
        Ok(Self { on: When::take(cursor)?, sequence: u32::take(cursor)? })
    }
}

impl Field for Option<Moment> {
    fn columns(name: &str, into: &mut Vec<Column>) {
        Moment::columns(name, into);
    }

    fn put<'a>(&'a self, into: &mut Vec<ToSqlOutput<'a>>) {
        match self {
            Some(moment) => moment.put(into),
            None => into.extend([NULL, NULL]),
        }
    }

    fn take(cursor: &mut Cursor<'_>) -> Result<Self, Unreadable> {
        let on: Option<When> = Field::take(cursor)?;
        let sequence: Option<u32> = Field::take(cursor)?;
        Ok(on.zip(sequence).map(|(on, sequence)| Moment { on, sequence }))
    }
}

/// What is wanted in a column, and what stands there.
fn wrong(wanted: &str, value: ValueRef<'_>) -> String {
    let found = match value {
        ValueRef::Null => text!("nothing"),
        ValueRef::Integer(_) => text!("a whole number"),
        ValueRef::Real(_) => text!("a number"),
        ValueRef::Text(_) => text!("a text"),
        ValueRef::Blob(_) => text!("a key or other bytes"),
    };
    text!("{wanted} is wanted, {found} stands here", wanted = wanted, found = found)
}

fn text(value: ValueRef<'_>) -> Result<&str, String> {
    value.as_str().map_err(|_| wrong(text!("a text"), value))
}

fn integer<T: TryFrom<i64>>(value: ValueRef<'_>) -> Result<T, String> {
    let number = value.as_i64().map_err(|_| wrong(text!("a whole number"), value))?;
    T::try_from(number).map_err(|_| text!("{number} is out of range", number = number))
}

impl Scalar for String {
    const SHAPE: Shape = Shape::Text;

    fn value(&self) -> ToSqlOutput<'_> {
        ToSqlOutput::Borrowed(ValueRef::Text(self.as_bytes()))
    }

    fn read(value: ValueRef<'_>) -> Result<Self, String> {
        text(value).map(str::to_owned)
    }
}

impl Scalar for Name {
    const SHAPE: Shape = Shape::Text;

    fn value(&self) -> ToSqlOutput<'_> {
        ToSqlOutput::Borrowed(ValueRef::Text(self.as_bytes()))
    }

    fn read(value: ValueRef<'_>) -> Result<Self, String> {
        text(value).map(Self::from)
    }
}

impl<W: Word> Scalar for W {
    const SHAPE: Shape = Shape::Text;

    fn value(&self) -> ToSqlOutput<'_> {
        ToSqlOutput::Borrowed(ValueRef::Text(self.name().as_bytes()))
    }

    fn read(value: ValueRef<'_>) -> Result<Self, String> {
        let name = text(value)?;
        W::named(name).ok_or_else(|| text!("“{name}” is none of its words", name = name))
    }
}

impl<T> Scalar for Id<T> {
    const SHAPE: Shape = Shape::Key;

    fn value(&self) -> ToSqlOutput<'_> {
        ToSqlOutput::Owned(Value::Blob(self.uuid().as_bytes().to_vec()))
    }

    fn read(value: ValueRef<'_>) -> Result<Self, String> {
        let bytes = value.as_blob().map_err(|_| wrong(text!("a key"), value))?;
        Uuid::from_slice(bytes).map(Self::from_uuid).map_err(|_| wrong(text!("a key"), value))
    }
}

impl Scalar for When {
    const SHAPE: Shape = Shape::Date;

    fn value(&self) -> ToSqlOutput<'_> {
        ToSqlOutput::Owned(Value::Text(self.to_string()))
    }

    fn read(value: ValueRef<'_>) -> Result<Self, String> {
        text(value)?.parse().map_err(|error: crate::record::NoDate| error.to_string())
    }
}

macro_rules! integers {
    ($($number:ty),+) => {
        $(impl Scalar for $number {
            const SHAPE: Shape = Shape::Integer;

            fn value(&self) -> ToSqlOutput<'_> {
                // What is too great for a column of SQLite is refused before it comes here.
                ToSqlOutput::Owned(Value::Integer(i64::try_from(*self).unwrap_or(i64::MAX)))
            }

            fn read(value: ValueRef<'_>) -> Result<Self, String> {
                integer(value)
            }
        })+
    };
}

integers!(u32, u64, i64);

impl Scalar for bool {
    const SHAPE: Shape = Shape::Integer;

    fn value(&self) -> ToSqlOutput<'_> {
        ToSqlOutput::Owned(Value::Integer(i64::from(*self)))
    }

    fn read(value: ValueRef<'_>) -> Result<Self, String> {
        integer::<u8>(value).map(|number| number != 0)
    }
}

impl Scalar for f64 {
    const SHAPE: Shape = Shape::Real;

    fn value(&self) -> ToSqlOutput<'_> {
        // A figure of −0 is 0.
        ToSqlOutput::Owned(Value::Real(*self + 0.0))
    }

    fn read(value: ValueRef<'_>) -> Result<Self, String> {
        value.as_f64().map(|figure| figure + 0.0).map_err(|_| wrong(text!("a number"), value))
    }
}

macro_rules! as_json {
    ($($list:ty),+) => {
        $(impl Scalar for $list {
            const SHAPE: Shape = Shape::Text;

            fn value(&self) -> ToSqlOutput<'_> {
                // Lists of texts and finite figures always have a JSON form.
                ToSqlOutput::Owned(Value::Text(serde_json::to_string(self).unwrap_or_default()))
            }

            fn read(value: ValueRef<'_>) -> Result<Self, String> {
                let list = serde_json::from_str(text(value)?);
                let mut list: Self = list.map_err(|_| text!("the list in it cannot be read").to_owned())?;
                list.shrink_to_fit();
                Ok(list)
            }
        })+
    };
}

as_json!(Vec<Answer>, Vec<[f32; 2]>, Vec<Kind>);
