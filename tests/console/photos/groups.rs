//! Photographs that belong together by the time they were taken.

use benchwright::photo::{TakenAt, groups};
use chrono::{DateTime, FixedOffset, NaiveDate, TimeDelta};

/// So many seconds after a morning hour, on a clock without offset.
fn after(seconds: i64) -> TakenAt {
    let morning = NaiveDate::from_ymd_opt(2024, 5, 6).unwrap().and_hms_opt(9, 0, 0).unwrap();
    TakenAt { local: morning + TimeDelta::seconds(seconds), offset: None }
}

#[test]
fn nine_photographs_of_one_part_stay_together_and_the_next_part_begins_a_group() {
    // Nine of the first part, ten to thirty seconds apart; two minutes to fetch the next.
    let first = [0, 12, 31, 45, 70, 84, 110, 121, 140];
    let second = [260, 275, 290];
    let taken: Vec<_> = first.iter().chain(&second).map(|seconds| Some(after(*seconds))).collect();
    assert_eq!(groups(&taken), [(0..9).collect::<Vec<_>>(), vec![9, 10, 11]]);
}

#[test]
fn order_is_by_time_whatever_the_order_of_the_files() {
    let taken = [Some(after(400)), Some(after(0)), None, Some(after(10)), Some(after(410)), None];
    assert_eq!(groups(&taken), [vec![1, 3], vec![0, 4], vec![2, 5]], "those without a time come last");
}

#[test]
fn a_slow_hand_is_no_new_part_but_an_evening_is() {
    // A photograph every minute and a half: the median sets the pace.
    let slow: Vec<_> = (0..6).map(|at| Some(after(at * 90))).collect();
    assert_eq!(groups(&slow).len(), 1);
    // Four photographs, one an hour: more than half an hour parts them however slow the rest is.
    let hourly: Vec<_> = (0..4).map(|at| Some(after(at * 3600))).collect();
    assert_eq!(groups(&hourly).len(), 4);
    // A burst: gaps of a second do not make forty seconds a new part.
    assert_eq!(groups(&[0, 1, 2, 42].map(|seconds| Some(after(seconds)))).len(), 1);
}

#[test]
fn two_clocks_are_brought_together_by_their_offsets_where_all_tell_them() {
    let at = |text: &str| -> Option<TakenAt> {
        let time: DateTime<FixedOffset> = text.parse().unwrap();
        Some(TakenAt { local: time.naive_local(), offset: Some(*time.offset()) })
    };
    let taken = [at("2024-05-06T10:00:20+02:00"), at("2024-05-06T08:00:10Z"), at("2024-05-06T10:00:00+02:00")];
    assert_eq!(groups(&taken), [[2, 1, 0]]);
}

#[test]
fn nothing_and_one_are_groups_too() {
    assert!(groups(&[]).is_empty());
    assert_eq!(groups(&[Some(after(5))]), [[0]]);
    assert_eq!(groups(&[None]), [[0]]);
}
