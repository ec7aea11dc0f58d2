//! The best answer to a question, proven, or the best so far with its bound.
//!
//! What can be cut soundly is cut; what then falls apart into machines that share no spare is solved apart. Every
//! answer of the solver is looked over with whole numbers and by the whole machine's fit. What the rows did not say (a
//! rail that is short after all, adapters in a circle, parts that do not go together) becomes a row, and it is solved
//! again: the last answer is the best among all that hold. Where the solver errs or time runs out, an answer that holds
//! is made by hand and given with the bound known by then.

use std::collections::BTreeSet;
use std::time::Duration;

use microlp::{Error, ResumeOptions, SolveOptions, SolveOutcome};

use super::cut::{Kept, cut};
use super::model::{Model, model};
use super::question::{Barred, Clash, Question};
use super::short::Short;
use super::verify::{Fault, Looked, Placed, look};

/// How long the solver runs before it is asked again whether to go on.
const SLICE: Duration = Duration::from_millis(40);

/// With more machines than these, an answer to fall back on is made first.
const MANY: usize = 6;

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
        asked_clashes: question.clashes.len(),
        referee,
        patience,
    };
    search.run();
    search.into_answer()
}

struct Search<'a> {
    /// As asked, with what was found on the way.
    question: Question,
    short: Short,
    taken: Vec<Option<usize>>,
    /// Machines that are solved together, with their bound.
    bounds: Vec<(BTreeSet<usize>, i64)>,
    /// Nothing was found wrong with the last answer.
    is_whole: bool,
    /// How many clashes the question came with.
    asked_clashes: usize,
    referee: Referee<'a>,
    patience: TimeLeft<'a>,
}

/// What the solver gave for some machines.
struct Given {
    worth: f64,
    /// Choices that are taken whole.
    taken: Vec<Placed>,
    /// Seats with choices that came out as fractions.
    split: BTreeSet<usize>,
}

impl Search<'_> {
    fn run(&mut self) {
        let mut stale: BTreeSet<usize> = (0..self.question.machines.len()).collect();
        for _ in 0..MOST_ROUNDS {
            if stale.is_empty() {
                break;
            }
            let kept = cut(&self.question, &self.short.machines);
            // Machines that were solved already are only solved again with those that share a spare with a stale one.
            for machines in groups(&self.question, &kept) {
                if machines.is_disjoint(&stale) && self.bounds.iter().any(|(known, _)| *known == machines) {
                    continue;
                }
                // Rows only ever come on top: an earlier bound of the same machines still holds.
                let before = self.bounds.iter().find(|(known, _)| *known == machines).map(|(_, bound)| *bound);
                self.bounds.retain(|(known, _)| known.is_disjoint(&machines));
                let (part, bound) = self.solve_part(&kept, &machines);
                self.bounds.push((machines.clone(), before.map_or(bound, |before| bound.min(before))));
                match part {
                    Some(part) => self.put(&machines, part),
                    // Time ran out: what was there before is mended.
                    None if before.is_some() => {}
                    None => self.put(&machines, self.by_hand(&kept, &machines)),
                }
            }
            stale.clear();
            for machine in 0..self.question.machines.len() {
                if self.learn(machine) {
                    stale.insert(machine);
                }
            }
            self.is_whole = stale.is_empty();
            if (self.patience)().is_zero() {
                break;
            }
        }
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
                Fault::Together(barred) => self.question.barred.push(barred),
                Fault::Broken(_) => {}
            }
        }
        self.question.clashes.extend(misfits.clashes);
        self.question.barred.extend(misfits.barred);
        is_wrong
    }

    fn placed(&self, machine: usize) -> Vec<Placed> {
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

    /// The best for some machines, and what none exceeds. First only platforms are whole; where choices then come out as
    /// fractions, those seats alone are settled with all else as it is, which nearly always loses nothing; else their
    /// choices are whole numbers from there on.
    fn solve_part(&self, kept: &Kept, machines: &BTreeSet<usize>) -> (Option<Vec<Placed>>, i64) {
        let mut bound = self.most(kept, machines);
        let mut best = (machines.len() > MANY).then(|| self.one_by_one(kept, machines)).flatten();
        let mut whole = BTreeSet::new();
        while best.as_ref().is_none_or(|best| (best.worth.round() as i64) < bound) {
            let (given, no_more) = self.ask(kept, machines, &whole);
            // Worths are whole numbers: what lies a rounding error above one means that one.
            bound = no_more.map_or(bound, |no_more| bound.min((no_more + 1e-3).floor() as i64));
            let Some(given) = given else { break };
            let split = given.split.clone();
            let settled = if split.is_empty() { Some(given) } else { self.settle(kept, machines, &given) };
            best = [best, settled].into_iter().flatten().max_by(|one, other| one.worth.total_cmp(&other.worth));
            if split.is_empty() || (self.patience)().is_zero() {
                break;
            }
            whole.extend(split);
        }
        (best.map(|best| best.taken), bound)
    }

    /// The best for one machine, then for the next with what is left, and so on: found in no time, and not far off.
    fn one_by_one(&self, kept: &Kept, machines: &BTreeSet<usize>) -> Option<Given> {
        let mut left = kept.clone();
        let mut all = Given { worth: 0.0, taken: Vec::new(), split: BTreeSet::new() };
        for machine in machines {
            let alone = BTreeSet::from([*machine]);
            let given = self.ask(&left, &alone, &BTreeSet::new()).0?;
            let given = if given.split.is_empty() { given } else { self.settle(&left, &alone, &given)? };
            for (spare, _) in &given.taken {
                left[*spare].clear();
            }
            all.worth += given.worth;
            all.taken.extend(given.taken);
        }
        Some(all)
    }

    /// Settles the seats that came out as fractions, with all else as it is.
    fn settle(&self, kept: &Kept, machines: &BTreeSet<usize>, given: &Given) -> Option<Given> {
        let mut few = kept.clone();
        for (at, (spare, few)) in self.question.spares.iter().zip(&mut few).enumerate() {
            few.retain(|option| {
                given.split.contains(&spare.options[*option].seat) || given.taken.contains(&(at, *option))
            });
        }
        self.ask(&few, machines, &given.split).0.filter(|given| given.split.is_empty())
    }

    /// Asks the solver, slice by slice: what it has found when it is done or broken off, and what nothing exceeds.
    fn ask(&self, kept: &Kept, machines: &BTreeSet<usize>, whole: &BTreeSet<usize>) -> (Option<Given>, Option<f64>) {
        let Model { problem, choices } = model(&self.question, kept, machines, &self.short, whole);
        let mut options = SolveOptions::default();
        options.time_limit = Some(SLICE.min((self.patience)()));
        let mut outcome: Result<SolveOutcome, Error> = problem.solve_with(options);
        loop {
            let Ok(known) = outcome else { return (None, None) };
            if known.is_optimal() || (self.patience)().is_zero() {
                let bound = known.stats().best_bound;
                let Some(solution) = known.solution() else { return (None, bound) };
                let bound = if known.is_optimal() { Some(solution.objective()) } else { bound };
                let mut given = Given { worth: solution.objective(), taken: Vec::new(), split: BTreeSet::new() };
                for (spare, option, column) in choices {
                    let share = solution.var_value(column);
                    if share > 1.0 - 1e-5 {
                        given.taken.push((spare, option));
                    } else if share > 1e-5 {
                        given.split.insert(self.question.spares[spare].options[option].seat);
                    }
                }
                return (Some(given), bound);
            }
            let mut options = ResumeOptions::default();
            options.time_limit = Some(SLICE.min((self.patience)()));
            outcome = known.resume_with(options);
        }
    }

    /// What no answer can exceed: each seat filled with the best for it.
    fn most(&self, kept: &Kept, machines: &BTreeSet<usize>) -> i64 {
        let mut seats: Vec<Vec<i64>> = vec![Vec::new(); self.question.seats.len()];
        for (spare, kept) in self.question.spares.iter().zip(kept) {
            kept.iter().map(|option| spare.options[*option]).for_each(|choice| seats[choice.seat].push(choice.worth));
        }
        let of_seat = |seat: usize| -> i64 {
            let mut worths = seats[seat].clone();
            worths.sort_unstable_by_key(|worth| -worth);
            worths.into_iter().take(self.question.seats[seat].count as usize).filter(|worth| *worth > 0).sum()
        };
        let here = |seat: &usize| machines.contains(&self.question.seats[*seat].machine);
        let complete: i64 = machines.iter().map(|machine| self.question.machines[*machine].complete_worth).sum();
        (0..seats.len()).filter(here).map(of_seat).sum::<i64>() + complete
    }

    /// An answer made by hand: pinned ones first, then the best that holds with what is there, and so on.
    fn by_hand(&self, kept: &Kept, machines: &BTreeSet<usize>) -> Vec<Placed> {
        let question = &self.question;
        let mut order: Vec<(bool, i64, Placed)> = Vec::new();
        for (at, (spare, kept)) in question.spares.iter().zip(kept).enumerate() {
            let here =
                kept.iter().filter(|option| machines.contains(&question.machine_of(spare.options[**option].seat)));
            order.extend(here.map(|option| (!spare.pinned, -spare.options[*option].worth, (at, *option))));
        }
        order.sort_unstable();
        let mut placed: Vec<Placed> = Vec::new();
        for (free, worth, one) in order {
            let machine = question.machine_of(question.spares[one.0].options[one.1].seat);
            let is_taken = placed.iter().any(|(spare, _)| *spare == one.0);
            if is_taken || (free && worth >= 0) {
                continue;
            }
            let in_machine = |(spare, option): &&Placed| {
                question.machine_of(question.spares[*spare].options[*option].seat) == machine
            };
            let with: Vec<Placed> = placed.iter().filter(in_machine).chain([&one]).copied().collect();
            if !free || self.holds(machine, &with) {
                placed.push(one);
            }
        }
        placed
    }

    fn holds(&self, machine: usize, placed: &[Placed]) -> bool {
        let spares: Vec<usize> = placed.iter().map(|(spare, _)| *spare).collect();
        look(&self.question, machine, placed).faults.is_empty() && (self.referee)(machine, &spares).is_empty()
    }

    /// Takes out of a machine what does not hold, the least worth first.
    fn mend(&mut self, machine: usize) {
        loop {
            let mut placed = self.placed(machine);
            if self.holds(machine, &placed) {
                return;
            }
            let spares = &self.question.spares;
            placed.retain(|(spare, _)| !spares[*spare].pinned);
            let Some((spare, _)) = placed.iter().min_by_key(|(spare, option)| spares[*spare].options[*option].worth)
            else {
                return;
            };
            self.taken[*spare] = None;
        }
    }

    /// Puts into seats with room what is free and holds there, the best first.
    fn fill(&mut self) {
        let mut order: Vec<(i64, Placed)> = Vec::new();
        for (at, (spare, taken)) in self.question.spares.iter().zip(&self.taken).enumerate() {
            if taken.is_none() {
                let options = spare.options.iter().enumerate().filter(|(_, choice)| choice.worth > 0);
                order.extend(options.map(|(option, choice)| (-choice.worth, (at, option))));
            }
        }
        order.sort_unstable();
        let mut room: Vec<u32> = self.question.seats.iter().map(|seat| seat.count).collect();
        for (spare, taken) in self.question.spares.iter().zip(&self.taken) {
            if let Some(option) = taken {
                room[spare.options[*option].seat] -= 1;
            }
        }
        for (_, (spare, option)) in order {
            let choice = self.question.spares[spare].options[option];
            if room[choice.seat] == 0 || self.taken[spare].is_some() {
                continue;
            }
            let machine = self.question.machine_of(choice.seat);
            let mut placed = self.placed(machine);
            let open = |placed: &[Placed]| -> i64 {
                look(&self.question, machine, placed).open.iter().map(|(_, count)| i64::from(*count)).sum()
            };
            let before = open(&placed);
            placed.push((spare, option));
            if choice.worth > (open(&placed) - before) * self.question.open_cost && self.holds(machine, &placed) {
                self.taken[spare] = Some(option);
                room[choice.seat] -= 1;
            }
        }
    }

    fn into_answer(mut self) -> Answer {
        let machines = self.question.machines.len();
        if !self.is_whole {
            (0..machines).for_each(|machine| self.mend(machine));
            self.fill();
        }
        let looked: Vec<Looked> =
            (0..machines).map(|machine| look(&self.question, machine, &self.placed(machine))).collect();
        let worth = worth(&self.question, &self.taken, &looked);
        let bound: i64 = self.bounds.iter().map(|(_, bound)| bound).sum();
        let open = looked.into_iter().map(|looked| looked.open).collect();
        let Question { mut clashes, barred, .. } = self.question;
        clashes.drain(..self.asked_clashes);
        let misfits = Misfits { clashes, barred };
        Answer { worth, bound: bound.max(worth), open, taken: self.taken, misfits }
    }
}

/// What an answer is worth, in whole numbers.
fn worth(question: &Question, taken: &[Option<usize>], looked: &[Looked]) -> i64 {
    let mut filled = vec![0; question.seats.len()];
    let mut worth = 0;
    for (spare, taken) in question.spares.iter().zip(taken) {
        if let Some(option) = taken {
            let choice = spare.options[*option];
            worth += choice.worth;
            filled[choice.seat] += 1;
        }
    }
    for (at, (machine, looked)) in question.machines.iter().zip(looked).enumerate() {
        worth -= question.open_cost * looked.open.iter().map(|(_, count)| i64::from(*count)).sum::<i64>();
        let mut required = question.seats.iter().zip(&filled).filter(|(seat, _)| seat.machine == at && seat.required);
        if required.all(|(seat, filled)| *filled >= seat.count) {
            worth += machine.complete_worth;
        }
    }
    worth
}

/// Machines that share a spare, over one another or straight, together.
fn groups(question: &Question, kept: &Kept) -> Vec<BTreeSet<usize>> {
    let mut groups: Vec<BTreeSet<usize>> =
        (0..question.machines.len()).map(|machine| BTreeSet::from([machine])).collect();
    for (spare, kept) in question.spares.iter().zip(kept) {
        let wanted: BTreeSet<usize> =
            kept.iter().map(|option| question.machine_of(spare.options[*option].seat)).collect();
        if wanted.len() < 2 {
            continue;
        }
        let (apart, together): (Vec<_>, Vec<_>) = groups.into_iter().partition(|group| group.is_disjoint(&wanted));
        groups = apart;
        groups.push(together.into_iter().flatten().collect());
    }
    groups
}
