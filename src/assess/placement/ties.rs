//! What is there already stays where another arrangement gains nothing.

use std::collections::BTreeSet;

use super::ask::Asked;
use super::misfits::misfits;
use super::question::Question;
use super::solve::{Answer, worth};
use super::verify::{Looked, Placed, look};

/// An answer in which every group of machines that exchange parts is as in `before`, wherever that is worth as much.
pub fn settled(asked: &Asked, mut answer: Answer, before: &[Option<usize>]) -> Answer {
    for group in exchanging(&asked.question, &answer.taken, before) {
        let mut taken = answer.taken.clone();
        for (at, spare) in asked.question.spares.iter().enumerate() {
            let is_of = |option: &Option<usize>| {
                option.is_some_and(|option| group.contains(&asked.question.machine_of(spare.options[option].seat)))
            };
            if is_of(&taken[at]) || is_of(&before[at]) {
                taken[at] = before[at];
            }
        }
        if let Some((worth, looked)) = holds(asked, &taken, &group).filter(|(worth, _)| *worth >= answer.worth) {
            answer.open = looked.into_iter().map(|looked| looked.open).collect();
            answer.taken = taken;
            answer.worth = worth;
            answer.bound = answer.bound.max(worth);
        }
    }
    answer
}

/// Machines that differ, gathered with those they exchange parts with.
fn exchanging(question: &Question, taken: &[Option<usize>], before: &[Option<usize>]) -> Vec<BTreeSet<usize>> {
    let mut groups: Vec<BTreeSet<usize>> = Vec::new();
    for (spare, (now, before)) in question.spares.iter().zip(taken.iter().zip(before)).filter(|(_, (a, b))| a != b) {
        let ends = now.iter().chain(before).map(|option| question.machine_of(spare.options[*option].seat));
        let ends: BTreeSet<usize> = ends.collect();
        let (apart, together): (Vec<_>, Vec<_>) = groups.into_iter().partition(|group| group.is_disjoint(&ends));
        groups = apart;
        groups.push(together.into_iter().flatten().chain(ends).collect());
    }
    groups
}

/// What an arrangement is worth, if these machines of it hold and every pin is kept.
fn holds(asked: &Asked, taken: &[Option<usize>], machines: &BTreeSet<usize>) -> Option<(i64, Vec<Looked>)> {
    let question = &asked.question;
    if question.spares.iter().zip(taken).any(|(spare, taken)| spare.pinned && taken.is_none()) {
        return None;
    }
    let mut placed: Vec<Vec<Placed>> = vec![Vec::new(); question.machines.len()];
    for (at, taken) in taken.iter().enumerate() {
        if let Some(option) = *taken {
            placed[question.machine_of(question.spares[at].options[option].seat)].push((at, option));
        }
    }
    let looked: Vec<Looked> =
        placed.iter().enumerate().map(|(machine, placed)| look(question, machine, placed)).collect();
    let fits = |machine: &usize| {
        let spares: Vec<usize> = placed[*machine].iter().map(|(spare, _)| *spare).collect();
        looked[*machine].faults.is_empty() && misfits(asked, *machine, &spares).is_empty()
    };
    machines.iter().all(fits).then(|| (worth(question, taken, &looked), looked))
}
