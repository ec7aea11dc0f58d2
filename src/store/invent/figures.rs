//! Figures of invented designs: of one age they fit each other, some faster, larger or hungrier than others.

use super::chance::Chance;
use crate::record::{Figure, Kind};

/// What the parts of an age are made for, the ages in their order.
struct AgeFigures {
    /// Of a board: bus clocks and multipliers that can be set, core voltages.
    buses_mhz: &'static [f64],
    multipliers: &'static [f64],
    volts: &'static [f64],
    /// Of a processor: what it runs at, and the multipliers that there are.
    bus_mhz: f64,
    fixed: &'static [f64],
    core_v: f64,
    /// Sizes of a module, and what a board takes in all.
    modules_mb: &'static [f64],
    most_mb: f64,
    /// Largest disk by firmware in MB of 1,048,576 bytes, and sizes of disks in MB of 1,000,000.
    disk_most_mb: f64,
    disks_mb: &'static [f64],
    /// Width of the data bus, where the processor's socket does not tell it.
    bus_bits: Option<f64>,
}

const AGES: [AgeFigures; 4] = [
    AgeFigures {
        buses_mhz: &[25.0, 33.0],
        multipliers: &[],
        volts: &[5.0],
        bus_mhz: 33.0,
        fixed: &[1.0],
        core_v: 5.0,
        modules_mb: &[0.25, 1.0, 4.0],
        most_mb: 32.0,
        disk_most_mb: 504.0,
        disks_mb: &[42.0, 85.0, 120.0],
        bus_bits: Some(16.0),
    },
    AgeFigures {
        buses_mhz: &[25.0, 33.0, 40.0],
        multipliers: &[],
        volts: &[3.45, 5.0],
        bus_mhz: 33.0,
        fixed: &[1.0, 2.0],
        core_v: 5.0,
        modules_mb: &[4.0, 8.0, 16.0],
        most_mb: 64.0,
        disk_most_mb: 504.0,
        disks_mb: &[210.0, 340.0, 540.0],
        bus_bits: None,
    },
    AgeFigures {
        buses_mhz: &[50.0, 60.0, 66.0],
        multipliers: &[1.5, 2.0, 2.5, 3.0],
        volts: &[2.8, 3.3],
        bus_mhz: 66.0,
        fixed: &[1.5, 2.0, 2.5, 3.0],
        core_v: 3.3,
        modules_mb: &[8.0, 16.0, 32.0],
        most_mb: 128.0,
        disk_most_mb: 8064.0,
        disks_mb: &[1280.0, 2560.0, 10_200.0],
        bus_bits: None,
    },
    AgeFigures {
        buses_mhz: &[66.0, 100.0, 133.0],
        multipliers: &[],
        volts: &[1.5, 1.65, 1.75],
        bus_mhz: 133.0,
        fixed: &[5.0, 5.5, 6.5, 7.5],
        core_v: 1.65,
        modules_mb: &[64.0, 128.0, 256.0],
        most_mb: 768.0,
        disk_most_mb: 32_256.0,
        disks_mb: &[6400.0, 13_000.0, 20_400.0],
        bus_bits: None,
    },
];

/// What a design of a kind and age says of itself.
pub fn figures(kind: Kind, age: usize, chance: &mut Chance) -> Vec<(Figure, f64)> {
    let of = &AGES[age];
    let several = |figure: Figure, values: &[f64]| values.iter().map(move |value| (figure, *value)).collect::<Vec<_>>();
    let mut told = match kind {
        Kind::Mainboard => {
            let own = [
                (Figure::MemoryMostMb, of.most_mb),
                (Figure::DiskMostMb, of.disk_most_mb),
                (Figure::AccessAskedNs, 70.0),
            ];
            let mut told = several(Figure::BusClockMhz, of.buses_mhz);
            told.extend(several(Figure::Multiplier, of.multipliers));
            told.extend(several(Figure::CoreVoltageV, of.volts));
            told.extend(own);
            told.extend(of.bus_bits.map(|bits| (Figure::BusWidthBits, bits)));
            told
        }
        Kind::Processor => {
            let (bus, core) = ((Figure::BusClockMhz, of.bus_mhz), (Figure::CoreVoltageV, of.core_v));
            // Each brings its own cooler: machines have no role for one.
            vec![bus, core, (Figure::Multiplier, *chance.of(of.fixed)), (Figure::CoolerNeeded, 0.0)]
        }
        Kind::MemoryModule => {
            let ns = *chance.of(&[60.0, 70.0]);
            vec![(Figure::MemoryMb, *chance.of(of.modules_mb)), (Figure::AccessNs, ns)]
        }
        Kind::HardDisk => vec![(Figure::CapacityMb, *chance.of(of.disks_mb))],
        Kind::PowerSupply => {
            let watts = f64::from(chance.between(24, 35) * 10);
            let rails = [(Figure::Rating5vA, 30.0), (Figure::Rating12vA, 20.0), (Figure::Rating3v3A, 14.0)];
            [(Figure::PowerW, watts)].into_iter().chain(rails).collect()
        }
        Kind::Case => vec![(Figure::CardRoomMm, f64::from(chance.between(28, 34) * 10))],
        kind if kind.is_card() => vec![(Figure::LengthMm, f64::from(chance.between(12, 26) * 10))],
        _ => Vec::new(),
    };
    if kind != Kind::PowerSupply && kind != Kind::Case {
        let tenths = |chance: &mut Chance| f64::from(chance.between(1, 10)) / 10.0;
        told.extend([(Figure::Current5vA, tenths(chance)), (Figure::Current12vA, tenths(chance))]);
    }
    told
}
