//! Rows checked against the cautions that they name, and against what may not be done at home.

use std::collections::HashSet;

use super::load::{Row, Tables};
use super::table_error::At;
use super::{Cautions, Cover, TableError, WorkRule};
use crate::record::{Competence, Kind, Word};
use crate::text;

/// The caution of everything that opens a power supply or a monitor.
const MAINS: &str = "mains";

/// The sitting in which mains and picture tubes are worked on.
const MAINS_SITTING: &str = "mains";

/// Everything wrong with the cautions that rows name, and mains work that is not sent out.
pub(super) fn check(tables: &Tables, errors: &mut Vec<TableError>) {
    let known: HashSet<&str> = tables.cautions.iter().map(|row| row.value.name.as_str()).collect();
    let mut check = |at: &At, cautions: &Cautions| {
        let unknown = cautions.names().iter().filter(|name| !known.contains(name.as_str()));
        errors.extend(unknown.map(|name| at.error_at(name, text!("names the unknown caution `{name}`", name = name))));
    };
    for Row { value, at } in &tables.cautions {
        let names = Cautions::from(value.instead_of.clone());
        check(at, &names);
    }
    tables.questions.iter().for_each(|row| check(&row.at, &row.value.cautions));
    tables.findings.iter().for_each(|row| check(&row.at, &row.value.cautions));
    tables.work.iter().for_each(|row| check(&row.at, &row.value.cautions));
    tables.proofs.iter().for_each(|row| check(&row.at, &row.value.cautions));
    tables.kinds.iter().for_each(|row| check(&row.at, &row.value.cautions));
    tables.sittings.iter().for_each(|row| check(&row.at, &row.value.cautions));
    tables.work.iter().for_each(|row| mains(row, errors));
}

/// Whether the row may be for a power supply or a monitor.
fn is_for_mains(work: &WorkRule) -> bool {
    work.kinds.is_empty() || work.kinds.iter().any(|kind| matches!(kind, Kind::PowerSupply | Kind::Monitor))
}

fn mains(Row { value, at }: &Row<WorkRule>, errors: &mut Vec<TableError>) {
    let mut refuse = |reason: String| errors.push(at.error(reason));
    match value.cover {
        None if is_for_mains(value) => refuse(text!(
            "the work `{name}` may be for a power supply or a monitor: `cover` must be \"on\", \"off\" or \"none\"",
            name = value.name
        )),
        Some(Cover::Off) if !value.cautions.names().iter().any(|name| name == MAINS) => {
            refuse(text!(
                "the work `{name}` opens a power supply or a monitor without the caution `mains`",
                name = value.name
            ));
        }
        _ => {}
    }
    let is_allowed = match (value.cover, value.sitting == MAINS_SITTING) {
        (Some(Cover::Off), _) => value.who == Competence::SendOut,
        (_, true) => value.who != Competence::Oneself,
        _ => true,
    };
    if !is_allowed {
        refuse(text!(
            "the work `{name}` is on mains or high voltage and says who = \"{who}\": with the cover off it is \"send_out\", else \"with_help\" at least",
            name = value.name,
            who = value.who.name()
        ));
    }
}
