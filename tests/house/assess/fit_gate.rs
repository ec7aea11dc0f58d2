//! What of fit holds a machine's second gate, what leaves it not known, and what is only told there.

use benchwright::assess::fit::{Because, Constraint, Verdict};
use benchwright::assess::{Answers, Gate, GateState, Next, Reason, Weight};
use benchwright::record::*;

use super::support::*;
use crate::fitting::figure_of;

/// A board and a processor in a machine, with these figures.
fn answers(board: &[(Figure, f64)], processor: &[(Figure, f64)]) -> Answers {
    let roles = [(401, Kind::Mainboard), (402, Kind::Processor)];
    let mut machine = machine(400, "Orla", ("1995", "1998"), &roles);
    let mut of_board = design(301, Kind::Mainboard, ("1995", "1998"), &[(Side::Offers, "socket-7", 1)]);
    let mut of_processor = design(302, Kind::Processor, ("1995", "1998"), &[(Side::Needs, "socket-7", 1)]);
    for (file, figures) in [(&mut of_board, board), (&mut of_processor, processor)] {
        let rows = figures.iter().map(|(figure, value)| figure_of(file.design.id, *figure, *value));
        file.figures = rows.collect();
    }
    let mut parts = Vec::new();
    for (number, file) in [(1, &of_board), (2, &of_processor)] {
        let mut part = part(number, &format!("000{number}"), file.design.kind);
        part.part.design = Some(file.design.id);
        parts.push(part);
        fit(&mut machine, 410 + number, 400 + number, number, at("2026-05-01", 10));
    }
    let logbook = logbook(parts, vec![of_board, of_processor], vec![machine]);
    Answers::of(&logbook, &rules(), day("2026-06-01"))
}

fn gate(answers: &Answers) -> (GateState, Vec<Reason>) {
    let gate = answers.machines[0].readiness.gate(Gate::PartsFit).unwrap();
    (gate.state, gate.reasons.clone())
}

/// The processor brings its own cooler.
const CLOCKS: [(Figure, f64); 4] = [
    (Figure::BusClockMhz, 66.0),
    (Figure::Multiplier, 2.0),
    (Figure::CoreClockMhz, 133.0),
    (Figure::CoolerNeeded, 0.0),
];

fn with(more: &[(Figure, f64)]) -> Vec<(Figure, f64)> {
    [&CLOCKS[..], more].concat()
}

#[test]
fn a_wrong_core_voltage_holds_the_gate_and_asks_for_another_part() {
    let answers = answers(&with(&[(Figure::CoreVoltageV, 3.3)]), &with(&[(Figure::CoreVoltageV, 2.2)]));
    let (state, reasons) = gate(&answers);
    assert_eq!(state, GateState::Held);
    let held = reasons.iter().find(|reason| reason.weight() == Weight::Holds).unwrap();
    assert!(matches!(held, Reason::Fit(Because::Voltage { asks_v: 2.2, gives_v: 3.3, .. })), "{held:?}");
    let next = answers.machines[0].readiness.next.as_ref();
    assert!(matches!(next, Some(Next::Exchange { part }) if *part == id(2)), "{next:?}");
}

#[test]
fn a_core_voltage_that_is_not_known_leaves_the_gate_not_known_and_asks_for_the_figure() {
    let answers = answers(&with(&[(Figure::CoreVoltageV, 3.3)]), &with(&[]));
    let (state, reasons) = gate(&answers);
    assert_eq!(state, GateState::NotKnown, "{reasons:?}");
    let next = answers.machines[0].readiness.next.as_ref();
    let wanted =
        |next: &Next| matches!(next, Next::TellFigure { part, figure: Figure::CoreVoltageV } if *part == id(2));
    assert!(next.is_some_and(wanted), "{next:?}");
}

#[test]
fn a_caveat_is_told_and_holds_nothing() {
    let slow = [(Figure::BusClockMhz, 50.0), (Figure::CoreVoltageV, 3.3)];
    let answers = answers(&slow, &with(&[(Figure::CoreVoltageV, 3.3)]));
    let (state, reasons) = gate(&answers);
    assert_eq!(state, GateState::Passed, "{reasons:?}");
    let told = reasons.iter().find_map(|reason| match reason {
        Reason::Fit(because) => Some(because),
        _ => None,
    });
    assert!(matches!(told, Some(Because::RunsSlower { core_mhz: 100.0, .. })), "{reasons:?}");
    assert_eq!(told.unwrap().verdict(), Verdict::Caveat);
}

#[test]
fn other_figures_that_are_missing_are_counted_and_hold_nothing() {
    let volts = [(Figure::CoreVoltageV, 3.3), (Figure::CoolerNeeded, 0.0)];
    let answers = answers(&volts, &volts);
    let (state, reasons) = gate(&answers);
    assert_eq!(state, GateState::Passed, "{reasons:?}");
    // Bus clock of the board, multiplier and core clock of the processor.
    assert!(reasons.iter().any(|reason| matches!(reason, Reason::FiguresMissing { figures: 3, .. })), "{reasons:?}");
    let clocks = |reason: &Reason| matches!(reason, Reason::Fit(because) if because.constraint() == Constraint::Clocks);
    assert!(!reasons.iter().any(clocks));
}

#[test]
fn parts_that_compete_for_one_role_are_judged_one_by_one() {
    let mut machine = machine(400, "Orla", ("1995", "1998"), &[(401, Kind::Mainboard), (402, Kind::Case)]);
    let case = design(303, Kind::Case, ("1995", "1998"), &[(Side::Offers, "baby-at", 1)]);
    let boards =
        [301, 302].map(|number| design(number, Kind::Mainboard, ("1995", "1998"), &[(Side::Needs, "baby-at", 1)]));
    let mut parts = Vec::new();
    for (number, file) in [(1, &boards[0]), (2, &boards[1]), (3, &case)] {
        let mut part = part(number, &format!("000{number}"), file.design.kind);
        part.part.design = Some(file.design.id);
        parts.push(part);
        plan(&mut machine, 410 + number, if number == 3 { 402 } else { 401 }, number);
    }
    let [one, other] = boards;
    let logbook = logbook(parts, vec![one, other, case], vec![machine]);
    let answers = Answers::of(&logbook, &rules(), day("2026-06-01"));
    let (_, reasons) = gate(&answers);
    let unmet = reasons.iter().filter(|reason| matches!(reason, Reason::NeedUnmet { .. })).count();
    assert_eq!(unmet, 0, "the case has room for either board: {reasons:?}");
}
