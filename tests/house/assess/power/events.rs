//! What happened under power: the last power-on, and faults that are looked for.

use benchwright::assess::{Reason, Verdict};
use benchwright::record::*;

use super::super::support::*;
use super::Scene;

fn power_on(number: u128, on: &str, result: PowerOnResult, happened: &str) -> PowerOn {
    PowerOn {
        id: id(number),
        machine: id(400),
        switched: at(on, number as u32),
        configuration: String::new(),
        settings: String::new(),
        steps: String::new(),
        result,
        happened: happened.to_owned(),
        who: "Ada".to_owned(),
    }
}

fn switched(on: &str, result: PowerOnResult, happened: &str) -> Scene {
    let mut scene = Scene::sound();
    scene.machine.power_ons.push(power_on(90, on, result, happened));
    scene
}

#[test]
fn a_machine_that_was_switched_off_at_once_is_not_switched_on_again() {
    let (verdict, said) = switched("2026-05-10", PowerOnResult::Stopped, "The floppy light stayed on.").said();
    assert_eq!(verdict, Verdict::No);
    assert_eq!(said, ["Orla was switched off at once on 2026-05-10: The floppy light stayed on."]);
    assert!(switched("2026-05-10", PowerOnResult::Well, "").of_machine().reasons.is_empty());
}

#[test]
fn only_the_last_power_on_counts() {
    let mut scene = switched("2026-05-10", PowerOnResult::Stopped, "");
    scene.machine.power_ons.push(power_on(91, "2026-05-11", PowerOnResult::Well, ""));
    assert_eq!(scene.verdict(), Verdict::Yes);
    scene.machine.power_ons.push(power_on(92, "2026-05-12", PowerOnResult::Stopped, ""));
    assert_eq!(scene.verdict(), Verdict::No);
    // Entered last, but of a day before.
    scene.machine.power_ons.push(power_on(93, "2026-05-11", PowerOnResult::Well, ""));
    assert_eq!(scene.verdict(), Verdict::No);
}

#[test]
fn a_faulty_one_is_told_and_smoke_holds() {
    let cases = [
        ("No picture, three beeps.", Verdict::Yes),
        ("A picture, then smoke from behind the slots.", Verdict::No),
        ("Something smelt.", Verdict::No),
        ("The regulator got hot.", Verdict::No),
        ("A pop, then nothing.", Verdict::No),
        ("Nothing on the photograph.", Verdict::Yes),
    ];
    for (happened, verdict) in cases {
        let scene = switched("2026-05-10", PowerOnResult::Faulty, happened);
        assert_eq!(scene.verdict(), verdict, "{happened}");
        assert!(scene.said().1[0].starts_with("Orla did not run well on 2026-05-10"), "it is told");
    }
}

#[test]
fn something_done_about_it_since_makes_it_only_to_be_known_unless_something_burnt() {
    for (happened, verdict) in [("The floppy light stayed on.", Verdict::Yes), ("Smoke.", Verdict::No)] {
        let mut scene = switched("2026-05-10", PowerOnResult::Stopped, happened);
        let rinsed = work(30, scene.board(), "rinse", WorkState::Done, at("2026-05-11", 95));
        scene.board().work.push(rinsed);
        assert_eq!(scene.verdict(), verdict, "{happened}");
        assert_eq!(scene.of_machine().reasons.len(), 1, "it is told in any case");

        let mut before = switched("2026-05-10", PowerOnResult::Stopped, happened);
        let rinsed = work(30, before.board(), "rinse", WorkState::Done, at("2026-05-09", 40));
        before.board().work.push(rinsed);
        assert_eq!(before.verdict(), Verdict::No, "what was done before it did not help");
    }
    // A fault found since settles smoke too.
    let mut found = switched("2026-05-10", PowerOnResult::Stopped, "Smoke.");
    found.machine.cases.push(case(CaseState::Found, "2026-05-10", "a capacitor in reverse"));
    assert_eq!(found.verdict(), Verdict::Yes);
}

fn case(state: CaseState, opened: &str, symptom: &str) -> FaultCaseFile {
    let case = FaultCase {
        id: id(60),
        part: None,
        machine: Some(id(400)),
        opened: at(opened, 96),
        symptom: symptom.to_owned(),
        state,
        outcome: String::new(),
    };
    FaultCaseFile { case, trials: Vec::new() }
}

#[test]
fn a_fault_with_smoke_holds_until_it_is_found_whatever_became_of_the_search() {
    let cases = [
        (CaseState::Open, Verdict::No, "a fault is still being looked for"),
        (CaseState::NotReproduced, Verdict::No, "a fault could not be reproduced"),
        (CaseState::GivenUp, Verdict::No, "the search for a fault was given up"),
        (CaseState::Found, Verdict::Yes, "a fault was found"),
    ];
    for (state, verdict, said) in cases {
        let sentence = format!("{said}: smoke behind the slots.");
        let mut on_machine = Scene::sound();
        on_machine.machine.cases.push(case(state, "2026-05-10", "smoke behind the slots"));
        assert_eq!(on_machine.said(), (verdict, vec![format!("Orla: {sentence}")]));

        let mut on_part = Scene::sound();
        let of_part = case(state, "2026-05-10", "smoke behind the slots");
        let of_part = FaultCase { part: Some(id(1)), machine: None, ..of_part.case };
        on_part.board().cases.push(FaultCaseFile { case: of_part, trials: Vec::new() });
        assert_eq!(on_part.said(), (verdict, vec![format!("0001 (Velmar mainboard): {sentence}")]));
        assert_eq!(on_part.of_part(1).unwrap().verdict, verdict, "{}", state.name());
    }
}

#[test]
fn a_fault_without_smoke_is_told_while_it_is_looked_for() {
    for state in [CaseState::Open, CaseState::NotReproduced, CaseState::GivenUp] {
        let mut scene = Scene::sound();
        scene.machine.cases.push(case(state, "2026-05-10", "three beeps"));
        let power = scene.of_machine();
        assert_eq!(power.verdict, Verdict::Yes, "{}", state.name());
        assert!(matches!(power.reasons[..], [Reason::FaultOpen { .. }]), "{:?}", power.reasons);
    }
    let mut found = Scene::sound();
    found.machine.cases.push(case(CaseState::Found, "2026-05-10", "three beeps"));
    assert!(found.of_machine().reasons.is_empty());
}

#[test]
fn smoke_that_only_a_trial_tells_of_holds_as_well() {
    let mut scene = Scene::sound();
    let mut open = case(CaseState::Open, "2026-05-10", "no picture");
    open.trials.push(Trial {
        id: id(61),
        case: id(60),
        tried: at("2026-05-11", 97),
        configuration: "Board alone".to_owned(),
        step: "Another supply".to_owned(),
        suspect: Some(id(2)),
        known_good: None,
        result: TrialResult::Undecided,
        note: "It smelt burnt.".to_owned(),
        codes: String::new(),
    });
    scene.machine.cases.push(open);
    assert_eq!(scene.verdict(), Verdict::No);
}
