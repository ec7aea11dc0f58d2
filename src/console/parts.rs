//! `parts LOGBOOK`: all parts, one a line.
//!
//! JSON: `{"parts": [{"tag": "0042", "title": "Velmar V5", "kind": "mainboard", "state": "held_power", "from":
//! "1997-03-10", "to": "1997-09-20", "not_before": "1997-03-10", "dated_by": "markings", "hold": "power", "tasks": 4, "doable": 1, "minutes": 85,
//! "place": "Cellar / Shelf 2", "machine": "Orla", "fitted": true}, …]}`, in the order of tags. Days are ISO 8601 and
//! null when nothing is known; `dated_by` says what the days rest on:
//! nothing, design, markings, or conflict where the markings contradict the design's years; `hold` is the strictest of the outstanding work, null without any; `machine` is the one
//! it is fitted in or else planned for.

use std::fmt::Write as _;

use chrono::NaiveDate;
use clap::Args;
use serde::Serialize;

use super::opened::{Opened, Which, months};
use super::{Answer, as_json};
use crate::assess::making::DatedBy;
use crate::assess::{Making, PartAnswers, PartState};
use crate::record::{Hold, Kind, Word as _};
use crate::{counted, text};

#[derive(Args)]
pub struct Parts {
    #[command(flatten)]
    which: Which,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    parts: Vec<PartForm>,
}

/// A part in short.
#[derive(Serialize)]
pub struct PartForm {
    pub tag: String,
    pub title: String,
    pub kind: Kind,
    pub state: PartState,
    from: Option<NaiveDate>,
    to: Option<NaiveDate>,
    not_before: Option<NaiveDate>,
    dated_by: DatedBy,
    hold: Option<Hold>,
    tasks: usize,
    doable: usize,
    minutes: u32,
    place: Option<String>,
    machine: Option<String>,
    fitted: bool,
}

impl Parts {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.which.open()?;
        let mut answers: Vec<&PartAnswers> = opened.answers.parts.iter().map(|answers| &**answers).collect();
        answers.sort_by(|one, other| one.file.part.tag.cmp(&other.file.part.tag));
        let parts: Vec<PartForm> = answers.iter().map(|part| form(&opened, part)).collect();
        if json {
            return as_json(&Form { parts });
        }
        let spans: Vec<String> = answers.iter().map(|part| span_in_words(&part.making)).collect();
        Ok(table(&parts, &spans))
    }
}

/// When it was made, and whether that is contradicted.
fn span_in_words(making: &Making) -> String {
    match making.span.map(months) {
        Some(span) if making.is_conflict => text!("{span} (conflict)", span = span),
        span => span.unwrap_or_default(),
    }
}

/// A part in short.
pub fn form(opened: &Opened, answers: &PartAnswers) -> PartForm {
    let logbook = &opened.logbook;
    let part = &answers.file.part;
    let fitted = logbook.fitted_in(part.id).map(|(machine, _)| machine);
    let machine = fitted.or_else(|| logbook.planned_for(part.id).map(|(machine, _)| machine));
    PartForm {
        tag: part.tag.clone(),
        title: logbook.title_of(&answers.file),
        kind: part.kind,
        state: answers.state,
        from: answers.making.span.map(|span| span.first),
        to: answers.making.span.map(|span| span.last),
        not_before: answers.making.not_before,
        dated_by: answers.making.dated_by(),
        hold: answers.hold,
        tasks: answers.totals.tasks,
        doable: answers.totals.doable,
        minutes: answers.totals.minutes,
        place: part.place.map(|place| logbook.place_path(place)),
        machine: machine.map(|machine| machine.machine.name.clone()),
        fitted: fitted.is_some(),
    }
}

fn table(parts: &[PartForm], spans: &[String]) -> String {
    let widest = |of: fn(&PartForm) -> &str| parts.iter().map(|part| of(part).chars().count()).max().unwrap_or(0);
    let (tags, titles, states) =
        (widest(|part| &part.tag), widest(|part| &part.title).min(40), widest(|part| part.state.label()));
    let dates = spans.iter().map(|span| span.chars().count()).max().unwrap_or(0);
    let mut lines = counted!("{count} part", "{count} parts", parts.len());
    for (part, span) in parts.iter().zip(spans) {
        let work = if part.tasks == 0 {
            String::new()
        } else {
            counted!("{count} piece of work", "{count} pieces of work", part.tasks)
        };
        let place = part.place.as_deref().unwrap_or_default();
        let place = match &part.machine {
            Some(machine) if part.fitted => text!("in {machine}", machine = machine),
            Some(machine) => text!("{place} (planned for {machine})", place = place, machine = machine),
            None => place.to_owned(),
        };
        let PartForm { tag, title, state, .. } = part;
        let line = format!(
            "{tag:tags$}  {title:titles$}  {:states$}  {span:dates$}  {work:18}  {}",
            state.label(),
            place.trim_start()
        );
        let _ = write!(lines, "\n{}", line.trim_end());
    }
    lines
}
