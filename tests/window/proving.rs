//! Proofs with their figures and files, readings over time, and the search for a fault.

use benchwright::record::{CaseState, Change, FindingSource, Kind, PartFile, ProofResult, Reading, TrialResult};
use benchwright::window::command::Command;
use benchwright::window::page::Page;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT, Queryable};

use crate::hand::{Hand, part};
use crate::part_sheet::{file, press, replace, sheet};
use crate::records::{self, moment};

fn says(hand: &Hand, text: &str) -> bool {
    hand.window.query_all_by_label_contains(text).next().is_some()
}

fn can_press(hand: &Hand, name: &str) -> bool {
    !hand.window.get_by_role_and_label(Role::Button, name).accesskit_node().is_disabled()
}

/// Takes a word in a list that opens.
fn take(hand: &mut Hand, list: &str, word: &str) {
    hand.window.get_by_role_and_label(Role::ComboBox, list).click();
    hand.window.run();
    hand.window.get_by_role_and_label(Role::Button, word).click();
    hand.window.run();
}

#[test]
fn a_load_test_is_judged_rail_by_rail_and_a_rail_out_of_limits_is_no_pass() {
    let supply = part("0030", Kind::PowerSupply, "Torrin supply");
    let mut hand = sheet(&supply, Change::new("Log"));
    press(&mut hand, "Record: Load test of the supply alone…");
    // ATX power supply design guide 0.9: +5 V within 4.75 and 5.25 V, ripple on it at most 50 mV; +12 V 11.40 to 12.60.
    hand.fill("+5 V, volts", "4.70");
    hand.fill("+5 V, load A", "8");
    assert!(says(&hand, "+5 V fail, 4.75 to 5.25 V"));
    take(&mut hand, "How it came out", "Passed");
    assert!(says(&hand, "+5 V 4.7 V speaks against a pass") && !can_press(&hand, "Keep the proof"));
    replace(&mut hand, "+5 V, volts", "5.02");
    assert!(says(&hand, "+5 V pass, 4.75 to 5.25 V"));
    hand.fill("+5 V, ripple mV", "70");
    assert!(says(&hand, "+5 V ripple 70 mV speaks against a pass"));
    replace(&mut hand, "+5 V, ripple mV", "20");
    hand.fill("+12 V, volts", "12,1");
    hand.fill("Warmest place, °C", "38");
    press(&mut hand, "Keep the proof");

    let kept = file(&hand, supply.id);
    let proof = &kept.proofs[0];
    assert_eq!((proof.test.as_str(), proof.result), ("load-test", ProofResult::Passed));
    let figures: Vec<(&str, f64, &str, &str)> = kept
        .readings
        .iter()
        .map(|reading| (reading.quantity.as_str(), reading.value, reading.unit.as_str(), reading.condition.as_str()))
        .collect();
    let wanted = [
        ("+12 V", 12.1, "V", ""),
        ("+5 V", 5.02, "V", "load 8 A"),
        ("+5 V ripple", 20.0, "mV", "load 8 A"),
        ("Warmest place", 38.0, "°C", ""),
    ];
    assert_eq!(figures, wanted);
    assert!(kept.readings.iter().all(|reading| reading.proof == Some(proof.id)));
    hand.window.key_press_modifiers(egui::Modifiers::COMMAND, egui::Key::Z);
    hand.settle();
    assert!(file(&hand, supply.id).readings.is_empty(), "one undo takes the proof back with its figures");
}

#[test]
fn one_memory_error_is_no_pass() {
    let module = part("0040", Kind::MemoryModule, "Tumok module");
    let mut hand = sheet(&module, Change::new("Log"));
    press(&mut hand, "Record: Memory test overnight…");
    hand.fill("Full passes", "4");
    hand.fill("Errors", "1");
    take(&mut hand, "How it came out", "Passed");
    // "Any error fails" (common practice).
    assert!(says(&hand, "Errors 1 speaks against a pass") && !can_press(&hand, "Keep the proof"));
    take(&mut hand, "How it came out", "Failed");
    press(&mut hand, "Keep the proof");
    assert_eq!(file(&hand, module.id).proofs[0].result, ProofResult::Failed);
}

#[test]
fn a_log_of_the_run_and_a_photograph_go_with_the_proof() {
    let disk = part("0044", Kind::HardDisk, "Drammoth disk");
    let mut hand = sheet(&disk, Change::new("Log"));
    let log = hand.folder.path().join("surface.log");
    std::fs::write(&log, "sector 0: read").unwrap();
    let picture = hand.folder.path().join("screen.png");
    image::RgbImage::new(8, 6).save(&picture).unwrap();
    press(&mut hand, "Record: Full surface read…");
    hand.fill("Log of the run, a file", log.to_str().unwrap());
    hand.press("Add the log");
    hand.until("the log", |hand| says(hand, "Goes with it: surface.log"));
    hand.fill("Photograph of the run", picture.to_str().unwrap());
    hand.press("Add the photograph");
    hand.until("the photograph", |hand| says(hand, "Goes with it: screen.png"));
    hand.fill("Unreadable sectors", "0");
    take(&mut hand, "How it came out", "Passed");
    press(&mut hand, "Keep the proof");
    let kept = file(&hand, disk.id);
    let proof = kept.proofs[0].id;
    assert_eq!((kept.attachments[0].proof, kept.attachments[0].file_name.as_str()), (Some(proof), "surface.log"));
    assert_eq!(kept.photos[0].marks[0].proof, Some(proof));
}

#[test]
fn readings_of_several_days_are_told_over_time_with_what_is_allowed() {
    let supply = part("0030", Kind::PowerSupply, "Torrin supply");
    let mut change = Change::new("Log");
    for (on, volts) in [("2025-01-10", 5.10), ("2025-06-10", 5.00), ("2026-02-10", 4.60)] {
        change.put(Reading { part: Some(supply.id), ..records::reading(supply.id, moment(on), "+5 V", volts, "V") });
    }
    let hand = sheet(&supply, change);
    // Where nobody says which family, AT's limits count: +5 V 4.80 to 5.25 V (technical reference manuals, from memory).
    let said = "+5 V over time: 2025-01-10: 5.1 V; 2025-06-10: 5 V; 2026-02-10: 4.6 V. Allowed: 4.8 to 5.25 V";
    assert!(says(&hand, said));
}

#[test]
fn a_fault_is_looked_for_by_the_trial_that_is_proposed_and_ends_in_a_finding_with_work() {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let mut hand = sheet(&board, Change::new("Log"));
    press(&mut hand, "It shows a fault…");
    assert!(!can_press(&hand, "Open the case"), "a case has a symptom");
    hand.fill("What was seen, heard or smelt", "no picture, three beeps");
    press(&mut hand, "Open the case");
    // Resistance of the rails to ground before any power or exchange.
    assert!(says(&hand, "measure each rail of 0042 (Veltrane board) to ground before anything is exchanged"));
    assert!(says(&hand, "Rule: the rails' resistance to ground comes before any exchange."));

    press(&mut hand, "Something else was tried…");
    assert!(!can_press(&hand, "Keep the trial"), "a trial says what was tried");
    hand.fill("What was tried", "Reseated the memory");
    hand.fill("Codes heard or seen", "three beeps");
    take(&mut hand, "What it showed", "Symptom stays");
    press(&mut hand, "Keep the trial");
    let trial = file(&hand, board.id).cases[0].trials[0].clone();
    assert_eq!((trial.result, trial.codes.as_str()), (TrialResult::SymptomStays, "three beeps"));
    assert!(trial.configuration.contains("0042 (Veltrane board)"), "what was fitted is filled in");

    press(&mut hand, "Close the case…");
    assert!(!can_press(&hand, "Keep: the case is closed"), "how it ended is told");
    hand.window.get_by_role_and_label(Role::MultilineTextInput, "What it was").focus();
    hand.window.run();
    hand.window.get_by_role_and_label(Role::MultilineTextInput, "What it was").type_text("cracked joint at the slot");
    hand.window.run();
    press(&mut hand, "Keep: the case is closed");
    let kept = file(&hand, board.id);
    assert_eq!(kept.cases[0].case.state, CaseState::Found);
    assert_eq!(kept.findings[0].finding.source, FindingSource::Hand);
    assert_eq!(kept.work[0].title, "Mend: cracked joint at the slot");
    assert!(says(&hand, "Work: Mend: cracked joint at the slot"), "the work is outstanding now");
}

/// A case on a board, closed in one way after its notes were written.
fn closed(end: &str, notes: &str) -> (Hand, PartFile) {
    let board = part("0042", Kind::Mainboard, "Veltrane board");
    let mut hand = sheet(&board, Change::new("Log"));
    press(&mut hand, "It shows a fault…");
    hand.fill("What was seen, heard or smelt", "stalls when warm");
    press(&mut hand, "Open the case");
    press(&mut hand, "Close the case…");
    take(&mut hand, "How it ended", end);
    assert!(!can_press(&hand, "Keep: the case is closed"), "how it ended is told");
    let field = |hand: &Hand| hand.window.get_by_role_and_label(Role::MultilineTextInput, notes).focus();
    field(&hand);
    hand.window.run();
    let words = "eight hours at 35 °C, twice";
    hand.window.get_by_role_and_label(Role::MultilineTextInput, notes).type_text(words);
    hand.window.run();
    press(&mut hand, "Keep: the case is closed");
    let kept = file(&hand, board.id);
    assert_eq!(kept.cases[0].case.outcome, words);
    assert!(kept.findings.is_empty() && kept.work.is_empty(), "nothing was found, so nothing is to be mended");
    (hand, kept)
}

#[test]
fn a_fault_that_does_not_show_again_ends_as_not_reproduced_and_can_be_looked_for_again() {
    let (mut hand, kept) = closed("Not reproduced", "How long and under what it was tried");
    assert_eq!(kept.cases[0].case.state, CaseState::NotReproduced);
    press(&mut hand, "Look again for: stalls when warm");
    assert_eq!(file(&hand, kept.part.id).cases[0].case.state, CaseState::Open);
}

#[test]
fn a_case_is_given_up_with_a_reason_and_undone_by_one_undo() {
    let (mut hand, kept) = closed("Given up", "Why it is left");
    assert_eq!(kept.cases[0].case.state, CaseState::GivenUp);
    hand.give(Command::Undo);
    hand.settle();
    assert_eq!(file(&hand, kept.part.id).cases[0].case.state, CaseState::Open);
}

#[test]
fn a_case_of_a_whole_machine_stands_on_its_sheet_with_what_the_trials_leave() {
    let mut hand = Hand::on_sample([1280.0, 5000.0]);
    let logbook = hand.window.state().session().unwrap().logbook.clone();
    let machine = logbook.machines.iter().find(|file| !file.cases.is_empty()).unwrap();
    hand.give(Command::Go(Page::Machine(machine.machine.id)));
    let symptom = machine.cases[0].case.symptom.clone();
    press(&mut hand, &format!("Look again for: {symptom}"));
    let lasting = hand.window.state().session().unwrap().logbook.machine(machine.machine.id).unwrap().cases[0].clone();
    assert_eq!(lasting.case.state, CaseState::Open);
    // What was put in was proven a month after these trials: known-good is what had passed by then.
    assert!(says(&hand, "The part put in had passed no proof, so it settles little.") && !says(&hand, "cleared by"));
    assert!(says(&hand, "no part: contacts, settings, programs"));
}
