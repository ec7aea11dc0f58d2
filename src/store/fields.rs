//! What must hold within one record before it is written: dates and figures in range, texts that texts can be.

use rusqlite::types::{ToSqlOutput, Value, ValueRef};
use rusqlite::{Connection, OptionalExtension as _};

use super::describe::describe_entry;
use super::error::StoreError;
use super::marks;
use super::refusal::Refusal;
use super::row::Shape;
use super::rows::{Table, values_of};
use crate::record::{Entry, EntryKind, FindingState, When, WorkState};

/// No figure of the trade comes near this; what does was typed wrong.
const GREATEST: f64 = 1e12;

const ABOVE_ZERO: (f64, f64, &str) = (f64::MIN_POSITIVE, GREATEST, "above 0");
const FROM_ZERO: (f64, f64, &str) = (0.0, GREATEST, "0 or more");
const FROM_ONE: (f64, f64, &str) = (1.0, 10_000.0, "1 to 10000");

/// Least and greatest value of a column, and how a message says so.
fn bounds(kind: EntryKind, column: &str) -> (f64, f64, &'static str) {
    use EntryKind::{
        Attachment, Capacitor, CapacitorLook, DesignCapacitor, DesignConnector, DesignFigure, KitLine, Look, Material,
        MaterialUse, Photo, PhotoMark, Role,
    };
    match (kind, column) {
        (DesignConnector | Role, "count") => FROM_ONE,
        (PhotoMark, "red" | "green" | "blue") => (0.0, 1.0, "0 to 1"),
        (Look, "share_percent") | (PhotoMark, "clipped_percent") => (0.0, 100.0, "0 to 100"),
        (Material, "stock" | "minimum" | "on_order") | (CapacitorLook, "measured_uf" | "esr_mohm" | "leakage_ua") => {
            FROM_ZERO
        }
        (MaterialUse, "amount")
        | (DesignFigure, "at_bus_mhz")
        | (PhotoMark, "length_mm" | "breadth_mm")
        | (
            Capacitor | DesignCapacitor | Material | KitLine,
            "capacitance_uf" | "voltage_v" | "diameter_mm" | "height_mm" | "pitch_mm",
        ) => ABOVE_ZERO,
        (Capacitor | DesignCapacitor | Material | KitLine, "temperature_c") => (-100.0, 500.0, "-100 to 500"),
        (Material | KitLine, "price_cents") => (0.0, 1e12, "0 or more"),
        (Photo, "width_px" | "height_px") | (KitLine, "from_stock" | "to_buy" | "spares") => (0.0, 1e6, "0 to 1000000"),
        (Attachment, "bytes") => (0.0, 1e15, "0 to 1000000000000000"),
        (_, "minutes") => (0.0, 100_000.0, "0 to 100000"),
        _ => (-1e15, 1e15, "a figure of ordinary size"),
    }
}

/// Checks an entry by itself, and that its tag or name is free.
pub fn check(connection: &Connection, entry: &Entry) -> Result<(), StoreError> {
    let at = || describe_entry(connection, entry);
    let kind = entry.key().kind;
    for (column, value) in Table::of_kind(kind).columns.iter().zip(values_of(entry)) {
        let field = || column.name.clone();
        let figure = match &value {
            ToSqlOutput::Owned(Value::Integer(number)) => *number as f64,
            ToSqlOutput::Owned(Value::Real(number)) => *number,
            ToSqlOutput::Borrowed(ValueRef::Text(text)) => {
                if text.contains(&0) {
                    return Err(Refusal::BadText { at: at(), field: field() }.into());
                }
                continue;
            }
            ToSqlOutput::Owned(Value::Text(text)) if column.shape == Shape::Date => {
                if text.parse::<When>().is_err() {
                    let bounds = "a date of the years 1900 to 2199";
                    return Err(Refusal::Figure { at: at(), field: field(), value: text.clone(), bounds }.into());
                }
                continue;
            }
            _ => continue,
        };
        let (least, greatest, bounds) = bounds(kind, &column.name);
        let real = column.shape != Shape::Real || figure.abs() <= GREATEST;
        if !(least..=greatest).contains(&figure) || !real {
            return Err(Refusal::Figure { at: at(), field: field(), value: figure.to_string(), bounds }.into());
        }
    }
    check_meaning(connection, entry, at)
}

fn filled(text: &str, field: &'static str, at: impl Fn() -> String) -> Result<(), Refusal> {
    if text.trim().is_empty() { Err(Refusal::Empty { at: at(), field }) } else { Ok(()) }
}

fn one_of(owners: &[bool], choices: &'static str, at: impl Fn() -> String) -> Result<(), Refusal> {
    match owners.iter().filter(|told| **told).count() {
        1 => Ok(()),
        _ => Err(Refusal::OneOwner { at: at(), field: "owner", choices }),
    }
}

/// Whether another row of a table carries the same text.
fn is_taken(connection: &Connection, sql: &str, text: &str, id: uuid::Uuid) -> Result<bool, rusqlite::Error> {
    let mut statement = connection.prepare_cached(sql)?;
    Ok(statement.query_row(rusqlite::params![text, id.as_bytes()], |_| Ok(())).optional()?.is_some())
}

fn check_meaning(connection: &Connection, entry: &Entry, at: impl Fn() -> String) -> Result<(), StoreError> {
    match entry {
        Entry::Part(part) => {
            filled(&part.tag, "tag", &at)?;
            if is_taken(connection, "SELECT 1 FROM part WHERE tag = ? AND id <> ?", &part.tag, part.id.uuid())? {
                return Err(Refusal::DoubledTag { tag: part.tag.clone() }.into());
            }
        }
        Entry::Machine(machine) => {
            filled(&machine.name, "name", &at)?;
            let sql = "SELECT 1 FROM machine WHERE name = ? AND id <> ?";
            if is_taken(connection, sql, &machine.name, machine.id.uuid())? {
                return Err(Refusal::DoubledMachine { name: machine.name.clone() }.into());
            }
            let ends = machine.window_from.span().zip(machine.window_to.span());
            if ends.is_some_and(|(from, to)| from.first > to.last) {
                return Err(Refusal::WindowReversed { at: at() }.into());
            }
        }
        Entry::Place(place) => filled(&place.name, "name", &at)?,
        Entry::Material(material) => filled(&material.name, "name", &at)?,
        Entry::Kit(kit) => filled(&kit.name, "name", &at)?,
        Entry::DesignCapacitor(position) => filled(&position.designator, "designator", &at)?,
        Entry::Work(work) if matches!(work.state, WorkState::Waived | WorkState::Failed) => {
            filled(&work.reason, "reason", &at)?;
        }
        Entry::Look(look) if look.state == FindingState::Accepted => filled(&look.reason, "reason", &at)?,
        Entry::Fitting(fitting) if fitting.removed.is_some_and(|removed| fitting.fitted.is_after(removed)) => {
            return Err(Refusal::RemovedBeforeFitted { at: at() }.into());
        }
        Entry::Reading(one) => one_of(&[one.part.is_some(), one.machine.is_some()], "part, machine", &at)?,
        Entry::Proof(one) => one_of(&[one.part.is_some(), one.machine.is_some()], "part, machine", &at)?,
        Entry::FaultCase(one) => one_of(&[one.part.is_some(), one.machine.is_some()], "part, machine", &at)?,
        Entry::Photo(photo) => {
            let owners = [photo.part.is_some(), photo.machine.is_some(), photo.lot.is_some()];
            one_of(&owners, "part, machine, lot", &at)?;
            content(&photo.content, &at)?;
            if photo.extension.is_empty() || !photo.extension.bytes().all(|byte| byte.is_ascii_alphanumeric()) {
                let value = photo.extension.clone();
                let bounds = "the letters and digits that a file name ends in";
                return Err(Refusal::Figure { at: at(), field: "extension".into(), value, bounds }.into());
            }
        }
        Entry::Attachment(one) => {
            one_of(&[one.part.is_some(), one.machine.is_some(), one.lot.is_some()], "part, machine, lot", &at)?;
            content(&one.content, &at)?;
        }
        Entry::PhotoMark(mark) => marks::check(mark, &at)?,
        Entry::Survey(survey) => {
            for answer in &survey.answers {
                if answer.figure.is_some_and(|figure| figure.is_nan() || figure.abs() > GREATEST) {
                    let field = format!("answers/{}", answer.question);
                    let value = answer.figure.unwrap_or_default().to_string();
                    let bounds = "a figure of ordinary size";
                    return Err(Refusal::Figure { at: at(), field, value, bounds }.into());
                }
            }
        }
        _ => {}
    }
    Ok(())
}

/// A hash names a file, so nothing but a hash may stand there.
fn content(hash: &str, at: impl Fn() -> String) -> Result<(), Refusal> {
    let fits = hash.len() == 64 && hash.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'));
    if fits {
        return Ok(());
    }
    let bounds = "a SHA-256 in 64 small hexadecimal digits";
    Err(Refusal::Figure { at: at(), field: "content".into(), value: hash.to_owned(), bounds })
}
