//! Names in an exchange document that no table holds: all of them in one refusal, unless they are to be kept.

use std::collections::{BTreeMap, HashMap};
use std::fmt;

use super::error::StoreError;
use super::exchange::Import;
use crate::assess::unknown_names::{self, Owner, UnknownName};
use crate::record::{DesignId, Entry, EntryKey, Logbook, MachineId, PartId, Step, Word as _};
use crate::rules::Rules;
use crate::{counted, text};

/// What an import does with names that no table holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum UnknownNames {
    /// Nothing is imported.
    Refuse,
    /// They come in as they are.
    Keep,
}

/// The unknown names of a document, a line each.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct UnknownList(pub Vec<String>);

impl fmt::Display for UnknownList {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self(lines) = self;
        f.write_str(&counted!(
            "{count} name stands in no table; correct it, or import with --keep-unknown to keep it as it is (the command “rules” lists the known ones):",
            "{count} names stand in no table; correct them, or import with --keep-unknown to keep them as they are (the command “rules” lists the known ones):",
            lines.len()
        ))?;
        lines.iter().try_for_each(|line| write!(f, "\n  {line}"))
    }
}

/// An unknown name in words, with what it was said of and the known name that it comes near.
pub fn in_words(name: &UnknownName, of: &str, rules: &Rules) -> String {
    let UnknownName { kind, name: word, .. } = name;
    match name.nearest(rules) {
        Some(near) => text!(
            "{of}: no {kind} is named “{name}”; “{near}” is known",
            of = of,
            kind = kind.label().to_lowercase(),
            name = word,
            near = near
        ),
        None => text!("{of}: no {kind} is named “{name}”", of = of, kind = kind.label().to_lowercase(), name = word),
    }
}

/// Every unknown name of a logbook, in words.
pub fn unknown_in_words(logbook: &Logbook, rules: &Rules) -> Vec<String> {
    let names = unknown_names::of(logbook, rules);
    names.iter().map(|name| in_words(name, &owner_in(logbook, name.owner), rules)).collect()
}

/// What a name was said of, in words, from a logbook.
pub fn owner_in(logbook: &Logbook, owner: Owner) -> String {
    match owner {
        Owner::Part(id) => part_called(id, logbook.part(id).map(|file| file.part.tag.as_str())),
        Owner::Design(id) => design_called(id, logbook.design(id).map(|file| file.design.title())),
        Owner::Machine(id) => machine_called(id, logbook.machine(id).map(|file| file.machine.name.as_str())),
    }
}

fn part_called(id: PartId, tag: Option<&str>) -> String {
    text!("part {tag}", tag = tag.map_or_else(|| id.uuid().to_string(), str::to_owned))
}

fn design_called(id: DesignId, title: Option<String>) -> String {
    let title = title.filter(|title| !title.is_empty());
    text!("design {title}", title = title.unwrap_or_else(|| id.uuid().to_string()))
}

fn machine_called(id: MachineId, name: Option<&str>) -> String {
    text!("machine {name}", name = name.map_or_else(|| id.uuid().to_string(), str::to_owned))
}

impl Import {
    fn entries(&self) -> impl Iterator<Item = &Entry> {
        self.change.steps.iter().filter_map(|step| match step {
            Step::Put(entry) => Some(entry),
            Step::Remove(_) => None,
        })
    }

    /// Refuses the document where a record that is new or changed carries a name that no table holds; `standing`
    /// gives the logbook's own records, and is asked only where there is such a name at all.
    pub fn refuse_unknown_names(
        &self,
        logbook: &Logbook,
        rules: &Rules,
        standing: impl FnOnce() -> Result<Vec<Entry>, StoreError>,
    ) -> Result<(), StoreError> {
        let with_names: Vec<(&Entry, Vec<UnknownName>)> = self
            .entries()
            .map(|entry| (entry, unknown_names::of_entry(entry, rules)))
            .filter(|(_, names)| !names.is_empty())
            .collect();
        if with_names.is_empty() {
            return Ok(());
        }
        let standing: HashMap<EntryKey, Entry> = standing()?.into_iter().map(|entry| (entry.key(), entry)).collect();
        let mut names: Vec<UnknownName> = with_names
            .into_iter()
            .filter(|(entry, _)| standing.get(&entry.key()) != Some(entry))
            .flat_map(|(_, names)| names)
            .collect();
        names.sort_unstable();
        names.dedup();
        if names.is_empty() {
            return Ok(());
        }
        let owners: BTreeMap<Owner, String> = self.entries().filter_map(owner_of).collect();
        let lines = names.iter().map(|name| {
            let of = owners.get(&name.owner).cloned().unwrap_or_else(|| owner_in(logbook, name.owner));
            in_words(name, &of, rules)
        });
        let mut lines: Vec<String> = lines.collect();
        lines.sort();
        Err(StoreError::UnknownNames(UnknownList(lines)))
    }
}

/// What a document's own part, design or machine is called.
fn owner_of(entry: &Entry) -> Option<(Owner, String)> {
    match entry {
        Entry::Part(part) => Some((Owner::Part(part.id), part_called(part.id, Some(&part.tag)))),
        Entry::Design(design) => Some((Owner::Design(design.id), design_called(design.id, Some(design.title())))),
        Entry::Machine(machine) => Some((Owner::Machine(machine.id), machine_called(machine.id, Some(&machine.name)))),
        _ => None,
    }
}
