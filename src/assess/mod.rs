//! What follows from records and rules: findings, outstanding work, proofs, dates, power, fit, readiness, the evening's
//! work, the schedule, fault-finding, inspections, kits, retention, supplies, which spare goes into which machine.
//!
//! Pure: a logbook, the rules and today in; answers with their reasons out. [`Answers`] holds all of them for one
//! revision and works out the next revision's by looking only at what changed.

pub mod answers;
pub mod cautions;
pub mod faults;
pub mod findings;
pub mod fit;
pub mod inspections;
pub mod kits;
mod limits;
pub mod making;
pub mod missing_findings;
pub mod offer;
pub mod outstanding;
pub mod part_state;
mod patience;
pub mod placement;
pub mod positions;
pub mod power;
pub mod proofs;
pub mod readiness;
pub mod reason;
pub mod retention;
pub mod schedule;
pub mod supplies;
pub mod templates;
pub mod tie;
pub mod tonight;
pub mod touched;
pub mod unknown_names;

pub use answers::{Answers, MachineAnswers, PartAnswers};
pub use making::{Making, TrueTo};
pub use outstanding::{Job, Task, TaskKey, Totals};
pub use part_state::PartState;
pub use patience::{Patience, Stop};
pub use power::{Power, Verdict};
pub use proofs::{ProofStanding, Standing};
pub use readiness::{Gate, GateAnswer, GateState, Next, Readiness};
pub use reason::{Reason, Weight};
