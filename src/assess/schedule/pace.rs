//! How long work really takes in this logbook, beside what the rules say.

use std::collections::HashMap;

use crate::record::{Logbook, WorkState};
use crate::rules::Rules;

/// Pieces of finished work from which on their own figures hold (our own rule).
pub const ENOUGH: usize = 8;

/// Real minutes to the rule's: optimistic, likely and pessimistic, while too little is finished (our own rule).
pub const OWN_RULE: (f64, f64, f64) = (0.7, 1.0, 2.5);

/// The quantile of the standard normal distribution below which nine tenths lie: between its negative and itself lie
/// 80 %. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1 (1.28).
pub const Z_80: f64 = 1.281_551_565_544_600_4;

/// A mean with its standard deviation.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    pub mean: f64,
    /// Standard deviation, 0 or more.
    pub deviation: f64,
    /// How many figures it rests on; 0 for an assumption.
    pub samples: usize,
}

impl Spread {
    /// Mean (a + 4 m + b) / 6 and deviation (b − a) / 6 of an optimistic, a likely and a pessimistic figure. Source:
    /// Malcolm, Roseboom, Clark, Fazar: Operations Research 7 (1959), as every textbook repeats it.
    pub fn three_point((optimistic, likely, pessimistic): (f64, f64, f64)) -> Self {
        let mean = (optimistic + 4.0 * likely + pessimistic) / 6.0;
        Self { mean, deviation: (pessimistic - optimistic) / 6.0, samples: 0 }
    }

    /// Mean and sample standard deviation (divided by n − 1); `None` for fewer than two figures.
    pub fn of(figures: &[f64]) -> Option<Self> {
        if figures.len() < 2 {
            return None;
        }
        let mean = figures.iter().sum::<f64>() / figures.len() as f64;
        let squares: f64 = figures.iter().map(|figure| (figure - mean).powi(2)).sum();
        let deviation = (squares / (figures.len() - 1) as f64).sqrt();
        Some(Self { mean, deviation, samples: figures.len() })
    }
}

/// What the pace of a piece of work rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PaceSource {
    /// Finished work of the same sitting.
    Sitting,
    /// All finished work.
    Overall,
    /// Too little is finished: [`OWN_RULE`].
    OwnRule,
}

/// Real minutes to the rule's, by sitting and overall.
#[derive(Clone, Debug)]
pub struct Pace {
    overall: Option<Spread>,
    by_sitting: HashMap<String, Spread>,
}

impl Pace {
    /// From all work that was done by a rule with its minutes noted.
    pub fn of(logbook: &Logbook, rules: &Rules) -> Self {
        let mut all = Vec::new();
        let mut by_sitting: HashMap<&str, Vec<f64>> = HashMap::new();
        for work in logbook.parts.iter().flat_map(|file| &file.work).filter(|work| work.state == WorkState::Done) {
            if let (Some(minutes), Some(rule)) = (work.minutes.filter(|minutes| *minutes > 0), rules.work(&work.rule)) {
                let ratio = f64::from(minutes) / f64::from(rule.minutes.max(1));
                all.push(ratio);
                by_sitting.entry(rule.sitting.as_str()).or_default().push(ratio);
            }
        }
        let enough = |figures: &[f64]| if figures.len() < ENOUGH { None } else { Spread::of(figures) };
        let spreads = by_sitting.into_iter().filter_map(|(name, figures)| Some((name.to_owned(), enough(&figures)?)));
        Self { by_sitting: spreads.collect(), overall: enough(&all) }
    }

    /// The pace of work of a sitting, and what it rests on.
    pub fn of_sitting(&self, sitting: &str) -> (Spread, PaceSource) {
        match (self.by_sitting.get(sitting), self.overall) {
            (Some(own), _) => (*own, PaceSource::Sitting),
            (None, Some(overall)) => (overall, PaceSource::Overall),
            (None, None) => (Spread::three_point(OWN_RULE), PaceSource::OwnRule),
        }
    }

    /// The pace of all work, and what it rests on.
    pub fn overall(&self) -> (Spread, PaceSource) {
        self.of_sitting("")
    }

    /// The sittings that have figures of their own.
    pub fn sittings(&self) -> impl Iterator<Item = (&str, Spread)> {
        self.by_sitting.iter().map(|(name, spread)| (name.as_str(), *spread))
    }
}

/// Minutes of many pieces of one pace, as they add up.
#[derive(Clone, Copy, Debug, Default)]
struct Load {
    minutes: f64,
    squares: f64,
    deviation: f64,
    samples: usize,
}

/// The deviation of a sum of pieces. Pieces of one pace differ each for itself, and all of them together by as much as
/// the mean of their pace is uncertain: deviation / √n, the whole deviation where it is only assumed.
#[derive(Clone, Debug, Default)]
pub struct SumOfPieces {
    loads: HashMap<Option<String>, Load>,
}

impl SumOfPieces {
    /// Adds a piece of so many minutes by the rules.
    pub fn add(&mut self, minutes: f64, sitting: &str, pace: &Pace) {
        let (spread, source) = pace.of_sitting(sitting);
        let key = (source == PaceSource::Sitting).then(|| sitting.to_owned());
        let load = self.loads.entry(key).or_default();
        load.minutes += minutes;
        load.squares += minutes * minutes;
        (load.deviation, load.samples) = (spread.deviation, spread.samples);
    }

    /// Standard deviation of all minutes added.
    pub fn deviation(&self) -> f64 {
        let variance: f64 = self
            .loads
            .values()
            .map(|load| {
                let each = load.squares * load.deviation.powi(2);
                let together = (load.minutes * load.deviation).powi(2) / load.samples.max(1) as f64;
                each + together
            })
            .sum();
        variance.sqrt()
    }
}
