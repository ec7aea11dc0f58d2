//! One pair of hands: pieces one after the other, the most urgent that can be begun first.

use std::cmp::Reverse;
use std::collections::BinaryHeap;

use super::network::{Circle, order};

/// A piece that wants the hands for a while and then perhaps runs by itself.
#[derive(Clone, Debug, Default)]
pub struct Piece {
    /// Minutes of the calendar that the hands are taken for.
    pub hands: f64,
    /// Minutes of the calendar that it dries or runs by itself afterwards.
    pub wait: f64,
    /// Minutes of the calendar before which it cannot be begun.
    pub not_before: f64,
    /// Its place in the order of urgency: the least goes first.
    pub rank: u64,
    pub after: Vec<usize>,
}

/// What a piece's start hung on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Held {
    /// Nothing: it is begun at once.
    Nothing,
    /// The piece at this place, with its wait.
    After(usize),
    /// Its materials.
    Delivery,
    /// The hands, taken by the piece at this place.
    Hands(usize),
}

/// When a piece is begun, leaves the hands and is over, in minutes of the calendar.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slot {
    pub start: f64,
    pub hands_free: f64,
    pub over: f64,
    pub held: Held,
}

/// A time that can be sorted.
#[derive(Clone, Copy, PartialEq)]
struct At(f64);

impl Eq for At {}

impl PartialOrd for At {
    fn partial_cmp(&self, other: &Self) -> Option<std::cmp::Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for At {
    fn cmp(&self, other: &Self) -> std::cmp::Ordering {
        self.0.total_cmp(&other.0)
    }
}

/// A slot for each piece, and the pieces in the order in which the hands take them. Whatever comes before a piece is
/// as urgent as that piece.
///
/// # Errors
/// One circle, where there are any.
pub fn slots(pieces: &[Piece]) -> Result<(Vec<Slot>, Vec<usize>), Circle> {
    let after: Vec<&[usize]> = pieces.iter().map(|piece| piece.after.as_slice()).collect();
    let sorted = order(&after)?;
    let mut rank: Vec<u64> = pieces.iter().map(|piece| piece.rank).collect();
    let mut followers = vec![Vec::new(); pieces.len()];
    for at in sorted.iter().rev() {
        for first in pieces[*at].after.iter().filter(|first| **first < pieces.len()) {
            rank[*first] = rank[*first].min(rank[*at]);
            followers[*first].push(*at);
        }
    }
    let mut missing: Vec<usize> =
        after.iter().map(|firsts| firsts.iter().filter(|first| **first < pieces.len()).count()).collect();
    let mut free: Vec<(f64, Held)> = pieces
        .iter()
        .map(|piece| if piece.not_before > 0.0 { (piece.not_before, Held::Delivery) } else { (0.0, Held::Nothing) })
        .collect();
    let idle = Slot { start: 0.0, hands_free: 0.0, over: 0.0, held: Held::Nothing };
    let mut slots = vec![idle; pieces.len()];
    let mut taken = Vec::with_capacity(pieces.len());
    // What can be begun later, by when; what can be begun now, by urgency.
    let mut later: BinaryHeap<Reverse<(At, u64, usize)>> = BinaryHeap::new();
    let mut now: BinaryHeap<Reverse<(u64, usize)>> = BinaryHeap::new();
    for at in (0..pieces.len()).filter(|at| missing[*at] == 0) {
        later.push(Reverse((At(free[at].0), rank[at], at)));
    }
    let mut clock = 0.0_f64;
    loop {
        while let Some(Reverse((_, rank, at))) = later.peek().copied().filter(|next| next.0.0.0 <= clock) {
            later.pop();
            now.push(Reverse((rank, at)));
        }
        let Some(Reverse((_, at))) = now.pop() else {
            let Some(Reverse((At(when), ..))) = later.peek() else { break };
            clock = *when;
            continue;
        };
        let piece = &pieces[at];
        let hands = taken.last().map_or(Held::Nothing, |last| Held::Hands(*last));
        let held = if free[at].0 < clock { hands } else { free[at].1 };
        let hands_free = clock + piece.hands;
        let over = hands_free + piece.wait;
        slots[at] = Slot { start: clock, hands_free, over, held };
        clock = hands_free;
        taken.push(at);
        for next in &followers[at] {
            missing[*next] -= 1;
            if over >= free[*next].0 {
                free[*next] = (over, Held::After(at));
            }
            if missing[*next] == 0 {
                later.push(Reverse((At(free[*next].0), rank[*next], *next)));
            }
        }
    }
    Ok((slots, taken))
}
