//! What is in stock, to tell which work lacks material.

use std::collections::HashSet;

use super::Task;
use crate::assess::supplies;
use crate::record::{Logbook, PartId};
use crate::rules::Rules;

/// The names of materials that the logbook lists and that are used up, and the parts whose kit has not come.
#[derive(Clone, Debug, Default)]
pub struct Stock {
    used_up: HashSet<String>,
    /// Materials of work that mean the capacitors of a kit.
    called: Vec<String>,
    waiting: HashSet<PartId>,
}

impl Stock {
    pub fn of(logbook: &Logbook, rules: &Rules) -> Self {
        let used_up = logbook.materials.iter().filter(|material| material.stock <= 0.0);
        let waiting = supplies::waiting(logbook).into_iter();
        Self {
            used_up: used_up.map(|material| material.name.to_lowercase()).collect(),
            called: rules.orders.first().map_or_else(Vec::new, |order| order.called.clone()),
            waiting: waiting
                .filter(|(_, kits)| kits.iter().any(|kit| !kit.is_at_hand()))
                .map(|(part, _)| part)
                .collect(),
        }
    }

    /// What a task asks for and is listed as used up, or waits for in a kit. A material that the logbook does not list
    /// is taken to be there.
    pub fn lacking<'t>(&self, task: &'t Task) -> impl Iterator<Item = &'t str> {
        let waits = self.waiting.contains(&task.part);
        let names = task.materials().iter().map(String::as_str);
        names.filter(move |name| {
            (waits && self.called.iter().any(|called| called == name))
                || (!self.used_up.is_empty() && self.used_up.contains(&name.to_lowercase()))
        })
    }
}
