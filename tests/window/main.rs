//! The window, driven through its accessible tree.
#![allow(clippy::unwrap_used)]

mod finder;
mod hand;
mod intake;
mod rounds;
mod part_sheet;
mod shelf;
mod shell;
mod theme;
