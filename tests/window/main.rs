//! The window, driven through its accessible tree.
#![allow(clippy::unwrap_used)]

mod bench;
mod capacitors;
mod commands;
mod copy_out;
mod desktop;
mod evenings;
mod facts;
mod finder;
mod hand;
mod intake;
mod machines;
mod marking;
mod part_sheet;
mod proving;
mod reach;
#[path = "../support/records.rs"]
mod records;
mod rounds;
mod shelf;
mod shell;
mod supplies;
mod theme;
mod verdicts;
mod viewer;
mod work_path;
