//! The question as a mixed-integer model: rows and columns for the solver.
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
use super::question::Question;
use super::short::{Short, draw};

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
    /// (spare, place of the option, column).
    pub choices: Vec<(usize, usize, Variable)>,
}

/// (machine, connector).
type Plug = (usize, usize);

struct Build<'a> {
    question: &'a Question,
    problem: Problem,
    choices: Vec<(usize, usize, Variable)>,
    rows: Vec<Row>,
}

/// The model of what is left for `machines`; with what is known of short rails.
/// Choices of the seats `whole` are whole numbers, besides platforms.
pub fn model(
    question: &Question,
    kept: &Kept,
    machines: &BTreeSet<usize>,
    short: &Short,
    whole: &BTreeSet<usize>,
) -> Model {
    let mut build = Build {
        question,
        problem: Problem::new(OptimizationDirection::Maximize),
        choices: Vec::new(),
        rows: Vec::new(),
    };
    build.choices_and_seats(kept, machines, whole);
    build.connectors(machines);
    build.platforms();
    build.rails(machines, short);
    build.covers(machines, short);
    build.clashes(machines);
    build.complete_machines(machines);
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
    fn row(&mut self, terms: Vec<(Variable, f64)>, most: f64) {
        self.rows.push(Row { terms, most, is_equal: false });
    }

    /// The seat and machine of a choice.
    fn at(&self, (spare, option, _): (usize, usize, Variable)) -> (usize, usize) {
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

    fn connectors(&mut self, machines: &BTreeSet<usize>) {
        let question = self.question;
        let mut needs: BTreeMap<Plug, Vec<(Variable, f64)>> = BTreeMap::new();
        let mut settled: BTreeMap<Plug, Vec<(Variable, f64)>> = BTreeMap::new();
        let mut most: BTreeMap<Plug, BTreeMap<usize, u32>> = BTreeMap::new();
        let mut offers: BTreeMap<Plug, Vec<(Variable, f64)>> = BTreeMap::new();
        let mut filled: BTreeMap<usize, Vec<Variable>> = BTreeMap::new();
        let mut by_seat: BTreeMap<(usize, usize), Vec<(Variable, f64)>> = BTreeMap::new();
        let uses = self.uses();
        for chosen in self.choices.clone() {
            let (spare, option, column) = chosen;
            let (seat, machine) = self.at(chosen);
            let (choice, spare) = (question.spares[spare].options[option], &question.spares[spare]);
            for (need, count) in &spare.needs {
                let plug = (machine, *need);
                needs.entry(plug).or_default().push((column, f64::from(*count)));
                if choice.settled {
                    settled.entry(plug).or_default().push((column, f64::from(*count)));
                }
                let of_seat = most.entry(plug).or_default().entry(seat).or_default();
                *of_seat = (*of_seat).max(*count * question.seats[seat].count);
            }
            for (offer, count) in &spare.offers {
                let most = uses.get(&(machine, *offer)).copied().unwrap_or_default();
                offers.entry((machine, *offer)).or_default().push((column, f64::from(most.min(*count))));
            }
            for (need, count) in &spare.needs {
                by_seat.entry((seat, *need)).or_default().push((column, f64::from(*count)));
            }
            if spare.known {
                filled.entry(seat).or_default().push(column);
            }
        }
        let takers = |offer: Plug| {
            needs.keys().filter(move |(machine, need)| *machine == offer.0 && question.accepts(offer.1, *need)).count()
        };
        // What flows out of each offer.
        let mut out: BTreeMap<Plug, Vec<(Variable, f64)>> = BTreeMap::new();
        for (plug, terms) in &needs {
            let (machine, need) = *plug;
            let most = f64::from(most[plug].values().sum::<u32>());
            let mut terms = terms.clone();
            let live: Vec<Plug> = question.takes[need]
                .iter()
                .map(|offer| (machine, *offer))
                .filter(|plug| offers.contains_key(plug))
                .collect();
            if let [only] = live[..]
                && takers(only) == 1
            {
                terms.extend(offers[&only].iter().map(|(column, count)| (*column, -count)));
            } else {
                for offer in live {
                    let flow = self.problem.add_var(0.0, (0.0, most));
                    terms.push((flow, -1.0));
                    out.entry(offer).or_default().push((flow, 1.0));
                }
            }
            let open = self.open(*plug, most, settled.get(plug), &filled);
            terms.extend(open.map(|open| (open, -1.0)));
            self.row(terms, 0.0);
            // Each seat for itself: what needs something needs one that offers it, however many that one offers.
            let of_need: Vec<_> =
                by_seat.iter().filter(|((seat, of), _)| *of == need && question.machine_of(*seat) == machine).collect();
            for ((seat, _), terms) in of_need {
                let most = terms.iter().map(|(_, count)| count).fold(0.0, |most: f64, count| most.max(*count))
                    * f64::from(question.seats[*seat].count);
                let offering = question.takes[need].iter().filter_map(|offer| offers.get(&(machine, *offer))).flatten();
                let mut row = terms.clone();
                row.extend(offering.map(|(column, count)| (*column, -count.min(most))));
                row.extend(open.map(|open| (open, -1.0)));
                self.row(row, 0.0);
            }
        }
        for (plug, mut terms) in out {
            terms.extend(offers[&plug].iter().map(|(column, count)| (*column, -count)));
            self.row(terms, 0.0);
        }
        debug_assert!(needs.keys().all(|(machine, _)| machines.contains(machine)));
    }

    /// A column for what stays open of a need, and the row that holds it down; `None` where nothing may stay open.
    fn open(
        &mut self,
        (machine, need): Plug,
        most: f64,
        settled: Option<&Vec<(Variable, f64)>>,
        filled: &BTreeMap<usize, Vec<Variable>>,
    ) -> Option<Variable> {
        let question = self.question;
        let seats = question.machines[machine].open.iter().find(|open| open.need == need).map(|open| &open.seats);
        if seats.is_none_or(Vec::is_empty) && settled.is_none() {
            return None;
        }
        let open = self.problem.add_var(-(question.open_cost as f64), (0.0, most));
        let mut terms = vec![(open, 1.0)];
        terms.extend(settled.into_iter().flatten().map(|(column, count)| (*column, -count)));
        let mut room = 0.0;
        for seat in seats.into_iter().flatten() {
            room += most * f64::from(question.seats[*seat].count);
            terms.extend(filled.get(seat).into_iter().flatten().map(|column| (*column, most)));
        }
        self.row(terms, room);
        Some(open)
    }

    /// How many of each offer could be used at most: more of them are worth no more.
    fn uses(&self) -> BTreeMap<Plug, u32> {
        let question = self.question;
        let mut of_seats: BTreeMap<(usize, usize), u32> = BTreeMap::new();
        for chosen in &self.choices {
            let (seat, _) = self.at(*chosen);
            for (need, count) in &question.spares[chosen.0].needs {
                let most = of_seats.entry((seat, *need)).or_default();
                *most = (*most).max(*count * question.seats[seat].count);
            }
        }
        let mut uses: BTreeMap<Plug, u32> = BTreeMap::new();
        for ((seat, need), count) in of_seats {
            for offer in &question.takes[need] {
                *uses.entry((question.machine_of(seat), *offer)).or_default() += count;
            }
        }
        uses
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

    /// A machine's draws within what its supply gives, where covers did not settle it. With no supply of known figures
    /// the row holds nothing.
    fn rails(&mut self, machines: &BTreeSet<usize>, short: &Short) {
        let question = self.question;
        for machine in machines.iter().filter(|machine| short.summed[**machine]) {
            let here: Vec<_> = self.choices.iter().filter(|chosen| self.at(**chosen).1 == *machine).copied().collect();
            for rail in 0..question.rails.len() {
                let mut most: BTreeMap<usize, i64> = BTreeMap::new();
                for chosen in &here {
                    let seat = self.at(*chosen).0;
                    let draws = draw(question, chosen.0, rail) * i64::from(question.seats[seat].count);
                    most.entry(seat).and_modify(|most| *most = draws.max(*most)).or_insert(draws);
                }
                let total: i64 = most.values().sum();
                let takes = |(spare, _, column): &(usize, usize, Variable)| {
                    let gives = question.spares[*spare].gives.get(rail);
                    let takes = draw(question, *spare, rail) + gives.map_or(0, |gives| (total - gives).max(0));
                    (takes != 0).then_some((*column, takes as f64 / 1000.0))
                };
                self.row(here.iter().filter_map(takes).collect(), total as f64 / 1000.0);
            }
        }
    }

    fn covers(&mut self, machines: &BTreeSet<usize>, short: &Short) {
        let question = self.question;
        for cover in short.covers.iter().filter(|cover| machines.contains(&cover.machine)) {
            let mut terms = Vec::new();
            for chosen in &self.choices {
                let (seat, machine) = self.at(*chosen);
                let gives = question.spares[chosen.0].gives.get(cover.rail);
                let draws = draw(question, chosen.0, cover.rail);
                let is_drawing = |(of, _, least): &(usize, u32, i64)| *of == seat && draws >= *least;
                let is_of_it = gives.is_some_and(|gives| *gives <= cover.gives) || cover.drawing.iter().any(is_drawing);
                if machine == cover.machine && is_of_it {
                    terms.push((chosen.2, 1.0));
                }
            }
            self.row(terms, f64::from(cover.drawing.iter().map(|(_, count, _)| count).sum::<u32>()));
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
