//! What a machine must have before anything can be said, and what fit knows against power.

use benchwright::assess::fit::Because;
use benchwright::assess::{Reason, Verdict};
use benchwright::record::*;

use super::super::support::*;
use super::{ALL_WELL, Scene, board, supply};

#[test]
fn a_machine_without_a_board_is_not_known() {
    let mut scene = Scene::of(vec![supply(true)]);
    scene.machine.fittings.remove(0);
    let power = scene.of_machine();
    assert_eq!(power.verdict, Verdict::NotKnown);
    assert!(matches!(power.reasons[..], [Reason::BoardMissing { .. }]), "{:?}", power.reasons);
}

#[test]
fn a_machine_without_parts_or_without_a_supply_is_not_known() {
    let mut empty = Scene::of(Vec::new());
    empty.machine.fittings.clear();
    let power = empty.of_machine();
    assert_eq!(power.verdict, Verdict::NotKnown);
    assert!(matches!(power.reasons[..], [Reason::NothingPlaced { .. }]), "{:?}", power.reasons);

    let mut bare = Scene::of(vec![board(&ALL_WELL)]);
    bare.machine.fittings.pop();
    let power = bare.of_machine();
    assert_eq!(power.verdict, Verdict::NotKnown, "the supply's role is still empty");
    assert!(power.reasons.iter().any(|reason| matches!(reason, Reason::SupplyMissing { .. })), "{:?}", power.reasons);
}

#[test]
fn a_supply_or_board_that_is_only_planned_is_not_there_yet() {
    for (at_fitting, part, role) in [(0, 1, 401), (1, 2, 402)] {
        let mut scene = Scene::sound();
        scene.machine.fittings.remove(at_fitting);
        plan(&mut scene.machine, 405, role, part);
        let power = scene.of_machine();
        assert_eq!(power.verdict, Verdict::NotKnown, "{:?}", power.reasons);
        let planned = |reason: &Reason| matches!(reason, Reason::EssentialPlanned { part: of } if *of == id(part));
        assert!(power.reasons.iter().any(planned), "{:?}", power.reasons);
        assert!(scene.said().1.iter().any(|said| said.contains("is planned, not fitted")));
    }
}

/// What joins board and supply, as seen on each.
const PLUGS: &str = r#"
[[question]]
name = "board-plug"
kinds = ["mainboard"]
ask = "Which power plug?"
topic = "plugs"
power = "not_known"
agrees_with = "supply-plug"
answer = [{ name = "two-plug", say = "Two", power = "nothing" }, { name = "one-plug", say = "One", power = "nothing" }]
source = "common practice, no source"

[[question]]
name = "supply-plug"
kinds = ["power_supply"]
ask = "Which plugs?"
topic = "plugs"
power = "not_known"
answer = [{ name = "two-plug", say = "Two", power = "nothing" }, { name = "one-plug", say = "One", power = "nothing" }]
source = "common practice, no source"
"#;

#[test]
fn plugs_that_were_seen_to_differ_are_a_no() {
    for (on_supply, verdict) in [("one-plug", Verdict::Yes), ("two-plug", Verdict::No)] {
        let mut scene = Scene::sound().with_rows(PLUGS);
        let of_board = survey(13, scene.board(), at("2026-02-01", 15), &[("board-plug", "one-plug")]);
        let of_supply = survey(14, scene.supply(), at("2026-02-01", 16), &[("supply-plug", on_supply)]);
        scene.board().surveys.push(of_board);
        scene.supply().surveys.push(of_supply);
        let (given, said) = scene.said();
        assert_eq!(given, verdict, "{said:?}");
        if verdict == Verdict::No {
            let expected = "0001 (Velmar mainboard) and 0002 (Velmar power supply) are not of the same plug: \
                            “Which power plug?”";
            assert_eq!(said, [expected]);
        }
    }
}

#[test]
fn a_plug_that_no_design_tells_is_not_known() {
    let mut scene = Scene::sound();
    scene.designs[0].connectors[0].connector = "atx".to_owned();
    let (verdict, said) = scene.said();
    assert_eq!(verdict, Verdict::NotKnown, "{said:?}");
    assert!(said.iter().any(|said| said.contains("does not say which plug joins board and supply")), "{said:?}");
}

#[test]
fn a_part_whose_design_nobody_told_is_not_known() {
    let mut scene = Scene::sound();
    scene.board().part.design = None;
    let power = scene.of_machine();
    assert_eq!(power.verdict, Verdict::NotKnown);
    let unknown = |reason: &Reason| matches!(reason, Reason::Fit(Because::ConnectorsUnknown { .. }));
    assert!(power.reasons.iter().any(unknown), "{:?}", power.reasons);
}

#[test]
fn a_supply_that_is_overloaded_is_a_no_and_one_without_figures_not_known() {
    let mut heavy = Scene::sound();
    // 30 A drawn where the label prints 20 A.
    heavy.designs[0].figures.clear();
    tell(&mut heavy.designs[0], &[(Figure::Current5vA, 30.0)]);
    let power = heavy.of_machine();
    assert_eq!(power.verdict, Verdict::No);
    assert!(matches!(power.reasons[..], [Reason::Fit(Because::Load { .. })]), "{:?}", power.reasons);

    for design in 0..2 {
        let mut untold = Scene::sound();
        untold.designs[design].figures.clear();
        let power = untold.of_machine();
        assert_eq!(power.verdict, Verdict::NotKnown);
        assert!(matches!(power.reasons[..], [Reason::Fit(Because::FigureMissing { .. })]), "{:?}", power.reasons);
    }
}

/// A machine with a processor of a design with these figures, in the board's socket.
fn with_processor(figures: &[(Figure, f64)], board_volts: f64) -> Scene {
    let mut scene = Scene::sound();
    let mut design = design(303, Kind::Processor, ("", ""), &[(Side::Needs, "socket-7", 1)]);
    tell(&mut design, figures);
    scene.parts.push(made_to(part(3, "0003", Kind::Processor), &design));
    scene.designs.push(design);
    let socket = DesignConnector { id: id(30_109), ..crate::records::connector(id(301), Side::Offers, "socket-7", 1) };
    scene.designs[0].connectors.push(socket);
    tell(&mut scene.designs[0], &[(Figure::CoreVoltageV, board_volts)]);
    scene.machine.roles.push(Role { id: id(405), ..crate::records::role(id(400), Kind::Processor) });
    fit(&mut scene.machine, 406, 405, 3, at("2026-05-02", 22));
    scene
}

#[test]
fn a_processor_needs_its_voltage_and_its_cooler() {
    let sound = [(Figure::CoreVoltageV, 3.3), (Figure::Current5vA, 2.0), (Figure::CoolerNeeded, 0.0)];
    let verdict = |figures: &[(Figure, f64)], volts| with_processor(figures, volts).verdict();
    assert_eq!(verdict(&sound, 3.3), Verdict::Yes, "{:?}", with_processor(&sound, 3.3).said());
    assert_eq!(verdict(&sound, 5.0), Verdict::No, "5 V on a processor of 3.3 V");
    assert_eq!(verdict(&sound[1..], 3.3), Verdict::NotKnown, "a voltage that nobody told");
    assert_eq!(verdict(&sound[..2], 3.3), Verdict::NotKnown, "nobody told whether it needs a cooler");
    let hot = [sound[0], sound[1], (Figure::CoolerNeeded, 1.0)];
    assert_eq!(verdict(&hot, 3.3), Verdict::No, "never without its cooler");
}

#[test]
fn a_part_that_is_not_in_the_workshop_is_a_no() {
    let mut scene = Scene::sound();
    let lent = crate::records::custody(id(1), at("2026-05-20", 99), CustodyAct::Lent);
    scene.board().custody.push(lent);
    let power = scene.of_machine();
    assert_eq!(power.verdict, Verdict::No);
    assert!(matches!(power.reasons[..], [Reason::Away { .. }]), "{:?}", power.reasons);
}
