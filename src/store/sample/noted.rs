//! What is noted of the sample's parts and machines alike: tests, readings, faults that are looked for.

use super::super::authoring::{Ids, key, moment};
use super::tables::{CaseRow, ProofRow, ReadingRow};
use super::{Book, Fault, find};
use crate::record::{Entry, FaultCase, MachineId, PartId, Proof, Reading, Trial};

/// A test that was run on a part or a machine.
pub fn proof(
    row: &ProofRow,
    part: Option<PartId>,
    machine: Option<MachineId>,
    book: &Book,
    ids: &mut Ids,
) -> Result<Proof, String> {
    let rule = book.rules.proof(&row.test).ok_or_else(|| format!("there is no test “{}”", row.test))?;
    Ok(Proof {
        id: key(ids),
        part,
        machine,
        test: row.test.clone(),
        run: moment(row.on.when(book.today)),
        rig: rule.rig.clone(),
        minutes: Some(rule.minutes),
        criterion: rule.criterion.clone(),
        result: row.result,
        who: row.who.clone().unwrap_or_else(|| book.keeper.clone()),
        note: row.note.clone(),
    })
}

/// A figure that was measured on a part or a machine.
pub fn reading(
    row: &ReadingRow,
    part: Option<PartId>,
    machine: Option<MachineId>,
    book: &Book,
    ids: &mut Ids,
) -> Reading {
    Reading {
        id: key(ids),
        part,
        machine,
        measured: moment(row.on.when(book.today)),
        quantity: row.quantity.clone(),
        value: row.value,
        unit: row.unit.clone(),
        condition: row.condition.clone(),
        who: book.keeper.clone(),
        supersedes: None,
        note: String::new(),
        proof: None,
        work: None,
    }
}

/// A symptom and its trials.
pub fn fault_case(
    row: &CaseRow,
    part: Option<PartId>,
    machine: Option<MachineId>,
    book: &Book,
    ids: &mut Ids,
) -> Result<Vec<Entry>, Fault> {
    let case = FaultCase {
        id: key(ids),
        part,
        machine,
        opened: moment(row.on.when(book.today)),
        symptom: row.symptom.clone(),
        state: row.state,
        outcome: row.outcome.clone(),
    };
    let id = case.id;
    let mut entries = vec![Entry::from(case)];
    for trial in &row.trial {
        entries.push(Entry::from(Trial {
            id: key(ids),
            case: id,
            tried: moment(trial.on.when(book.today)),
            configuration: trial.configuration.clone(),
            step: trial.step.clone(),
            suspect: find(&book.parts, trial.suspect.as_ref(), &row.symptom)?,
            known_good: find(&book.parts, trial.known_good.as_ref(), &row.symptom)?,
            result: trial.result,
            note: String::new(),
            codes: trial.codes.clone(),
        }));
    }
    Ok(entries)
}
