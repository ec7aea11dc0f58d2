//! A drive on a given firmware and file system: seen whole, clipped, or not usable.

use serde::Serialize;

use super::firmware::{Beyond, Firmware};
use super::{Capacity, FileSystem, Geometry, SECTOR_BYTES, assisted, doubled, identify};
use crate::text;

/// What comes of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(tag = "outcome", rename_all = "kebab-case")]
pub enum Outcome {
    /// All of it can be used (but for up to a cylinder at the end).
    SeenWhole,
    /// Only this much of it.
    ClippedTo {
        /// Bytes to be seen.
        bytes: u64,
    },
    /// The machine hangs or cannot use it as it is.
    NotUsable,
}

/// How the seen part is divided.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Partitions {
    /// Largest one, in bytes.
    pub largest_bytes: u64,
    /// How few of that size cover what is seen; 0 when nothing is.
    pub least_count: u64,
}

/// The whole answer.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct DriveVerdict {
    /// What comes of it.
    #[serde(flatten)]
    pub outcome: Outcome,
    /// The drive's capacity.
    pub capacity: Capacity,
    /// What the drive reports to the firmware.
    pub reported: Geometry,
    /// What the firmware shows to DOS, where it can show anything.
    pub shown: Option<Geometry>,
    /// Partitions; `None` without a file system.
    pub partitions: Option<Partitions>,
    /// Why, and what to try.
    pub remarks: Vec<String>,
}

/// Judges a drive of `bytes` bytes. Without a file system the firmware alone decides.
pub fn judge(bytes: u64, firmware: &Firmware, file_system: Option<&FileSystem>) -> DriveVerdict {
    let mut remarks = Vec::new();
    let mut seen = bytes;
    let mut usable = true;
    if let Some(most) = firmware.most_bytes.filter(|most| bytes > *most) {
        let limit = Capacity::of(most).said();
        match firmware.beyond {
            Beyond::Clips => {
                seen = most;
                remarks.push(text!("The firmware reaches {limit}.", limit = limit));
            }
            Beyond::Fails => {
                usable = false;
                remarks.push(text!("The firmware hangs or fails with more than {limit}.", limit = limit));
            }
        }
        remarks.push(crate::text::say(firmware.remedy).to_owned());
    }
    if let Some((system, most)) = file_system.and_then(|system| Some((system, system.drive_bytes?)))
        && seen > most
    {
        seen = most;
        let (label, limit) = (crate::text::say(system.label), Capacity::of(most).said());
        remarks.push(text!("{system} reaches {limit} of a drive.", system = label, limit = limit));
    }
    if let Some(system) = file_system.filter(|system| !system.note.is_empty()) {
        remarks.push(crate::text::say(system.note).to_owned());
    }
    let outcome = if !usable {
        Outcome::NotUsable
    } else if seen < bytes {
        Outcome::ClippedTo { bytes: seen }
    } else {
        Outcome::SeenWhole
    };
    let partitions = file_system.filter(|_| usable).map(|system| {
        let largest_bytes = system.partition_bytes.min(seen);
        Partitions { largest_bytes, least_count: if largest_bytes == 0 { 0 } else { seen.div_ceil(largest_bytes) } }
    });
    let sectors = bytes / SECTOR_BYTES;
    let reported = identify(sectors);
    let shown = if usable { shown_by(firmware, seen / SECTOR_BYTES, reported) } else { None };
    DriveVerdict { outcome, capacity: Capacity::of(bytes), reported, shown, partitions, remarks }
}

fn shown_by(firmware: &Firmware, seen_sectors: u64, reported: Geometry) -> Option<Geometry> {
    match firmware.id {
        "untranslated" => Some(Geometry { cylinders: reported.cylinders.min(1024), ..reported }),
        "heads-doubled" => doubled(reported, false),
        "heads-240" => doubled(identify(seen_sectors), true),
        _ => Some(assisted(seen_sectors)),
    }
}
