//! Rows for machines whose own tests hold today: a part under current that comes or goes costs them, once.

use std::collections::{BTreeMap, BTreeSet};

use super::model::{Build, Terms};

impl Build<'_> {
    /// A column for each machine that a change would cost something, and the rows that tell of one.
    pub fn changed_machines(&mut self, machines: &BTreeSet<usize>) {
        let question = self.question;
        for machine in machines.iter().copied().filter(|machine| question.machines[*machine].change_cost > 0) {
            let changed = self.problem.add_binary_var(-(question.machines[machine].change_cost as f64));
            let mut own: BTreeMap<usize, Terms> = BTreeMap::new();
            let mut coming: BTreeMap<usize, Terms> = BTreeMap::new();
            for chosen @ (spare, option, column) in self.choices.iter().copied() {
                let (seat, here) = self.at(chosen);
                let (of, choice) = (&question.spares[spare], question.spares[spare].options[option]);
                let is_home = of.home == Some(machine);
                if is_home && (choice.fitted || !question.has_seat_at_home(of)) {
                    own.entry(spare).or_default().push((column, 1.0));
                }
                if here == machine && of.live && !choice.fitted {
                    coming.entry(seat).or_default().push((column, 1.0));
                }
            }
            for (at, spare) in question.spares.iter().enumerate().filter(|(_, spare)| spare.home == Some(machine)) {
                let terms = own.remove(&at).unwrap_or_default();
                if question.has_seat_at_home(spare) {
                    let stays = terms.into_iter().map(|(column, count)| (column, -count));
                    self.row(stays.chain([(changed, -1.0)]).collect(), -1.0);
                } else if !terms.is_empty() {
                    self.row(terms.into_iter().chain([(changed, -1.0)]).collect(), 0.0);
                }
            }
            for (seat, mut terms) in coming {
                let most = f64::from(question.seats[seat].count).min(terms.len() as f64);
                terms.push((changed, -most));
                self.row(terms, 0.0);
            }
        }
    }
}
