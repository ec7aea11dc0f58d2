//! Capacitor positions placed on a map one after the other.

use crate::record::CapacitorId;

/// The positions that are still to be placed.
pub struct Placing {
    queue: Vec<CapacitorId>,
    at: usize,
}

impl Placing {
    /// Places these, in their order; nothing where there are none.
    pub fn of(queue: Vec<CapacitorId>) -> Option<Self> {
        (!queue.is_empty()).then_some(Self { queue, at: 0 })
    }

    /// The one that is placed next.
    pub fn next(&self) -> Option<CapacitorId> {
        self.queue.get(self.at).copied()
    }

    /// Goes on to the one after it.
    pub fn go_on(&mut self) {
        self.at += 1;
    }

    /// How many are left, with the next one.
    pub fn left(&self) -> usize {
        self.queue.len() - self.at.min(self.queue.len())
    }
}
