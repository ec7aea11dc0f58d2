//! `schedule LOGBOOK --hours-per-week 6 [--delivery-days 14]`: when each machine will be ready, and by which work.
//!
//! How it is made, and what its figures mean, stands at the head of `assess::schedule`.
//!
//! JSON: `{"minutes_per_week": 360, "delivery_days": 14, "pace": {"factor": 1.2, "deviation": 0.3, "pieces": 0, "from":
//! "own_rule"}, "paces": [{"sitting": "soldering", "factor": 1.1, "deviation": 0.2, "pieces": 9}, …], "end":
//! "2026-05-01", "machines": [{"machine": "Orla", "ready": "2026-04-02", "early": "2026-03-28", "late": "2026-04-09",
//! "deviation_days": 4.2, "alone": "2026-03-20", "alone_days": 18.4, "critical": [3, 4, 9], "needs": [1, 3, 4, 9],
//! "undated": null, "unplanned": 0, "beside": 2}, …], "work": [{"what": "work", "name": "recap", "part": "0042", "machine": "Orla", "title": "…",
//! "sitting": "soldering", "rule_minutes": 45.0, "minutes": 54.0, "wait_hours": 0.0, "start": "2026-03-12", "over":
//! "2026-03-13", "start_days": 0.0, "hands_free_days": 1.05, "over_days": 1.05, "after": [0], "held": "hands", "held_by":
//! 2, "lacks_material": false}, …]}`. `factor` is real minutes to the rule's; `from` is sitting, overall or own_rule.
//! Days are counted from the first minute of the day of the answer. `critical`, `needs`, `after` and `held_by` are places in
//! `work`, which stands in the order of the hands; `what` is work, part_proof, fit or machine_proof; `held` is nothing,
//! after, delivery or hands. Without a date `ready`, `early` and
//! `late` are null, and `undated` says why: `{"why": "roles_empty", "say": "when its roles are filled", "count": 2}` (then
//! `alone` is null too), or not_here where `unplanned` pieces are on parts that are not here; `beside` counts
//! what holds the machine and is neither work nor proof.

use std::fmt::Write as _;

use chrono::NaiveDate;
use clap::Args;
use serde::Serialize;

use super::opened::{Opened, Which, minutes_of_hours};
use super::{Answer, as_json};
use crate::assess::outstanding::hours_text;
use crate::assess::reason::{machine_name, part_name};
use crate::assess::schedule::{
    self as assess, Ground, Held, Item, MachinePlan, PaceSource, Planned, Spread, Terms, Undated, circle_sentence,
    schedule,
};
use crate::text;

#[derive(Args)]
pub struct Schedule {
    #[command(flatten)]
    which: Which,
    #[arg(long, value_parser = week_hours, help = text!("Hours at the bench in a week: 6"))]
    hours_per_week: u32,
    #[arg(long, default_value_t = 14, value_parser = clap::value_parser!(u32).range(0..=730),
        help = text!("Days until missing materials are taken to have come"))]
    delivery_days: u32,
}

/// Hours of a week as whole minutes.
fn week_hours(typed: &str) -> Result<u32, String> {
    minutes_of_hours(typed, 168.0)
}

#[derive(Serialize)]
struct Form {
    minutes_per_week: u32,
    delivery_days: u32,
    pace: PaceForm,
    paces: Vec<SittingForm>,
    end: NaiveDate,
    machines: Vec<MachineForm>,
    work: Vec<PlannedForm>,
}

#[derive(Serialize)]
struct PaceForm {
    factor: f64,
    deviation: f64,
    pieces: usize,
    from: &'static str,
}

#[derive(Serialize)]
struct SittingForm {
    sitting: String,
    factor: f64,
    deviation: f64,
    pieces: usize,
}

#[derive(Serialize)]
struct MachineForm {
    machine: String,
    ready: Option<NaiveDate>,
    early: Option<NaiveDate>,
    late: Option<NaiveDate>,
    deviation_days: f64,
    alone: Option<NaiveDate>,
    alone_days: f64,
    critical: Vec<usize>,
    needs: Vec<usize>,
    undated: Option<UndatedForm>,
    unplanned: usize,
    beside: usize,
}

#[derive(Serialize)]
struct UndatedForm {
    why: &'static str,
    say: &'static str,
    count: usize,
}

impl UndatedForm {
    fn of(undated: Undated) -> Self {
        let (why, count) = match undated {
            Undated::RolesEmpty { missing } => ("roles_empty", missing as usize),
            Undated::NotHere { pieces } => ("not_here", pieces),
        };
        Self { why, say: undated.said(), count }
    }
}

#[derive(Serialize)]
struct PlannedForm {
    what: &'static str,
    /// Of its rule, or of the test; empty for work in the restorer's own words, and for fitting.
    name: String,
    part: Option<String>,
    machine: String,
    title: String,
    sitting: String,
    rule_minutes: f64,
    minutes: f64,
    wait_hours: f64,
    start: NaiveDate,
    over: NaiveDate,
    start_days: f64,
    hands_free_days: f64,
    over_days: f64,
    after: Vec<usize>,
    held: &'static str,
    held_by: Option<usize>,
    lacks_material: bool,
}

const DAY_MINUTES: f64 = 24.0 * 60.0;

fn source_name(source: PaceSource) -> &'static str {
    match source {
        PaceSource::Sitting => "sitting",
        PaceSource::Overall => "overall",
        PaceSource::OwnRule => "own_rule",
    }
}

impl Schedule {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.which.open()?;
        let terms = Terms { minutes_per_week: self.hours_per_week, delivery_days: self.delivery_days };
        let made = schedule(&opened.answers, &Ground::of(&opened.logbook, &opened.rules), terms)
            .map_err(|circle| anyhow::anyhow!(circle_sentence(&circle, &opened.answers)))?;
        if json { as_json(&form(&made, &opened)) } else { Ok(in_words(&made, &opened)) }
    }
}

fn sitting(item: &Item, opened: &Opened) -> String {
    match item {
        Item::Work { part, task } => opened.answers.parts[*part].tasks[*task].sitting().to_owned(),
        Item::PartProof { .. } | Item::Fit { .. } | Item::MachineProof { .. } => String::new(),
    }
}

fn name(item: &Item, opened: &Opened) -> String {
    let answers = &opened.answers;
    match item {
        Item::Work { part, task } => answers.parts[*part].tasks[*task].rule().map_or("", |rule| &rule.name).to_owned(),
        Item::PartProof { part, proof } => answers.parts[*part].proofs[*proof].rule.name.clone(),
        Item::Fit { .. } => String::new(),
        Item::MachineProof { machine, proof } => answers.machines[*machine].readiness.proofs[*proof].rule.name.clone(),
    }
}

fn form(made: &assess::Schedule, opened: &Opened) -> Form {
    let (overall, source) = made.pace.overall();
    let mut paces: Vec<SittingForm> = made
        .pace
        .sittings()
        .map(|(sitting, Spread { mean, deviation, samples })| SittingForm {
            sitting: sitting.to_owned(),
            factor: mean,
            deviation,
            pieces: samples,
        })
        .collect();
    paces.sort_by(|one, other| one.sitting.cmp(&other.sitting));
    let machine = |plan: &MachinePlan| MachineForm {
        machine: machine_name(&opened.logbook, plan.machine),
        ready: plan.ready,
        early: plan.early,
        late: plan.late,
        deviation_days: plan.deviation_days,
        alone: plan.alone,
        alone_days: plan.alone_days,
        critical: plan.critical.clone(),
        needs: plan.needs.clone(),
        undated: plan.undated.map(UndatedForm::of),
        unplanned: plan.unplanned,
        beside: plan.beside,
    };
    Form {
        minutes_per_week: made.terms.minutes_per_week,
        delivery_days: made.terms.delivery_days,
        pace: PaceForm {
            factor: overall.mean,
            deviation: overall.deviation,
            pieces: overall.samples,
            from: source_name(source),
        },
        paces,
        end: made.end,
        machines: made.machines.iter().map(machine).collect(),
        work: made.planned.iter().map(|planned| planned_form(planned, opened)).collect(),
    }
}

fn planned_form(planned: &Planned, opened: &Opened) -> PlannedForm {
    let (held, held_by) = match planned.slot.held {
        Held::Nothing => ("nothing", None),
        Held::After(at) => ("after", Some(at)),
        Held::Delivery => ("delivery", None),
        Held::Hands(at) => ("hands", Some(at)),
    };
    PlannedForm {
        what: match planned.item {
            Item::Work { .. } => "work",
            Item::PartProof { .. } => "part_proof",
            Item::Fit { .. } => "fit",
            Item::MachineProof { .. } => "machine_proof",
        },
        name: name(&planned.item, opened),
        part: planned.part.and_then(|part| opened.logbook.part(part)).map(|file| file.part.tag.clone()),
        machine: machine_name(&opened.logbook, planned.machine),
        title: planned.item.title(&opened.answers),
        sitting: sitting(&planned.item, opened),
        rule_minutes: planned.rule_minutes,
        minutes: planned.minutes,
        wait_hours: (planned.slot.over - planned.slot.hands_free) / 60.0,
        start: planned.start,
        over: planned.over,
        start_days: planned.slot.start / DAY_MINUTES,
        hands_free_days: planned.slot.hands_free / DAY_MINUTES,
        over_days: planned.slot.over / DAY_MINUTES,
        after: planned.after.clone(),
        held,
        held_by,
        lacks_material: planned.lacks_material,
    }
}

fn in_words(made: &assess::Schedule, opened: &Opened) -> String {
    if made.machines.is_empty() {
        return text!("No machine is planned yet.").to_owned();
    }
    let pace = made.pace.sentence();
    let week = hours_text(made.terms.minutes_per_week);
    let mut lines = format!("{}\n{pace}", text!("With {hours} a week:", hours = week));
    for plan in &made.machines {
        let _ = write!(lines, "\n\n{}", machine_in_words(plan, made, opened));
    }
    lines
}

fn machine_in_words(plan: &MachinePlan, made: &assess::Schedule, opened: &Opened) -> String {
    let name = machine_name(&opened.logbook, plan.machine);
    let mut lines = plan.sentence(&name);
    if plan.beside > 0 {
        let beside = text!("{count} more reasons hold it that no schedule can date.", count = plan.beside);
        let _ = write!(lines, "\n  {beside}");
    }
    if !plan.critical.is_empty() {
        let path = match plan.alone {
            Some(day) => text!("Its longest path, {day} at the earliest:", day = day),
            None => text!("Its longest path:").to_owned(),
        };
        let _ = write!(lines, "\n  {path}");
    }
    for planned in plan.critical.iter().map(|at| &made.planned[*at]) {
        let part = planned.part.map_or_else(|| name.clone(), |part| part_name(&opened.logbook, part));
        let dates = if planned.start == planned.over {
            planned.start.to_string()
        } else {
            text!("{first} to {last}", first = planned.start, last = planned.over)
        };
        let _ = write!(lines, "\n    {dates}  {part}: {}", planned.item.title(&opened.answers));
        if planned.lacks_material {
            lines += text!(", once its materials have come");
        }
    }
    lines
}
