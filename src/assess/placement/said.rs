//! What is next best, and what a spare lacks, in words.

use super::ask::Asked;
use super::left::Lack;
use super::propose::{NextBest, Outlook};
use crate::assess::outstanding::hours_text;
use crate::assess::reason::{machine_name, part_name};
use crate::record::Logbook;
use crate::text;

impl NextBest {
    /// In a sentence.
    pub fn sentence(&self, logbook: &Logbook) -> String {
        match self.part {
            Some(part) => {
                text!("Next best: {part}, {cost} less in all.", part = part_name(logbook, part), cost = self.cost)
            }
            None => text!("Without it the place stays empty, {cost} less in all.", cost = self.cost),
        }
    }
}

impl Outlook {
    /// How far the machine is, in a sentence, and what fit has against it.
    pub fn sentence(&self, asked: &Asked) -> String {
        let (machine, work) = (machine_name(asked.logbook, self.machine), hours_text(self.totals.minutes));
        let said = if self.missing == 0 {
            text!("{machine}: complete, {work} of work left", machine = machine, work = work)
        } else {
            text!(
                "{machine}: {missing} missing, {work} of work left",
                machine = machine,
                missing = self.missing,
                work = work
            )
        };
        if self.against.is_empty() {
            return said;
        }
        let against = self.against.iter().map(|because| because.sentence(asked.logbook, asked.rules));
        format!("{said}. {}", against.collect::<Vec<_>>().join(" "))
    }
}

impl Lack {
    /// As a clause.
    pub fn sentence(&self, asked: &Asked) -> String {
        match self {
            Self::Better { part, more: 0 } => {
                text!("{part} there is worth as much", part = part_name(asked.logbook, *part))
            }
            Self::Better { part, more } => {
                text!("{part} there is worth {more} more", part = part_name(asked.logbook, *part), more = more)
            }
            Self::Pinned { part } => text!("{part} is pinned there", part = part_name(asked.logbook, *part)),
            Self::Connectors(lacks) => {
                let label = |(id, count): &(String, u32)| format!("{count} × {}", asked.rules.connectors.label(id));
                let lacks: Vec<String> = lacks.iter().map(label).collect();
                text!("nothing free there gives {lacks}", lacks = lacks.join(", "))
            }
            Self::Fit(because) => {
                let whole = because.sentence(asked.logbook, asked.rules);
                whole.strip_suffix('.').map(str::to_owned).unwrap_or(whole)
            }
            Self::Amperes => text!("the parts there would ask too much of the supply, or of each other").to_owned(),
            Self::Dates(true_to) => text!("dates: {said}", said = true_to.said()),
            Self::Worth => text!("it costs more than it brings").to_owned(),
        }
    }

    /// All of them, one after the other.
    pub fn all(lacks: &[Self], asked: &Asked) -> String {
        let lacks: Vec<String> = lacks.iter().map(|lack| lack.sentence(asked)).collect();
        lacks.join("; ")
    }
}
