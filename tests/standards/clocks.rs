//! Clocks against published multipliers and dividers.

use crate::chance::Chance;
use crate::fuzz::rounds;
use benchwright::trade::clock::{
    AGP_MHZ, Board, PCI_MHZ, Processor, Ratio, Reach, Settings, Specified, clocks, judge, real_mhz, table, usual_agp,
    usual_pci,
};
use proptest::prelude::*;

fn core(bus_mhz: f64, multiplier: f64) -> f64 {
    clocks(&settings(bus_mhz, multiplier)).core_mhz
}

fn settings(bus_mhz: f64, multiplier: f64) -> Settings {
    Settings {
        bus_mhz: real_mhz(bus_mhz),
        multiplier,
        vlb: false,
        pci: usual_pci(real_mhz(bus_mhz)),
        agp: usual_agp(real_mhz(bus_mhz)),
        isa: Some(Ratio { times: 1, by: 4 }),
        cache: None,
    }
}

/// Published settings: slot processors of the late nineties (henriknielsen.dk, sharkyextreme); P100 either way, P150
/// either way, PR200 at 75 MHz (PC Guide). The printed core clock is whole.
#[test]
fn published_settings_give_the_printed_core_clock() {
    let published = [
        (66.0, 3.5, 233.0),
        (66.0, 4.0, 266.0),
        (66.0, 4.5, 300.0),
        (66.0, 5.0, 333.0),
        (100.0, 3.5, 350.0),
        (100.0, 4.5, 450.0),
        (50.0, 2.0, 100.0),
        (66.0, 1.5, 100.0),
        (50.0, 3.0, 150.0),
        (60.0, 2.5, 150.0),
        (75.0, 2.0, 150.0),
    ];
    for (bus, multiplier, printed) in published {
        assert!((core(bus, multiplier) - printed).abs() < 0.7, "{multiplier} × {bus}: {}", core(bus, multiplier));
    }
    // With 66 taken as whole, 4.5 × 66 would make 297.
    assert!((core(66.0, 4.5) - 297.0).abs() > 2.0);
}

/// Common practice, no source: a 300 MHz processor with a fixed multiplier made for 66 MHz runs at 450 MHz on a 100 MHz
/// bus; a 400 MHz processor with half-speed cache runs that at 200 MHz.
#[test]
fn common_examples_hold() {
    let multiplier = 300.0 / real_mhz(66.0);
    assert!((core(100.0, multiplier) - 450.0).abs() < 1e-9);
    let half = Settings { cache: Some(Ratio { times: 1, by: 2 }), ..settings(100.0, 4.0) };
    assert_eq!(clocks(&half).cache_mhz, Some(200.0));
}

/// PCI at half of 66, a third of 100; AGP 66 at all (henriknielsen.dk, sharkyextreme); a quarter of 133. PCI runs
/// at the bus clock of 33 MHz boards, ISA at a quarter of 33 or a third of 25 (PC Guide).
#[test]
fn usual_dividers_are_the_published_ones() {
    let one = |by| Some(Ratio { times: 1, by });
    for (bus, expected) in [(33.0, 1), (50.0, 2), (60.0, 2), (66.0, 2), (100.0, 3), (133.0, 4)] {
        assert_eq!(usual_pci(real_mhz(bus)), one(expected), "PCI at {bus}");
    }
    for (bus, times, by) in [(66.0, 1, 1), (100.0, 2, 3), (133.0, 1, 2)] {
        assert_eq!(usual_agp(real_mhz(bus)), Some(Ratio { times, by }), "AGP at {bus}");
        let agp = clocks(&settings(bus, 1.0)).agp_mhz.unwrap();
        assert!((agp - AGP_MHZ).abs() < 0.01, "AGP at {bus}: {agp}");
    }
    let isa = clocks(&settings(33.0, 1.0)).isa_mhz.unwrap();
    assert!((isa - 8.33).abs() < 0.01);
    let isa_at_25 = Settings { isa: Some(Ratio { times: 1, by: 3 }), ..settings(25.0, 1.0) };
    assert!((clocks(&isa_at_25).isa_mhz.unwrap() - 8.33).abs() < 0.01);
    // PCI local bus specification: a period of 30 ns.
    assert!((1000.0 / PCI_MHZ - 30.0).abs() < 1e-9);
}

/// By hand: 75 / 2 = 37.5 MHz is 12.5 % beyond PCI's 33⅓; 83⅓ / 2 = 41⅔ is 25 % beyond; 450 of 300 is 50 % beyond.
#[test]
fn beyond_specification_is_said_by_how_much() {
    let beyond = |set: &Settings, name: &str| {
        let specified = Specified { core_mhz: Some(300.0), bus_mhz: Some(real_mhz(66.0)), ..Specified::default() };
        let rows = judge(&clocks(set), &specified);
        rows.iter().find(|row| row.clock == name).map(|row| (row.beyond_percent, row.reach)).unwrap()
    };
    let half = Some(Ratio { times: 1, by: 2 });
    let (percent, reach) = beyond(&Settings { pci: half, ..settings(75.0, 2.0) }, "PCI");
    assert!((percent - 12.5).abs() < 1e-9 && reach == Reach::Beyond);
    let (percent, reach) = beyond(&Settings { pci: half, ..settings(83.0, 2.0) }, "PCI");
    assert!((percent - 25.0).abs() < 1e-9 && reach == Reach::Far);
    let (percent, reach) = beyond(&settings(100.0, 4.5), "core");
    assert!((percent - 50.0).abs() < 1e-9 && reach == Reach::Far);
    // Printed clocks are rounded: 4.5 × 66⅔ is within 300, 5 × 66⅔ = 333⅓ within 333.
    assert_eq!(beyond(&settings(66.0, 4.5), "core").1, Reach::Within);
    assert_eq!(beyond(&settings(66.0, 4.5), "bus").1, Reach::Within);
}

/// VL-Bus: 40 MHz used, a 50 MHz processor bus is out of specification (Wikipedia (no), VESA Local Bus).
#[test]
fn a_50_mhz_local_bus_is_beyond() {
    let reach = |bus| {
        let rows = judge(
            &clocks(&Settings { vlb: true, pci: None, agp: None, isa: None, ..settings(bus, 1.0) }),
            &Specified::default(),
        );
        assert_eq!(rows.len(), 1, "the local bus alone");
        rows[0].reach
    };
    assert_eq!([reach(33.0), reach(40.0), reach(50.0)], [Reach::Within, Reach::Within, Reach::Far]);
}

/// The safest settings first; a locked processor takes only its own multiplier.
#[test]
fn the_table_of_settings_is_ordered_by_risk() {
    let board = Board {
        buses_mhz: vec![real_mhz(66.0), 75.0, real_mhz(83.0), 100.0],
        multipliers: vec![2.0, 3.0, 4.5],
        has_pci: true,
        pci: vec![Ratio { times: 1, by: 2 }, Ratio { times: 1, by: 3 }],
        specified_bus_mhz: Some(100.0),
        ..Board::default()
    };
    let locked = Processor {
        core_mhz: Some(300.0),
        bus_mhz: Some(real_mhz(66.0)),
        multipliers: vec![4.5],
        ..Processor::default()
    };
    let rows = table(&board, &locked, None);
    assert_eq!(rows.len(), 8, "4 clocks by 2 dividers");
    assert!(rows.iter().all(|row| row.settings.multiplier == 4.5));
    assert!((rows[0].clocks.core_mhz - 300.0).abs() < 0.01 && rows[0].reach == Reach::Within);
    assert!(rows.windows(2).all(|pair| pair[0].reach <= pair[1].reach));
    let fastest = rows.iter().find(|row| (row.clocks.core_mhz - 450.0).abs() < 0.01).unwrap();
    assert_eq!(fastest.reach, Reach::Far);
    // 50 % beyond on the core and, at half of 100 MHz, on PCI.
    assert!((fastest.worst_percent.unwrap() - 50.0).abs() < 0.01);
    let free = Processor { multipliers: Vec::new(), ..locked };
    assert_eq!(table(&board, &free, None).len(), 24);
}

#[test]
fn a_board_without_pci_and_agp_has_neither_clock() {
    let board = Board { buses_mhz: vec![25.0, f64::NAN, -1.0], multipliers: vec![1.0], ..Board::default() };
    let rows = table(&board, &Processor::default(), None);
    assert_eq!(rows.len(), 1);
    assert_eq!((rows[0].clocks.pci_mhz, rows[0].clocks.agp_mhz, rows[0].worst_percent), (None, None, None));
}

/// Slow memory under a faster bus: PC66 modules (15 ns) at 100 MHz (10 ns) are 50 % beyond (Wikipedia, SDRAM).
#[test]
fn memory_is_judged_by_its_slowest_module() {
    let specified = Specified { memory_mhz: Some(1000.0 / 15.0), ..Specified::default() };
    let rows = judge(&clocks(&settings(100.0, 4.0)), &specified);
    let memory = rows.iter().find(|row| row.clock == "memory").unwrap();
    assert!((memory.beyond_percent - 50.0).abs() < 1e-9);
}

#[test]
fn ratios_are_read() {
    let ratio = |times, by| Some(Ratio { times, by });
    for (text, expected) in [("2/3", ratio(2, 3)), (" 1 / 2 ", ratio(1, 2)), ("3", ratio(1, 3)), ("1", ratio(1, 1))] {
        assert_eq!(Ratio::parse(text), expected, "{text}");
    }
    for text in ["", "0", "1/0", "0/2", "17", "1/2/3", "a/b", "-1/2", "300"] {
        assert_eq!(Ratio::parse(text), None, "{text}");
    }
}

#[test]
fn fuzz_ratios() {
    let alphabet: Vec<char> = "0011223456789// +-".chars().collect();
    let mut chance = Chance(0x0042_A710);
    for _ in 0..rounds() {
        let text = chance.text(&alphabet, 7);
        if let Some(ratio) = Ratio::parse(&text) {
            assert_eq!(Ratio::parse(&ratio.to_string()), Some(ratio), "{text:?}");
            assert!((1..=16).contains(&ratio.times) && (1..=16).contains(&ratio.by), "{text:?}");
        }
    }
}

proptest! {
    #[test]
    fn any_text_gives_a_ratio_of_whole_numbers_or_none(text in "[0-9/ ]{0,8}|\\PC{0,12}") {
        if let Some(Ratio { times, by }) = Ratio::parse(&text) {
            prop_assert!((1..=16).contains(&times) && (1..=16).contains(&by));
        }
    }

    /// The divider that a board picks by itself never takes PCI beyond its clock, and never below half of it.
    #[test]
    fn the_usual_divider_keeps_pci_near_its_clock(bus in 20.0..190.0f64) {
        let pci = usual_pci(bus).map(|ratio| ratio.of(bus)).unwrap();
        prop_assert!((16.6..=PCI_MHZ * 1.0051).contains(&pci));
    }
}
