//! The best answer to an abstract question, against going through every answer there is.

use std::time::Duration;

use benchwright::assess::making::TrueTo;
use benchwright::assess::placement::question::{
    Barred, Choice, Clash, MOST_WORTH, Machine, OpenNeed, Question, Seat, Spare,
};
use benchwright::assess::placement::solve::{Answer, Misfits, solve};
use benchwright::assess::placement::{Goals, Term};
use benchwright::record::{Originality, Standing};

use crate::chance::Chance;
use crate::shelves::shelf;

const LONG: Duration = Duration::from_mins(10);

fn answer(question: &Question) -> Answer {
    solve(question, &|_, _| Misfits::default(), &|| LONG)
}

/// Two machines with a board, a supply, two kinds of cards and adapters between, and few spares for them.
fn little(chance: &mut Chance) -> Question {
    let mut question = Question {
        connectors: ["slot", "wide slot", "plug", "cable"].map(str::to_owned).to_vec(),
        takes: vec![vec![0, 1], vec![1], vec![2], vec![3]],
        rails: vec!["+5 V".into()],
        open_cost: 30,
        ..Question::default()
    };
    for machine in 0..2 {
        let first = question.seats.len();
        let seat = |name: &str, count, required, between| Seat { machine, name: name.into(), count, required, between };
        question.seats.extend([
            seat("board", 1, true, false),
            seat("supply", 1 + u32::from(chance.below(5) == 0), true, false),
            seat("cards", 2, chance.below(2) == 0, false),
            seat("between", 2, false, true),
        ]);
        let mut open: Vec<OpenNeed> = (0..2).map(|need| OpenNeed { need, seats: vec![first] }).collect();
        open.push(OpenNeed { need: 2, seats: vec![first + 1] });
        open.push(OpenNeed { need: 3, seats: if chance.below(2) == 0 { vec![first, first + 1] } else { vec![] } });
        let complete_worth = if chance.below(3) == 0 { 50 } else { 0 };
        question.machines.push(Machine { name: machine.to_string(), complete_worth, open, ..Machine::default() });
    }
    for number in 0..6 + chance.below(2) {
        let mut spare = Spare { tag: number.to_string(), known: chance.below(8) != 0, ..Spare::default() };
        let few = |chance: &mut Chance| 1 + chance.below(2) as u32;
        let role = [0, 0, 1, 2, 2, 3][chance.below(6)];
        match role {
            0 => {
                spare.needs = vec![(2, 1)];
                spare.offers = vec![(chance.below(2), few(chance)), (3, 1)];
                spare.draws = vec![1000 * i64::from(few(chance))];
            }
            1 => {
                spare.offers = vec![(2, 1)];
                spare.gives = vec![2000 + 1000 * chance.below(4) as i64];
            }
            2 => {
                spare.needs = vec![(chance.below(2), 1)];
                if chance.below(2) == 0 {
                    spare.needs.push((3, 1));
                }
                spare.draws = vec![1000 * chance.below(3) as i64];
            }
            _ => {
                let kinds = [(0, 1), (3, 3), (1, 0), (2, 3)][chance.below(4)];
                spare.needs = vec![(kinds.0, 1)];
                spare.offers = vec![(kinds.1, few(chance))];
            }
        }
        for machine in 0..2 {
            let worth = if role == 3 { -5 } else { 100 + chance.below(60) as i64 };
            if chance.below(6) != 0 {
                spare.options.push(Choice {
                    seat: 4 * machine + role,
                    worth,
                    settled: chance.below(6) == 0,
                    fitted: false,
                });
            }
        }
        question.spares.push(spare);
    }
    let mut any = |question: &Question| chance.below(question.spares.len());
    let (one, other) = (any(&question), any(&question));
    if one != other {
        let machine = [None, Some(0), Some(1)][chance.below(3)];
        question.clashes.push(Clash { machine, one: vec![one], other: vec![other], unless: vec![] });
    }
    let barred: Vec<usize> = (0..3).map(|_| chance.below(question.spares.len())).collect();
    if barred[0] < barred[1] {
        question.barred.push(Barred { machine: 0, spares: vec![barred[0], barred[1]], unless: vec![barred[2]] });
    }
    question
}

/// Seeds of questions on which some rows or cuts that do not always hold give less than the best: a cover of a seat with
/// places to spare, two supplies in a machine, a cut of what only lets others stand together, or one from before new rows.
const HARD: [u64; 12] = [97, 103, 104, 345, 475, 845, 848, 2349, 7576, 21_657, 29_153, 44_263];

/// So many questions, and the hard ones.
fn little_ones(seed: u64, count: usize) -> impl Iterator<Item = Question> {
    let mut chance = Chance(seed);
    let first = std::iter::repeat_with(move || little(&mut chance)).take(count);
    let mut chance = Chance(seed ^ 0x7e57);
    let tested = std::iter::repeat_with(move || tested(little(&mut chance), &mut chance)).take(count);
    first.chain(HARD.iter().map(|seed| little(&mut Chance(*seed)))).chain(tested)
}

/// The same with parts fitted here and there, and machines whose tests are lost with a part that comes or goes.
fn tested(mut question: Question, chance: &mut Chance) -> Question {
    for machine in &mut question.machines {
        machine.change_cost = [0, 20, 60, 150][chance.below(4)];
    }
    for spare in &mut question.spares {
        spare.live = chance.below(6) != 0;
        let machine = chance.below(3);
        if machine > 1 {
            continue;
        }
        spare.home = spare.live.then_some(machine);
        let has_seat = chance.below(5) != 0;
        for choice in spare.options.iter_mut().filter(|choice| choice.seat / 4 == machine && has_seat) {
            (choice.fitted, choice.settled) = (true, true);
        }
    }
    question
}

/// The fewest needs that stay open, by trying every pairing; `None` when one stays open that must not.
fn fewest_open(needs: &[(usize, usize, bool)], offers: &mut [(usize, usize, u32)], question: &Question) -> Option<i64> {
    let Some(((holder, need, may), rest)) = needs.split_first() else { return Some(0) };
    let mut best = if *may { fewest_open(rest, offers, question).map(|open| open + 1) } else { None };
    for at in 0..offers.len() {
        let (other, offer, left) = offers[at];
        if left > 0 && other != *holder && question.takes[*need].contains(&offer) {
            offers[at].2 -= 1;
            let open = fewest_open(rest, offers, question);
            offers[at].2 += 1;
            best = [best, open].into_iter().flatten().min();
        }
    }
    best
}

/// What a machine's spares are worth together; `None` where they do not hold.
fn worth_of(question: &Question, machine: usize, here: &[(usize, Choice)]) -> Option<i64> {
    let of = &question.machines[machine];
    let in_seat = |seat: usize| here.iter().filter(|(_, choice)| choice.seat == seat).count() as u32;
    let has = |spare: &usize| here.iter().any(|(known, _)| known == spare);
    let seats = || question.seats.iter().enumerate().filter(|(_, seat)| seat.machine == machine);
    if seats().any(|(at, seat)| in_seat(at) > seat.count) {
        return None;
    }
    let clash = |clash: &Clash| {
        clash.machine.is_none_or(|of| of == machine) && clash.one.iter().any(has) && clash.other.iter().any(has)
    };
    let barred =
        |barred: &Barred| barred.machine == machine && barred.spares.iter().all(has) && !barred.unless.iter().any(has);
    if question.clashes.iter().any(clash) || question.barred.iter().any(barred) {
        return None;
    }
    for rail in 0..question.rails.len() {
        let draws: i64 = here.iter().filter_map(|(spare, _)| question.spares[*spare].draws.get(rail)).sum();
        if here.iter().any(|(spare, _)| question.spares[*spare].gives.get(rail).is_some_and(|gives| draws > *gives)) {
            return None;
        }
    }
    // Adapters hang, over others or straight, on what is none.
    let (mut loose, mut hung): (Vec<usize>, Vec<usize>) = (Vec::new(), Vec::new());
    for (spare, choice) in here {
        if question.seats[choice.seat].between { loose.push(*spare) } else { hung.push(*spare) }
    }
    while let Some(at) = loose.iter().position(|spare| {
        question.spares[*spare].needs.iter().all(|(need, _)| {
            hung.iter()
                .any(|on| question.spares[*on].offers.iter().any(|(offer, _)| question.takes[*need].contains(offer)))
        })
    }) {
        hung.push(loose.remove(at));
    }
    if !loose.is_empty() {
        return None;
    }
    let known_in = |seat: usize| {
        here.iter().filter(|(spare, choice)| choice.seat == seat && question.spares[*spare].known).count() as u32
    };
    let mut needs = Vec::new();
    let mut offers = Vec::new();
    for (spare, choice) in here {
        for (need, count) in &question.spares[*spare].needs {
            let excused = of.open.iter().any(|open| {
                open.need == *need && open.seats.iter().any(|seat| known_in(*seat) < question.seats[*seat].count)
            });
            needs.extend((0..*count).map(|_| (*spare, *need, choice.settled || excused)));
        }
        offers.extend(question.spares[*spare].offers.iter().map(|(offer, count)| (*spare, *offer, *count)));
    }
    let open = fewest_open(&needs, &mut offers, question)?;
    let complete = seats().all(|(at, seat)| !seat.required || in_seat(at) == seat.count);
    let worth: i64 = here.iter().map(|(_, choice)| choice.worth).sum();
    Some(worth - question.open_cost * open + if complete { of.complete_worth } else { 0 })
}

/// The worth of an answer, machine by machine.
fn told(question: &Question, taken: &[Option<usize>]) -> Option<i64> {
    let chosen = |(at, option): (usize, &Option<usize>)| Some((at, question.spares[at].options[(*option)?]));
    let all: Vec<(usize, Choice)> = taken.iter().enumerate().filter_map(chosen).collect();
    let is_changed = |machine: usize| {
        question.spares.iter().zip(taken).filter(|(spare, _)| spare.live).any(|(spare, taken)| {
            let choice = taken.map(|option| spare.options[option]);
            let comes = choice.is_some_and(|choice| !choice.fitted && question.seats[choice.seat].machine == machine);
            let goes = if spare.options.iter().any(|choice| choice.fitted) {
                choice.is_none_or(|choice| !choice.fitted)
            } else {
                choice.is_some()
            };
            comes || (spare.home == Some(machine) && goes)
        })
    };
    let lost = (0..question.machines.len()).filter(|machine| is_changed(*machine));
    let lost: i64 = lost.map(|machine| question.machines[machine].change_cost).sum();
    let worth: Option<i64> = (0..question.machines.len())
        .map(|machine| {
            let here: Vec<_> =
                all.iter().filter(|(_, choice)| question.seats[choice.seat].machine == machine).copied().collect();
            worth_of(question, machine, &here)
        })
        .sum();
    worth.map(|worth| worth - lost)
}

/// The best worth of all answers there are.
fn best(question: &Question) -> i64 {
    let mut taken: Vec<Option<usize>> = vec![None; question.spares.len()];
    let mut best = i64::MIN;
    loop {
        if question.spares.iter().zip(&taken).all(|(spare, taken)| !spare.pinned || taken.is_some()) {
            best = told(question, &taken).map_or(best, |worth| worth.max(best));
        }
        // Counts through all answers.
        let next = taken.iter_mut().zip(&question.spares).find_map(|(taken, spare)| {
            *taken = match *taken {
                None if !spare.options.is_empty() => Some(0),
                Some(at) if at + 1 < spare.options.len() => Some(at + 1),
                _ => None,
            };
            taken.map(|_| ())
        });
        if next.is_none() {
            return best;
        }
    }
}

#[test]
fn no_answer_is_worth_more_than_the_one_given() {
    for (case, question) in little_ones(1987, 300).enumerate() {
        let given = answer(&question);
        assert_eq!(told(&question, &given.taken), Some(given.worth), "case {case} holds and is worth what it says");
        assert_eq!((given.worth, given.bound), (best(&question), given.worth), "case {case}");
    }
}

#[test]
fn broken_off_at_once_it_still_holds_and_tells_a_bound_that_holds() {
    let mut chance = Chance(1988);
    for case in 0..60 {
        let question = little(&mut chance);
        let given = solve(&question, &|_, _| Misfits::default(), &|| Duration::ZERO);
        assert_eq!(told(&question, &given.taken), Some(given.worth), "case {case}");
        let best = best(&question);
        assert!(given.worth <= best && best <= given.bound, "case {case}: {} {best} {}", given.worth, given.bound);
    }
}

#[test]
fn a_pinned_spare_takes_its_only_seat_even_where_another_is_worth_more() {
    let mut question = shelf(3, 120, 4);
    let free = answer(&question);
    let seat_of = |at: usize, taken: &[Option<usize>]| taken[at].map(|option| question.spares[at].options[option].seat);
    let poor = (0..question.spares.len())
        .find(|at| free.taken[*at].is_none() && question.spares[*at].options.iter().any(|choice| choice.worth > 0))
        .unwrap();
    let choice = *question.spares[poor].options.iter().max_by_key(|choice| choice.worth).unwrap();
    assert_eq!(seat_of(poor, &free.taken), None);
    question.spares[poor].options = vec![choice];
    question.spares[poor].pinned = true;
    let pinned = answer(&question);
    assert_eq!(pinned.taken[poor], Some(0));
    assert_eq!(pinned.bound, pinned.worth);
    assert!(pinned.worth < free.worth, "{} and {}", pinned.worth, free.worth);
    assert_eq!(told(&question, &pinned.taken), Some(pinned.worth));
}

#[test]
fn what_the_whole_machine_does_not_take_is_not_given_and_the_rest_is_best_again() {
    let mut found = 0;
    for (case, question) in little_ones(1989, 120).enumerate() {
        // A referee that the rows know nothing of: two spares of odd tags do not go into one machine.
        let odd = |spares: &[usize]| -> Vec<usize> { spares.iter().copied().filter(|spare| spare % 2 == 1).collect() };
        let referee = |machine: usize, spares: &[usize]| {
            let odd = odd(spares);
            let barred = (odd.len() > 1).then(|| Barred { machine, spares: odd[..2].to_vec(), unless: vec![] });
            Misfits { barred: barred.into_iter().collect(), ..Misfits::default() }
        };
        let given = solve(&question, &referee, &|| LONG);
        found += given.misfits.barred.len();
        let mut told_all = question.clone();
        for machine in 0..2 {
            let all = odd(&(0..question.spares.len()).collect::<Vec<_>>());
            for (at, one) in all.iter().enumerate() {
                let pairs = all[at + 1..].iter().map(|other| vec![*one, *other]);
                told_all.barred.extend(pairs.map(|spares| Barred { machine, spares, unless: vec![] }));
            }
        }
        assert_eq!((given.worth, given.bound), (best(&told_all), given.worth), "case {case}");
    }
    assert!(found > 10, "the referee was hardly ever asked: {found}");
}

#[test]
fn adapters_in_a_circle_feed_nothing() {
    // Each of the two adapters needs what the other offers; the card could hang on them, if they hung on anything.
    let plug = |need, offer, count| Spare {
        known: true,
        needs: vec![(need, 1)],
        offers: vec![(offer, count)],
        options: vec![Choice { seat: 1, worth: -5, settled: false, fitted: false }],
        ..Spare::default()
    };
    let card = Spare {
        needs: vec![(1, 1)],
        options: vec![Choice { seat: 0, worth: 100, settled: false, fitted: false }],
        ..Spare::default()
    };
    let mut question = Question {
        connectors: vec!["one".into(), "other".into()],
        takes: vec![vec![0], vec![1]],
        machines: vec![Machine::default()],
        seats: vec![
            Seat { machine: 0, name: "card".into(), count: 1, required: true, between: false },
            Seat { machine: 0, name: "between".into(), count: 4, required: false, between: true },
            Seat { machine: 0, name: "board".into(), count: 1, required: false, between: false },
        ],
        spares: vec![card, plug(0, 1, 2), plug(1, 0, 2)],
        ..Question::default()
    };
    let given = answer(&question);
    assert_eq!((given.worth, given.taken.clone()), (0, vec![None, None, None]), "{given:?}");
    let options = vec![Choice { seat: 2, worth: 1, settled: false, fitted: false }];
    question.spares.push(Spare { known: true, offers: vec![(0, 1)], options, ..Spare::default() });
    let given = answer(&question);
    assert_eq!((given.worth, given.taken), (96, vec![Some(0), Some(0), None, Some(0)]), "a board to hang on");
}

#[test]
fn nothing_asked_is_nothing_answered() {
    let given = answer(&Question::default());
    assert_eq!((given.worth, given.bound, given.taken.len()), (0, 0, 0));
    let mut empty = shelf(1, 0, 3);
    assert_eq!(answer(&empty).worth, 0);
    empty.seats.clear();
    empty.machines.clear();
    assert_eq!(answer(&empty).worth, 0);
}

#[test]
fn worths_stay_exact_as_floating_point_numbers_however_the_sliders_stand() {
    let mut goals = Goals { soonest: true, ..Goals::default() };
    for (name, ..) in Goals::default().sliders() {
        assert!(goals.set(name, u32::MAX));
    }
    let far = TrueTo::Apart { weeks: i64::MIN + 1 };
    let brief = Term::Brief { standing: Standing::Best, rank: 0 };
    let altered = Term::Originality(Originality::ModernReplacement);
    let against = [
        Term::Dates(far),
        brief,
        Term::NotSurveyed,
        Term::Work { minutes: u32::MAX },
        Term::ToFit { minutes: u32::MAX },
        altered,
        Term::ConnectorsUnknown,
    ];
    let made = Term::Originality(Originality::Original);
    let for_it = [
        Term::Required,
        Term::Urgent { priority: 1 },
        Term::Dates(TrueTo::Comfortable),
        Term::Proven,
        made,
        Term::Fitted,
        Term::StaysIn { minutes: u32::MAX },
    ];
    for terms in [&against[..], &for_it[..]] {
        let worth: i64 = terms.iter().map(|term| goals.worth(*term)).sum();
        assert!(worth.abs() <= MOST_WORTH, "{worth}");
    }
    assert!(goals.complete(1) <= MOST_WORTH);
    // Ten thousand choices of the largest worth, all taken, are still far below 2^53, where whole numbers end.
    const { assert!(10_000 * MOST_WORTH < (1 << 53) / 100) }
}
