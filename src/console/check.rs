//! `check LOGBOOK`: looks a logbook over; fails with the report when anything is wrong.
//!
//! `{"records": 900, "files": 40, "added": null, "troubles": [{"area": "files", "text": "…"}], "remarks": [{"area":
//! "answers", "text": "…"}], "unnamed": ["…"]}`; areas are database, records, files, names (that no table has), findings
//! (facts without theirs) and answers (that say “does not apply” without a reason, which is no trouble). With
//! `--add-findings` those are written first, and `added` lists them: `[{"part": "0042", "finding": "cell-leaked"}]`.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use clap::Args;
use serde::Serialize;

use super::opened::rules_in_force;
use super::{Answer, Found, as_json};
use crate::assess::reason::finding_name;
use crate::record::{Finding, PartId, Word as _};
use crate::rules::Rules;
use crate::store::{Area, Report, Store, check};
use crate::{counted, text};

#[derive(Args)]
pub struct Check {
    #[arg(help = text!("The logbook to look over"))]
    logbook: PathBuf,
    #[arg(long, help = text!("Add the findings that recorded facts call for and that are missing, as one change"))]
    add_findings: bool,
}

/// The JSON form.
#[derive(Serialize)]
struct Form<'a> {
    added: Option<Vec<Added>>,
    #[serde(flatten)]
    report: &'a Report,
}

/// A finding that was added.
#[derive(Serialize)]
struct Added {
    part: String,
    finding: String,
    #[serde(skip)]
    said: String,
}

impl Check {
    pub fn answer(&self, json: bool) -> Answer {
        let rules = rules_in_force()?;
        let added = self.add_findings.then(|| add_findings(&self.logbook, &rules)).transpose()?;
        let report = check(&self.logbook, &rules)?;
        let text = if json {
            as_json(&Form { added, report: &report })?
        } else {
            let added = added.map(|added| added_in_words(&added)).unwrap_or_default();
            format!("{added}{}", in_words(&report))
        };
        if report.is_sound() { Ok(text) } else { Err(Found(text).into()) }
    }
}

fn add_findings(logbook: &Path, rules: &Rules) -> anyhow::Result<Vec<Added>> {
    let store = Store::open(logbook)?;
    store.use_rules(Arc::new(rules.clone()));
    let missing = store.add_missing_findings()?;
    let after = store.logbook();
    let added = missing.iter().flat_map(|of| of.findings().map(|finding| (of.part, finding)));
    let form = |(part, finding): (PartId, &Finding)| Added {
        part: after.part(part).map(|file| file.part.tag.clone()).unwrap_or_default(),
        finding: finding.what.to_string(),
        said: finding_name(&after, rules, part, finding.id),
    };
    Ok(added.map(form).collect())
}

fn added_in_words(added: &[Added]) -> String {
    if added.is_empty() {
        return format!("{}\n", text!("No finding was missing; nothing was added."));
    }
    let count = counted!(
        "{count} finding was added as one change, which undo takes back:",
        "{count} findings were added as one change, which undo takes back:",
        added.len()
    );
    let lines = added.iter().map(|one| format!("\n  {}: {}", one.part, one.said));
    format!("{count}{}\n", lines.collect::<String>())
}

fn in_words(report: &Report) -> String {
    let Report { records, files, troubles, remarks, unnamed } = report;
    let mut text = format!(
        "{}, {}: ",
        counted!("{count} record", "{count} records", *records),
        counted!("{count} file", "{count} files", *files)
    );
    text += &match troubles.len() {
        0 => text!("nothing is wrong").to_owned(),
        count => counted!("{count} trouble", "{count} troubles", count),
    };
    let mut area = None;
    for trouble in troubles.iter().chain(remarks) {
        if area.replace(trouble.area) != Some(trouble.area) {
            let _ = write!(text, "\n  {}", trouble.area.label());
        }
        let _ = write!(text, "\n    {}", trouble.text);
    }
    if troubles.iter().any(|trouble| trouble.area == Area::Findings) {
        let _ = write!(text, "\n  {}", text!("“check --add-findings” adds what is missing."));
    }
    for file in unnamed {
        let _ = write!(text, "\n  {}", text!("no record names this file: {path}", path = file));
    }
    text
}
