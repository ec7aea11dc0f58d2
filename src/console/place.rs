//! `place LOGBOOK [--pin TAG=MACHINE] [--leave-out TAG[=MACHINE]] [--may-touch MACHINE] [--may-touch-all] [--weigh
//! GOAL=0..10] [--soonest] [--seconds S]`: which spare goes into which machine, over all machines and spares at once, and
//! why. A machine past its tests is left as it is, unless it may be touched or something is pinned into it or out of it.
//!
//! JSON: `{"worth": 9120, "bound": 9120, "proven": true, "placed": [{"part": "0042", "machine": "…", "role": "Mainboard",
//! "worth": 1103, "why": [{"say": "proven", "worth": 30}, …], "pinned": false, "next_best": {"part": "0043", "cost": 12,
//! "proven": true}}, …], "wishes": [{"machine": "…", "role": "Case", "required": true, "count": 1, "say": "…"}, …],
//! "left": [{"part": "0050", "machine": "…", "role": "…", "worth": 990, "lacks": "…"}, …], "moves": [{"say": "Plan 0042 …",
//! "part": "0042", "minutes": 20, "voids": [{"machine": "…", "test": "…", "minutes": 480}, …]}, …], "voided": [{"machine":
//! "…", "tests": ["…"], "minutes": 480, "worth": -48}, …], "outlook": [{"machine": "…", "missing": 1, "minutes": 85,
//! "wait_hours": 48, "against": ["…"], "left_as_it_is": false}, …]}`. A move's `minutes` are those at the bench, `voids` the
//! tests of whole machines that hold no longer after it; `voided` counts each machine's once, with what that takes off
//! `worth`. `left_as_it_is` says that a machine is past its tests and not touched. `proven` says
//! whether no other proposal is worth more, `bound` what none exceeds. `next_best` is what the part's seat would be
//! filled with without it (`part` is null when it stays empty) and what the whole proposal would be worth less; it is
//! null for what is pinned, and where time ran out. `wishes` without a role are connectors that stay open. `outlook`
//! stands in the order in which machines can be ready.
//!
//! `--question` prints what was asked in the abstract instead, with the answer: `{"question": {…}, "answer": {"worth": …,
//! "bound": …, "taken": [0, null, …]}}`; `taken` names each spare's option. Its fields stand at the head of
//! `assess::placement::question`.

use std::fmt::Write as _;
use std::sync::Arc;
use std::time::{Duration, Instant};

use anyhow::{anyhow, bail};
use clap::Args;
use serde::Serialize;

use super::opened::{Opened, Which};
use super::{Answer, as_json};
use crate::assess::placement::question::Question;
use crate::assess::placement::{
    Ask, Asked, Effort, Goals, Lack, Left, Move, NextBest, Proposal, Seated, Term, ask, left_over, next_best, propose,
};
use crate::assess::reason::{machine_name, part_name, role_name};
use crate::record::{Logbook, MachineId, PartId, RoleId};
use crate::rules::ProofRule;
use crate::text;

#[derive(Args)]
pub struct Place {
    #[command(flatten)]
    which: Which,
    #[command(flatten)]
    pub wanted: Wanted,
    #[arg(long, help = text!("Print the question in the abstract, with its answer"))]
    question: bool,
}

/// What is wanted of a proposal.
#[derive(Args)]
pub struct Wanted {
    #[arg(long, value_name = "TAG=MACHINE", help = text!("Put this part into this machine, whatever else; may be told several times"))]
    pin: Vec<String>,
    #[arg(long, value_name = "TAG[=MACHINE]", help = text!("Leave this part out, or out of this machine"))]
    leave_out: Vec<String>,
    #[arg(long, value_name = "MACHINE", help = text!("Also move parts of this machine, though it is past its tests; may be told several times"))]
    may_touch: Vec<String>,
    #[arg(long, help = text!("Also move parts of all machines that are past their tests"))]
    may_touch_all: bool,
    #[arg(long, value_name = "GOAL=0..10", help = text!("How much a goal matters; 5 is usual. Goals: fill, optional, dates, brief, proven, work, original, stay, urgent"))]
    weigh: Vec<String>,
    #[arg(long, help = text!("Which machines can be ready soonest"))]
    soonest: bool,
    #[arg(long, default_value_t = 10.0, value_parser = seconds, help = text!("How long to look at most; then the best so far is told with its bound"))]
    seconds: f64,
}

fn seconds(typed: &str) -> Result<f64, String> {
    let told = typed.parse::<f64>().ok().filter(|seconds| (0.0..=3600.0).contains(seconds));
    told.ok_or_else(|| text!("seconds are a figure from 0 to 3600").to_owned())
}

impl Wanted {
    /// What is asked of a logbook.
    pub fn ask(&self, opened: &Opened) -> anyhow::Result<Ask> {
        let mut goals = Goals { soonest: self.soonest, ..Goals::default() };
        for told in &self.weigh {
            let wrong = || anyhow!(text!("“{told}” is no goal with a figure from 0 to 10: dates=8", told = told));
            let (name, to) = told.split_once('=').ok_or_else(wrong)?;
            let to = to.parse::<u32>().ok().filter(|to| *to <= 10).ok_or_else(wrong)?;
            if !goals.set(name, to) {
                let known: Vec<&str> = goals.sliders().into_iter().map(|(name, ..)| name).collect();
                bail!(text!("no goal is called “{name}”; there are: {known}", name = name, known = known.join(", ")));
            }
        }
        let mut ask = Ask { goals, may_touch_all: self.may_touch_all, ..Ask::default() };
        for name in &self.may_touch {
            ask.may_touch.push(opened.machine(name)?);
        }
        for told in &self.pin {
            let wrong = || anyhow!(text!("“{told}” is no tag with a machine: 0042=The studio", told = told));
            let (tag, machine) = told.split_once('=').ok_or_else(wrong)?;
            ask.pins.push((opened.part(tag)?.part.id, opened.machine(machine)?));
        }
        for told in &self.leave_out {
            let (tag, machine) = told.split_once('=').map_or((told.as_str(), None), |(tag, of)| (tag, Some(of)));
            let machine = machine.map(|name| opened.machine(name)).transpose()?;
            ask.left_out.push((opened.part(tag)?.part.id, machine));
        }
        Ok(ask)
    }

    /// When to stop looking.
    pub fn end(&self) -> Instant {
        Instant::now() + Duration::from_secs_f64(self.seconds)
    }
}

/// What is left until then.
pub fn left_until(end: Instant) -> impl Fn() -> Duration {
    move || end.saturating_duration_since(Instant::now())
}

#[derive(Serialize)]
pub struct Form {
    worth: i64,
    bound: i64,
    proven: bool,
    placed: Vec<SeatedForm>,
    wishes: Vec<WishForm>,
    left: Vec<LeftForm>,
    moves: Vec<MoveForm>,
    voided: Vec<VoidedForm>,
    outlook: Vec<OutlookForm>,
}

#[derive(Serialize)]
struct SeatedForm {
    part: String,
    machine: String,
    role: Option<String>,
    worth: i64,
    why: Vec<WhyForm>,
    pinned: bool,
    next_best: Option<NextForm>,
}

#[derive(Serialize)]
struct WhyForm {
    say: String,
    worth: i64,
}

#[derive(Serialize)]
struct NextForm {
    part: Option<String>,
    cost: i64,
    proven: bool,
}

#[derive(Serialize)]
struct WishForm {
    machine: String,
    role: Option<String>,
    required: bool,
    count: u32,
    say: String,
}

#[derive(Serialize)]
struct LeftForm {
    part: String,
    machine: String,
    role: Option<String>,
    worth: i64,
    lacks: String,
}

/// A move with what it costs.
#[derive(Serialize)]
pub struct MoveForm {
    say: String,
    part: String,
    minutes: u32,
    voids: Vec<TestForm>,
}

#[derive(Serialize)]
struct TestForm {
    machine: String,
    test: String,
    minutes: u32,
}

#[derive(Serialize)]
struct VoidedForm {
    machine: String,
    tests: Vec<String>,
    minutes: u32,
    worth: i64,
}

impl MoveForm {
    /// Of a move of a proposal.
    pub fn of(one: &Move, asked: &Asked) -> Self {
        let Effort { minutes, voids } = Effort::of(asked, one);
        let test = |(machine, test): &(MachineId, Arc<ProofRule>)| TestForm {
            machine: machine_name(asked.logbook, *machine),
            test: text::say(&test.say).to_owned(),
            minutes: test.minutes,
        };
        Self {
            say: one.sentence(asked.logbook),
            part: asked.logbook.part(one.part()).map(|file| file.part.tag.clone()).unwrap_or_default(),
            minutes,
            voids: voids.iter().map(test).collect(),
        }
    }
}

#[derive(Serialize)]
struct OutlookForm {
    machine: String,
    missing: u32,
    minutes: u32,
    wait_hours: u32,
    against: Vec<String>,
    left_as_it_is: bool,
}

#[derive(Serialize)]
struct AbstractForm<'a> {
    question: &'a Question,
    answer: AnswerForm<'a>,
}

#[derive(Serialize)]
struct AnswerForm<'a> {
    worth: i64,
    bound: i64,
    taken: &'a [Option<usize>],
}

impl Place {
    pub fn answer(&self, json: bool) -> Answer {
        let opened = self.which.open()?;
        let ask_of = self.wanted.ask(&opened)?;
        let asked = ask(&opened.logbook, &opened.answers, &opened.rules, ask_of)?;
        let end = self.wanted.end();
        let proposal = propose(&asked, &left_until(end));
        if self.question {
            let mut question = asked.question.clone();
            question.clashes.extend(proposal.answer.misfits.clashes.iter().cloned());
            question.barred.clone_from(&proposal.answer.misfits.barred);
            let answer = AnswerForm { worth: proposal.worth, bound: proposal.bound, taken: &proposal.answer.taken };
            return as_json(&AbstractForm { question: &question, answer });
        }
        let told = Told::of(&asked, proposal, end);
        if json { as_json(&told.form(&opened.logbook)) } else { Ok(told.in_words(&opened.logbook)) }
    }
}

/// A proposal with all that is told about it.
pub struct Told<'a> {
    asked: &'a Asked<'a>,
    pub proposal: Proposal,
    /// For each placed part.
    next: Vec<Option<NextBest>>,
    left: Vec<Left>,
}

impl<'a> Told<'a> {
    /// Looks for what is next best as long as there is time.
    pub fn of(asked: &'a Asked<'a>, proposal: Proposal, end: Instant) -> Self {
        let left_time = left_until(end);
        let next = |seated: &Seated| {
            if left_time().is_zero() { None } else { next_best(asked, &proposal, seated.part, &left_time) }
        };
        let next = proposal.placed.iter().map(next).collect();
        let left = left_over(asked, &proposal);
        Self { asked, proposal, next, left }
    }

    pub fn form(&self, logbook: &Logbook) -> Form {
        let Self { asked, proposal, next, left } = self;
        let tag = |part: PartId| logbook.part(part).map(|file| file.part.tag.clone()).unwrap_or_default();
        let seated = |(seated, next): (&Seated, &Option<NextBest>)| SeatedForm {
            part: tag(seated.part),
            machine: machine_name(logbook, seated.machine),
            role: role(logbook, seated.machine, seated.role),
            worth: seated.worth,
            why: seated.why.iter().map(|(term, worth)| WhyForm { say: term.said(), worth: *worth }).collect(),
            pinned: seated.pinned,
            next_best: next.as_ref().map(|next| NextForm {
                part: next.part.map(tag),
                cost: next.cost,
                proven: next.is_proven,
            }),
        };
        Form {
            worth: proposal.worth,
            bound: proposal.bound,
            proven: proposal.is_proven(),
            placed: proposal.placed.iter().zip(next).map(seated).collect(),
            wishes: proposal
                .wishes
                .iter()
                .map(|wish| WishForm {
                    machine: machine_name(logbook, wish.machine),
                    role: role(logbook, wish.machine, wish.role),
                    required: wish.required,
                    count: wish.count,
                    say: wish.line(logbook, asked.rules),
                })
                .collect(),
            left: left
                .iter()
                .map(|left| LeftForm {
                    part: tag(left.part),
                    machine: machine_name(logbook, left.machine),
                    role: role(logbook, left.machine, left.role),
                    worth: left.worth,
                    lacks: Lack::all(&left.lacks, asked),
                })
                .collect(),
            moves: proposal.moves.iter().map(|one| MoveForm::of(one, asked)).collect(),
            voided: proposal
                .voided
                .iter()
                .map(|voided| VoidedForm {
                    machine: machine_name(logbook, voided.machine),
                    tests: voided.tests.iter().map(|test| text::say(&test.say).to_owned()).collect(),
                    minutes: voided.minutes,
                    worth: voided.worth,
                })
                .collect(),
            outlook: proposal
                .outlook
                .iter()
                .map(|of| OutlookForm {
                    machine: machine_name(logbook, of.machine),
                    missing: of.missing,
                    minutes: of.totals.minutes,
                    wait_hours: of.totals.wait_hours,
                    against: of.against.iter().map(|because| because.sentence(logbook, asked.rules)).collect(),
                    left_as_it_is: asked.alone.holds(of.machine),
                })
                .collect(),
        }
    }

    pub fn in_words(&self, logbook: &Logbook) -> String {
        let Self { asked, proposal, next, left } = self;
        let mut lines = standing(proposal);
        let mut machine = None;
        for (seated, next) in proposal.placed.iter().zip(next) {
            if machine != Some(seated.machine) {
                machine = Some(seated.machine);
                let _ = write!(lines, "\n{}", machine_name(logbook, seated.machine));
                if asked.alone.holds(seated.machine) {
                    lines += text!(" (past its tests: left as it is)");
                }
                for voided in proposal.voided.iter().filter(|voided| voided.machine == seated.machine) {
                    let voids = Term::Voids { minutes: voided.minutes };
                    let _ = write!(lines, "\n    {:+} {}", voided.worth, voids.said());
                }
            }
            let seat = role(logbook, seated.machine, seated.role).unwrap_or_else(|| text!("between").to_owned());
            let part = part_name(logbook, seated.part);
            let _ = write!(lines, "\n  > {seat}: {part}, {}", seated.worth);
            if seated.pinned && !asked.alone.holds_role(seated.machine, seated.role) {
                lines += text!(", pinned");
            }
            let why: Vec<String> =
                seated.why.iter().map(|(term, worth)| format!("{worth:+} {}", term.said())).collect();
            let _ = write!(lines, "\n      {}", why.join("; "));
            if let Some(next) = next {
                let _ = write!(lines, "\n      {}", next.sentence(logbook));
            }
        }
        let mut section = |title: &str, rows: Vec<String>| {
            if !rows.is_empty() {
                let _ = write!(lines, "\n{title}");
                for row in rows {
                    let _ = write!(lines, "\n  - {row}");
                }
            }
        };
        let wish = |wish: &crate::assess::placement::Wish| {
            format!("{}: {}", machine_name(logbook, wish.machine), wish.line(logbook, asked.rules))
        };
        section(text!("Wanted:"), proposal.wishes.iter().map(wish).collect());
        section(text!("To be moved:"), proposal.moves.iter().map(|one| one.told(asked)).collect());
        let left = left.iter().map(|left| {
            let best = machine_name(logbook, left.machine);
            format!("{}, {best}: {}", part_name(logbook, left.part), Lack::all(&left.lacks, asked))
        });
        section(text!("Left over, each with its best use:"), left.collect());
        let outlook = proposal.outlook.iter().map(|of| of.sentence(asked));
        section(text!("In the order in which they can be ready:"), outlook.collect());
        lines
    }
}

/// Whether it is proven the best.
pub fn standing(proposal: &Proposal) -> String {
    if proposal.is_proven() {
        return text!("Worth {worth}, and no other proposal is worth more:", worth = proposal.worth);
    }
    text!(
        "Worth {worth}, the best so far: another proposal may be worth up to {bound}:",
        worth = proposal.worth,
        bound = proposal.bound
    )
}

/// The name of a role; `None` for what stands between others.
pub fn role(logbook: &Logbook, machine: MachineId, role: Option<RoleId>) -> Option<String> {
    role.map(|role| role_name(logbook, machine, role))
}
