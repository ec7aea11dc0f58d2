//! Invented logbooks of any size, for trying at scale: the same number and seed invent the same.

mod chance;
mod design;
mod figures;
mod machine;
mod part;
mod photograph;
mod supplies;

use std::path::Path;

use chrono::NaiveDate;

use super::authoring::key;
use super::{Store, StoreError};
use crate::record::{Change, Lot, LotId, Place, PlaceId, Workshop};
use crate::rules::Rules;
use crate::text;
use chance::Chance;
use design::Invented;

pub use photograph::{MOST_PHOTOGRAPHS, photographs};

/// The most parts that are invented: tags have six figures.
pub const MOST_PARTS: u32 = 200_000;

/// What parts refer to.
struct Ground {
    today: NaiveDate,
    rules: Rules,
    boxes: Vec<PlaceId>,
    lots: Vec<LotId>,
    designs: Vec<Invented>,
}

/// Makes a new logbook at `path` with `parts` invented parts (at most [`MOST_PARTS`]) and all that hangs on them, as
/// if today were `today`. Of 10,000 parts, about 60,000 findings, 100,000 capacitor positions, 40 machines and 20 kits
/// come. Waits for the disk.
pub fn create(path: &Path, today: NaiveDate, parts: u32, seed: u64) -> Result<Store, StoreError> {
    let parts = parts.min(MOST_PARTS);
    let mut chance = Chance::new(seed);
    let title_page = Workshop {
        id: key(&mut || chance.id()),
        name: text!("Invented workshop").to_owned(),
        keeper: "A. Nobody".to_owned(),
        currency: "EUR".to_owned(),
        note: text!("{count} invented parts, seed {seed}", count = parts, seed = seed),
    };
    let store = Store::create(path, title_page)?;
    let written = fill(&store, today, parts, &mut chance);
    if let Err(error) = written {
        drop(store);
        // What was begun here is of no use half done.
        let _ = std::fs::remove_dir_all(path);
        return Err(error);
    }
    Ok(store)
}

fn fill(store: &Store, today: NaiveDate, parts: u32, chance: &mut Chance) -> Result<(), StoreError> {
    // One change, since each change has to read back what it touched, and this one touches everything.
    let mut change = Change::new(text!("Invent {count} parts", count = parts));
    let ground = Ground {
        today,
        rules: Rules::shipped(),
        boxes: places(parts, chance, &mut change),
        lots: lots(parts, today, chance, &mut change),
        designs: design::designs(parts, chance, &mut change),
    };
    // What machines are to be made of is spread over all parts.
    let mut wanted = machine::wanted(parts);
    let every = parts / wanted.len() as u32 + 1;
    let mut found = machine::Found::new();
    let mut containers = Vec::new();
    for number in 1..=parts {
        let want = if number % every == 0 || parts - number < wanted.len() as u32 { wanted.pop_front() } else { None };
        let (id, entries) = part::invent(number, want.as_ref(), &ground, &mut containers, chance);
        if let Some(want) = want {
            found.entry((want.machine, want.kind)).or_default().push(id);
        }
        change.put_all(entries);
    }
    for number in 1..=machine::count(parts) {
        machine::invent(number, &ground, &mut found, chance, &mut change);
    }
    store.found(change)?;
    supplies::invent(store, &ground, parts, chance)
}

/// A room, its shelves and their boxes, about one box for forty parts; the boxes.
fn places(parts: u32, chance: &mut Chance, change: &mut Change) -> Vec<PlaceId> {
    let mut put = |name: String, within: Option<PlaceId>, change: &mut Change| {
        let id = key(&mut || chance.id());
        change.put(Place { id, within, name, note: String::new() });
        id
    };
    let room = put(text!("Store room").to_owned(), None, change);
    let mut boxes = Vec::new();
    for shelf in 1..=(parts / 400 + 1) {
        let name = text!("Shelf {number}", number = shelf);
        let shelf = put(name, Some(room), change);
        for _ in 0..10 {
            let name = text!("Box {number}", number = boxes.len() + 1);
            boxes.push(put(name, Some(shelf), change));
        }
    }
    boxes
}

/// About one lot for twenty parts.
fn lots(parts: u32, today: NaiveDate, chance: &mut Chance, change: &mut Change) -> Vec<LotId> {
    let mut lots = Vec::new();
    for number in 1..=(parts / 20 + 1) {
        let lot = Lot {
            id: key(&mut || chance.id()),
            name: text!("Lot {number}", number = number),
            acquired: chance.day_before(today, 1500, 4000),
            source: (*chance.of(&["Swap meet", "Office clear-out", "Attic", "Online auction", "Gift"])).to_owned(),
            price_cents: Some(i64::from(chance.between(0, 400)) * 50),
            note: String::new(),
        };
        lots.push(lot.id);
        change.put(lot);
    }
    lots
}
