//! `outstanding LOGBOOK [--machine NAME | --part TAG]`: what is to be done, in working order.
//!
//! JSON: `{"work": [{"part": "0042", "title": "Cut the cell out", "rule": "cut-out", "state": "open", "hold":
//! "storage", "doable": true, "after": [], "minutes": 10, "wait_hours": 0, "who": "oneself", "nature": "repair",
//! "sitting": "soldering", "materials": […], "tools": […], "cautions": […], "findings": [keys], "touches": null}, …], "totals": {"tasks":
//! 4, "doable": 1, "minutes": 85, "wait_hours": 48}, "materials": [{"name": "Solder", "tasks": 2, "stock": 40.0}, …]}`.
//! `rule` is null for work in the restorer's own words, and `touches` for all other; `after` are the titles of what must be done first; `stock` is
//! null for a material that the logbook does not list.

use std::fmt::Write as _;

use clap::Args;
use serde::Serialize;

use super::opened::{MaterialForm, Opened, TotalsForm, Which, material_forms, totals_in_words};
use super::{Answer, as_json};
use crate::assess::cautions::{self, JobCautions};
use crate::assess::outstanding::hours_text;
use crate::assess::outstanding::materials;
use crate::assess::touched::said;
use crate::assess::{PartAnswers, Task, Totals};
use crate::record::{Competence, FindingId, Hold, Nature, Touches, Word as _, WorkState};
use crate::text;

#[derive(Args)]
pub struct Outstanding {
    #[command(flatten)]
    which: Which,
    #[arg(long, value_name = "NAME", help = text!("Only what a machine's parts ask for"))]
    machine: Option<String>,
    #[arg(long, value_name = "TAG", conflicts_with = "machine", help = text!("Only what one part asks for"))]
    part: Option<String>,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    work: Vec<TaskForm>,
    totals: TotalsForm,
    materials: Vec<MaterialForm>,
}

/// A piece of work.
#[derive(Serialize)]
pub struct TaskForm {
    part: String,
    title: String,
    rule: Option<String>,
    state: WorkState,
    hold: Hold,
    doable: bool,
    after: Vec<String>,
    minutes: u32,
    wait_hours: u32,
    who: Competence,
    nature: Nature,
    sitting: String,
    materials: Vec<String>,
    tools: Vec<String>,
    cautions: Vec<String>,
    /// Those of a line of the list.
    #[serde(skip)]
    cautions_listed: Vec<String>,
    findings: Vec<FindingId>,
    touches: Option<Touches>,
}

impl Outstanding {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.which.open()?;
        let answers = &opened.answers;
        let mut parts: Vec<&PartAnswers> = match (&self.machine, &self.part) {
            (Some(name), _) => {
                let machine = answers.machine(opened.machine(name)?);
                let members = machine.map(|machine| machine.members.as_slice()).unwrap_or_default();
                members.iter().filter_map(|part| answers.part(*part)).map(|part| &**part).collect()
            }
            (None, Some(tag)) => answers.part(opened.part(tag)?.part.id).map(|part| &**part).into_iter().collect(),
            (None, None) => answers.parts.iter().map(|part| &**part).collect(),
        };
        parts.sort_by(|one, other| one.file.part.tag.cmp(&other.file.part.tag));
        let tasks = || parts.iter().flat_map(|part| &part.tasks);
        if !json {
            return Ok(in_words(&opened, &parts));
        }
        as_json(&Form {
            work: parts.iter().flat_map(|part| forms(&part.tasks, &opened)).collect(),
            totals: Totals::of(tasks()).into(),
            materials: material_forms(materials(tasks(), &opened.logbook.materials)),
        })
    }
}

/// One part's tasks in the JSON form.
pub fn forms(tasks: &[Task], opened: &Opened) -> Vec<TaskForm> {
    let said = |texts: &[String]| texts.iter().map(|text| text::say(text).to_owned()).collect();
    let form = |task: &Task| TaskForm {
        part: opened.logbook.part(task.part).map(|file| file.part.tag.clone()).unwrap_or_default(),
        title: task.title().to_owned(),
        rule: task.rule().map(|rule| rule.name.clone()),
        state: task.state,
        hold: task.hold,
        doable: task.doable,
        after: opened.answers.part(task.part).map(|part| opened.answers.firsts(part, task)).unwrap_or_default(),
        minutes: task.minutes(),
        wait_hours: task.wait_hours(),
        who: task.who(),
        nature: task.nature(),
        sitting: task.sitting().to_owned(),
        materials: said(task.materials()),
        tools: said(task.tools()),
        cautions: JobCautions::alone(task).into_all(),
        cautions_listed: JobCautions::listed(task).first,
        findings: task.findings.clone(),
        touches: touches(task, opened),
    };
    tasks.iter().map(form).collect()
}

/// What work in the restorer's own words touches; `None` for work by rule.
fn touches(task: &Task, opened: &Opened) -> Option<Touches> {
    let record = opened.logbook.part(task.part)?.work.iter().find(|work| task.work == Some(work.id))?;
    record.is_own().then_some(record.touches)
}

impl TaskForm {
    /// One line: what, what it holds, how long, and whether it can be started.
    pub fn in_words(&self) -> String {
        let mut line = format!("{} {} [{}]", if self.doable { ">" } else { " " }, self.title, self.hold.label());
        if self.minutes > 0 {
            let _ = write!(line, ", {}", hours_text(self.minutes));
        }
        if self.wait_hours > 0 {
            line += &text!(" + {hours} h waiting", hours = self.wait_hours);
        }
        if self.state != WorkState::Open {
            let _ = write!(line, ", {}", self.state.label());
        }
        if self.who != Competence::Oneself {
            let _ = write!(line, ", {}", self.who.label());
        }
        if let Some(touches) = self.touches {
            let _ = write!(line, ", {}", said(touches));
        }
        for caution in &self.cautions_listed {
            let _ = write!(line, "\n      ! {caution}");
        }
        line
    }
}

fn in_words(opened: &Opened, parts: &[&PartAnswers]) -> String {
    let tasks = || parts.iter().flat_map(|part| &part.tasks);
    let mut lines = if tasks().next().is_none() {
        text!("Nothing is outstanding.").to_owned()
    } else {
        totals_in_words(Totals::of(tasks()))
    };
    for part in parts.iter().filter(|part| !part.tasks.is_empty()) {
        let _ = write!(lines, "\n{}  {}", part.file.part.tag, opened.logbook.title_of(&part.file));
        for task in forms(&part.tasks, opened) {
            let _ = write!(lines, "\n  {}", task.in_words());
        }
    }
    for caution in cautions::of_sitting(tasks()) {
        let _ = write!(lines, "\n! {caution}");
    }
    let needs = materials(tasks(), &opened.logbook.materials);
    if !needs.is_empty() {
        let names: Vec<&str> = needs.iter().map(|need| text::say(&need.name)).collect();
        let _ = write!(lines, "\n{}", text!("Materials: {names}", names = names.join("; ")));
    }
    lines
}
