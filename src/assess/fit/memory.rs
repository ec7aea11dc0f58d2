//! Memory: whole banks of modules that fit, modules that a socket takes, what the board takes and caches, access times.

use super::because::{Because, Constraint};
use super::connectors::Plugged;
use super::model::{Piece, Port};
use crate::record::{Figure, Kind};
use crate::rules::connectors::Family;

/// Widths of modules that are put together to the width of the data bus. Serial modules are not, single chips have
/// parity chips beside them.
const BANKED_BITS: [u16; 3] = [8, 32, 64];

pub(super) fn judge(pieces: &[Piece], plugged: &Plugged) -> Vec<Because> {
    let modules: Vec<&Piece> = pieces.iter().filter(|piece| piece.kind() == Kind::MemoryModule).collect();
    let board = pieces.iter().find(|piece| piece.kind() == Kind::Mainboard);
    let (Some(board), false) = (board, modules.is_empty()) else { return Vec::new() };
    let mut because = Vec::new();
    banks(&alike(pieces, plugged, board), board, &mut because);
    sizes(&modules, board, usable_mb(pieces, plugged), &mut because);
    let asked = board.figure(Figure::AccessAskedNs);
    for module in &modules {
        if let Some((ns, asked_ns)) = module.figure(Figure::AccessNs).zip(asked).filter(|(ns, asked)| ns > asked) {
            because.push(Because::ModuleSlow { part: module.part(), ns, asked_ns });
        }
    }
    because
}

fn missing(part: &Piece, figure: Figure) -> Because {
    Because::FigureMissing { constraint: Constraint::Memory, part: part.part(), figure }
}

fn socket(module: &Piece) -> Option<&Port> {
    module.model.needs.iter().find(|port| port.family == Some(Family::Memory))
}

/// The width of the data bus: the board's figure, or else that of its processor's socket.
fn bus_bits(board: &Piece, pieces: &[Piece]) -> Option<u32> {
    let told = board.figure(Figure::BusWidthBits).map(|bits| bits as u32).filter(|bits| *bits > 0);
    told.or_else(|| {
        let processor = pieces.iter().find(|piece| piece.kind() == Kind::Processor)?;
        let needs = processor.model.needs.iter().find(|port| port.family == Some(Family::Processor));
        needs?.width_bits.map(u32::from)
    })
}

/// Modules of one connector that can be counted: plugged in, of a told size that a socket takes.
struct Alike<'p> {
    port: &'p Port,
    modules: Vec<&'p Piece>,
    /// How many make a bank; `None` where nothing tells the width of the bus.
    per_bank: Option<u32>,
}

/// Modules by what they plug into; those that fit in nowhere are told under connectors, and count for nothing.
fn alike<'p>(pieces: &'p [Piece], plugged: &Plugged, board: &Piece) -> Vec<Alike<'p>> {
    let mut all: Vec<Alike<'p>> = Vec::new();
    let bus = bus_bits(board, pieces);
    for (at, module) in pieces.iter().enumerate().filter(|(_, piece)| piece.kind() == Kind::MemoryModule) {
        let Some(port) = socket(module) else { continue };
        if plugged.link(pieces, at, Family::Memory).is_none() {
            continue;
        }
        if let Some(known) = all.iter_mut().find(|known| known.port.number == port.number) {
            known.modules.push(module);
        } else {
            let width = port.width_bits.filter(|width| BANKED_BITS.contains(width)).map(u32::from);
            let per_bank = width.map_or(Some(1), |width| Some((bus? / width).max(1)));
            all.push(Alike { port, modules: vec![module], per_bank });
        }
    }
    all
}

impl Alike<'_> {
    /// What whole banks of them make, each bank counting as its smallest module. Put together by size, they make the
    /// most.
    fn mb(&self, in_socket_mb: Option<f64>) -> f64 {
        let per_bank = self.per_bank.unwrap_or(1) as usize;
        let fitting = self.modules.iter().filter_map(|module| module.figure(Figure::MemoryMb));
        let mut sizes: Vec<f64> = fitting.filter(|mb| in_socket_mb.is_none_or(|most| *mb <= most)).collect();
        sizes.sort_unstable_by(|one, other| other.total_cmp(one));
        sizes.chunks_exact(per_bank).map(|bank| bank[per_bank - 1] * per_bank as f64).sum()
    }
}

/// What counts of a machine's memory, in MB: whole banks of modules that fit. Modules of which nobody told what they
/// plug into count as they are.
pub(super) fn usable_mb(pieces: &[Piece], plugged: &Plugged) -> f64 {
    let modules = pieces.iter().filter(|piece| piece.kind() == Kind::MemoryModule);
    let untold = modules.filter(|module| socket(module).is_none());
    let untold: f64 = untold.filter_map(|module| module.figure(Figure::MemoryMb)).sum();
    let Some(board) = pieces.iter().find(|piece| piece.kind() == Kind::Mainboard) else { return 0.0 };
    let in_socket_mb = board.figure(Figure::MemorySocketMostMb);
    untold + alike(pieces, plugged, board).iter().map(|alike| alike.mb(in_socket_mb)).sum::<f64>()
}

/// Source: altsci.com and brainbell.com, memory banks: modules a bank = bus width / module width.
fn banks(all: &[Alike], board: &Piece, because: &mut Vec<Because>) {
    for Alike { port, modules, per_bank } in all {
        let Some(per_bank) = *per_bank else {
            because.push(missing(board, Figure::BusWidthBits));
            return;
        };
        let (part, connector) = (modules[0].part(), port.id.clone());
        let count = modules.len() as u32;
        if !count.is_multiple_of(per_bank) {
            because.push(Because::BankShort { part, connector, per_bank, short: per_bank - count % per_bank });
            continue;
        }
        let sizes = modules.iter().filter_map(|piece| piece.figure(Figure::MemoryMb));
        let mut sizes: Vec<u64> = sizes.map(f64::to_bits).collect();
        sizes.sort_unstable();
        if sizes.chunk_by(|one, other| one == other).any(|same| !(same.len() as u32).is_multiple_of(per_bank)) {
            because.push(Because::BankMixed { part, connector });
        }
    }
}

fn sizes(modules: &[&Piece], board: &Piece, usable_mb: f64, because: &mut Vec<Because>) {
    let Some(most_mb) = board.figure(Figure::MemoryMostMb) else {
        because.push(missing(board, Figure::MemoryMostMb));
        return;
    };
    let sockets: u32 = board
        .model
        .offers
        .iter()
        .filter(|port| {
            port.family == Some(Family::Memory)
                && modules.iter().any(|module| socket(module).is_some_and(|needs| needs.number == port.number))
        })
        .map(|port| port.count)
        .fold(0, u32::saturating_add);
    // The total is reached with every socket filled, so that its share is what a socket takes at least.
    let share_mb = most_mb / f64::from(sockets.max(1));
    let in_socket_mb = board.figure(Figure::MemorySocketMostMb);
    let mut all_known = true;
    let mut socket_asked = false;
    for module in modules {
        let Some(own_mb) = module.figure(Figure::MemoryMb) else {
            because.push(missing(module, Figure::MemoryMb));
            all_known = false;
            continue;
        };
        match in_socket_mb {
            Some(most_mb) if own_mb > most_mb => {
                because.push(Because::ModuleTooLarge { part: module.part(), mb: own_mb, most_mb });
            }
            None if own_mb > share_mb && !socket_asked => {
                because.push(missing(board, Figure::MemorySocketMostMb));
                socket_asked = true;
            }
            _ => {}
        }
    }
    let (part, mb) = (board.part(), usable_mb);
    if mb > most_mb {
        because.push(Because::TooMuchMemory { board: part, mb, most_mb });
    } else if let Some(cached_mb) = board.figure(Figure::MemoryCachedMb).filter(|cached_mb| mb > *cached_mb) {
        because.push(Because::NotAllCached { board: part, mb, cached_mb });
    } else if all_known && mb > 0.0 {
        because.push(Because::MemoryTaken { board: part, mb });
    }
}
