//! The best answer to a question, proven, or the best so far with its bound.
//!
//! What can be cut soundly is cut; what then falls apart into machines that share no spare is solved apart. Every
//! answer of the solver is looked over with whole numbers and by the whole machine's fit. What the rows did not say (a
//! rail that is short after all, adapters in a circle, parts that do not go together) becomes a row, and it is solved
//! again, first each such machine alone, then all: the last answer is the best among all that hold. Where the solver errs
//! or time runs out, the best answer so far that holds is given, or one made by hand, with the bound known by then.

use std::collections::BTreeSet;
use std::time::Duration;

use super::cut::{Kept, cut};
use super::question::{Barred, Clash, Question};
use super::short::Short;
use super::verify::{Fault, Looked, Placed, barred, changed, look};

/// So often it is solved again with what was learned; what does not hold by then is mended by hand.
const MOST_ROUNDS: usize = 400;

/// What a whole machine's fit found not to go together.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Misfits {
    pub clashes: Vec<Clash>,
    pub barred: Vec<Barred>,
}

impl Misfits {
    /// Whether nothing was found.
    pub fn is_empty(&self) -> bool {
        self.clashes.is_empty() && self.barred.is_empty()
    }
}

/// Looks at a whole machine with these spares in it. What it finds must bar just these spares from standing together,
/// and may bar others like them too.
pub type Referee<'a> = &'a dyn Fn(usize, &[usize]) -> Misfits;

/// How much longer to look; nothing when cancelled.
pub type TimeLeft<'a> = &'a dyn Fn() -> Duration;

/// An answer that holds.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Answer {
    /// For each spare, the place of the option that it takes.
    pub taken: Vec<Option<usize>>,
    pub worth: i64,
    /// No answer is worth more.
    pub bound: i64,
    /// For each machine, its needs that stay open.
    pub open: Vec<Vec<(usize, u32)>>,
    /// What was found not to go together.
    pub misfits: Misfits,
}

impl Answer {
    /// Whether no better answer exists.
    pub fn is_proven(&self) -> bool {
        self.worth == self.bound
    }
}

/// The best answer.
pub fn solve(question: &Question, referee: Referee, patience: TimeLeft) -> Answer {
    let mut search = Search {
        question: question.clone(),
        short: Short::nothing(question.machines.len()),
        taken: vec![None; question.spares.len()],
        bounds: Vec::new(),
        is_whole: false,
        best: None,
        asked_clashes: question.clashes.len(),
        referee,
        patience,
    };
    search.run();
    search.into_answer()
}

/// The way to an answer.
pub struct Search<'a> {
    /// As asked, with what was found on the way.
    pub question: Question,
    pub short: Short,
    pub taken: Vec<Option<usize>>,
    /// Machines that are solved together, with their bound.
    bounds: Vec<(BTreeSet<usize>, i64)>,
    /// Nothing was found wrong with the last answer.
    is_whole: bool,
    /// The best answer so far that holds, with its worth.
    pub best: Option<(i64, Vec<Option<usize>>)>,
    /// How many clashes the question came with.
    asked_clashes: usize,
    pub referee: Referee<'a>,
    pub patience: TimeLeft<'a>,
}

impl Search<'_> {
    fn run(&mut self) {
        let mut stale: BTreeSet<usize> = (0..self.question.machines.len()).collect();
        for round in 0..MOST_ROUNDS {
            if round > 0 && self.settle_each(&stale) {
                break;
            }
            // What stands in for what is true only with the rows of now.
            let kept = cut(&self.question, &self.short.machines);
            self.solve_groups(&kept, &stale);
            stale = (0..self.question.machines.len()).filter(|machine| self.learn(*machine)).collect();
            self.is_whole = stale.is_empty();
            if self.is_whole || (self.patience)().is_zero() {
                break;
            }
        }
    }

    /// Settles what did not hold, machine by machine with all else as it is: what is learned so need not be learned with all
    /// machines together, and the answer holds. Whether none is better.
    fn settle_each(&mut self, stale: &BTreeSet<usize>) -> bool {
        let kept = cut(&self.question, &self.short.machines);
        let mut all_hold = true;
        for machine in stale {
            all_hold &= self.settle_alone(&kept, *machine);
        }
        if !all_hold {
            return false;
        }
        let worth = worth(&self.question, &self.taken, &self.looked());
        if self.best.as_ref().is_none_or(|(best, _)| *best < worth) {
            self.best = Some((worth, self.taken.clone()));
        }
        self.is_whole = worth == self.bound();
        self.is_whole
    }

    /// Solves machines that share spares together; those that were solved already only with one that is stale.
    fn solve_groups(&mut self, kept: &Kept, stale: &BTreeSet<usize>) {
        for machines in groups(&self.question, kept) {
            if machines.is_disjoint(stale) && self.bounds.iter().any(|(known, _)| *known == machines) {
                continue;
            }
            // Rows only ever come on top: an earlier bound of the same machines still holds.
            let before = self.bounds.iter().find(|(known, _)| *known == machines).map(|(_, bound)| *bound);
            self.bounds.retain(|(known, _)| known.is_disjoint(&machines));
            let (part, bound) = self.solve_part(kept, &machines);
            self.bounds.push((machines.clone(), before.map_or(bound, |before| bound.min(before))));
            match part {
                Some(part) => self.put(&machines, part),
                // Time ran out: what was there before is mended.
                None if before.is_some() => {}
                None => self.put(&machines, self.by_hand(kept, &machines)),
            }
        }
    }

    /// Solves one machine with what the others leave, until it holds; whether it does.
    fn settle_alone(&mut self, kept: &Kept, machine: usize) -> bool {
        let here = BTreeSet::from([machine]);
        let before = self.placed(machine);
        self.put(&here, Vec::new());
        let mut left = kept.clone();
        for (left, taken) in left.iter_mut().zip(&self.taken) {
            if taken.is_some() {
                left.clear();
            }
        }
        for _ in 0..MOST_ROUNDS {
            let part = self.solve_part(&left, &here).0;
            let is_solved = part.is_some();
            self.put(&here, part.unwrap_or(before.clone()));
            if !is_solved || !self.learn(machine) {
                return is_solved;
            }
        }
        false
    }

    /// Notes as rows what is wrong with a machine; whether anything is.
    fn learn(&mut self, machine: usize) -> bool {
        let placed = self.placed(machine);
        let looked = look(&self.question, machine, &placed);
        let spares: Vec<usize> = placed.iter().map(|(spare, _)| *spare).collect();
        let misfits = if looked.faults.is_empty() { (self.referee)(machine, &spares) } else { Misfits::default() };
        let is_wrong = !looked.faults.is_empty() || !misfits.is_empty();
        for fault in looked.faults {
            match fault {
                Fault::Overdrawn => self.short.learn(&self.question, machine, &placed),
                Fault::Together(spares) => {
                    let barred = barred(&self.question, machine, &spares, &placed);
                    self.question.barred.push(barred);
                }
                Fault::Broken(_) => {}
            }
        }
        self.question.clashes.extend(misfits.clashes);
        self.question.barred.extend(misfits.barred);
        is_wrong
    }

    pub fn placed(&self, machine: usize) -> Vec<Placed> {
        let here = |(spare, option): &Placed| {
            self.question.machine_of(self.question.spares[*spare].options[*option].seat) == machine
        };
        self.taken.iter().enumerate().filter_map(|(at, taken)| Some((at, (*taken)?))).filter(here).collect()
    }

    /// Replaces what the machines hold.
    fn put(&mut self, machines: &BTreeSet<usize>, part: Vec<Placed>) {
        for (spare, taken) in self.question.spares.iter().zip(&mut self.taken) {
            if taken.is_some_and(|option| machines.contains(&self.question.seats[spare.options[option].seat].machine)) {
                *taken = None;
            }
        }
        for (spare, option) in part {
            self.taken[spare] = Some(option);
        }
    }

    fn into_answer(mut self) -> Answer {
        if !self.is_whole {
            (0..self.question.machines.len()).for_each(|machine| self.mend(machine));
            self.fill();
        }
        let mut worth_now = worth(&self.question, &self.taken, &self.looked());
        if let Some((best, taken)) = self.best.take_if(|(best, _)| *best > worth_now) {
            (worth_now, self.taken) = (best, taken);
        }
        let bound = self.bound().max(worth_now);
        let open = self.looked().into_iter().map(|looked| looked.open).collect();
        let Question { mut clashes, barred, .. } = self.question;
        clashes.drain(..self.asked_clashes);
        let misfits = Misfits { clashes, barred };
        Answer { worth: worth_now, bound, open, taken: self.taken, misfits }
    }

    fn looked(&self) -> Vec<Looked> {
        (0..self.question.machines.len()).map(|machine| look(&self.question, machine, &self.placed(machine))).collect()
    }

    /// What no answer exceeds.
    fn bound(&self) -> i64 {
        self.bounds.iter().map(|(_, bound)| bound).sum()
    }
}

/// What an answer is worth, in whole numbers.
pub fn worth(question: &Question, taken: &[Option<usize>], looked: &[Looked]) -> i64 {
    let mut filled = vec![0; question.seats.len()];
    let mut worth = 0;
    for (spare, taken) in question.spares.iter().zip(taken) {
        if let Some(option) = taken {
            let choice = spare.options[*option];
            worth += choice.worth;
            filled[choice.seat] += 1;
        }
    }
    let changed = changed(question, taken);
    for (at, (machine, looked)) in question.machines.iter().zip(looked).enumerate() {
        worth -= question.open_cost * looked.open.iter().map(|(_, count)| i64::from(*count)).sum::<i64>();
        let mut required = question.seats.iter().zip(&filled).filter(|(seat, _)| seat.machine == at && seat.required);
        if required.all(|(seat, filled)| *filled >= seat.count) {
            worth += machine.complete_worth;
        }
        if changed[at] {
            worth -= machine.change_cost;
        }
    }
    worth
}

/// Machines that share a spare, over one another or straight, together.
fn groups(question: &Question, kept: &Kept) -> Vec<BTreeSet<usize>> {
    let mut groups: Vec<BTreeSet<usize>> =
        (0..question.machines.len()).map(|machine| BTreeSet::from([machine])).collect();
    for (spare, kept) in question.spares.iter().zip(kept) {
        let mut wanted: BTreeSet<usize> =
            kept.iter().map(|option| question.machine_of(spare.options[*option].seat)).collect();
        // A part that has no seat where it is fitted changes that machine by going anywhere.
        wanted.extend(spare.home.filter(|home| {
            !wanted.is_empty() && question.machines[*home].change_cost > 0 && !question.has_seat_at_home(spare)
        }));
        if wanted.len() < 2 {
            continue;
        }
        let (apart, together): (Vec<_>, Vec<_>) = groups.into_iter().partition(|group| group.is_disjoint(&wanted));
        groups = apart;
        groups.push(together.into_iter().flatten().collect());
    }
    groups
}
