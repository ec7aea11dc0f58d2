//! Advice of the tables held against what the trade and its makers say.

use benchwright::rules::{Rules, WorkRule};

mod batteries;
mod boards;
mod figures;
mod hurts;
mod mains;
mod parts;
mod read;
mod tests_of_memory;
mod types;
mod walk;

fn work<'a>(rules: &'a Rules, name: &str) -> &'a WorkRule {
    rules.work(name).unwrap_or_else(|| panic!("there is no work {name}"))
}

/// The cautions of a job, with those of its sitting.
fn cautions(row: &WorkRule) -> Vec<&str> {
    row.cautions.rows().iter().map(|row| row.name.as_str()).collect()
}

fn is_warned(row: &WorkRule, caution: &str) -> bool {
    cautions(row).contains(&caution)
}

/// Everything a job says about what is done and with what.
fn all_text(row: &WorkRule) -> String {
    let lists = row.materials.iter().chain(&row.tools).map(String::as_str);
    [row.say.as_str(), row.how.as_str()].into_iter().chain(lists).collect::<Vec<_>>().join("\n")
}
