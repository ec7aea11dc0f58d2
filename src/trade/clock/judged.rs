//! Clocks held against what is specified: within, or beyond by how much.

use serde::{Deserialize, Serialize};

use super::{AGP_MHZ, Clocks, ISA_MHZ, PCI_MHZ, VLB_MHZ};
use crate::text;
use crate::trade::Source;

/// Printed clocks are rounded: 166 stands for 166⅔ (0.4 % more). Half a per cent counts as the same clock.
pub(super) const ROUNDING: f64 = 0.005;

/// What parts are specified for, in MHz; `None` where not known, which judges nothing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Specified {
    /// Core clock printed on the processor.
    pub core_mhz: Option<f64>,
    /// Highest bus clock that board and processor are both made for.
    pub bus_mhz: Option<f64>,
    /// Highest clock of the cache chips on the processor.
    pub cache_mhz: Option<f64>,
    /// Highest memory clock of the slowest module; memory is taken to run with the bus.
    pub memory_mhz: Option<f64>,
}

/// How far a clock reaches.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Reach {
    /// Within what is specified.
    Within,
    /// Beyond by up to 5 %: usually works, unproven.
    Slightly,
    /// Beyond by up to 15 %: many parts fail, disks on a fast PCI bus lose data.
    Beyond,
    /// Beyond by more.
    Far,
}

impl Reach {
    /// By how much a clock is beyond, in per cent. The steps at 5 and 15 % are common practice, no source: 37.5 MHz
    /// of PCI (75 MHz bus, 12.5 % over) mostly worked, 41.7 MHz (83 MHz bus, 25 %) corrupted disks.
    pub fn of_percent(beyond_percent: f64) -> Self {
        if beyond_percent <= 100.0 * ROUNDING {
            Self::Within
        } else if beyond_percent <= 5.0 {
            Self::Slightly
        } else if beyond_percent <= 15.0 {
            Self::Beyond
        } else {
            Self::Far
        }
    }

    /// In words.
    pub fn said(self) -> &'static str {
        match self {
            Self::Within => text!("within specification"),
            Self::Slightly => text!("slightly beyond"),
            Self::Beyond => text!("beyond"),
            Self::Far => text!("far beyond"),
        }
    }
}

/// The clocks that are judged.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Clock {
    Core,
    Bus,
    Cache,
    Memory,
    Vlb,
    Pci,
    Agp,
    Isa,
}

impl Clock {
    /// In words.
    pub fn said(self) -> &'static str {
        match self {
            Self::Core => text!("core"),
            Self::Bus => text!("bus"),
            Self::Cache => text!("cache"),
            Self::Memory => text!("memory"),
            Self::Vlb => text!("VL-Bus"),
            Self::Pci => text!("PCI"),
            Self::Agp => text!("AGP"),
            Self::Isa => text!("ISA"),
        }
    }
}

/// One clock judged.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ClockVerdict {
    /// Which clock.
    #[serde(skip)]
    pub which: Clock,
    /// Which clock, in words.
    pub clock: &'static str,
    /// What it runs at, in MHz.
    pub mhz: f64,
    /// What is specified, in MHz.
    pub specified_mhz: f64,
    /// Beyond that by this many per cent; negative when below.
    pub beyond_percent: f64,
    /// The same as a step.
    pub reach: Reach,
    /// Where the specified clock comes from.
    pub source: Source,
}

/// Judges every clock that has a specification: the part's own, and the buses' standards.
pub fn judge(clocks: &Clocks, specified: &Specified) -> Vec<ClockVerdict> {
    each(clocks, specified).collect()
}

/// How far the clock that is farthest beyond its specification reaches, with the per cent; negative when all are
/// below, `None` when none is specified.
pub(super) fn worst(clocks: &Clocks, specified: &Specified) -> (Reach, Option<f64>) {
    let percent = each(clocks, specified).map(|verdict| verdict.beyond_percent).reduce(f64::max);
    (percent.map_or(Reach::Within, Reach::of_percent), percent)
}

fn each(clocks: &Clocks, specified: &Specified) -> impl Iterator<Item = ClockVerdict> {
    const PRINTED: Source = Source::practice("as printed on the part or in its manual");
    const VLB: Source = Source::published("Wikipedia (no), VESA Local Bus: 33 MHz, 40 used, 50 out of specification");
    const PCI: Source = Source::published("PCI local bus specification 2.1: 33.33 MHz");
    const AGP: Source = Source::published("AGP interface specification: 66.67 MHz");
    const ISA: Source = Source::published("PC Guide, ISA bus: 8.33 MHz standard");
    let rows = [
        (Clock::Core, Some(clocks.core_mhz), specified.core_mhz, PRINTED),
        (Clock::Bus, Some(clocks.bus_mhz), specified.bus_mhz, PRINTED),
        (Clock::Cache, clocks.cache_mhz, specified.cache_mhz, PRINTED),
        (Clock::Memory, Some(clocks.bus_mhz), specified.memory_mhz, PRINTED),
        (Clock::Vlb, clocks.vlb_mhz, Some(VLB_MHZ), VLB),
        (Clock::Pci, clocks.pci_mhz, Some(PCI_MHZ), PCI),
        (Clock::Agp, clocks.agp_mhz, Some(AGP_MHZ), AGP),
        (Clock::Isa, clocks.isa_mhz, Some(ISA_MHZ), ISA),
    ];
    rows.into_iter().filter_map(|(which, mhz, specified_mhz, source)| {
        let (mhz, specified_mhz) = (mhz?, specified_mhz?);
        let beyond_percent = 100.0 * (mhz / specified_mhz - 1.0);
        let reach = Reach::of_percent(beyond_percent);
        Some(ClockVerdict { which, clock: which.said(), mhz, specified_mhz, beyond_percent, reach, source })
    })
}
