//! Roles that several kinds fill, parts that plug into nothing, and candidates with the adapter that makes them fit.

use benchwright::assess::fit::candidates::{Candidate, Candidates};
use benchwright::assess::fit::{Because, Models, Verdict};
use benchwright::assess::offer::Offered;
use benchwright::assess::supplies::{ToBuy, to_buy};
use benchwright::assess::{Answers, Gate, GateState, Reason};
use benchwright::record::*;
use benchwright::rules::Rules;
use benchwright::trade::drive::Outcome;

use super::support::*;
use crate::fitting::figure_of;

const YEARS: (&str, &str) = ("1990", "1999");

/// A part of a design of its own: `number` and 300 more.
fn of(number: u128, kind: Kind, ports: &[(Side, &str, u32)], figures: &[(Figure, f64)]) -> (PartFile, DesignFile) {
    let mut design = design(300 + number, kind, YEARS, ports);
    design.figures = figures.iter().map(|(figure, value)| figure_of(design.design.id, *figure, *value)).collect();
    let mut part = part(number, &format!("{number:04}"), kind);
    part.part.design = Some(design.design.id);
    (part, design)
}

fn shop(parts: Vec<(PartFile, DesignFile)>, machine: MachineFile) -> (Logbook, Answers, Rules) {
    let (parts, designs) = parts.into_iter().unzip();
    let rules = Rules::shipped();
    let logbook = logbook(parts, designs, vec![machine]);
    let answers = Answers::of(&logbook, &rules, day("2026-06-01"));
    (logbook, answers, rules)
}

/// A machine with a board and a disk's role that a flash-card adapter fills as well.
fn with_flash_role() -> MachineFile {
    let mut machine = machine(400, "Orla", ("", ""), &[(401, Kind::Mainboard), (402, Kind::HardDisk)]);
    machine.roles[1].or_kinds = vec![Kind::FlashAdapter];
    fit(&mut machine, 411, 401, 1, at("2026-05-01", 1));
    machine
}

fn board() -> (PartFile, DesignFile) {
    of(1, Kind::Mainboard, &[(Side::Offers, "ide-40", 2)], &[(Figure::DiskMostMb, 504.0)])
}

fn gate(answers: &Answers, gate: Gate) -> (GateState, Vec<Reason>) {
    let answer = answers.machines[0].readiness.gate(gate).unwrap();
    (answer.state, answer.reasons.clone())
}

#[test]
fn a_role_is_filled_by_any_of_its_kinds_and_by_no_other() {
    let flash = of(2, Kind::FlashAdapter, &[(Side::Needs, "ide-40", 1)], &[(Figure::CapacityMb, 256.0)]);
    let (_, answers, _) = shop(vec![board(), flash.clone()], with_flash_role());
    assert_eq!(gate(&answers, Gate::RolesFilled).0, GateState::Held, "nothing fills it yet");
    let mut machine = with_flash_role();
    fit(&mut machine, 412, 402, 2, at("2026-05-01", 2));
    let (_, answers, _) = shop(vec![board(), flash], machine.clone());
    assert_eq!(gate(&answers, Gate::RolesFilled).0, GateState::Passed);
    let drive = of(2, Kind::OpticalDrive, &[(Side::Needs, "ide-40", 1)], &[]);
    let (_, answers, _) = shop(vec![board(), drive], machine);
    let reasons = gate(&answers, Gate::RolesFilled).1;
    assert!(matches!(reasons[..], [Reason::WrongKind { .. }]), "{reasons:?}");
}

/// A firmware of 504 MiB sees 528 MB (1024 × 16 × 63 × 512 bytes): a 256 MB card whole, a 2 GB card not.
#[test]
fn a_flash_card_is_held_against_the_firmware_as_a_disk_is() {
    let outcome = |adapter: &[(Figure, f64)], card: Option<f64>| {
        let mut parts = vec![board(), of(2, Kind::FlashAdapter, &[(Side::Needs, "ide-40", 1)], adapter)];
        if let Some(mb) = card {
            let mut card = of(3, Kind::Media, &[], &[(Figure::CapacityMb, mb)]);
            card.0.part.inside = Some(id(2));
            parts.push(card);
        }
        let mut machine = with_flash_role();
        fit(&mut machine, 412, 402, 2, at("2026-05-01", 2));
        let (_, answers, rules) = shop(parts, machine);
        let build = answers.build(id(400), &mut Models::new(&rules), None).unwrap();
        build.because().find_map(|one| match one {
            Because::Disk { outcome, .. } => Some(*outcome),
            _ => None,
        })
    };
    assert_eq!(outcome(&[(Figure::CapacityMb, 256.0)], None), Some(Outcome::SeenWhole));
    assert_eq!(outcome(&[], Some(256.0)), Some(Outcome::SeenWhole));
    assert_ne!(outcome(&[], Some(2048.0)), Some(Outcome::SeenWhole));
    assert_eq!(outcome(&[], None), None, "nobody told");
}

#[test]
fn a_drive_that_plugs_into_nothing_fills_no_role_and_what_would_plug_in_is_bought() {
    let roles = [(401, Kind::Mainboard), (402, Kind::OpticalDrive)];
    let mut machine = machine(400, "Orla", ("", ""), &roles);
    fit(&mut machine, 411, 401, 1, at("2026-05-01", 1));
    fit(&mut machine, 412, 402, 2, at("2026-05-01", 2));
    let panel = of(2, Kind::OpticalDrive, &[(Side::Needs, "cd-panel-40", 1)], &[]);
    let (logbook, answers, rules) = shop(vec![board(), panel], machine.clone());
    let (state, reasons) = gate(&answers, Gate::RolesFilled);
    assert_eq!(state, GateState::Held);
    assert!(matches!(&reasons[..], [Reason::PluggedNowhere { part, .. }] if *part == id(2)), "{reasons:?}");
    assert_eq!(answers.machines[0].readiness.roles[1].missing, 1);
    let buy: Vec<String> = to_buy(&logbook, &answers, &rules).iter().map(ToBuy::said).collect();
    let wanted = buy.iter().find(|line| line.starts_with("Optical drive")).unwrap_or_else(|| panic!("{buy:?}"));
    assert!(wanted.contains("IDE"), "{wanted}");
    let offered = Offered::read("Optical drive", &["ide-40".to_owned()], &[], "", &rules.connectors).unwrap();
    let offer = offered.answer(&logbook, &answers, &rules);
    let [lacking] = &offer.lacking[..] else { panic!("{offer:?}") };
    assert_eq!((lacking.role, lacking.is_required), (id(402), true));
    let (_, answers, _) = shop(vec![board(), of(2, Kind::OpticalDrive, &[(Side::Needs, "ide-40", 1)], &[])], machine);
    assert_eq!(gate(&answers, Gate::RolesFilled).0, GateState::Passed);
}

/// The candidates for the processor's role of a machine with a Socket 5 board.
fn candidates(parts: Vec<(PartFile, DesignFile)>) -> Vec<Candidate> {
    let mut machine = machine(400, "Orla", ("", ""), &[(401, Kind::Mainboard), (402, Kind::Processor)]);
    fit(&mut machine, 411, 401, 1, at("2026-05-01", 1));
    let (_, answers, rules) = shop(parts, machine);
    Candidates::of(&answers, &rules, id(400), id(402), None).unwrap().ranked
}

const CHIP: [(Figure, f64); 5] = [
    (Figure::BusClockMhz, 66.0),
    (Figure::CoreClockMhz, 133.0),
    (Figure::Multiplier, 2.0),
    (Figure::CoreVoltageV, 2.9),
    (Figure::CoolerNeeded, 0.0),
];

fn socket_5() -> (PartFile, DesignFile) {
    of(
        1,
        Kind::Mainboard,
        &[(Side::Offers, "socket-5", 1)],
        &[(Figure::BusClockMhz, 66.0), (Figure::CoreVoltageV, 3.3)],
    )
}

#[test]
fn a_chip_that_fits_only_through_an_adapter_on_the_shelf_comes_with_it() {
    let chip = of(2, Kind::Processor, &[(Side::Needs, "socket-7", 1)], &CHIP);
    let adapter = of(
        3,
        Kind::ProcessorAdapter,
        &[(Side::Needs, "socket-5", 1), (Side::Offers, "socket-7", 1)],
        &[(Figure::CoreVoltageV, 2.9)],
    );
    let alone = candidates(vec![socket_5(), chip.clone()]);
    assert_eq!((alone[0].verdict, alone[0].with), (Verdict::No, None));
    let both = candidates(vec![socket_5(), chip.clone(), adapter.clone()]);
    assert_eq!((both[0].verdict, both[0].with), (Verdict::Fits, Some(id(3))));
    let mut lent = adapter;
    lent.0.custody.push(crate::records::custody(id(3), at("2026-02-01", 3), CustodyAct::Lent));
    assert_eq!(candidates(vec![socket_5(), chip, lent])[0].with, None, "it is not on the shelf");
}

#[test]
fn an_offered_chip_comes_with_the_adapter_on_the_shelf() {
    let mut machine = machine(400, "Orla", ("", ""), &[(401, Kind::Mainboard), (402, Kind::Processor)]);
    fit(&mut machine, 411, 401, 1, at("2026-05-01", 1));
    let figures = ["core_voltage_v=2.9", "bus_clock_mhz=66", "core_clock_mhz=133", "multiplier=2", "cooler_needed=0"];
    let offered = |parts: Vec<(PartFile, DesignFile)>| {
        let (logbook, answers, rules) = shop(parts, machine.clone());
        let figures: Vec<String> = figures.iter().map(|figure| (*figure).to_owned()).collect();
        let chip = Offered::read("processor", &["socket-7".to_owned()], &figures, "", &rules.connectors).unwrap();
        let offer = chip.answer(&logbook, &answers, &rules);
        let [lacking] = &offer.lacking[..] else { panic!("{offer:?}") };
        (lacking.verdict, lacking.with, lacking.said(&offer.logbook))
    };
    let ports = [(Side::Needs, "socket-5", 1), (Side::Offers, "socket-7", 1)];
    let adapter = of(3, Kind::ProcessorAdapter, &ports, &[(Figure::CoreVoltageV, 2.9)]);
    let (verdict, with, _) = offered(vec![socket_5()]);
    assert_eq!((verdict, with), (Verdict::No, None));
    let (verdict, with, said) = offered(vec![socket_5(), adapter]);
    assert_eq!((verdict, with), (Verdict::Fits, Some(id(3))));
    assert!(said.contains(", in 0003 ("), "{said}");
}

/// A firmware of 504 MiB sees 528 MB (1024 × 16 × 63 × 512 bytes): a 256 MB card whole, a 2 GB card not.
#[test]
fn a_flash_adapter_is_a_candidate_with_the_card_that_is_in_it() {
    let verdict = |mb: f64| {
        let mut card = of(3, Kind::Media, &[], &[(Figure::CapacityMb, mb)]);
        card.0.part.inside = Some(id(2));
        let adapter = of(2, Kind::FlashAdapter, &[(Side::Needs, "ide-40", 1)], &[]);
        let (_, answers, rules) = shop(vec![board(), adapter, card], with_flash_role());
        let mut found = Candidates::of(&answers, &rules, id(400), id(402), None).unwrap();
        let [only] = &found.ranked.clone()[..] else { panic!("{:?}", found.ranked) };
        let outcome = found.because(only).into_iter().find_map(|one| match one {
            Because::Disk { outcome, .. } => Some(outcome),
            _ => None,
        });
        (only.verdict, outcome)
    };
    let (small, seen) = verdict(256.0);
    assert_eq!(seen, Some(Outcome::SeenWhole));
    let (large, cut) = verdict(2048.0);
    assert!(cut.is_some() && cut != seen && large > small, "{large:?} {cut:?}");
}

#[test]
fn of_two_alike_the_one_with_work_to_be_done_before_fitting_comes_second() {
    let chip = |number| {
        let (part, mut design) = of(number, Kind::Processor, &[(Side::Needs, "socket-5", 1)], &CHIP);
        design.design.id = id(302);
        (part, design)
    };
    let (mut held, design) = chip(2);
    let ready = part(3, "0003", Kind::Processor);
    let ready = PartFile { part: Part { design: Some(design.design.id), ..ready.part }, ..ready };
    let straighten = Work {
        title: "Straighten the pins".to_owned(),
        hold: Hold::Fitting,
        ..work(30, &held, "", WorkState::Open, at("2026-05-10", 5))
    };
    held.work.push(straighten);
    let mut machine = machine(400, "Orla", ("", ""), &[(401, Kind::Mainboard), (402, Kind::Processor)]);
    fit(&mut machine, 411, 401, 1, at("2026-05-01", 1));
    let (board, board_design) = socket_5();
    let rules = Rules::shipped();
    let logbook = logbook(vec![board, held, ready], vec![board_design, design], vec![machine]);
    let answers = Answers::of(&logbook, &rules, day("2026-06-01"));
    let ranked = Candidates::of(&answers, &rules, id(400), id(402), None).unwrap().ranked;
    let order: Vec<(PartId, bool)> = ranked.iter().map(|one| (one.part, one.holds_fitting)).collect();
    assert_eq!(order, [(id(3), false), (id(2), true)]);
    assert_eq!(ranked[0].verdict, ranked[1].verdict, "work is not misfit");
}

#[test]
fn a_candidate_is_judged_by_the_difference_that_it_makes() {
    // The machine has two cards for its one slot: that counts against no processor, nor against either video card.
    let board = of(
        1,
        Kind::Mainboard,
        &[(Side::Offers, "socket-7", 1), (Side::Offers, "isa-16", 1)],
        &[(Figure::BusClockMhz, 66.0), (Figure::CoreVoltageV, 2.9)],
    );
    let chip = of(2, Kind::Processor, &[(Side::Needs, "socket-7", 1)], &CHIP);
    let cards = [3, 4].map(|number| of(number, Kind::SoundCard, &[(Side::Needs, "pci-5v", 1)], &[]));
    let roles = [(401, Kind::Mainboard), (402, Kind::Processor), (403, Kind::SoundCard)];
    let mut machine = machine(400, "Orla", ("", ""), &roles);
    machine.roles[2].count = 2;
    for (number, role, part) in [(411, 401, 1), (412, 403, 3), (413, 403, 4)] {
        fit(&mut machine, number, role, part, at("2026-05-01", 1));
    }
    let [one, other] = cards;
    let (_, answers, rules) = shop(vec![board, chip, one, other], machine);
    let ranked = Candidates::of(&answers, &rules, id(400), id(402), None).unwrap().ranked;
    assert_eq!(ranked[0].verdict, Verdict::Fits, "{:?}", ranked[0].tally);
}
