//! One change, one transaction: rows written, checked as a whole, and the next revision read back before it commits.

use std::sync::Arc;

use rusqlite::{Connection, TransactionBehavior};
use uuid::Uuid;

use super::consistency::{self, Laws};
use super::error::StoreError;
use super::history::{self, Act};
use super::refusal::Refusal;
use super::rows::{Table, values_of};
use super::{fields, reload};
use crate::assess::missing_findings;
use crate::record::{Entry, EntryKey, Logbook, Step};

/// What is written.
pub enum Deed {
    Steps(Vec<Step>),
    /// Steps, and the findings that the facts of every part touched call for.
    StepsWithFindings(Vec<Step>),
    /// The rows of this change as they were before it.
    Reverse(u64),
}

/// A change that is on disk.
pub struct Written {
    pub logbook: Arc<Logbook>,
    /// Its number; `None` when nothing differed, so that nothing was written.
    pub number: Option<u64>,
    /// The highest number given to a moment so far.
    pub sequence: u32,
}

/// Why a deed was not written, and the record at which it showed, where it is one record's fault.
#[derive(Debug)]
pub struct Fault {
    pub key: Option<EntryKey>,
    pub error: StoreError,
}

impl Fault {
    /// At one record.
    pub fn at(key: EntryKey, error: impl Into<StoreError>) -> Self {
        Self { key: Some(key), error: error.into() }
    }
}

impl<E: Into<StoreError>> From<E> for Fault {
    fn from(error: E) -> Self {
        Self { key: None, error: error.into() }
    }
}

/// Writes a deed under a name, whole or not at all.
pub fn write(
    connection: &mut Connection,
    laws: &Laws,
    last: &Arc<Logbook>,
    sequence: u32,
    act: Act,
    name: &str,
    mut deed: Deed,
) -> Result<Written, Fault> {
    let mut numbered = sequence;
    let reverses = match &mut deed {
        Deed::Steps(steps) | Deed::StepsWithFindings(steps) => {
            for step in steps.iter_mut() {
                number_moments(step, &mut numbered);
            }
            None
        }
        Deed::Reverse(change) => Some(*change),
    };
    let transaction = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
    let number = history::begin(&transaction, name, act, reverses, numbered)?;
    match &deed {
        Deed::Steps(steps) | Deed::StepsWithFindings(steps) => {
            steps.iter().try_for_each(|step| apply(&transaction, step))?;
        }
        Deed::Reverse(change) => history::reverse(&transaction, *change)?,
    }
    let mut touches = history::touches(&transaction, number)?;
    if matches!(deed, Deed::StepsWithFindings(_)) && !touches.is_empty() {
        // What is not told of the records themselves cannot be asked of what follows from them.
        consistency::check(&transaction, laws, &touches)?;
        let between = reload::next(&transaction, last, number, &touches)?;
        if add_findings(&transaction, laws, last, &between, &mut numbered)? {
            history::renumber(&transaction, number, numbered)?;
            touches = history::touches(&transaction, number)?;
        }
    }
    if touches.is_empty() {
        return Ok(Written { logbook: Arc::clone(last), number: None, sequence });
    }
    if matches!(act, Act::New | Act::Do) {
        consistency::check(&transaction, laws, &touches)?;
    }
    let next = reload::next(&transaction, last, number, &touches)?;
    transaction.commit().map_err(constraint)?;
    Ok(Written { logbook: Arc::new(next), number: Some(number), sequence: numbered })
}

/// Writes the findings that facts call for and that are not there, of every part that differs between two revisions;
/// `true` when there were any.
fn add_findings(
    connection: &Connection,
    laws: &Laws,
    before: &Logbook,
    after: &Logbook,
    numbered: &mut u32,
) -> Result<bool, Fault> {
    let rules = (laws.rules)();
    let mut any = false;
    for file in &after.parts {
        if before.part(file.part.id).is_some_and(|known| Arc::ptr_eq(known, file)) {
            continue;
        }
        for entry in missing_findings::of_part(file, &rules, &mut Uuid::now_v7) {
            any = true;
            let mut step = Step::Put(entry);
            number_moments(&mut step, numbered);
            apply(connection, &step)?;
        }
    }
    Ok(any)
}

/// Numbers moments that have no number yet; takes note of higher ones that came from elsewhere.
fn number_moments(step: &mut Step, highest: &mut u32) {
    let Step::Put(entry) = step else { return };
    for moment in entry.moments_mut() {
        if moment.sequence == 0 {
            moment.sequence = highest.saturating_add(1);
        }
        *highest = (*highest).max(moment.sequence);
    }
}

/// Writes or removes one row.
pub fn apply(connection: &Connection, step: &Step) -> Result<(), Fault> {
    match step {
        Step::Put(entry) => fields::check(connection, entry)
            .and_then(|()| put(connection, entry))
            .map_err(|error| Fault::at(entry.key(), error)),
        Step::Remove(key) => {
            let delete = &Table::of_kind(key.kind).delete;
            let mut statement = connection.prepare_cached(delete)?;
            statement.execute([key.uuid.as_bytes()]).map_err(|error| Fault::at(*key, constraint(error)))?;
            Ok(())
        }
    }
}

fn put(connection: &Connection, entry: &Entry) -> Result<(), StoreError> {
    let table = Table::of_kind(entry.key().kind);
    connection
        .prepare_cached(&table.upsert)?
        .execute(rusqlite::params_from_iter(values_of(entry)))
        .map_err(constraint)?;
    Ok(())
}

/// A constraint of the schema that no check of ours named before is a refusal too.
fn constraint(error: rusqlite::Error) -> StoreError {
    match error.sqlite_error_code() {
        Some(rusqlite::ErrorCode::ConstraintViolation) => Refusal::Constraint { reason: error.to_string() }.into(),
        _ => error.into(),
    }
}
