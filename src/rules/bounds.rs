//! Bounds of a question's figure that stand with a test: one home for each limit.

use super::TableError;
use super::load::{Row, Tables};
use super::table_error::At;
use crate::rules::ProofRule;
use crate::text;

/// Gives bounds that name a test the limit that the test's figures have.
pub(super) fn take_from_tests(tables: &mut Tables, errors: &mut Vec<TableError>) {
    let Tables { questions, proofs, .. } = tables;
    for Row { value, at } in questions {
        for bound in value.figure.iter_mut().flat_map(|figure| &mut figure.bounds) {
            let (test, pick): (_, fn(f64, f64) -> f64) = match (&bound.below_all_of, &bound.below_some_of) {
                (Some(test), None) => (test, f64::min),
                (None, Some(test)) => (test, f64::max),
                (None, None) => continue,
                (Some(test), Some(_)) => {
                    errors.push(at.error_at(test, text!("a bound has either `below_all_of` or `below_some_of`")));
                    continue;
                }
            };
            match limit(proofs, test, pick) {
                Some(limit) => bound.below = Some(limit),
                None => errors.push(unknown(at, test)),
            }
        }
    }
}

fn limit(proofs: &[Row<ProofRule>], test: &str, pick: fn(f64, f64) -> f64) -> Option<f64> {
    let row = proofs.iter().find(|row| row.value.name == test)?;
    row.value.figures.iter().filter_map(|figure| figure.fails_below).reduce(pick)
}

fn unknown(at: &At, test: &str) -> TableError {
    at.error_at(test, text!("the test `{name}` has no figure with a bound `fails_below`", name = test))
}
