//! A part's markings read together. The rules are common practice without a published source; the dates
//! of the weeks are computed with isoweek 1.3.3.

use benchwright::trade::Span;
use benchwright::trade::date_code::{Grade, MarkingText, NotBeforeCause, OutlierCause, Scheme, Surface, joint};
use chrono::NaiveDate;
use proptest::prelude::*;

use crate::chance::Chance;
use crate::fuzz::rounds;

fn day(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

fn on(surface: Surface, text: &str) -> MarkingText<'_> {
    MarkingText { text, surface, ..MarkingText::default() }
}

use Surface::{Board, Capacitor, Chip};

#[test]
fn other_markings_settle_an_ambiguous_code() {
    // 0210 on a board alone: week 2 of 2010, or week 10 of 2002.
    let alone = joint(&[on(Board, "0210")], None);
    assert!(alone.markings[0].is_ambiguous());
    assert_eq!(alone.confidence.grade, Grade::Low);
    let beside = joint(&[on(Board, "0210"), on(Chip, "0205"), on(Chip, "0152"), on(Chip, "0148")], None);
    assert_eq!(beside.markings[0].chosen().unwrap().scheme, Scheme::YearWeek);
    assert!(!beside.markings[0].is_ambiguous(), "{:?}", beside.markings[0].kept());
    assert_eq!(beside.confidence.grade, Grade::Good);
    assert_eq!(beside.confidence.to_string(), "good: 4 of 4 markings agree");
}

#[test]
fn readings_that_cannot_be_told_apart_are_both_kept() {
    let both = joint(&[on(Board, "0203"), on(Chip, "0238")], None);
    let kept: Vec<Scheme> = both.markings[0].kept().iter().map(|reading| reading.scheme).collect();
    assert!(kept.contains(&Scheme::YearWeek) && kept.contains(&Scheme::WeekYear), "{kept:?}");
    assert_eq!(both.confidence.ambiguous, 1);
}

#[test]
fn the_latest_original_marking_bounds_from_below() {
    // Weeks 20 and 26 of 1994 and 31 of 1994; the Monday of 1994-W31 is 1 August.
    let read = joint(&[on(Chip, "9420"), on(Chip, "9426"), on(Board, "3194")], None);
    let bound = read.not_before.unwrap();
    assert_eq!(bound.cause, NotBeforeCause::Marking(2));
    assert_eq!(bound.day, day("1994-07-25"), "the Monday, less the week that makers' weeks may differ by");
    let likely = read.likely.unwrap();
    assert_eq!(likely.first, bound.day);
    assert!(likely.last > day("1994-08-14") && likely.last < day("1995-06-01"), "{likely:?}");
}

#[test]
fn the_design_bounds_from_below_too() {
    let design = Span::new(day("1996-05-01"), day("1998-12-31"));
    let read = joint(&[on(Chip, "9540"), on(Chip, "9545")], Some(design));
    assert_eq!(read.not_before.unwrap().cause, NotBeforeCause::Design);
    assert_eq!(read.not_before.unwrap().day, design.first);
}

#[test]
fn a_later_component_stands_out() {
    let read = joint(&[on(Chip, "9420"), on(Chip, "9426"), on(Board, "3194"), on(Chip, "9922")], None);
    assert_eq!(read.outliers.len(), 1);
    let outlier = read.outliers[0];
    assert_eq!((outlier.marking, outlier.cause), (3, OutlierCause::ReplacedOrRemarked));
    // 1999-W22 begins on 31 May: 252 weeks after the end of 1994-W31 (7 August 1994); both widened by a week.
    assert!((248..=252).contains(&outlier.weeks), "{}", outlier.weeks);
    assert_eq!(read.not_before.unwrap().cause, NotBeforeCause::Marking(2), "a replacement bounds nothing");
    assert_eq!(read.confidence.grade, Grade::Fair);
}

#[test]
fn a_whole_row_of_new_capacitors_is_not_the_boards_date() {
    let caps = ["0622", "0622", "0622"].map(|text| on(Capacitor, text));
    let markings = [[on(Chip, "9620"), on(Chip, "9626"), on(Board, "3196")], caps].concat();
    let read = joint(&markings, None);
    let late: Vec<usize> = read.outliers.iter().map(|outlier| outlier.marking).collect();
    assert_eq!(late, [3, 4, 5]);
    assert_eq!(read.not_before.unwrap().day, day("1996-07-22"), "1996-W31 begins on 29 July");
}

#[test]
fn what_the_restorer_knows_counts() {
    let mut replaced = on(Chip, "9922");
    replaced.original = Some(false);
    let read = joint(&[on(Chip, "9420"), on(Chip, "9426"), replaced], None);
    assert_eq!(read.outliers[0].cause, OutlierCause::Replaced);
    assert_eq!(read.not_before.unwrap().cause, NotBeforeCause::Marking(1));

    let mut original = on(Chip, "9922");
    original.original = Some(true);
    let read = joint(&[on(Chip, "9420"), on(Chip, "9426"), on(Board, "3194"), original], None);
    assert!(read.outliers.is_empty());
    assert_eq!(read.not_before.unwrap().cause, NotBeforeCause::Marking(3));

    let mut settled = on(Board, "0203");
    settled.settled = Some(Scheme::YearWeek);
    let read = joint(&[settled], None);
    assert_eq!(read.markings[0].readings.len(), 1);
    assert_eq!(read.not_before.unwrap().day, day("2002-01-07"));
}

#[test]
fn a_copyright_year_is_early_by_nature() {
    let read = joint(&[on(Board, "© 1992"), on(Chip, "9620"), on(Chip, "9626")], None);
    assert!(read.outliers.is_empty(), "{:?}", read.outliers);
    assert_eq!(read.not_before.unwrap().cause, NotBeforeCause::Marking(2));
}

#[test]
fn nothing_readable_is_no_evidence() {
    let read = joint(&[on(Chip, "KOREA"), on(Chip, "")], None);
    assert_eq!(read.confidence.grade, Grade::None);
    assert!(read.not_before.is_none() && read.likely.is_none());
    assert!(read.markings[0].unreadable.is_some());
    assert_eq!(joint(&[], None).confidence.grade, Grade::None);
}

/// Holds for any markings: bounds in order, outliers once each and by what was kept, counts that add up.
fn check_any(markings: &[MarkingText], design: Option<Span>) {
    let read = joint(markings, design);
    assert_eq!(read.markings.len(), markings.len());
    for kept in &read.markings {
        assert_eq!(kept.unreadable.is_some(), kept.readings.is_empty());
        assert_eq!(kept.kept_count == 0, kept.readings.is_empty());
        assert!(kept.kept_count <= kept.readings.len());
    }
    if let (Some(bound), Some(likely)) = (read.not_before, read.likely) {
        assert!(bound.day == likely.first && likely.first <= likely.last, "{markings:?}: {likely:?}");
    }
    for outlier in &read.outliers {
        assert!(markings[outlier.marking].original != Some(true), "{markings:?}");
    }
    assert!(read.confidence.agreeing <= read.confidence.read && read.confidence.read <= markings.len());
    assert!(!read.confidence.to_string().is_empty());
}

#[test]
fn fuzz_joint_dates() {
    let mut chance = Chance(0x0001_0147);
    let alphabet: Vec<char> = "0011223344567899ABCDHJKMW- ©".chars().collect();
    // Each round reads up to six markings, so a quarter of the rounds does.
    for _ in 0..rounds() / 4 {
        let texts: Vec<String> = (0..chance.below(7)).map(|_| chance.text(&alphabet, 6)).collect();
        let markings: Vec<MarkingText> = texts
            .iter()
            .map(|text| MarkingText {
                text,
                surface: Surface::ALL[chance.below(Surface::ALL.len())],
                original: [None, None, Some(true), Some(false)][chance.below(4)],
                settled: (chance.below(8) == 0).then(|| Scheme::ALL[chance.below(Scheme::ALL.len())]),
                not_after: (chance.below(3) == 0).then(|| day("2004-06-01")),
            })
            .collect();
        let design = (chance.below(2) == 0).then(|| Span::year(1980 + chance.below(30) as i32).unwrap());
        check_any(&markings, design);
    }
}

proptest! {
    /// In which order the markings were logged changes nothing.
    #[test]
    fn the_order_of_markings_does_not_matter(
        codes in proptest::collection::vec("[089][0-9][0-4][0-9]", 1..6),
        turn in 0usize..6,
    ) {
        let markings: Vec<MarkingText> = codes.iter().map(|code| on(Chip, code)).collect();
        let mut turned = markings.clone();
        turned.rotate_left(turn % markings.len());
        let (one, other) = (joint(&markings, None), joint(&turned, None));
        prop_assert_eq!(one.not_before.map(|bound| bound.day), other.not_before.map(|bound| bound.day));
        prop_assert_eq!(one.likely, other.likely);
        prop_assert_eq!(one.confidence, other.confidence);
    }
}
