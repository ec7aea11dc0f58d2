//! Drives: capacity, geometry and addresses; the barriers of firmware and file systems; floppy formats.

mod barrier;
mod capacity;
mod file_system;
mod firmware;
mod floppy;
mod geometry;
mod verdict;

pub use barrier::{Barrier, barriers, crossed};
pub use capacity::{Capacity, parse_capacity};
pub use file_system::{FileSystem, file_systems};
pub use firmware::{Beyond, Firmware, firmwares};
pub use floppy::{FloppyFormat, floppy_formats};
pub use geometry::{Geometry, Position, assisted, doubled, identify};
pub use verdict::{DriveVerdict, Outcome, Partitions, judge};

/// Bytes in a sector of every drive this is about.
pub const SECTOR_BYTES: u64 = 512;
