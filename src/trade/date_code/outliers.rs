//! Markings that are later than the rest, than the design's years, or known not to be original.

use chrono::NaiveDate;

use super::agree::is_free;
use super::{Conflict, Kept, MarkingText, Outlier, OutlierCause, Span, Surface};

/// Parts are put together from components of about half a year; what is later than that stands out.
const LATE_WEEKS: i64 = 26;
/// With one marking against one, only a whole year stands out.
const LATE_WEEKS_OF_TWO: i64 = 52;

/// In the order of the markings.
pub(super) fn outliers(markings: &[MarkingText], kept: &[Kept], conflicts: &[Conflict]) -> Vec<Outlier> {
    // A copyright year bounds from below and is early by nature: it is no member of the group.
    let mut dated: Vec<(NaiveDate, NaiveDate, usize)> = Vec::with_capacity(kept.len());
    for (at, marking) in kept.iter().enumerate() {
        if markings[at].original != Some(false)
            && let (Some(first), Some(chosen)) = (marking.earliest(), marking.chosen())
            && !is_free(chosen)
        {
            dated.push((first, chosen.span.last, at));
        }
    }
    dated.sort_unstable();
    let total: i32 = dated.iter().map(|(.., at)| weight(&markings[*at])).sum();
    let (mut before, mut latest, mut found) = (0, NaiveDate::MIN, Vec::new());
    for (nth, (first, last, at)) in dated.iter().enumerate() {
        let weeks = |first: NaiveDate| Span::day(first).weeks_from(Span::day(latest));
        let late = nth > 0
            && match before * 2 {
                twice if twice > total => weeks(*first) > LATE_WEEKS,
                twice if twice == total && dated.len() == 2 => weeks(*first) > LATE_WEEKS_OF_TWO,
                _ => false,
            };
        if late {
            let later = dated[nth..].iter().filter(|(.., at)| markings[*at].original.is_none());
            found.extend(later.map(|(first, _, at)| Outlier {
                marking: *at,
                weeks: weeks(*first),
                cause: OutlierCause::ReplacedOrRemarked,
            }));
            break;
        }
        before += weight(&markings[*at]);
        latest = latest.max(*last);
    }
    for (at, marking) in markings.iter().enumerate() {
        if marking.original == Some(false)
            && let Some(first) = kept[at].earliest()
        {
            let weeks = if dated.is_empty() { 0 } else { Span::day(first).weeks_from(Span::day(latest)) };
            found.push(Outlier { marking: at, weeks, cause: OutlierCause::Replaced });
        }
    }
    after_design(markings, &dated, conflicts, &mut found);
    found.sort_unstable_by_key(|outlier| outlier.marking);
    found
}

/// What may have been replaced and is later than the design's last year, on a part that at least as much dates within
/// its years.
fn after_design(
    markings: &[MarkingText],
    dated: &[(NaiveDate, NaiveDate, usize)],
    conflicts: &[Conflict],
    found: &mut Vec<Outlier>,
) {
    let late: Vec<Outlier> = conflicts
        .iter()
        .filter(|conflict| conflict.weeks > 0 && markings[conflict.marking].original.is_none())
        .filter(|conflict| found.iter().all(|outlier| outlier.marking != conflict.marking))
        .map(|conflict| Outlier { marking: conflict.marking, weeks: conflict.weeks, cause: OutlierCause::AfterDesign })
        .collect();
    let fits = |at: usize| conflicts.iter().all(|conflict| conflict.marking != at);
    let fitting: i32 = dated.iter().filter(|(.., at)| fits(*at)).map(|(.., at)| weight(&markings[*at])).sum();
    let later: i32 = late.iter().map(|outlier| weight(&markings[outlier.marking])).sum();
    if fitting > 0 && fitting >= later {
        found.extend(late);
    }
}

/// Capacitors and stickers are what is replaced: they weigh half of what cannot be.
fn weight(marking: &MarkingText) -> i32 {
    if matches!(marking.surface, Surface::Capacitor | Surface::Sticker) { 1 } else { 2 }
}
