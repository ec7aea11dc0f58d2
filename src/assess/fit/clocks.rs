//! Clocks: every setting that board and processor allow together; the safest is chosen, and of those the fastest.

use super::because::{Because, Constraint};
use super::connectors::Plugged;
use super::model::Piece;
use crate::record::{Figure, Kind};
use crate::rules::connectors::Family;
use crate::trade::Source;
use crate::trade::clock::{self, Clock, ClockVerdict, Reach, Row, real_mhz};

/// A core slower than sold by less than this share is as sold: printed clocks are rounded.
const ROUNDING: f64 = 0.005;

/// What the clocks of a machine follow from.
struct Given<'a> {
    board: &'a Piece,
    processor: &'a Piece,
    /// The module with the lowest clock of those that have one.
    memory: Option<(&'a Piece, f64)>,
}

impl<'a> Given<'a> {
    fn of(pieces: &'a [Piece]) -> Option<Self> {
        let first = |kind| pieces.iter().find(|piece| piece.kind() == kind);
        let modules = pieces.iter().filter(|piece| piece.kind() == Kind::MemoryModule);
        let clocked = modules.filter_map(|module| Some((module, real_mhz(module.figure(Figure::BusClockMhz)?))));
        Some(Self {
            board: first(Kind::Mainboard)?,
            processor: first(Kind::Processor)?,
            memory: clocked.min_by(|one, other| one.1.total_cmp(&other.1)),
        })
    }

    fn memory_mhz(&self) -> Option<f64> {
        self.memory.map(|(_, mhz)| mhz)
    }
}

/// Where the processor is plugged in.
pub(super) fn processor_host(pieces: &[Piece], plugged: &Plugged) -> Option<usize> {
    let at = pieces.iter().position(|piece| piece.kind() == Kind::Processor)?;
    plugged.link(pieces, at, Family::Processor).map(|link| link.host)
}

/// All settings of a machine's board with its processor and memory, the safest first; empty where figures are missing.
pub fn settings(pieces: &[Piece]) -> Vec<Row> {
    Given::of(pieces).map_or_else(Vec::new, |given| {
        clock::table(&given.board.model.board, &given.processor.model.processor, given.memory_mhz())
    })
}

/// The setting that is chosen, and what speaks for and against it; nothing for a processor that is plugged in nowhere,
/// which is told under connectors.
pub(super) fn judge(pieces: &[Piece], plugged: &Plugged) -> (Option<Row>, Vec<Because>) {
    let Some(given) = Given::of(pieces).filter(|_| processor_host(pieces, plugged).is_some()) else {
        return (None, Vec::new());
    };
    let (board, processor) = (&given.board.model.board, &given.processor.model.processor);
    let missing =
        |piece: &Piece, figure| Because::FigureMissing { constraint: Constraint::Clocks, part: piece.part(), figure };
    let mut because = Vec::new();
    if board.buses_mhz.is_empty() {
        because.push(missing(given.board, Figure::BusClockMhz));
    }
    if board.multipliers.is_empty() && processor.multipliers.is_empty() {
        because.push(missing(given.processor, Figure::Multiplier));
    }
    if processor.core_mhz.is_none() {
        because.push(missing(given.processor, Figure::CoreClockMhz));
    }
    if board.buses_mhz.is_empty() || board.multipliers.is_empty() && processor.multipliers.is_empty() {
        return (None, because);
    }
    let part = given.processor.part();
    let Some(best) = clock::best(board, processor, given.memory_mhz()) else {
        because.push(Because::NoSetting { part, board: given.board.part() });
        return (None, because);
    };
    let core_mhz = best.clocks.core_mhz;
    for clock in best.verdicts.iter().filter(|clock| clock.reach > Reach::Within) {
        let about = match clock.which {
            Clock::Core | Clock::Cache | Clock::Bus => given.processor,
            Clock::Memory => given.memory.map_or(given.board, |(module, _)| module),
            Clock::Vlb | Clock::Pci | Clock::Agp | Clock::Isa => given.board,
        };
        because.push(Because::ClockBeyond { part: about.part(), clock: clock.clone() });
    }
    because.extend(beside(pieces, best.clocks.bus_mhz));
    match processor.core_mhz {
        Some(sold_mhz) if core_mhz < sold_mhz * (1.0 - ROUNDING) => {
            because.push(Because::RunsSlower { part, core_mhz, sold_mhz });
        }
        _ => {}
    }
    let (bus_mhz, multiplier) = (best.settings.bus_mhz, best.settings.multiplier);
    because.push(Because::Runs { part, bus_mhz, multiplier, core_mhz });
    (Some(best), because)
}

/// Coprocessors that the bus is too fast for: they run with it.
fn beside(pieces: &[Piece], bus_mhz: f64) -> impl Iterator<Item = Because> {
    let coprocessors = pieces.iter().filter(|piece| piece.kind() == Kind::Coprocessor);
    coprocessors.filter_map(move |piece| {
        let specified_mhz = real_mhz(piece.figure(Figure::BusClockMhz).filter(|mhz| *mhz > 0.0)?);
        let beyond_percent = 100.0 * (bus_mhz / specified_mhz - 1.0);
        let reach = Reach::of_percent(beyond_percent);
        let source = Source::practice("as printed on the part or in its manual");
        let (which, mhz) = (Clock::Core, bus_mhz);
        let clock = ClockVerdict { which, clock: which.said(), mhz, specified_mhz, beyond_percent, reach, source };
        (reach > Reach::Within).then_some(Because::ClockBeyond { part: piece.part(), clock })
    })
}
