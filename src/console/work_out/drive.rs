//! `work-out drive --bytes CAPACITY | --chs C/H/S [--firmware ID] [--file-system ID] [--lba N] [--position C/H/S]`.
//!
//! JSON: `capacity`, `geometry` (as given, else as ATA drives of that size report), `assisted`, `address` where asked
//! for, `barriers` it lies beyond, and `on`: what comes of it on the firmware named, or on every one.

use anyhow::{Context as _, anyhow};
use clap::Args;
use serde::Serialize;

use crate::console::{Answer, as_json};
use crate::trade::drive::{
    Barrier, Capacity, DriveVerdict, FileSystem, Firmware, Geometry, Outcome, Position, SECTOR_BYTES, assisted,
    crossed, file_systems, firmwares, identify, judge, parse_capacity,
};
use crate::{counted, text};

#[derive(Args)]
pub struct Drive {
    #[arg(long, value_name = "CAPACITY", required_unless_present = "chs", help = text!("Capacity: bytes, or with a unit as in \"8.4 GB\""))]
    bytes: Option<String>,
    #[arg(long, value_name = "C/H/S", help = text!("The drive's own geometry, as on its label"))]
    chs: Option<String>,
    #[arg(long, value_name = "ID", help = text!("Firmware by what it reaches; without it, all of them"))]
    firmware: Option<String>,
    #[arg(long, value_name = "ID", help = text!("File system the drive is to carry"))]
    file_system: Option<String>,
    #[arg(long, value_name = "N", help = text!("A sector's linear address, to find its place"))]
    lba: Option<u64>,
    #[arg(long, value_name = "C/H/S", conflicts_with = "lba", help = text!("A sector's place, to find its linear address"))]
    position: Option<String>,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    capacity: Capacity,
    geometry: Geometry,
    assisted: Geometry,
    #[serde(skip_serializing_if = "Option::is_none")]
    address: Option<Address>,
    barriers: Vec<Barrier>,
    #[serde(skip_serializing_if = "Option::is_none")]
    file_system: Option<FileSystem>,
    on: Vec<On>,
}

#[derive(Serialize)]
struct On {
    firmware: Firmware,
    #[serde(flatten)]
    verdict: DriveVerdict,
}

#[derive(Serialize)]
struct Address {
    lba: u64,
    position: Position,
}

impl Drive {
    pub fn answer(&self, json: bool) -> Answer {
        let form = self.form()?;
        if json { as_json(&form) } else { Ok(form.said()) }
    }

    fn form(&self) -> anyhow::Result<Form> {
        let given = self.chs.as_deref().map(Geometry::parse).transpose().map_err(|reason| anyhow!(reason))?;
        let typed = self.bytes.as_deref().map(parse_capacity).transpose().map_err(|reason| anyhow!(reason))?;
        let bytes = typed.or(given.map(Geometry::bytes)).context(text!("neither capacity nor geometry given"))?;
        let file_system = match &self.file_system {
            None => None,
            Some(id) => Some(chosen(file_systems(), id, |row| row.id)?),
        };
        let chosen_firmware = match &self.firmware {
            None => firmwares(),
            Some(id) => vec![chosen(firmwares(), id, |row| row.id)?],
        };
        let on = chosen_firmware.into_iter().map(|firmware| {
            let verdict = judge(bytes, given, &firmware, file_system.as_ref());
            On { firmware, verdict }
        });
        let sectors = bytes / SECTOR_BYTES;
        let geometry = given.unwrap_or_else(|| identify(sectors));
        Ok(Form {
            capacity: Capacity::of(bytes),
            geometry,
            assisted: assisted(sectors),
            address: self.address(geometry)?,
            barriers: crossed(bytes),
            on: on.collect(),
            file_system,
        })
    }

    fn address(&self, geometry: Geometry) -> anyhow::Result<Option<Address>> {
        let beyond = || text!("the sector lies outside {geometry}", geometry = geometry);
        if let Some(lba) = self.lba {
            let position = geometry.position(lba).with_context(beyond)?;
            return Ok(Some(Address { lba, position }));
        }
        let Some(typed) = &self.position else { return Ok(None) };
        let numbers: Vec<u32> = typed.split('/').filter_map(|number| number.trim().parse().ok()).collect();
        let &[cylinder, head, sector] = numbers.as_slice() else {
            return Err(anyhow!(text!("\"{text}\" is not CYLINDER/HEAD/SECTOR, such as 0/1/1", text = typed)));
        };
        let position = Position { cylinder, head, sector };
        let lba = geometry.lba(position).with_context(beyond)?;
        Ok(Some(Address { lba, position }))
    }
}

/// The row of this id, or a reason that names all ids.
fn chosen<Row>(rows: Vec<Row>, id: &str, key: impl Fn(&Row) -> &'static str) -> anyhow::Result<Row> {
    let known = rows.iter().map(&key).collect::<Vec<_>>().join(", ");
    rows.into_iter()
        .find(|row| key(row) == id)
        .ok_or_else(|| anyhow!(text!("\"{id}\" is not known; there are {known}", id = id, known = known)))
}

impl Form {
    fn said(&self) -> String {
        let mut lines = vec![self.capacity.said()];
        lines.push(text!(
            "Geometry {geometry}; assisted translation shows {assisted}",
            geometry = self.geometry,
            assisted = self.assisted
        ));
        if let Some(Address { lba, position: Position { cylinder, head, sector } }) = &self.address {
            lines.push(text!(
                "Sector {lba} is cylinder {c}, head {h}, sector {s}",
                lba = lba,
                c = cylinder,
                h = head,
                s = sector
            ));
        }
        for barrier in &self.barriers {
            lines.push(text!(
                "Beyond {name} ({bytes} bytes): {cause}. {conflict}",
                name = barrier.name,
                bytes = barrier.bytes,
                cause = barrier.cause,
                conflict = barrier.conflict
            ));
        }
        for On { firmware, verdict } in &self.on {
            let outcome = match verdict.outcome {
                Outcome::SeenWhole => text!("seen whole").to_owned(),
                Outcome::ClippedTo { bytes } => text!("clipped to {size}", size = Capacity::of(bytes).said()),
                Outcome::NotUsable => text!("not usable as it is").to_owned(),
            };
            lines.push(format!("{} ({}): {outcome}", firmware.label, firmware.id));
            if let Some(partitions) = verdict.partitions {
                let largest = Capacity::of(partitions.largest_bytes).said();
                let count = counted!(
                    "at least {count} partition",
                    "at least {count} partitions",
                    partitions.least_count as usize
                );
                lines.push(text!("  {partitions}, the largest {largest}", partitions = count, largest = largest));
                if let Some(cluster_bytes) = partitions.cluster_bytes {
                    lines.push(text!("  formatted in clusters of {size} KiB", size = cluster_bytes / 1024));
                }
            }
            if self.on.len() == 1 {
                lines.extend(verdict.remarks.iter().map(|remark| format!("  {remark}")));
                lines.push(text!("  Source: {source}", source = firmware.source.said()));
            }
        }
        lines.iter().map(|line| line.trim_end()).collect::<Vec<_>>().join("\n")
    }
}
