//! Which readings of several markings agree best.
//!
//! Each reading may be the time at which the part was made (an anchor). A set of readings costs what speaks against
//! each of them plus its distance from the anchor, both in weeks; a reading is kept when the cheapest set that has
//! it costs little more than the cheapest set with another reading of the same marking.

use chrono::Datelike;

use super::{Kept, MarkingText, Reading, Scheme};

/// A reading stays as long as it is no dearer than this: one year's distance, or a scheme twice less usual.
const MARGIN: u32 = 52;
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
    choices: Vec<Choice>,
    /// For each anchor (a place in `choices`), each marking's cheapest cost with it.
    cheapest: Vec<u32>,
    markings: usize,
}

/// A copyright year lies before the making by nature, so being early costs nothing.
pub(super) fn is_free(reading: &Reading) -> bool {
    reading.scheme == Scheme::Copyright
}

impl Weighing {
    pub fn new(texts: &[MarkingText], kept: &[Kept]) -> Self {
        let mut choices = Vec::with_capacity(kept.len() * 4);
        for (marking, of_marking) in kept.iter().enumerate() {
            if texts[marking].original == Some(false) {
                continue;
            }
            choices.extend(of_marking.readings.iter().map(|reading| Choice::new(marking, reading)));
        }
        let markings = kept.len();
        let mut cheapest = vec![u32::MAX; choices.len() * markings];
        for (anchor, row) in choices.iter().zip(cheapest.chunks_exact_mut(markings.max(1))) {
            for choice in &choices {
                let cost = choice.cost + choice.weeks_from(anchor);
                row[choice.marking] = row[choice.marking].min(cost);
            }
        }
        Self { choices, cheapest, markings }
    }

    /// Sorts each marking's readings by what the cheapest set with them costs, and counts those to keep.
    pub fn keep(&self, kept: &mut [Kept]) {
        let mut costs: Vec<(u32, Reading)> = Vec::new();
        for (marking, of_marking) in kept.iter_mut().enumerate() {
            costs.clear();
            costs.extend(of_marking.readings.iter().map(|reading| (self.cost(marking, reading), *reading)));
            costs.sort_by_key(|(cost, _)| *cost);
            let Some(best) = costs.first().map(|(cost, _)| *cost) else { continue };
            of_marking.kept_count = costs.iter().take_while(|(cost, _)| *cost <= best + MARGIN).count();
            of_marking.readings.clear();
            of_marking.readings.extend(costs.iter().map(|(_, reading)| *reading));
        }
    }

    /// What the cheapest set of readings costs that has this reading of this marking: its own cost, where there is
    /// no other marking.
    fn cost(&self, marking: usize, reading: &Reading) -> u32 {
        if self.choices.iter().all(|choice| choice.marking != marking) {
            // Not original: the rest says nothing about it.
            return reading.cost;
        }
        let own = Choice::new(marking, reading);
        let rows = self.choices.iter().zip(self.cheapest.chunks_exact(self.markings.max(1)));
        let others = rows.filter(|(anchor, _)| anchor.marking != marking).map(|(anchor, row)| {
            let rest = row.iter().enumerate().filter(|(at, cost)| *at != marking && **cost != u32::MAX);
            rest.map(|(_, cost)| *cost).sum::<u32>() + own.weeks_from(anchor)
        });
        reading.cost + others.min().unwrap_or(0)
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
