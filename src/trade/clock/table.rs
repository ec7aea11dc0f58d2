//! Every setting that a board and a processor allow together, marked by risk.

use std::cmp::Ordering;

use serde::{Deserialize, Serialize};

use super::judged::{ClockVerdict, ROUNDING, Reach, Specified, judge, worst};
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
    /// PCI ratios that belong to one bus clock each, in MHz.
    #[serde(default)]
    pub pci_at: Vec<(f64, Ratio)>,
    /// AGP ratios that belong to one bus clock each.
    #[serde(default)]
    pub agp_at: Vec<(f64, Ratio)>,
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
    let specified = specified(board, processor, memory_mhz);
    let mut rows = Vec::new();
    each_setting(board, processor, |settings| rows.push(row(settings, &specified)));
    rows.sort_by(|one, other| order(&Rank::of(one), &Rank::of(other)));
    rows
}

/// The first row of [`table`] alone, without making the others.
pub fn best(board: &Board, processor: &Processor, memory_mhz: Option<f64>) -> Option<Row> {
    let specified = specified(board, processor, memory_mhz);
    let mut best: Option<(Rank, Settings)> = None;
    each_setting(board, processor, |settings| {
        let clocks = clocks(&settings);
        let (reach, worst_percent) = worst(&clocks, &specified);
        let rank = Rank { reach, core_mhz: clocks.core_mhz, worst_percent };
        if best.as_ref().is_none_or(|(known, _)| order(&rank, known).is_lt()) {
            best = Some((rank, settings));
        }
    });
    best.map(|(_, settings)| row(settings, &specified))
}

/// What settings are put in order by.
struct Rank {
    reach: Reach,
    core_mhz: f64,
    worst_percent: Option<f64>,
}

impl Rank {
    fn of(row: &Row) -> Self {
        Self { reach: row.reach, core_mhz: row.clocks.core_mhz, worst_percent: row.worst_percent }
    }
}

fn order(one: &Rank, other: &Rank) -> Ordering {
    let within = |rank: &Rank| rank.worst_percent.unwrap_or(0.0).max(0.0);
    let faster = other.core_mhz.total_cmp(&one.core_mhz);
    one.reach.cmp(&other.reach).then(faster).then(within(one).total_cmp(&within(other)))
}

fn specified(board: &Board, processor: &Processor, memory_mhz: Option<f64>) -> Specified {
    let lower = |one: Option<f64>, other: Option<f64>| match (one, other) {
        (Some(one), Some(other)) => Some(one.min(other)),
        (one, other) => one.or(other),
    };
    Specified {
        core_mhz: processor.core_mhz,
        bus_mhz: lower(board.specified_bus_mhz, processor.bus_mhz),
        cache_mhz: processor.cache_mhz,
        memory_mhz,
    }
}

fn each_setting(board: &Board, processor: &Processor, mut take: impl FnMut(Settings)) {
    let multipliers = shared_multipliers(&board.multipliers, &processor.multipliers);
    for bus_mhz in board.buses_mhz.iter().copied().filter(|mhz| mhz.is_finite() && *mhz > 0.0) {
        let pcis = choices(board.has_pci, &board.pci, at(&board.pci_at, bus_mhz), usual_pci(bus_mhz));
        let usual_agp = usual_agp(bus_mhz).or(Some(Ratio { times: 1, by: 2 }));
        let agps = choices(board.has_agp, &board.agp, at(&board.agp_at, bus_mhz), usual_agp);
        for &multiplier in &multipliers {
            for &pci in &pcis {
                for &agp in &agps {
                    take(Settings {
                        bus_mhz,
                        multiplier,
                        vlb: board.has_vlb,
                        pci,
                        agp,
                        isa: board.isa,
                        cache: processor.cache,
                    });
                }
            }
        }
    }
}

fn row(settings: Settings, specified: &Specified) -> Row {
    let clocks = clocks(&settings);
    let (reach, worst_percent) = worst(&clocks, specified);
    Row { settings, clocks, verdicts: judge(&clocks, specified), reach, worst_percent }
}

/// The ratios of one bus clock; printed clocks are rounded.
fn at(ratios: &[(f64, Ratio)], bus_mhz: f64) -> impl Iterator<Item = Ratio> {
    let is_its = move |at_mhz: f64| (at_mhz / bus_mhz - 1.0).abs() <= ROUNDING;
    ratios.iter().filter(move |(at_mhz, _)| is_its(*at_mhz)).map(|(_, ratio)| *ratio)
}

/// What is offered for every bus clock and for this one; where nothing is, the board picks by itself.
fn choices(
    present: bool,
    offered: &[Ratio],
    own: impl Iterator<Item = Ratio>,
    usual: Option<Ratio>,
) -> Vec<Option<Ratio>> {
    if !present {
        return vec![None];
    }
    let mut choices: Vec<Option<Ratio>> = offered.iter().copied().map(Some).collect();
    for ratio in own.map(Some) {
        if !choices.contains(&ratio) {
            choices.push(ratio);
        }
    }
    if choices.is_empty() {
        choices.push(usual);
    }
    choices
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
