//! A machine of the sample: its brief, its roles, what is planned and fitted, and how it was started.

use super::super::authoring::{Ids, key, moment};
use super::tables::{MachineRow, RoleRow};
use super::{Book, Fault, Shot, noted, pictures};
use crate::record::{Change, Fitting, Kind, Machine, MachineId, Placement, PowerOn, Role, RoleId, When};
use crate::text;

/// The machine as one change.
pub fn change(row: &MachineRow, book: &Book, ids: &mut Ids, shots: &mut Vec<Shot>) -> Result<Change, Fault> {
    let mut change = Change::new(text!("Put {machine} together", machine = row.name));
    let machine = Machine {
        id: key(ids),
        name: row.name.clone(),
        purpose: row.purpose.clone(),
        window_from: row.from.when(book.today),
        window_to: row.to.when(book.today),
        standing: row.standing,
        priority: row.priority,
        note: row.note.clone(),
    };
    let id = machine.id;
    change.put(machine);
    let on = row.put_together.when(book.today);
    for role in &row.role {
        add_role(role, id, on, row, book, &mut change, ids)?;
    }
    for one in &row.reading {
        change.put(noted::reading(one, None, Some(id), book, ids));
    }
    for one in &row.power_on {
        change.put(PowerOn {
            id: key(ids),
            machine: id,
            switched: moment(one.on.when(book.today)),
            configuration: one.configuration.clone(),
            settings: one.settings.clone(),
            steps: one.steps.clone(),
            result: one.result,
            happened: one.happened.clone(),
            who: book.keeper.clone(),
        });
    }
    for one in &row.proof {
        let fault = |fault| Fault { at: row.name.clone(), fault };
        change.put(noted::proof(one, None, Some(id), book, ids).map_err(fault)?);
    }
    for one in &row.case {
        change.put_all(noted::fault_case(one, None, Some(id), book, ids)?);
    }
    if let Some(subject) = &row.picture {
        let mut photo = pictures::photo(None, Some(id), on, ids);
        photo.caption.clone_from(&row.name);
        let subject = pictures::titled(subject.clone(), &row.name, Kind::Case);
        shots.push(Shot { photo, subject, marks: Vec::new() });
    }
    Ok(change)
}

fn add_role(
    row: &RoleRow,
    machine: MachineId,
    on: When,
    of: &MachineRow,
    book: &Book,
    change: &mut Change,
    ids: &mut Ids,
) -> Result<(), Fault> {
    let role: RoleId = key(ids);
    change.put(Role {
        id: role,
        machine,
        kind: row.kind,
        name: row.name.clone(),
        required: !row.optional,
        count: row.count,
        note: row.note.clone(),
        or_kinds: Vec::new(),
    });
    let find = |tag: &String| {
        let fault = || Fault { at: of.name.clone(), fault: format!("there is no part {tag}") };
        book.parts.get(tag).copied().ok_or_else(fault)
    };
    for tag in &row.planned {
        change.put(Placement {
            id: key(ids),
            machine,
            role,
            part: find(tag)?,
            pinned: row.pinned,
            planned: moment(on),
            reason: row.reason.clone(),
        });
    }
    for tag in &row.fitted {
        change.put(Fitting {
            id: key(ids),
            machine,
            role: Some(role),
            part: find(tag)?,
            fitted: moment(on),
            removed: None,
            note: String::new(),
        });
    }
    Ok(())
}
