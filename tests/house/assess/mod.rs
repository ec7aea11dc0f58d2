//! Answers that follow from records and rules, as a restorer meets them.

mod answers;
mod capacitors;
mod findings;
mod fit;
mod making;
mod outstanding;
mod power;
mod proofs;
mod readiness;
mod support;
