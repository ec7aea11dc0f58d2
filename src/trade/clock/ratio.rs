//! A ratio of small whole numbers between two clocks.

use std::fmt;

use serde::{Deserialize, Serialize};

/// `times`/`by` of another clock: 2/3 of 100 MHz is 66⅔ MHz. Neither is ever 0 when parsed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Ratio {
    /// Multiplied by.
    pub times: u8,
    /// Divided by.
    pub by: u8,
}

impl Ratio {
    /// This share of a clock.
    pub fn of(self, mhz: f64) -> f64 {
        mhz * f64::from(self.times) / f64::from(self.by)
    }

    /// Reads "2/3", "1/2", or a bare divider: "3" is one third. 1 to 16 either side.
    pub fn parse(text: &str) -> Option<Self> {
        let (times, by) = text.trim().split_once('/').unwrap_or(("1", text));
        let whole = |part: &str| part.trim().parse::<u8>().ok().filter(|number| (1..=16).contains(number));
        Some(Self { times: whole(times)?, by: whole(by)? })
    }
}

impl fmt::Display for Ratio {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}/{}", self.times, self.by)
    }
}
