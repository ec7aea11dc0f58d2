//! Cylinders, heads and sectors, and the linear addresses they stand for.

use std::fmt;

use serde::{Deserialize, Serialize};

use super::SECTOR_BYTES;
use crate::text;

/// A geometry: cylinders by heads by sectors a track. No part is ever 0 when parsed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Geometry {
    /// Cylinders.
    pub cylinders: u32,
    /// Heads.
    pub heads: u32,
    /// Sectors a track.
    pub sectors: u32,
}

/// A place on a drive: cylinder and head from 0, sector from 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Position {
    /// Cylinder, from 0.
    pub cylinder: u32,
    /// Head, from 0.
    pub head: u32,
    /// Sector, from 1.
    pub sector: u32,
}

impl Geometry {
    /// From its three figures.
    pub const fn new(cylinders: u32, heads: u32, sectors: u32) -> Self {
        Self { cylinders, heads, sectors }
    }

    /// Sectors in all.
    pub const fn total_sectors(self) -> u64 {
        self.cylinders as u64 * self.heads as u64 * self.sectors as u64
    }

    /// Bytes in all.
    pub const fn bytes(self) -> u64 {
        self.total_sectors() * SECTOR_BYTES
    }

    /// Linear address of a position: cylinder × heads × sectors + head × sectors + (sector − 1).
    ///
    /// `None` outside the geometry. Source: Large Disk HOWTO 2.2x, "Disk Access".
    pub fn lba(self, at: Position) -> Option<u64> {
        let Self { cylinders, heads, sectors } = self;
        let inside = at.cylinder < cylinders && at.head < heads && (1..=sectors).contains(&at.sector);
        let (heads, sectors) = (u64::from(heads), u64::from(sectors));
        inside.then(|| (u64::from(at.cylinder) * heads + u64::from(at.head)) * sectors + u64::from(at.sector) - 1)
    }

    /// The position of a linear address; `None` past the end.
    pub fn position(self, lba: u64) -> Option<Position> {
        if lba >= self.total_sectors() {
            return None;
        }
        let (heads, sectors) = (u64::from(self.heads), u64::from(self.sectors));
        let track = lba / sectors;
        Some(Position {
            cylinder: (track / heads) as u32,
            head: (track % heads) as u32,
            sector: (lba % sectors) as u32 + 1,
        })
    }

    /// Reads "1024/16/63", also with `x`, `×`, commas or spaces between.
    ///
    /// # Errors
    /// A sentence: not three whole numbers from 1 on; more than 2³² − 1 cylinders, 256 heads or 255 sectors, beyond
    /// which no interface goes.
    pub fn parse(text: &str) -> Result<Self, String> {
        let pieces: Vec<&str> = text.split(['/', 'x', 'X', '×', ',', ' ', ':']).filter(|p| !p.is_empty()).collect();
        let numbers: Option<Vec<u32>> = pieces.iter().map(|piece| piece.parse().ok()).collect();
        match numbers.as_deref() {
            Some(&[cylinders, heads, sectors]) if cylinders >= 1 => {
                if !(1..=256).contains(&heads) {
                    Err(text!("{heads} heads: there are 1 to 256", heads = heads))
                } else if !(1..=255).contains(&sectors) {
                    Err(text!("{sectors} sectors a track: there are 1 to 255", sectors = sectors))
                } else {
                    Ok(Self { cylinders, heads, sectors })
                }
            }
            _ => Err(text!("\"{text}\" is not CYLINDERS/HEADS/SECTORS, such as 1024/16/63", text = text)),
        }
    }
}

impl fmt::Display for Geometry {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}/{}/{}", self.cylinders, self.heads, self.sectors)
    }
}

/// The geometry that an ATA drive of this size reports: 16 heads, 63 sectors, at most 16 383 cylinders. From there on
/// it says nothing about the size. Source: Large Disk HOWTO 2.2x, "The 33.8 GB limit".
pub fn identify(total_sectors: u64) -> Geometry {
    Geometry::new((total_sectors / (16 * 63)).min(16_383) as u32, 16, 63)
}

/// The geometry that assisted translation shows: heads are the first of 16, 32, 64, 128, 255 with which the drive fits
/// into 1024 cylinders, 63 sectors. Larger drives stay at 1024 cylinders. Source: Large Disk HOWTO 2.2x, "The 8.4 GB
/// limit".
pub fn assisted(total_sectors: u64) -> Geometry {
    let heads = [16_u64, 32, 64, 128].into_iter().find(|heads| total_sectors <= 1024 * heads * 63).unwrap_or(255);
    Geometry::new((total_sectors / (heads * 63)).min(1024) as u32, heads as u32, 63)
}

/// The geometry that plain translation ("large") shows: cylinders halved and heads doubled until 1024 cylinders are
/// enough; `None` when that would take 256 heads or more, which DOS cannot handle. With `from_15_heads` the drive is first taken
/// as one of 15 heads, which ends at 240. Source: Large Disk HOWTO 2.2x, "The 4.2 GB limit" and "The 7.9 GB limit".
pub fn doubled(physical: Geometry, from_15_heads: bool) -> Option<Geometry> {
    let Geometry { mut cylinders, mut heads, sectors } = physical;
    if from_15_heads && heads == 16 && cylinders > 8192 {
        heads = 15;
        cylinders = (u64::from(cylinders) * 16 / 15) as u32;
    }
    while cylinders > 1024 {
        cylinders /= 2;
        heads = heads.checked_mul(2).filter(|heads| *heads < 256)?;
    }
    Some(Geometry { cylinders, heads, sectors })
}
