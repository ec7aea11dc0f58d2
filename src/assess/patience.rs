//! How long a search looks before it gives what it has, and the word that nobody waits for it any more.

use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};

/// Tells a search on another thread to give what it has.
#[derive(Clone, Debug, Default)]
pub struct Stop(Arc<AtomicBool>);

impl Stop {
    /// Has the search end at its next look.
    pub fn stop(&self) {
        self.0.store(true, Ordering::Relaxed);
    }

    /// Whether the search is to end.
    pub fn is_stopped(&self) -> bool {
        self.0.load(Ordering::Relaxed)
    }
}

/// How much is looked at before the best so far is given.
#[derive(Clone, Debug)]
pub struct Patience {
    left: u64,
    stop: Stop,
}

impl From<u64> for Patience {
    fn from(left: u64) -> Self {
        Self { left, stop: Stop::default() }
    }
}

impl Patience {
    /// So much, and no further once it is stopped.
    pub fn until(stop: Stop, left: u64) -> Self {
        Self { left, stop }
    }

    pub(super) fn spend(&mut self, looks: u64) {
        self.left = self.left.saturating_sub(looks);
    }

    /// Whether nothing more is to be begun.
    pub(super) fn is_out(&self) -> bool {
        self.left == 0 || self.is_stopped()
    }

    /// Whether what was begun is to be left as it is.
    pub(super) fn is_stopped(&self) -> bool {
        self.stop.is_stopped()
    }
}
