//! `place` and `what-if` about the sample workshop.

use serde_json::Value;

use crate::sample::closed as sample;
use crate::{benchwright, json, list, reason, text};

#[test]
fn the_sample_is_placed_to_a_proven_optimum_with_grounds_wishes_and_moves() {
    let (_folder, logbook) = sample();
    let answer = json(&["place", &logbook, "--seconds", "600"]);
    assert_eq!((answer["proven"].as_bool(), &answer["worth"]), (Some(true), &answer["bound"]));
    let mut parts: Vec<&str> = Vec::new();
    for seated in list(&answer, "placed") {
        let why: i64 = list(seated, "why").iter().map(|why| why["worth"].as_i64().unwrap()).sum();
        assert_eq!(Some(why), seated["worth"].as_i64(), "{seated}");
        assert_eq!(seated["next_best"].is_null(), seated["pinned"] == true, "{seated}");
        if let Some(cost) = seated["next_best"]["cost"].as_i64() {
            assert!(cost >= 0, "nothing is better than the best: {seated}");
        }
        parts.push(seated["part"].as_str().unwrap());
    }
    let placed = parts.len();
    parts.sort_unstable();
    parts.dedup();
    assert_eq!(parts.len(), placed, "no part is in two places");
    // Two boards compete for the schoolroom: one is in, the other tells against which it lost.
    let of = |name: &str, tag: &str| list(&answer, name).iter().find(|one| one["part"] == tag).cloned();
    assert!(of("placed", "0034").is_some() != of("placed", "0035").is_some());
    assert!(
        list(&answer, "wishes")
            .iter()
            .any(|wish| wish["machine"] == "The schoolroom, 1991" && wish["role"] == "Power supply")
    );
    assert_eq!(list(&answer, "outlook").len(), 7);
    let words = text(&["place", &logbook, "--seconds", "0"]);
    assert!(words.contains("may be worth up to"), "broken off at once it says so: {words}");
}

#[test]
fn another_board_may_be_asked_for_and_costs_what_it_costs() {
    let (_folder, logbook) = sample();
    let best = json(&["place", &logbook, "--seconds", "600"]);
    let tag = if list(&best, "placed").iter().any(|one| one["part"] == "0035") { "0034" } else { "0035" };
    let other = json(&["what-if", &logbook, tag, "The schoolroom, 1991", "--seconds", "600"]);
    assert_eq!(other["proven"], true);
    let worth = |answer: &Value| answer["worth"].as_i64().unwrap();
    assert_eq!(other["cost"].as_i64().unwrap(), worth(&best) - worth(&other["proposal"]));
    assert!(list(&other["proposal"], "placed").iter().any(|one| one["part"] == tag && one["pinned"] == true));
    let pin = format!("{tag}=The schoolroom, 1991");
    let pinned = json(&["place", &logbook, "--pin", &pin, "--seconds", "600"]);
    assert_eq!(pinned["worth"], other["proposal"]["worth"]);
    assert!(!list(&other, "other_moves").is_empty());
}

#[test]
fn wrong_tags_machines_goals_and_pins_are_named() {
    let (_folder, logbook) = sample();
    assert!(reason(&["what-if", &logbook, "9999", "The studio, 1999"]).contains("9999"));
    assert!(reason(&["what-if", &logbook, "0034", "The attic"]).contains("The attic"));
    assert!(reason(&["place", &logbook, "--pin", "0034"]).contains("0034"));
    assert!(reason(&["place", &logbook, "--weigh", "beauty=3"]).contains("beauty"));
    assert!(reason(&["place", &logbook, "--weigh", "dates=11"]).contains("dates=11"));
    let two = reason(&["place", &logbook, "--pin", "0034=The schoolroom, 1991", "--pin", "0035=The schoolroom, 1991"]);
    assert!(["0034", "0035", "The schoolroom, 1991"].iter().all(|name| two.contains(name)), "{two}");
    assert_eq!(benchwright(&["place", &logbook, "--seconds", "-1"]).status.code(), Some(2));
}

#[test]
fn soonest_puts_complete_machines_with_little_work_first() {
    let (_folder, logbook) = sample();
    let answer = json(&["place", &logbook, "--soonest", "--seconds", "600"]);
    let outlook: Vec<(i64, i64)> = list(&answer, "outlook")
        .iter()
        .map(|of| (of["missing"].as_i64().unwrap(), of["minutes"].as_i64().unwrap()))
        .collect();
    assert!(outlook.is_sorted(), "{outlook:?}");
    let usual = json(&["place", &logbook, "--seconds", "600"]);
    let complete = |answer: &Value| list(answer, "outlook").iter().filter(|of| of["missing"] == 0).count();
    assert!(complete(&answer) >= complete(&usual));
}

const TESTED: &str = "The library catalogue, 1994";

/// Whether a move takes something out of the tested machine of the sample, or puts something in.
fn touches(one: &Value) -> bool {
    one["say"].as_str().unwrap().contains(TESTED)
}

#[test]
fn a_tested_machine_is_left_alone_and_what_is_moved_all_the_same_says_what_it_voids() {
    let (_folder, logbook) = sample();
    let on = ["--seconds", "600", "--on", "2026-11-24"];
    let place = |more: &[&str]| json(&[&["place", &logbook], &on[..], more].concat());
    let plain = place(&[]);
    let of_library = |answer: &Value| {
        list(answer, "outlook").iter().find(|of| of["machine"] == TESTED).unwrap()["left_as_it_is"].as_bool().unwrap()
    };
    assert!(of_library(&plain) && !list(&plain, "moves").iter().any(touches), "{:#}", plain["moves"]);
    assert!(list(&plain, "voided").is_empty());

    for may in [&["--may-touch-all"][..], &["--may-touch", TESTED]] {
        let touched = place(may);
        assert!(!of_library(&touched));
        let moves = list(&touched, "moves");
        let one = moves.iter().find(|one| touches(one)).expect("its disk does better elsewhere");
        let voids: Vec<(&str, u64)> = one["voids"]
            .as_array()
            .unwrap()
            .iter()
            .map(|test| (test["test"].as_str().unwrap(), test["minutes"].as_u64().unwrap()))
            .collect();
        assert!(voids.contains(&("Eight hours of work without a fault", 480)), "{voids:?}");
        assert!(one["minutes"].as_u64().unwrap() > 0 && one["part"].is_string());
        // Each machine's tests are lost once, however many parts come and go.
        let voided = list(&touched, "voided");
        let lost: u64 = voids.iter().map(|(_, minutes)| minutes).sum();
        assert_eq!((voided.len(), voided[0]["minutes"].as_u64()), (1, Some(lost)));
        assert!(voided[0]["worth"].as_i64().unwrap() < 0);
    }
    let words = text(&[&["place", &logbook, "--may-touch-all"], &on[..]].concat());
    assert!(words.contains(&format!("“Eight hours of work without a fault” (480 min) of {TESTED}.")), "{words}");
    assert!(reason(&["place", &logbook, "--may-touch", "The attic"]).contains("The attic"));

    // A disk of the family computer in the tested machine: what the plain proposal does anyhow is told apart.
    let tried = json(&[&["what-if", &logbook, "0052", TESTED], &on[..]].concat());
    let say = |answer: &Value, name: &str| -> Vec<String> {
        list(answer, name).iter().map(|one| one["say"].as_str().unwrap().to_owned()).collect()
    };
    let anyhow = say(&plain, "moves");
    assert!(say(&tried, "other_moves").iter().any(|one| one.contains("0052")));
    assert!(say(&tried, "other_moves").iter().all(|one| !anyhow.contains(one)));
    assert!(!say(&tried, "anyhow").is_empty() && say(&tried, "anyhow").iter().all(|one| anyhow.contains(one)));
    let words = text(&[&["what-if", &logbook, "0052", TESTED], &on[..]].concat());
    assert!(!say(&tried, "anyhow").iter().any(|one| words.contains(one.as_str())), "{words}");
}
