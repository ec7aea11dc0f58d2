//! The window, driven through its accessible tree.
#![allow(clippy::unwrap_used)]

mod bench;
mod finder;
mod hand;
mod intake;
mod machines;
mod part_sheet;
#[path = "../support/records.rs"]
mod records;
mod rounds;
mod shelf;
mod shell;
mod theme;
mod viewer;
