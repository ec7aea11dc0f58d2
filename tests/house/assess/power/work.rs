//! Work that was done, begun or failed, and what it touched.

use benchwright::assess::{Reason, Verdict};
use benchwright::record::*;

use super::super::support::*;
use super::Scene;
use crate::records;

const DONE: &str = "2026-05-10";

/// Work in the restorer's own words on the board, or on the supply.
fn own(on_supply: bool, touches: Touches, nature: Nature, state: WorkState) -> Scene {
    let mut scene = Scene::sound();
    let file = if on_supply { scene.supply() } else { scene.board() };
    let title = "Straighten the lead".to_owned();
    let piece = Work { title, touches, nature, hold: Hold::Looks, ..work(30, file, "", state, at(DONE, 50)) };
    file.work.push(piece);
    scene
}

#[test]
fn own_work_on_a_board_is_asked_about_or_looked_after() {
    let cases = [
        (Touches::Unstated, Verdict::NotKnown, "did “Straighten the lead” touch anything electrical? Not stated yet."),
        (Touches::Electrical, Verdict::NotKnown, "not looked at or tested since “Straighten the lead”."),
        (Touches::NothingElectrical, Verdict::Yes, ""),
    ];
    for (touches, verdict, sentence) in cases {
        for nature in Nature::ALL {
            let (given, said) = own(false, touches, *nature, WorkState::Done).said();
            assert_eq!(given, verdict, "{} {}: {said:?}", touches.name(), nature.name());
            match said.first() {
                Some(said) => assert_eq!(*said, format!("0001 (Velmar mainboard): {sentence}")),
                None => assert!(sentence.is_empty(), "{}", touches.name()),
            }
        }
    }
}

#[test]
fn a_look_or_a_passed_test_afterwards_settles_it_and_one_before_does_not() {
    for touches in [Touches::Unstated, Touches::Electrical] {
        for (on, verdict) in [("2026-05-11", Verdict::Yes), ("2026-05-09", Verdict::NotKnown)] {
            let mut looked = own(false, touches, Nature::Repair, WorkState::Done);
            let seen = survey(12, looked.board(), at(on, 40), &super::ALL_WELL);
            looked.board().surveys.push(seen);
            assert_eq!(looked.verdict(), verdict, "looked at on {on}");

            let mut tested = own(false, touches, Nature::Care, WorkState::Done);
            tested.board().proofs.push(proof(41, "boot", at(on, 40), ProofResult::Passed));
            assert_eq!(tested.verdict(), verdict, "started on {on}");
        }
    }
}

#[test]
fn own_work_on_a_supply_asks_for_its_load_test_again() {
    for touches in [Touches::Unstated, Touches::Electrical] {
        let scene = own(true, touches, Nature::Repair, WorkState::Done);
        let power = scene.of_machine();
        assert_eq!(power.verdict, Verdict::NotKnown, "{}", touches.name());
        assert!(matches!(power.reasons[..], [Reason::PartProof { part, .. }] if part == id(2)), "{:?}", power.reasons);
        assert_eq!(scene.of_part(2).unwrap().verdict, Verdict::Yes, "the load test is what is next");
    }
    assert_eq!(own(true, Touches::NothingElectrical, Nature::Repair, WorkState::Done).verdict(), Verdict::Yes);
}

#[test]
fn own_care_that_touched_something_electrical_in_a_supply_asks_for_it_too() {
    assert_eq!(own(true, Touches::Electrical, Nature::Care, WorkState::Done).verdict(), Verdict::NotKnown);
}

#[test]
fn work_that_is_still_to_be_done_has_touched_nothing() {
    for state in [WorkState::Open, WorkState::Waiting, WorkState::Waived] {
        assert_eq!(own(false, Touches::Unstated, Nature::Care, state).verdict(), Verdict::Yes, "{}", state.name());
    }
    for state in [WorkState::Doing, WorkState::Failed] {
        assert_eq!(own(false, Touches::Unstated, Nature::Care, state).verdict(), Verdict::NotKnown, "{}", state.name());
    }
}

#[test]
fn a_supply_recapped_after_its_load_test_is_tested_again() {
    for (on, verdict) in [("2026-05-10", Verdict::NotKnown), ("2026-04-10", Verdict::Yes)] {
        let mut scene = Scene::sound();
        let mut position = capacitor(70, scene.supply(), "C1", CapacitorState::Sound);
        look_at(71, &mut position, at(on, 50), CapacitorState::Sound);
        "1000 µF 6.3 V, new".clone_into(&mut position.looks[0].replaced_by);
        scene.supply().capacitors.push(position);
        let (given, said) = scene.said();
        assert_eq!(given, verdict, "replaced on {on}: {said:?}");
    }
}

/// A supply whose last load test failed, with +5 V far out of its limits in it.
fn failed_supply() -> Scene {
    let mut scene = Scene::sound();
    let failed = proof(41, "load-test", at("2026-05-01", 40), ProofResult::Failed);
    let (proof, part) = (Some(failed.id), scene.supply().part.id);
    let read = records::reading(part, at("2026-05-01", 41), "+5 V rail", 6.1, "V");
    scene.supply().proofs.push(failed);
    scene.supply().readings.push(Reading { id: id(80), proof, ..read });
    scene
}

#[test]
fn a_supply_that_failed_is_tried_on_its_load_again_once_it_was_mended() {
    let mut scene = failed_supply();
    assert_eq!((scene.verdict(), scene.of_part(2).unwrap().verdict), (Verdict::No, Verdict::No));
    let title = "Put the feedback right".to_owned();
    let piece = |supply: &PartFile, on| {
        let mended = work(30, supply, "", WorkState::Done, at(on, 50));
        Work { title: title.clone(), touches: Touches::Electrical, ..mended }
    };
    for (on, in_machine, alone) in [
        ("2026-04-20", Verdict::No, Verdict::No),
        ("2026-05-10", Verdict::NotKnown, Verdict::Yes),
        ("2026-05", Verdict::No, Verdict::No),
        ("2027-01-01", Verdict::No, Verdict::No),
    ] {
        let mut mended = failed_supply();
        let piece = piece(mended.supply(), on);
        mended.supply().work.push(piece);
        let given = (mended.verdict(), mended.of_part(2).unwrap().verdict);
        assert_eq!(given, (in_machine, alone), "mended {on}: {:?}", mended.said());
    }
    let unstated = Work { touches: Touches::Unstated, ..piece(scene.supply(), "2026-05-10") };
    scene.supply().work.push(unstated);
    assert_eq!(scene.of_part(2).unwrap().verdict, Verdict::No, "what nobody has told to be electrical mends nothing");
}

#[test]
fn what_was_measured_before_a_repair_is_to_be_measured_again() {
    let mut scene = Scene::sound();
    let read = records::reading(scene.board().part.id, at("2026-05-01", 41), "+5 V rail at the board", 6.1, "V");
    scene.board().readings.push(Reading { id: id(80), ..read });
    assert_eq!(scene.verdict(), Verdict::No);
    let piece =
        Work { touches: Touches::Electrical, ..work(30, scene.board(), "", WorkState::Done, at("2026-05-10", 50)) };
    scene.board().work.push(piece);
    let tested = proof(42, "boot", at("2026-05-11", 60), ProofResult::Passed);
    scene.board().proofs.push(tested);
    assert_eq!(scene.verdict(), Verdict::NotKnown);
}
