//! `tonight LOGBOOK --hours 2.5 [--with-help]`: the work that brings most in the hours there are, with reasons.
//!
//! What a piece is worth, and what is left out, stands at the head of `assess::tonight`.
//!
//! JSON: `{"minutes": 145, "left": 5, "worth": 88, "bound": 88, "best": true, "set_ups": [{"sitting": "soldering",
//! "say": "Soldering", "minutes": 10}], "work": [{"part": "0042", "title": "Cut the cell out", "rule": "cut-cell",
//! "sitting": "soldering", "minutes": 5, "wait_hours": 0, "worth": 32, "cautions": […], "why": ["…", …]}, …],
//! "wait_hours": 48, "missed": [{"part": "0007", "title": "…", "minutes": 60, "short": 55, "worth": 8}, …],
//! "considered": [{"what": "work", "part": "0042", "say": "…", "minutes": 5, "worth": 32, "after": [3, 4]}, …]}`. Work
//! stands in the order in which to do it; `best` says whether no other choice is worth more than `worth`, `bound` what
//! none can exceed; `wait_hours` dry or run by themselves once all is done; `short` are the minutes lacking for what
//! missed. `considered` is all that was weighed: `what` is work, set_up or gate, `after` are places in this list of
//! what each comes after.

use std::fmt::Write as _;

use clap::Args;
use serde::Serialize;

use super::opened::{Opened, Which};
use super::{Answer, as_json};
use crate::assess::cautions::{self, JobCautions};
use crate::assess::outstanding::hours_text;
use crate::assess::reason::{machine_name, part_name};
use crate::assess::tonight::{Evening, Item, PATIENCE, Why, tonight};
use crate::assess::{Task, tonight as assess};
use crate::record::Word as _;
use crate::text;

#[derive(Args)]
pub struct Tonight {
    #[command(flatten)]
    which: Which,
    #[arg(long, value_parser = evening_hours, help = text!("Hours there are tonight: 2.5"))]
    hours: u32,
    #[arg(long, help = text!("Somebody is there for work that wants two"))]
    with_help: bool,
}

/// Hours of an evening as whole minutes.
fn evening_hours(typed: &str) -> Result<u32, String> {
    super::opened::minutes_of_hours(typed, 24.0)
}

#[derive(Serialize)]
struct Form {
    minutes: u32,
    left: u32,
    worth: u64,
    bound: u64,
    best: bool,
    set_ups: Vec<SetUpForm>,
    work: Vec<WorkForm>,
    wait_hours: u32,
    missed: Vec<MissedForm>,
    considered: Vec<ItemForm>,
}

#[derive(Serialize)]
struct SetUpForm {
    sitting: String,
    say: String,
    minutes: u32,
}

#[derive(Serialize)]
struct WorkForm {
    part: String,
    title: String,
    rule: Option<String>,
    sitting: String,
    minutes: u32,
    wait_hours: u32,
    worth: u32,
    cautions: Vec<String>,
    why: Vec<String>,
}

#[derive(Serialize)]
struct MissedForm {
    part: String,
    title: String,
    minutes: u32,
    short: u32,
    worth: u32,
}

#[derive(Serialize)]
struct ItemForm {
    what: &'static str,
    part: Option<String>,
    say: String,
    minutes: u32,
    worth: u32,
    after: Vec<usize>,
}

impl Tonight {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.which.open()?;
        let evening = Evening { minutes: self.hours, help: self.with_help };
        let plan = tonight(&opened.answers, &opened.logbook, &opened.rules, evening, PATIENCE);
        if json { as_json(&form(&plan, evening, &opened)) } else { Ok(in_words(&plan, evening, &opened)) }
    }
}

fn task(opened: &Opened, part: usize, task: usize) -> (&Task, &str) {
    let answers = &opened.answers.parts[part];
    (&answers.tasks[task], &answers.file.part.tag)
}

fn form(plan: &assess::Tonight, evening: Evening, opened: &Opened) -> Form {
    let set_up = |(place, minutes): &(usize, u32)| {
        let sitting = &opened.rules.sittings[*place];
        SetUpForm { sitting: sitting.name.clone(), say: text::say(&sitting.say).to_owned(), minutes: *minutes }
    };
    let work = |chosen: &assess::Chosen| {
        let (task, tag) = task(opened, chosen.part_at, chosen.task);
        WorkForm {
            part: tag.to_owned(),
            title: task.title().to_owned(),
            rule: task.rule().map(|rule| rule.name.clone()),
            sitting: task.sitting().to_owned(),
            minutes: chosen.minutes,
            wait_hours: task.wait_hours(),
            worth: chosen.worth,
            cautions: JobCautions::alone(task).into_all(),
            why: chosen.why.iter().map(|why| why.sentence(&opened.logbook)).collect(),
        }
    };
    let missed = |missed: &assess::Missed| {
        let (task, tag) = task(opened, missed.part_at, missed.task);
        let (part, title) = (tag.to_owned(), task.title().to_owned());
        MissedForm { part, title, minutes: missed.minutes, short: missed.short, worth: missed.worth }
    };
    let item = |(item, piece): (&Item, &assess::Piece)| {
        let (what, part, say) = match item {
            Item::Work { part, task: at } => {
                let (task, tag) = task(opened, *part, *at);
                ("work", Some(tag.to_owned()), task.title().to_owned())
            }
            Item::SetUp { sitting } => ("set_up", None, text::say(&opened.rules.sittings[*sitting].say).to_owned()),
            Item::Gate { machine, gate } => {
                ("gate", None, format!("{}: {}", machine_name(&opened.logbook, *machine), gate.label()))
            }
        };
        ItemForm { what, part, say, minutes: piece.minutes, worth: piece.worth, after: piece.after.clone() }
    };
    Form {
        minutes: plan.minutes,
        left: evening.minutes - plan.minutes,
        worth: plan.worth,
        bound: plan.bound,
        best: plan.is_best(),
        set_ups: plan.set_ups.iter().map(set_up).collect(),
        work: plan.chosen.iter().map(work).collect(),
        wait_hours: plan.wait_hours(&opened.answers),
        missed: plan.missed.iter().map(missed).collect(),
        considered: plan.items.iter().zip(&plan.problem).map(item).collect(),
    }
}

fn in_words(plan: &assess::Tonight, evening: Evening, opened: &Opened) -> String {
    if plan.chosen.is_empty() {
        return text!("Nothing that can be done fits {time}.", time = hours_text(evening.minutes));
    }
    let mut lines = text!(
        "{minutes} of {time}, setting up included:",
        minutes = hours_text(plan.minutes),
        time = hours_text(evening.minutes)
    );
    let mut sitting = None;
    for chosen in &plan.chosen {
        let (task, _) = task(opened, chosen.part_at, chosen.task);
        if sitting != Some(task.sitting()) {
            sitting = Some(task.sitting());
            let _ = write!(lines, "\n{}", sitting_in_words(plan, task.sitting(), opened));
            let chosen = plan.chosen.iter().map(|chosen| self::task(opened, chosen.part_at, chosen.task).0);
            let alike = chosen.filter(|other| other.sitting() == task.sitting());
            for caution in cautions::of_sitting(alike) {
                let _ = write!(lines, "\n    ! {caution}");
            }
        }
        let part = part_name(&opened.logbook, chosen.part);
        let _ = write!(lines, "\n  > {part}: {}, {}", task.title(), hours_text(chosen.minutes));
        if task.wait_hours() > 0 {
            lines += &text!(" + {hours} h waiting", hours = task.wait_hours());
        }
        // That work of one sitting stands together is seen from the list.
        let why = chosen.why.iter().filter(|why| !matches!(why, Why::SameSitting { .. }));
        let why: Vec<String> = why.map(|why| why.sentence(&opened.logbook)).collect();
        let _ = write!(lines, "\n      {}", why.join(" "));
        for caution in JobCautions::listed(task).first {
            let _ = write!(lines, "\n      ! {caution}");
        }
    }
    if !plan.is_best() {
        let more = text!(
            "Looking was broken off: another choice may be worth up to {bound} where this one is worth {worth}.",
            bound = plan.bound,
            worth = plan.worth
        );
        let _ = write!(lines, "\n{more}");
    }
    if !plan.missed.is_empty() {
        let _ = write!(lines, "\n{}", text!("Just missed:"));
    }
    for missed in &plan.missed {
        let (task, _) = task(opened, missed.part_at, missed.task);
        let part = part_name(&opened.logbook, missed.part);
        let short = text!("{time} lacking", time = hours_text(missed.short));
        let _ = write!(lines, "\n  - {part}: {}, {short}", task.title());
    }
    lines
}

fn sitting_in_words(plan: &assess::Tonight, name: &str, opened: &Opened) -> String {
    let Some(place) = opened.rules.sittings.iter().position(|sitting| sitting.name == name) else {
        return text!("Work of its own").to_owned();
    };
    let say = text::say(&opened.rules.sittings[place].say);
    match plan.set_ups.iter().find(|(known, _)| *known == place) {
        Some((_, minutes)) if *minutes > 0 => {
            text!("{sitting} ({minutes} min to set up)", sitting = say, minutes = minutes)
        }
        _ => say.to_owned(),
    }
}
