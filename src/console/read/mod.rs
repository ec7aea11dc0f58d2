//! `benchwright read`: what is printed on a part, and what it means. Each kind stands in a file of its own.

mod capacitor;
mod date_code;
mod markings;

use clap::Subcommand;

use super::Answer;
use crate::text;

/// One kind of text a variant.
#[derive(Subcommand)]
pub enum Read {
    #[command(about = text!("A capacitor's mark: value, voltage, tolerance"))]
    Capacitor(capacitor::Capacitor),
    #[command(about = text!("A date code: every possible reading, best first"))]
    DateCode(date_code::DateCode),
    #[command(about = text!("All markings of a part together: since when it can exist, what stands out"))]
    Markings(markings::Markings),
}

impl Read {
    pub fn answer(&self, json: bool) -> Answer {
        match self {
            Self::Capacitor(capacitor) => capacitor.answer(json),
            Self::DateCode(date_code) => date_code.answer(json),
            Self::Markings(markings) => markings.answer(json),
        }
    }
}
