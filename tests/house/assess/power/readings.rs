//! Readings out of their limits.

use benchwright::assess::{Reason, Verdict};
use benchwright::record::*;

use super::super::support::*;
use super::Scene;
use crate::records;

/// A test that measures a rail to ground; one ohm would draw five amperes from +5 V.
const TO_GROUND: &str = r#"
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
figure = [{ say = "+5 V to ground, unpowered", unit = "ohm", fails_below = 1 }]
source = "common practice, no source"
"#;

fn reading(number: u128, of: &PartFile, on: &str, quantity: &str, value: f64, unit: &str) -> Reading {
    Reading { id: id(number), ..records::reading(of.part.id, at(on, number as u32), quantity, value, unit) }
}

fn read(quantity: &str, value: f64, unit: &str) -> Scene {
    let mut scene = Scene::sound().with_rows(TO_GROUND);
    let read = reading(80, scene.board(), "2026-05-10", quantity, value, unit);
    scene.board().readings.push(read);
    scene
}

#[test]
fn a_rail_out_of_its_limits_is_a_no_and_one_within_says_nothing() {
    // ATX power supply design guide 0.9: 5 % on positive rails, 10 % on negative ones, 50 mV of ripple on +5 V.
    // To ground: the bound of the test above.
    let cases = [
        ("+5 V rail at the board", 6.1, "V", false),
        ("+5 V rail at the board", 5.02, "V", true),
        ("+5 V rail at the board", 5020.0, "mV", true),
        ("+5 V rail at the board", 4.6, "V", false),
        ("+12 V at the disk", 12.7, "V", false),
        ("−12 V", -13.1, "V", true),
        ("−12 V", -13.3, "V", false),
        ("Ripple on +5 V", 45.0, "mV", true),
        ("Ripple on +5 V", 80.0, "mV", false),
        ("+5 V to ground, unpowered", 0.4, "Ω", false),
        ("+5 V to ground, unpowered", 0.4, "kΩ", true),
        ("+5 V to ground, unpowered", 38.0, "ohm", true),
    ];
    for (quantity, value, unit, is_well) in cases {
        let power = read(quantity, value, unit).of_machine();
        let verdict = if is_well { Verdict::Yes } else { Verdict::No };
        assert_eq!(power.verdict, verdict, "{quantity} {value} {unit}: {:?}", power.reasons);
        assert_eq!(power.reasons.is_empty(), is_well);
    }
    let (_, said) = read("+5 V rail at the board", 6.1, "V").said();
    let expected =
        "0001 (Velmar mainboard): a reading is out of its limits: +5 V rail at the board 6.1 V on 2026-05-10.";
    assert_eq!(said, [expected]);
}

#[test]
fn a_spent_cell_is_only_told() {
    // Under 2.0 V a lithium coin cell is spent: common practice, no source.
    let power = read("Coin cell", 1.4, "V").of_machine();
    assert_eq!(power.verdict, Verdict::Yes);
    assert!(matches!(power.reasons[..], [Reason::ReadingOut { .. }]), "{:?}", power.reasons);
    assert!(read("Coin cell", 3.1, "V").of_machine().reasons.is_empty());
}

#[test]
fn a_later_reading_of_the_same_takes_its_place_and_so_does_a_correction() {
    let mut again = read("+5 V rail at the board", 6.1, "V");
    let later = reading(81, again.board(), "2026-05-11", "+5 V rail at the board", 5.02, "V");
    again.board().readings.push(later);
    assert_eq!(again.verdict(), Verdict::Yes);

    let mut other = read("+5 V rail at the board", 6.1, "V");
    let elsewhere = reading(81, other.board(), "2026-05-11", "+12 V rail at the board", 12.0, "V");
    other.board().readings.push(elsewhere);
    assert_eq!(other.verdict(), Verdict::No, "another rail says nothing of this one");

    let mut corrected = read("+5 V rail at the board", 6.1, "V");
    let slip = reading(81, corrected.board(), "2026-05-10", "+5 V at the board", 5.1, "V");
    corrected.board().readings.push(Reading { supersedes: Some(id(80)), ..slip });
    assert_eq!(corrected.verdict(), Verdict::Yes);
}

#[test]
fn a_test_with_figures_that_was_passed_later_takes_its_place_an_earlier_one_does_not() {
    for (run, verdict) in [("2026-05-12", Verdict::Yes), ("2026-05-01", Verdict::No)] {
        let mut scene = read("+5 V to ground, unpowered", 0.4, "Ω");
        scene.board().proofs.push(proof(41, "rails-to-ground", at(run, 90), ProofResult::Passed));
        assert_eq!(scene.verdict(), verdict, "passed on {run}");
    }
}

#[test]
fn what_was_measured_on_the_machine_counts_for_the_machine() {
    let mut scene = Scene::sound();
    let measured = records::reading(id(1), at("2026-05-10", 80), "+5 V rail at the board", 6.1, "V");
    scene.machine.readings.push(Reading { part: None, machine: Some(id(400)), ..measured });
    let (verdict, said) = scene.said();
    assert_eq!(verdict, Verdict::No);
    assert!(said[0].starts_with("Orla: a reading is out of its limits: +5 V rail at the board 6.1 V"), "{said:?}");
    assert_eq!(scene.of_part(1).unwrap().verdict, Verdict::Yes, "the board alone was not measured");
}
