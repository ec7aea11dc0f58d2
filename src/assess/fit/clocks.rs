//! Clocks: as the board is noted to be set, beside the best of every setting that board and processor allow together:
//! the safest, and of those the fastest. Where nothing is noted, the best is judged.

use super::because::{Because, Constraint};
use super::build::Asked;
use super::connectors::Plugged;
use super::model::{Noted, Piece, ratio};
use crate::record::{Figure, Kind};
use crate::rules::connectors::Family;
use crate::trade::Source;
use crate::trade::clock::{self, Board, Clock, ClockVerdict, Processor, Reach, Row, real_mhz};
use crate::trade::setting::Setting;

/// A core slower than sold by less than this share is as sold: printed clocks are rounded.
const ROUNDING: f64 = 0.005;

/// What the clocks of a machine follow from.
struct Given<'a> {
    board: &'a Piece,
    processor: &'a Piece,
    /// What the processor is plugged into, where that is not the board.
    adapter: Option<&'a Piece>,
    /// The module with the lowest clock of those that have one.
    memory: Option<(&'a Piece, f64)>,
}

/// What is judged, and what else could be set.
#[derive(Default)]
pub(super) struct Judged {
    /// As it is noted, or the best where nothing is; `None` where figures are missing or notes unreadable.
    pub set: Option<Row>,
    /// The best, where anything is noted.
    pub best: Option<Row>,
    pub because: Vec<Because>,
}

impl<'a> Given<'a> {
    fn of(pieces: &'a [Piece]) -> Option<Self> {
        let first = |kind| pieces.iter().find(|piece| piece.kind() == kind);
        let modules = pieces.iter().filter(|piece| piece.kind() == Kind::MemoryModule);
        let clocked = modules.filter_map(|module| Some((module, real_mhz(module.figure(Figure::BusClockMhz)?))));
        Some(Self {
            board: first(Kind::Mainboard)?,
            processor: first(Kind::Processor)?,
            adapter: None,
            memory: clocked.min_by(|one, other| one.1.total_cmp(&other.1)),
        })
    }

    fn memory_mhz(&self) -> Option<f64> {
        self.memory.map(|(_, mhz)| mhz)
    }

    /// A setting as it is noted; the multiplier of an adapter counts before the board's.
    fn noted(&self, setting: Setting) -> Option<(&'a Piece, &'a Noted)> {
        let own = |piece: &'a Piece| Some((piece, piece.noted(setting)?));
        let adapter = self.adapter.filter(|_| setting == Setting::Multiplier);
        adapter.and_then(own).or_else(|| own(self.board))
    }

    /// Board and processor with nothing but what is noted to choose from, as far as anything is; `None` where nothing
    /// that counts is noted. What speaks against a note is told.
    fn as_noted(&self, because: &mut Vec<Because>) -> Option<(Board, Processor)> {
        const CLOCKS: [Setting; 4] = [Setting::BusClock, Setting::Multiplier, Setting::PciDivider, Setting::AgpDivider];
        let (board, processor) = (&self.board.model.board, &self.processor.model.processor);
        let counts = |setting: &Setting| match setting {
            Setting::PciDivider => board.has_pci,
            Setting::AgpDivider => board.has_agp,
            _ => true,
        };
        let mut shaped: Option<(Board, Processor)> = None;
        for setting in CLOCKS.into_iter().filter(counts) {
            let Some((of, noted)) = self.noted(setting) else { continue };
            let is_locked = setting == Setting::Multiplier && processor.multipliers.len() == 1;
            if is_locked && noted.value.is_none() {
                continue;
            }
            let (board, processor) = shaped.get_or_insert_with(|| (board.clone(), processor.clone()));
            let is_read = match (setting, noted.value) {
                (Setting::BusClock, Some(mhz)) => {
                    let mhz = real_mhz(mhz);
                    // As the board's design has it, printed to another place.
                    let own = board.buses_mhz.iter().copied().find(|own| (own / mhz - 1.0).abs() <= ROUNDING);
                    board.buses_mhz = vec![own.unwrap_or(mhz)];
                    true
                }
                // A locked processor ignores the board's jumper.
                (Setting::Multiplier, Some(multiplier)) if processor.multipliers.len() == 1 => {
                    if !processor.multipliers.contains(&multiplier) {
                        let (part, board) = (self.processor.part(), of.part());
                        because.push(Because::NotObeyed { part, board, multiplier, is_fixed: true });
                    }
                    true
                }
                (Setting::Multiplier, Some(multiplier)) => {
                    if !processor.multipliers.is_empty() && !processor.multipliers.contains(&multiplier) {
                        let (part, board) = (self.processor.part(), of.part());
                        because.push(Because::NotObeyed { part, board, multiplier, is_fixed: false });
                    }
                    board.multipliers = vec![multiplier];
                    processor.multipliers = Vec::new();
                    true
                }
                (Setting::PciDivider, Some(divider)) => ratio(divider).is_some_and(|ratio| {
                    (board.pci, board.pci_at) = (vec![ratio], Vec::new());
                    true
                }),
                (Setting::AgpDivider, Some(divider)) => ratio(divider).is_some_and(|ratio| {
                    (board.agp, board.agp_at) = (vec![ratio], Vec::new());
                    true
                }),
                _ => false,
            };
            if !is_read {
                because.push(Because::SettingUnreadable { part: of.part(), setting, said: noted.said.clone() });
            }
        }
        shaped
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

/// The setting that the machine is judged at, and what speaks for and against it; nothing for a processor that is
/// plugged in nowhere, which is told under connectors.
pub(super) fn judge(pieces: &[Piece], plugged: &Plugged, asked: &Asked) -> Judged {
    let Some((given, host)) = Given::of(pieces).zip(processor_host(pieces, plugged)) else { return Judged::default() };
    let adapter = Some(&pieces[host]).filter(|host| host.part() != given.board.part());
    let given = Given { adapter, ..given };
    let mut because = Vec::new();
    let noted = if asked.is_trial { None } else { given.as_noted(&mut because) };
    // What a note does not tell, or the processor does not obey, leaves open what it runs at.
    let is_open = because.iter().any(|one| !matches!(one, Because::NotObeyed { is_fixed: true, .. }));
    let best = noted
        .as_ref()
        .and_then(|_| clock::best(&given.board.model.board, &given.processor.model.processor, given.memory_mhz()));
    if is_open {
        because.extend(best.as_ref().map(|best| could_run(&given, best)));
        return Judged { set: None, best, because };
    }
    let (board, processor) = match &noted {
        Some((board, processor)) => (board, processor),
        None => (&given.board.model.board, &given.processor.model.processor),
    };
    let missing =
        |piece: &Piece, figure| Because::FigureMissing { constraint: Constraint::Clocks, part: piece.part(), figure };
    if board.buses_mhz.is_empty() {
        because.push(missing(given.board, Figure::BusClockMhz));
    }
    let has_multipliers = !(board.multipliers.is_empty() && processor.multipliers.is_empty());
    if !has_multipliers {
        because.push(missing(given.processor, Figure::Multiplier));
    }
    if processor.core_mhz.is_none() {
        because.push(missing(given.processor, Figure::CoreClockMhz));
    }
    if board.buses_mhz.is_empty() || !has_multipliers {
        return Judged { set: None, best, because };
    }
    let Some(set) = clock::best(board, processor, given.memory_mhz()) else {
        because.push(Because::NoSetting { part: given.processor.part(), board: given.board.part() });
        return Judged { set: None, best, because };
    };
    tell(&given, pieces, &set, noted.is_some(), &mut because);
    because.extend(best.as_ref().filter(|best| best.settings != set.settings).map(|best| could_run(&given, best)));
    Judged { set: Some(set), best, because }
}

/// What a setting does to every clock.
fn tell(given: &Given, pieces: &[Piece], set: &Row, is_noted: bool, because: &mut Vec<Because>) {
    let part = given.processor.part();
    let core_mhz = set.clocks.core_mhz;
    for clock in set.verdicts.iter().filter(|clock| clock.reach > Reach::Within) {
        let about = match clock.which {
            Clock::Core | Clock::Cache | Clock::Bus => given.processor,
            Clock::Memory => given.memory.map_or(given.board, |(module, _)| module),
            Clock::Vlb | Clock::Pci | Clock::Agp | Clock::Isa => given.board,
        };
        because.push(Because::ClockBeyond { part: about.part(), clock: clock.clone() });
    }
    because.extend(beside(pieces, set.clocks.bus_mhz));
    match given.processor.model.processor.core_mhz {
        Some(sold_mhz) if core_mhz < sold_mhz * (1.0 - ROUNDING) => {
            because.push(Because::RunsSlower { part, core_mhz, sold_mhz });
        }
        _ => {}
    }
    let (bus_mhz, multiplier) = (set.settings.bus_mhz, set.settings.multiplier);
    because.push(Because::Runs { part, bus_mhz, multiplier, core_mhz, is_noted });
}

fn could_run(given: &Given, best: &Row) -> Because {
    let (bus_mhz, multiplier, core_mhz) = (best.settings.bus_mhz, best.settings.multiplier, best.clocks.core_mhz);
    Because::CouldRun { part: given.processor.part(), bus_mhz, multiplier, core_mhz }
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
