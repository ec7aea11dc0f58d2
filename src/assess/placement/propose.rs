//! A proposal: what goes where and why, what stays empty and what it wants, what is left over, and what is to be moved.

use std::sync::Arc;
use std::time::Duration;

use super::ask::Asked;
use super::effort::{minutes_of, tests_that_hold};
use super::goals::Term;
use super::misfits::{misfits, reasons};
use super::moves::{Move, moves};
use super::question::{Barred, Question};
use super::solve::{Answer, TimeLeft, solve};
use super::ties::settled;
use super::verify::{Placed, changed};
use super::wishes::{Wish, wishes};
use crate::assess::fit::Because;
use crate::assess::outstanding::Totals;
use crate::record::{MachineId, PartId, RoleId};
use crate::rules::ProofRule;

/// A part and the seat that it is proposed for.
#[derive(Clone, Debug, PartialEq)]
pub struct Seated {
    pub part: PartId,
    pub machine: MachineId,
    /// `None` for what stands between others.
    pub role: Option<RoleId>,
    pub worth: i64,
    /// The grounds, each with its points.
    pub why: Vec<(Term, i64)>,
    pub pinned: bool,
    /// Its place among the question's spares.
    pub spare: usize,
}

/// How far a machine is once the proposal is carried out.
#[derive(Clone, Debug, PartialEq)]
pub struct Outlook {
    pub machine: MachineId,
    /// Places of required roles that stay empty.
    pub missing: u32,
    /// Work outstanding on its parts.
    pub totals: Totals,
    /// What fit has against parts that are pinned or fitted together.
    pub against: Vec<Because>,
}

/// Tests of a whole machine that hold today, and count no longer once the proposal is carried out.
#[derive(Clone, Debug)]
pub struct Voided {
    pub machine: MachineId,
    pub tests: Vec<Arc<ProofRule>>,
    pub minutes: u32,
    /// What that takes off the proposal's worth: 0 or less.
    pub worth: i64,
}

/// Everything that is proposed.
#[derive(Clone, Debug)]
pub struct Proposal {
    pub revision: u64,
    pub worth: i64,
    /// No proposal is worth more; equal to `worth` where this one is proven the best.
    pub bound: i64,
    /// Machine by machine, role by role.
    pub placed: Vec<Seated>,
    /// What is missing, machine by machine.
    pub wishes: Vec<Wish>,
    /// The difference between today and the proposal.
    pub moves: Vec<Move>,
    /// Machines whose own tests it voids.
    pub voided: Vec<Voided>,
    /// Complete machines with least work first.
    pub outlook: Vec<Outlook>,
    /// The answer in the abstract, for further questions.
    pub answer: Answer,
}

impl Proposal {
    /// Whether no better proposal exists.
    pub fn is_proven(&self) -> bool {
        self.worth == self.bound
    }

    /// The seat of a part.
    pub fn seat_of(&self, part: PartId) -> Option<&Seated> {
        self.placed.iter().find(|seated| seated.part == part)
    }
}

/// The best proposal, looked for as long as there is patience. What is there stays where nothing is gained.
pub fn propose(asked: &Asked, patience: TimeLeft) -> Proposal {
    of_answer(asked, settled(asked, answer(asked, &asked.question, patience), &asked.today))
}

/// The best answer to a question over the same spares and seats.
pub(super) fn answer(asked: &Asked, question: &Question, patience: TimeLeft) -> Answer {
    solve(question, &|machine, spares| misfits(asked, machine, spares), patience)
}

/// What an answer proposes.
pub(super) fn of_answer(asked: &Asked, answer: Answer) -> Proposal {
    let mut placed: Vec<(usize, Seated)> = Vec::new();
    for (spare, option) in taken(&answer) {
        let of = &asked.question.spares[spare];
        let choice = of.options[option];
        let (machine, role) = asked.seats[choice.seat];
        let why = asked.why(spare, option);
        let seated =
            Seated { part: asked.parts[spare], machine, role, worth: choice.worth, why, pinned: of.pinned, spare };
        placed.push((choice.seat, seated));
    }
    placed.sort_by_key(|(seat, seated)| (*seat, seated.spare));
    let placed: Vec<Seated> = placed.into_iter().map(|(_, seated)| seated).collect();
    Proposal {
        revision: asked.logbook.revision,
        worth: answer.worth,
        bound: answer.bound,
        wishes: wishes(asked, &answer),
        moves: moves(asked, &placed),
        voided: voided(asked, &answer),
        outlook: outlook(asked, &answer),
        placed,
        answer,
    }
}

fn voided(asked: &Asked, answer: &Answer) -> Vec<Voided> {
    let changed = changed(&asked.question, &answer.taken);
    let of = |(at, is_changed): (usize, bool)| {
        let machine = asked.answers.machine(asked.machines[at]).filter(|_| is_changed)?;
        let tests = tests_that_hold(machine);
        let (minutes, worth) = (minutes_of(&tests), -asked.question.machines[at].change_cost);
        (minutes > 0).then_some(Voided { machine: machine.machine, tests, minutes, worth })
    };
    changed.into_iter().enumerate().filter_map(of).collect()
}

/// Spares that an answer places, with their options.
pub(super) fn taken(answer: &Answer) -> impl Iterator<Item = Placed> {
    answer.taken.iter().enumerate().filter_map(|(spare, option)| Some((spare, (*option)?)))
}

/// Spares that an answer places in a machine.
pub(super) fn in_machine(question: &Question, answer: &Answer, machine: usize) -> Vec<Placed> {
    let seat = |(spare, option): &Placed| question.spares[*spare].options[*option].seat;
    taken(answer).filter(|placed| question.machine_of(seat(placed)) == machine).collect()
}

fn outlook(asked: &Asked, answer: &Answer) -> Vec<Outlook> {
    let question = &asked.question;
    let mut outlook: Vec<Outlook> = (0..asked.machines.len())
        .map(|machine| {
            let here = in_machine(question, answer, machine);
            let spares: Vec<usize> = here.iter().map(|(spare, _)| *spare).collect();
            let filled = |seat: usize| {
                here.iter().filter(|(spare, option)| question.spares[*spare].options[*option].seat == seat).count()
                    as u32
            };
            let required =
                question.seats.iter().enumerate().filter(|(_, seat)| seat.machine == machine && seat.required);
            Outlook {
                machine: asked.machines[machine],
                missing: required.map(|(at, seat)| seat.count.saturating_sub(filled(at))).sum(),
                totals: spares
                    .iter()
                    .fold(Totals::default(), |sum, spare| sum.and(asked.pieces[*spare].answers.totals)),
                against: reasons(asked, &spares),
            }
        })
        .collect();
    outlook.sort_by_key(|of| (of.missing, of.totals.minutes));
    outlook
}

/// What a seat would be worth without the part that is proposed for it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NextBest {
    /// The part that would take the seat instead; none when it stays empty.
    pub part: Option<PartId>,
    /// What the whole proposal would be worth less.
    pub cost: i64,
    /// Whether that is proven; else it costs at least this.
    pub is_proven: bool,
}

/// The best proposal in which a part does not take its seat, told by the seat; `None` for a part that is not placed.
pub fn next_best(asked: &Asked, proposal: &Proposal, part: PartId, patience: TimeLeft) -> Option<NextBest> {
    let seated = proposal.seat_of(part).filter(|seated| !seated.pinned)?;
    let option = proposal.answer.taken[seated.spare]?;
    let mut question = with_misfits(asked, &proposal.answer);
    let choice = question.spares[seated.spare].options.remove(option);
    let other = answer(asked, &question, patience);
    let taker = taken(&other).find(|(spare, option)| {
        let seat = question.spares[*spare].options[*option].seat;
        seat == choice.seat
            && proposal.answer.taken[*spare].is_none_or(|own| asked.question.spares[*spare].options[own].seat != seat)
    });
    let is_proven = other.is_proven() && proposal.is_proven();
    Some(NextBest {
        part: taker.map(|(spare, _)| asked.parts[spare]),
        cost: proposal.worth - if is_proven { other.worth } else { other.bound.min(proposal.worth) },
        is_proven,
    })
}

/// The question with what was learned on the way to an answer.
pub(super) fn with_misfits(asked: &Asked, answer: &Answer) -> Question {
    let mut question = asked.question.clone();
    question.clashes.extend(answer.misfits.clashes.iter().cloned());
    let new = answer.misfits.barred.iter().filter(|barred| !asked.question.barred.contains(barred));
    question.barred.extend(new.cloned().collect::<Vec<Barred>>());
    question
}

/// As long as this is looked for further answers to one question of a window or console.
pub const SHORT: Duration = Duration::from_secs(2);
