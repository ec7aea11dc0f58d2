//! Every setting that a board and a processor allow together, marked by risk.

use serde::{Deserialize, Serialize};

use super::judged::{ClockVerdict, Reach, Specified, judge};
use super::{Clocks, Ratio, Settings, clocks, usual_agp, usual_pci};

/// What a board can be set to. Clocks are real ones, see [`super::real_mhz`].
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Board {
    /// Bus clocks in MHz.
    pub buses_mhz: Vec<f64>,
    /// Multipliers.
    pub multipliers: Vec<f64>,
    /// PCI ratios to choose from; empty when the board picks by itself.
    pub pci: Vec<Ratio>,
    /// AGP ratios to choose from; empty when the board picks by itself or has none.
    pub agp: Vec<Ratio>,
    /// Whether there is a VL-Bus.
    pub has_vlb: bool,
    /// Whether there is PCI at all.
    pub has_pci: bool,
    /// Whether there is AGP at all.
    pub has_agp: bool,
    /// ISA by PCI, or by the bus where there is no PCI; `None` where not known.
    pub isa: Option<Ratio>,
    /// Highest bus clock the board is specified for, in MHz.
    pub specified_bus_mhz: Option<f64>,
}

/// What the processor allows.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Processor {
    /// Core clock printed on it, in MHz.
    pub core_mhz: Option<f64>,
    /// Bus clock it is made for, in MHz.
    pub bus_mhz: Option<f64>,
    /// Multipliers it obeys; one entry when fixed, whatever the board is set to; empty when the board decides.
    pub multipliers: Vec<f64>,
    /// Cache by core where it sits on the processor.
    pub cache: Option<Ratio>,
    /// Highest clock of that cache, in MHz.
    pub cache_mhz: Option<f64>,
}

/// One possible setting.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Row {
    /// The settings.
    pub settings: Settings,
    /// What follows.
    pub clocks: Clocks,
    /// Each clock judged.
    pub verdicts: Vec<ClockVerdict>,
    /// The worst of them.
    pub reach: Reach,
    /// How far the worst clock is beyond, in per cent; negative when all are below, `None` when none is specified.
    pub worst_percent: Option<f64>,
}

/// All settings, the safest first, and among equals the fastest core first.
///
/// A processor with a fixed multiplier takes the board's bus clocks only; otherwise the multipliers are those that
/// both know, or the one side's where the other lists none. Empty when one of them has no clock or multiplier at
/// all. `memory_mhz` is the slowest module's clock.
pub fn table(board: &Board, processor: &Processor, memory_mhz: Option<f64>) -> Vec<Row> {
    let multipliers = shared_multipliers(&board.multipliers, &processor.multipliers);
    let lower = |one: Option<f64>, other: Option<f64>| match (one, other) {
        (Some(one), Some(other)) => Some(one.min(other)),
        (one, other) => one.or(other),
    };
    let specified = Specified {
        core_mhz: processor.core_mhz,
        bus_mhz: lower(board.specified_bus_mhz, processor.bus_mhz),
        cache_mhz: processor.cache_mhz,
        memory_mhz,
    };
    let mut rows = Vec::new();
    for bus_mhz in board.buses_mhz.iter().copied().filter(|mhz| mhz.is_finite() && *mhz > 0.0) {
        let pcis = choices(board.has_pci, &board.pci, usual_pci(bus_mhz));
        let agps = choices(board.has_agp, &board.agp, usual_agp(bus_mhz).or(Some(Ratio { times: 1, by: 2 })));
        for &multiplier in &multipliers {
            for &pci in &pcis {
                for &agp in &agps {
                    let settings = Settings {
                        bus_mhz,
                        multiplier,
                        vlb: board.has_vlb,
                        pci,
                        agp,
                        isa: board.isa,
                        cache: processor.cache,
                    };
                    rows.push(row(settings, &specified));
                }
            }
        }
    }
    let faster = |one: &Row, other: &Row| other.clocks.core_mhz.total_cmp(&one.clocks.core_mhz);
    rows.sort_by(|one, other| {
        let within = |row: &Row| row.worst_percent.unwrap_or(0.0).max(0.0);
        one.reach.cmp(&other.reach).then(faster(one, other)).then(within(one).total_cmp(&within(other)))
    });
    rows
}

fn row(settings: Settings, specified: &Specified) -> Row {
    let clocks = clocks(&settings);
    let verdicts = judge(&clocks, specified);
    let reach = verdicts.iter().map(|verdict| verdict.reach).max().unwrap_or(Reach::Within);
    let worst_percent = verdicts.iter().map(|verdict| verdict.beyond_percent).reduce(f64::max);
    Row { settings, clocks, verdicts, reach, worst_percent }
}

fn choices(present: bool, offered: &[Ratio], usual: Option<Ratio>) -> Vec<Option<Ratio>> {
    if !present {
        vec![None]
    } else if offered.is_empty() {
        vec![usual]
    } else {
        offered.iter().copied().map(Some).collect()
    }
}

fn shared_multipliers(board: &[f64], processor: &[f64]) -> Vec<f64> {
    match (board, processor) {
        (board, []) => board.to_vec(),
        ([], processor) => processor.to_vec(),
        // A locked processor ignores the board's jumper.
        (_, [only]) => vec![*only],
        (board, processor) => board.iter().copied().filter(|one| processor.contains(one)).collect(),
    }
}
