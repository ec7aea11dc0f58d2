//! The order of work: every piece after all that it needs done first.

use std::collections::HashMap;

use super::load::Row;
use super::{TableError, WorkRule};
use crate::text;

/// The rows so ordered; otherwise they stay as they stand in the tables. A circle is reported at each of its rows.
pub(super) fn sorted(rows: Vec<Row<WorkRule>>, errors: &mut Vec<TableError>) -> Vec<Row<WorkRule>> {
    let places: HashMap<&str, usize> =
        rows.iter().enumerate().map(|(place, row)| (row.value.name.as_str(), place)).collect();
    let first: Vec<Vec<usize>> = rows
        .iter()
        .map(|row| row.value.after.iter().filter_map(|name| places.get(name.as_str()).copied()).collect())
        .collect();

    let mut placed = vec![false; rows.len()];
    let mut order = Vec::with_capacity(rows.len());
    while let Some(next) = (0..rows.len()).find(|place| !placed[*place] && first[*place].iter().all(|on| placed[*on])) {
        placed[next] = true;
        order.push(next);
    }
    for (place, row) in rows.iter().enumerate().filter(|(place, _)| needs_itself(*place, &first)) {
        let others: Vec<&str> =
            first[place].iter().filter(|on| !placed[**on]).map(|on| rows[*on].value.name.as_str()).collect();
        let reason = text!(
            "circular order: the work `{name}` comes after `{others}`, which comes after it",
            name = row.value.name,
            others = others.join("`, `")
        );
        errors.push(row.at.error(reason));
    }
    let mut rows: Vec<Option<Row<WorkRule>>> = rows.into_iter().map(Some).collect();
    order.into_iter().filter_map(|place| rows[place].take()).collect()
}

/// Whether a piece of work comes, over however many steps, after itself.
fn needs_itself(place: usize, first: &[Vec<usize>]) -> bool {
    let mut seen = vec![false; first.len()];
    let mut open = first[place].clone();
    while let Some(next) = open.pop() {
        if next == place {
            return true;
        }
        if !std::mem::replace(&mut seen[next], true) {
            open.extend(&first[next]);
        }
    }
    false
}
