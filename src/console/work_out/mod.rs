//! `benchwright work-out`: figures of the trade. Each kind stands in a file of its own.

mod preferred;

use clap::Subcommand;

use super::Answer;
use crate::text;

/// One kind of figure a variant.
#[derive(Subcommand)]
pub enum WorkOut {
    #[command(about = text!("The preferred values next to a value, down and up"))]
    Preferred(preferred::Preferred),
}

impl WorkOut {
    pub fn answer(&self, json: bool) -> Answer {
        match self {
            Self::Preferred(preferred) => preferred.answer(json),
        }
    }
}
