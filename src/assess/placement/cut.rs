//! Choices that some best answer does without, found before anything is solved.
//!
//! Three cuts, each sound by itself:
//!
//! 1. a choice worth nothing, whose spare offers nothing that the machine could use, nor lets others stand together;
//! 2. a choice with a need that nothing in the machine can ever meet and that may not stay open;
//! 3. for a seat, a spare that more others are as good for (worth no less, needing nothing harder, offering no less)
//!    than could be taken by other seats: whatever the answer, one of them is free and can stand in for it.

use std::collections::{BTreeSet, HashMap};

use super::question::{Machine, Question, Spare};

/// For each spare, the places of the options that are left.
pub type Kept = Vec<Vec<usize>>;

/// What counts when one spare stands in for another in a machine.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
struct Sort {
    needs: Vec<(usize, u32)>,
    /// No more of each than the machine can use.
    offers: Vec<(usize, u32)>,
    known: bool,
    /// Whether tests of the seat's machine hang on it.
    changes: bool,
    /// The machine whose tests hang on it, wherever it goes.
    roams_from: Option<usize>,
    /// Only where the machine's rails may be short.
    draws: Vec<i64>,
    gives: Vec<i64>,
    /// Clashes and barred sets that name it.
    named: Vec<usize>,
}

impl Sort {
    fn stands_in_for(&self, other: &Self, question: &Question) -> bool {
        let no_less = |of: &[(usize, u32)], (connector, count): (usize, u32)| {
            of.iter().any(|(known, most)| *known == connector && *most >= count)
        };
        self.known == other.known
            && self.changes <= other.changes
            && (self.roams_from.is_none() || self.roams_from == other.roams_from)
            && self.named == other.named
            && other.offers.iter().all(|offer| no_less(&self.offers, *offer))
            && self.draws.iter().zip(&other.draws).all(|(own, other)| own <= other)
            && self.gives.len() == other.gives.len()
            && self.gives.iter().zip(&other.gives).all(|(own, other)| own >= other)
            && needs_nothing_harder(&self.needs, &other.needs, question)
    }
}

/// Whether each need has a need of the other list of its own that asks for no less.
fn needs_nothing_harder(own: &[(usize, u32)], other: &[(usize, u32)], question: &Question) -> bool {
    let mut used = vec![false; other.len()];
    own.iter().all(|(need, count)| {
        let is_easier = |at: &usize| {
            let (hard, most) = other[*at];
            !used[*at] && most >= *count && question.takes[hard].iter().all(|offer| question.accepts(*offer, *need))
        };
        let found = (0..other.len()).find(is_easier);
        found.inspect(|at| used[*at] = true).is_some()
    })
}

/// Cuts; `tight` says of each machine whether its rails may be short.
pub fn cut(question: &Question, tight: &[bool]) -> Kept {
    let mut cut = Cut::new(question);
    cut.leave_out_what_never_helps();
    cut.leave_out_the_worse(tight);
    cut.kept
}

struct Cut<'a> {
    question: &'a Question,
    kept: Kept,
}

impl<'a> Cut<'a> {
    fn new(question: &'a Question) -> Self {
        Self { question, kept: question.spares.iter().map(|spare| (0..spare.options.len()).collect()).collect() }
    }

    fn for_each_kept(&self, mut call: impl FnMut(usize, usize, &Spare)) {
        for (at, (spare, kept)) in self.question.spares.iter().zip(&self.kept).enumerate() {
            for option in kept {
                call(at, spare.options[*option].seat, spare);
            }
        }
    }

    /// For each machine and offered connector, how many of it could be used at most.
    fn use_of_offers(&self) -> HashMap<(usize, usize), u32> {
        let question = self.question;
        let mut most: HashMap<(usize, usize), u32> = HashMap::new();
        self.for_each_kept(|_, seat, spare| {
            for (need, count) in &spare.needs {
                let of_seat = most.entry((seat, *need)).or_default();
                *of_seat = (*of_seat).max(*count * question.seats[seat].count);
            }
        });
        let mut uses = HashMap::new();
        for ((seat, need), count) in most {
            for offer in &question.takes[need] {
                *uses.entry((question.machine_of(seat), *offer)).or_default() += count;
            }
        }
        uses
    }

    /// The first two cuts, until neither finds anything.
    fn leave_out_what_never_helps(&mut self) {
        let question = self.question;
        let unless = question.clashes.iter().map(|clash| &clash.unless);
        let unless = unless.chain(question.barred.iter().map(|barred| &barred.unless));
        let reconciling: BTreeSet<usize> = unless.flatten().copied().collect();
        let mut open: HashMap<(usize, usize), bool> = HashMap::new();
        for (at, machine) in question.machines.iter().enumerate() {
            for need in &machine.open {
                open.insert((at, need.need), !need.seats.is_empty());
            }
        }
        loop {
            let uses = self.use_of_offers();
            let mut offered: HashMap<(usize, usize), bool> = HashMap::new();
            self.for_each_kept(|_, seat, spare| {
                for (offer, _) in &spare.offers {
                    offered.insert((question.machine_of(seat), *offer), true);
                }
            });
            let mut is_same = true;
            for (at, (spare, kept)) in question.spares.iter().zip(&mut self.kept).enumerate() {
                if spare.pinned {
                    continue;
                }
                kept.retain(|option| {
                    let choice = spare.options[*option];
                    let machine = question.machine_of(choice.seat);
                    let Machine { complete_worth, change_cost, .. } = question.machines[machine];
                    let gain = choice.worth + complete_worth + if choice.fitted { change_cost } else { 0 };
                    let helps = gain > 0
                        || reconciling.contains(&at)
                        || spare.offers.iter().any(|(offer, _)| uses.contains_key(&(machine, *offer)));
                    let can_be_met = |(need, _): &(usize, u32)| {
                        open.get(&(machine, *need)).copied().unwrap_or_default()
                            || question.takes[*need].iter().any(|offer| offered.contains_key(&(machine, *offer)))
                    };
                    let keeps = helps && (choice.settled || spare.needs.iter().all(can_be_met));
                    is_same &= keeps;
                    keeps
                });
            }
            if is_same {
                return;
            }
        }
    }

    /// The third cut. Each choice left out is left out with those before it gone, so that the proof holds for each.
    fn leave_out_the_worse(&mut self, tight: &[bool]) {
        let question = self.question;
        let uses = self.use_of_offers();
        let mut named: Vec<Vec<usize>> = vec![Vec::new(); question.spares.len()];
        let clashes = question.clashes.iter().flat_map(|clash| [&clash.one, &clash.other, &clash.unless]);
        let barred = question.barred.iter().flat_map(|barred| [&barred.spares, &barred.unless]);
        for (at, list) in clashes.chain(barred).enumerate() {
            for spare in list {
                named[*spare].push(at);
            }
        }
        let mut sorts: Vec<Sort> = Vec::new();
        let mut known: HashMap<Sort, usize> = HashMap::new();
        // For each seat its candidates: (worth, spare, sort), best first.
        let mut seats: Vec<Vec<(i64, usize, usize)>> = vec![Vec::new(); question.seats.len()];
        for (at, spare) in question.spares.iter().enumerate() {
            for option in &self.kept[at] {
                let choice = spare.options[*option];
                let machine = question.machine_of(choice.seat);
                let useful = |(offer, count): &(usize, u32)| {
                    uses.get(&(machine, *offer)).map(|most| (*offer, (*count).min(*most)))
                };
                let of_rails = |figures: &[i64]| if tight[machine] { figures.to_vec() } else { Vec::new() };
                let mut draws = of_rails(&spare.draws);
                draws.resize(question.rails.len(), 0);
                let is_tested = |machine: &usize| question.machines[*machine].change_cost > 0;
                let roams_from = spare.home.filter(|home| is_tested(home) && !question.has_seat_at_home(spare));
                let sort = Sort {
                    needs: spare.needs.clone(),
                    offers: spare.offers.iter().filter_map(useful).collect(),
                    known: spare.known,
                    changes: spare.live && is_tested(&machine),
                    roams_from,
                    draws,
                    gives: of_rails(&spare.gives),
                    named: named[at].clone(),
                };
                let sort = *known.entry(sort).or_insert_with_key(|sort| {
                    sorts.push(sort.clone());
                    sorts.len() - 1
                });
                seats[choice.seat].push((choice.worth, at, sort));
            }
        }
        for list in &mut seats {
            list.sort_unstable_by_key(|(worth, at, _)| (-worth, *at));
        }
        let mut seats_of: Vec<Vec<usize>> = vec![Vec::new(); question.spares.len()];
        self.for_each_kept(|at, seat, _| seats_of[at].push(seat));
        let stands_in: Vec<Vec<bool>> =
            sorts.iter().map(|own| sorts.iter().map(|other| own.stands_in_for(other, question)).collect()).collect();
        loop {
            let mut is_same = true;
            for (seat, candidates) in seats.iter_mut().enumerate() {
                let out = self.worse_for(seat, candidates, &seats_of, &stands_in);
                is_same &= out.is_empty();
                for spare in &out {
                    seats_of[*spare].retain(|known| *known != seat);
                    let options = &question.spares[*spare].options;
                    self.kept[*spare].retain(|option| options[*option].seat != seat);
                }
                candidates.retain(|(_, spare, _)| !out.contains(spare));
            }
            if is_same {
                return;
            }
        }
    }

    /// Spares that a seat can do without.
    fn worse_for(
        &self,
        seat: usize,
        candidates: &[(i64, usize, usize)],
        seats_of: &[Vec<usize>],
        stands_in: &[Vec<bool>],
    ) -> Vec<usize> {
        let question = self.question;
        let mut out = Vec::new();
        let sorts: BTreeSet<usize> = candidates.iter().map(|(_, _, sort)| *sort).collect();
        for sort in sorts {
            let good = candidates.iter().enumerate().filter(|(_, (_, spare, own))| {
                stands_in[*own][sort] && !question.spares[*spare].pinned && !out.contains(spare)
            });
            let mut taken = u64::from(question.seats[seat].count) - 1;
            let mut competing: Vec<usize> = vec![seat];
            for (number, (at, (_, spare, _))) in good.enumerate() {
                for other in &seats_of[*spare] {
                    if !competing.contains(other) {
                        competing.push(*other);
                        taken += u64::from(question.seats[*other].count);
                    }
                }
                if taken <= number as u64 {
                    let is_settled = |spare: usize| {
                        question.spares[spare].options.iter().any(|choice| choice.seat == seat && choice.settled)
                    };
                    let worse = candidates[at + 1..].iter().filter(|(_, spare, own)| {
                        *own == sort && !question.spares[*spare].pinned && !is_settled(*spare)
                    });
                    out.extend(worse.map(|(_, spare, _)| *spare));
                    break;
                }
            }
        }
        out
    }
}
