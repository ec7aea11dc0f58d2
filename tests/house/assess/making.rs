//! When parts were made, and how that stands to a machine's window.

use benchwright::assess::making::DatedBy;
use benchwright::assess::{Making, TrueTo};
use benchwright::record::*;
use benchwright::trade::Span;

use super::support::*;

fn window(from: &str, to: &str) -> Span {
    Span::new(day(from), day(to))
}

fn board_marked(texts: &[(Surface, &str)]) -> PartFile {
    let mut board = part(1, "0001", Kind::Mainboard);
    for (at, (surface, text)) in texts.iter().enumerate() {
        board.markings.push(marking(20 + at as u128, &board, *surface, text));
    }
    board
}

#[test]
fn an_ambiguous_code_is_settled_by_the_parts_other_markings() {
    // A one-digit year: week 12 of 1987 or of 1997, and the design was made in both.
    let design = design(300, Kind::Mainboard, ("1985", "2000"), &[]);
    let alone = Making::of(&board_marked(&[(Surface::Chip, "712")]), Some(&design.design));
    assert_eq!(alone.ambiguous, 1);
    assert!(alone.span.unwrap().first < day("1988-01-01"), "both readings are kept");
    let others = [(Surface::Chip, "712"), (Surface::Chip, "9710"), (Surface::Chip, "9708")];
    let together = Making::of(&board_marked(&others), Some(&design.design));
    assert_eq!(together.ambiguous, 0);
    // Week 12 of 1997 began on Monday 17 March by ISO 8601; a week is allowed before it.
    assert_eq!(together.not_before, Some(day("1997-03-10")));
}

#[test]
fn a_marking_later_than_the_rest_is_told_with_its_weeks() {
    let board = board_marked(&[
        (Surface::Chip, "9710"),
        (Surface::Chip, "9714"),
        (Surface::Chip, "9712"),
        (Surface::Capacitor, "0140"),
    ]);
    let making = Making::of(&board, None);
    assert_eq!(making.outliers.len(), 1);
    let (marking, weeks) = making.outliers[0];
    assert_eq!(marking, id(23));
    // From week 14 of 1997 to week 40 of 2001 are 234 weeks; a week is allowed either side of both.
    assert!((230..=234).contains(&weeks), "{weeks}");
    assert!(making.span.unwrap().last < day("1999-01-01"), "a replaced capacitor does not date the board");
}

#[test]
fn the_distance_to_a_window_is_told_in_weeks() {
    // A day code, to leave no doubt: made on 6 March 1998 at the earliest.
    let board = board_marked(&[(Surface::Sticker, "1998-03-06")]);
    let making = Making::of(&board, None);
    assert_eq!(making.not_before, Some(day("1998-03-06")));
    let comfortable = making.true_to(window("1998-01-01", "1998-12-31"));
    assert_eq!(comfortable, TrueTo::Comfortable);
    // 1998-02-20 to 1998-03-06 are 14 days: 2 weeks after; to 1998-03-05 one day: counted as a week.
    assert_eq!(making.true_to(window("1996-01-01", "1998-02-20")), TrueTo::Apart { weeks: 2 });
    assert_eq!(making.true_to(window("1996-01-01", "1998-03-05")), TrueTo::Apart { weeks: 1 });
    let TrueTo::Apart { weeks } = making.true_to(window("2001-01-01", "2002-01-01")) else { panic!("not apart") };
    assert!(weeks < 0, "before the window is negative: {weeks}");
}

#[test]
fn a_later_example_of_a_right_model_fits_by_its_designs_years_only() {
    let design = design(300, Kind::Mainboard, ("1995", "1999"), &[]);
    let board = board_marked(&[(Surface::Sticker, "1998-03-06")]);
    let making = Making::of(&board, Some(&design.design));
    assert_eq!(making.true_to(window("1995-01-01", "1996-12-31")), TrueTo::ByDesign { weeks: Some(62) });
    assert_eq!(making.true_to(window("1990-01-01", "1991-12-31")), TrueTo::Apart { weeks: 323 });
    let unmarked = Making::of(&board_marked(&[]), Some(&design.design));
    assert_eq!(unmarked.true_to(window("1995-01-01", "1996-12-31")), TrueTo::ByDesign { weeks: None });
    assert_eq!(unmarked.true_to(window("2000-01-10", "2001-12-31")), TrueTo::Apart { weeks: -2 });
    assert_eq!(unmarked.not_before, Some(day("1995-01-01")));
}

#[test]
fn a_design_whose_end_nobody_knows_runs_on() {
    let design = design(300, Kind::Mainboard, ("1995", ""), &[]);
    let making = Making::of(&board_marked(&[]), Some(&design.design));
    assert_eq!(making.true_to(window("1997-01-01", "1998-12-31")), TrueTo::ByDesign { weeks: None });
    assert!(matches!(making.true_to(window("1990-01-01", "1991-12-31")), TrueTo::Apart { .. }));
    // A marking two years after the introduction is no outlier of such a design, and says when this one was made.
    let marked = Making::of(&board_marked(&[(Surface::Board, "1998-05-01")]), Some(&design.design));
    assert!(marked.outliers.is_empty());
    assert_eq!(marked.true_to(window("1998-01-01", "1998-12-31")), TrueTo::Comfortable);
    let unreadable = Making::of(&board_marked(&[(Surface::Chip, "VLM-77X")]), Some(&design.design));
    assert_eq!(unreadable.span, Some(window("1995-01-01", "1995-12-31")));
}

#[test]
fn without_marking_or_design_nothing_is_known() {
    assert_eq!(Making::of(&board_marked(&[]), None).true_to(window("1995-01-01", "1996-12-31")), TrueTo::NotKnown);
    let unreadable = Making::of(&board_marked(&[(Surface::Chip, "VLM-77X")]), None);
    assert!(!unreadable.is_marked);
    assert_eq!(unreadable.true_to(window("1995-01-01", "1996-12-31")), TrueTo::NotKnown);
}

#[test]
fn a_marking_known_to_be_added_later_does_not_bound_the_making() {
    let mut board = board_marked(&[(Surface::Chip, "9710"), (Surface::Sticker, "2003-05-01")]);
    board.markings[1].from_factory = FromFactory::No;
    assert!(Making::of(&board, None).not_before.unwrap() < day("1998-01-01"));
    // And a reading that was corrected counts no more.
    let mut board = board_marked(&[(Surface::Sticker, "2003-05-01"), (Surface::Sticker, "1998-05-01")]);
    board.markings[1].supersedes = Some(id(20));
    assert_eq!(Making::of(&board, None).not_before, Some(day("1998-05-01")));
}

#[test]
fn a_window_may_be_open_at_one_end() {
    let mut machine = machine(400, "Orla", ("1997", ""), &[]).machine;
    let window = benchwright::assess::making::window;
    assert_eq!(window(&machine).unwrap().first, day("1997-01-01"));
    assert!(window(&machine).unwrap().last > day("2100-01-01"));
    machine.window_from = When::Unknown;
    assert_eq!(window(&machine), None);
}

fn drive_labelled(text: &str, years: (&str, &str)) -> (PartFile, Making) {
    let mut drive = part(1, "0001", Kind::HardDisk);
    drive.markings.push(marking(20, &drive, Surface::DriveLabel, text));
    let design = design(300, Kind::HardDisk, years, &[]);
    let making = Making::of(&drive, Some(&design.design));
    (drive, making)
}

#[test]
fn a_designs_own_years_choose_and_bound_from_both_sides() {
    // 1999-W21 begins on Monday 24 May (ISO 8601); a week is allowed before it. As a drive maker's fiscal day, which is
    // the usual scheme on such labels, it would be July 1998: before the design was introduced.
    let (_, making) = drive_labelled("9921", ("1998-09", ""));
    assert_eq!((making.not_before, making.ambiguous), (Some(day("1999-05-17")), 0));
    assert_eq!(making.dated_by(), DatedBy::Markings);
    let (_, making) = drive_labelled("9921", ("", "1998-08"));
    assert_eq!(making.not_before, Some(day("1998-07-03")), "an end does not bound from below");
    assert_eq!(making.span.unwrap().last, day("1998-08-31"));
}

#[test]
fn a_label_outside_its_designs_years_is_a_conflict_and_neither_dropped_nor_chosen() {
    // 1992-W14 begins on Monday 30 March.
    let (drive, making) = drive_labelled("92-14", ("1998-09", "2000"));
    assert_eq!((making.dated_by(), making.is_marked), (DatedBy::Conflict, true));
    let span = making.span.unwrap();
    assert!(span.first == day("1992-03-23") && span.last < day("1993-01-01"), "as the marking says: {span:?}");
    assert_eq!(making.true_to(window("1991-01-01", "1993-12-31")), TrueTo::Conflict);
    assert_eq!(making.true_to(window("1999-01-01", "1999-12-31")), TrueTo::Conflict);
    let sentence = making.conflict_of(&drive.markings[0]).unwrap();
    assert!(sentence.contains("“92-14”") && sentence.contains("1998-09-01 to 2000-12-31"), "{sentence}");
    assert_eq!(TrueTo::Conflict.said(), "its markings and its design’s years contradict each other");
}

#[test]
fn of_a_design_whose_introduction_nobody_knows_only_the_end_bounds() {
    let design = design(300, Kind::Mainboard, ("", "1998"), &[]);
    let marked = Making::of(&board_marked(&[(Surface::Board, "1996-05-01")]), Some(&design.design));
    assert_eq!((marked.not_before, marked.is_conflict), (Some(day("1996-05-01")), false));
    let unmarked = Making::of(&board_marked(&[]), Some(&design.design));
    assert_eq!(unmarked.not_before, None);
    assert_eq!(unmarked.true_to(window("1990-01-01", "1991-12-31")), TrueTo::NotKnown);
    assert!(matches!(unmarked.true_to(window("2000-01-01", "2001-12-31")), TrueTo::Apart { .. }));
}
