//! The best for some of the machines, from the solver, and what none exceeds.

use std::collections::BTreeSet;
use std::time::Duration;

use microlp::{Error, ResumeOptions, SolveOptions, SolveOutcome};

use super::cut::Kept;
use super::model::{Model, Whole, model};
use super::solve::Search;
use super::verify::Placed;

/// How long the solver runs before it is asked again whether to go on.
const SLICE: Duration = Duration::from_millis(40);

/// With more machines than these, an answer to fall back on is made first.
const MANY: usize = 6;

/// What the solver gave for some machines.
struct Given {
    worth: f64,
    /// Choices that are taken whole.
    taken: Vec<Placed>,
    /// Seats with choices that came out as fractions.
    split: BTreeSet<usize>,
}

impl Search<'_> {
    /// The best for some machines, and what none exceeds. First only platforms are whole; where choices then come out as
    /// fractions, those seats alone are settled with all else as it is, which nearly always loses nothing; else what they
    /// hold is in whole numbers from there on.
    pub fn solve_part(&self, kept: &Kept, machines: &BTreeSet<usize>) -> (Option<Vec<Placed>>, i64) {
        let mut bound = self.most(kept, machines);
        let mut best =
            (machines.len() > MANY && self.best.is_none()).then(|| self.one_by_one(kept, machines)).flatten();
        let mut whole = Whole::default();
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
            let given = self.ask(&left, &alone, &Whole::default()).0?;
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
        self.ask(&few, machines, &Whole { choices: given.split.clone(), ..Whole::default() })
            .0
            .filter(|given| given.split.is_empty())
    }

    /// Asks the solver, slice by slice: what it has found when it is done or broken off, and what nothing exceeds.
    fn ask(&self, kept: &Kept, machines: &BTreeSet<usize>, whole: &Whole) -> (Option<Given>, Option<f64>) {
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
}
