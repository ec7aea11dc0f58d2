//! A logbook opened for reading, with the rules in force and all answers.

use std::path::PathBuf;
use std::sync::Arc;

use anyhow::{Context, anyhow};
use chrono::NaiveDate;
use clap::Args;
use serde::Serialize;

use crate::assess::outstanding::{MaterialNeed, hours_text};
use crate::assess::{Answers, Totals};
use crate::record::{Logbook, PartFile};
use crate::rules::Rules;
use crate::store::{Store, own_tables};
use crate::trade::Span;
use crate::{counted, text};

/// The arguments that every answer about a logbook takes.
#[derive(Args)]
pub struct Which {
    #[arg(help = text!("The logbook to answer from"))]
    pub logbook: PathBuf,
    #[arg(long, value_name = "DATE", help = text!("Answer as of this day (2026-03-12) instead of today"))]
    on: Option<NaiveDate>,
}

pub struct Opened {
    path: PathBuf,
    pub logbook: Arc<Logbook>,
    pub rules: Rules,
    pub answers: Answers,
}

impl Which {
    pub fn open(&self) -> anyhow::Result<Opened> {
        let store = Store::open_reading(&self.logbook)?;
        let logbook = store.logbook();
        let rules = rules_in_force()?;
        let today = self.on.unwrap_or_else(|| chrono::Local::now().date_naive());
        let answers = Answers::of(&logbook, &rules, today);
        Ok(Opened { path: self.logbook.clone(), logbook, rules, answers })
    }
}

impl Opened {
    /// The part with a tag.
    pub fn part(&self, tag: &str) -> anyhow::Result<&Arc<PartFile>> {
        let unknown = || anyhow!(text!("no part has the tag “{tag}”: {path}", tag = tag, path = self.path.display()));
        self.logbook.part_tagged(tag).ok_or_else(unknown)
    }

    /// The machine of a name.
    pub fn machine(&self, name: &str) -> anyhow::Result<crate::record::MachineId> {
        let unknown =
            || anyhow!(text!("no machine is called “{name}”: {path}", name = name, path = self.path.display()));
        Ok(self.logbook.machine_named(name).ok_or_else(unknown)?.machine.id)
    }
}

/// The shipped tables with the user's own laid over them.
pub fn rules_in_force() -> anyhow::Result<Rules> {
    let folders = directories::ProjectDirs::from("", "", "benchwright");
    let own = folders.map(|folders| own_tables(folders.config_dir())).transpose()?.unwrap_or_default();
    if own.is_empty() {
        return Ok(Rules::shipped());
    }
    let rules = Rules::with_own(&own).context(text!("your own tables cannot be used"))?;
    for remark in &rules.remarks {
        eprintln!("benchwright: {remark}");
    }
    Ok(rules)
}

/// A span as its months: "1997-03 to 1998-01", "1997-03".
pub fn months(span: Span) -> String {
    let (first, last) = (span.first.format("%Y-%m").to_string(), span.last.format("%Y-%m").to_string());
    if first == last { first } else { text!("{first} to {last}", first = first, last = last) }
}

/// What work comes to: "4 pieces of work, 1 can be started now; 1 h 25 min, 48 h of waiting".
pub fn totals_in_words(totals: Totals) -> String {
    let Totals { tasks, doable, minutes, wait_hours } = totals;
    let pieces = counted!("{count} piece of work", "{count} pieces of work", tasks);
    let now = counted!("{count} can be started now", "{count} can be started now", doable);
    let waiting = if wait_hours == 0 { String::new() } else { text!(", {hours} h of waiting", hours = wait_hours) };
    format!("{pieces}, {now}; {}{waiting}", hours_text(minutes))
}

/// What work comes to, in the JSON form.
#[derive(Serialize)]
pub struct TotalsForm {
    tasks: usize,
    doable: usize,
    minutes: u32,
    wait_hours: u32,
}

impl From<Totals> for TotalsForm {
    fn from(Totals { tasks, doable, minutes, wait_hours }: Totals) -> Self {
        Self { tasks, doable, minutes, wait_hours }
    }
}

/// A material in the JSON form.
#[derive(Serialize)]
pub struct MaterialForm {
    name: String,
    tasks: usize,
    stock: Option<f64>,
}

/// Materials in the JSON form.
pub fn material_forms(needs: Vec<MaterialNeed>) -> Vec<MaterialForm> {
    needs.into_iter().map(|MaterialNeed { name, tasks, stock }| MaterialForm { name, tasks, stock }).collect()
}

/// Whole minutes of typed hours ("2.5", also with a comma), above 0 and at most `most`.
pub fn minutes_of_hours(typed: &str, most: f64) -> Result<u32, String> {
    let told = typed.trim().replace(',', ".").parse::<f64>().ok().filter(|hours| *hours > 0.0 && *hours <= most);
    let minutes = told.map(|hours| (hours * 60.0).round() as u32).filter(|minutes| *minutes > 0);
    minutes.ok_or_else(|| text!("hours are a figure above 0 and at most {most}: 2.5", most = most))
}
