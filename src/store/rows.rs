//! The tables: each record with its fields in the order of its columns, one line a record.

use std::sync::LazyLock;

use rusqlite::Connection;
use rusqlite::types::{ToSqlOutput, Value, ValueRef};
use serde::{Deserialize, Serialize};
use serde_json::Value as Json;

use super::error::StoreError;
use super::row::{Column, Cursor, Field, Row, Unreadable, columns_of};
#[allow(clippy::wildcard_imports)] // every record there is
use crate::record::*;

macro_rules! rows {
    ($($(#[$attribute:meta])* $record:ident $list:ident { $($field:ident),+ })+) => {
        $(impl Row for $record {
            const KIND: EntryKind = EntryKind::$record;

            fn columns() -> Vec<Column> {
                let mut columns = Vec::new();
                $(columns_of(|record: &Self| &record.$field, stringify!($field), &mut columns);)+
                columns
            }

            fn values(&self) -> Vec<ToSqlOutput<'_>> {
                let Self { $($field),+ } = self;
                let mut values = Vec::with_capacity(20);
                $($field.put(&mut values);)+
                values
            }

            fn take(cursor: &mut Cursor<'_>) -> Result<Self, Unreadable> {
                Ok(Self { $($field: Field::take(cursor)?),+ })
            }
        })+

        /// Records of every kind, each list in no order of its own.
        #[derive(Default)]
        pub struct Records {
            $(pub $list: Vec<$record>,)+
        }

        /// All records as the exchange document has them.
        #[derive(Serialize, Deserialize)]
        #[serde(deny_unknown_fields)]
        pub struct Document {
            pub format: String,
            pub version: u32,
            $(#[serde(default, skip_serializing_if = "Vec::is_empty")] $(#[$attribute])* pub $list: Vec<$record>,)+
        }

        impl Document {
            /// A document of these records, each list in the order of its keys.
            pub fn of(format: &str, version: u32, mut records: Records) -> Self {
                $(records.$list.sort_unstable_by_key(|record| record.id);)+
                Self { format: format.to_owned(), version, $($list: records.$list),+ }
            }

            /// Its records, without the order.
            pub fn into_records(self) -> Records {
                Records { $($list: self.$list),+ }
            }
        }

        impl Records {
            /// All of them as entries, whatever is referred to before what refers to it.
            pub fn into_entries(self) -> Vec<Entry> {
                let mut entries = Vec::new();
                $(entries.extend(self.$list.into_iter().map(Entry::from));)+
                entries
            }

            /// Reads all rows of a table.
            pub fn read_table(&mut self, connection: &Connection, kind: EntryKind) -> Result<(), StoreError> {
                match kind {
                    $(EntryKind::$record => self.$list = read(connection, "", [])?,)+
                }
                Ok(())
            }

            /// Reads the rows of a table that a condition on one key picks, after those already there.
            pub fn read_some(
                &mut self, connection: &Connection, kind: EntryKind, condition: &str, key: uuid::Uuid,
            ) -> Result<(), StoreError> {
                match kind {
                    $(EntryKind::$record => self.$list.extend(read(connection, condition, [key.as_bytes()])?),)+
                }
                Ok(())
            }

            /// Takes over the tables that another reader read.
            pub fn join(&mut self, other: Self) {
                $(self.$list.extend(other.$list);)+
            }
        }

        /// The values of an entry's columns.
        pub fn values_of(entry: &Entry) -> Vec<ToSqlOutput<'_>> {
            match entry {
                $(Entry::$record(record) => record.values(),)+
            }
        }

        static TABLES: LazyLock<Vec<Table>> = LazyLock::new(|| vec![$(Table::of::<$record>()),+]);
    };
}

rows! {
    #[serde(with = "title_page")]
    Workshop workshop { id, name, keeper, currency, note }
    Place place { id, within, name, note }
    Lot lot { id, name, acquired, source, price_cents, note }
    Design design { id, kind, maker, model, revision, introduced, discontinued, note }
    DesignConnector design_connector { id, design, side, connector, count, note }
    DesignFigure design_figure { id, design, figure, value, source, at_bus_mhz }
    DesignCapacitor design_capacitor { id, design, designator, place_on_part, capacitance_uf, voltage_v, temperature_c, diameter_mm, height_mm, pitch_mm, dielectric, mounting, series, polarity, function, low_esr }
    Material material { id, name, unit, stock, minimum, place, price_cents, supplier, note, capacitance_uf, voltage_v, temperature_c, diameter_mm, height_mm, pitch_mm, dielectric, mounting, low_esr, on_order }
    Part part { id, tag, kind, design, name, serial, originality, lot, price_cents, acquired, place, inside, quarantine, quarantined, note }
    Machine machine { id, name, purpose, window_from, window_to, standing, priority, note }
    Role role { id, machine, kind, name, required, count, note, or_kinds }
    Placement placement { id, machine, role, part, pinned, planned, reason }
    Fitting fitting { id, machine, role, part, fitted, removed, note }
    PowerOn power_on { id, machine, switched, configuration, settings, steps, result, happened, who }
    Marking marking { id, part, read, surface, place_on_part, text, from_factory, scheme, supersedes, note }
    Survey survey { id, part, looked, who, why, supersedes, note, answers }
    Finding finding { id, part, what, place_on_part, source, question, note }
    Work work { id, part, finding, rule, title, hold, nature, state, changed, who, minutes, used, reason, reversible, note, touches }
    WorkAfter work_after { id, part, work, after }
    MaterialUse material_use { id, part, work, material, amount }
    Look look { id, finding, looked, state, severity, share_percent, again_by, reason, survey, work, who }
    Capacitor capacitor { id, part, designator, place_on_part, capacitance_uf, voltage_v, temperature_c, diameter_mm, height_mm, pitch_mm, dielectric, mounting, series, polarity, logged, state, function, low_esr }
    CapacitorLook capacitor_look { id, capacitor, looked, state, measured_uf, esr_mohm, leakage_ua, replaced_by, note }
    Kit kit { id, name, scope, state, changed, frozen, ordered, received, used, note }
    KitLine kit_line { id, kit, material, capacitance_uf, voltage_v, temperature_c, diameter_mm, height_mm, pitch_mm, dielectric, mounting, low_esr, from_stock, to_buy, spares, price_cents, supplier, note }
    KitPosition kit_position { id, line, capacitor }
    Proof proof { id, part, machine, test, run, rig, minutes, criterion, result, who, note }
    Reading reading { id, part, machine, measured, quantity, value, unit, condition, who, supersedes, note, proof, work }
    Setting setting { id, part, found, name, value, source }
    FaultCase fault_case { id, part, machine, opened, symptom, state, outcome }
    Trial trial { id, case, tried, configuration, step, suspect, known_good, result, note, codes }
    CustodyEvent custody_event { id, part, happened, act, party, until, price_cents, condition, note }
    Valuation valuation { id, part, on, amount_cents, basis }
    Photo photo { id, part, machine, lot, content, extension, width_px, height_px, added, taken, view, caption, is_map }
    PhotoMark photo_mark { id, photo, points, finding, capacitor, marking, work, note, role, length_mm, breadth_mm, red, green, blue, clipped_percent, proof }
    Attachment attachment { id, part, machine, lot, kind, content, file_name, bytes, added, note, proof }
}

/// The title page stands alone in a document and not in a list.
mod title_page {
    use serde::{Deserialize as _, Deserializer, Serialize as _, Serializer};

    use crate::record::Workshop;

    pub fn serialize<S: Serializer>(pages: &[Workshop], serializer: S) -> Result<S::Ok, S::Error> {
        pages.first().serialize(serializer)
    }

    pub fn deserialize<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Vec<Workshop>, D::Error> {
        Workshop::deserialize(deserializer).map(|page| vec![page])
    }
}

/// A table with the statements that every one of them knows.
pub struct Table {
    pub kind: EntryKind,
    pub columns: Vec<Column>,
    /// Writes a row, or replaces the one of the same key.
    pub upsert: String,
    pub delete: String,
    select: String,
}

impl Table {
    fn of<R: Row>() -> Self {
        let columns = R::columns();
        let table = R::KIND.name();
        let names: Vec<String> = columns.iter().map(|column| format!("\"{}\"", column.name)).collect();
        let all = names.join(", ");
        Self {
            kind: R::KIND,
            upsert: upsert(R::KIND, &columns.iter().collect::<Vec<_>>()),
            delete: format!("DELETE FROM {table} WHERE id = ?"),
            select: format!("SELECT {all} FROM {table} "),
            columns,
        }
    }

    /// The table of a kind.
    pub fn of_kind(kind: EntryKind) -> &'static Self {
        // Both lists come from one macro each and a test holds them in the same order.
        &TABLES[kind as usize]
    }

    /// Every table.
    pub fn all() -> &'static [Self] {
        &TABLES
    }
}

/// Writes these columns of a row, the key first, or replaces them in the row of the same key.
pub fn upsert(kind: EntryKind, columns: &[&Column]) -> String {
    let names: Vec<String> = columns.iter().map(|column| format!("\"{}\"", column.name)).collect();
    let updates: Vec<String> = names[1..].iter().map(|name| format!("{name} = excluded.{name}")).collect();
    format!(
        "INSERT INTO {} ({}) VALUES ({}) ON CONFLICT (id) DO UPDATE SET {}",
        kind.name(),
        names.join(", "),
        vec!["?"; names.len()].join(", "),
        updates.join(", ")
    )
}

fn read<R: Row>(
    connection: &Connection,
    condition: &str,
    parameters: impl rusqlite::Params,
) -> Result<Vec<R>, StoreError> {
    let table = Table::of_kind(R::KIND);
    let mut statement = connection.prepare_cached(&format!("{}{condition}", table.select))?;
    let mut rows = statement.query(parameters)?;
    let mut records = Vec::new();
    while let Some(row) = rows.next()? {
        records.push(R::take(&mut Cursor::new(row)).map_err(|source| StoreError::BadRow { kind: R::KIND, source })?);
    }
    records.shrink_to_fit();
    Ok(records)
}

/// An entry's columns by name, as the history has them.
pub fn image_of(entry: &Entry) -> serde_json::Map<String, Json> {
    let table = Table::of_kind(entry.key().kind);
    let json = |value: &ToSqlOutput<'_>| match value {
        ToSqlOutput::Borrowed(ValueRef::Text(text)) => Json::from(String::from_utf8_lossy(text)),
        ToSqlOutput::Owned(Value::Text(text)) => Json::from(text.as_str()),
        ToSqlOutput::Owned(Value::Integer(number)) => Json::from(*number),
        ToSqlOutput::Owned(Value::Real(number)) => Json::from(*number),
        ToSqlOutput::Owned(Value::Blob(bytes)) => {
            uuid::Uuid::from_slice(bytes).map_or(Json::Null, |uuid| Json::from(uuid.simple().to_string()))
        }
        _ => Json::Null,
    };
    table.columns.iter().zip(&values_of(entry)).map(|(column, value)| (column.name.clone(), json(value))).collect()
}
