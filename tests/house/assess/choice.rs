//! The best choice for an evening, against going through every set there is.

use benchwright::assess::tonight::{PATIENCE, Piece, choose};
use benchwright::assess::{Patience, Stop};

use crate::chance::Chance;

/// Set-ups first, then pieces of which some come after others, then a gate over some of them.
fn evening(chance: &mut Chance, pieces: usize) -> Vec<Piece> {
    let set_ups = 1 + chance.below(3);
    let mut problem: Vec<Piece> =
        (0..set_ups).map(|_| Piece { minutes: chance.below(16) as u32, ..Piece::default() }).collect();
    while problem.len() < pieces {
        let at = problem.len();
        let mut after = vec![chance.below(set_ups)];
        if at > set_ups && chance.below(2) == 0 {
            after.push(set_ups + chance.below(at - set_ups));
        }
        problem.push(Piece { minutes: 1 + chance.below(40) as u32, worth: 1 + chance.below(64) as u32, after });
    }
    let held: Vec<usize> = (set_ups..pieces).filter(|_| chance.below(3) == 0).collect();
    if !held.is_empty() {
        problem.push(Piece { minutes: 0, worth: 8 * (1 + chance.below(4) as u32), after: held });
    }
    problem
}

/// Minutes and worth of a set, where it holds with each piece all that it comes after.
fn worth_of(problem: &[Piece], is_in: impl Fn(usize) -> bool) -> Option<(u32, u64)> {
    let members: Vec<usize> = (0..problem.len()).filter(|at| is_in(*at)).collect();
    let whole = members.iter().all(|at| problem[*at].after.iter().all(|first| is_in(*first)));
    let minutes = members.iter().map(|at| problem[*at].minutes).sum();
    whole.then(|| (minutes, members.iter().map(|at| u64::from(problem[*at].worth)).sum()))
}

#[test]
fn no_set_is_worth_more_than_the_choice() {
    let mut chance = Chance(1959);
    for case in 0..400 {
        let pieces = 6 + chance.below(8);
        let problem = evening(&mut chance, pieces);
        let minutes = 20 + chance.below(160) as u32;
        let sets = (0_u32..1 << problem.len()).filter_map(|mask| worth_of(&problem, |at| mask & (1 << at) != 0));
        let best = sets.filter(|(took, _)| *took <= minutes).map(|(_, worth)| worth).max().unwrap();

        let choice = choose(&problem, minutes, PATIENCE);
        assert_eq!((choice.worth, choice.bound), (best, best), "case {case}");
        let told = worth_of(&problem, |at| choice.chosen.contains(&at));
        assert_eq!(told, Some((choice.minutes, choice.worth)), "case {case}");
        assert!(choice.minutes <= minutes, "case {case}");

        let hasty = choose(&problem, minutes, 0);
        assert!(hasty.worth <= best && best <= hasty.bound, "case {case}: {} to {}", hasty.worth, hasty.bound);
        assert!(worth_of(&problem, |at| hasty.chosen.contains(&at)).is_some_and(|(took, _)| took <= minutes));
    }
}

#[test]
fn pieces_in_a_circle_or_after_what_is_not_there_are_never_chosen() {
    let piece = |after: Vec<usize>| Piece { minutes: 5, worth: 10, after };
    let problem = [piece(vec![1]), piece(vec![0]), piece(vec![0]), piece(vec![9]), piece(vec![])];
    assert_eq!(choose(&problem, 600, PATIENCE).chosen, [4]);
}

#[test]
fn no_time_and_no_work_choose_nothing() {
    assert!(choose(&[], 600, PATIENCE).chosen.is_empty());
    let none = choose(&[Piece { minutes: 5, worth: 10, after: vec![] }], 0, PATIENCE);
    assert!(none.chosen.is_empty() && none.is_best());
}

/// Set-ups for two pieces each, all worth about what they take: more ways to choose set-ups than can be gone through, and
/// no bound that tells them apart.
fn endless(chance: &mut Chance) -> Vec<Piece> {
    let mut problem: Vec<Piece> =
        (0..120).map(|_| Piece { minutes: 11 + chance.below(30) as u32, ..Piece::default() }).collect();
    for at in 0..240 {
        let minutes = 21 + chance.below(60) as u32;
        problem.push(Piece { minutes, worth: 10 * minutes + chance.below(40) as u32, after: vec![at % 120] });
    }
    problem
}

#[test]
fn a_search_that_is_stopped_gives_the_best_it_has_with_its_bound() {
    let problem = endless(&mut Chance(2));
    let stop = Stop::default();
    let told = stop.clone();
    let search = std::thread::spawn(move || choose(&problem, 5000, Patience::until(told, u64::MAX)));
    std::thread::sleep(std::time::Duration::from_millis(300));
    assert!(!search.is_finished(), "left alone it would look much longer");
    stop.stop();
    let choice = search.join().unwrap();
    assert!(choice.worth > 0 && choice.worth < choice.bound && choice.minutes <= 5000);
}

#[test]
fn a_search_that_nobody_waits_for_from_the_start_still_gives_a_choice_that_holds() {
    let mut chance = Chance(1959);
    for case in 0..100 {
        let pieces = 6 + chance.below(8);
        let problem = evening(&mut chance, pieces);
        let best = choose(&problem, 90, PATIENCE).worth;
        let stop = Stop::default();
        stop.stop();
        let stopped = choose(&problem, 90, Patience::until(stop, PATIENCE));
        assert!(stopped.worth <= best && best <= stopped.bound, "case {case}");
    }
}
