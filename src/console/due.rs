//! `due LOGBOOK [--days 90]`: what should be looked at or proven again, and by when.
//!
//! JSON: `{"by": "2026-06-10", "due": [{"what": "survey", "part": "0042", "machine": null, "on": "2026-03-01",
//! "overdue": true, "say": "…", "source": "…"}, …]}`. `what` is survey, first_survey, watched or proof; one of `part`
//! and `machine` is told; `source` says where the interval comes from, and is null where no table gives it.

use std::fmt::Write as _;

use chrono::{Days, NaiveDate};
use clap::Args;
use serde::Serialize;

use super::opened::{Opened, Which};
use super::{Answer, as_json};
use crate::assess::inspections::{self, DueWhat, due};
use crate::assess::reason::machine_name;
use crate::text;

#[derive(Args)]
pub struct Due {
    #[command(flatten)]
    which: Which,
    #[arg(long, default_value_t = 90, value_parser = clap::value_parser!(u32).range(0..=36_500),
        help = text!("How many days to look ahead"))]
    days: u32,
}

#[derive(Serialize)]
struct Form {
    by: NaiveDate,
    due: Vec<DueForm>,
}

#[derive(Serialize)]
struct DueForm {
    what: &'static str,
    part: Option<String>,
    machine: Option<String>,
    on: NaiveDate,
    overdue: bool,
    say: String,
    source: Option<String>,
}

impl Due {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.which.open()?;
        let today = opened.answers.today;
        let by = today.checked_add_days(Days::new(u64::from(self.days))).unwrap_or(NaiveDate::MAX);
        let all = due(&opened.answers, &opened.logbook, &opened.rules, by);
        if json {
            return as_json(&Form { by, due: all.iter().map(|due| form(due, &opened)).collect() });
        }
        if all.is_empty() {
            return Ok(text!("Nothing is due by {day}.", day = by));
        }
        let mut lines = text!("Due by {day}:", day = by);
        for due in &all {
            let mark = if due.on < today { "!" } else { " " };
            let _ = write!(lines, "\n{mark} {}  {}", due.on, due.sentence(&opened.logbook, &opened.rules));
        }
        Ok(lines)
    }
}

fn form(due: &inspections::Due, opened: &Opened) -> DueForm {
    let source = match &due.what {
        DueWhat::Survey { rule: Some(rule), .. } => Some(text::say(&rule.source).to_owned()),
        DueWhat::Survey { rule: None, .. } => Some(text!("common practice, no source").to_owned()),
        DueWhat::Proof { rule } => Some(text::say(&rule.source).to_owned()),
        DueWhat::FirstSurvey | DueWhat::Watched { .. } => None,
    };
    DueForm {
        what: due.name(),
        part: due.part.and_then(|part| opened.logbook.part(part)).map(|file| file.part.tag.clone()),
        machine: due.machine.map(|machine| machine_name(&opened.logbook, machine)),
        on: due.on,
        overdue: due.on < opened.answers.today,
        say: due.sentence(&opened.logbook, &opened.rules),
        source,
    }
}
