//! Parts against each other, by published tables and by examples of common practice.

use benchwright::assess::fit::{Because, Build, Constraint, Verdict};
use benchwright::record::{Figure, Kind};
use benchwright::rules::Rules;
use benchwright::trade::drive::Outcome;
use benchwright::trade::supply::{LoadFault, Rail};

use crate::fitting::{Fitting, because, verdict};

/// A board with a slot for the processor and these bus clocks, and a processor with these figures.
fn slot_1<'r>(rules: &'r Rules, buses_mhz: &[f64], processor: &[(Figure, f64)]) -> Build<'r> {
    let mut fitting = Fitting::new(rules);
    let clocks: Vec<(Figure, f64)> = buses_mhz.iter().map(|mhz| (Figure::BusClockMhz, *mhz)).collect();
    fitting.add(Kind::Mainboard, &[], &[("slot-1", 1), ("pci-5v", 4), ("agp-3.3v", 1)], &clocks);
    fitting.add(Kind::Processor, &[("slot-1", 1)], &[], processor);
    fitting.build()
}

fn fixed(multiplier: f64, bus_mhz: f64, sold_mhz: f64) -> [(Figure, f64); 3] {
    [(Figure::Multiplier, multiplier), (Figure::BusClockMhz, bus_mhz), (Figure::CoreClockMhz, sold_mhz)]
}

/// Slot processors of the late nineties, multiplier by bus (henriknielsen.dk, sharkyextreme); PCI = bus / 2 at 66 and
/// / 3 at 100, AGP 66 MHz at both (the same).
#[test]
fn a_slot_processor_finds_its_published_setting_on_a_board_of_both_buses() {
    let rules = Rules::shipped();
    let published = [
        (3.5, 66.0, 233.0),
        (4.0, 66.0, 266.0),
        (4.5, 66.0, 300.0),
        (5.0, 66.0, 333.0),
        (3.5, 100.0, 350.0),
        (4.5, 100.0, 450.0),
    ];
    for (multiplier, bus, sold) in published {
        let build = slot_1(&rules, &[66.0, 100.0], &fixed(multiplier, bus, sold));
        let setting = build.setting().unwrap();
        assert!((setting.settings.bus_mhz - bus).abs() < 1.0, "{sold}: bus {}", setting.settings.bus_mhz);
        assert!((setting.clocks.core_mhz - sold).abs() < 0.7, "{sold}: core {}", setting.clocks.core_mhz);
        assert!((setting.clocks.pci_mhz.unwrap() - 33.333).abs() < 0.001, "{sold}");
        assert!((setting.clocks.agp_mhz.unwrap() - 66.667).abs() < 0.001, "{sold}");
        assert_eq!(verdict(&build, Constraint::Clocks), Some(Verdict::Fits), "{sold}");
    }
}

/// Common practice, no source: a fixed-multiplier processor made for a 66 MHz bus and sold as 300 MHz runs at 450 MHz
/// on a 100 MHz bus; a 400 MHz processor with half-speed second-level cache runs that cache at 200 MHz.
#[test]
fn a_66_mhz_processor_on_a_100_mhz_board_would_run_at_450() {
    let rules = Rules::shipped();
    let build = slot_1(&rules, &[100.0], &fixed(4.5, 66.0, 300.0));
    assert!((build.setting().unwrap().clocks.core_mhz - 450.0).abs() < 1e-9);
    assert_eq!(verdict(&build, Constraint::Clocks), Some(Verdict::No));
    let half = [&fixed(4.0, 100.0, 400.0)[..], &[(Figure::CacheDivider, 2.0)]].concat();
    assert_eq!(slot_1(&rules, &[100.0], &half).setting().unwrap().clocks.cache_mhz, Some(200.0));
    // Every setting is told, the dangerous one too: 4.5 × 66⅔ first, 4.5 × 100 last.
    let rows = slot_1(&rules, &[100.0, 66.0], &fixed(4.5, 66.0, 300.0)).settings();
    let cores: Vec<f64> = rows.iter().map(|row| row.clocks.core_mhz.round()).collect();
    assert_eq!(cores, [300.0, 450.0]);
}

/// A 133 MHz bus part on a 100 MHz board runs slower than sold. A 75 MHz bus over 2 takes PCI to 37.5 MHz, 83⅓ over 2
/// to 41.7 (PC Guide; that the first mostly worked and the second corrupted disks is common practice, no source).
#[test]
fn slower_than_sold_and_pci_beyond_its_clock_are_caveats() {
    let rules = Rules::shipped();
    let slow = slot_1(&rules, &[100.0], &fixed(6.5, 133.0, 866.0));
    let told = because(&slow, Constraint::Clocks);
    assert!(matches!(told[0], Because::RunsSlower { core_mhz: 650.0, .. }), "{told:?}");
    assert_eq!(told[0].verdict(), Verdict::Caveat);
    let published = [
        (66.0, 133.0, 33.333, Verdict::Fits),
        (75.0, 150.0, 37.5, Verdict::Caveat),
        (83.0, 166.0, 41.667, Verdict::No),
    ];
    for (bus, sold, pci, wanted) in published {
        let mut fitting = Fitting::new(&rules);
        let board = [(Figure::BusClockMhz, bus), (Figure::PciDivider, 2.0)];
        fitting.add(Kind::Mainboard, &[], &[("socket-7", 1), ("pci-5v", 4)], &board);
        fitting.add(Kind::Processor, &[("socket-7", 1)], &[], &fixed(2.0, bus, sold));
        let build = fitting.build();
        assert!((build.setting().unwrap().clocks.pci_mhz.unwrap() - pci).abs() < 0.001);
        assert_eq!(verdict(&build, Constraint::Clocks), Some(wanted), "{bus} MHz");
    }
}

/// Sockets that take each other or do not: Upgrading and Repairing PCs, table 3.18; Wikipedia (de), Sockel 7.
#[test]
fn sockets_take_what_the_published_tables_say() {
    let rules = Rules::shipped();
    let published = [
        ("socket-7", "socket-5", true),
        ("socket-5", "socket-7", false),
        ("super-7", "socket-7", true),
        ("socket-3", "socket-1", true),
        ("socket-1", "socket-3", false),
        // One mechanical connector turned round, electrically foreign.
        ("slot-1", "slot-a", false),
        ("slot-a", "slot-1", false),
        ("isa-16", "isa-8", true),
        ("isa-8", "isa-16", false),
        // AGP 3.0 interface specification 1.0, tables 15 and 35.
        ("agp-3.3v", "agp-universal", true),
        ("agp-1.5v", "agp-3.3v", false),
        ("agp-3.3v", "agp-1.5v", false),
        ("agp-universal", "agp-3.3v", true),
        ("agp-universal", "agp-1.5v", true),
        ("agp-3.0", "agp-1.5v", false),
        ("agp-3.0-universal", "agp-3.3v", true),
    ];
    for (board, needs, fits) in published {
        let mut fitting = Fitting::new(&rules);
        fitting.add(Kind::Mainboard, &[], &[(board, 1)], &[]);
        let card = fitting.add(Kind::VideoCard, &[(needs, 1)], &[], &[]);
        let build = fitting.build();
        let wanted = if fits { Verdict::Fits } else { Verdict::No };
        assert_eq!(verdict(&build, Constraint::Connectors), Some(wanted), "{needs} in {board}");
        let named = build.because().any(|one| matches!(one, Because::NeedUnmet { part, .. } if *part == card));
        assert_eq!(named, !fits, "{needs} in {board}");
    }
}

/// Modules a bank (altsci.com; brainbell.com): 286 and 386SX 2 × 30-pin; 386DX and 486 4 × 30-pin or 1 × 72-pin;
/// processors with a bus of 64 bits 8 × 30-pin, 2 × 72-pin or 1 × 168-pin.
#[test]
fn memory_makes_whole_banks_of_the_published_counts() {
    let rules = Rules::shipped();
    let published = [
        ("pga-68", "simm-30", 2),
        ("pga-132", "simm-30", 4),
        ("pga-132", "simm-72", 1),
        ("socket-3", "simm-30", 4),
        ("socket-3", "simm-72", 1),
        ("socket-5", "simm-72", 2),
        ("socket-7", "simm-72", 2),
        ("socket-7", "simm-30", 8),
        ("slot-1", "dimm-168-sdram", 1),
    ];
    for (socket, module, per_bank) in published {
        for count in 1..=per_bank * 2 {
            let mut fitting = Fitting::new(&rules);
            fitting.add(Kind::Mainboard, &[], &[(socket, 1), (module, 16)], &[(Figure::MemoryMostMb, 1024.0)]);
            fitting.add(Kind::Processor, &[(socket, 1)], &[], &[]);
            for _ in 0..count {
                fitting.add(Kind::MemoryModule, &[(module, 1)], &[], &[(Figure::MemoryMb, 1.0)]);
            }
            let told = because(&fitting.build(), Constraint::Memory);
            let short = told.iter().find_map(|one| match one {
                Because::BankShort { per_bank: told, short, .. } => Some((*told, *short)),
                _ => None,
            });
            let left = count % per_bank;
            let wanted = (left > 0).then(|| (per_bank, per_bank - left));
            assert_eq!(short, wanted, "{count} × {module} with {socket}");
        }
    }
}

/// Common practice, no source: three sockets of 256 MB, 768 MB in all, for a 100 MHz desktop chipset of the late
/// nineties.
#[test]
fn three_sockets_of_256_mb_take_768_mb_and_no_512_mb_module() {
    let rules = Rules::shipped();
    let memory = |modules: &[f64]| {
        let mut fitting = Fitting::new(&rules);
        let board = [(Figure::MemoryMostMb, 768.0), (Figure::MemorySocketMostMb, 256.0), (Figure::BusWidthBits, 64.0)];
        fitting.add(Kind::Mainboard, &[], &[("dimm-168-sdram", 3)], &board);
        for mb in modules {
            fitting.add(Kind::MemoryModule, &[("dimm-168-sdram", 1)], &[], &[(Figure::MemoryMb, *mb)]);
        }
        let build = fitting.build();
        (verdict(&build, Constraint::Memory).unwrap(), verdict(&build, Constraint::Connectors).unwrap())
    };
    assert_eq!(memory(&[256.0, 256.0, 256.0]), (Verdict::Fits, Verdict::Fits));
    assert_eq!(memory(&[512.0]).0, Verdict::No);
    // The fourth is in no socket, so that it does not count: 768 MB are taken, and the module is told to hang in air.
    assert_eq!(memory(&[256.0; 4]), (Verdict::Fits, Verdict::No), "no fourth socket");
}

/// The label of a 145 W supply of 1998 (hardware maintenance manual of a desktop series, p. 32): +5 V 1.5 to 18 A,
/// +12 V 0.02 to 4.2 A, +3.3 V to 10 A, +3.3 and +5 V together at most 100 W.
#[test]
fn a_145_w_supply_is_overloaded_by_its_combined_limit_alone() {
    let rules = Rules::shipped();
    let label = [
        (Figure::PowerW, 145.0),
        (Figure::Combined3v3And5vW, 100.0),
        (Figure::Rating5vA, 18.0),
        (Figure::Least5vA, 1.5),
        (Figure::Rating12vA, 4.2),
        (Figure::Least12vA, 0.02),
        (Figure::Rating3v3A, 10.0),
    ];
    let load = |v5: f64, v3: f64, v12: f64| {
        let mut fitting = Fitting::new(&rules);
        fitting.add(Kind::PowerSupply, &[], &[], &label);
        let draws = [(Figure::Current5vA, v5), (Figure::Current3v3A, v3), (Figure::Current12vA, v12)];
        fitting.add(Kind::Mainboard, &[], &[], &draws);
        because(&fitting.build(), Constraint::Power)
    };
    // 5 × 13 + 3.3 × 10 = 98 W, and 12 × 3 = 36 W beside it: 134 W in all.
    let within = load(13.0, 10.0, 3.0);
    assert!(matches!(within[..], [Because::LoadCarried { watts, .. }] if (watts - 134.0).abs() < 1e-9), "{within:?}");
    // 5 × 15 + 3.3 × 9 = 104.7 W: each rail alone would carry it.
    let over = load(15.0, 9.0, 1.0);
    let [Because::Load { fault: LoadFault::TooMuchTogether { load_w, most_w, .. }, .. }] = &over[..] else {
        panic!("{over:?}")
    };
    assert!((load_w - 104.7).abs() < 1e-9 && *most_w == 100.0);
    assert_eq!(over[0].verdict(), Verdict::No);
    let idle = load(1.0, 0.0, 0.5);
    let [Because::Load { fault: LoadFault::TooLittle { rail: Rail::Plus5, .. }, .. }] = &idle[..] else {
        panic!("{idle:?}")
    };
    assert_eq!(idle[0].verdict(), Verdict::Caveat);
}

/// Firmware limits of the Large Disk HOWTO 2.2x: 1024 × 16 × 63 (528 MB, clips), 65,535 × 16 × 63 (33.8 GB, hangs);
/// common practice, no source: 32 GB is the most that a late-nineties firmware accepts.
#[test]
fn a_drive_beyond_the_firmware_is_clipped_or_hangs() {
    let rules = Rules::shipped();
    let disk = |most_mib: f64, sold_mb: f64| {
        let mut fitting = Fitting::new(&rules);
        fitting.add(Kind::Mainboard, &[], &[("ide-40", 2)], &[(Figure::DiskMostMb, most_mib)]);
        fitting.add(Kind::HardDisk, &[("ide-40", 1)], &[], &[(Figure::CapacityMb, sold_mb)]);
        because(&fitting.build(), Constraint::Drives).remove(0)
    };
    let clipped = disk(504.0, 540.0);
    assert!(matches!(clipped, Because::Disk { outcome: Outcome::ClippedTo { bytes: 528_482_304 }, .. }), "{clipped:?}");
    assert_eq!(clipped.verdict(), Verdict::Caveat);
    assert_eq!(disk(504.0, 528.0).verdict(), Verdict::Fits);
    let hangs = disk(32_256.0, 40_000.0);
    assert!(matches!(hangs, Because::Disk { outcome: Outcome::NotUsable, .. }), "{hangs:?}");
    assert_eq!(disk(32_256.0, 33_800.0).verdict(), Verdict::Fits);
}

/// Core voltages: a 2.0 V part in a socket made for 3.3 V is destroyed; what is not told is never taken as right.
/// Ranges of the sockets: Upgrading and Repairing PCs, table 3.18.
#[test]
fn core_voltage_is_never_taken_as_right_while_it_is_not_known() {
    let rules = Rules::shipped();
    let at = |socket: &str, board: &[(Figure, f64)], asks: &[(Figure, f64)]| {
        let mut fitting = Fitting::new(&rules);
        fitting.add(Kind::Mainboard, &[], &[(socket, 1)], board);
        fitting.add(Kind::Processor, &[(socket, 1)], &[], asks);
        verdict(&fitting.build(), Constraint::Voltage)
    };
    let v = |volts: f64| [(Figure::CoreVoltageV, volts)];
    let split = [(Figure::CoreVoltageLeastV, 2.0), (Figure::CoreVoltageMostV, 3.5)];
    assert_eq!(at("socket-7", &split, &v(2.9)), Some(Verdict::Fits));
    assert_eq!(at("socket-7", &v(3.3), &v(2.0)), Some(Verdict::No));
    assert_eq!(at("socket-7", &v(3.3), &v(3.45)), Some(Verdict::Caveat), "4.3 % off");
    assert_eq!(at("socket-7", &[], &v(2.9)), Some(Verdict::NotKnown));
    assert_eq!(at("socket-7", &split, &[]), Some(Verdict::NotKnown));
    // Sockets 3 and 7 are used at several voltages, Socket 1 at 5 V alone.
    assert_eq!(at("socket-3", &[], &v(5.0)), Some(Verdict::NotKnown));
    assert_eq!(at("socket-1", &[], &v(5.0)), Some(Verdict::Fits));
    assert_eq!(at("socket-1", &[], &v(3.3)), Some(Verdict::No));
}
