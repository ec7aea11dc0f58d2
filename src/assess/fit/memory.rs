//! Memory: whole banks, modules that a socket takes, what the board takes and caches, access times.

use super::because::{Because, Constraint};
use super::model::{Piece, Port};
use crate::record::{Figure, Kind};
use crate::rules::connectors::Family;

/// Widths of modules that are put together to the width of the data bus. Serial modules are not, single chips have
/// parity chips beside them.
const BANKED_BITS: [u16; 3] = [8, 32, 64];

pub(super) fn judge(pieces: &[Piece]) -> Vec<Because> {
    let modules: Vec<&Piece> = pieces.iter().filter(|piece| piece.kind() == Kind::MemoryModule).collect();
    let board = pieces.iter().find(|piece| piece.kind() == Kind::Mainboard);
    let (Some(board), false) = (board, modules.is_empty()) else { return Vec::new() };
    let mut because = Vec::new();
    banks(&modules, board, pieces, &mut because);
    sizes(&modules, board, &mut because);
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

/// Source: altsci.com and brainbell.com, memory banks: modules a bank = bus width / module width.
fn banks(modules: &[&Piece], board: &Piece, pieces: &[Piece], because: &mut Vec<Because>) {
    let bus = bus_bits(board, pieces);
    let mut seen: Vec<u16> = Vec::new();
    for module in modules {
        let Some(port) = socket(module).filter(|port| !seen.contains(&port.number)) else { continue };
        seen.push(port.number);
        let Some(width) = port.width_bits.filter(|width| BANKED_BITS.contains(width)).map(u32::from) else { continue };
        let Some(bus) = bus else {
            because.push(missing(board, Figure::BusWidthBits));
            return;
        };
        let per_bank = (bus / width).max(1);
        let alike = modules.iter().filter(|other| socket(other).is_some_and(|other| other.number == port.number));
        let (part, connector) = (module.part(), port.id.clone());
        let count = alike.clone().count() as u32;
        if !count.is_multiple_of(per_bank) {
            because.push(Because::BankShort { part, connector, per_bank, short: per_bank - count % per_bank });
            continue;
        }
        let mut sizes: Vec<u64> = alike.filter_map(|piece| piece.figure(Figure::MemoryMb)).map(f64::to_bits).collect();
        sizes.sort_unstable();
        if sizes.chunk_by(|one, other| one == other).any(|same| !(same.len() as u32).is_multiple_of(per_bank)) {
            because.push(Because::BankMixed { part, connector });
        }
    }
}

fn sizes(modules: &[&Piece], board: &Piece, because: &mut Vec<Because>) {
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
    let mut mb = 0.0;
    let mut all_known = true;
    let mut socket_asked = false;
    for module in modules {
        let Some(own_mb) = module.figure(Figure::MemoryMb) else {
            because.push(missing(module, Figure::MemoryMb));
            all_known = false;
            continue;
        };
        mb += own_mb;
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
    let part = board.part();
    if mb > most_mb {
        because.push(Because::TooMuchMemory { board: part, mb, most_mb });
    } else if let Some(cached_mb) = board.figure(Figure::MemoryCachedMb).filter(|cached_mb| mb > *cached_mb) {
        because.push(Because::NotAllCached { board: part, mb, cached_mb });
    } else if all_known {
        because.push(Because::MemoryTaken { board: part, mb });
    }
}
