//! Rust by area: ISO 4628-3 and ASTM D610 grades from the share of a surface and back, and how fast it spreads.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

use crate::text;
use crate::trade::Source;

/// Reference areas of ISO 4628-3, Ri 0 to Ri 5, in per cent. Its Ri 5 picture shows 40 to 50; the lower end counts here.
const RI_PERCENT: [f64; 6] = [0.0, 0.05, 0.5, 1.0, 8.0, 40.0];
/// Upper areas of ASTM D610-08, table 1, grades 10 down to 1, in per cent; more than the last is grade 0.
const D610_PERCENT: [f64; 10] = [0.01, 0.03, 0.1, 0.3, 1.0, 3.0, 10.0, 16.0, 33.0, 50.0];

/// Source of the ISO 4628-3 reference areas.
pub const ISO_4628_3: Source = Source::published(
    "ISO 4628-3 reference areas as tabled by coatingsradar.com; grading between them is our own rule",
);
/// Source of the ASTM D610 bounds.
pub const ASTM_D610: Source = Source::published("ASTM D610-08, table 1");

/// How the rust is distributed, as ASTM D610-08 letters it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Distribution {
    /// S: few large spots.
    Spots,
    /// G: evenly over the surface.
    General,
    /// P: pinpoints.
    Pinpoint,
    /// H: several of these.
    Hybrid,
}

impl Distribution {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Spots, Self::General, Self::Pinpoint, Self::Hybrid];

    /// The letter behind the grade, as in "6-G".
    pub fn letter(self) -> char {
        match self {
            Self::Spots => 'S',
            Self::General => 'G',
            Self::Pinpoint => 'P',
            Self::Hybrid => 'H',
        }
    }
}

/// Both grades of one share.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Grades {
    /// Share of the surface in per cent.
    pub share_percent: f64,
    /// ISO 4628-3: 0 (none) to 5.
    pub ri: u8,
    /// ASTM D610: 10 (none) down to 0.
    pub d610: u8,
    /// Whether the share is just that of an ISO reference picture; anything between is graded by our own rule.
    pub at_reference: bool,
}

/// A share that is no share.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum CorrosionError {
    /// Below 0, above 100 or not a number.
    #[error("{}", text!("a share of {share} % does not lie between 0 and 100", share = _0))]
    Share(f64),
    /// The second look is not later than the first.
    #[error("{}", text!("the second look is not later than the first"))]
    Order,
}

/// Both grades of a share in per cent, 0 to 100.
///
/// ASTM D610 gives each grade an upper bound, which belongs to the better grade. ISO 4628-3 shows pictures at
/// reference areas and says nothing of what lies between. Here a share between two pictures gets the worse one's
/// grade: the same rule as ASTM's, so that both grades of one surface move together, and a doubt is settled on the
/// side of looking again.
///
/// # Errors
/// [`CorrosionError::Share`].
pub fn grades(share_percent: f64) -> Result<Grades, CorrosionError> {
    let share = checked(share_percent)?;
    let ri = RI_PERCENT.iter().position(|reference| share <= *reference).unwrap_or(5) as u8;
    let d610 = 10 - D610_PERCENT.iter().position(|bound| share <= *bound).unwrap_or(10) as u8;
    Ok(Grades { share_percent, ri, d610, at_reference: RI_PERCENT.contains(&share) })
}

/// The shares in per cent that an ISO grade stands for: over the first, up to and with the second. `None` past Ri 5.
pub fn shares_of_ri(ri: u8) -> Option<(f64, f64)> {
    match ri {
        0 => Some((0.0, 0.0)),
        1..=4 => Some((RI_PERCENT[usize::from(ri) - 1], RI_PERCENT[usize::from(ri)])),
        5 => Some((RI_PERCENT[4], 100.0)),
        _ => None,
    }
}

/// The shares in per cent that an ASTM D610 grade stands for: over the first, up to and with the second. `None` past 10.
pub fn shares_of_d610(grade: u8) -> Option<(f64, f64)> {
    match grade {
        10 => Some((0.0, D610_PERCENT[0])),
        1..=9 => Some((D610_PERCENT[9 - usize::from(grade)], D610_PERCENT[10 - usize::from(grade)])),
        0 => Some((D610_PERCENT[9], 100.0)),
        _ => None,
    }
}

/// The ASTM D610 grade that ISO 4628-3 puts beside one of its own: 10, 8, 6, 6, 4, 1 for Ri 0 to 5.
pub fn d610_beside_ri(ri: u8) -> Option<u8> {
    [10, 8, 6, 6, 4, 1].get(usize::from(ri)).copied()
}

/// How a share changed between two looks.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Change {
    /// Days between.
    pub days: i64,
    /// Percentage points of the surface a year; negative when less was seen.
    pub points_per_year: f64,
    /// Whether the ISO grade got worse.
    pub grade_worse: bool,
}

/// How fast rust spreads between two looks, each a day and a share in per cent. A year is 365.25 days.
///
/// Estimates by eye scatter: a change within one grade says little, however fast it works out.
///
/// # Errors
/// [`CorrosionError`]: a share outside 0 to 100, the second day not after the first.
pub fn change(first: (NaiveDate, f64), second: (NaiveDate, f64)) -> Result<Change, CorrosionError> {
    let (before, after) = (grades(first.1)?, grades(second.1)?);
    let days = (second.0 - first.0).num_days();
    if days <= 0 {
        return Err(CorrosionError::Order);
    }
    Ok(Change { days, points_per_year: (second.1 - first.1) * 365.25 / days as f64, grade_worse: after.ri > before.ri })
}

fn checked(share_percent: f64) -> Result<f64, CorrosionError> {
    if (0.0..=100.0).contains(&share_percent) { Ok(share_percent) } else { Err(CorrosionError::Share(share_percent)) }
}
