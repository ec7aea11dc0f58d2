//! What holds inside the house: floors kept apart, tables checked, answers following from records and rules.
#![allow(clippy::unwrap_used)]

mod advice;
mod assess;
mod capacitor_phrases;
mod catalogue;
#[path = "../support/chance.rs"]
mod chance;
#[path = "../support/fitting.rs"]
mod fitting;
mod floors;
mod lives;
mod pasted_tables;
#[path = "../support/records.rs"]
mod records;
mod rules;
#[path = "../support/shelves.rs"]
mod shelves;
