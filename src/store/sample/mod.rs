//! The sample workshop: tables in `resources/sample/`, written into a new logbook as a person would write them.

mod date;
mod kits;
mod life;
mod machines;
mod noted;
mod pictures;
mod subject;
mod tables;
mod workshop;

use std::collections::HashMap;
use std::path::Path;

use chrono::NaiveDate;

pub use subject::{Shape, Subject};

use super::authoring::Ids;
use super::{FileSource, Store, StoreError};
use crate::record::{DesignId, LotId, MaterialId, PartId, PlaceId};
use crate::rules::Rules;
use tables::Tables;

/// The files of the sample, in the order in which they are written.
const FILES: [(&str, &str); 13] = [
    ("workshop.toml", include_str!("../../../resources/sample/workshop.toml")),
    ("designs-boards.toml", include_str!("../../../resources/sample/designs-boards.toml")),
    ("designs-cards.toml", include_str!("../../../resources/sample/designs-cards.toml")),
    ("designs-rest.toml", include_str!("../../../resources/sample/designs-rest.toml")),
    ("front-desk.toml", include_str!("../../../resources/sample/front-desk.toml")),
    ("library.toml", include_str!("../../../resources/sample/library.toml")),
    ("bookkeeper.toml", include_str!("../../../resources/sample/bookkeeper.toml")),
    ("schoolroom.toml", include_str!("../../../resources/sample/schoolroom.toml")),
    ("family.toml", include_str!("../../../resources/sample/family.toml")),
    ("studio.toml", include_str!("../../../resources/sample/studio.toml")),
    ("cafe.toml", include_str!("../../../resources/sample/cafe.toml")),
    ("shelf-boards.toml", include_str!("../../../resources/sample/shelf-boards.toml")),
    ("shelf-rest.toml", include_str!("../../../resources/sample/shelf-rest.toml")),
];

/// Something in the tables that does not hold together: a name that stands nowhere, work that is not outstanding.
#[derive(Debug, thiserror::Error)]
#[error("the sample workshop, {at}: {fault}")]
pub struct Fault {
    pub at: String,
    pub fault: String,
}

/// Draws a photograph: the bytes of a JPEG file.
pub type Draw = fn(&Subject) -> Vec<u8>;

/// What the tables' names stand for, and what every writer of them needs.
struct Book<'a> {
    rules: &'a Rules,
    today: NaiveDate,
    keeper: String,
    places: HashMap<String, PlaceId>,
    lots: HashMap<String, LotId>,
    materials: HashMap<String, MaterialId>,
    designs: HashMap<String, (DesignId, crate::record::Kind)>,
    parts: HashMap<String, PartId>,
    /// Names of designs, and what their parts look like, for pictures.
    looks: HashMap<String, (String, Option<Subject>)>,
}

/// A photograph to be drawn for a record that is already written.
struct Shot {
    photo: crate::record::Photo,
    subject: Subject,
    marks: Vec<crate::record::PhotoMark>,
}

/// A file to be kept with a part.
struct Sheet {
    attachment: crate::record::Attachment,
    text: String,
}

/// What a row names, where it names anything.
fn find<T: Copy>(known: &HashMap<String, T>, name: Option<&String>, what: &str) -> Result<Option<T>, Fault> {
    let Some(name) = name else { return Ok(None) };
    let fault = || Fault { at: what.to_owned(), fault: format!("“{name}” stands nowhere") };
    known.get(name).copied().ok_or_else(fault).map(Some)
}

/// Makes the sample workshop in a new logbook at `path`, as if today were `today`. Waits for the disk.
pub fn create(path: &Path, today: NaiveDate, draw: Draw) -> Result<Store, StoreError> {
    let tables = read().expect("the shipped sample is read by a test");
    let keeper = tables.workshop.as_ref().expect("the shipped sample has a title page");
    let store = Store::create(path, workshop::title_page(keeper))?;
    let written = fill(&store, &tables, today, draw);
    if let Err(error) = written {
        drop(store);
        // What was begun here is of no use half done.
        let _ = std::fs::remove_dir_all(path);
        return Err(error);
    }
    Ok(store)
}

fn read() -> Result<Tables, Fault> {
    let mut all = Tables::default();
    for (at, text) in FILES {
        let tables: Tables =
            toml::from_str(text).map_err(|error| Fault { at: at.to_owned(), fault: error.to_string() })?;
        let Tables { workshop, place, lot, material, design, part, machine, order, kit } = tables;
        all.workshop = all.workshop.or(workshop);
        all.place.extend(place);
        all.lot.extend(lot);
        all.material.extend(material);
        all.design.extend(design);
        all.part.extend(part);
        all.machine.extend(machine);
        all.order.extend(order);
        all.kit.extend(kit);
    }
    Ok(all)
}

fn fill(store: &Store, tables: &Tables, today: NaiveDate, draw: Draw) -> Result<(), StoreError> {
    let ids: &mut Ids = &mut uuid::Uuid::now_v7;
    let rules = Rules::shipped();
    let keeper = tables.workshop.as_ref().map_or_else(String::new, |row| row.keeper.clone());
    let mut book = Book {
        rules: &rules,
        today,
        keeper,
        places: HashMap::new(),
        lots: HashMap::new(),
        materials: HashMap::new(),
        designs: HashMap::new(),
        parts: HashMap::new(),
        looks: HashMap::new(),
    };
    let sound = "every name in the shipped sample is checked by a test";
    store.found(workshop::change(tables, &mut book, ids).expect(sound))?;
    // Parts are named before they are written: a trial may name one that is logged later.
    for tag in tables.part.iter().flat_map(life::tags) {
        book.parts.insert(tag.to_owned(), Store::new_id());
    }
    let (mut shots, mut sheets) = (Vec::new(), Vec::new());
    for row in &tables.part {
        for tag in life::tags(row) {
            let written = life::change(row, tag, &book, ids, &mut shots, &mut sheets).expect(sound);
            store.found(written)?;
        }
    }
    for row in &tables.part {
        if let Some(cases) = life::cases(row, &book, ids).expect(sound) {
            store.found(cases)?;
        }
    }
    if !tables.order.is_empty() {
        store.found(life::orders(&tables.order, &store.logbook(), ids).expect(sound))?;
    }
    for row in &tables.machine {
        let written = machines::change(row, &book, ids, &mut shots).expect(sound);
        store.found(written)?;
    }
    kits::grow_designs(store, ids)?;
    for row in &tables.kit {
        kits::write(row, store, &book, ids)?;
    }
    keep(store, shots, sheets, draw)
}

/// Draws and keeps the photographs, each distinct one once, and the files.
fn keep(store: &Store, shots: Vec<Shot>, sheets: Vec<Sheet>, draw: Draw) -> Result<(), StoreError> {
    let mut subjects: Vec<&Subject> = Vec::new();
    let mut drawn_as = Vec::new();
    for shot in &shots {
        let at = subjects.iter().position(|known| **known == shot.subject).unwrap_or_else(|| {
            subjects.push(&shot.subject);
            subjects.len() - 1
        });
        drawn_as.push(at);
    }
    let mut kept = Vec::new();
    for picture in draw_all(&subjects, draw) {
        kept.push(store.keep_photo(FileSource::Bytes(&picture), "jpg")?);
    }
    let mut change = crate::record::Change::new(crate::text!("Add photographs"));
    for (shot, at) in shots.into_iter().zip(drawn_as) {
        let Shot { mut photo, marks, .. } = shot;
        photo.content.clone_from(&kept[at].content);
        photo.extension.clone_from(&kept[at].extension);
        change.put(photo);
        change.put_all(marks.into_iter().map(Into::into));
    }
    for Sheet { mut attachment, text } in sheets {
        let file = store.keep_attachment(FileSource::Bytes(text.as_bytes()))?;
        attachment.content = file.content;
        attachment.bytes = file.bytes;
        change.put(attachment);
    }
    store.found(change)?;
    Ok(())
}

/// Draws on every core: drawing is most of what making the sample takes.
fn draw_all(subjects: &[&Subject], draw: Draw) -> Vec<Vec<u8>> {
    let hands = std::thread::available_parallelism().map_or(1, usize::from).min(8);
    let share = subjects.len().div_ceil(hands).max(1);
    std::thread::scope(|scope| {
        let drawing: Vec<_> = subjects
            .chunks(share)
            .map(|own| scope.spawn(move || own.iter().map(|subject| draw(subject)).collect::<Vec<_>>()))
            .collect();
        drawing.into_iter().flat_map(|hand| hand.join().unwrap_or_default()).collect()
    })
}
