//! `work-out floppy [NAME]`: floppy formats with tracks, sides, sectors, bytes and coercivity.
//!
//! JSON: an array of formats, each with `total_sectors` and `capacity` beside the table's figures.

use anyhow::ensure;
use clap::Args;
use serde::Serialize;

use crate::console::{Answer, as_json};
use crate::text;
use crate::trade::drive::{Capacity, FloppyFormat, floppy_formats};

#[derive(Args)]
pub struct Floppy {
    #[arg(value_name = "NAME", help = text!("One format, such as 1.44M; without it, all of them"))]
    name: Option<String>,
}

/// The JSON form of one format.
#[derive(Serialize)]
struct Form {
    #[serde(flatten)]
    format: FloppyFormat,
    total_sectors: u64,
    capacity: Capacity,
}

impl Floppy {
    pub fn answer(&self, json: bool) -> Answer {
        let wanted =
            |format: &FloppyFormat| self.name.as_ref().is_none_or(|name| format.name.eq_ignore_ascii_case(name));
        let chosen: Vec<FloppyFormat> = floppy_formats().into_iter().filter(wanted).collect();
        if let Some(name) = &self.name {
            let known = floppy_formats().iter().map(|format| format.name).collect::<Vec<_>>().join(", ");
            ensure!(!chosen.is_empty(), text!("\"{id}\" is not known; there are {known}", id = name, known = known));
        }
        if json {
            let form = |format: FloppyFormat| Form {
                total_sectors: format.total_sectors(),
                capacity: Capacity::of(format.bytes()),
                format,
            };
            return as_json(&chosen.into_iter().map(form).collect::<Vec<_>>());
        }
        Ok(chosen.iter().map(said).collect::<Vec<_>>().join("\n"))
    }
}

fn said(format: &FloppyFormat) -> String {
    let FloppyFormat { name, inches, tracks, sides, sectors, coercivity_oe, note, source } = format;
    let line = text!(
        "{name}: {inches} in, {tracks} tracks × {sides} sides × {sectors} sectors = {bytes} bytes, {oersted} Oe. {note} Source: {source}",
        name = name,
        inches = inches,
        tracks = tracks,
        sides = sides,
        sectors = sectors,
        bytes = format.bytes(),
        oersted = coercivity_oe,
        note = note,
        source = source.said()
    );
    line.replace("  ", " ")
}
