//! What is missing from the shelf, as lines to look for at the next fair: for each empty place, and each open connector.

use super::ask::Asked;
use super::propose::in_machine;
use super::solve::Answer;
use super::wanted::Wanted;
use crate::assess::fit::Piece;
use crate::assess::reason::{part_name, role_name};
use crate::record::{Kind, Logbook, MachineId, PartId, RoleId, Word as _};
use crate::rules::{Connectors, Rules};
use crate::text;
use crate::trade::Span;

/// Something that is wanted.
#[derive(Clone, Debug, PartialEq)]
pub struct Wish {
    pub machine: MachineId,
    /// The role that stays empty; `None` for a connector that stays open.
    pub role: Option<RoleId>,
    pub required: bool,
    pub count: u32,
    pub kind: Option<Kind>,
    /// It must need one of these: they are free in the machine.
    pub plugs_into: Vec<String>,
    /// It must offer these: other parts there wait for them.
    pub must_offer: Vec<(String, u32)>,
    /// Core voltages that the board there gives, in volts: from, to.
    pub core_v: Option<(f64, f64)>,
    /// Bus clocks that the board there can be set to, in MHz, slowest first.
    pub bus_mhz: Vec<f64>,
    /// When it should have been made.
    pub window: Option<Span>,
    /// The part that waits for an open connector.
    pub waits: Vec<PartId>,
}

impl Wish {
    /// As one line, with how many are wanted.
    pub fn line(&self, logbook: &Logbook, rules: &Rules) -> String {
        let what = self.what(logbook, rules);
        if self.count > 1 { text!("{count} × {what}", count = self.count, what = what) } else { what }
    }

    /// One of what is wanted: what it is, what it plugs into or gives, its voltage and clock, its dates.
    pub fn what(&self, logbook: &Logbook, rules: &Rules) -> String {
        let mut line = match (self.role, self.kind) {
            (Some(role), _) => role_name(logbook, self.machine, role),
            (None, Some(kind)) => kind.label().to_owned(),
            (None, None) => text!("Something").to_owned(),
        };
        let table = &rules.connectors;
        if !self.plugs_into.is_empty() {
            line += &text!(", for {plugs}", plugs = plugs(&self.plugs_into, table));
        }
        if !self.must_offer.is_empty() {
            let offers = |(id, count): &(String, u32)| {
                let label = table.label(id).to_owned();
                if *count > 1 { text!("{count} × {what}", count = count, what = label) } else { label }
            };
            let offers: Vec<String> = self.must_offer.iter().map(offers).collect();
            line += &text!(", giving {offers}", offers = offers.join(text!(" and ")));
        }
        if !self.waits.is_empty() {
            let parts: Vec<String> = self.waits.iter().map(|part| part_name(logbook, *part)).collect();
            line += &text!(", for {parts}", parts = parts.join(", "));
        }
        if let Some((least, most)) = self.core_v {
            line += &if least == most {
                text!(", core at {volts} V", volts = least)
            } else {
                text!(", core at {least} to {most} V", least = least, most = most)
            };
        }
        if !self.bus_mhz.is_empty() {
            let clocks: Vec<String> = self.bus_mhz.iter().map(|mhz| mhz.round().to_string()).collect();
            line += &text!(", bus at {mhz} MHz", mhz = clocks.join(text!(" or ")));
        }
        if let Some(window) = self.window {
            line +=
                &text!(", made {from} to {to}", from = window.first.format("%Y-%m"), to = window.last.format("%Y-%m"));
        }
        line
    }
}

/// Connectors of one family are one or the other; of each family one is meant.
fn plugs(ids: &[String], table: &Connectors) -> String {
    let family = |id: &String| table.get(id).map(|row| row.family);
    let mut families = Vec::new();
    for id in ids {
        if !families.contains(&family(id)) {
            families.push(family(id));
        }
    }
    let alike = families.into_iter().map(|of| {
        let labels: Vec<&str> = ids.iter().filter(|id| family(id) == of).map(|id| table.label(id)).collect();
        labels.join(text!(" or "))
    });
    alike.collect::<Vec<String>>().join(text!(" and "))
}

/// All wishes of a proposal, machine by machine.
pub(super) fn wishes(asked: &Asked, answer: &Answer) -> Vec<Wish> {
    let mut wanted = Wanted::of(asked.logbook, asked.rules);
    let machines = asked.machines.iter().enumerate();
    let of_machine = |(at, machine): (usize, &MachineId)| {
        let file = asked.logbook.machine(*machine)?;
        let here = in_machine(&asked.question, answer, at);
        let pieces: Vec<&Piece> = here.iter().map(|(spare, _)| &asked.pieces[*spare]).collect();
        let seat = |(spare, option): &(usize, usize)| asked.question.spares[*spare].options[*option].seat;
        let filled = |role| here.iter().filter(|placed| asked.seats[seat(placed)].1 == Some(role)).count() as u32;
        Some(wanted.in_machine(file, &pieces, filled))
    };
    machines.filter_map(of_machine).flatten().collect()
}
