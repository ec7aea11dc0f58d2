//! The four words that a row of the tables may say, and what the answer makes of each.

use benchwright::assess::Verdict;
use benchwright::record::*;

use super::super::support::*;
use super::Scene;

/// What a row says, what the machine's answer then is, and whether it is told.
const EFFECTS: [(&str, Verdict, bool); 4] = [
    ("nothing", Verdict::Yes, false),
    ("remark", Verdict::Yes, true),
    ("not_known", Verdict::NotKnown, true),
    ("no", Verdict::No, true),
];

fn check(scene: &Scene, what: &str, (effect, verdict, is_told): (&str, Verdict, bool)) {
    let power = scene.of_machine();
    assert_eq!(power.verdict, verdict, "{what} of {effect}: {:?}", power.reasons);
    assert_eq!(power.reasons.len(), usize::from(is_told), "{what} of {effect}: {:?}", power.reasons);
}

#[test]
fn an_answer_that_raises_nothing_does_what_its_row_says() {
    for row in EFFECTS {
        let mut scene = Scene::sound().with_rows(&format!(
            r#"
            [[question]]
            name = "fuse"
            kinds = ["mainboard"]
            ask = "The fuse of the keyboard?"
            topic = "fuses"
            power = "nothing"
            answer = [{{ name = "whole", say = "Whole", power = "nothing" }}, {{ name = "bridged", say = "Bridged", power = "{}" }}]
            source = "common practice, no source"
            "#,
            row.0
        ));
        let seen = survey(12, scene.board(), at("2026-05-01", 8), &[("fuse", "bridged")]);
        scene.board().surveys.push(seen);
        check(&scene, "an answer", row);
    }
}

#[test]
fn an_open_finding_that_no_work_is_for_does_what_its_row_says() {
    for row in EFFECTS {
        let mut scene = Scene::sound().with_rows(&format!(
            "[[finding]]\nname = \"hums\"\nsay = \"It hums\"\nseverity = \"plain\"\npower = \"{}\"\n",
            row.0
        ));
        let hums = finding(50, scene.board(), "hums", at("2026-02-01", 8), Severity::Plain);
        scene.board().findings.push(hums);
        check(&scene, "a finding", row);
    }
}

#[test]
fn outstanding_work_does_what_its_row_says() {
    for row in EFFECTS {
        let mut scene = Scene::sound().with_rows(&format!(
            r#"
            [[finding]]
            name = "hums"
            say = "It hums"
            severity = "plain"
            power = "nothing"

            [[work]]
            name = "damp-hum"
            say = "Put a pad under it"
            findings = ["hums"]
            minutes = 5
            nature = "care"
            hold = "ready"
            power = "{}"
            who = "oneself"
            sitting = "wet"
            source = "common practice, no source"
            cover = "on"
            "#,
            row.0
        ));
        let hums = finding(50, scene.board(), "hums", at("2026-02-01", 8), Severity::Plain);
        scene.board().findings.push(hums);
        check(&scene, "work", row);
    }
}

#[test]
fn a_question_that_nobody_answered_does_what_its_row_says() {
    for row in EFFECTS {
        let scene = Scene::sound().with_rows(&format!(
            r#"
            [[question]]
            name = "fuse"
            kinds = ["mainboard"]
            ask = "The fuse of the keyboard?"
            topic = "fuses"
            power = "{}"
            answer = [{{ name = "whole", say = "Whole", power = "nothing" }}, {{ name = "none", say = "None", power = "nothing" }}]
            source = "common practice, no source"
            "#,
            row.0
        ));
        check(&scene, "a question", row);
    }
}

#[test]
fn a_test_that_does_not_hold_does_what_its_row_says_and_a_failed_one_what_is_graver() {
    for row in EFFECTS {
        let rows = |when_failed: &str| {
            format!(
                r#"
                [[proof]]
                name = "beep"
                say = "A beep"
                kinds = ["mainboard"]
                required = false
                power = "{}"
                {when_failed}
                rig = "Bench"
                minutes = 1
                criterion = "It beeps"
                source = "common practice, no source"
                "#,
                row.0
            )
        };
        check(&Scene::sound().with_rows(&rows("")), "a test never run", row);
        let run = |result| {
            let mut scene = Scene::sound().with_rows(&rows("power_when_failed = \"no\""));
            scene.board().proofs.push(proof(41, "beep", at("2026-05-01", 8), result));
            scene.verdict()
        };
        assert_eq!(run(ProofResult::Failed), Verdict::No, "{}", row.0);
        assert_eq!(run(ProofResult::Passed), Verdict::Yes, "{}", row.0);
        // What nobody could decide is not known where a failure would say no.
        assert!(run(ProofResult::Undecided) != Verdict::Yes, "{}", row.0);
    }
}
