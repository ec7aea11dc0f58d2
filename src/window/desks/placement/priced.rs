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
    /// What the whole proposal is worth less, at least and at most: the same where both are proven, and `None` where
    /// it cannot be.
    pub cost: Option<(i64, i64)>,
    /// Everything that speaks against it there; empty for nothing.
    pub against: String,
}

impl Priced {
    /// What it costs, short: "−34".
    pub fn figure(&self) -> String {
        let Some((least, most)) = self.cost else { return text!("no").to_owned() };
        let figure = match least {
            0 => "±0".to_owned(),
            cost if cost > 0 => format!("−{cost}"),
            cost => format!("+{}", -cost),
        };
        if least == most { figure } else { text!("{points} or more", points = figure) }
    }

    /// In a sentence.
    pub fn sentence(&self) -> String {
        let name = &self.name;
        let mut said = match self.cost {
            None => text!("{what}: cannot go there", what = name),
            Some((0, 0)) => text!("{what}: costs nothing", what = name),
            Some((cost, most)) if cost == most && cost > 0 => {
                text!("{what}: costs {cost} points", what = name, cost = cost)
            }
            Some((cost, most)) if cost == most => text!("{what}: brings {more} points", what = name, more = -cost),
            Some((least, most)) => text!(
                "{what}: costs between {least} and {most} points, not proven",
                what = name,
                least = least,
                most = most
            ),
        };
        if !self.against.is_empty() {
            said.push_str("; ");
            said.push_str(&self.against);
        }
        said
    }
}
