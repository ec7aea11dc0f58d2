//! The best set of pieces for a given time: exact, by branch and bound.
//!
//! A piece may only be chosen together with all that it comes after. Setting up for a sitting is such a piece too: it
//! takes minutes, is worth nothing, and comes before all work of that sitting; so is a gate, which takes no time, is
//! worth something, and comes after all that holds it. Everything is then one problem: of the sets that hold with each
//! piece all it comes after, and fit the time, the one of the greatest worth.
//!
//! Set-ups are decided first: once all are, parts do not depend on each other any more, and what is left is a knapsack
//! (see `finish`). The bound is Lagrange's: minutes get a price, and what the pieces are then worth together is a largest closure,
//! found exactly as a least cut. The price is found in whole numbers, so a bound is never off by rounding.

use super::closure::Closure;
use super::finish::{Rest, finish};
use crate::assess::Patience;

/// Something that can be chosen.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Piece {
    /// Hands-on minutes.
    pub minutes: u32,
    /// What it is worth, 0 or more.
    pub worth: u32,
    /// Places in the list of what it comes after.
    pub after: Vec<usize>,
}

/// What was chosen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Choice {
    /// Places in the list, ascending.
    pub chosen: Vec<usize>,
    pub minutes: u32,
    pub worth: u64,
    /// No choice can be worth more; equal to `worth` where the choice is known to be the best.
    pub bound: u64,
}

impl Choice {
    /// Whether no better choice exists.
    pub fn is_best(&self) -> bool {
        self.worth == self.bound
    }
}

/// How much is looked at before the best so far is given with its bound: cut searches times pieces in them. About a
/// second on a desk computer of 2020.
pub const PATIENCE: u64 = 3_000_000;

/// The best choice within `minutes`; the best found and its bound where `patience` ran out. Pieces of a circle, or
/// after a place that is not in the list, are never chosen.
pub fn choose(pieces: &[Piece], minutes: u32, patience: impl Into<Patience>) -> Choice {
    let mut search = Search::new(pieces, minutes, patience.into());
    search.run();
    search.into_choice()
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Mark {
    Free,
    In,
    Out,
}

struct Search<'a> {
    pieces: &'a [Piece],
    /// What comes after each piece.
    before: Vec<Vec<usize>>,
    /// All pieces that can be chosen, each after those that it comes after.
    order: Vec<usize>,
    /// Pieces that are worth nothing and come after nothing, but before others: set-ups.
    hubs: Vec<usize>,
    minutes: i64,
    patience: Patience,
    marks: Vec<Mark>,
    best: Vec<usize>,
    best_worth: i64,
    /// The greatest bound of what was left unlooked at.
    open_bound: i64,
}

/// A set with what it comes to.
#[derive(Clone, Default)]
struct Set {
    members: Vec<usize>,
    minutes: i64,
    worth: i64,
}

/// What is known of a node: nothing in it is worth more than `bound`; and, where not all fits, the two sets that are
/// worth the same at the price of a minute, one within the time and one over it.
struct Relaxed {
    bound: i64,
    split: Option<Split>,
}

struct Split {
    fits: Vec<usize>,
    over: Vec<usize>,
    /// Worth for minutes.
    price: (i64, i64),
}

impl<'a> Search<'a> {
    fn new(pieces: &'a [Piece], minutes: u32, patience: Patience) -> Self {
        let mut before = vec![Vec::new(); pieces.len()];
        for (at, piece) in pieces.iter().enumerate() {
            for first in piece.after.iter().filter(|first| **first < pieces.len()) {
                before[*first].push(at);
            }
        }
        let mut search = Self {
            pieces,
            hubs: (0..pieces.len())
                .filter(|at| pieces[*at].worth == 0 && pieces[*at].after.is_empty() && !before[*at].is_empty())
                .collect(),
            before,
            order: Vec::new(),
            minutes: i64::from(minutes),
            patience,
            marks: vec![Mark::Free; pieces.len()],
            best: Vec::new(),
            best_worth: 0,
            open_bound: 0,
        };
        search.leave_out_what_cannot_be();
        search
    }

    /// Takes out what is in a circle or behind one, and what does not fit the time with all that it comes after.
    fn leave_out_what_cannot_be(&mut self) {
        let mut missing: Vec<usize> = self.pieces.iter().map(|piece| piece.after.len()).collect();
        let mut ready: Vec<usize> = (0..self.pieces.len()).filter(|at| missing[*at] == 0).collect();
        let mut reached = 0;
        while let Some(at) = ready.get(reached).copied() {
            reached += 1;
            for later in &self.before[at] {
                missing[*later] -= 1;
                if missing[*later] == 0 {
                    ready.push(*later);
                }
            }
        }
        for at in (0..self.pieces.len()).filter(|at| missing[*at] > 0) {
            self.marks[at] = Mark::Out;
        }
        for at in &ready {
            let at = *at;
            if self.marks[at] == Mark::Free && self.lacking(at).minutes > self.minutes {
                let mut log = Vec::new();
                self.leave_out(at, &mut log);
            }
        }
        self.order = ready;
    }

    /// A free piece with all free pieces that it comes after.
    fn lacking(&self, at: usize) -> Set {
        let mut set = Set::default();
        let mut open = vec![at];
        let mut seen = std::collections::HashSet::from([at]);
        while let Some(next) = open.pop() {
            set.members.push(next);
            set.minutes += i64::from(self.pieces[next].minutes);
            set.worth += i64::from(self.pieces[next].worth);
            let firsts = self.pieces[next].after.iter().copied();
            open.extend(firsts.filter(|first| self.marks[*first] == Mark::Free && seen.insert(*first)));
        }
        set
    }

    fn take(&mut self, at: usize, log: &mut Vec<usize>) {
        for member in self.lacking(at).members {
            self.marks[member] = Mark::In;
            log.push(member);
        }
    }

    /// Leaves out a free piece with all that comes after it.
    fn leave_out(&mut self, at: usize, log: &mut Vec<usize>) {
        let mut open = vec![at];
        while let Some(next) = open.pop() {
            if self.marks[next] == Mark::Free {
                self.marks[next] = Mark::Out;
                log.push(next);
                open.extend(&self.before[next]);
            }
        }
    }

    fn run(&mut self) {
        let root = self.relax(&Set::default());
        self.descend(root, Set::default());
    }

    /// Decides piece after piece, the more promising way first.
    fn descend(&mut self, node: Relaxed, inside: Set) {
        let Relaxed { bound, split } = node;
        if bound <= self.best_worth {
            return;
        }
        // A node that is worth looking at has a split, unless it was left in the middle.
        let Some(split) = split.filter(|_| !self.patience.is_out()) else {
            self.open_bound = self.open_bound.max(bound);
            return;
        };
        let Some((branch, take_first)) = self.branch(&split, &inside) else { return };
        for take in [take_first, !take_first] {
            let mut log = Vec::new();
            let mut inside = inside.clone();
            if take {
                let lacking = self.lacking(branch);
                inside.minutes += lacking.minutes;
                inside.worth += lacking.worth;
                self.take(branch, &mut log);
            } else {
                self.leave_out(branch, &mut log);
            }
            if self.patience.is_stopped() {
                self.open_bound = self.open_bound.max(bound);
            } else if inside.minutes <= self.minutes && bound > self.best_worth {
                let child = self.relax(&inside);
                self.descend(Relaxed { bound: child.bound.min(bound), ..child }, inside);
            }
            for at in log {
                self.marks[at] = Mark::Free;
            }
        }
    }

    /// The piece to decide next, and whether taking it is the more promising; `None` where the node was finished.
    fn branch(&mut self, split: &Split, inside: &Set) -> Option<(usize, bool)> {
        let between = |at: &usize| split.over.contains(at) && !split.fits.contains(at);
        let free: Vec<usize> = self.hubs.iter().copied().filter(|at| self.marks[*at] == Mark::Free).collect();
        let hub = free.iter().find(|at| between(at)).or_else(|| free.iter().find(|at| split.fits.contains(at)));
        if let Some(hub) = hub.or(free.first()) {
            return Some((*hub, split.over.contains(hub)));
        }
        let room = self.minutes - inside.minutes;
        let free: Vec<usize> = self.order.iter().copied().filter(|at| self.marks[*at] == Mark::Free).collect();
        self.patience.spend(free.len() as u64 * 4 + room as u64);
        let beats = self.best_worth - inside.worth;
        let group = match finish(&Rest { pieces: self.pieces, free: &free, room, price: split.price, beats }) {
            Ok(better) => {
                if let Some(members) = better {
                    let worth = members.iter().map(|at| i64::from(self.pieces[*at].worth)).sum();
                    self.note(inside, &Set { members, minutes: 0, worth });
                }
                return None;
            }
            Err(group) => group,
        };
        // A group with too many sets falls apart soonest without what takes no time but ties parts together.
        let promising = |at: usize| split.over.contains(&at);
        let weight = |at: &usize| (self.pieces[*at].after.len() + self.before[*at].len(), usize::MAX - at);
        group.into_iter().max_by_key(weight).map(|at| (at, promising(at)))
    }

    /// The bound of what can be made of a node, and better choices met on the way.
    fn relax(&mut self, inside: &Set) -> Relaxed {
        let room = self.minutes - inside.minutes;
        let mut free: Vec<usize> = (0..self.pieces.len()).filter(|at| self.marks[*at] == Mark::Free).collect();
        // What no longer fits by itself is of no use in this node; what comes after it does not fit either.
        free.retain(|at| i64::from(self.pieces[*at].minutes) <= room);
        self.patience.spend(free.len() as u64 + 1);
        let mut closure = Closure::new(&free, self.pieces, &self.marks_in());
        let sum = |members: Vec<usize>, pieces: &[Piece]| {
            let minutes = members.iter().map(|at| i64::from(pieces[*at].minutes)).sum();
            let worth = members.iter().map(|at| i64::from(pieces[*at].worth)).sum();
            Set { members, minutes, worth }
        };
        let mut fits = Set::default();
        let mut over = sum(closure.best(|piece| i64::from(piece.worth)), self.pieces);
        if over.minutes <= room {
            // All that is worth anything fits.
            self.note(inside, &over);
            return Relaxed { bound: inside.worth + over.worth, split: None };
        }
        let most = inside.worth + over.worth;
        loop {
            if self.patience.is_stopped() {
                let filled = self.filled(fits, room, &free);
                self.note(inside, &filled);
                return Relaxed { bound: most, split: None };
            }
            // The price of a minute at which both sets are worth the same, as a fraction.
            let (rise, run) = (over.worth - fits.worth, over.minutes - fits.minutes);
            self.patience.spend(free.len() as u64 + 1);
            let priced = |piece: &Piece| i64::from(piece.worth) * run - i64::from(piece.minutes) * rise;
            let set = sum(closure.best(priced), self.pieces);
            let at_price = |set: &Set| set.worth * run - set.minutes * rise;
            if at_price(&set) <= at_price(&fits) {
                let bound = inside.worth + fits.worth + (room - fits.minutes) * rise / run;
                let members = fits.members.clone();
                let filled = self.filled(fits, room, &free);
                self.note(inside, &filled);
                return Relaxed { bound, split: Some(Split { fits: members, over: over.members, price: (rise, run) }) };
            }
            if set.minutes <= room {
                fits = set;
            } else {
                over = set;
            }
        }
    }

    fn marks_in(&self) -> Vec<bool> {
        self.marks.iter().map(|mark| *mark == Mark::In).collect()
    }

    /// A set with whatever still fits, the most worth for its minutes first.
    fn filled(&mut self, set: Set, room: i64, free: &[usize]) -> Set {
        let mut log = Vec::new();
        for at in &set.members {
            self.marks[*at] = Mark::In;
            log.push(*at);
        }
        let mut filled = set;
        let mut candidates: Vec<(usize, Set)> = Vec::new();
        for at in free.iter().copied().filter(|at| self.marks[*at] == Mark::Free && self.pieces[*at].worth > 0) {
            candidates.push((at, self.lacking(at)));
        }
        candidates.sort_by(|(a, one), (b, other)| {
            (other.worth * one.minutes.max(1)).cmp(&(one.worth * other.minutes.max(1))).then(a.cmp(b))
        });
        for (at, _) in candidates {
            if self.marks[at] != Mark::Free {
                continue;
            }
            let lacking = self.lacking(at);
            if filled.minutes + lacking.minutes <= room {
                filled.minutes += lacking.minutes;
                filled.worth += lacking.worth;
                for member in lacking.members {
                    self.marks[member] = Mark::In;
                    log.push(member);
                    filled.members.push(member);
                }
            }
        }
        for at in log {
            self.marks[at] = Mark::Free;
        }
        filled
    }

    /// Keeps a choice that is better than the best so far.
    fn note(&mut self, inside: &Set, more: &Set) {
        if inside.worth + more.worth > self.best_worth {
            self.best_worth = inside.worth + more.worth;
            self.best = (0..self.pieces.len()).filter(|at| self.marks[*at] == Mark::In).collect();
            self.best.extend(&more.members);
            self.best.sort_unstable();
        }
    }

    fn into_choice(self) -> Choice {
        let minutes = self.best.iter().map(|at| self.pieces[*at].minutes).sum();
        let worth = self.best_worth as u64;
        Choice { chosen: self.best, minutes, worth, bound: (self.open_bound as u64).max(worth) }
    }
}
