//! Forms that more than one desk fills in.

mod proof;
pub mod work;

pub use proof::{ProofAct, ProofForm};
pub use work::{Ending, WorkAct, WorkForm, guide_ui};
