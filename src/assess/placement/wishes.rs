//! What is missing from the shelf, as lines to look for at the next fair: for each empty place, and each open connector.

use std::collections::{BTreeMap, BTreeSet};

use super::ask::Asked;
use super::propose::in_machine;
use super::solve::Answer;
use crate::assess::making;
use crate::assess::reason::{part_name, role_name};
use crate::record::{Figure, Kind, MachineId, PartId, RoleId, Side, Word as _};
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
    /// When it should have been made.
    pub window: Option<Span>,
    /// The part that waits for an open connector.
    pub waits: Vec<PartId>,
}

impl Wish {
    /// As one line.
    pub fn line(&self, asked: &Asked) -> String {
        let what = match (self.role, self.kind) {
            (Some(role), _) => role_name(asked.logbook, self.machine, role),
            (None, Some(kind)) => kind.label().to_owned(),
            (None, None) => text!("Something").to_owned(),
        };
        let mut line = if self.count > 1 { text!("{count} × {what}", count = self.count, what = what) } else { what };
        let label = |id: &String| asked.rules.connectors.label(id).to_owned();
        if !self.plugs_into.is_empty() {
            let plugs: Vec<String> = self.plugs_into.iter().map(label).collect();
            line += &text!(", for {plugs}", plugs = plugs.join(text!(" or ")));
        }
        if !self.must_offer.is_empty() {
            let offers = |(id, count): &(String, u32)| {
                if *count > 1 { text!("{count} × {what}", count = count, what = label(id)) } else { label(id) }
            };
            let offers: Vec<String> = self.must_offer.iter().map(offers).collect();
            line += &text!(", giving {offers}", offers = offers.join(", "));
        }
        if !self.waits.is_empty() {
            let parts: Vec<String> = self.waits.iter().map(|part| part_name(asked.logbook, *part)).collect();
            line += &text!(", for {parts}", parts = parts.join(", "));
        }
        if let Some((least, most)) = self.core_v {
            line += &if least == most {
                text!(", core at {volts} V", volts = least)
            } else {
                text!(", core at {least} to {most} V", least = least, most = most)
            };
        }
        if let Some(window) = self.window {
            line +=
                &text!(", made {from} to {to}", from = window.first.format("%Y-%m"), to = window.last.format("%Y-%m"));
        }
        line
    }
}

/// All wishes, machine by machine.
pub(super) fn wishes(asked: &Asked, answer: &Answer) -> Vec<Wish> {
    (0..asked.machines.len()).flat_map(|machine| of_machine(asked, answer, machine)).collect()
}

fn of_machine(asked: &Asked, answer: &Answer, machine: usize) -> Vec<Wish> {
    let question = &asked.question;
    let Some(file) = asked.logbook.machine(asked.machines[machine]) else { return Vec::new() };
    let here = in_machine(question, answer, machine);
    let window = making::window(&file.machine);
    let mut open: BTreeMap<usize, u32> = answer.open[machine].iter().copied().collect();
    let free = free(asked, &here, &open);
    let mut wishes = Vec::new();
    for (seat, of) in question.seats.iter().enumerate().filter(|(_, seat)| seat.machine == machine) {
        let role = asked.seats[seat].1;
        let Some(kind) = file.roles.iter().find(|known| Some(known.id) == role).map(|role| role.kind) else { continue };
        let filled =
            here.iter().filter(|(spare, option)| question.spares[*spare].options[*option].seat == seat).count();
        let count = of.count.saturating_sub(filled as u32);
        if count == 0 {
            continue;
        }
        let (needed, offered) = usual(asked, kind);
        let plugs_into: Vec<String> = free.iter().filter(|id| needed.contains(*id)).cloned().collect();
        let mut must_offer = Vec::new();
        open.retain(|need, waiting| {
            let gives = question.takes[*need].iter().any(|offer| offered.contains(&question.connectors[*offer]));
            if gives {
                must_offer.push((question.connectors[*need].clone(), *waiting));
            }
            !gives
        });
        let board = here.iter().map(|(spare, _)| &asked.pieces[*spare]).find(|piece| piece.kind() == Kind::Mainboard);
        let core_v = board.filter(|_| kind == Kind::Processor).and_then(core_voltage);
        let wish = Wish {
            machine: file.machine.id,
            role,
            required: of.required,
            count,
            kind: Some(kind),
            plugs_into,
            must_offer,
            core_v,
            window,
            waits: Vec::new(),
        };
        wishes.push(wish);
    }
    for (need, count) in open {
        let waits =
            |(spare, _): &&(usize, usize)| question.spares[*spare].needs.iter().any(|(known, _)| *known == need);
        wishes.push(Wish {
            machine: file.machine.id,
            role: None,
            required: true,
            count: 1,
            kind: None,
            plugs_into: Vec::new(),
            must_offer: vec![(question.connectors[need].clone(), count)],
            core_v: None,
            window: None,
            waits: here.iter().filter(waits).map(|(spare, _)| asked.parts[*spare]).collect(),
        });
    }
    wishes
}

/// Connectors, as needs, that something free in the machine would take.
fn free(asked: &Asked, here: &[(usize, usize)], open: &BTreeMap<usize, u32>) -> BTreeSet<String> {
    let question = &asked.question;
    let sum = |of: fn(&super::question::Spare) -> &Vec<(usize, u32)>, connector: usize| -> u32 {
        let all = here.iter().flat_map(|(spare, _)| of(&question.spares[*spare]));
        all.filter(|(known, _)| *known == connector).map(|(_, count)| count).sum()
    };
    let is_free = |need: &usize| {
        // A need is free to come when all that takes it is not held by as many needs already; counted together with
        // the other needs that the same offers take.
        let takers = &question.takes[*need];
        let offered: u32 = takers.iter().map(|offer| sum(|spare| &spare.offers, *offer)).sum();
        let rivals =
            (0..question.takes.len()).filter(|other| question.takes[*other].iter().any(|offer| takers.contains(offer)));
        let needed: u32 = rivals
            .map(|other| {
                sum(|spare| &spare.needs, other)
                    - open.get(&other).copied().unwrap_or_default().min(sum(|spare| &spare.needs, other))
            })
            .sum();
        offered > needed
    };
    (0..question.connectors.len()).filter(is_free).map(|need| question.connectors[need].clone()).collect()
}

/// What designs of a kind need and offer, as the logbook knows them.
fn usual(asked: &Asked, kind: Kind) -> (BTreeSet<String>, BTreeSet<String>) {
    let rows = asked.logbook.designs.iter().filter(|file| file.design.kind == kind).flat_map(|file| &file.connectors);
    let (offers, needs): (Vec<_>, Vec<_>) = rows.partition(|row| row.side == Side::Offers);
    let names =
        |rows: Vec<&crate::record::DesignConnector>| rows.into_iter().map(|row| row.connector.clone()).collect();
    (names(needs), names(offers))
}

/// The core voltages that a board gives.
fn core_voltage(board: &crate::assess::fit::Piece) -> Option<(f64, f64)> {
    let range = board.figure(Figure::CoreVoltageLeastV).zip(board.figure(Figure::CoreVoltageMostV));
    let each = &board.model.volts.each;
    let least = each.iter().copied().reduce(f64::min);
    range.or_else(|| least.zip(each.iter().copied().reduce(f64::max)))
}
