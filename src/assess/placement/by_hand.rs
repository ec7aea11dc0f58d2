//! Answers made without the solver: where it errs or time runs out.

use std::collections::BTreeSet;

use super::cut::Kept;
use super::solve::Search;
use super::verify::{Placed, changed, look};

impl Search<'_> {
    /// An answer made by hand: pinned ones first, then the best that holds with what is there, and so on.
    pub fn by_hand(&self, kept: &Kept, machines: &BTreeSet<usize>) -> Vec<Placed> {
        let question = &self.question;
        let mut order: Vec<(bool, i64, Placed)> = Vec::new();
        for (at, (spare, kept)) in question.spares.iter().zip(kept).enumerate() {
            let here =
                kept.iter().filter(|option| machines.contains(&question.machine_of(spare.options[**option].seat)));
            order.extend(here.map(|option| (!spare.pinned, -spare.options[*option].worth, (at, *option))));
        }
        order.sort_unstable();
        let mut room: Vec<u32> = question.seats.iter().map(|seat| seat.count).collect();
        let mut is_taken = vec![false; question.spares.len()];
        let mut by_machine: Vec<Vec<Placed>> = vec![Vec::new(); question.machines.len()];
        for (free, worth, one) in order {
            let seat = question.spares[one.0].options[one.1].seat;
            if is_taken[one.0] || (free && (worth >= 0 || room[seat] == 0)) {
                continue;
            }
            let machine = question.machine_of(seat);
            by_machine[machine].push(one);
            if free && !self.holds(machine, &by_machine[machine]) {
                by_machine[machine].pop();
                continue;
            }
            is_taken[one.0] = true;
            room[seat] = room[seat].saturating_sub(1);
        }
        by_machine.concat()
    }

    fn holds(&self, machine: usize, placed: &[Placed]) -> bool {
        let spares: Vec<usize> = placed.iter().map(|(spare, _)| *spare).collect();
        look(&self.question, machine, placed).faults.is_empty() && (self.referee)(machine, &spares).is_empty()
    }

    /// Takes out of a machine what does not hold, the least worth first.
    pub fn mend(&mut self, machine: usize) {
        loop {
            let mut placed = self.placed(machine);
            if self.holds(machine, &placed) {
                return;
            }
            let spares = &self.question.spares;
            placed.retain(|(spare, _)| !spares[*spare].pinned);
            let Some((spare, _)) = placed.iter().min_by_key(|(spare, option)| spares[*spare].options[*option].worth)
            else {
                return;
            };
            self.taken[*spare] = None;
        }
    }

    /// Puts into seats with room what is free and holds there, the best first.
    pub fn fill(&mut self) {
        let mut order: Vec<(i64, Placed)> = Vec::new();
        for (at, (spare, taken)) in self.question.spares.iter().zip(&self.taken).enumerate() {
            if taken.is_none() {
                let options = spare.options.iter().enumerate().filter(|(_, choice)| choice.worth > 0);
                order.extend(options.map(|(option, choice)| (-choice.worth, (at, option))));
            }
        }
        order.sort_unstable();
        let mut room: Vec<u32> = self.question.seats.iter().map(|seat| seat.count).collect();
        for (spare, taken) in self.question.spares.iter().zip(&self.taken) {
            if let Some(option) = taken {
                room[spare.options[*option].seat] -= 1;
            }
        }
        let mut by_machine: Vec<Vec<Placed>> =
            (0..self.question.machines.len()).map(|machine| self.placed(machine)).collect();
        let is_changed = changed(&self.question, &self.taken);
        for (_, (spare, option)) in order {
            let choice = self.question.spares[spare].options[option];
            if room[choice.seat] == 0 || self.taken[spare].is_some() {
                continue;
            }
            let machine = self.question.machine_of(choice.seat);
            let open = |placed: &[Placed]| -> i64 {
                look(&self.question, machine, placed).open.iter().map(|(_, count)| i64::from(*count)).sum()
            };
            let placed = &mut by_machine[machine];
            let before = open(placed);
            placed.push((spare, option));
            let changes = self.question.spares[spare].live && !choice.fitted && !is_changed[machine];
            let change_cost = if changes { self.question.machines[machine].change_cost } else { 0 };
            if choice.worth > (open(placed) - before) * self.question.open_cost + change_cost
                && self.holds(machine, placed)
            {
                self.taken[spare] = Some(option);
                room[choice.seat] -= 1;
            } else {
                by_machine[machine].pop();
            }
        }
    }
}
