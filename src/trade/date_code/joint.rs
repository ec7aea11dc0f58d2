//! All of a part's markings read together: which readings agree, since when the part can exist, what stands out.
//!
//! The part cannot have been finished before the latest marking that was on it when it left its maker. How far apart
//! markings of one part usually lie is common practice, no source.

use chrono::{Days, NaiveDate};
use serde::{Deserialize, Serialize};

use super::agree::{Weighing, is_free};
use super::{Context, Reading, Scheme, Span, Surface, Unreadable, read};
use crate::{counted, text};

/// Parts are put together from components of about half a year; what is later than that stands out.
const LATE_WEEKS: i64 = 26;
/// With one marking against one, only a whole year stands out.
const LATE_WEEKS_OF_TWO: i64 = 52;
/// A part is usually finished within half a year of its latest component.
const FINISHED_DAYS: u64 = 26 * 7;

/// One marking as it is printed, and what is known of it.
#[derive(Clone, Copy, Debug, Default)]
pub struct MarkingText<'a> {
    pub text: &'a str,
    pub surface: Surface,
    /// Whether it was there when the part left its maker; `None` when nobody knows.
    pub original: Option<bool>,
    /// The scheme that a restorer has settled on.
    pub settled: Option<Scheme>,
}

/// One marking, read beside the others.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Kept {
    /// The readings best first; the first [`Self::kept_count`] of them fit the other markings equally well or nearly.
    pub readings: Vec<Reading>,
    pub kept_count: usize,
    /// Why there is no reading.
    pub unreadable: Option<Unreadable>,
}

impl Kept {
    /// The readings that the other markings leave; empty when the marking cannot be read.
    pub fn kept(&self) -> &[Reading] {
        &self.readings[..self.kept_count]
    }

    /// The reading that agrees best.
    pub fn chosen(&self) -> Option<&Reading> {
        self.kept().first()
    }

    /// Whether readings are left that share no day.
    pub fn is_ambiguous(&self) -> bool {
        self.kept().iter().any(|reading| self.readings[0].span.overlap(reading.span).is_none())
    }

    /// The earliest day that any reading left allows.
    fn earliest(&self) -> Option<NaiveDate> {
        self.kept().iter().map(|reading| reading.span.first).min()
    }

    fn latest(&self) -> Option<NaiveDate> {
        self.kept().iter().map(|reading| reading.span.last).max()
    }
}

/// The day before which the part cannot have been finished, and what says so.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NotBefore {
    pub day: NaiveDate,
    pub cause: NotBeforeCause,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotBeforeCause {
    /// The marking at that place in the list.
    Marking(usize),
    /// The design's introduction.
    Design,
}

/// A marking later than the rest.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Outlier {
    /// Its place in the list.
    pub marking: usize,
    /// Whole weeks after the latest of the rest.
    pub weeks: i64,
    pub cause: OutlierCause,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum OutlierCause {
    /// The restorer knows that it is not original.
    Replaced,
    /// A replaced component, or a part that was marked again.
    ReplacedOrRemarked,
}

impl std::fmt::Display for OutlierCause {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::Replaced => text!("a replacement, by the record"),
            Self::ReplacedOrRemarked => text!("a replaced component, or a part marked again"),
        })
    }
}

/// How far the dates can be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Grade {
    /// No marking gives a date.
    None,
    /// One marking only, or markings that contradict each other.
    Low,
    /// Two that agree, or more with something left open.
    Fair,
    /// Three or more agree, each with one reading, and nothing stands out.
    Good,
}

/// A grade with the counts that it rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Confidence {
    pub grade: Grade,
    /// Markings that agree with each other.
    pub agreeing: usize,
    /// Markings that could be read.
    pub read: usize,
    /// Markings with more than one reading left.
    pub ambiguous: usize,
}

impl std::fmt::Display for Confidence {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let Self { grade, agreeing, read, ambiguous } = *self;
        f.write_str(&match (grade, read) {
            (Grade::None, _) => text!("none: no marking gives a date").to_owned(),
            (Grade::Low, 1) => text!("low: one marking only").to_owned(),
            (Grade::Low, _) => text!("low: {agreeing} of {read} markings agree", agreeing = agreeing, read = read),
            (Grade::Fair, _) => text!("fair: {agreeing} of {read} markings agree", agreeing = agreeing, read = read),
            (Grade::Good, _) => text!("good: {agreeing} of {read} markings agree", agreeing = agreeing, read = read),
        })?;
        if ambiguous > 0 {
            f.write_str("; ")?;
            f.write_str(&counted!(
                "{count} still has two readings or more",
                "{count} still have two readings or more",
                ambiguous
            ))?;
        }
        Ok(())
    }
}

/// What all markings of a part say together.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Joint {
    /// In the order given.
    pub markings: Vec<Kept>,
    pub not_before: Option<NotBefore>,
    pub outliers: Vec<Outlier>,
    /// When the part was probably finished.
    pub likely: Option<Span>,
    pub confidence: Confidence,
}

/// Reads a part's markings together; `design_years` are those in which its design was made.
pub fn joint(markings: &[MarkingText], design_years: Option<Span>) -> Joint {
    let mut kept: Vec<Kept> = markings.iter().map(|marking| alone(marking, design_years)).collect();
    Weighing::new(markings, &kept).keep(&mut kept);
    let outliers = outliers(markings, &kept);
    let counts = |at: usize| !outliers.iter().any(|outlier| outlier.marking == at);

    let by_marking = (0..kept.len())
        .filter(|at| counts(*at))
        .filter_map(|at| Some(NotBefore { day: kept[at].earliest()?, cause: NotBeforeCause::Marking(at) }))
        .max_by_key(|bound| bound.day);
    let by_design = design_years.map(|years| NotBefore { day: years.first, cause: NotBeforeCause::Design });
    // A marking on the design's first day is the better evidence, so it wins a draw.
    let not_before = by_design.into_iter().chain(by_marking).max_by_key(|bound| bound.day);

    let latest = (0..kept.len()).filter(|at| counts(*at)).filter_map(|at| kept[at].latest()).max();
    let likely = match (not_before, latest) {
        (Some(bound), Some(latest)) => {
            let finished = latest.checked_add_days(Days::new(FINISHED_DAYS)).unwrap_or(latest);
            let ended = design_years.map_or(finished, |years| finished.min(years.last.max(latest)));
            Some(Span { first: bound.day, last: ended.max(bound.day) })
        }
        _ => design_years,
    };
    let confidence = confidence(&kept, &outliers);
    Joint { markings: kept, not_before, outliers, likely, confidence }
}

/// A marking for itself: as the restorer has settled it, or every reading.
fn alone(marking: &MarkingText, design_years: Option<Span>) -> Kept {
    let context = Context { design_years, surface: marking.surface, ..Context::default() };
    match read(marking.text, &context) {
        Ok(mut readings) => {
            if let Some(scheme) = marking.settled
                && readings.iter().any(|reading| reading.scheme == scheme)
            {
                readings.retain(|reading| reading.scheme == scheme);
            }
            Kept { kept_count: readings.len(), readings, unreadable: None }
        }
        Err(reason) => Kept { readings: Vec::new(), kept_count: 0, unreadable: Some(reason) },
    }
}

/// Markings that are later than the rest, or known not to be original.
fn outliers(markings: &[MarkingText], kept: &[Kept]) -> Vec<Outlier> {
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
    // Capacitors and stickers are what is replaced: they weigh half of what cannot be.
    let weight = |at: usize| if matches!(markings[at].surface, Surface::Capacitor | Surface::Sticker) { 1 } else { 2 };
    let total: i32 = dated.iter().map(|(.., at)| weight(*at)).sum();
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
        before += weight(*at);
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
    found.sort_unstable_by_key(|outlier| outlier.marking);
    found
}

fn confidence(kept: &[Kept], outliers: &[Outlier]) -> Confidence {
    let is_read = |at: &usize| kept[*at].chosen().is_some();
    let read = (0..kept.len()).filter(is_read).count();
    let strange = outliers.iter().filter(|outlier| outlier.cause == OutlierCause::ReplacedOrRemarked).count();
    let agreeing = read - outliers.len();
    let ambiguous = kept.iter().filter(|marking| marking.is_ambiguous()).count();
    let grade = match agreeing {
        _ if read == 0 => Grade::None,
        0 | 1 => Grade::Low,
        2 => Grade::Fair,
        _ if strange + ambiguous > 0 => Grade::Fair,
        _ => Grade::Good,
    };
    Confidence { grade, agreeing, read, ambiguous }
}
