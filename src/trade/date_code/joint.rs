//! All of a part's markings read together: which readings agree, since when the part can exist, what stands out.
//!
//! The part cannot have been finished before the latest marking that was on it when it left its maker. How far apart
//! markings of one part usually lie is common practice, no source.

use chrono::{Days, NaiveDate};
use serde::{Deserialize, Serialize};

use super::agree::{Weighing, is_free};
use super::alone::{Alone, alone};
use super::outliers::outliers;
use super::{DesignYears, Reading, Scheme, Span, Surface, Unreadable};
use crate::{counted, text};

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
    /// The day on which it was read at the latest: it says nothing later.
    pub not_after: Option<NaiveDate>,
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
    pub(super) fn earliest(&self) -> Option<NaiveDate> {
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
    /// The same, and what it is later than is the design's last year: the weeks are counted from there.
    AfterDesign,
}

impl std::fmt::Display for OutlierCause {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::Replaced => text!("a replacement, by the record"),
            Self::ReplacedOrRemarked | Self::AfterDesign => text!("a replaced component, or a part marked again"),
        })
    }
}

/// A marking that neither the design's years nor the other markings bring into these years.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Conflict {
    /// Its place in the list.
    pub marking: usize,
    /// Whole weeks of its nearest reading after the design's last day, or negative before its first.
    pub weeks: i64,
    /// What it says, best first.
    pub says: Vec<Span>,
    /// A reading in the design's years, but by a scheme that is rare on such surfaces.
    pub rare: Option<Reading>,
}

impl Conflict {
    fn of(marking: usize, kept: &Kept, surface: Surface, design: DesignYears) -> Option<Self> {
        let fits = |reading: &&Reading| design.allow(reading, surface);
        if kept.kept().iter().any(|reading| fits(&reading)) {
            return None;
        }
        let says: Vec<Span> = kept.kept().iter().map(|reading| reading.span).collect();
        let weeks = says.iter().map(|span| design.weeks_from(*span)).min_by_key(|weeks| weeks.abs())?;
        Some(Self { marking, weeks, says, rare: kept.readings.iter().find(fits).copied() })
    }

    /// The conflict as a sentence; `printed` is the marking's text.
    pub fn sentence(&self, printed: &str, years: DesignYears) -> String {
        let Self { weeks, ref says, rare, .. } = *self;
        let days = |span: Span| match span {
            Span { first, last } if first == last => first.to_string(),
            Span { first, last } => text!("{first} to {last}", first = first, last = last),
        };
        let says = says.iter().map(|span| days(*span)).collect::<Vec<_>>().join(text!(" or "));
        let apart = usize::try_from(weeks.unsigned_abs()).unwrap_or(usize::MAX);
        let weeks_apart = counted!("{count} week", "{count} weeks", apart);
        let mut sentence = if weeks < 0 {
            text!(
                "“{text}” says {days}: {weeks} before its design’s years ({years}). One of the two is wrong, or the part is not what it seems.",
                text = printed,
                days = says,
                weeks = weeks_apart,
                years = years
            )
        } else {
            text!(
                "“{text}” says {days}: {weeks} after its design’s years ({years}). A replaced component, or one of the two is wrong.",
                text = printed,
                days = says,
                weeks = weeks_apart,
                years = years
            )
        };
        if let Some(Reading { span, scheme, why, .. }) = rare {
            sentence.push(' ');
            sentence += &text!(
                "Only a reading that is rare on {surface} would fit: {days}, {scheme}.",
                surface = why.surface,
                days = days(span),
                scheme = scheme
            );
        }
        sentence
    }
}

/// How far the dates can be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Grade {
    /// No marking gives a date.
    None,
    /// One marking only, or markings that contradict each other or the design's years.
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
    /// Markings with no reading in the design's years.
    pub conflicting: usize,
}

impl std::fmt::Display for Confidence {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let Self { grade, agreeing, read, ambiguous, conflicting } = *self;
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
        if conflicting > 0 {
            f.write_str("; ")?;
            f.write_str(&counted!(
                "{count} does not fit the design’s years",
                "{count} do not fit the design’s years",
                conflicting
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
    /// The design's years that they were read with.
    pub design: DesignYears,
    /// Markings with no reading in the design's years; those known to be replacements are none.
    pub conflicts: Vec<Conflict>,
    /// Whether the markings that date the part contradict its design's years: then `likely` is as the markings say.
    pub is_conflict: bool,
    /// When the part was probably finished.
    pub likely: Option<Span>,
    pub confidence: Confidence,
}

/// Reads a part's markings together; `design` are the years in which its design was made.
pub fn joint(markings: &[MarkingText], design: impl Into<DesignYears>) -> Joint {
    let design = design.into();
    let (mut kept, conflicting): (Vec<Kept>, Vec<bool>) = markings
        .iter()
        .map(|marking| alone(marking, design))
        .map(|Alone { kept, conflicts }| (kept, conflicts))
        .unzip();
    Weighing::new(markings, &kept).keep(&mut kept);
    let conflicts: Vec<Conflict> = (0..kept.len())
        .filter(|at| conflicting[*at])
        .filter_map(|at| Conflict::of(at, &kept[at], markings[at].surface, design))
        .collect();
    let outliers = outliers(markings, &kept, &conflicts);
    let counts = |at: usize| !outliers.iter().any(|outlier| outlier.marking == at);
    let is_conflict = contradict(markings, &kept, &conflicts, counts);

    let by_marking = (0..kept.len())
        .filter(|at| counts(*at))
        .filter_map(|at| Some(NotBefore { day: kept[at].earliest()?, cause: NotBeforeCause::Marking(at) }))
        .max_by_key(|bound| bound.day);
    let bounds = if is_conflict { DesignYears::default() } else { design };
    let by_design = bounds.from.map(|day| NotBefore { day, cause: NotBeforeCause::Design });
    // A marking on the design's first day is the better evidence, so it wins a draw.
    let not_before = by_design.into_iter().chain(by_marking).max_by_key(|bound| bound.day);

    let latest = (0..kept.len()).filter(|at| counts(*at)).filter_map(|at| kept[at].latest()).max();
    let likely = match (not_before, latest) {
        (Some(bound), Some(latest)) => {
            let finished = latest.checked_add_days(Days::new(FINISHED_DAYS)).unwrap_or(latest);
            let ended = bounds.to.map_or(finished, |to| finished.min(to.max(latest)));
            Some(Span { first: bound.day, last: ended.max(bound.day) })
        }
        _ => bounds.from.zip(bounds.to).filter(|(from, to)| from <= to).map(|(first, last)| Span { first, last }),
    };
    let confidence = confidence(&kept, &outliers, conflicts.len(), is_conflict);
    Joint { markings: kept, not_before, outliers, design, conflicts, is_conflict, likely, confidence }
}

/// Whether what dates the part contradicts the design: a marking after its years that is no later component, the label
/// of a drive, or markings of which none fits. An old component beside others that fit contradicts nothing.
fn contradict(markings: &[MarkingText], kept: &[Kept], conflicts: &[Conflict], counts: impl Fn(usize) -> bool) -> bool {
    let in_conflict = |at: usize| conflicts.iter().any(|conflict| conflict.marking == at);
    let any_fits = (0..kept.len())
        .any(|at| counts(at) && !in_conflict(at) && kept[at].chosen().is_some_and(|reading| !is_free(reading)));
    conflicts.iter().any(|conflict| {
        let is_label = markings[conflict.marking].surface == Surface::DriveLabel;
        counts(conflict.marking) && (conflict.weeks > 0 || is_label || !any_fits)
    })
}

fn confidence(kept: &[Kept], outliers: &[Outlier], conflicting: usize, is_conflict: bool) -> Confidence {
    let is_read = |at: &usize| kept[*at].chosen().is_some();
    let read = (0..kept.len()).filter(is_read).count();
    let strange = outliers.iter().filter(|outlier| outlier.cause != OutlierCause::Replaced).count();
    let agreeing = read - outliers.len();
    let ambiguous = kept.iter().filter(|marking| marking.is_ambiguous()).count();
    let grade = match agreeing {
        _ if read == 0 => Grade::None,
        _ if is_conflict => Grade::Low,
        0 | 1 => Grade::Low,
        2 => Grade::Fair,
        _ if strange + ambiguous + conflicting > 0 => Grade::Fair,
        _ => Grade::Good,
    };
    Confidence { grade, agreeing, read, ambiguous, conflicting }
}
