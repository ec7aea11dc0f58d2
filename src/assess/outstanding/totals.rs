//! Hours and materials of many tasks together.

use std::collections::{BTreeMap, HashMap};
use std::sync::Arc;

use super::Task;
use crate::record::Material;
use crate::text;

/// What a number of tasks comes to.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Totals {
    pub tasks: usize,
    /// Tasks that can be started now.
    pub doable: usize,
    /// Hands-on minutes.
    pub minutes: u32,
    /// Hours of drying, curing or running, one after the other.
    pub wait_hours: u32,
}

impl Totals {
    pub fn of<'a>(tasks: impl IntoIterator<Item = &'a Task>) -> Self {
        tasks.into_iter().fold(Self::default(), |sum, task| Self {
            tasks: sum.tasks + 1,
            doable: sum.doable + usize::from(task.doable),
            minutes: sum.minutes + task.minutes(),
            wait_hours: sum.wait_hours + task.wait_hours(),
        })
    }

    /// Both together.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        Self {
            tasks: self.tasks + other.tasks,
            doable: self.doable + other.doable,
            minutes: self.minutes + other.minutes,
            wait_hours: self.wait_hours + other.wait_hours,
        }
    }
}

/// A material that outstanding work asks for.
#[derive(Clone, Debug, PartialEq)]
pub struct MaterialNeed {
    /// Its name as the rules have it.
    pub name: String,
    /// How many tasks ask for it.
    pub tasks: usize,
    /// What the logbook says is in stock, in the material's own unit; `None` when it lists no such material.
    pub stock: Option<f64>,
}

/// The materials that tasks ask for, by name, with the stock of the same name (compared without regard to case).
pub fn materials<'a>(tasks: impl IntoIterator<Item = &'a Task>, stock: &[Arc<Material>]) -> Vec<MaterialNeed> {
    // Thousands of tasks share a hundred rules: count by rule first, by word after.
    let mut by_rule: HashMap<*const crate::rules::WorkRule, (&'a Task, usize)> = HashMap::new();
    for task in tasks {
        if let Some(rule) = task.rule() {
            by_rule.entry(Arc::as_ptr(rule)).or_insert((task, 0)).1 += 1;
        }
    }
    let mut counts: BTreeMap<&str, usize> = BTreeMap::new();
    for (task, count) in by_rule.into_values() {
        for name in task.materials() {
            *counts.entry(name).or_default() += count;
        }
    }
    let in_stock = |name: &str| {
        let lower = name.to_lowercase();
        stock.iter().find(|material| material.name.to_lowercase() == lower).map(|material| material.stock)
    };
    counts
        .into_iter()
        .map(|(name, tasks)| MaterialNeed { name: name.to_owned(), tasks, stock: in_stock(name) })
        .collect()
}

/// Minutes as people say them: "40 min", "3 h 20 min".
pub fn hours_text(minutes: u32) -> String {
    match (minutes / 60, minutes % 60) {
        (0, minutes) => text!("{minutes} min", minutes = minutes),
        (hours, 0) => text!("{hours} h", hours = hours),
        (hours, minutes) => text!("{hours} h {minutes} min", hours = hours, minutes = minutes),
    }
}
