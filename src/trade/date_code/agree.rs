//! Which readings of several markings agree best.
//!
//! Each reading may be the time at which the part was made (an anchor). A set of readings costs what speaks against
//! each of them plus its distance from the anchor, both in weeks; a reading is kept when the cheapest set that has
//! it costs little more than the cheapest set with another reading of the same marking.

use chrono::Datelike;

use super::{Kept, MarkingText, Reading, Scheme};

/// A reading stays as long as it is no dearer than this: one year's distance, or a scheme twice less usual.
const MARGIN: u32 = 52;
/// A reading this much less likely than the marking's best is no anchor; it may still agree with one.
const ANCHOR_MARGIN: u32 = 104;
/// Past five years all distances are equally wrong, so that one stray marking cannot pull the rest.
const FARTHEST: u32 = 260;

/// One reading of one marking, in days of the common era.
struct Choice {
    marking: usize,
    first: i32,
    last: i32,
    cost: u32,
    free: bool,
}

/// The readings of all markings that were on the part when it was made.
pub(super) struct Weighing {
    /// The markings that take part.
    takes_part: Vec<bool>,
    anchors: Vec<Anchor>,
    /// For each anchor, each marking's cheapest cost with it.
    cheapest: Vec<u32>,
}

struct Anchor {
    choice: Choice,
    /// What the cheapest readings of all markings cost with it.
    total: u32,
}

/// A copyright year lies before the making by nature, so being early costs nothing.
pub(super) fn is_free(reading: &Reading) -> bool {
    reading.scheme == Scheme::Copyright
}

impl Weighing {
    pub fn new(texts: &[MarkingText], kept: &[Kept]) -> Self {
        let mut choices = Vec::with_capacity(kept.len() * 8);
        let mut anchors = Vec::with_capacity(kept.len() * 4);
        let mut takes_part = vec![false; kept.len()];
        for (marking, of_marking) in kept.iter().enumerate() {
            // The readings in question stand cheapest first.
            let Some(best) = of_marking.kept().first().filter(|_| texts[marking].original != Some(false)) else {
                continue;
            };
            takes_part[marking] = true;
            choices.extend(of_marking.kept().iter().map(|reading| Choice::new(marking, reading)));
            let likely = of_marking.kept().iter().take_while(|reading| reading.cost <= best.cost + ANCHOR_MARGIN);
            anchors.extend(likely.map(|reading| Anchor { choice: Choice::new(marking, reading), total: 0 }));
        }
        let mut cheapest = vec![u32::MAX; anchors.len() * kept.len()];
        for (anchor, row) in anchors.iter_mut().zip(cheapest.chunks_exact_mut(kept.len().max(1))) {
            for choice in &choices {
                let cost = choice.cost + choice.weeks_from(&anchor.choice);
                row[choice.marking] = row[choice.marking].min(cost);
            }
            anchor.total = row.iter().filter(|cost| **cost != u32::MAX).sum();
        }
        Self { takes_part, anchors, cheapest }
    }

    /// Sorts each marking's readings in question by what the cheapest set with them costs, and counts those to keep.
    pub fn keep(&self, kept: &mut [Kept]) {
        let mut costs: Vec<(u32, Reading)> = Vec::new();
        for (marking, of_marking) in kept.iter_mut().enumerate() {
            costs.clear();
            costs.extend(of_marking.kept().iter().map(|reading| (self.cost(marking, reading), *reading)));
            costs.sort_by_key(|(cost, _)| *cost);
            let Some(best) = costs.first().map(|(cost, _)| *cost) else { continue };
            of_marking.kept_count = costs.iter().take_while(|(cost, _)| *cost <= best + MARGIN).count();
            for (place, (_, reading)) in of_marking.readings.iter_mut().zip(&costs) {
                *place = *reading;
            }
        }
    }

    /// What the cheapest set of readings costs that has this reading of this marking: its own cost, where there is
    /// no other marking, or where it is not original, so that the rest says nothing about it.
    fn cost(&self, marking: usize, reading: &Reading) -> u32 {
        if !self.takes_part[marking] {
            return reading.cost;
        }
        let own = Choice::new(marking, reading);
        let rows = self.anchors.iter().zip(self.cheapest.chunks_exact(self.takes_part.len().max(1)));
        let others = rows.filter(|(anchor, _)| anchor.choice.marking != marking);
        let rest = others.map(|(anchor, row)| anchor.total - row[marking] + own.weeks_from(&anchor.choice));
        reading.cost + rest.min().unwrap_or(0)
    }
}

impl Choice {
    fn new(marking: usize, reading: &Reading) -> Self {
        Self {
            marking,
            first: reading.span.first.num_days_from_ce(),
            last: reading.span.last.num_days_from_ce(),
            cost: reading.cost,
            free: is_free(reading),
        }
    }

    fn weeks_from(&self, anchor: &Self) -> u32 {
        let days = if self.first > anchor.last {
            self.first - anchor.last
        } else if self.free {
            0
        } else {
            (anchor.first - self.last).max(0)
        };
        (days as u32).div_ceil(7).min(FARTHEST)
    }
}
