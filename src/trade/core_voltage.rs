//! Core voltages: how far from what a processor asks one may be.

use super::Source;

/// Off by no more than this share of what is asked, a core voltage is what is asked: regulators and prints round.
const EXACT_SHARE: f64 = 0.02;
/// Off by more than this share it is another voltage.
const MOST_SHARE: f64 = 0.05;
/// Below this many volts, off by more than [`MOST_OFF_V`] it is another voltage as well.
const LOW_V: f64 = 3.0;
const MOST_OFF_V: f64 = 0.1;
/// What arithmetic may leave behind between two voltages that are the same.
const SAME_V: f64 = 1e-9;

/// How a core voltage stands to what is asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Nearness {
    /// What is asked.
    Same,
    /// Within what the processor stands.
    Near,
    /// Another voltage.
    Other,
}

/// How a core voltage stands to the one that is asked, both in volts.
///
/// From 3 V up 5 %. Split-voltage processors stand less: 2.7 to 2.9 V at 2.8 V (3.6 %), 2.1 to 2.3 V at 2.2 V; so below
/// 3 V no more than 0.1 V. From memory of the processors' data sheets; 2 % for "the same": common practice, no source.
pub fn nearness(asked_v: f64, given_v: f64) -> Nearness {
    let off_v = (given_v - asked_v).abs();
    let most_off_v = if asked_v < LOW_V { (MOST_SHARE * asked_v).min(MOST_OFF_V) } else { MOST_SHARE * asked_v };
    if off_v <= EXACT_SHARE * asked_v + SAME_V {
        Nearness::Same
    } else if off_v <= most_off_v + SAME_V {
        Nearness::Near
    } else {
        Nearness::Other
    }
}

/// Where the steps come from.
pub fn source() -> Source {
    Source::memory(
        "processor data sheets: 0.1 V at 2.8 V and 2.2 V, 5 % from 3 V up; 2 % off counts as the same by common practice",
    )
}
