//! Clocks of a board: core, bus, cache, memory buses and expansion buses from its settings, and their risk.

mod judged;
mod ratio;
mod table;

pub use judged::{Clock, ClockVerdict, Reach, Specified, judge};
pub use ratio::Ratio;
pub use table::{Board, Processor, Row, best, table};

use serde::{Deserialize, Serialize};

/// PCI's specified clock in MHz: 33⅓ (a period of 30 ns).
pub const PCI_MHZ: f64 = 100.0 / 3.0;
/// AGP's specified clock in MHz: 66⅔.
pub const AGP_MHZ: f64 = 200.0 / 3.0;
/// ISA's highest standard clock in MHz: a quarter of PCI's, 8⅓.
pub const ISA_MHZ: f64 = 25.0 / 3.0;
/// VL-Bus's highest clock in MHz, with few cards: 33 is common, 40 used, 50 out of specification.
pub const VLB_MHZ: f64 = 40.0;

/// What a board is set to. Ratios are clock wanted by clock at hand: PCI at half the bus is 1/2.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Settings {
    /// Bus clock in MHz as it really runs; of double- and quad-pumped buses the clock, not the transfers.
    pub bus_mhz: f64,
    /// Core clock by bus clock.
    pub multiplier: f64,
    /// Whether there is a VL-Bus, which runs with the bus.
    pub vlb: bool,
    /// PCI by bus; `None` on a board without.
    pub pci: Option<Ratio>,
    /// AGP by bus; `None` on a board without.
    pub agp: Option<Ratio>,
    /// ISA by PCI where there is PCI, else by bus; `None` where not known.
    pub isa: Option<Ratio>,
    /// Second-level cache by core where it sits on the processor; `None` when it runs with the bus or is absent.
    pub cache: Option<Ratio>,
}

/// The clocks that follow, in MHz.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Clocks {
    /// Bus.
    pub bus_mhz: f64,
    /// Core.
    pub core_mhz: f64,
    /// Second-level cache on the processor.
    pub cache_mhz: Option<f64>,
    /// VL-Bus.
    pub vlb_mhz: Option<f64>,
    /// PCI.
    pub pci_mhz: Option<f64>,
    /// AGP.
    pub agp_mhz: Option<f64>,
    /// ISA.
    pub isa_mhz: Option<f64>,
}

/// The clocks that follow from the settings.
pub fn clocks(settings: &Settings) -> Clocks {
    let Settings { bus_mhz, multiplier, vlb, pci, agp, isa, cache } = *settings;
    let core_mhz = bus_mhz * multiplier;
    let pci_mhz = pci.map(|ratio| ratio.of(bus_mhz));
    Clocks {
        bus_mhz,
        core_mhz,
        cache_mhz: cache.map(|ratio| ratio.of(core_mhz)),
        vlb_mhz: vlb.then_some(bus_mhz),
        pci_mhz,
        agp_mhz: agp.map(|ratio| ratio.of(bus_mhz)),
        isa_mhz: isa.map(|ratio| ratio.of(pci_mhz.unwrap_or(bus_mhz))),
    }
}

/// The real clock behind one that is printed in whole MHz: 33, 66, 83, 133, 166, 266 and 333 stand for thirds
/// (66⅔ × 4.5 = 300, where 66 × 4.5 would be 297). Anything else is taken as it is.
pub fn real_mhz(printed: f64) -> f64 {
    const THIRDS: [(f64, f64); 9] = [
        (33.0, 100.0),
        (66.0, 200.0),
        (67.0, 200.0),
        (83.0, 250.0),
        (133.0, 400.0),
        (166.0, 500.0),
        (167.0, 500.0),
        (266.0, 800.0),
        (333.0, 1000.0),
    ];
    THIRDS.iter().find(|(whole, _)| *whole == printed).map_or(printed, |(_, thirds)| thirds / 3.0)
}

/// The PCI setting that boards choose by themselves for a bus clock: the smallest of 1/1 to 1/6 that does not take PCI
/// beyond its clock. Up to 33⅓ MHz that is 1/1, at 66⅔ 1/2, at 100 1/3, at 133⅓ 1/4.
///
/// Source: dividers per bus clock as tabled by henriknielsen.dk and sharkyextreme.
pub fn usual_pci(bus_mhz: f64) -> Option<Ratio> {
    (1..=6).map(|by| Ratio { times: 1, by }).find(|ratio| ratio.of(bus_mhz) <= PCI_MHZ * (1.0 + judged::ROUNDING))
}

/// The same for AGP, from 1/1, 2/3 and 1/2: 66⅔ MHz at bus clocks of 66⅔, 100 and 133⅓.
pub fn usual_agp(bus_mhz: f64) -> Option<Ratio> {
    [(1, 1), (2, 3), (1, 2)]
        .map(|(times, by)| Ratio { times, by })
        .into_iter()
        .find(|ratio| ratio.of(bus_mhz) <= AGP_MHZ * (1.0 + judged::ROUNDING))
}
