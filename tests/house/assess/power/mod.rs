//! May power be applied? No, not known, or yes.

mod bench;
mod effects;
mod events;
mod facts;
mod findings;
mod machine;
mod one_yes;
mod readings;
mod work;

use benchwright::assess::{Answers, Power, Reason, Verdict};
use benchwright::record::*;
use benchwright::rules::{PowerEffect, Rules};

use super::support::*;

const TODAY: &str = "2026-06-01";
const ALL_WELL: [(&str, &str); 2] = [("cell", "sound"), ("capacitors", "sound")];

/// A board, surveyed in January with these answers; never where there are none. Its design tells plug and current.
fn board(answers: &[(&str, &str)]) -> PartFile {
    let mut board = made_to(part(1, "0001", Kind::Mainboard), &board_design(301, ("", "")));
    if !answers.is_empty() {
        board.surveys.push(survey(10, &board, at("2026-01-05", 5), answers));
    }
    board
}

/// A surveyed supply whose design tells plug and ratings, load-tested in May or never.
fn supply(is_tested: bool) -> PartFile {
    let mut supply = made_to(part(2, "0002", Kind::PowerSupply), &supply_design(302, ("", "")));
    supply.surveys.push(survey(11, &supply, at("2026-01-05", 6), &[("smoke-film", "sound")]));
    if is_tested {
        supply.proofs.push(proof(40, "load-test", at("2026-05-01", 9), ProofResult::Passed));
    }
    supply
}

/// A machine of board and supply, put together in May.
fn orla() -> MachineFile {
    let mut machine = machine(400, "Orla", ("", ""), &[(401, Kind::Mainboard), (402, Kind::PowerSupply)]);
    fit(&mut machine, 403, 401, 1, at("2026-05-02", 20));
    fit(&mut machine, 404, 402, 2, at("2026-05-02", 21));
    machine
}

/// What is asked about: parts of known designs, a machine, and the tables by which they are judged.
struct Scene {
    parts: Vec<PartFile>,
    designs: Vec<DesignFile>,
    machine: MachineFile,
    rules: Rules,
}

impl Scene {
    fn of(parts: Vec<PartFile>) -> Self {
        let designs = vec![board_design(301, ("", "")), supply_design(302, ("", ""))];
        Self { parts, designs, machine: orla(), rules: rules() }
    }

    /// The sound board and the tested supply.
    fn sound() -> Self {
        Self::of(vec![board(&ALL_WELL), supply(true)])
    }

    /// With further rows of the tables.
    fn with_rows(mut self, rows: &str) -> Self {
        self.rules = rules_of(&format!("{TABLES}\n{rows}"));
        self
    }

    fn board(&mut self) -> &mut PartFile {
        &mut self.parts[0]
    }

    fn supply(&mut self) -> &mut PartFile {
        &mut self.parts[1]
    }

    fn logbook(&self) -> Logbook {
        logbook(self.parts.clone(), self.designs.clone(), vec![self.machine.clone()])
    }

    fn answers(&self) -> Answers {
        Answers::of(&self.logbook(), &self.rules, day(TODAY))
    }

    fn of_machine(&self) -> Power {
        self.answers().machines[0].readiness.power.clone()
    }

    fn of_part(&self, part: u128) -> Option<Power> {
        self.answers().power_of_part(id(part))
    }

    /// The answer for the machine, and all its reasons as sentences.
    fn said(&self) -> (Verdict, Vec<String>) {
        let power = self.of_machine();
        let logbook = self.logbook();
        (power.verdict, power.reasons.iter().map(|reason| reason.sentence(&logbook, &self.rules)).collect())
    }

    fn verdict(&self) -> Verdict {
        self.of_machine().verdict
    }
}

fn of_machine(parts: Vec<PartFile>) -> Power {
    Scene::of(parts).of_machine()
}

fn of_part(parts: Vec<PartFile>, part: u128) -> Option<Power> {
    Scene::of(parts).of_part(part)
}

#[test]
fn a_surveyed_board_and_a_tested_supply_may_be_switched_on() {
    let power = of_machine(vec![board(&ALL_WELL), supply(true)]);
    assert_eq!(power.verdict, Verdict::Yes, "{:?}", power.reasons);
    assert!(power.may_be_applied() && power.reasons.is_empty());
}

#[test]
fn an_unsurveyed_part_is_not_known_and_never_yes() {
    let power = of_machine(vec![board(&[]), supply(true)]);
    assert_eq!(power.verdict, Verdict::NotKnown);
    assert!(!power.may_be_applied());
    assert!(matches!(power.reasons[..], [Reason::Unsurveyed { part }] if part == id(1)));
}

#[test]
fn what_could_hurt_and_was_not_looked_at_is_not_known() {
    for missing in ["not looked", "could not tell"] {
        let power = of_machine(vec![board(&[("cell", missing), ("capacitors", "sound")]), supply(true)]);
        assert_eq!(power.verdict, Verdict::NotKnown, "{missing}");
        assert!(matches!(&power.reasons[..], [Reason::NotLooked { question, .. }] if question.name == "cell"));
    }
    // Left out altogether is the same; what does not apply is an answer.
    assert_eq!(of_machine(vec![board(&[("capacitors", "sound")]), supply(true)]).verdict, Verdict::NotKnown);
    let answered = [("cell", "does not apply"), ("capacitors", "sound")];
    let power = of_machine(vec![board(&answered), supply(true)]);
    assert_eq!(power.verdict, Verdict::Yes);
    assert!(matches!(power.reasons[..], [Reason::SaidNotToApply { .. }]), "and it is told");
}

#[test]
fn a_second_look_at_one_thing_does_not_make_the_rest_unknown_but_years_do() {
    for (earlier, verdict) in [("2025-08-01", Verdict::Yes), ("2024-01-01", Verdict::NotKnown), ("", Verdict::NotKnown)]
    {
        let mut board = board(&[]);
        board.surveys.push(survey(10, &board, at(earlier, 5), &ALL_WELL));
        board.surveys.push(survey(12, &board, at("2026-05-01", 6), &[("cell", "sound")]));
        assert_eq!(of_machine(vec![board, supply(true)]).verdict, verdict, "first looked at “{earlier}”");
    }
    // Could not tell, this time, takes away what was known.
    let mut board = board(&ALL_WELL);
    board.surveys.push(survey(12, &board, at("2026-05-01", 6), &[("cell", "could not tell")]));
    assert_eq!(of_machine(vec![board, supply(true)]).verdict, Verdict::NotKnown);
}

#[test]
fn a_corrected_survey_answers_nothing() {
    let mut board = board(&ALL_WELL);
    let correction = survey(12, &board, at("2026-01-05", 6), &[("cell", "sound")]);
    board.surveys.push(Survey { supersedes: Some(id(10)), ..correction });
    assert_eq!(of_machine(vec![board, supply(true)]).verdict, Verdict::NotKnown, "capacitors are unanswered again");
}

#[test]
fn positions_all_looked_at_answer_for_the_capacitors() {
    for (state, verdict) in [(CapacitorState::Sound, Verdict::Yes), (CapacitorState::NotLooked, Verdict::NotKnown)] {
        let mut board = board(&[("cell", "sound")]);
        board.capacitors.push(capacitor(70, &board, "C1", CapacitorState::Sound));
        board.capacitors.push(capacitor(71, &board, "C2", state));
        assert_eq!(of_machine(vec![board, supply(true)]).verdict, verdict, "{}", state.name());
    }
}

#[test]
fn open_work_that_holds_power_or_storage_is_a_no_and_stands_before_what_is_not_known() {
    for what in ["leaked-cell", "bulged"] {
        let mut board = board(&[]);
        board.findings.push(finding(50, &board, what, at("2026-01-05", 5), Severity::Grave));
        let power = of_machine(vec![board, supply(true)]);
        assert_eq!(power.verdict, Verdict::No, "{what}");
        assert!(matches!(power.reasons[0], Reason::Work { .. }));
        assert!(power.reasons.iter().any(|reason| matches!(reason, Reason::Unsurveyed { .. })));
        let effects: Vec<PowerEffect> = power.reasons.iter().map(Reason::power_effect).collect();
        assert!(effects.is_sorted_by(|before, after| before >= after), "{effects:?}");
    }
    let mut board = board(&ALL_WELL);
    board.findings.push(finding(50, &board, "rust", at("2026-01-05", 5), Severity::Slight));
    assert_eq!(of_machine(vec![board, supply(true)]).verdict, Verdict::Yes, "looks hold nothing up");
}

#[test]
fn a_board_in_the_middle_of_a_repair_is_not_switched_on() {
    // The badge holds nothing up, but gluing it is a repair under way.
    let mut board = board(&ALL_WELL);
    board.findings.push(finding(50, &board, "badge-lost", at("2026-01-05", 5), Severity::Slight));
    assert_eq!(of_machine(vec![board.clone(), supply(true)]).verdict, Verdict::Yes);
    board
        .work
        .push(Work { finding: Some(id(50)), ..work(30, &board, "glue-badge", WorkState::Doing, at("2026-05-01", 20)) });
    assert_eq!(of_machine(vec![board, supply(true)]).verdict, Verdict::No);
}

#[test]
fn what_is_kept_apart_is_a_no() {
    let mut board = board(&ALL_WELL);
    board.part.quarantine = "something drips".to_owned();
    let power = of_machine(vec![board, supply(true)]);
    assert_eq!(power.verdict, Verdict::No);
    assert!(matches!(power.reasons[..], [Reason::KeptApart { .. }]));
}

#[test]
fn a_grave_finding_that_nobody_has_decided_on_is_a_no() {
    let mut board = board(&ALL_WELL);
    board.findings.push(finding(50, &board, "", at("2026-01-05", 5), Severity::Grave));
    assert_eq!(of_machine(vec![board.clone(), supply(true)]).verdict, Verdict::No);
    board.findings[0].looks[0].severity = Severity::Slight;
    assert_eq!(of_machine(vec![board, supply(true)]).verdict, Verdict::Yes);
}

#[test]
fn a_supply_without_a_load_test_leaves_the_machine_not_known_but_not_its_own_first_test() {
    let untested = || vec![board(&ALL_WELL), supply(false)];
    let power = of_machine(untested());
    assert_eq!(power.verdict, Verdict::NotKnown);
    assert!(matches!(power.reasons[..], [Reason::PartProof { part, .. }] if part == id(2)));
    assert_eq!(of_part(untested(), 2).unwrap().verdict, Verdict::Yes, "its own test is about the dummy load");

    let mut failed = supply(true);
    failed.proofs.push(proof(41, "load-test", at("2026-05-02", 20), ProofResult::Failed));
    assert_eq!(of_machine(vec![board(&ALL_WELL), failed]).verdict, Verdict::No);

    let mut cracked = supply(false);
    cracked.findings.push(finding(50, &cracked, "cracked-film", at("2026-01-05", 5), Severity::Grave));
    assert_eq!(of_part(vec![cracked], 2).unwrap().verdict, Verdict::No, "not even on the load");
}

#[test]
fn what_is_inside_a_part_is_connected_with_it() {
    // The board is fitted; on it sits a module with a leaked cell. The same for a supply inside a case.
    let mut module = part(3, "0003", Kind::Mainboard);
    module.part.inside = Some(id(1));
    module.surveys.push(survey(12, &module, at("2026-01-05", 7), &ALL_WELL));
    module.findings.push(finding(50, &module, "leaked-cell", at("2026-01-05", 8), Severity::Grave));
    let parts = || vec![board(&ALL_WELL), supply(true), module.clone()];
    assert_eq!(of_machine(parts()).verdict, Verdict::No);
    assert_eq!(of_part(parts(), 1).unwrap().verdict, Verdict::No);

    let mut case = part(4, "0004", Kind::Case);
    case.surveys.push(survey(13, &case, at("2026-01-05", 9), &[]));
    assert!(of_part(vec![case.clone()], 4).is_none(), "no current reaches an empty case");
    let mut inner = supply(false);
    inner.part.inside = Some(id(4));
    assert_eq!(of_part(vec![case, inner], 4).unwrap().verdict, Verdict::NotKnown);
}
