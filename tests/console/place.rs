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
