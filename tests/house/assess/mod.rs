//! Answers that follow from records and rules, as a restorer meets them.

mod answers;
mod capacitors;
mod choice;
mod faults;
mod findings;
mod fit;
mod fit_gate;
mod fit_pieces;
mod fit_swap;
mod inspections;
mod kits;
mod making;
mod offer;
mod orders;
mod outstanding;
mod placement;
mod placement_carried_out;
mod placement_solved;
mod placement_tested;
mod power;
mod proofs;
mod readiness;
mod retention;
mod schedule;
mod support;
mod tonight;
