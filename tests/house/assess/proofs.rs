//! How proofs stand: good for a time, voided by the work that the rules name, failed, stale.

use benchwright::assess::Standing;
use benchwright::assess::proofs::of_part;
use benchwright::record::*;

use super::support::*;

const TODAY: &str = "2026-06-01";

fn supply(run: Moment, result: ProofResult) -> PartFile {
    let mut supply = part(2, "0002", Kind::PowerSupply);
    supply.proofs.push(proof(40, "load-test", run, result));
    supply
}

fn standing(file: &PartFile, today: &str) -> Standing {
    of_part(file, &rules(), day(today))[0].standing
}

#[test]
fn a_supply_never_tested_is_not_proven() {
    let supply = part(2, "0002", Kind::PowerSupply);
    let proofs = of_part(&supply, &rules(), day(TODAY));
    assert_eq!(proofs.len(), 1);
    assert!(proofs[0].is_lacking() && proofs[0].standing == Standing::NeverRun);
}

#[test]
fn a_pass_holds_for_its_days_and_then_is_stale() {
    // 365 days from 2025-06-02 end on 2026-06-02.
    let supply = supply(at("2025-06-02", 5), ProofResult::Passed);
    let until = Some(day("2026-06-02"));
    assert_eq!(standing(&supply, "2026-06-02"), Standing::Good { until });
    assert_eq!(standing(&supply, "2026-06-03"), Standing::Stale { since: until });
}

#[test]
fn a_pass_remembered_by_its_year_counts_from_the_first_of_january() {
    let run = supply(at("2025", 5), ProofResult::Passed);
    assert_eq!(standing(&run, "2026-01-01"), Standing::Good { until: Some(day("2026-01-01")) });
    assert_eq!(standing(&run, "2026-01-02"), Standing::Stale { since: Some(day("2026-01-01")) });
    let undated = supply(at("", 5), ProofResult::Passed);
    assert_eq!(standing(&undated, TODAY), Standing::Stale { since: None });
}

#[test]
fn recapping_voids_a_load_test_and_care_does_not() {
    let mut supply = supply(at("2026-05-01", 5), ProofResult::Passed);
    supply.work.push(work(30, &supply, "rinse", WorkState::Done, at("2026-05-10", 10)));
    assert!(standing(&supply, TODAY).is_good());
    supply.work.push(work(31, &supply, "recap", WorkState::Done, at("2026-05-11", 12)));
    assert_eq!(standing(&supply, TODAY), Standing::Voided { work: Some(id(31)), part: id(2) });
}

#[test]
fn a_repair_voids_what_decides_over_power_even_where_no_row_says_so() {
    // No row says that gluing a badge voids anything; a supply that was opened is tested again all the same.
    let mut supply = supply(at("2026-05-01", 5), ProofResult::Passed);
    supply.work.push(work(30, &supply, "glue-badge", WorkState::Done, at("2026-05-10", 10)));
    assert_eq!(standing(&supply, TODAY), Standing::Voided { work: Some(id(30)), part: id(2) });
    let mut board = part(1, "0001", Kind::Mainboard);
    board.proofs.push(proof(40, "boot", at("2026-05-01", 5), ProofResult::Passed));
    board.work.push(work(30, &board, "glue-badge", WorkState::Done, at("2026-05-10", 10)));
    assert!(standing(&board, TODAY).is_good(), "a board's start decides nothing about power");
}

#[test]
fn own_work_voids_by_what_it_touched() {
    let cases = [
        (Touches::NothingElectrical, Nature::Modification, true),
        (Touches::Electrical, Nature::Repair, false),
        (Touches::Electrical, Nature::Care, false),
        (Touches::Unstated, Nature::Repair, false),
        (Touches::Unstated, Nature::Care, false),
    ];
    for (touches, nature, good) in cases {
        let mut supply = supply(at("2026-05-01", 5), ProofResult::Passed);
        let own = work(30, &supply, "", WorkState::Done, at("2026-05-10", 10));
        supply.work.push(Work { touches, nature, ..own });
        assert_eq!(standing(&supply, TODAY).is_good(), good, "{} {}", touches.name(), nature.name());
    }
}

#[test]
fn a_capacitor_replaced_after_a_load_test_voids_it() {
    for (on, standing_then) in [
        ("2026-05-10", Standing::Voided { work: None, part: id(2) }),
        ("2026-04-10", Standing::Good { until: Some(day("2027-05-01")) }),
    ] {
        let mut supply = supply(at("2026-05-01", 5), ProofResult::Passed);
        let mut position = capacitor(70, &supply, "C1", CapacitorState::Sound);
        look_at(71, &mut position, at(on, 10), CapacitorState::Sound);
        "1000 µF 10 V, new".clone_into(&mut position.looks[0].replaced_by);
        supply.capacitors.push(position);
        assert_eq!(standing(&supply, TODAY), standing_then, "replaced on {on}");
    }
}

#[test]
fn a_run_dated_ahead_is_none() {
    let mut ahead = supply(at("2026-07-01", 5), ProofResult::Passed);
    assert_eq!(standing(&ahead, TODAY), Standing::InFuture);
    assert!(!standing(&ahead, TODAY).is_good() && standing(&ahead, "2026-07-01").is_good());
    // What was run before it holds.
    ahead.proofs.insert(0, proof(41, "load-test", at("2026-05-01", 4), ProofResult::Failed));
    assert_eq!(standing(&ahead, TODAY), Standing::Failed);
}

#[test]
fn a_figure_of_its_own_that_no_pass_can_have_makes_a_pass_none() {
    let rules = rules_of(&format!("{TABLES}\n{WARM}"));
    // 70 °C: the bound of the row. 6.1 V on +5 V: beyond the 5 % of the ATX power supply design guide 0.9.
    let cases = [("Warmest place", 55.0, "°C", true), ("Warmest place", 85.0, "°C", false), ("+5 V", 6.1, "V", false)];
    for (quantity, value, unit, good) in cases {
        let mut file = supply(at("2026-05-01", 5), ProofResult::Passed);
        file.proofs.push(proof(41, "warm-run", at("2026-05-01", 6), ProofResult::Passed));
        let noted = crate::records::reading(id(2), at("2026-05-01", 7), quantity, value, unit);
        file.readings.push(Reading { id: id(80), proof: Some(id(41)), ..noted });
        let of = |name: &str| {
            let proofs = of_part(&file, &rules, day(TODAY));
            proofs.iter().find(|proof| proof.rule.name == name).unwrap().standing
        };
        let expected = if good { Standing::Good { until: None } } else { Standing::OutOfBounds { reading: id(80) } };
        assert_eq!(of("warm-run"), expected, "{quantity} {value} {unit}");
        assert!(of("load-test").is_good(), "the figure is of another run");
        assert_eq!(of("warm-run").has_failed(), !good);
    }
}

const WARM: &str = r#"
[[proof]]
name = "warm-run"
say = "An hour under load"
kinds = ["power_supply"]
required = false
power = "nothing"
rig = "Dummy load"
minutes = 60
criterion = "Warm, not hot"
figure = [{ say = "Warmest place", unit = "°C", fails_above = 70 }]
source = "common practice, no source"
"#;

#[test]
fn on_one_evening_the_order_of_entry_says_what_came_after() {
    // The same number leaves it open which came first, and then the test counts no longer.
    for (sequence, good) in [(4, true), (5, false), (6, false)] {
        let mut supply = supply(at("2026-05-01", 5), ProofResult::Passed);
        supply.work.push(work(30, &supply, "recap", WorkState::Done, at("2026-05-01", sequence)));
        assert_eq!(standing(&supply, TODAY).is_good(), good, "work entered as number {sequence}");
    }
}

#[test]
fn work_entered_late_but_done_before_voids_nothing() {
    let mut supply = supply(at("2026-05-01", 5), ProofResult::Passed);
    supply.work.push(work(30, &supply, "recap", WorkState::Done, at("2026-04", 9)));
    assert!(standing(&supply, TODAY).is_good());
}

#[test]
fn half_done_or_failed_work_has_touched_the_part_too() {
    for (state, good) in
        [(WorkState::Doing, false), (WorkState::Failed, false), (WorkState::Open, true), (WorkState::Waived, true)]
    {
        let mut supply = supply(at("2026-05-01", 5), ProofResult::Passed);
        supply.work.push(work(30, &supply, "recap", state, at("2026-05-10", 10)));
        assert_eq!(standing(&supply, TODAY).is_good(), good, "{}", state.name());
    }
}

#[test]
fn the_last_run_holds_whatever_came_of_it() {
    let mut supply = supply(at("2026-05-01", 5), ProofResult::Passed);
    supply.proofs.push(proof(41, "load-test", at("2026-05-02", 6), ProofResult::Undecided));
    assert_eq!(standing(&supply, TODAY), Standing::Undecided);
    assert!(!standing(&supply, TODAY).has_failed());
    supply.proofs.push(proof(42, "load-test", at("2026-05-03", 7), ProofResult::Failed));
    assert_eq!(standing(&supply, TODAY), Standing::Failed);
    supply.proofs.push(proof(43, "load-test", at("2026-05-04", 8), ProofResult::Passed));
    assert!(standing(&supply, TODAY).is_good());
}

#[test]
fn a_proof_without_an_end_holds_for_ever() {
    let mut board = part(1, "0001", Kind::Mainboard);
    board.proofs.push(proof(40, "boot", at("1999-05-01", 5), ProofResult::Passed));
    assert_eq!(standing(&board, TODAY), Standing::Good { until: None });
}
