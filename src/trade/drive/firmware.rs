//! Boards' firmware by what it can address, and what a larger drive does there.

use serde::Serialize;

use super::Geometry;
use crate::text;
use crate::trade::Source;

/// What a drive beyond the limit does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Beyond {
    /// Works, with only the first part to be seen.
    Clips,
    /// The machine hangs, or the system cannot use what it is shown.
    Fails,
}

/// A class of firmware.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Firmware {
    /// Key on the console and in records.
    pub id: &'static str,
    /// In words.
    pub label: &'static str,
    /// Most it can address, in bytes; `None` for no limit that a drive of the period reaches.
    pub most_bytes: Option<u64>,
    /// What larger drives do.
    pub beyond: Beyond,
    /// What to try with a larger drive.
    pub remedy: &'static str,
    /// Where it stands.
    pub source: Source,
}

/// Key of the firmware that hands the drive's own geometry on.
pub(super) const UNTRANSLATED: &str = "untranslated";

const HOWTO: Source = Source::published("Large Disk HOWTO 2.2x, history of BIOS and IDE limits");

/// All classes, the most limited first.
pub fn firmwares() -> Vec<Firmware> {
    let another_way =
        text!("A controller with its own firmware, newer board firmware, or a drive manager on the drive.");
    let jumper = text!("A clip jumper on the drive, a smaller drive, or newer firmware.");
    let row = |id, label, geometry: Geometry, beyond, remedy| Firmware {
        id,
        label,
        most_bytes: Some(geometry.bytes()),
        beyond,
        remedy,
        source: HOWTO,
    };
    vec![
        row(
            UNTRANSLATED,
            text!("no translation (to about 1994)"),
            Geometry::new(1024, 16, 63),
            Beyond::Clips,
            another_way,
        ),
        row(
            "cylinders-12-bit",
            text!("4095 cylinders (to about 1996)"),
            Geometry::new(4095, 16, 63),
            Beyond::Fails,
            jumper,
        ),
        Firmware {
            most_bytes: Some(3_277_000_000),
            ..row("locks-3.2gb", text!("set-up locks up above 3277 MB"), Geometry::new(1, 1, 1), Beyond::Fails, jumper)
        },
        row(
            "heads-doubled",
            text!("\"large\" translation up to 128 heads (to about 1997)"),
            Geometry::new(1024, 128, 63),
            Beyond::Fails,
            text!("Choose assisted translation where the set-up has it; else a drive manager or a smaller drive."),
        ),
        row(
            "heads-240",
            text!("\"large\" translation up to 240 heads"),
            Geometry::new(1024, 240, 63),
            Beyond::Clips,
            another_way,
        ),
        row(
            "assisted",
            text!("assisted translation (\"LBA\") without extended calls (to about 1998)"),
            Geometry::new(1024, 255, 63),
            Beyond::Clips,
            another_way,
        ),
        row(
            "cylinders-16-bit",
            text!("extended calls, 65 535 cylinders (to about 1999)"),
            Geometry::new(65_535, 16, 63),
            Beyond::Fails,
            jumper,
        ),
        Firmware {
            most_bytes: Some(1 << 37),
            source: Source::published("PC Magazine encyclopedia, hard disk capacity barriers"),
            ..row(
                "lba-28",
                text!("28-bit addresses (to about 2002)"),
                Geometry::new(1, 1, 1),
                Beyond::Clips,
                another_way,
            )
        },
        Firmware {
            most_bytes: None,
            source: Source::memory("ATA/ATAPI-6"),
            ..row("lba-48", text!("48-bit addresses"), Geometry::new(1, 1, 1), Beyond::Clips, "")
        },
    ]
}
