//! Rows for connectors: what is needed is met by a flow from offers, or stays open.

use std::collections::BTreeMap;

use microlp::Variable;

use super::model::Build;

/// (machine, connector).
pub type Plug = (usize, usize);

impl Build<'_> {
    pub fn connectors(&mut self) {
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
    pub fn uses(&self) -> BTreeMap<Plug, u32> {
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
}
