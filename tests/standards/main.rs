//! Figures of the trade against published ones: the source stands beside each check.
//!
//! Marks in the tables: *seen* in the named source; *computed* with the named library; *memory* where no source was
//! at hand.
#![allow(clippy::unwrap_used)]
// Published values stand as published.
#![allow(clippy::unreadable_literal, clippy::approx_constant)]

#[path = "../support/chance.rs"]
mod chance;

mod capacitor_limits;
mod capacitor_marks;
mod cells;
mod clocks;
mod colour;
mod connectors;
mod core_voltage;
mod corrosion;
mod critical_path;
mod date_codes;
mod drives;
mod fit;
#[path = "../support/fitting.rs"]
mod fitting;
mod fuzz;
mod joint_dates;
mod marked;
mod measuring;
mod pictures;
#[path = "../support/records.rs"]
mod records;
mod settings;
mod supply;
