//! Templates checked against the work that they are made of.

use std::collections::HashMap;

use super::load::{Row, Tables};
use super::{TableError, Template};
use crate::text;

/// Everything wrong with the work that templates name: unknown, twice, or in an order that the work itself forbids.
pub(super) fn check(tables: &Tables, errors: &mut Vec<TableError>) {
    let after: HashMap<&str, &[String]> =
        tables.work.iter().map(|row| (row.value.name.as_str(), row.value.after.as_slice())).collect();
    for row in &tables.templates {
        template(row, &after, errors);
    }
}

fn template(Row { value, at }: &Row<Template>, after: &HashMap<&str, &[String]>, errors: &mut Vec<TableError>) {
    if value.work.is_empty() || value.kinds.is_empty() {
        errors.push(at.error(text!("the template `{name}` needs kinds and work", name = value.name)));
    }
    for (place, name) in value.work.iter().enumerate() {
        if !after.contains_key(name.as_str()) {
            errors.push(at.error_at(name, text!("is made of the unknown work `{name}`", name = name)));
        }
        if value.work[..place].contains(name) {
            errors.push(at.error_at(name, text!("`{word}` stands here twice", word = name)));
        }
        for later in value.work[..place].iter().filter(|earlier| comes_after(earlier, name, after)) {
            let reason = text!(
                "circular order: the work `{name}` comes after `{others}`, which comes after it",
                name = name,
                others = later
            );
            errors.push(at.error_at(name, reason));
        }
    }
}

/// Whether a piece of work comes, over however many steps, after another.
fn comes_after(later: &str, first: &str, after: &HashMap<&str, &[String]>) -> bool {
    let mut seen = std::collections::HashSet::new();
    let mut open = vec![later];
    while let Some(next) = open.pop() {
        for before in after.get(next).copied().unwrap_or_default() {
            if before == first {
                return true;
            }
            if seen.insert(before.as_str()) {
                open.push(before);
            }
        }
    }
    false
}
