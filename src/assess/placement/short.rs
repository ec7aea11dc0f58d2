//! Rails that turn out short: what an overdrawn machine teaches, as rows for the solver.
//!
//! A supply that gives no more than so much does not feed a few parts that draw at least so much each. Such a *cover* is
//! far stronger in the relaxation than the sum of all draws, and few machines ever need one.

use std::collections::{BTreeMap, BTreeSet};

use microlp::Variable;

use super::model::Build;
use super::question::Question;
use super::verify::Placed;

/// After so many covers for one machine its draws are summed up.
const MOST_COVERS: usize = 16;

/// A supply in this seat of one that gives at most `gives`, with spares of these seats that draw at least so much, overdraw a
/// rail.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cover {
    pub machine: usize,
    pub rail: usize,
    pub supply: usize,
    pub gives: i64,
    /// (seat, how many of its places, what each draws at least). All places of each seat, but for one seat at most.
    pub drawing: Vec<(usize, u32, i64)>,
}

/// What is known of short rails.
#[derive(Clone, Debug, Default)]
pub struct Short {
    pub covers: Vec<Cover>,
    /// Machines in which draws count when one spare stands in for another.
    pub machines: Vec<bool>,
    /// Machines whose draws are summed up, since covers did not settle it.
    pub summed: Vec<bool>,
}

impl Short {
    /// Nothing is short yet.
    pub fn nothing(machines: usize) -> Self {
        Self { covers: Vec::new(), machines: vec![false; machines], summed: vec![false; machines] }
    }

    /// Takes in an overdrawn machine.
    pub fn learn(&mut self, question: &Question, machine: usize, placed: &[Placed]) {
        self.machines[machine] = true;
        let known = self.covers.iter().filter(|cover| cover.machine == machine).count();
        let more = covers(question, machine, placed);
        self.summed[machine] |= more.is_empty() || known > MOST_COVERS;
        self.covers.extend(more);
    }
}

/// What is drawn from a rail; nothing where nobody knows.
pub fn draw(question: &Question, spare: usize, rail: usize) -> i64 {
    question.spares[spare].draws.get(rail).copied().unwrap_or_default()
}

/// The covers that these parts of a machine show: as few seats as overdraw the rail, once with as weak draws, once with
/// as strong supplies as it takes.
fn covers(question: &Question, machine: usize, placed: &[Placed]) -> Vec<Cover> {
    let mut covers = Vec::new();
    for rail in 0..question.rails.len() {
        let seat_of = |(spare, option): &Placed| question.spares[*spare].options[*option].seat;
        let weakest = placed.iter().filter_map(|at| Some((*question.spares[at.0].gives.get(rail)?, seat_of(at)))).min();
        let Some((gives, supply)) = weakest.filter(|(_, supply)| question.seats[*supply].count == 1) else { continue };
        let mut seats: BTreeMap<usize, (u32, i64)> = BTreeMap::new();
        for (spare, option) in placed.iter().filter(|at| seat_of(at) != supply) {
            let seat = seat_of(&(*spare, *option));
            let draws = draw(question, *spare, rail);
            let (count, least) = seats.entry(seat).or_insert((0, draws));
            *count += 1;
            *least = draws.min(*least);
        }
        let mut drawing: Vec<(usize, u32, i64)> = seats
            .into_iter()
            .map(|(seat, (count, least))| (seat, count, least))
            .filter(|(.., least)| *least > 0)
            .collect();
        drawing.sort_unstable_by_key(|(seat, count, least)| (-least * i64::from(*count), *seat));
        let mut has_partial = false;
        drawing.retain(|(seat, count, _)| {
            *count == question.seats[*seat].count || !std::mem::replace(&mut has_partial, true)
        });
        let mut sum = 0;
        let enough = drawing.iter().position(|(_, count, least)| {
            sum += least * i64::from(*count);
            sum > gives
        });
        let Some(enough) = enough else { continue };
        drawing.truncate(enough + 1);
        covers.push(Cover { machine, rail, supply, gives: sum - 1, drawing: drawing.clone() });
        let (_, count, least) = &mut drawing[0];
        *least -= (sum - gives - 1) / i64::from(*count);
        covers.push(Cover { machine, rail, supply, gives, drawing });
    }
    covers
}

impl Build<'_> {
    /// A machine's draws within what its supply gives, where covers did not settle it. With no supply of known figures
    /// the row holds nothing.
    pub fn rails(&mut self, machines: &BTreeSet<usize>, short: &Short) {
        let question = self.question;
        for machine in machines.iter().filter(|machine| short.summed[**machine]) {
            let here: Vec<_> = self.choices.iter().filter(|chosen| self.at(**chosen).1 == *machine).copied().collect();
            for rail in 0..question.rails.len() {
                let mut most: BTreeMap<usize, i64> = BTreeMap::new();
                for chosen in &here {
                    let seat = self.at(*chosen).0;
                    let draws = draw(question, chosen.0, rail) * i64::from(question.seats[seat].count);
                    most.entry(seat).and_modify(|most| *most = draws.max(*most)).or_insert(draws);
                }
                let total: i64 = most.values().sum();
                // In a seat of one stands one supply at most; others have a row each, since any of them may be too weak.
                let mut supplies: BTreeMap<(usize, usize), Vec<(Variable, i64)>> = BTreeMap::new();
                for chosen in &here {
                    if let Some(gives) = question.spares[chosen.0].gives.get(rail) {
                        let seat = self.at(*chosen).0;
                        let alone = if question.seats[seat].count == 1 { 0 } else { chosen.2.idx() + 1 };
                        supplies.entry((seat, alone)).or_default().push((chosen.2, (total - gives).max(0)));
                    }
                }
                let draws = here.iter().map(|chosen| (chosen.2, draw(question, chosen.0, rail)));
                for supplies in supplies.into_values() {
                    let takes = draws.clone().chain(supplies).filter(|(_, takes)| *takes != 0);
                    let terms = takes.map(|(column, takes)| (column, takes as f64 / 1000.0)).collect();
                    self.row(terms, total as f64 / 1000.0);
                }
            }
        }
    }

    /// What covers say. Where only `some` of a seat's `places` are of the cover, the others may be filled as well: then all
    /// else of the cover weighs so much that the row holds nothing while any of it is missing.
    pub fn covers(&mut self, machines: &BTreeSet<usize>, short: &Short) {
        let question = self.question;
        for cover in short.covers.iter().filter(|cover| machines.contains(&cover.machine)) {
            let places = |seat: usize| question.seats[seat].count;
            let partial = cover.drawing.iter().find(|(seat, count, _)| *count < places(*seat));
            let (some, weight) = partial.map_or((0, 1), |(seat, count, _)| (*count, places(*seat) - *count + 1));
            let mut terms = Vec::new();
            for chosen in &self.choices {
                let (seat, _) = self.at(*chosen);
                let gives = question.spares[chosen.0].gives.get(cover.rail);
                let is_weak = seat == cover.supply && gives.is_some_and(|gives| *gives <= cover.gives);
                let draws = draw(question, chosen.0, cover.rail);
                let drawing = cover.drawing.iter().find(|(of, _, least)| *of == seat && draws >= *least);
                match drawing {
                    Some((_, count, _)) if *count < places(seat) => terms.push((chosen.2, 1.0)),
                    Some(_) => terms.push((chosen.2, f64::from(weight))),
                    None if is_weak => terms.push((chosen.2, f64::from(weight))),
                    None => {}
                }
            }
            let others = 1 + cover.drawing.iter().map(|(_, count, _)| count).sum::<u32>() - some;
            self.row(terms, f64::from(weight * others + some) - 1.0);
        }
    }
}
