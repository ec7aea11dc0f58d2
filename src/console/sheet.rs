//! `sheet LOGBOOK --hours 2.5 | --part TAG`: a page to be printed, with the work of an evening or of a part.
//!
//! Prints HTML: `benchwright sheet w.logbook --hours 2.5 > tonight.html`. Cautions stand before what to do.
//!
//! JSON: `{"title": "…", "remark": "…", "groups": [{"title": "Soldering", "cautions": […], "pieces": [{"what": "…", "part": "0042  …",
//! "cautions": […], "more_cautions": […], "first": […], "how": "…", "materials": […], "tools": […], "minutes": 5, "wait_hours": 0}, …]}, …]}`.

use clap::Args;

use super::opened::{Which, minutes_of_hours};
use super::{Answer, as_json};
use crate::assess::tonight::{Evening, PATIENCE, tonight};
use crate::paper::WorkSheet;
use crate::text;

#[derive(Args)]
pub struct Sheet {
    #[command(flatten)]
    which: Which,
    #[arg(long, value_parser = evening_hours, required_unless_present = "part", conflicts_with = "part",
        help = text!("Hours there are tonight: 2.5"))]
    hours: Option<u32>,
    #[arg(long, requires = "hours", help = text!("Somebody is there for work that wants two"))]
    with_help: bool,
    #[arg(long, value_name = "TAG", help = text!("All outstanding work of this part"))]
    part: Option<String>,
}

/// Hours of an evening as whole minutes.
fn evening_hours(typed: &str) -> Result<u32, String> {
    minutes_of_hours(typed, 24.0)
}

impl Sheet {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.which.open()?;
        let sheet = if let Some(tag) = &self.part {
            let part = opened.logbook.part_tagged(tag).and_then(|file| opened.answers.part(file.part.id));
            let part = part.ok_or_else(|| anyhow::anyhow!(text!("no part has the tag “{tag}”", tag = tag)))?;
            WorkSheet::of_part(part, &opened.answers, &opened.logbook)
        } else {
            let evening = Evening { minutes: self.hours.unwrap_or(0), help: self.with_help };
            let plan = tonight(&opened.answers, &opened.logbook, &opened.rules, evening, PATIENCE);
            WorkSheet::of_evening(&plan, evening, &opened.answers, &opened.logbook, &opened.rules)
        };
        if json { as_json(&sheet) } else { Ok(sheet.to_html()) }
    }
}
