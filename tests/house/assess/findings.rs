//! How findings come up after surveys and work, close, return and grow worse.

use benchwright::assess::findings::{TurnKind, after_survey, after_work, what_changed};
use benchwright::record::*;

use super::support::*;

/// A board with one survey answered; its entries written.
fn surveyed(board: &mut PartFile, number: u128, looked: Moment, answers: &[(&str, &str)]) -> Vec<TurnKind> {
    let survey = survey(number, board, looked, answers);
    take(board, survey)
}

fn take(board: &mut PartFile, survey: Survey) -> Vec<TurnKind> {
    let mut ids = Ids::from(survey.id.uuid().as_u128() * 1000);
    let entries = after_survey(board, &survey, &rules(), &mut || ids.next());
    let turns = what_changed(board, &entries).into_iter().map(|turn| turn.turn).collect();
    let sequence = survey.looked.sequence + 1;
    board.surveys.push(survey);
    write(board, entries, sequence);
    turns
}

fn done(board: &mut PartFile, number: u128, rule: &str, on: &str, sequence: u32) {
    let finding = board.findings.first().map(|known| known.finding.id);
    let work = Work { finding, ..work(number, board, rule, WorkState::Done, at(on, sequence)) };
    let mut ids = Ids::from(number * 1000);
    let entries = after_work(board, &work, &rules(), &mut || ids.next());
    write(board, vec![work.into()], sequence);
    write(board, entries, sequence + 1);
}

fn cure_the_leak(board: &mut PartFile) {
    done(board, 30, "cut-out", "2026-02-01", 20);
    done(board, 31, "neutralise", "2026-02-01", 22);
    done(board, 32, "rinse", "2026-02-01", 24);
    done(board, 33, "look-under", "2026-02-03", 26);
}

#[test]
fn a_leaking_cell_becomes_a_finding_and_says_where() {
    let mut board = part(1, "0001", Kind::Mainboard);
    let mut survey = survey(10, &board, at("2026-01-05", 5), &[("cell", "leaking")]);
    survey.answers[0].place_on_part = "by the keyboard port".to_owned();
    assert_eq!(take(&mut board, survey), [TurnKind::Found]);
    let file = &board.findings[0];
    assert_eq!(file.finding.what, "leaked-cell");
    assert_eq!(file.finding.place_on_part, "by the keyboard port");
    assert_eq!((file.state(), file.severity()), (FindingState::Open, Severity::Grave));
    assert_eq!(file.last().unwrap().survey, Some(id(10)));
    assert_eq!(file.since(), "2026-01-05".parse().unwrap());
}

#[test]
fn answers_that_say_nothing_change_nothing() {
    for nothing in ["not looked", "could not tell", "does not apply"] {
        let mut board = part(1, "0001", Kind::Mainboard);
        assert_eq!(surveyed(&mut board, 10, at("2026-01-05", 5), &[("cell", nothing)]), []);
        assert!(board.findings.is_empty(), "{nothing} raised a finding");
        surveyed(&mut board, 11, at("2026-01-06", 10), &[("cell", "leaking")]);
        assert_eq!(surveyed(&mut board, 12, at("2026-01-07", 15), &[("cell", nothing)]), []);
        assert_eq!(standing(&board), [("leaked-cell", FindingState::Open)], "{nothing} closed a finding");
    }
}

#[test]
fn a_look_that_finds_it_worse_says_so() {
    let mut board = part(1, "0001", Kind::Mainboard);
    surveyed(&mut board, 10, at("2025-01-05", 5), &[("cell", "sweating")]);
    assert_eq!(board.findings[0].severity(), Severity::Plain);
    assert_eq!(surveyed(&mut board, 11, at("2026-01-05", 10), &[("cell", "sweating")]), [TurnKind::Same]);
    assert_eq!(surveyed(&mut board, 12, at("2026-06-05", 15), &[("cell", "leaking")]), [TurnKind::Worse]);
    assert_eq!(board.findings.len(), 1);
    assert_eq!(board.findings[0].severity(), Severity::Grave);
    assert_eq!(surveyed(&mut board, 13, at("2026-07-05", 20), &[("cell", "sweating")]), [TurnKind::Better]);
}

#[test]
fn rust_that_spreads_is_worse_by_its_share_of_the_surface() {
    let mut board = part(1, "0001", Kind::Mainboard);
    for (number, share, turn) in
        [(10, 2.0, TurnKind::Found), (11, 2.0, TurnKind::Same), (12, 8.0, TurnKind::Worse), (13, 5.0, TurnKind::Same)]
    {
        let mut survey = survey(number, &board, at("2026-01-05", number as u32 * 3), &[("rust", "some")]);
        survey.answers[0].figure = Some(share);
        assert_eq!(take(&mut board, survey), [turn], "{share} %");
        assert_eq!(board.findings[0].last().unwrap().share_percent, Some(share));
    }
}

#[test]
fn a_figure_out_of_bounds_raises_its_finding_whatever_the_answer() {
    for (volts, expected) in [(3.1, vec![]), (1.4, vec![("flat-cell", FindingState::Open)])] {
        let mut board = part(1, "0001", Kind::Mainboard);
        let mut survey = survey(10, &board, at("2026-01-05", 5), &[("cell", "sound")]);
        survey.answers[0].figure = Some(volts);
        take(&mut board, survey);
        assert_eq!(standing(&board), expected, "{volts} V");
    }
}

#[test]
fn work_cures_a_sound_look_confirms_and_what_comes_back_returns() {
    let mut board = part(1, "0001", Kind::Mainboard);
    surveyed(&mut board, 10, at("2026-01-05", 5), &[("cell", "leaking")]);
    done(&mut board, 30, "cut-out", "2026-02-01", 20);
    done(&mut board, 31, "neutralise", "2026-02-01", 22);
    assert_eq!(standing(&board), [("leaked-cell", FindingState::Open)], "rinsing is still to do");
    done(&mut board, 32, "rinse", "2026-02-01", 24);
    assert_eq!(standing(&board), [("leaked-cell", FindingState::Open)], "nobody has looked under the neighbours");
    done(&mut board, 33, "look-under", "2026-02-03", 26);
    assert_eq!(standing(&board), [("leaked-cell", FindingState::Cured)]);
    assert_eq!(board.findings[0].last().unwrap().work, Some(id(33)));
    let turns = surveyed(&mut board, 11, at("2026-03-01", 30), &[("cell", "removed")]);
    assert_eq!(turns, [TurnKind::Confirmed]);
    let turns = surveyed(&mut board, 12, at("2026-09-01", 40), &[("cell", "leaking")]);
    assert_eq!(turns, [TurnKind::Returned]);
    assert_eq!(standing(&board), [("leaked-cell", FindingState::Returned)], "one finding, not a second one");
}

#[test]
fn work_waived_along_with_work_done_cures_but_waiving_alone_does_not() {
    for (first, expected) in [(WorkState::Done, FindingState::Cured), (WorkState::Waived, FindingState::Open)] {
        let mut board = part(1, "0001", Kind::Mainboard);
        board.findings.push(finding(50, &board, "residue", at("2026-01-05", 5), Severity::Plain));
        for (number, rule, state, sequence) in [(30, "neutralise", first, 20), (31, "rinse", WorkState::Waived, 22)] {
            let work = Work { finding: Some(id(50)), ..work(number, &board, rule, state, at("2026-02-01", sequence)) };
            let mut ids = Ids::from(number * 1000);
            let entries = after_work(&board, &work, &rules(), &mut || ids.next());
            write(&mut board, vec![work.into()], sequence);
            write(&mut board, entries, sequence + 1);
        }
        assert_eq!(standing(&board), [("residue", expected)]);
    }
}

#[test]
fn failed_work_opens_a_finding_that_doing_it_well_cures() {
    let mut board = part(1, "0001", Kind::Mainboard);
    board.findings.push(finding(50, &board, "residue", at("2026-01-05", 5), Severity::Plain));
    let failed = Work {
        finding: Some(id(50)),
        reason: "the pads came off".to_owned(),
        ..work(30, &board, "neutralise", WorkState::Failed, at("2026-02-01", 20))
    };
    let mut ids = Ids::from(9000);
    let entries = after_work(&board, &failed, &rules(), &mut || ids.next());
    write(&mut board, vec![failed.clone().into()], 20);
    write(&mut board, entries, 21);
    assert_eq!(standing(&board), [("residue", FindingState::Open), ("", FindingState::Open)]);
    assert!(board.findings[1].finding.note.contains("the pads came off"));
    assert_eq!(board.findings[1].finding.source, FindingSource::Work);
    assert_eq!(board.findings[1].severity(), Severity::Grave, "what failed holds power");

    let well = Work { state: WorkState::Done, changed: at("2026-02-02", 30), ..failed };
    let entries = after_work(&board, &well, &rules(), &mut || ids.next());
    write(&mut board, vec![well.into()], 30);
    write(&mut board, entries, 31);
    assert_eq!(standing(&board), [("residue", FindingState::Open), ("", FindingState::Cured)], "rinsing is left");
}

#[test]
fn work_taken_up_again_brings_back_what_it_had_cured() {
    let mut board = part(1, "0001", Kind::Mainboard);
    surveyed(&mut board, 10, at("2026-01-05", 5), &[("cell", "leaking")]);
    cure_the_leak(&mut board);
    let again = Work { state: WorkState::Open, changed: at("2026-02-04", 40), ..board.work[3].clone() };
    let mut ids = Ids::from(9000);
    let entries = after_work(&board, &again, &rules(), &mut || ids.next());
    write(&mut board, entries, 41);
    assert_eq!(standing(&board), [("leaked-cell", FindingState::Returned)]);
}

#[test]
fn what_was_accepted_comes_back_only_when_it_is_worse() {
    let mut board = part(1, "0001", Kind::Mainboard);
    surveyed(&mut board, 10, at("2026-01-05", 5), &[("cell", "sweating")]);
    let accepted = Look {
        reason: "original, stays".to_owned(),
        ..look(60, 0, at("2026-01-06", 8), FindingState::Accepted, Severity::Plain)
    };
    let finding = board.findings[0].finding.id;
    write(&mut board, vec![Look { finding, ..accepted }.into()], 8);
    surveyed(&mut board, 11, at("2026-02-05", 10), &[("cell", "sweating")]);
    assert_eq!(board.findings[0].state(), FindingState::Accepted);
    assert_eq!(board.findings[0].last().unwrap().reason, "original, stays");
    surveyed(&mut board, 12, at("2026-02-06", 15), &[("cell", "sound")]);
    assert_eq!(board.findings[0].state(), FindingState::Accepted, "its life knows no way to confirmed from there");
    assert_eq!(surveyed(&mut board, 13, at("2026-03-05", 20), &[("cell", "leaking")]), [TurnKind::Returned]);
}

#[test]
fn a_watched_finding_opens_when_it_is_worse() {
    let mut board = part(1, "0001", Kind::Mainboard);
    surveyed(&mut board, 10, at("2026-01-05", 5), &[("cell", "sweating")]);
    let finding = board.findings[0].finding.id;
    let watched = Look {
        finding,
        again_by: "2026-07".parse().unwrap(),
        ..look(60, 0, at("2026-01-06", 8), FindingState::Watched, Severity::Plain)
    };
    write(&mut board, vec![watched.into()], 8);
    surveyed(&mut board, 11, at("2026-02-05", 10), &[("cell", "sweating")]);
    assert_eq!(board.findings[0].state(), FindingState::Watched);
    assert_eq!(board.findings[0].last().unwrap().again_by, "2026-07".parse().unwrap());
    surveyed(&mut board, 12, at("2026-03-05", 15), &[("cell", "leaking")]);
    assert_eq!(board.findings[0].state(), FindingState::Open);
}

#[test]
fn an_old_survey_entered_late_does_not_overturn_a_later_look() {
    let mut board = part(1, "0001", Kind::Mainboard);
    surveyed(&mut board, 10, at("2026-01-05", 5), &[("cell", "sound")]);
    assert_eq!(surveyed(&mut board, 11, at("2024", 10), &[("cell", "leaking")]), []);
    assert!(board.findings.is_empty());
    surveyed(&mut board, 12, at("2026-02-05", 15), &[("cell", "leaking")]);
    assert_eq!(surveyed(&mut board, 13, at("2025-12", 20), &[("cell", "sound")]), []);
    assert_eq!(standing(&board), [("leaked-cell", FindingState::Open)]);
}

#[test]
fn a_corrected_slip_is_taken_back() {
    // Ticked "leaking" by mistake; the correction says that nobody looked.
    let mut board = part(1, "0001", Kind::Mainboard);
    surveyed(&mut board, 10, at("2026-01-05", 5), &[("cell", "leaking")]);
    let correction =
        Survey { supersedes: Some(id(10)), ..survey(11, &board, at("2026-01-05", 9), &[("cell", "not looked")]) };
    take(&mut board, correction);
    assert_eq!(board.findings[0].state(), FindingState::Accepted);
    assert!(!board.findings[0].last().unwrap().reason.is_empty(), "set aside with a reason");

    // Ticked "sound" by mistake, which closed a real leak; the correction opens it again.
    let mut board = part(1, "0001", Kind::Mainboard);
    surveyed(&mut board, 10, at("2026-01-05", 5), &[("cell", "leaking")]);
    surveyed(&mut board, 11, at("2026-01-06", 10), &[("cell", "sound")]);
    assert_eq!(board.findings[0].state(), FindingState::Confirmed);
    let correction = Survey { supersedes: Some(id(11)), ..survey(12, &board, at("2026-01-06", 15), &[]) };
    take(&mut board, correction);
    assert_eq!(board.findings[0].state(), FindingState::Returned);
    assert_eq!(board.findings[0].severity(), Severity::Grave);
}

#[test]
fn logged_positions_speak_for_the_capacitors_instead_of_the_survey() {
    let mut board = part(1, "0001", Kind::Mainboard);
    board.capacitors.push(capacitor(70, &board, "C1", CapacitorState::Sound));
    surveyed(&mut board, 10, at("2026-01-05", 5), &[("capacitors", "bulged"), ("cell", "leaking")]);
    assert_eq!(standing(&board), [("leaked-cell", FindingState::Open)]);
}
