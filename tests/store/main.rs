//! Where it is kept: whole changes, history and undo, files that are damaged or not ours.
#![allow(clippy::unwrap_used)]

mod drafts;
mod files;
mod lives;
mod refusals;
mod support;
mod tables;
mod undo;
mod writing;
