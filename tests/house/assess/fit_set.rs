//! Machines judged as they are set, beside what would be best; dividers of one bus clock; coolers; figures that cannot
//! be; memory by whole banks; what can be said for certain while a part is not known.

use std::sync::Arc;

use benchwright::assess::fit::{Because, Build, Constraint, SetVoltage, Verdict};
use benchwright::record::*;
use benchwright::rules::{PowerEffect, Rules};
use benchwright::trade::clock::Reach;

use super::support::at;
use crate::fitting::{Fitting, because, figure_of, part, verdict};
use crate::records;

const BOARD: [(Figure, f64); 7] = [
    (Figure::BusClockMhz, 60.0),
    (Figure::BusClockMhz, 66.0),
    (Figure::BusClockMhz, 75.0),
    (Figure::Multiplier, 1.5),
    (Figure::Multiplier, 2.0),
    (Figure::CoreVoltageV, 2.9),
    (Figure::CoreVoltageV, 3.3),
];

const PROCESSOR: [(Figure, f64); 6] = [
    (Figure::BusClockMhz, 66.0),
    (Figure::CoreClockMhz, 133.0),
    (Figure::Multiplier, 1.5),
    (Figure::Multiplier, 2.0),
    (Figure::CoreVoltageV, 2.9),
    (Figure::CoolerNeeded, 0.0),
];

/// A board and a processor, the board with these notes of how it is set.
fn set<'r>(rules: &'r Rules, notes: &[(&str, &str)]) -> Build<'r> {
    let mut fitting = Fitting::new(rules);
    let (mut board, design) = part(Kind::Mainboard, &[], &[("socket-7", 1), ("pci-5v", 3)], &BOARD);
    let file = Arc::make_mut(&mut board);
    for (number, (name, value)) in notes.iter().enumerate() {
        let found = at("2026-01-01", number as u32 + 1);
        let (name, value, source) = ((*name).to_owned(), (*value).to_owned(), String::new());
        let id = benchwright::store::Store::new_id();
        file.settings.push(Setting { id, part: file.part.id, found, name, value, source });
    }
    let piece = fitting.of(&board, Some(&design));
    fitting.pieces.push(piece);
    fitting.add(Kind::Processor, &[("socket-7", 1)], &[], &PROCESSOR);
    fitting.build()
}

fn effects(build: &Build) -> PowerEffect {
    build.because().map(Because::power_effect).max().unwrap()
}

#[test]
fn a_board_set_to_another_core_voltage_is_no_whatever_it_could_give() {
    let rules = Rules::shipped();
    let build = set(&rules, &[]);
    assert_eq!(verdict(&build, Constraint::Voltage), Some(Verdict::Fits), "nothing is noted: it could give 2.9 V");
    let build = set(&rules, &[("Vcore", "3.3 V")]);
    let told = because(&build, Constraint::Voltage);
    let noted = SetVoltage::Noted { best_v: Some(2.9) };
    assert!(matches!(told[..], [Because::Voltage { gives_v: 3.3, set, .. }] if set == noted), "{told:?}");
    assert_eq!((told[0].verdict(), effects(&build)), (Verdict::No, PowerEffect::No));
    let build = set(&rules, &[("Vcore", "3.3 V"), ("core voltage", "2,9")]);
    assert_eq!(verdict(&build, Constraint::Voltage), Some(Verdict::Fits), "the latest note holds");
}

#[test]
fn what_cannot_be_read_is_not_known_and_said_so() {
    let rules = Rules::shipped();
    let build = set(&rules, &[("core voltage", "as the print says")]);
    assert_eq!(verdict(&build, Constraint::Voltage), Some(Verdict::NotKnown));
    assert_eq!(effects(&build), PowerEffect::NotKnown);
    let build = set(&rules, &[("bus clock", "66 or 75 MHz")]);
    assert_eq!(verdict(&build, Constraint::Clocks), Some(Verdict::NotKnown));
    assert_eq!(build.setting(), None);
    assert!((build.best().unwrap().clocks.core_mhz - 133.333).abs() < 0.01, "the best is told beside it");
}

/// 2 × 75 MHz = 150 MHz is 12.5 % beyond 133⅓, and PCI at half of 75 is 37.5 MHz, 12.5 % beyond 33⅓ (PCI local bus
/// specification 2.1).
#[test]
fn a_noted_bus_clock_is_judged_and_the_best_stands_beside_it() {
    let rules = Rules::shipped();
    let build = set(&rules, &[("FSB", "75 MHz"), ("Multiplier", "x2"), ("PCI divider", "1/2")]);
    let set_to = build.setting().unwrap();
    assert_eq!((set_to.clocks.bus_mhz, set_to.clocks.core_mhz, set_to.clocks.pci_mhz), (75.0, 150.0, Some(37.5)));
    assert_eq!(set_to.reach, Reach::Beyond);
    assert!((build.best().unwrap().clocks.core_mhz - 133.333).abs() < 0.01);
    let told = because(&build, Constraint::Clocks);
    assert!(told.iter().any(|one| matches!(one, Because::Runs { core_mhz: 150.0, is_noted: true, .. })), "{told:?}");
    assert!(told.iter().any(|one| matches!(one, Because::CouldRun { .. })), "{told:?}");
    let beyond = told.iter().filter(|one| matches!(one, Because::ClockBeyond { .. })).count();
    assert_eq!(beyond, 3, "core, bus and PCI: {told:?}");
    assert_eq!(effects(&build), PowerEffect::Remark);
    // A multiplier that the processor does not obey leaves open what it runs at.
    let build = set(&rules, &[("multiplier", "5")]);
    assert_eq!(verdict(&build, Constraint::Clocks), Some(Verdict::NotKnown));
}

/// A board that divides 75 MHz by 2 and 112 by 3: PCI at 37.5 and 37.3 MHz.
#[test]
fn dividers_belong_to_a_bus_clock_or_to_all() {
    let rules = Rules::shipped();
    let pci = |dividers: &[(f64, Option<f64>)]| -> Vec<(f64, f64)> {
        let mut fitting = Fitting::new(&rules);
        let clocks = [(Figure::BusClockMhz, 75.0), (Figure::BusClockMhz, 112.0), (Figure::Multiplier, 4.0)];
        let (board, mut design) = part(Kind::Mainboard, &[], &[("slot-1", 1), ("pci-5v", 3)], &clocks);
        let file = Arc::make_mut(&mut design);
        for (value, at_bus_mhz) in dividers {
            let row = figure_of(file.design.id, Figure::PciDivider, *value);
            file.figures.push(DesignFigure { at_bus_mhz: *at_bus_mhz, ..row });
        }
        let piece = fitting.of(&board, Some(&design));
        fitting.pieces.push(piece);
        fitting.add(Kind::Processor, &[("slot-1", 1)], &[], &[(Figure::CoreClockMhz, 450.0)]);
        let rows = fitting.build().settings();
        let mut pci: Vec<_> = rows.iter().map(|row| (row.clocks.bus_mhz, row.clocks.pci_mhz.unwrap())).collect();
        pci.sort_by(|one, other| (one.0, one.1).partial_cmp(&(other.0, other.1)).unwrap());
        pci
    };
    let near = |found: &[(f64, f64)], expected: &[(f64, f64)]| {
        assert_eq!(found.len(), expected.len(), "{found:?}");
        for (one, other) in found.iter().zip(expected) {
            assert!((one.0 - other.0).abs() < 1e-9 && (one.1 - other.1).abs() < 0.04, "{found:?}");
        }
    };
    near(&pci(&[(2.0, Some(75.0)), (3.0, Some(112.0))]), &[(75.0, 37.5), (112.0, 37.33)]);
    near(&pci(&[(2.0, None), (3.0, Some(112.0))]), &[(75.0, 37.5), (112.0, 37.33), (112.0, 56.0)]);
    near(&pci(&[(2.0, None), (3.0, None)]), &[(75.0, 25.0), (75.0, 37.5), (112.0, 37.33), (112.0, 56.0)]);
}

/// A machine of a board with lugs or none, a processor, and coolers.
fn cooled(board: &[(&str, u32)], socket: &str, figures: &[(Figure, f64)], coolers: &[&[(&str, u32)]]) -> Vec<Because> {
    let rules = Rules::shipped();
    let mut fitting = Fitting::new(&rules);
    fitting.add(Kind::Mainboard, &[], board, &[]);
    fitting.add(Kind::Processor, &[(socket, 1)], &[], figures);
    for needs in coolers {
        fitting.add(Kind::Cooler, needs, &[], &[]);
    }
    because(&fitting.build(), Constraint::Cooling)
}

/// Common practice, no source: no 8088 to 80386 had a cooler, nor a 486 up to 33 MHz; later ones did.
#[test]
fn a_processor_without_the_cooler_that_it_needs_is_no_and_what_nobody_told_is_not_known() {
    let lugs: &[(&str, u32)] = &[("socket-7", 1), ("cooler-socket-7", 1)];
    let bare: &[(&str, u32)] = &[("socket-7", 1)];
    let is = |told: &[Because], verdict: Option<Verdict>, effect: Option<PowerEffect>| {
        assert_eq!(told.first().map(Because::verdict), verdict, "{told:?}");
        assert_eq!(told.first().map(Because::power_effect), effect, "{told:?}");
    };
    is(&cooled(lugs, "socket-7", &[], &[]), Some(Verdict::No), Some(PowerEffect::No));
    is(&cooled(bare, "socket-7", &[(Figure::CoolerNeeded, 1.0)], &[]), Some(Verdict::No), Some(PowerEffect::No));
    let unknown = cooled(bare, "socket-7", &[], &[]);
    is(&unknown, Some(Verdict::NotKnown), Some(PowerEffect::NotKnown));
    assert_eq!(unknown[0].missing().map(|(_, figure)| figure), Some(Figure::CoolerNeeded));
    is(&cooled(lugs, "socket-7", &[(Figure::CoolerNeeded, 0.0)], &[]), None, None);
    // On its own lugs, or told of nothing; one that is made for another socket hangs in mid air.
    let on = |needs: &[(&str, u32)]| cooled(lugs, "socket-7", &[], &[needs]);
    is(&on(&[("cooler-socket-7", 1)]), Some(Verdict::Fits), Some(PowerEffect::Nothing));
    is(&on(&[]), Some(Verdict::Fits), Some(PowerEffect::Nothing));
    is(&on(&[("cooler-socket-478", 1)]), Some(Verdict::No), Some(PowerEffect::No));
    // One cooler is no cooler for two.
    let rules = Rules::shipped();
    let mut fitting = Fitting::new(&rules);
    fitting.add(Kind::Mainboard, &[], &[("socket-7", 2), ("cooler-socket-7", 2)], &[]);
    for _ in 0..2 {
        fitting.add(Kind::Processor, &[("socket-7", 1)], &[], &[]);
    }
    fitting.add(Kind::Cooler, &[("cooler-socket-7", 1)], &[], &[]);
    assert_eq!(verdict(&fitting.build(), Constraint::Cooling), Some(Verdict::No));
    for socket in ["dip-40-processor", "pga-68", "plcc-68", "pga-132"] {
        is(&cooled(&[(socket, 1)], socket, &[], &[]), None, None);
    }
    let of_486 = |mhz: f64| cooled(&[("socket-3", 1)], "socket-3", &[(Figure::CoreClockMhz, mhz)], &[]);
    is(&of_486(33.0), None, None);
    is(&of_486(66.0), Some(Verdict::NotKnown), Some(PowerEffect::NotKnown));
}

#[test]
fn a_figure_that_cannot_be_is_told_and_leaves_the_sum_not_known() {
    let rules = Rules::shipped();
    for wrong in [-2.0, f64::INFINITY, f64::NAN] {
        let mut fitting = Fitting::new(&rules);
        fitting.add(Kind::PowerSupply, &[], &[], &[(Figure::Rating5vA, 20.0), (Figure::Rating12vA, 8.0)]);
        let draws = [(Figure::Current12vA, 0.5), (Figure::Current5vA, wrong)];
        let drive = fitting.add(Kind::HardDisk, &[], &[], &draws);
        let told = because(&fitting.build(), Constraint::Power);
        let nonsense = told.iter().find(|one| matches!(one, Because::FigureNonsense { .. })).unwrap();
        assert_eq!(nonsense.missing(), Some((drive, Figure::Current5vA)), "{told:?}");
        assert_eq!((nonsense.verdict(), nonsense.power_effect()), (Verdict::NotKnown, PowerEffect::NotKnown));
    }
}

/// An AT board makes 3.3 V from 5 V by a linear regulator, which draws the same current: 4 + 3 A of +5 V.
#[test]
fn a_board_whose_plugs_bring_no_3_3_v_draws_it_from_5_v() {
    let rules = Rules::shipped();
    let with = |plug: &str| {
        let mut fitting = Fitting::new(&rules);
        let ratings = [(Figure::Rating5vA, 6.5), (Figure::Rating12vA, 8.0), (Figure::Rating3v3A, 5.0)];
        fitting.add(Kind::PowerSupply, &[], &[(plug, 1)], &ratings);
        fitting.add(Kind::Mainboard, &[(plug, 1)], &[("socket-7", 1)], &[(Figure::Current5vA, 4.0)]);
        fitting.add(Kind::Processor, &[("socket-7", 1)], &[], &[(Figure::Current3v3A, 3.0)]);
        verdict(&fitting.build(), Constraint::Power)
    };
    assert_eq!(with("atx-20"), Some(Verdict::Fits));
    assert_eq!(with("at-p8p9"), Some(Verdict::No), "7 A of 6.5");
}

/// Modules a bank = width of the data bus / width of a module (altsci.com and brainbell.com, memory banks): two 72-pin
/// modules to 64 bits, four 30-pin ones to 32.
#[test]
fn memory_is_summed_by_whole_banks_of_modules_that_fit() {
    let rules = Rules::shipped();
    let usable = |bits: f64, socket: &str, sockets: u32, modules: &[f64]| {
        let mut fitting = Fitting::new(&rules);
        let board = [(Figure::BusWidthBits, bits), (Figure::MemoryMostMb, 128.0), (Figure::MemorySocketMostMb, 16.0)];
        fitting.add(Kind::Mainboard, &[], &[(socket, sockets)], &board);
        for mb in modules {
            fitting.add(Kind::MemoryModule, &[(socket, 1)], &[], &[(Figure::MemoryMb, *mb)]);
        }
        fitting.build().memory_mb()
    };
    assert_eq!(usable(64.0, "simm-72", 4, &[8.0, 8.0]), 16.0);
    assert_eq!(usable(64.0, "simm-72", 4, &[8.0, 8.0, 8.0]), 16.0, "the third waits for its fellow");
    assert_eq!(usable(32.0, "simm-30", 8, &[1.0, 1.0, 1.0]), 0.0, "three of four are no bank");
    assert_eq!(usable(32.0, "simm-30", 8, &[1.0; 4]), 4.0);
    assert_eq!(usable(32.0, "simm-30", 8, &[1.0, 1.0, 1.0, 0.25]), 1.0, "a bank counts as its smallest");
    assert_eq!(usable(64.0, "simm-72", 4, &[8.0, 4.0, 8.0, 4.0]), 24.0, "put together by size");
    assert_eq!(usable(64.0, "simm-72", 4, &[8.0, 8.0, 32.0, 32.0]), 16.0, "32 MB is too large for a socket");
    assert_eq!(usable(64.0, "simm-72", 2, &[8.0; 4]), 16.0, "no sockets for the others");
}

#[test]
fn what_only_a_known_part_could_offer_is_certain_while_others_are_not_known() {
    let rules = Rules::shipped();
    let certain = |host: (Kind, &str), (kind, need): (Kind, &str), unknown: Kind| {
        let mut fitting = Fitting::new(&rules);
        fitting.add(host.0, &[], &[(host.1, 1)], &[]);
        fitting.add(kind, &[(need, 1)], &[], &[]);
        let (file, _) = part(unknown, &[], &[], &[]);
        let piece = fitting.of(&file, None);
        fitting.pieces.push(piece);
        let told = because(&fitting.build(), Constraint::Connectors);
        let unmet = told.iter().find(|one| matches!(one, Because::NeedUnmet { .. })).unwrap();
        (unmet.verdict(), unmet.power_effect())
    };
    let (no, unknown) = ((Verdict::No, PowerEffect::No), (Verdict::NotKnown, PowerEffect::NotKnown));
    let board = |offer| (Kind::Mainboard, offer);
    // A card of 3.3 V in a slot of 1.5 V: the keys of the AGP specification 2.0 keep them apart.
    let card = (Kind::VideoCard, "agp-3.3v");
    assert_eq!(certain(board("agp-1.5v"), card, Kind::SoundCard), no);
    assert_eq!(certain(board("agp-1.5v"), card, Kind::Riser), unknown);
    assert_eq!(certain(board("pci-3.3v"), (Kind::SoundCard, "pci-5v"), Kind::HardDisk), no);
    assert_eq!(certain(board("socket-7"), (Kind::Processor, "slot-1"), Kind::HardDisk), no);
    assert_eq!(certain(board("socket-5"), (Kind::Processor, "socket-7"), Kind::ProcessorAdapter), unknown);
    // An ATX board on an AT supply; a lead between them might be what is not known.
    let supply = (Kind::PowerSupply, "at-p8p9");
    assert_eq!(certain(supply, (Kind::Mainboard, "atx-20"), Kind::HardDisk), no);
    assert_eq!(certain(supply, (Kind::Mainboard, "atx-20"), Kind::Cable), unknown);
}

#[test]
fn a_boards_own_posts_as_surveyed_hold_its_cartridge() {
    let rules = Rules::shipped();
    let with = |said: Option<&str>| {
        let mut fitting = Fitting::new(&rules);
        let (mut board, design) = part(Kind::Mainboard, &[], &[("slot-1", 1)], &[]);
        let file = Arc::make_mut(&mut board);
        let answers = said.map(|said| super::support::answer("board-posts", said)).into_iter().collect();
        file.surveys.push(records::survey(file.part.id, at("2026-01-01", 1), answers));
        let piece = fitting.of(&board, Some(&design));
        fitting.pieces.push(piece);
        fitting.add(Kind::Processor, &[("slot-1", 1), ("retention-slot-1", 1)], &[], &[]);
        verdict(&fitting.build(), Constraint::Connectors)
    };
    assert_eq!([with(None), with(Some("missing"))], [Some(Verdict::No); 2]);
    assert_eq!(with(Some("there")), Some(Verdict::Fits));
}
