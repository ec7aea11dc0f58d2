//! The exchange document: one JSON file with everything but picture bytes.

use std::collections::HashMap;
use std::path::Path;

use serde::Deserialize;

use super::error::StoreError;
use super::rows::Document;
use super::write::Fault;
use super::{exchange_faults, load};
use crate::record::{Change, Entry, EntryKey, EntryKind, Logbook, Word as _};
use crate::text;

/// The document's JSON Schema.
pub const SCHEMA: &str = include_str!("../../resources/exchange.schema.json");

const FORMAT: &str = "benchwright-exchange";
const VERSION: u32 = 1;

/// All records of a logbook's database as a document.
pub fn export(database: &Path) -> Result<String, StoreError> {
    let (_, records) = load::records(database)?;
    let document = Document::of(FORMAT, VERSION, records);
    serde_json::to_string_pretty(&document)
        .map_err(|error| StoreError::BadDocument { place: String::new(), reason: error.to_string() })
}

/// A document that was read: the change that writes it, and where in the document each record stands.
pub struct Import {
    pub change: Change,
    places: HashMap<EntryKey, String>,
}

/// What says which kind of document it is; all else is left for later.
#[derive(Deserialize)]
struct Heading {
    format: String,
    version: u32,
}

fn parse<'d, T: Deserialize<'d>>(document: &'d str) -> Result<T, StoreError> {
    let mut reader = serde_json::Deserializer::from_str(document);
    let value =
        serde_path_to_error::deserialize(&mut reader).map_err(|error| exchange_faults::fault(document, &error))?;
    reader.end().map_err(|error| exchange_faults::no_json(&error))?;
    Ok(value)
}

fn bad(place: String, reason: String) -> StoreError {
    StoreError::BadDocument { place, reason }
}

/// Reads a document that is to be written into `logbook`.
pub fn read(document: &str, logbook: &Logbook) -> Result<Import, StoreError> {
    // Editors of some systems put a byte-order mark before a text.
    let document = document.trim_start_matches('\u{feff}');
    let heading: Heading = parse(document)?;
    if heading.format != FORMAT {
        return Err(bad("format".to_owned(), text!("it says “{found}”", found = heading.format)));
    }
    if heading.version != VERSION {
        let reason = text!("it is {found}, and this program reads {known}", found = heading.version, known = VERSION);
        return Err(bad("version".to_owned(), reason));
    }
    let mut records = parse::<Document>(document)?.into_records();
    let Some(page) = records.workshop.first() else {
        return Err(bad("workshop".to_owned(), text!("the title page is missing").to_owned()));
    };
    let mut change = Change::new(text!("Import from {name}", name = page.name));
    if page.id != logbook.workshop.id {
        if is_blank(logbook) {
            change.remove(logbook.workshop.id);
        } else {
            records.workshop.clear();
        }
    }
    let mut places = HashMap::new();
    let mut counts: HashMap<EntryKind, usize> = HashMap::new();
    let entries = records.into_entries();
    for entry in &entries {
        let key = entry.key();
        let count = counts.entry(key.kind).or_default();
        let place = match key.kind {
            EntryKind::Workshop => key.kind.name().to_owned(),
            kind => place(kind, *count, entry),
        };
        *count += 1;
        if let Some(first) = places.insert(key, place.clone()) {
            return Err(bad(format!("{place}, id"), text!("{first} has the same key", first = first)));
        }
    }
    change.put_all(entries);
    Ok(Import { change, places })
}

/// Where in the document a record stands: a part by its tag, any other by its number in its list.
fn place(kind: EntryKind, count: usize, entry: &Entry) -> String {
    match entry {
        Entry::Part(part) if !part.tag.is_empty() => format!("{} {}", kind.name(), part.tag),
        _ => format!("{} {}", kind.name(), count + 1),
    }
}

/// Whether a logbook holds nothing but its title page.
fn is_blank(logbook: &Logbook) -> bool {
    let Logbook { revision: _, workshop: _, places, lots, designs, parts, machines, materials, kits } = logbook;
    places.is_empty()
        && lots.is_empty()
        && designs.is_empty()
        && parts.is_empty()
        && machines.is_empty()
        && materials.is_empty()
        && kits.is_empty()
}

impl Import {
    /// Says where in the document a refusal came from.
    pub fn explain(&self, fault: Fault) -> StoreError {
        let place = fault.key.and_then(|key| self.places.get(&key));
        match (fault.error, place) {
            (StoreError::Refused(refusal), Some(place)) => bad(place.clone(), refusal.to_string()),
            (error, _) => error,
        }
    }
}
