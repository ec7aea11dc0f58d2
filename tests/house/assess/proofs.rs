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
fn recapping_voids_a_load_test_and_a_badge_does_not() {
    let mut supply = supply(at("2026-05-01", 5), ProofResult::Passed);
    supply.work.push(work(30, &supply, "glue-badge", WorkState::Done, at("2026-05-10", 10)));
    assert!(standing(&supply, TODAY).is_good());
    supply.work.push(work(31, &supply, "recap", WorkState::Done, at("2026-05-11", 12)));
    assert_eq!(standing(&supply, TODAY), Standing::Voided { work: Some(id(31)), part: id(2) });
}

#[test]
fn on_one_evening_the_order_of_entry_says_what_came_after() {
    for (sequence, good) in [(4, true), (6, false)] {
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
fn the_last_decided_run_holds() {
    let mut supply = supply(at("2026-05-01", 5), ProofResult::Passed);
    supply.proofs.push(proof(41, "load-test", at("2026-05-02", 6), ProofResult::Undecided));
    assert!(standing(&supply, TODAY).is_good());
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
