//! Photographs that belong together by the time they were taken: one part after the other under the camera.

use chrono::{NaiveDateTime, TimeDelta};

use super::TakenAt;

/// A shorter gap never parts two photographs. Common practice, no source.
pub const SHORTEST_GAP: TimeDelta = TimeDelta::seconds(45);
/// So many times the median gap part two photographs. Common practice, no source.
pub const TIMES_MEDIAN: i32 = 4;
/// A longer gap always parts two photographs. Common practice, no source.
pub const LONGEST_GAP: TimeDelta = TimeDelta::minutes(30);

/// Groups of photographs, each as places in `taken`, in order of time; those without a time come last, as one group.
///
/// A gap parts two photographs when it is longer than [`SHORTEST_GAP`] and than [`TIMES_MEDIAN`] times the median gap,
/// or longer than [`LONGEST_GAP`]. Clocks are brought together by their offsets where every photograph tells its own.
pub fn groups(taken: &[Option<TakenAt>]) -> Vec<Vec<usize>> {
    let known = || taken.iter().flatten();
    let have_offsets = known().all(|taken| taken.offset.is_some());
    let time = |taken: TakenAt| -> NaiveDateTime {
        let instant = if have_offsets { taken.instant() } else { None };
        instant.map_or(taken.local, |instant| instant.naive_utc())
    };
    let mut shots: Vec<(NaiveDateTime, usize)> =
        taken.iter().enumerate().filter_map(|(place, taken)| Some((time((*taken)?), place))).collect();
    shots.sort_unstable();
    let gaps: Vec<TimeDelta> = shots.windows(2).map(|pair| pair[1].0 - pair[0].0).collect();
    let most = longest_within(&gaps);
    let mut groups: Vec<Vec<usize>> = Vec::new();
    for (at, (_, place)) in shots.iter().enumerate() {
        match groups.last_mut() {
            Some(group) if gaps[at - 1] <= most => group.push(*place),
            _ => groups.push(vec![*place]),
        }
    }
    let timeless: Vec<usize> = (0..taken.len()).filter(|place| taken[*place].is_none()).collect();
    groups.extend((!timeless.is_empty()).then_some(timeless));
    groups
}

/// The longest gap that does not part.
fn longest_within(gaps: &[TimeDelta]) -> TimeDelta {
    let mut sorted = gaps.to_vec();
    sorted.sort_unstable();
    let median = sorted.get(sorted.len() / 2).copied().unwrap_or_default();
    (median * TIMES_MEDIAN).max(SHORTEST_GAP).min(LONGEST_GAP)
}
