//! Rows of retention checked against connectors and questions.

use std::collections::HashSet;

use super::load::{Row, Tables};
use super::{Connectors, RetentionRule, TableError};
use crate::text;

/// Everything that rows of retention name and that is not there.
pub(super) fn check(tables: &Tables, connectors: &Connectors, errors: &mut Vec<TableError>) {
    let answers: HashSet<String> = tables
        .questions
        .iter()
        .flat_map(|row| row.value.answers.iter().map(|answer| format!("{}/{}", row.value.name, answer.name)))
        .collect();
    for Row { value, at } in &tables.retention {
        let RetentionRule { name, board, mechanism, answers: said, posts, source, .. } = value;
        if board.is_empty() {
            errors.push(at.error(text!("the retention `{name}` is for no board", name = name)));
        }
        if source.trim().is_empty() {
            errors.push(at.error_at(source, text!("`{key}` is empty", key = "source")));
        }
        for connector in board.iter().chain([mechanism]).filter(|id| connectors.get(id).is_none()) {
            errors.push(at.error_at(connector, text!("names the unknown connector `{id}`", id = connector)));
        }
        for answer in said.iter().chain(posts).filter(|answer| !answers.contains(*answer)) {
            errors.push(at.error_at(answer, text!("looks for the unknown answer `{name}`", name = answer)));
        }
    }
}
