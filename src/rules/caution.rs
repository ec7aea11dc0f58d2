//! Cautions: one row each, named by the jobs, tests, questions, findings and types of work that they belong to.

use std::sync::Arc;

use serde::Deserialize;

/// The worst that a caution keeps from happening; the worst comes first.
#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq, PartialOrd, Ord)]
#[serde(rename_all = "snake_case")]
pub enum Harm {
    /// Somebody is killed.
    Death,
    /// Somebody is hurt.
    Injury,
    /// A part is damaged.
    Damage,
}

/// How often a caution is said.
#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub enum Once {
    /// Beside every job.
    Job,
    /// Once for all jobs of a sitting: static, fume, flame.
    Sitting,
}

/// What to beware of.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CautionRule {
    pub name: String,
    pub say: String,
    pub harm: Harm,
    pub once: Once,
    /// Cautions that are not said beside it, by name, since it says more.
    #[serde(default)]
    pub instead_of: Vec<String>,
    pub source: String,
}

/// The cautions that a row names, the worst first once the tables are read.
#[derive(Clone, Debug, Default, Deserialize)]
#[serde(from = "Vec<String>")]
pub struct Cautions {
    names: Vec<String>,
    rows: Vec<Arc<CautionRule>>,
}

impl From<Vec<String>> for Cautions {
    fn from(names: Vec<String>) -> Self {
        Self { names, rows: Vec::new() }
    }
}

impl Cautions {
    /// The most that are read before a job is begun.
    pub const MOST_FIRST: usize = 3;

    /// The names as the row gives them.
    pub fn names(&self) -> &[String] {
        &self.names
    }

    /// All of them, the worst first.
    pub fn rows(&self) -> &[Arc<CautionRule>] {
        &self.rows
    }

    /// Those said beside every job, the worst first.
    pub fn of_job(&self) -> impl Iterator<Item = &Arc<CautionRule>> {
        self.rows.iter().filter(|row| row.once == Once::Job)
    }

    /// Those said once for all jobs of a sitting, the worst first.
    pub fn of_sitting(&self) -> impl Iterator<Item = &Arc<CautionRule>> {
        self.rows.iter().filter(|row| row.once == Once::Sitting)
    }

    /// Finds the rows that are named here, and those that come with its sitting; of equal harm the table's order counts.
    pub(super) fn find(&mut self, sitting: Option<&Self>, table: &[Arc<CautionRule>]) {
        let named = |row: &&Arc<CautionRule>| {
            let names = self.names.iter().chain(sitting.into_iter().flat_map(|sitting| &sitting.names));
            names.into_iter().any(|name| *name == row.name)
        };
        let mut rows: Vec<_> = table.iter().filter(named).cloned().collect();
        worst_first(&mut rows);
        self.rows = rows;
    }
}

/// Leaves out what others say better, and puts the worst first; of equal harm the order stays.
pub fn worst_first(rows: &mut Vec<Arc<CautionRule>>) {
    let said: Vec<String> = rows.iter().flat_map(|row| row.instead_of.iter().cloned()).collect();
    rows.retain(|row| !said.contains(&row.name));
    rows.sort_by_key(|row| row.harm);
}
