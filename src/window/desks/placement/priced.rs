//! Another arrangement with what it costs: a part in a machine in which it is not proposed.

use crate::record::{MachineId, PartId};
use crate::text;

/// A part put into a machine.
#[derive(Clone, Debug, PartialEq)]
pub struct Priced {
    pub part: PartId,
    pub machine: MachineId,
    /// What the line is about: the machine, or the part.
    pub name: String,
    /// What the whole proposal is worth less, and whether that is exact; `None` where it cannot be.
    pub cost: Option<(i64, bool)>,
    /// Everything that speaks against it there; empty for nothing.
    pub against: String,
}

impl Priced {
    /// What it costs, short: "−34".
    pub fn figure(&self) -> String {
        match self.cost {
            None => text!("no").to_owned(),
            Some((0, true)) => "±0".to_owned(),
            Some((cost, is_exact)) => {
                let sign = if cost > 0 { '−' } else { '+' };
                let about = if is_exact { "" } else { "≈ " };
                format!("{about}{sign}{}", cost.abs())
            }
        }
    }

    /// In a sentence.
    pub fn sentence(&self) -> String {
        let name = &self.name;
        let mut said = match self.cost {
            None => text!("{what}: cannot go there", what = name),
            Some((0, true)) => text!("{what}: costs nothing", what = name),
            Some((cost, true)) if cost > 0 => text!("{what}: costs {cost} points", what = name, cost = cost),
            Some((cost, true)) => text!("{what}: brings {more} points", what = name, more = -cost),
            Some((cost, false)) => {
                text!("{what}: costs about {cost} points, not proven", what = name, cost = cost)
            }
        };
        if !self.against.is_empty() {
            said.push_str(" (");
            said.push_str(&self.against);
            said.push(')');
        }
        said
    }
}
