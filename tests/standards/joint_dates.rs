//! A part's markings read together. The rules are common practice without a published source; the dates
//! of the weeks are computed with isoweek 1.3.3.

use benchwright::trade::Span;
use benchwright::trade::date_code::{
    DesignYears, Grade, Joint, MarkingText, NotBeforeCause, OutlierCause, Scheme, Surface, joint,
};
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

use Surface::{Board, Capacitor, Chip, DriveLabel};

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

fn kept_schemes(read: &Joint, at: usize) -> Vec<Scheme> {
    read.markings[at].kept().iter().map(|reading| reading.scheme).collect()
}

/// 9921 on a drive's label: by the fiscal scheme (bugaco.com, johnlane.ie: years from the first Saturday of July, which
/// was 4 July in 1998) week 2, day 1 of fiscal 1999 is 11 July 1998; by year and week (ISO 8601; isoweek 1.3.3) week 21
/// of 1999 begins on Monday 24 May. The finished drive carries the label, so of a design that was introduced in
/// September 1998 only the latter can be meant.
#[test]
fn the_designs_years_choose_among_the_readings_of_a_drives_label() {
    let label = [on(DriveLabel, "9921")];
    let alone = joint(&label, None);
    let days: Vec<Span> = alone.markings[0].kept().iter().map(|reading| reading.span).collect();
    let fiscal = Span::day(day("1998-07-11")).widened(8);
    let week = Span::new(day("1999-05-17"), day("1999-06-06"));
    assert_eq!(days, [fiscal, week], "both are possible while nothing is known of the design");

    let design = DesignYears { from: Some(day("1998-09-01")), to: None };
    let read = joint(&label, design);
    assert_eq!(kept_schemes(&read, 0), [Scheme::YearWeek]);
    assert_eq!(read.likely.unwrap().first, week.first);
    assert!(read.conflicts.is_empty() && !read.is_conflict);
    // A design that ended in August 1998 leaves the other.
    let ended = DesignYears { from: None, to: Some(day("1998-08-31")) };
    let read = joint(&label, ended);
    assert_eq!(kept_schemes(&read, 0), [Scheme::FiscalDay]);
    assert_eq!(read.not_before.unwrap().day, fiscal.first, "a design's last year bounds nothing from below");
    assert_eq!(read.likely.unwrap().last, day("1998-08-31"), "and bounds from above");
}

/// The same habit of a surface gives way too: YYWW is the usual scheme on chips, and isoweek 1.3.3 has week 3 of 2005
/// from 17 January, week 5 of 2003 from 27 January.
#[test]
fn the_designs_years_outrank_the_surfaces_habit() {
    let later = joint(&[on(Chip, "0305")], DesignYears { from: Some(day("2004-06-01")), to: None });
    assert_eq!(kept_schemes(&later, 0), [Scheme::WeekYear]);
    assert_eq!(later.not_before.unwrap().day, day("2005-01-10"));
    let earlier = joint(&[on(Chip, "0305")], DesignYears { from: None, to: Some(day("2003-12-31")) });
    assert_eq!(kept_schemes(&earlier, 0), [Scheme::YearWeek]);
    let both = joint(&[on(Chip, "0305")], Span::new(day("2003-01-01"), day("2005-12-31")));
    assert!(both.markings[0].is_ambiguous(), "years that allow both choose neither");
}

/// What is settled stays, whatever the design's years say; they are contradicted then, and that is told.
#[test]
fn a_settled_scheme_stays_settled_against_the_designs_years() {
    let label = MarkingText { settled: Some(Scheme::FiscalDay), ..on(DriveLabel, "9921") };
    let read = joint(&[label], DesignYears { from: Some(day("1998-09-01")), to: None });
    assert_eq!(kept_schemes(&read, 0), [Scheme::FiscalDay]);
    assert!(read.is_conflict);
    // 19 July (11 July and the eight days by which decoders differ) to 1 September 1998 are 44 days.
    assert_eq!(read.conflicts[0].weeks, -7);
}

/// Week 14 of 1992 begins on 30 March (isoweek 1.3.3), six years before the design. As a fiscal day (first Saturday of
/// July 1991 is 6 July) it would be 9 July 1991, and that is kept too, since the years leave neither.
#[test]
fn a_marking_outside_the_designs_years_is_a_conflict_and_stays_as_read() {
    let design = Span::new(day("1998-09-01"), day("2000-12-31"));
    let read = joint(&[on(DriveLabel, "9214")], design);
    assert!(read.is_conflict);
    let likely = read.likely.unwrap();
    assert_eq!(likely.first, day("1991-07-01"), "the span is the marking's, not the design's");
    assert!(likely.last < day("1993-06-01"), "{likely:?}");
    // 12 April 1992 to 1 September 1998 are 2333 days.
    let conflict = &read.conflicts[0];
    assert_eq!((conflict.marking, conflict.weeks), (0, -334));
    let sentence = conflict.sentence("9214", read.design);
    assert!(sentence.contains("“9214”") && sentence.contains("334 weeks before"), "{sentence}");
    assert!(sentence.contains("1998-09-01 to 2000-12-31") && sentence.contains("1992-03-23"), "{sentence}");
    assert_eq!(read.confidence.grade, Grade::Low);

    let unread = joint(&[on(DriveLabel, "VLM-77X")], design);
    assert!(!unread.is_conflict, "what says no day contradicts nothing");
}

/// A chip two years older than the design lay in stock or was used up: the part is as its other markings say.
#[test]
fn an_old_component_beside_others_that_fit_is_told_and_dates_nothing() {
    let design = Span::new(day("1998-09-01"), day("2000-12-31"));
    let read = joint(&[on(Board, "1299"), on(Chip, "9908"), on(Chip, "9610")], design);
    assert!(!read.is_conflict);
    assert_eq!(read.conflicts.iter().map(|conflict| conflict.marking).collect::<Vec<_>>(), [2]);
    // Week 12 of 1999 begins on 22 March.
    assert_eq!(read.not_before.unwrap().day, day("1999-03-15"));
}

/// The design's last year bounds the making from above as the other markings do.
#[test]
fn a_marking_after_the_designs_last_year_is_a_replaced_component() {
    let design = Span::new(day("1994-01-01"), day("1995-12-31"));
    // Weeks 40 and 45 of 1995, and week 14 of 1996: 22 weeks after them, which alone would not stand out.
    let marks = [on(Board, "4095"), on(Chip, "9545"), on(Chip, "9614")];
    assert!(joint(&marks, None).outliers.is_empty());
    let read = joint(&marks, design);
    assert_eq!((read.outliers[0].marking, read.outliers[0].cause), (2, OutlierCause::AfterDesign));
    assert_eq!(read.not_before.unwrap().cause, NotBeforeCause::Marking(1), "it bounds nothing");
    assert!(!read.is_conflict && read.likely.unwrap().last <= design.last, "{read:?}");
    let sentence = read.conflicts[0].sentence("9614", read.design);
    assert!(sentence.contains("after its design’s years") && sentence.contains("replaced component"), "{sentence}");

    // It was there from the start, says the restorer: then the design's years are wrong, or the part is.
    let original = [marks[0], marks[1], MarkingText { original: Some(true), ..marks[2] }];
    assert!(joint(&original, design).is_conflict);
    // Known to be a replacement, it contradicts nothing.
    let replaced = [marks[0], marks[1], MarkingText { original: Some(false), ..marks[2] }];
    let read = joint(&replaced, design);
    assert!(read.conflicts.is_empty() && !read.is_conflict);
    assert_eq!(read.outliers[0].cause, OutlierCause::Replaced);
    // Most markings after the end are no row of replacements.
    assert!(joint(&[on(Chip, "9545"), on(Board, "1496"), on(Chip, "9614")], design).is_conflict);
}

/// 1608 is week 8 of 2016 (YYWW; Monday 22 February by isoweek 1.3.3) or week 16 of 2008: no table of usual years
/// decides, only the day on which it was read and the design.
#[test]
fn usual_years_choose_nothing() {
    let on_day = |not_after: &str| MarkingText { not_after: Some(day(not_after)), ..on(Chip, "1608") };
    let read = joint(&[on_day("2026-07-01")], None);
    assert!(read.markings[0].is_ambiguous(), "{:?}", read.markings[0].kept());
    let read = joint(&[on_day("2012-07-01")], None);
    assert_eq!(kept_schemes(&read, 0), [Scheme::WeekYear], "nothing is marked later than it was read");
    let adapter = DesignYears { from: Some(day("2015-01-01")), to: None };
    assert_eq!(joint(&[on_day("2026-07-01")], adapter).not_before.unwrap().day, day("2016-02-15"));
    let early = joint(&[on(Chip, "7408")], Span::new(day("1973-01-01"), day("1974-12-31")));
    assert_eq!(early.not_before.unwrap().day, day("1974-02-11"), "1974-W08 begins on 18 February");
}

/// 0115 is week 15 of 2001 (from 9 April, isoweek 1.3.3) by the chips' usual scheme, and day 115 of 1990, 25 April, by
/// one that is rare there: of a design of 1990 it does not hide a replaced chip, but is told. Other markings of that
/// time may choose it.
#[test]
fn a_rare_scheme_does_not_hide_a_conflict() {
    let design = Span::new(day("1989-01-01"), day("1991-12-31"));
    let read = joint(&[on(Chip, "0115")], design);
    assert_eq!(read.markings[0].chosen().unwrap().scheme, Scheme::YearWeek);
    assert!(read.is_conflict);
    let sentence = read.conflicts[0].sentence("0115", read.design);
    assert!(sentence.contains("2001-04-02") && sentence.contains("rare on chips"), "{sentence}");
    assert!(sentence.contains("1990-04-25"), "{sentence}");
    let beside = joint(&[on(Chip, "0115"), on(Chip, "9012")], design);
    assert_eq!(beside.markings[0].chosen().unwrap().scheme, Scheme::DigitOrdinal);
    assert!(beside.conflicts.is_empty());
}
