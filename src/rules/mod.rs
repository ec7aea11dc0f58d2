//! The trade's tables as typed, checked data: what a survey asks, what an answer raises, what work a finding calls
//! for, which proofs a kind needs, what is looked at again sooner. Code holds mechanisms, tables hold the trade.

mod bounds;
mod caution;
mod check;
mod check_cautions;
mod check_retention;
mod check_template;
pub mod connectors;
mod load;
mod lookup;
mod order;
mod plain;
mod power_effect;
mod table_error;
mod types;

pub use caution::{CautionRule, Cautions, Harm, Once, worst_first};
pub use connectors::{Connector, Connectors};
pub use lookup::find_question;
pub use power_effect::PowerEffect;
pub use table_error::{TableError, TableErrors};
pub use types::{
    AnswerRule, Cover, FigureBound, FigureRule, FindingRule, InspectionRule, KindRule, LowEsrRule, OrderRule, Paper,
    ProofFigure, ProofRule, Question, RetentionRule, Rules, Sitting, SubstitutionRule, Template, WorkRule,
};
