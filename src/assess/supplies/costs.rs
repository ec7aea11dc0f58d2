//! What a part or a machine cost: bought for, spent on in materials, hours at it.

use std::collections::HashMap;
use std::hash::BuildHasher;

use crate::assess::MachineAnswers;
use crate::record::{CapacitorId, KitState, Logbook, LotId, PartFile, PartId, WorkState};

/// Sums for one part, or over a machine's.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Costs {
    /// In hundredths of the logbook's currency, as far as prices are told.
    pub bought_cents: i64,
    /// Parts of which nobody told what they were bought for.
    pub unpriced_parts: usize,
    /// Materials that went into work, and capacitors of kits that were used up, in hundredths of the logbook's
    /// currency, as far as prices are told.
    pub spent_cents: i64,
    /// Materials and capacitors used of which nobody told the price.
    pub unpriced_uses: usize,
    /// Hands-on minutes of work that is done.
    pub minutes: u32,
}

impl Costs {
    /// Both together.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        Self {
            bought_cents: self.bought_cents + other.bought_cents,
            unpriced_parts: self.unpriced_parts + other.unpriced_parts,
            spent_cents: self.spent_cents + other.spent_cents,
            unpriced_uses: self.unpriced_uses + other.unpriced_uses,
            minutes: self.minutes + other.minutes,
        }
    }
}

/// What each part cost.
pub fn part_costs(logbook: &Logbook) -> HashMap<PartId, Costs> {
    let shares = lot_shares(logbook);
    let pieces = pieces(logbook);
    let of = |file: &PartFile| {
        let part = &file.part;
        let bought = part.price_cents.or_else(|| part.lot.and_then(|lot| shares.get(&lot).copied()));
        let mut costs = Costs {
            bought_cents: bought.unwrap_or(0),
            unpriced_parts: usize::from(bought.is_none()),
            minutes: file
                .work
                .iter()
                .filter(|work| work.state == WorkState::Done)
                .filter_map(|work| work.minutes)
                .sum(),
            ..Costs::default()
        };
        for price in file.capacitors.iter().filter_map(|one| pieces.get(&one.position.id)).flatten() {
            match price {
                Some(cents) => costs.spent_cents += cents,
                None => costs.unpriced_uses += 1,
            }
        }
        for used in &file.uses {
            match logbook.material(used.material).and_then(|known| known.price_cents) {
                Some(cents) => costs.spent_cents += (used.amount * cents as f64).round() as i64,
                None => costs.unpriced_uses += 1,
            }
        }
        (part.id, costs)
    };
    logbook.parts.iter().map(|file| of(file)).collect()
}

/// What a machine's parts cost together.
pub fn machine_costs<S: BuildHasher>(costs: &HashMap<PartId, Costs, S>, machine: &MachineAnswers) -> Costs {
    let members = machine.members.iter().filter_map(|part| costs.get(part));
    members.fold(Costs::default(), |sum, of| sum.and(*of))
}

/// What is left of each lot's price once the prices of its parts are taken off, shared out over those without one.
fn lot_shares(logbook: &Logbook) -> HashMap<LotId, i64> {
    let mut told: HashMap<LotId, (i64, i64)> = HashMap::new();
    for part in logbook.parts.iter().map(|file| &file.part) {
        let Some(lot) = part.lot else { continue };
        let (sum, without) = told.entry(lot).or_default();
        match part.price_cents {
            Some(cents) => *sum += cents,
            None => *without += 1,
        }
    }
    let share = |lot: &std::sync::Arc<crate::record::LotFile>| {
        let (sum, without) = told.get(&lot.lot.id).copied()?;
        let price = lot.lot.price_cents?;
        (without > 0).then(|| (lot.lot.id, (price - sum).max(0) / without))
    };
    logbook.lots.iter().filter_map(share).collect()
}

/// The price of each piece that a used-up kit put at a position.
fn pieces(logbook: &Logbook) -> HashMap<CapacitorId, Vec<Option<i64>>> {
    let mut pieces: HashMap<CapacitorId, Vec<Option<i64>>> = HashMap::new();
    for file in logbook.kits.iter().filter(|file| file.kit.state == KitState::Used) {
        for line in &file.lines {
            let of_stock = line.line.material.and_then(|id| logbook.material(id)).and_then(|known| known.price_cents);
            let price = line.line.price_cents.or(of_stock);
            for position in &line.positions {
                pieces.entry(position.capacitor).or_default().push(price);
            }
        }
    }
    pieces
}
