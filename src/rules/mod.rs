//! The trade's tables as typed, checked data: what a survey asks, what an answer raises, what work a finding calls
//! for, which proofs a kind needs. Code holds mechanisms, tables hold the trade.

pub mod connectors;
mod table_error;
mod types;

pub use connectors::{Connector, Connectors};
pub use table_error::TableError;
pub use types::{
    AnswerRule, FigureBound, FigureRule, FindingRule, KindRule, Paper, ProofRule, Question, Rules, Sitting, WorkRule,
};
