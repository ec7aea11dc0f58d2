//! Rails that turn out short: what an overdrawn machine teaches, as a row for the solver.
//!
//! A supply that gives no more than so much does not feed a few parts that draw at least so much each. Such a *cover* is
//! far stronger in the relaxation than the sum of all draws, and few machines ever need one.

use std::collections::BTreeMap;

use super::question::Question;
use super::verify::Placed;

/// After so many covers for one machine its draws are summed up.
const MOST_COVERS: usize = 16;

/// Supplies that give at most `gives`, with spares of these seats that draw at least so much, overdraw a rail.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cover {
    pub machine: usize,
    pub rail: usize,
    pub gives: i64,
    /// (seat, how many of its places, what each draws at least).
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
        let gives = placed.iter().filter_map(|(spare, _)| question.spares[*spare].gives.get(rail)).copied().min();
        let Some(gives) = gives else { continue };
        let mut seats: BTreeMap<usize, (u32, i64)> = BTreeMap::new();
        for (spare, option) in placed {
            let seat = question.spares[*spare].options[*option].seat;
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
        let mut sum = 0;
        let enough = drawing.iter().position(|(_, count, least)| {
            sum += least * i64::from(*count);
            sum > gives
        });
        let Some(enough) = enough else { continue };
        drawing.truncate(enough + 1);
        covers.push(Cover { machine, rail, gives: sum - 1, drawing: drawing.clone() });
        let (_, count, least) = &mut drawing[0];
        *least -= (sum - gives - 1) / i64::from(*count);
        covers.push(Cover { machine, rail, gives, drawing });
    }
    covers
}
