//! The order of a part's work: as the tables ask for it, and as the restorer put it by hand.

use super::Task;
use crate::record::{PartFile, WorkId};
use crate::rules::Rules;

/// Of each piece, which others come before it, over however many steps.
type Before = Vec<Vec<bool>>;

/// Tasks with their places in the tables, put in an order in which each stands behind all that must be done first;
/// says of each what that is, and whether it can be started now.
pub fn in_order(placed: Vec<(usize, Task)>, file: &PartFile, rules: &Rules, at_hand: bool) -> Vec<Task> {
    let count = placed.len();
    let mut before: Before = vec![vec![false; count]; count];
    for later in 0..count {
        for first in 0..later {
            before[later][first] = rules.is_place_before(placed[first].0, placed[later].0);
        }
    }
    let mut tasks: Vec<Task> = placed.into_iter().map(|(_, task)| task).collect();
    if !file.work_after.is_empty() {
        put_by_hand(&mut tasks, file, &mut before);
        (tasks, before) = sorted(tasks, &before);
    }
    for (task, before) in tasks.iter_mut().zip(&before) {
        task.waits_for = (0..count as u16).filter(|first| before[usize::from(*first)]).collect();
        task.settle(Vec::new(), at_hand);
    }
    tasks
}

/// Adds the orders by hand, but for those that would go in a circle with the tables' or with one another.
fn put_by_hand(tasks: &mut [Task], file: &PartFile, before: &mut Before) {
    let own = |work: WorkId| file.work.iter().find(|known| known.id == work);
    for order in &file.work_after {
        let carrier = |work: WorkId| own(work).and_then(|work| tasks.iter().position(|task| task.is_carried_by(work)));
        let (later, first) = (carrier(order.work), carrier(order.after));
        let Some(later) = later else { continue };
        if own(order.after).is_none() {
            tasks[later].after_elsewhere.push(order.after);
        }
        let Some(first) = first.filter(|first| *first != later && !before[*first][later]) else { continue };
        let mut firsts = before[first].clone();
        firsts[first] = true;
        for (_, known) in before.iter_mut().enumerate().filter(|(at, known)| *at == later || known[later]) {
            known.iter_mut().zip(&firsts).for_each(|(known, first)| *known |= first);
        }
    }
}

/// The same tasks, each behind those before it, else as they stood.
fn sorted(tasks: Vec<Task>, before: &Before) -> (Vec<Task>, Before) {
    let mut order: Vec<usize> = Vec::with_capacity(tasks.len());
    let is_next = |order: &[usize], at: usize| {
        !order.contains(&at) && (0..tasks.len()).all(|first| !before[at][first] || order.contains(&first))
    };
    while let Some(next) = (0..tasks.len()).find(|at| is_next(&order, *at)) {
        order.push(next);
    }
    let renumbered = order.iter().map(|at| order.iter().map(|first| before[*at][*first]).collect()).collect();
    let mut tasks: Vec<Option<Task>> = tasks.into_iter().map(Some).collect();
    (order.iter().filter_map(|at| tasks[*at].take()).collect(), renumbered)
}
