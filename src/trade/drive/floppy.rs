//! Floppy formats: tracks, sides, sectors, bytes, coercivity.

use serde::Serialize;

use super::SECTOR_BYTES;
use crate::text;
use crate::trade::Source;

/// A format that a floppy drive reads and writes.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FloppyFormat {
    /// What it is called; "1.44M" counts 1000 × 1024 bytes, neither decimal nor binary megabytes.
    pub name: &'static str,
    /// Disk size in inches.
    pub inches: f64,
    /// Tracks a side.
    pub tracks: u32,
    /// Sides.
    pub sides: u32,
    /// Sectors a track, of 512 bytes.
    pub sectors: u32,
    /// Coercivity of the medium in oersted.
    pub coercivity_oe: u32,
    /// What to look out for; empty when nothing.
    pub note: &'static str,
    /// Where it stands.
    pub source: Source,
}

impl FloppyFormat {
    /// Bytes in all.
    pub fn bytes(&self) -> u64 {
        self.total_sectors() * SECTOR_BYTES
    }

    /// Sectors in all.
    pub fn total_sectors(&self) -> u64 {
        u64::from(self.tracks * self.sides * self.sectors)
    }
}

/// All formats, the smallest first.
pub fn floppy_formats() -> Vec<FloppyFormat> {
    const PC_GUIDE: Source =
        Source::published("PC Guide, floppy disk media geometry; coercivity: Wikipedia, Floppy disk variants");
    const EARLY: Source = Source::memory("DOS technical reference");
    let half_tracks = text!(
        "Written in a 1.2M drive its tracks are half as wide: a 360K drive may then read old and new data mixed."
    );
    let row = |name, inches, tracks, sides, sectors, coercivity_oe, note, source| FloppyFormat {
        name,
        inches,
        tracks,
        sides,
        sectors,
        coercivity_oe,
        note,
        source,
    };
    vec![
        row("160K", 5.25, 40, 1, 8, 300, "", EARLY),
        row("180K", 5.25, 40, 1, 9, 300, "", EARLY),
        row("320K", 5.25, 40, 2, 8, 300, "", EARLY),
        row("360K", 5.25, 40, 2, 9, 300, half_tracks, PC_GUIDE),
        row("720K", 3.5, 80, 2, 9, 600, "", PC_GUIDE),
        row("1.2M", 5.25, 80, 2, 15, 600, text!("Turns at 360 rpm, the others at 300."), PC_GUIDE),
        row("1.44M", 3.5, 80, 2, 18, 750, "", PC_GUIDE),
        row("2.88M", 3.5, 80, 2, 36, 900, "", PC_GUIDE),
    ]
}
