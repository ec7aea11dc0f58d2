//! Fault-finding: what trials clear, accuse, and leave open, and what is proposed next.

use benchwright::assess::faults::{CaseAnswer, Found, Proposal, Suspicion, found, not_reproduced, of_case};
use benchwright::assess::{Answers, PartState};
use benchwright::record::*;
use benchwright::rules::Rules;

use super::support::*;
use crate::records;

const TODAY: &str = "2026-06-01";

/// A part of a kind, with every proof of it passed lately where it is to be proven.
fn proven(number: u128, tag: &str, kind: Kind, is_proven: bool) -> PartFile {
    let rules = Rules::shipped();
    let mut file = part(number, tag, kind);
    let mut answers: Vec<Answer> = Vec::new();
    for question in rules.questions_for(kind) {
        let name = question.answers.iter().find(|answer| answer.finding.is_none()).map(|answer| answer.name.as_str());
        answers.push(answer(&question.name, name.unwrap_or("does not apply")));
    }
    let looked = at("2026-05-01", number as u32);
    let surveyed = Survey { id: id(number + 300), ..records::survey(file.part.id, looked, answers) };
    file.surveys.push(surveyed);
    if is_proven {
        for (place, rule) in rules.proofs_for(kind).iter().enumerate() {
            let run = at("2026-05-02", 100 + number as u32);
            file.proofs.push(proof(number * 100 + place as u128, &rule.name, run, ProofResult::Passed));
        }
    }
    file
}

/// A machine of board, memory and video card, none proven; proven memory 0013 and an unproven card 0014 on the shelf.
fn workshop(case: FaultCaseFile) -> Logbook {
    let parts = vec![
        proven(1, "0001", Kind::Mainboard, false),
        proven(2, "0002", Kind::MemoryModule, false),
        proven(3, "0003", Kind::VideoCard, false),
        proven(13, "0013", Kind::MemoryModule, true),
        proven(14, "0014", Kind::VideoCard, false),
    ];
    let roles = [(30, Kind::Mainboard), (31, Kind::MemoryModule), (32, Kind::VideoCard)];
    let mut orla = machine(20, "Orla", ("1995", "1997"), &roles);
    for (fitting, (role, part)) in [(30, 1), (31, 2), (32, 3)].into_iter().enumerate() {
        fit(&mut orla, 40 + fitting as u128, role, part, at("2026-05-03", 500 + fitting as u32));
    }
    orla.cases.push(case);
    logbook(parts, vec![], vec![orla])
}

fn case() -> FaultCaseFile {
    FaultCaseFile {
        case: FaultCase {
            id: id(60),
            part: None,
            machine: Some(id(20)),
            opened: at("2026-05-10", 600),
            symptom: "No picture, three beeps".to_owned(),
            state: CaseState::Open,
            outcome: String::new(),
        },
        trials: Vec::new(),
    }
}

fn trial(number: u32, out: u128, good: Option<u128>, result: TrialResult) -> Trial {
    Trial {
        id: id(600 + u128::from(number)),
        case: id(60),
        tried: at("2026-05-11", 700 + number),
        configuration: String::new(),
        step: "Exchanged".to_owned(),
        suspect: Some(id(out)),
        known_good: good.map(id),
        result,
        note: String::new(),
        codes: String::new(),
    }
}

fn answer_of(case: FaultCaseFile, measured: bool) -> CaseAnswer {
    let mut logbook = workshop(case.clone());
    if measured {
        let mut board = (*logbook.parts[0]).clone();
        let reading = records::reading(id(1), at("2026-05-10", 650), "+5 V to ground, unpowered", 180.0, "Ω");
        board.readings.push(Reading { id: id(99), ..reading });
        logbook.parts[0] = board.into();
    }
    let rules = Rules::shipped();
    let answers = Answers::of(&logbook, &rules, day(TODAY));
    assert_eq!(answers.part(id(13)).unwrap().state, PartState::Proven, "the test's known-good part is one");
    let answer = of_case(&case, &answers, &logbook, &rules);
    let sum: f64 = answer.suspects.iter().map(|suspect| suspect.share).sum::<f64>() + answer.elsewhere;
    assert!((sum - 1.0).abs() < 1e-12);
    answer
}

fn standing(answer: &CaseAnswer, part: u128) -> Suspicion {
    answer.suspects.iter().find(|suspect| suspect.part == id(part)).unwrap().suspicion
}

#[test]
fn rails_are_measured_before_anything_is_exchanged() {
    assert_eq!(answer_of(case(), false).next, Some(Proposal::MeasureRails { part: id(1) }));
    assert!(matches!(answer_of(case(), true).next, Some(Proposal::Exchange { .. })));
}

/// Of three suspects alike only the memory has a proven counterpart. Three of eleven parts of suspicion: an answer is
/// worth 0.845 bits by Shannon's formula (checked with scipy.stats.entropy([3, 8], base=2) = 0.8453509366224365).
#[test]
fn the_exchange_proposed_is_one_that_can_be_made_with_a_known_good_part() {
    let Some(Proposal::Exchange { suspect, known_good, bits }) = answer_of(case(), true).next else { panic!() };
    assert_eq!((suspect, known_good), (id(2), id(13)));
    assert!((bits - 0.845_350_936_622_436_5).abs() < 1e-12, "{bits}");
}

#[test]
fn a_symptom_that_stays_clears_and_one_that_goes_accuses() {
    let mut stays = case();
    stays.trials.push(trial(1, 2, Some(13), TrialResult::SymptomStays));
    let answer = answer_of(stays, true);
    assert_eq!(standing(&answer, 2), Suspicion::Cleared { by: id(601) });
    assert_eq!(answer.suspects.last().unwrap().part, id(2));
    assert_eq!(
        answer.next,
        Some(Proposal::FindKnownGood { suspect: id(1), kind: Kind::Mainboard }),
        "no other counterpart is proven, and nothing starts without board or video"
    );

    let mut goes = case();
    goes.trials.push(trial(1, 2, Some(13), TrialResult::SymptomGone));
    let answer = answer_of(goes, true);
    assert_eq!(standing(&answer, 2), Suspicion::Accused { by: id(601) });
    assert_eq!(answer.next, Some(Proposal::Settle { part: id(2) }));
}

#[test]
fn a_part_that_was_never_proven_clears_nobody() {
    let mut case = case();
    case.trials.push(trial(1, 3, Some(14), TrialResult::SymptomStays));
    let answer = answer_of(case, true);
    assert_eq!(standing(&answer, 3), Suspicion::Suspected);
    assert_eq!(answer.doubtful, [id(601)]);
}

#[test]
fn when_all_parts_are_cleared_the_fault_is_no_part() {
    let mut case = case();
    for (number, out) in [(1, 1), (2, 2), (3, 3)] {
        case.trials.push(trial(number, out, None, TrialResult::SymptomStays));
    }
    let answer = answer_of(case, true);
    assert!(answer.elsewhere > 0.8);
    assert_eq!(answer.next, Some(Proposal::LookElsewhere));
}

#[test]
fn a_case_ends_in_a_finding_with_work_or_as_not_reproduced() {
    let rules = Rules::shipped();
    let file = case();
    let board = proven(1, "0001", Kind::Mainboard, false);
    let mut ids = Ids::from(9000);
    let entries = |what: &str, ids: &mut Ids| {
        let end = Found { what, outcome: "Joint under the socket", place_on_part: "", severity: Severity::Plain };
        let change = found(&file, &board, &end, &rules, day(TODAY), &mut || ids.next());
        change.steps.into_iter().map(|step| match step {
            Step::Put(entry) => entry,
            Step::Remove(_) => panic!(),
        })
    };
    let own: Vec<Entry> = entries("", &mut ids).collect();
    let [Entry::FaultCase(closed), Entry::Finding(finding), Entry::Look(look), Entry::Work(work)] = &own[..] else {
        panic!("{own:?}")
    };
    assert_eq!((closed.state, closed.outcome.as_str()), (CaseState::Found, "Joint under the socket"));
    assert_eq!((look.finding, look.state, work.finding), (finding.id, FindingState::Open, Some(finding.id)));
    let by_rule: Vec<Entry> = entries("joints-cracked", &mut ids).collect();
    assert_eq!(by_rule.len(), 3, "the rules call for the work");
    let ended = not_reproduced(&file, "Ran four hours warm");
    let [Step::Put(Entry::FaultCase(closed))] = &ended.steps[..] else { panic!() };
    assert_eq!((closed.state, closed.outcome.as_str()), (CaseState::NotReproduced, "Ran four hours warm"));
    let mut over = file.clone();
    over.case = closed.clone();
    assert_eq!(answer_of(over, true).next, None);
}
