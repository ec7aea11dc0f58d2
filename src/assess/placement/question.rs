//! The question in the abstract: seats, spares, what each choice is worth, and what must hold between them.
//!
//! Plain data without records or rules, so that other solvers can be asked the same (`place LOGBOOK --question`). All
//! figures are whole numbers. What must hold:
//!
//! - a spare takes one seat at most, and a seat holds `count` spares at most; a pinned spare takes its only option;
//! - in each machine every need finds an offer that takes it, one to one, or stays open (at [`Question::open_cost`]
//!   each): needs of *settled* spares always may, others while one of the seats that could meet them (see
//!   [`OpenNeed`]) is not filled with spares whose connectors are known;
//! - a machine costs its `change_cost` once it is *changed*: a `live` spare takes a seat there in which it is not fitted,
//!   or a spare with its `home` there takes none in which it is fitted (one that is fitted in no seat: any seat);
//! - what a machine's spares draw from a rail stays within what its supply gives, once a supply with figures is there;
//! - no two spares of a [`Clash`] stand in one machine, nor all of a [`Barred`] set.

use serde::Serialize;

/// The largest worth, positive or negative, that one choice may have: a sum over any shelf then stays below 2^53 and
/// is exact as a floating-point number too.
pub const MOST_WORTH: i64 = 1_000_000;

/// Seats, spares and what must hold between them. Spares, seats and so on are named by their places in these lists.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Question {
    pub connectors: Vec<String>,
    /// For each connector, needed once, those that take it when offered.
    pub takes: Vec<Vec<usize>>,
    /// What a supply gives no more of than its label says: each rail, in amperes, and what several carry together, in
    /// watts.
    pub rails: Vec<String>,
    pub machines: Vec<Machine>,
    pub seats: Vec<Seat>,
    pub spares: Vec<Spare>,
    /// What each need that stays open costs.
    pub open_cost: i64,
    pub clashes: Vec<Clash>,
    pub barred: Vec<Barred>,
}

#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Machine {
    pub name: String,
    /// What it is worth that all its required seats are filled.
    pub complete_worth: i64,
    /// What it costs, once, that parts under current come or go: tests of the whole machine hold no longer.
    pub change_cost: i64,
    /// Its needs that may stay open.
    pub open: Vec<OpenNeed>,
}

/// A need that may stay open while one of these seats is not filled with spares of known connectors.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct OpenNeed {
    pub need: usize,
    pub seats: Vec<usize>,
}

/// A role of a machine, or the place for what stands between its parts.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Seat {
    pub machine: usize,
    pub name: String,
    pub count: u32,
    pub required: bool,
    /// Holds adapters: what takes such a seat must hang, over one adapter or several, on a part that is none.
    pub between: bool,
}

#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Spare {
    pub tag: String,
    /// (connector, how many), each connector once.
    pub needs: Vec<(usize, u32)>,
    pub offers: Vec<(usize, u32)>,
    /// Whether anybody has said what it needs and offers.
    pub known: bool,
    /// What it draws from each rail, in thousandths; empty for nothing known.
    pub draws: Vec<i64>,
    /// What it gives on each rail, in thousandths; empty for what is no supply, or of unknown figures.
    pub gives: Vec<i64>,
    pub options: Vec<Choice>,
    /// It takes current: tests of a machine do not outlast that it comes or goes.
    pub live: bool,
    /// The machine that it is fitted in today, if it is live.
    pub home: Option<usize>,
    /// It must take its only option.
    pub pinned: bool,
}

/// A seat that a spare may take.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Choice {
    pub seat: usize,
    pub worth: i64,
    /// It is there already, so that its needs may stay open.
    pub settled: bool,
    /// It is fitted there today.
    pub fitted: bool,
}

/// No spare of the one list stands in a machine with a spare of the other, unless one of the third does too.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Clash {
    /// `None` for every machine.
    pub machine: Option<usize>,
    pub one: Vec<usize>,
    pub other: Vec<usize>,
    pub unless: Vec<usize>,
}

/// These spares do not all stand in this machine, unless one of the others does too.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Barred {
    pub machine: usize,
    pub spares: Vec<usize>,
    pub unless: Vec<usize>,
}

impl Question {
    /// The machine of a seat.
    pub fn machine_of(&self, seat: usize) -> usize {
        self.seats[seat].machine
    }

    /// Whether a spare can take a seat in which it is fitted.
    pub fn has_seat_at_home(&self, spare: &Spare) -> bool {
        spare.options.iter().any(|choice| choice.fitted)
    }

    /// Whether an offer takes a need.
    pub fn accepts(&self, offer: usize, need: usize) -> bool {
        self.takes[need].contains(&offer)
    }
}
