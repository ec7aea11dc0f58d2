//! Findings that follow from logged capacitor positions.

use benchwright::assess::findings::{after_capacitors, after_survey, after_work};
use benchwright::record::*;

use super::support::*;

fn follow(board: &mut PartFile, on: Moment) -> usize {
    let mut ids = Ids::from(u128::from(on.sequence) * 1000 + 7);
    let entries = after_capacitors(board, &rules(), on, &mut || ids.next());
    let count = entries.len();
    write(board, entries, on.sequence + 1);
    count
}

fn board_with(states: &[CapacitorState]) -> PartFile {
    let mut board = part(1, "0001", Kind::Mainboard);
    for (at, state) in states.iter().enumerate() {
        board.capacitors.push(capacitor(70 + at as u128, &board, &format!("C{}", at + 1), *state));
    }
    board
}

#[test]
fn positions_in_a_bad_state_make_one_finding_that_names_them() {
    use CapacitorState::{Bulged, Leaking, Sound};
    let mut board = board_with(&[Bulged, Sound, Leaking]);
    assert_eq!(follow(&mut board, at("2026-01-05", 10)), 2, "a finding and its look");
    assert_eq!(standing(&board), [("bulged", FindingState::Open)]);
    assert_eq!(board.findings[0].finding.place_on_part, "C1, C3");
    assert_eq!(board.findings[0].finding.source, FindingSource::Capacitors);
    assert_eq!(follow(&mut board, at("2026-01-06", 20)), 0, "nothing new, nothing written");
}

#[test]
fn other_dielectrics_and_unseen_positions_raise_nothing() {
    let mut board = board_with(&[CapacitorState::Bulged, CapacitorState::NotLooked]);
    board.capacitors[0].position.dielectric = Dielectric::Polymer;
    assert_eq!(follow(&mut board, at("2026-01-05", 10)), 0);
}

#[test]
fn it_closes_when_none_is_left_and_returns_with_the_next() {
    let mut board = board_with(&[CapacitorState::Bulged, CapacitorState::Bulged]);
    follow(&mut board, at("2026-01-05", 10));
    look_at(80, &mut board.capacitors[0], at("2026-02-01", 20), CapacitorState::Sound);
    assert_eq!(follow(&mut board, at("2026-02-01", 21)), 0, "one is left");
    look_at(81, &mut board.capacitors[1], at("2026-02-02", 30), CapacitorState::Sound);
    follow(&mut board, at("2026-02-02", 31));
    assert_eq!(standing(&board), [("bulged", FindingState::Confirmed)]);
    look_at(82, &mut board.capacitors[1], at("2026-08-02", 40), CapacitorState::Leaking);
    follow(&mut board, at("2026-08-02", 41));
    assert_eq!(standing(&board), [("bulged", FindingState::Returned)]);
}

#[test]
fn recapping_cures_before_every_position_has_been_looked_at_again() {
    let mut board = board_with(&[CapacitorState::Bulged, CapacitorState::Bulged]);
    follow(&mut board, at("2026-01-05", 10));
    let recap = Work {
        finding: Some(board.findings[0].finding.id),
        ..work(30, &board, "recap", WorkState::Done, at("2026-02-01", 20))
    };
    let mut ids = Ids::from(9000);
    let entries = after_work(&board, &recap, &rules(), &mut || ids.next());
    write(&mut board, vec![recap.into()], 20);
    write(&mut board, entries, 21);
    assert_eq!(standing(&board), [("bulged", FindingState::Cured)]);
    look_at(80, &mut board.capacitors[0], at("2026-02-01", 25), CapacitorState::Sound);
    follow(&mut board, at("2026-02-01", 26));
    assert_eq!(standing(&board), [("bulged", FindingState::Cured)], "the second was not looked at since");
    look_at(81, &mut board.capacitors[1], at("2026-02-01", 30), CapacitorState::Bulged);
    follow(&mut board, at("2026-02-01", 31));
    assert_eq!(standing(&board), [("bulged", FindingState::Returned)], "one was left bulged");
}

#[test]
fn positions_take_over_what_a_survey_found_before_they_were_logged() {
    let mut board = board_with(&[]);
    let survey = survey(10, &board, at("2026-01-05", 5), &[("capacitors", "bulged")]);
    let mut ids = Ids::from(9000);
    let entries = after_survey(&board, &survey, &rules(), &mut || ids.next());
    write(&mut board, entries, 6);
    // First the sound ones are logged: what the survey saw is elsewhere and stays.
    board.capacitors.push(capacitor(70, &board, "C1", CapacitorState::Sound));
    follow(&mut board, at("2026-01-06", 10));
    assert_eq!(standing(&board), [("bulged", FindingState::Open)]);
    // Then the bulged one, which is the same finding and not a second.
    board.capacitors.push(capacitor(71, &board, "C2", CapacitorState::Bulged));
    follow(&mut board, at("2026-01-06", 20));
    assert_eq!(standing(&board), [("bulged", FindingState::Open)]);
    look_at(80, &mut board.capacitors[1], at("2026-02-01", 30), CapacitorState::Sound);
    follow(&mut board, at("2026-02-01", 31));
    assert_eq!(standing(&board), [("bulged", FindingState::Confirmed)]);
}
