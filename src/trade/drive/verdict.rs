//! A drive on a given firmware and file system: seen whole, clipped, or not usable.

use serde::Serialize;

use super::firmware::{Beyond, Firmware, UNTRANSLATED};
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
    /// Size of a cluster that formatting the largest one as FAT16 picks, in bytes; `None` for other file systems.
    pub cluster_bytes: Option<u32>,
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

/// Judges a drive of `bytes` bytes. Its own geometry matters where an old drive has fewer than 16 heads or 63
/// sectors a track; without one it is taken to report what ATA drives of its size do. Without a file system the
/// firmware alone decides.
pub fn judge(
    bytes: u64,
    geometry: Option<Geometry>,
    firmware: &Firmware,
    file_system: Option<&FileSystem>,
) -> DriveVerdict {
    let mut remarks = Vec::new();
    let mut seen = bytes;
    let mut usable = true;
    let reported = geometry.unwrap_or_else(|| identify(bytes / SECTOR_BYTES));
    let firmware_bytes = match geometry {
        Some(own) if firmware.id == UNTRANSLATED => Some(untranslated(own).bytes()),
        _ => firmware.most_bytes,
    };
    if let Some(most) = firmware_bytes.filter(|most| bytes > *most) {
        let limit = Capacity::of(most).said();
        match firmware.beyond {
            Beyond::Clips if file_system.is_some_and(|system| system.own_driver) => {
                remarks.push(text!(
                    "The firmware reaches {limit}; the running system reaches past it, but must start from there.",
                    limit = limit
                ));
            }
            Beyond::Clips => {
                seen = most;
                remarks.push(text!("The firmware reaches {limit}.", limit = limit));
            }
            Beyond::Fails => {
                usable = false;
                remarks.push(text!("The firmware hangs or fails with more than {limit}.", limit = limit));
            }
        }
        remarks.push(firmware.remedy.to_owned());
    }
    if let Some((system, most)) = file_system.and_then(|system| Some((system, system.drive_bytes?)))
        && seen > most
    {
        seen = most;
        let (label, limit) = (system.label, Capacity::of(most).said());
        remarks.push(text!("{system} reaches {limit} of a drive.", system = label, limit = limit));
    }
    if let Some(system) = file_system.filter(|system| !system.note.is_empty()) {
        remarks.push(system.note.to_owned());
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
        Partitions {
            largest_bytes,
            least_count: if largest_bytes == 0 { 0 } else { seen.div_ceil(largest_bytes) },
            cluster_bytes: system.default_cluster_bytes(largest_bytes),
        }
    });
    let shown = if usable { shown_by(firmware, seen / SECTOR_BYTES, reported) } else { None };
    DriveVerdict { outcome, capacity: Capacity::of(bytes), reported, shown, partitions, remarks }
}

/// What is left of a geometry that goes to firmware calls and drive alike: 1024 cylinders, 16 heads, 63 sectors.
fn untranslated(own: Geometry) -> Geometry {
    Geometry { cylinders: own.cylinders.min(1024), heads: own.heads.min(16), sectors: own.sectors.min(63) }
}

fn shown_by(firmware: &Firmware, seen_sectors: u64, reported: Geometry) -> Option<Geometry> {
    match firmware.id {
        UNTRANSLATED => Some(untranslated(reported)),
        "heads-doubled" => doubled(reported, false),
        "heads-240" => doubled(identify(seen_sectors), true),
        _ => Some(assisted(seen_sectors)),
    }
}
