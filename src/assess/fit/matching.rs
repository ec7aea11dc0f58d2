//! Which needs find an offer: a largest matching, since counting is not enough where one offer takes several kinds.

/// Beyond this many of one need none is moved for another any more: no machine comes near it. They take what is free.
const MOST: u32 = 64;

/// Something offered or needed a number of times by one of several parts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Item {
    /// The part's place in the list of parts.
    pub part: u16,
    /// The connector's number.
    pub connector: u16,
    pub count: u32,
}

/// One connector of a need in one of an offer, by their places in the lists.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Seat {
    pub need: u16,
    pub offer: u16,
}

/// Who sits where, and how many of each need stay unmet.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Seating {
    pub seats: Vec<Seat>,
    pub unmet: Vec<u32>,
}

impl Seating {
    pub fn unmet_in_all(&self) -> u32 {
        self.unmet.iter().sum()
    }
}

/// Seats as many as possible; earlier needs are met before later ones where both cannot be, and each rather by its own
/// kind. `takes(offer, need)` says whether one takes the other; no part plugs into itself.
pub fn seat(needs: &[Item], offers: &[Item], takes: impl Fn(&Item, &Item) -> bool) -> Seating {
    let mut search = Search {
        choices: Vec::with_capacity(needs.len() * 2),
        ranges: Vec::with_capacity(needs.len()),
        free: offers.iter().map(|offer| offer.count).collect(),
        seats: Vec::with_capacity(needs.len()),
        tried: vec![0; offers.len()],
        turn: 0,
    };
    for need in needs {
        let from = search.choices.len();
        for of_its_kind in [true, false] {
            search.choices.extend((0..offers.len()).filter_map(|at| {
                let offer = &offers[at];
                let fits =
                    (offer.connector == need.connector) == of_its_kind && offer.part != need.part && takes(offer, need);
                fits.then_some(at as u16)
            }));
        }
        search.ranges.push((from, search.choices.len()));
    }
    let mut unmet = Vec::with_capacity(needs.len());
    for (at, need) in needs.iter().enumerate() {
        let wanted = need.count.min(MOST);
        let met = (0..wanted).take_while(|_| search.add(at as u16)).count() as u32;
        let beyond = if met == wanted { search.take_free(at as u16, need.count - wanted) } else { 0 };
        unmet.push(need.count - met - beyond);
    }
    Seating { seats: search.seats, unmet }
}

struct Search {
    /// Offers that take each need, one need after the other.
    choices: Vec<u16>,
    ranges: Vec<(usize, usize)>,
    free: Vec<u32>,
    seats: Vec<Seat>,
    /// The turn in which an offer was last tried.
    tried: Vec<u32>,
    turn: u32,
}

impl Search {
    fn add(&mut self, need: u16) -> bool {
        self.turn += 1;
        let Some(offer) = self.place(need) else { return false };
        self.seats.push(Seat { need, offer });
        true
    }

    /// Takes so many of what is free for a need, and tells how many there were.
    fn take_free(&mut self, need: u16, count: u32) -> u32 {
        let (from, to) = self.ranges[usize::from(need)];
        let mut taken = 0;
        for offer in &self.choices[from..to] {
            let free = &mut self.free[usize::from(*offer)];
            let some = (count - taken).min(*free);
            *free -= some;
            taken += some;
        }
        taken
    }

    /// Finds one place for a need, moving others to their other offers where that frees one.
    fn place(&mut self, need: u16) -> Option<u16> {
        let (from, to) = self.ranges[usize::from(need)];
        for at in from..to {
            let offer = self.choices[at];
            if std::mem::replace(&mut self.tried[usize::from(offer)], self.turn) == self.turn {
                continue;
            }
            if self.free[usize::from(offer)] > 0 {
                self.free[usize::from(offer)] -= 1;
                return Some(offer);
            }
            for seat in 0..self.seats.len() {
                if self.seats[seat].offer != offer {
                    continue;
                }
                if let Some(other) = self.place(self.seats[seat].need) {
                    self.seats[seat].offer = other;
                    return Some(offer);
                }
            }
        }
        None
    }
}
