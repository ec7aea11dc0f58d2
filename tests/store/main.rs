//! Where it is kept: whole changes, history and undo, files that are damaged or not ours.
#![allow(clippy::unwrap_used)]

#[path = "../support/chance.rs"]
mod chance;
mod drafts;
mod exchange;
#[path = "../faults/mod.rs"]
mod faults;
mod files;
mod forms;
mod invent;
mod lives;
mod meaning;
mod property;
#[path = "../support/records.rs"]
mod records;
mod refusals;
mod support;
mod tables;
mod undo;
mod writing;
