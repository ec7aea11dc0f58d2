//! Facts as they were recorded count by themselves, with a finding or without.

use benchwright::assess::{Reason, Verdict};
use benchwright::record::*;

use super::super::support::*;
use super::{ALL_WELL, Scene, TODAY, board, supply};

#[test]
fn an_answer_speaks_against_power_without_a_finding() {
    let scene = Scene::of(vec![board(&[("cell", "leaking"), ("capacitors", "sound")]), supply(true)]);
    let (verdict, said) = scene.said();
    assert_eq!(verdict, Verdict::No);
    assert_eq!(said, ["0001 (Velmar mainboard): “What feeds the clock?” was answered: Leaking."]);
}

#[test]
fn a_finding_that_followed_the_answer_speaks_in_its_place_an_older_one_does_not() {
    for (on, verdict) in [("2026-01-06", Verdict::Yes), ("2025-12-01", Verdict::No)] {
        let mut scene = Scene::of(vec![board(&[("cell", "leaking"), ("capacitors", "sound")]), supply(true)]);
        let mut cell = finding(50, scene.board(), "leaked-cell", at(on, 3), Severity::Grave);
        cell.looks[0].state = FindingState::Confirmed;
        scene.board().findings.push(cell);
        assert_eq!(scene.verdict(), verdict, "confirmed sound on {on}");
    }
}

#[test]
fn a_figure_that_goes_with_an_answer_speaks_too() {
    let mut board = board(&ALL_WELL);
    // Under 2.0 V a coin cell is spent: common practice, and the bound of the row.
    board.surveys[0].answers[0].figure = Some(1.4);
    let power = Scene::of(vec![board, supply(true)]).of_machine();
    assert_eq!(power.verdict, Verdict::Yes, "a clock without a cell hurts nothing");
    assert!(matches!(power.reasons[..], [Reason::AnswerSays { .. }]), "{:?}", power.reasons);
}

#[test]
fn an_answer_that_no_table_has_may_mean_anything() {
    let power =
        Scene::of(vec![board(&[("cell", "of-a-later-table"), ("capacitors", "sound")]), supply(true)]).of_machine();
    assert_eq!(power.verdict, Verdict::NotKnown);
    assert!(matches!(power.reasons[..], [Reason::UnknownName { .. }]), "{:?}", power.reasons);
}

#[test]
fn a_capacitor_in_a_bad_state_speaks_without_a_finding() {
    let cases = [
        (CapacitorState::Sound, Dielectric::WetAluminium, Verdict::Yes),
        (CapacitorState::Bulged, Dielectric::WetAluminium, Verdict::No),
        // No row is about bad tantalums here: nobody knows.
        (CapacitorState::Leaking, Dielectric::Tantalum, Verdict::NotKnown),
    ];
    for (state, dielectric, verdict) in cases {
        let mut scene = Scene::sound();
        let mut position = capacitor(70, scene.board(), "C7", state);
        position.position.dielectric = dielectric;
        scene.board().capacitors.push(position);
        let (given, said) = scene.said();
        assert_eq!(given, verdict, "{said:?}");
        if verdict != Verdict::Yes {
            assert!(said[0].contains("capacitor C7"), "{said:?}");
        }
    }
}

#[test]
fn a_capacitor_measured_beyond_its_print_is_no_sound_one() {
    // A 1000 µF can may be 20 % under (IEC 60384-4): 950 µF is within, 300 µF is not.
    for (measured_uf, is_well) in [(950.0, true), (300.0, false)] {
        let mut scene = Scene::sound();
        let mut position = capacitor(70, scene.board(), "C7", CapacitorState::Sound);
        look_at(71, &mut position, at("2026-02-01", 30), CapacitorState::Sound);
        position.looks[0].measured_uf = Some(measured_uf);
        scene.board().capacitors.push(position);
        let power = scene.of_machine();
        assert_eq!(power.verdict == Verdict::Yes, is_well, "{measured_uf} µF: {:?}", power.reasons);
    }
}

#[test]
fn a_survey_with_a_date_to_come_counts_for_what_it_found_bad_only() {
    let ahead = |answers: &[(&str, &str)], before: &[(&str, &str)]| {
        let mut scene = Scene::of(vec![board(before), supply(true)]);
        let slip = survey(12, scene.board(), at("2027-05-01", 40), answers);
        scene.board().surveys.push(slip);
        scene.verdict()
    };
    assert!("2027-05-01" > TODAY);
    assert_eq!(ahead(&ALL_WELL, &[]), Verdict::NotKnown, "nobody has looked yet");
    assert_eq!(ahead(&[("cell", "leaking")], &ALL_WELL), Verdict::No);
    assert_eq!(ahead(&[("cell", "sound")], &[("cell", "leaking"), ("capacitors", "sound")]), Verdict::No);
    assert_eq!(ahead(&ALL_WELL, &ALL_WELL), Verdict::Yes);
}

/// A question that always applies to a supply, and never needs to apply to a board.
const EARTH: &str = r#"
[[question]]
name = "earth"
kinds = ["mainboard", "power_supply"]
ask = "Is the earth connected?"
topic = "mains"
power = "not_known"
always_on = ["power_supply"]
answer = [{ name = "connected", say = "Connected", power = "nothing" }, { name = "open", say = "Open", power = "no" }]
source = "common practice, no source"
"#;

#[test]
fn what_is_said_not_to_apply_is_told_with_its_reason_and_not_known_where_it_always_applies() {
    let answered = |on_board: &str, on_supply: &str| {
        let mut scene = Scene::sound().with_rows(EARTH);
        let of_board = survey(13, scene.board(), at("2026-02-01", 15), &[("earth", on_board)]);
        let of_supply = survey(14, scene.supply(), at("2026-02-01", 16), &[("earth", on_supply)]);
        scene.board().surveys.push(of_board);
        scene.supply().surveys.push(of_supply);
        scene
    };
    assert_eq!(answered("connected", "connected").verdict(), Verdict::Yes);
    let mut on_board = answered("does not apply", "connected");
    on_board.board().surveys[1].answers[0].note = "No mains here.".to_owned();
    let (verdict, said) = on_board.said();
    assert_eq!(verdict, Verdict::Yes);
    assert_eq!(said, ["0001 (Velmar mainboard): “Is the earth connected?” is said not to apply: No mains here."]);
    let (verdict, said) = answered("connected", "does not apply").said();
    assert_eq!(verdict, Verdict::NotKnown);
    assert!(said[0].ends_with("is said not to apply: no reason given."), "{said:?}");
}

/// Rails are answered by eye and meter, or by a test.
const RAILS: &str = r#"
[[question]]
name = "rails"
kinds = ["mainboard"]
ask = "Rails to ground?"
topic = "rails"
power = "not_known"
shown_by = "rails-to-ground"
answer = [{ name = "clear", say = "Clear", power = "nothing" }, { name = "shorted", say = "Shorted", power = "no" }]
source = "common practice, no source"

[[proof]]
name = "rails-to-ground"
say = "Rails to ground"
kinds = ["mainboard"]
required = false
power = "nothing"
power_when_failed = "no"
rig = "Meter"
minutes = 5
criterion = "No rail near zero"
source = "common practice, no source"
"#;

fn measured_in_february() -> Scene {
    let mut scene = Scene::sound().with_rows(RAILS);
    let measured = survey(13, scene.board(), at("2026-02-01", 15), &[("rails", "clear")]);
    scene.board().surveys.push(measured);
    scene
}

#[test]
fn rails_are_not_known_again_once_something_was_soldered() {
    assert_eq!(measured_in_february().verdict(), Verdict::Yes);

    let mut recapped = measured_in_february();
    let mut position = capacitor(70, recapped.board(), "C7", CapacitorState::Sound);
    look_at(71, &mut position, at("2026-03-01", 30), CapacitorState::Sound);
    "1000 µF 6.3 V, new".clone_into(&mut position.looks[0].replaced_by);
    recapped.board().capacitors.push(position);
    let power = recapped.of_machine();
    assert_eq!(power.verdict, Verdict::NotKnown);
    assert!(matches!(&power.reasons[..], [Reason::NotLooked { question, .. }] if question.name == "rails"));

    // The test answers as well as a survey, as long as nothing was soldered after it either.
    for (run, verdict) in [("2026-04-01", Verdict::Yes), ("2026-02-20", Verdict::NotKnown)] {
        let mut tested = measured_in_february();
        tested.parts.clone_from(&recapped.parts);
        tested.board().proofs.push(proof(41, "rails-to-ground", at(run, 31), ProofResult::Passed));
        assert_eq!(tested.verdict(), verdict, "measured on {run}");
    }

    for (rule, verdict) in [("recap", Verdict::NotKnown), ("rinse", Verdict::Yes)] {
        let mut worked = measured_in_february();
        let piece = work(30, worked.board(), rule, WorkState::Done, at("2026-03-01", 30));
        worked.board().work.push(piece);
        assert_eq!(worked.verdict(), verdict, "{rule} solders something, or does not");
    }
}
