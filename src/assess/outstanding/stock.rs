//! What is in stock, to tell which work lacks material.

use std::collections::HashSet;
use std::sync::Arc;

use super::Task;
use crate::record::Material;

/// The names of materials that the logbook lists and that are used up.
#[derive(Clone, Debug, Default)]
pub struct Stock {
    used_up: HashSet<String>,
}

impl Stock {
    pub fn of(materials: &[Arc<Material>]) -> Self {
        let used_up = materials.iter().filter(|material| material.stock <= 0.0);
        Self { used_up: used_up.map(|material| material.name.to_lowercase()).collect() }
    }

    /// What a task asks for and is listed as used up. A material that the logbook does not list is taken to be there.
    pub fn lacking<'t>(&self, task: &'t Task) -> impl Iterator<Item = &'t str> {
        let names = task.materials().iter().map(String::as_str);
        names.filter(|name| !self.used_up.is_empty() && self.used_up.contains(&name.to_lowercase()))
    }
}
