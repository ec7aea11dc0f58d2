//! `read markings board=3194 chip=9420 chip=9922 [--design 1993-1995 | --design 1998-09..]`: a part's markings read together.
//!
//! JSON: `{"markings": [{"surface", "text", "kept": [{"first", "last", "scheme"}], "unreadable"}], "not_before":
//! {"day", "marking"}, "likely": {"first", "last"}, "outliers": [{"marking", "weeks", "cause"}], "conflict":
//! false, "conflicts": [{"marking", "weeks", "sentence"}], "confidence": {"grade", "agreeing", "read", "ambiguous",
//! "conflicting", "words"}}`. Markings are numbered from 0; `not_before.marking` is null where the design's introduction
//! is the bound. Kept readings stand best first. `conflicts` are markings with no reading in the design's years, weeks
//! negative before them; `conflict` says that what dates the part contradicts them.

use std::fmt::Write as _;

use anyhow::{Context as _, anyhow, bail};
use chrono::NaiveDate;
use clap::Args;
use serde::Serialize;

use crate::console::{Answer, as_json};
use crate::record::When;
use crate::text;
use crate::trade::Span;
use crate::trade::date_code::{
    Confidence, DesignYears, Grade, Joint, MarkingText, NotBeforeCause, OutlierCause, Scheme, Surface, joint,
};

#[derive(Args)]
pub struct Markings {
    #[arg(value_name = "SURFACE=TEXT", required = true, help = text!("A marking and what it is printed on"))]
    markings: Vec<String>,
    #[arg(long, value_name = "YEARS", help = text!("The years in which the design was made: 1993-1995, or days, months and years as 1998-09..2000, either end open"))]
    design: Option<String>,
}

/// The JSON form.
#[derive(Serialize)]
struct Form<'a> {
    markings: Vec<MarkingForm<'a>>,
    not_before: Option<BoundForm>,
    likely: Option<Span>,
    outliers: Vec<OutlierForm>,
    conflict: bool,
    conflicts: Vec<ConflictForm>,
    confidence: ConfidenceForm,
}

#[derive(Serialize)]
struct MarkingForm<'a> {
    surface: Surface,
    text: &'a str,
    kept: Vec<KeptForm>,
    unreadable: Option<String>,
}

#[derive(Serialize)]
struct KeptForm {
    first: NaiveDate,
    last: NaiveDate,
    scheme: Scheme,
}

#[derive(Serialize)]
struct BoundForm {
    day: NaiveDate,
    marking: Option<usize>,
}

#[derive(Serialize)]
struct OutlierForm {
    marking: usize,
    weeks: i64,
    cause: OutlierCause,
}

#[derive(Serialize)]
struct ConflictForm {
    marking: usize,
    weeks: i64,
    sentence: String,
}

#[derive(Serialize)]
struct ConfidenceForm {
    grade: Grade,
    agreeing: usize,
    read: usize,
    ambiguous: usize,
    conflicting: usize,
    words: String,
}

impl Markings {
    pub fn answer(&self, json: bool) -> Answer {
        let texts = self.markings.iter().map(|typed| marking(typed)).collect::<anyhow::Result<Vec<_>>>()?;
        let design = self.design.as_deref().map(design_years).transpose()?;
        let joint = joint(&texts, design.unwrap_or_default());
        if json { as_json(&form(&texts, &joint)) } else { Ok(words(&texts, &joint)) }
    }
}

fn marking(typed: &str) -> anyhow::Result<MarkingText<'_>> {
    let (surface, text) = typed
        .split_once('=')
        .ok_or_else(|| anyhow!(text!("“{text}” is not surface=text, such as board=3194", text = typed)))?;
    let surface = surface.parse().map_err(|reason: String| anyhow!(reason))?;
    Ok(MarkingText { text, surface, ..MarkingText::default() })
}

/// `1994-1996`, one year, or `1998-09..2000` with either end left open.
fn design_years(typed: &str) -> anyhow::Result<DesignYears> {
    if let Some((from, to)) = typed.split_once("..") {
        let from = from.parse::<When>()?.span().map(|span| span.first);
        let to = to.parse::<When>()?.span().map(|span| span.last);
        if from.zip(to).is_some_and(|(from, to)| from > to) {
            bail!(text!("the design's first year lies after its last"));
        }
        return Ok(DesignYears { from, to });
    }
    let (from, to) = typed.split_once('-').unwrap_or((typed, typed));
    let year = |typed: &str| typed.trim().parse().ok().and_then(Span::year);
    let years =
        year(from).zip(year(to)).with_context(|| text!("“{text}” is not years, such as 1994-1996", text = typed))?;
    if years.0.first > years.1.last {
        bail!(text!("the design's first year lies after its last"));
    }
    Ok(DesignYears { from: Some(years.0.first), to: Some(years.1.last) })
}

fn form<'a>(texts: &[MarkingText<'a>], joint: &Joint) -> Form<'a> {
    let Joint { markings, not_before, outliers, design, conflicts, is_conflict, likely, confidence } = joint;
    let Confidence { grade, agreeing, read, ambiguous, conflicting } = *confidence;
    Form {
        markings: texts
            .iter()
            .zip(markings)
            .map(|(marking, read)| MarkingForm {
                surface: marking.surface,
                text: marking.text,
                kept: read
                    .kept()
                    .iter()
                    .map(|kept| KeptForm { first: kept.span.first, last: kept.span.last, scheme: kept.scheme })
                    .collect(),
                unreadable: read.unreadable.as_ref().map(ToString::to_string),
            })
            .collect(),
        not_before: not_before.map(|bound| BoundForm {
            day: bound.day,
            marking: match bound.cause {
                NotBeforeCause::Marking(at) => Some(at),
                NotBeforeCause::Design => None,
            },
        }),
        likely: *likely,
        outliers: outliers
            .iter()
            .map(|outlier| OutlierForm { marking: outlier.marking, weeks: outlier.weeks, cause: outlier.cause })
            .collect(),
        conflict: *is_conflict,
        conflicts: conflicts
            .iter()
            .map(|conflict| ConflictForm {
                marking: conflict.marking,
                weeks: conflict.weeks,
                sentence: conflict.sentence(texts[conflict.marking].text, *design),
            })
            .collect(),
        confidence: ConfidenceForm { grade, agreeing, read, ambiguous, conflicting, words: confidence.to_string() },
    }
}

fn words(texts: &[MarkingText], joint: &Joint) -> String {
    let days = |span: Span| match span {
        Span { first, last } if first == last => first.to_string(),
        Span { first, last } => text!("{first} to {last}", first = first, last = last),
    };
    let mut words = String::new();
    for (marking, read) in texts.iter().zip(&joint.markings) {
        let said = match &read.unreadable {
            Some(reason) => reason.to_string(),
            None => read.kept().iter().map(|kept| days(kept.span)).collect::<Vec<_>>().join(text!(" or ")),
        };
        let _ = writeln!(words, "{}: {said}", marking.text);
    }
    for conflict in &joint.conflicts {
        let _ = writeln!(words, "{}", conflict.sentence(texts[conflict.marking].text, joint.design));
    }
    // What is later than the design's years is told by its conflict.
    for outlier in joint.outliers.iter().filter(|outlier| outlier.cause != OutlierCause::AfterDesign) {
        let _ = writeln!(
            words,
            "{}",
            text!(
                "{text} lies {weeks} weeks after the rest: {cause}",
                text = texts[outlier.marking].text,
                weeks = outlier.weeks,
                cause = outlier.cause
            )
        );
    }
    if let Some(bound) = joint.not_before {
        let cause = match bound.cause {
            NotBeforeCause::Marking(at) => texts[at].text,
            NotBeforeCause::Design => text!("the design's introduction"),
        };
        let _ = writeln!(words, "{}", text!("not before {day}: {cause}", day = bound.day, cause = cause));
    }
    if let Some(likely) = joint.likely {
        let _ = writeln!(words, "{}", text!("probably finished {days}", days = days(likely)));
    }
    let _ = writeln!(words, "{}", text!("confidence {words}", words = joint.confidence));
    words
}
