//! What an offered part would be, in sentences.

use super::{Gain, Have, Offer, Use};
use crate::assess::fit::Verdict;
use crate::assess::reason::{machine_name, part_name, role_name};
use crate::record::{Logbook, Word};
use crate::{counted, text};

fn figure(value: f64) -> String {
    format!("{value:.1}").trim_end_matches(".0").to_owned()
}

impl Gain {
    pub fn said(self) -> String {
        match self {
            Self::Gate { from, to } => {
                text!("stands at “{to}” instead of “{from}”", to = to.label(), from = from.label())
            }
            Self::Core { from_mhz, to_mhz } => {
                text!("runs at {to} MHz instead of {from} MHz", to = figure(to_mhz), from = figure(from_mhz))
            }
            Self::Memory { from_mb, to_mb } => {
                text!("has {to} MB instead of {from} MB", to = figure(to_mb), from = figure(from_mb))
            }
            Self::Nearer { weeks } => {
                counted!("{count} week nearer to the window", "{count} weeks nearer to the window", weeks as usize)
            }
            Self::Fewer { verdict: Verdict::No, count } => {
                counted!("{count} thing fewer that does not fit", "{count} things fewer that do not fit", count)
            }
            Self::Fewer { count, .. } => counted!("{count} caveat fewer", "{count} caveats fewer", count),
        }
    }
}

impl Have {
    pub fn said(&self, logbook: &Logbook) -> String {
        let part = part_name(logbook, self.part);
        let state = self.state.label().to_lowercase();
        let place = logbook.part(self.part).and_then(|file| file.part.place).map(|place| logbook.place_path(place));
        match (self.machine, place) {
            (Some(machine), _) => {
                text!(
                    "{part}: {state}, in {machine}",
                    part = part,
                    state = state,
                    machine = machine_name(logbook, machine)
                )
            }
            (None, Some(place)) => text!("{part}: {state}, free, {place}", part = part, state = state, place = place),
            (None, None) => text!("{part}: {state}, free", part = part, state = state),
        }
    }
}

impl Use {
    /// Where it would go, and what would get better there.
    pub fn said(&self, logbook: &Logbook) -> String {
        let machine = machine_name(logbook, self.machine);
        let role = role_name(logbook, self.machine, self.role);
        let place = match (self.replaces, self.is_required) {
            (Some(out), _) => {
                text!(
                    "{machine}, {role}: in the place of {part}",
                    machine = machine,
                    role = role,
                    part = part_name(logbook, out)
                )
            }
            (None, true) => text!("{machine} lacks it: {role}", machine = machine, role = role),
            (None, false) => text!("{machine} has room for it: {role}", machine = machine, role = role),
        };
        let place = match self.with {
            Some(adapter) => text!("{place}, in {adapter}", place = place, adapter = part_name(logbook, adapter)),
            None => place,
        };
        let gains = self.gains.iter().map(|gain| gain.said()).collect::<Vec<_>>().join(", ");
        if gains.is_empty() { place } else { format!("{place}; {gains}") }
    }
}

impl Offer {
    /// The answer in one line.
    pub fn summary(&self) -> String {
        let have = match self.have.len() {
            0 => text!("You have none").to_owned(),
            have => counted!("You have {count}", "You have {count}", have),
        };
        let free = self.have.iter().filter(|one| one.machine.is_none()).count();
        let free = if self.have.is_empty() { String::new() } else { text!(" ({free} free)", free = free) };
        let wanted = self.lacking.iter().filter(|one| one.is_required).count();
        let lacking = match wanted {
            0 => text!("no machine lacks one").to_owned(),
            wanted => counted!("{count} machine lacks one", "{count} machines lack one", wanted),
        };
        let improves = match self.improves.len() {
            0 => text!("it would improve none").to_owned(),
            improves => counted!("it would improve {count}", "it would improve {count}", improves),
        };
        format!("{have}{free}; {lacking}; {improves}.")
    }
}
