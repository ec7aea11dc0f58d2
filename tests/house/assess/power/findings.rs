//! Findings, and what somebody decided about them.

use benchwright::assess::{Reason, Verdict};
use benchwright::record::*;

use super::super::support::*;
use super::Scene;

/// The sound machine, its board with a finding of this name.
fn found(what: &str, severity: Severity) -> Scene {
    let mut scene = Scene::sound();
    let found = finding(50, scene.board(), what, at("2026-02-01", 10), severity);
    scene.board().findings.push(found);
    scene
}

/// The same with a later look by Ada.
fn looked(mut scene: Scene, state: FindingState, severity: Severity, reason: &str) -> Scene {
    let look = look(600, 50, at("2026-03-01", 11), state, severity);
    let look = Look { who: "Ada".to_owned(), reason: reason.to_owned(), ..look };
    scene.board().findings[0].looks.push(look);
    scene
}

#[test]
fn an_open_finding_holds_power_and_so_does_one_that_came_back() {
    assert_eq!(found("residue", Severity::Plain).verdict(), Verdict::No);
    let cured = looked(found("residue", Severity::Plain), FindingState::Cured, Severity::Plain, "");
    assert_eq!(cured.verdict(), Verdict::Yes);
    let mut returned = looked(found("residue", Severity::Plain), FindingState::Cured, Severity::Plain, "");
    let again = look(601, 50, at("2026-04-01", 12), FindingState::Returned, Severity::Plain);
    returned.board().findings[0].looks.push(again);
    assert_eq!(returned.verdict(), Verdict::No);
}

#[test]
fn what_is_watched_or_accepted_is_told_with_who_decided_it_and_when() {
    for (state, word) in [(FindingState::Watched, "watched"), (FindingState::Accepted, "accepted")] {
        let scene = looked(found("residue", Severity::Plain), state, Severity::Plain, "Dry since years.");
        let (verdict, said) = scene.said();
        assert_eq!(verdict, Verdict::Yes, "{said:?}");
        assert_eq!(said, [format!("0001 (Velmar mainboard): residue, {word} on 2026-03-01 by Ada: Dry since years.")]);
    }
}

#[test]
fn the_day_of_a_decision_is_its_first_look_not_the_last_that_kept_it() {
    let mut scene = looked(found("residue", Severity::Plain), FindingState::Watched, Severity::Plain, "It is dry.");
    let kept = look(601, 50, at("2026-05-01", 12), FindingState::Watched, Severity::Plain);
    scene.board().findings[0].looks.push(kept);
    let (_, said) = scene.said();
    assert!(said[0].contains("watched on 2026-03-01 by Ada: It is dry"), "{said:?}");
}

#[test]
fn the_gravest_finding_is_never_a_yes_whoever_accepts_it() {
    for state in [FindingState::Watched, FindingState::Accepted] {
        let scene = looked(found("leaked-cell", Severity::Grave), state, Severity::Grave, "For the display case.");
        assert_eq!(scene.verdict(), Verdict::NotKnown, "{}", state.name());
    }
    // Rust is grave here and yet no more than not known.
    let scene = looked(found("rust", Severity::Grave), FindingState::Accepted, Severity::Grave, "");
    assert_eq!(found("rust", Severity::Grave).verdict(), Verdict::NotKnown);
    assert_eq!(scene.verdict(), Verdict::Yes);
}

#[test]
fn a_finding_in_own_words_counts_by_how_bad_it_is_and_once_decided_is_only_told() {
    let severities =
        [(Severity::Slight, Verdict::Yes), (Severity::Plain, Verdict::NotKnown), (Severity::Grave, Verdict::No)];
    for (severity, verdict) in severities {
        let open = found("", severity);
        assert_eq!(open.verdict(), verdict, "{}", severity.name());
        assert_eq!(open.of_machine().reasons.len(), 1, "it is told in any case");
        let accepted = looked(open, FindingState::Accepted, severity, "Always did.");
        assert_eq!(accepted.verdict(), Verdict::Yes, "{}", severity.name());
        assert!(matches!(accepted.of_machine().reasons[..], [Reason::Decided { .. }]));
    }
}

#[test]
fn a_name_that_no_table_has_is_not_known_at_least() {
    let severities =
        [(Severity::Slight, Verdict::NotKnown), (Severity::Plain, Verdict::NotKnown), (Severity::Grave, Verdict::No)];
    for (severity, verdict) in severities {
        let scene = found("of-a-later-table", severity);
        assert_eq!(scene.verdict(), verdict, "{}", severity.name());
        assert!(scene.said().1[0].contains("of-a-later-table"));
    }
}

/// Waives all that a finding calls for.
fn waive(mut scene: Scene, rules: &[&str], on: &str) -> Scene {
    for (at_rule, rule) in rules.iter().enumerate() {
        let piece = work(30 + at_rule as u128, scene.board(), rule, WorkState::Waived, at(on, 20 + at_rule as u32));
        let piece = Work { finding: Some(id(50)), reason: "It is dry dust".to_owned(), ..piece };
        scene.board().work.push(piece);
    }
    scene
}

#[test]
fn waived_work_is_told_with_who_waived_it_and_when() {
    let scene = waive(found("residue", Severity::Plain), &["neutralise", "rinse"], "2026-03-01");
    let (verdict, said) = scene.said();
    assert_eq!(verdict, Verdict::Yes, "{said:?}");
    let expected = "0001 (Velmar mainboard): waived on 2026-03-01 by Ada: neutralise the residue: It is dry dust.";
    assert_eq!(said, [expected]);
}

#[test]
fn waiving_does_not_help_the_gravest_nor_what_came_after_it_or_is_left() {
    let all = ["cut-out", "neutralise", "rinse", "look-under"];
    assert_eq!(waive(found("leaked-cell", Severity::Grave), &all, "2026-03-01").verdict(), Verdict::NotKnown);
    assert_eq!(waive(found("residue", Severity::Plain), &["rinse"], "2026-03-01").verdict(), Verdict::No);
    // Waived in January says nothing of what was found in February.
    assert_eq!(waive(found("residue", Severity::Plain), &["neutralise", "rinse"], "2026-01-20").verdict(), Verdict::No);
}

#[test]
fn own_work_that_holds_power_is_told_when_it_is_waived() {
    let mut scene = Scene::sound();
    let piece = Work { hold: Hold::Power, ..work(30, scene.board(), "", WorkState::Open, at("2026-02-01", 20)) };
    scene.board().work.push(piece);
    assert_eq!(scene.verdict(), Verdict::No);
    scene.board().work[0].state = WorkState::Waived;
    let power = scene.of_machine();
    assert_eq!(power.verdict, Verdict::Yes);
    assert!(matches!(power.reasons[..], [Reason::Waived { work, .. }] if work == id(30)), "{:?}", power.reasons);
}
