//! Pieces put together: adapters and rings of them, splitters, voltages through them, what is missing, nothing at all.

use std::sync::Arc;

use benchwright::assess::fit::{Asked, Because, Build, Constraint, Verdict};
use benchwright::record::*;
use benchwright::rules::Rules;

use super::support::{at, finding};
use crate::fitting::{Fitting, because, part, verdict};

fn missing(build: &Build) -> Vec<(PartId, Figure)> {
    build.because().filter_map(Because::missing).collect()
}

#[test]
fn a_processor_reaches_the_board_through_adapters() {
    let rules = Rules::shipped();
    let mut fitting = Fitting::new(&rules);
    fitting.add(Kind::Mainboard, &[], &[("socket-5", 1)], &[(Figure::CoreVoltageV, 3.3)]);
    let processor = fitting.add(Kind::Processor, &[("socket-7", 1)], &[], &[(Figure::CoreVoltageV, 2.9)]);
    let build = fitting.build();
    assert_eq!(verdict(&build, Constraint::Connectors), Some(Verdict::No), "no Socket 7 in a Socket 5");
    // In mid air it has neither voltage nor clock.
    assert_eq!((verdict(&build, Constraint::Voltage), verdict(&build, Constraint::Clocks)), (None, None));
    let mut fitting = Fitting::new(&rules);
    fitting.add(Kind::Mainboard, &[], &[("socket-5", 1)], &[(Figure::CoreVoltageV, 3.3)]);
    let adapter_v = [(Figure::CoreVoltageV, 2.8), (Figure::CoreVoltageV, 2.9)];
    let adapter = fitting.add(Kind::ProcessorAdapter, &[("socket-5", 1)], &[("socket-7", 1)], &adapter_v);
    fitting.add(Kind::Processor, &[("socket-7", 1)], &[], &[(Figure::CoreVoltageV, 2.9)]);
    let build = fitting.build();
    assert_eq!(verdict(&build, Constraint::Connectors), Some(Verdict::Fits));
    // What the adapter gives counts, not the board beneath it.
    let told = because(&build, Constraint::Voltage);
    assert!(matches!(told[..], [Because::Voltage { host, gives_v: 2.9, .. }] if host == adapter), "{told:?}");
    assert_eq!(told[0].verdict(), Verdict::Fits);
    assert_ne!(adapter, processor);
}

#[test]
fn an_adapter_that_says_nothing_of_its_voltage_is_not_taken_for_the_board() {
    let rules = Rules::shipped();
    let mut fitting = Fitting::new(&rules);
    fitting.add(Kind::Mainboard, &[], &[("socket-5", 1)], &[(Figure::CoreVoltageV, 3.3)]);
    let adapter = fitting.add(Kind::ProcessorAdapter, &[("socket-5", 1)], &[("socket-7", 1)], &[]);
    fitting.add(Kind::Processor, &[("socket-7", 1)], &[], &[(Figure::CoreVoltageV, 3.3)]);
    let build = fitting.build();
    assert_eq!(verdict(&build, Constraint::Voltage), Some(Verdict::NotKnown));
    assert!(missing(&build).contains(&(adapter, Figure::CoreVoltageV)));
}

#[test]
fn a_voltage_module_gives_what_its_board_cannot() {
    let rules = Rules::shipped();
    let with = |module: bool| {
        let mut fitting = Fitting::new(&rules);
        let offers = [("socket-7", 1), ("voltage-module-socket-7", 1)];
        fitting.add(Kind::Mainboard, &[], &offers, &[(Figure::CoreVoltageV, 3.3)]);
        if module {
            let given = [(Figure::CoreVoltageV, 2.8)];
            fitting.add(Kind::VoltageModule, &[("voltage-module-socket-7", 1)], &[], &given);
        }
        fitting.add(Kind::Processor, &[("socket-7", 1)], &[], &[(Figure::CoreVoltageV, 2.8)]);
        verdict(&fitting.build(), Constraint::Voltage)
    };
    assert_eq!((with(false), with(true)), (Some(Verdict::No), Some(Verdict::Fits)));
}

#[test]
fn a_splitter_makes_two_leads_of_one() {
    let rules = Rules::shipped();
    let drives = |splitters: usize| {
        let mut fitting = Fitting::new(&rules);
        fitting.add(Kind::PowerSupply, &[], &[("drive-4pin", 2)], &[]);
        for _ in 0..splitters {
            fitting.add(Kind::Cable, &[("drive-4pin", 1)], &[("drive-4pin", 2)], &[]);
        }
        for _ in 0..4 {
            fitting.add(Kind::HardDisk, &[("drive-4pin", 1)], &[], &[]);
        }
        verdict(&fitting.build(), Constraint::Connectors)
    };
    assert_eq!(drives(0), Some(Verdict::No));
    assert_eq!(drives(1), Some(Verdict::No));
    assert_eq!(drives(2), Some(Verdict::Fits));
}

#[test]
fn adapters_that_would_only_carry_each_other_are_refused_by_name() {
    let rules = Rules::shipped();
    let mut fitting = Fitting::new(&rules);
    // Nothing but the adapters offers what they need: each would sit in the other, and the card in mid air.
    let one = fitting.add(Kind::Riser, &[("isa-16", 1)], &[("pci-5v", 1)], &[]);
    let other = fitting.add(Kind::Riser, &[("pci-5v", 1)], &[("isa-16", 2)], &[]);
    fitting.add(Kind::SoundCard, &[("isa-16", 1)], &[], &[]);
    let build = fitting.build();
    let told = because(&build, Constraint::Connectors);
    let ring = told.iter().find_map(|one| match one {
        Because::AdapterRing { around, .. } => Some(around.clone()),
        _ => None,
    });
    let mut around = ring.expect("the ring is named").to_vec();
    around.sort_unstable();
    assert_eq!(around, [one.min(other), one.max(other)]);
    assert_eq!(build.verdict(), Verdict::No);
}

#[test]
fn a_ring_is_passed_over_where_there_is_another_way() {
    let rules = Rules::shipped();
    let mut fitting = Fitting::new(&rules);
    let one = fitting.piece(Kind::Riser, &[("isa-16", 1)], &[("pci-5v", 1)], &[]);
    let other = fitting.piece(Kind::Riser, &[("pci-5v", 1)], &[("isa-16", 2)], &[]);
    let board = fitting.piece(Kind::Mainboard, &[], &[("isa-16", 1)], &[]);
    let cards = [1, 2].map(|_| fitting.piece(Kind::SoundCard, &[("isa-16", 1)], &[], &[]));
    // The board's one slot carries the first adapter, that the second, and that both cards: whatever the order.
    let all = [vec![one, other, board], cards.to_vec()].concat();
    for turn in 0..all.len() {
        let mut pieces = all.clone();
        pieces.rotate_left(turn);
        let build = Build::new(&rules, pieces, Asked::default());
        let unmet = because(&build, Constraint::Connectors);
        assert_eq!(verdict(&build, Constraint::Connectors), Some(Verdict::Fits), "{unmet:?}");
        // From every card one comes to the board.
        for card in 0..build.pieces().len() {
            let mut at = card;
            for _ in 0..build.pieces().len() {
                at = build.plugged().links().find(|link| link.part == at).map_or(at, |link| link.host);
            }
            assert_eq!(build.pieces()[at].kind(), Kind::Mainboard);
        }
    }
}

#[test]
fn forty_adapters_that_all_take_each_other_are_settled() {
    let rules = Rules::shipped();
    let mut fitting = Fitting::new(&rules);
    for _ in 0..40 {
        fitting.add(Kind::Riser, &[("isa-16", 2)], &[("isa-16", 3)], &[]);
    }
    let build = fitting.build();
    assert_eq!(build.verdict(), Verdict::No, "there is no ground under them");
}

#[test]
fn a_connector_without_its_shroud_is_usable_by_eye() {
    let rules = Rules::shipped();
    let mut fitting = Fitting::new(&rules);
    let (file, design) = part(Kind::Mainboard, &[], &[("ide-40", 2)], &[]);
    let mut file = (*file).clone();
    file.findings.push(finding(70, &file, "shroud-broken", at("2026-05-01", 1), Severity::Slight));
    let board = fitting.of(&Arc::new(file), Some(&design));
    fitting.pieces.push(board);
    fitting.add(Kind::HardDisk, &[("ide-40", 1)], &[], &[]);
    let told = because(&fitting.build(), Constraint::Connectors);
    assert!(matches!(told[..], [Because::ByEye { .. }]), "{told:?}");
    assert_eq!(told[0].verdict(), Verdict::Caveat);
}

#[test]
fn a_disk_on_a_controller_with_its_own_firmware_is_not_held_to_the_boards() {
    let rules = Rules::shipped();
    let mut fitting = Fitting::new(&rules);
    fitting.add(Kind::Mainboard, &[], &[("isa-16", 1)], &[(Figure::DiskMostMb, 504.0)]);
    let card = fitting.add(Kind::ControllerCard, &[("isa-16", 1)], &[("scsi-50", 7)], &[]);
    fitting.add(Kind::HardDisk, &[("scsi-50", 1)], &[], &[(Figure::CapacityMb, 2100.0)]);
    let told = because(&fitting.build(), Constraint::Drives);
    assert!(matches!(told[..], [Because::DiskOnController { host, .. }] if host == card), "{told:?}");
}

#[test]
fn the_connectors_of_one_kind_that_others_hold_are_told_with_their_holders() {
    let rules = Rules::shipped();
    let mut fitting = Fitting::new(&rules);
    fitting.add(Kind::Mainboard, &[], &[("isa-16", 1)], &[]);
    let first = fitting.add(Kind::SoundCard, &[("isa-16", 1)], &[], &[]);
    let second = fitting.add(Kind::NetworkCard, &[("isa-16", 1)], &[], &[]);
    let told = because(&fitting.build(), Constraint::Connectors);
    let [Because::NeedUnmet { part, held_by, missing: 1, .. }] = &told[..] else { panic!("{told:?}") };
    assert_eq!((*part, &**held_by), (second, &[first][..]));
}

#[test]
fn a_need_is_not_refused_while_a_part_that_could_meet_it_is_to_come() {
    let rules = Rules::shipped();
    let mut fitting = Fitting::new(&rules);
    fitting.add(Kind::Mainboard, &[("baby-at", 1)], &[("isa-16", 1)], &[]);
    fitting.add(Kind::SoundCard, &[("pci-5v", 1)], &[], &[]);
    let of = |to_come: &[Kind]| {
        let asked = Asked { to_come: to_come.to_vec(), ..Asked::default() };
        let build = Build::new(&rules, fitting.pieces.clone(), asked);
        let told = because(&build, Constraint::Connectors);
        told.iter().map(Because::verdict).collect::<Vec<_>>()
    };
    assert_eq!(of(&[]), [Verdict::No, Verdict::No]);
    // A case to come may take the board; it has no slot for the card.
    assert_eq!(of(&[Kind::Case]), [Verdict::No, Verdict::NotKnown]);
    assert_eq!(of(&[Kind::Case, Kind::Riser]), [Verdict::NotKnown, Verdict::NotKnown]);
}

#[test]
fn what_is_missing_is_named_and_nothing_is_guessed() {
    let rules = Rules::shipped();
    let mut fitting = Fitting::new(&rules);
    let board = fitting.add(Kind::Mainboard, &[], &[("socket-7", 1), ("simm-72", 4), ("ide-40", 4)], &[]);
    let processor = fitting.add(Kind::Processor, &[("socket-7", 1)], &[], &[]);
    let module = fitting.add(Kind::MemoryModule, &[("simm-72", 1)], &[], &[]);
    fitting.add(Kind::MemoryModule, &[("simm-72", 1)], &[], &[]);
    let disk = fitting.add(Kind::HardDisk, &[("ide-40", 1)], &[], &[]);
    let supply = fitting.add(Kind::PowerSupply, &[], &[], &[]);
    let case = fitting.add(Kind::Case, &[], &[("baby-at", 1)], &[]);
    fitting.add(Kind::VideoCard, &[], &[("vga-15", 1)], &[]);
    let build = fitting.build();
    let told = missing(&build);
    for wanted in [
        (processor, Figure::CoreVoltageV),
        (board, Figure::BusClockMhz),
        (processor, Figure::Multiplier),
        (processor, Figure::CoreClockMhz),
        (board, Figure::MemoryMostMb),
        (disk, Figure::CapacityMb),
        (supply, Figure::Rating5vA),
        (case, Figure::CardRoomMm),
    ] {
        assert!(told.contains(&wanted), "{wanted:?} is not asked for");
    }
    assert_eq!(verdict(&build, Constraint::Clocks), Some(Verdict::NotKnown));
    assert!(build.setting().is_none() && build.settings().is_empty());
    assert_ne!(module, board);
}

#[test]
fn no_parts_and_parts_without_a_design_are_answered() {
    let rules = Rules::shipped();
    let nothing = Fitting::new(&rules).build();
    assert_eq!((nothing.verdict(), nothing.because().count()), (Verdict::NotKnown, 0), "nothing is there to judge");
    let mut fitting = Fitting::new(&rules);
    let (file, _) = part(Kind::Mainboard, &[], &[], &[]);
    let board = fitting.of(&file, None);
    fitting.pieces.push(board);
    let build = fitting.build();
    assert_eq!(build.verdict(), Verdict::NotKnown);
    assert!(matches!(because(&build, Constraint::Connectors)[..], [Because::ConnectorsUnknown { .. }]));
}

#[test]
fn figures_that_cannot_be_are_as_good_as_none() {
    let rules = Rules::shipped();
    for wrong in [0.0, -66.0, f64::INFINITY, f64::NAN, 1e300] {
        let mut fitting = Fitting::new(&rules);
        let all: Vec<(Figure, f64)> = Figure::ALL.iter().map(|figure| (*figure, wrong)).collect();
        fitting.add(Kind::Mainboard, &[], &[("socket-7", 1), ("simm-72", 4), ("pci-5v", 1), ("ide-40", 2)], &all);
        fitting.add(Kind::Processor, &[("socket-7", 1)], &[], &all);
        fitting.add(Kind::MemoryModule, &[("simm-72", 1)], &[], &all);
        fitting.add(Kind::HardDisk, &[("ide-40", 1)], &[], &all);
        fitting.add(Kind::PowerSupply, &[], &[], &all);
        let build = fitting.build();
        if wrong <= 0.0 || wrong.is_nan() {
            assert_eq!(verdict(&build, Constraint::Voltage), Some(Verdict::NotKnown), "{wrong}");
            assert_eq!(verdict(&build, Constraint::Clocks), Some(Verdict::NotKnown), "{wrong}");
        }
    }
}
