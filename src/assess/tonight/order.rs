//! The chosen pieces in the order in which to do them.

use super::{Item, Piece};
use crate::assess::Answers;
use crate::rules::Rules;

/// One sitting after the other, each piece after those it comes after; what has to dry or run is begun as early as
/// that allows. Places of work alone, without set-ups and gates.
pub fn in_order(items: &[Item], problem: &[Piece], chosen: &[bool], answers: &Answers, rules: &Rules) -> Vec<usize> {
    let is_work = |at: &usize| matches!(items[*at], Item::Work { .. });
    let mut left: Vec<usize> = (0..items.len()).filter(|at| chosen[*at]).filter(is_work).collect();
    let mut done = vec![false; items.len()];
    let mut ordered = Vec::with_capacity(left.len());
    let mut sitting: Option<&str> = None;
    let task = |at: usize| match items[at] {
        Item::Work { part, task } => Some(&answers.parts[part].tasks[task]),
        _ => None,
    };
    let longest_wait = |of: &str, left: &[usize]| {
        let tasks = left.iter().filter_map(|at| task(*at)).filter(|task| task.sitting() == of);
        tasks.map(crate::assess::Task::wait_hours).max()
    };
    while !left.is_empty() {
        let is_ready = |at: &usize| problem[*at].after.iter().filter(|first| is_work(first)).all(|first| done[*first]);
        let ready: Vec<usize> = left.iter().copied().filter(is_ready).collect();
        let key = |at: &usize| {
            let of = task(*at);
            let name = of.map_or("", |task| task.sitting());
            let place = rules.sittings.iter().position(|known| known.name == name).unwrap_or(usize::MAX);
            let wait = of.map_or(0, crate::assess::Task::wait_hours);
            (
                sitting != Some(name),
                std::cmp::Reverse(longest_wait(name, &left)),
                place,
                std::cmp::Reverse(wait),
                std::cmp::Reverse(problem[*at].worth),
                *at,
            )
        };
        // The chosen pieces hold what they come after, so something is ready.
        let Some(next) = ready.into_iter().min_by_key(key) else { break };
        sitting = task(next).map(crate::assess::Task::sitting);
        done[next] = true;
        left.retain(|at| *at != next);
        ordered.push(next);
    }
    ordered
}
