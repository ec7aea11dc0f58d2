//! When a part was made, from its markings and its design's years, and whether that is true to a window of dates.

use chrono::NaiveDate;

use crate::record::{Design, FromFactory, Machine, Marking, MarkingId, PartFile};
use crate::trade::Span;
use crate::trade::date_code::{Conflict, DesignYears, Grade, Joint, MarkingText, Scheme, joint};

/// What is known about a part's making.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Making {
    /// When it was probably finished; `None` when neither a marking nor the design says anything.
    pub span: Option<Span>,
    /// It cannot have been finished before this day.
    pub not_before: Option<NaiveDate>,
    /// The years in which its design was made, as far as they are known.
    pub design_years: Option<Span>,
    /// The same as bounds: an end that nobody knows is open.
    pub design: DesignYears,
    /// Whether a marking on the part itself says so, and not its design alone.
    pub is_marked: bool,
    /// Markings later than the rest, each with the whole weeks by which it is.
    pub outliers: Vec<(MarkingId, i64)>,
    /// Markings with no reading in the design's years.
    pub conflicts: Vec<(MarkingId, Conflict)>,
    /// Whether the markings that date the part contradict its design's years; the span is then as the markings say.
    pub is_conflict: bool,
    /// How many markings still have readings that exclude each other.
    pub ambiguous: usize,
}

crate::words! {
    /// What a part's span rests on.
    DatedBy {
        Nothing = "nothing", "Not known";
        Design = "design", "Its design's years";
        Markings = "markings", "Its markings";
        Conflict = "conflict", "Conflict";
    }
}

/// How a part's making stands to a machine's window.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TrueTo {
    /// It was made, as its markings say, within the window.
    Comfortable,
    /// Its design was made within the window: this example lies `weeks` after (or, negative, before) it, or carries
    /// no date of its own.
    ByDesign { weeks: Option<i64> },
    /// It lies whole weeks after the window, or before it when negative.
    Apart { weeks: i64 },
    /// Nothing says when it was made.
    NotKnown,
    /// Its markings and its design's years contradict each other.
    Conflict,
}

/// A part's markings read together, in the order of [`PartFile::markings_now`].
pub fn read(file: &PartFile, design: Option<&Design>) -> Joint {
    let texts: Vec<MarkingText> = file.markings_now().map(marking_text).collect();
    joint(&texts, design.map(design_bounds).unwrap_or_default())
}

/// The first and the last day on which the design can have been made.
pub fn design_bounds(design: &Design) -> DesignYears {
    let from = design.introduced.span().map(|span| span.first);
    let to = design.discontinued.span().map(|span| span.last);
    // Years that stand the wrong way round say only when the design was introduced.
    DesignYears { from, to: to.filter(|to| from.is_none_or(|from| from <= *to)) }
}

fn marking_text(marking: &Marking) -> MarkingText<'_> {
    MarkingText {
        text: &marking.text,
        surface: marking.surface,
        original: match marking.from_factory {
            FromFactory::Unknown => None,
            FromFactory::Yes => Some(true),
            FromFactory::No => Some(false),
        },
        settled: scheme(&marking.scheme),
        not_after: marking.read.on.span().map(|span| span.last),
    }
}

/// The date scheme of a stored name.
pub fn scheme(name: &str) -> Option<Scheme> {
    if name.is_empty() {
        return None;
    }
    let stored = serde::de::value::StrDeserializer::<serde::de::value::Error>::new(name);
    serde::Deserialize::deserialize(stored).ok()
}

/// The days on which a design was made: from its introduction to its end, or the one that is known.
pub fn design_years(design: &Design) -> Option<Span> {
    match (design.introduced.span(), design.discontinued.span()) {
        (Some(from), Some(to)) => Some(Span::new(from.first, to.last.max(from.last))),
        (Some(only), None) | (None, Some(only)) => Some(only),
        (None, None) => None,
    }
}

/// The window of a machine's brief; an end left open reaches as far as logbook dates do. `None` when both are open.
pub fn window(machine: &Machine) -> Option<Span> {
    let (from, to) = (machine.window_from.span(), machine.window_to.span());
    let ends = crate::record::YEARS;
    let first = from.or_else(|| to.and(Span::year(*ends.start())))?.first;
    let last = to.or_else(|| Span::year(*ends.end()))?.last;
    (first <= last).then_some(Span { first, last })
}

impl Making {
    /// What a part's markings and its design say.
    pub fn of(file: &PartFile, design: Option<&Design>) -> Self {
        let years = design.and_then(design_years);
        let bounds = design.map(design_bounds).unwrap_or_default();
        if file.markings.is_empty() {
            return Self {
                span: years,
                not_before: bounds.from,
                design_years: years,
                design: bounds,
                ..Self::default()
            };
        }
        let joint = read(file, design);
        let ids: Vec<MarkingId> = file.markings_now().map(|marking| marking.id).collect();
        let is_marked = joint.confidence.grade != Grade::None;
        Self {
            span: if is_marked { joint.likely } else { years },
            not_before: joint.not_before.map(|bound| bound.day),
            design_years: years,
            design: bounds,
            is_marked,
            outliers: joint.outliers.iter().map(|outlier| (ids[outlier.marking], outlier.weeks)).collect(),
            conflicts: joint.conflicts.iter().map(|conflict| (ids[conflict.marking], conflict.clone())).collect(),
            is_conflict: joint.is_conflict,
            ambiguous: joint.confidence.ambiguous,
        }
    }

    /// What the span rests on.
    pub fn dated_by(&self) -> DatedBy {
        match self.span {
            _ if self.is_conflict => DatedBy::Conflict,
            None => DatedBy::Nothing,
            Some(_) if self.is_marked => DatedBy::Markings,
            Some(_) => DatedBy::Design,
        }
    }

    /// A marking's conflict with the design's years as a sentence; `None` where it has none.
    pub fn conflict_of(&self, marking: &Marking) -> Option<String> {
        let (_, conflict) = self.conflicts.iter().find(|(id, _)| *id == marking.id)?;
        Some(conflict.sentence(&marking.text, self.design))
    }

    /// How it stands to a window of dates.
    pub fn true_to(&self, window: Span) -> TrueTo {
        if self.is_conflict {
            return TrueTo::Conflict;
        }
        let own = self.span.filter(|_| self.is_marked);
        let by_design = self.design_years.and_then(|years| match years.weeks_from(window) {
            before if before < 0 && self.design.to.is_none() => Some(0),
            // It may have been made long before it ended: nobody knows.
            after if after > 0 && self.design.from.is_none() => None,
            weeks => Some(weeks),
        });
        match (own.map(|span| span.weeks_from(window)), by_design) {
            (Some(0), _) => TrueTo::Comfortable,
            (weeks, Some(0)) => TrueTo::ByDesign { weeks },
            (Some(weeks), _) | (None, Some(weeks)) => TrueTo::Apart { weeks },
            (None, None) => TrueTo::NotKnown,
        }
    }
}

impl TrueTo {
    /// In words.
    pub fn said(self) -> String {
        match self {
            Self::Comfortable => crate::text!("made within the window").to_owned(),
            Self::ByDesign { weeks: None } => {
                crate::text!("by its design's years only: it carries no date of its own").to_owned()
            }
            Self::ByDesign { weeks: Some(weeks) } | Self::Apart { weeks } if weeks > 0 => {
                let apart =
                    crate::counted!("{count} week after the window", "{count} weeks after the window", weeks as usize);
                self.with_design(apart)
            }
            Self::ByDesign { weeks: Some(weeks) } | Self::Apart { weeks } => {
                let count = weeks.unsigned_abs() as usize;
                let apart = crate::counted!("{count} week before the window", "{count} weeks before the window", count);
                self.with_design(apart)
            }
            Self::NotKnown => crate::text!("no date known").to_owned(),
            Self::Conflict => crate::text!("its markings and its design’s years contradict each other").to_owned(),
        }
    }

    fn with_design(self, apart: String) -> String {
        match self {
            Self::ByDesign { .. } => crate::text!("by its design's years only: made {apart}", apart = apart),
            _ => apart,
        }
    }
}
