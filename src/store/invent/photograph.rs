//! Invented photographs: small ones, each different.

use std::fs;

use chrono::NaiveDate;

use super::super::authoring::key;
use super::super::files;
use super::chance::Chance;
use crate::record::{Change, Moment, Photo, PhotoView, When, Word as _};
use crate::store::{Store, StoreError};
use crate::text;

/// The most photographs that are invented.
pub const MOST_PHOTOGRAPHS: u32 = 200_000;

/// Adds `count` photographs (at most [`MOST_PHOTOGRAPHS`]) to the parts of a logbook, as if today were `today`. `draw`
/// makes the JPEG file of a number, `size_px` wide and high. Waits for the disk.
pub fn photographs(
    store: &Store,
    today: NaiveDate,
    count: u32,
    seed: u64,
    size_px: [u32; 2],
    draw: impl Fn(u32) -> Vec<u8>,
) -> Result<(), StoreError> {
    let count = count.min(MOST_PHOTOGRAPHS);
    // Another run of chance than that of the parts, whose keys these must not meet.
    let mut chance = Chance::new(!seed);
    let logbook = store.logbook();
    let mut change = Change::new(text!("Invent {count} photographs", count = count));
    for number in 0..count {
        let Some(part) = (!logbook.parts.is_empty()).then(|| chance.of(&logbook.parts)) else { break };
        let bytes = draw(number);
        let caption =
            if chance.percent(40) { text!("Photograph {number}", number = number + 1) } else { String::new() };
        let photo = Photo {
            id: key(&mut || chance.id()),
            part: Some(part.part.id),
            machine: None,
            lot: None,
            content: files::hash_of_bytes(&bytes),
            extension: "jpg".to_owned(),
            width_px: size_px[0],
            height_px: size_px[1],
            added: Moment::on(today),
            taken: if chance.percent(90) { chance.day_before(today, 0, 2000) } else { When::Unknown },
            view: *chance.of(PhotoView::ALL),
            caption,
            is_map: false,
        };
        // Not forced to the disk one by one as real ones are: these can be made again.
        let path = store.photo_path(&photo);
        let folder = path.parent().unwrap_or(&path);
        let written = fs::create_dir_all(folder).and_then(|()| fs::write(&path, bytes));
        written.map_err(|error| StoreError::file("Writing an invented photograph", error, &path))?;
        change.put(photo);
    }
    store.write(change)?;
    Ok(())
}
