//! The question as a mixed-integer model: rows and columns for the solver. Rows for connectors stand in `plugs` and `held`,
//! those for rails in `short`.
//!
//! - A column for each choice left; rows that hold a spare to one seat and a seat to its count.
//! - Connectors: for each machine and need, what is needed is met by a flow from offers, or stays open. Where one offer
//!   alone takes a need, and nothing else, its count stands in the need's own row. Given the choices, flows are whole by
//!   themselves.
//! - *Platforms*: parts that offer something are gathered, seat by seat, by what they need and offer. Once it is decided
//!   of which sort each is, little is left but an assignment, whose relaxation is whole nearly always. So platforms are
//!   whole numbers from the start, and single choices only when an answer asks for it.

use std::collections::{BTreeMap, BTreeSet};

use microlp::{ComparisonOp, OptimizationDirection, Problem, Variable};

use super::cut::Kept;
use super::question::{Question, Spare};
use super::short::Short;

/// One row: the sum of its terms is at most, or just, so much.
#[derive(Debug, Default)]
struct Row {
    terms: Vec<(Variable, f64)>,
    most: f64,
    is_equal: bool,
}

/// A model for some of the machines.
pub struct Model {
    pub problem: Problem,
    pub choices: Vec<Chosen>,
}

/// A choice with its column: (spare, place of the option, column).
pub type Chosen = (usize, usize, Variable);

/// Columns with their counts in a row.
pub type Terms = Vec<(Variable, f64)>;

/// What is in whole numbers besides platforms, for seats whose choices came out as fractions.
#[derive(Clone, Debug, Default)]
pub struct Whole {
    /// Seats in which each sort of spare is a whole number: enough where fractions come of rails and the like.
    pub sorts: BTreeSet<usize>,
    /// Seats in which each choice is one.
    pub choices: BTreeSet<usize>,
}

impl Whole {
    /// Takes in seats whose choices came out as fractions.
    pub fn extend(&mut self, split: BTreeSet<usize>) {
        let (again, first): (BTreeSet<usize>, BTreeSet<usize>) =
            split.into_iter().partition(|seat| self.sorts.contains(seat));
        self.sorts.extend(first);
        self.choices.extend(again);
    }
}

/// A model in the making.
pub struct Build<'a> {
    pub question: &'a Question,
    pub problem: Problem,
    pub choices: Vec<Chosen>,
    rows: Vec<Row>,
}

/// The model of what is left for `machines`; with what is known of short rails, and what must be whole.
pub fn model(question: &Question, kept: &Kept, machines: &BTreeSet<usize>, short: &Short, whole: &Whole) -> Model {
    let mut build = Build {
        question,
        problem: Problem::new(OptimizationDirection::Maximize),
        choices: Vec::new(),
        rows: Vec::new(),
    };
    build.choices_and_seats(kept, machines, &whole.choices);
    build.connectors();
    build.platforms();
    build.sorts(&whole.sorts);
    build.held_seats();
    build.rails(machines, short);
    build.covers(machines, short);
    build.clashes(machines);
    build.complete_machines(machines);
    build.changed_machines(machines);
    let Build { mut problem, choices, rows, .. } = build;
    for row in rows {
        let how = if row.is_equal { ComparisonOp::Eq } else { ComparisonOp::Le };
        problem.add_constraint(gathered(row.terms), how, row.most);
    }
    Model { problem, choices }
}

/// Terms with each column once: a part may both need and offer what a row counts.
fn gathered(terms: Vec<(Variable, f64)>) -> Vec<(Variable, f64)> {
    let mut sums: BTreeMap<usize, (Variable, f64)> = BTreeMap::new();
    for (column, count) in terms {
        sums.entry(column.idx()).or_insert((column, 0.0)).1 += count;
    }
    sums.into_values().collect()
}

impl Build<'_> {
    /// A row: these terms are at most so much.
    pub fn row(&mut self, terms: Terms, most: f64) {
        self.rows.push(Row { terms, most, is_equal: false });
    }

    /// The seat and machine of a choice.
    pub fn at(&self, (spare, option, _): Chosen) -> (usize, usize) {
        let seat = self.question.spares[spare].options[option].seat;
        (seat, self.question.machine_of(seat))
    }

    fn choices_and_seats(&mut self, kept: &Kept, machines: &BTreeSet<usize>, whole: &BTreeSet<usize>) {
        let question = self.question;
        let mut seats: BTreeMap<usize, Vec<(Variable, f64)>> = BTreeMap::new();
        for (at, (spare, kept)) in question.spares.iter().zip(kept).enumerate() {
            let mut own = Vec::new();
            for option in kept {
                let choice = spare.options[*option];
                if !machines.contains(&question.machine_of(choice.seat)) {
                    continue;
                }
                let worth = choice.worth as f64;
                let column = if whole.contains(&choice.seat) {
                    self.problem.add_binary_var(worth)
                } else {
                    self.problem.add_var(worth, (0.0, 1.0))
                };
                self.choices.push((at, *option, column));
                own.push((column, 1.0));
                seats.entry(choice.seat).or_default().push((column, 1.0));
            }
            if !own.is_empty() && (own.len() > 1 || spare.pinned) {
                self.rows.push(Row { terms: own, most: 1.0, is_equal: spare.pinned });
            }
        }
        for (seat, terms) in seats {
            self.row(terms, f64::from(question.seats[seat].count));
        }
    }

    /// For each seat of one, which sort of offering part it holds.
    fn platforms(&mut self) {
        let question = self.question;
        let uses = self.uses();
        type Plugs = Vec<(usize, u32)>;
        let mut sorts: BTreeMap<(usize, Plugs, Plugs), Vec<(Variable, f64)>> = BTreeMap::new();
        for chosen in &self.choices {
            let (seat, machine) = self.at(*chosen);
            let spare = &question.spares[chosen.0];
            let used = |(offer, count): &(usize, u32)| Some((*offer, *count.min(uses.get(&(machine, *offer))?)));
            let offers: Plugs = spare.offers.iter().filter_map(used).collect();
            if question.seats[seat].count == 1 && !offers.is_empty() {
                sorts.entry((seat, spare.needs.clone(), offers)).or_default().push((chosen.2, 1.0));
            }
        }
        for (_, mut terms) in sorts {
            let platform = self.problem.add_binary_var(0.0);
            terms.push((platform, -1.0));
            self.rows.push(Row { terms, most: 0.0, is_equal: true });
        }
    }

    /// How many spares of each sort these seats hold.
    fn sorts(&mut self, seats: &BTreeSet<usize>) {
        let mut sorts: BTreeMap<_, Terms> = BTreeMap::new();
        for chosen in &self.choices {
            let (seat, _) = self.at(*chosen);
            let Spare { needs, offers, known, draws, gives, .. } = &self.question.spares[chosen.0];
            if seats.contains(&seat) {
                sorts.entry((seat, needs, offers, known, draws, gives)).or_default().push((chosen.2, 1.0));
            }
        }
        for ((seat, ..), mut terms) in sorts {
            let number = self.problem.add_integer_var(0.0, (0, self.question.seats[seat].count as i32));
            terms.push((number, -1.0));
            self.rows.push(Row { terms, most: 0.0, is_equal: true });
        }
    }

    fn clashes(&mut self, machines: &BTreeSet<usize>) {
        let question = self.question;
        for machine in machines {
            let mut here: BTreeMap<usize, Vec<(usize, Variable)>> = BTreeMap::new();
            for chosen in &self.choices {
                let (seat, of) = self.at(*chosen);
                if of == *machine {
                    here.entry(chosen.0).or_default().push((seat, chosen.2));
                }
            }
            let columns = |spares: &[usize]| -> Vec<(usize, Variable)> {
                spares.iter().filter_map(|spare| here.get(spare)).flatten().copied().collect()
            };
            let mut rows = Vec::new();
            let is_here = |of: Option<usize>| of.is_none_or(|of| of == *machine);
            for clash in question.clashes.iter().filter(|clash| is_here(clash.machine)) {
                let (one, other) = (columns(&clash.one), columns(&clash.other));
                let seats: BTreeSet<usize> = one.iter().map(|(seat, _)| *seat).collect();
                let most: u32 = seats.iter().map(|seat| question.seats[*seat].count).sum();
                let most = f64::from(most.min(one.len() as u32));
                // One row for each of the other side: as strong as can be where it stands in a seat of one.
                let by_seat = other.iter().map(|(seat, _)| *seat).collect::<BTreeSet<_>>();
                for seat in by_seat.into_iter().filter(|_| !one.is_empty()) {
                    let others = other.iter().filter(|(of, _)| *of == seat).map(|(_, column)| *column);
                    let unless = columns(&clash.unless);
                    let helped = unless.iter().map(|(_, column)| (*column, -most));
                    let own = || one.iter().map(|(_, column)| (*column, 1.0)).chain(helped.clone());
                    if question.seats[seat].count == 1 {
                        rows.push((own().chain(others.map(|column| (column, most))).collect(), most));
                    } else {
                        rows.extend(others.map(|other| (own().chain([(other, most)]).collect(), most)));
                    }
                }
            }
            for barred in question.barred.iter().filter(|barred| barred.machine == *machine) {
                let terms = columns(&barred.spares).into_iter().map(|(_, column)| (column, 1.0));
                let unless = columns(&barred.unless).into_iter().map(|(_, column)| (column, -1.0));
                rows.push((terms.chain(unless).collect(), barred.spares.len() as f64 - 1.0));
            }
            for (terms, most) in rows {
                self.row(terms, most);
            }
        }
    }

    /// What it is worth that all required seats of a machine are filled.
    fn complete_machines(&mut self, machines: &BTreeSet<usize>) {
        let question = self.question;
        for machine in machines.iter().filter(|machine| question.machines[**machine].complete_worth > 0) {
            let complete = self.problem.add_binary_var(question.machines[*machine].complete_worth as f64);
            let required = |(_, seat): &(usize, &super::question::Seat)| seat.machine == *machine && seat.required;
            for (seat, of) in question.seats.iter().enumerate().filter(required) {
                let here = self.choices.iter().filter(|chosen| self.at(**chosen).0 == seat);
                let filled = here.map(|chosen| (chosen.2, -1.0));
                let terms = filled.chain([(complete, f64::from(of.count))]).collect();
                self.row(terms, 0.0);
            }
        }
    }
}
