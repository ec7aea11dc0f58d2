//! Looks an answer over with whole numbers, apart from the solver: what each machine holds together, and what not.

use std::collections::BTreeMap;

use super::question::{Barred, Question};

/// What is wrong with a machine's parts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    /// They draw more from a rail than the supply gives.
    Overdrawn,
    /// These do not go together with the rest: see [`barred`].
    Together(Vec<usize>),
    /// A clash, a full seat, a need that must not stay open: never in an answer of the model.
    Broken(String),
}

/// A machine looked over.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Looked {
    pub faults: Vec<Fault>,
    /// Needs that stay open: (connector, how many).
    pub open: Vec<(usize, u32)>,
}

/// A spare in a machine, with the place of its option.
pub type Placed = (usize, usize);

/// A unit of a need that looks for an offer.
struct Need {
    holder: usize,
    connector: usize,
    may_stay_open: bool,
}

/// What is to be said of a machine with these spares in it.
pub fn look(question: &Question, machine: usize, placed: &[Placed]) -> Looked {
    let mut looked = Looked::default();
    seats(question, placed, &mut looked);
    rails(question, placed, &mut looked);
    clashes(question, machine, placed, &mut looked);
    hanging(question, placed, &mut looked);
    connectors(question, machine, placed, &mut looked);
    looked
}

/// Which machines are changed, so that their own tests hold no longer.
pub fn changed(question: &Question, taken: &[Option<usize>]) -> Vec<bool> {
    let mut changed = vec![false; question.machines.len()];
    for (spare, taken) in question.spares.iter().zip(taken).filter(|(spare, _)| spare.live) {
        let choice = taken.map(|option| spare.options[option]);
        if let Some(choice) = choice.filter(|choice| !choice.fitted) {
            changed[question.machine_of(choice.seat)] = true;
        }
        if let Some(home) = spare.home {
            let has_seat = question.has_seat_at_home(spare);
            changed[home] |= if has_seat { choice.is_none_or(|choice| !choice.fitted) } else { choice.is_some() };
        }
    }
    changed
}

fn seats(question: &Question, placed: &[Placed], looked: &mut Looked) {
    let mut filled: BTreeMap<usize, u32> = BTreeMap::new();
    for (spare, option) in placed {
        *filled.entry(question.spares[*spare].options[*option].seat).or_default() += 1;
    }
    let full = filled.into_iter().filter(|(seat, count)| *count > question.seats[*seat].count);
    looked.faults.extend(full.map(|(seat, _)| Fault::Broken(format!("seat {seat} holds too many"))));
}

fn rails(question: &Question, placed: &[Placed], looked: &mut Looked) {
    for rail in 0..question.rails.len() {
        let gives: Vec<i64> =
            placed.iter().filter_map(|(spare, _)| question.spares[*spare].gives.get(rail)).copied().collect();
        let draws = placed.iter().filter_map(|(spare, _)| question.spares[*spare].draws.get(rail)).sum::<i64>();
        if gives.iter().any(|gives| draws > *gives) {
            looked.faults.push(Fault::Overdrawn);
            return;
        }
    }
}

fn clashes(question: &Question, machine: usize, placed: &[Placed], looked: &mut Looked) {
    let is_here = |spare: &usize| placed.iter().any(|(known, _)| known == spare);
    for clash in question.clashes.iter().filter(|clash| clash.machine.is_none_or(|of| of == machine)) {
        let both = clash.one.iter().any(is_here) && clash.other.iter().any(is_here);
        if both && !clash.unless.iter().any(is_here) {
            looked.faults.push(Fault::Broken("two spares that clash".into()));
        }
    }
    for barred in question.barred.iter().filter(|barred| barred.machine == machine) {
        if barred.spares.iter().all(is_here) && !barred.unless.iter().any(is_here) {
            looked.faults.push(Fault::Broken("spares that are barred together".into()));
        }
    }
}

/// Adapters must hang on something that is none, over one another or straight; not in a circle.
fn hanging(question: &Question, placed: &[Placed], looked: &mut Looked) {
    let is_between = |(spare, option): &Placed| question.seats[question.spares[*spare].options[*option].seat].between;
    let (mut loose, mut hung): (Vec<Placed>, Vec<Placed>) = placed.iter().partition(|placed| is_between(placed));
    loop {
        let hangs = |(spare, _): &Placed| {
            question.spares[*spare].needs.iter().all(|(need, _)| {
                let takes = |(holder, _): &Placed| {
                    question.spares[*holder].offers.iter().any(|(offer, _)| question.accepts(*offer, *need))
                };
                hung.iter().any(takes)
            })
        };
        let (now, still): (Vec<Placed>, Vec<Placed>) = loose.iter().partition(|placed| hangs(placed));
        if now.is_empty() {
            break;
        }
        hung.extend(now);
        loose = still;
    }
    if !loose.is_empty() {
        looked.faults.push(Fault::Together(loose.iter().map(|(spare, _)| *spare).collect()));
    }
}

/// Bars these spares, unless one comes that takes a need of theirs.
pub fn barred(question: &Question, machine: usize, spares: &[usize], placed: &[Placed]) -> Barred {
    // Few spares offer anything: that is asked first.
    let helps = |at: &usize, of: &[usize]| {
        let spare = &question.spares[*at];
        let takes = |need: usize| spare.offers.iter().any(|(offer, _)| question.accepts(*offer, need));
        !spare.offers.is_empty()
            && !of.contains(at)
            && of.iter().flat_map(|spare| &question.spares[*spare].needs).any(|(need, _)| takes(*need))
            && spare.options.iter().any(|choice| question.machine_of(choice.seat) == machine)
    };
    let all = 0..question.spares.len();
    let unless: Vec<usize> = all.clone().filter(|at| helps(at, spares)).collect();
    if !placed.iter().any(|(spare, _)| unless.contains(spare)) {
        return Barred { machine, spares: spares.to_vec(), unless };
    }
    // What could help is here and does not: these very parts are barred.
    let here: Vec<usize> = placed.iter().map(|(spare, _)| *spare).collect();
    let unless = all.filter(|at| helps(at, &here)).collect();
    Barred { machine, spares: here, unless }
}

/// Meets as many needs as can be met, first those that must not stay open; no part plugs into itself.
fn connectors(question: &Question, machine: usize, placed: &[Placed], looked: &mut Looked) {
    let mut needs: Vec<Need> = Vec::new();
    let mut offers: Vec<(usize, usize, u32)> = Vec::new();
    let known_in = |seat: usize| {
        let here = placed.iter().filter(|(spare, option)| {
            question.spares[*spare].known && question.spares[*spare].options[*option].seat == seat
        });
        here.count() as u32
    };
    let excused: Vec<usize> = question.machines[machine]
        .open
        .iter()
        .filter(|open| open.seats.iter().any(|seat| known_in(*seat) < question.seats[*seat].count))
        .map(|open| open.need)
        .collect();
    for (spare, option) in placed {
        let choice = question.spares[*spare].options[*option];
        for (need, count) in &question.spares[*spare].needs {
            for _ in 0..*count {
                let may_stay_open = choice.settled || excused.contains(need);
                needs.push(Need { holder: *spare, connector: *need, may_stay_open });
            }
        }
        offers.extend(question.spares[*spare].offers.iter().map(|(offer, count)| (*spare, *offer, *count)));
    }
    needs.sort_by_key(|need| need.may_stay_open);
    let mut held: Vec<Vec<usize>> = vec![Vec::new(); offers.len()];
    let mut open: BTreeMap<usize, u32> = BTreeMap::new();
    for at in 0..needs.len() {
        if plug(question, at, &needs, &offers, &mut held, &mut vec![false; offers.len()]) {
            continue;
        }
        *open.entry(needs[at].connector).or_default() += 1;
        if !needs[at].may_stay_open {
            looked.faults.push(Fault::Together(vec![needs[at].holder]));
        }
    }
    looked.open = open.into_iter().collect();
}

/// Finds an offer for a need, moving others to their other offers where that frees one.
fn plug(
    question: &Question,
    at: usize,
    needs: &[Need],
    offers: &[(usize, usize, u32)],
    held: &mut [Vec<usize>],
    tried: &mut [bool],
) -> bool {
    for offer in 0..offers.len() {
        let (holder, connector, count) = offers[offer];
        let takes = holder != needs[at].holder && question.accepts(connector, needs[at].connector);
        if !takes || std::mem::replace(&mut tried[offer], true) {
            continue;
        }
        if held[offer].len() < count as usize {
            held[offer].push(at);
            return true;
        }
        for slot in 0..held[offer].len() {
            if plug(question, held[offer][slot], needs, offers, held, tried) {
                held[offer][slot] = at;
                return true;
            }
        }
    }
    false
}
