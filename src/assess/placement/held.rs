//! Rows between two seats: one of a single part that alone takes what the spares of the other need, as a board takes memory.
//!
//! With a part of known connectors in its place, the other seat holds no more of those spares than that part takes, whatever
//! mixture of needs they have; only while the place is empty may needs stay open. Rows for single needs do not say that:
//! half a board and half an empty place would let four sorts of memory in, each by its own half.

use std::collections::{BTreeMap, BTreeSet};

use microlp::Variable;

use super::model::{Build, Chosen, Terms};
use super::plugs::Plug;
use super::question::Question;

/// A choice that is bound to the part in another seat.
struct Bound {
    need: usize,
    count: u32,
    column: Variable,
}

impl Build<'_> {
    /// The rows of every seat with every seat that holds some of its spares.
    pub fn held_seats(&mut self) {
        let question = self.question;
        let mut by_seat: BTreeMap<usize, Vec<Chosen>> = BTreeMap::new();
        // Which seats of a machine offer a connector.
        let mut giving: BTreeMap<Plug, BTreeSet<usize>> = BTreeMap::new();
        for chosen in &self.choices {
            let (seat, machine) = self.at(*chosen);
            for (offer, _) in &question.spares[chosen.0].offers {
                giving.entry((machine, *offer)).or_default().insert(seat);
            }
            by_seat.entry(seat).or_default().push(*chosen);
        }
        for (seat, choices) in &by_seat {
            let machine = question.machine_of(*seat);
            let mut bound: BTreeMap<usize, Vec<Bound>> = BTreeMap::new();
            for (spare, option, column) in choices {
                let spare = &question.spares[*spare];
                for (need, count) in spare.needs.iter().filter(|_| !spare.options[*option].settled) {
                    if let Some(holder) = holder(question, &giving, (machine, *need)).filter(|holder| holder != seat) {
                        let one = Bound { need: *need, count: *count, column: *column };
                        bound.entry(holder).or_default().push(one);
                    }
                }
            }
            for (holder, bound) in bound {
                if let Some(holding) = by_seat.get(&holder) {
                    self.held(question.seats[*seat].count, &bound, holding);
                }
            }
        }
    }

    /// A row for all needs that are bound, and one for all that a part in the holding seat does not take.
    fn held(&mut self, places: u32, bound: &[Bound], holding: &[Chosen]) {
        let question = self.question;
        let takes = |spare: usize, need: usize| {
            question.spares[spare].offers.iter().any(|(offer, _)| question.accepts(*offer, need))
        };
        let all: BTreeSet<usize> = bound.iter().map(|one| one.need).collect();
        let not_taken = |(spare, ..): &Chosen| all.iter().copied().filter(|need| !takes(*spare, *need)).collect();
        let mut some: BTreeSet<BTreeSet<usize>> = holding.iter().map(not_taken).collect();
        some.insert(all.clone());
        for needs in some {
            let of_them = || bound.iter().filter(|one| needs.contains(&one.need));
            let Some(least) = of_them().map(|one| one.count.max(1)).min() else { continue };
            let room = |spare: usize| {
                let offers = question.spares[spare].offers.iter();
                let useful = offers.filter(|(offer, _)| needs.iter().any(|need| question.accepts(*offer, *need)));
                useful.map(|(_, count)| count).sum::<u32>() / least
            };
            let known = holding.iter().filter(|(spare, ..)| question.spares[*spare].known);
            let short_of = known.map(|(spare, _, column)| (*column, f64::from(places.saturating_sub(room(*spare)))));
            let fewer: Terms = short_of.filter(|(_, count)| *count > 0.0).collect();
            if !fewer.is_empty() {
                let columns: BTreeMap<usize, Variable> = of_them().map(|one| (one.column.idx(), one.column)).collect();
                let terms = columns.into_values().map(|column| (column, 1.0)).chain(fewer).collect();
                self.row(terms, f64::from(places));
            }
        }
    }
}

/// The only seat that can meet a need in a machine and while which is empty it may stay open, if that seat is for one part.
fn holder(question: &Question, giving: &BTreeMap<Plug, BTreeSet<usize>>, (machine, need): Plug) -> Option<usize> {
    let open = question.machines[machine].open.iter().filter(|open| open.need == need);
    let mut seats: BTreeSet<usize> = open.flat_map(|open| open.seats.iter().copied()).collect();
    seats.extend(question.takes[need].iter().filter_map(|offer| giving.get(&(machine, *offer))).flatten());
    let only = seats.pop_first()?;
    (seats.is_empty() && question.seats[only].count == 1).then_some(only)
}
