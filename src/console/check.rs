//! `check LOGBOOK`: looks a logbook over; fails with the report when anything is wrong.
//!
//! `{"records": 900, "files": 40, "troubles": [{"area": "files", "text": "…"}], "unnamed": ["…"]}`; areas are
//! database, records and files.

use std::fmt::Write as _;
use std::path::PathBuf;

use clap::Args;

use super::{Answer, Found, as_json};
use crate::record::Word as _;
use crate::store::{Report, check};
use crate::{counted, text};

#[derive(Args)]
pub struct Check {
    #[arg(help = text!("The logbook to look over"))]
    logbook: PathBuf,
}

impl Check {
    pub fn answer(&self, json: bool) -> Answer {
        let report = check(&self.logbook)?;
        let text = if json { as_json(&report)? } else { in_words(&report) };
        if report.is_sound() { Ok(text) } else { Err(Found(text).into()) }
    }
}

fn in_words(report: &Report) -> String {
    let Report { records, files, troubles, unnamed } = report;
    let mut text = format!(
        "{}, {}: ",
        counted!("{count} record", "{count} records", *records),
        counted!("{count} file", "{count} files", *files)
    );
    text += &match troubles.len() {
        0 => text!("nothing is wrong").to_owned(),
        count => counted!("{count} trouble", "{count} troubles", count),
    };
    for trouble in troubles {
        let _ = write!(text, "\n  {}: {}", trouble.area.label(), trouble.text);
    }
    for file in unnamed {
        let _ = write!(text, "\n  {}", text!("no record names this file: {path}", path = file));
    }
    text
}
