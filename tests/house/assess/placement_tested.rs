//! Machines past their tests, what a move costs, equal parts, and roles that several kinds fill.

use benchwright::assess::placement::{
    Ask, Consequences, Effort, Goals, Move, Term, ask, bench_minutes, propose, what_if,
};
use benchwright::assess::{Answers, Gate};
use benchwright::record::*;

use super::placement::{LONG, of, proposed};
use super::support::*;

/// "Orla", tested as a whole, with the only supply there is; "Brand", far more urgent, without one. Both want a board,
/// and one for Brand lies on the shelf.
fn two_machines() -> Logbook {
    let designs = vec![board_design(301, ("1997", "1999")), supply_design(302, ("1997", "1999"))];
    let mut parts = vec![
        of(1, "0001", Kind::Mainboard, 301),
        of(2, "0002", Kind::PowerSupply, 302),
        of(3, "0003", Kind::Mainboard, 301),
    ];
    let well = [("cell", "sound"), ("capacitors", "sound")];
    let surveys = [
        survey(10, &parts[0], at("2026-01-05", 5), &well),
        survey(11, &parts[1], at("2026-01-05", 6), &[("smoke-film", "sound")]),
    ];
    for (part, survey) in parts.iter_mut().zip(surveys) {
        part.surveys.push(survey);
    }
    parts[0].proofs.push(proof(41, "boot", at("2026-05-03", 30), ProofResult::Passed));
    parts[1].proofs.push(proof(40, "load-test", at("2026-05-01", 9), ProofResult::Passed));
    let mut orla = machine(400, "Orla", ("1997", "1999"), &[(401, Kind::Mainboard), (402, Kind::PowerSupply)]);
    orla.machine.priority = 9;
    fit(&mut orla, 403, 401, 1, at("2026-05-02", 20));
    fit(&mut orla, 404, 402, 2, at("2026-05-02", 21));
    orla.proofs.push(proof(42, "long-run", at("2026-05-03", 31), ProofResult::Passed));
    let mut brand = machine(500, "Brand", ("1997", "1999"), &[(501, Kind::Mainboard), (502, Kind::PowerSupply)]);
    brand.machine.priority = 1;
    logbook(parts, designs, vec![orla, brand])
}

/// Nothing is kept where it is for its own sake: only what a move costs speaks against it.
fn ask_of(work: u32) -> Ask {
    Ask { goals: Goals { stay: 0, work, ..Goals::default() }, ..Ask::default() }
}

fn refit() -> Move {
    Move::Refit { part: id(2), from: (id(400), Some(id(402))), to: (id(500), Some(id(502))) }
}

#[test]
fn a_machine_past_its_tests_is_left_as_it_is_unless_it_may_be_touched() {
    let of = two_machines();
    let answers = Answers::of(&of, &rules(), day("2026-06-01"));
    let orla = answers.machine(id(400)).unwrap();
    assert!(orla.readiness.is_tested() && orla.readiness.at == Gate::PapersComplete);
    assert!(!answers.machine(id(500)).unwrap().readiness.is_tested());
    let planned = Move::Plan { part: id(3), to: (id(500), Some(id(501))) };
    proposed(&of, ask_of(5), |asked, proposal| {
        assert!(asked.alone.holds(id(400)) && !asked.alone.holds(id(500)));
        assert_eq!(proposal.moves, std::slice::from_ref(&planned), "nothing leaves Orla");
        assert!(proposal.seat_of(id(2)).unwrap().pinned && proposal.voided.is_empty());
    });
    for touched in [
        Ask { may_touch: vec![id(400)], ..ask_of(5) },
        Ask { may_touch_all: true, ..ask_of(5) },
        Ask { pins: vec![(id(2), id(500))], ..ask_of(5) },
    ] {
        proposed(&of, touched, |_, proposal| assert!(proposal.moves.contains(&refit()), "{:?}", proposal.moves));
    }
    // Of another machine it was never asked.
    let other = Ask { may_touch: vec![id(500)], ..ask_of(5) };
    proposed(&of, other, |_, proposal| assert!(!proposal.moves.contains(&refit())));
}

/// Brand's urgency counts 2 × (9 − 1) × 5 = 80 points more than Orla's. Two hours are twelve points with the slider in
/// the middle, so that the eight hours that Orla's run takes are 48, and 20 minutes at each end 2 more each.
#[test]
fn a_move_costs_its_bench_time_and_the_tests_that_it_voids_and_says_so() {
    let of = two_machines();
    let touched = |work| Ask { may_touch_all: true, ..ask_of(work) };
    proposed(&of, touched(5), |asked, proposal| {
        let effort = Effort::of(asked, &refit());
        assert_eq!(effort.minutes, 2 * bench_minutes(Kind::PowerSupply));
        let voids: Vec<(MachineId, &str, u32)> =
            effort.voids.iter().map(|(machine, test)| (*machine, test.name.as_str(), test.minutes)).collect();
        assert_eq!(voids, [(id(400), "long-run", 480)]);
        assert_eq!(
            refit().told(asked),
            "Take 0002 (Velmar power supply) out of Orla: Power supply and fit it in Brand: Power supply. \
             Costs 40 min at the bench; voids “Eight hours' run” (480 min) of Orla."
        );
        let voided = &proposal.voided[..];
        assert!(
            matches!(voided, [voided] if voided.machine == id(400) && voided.minutes == 480 && voided.worth == -48)
        );
        let seats: i64 = proposal.placed.iter().map(|seated| seated.worth).sum();
        let open = proposal.answer.open.iter().flatten().map(|(_, count)| i64::from(*count)).sum::<i64>();
        assert_eq!(proposal.worth, seats - 48 - asked.question.open_cost * open);
    });
    // At 9 the run alone is 86 points: more than Brand's urgency is worth.
    proposed(&of, touched(9), |_, proposal| {
        assert!(!proposal.moves.contains(&refit()), "{:?}", proposal.moves);
        assert!(proposal.voided.is_empty());
        let why: Vec<Term> = proposal.seat_of(id(2)).unwrap().why.iter().map(|(term, _)| *term).collect();
        assert!(why.contains(&Term::StaysIn { minutes: 20 }), "{why:?}");
        let why: Vec<Term> = proposal.seat_of(id(3)).unwrap().why.iter().map(|(term, _)| *term).collect();
        assert!(why.contains(&Term::ToFit { minutes: 45 }), "{why:?}");
    });
    // A run that holds no longer is none to lose.
    let mut stale = two_machines();
    let mut orla = (*stale.machines[0]).clone();
    orla.proofs[0].run = at("2020-01-01", 1);
    stale.machines[0] = orla.into();
    proposed(&stale, touched(9), |_, proposal| assert!(proposal.moves.contains(&refit())));
}

#[test]
fn equal_parts_are_not_exchanged_for_nothing_however_the_sliders_stand() {
    let designs = vec![design(302, Kind::PowerSupply, ("1997", "1999"), &[(Side::Offers, "atx-20", 1)])];
    let parts: Vec<PartFile> =
        (1..=5).map(|number| of(number, &format!("000{number}"), Kind::PowerSupply, 302)).collect();
    let mut machines = vec![
        machine(400, "Orla", ("1997", "1999"), &[(401, Kind::PowerSupply)]),
        machine(500, "Brand", ("1997", "1999"), &[(501, Kind::PowerSupply)]),
        machine(600, "Cole", ("1997", "1999"), &[(601, Kind::PowerSupply)]),
    ];
    // The parts that are there stand neither first nor last among their like.
    fit(&mut machines[0], 402, 401, 3, at("2026-05-02", 20));
    fit(&mut machines[1], 502, 501, 2, at("2026-05-02", 21));
    plan(&mut machines[2], 602, 601, 4);
    let logbook = logbook(parts, designs, machines);
    for all in [0, 1, 5, 10] {
        let mut goals = Goals::default();
        let names: Vec<&str> = goals.sliders().into_iter().map(|(name, ..)| name).collect();
        for name in names.into_iter().filter(|name| *name != "stay") {
            goals.set(name, all);
        }
        for stay in [0, 5] {
            goals.set("stay", stay);
            proposed(&logbook, Ask { goals, ..Ask::default() }, |_, proposal| {
                assert_eq!(proposal.moves, [], "all at {all}, stay at {stay}");
            });
        }
    }
}

#[test]
fn what_if_tells_only_what_follows_from_it() {
    let of = two_machines();
    let rules = rules();
    let answers = Answers::of(&of, &rules, day("2026-06-01"));
    let asked = ask(&of, &answers, &rules, ask_of(5)).unwrap();
    let plain = propose(&asked, &LONG);
    let (_, tried) = what_if((&asked, &plain), id(2), id(500), &LONG).unwrap();
    let Consequences { only, anyhow, no_longer } = Consequences::of(&tried, &plain);
    assert_eq!(only, [refit()]);
    assert_eq!(anyhow, [Move::Plan { part: id(3), to: (id(500), Some(id(501))) }]);
    assert_eq!(no_longer, []);
    // The board goes into the tested machine instead: the one that it puts out takes the place that it leaves.
    let (_, tried) = what_if((&asked, &plain), id(3), id(400), &LONG).unwrap();
    let told = Consequences::of(&tried, &plain);
    assert!(told.anyhow.is_empty() && told.no_longer == plain.moves, "{told:?}");
    assert_eq!(tried.seat_of(id(3)).unwrap().machine, id(400));
}

/// A role for a disk that a flash adapter fills as well.
fn disk_or_flash(stock: &[(u128, Kind, u128)]) -> Logbook {
    let mut designs = vec![
        design(301, Kind::HardDisk, ("1994", "1995"), &[]),
        design(302, Kind::FlashAdapter, ("1997", "1999"), &[]),
        design(303, Kind::HardDisk, ("1997", "1999"), &[]),
    ];
    designs.sort_by_key(|file| file.design.id);
    let parts = stock.iter().map(|(number, kind, design)| of(*number, &format!("000{number}"), *kind, *design));
    let mut orla = machine(400, "Orla", ("1997", "1999"), &[(401, Kind::HardDisk)]);
    orla.roles[0].or_kinds = vec![Kind::FlashAdapter];
    logbook(parts.collect(), designs, vec![orla])
}

#[test]
fn every_kind_that_a_role_takes_competes_for_it() {
    let (old, flash, good) = ((1, Kind::HardDisk, 301), (2, Kind::FlashAdapter, 302), (3, Kind::HardDisk, 303));
    let filled_by = |stock: &[(u128, Kind, u128)]| {
        proposed(&disk_or_flash(stock), Ask::default(), |asked, proposal| {
            let in_role =
                |at: usize| asked.question.spares[at].options.iter().any(|choice| asked.seats[choice.seat].1.is_some());
            assert!((0..stock.len()).all(in_role), "each has the role among its options");
            let seated = proposal.placed.iter().find(|seated| seated.role == Some(id(401)));
            (seated.map(|seated| seated.part), proposal.wishes.len())
        })
    };
    assert_eq!(filled_by(&[flash]), (Some(id(2)), 0));
    assert_eq!(filled_by(&[old, flash]), (Some(id(2)), 0), "years before the window");
    assert_eq!(filled_by(&[old]), (Some(id(1)), 0));
    assert!(matches!(filled_by(&[flash, good]), (Some(_), 0)));
    assert_eq!(filled_by(&[]), (None, 1));
    // Asked for by name it goes there too.
    let pinned = Ask { pins: vec![(id(2), id(400))], ..Ask::default() };
    proposed(&disk_or_flash(&[old, flash]), pinned, |_, proposal| {
        assert_eq!(proposal.seat_of(id(2)).unwrap().role, Some(id(401)));
    });
}
