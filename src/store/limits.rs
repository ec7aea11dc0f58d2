//! How long a text may be and how small a design's figure: asked of what is new or changed, so that what stands in
//! older logbooks beyond a bound stays whole and its record can still be edited.

use rusqlite::Connection;

use super::describe::describe;
use super::error::StoreError;
use super::history::Image;
use super::refusal::Refusal;
use crate::record::{
    Answer, EntryKey, EntryKind, Figure, NAME_MOST, TAG_MOST, TEXT_MOST, Word as _, figure_is_above_zero, figure_unit,
};

/// The most characters that a column of text takes.
fn most(kind: EntryKind, column: &str) -> usize {
    use EntryKind::{
        Attachment, Capacitor, Design, DesignCapacitor, Kit, Lot, Machine, Material, Part, Place, Proof, Role, Setting,
        Work, Workshop,
    };
    match (kind, column) {
        (Part, "tag") => TAG_MOST,
        (Machine | Place | Lot | Material | Part | Role | Kit | Setting | Workshop, "name")
        | (Design, "maker" | "model" | "revision")
        | (Capacitor | DesignCapacitor, "designator")
        | (Attachment, "file_name")
        | (Proof, "test")
        | (Work, "title" | "rule") => NAME_MOST,
        _ => TEXT_MOST,
    }
}

/// No text is new or longer than it was, and beyond its bound.
pub fn texts(connection: &Connection, key: EntryKey, old: Option<&Image>, new: &Image) -> Result<(), StoreError> {
    for (field, value) in new {
        let Some(text) = value.as_str() else { continue };
        if key.kind == EntryKind::Survey && field == "answers" {
            answers(connection, key, old, text)?;
            continue;
        }
        let before = old.and_then(|old| old.get(field)?.as_str());
        grown(connection, key, field, text, before, most(key.kind, field))?;
    }
    Ok(())
}

/// A survey's answers lie in one column; each of their texts is measured by itself.
fn answers(connection: &Connection, key: EntryKey, old: Option<&Image>, text: &str) -> Result<(), StoreError> {
    // Bytes are never fewer than characters.
    if text.len() <= TEXT_MOST {
        return Ok(());
    }
    let before = old.map(answers_in).unwrap_or_default();
    for answer in serde_json::from_str::<Vec<Answer>>(text).unwrap_or_default() {
        let before = before.iter().find(|known| known.question == answer.question);
        let texts = [
            ("place_on_part", &answer.place_on_part, before.map(|known| known.place_on_part.as_str())),
            ("note", &answer.note, before.map(|known| known.note.as_str())),
        ];
        for (name, text, before) in texts {
            grown(connection, key, &format!("answers/{}/{name}", answer.question), text, before, TEXT_MOST)?;
        }
    }
    Ok(())
}

/// The answers in a survey's image.
pub fn answers_in(image: &Image) -> Vec<Answer> {
    image.get("answers").and_then(|text| serde_json::from_str(text.as_str()?).ok()).unwrap_or_default()
}

fn grown(
    connection: &Connection,
    key: EntryKey,
    field: &str,
    text: &str,
    before: Option<&str>,
    most: usize,
) -> Result<(), StoreError> {
    if text.len() <= most {
        return Ok(());
    }
    let count = text.chars().count();
    if count <= most || before.is_some_and(|before| before.chars().count() >= count) {
        return Ok(());
    }
    // What names the record may be the very text that is too long.
    let at: String = describe(connection, key).chars().take(NAME_MOST).collect();
    Err(Refusal::TooLong { at, field: field.to_owned(), count, most }.into())
}

/// A design's figure is none below 0, and above 0 where nothing else can be meant.
pub fn design_figure(
    connection: &Connection,
    key: EntryKey,
    old: Option<&Image>,
    new: &Image,
) -> Result<(), StoreError> {
    let number = |image: &Image, field: &str| image.get(field).and_then(serde_json::Value::as_f64);
    let name = new.get("figure").and_then(serde_json::Value::as_str).unwrap_or_default();
    let is_old = old.is_some_and(|old| ["figure", "value"].iter().all(|of| old.get(*of) == new.get(*of)));
    let (Some(value), false) = (number(new, "value"), is_old) else { return Ok(()) };
    let refuse = |field: String, value: f64, bounds| {
        Err(Refusal::Figure { at: describe(connection, key), field, value: value.to_string(), bounds }.into())
    };
    let is_above_zero = figure_is_above_zero(name);
    let has_unit = Figure::named(name).is_some() || !figure_unit(name).is_empty();
    match value {
        value if is_above_zero && value <= 0.0 => refuse(name.to_owned(), value, "above 0"),
        value if has_unit && value < 0.0 => refuse(name.to_owned(), value, "0 or more"),
        _ => Ok(()),
    }
}
