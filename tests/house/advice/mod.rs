//! Advice of the tables held against what the trade and its makers say.

mod figures;
mod types;
