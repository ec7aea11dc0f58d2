//! Cooling: a processor that needs a cooler has one in the machine. Where nobody told whether it needs one, that is
//! not known.

use super::because::Because;
use super::build::Asked;
use super::connectors::Plugged;
use super::model::{Piece, Port};
use crate::record::{Figure, Kind};
use crate::rules::connectors::Family;

/// Sockets of processors that never had a cooler: 8088, 8086, 80286, 80386. Common practice, no source.
const COOL: [&str; 4] = ["dip-40-processor", "pga-68", "plcc-68", "pga-132"];
/// Sockets of 486 processors, which run without one up to 33 MHz. Common practice, no source.
const COOL_WHILE_SLOW: [&str; 4] = ["socket-1", "socket-2", "socket-3", "socket-6"];
const SLOW_MHZ: f64 = 33.4;

pub(super) fn judge(pieces: &[Piece], plugged: &Plugged, asked: &Asked) -> Vec<Because> {
    let mut because = Vec::new();
    let mut used: Vec<usize> = Vec::new();
    for (at, piece) in pieces.iter().enumerate().filter(|(_, piece)| piece.kind() == Kind::Processor) {
        let hosts = hosts(at, pieces, plugged);
        let is_needed = is_needed(piece, hosts.iter().map(|host| &pieces[*host]));
        let part = piece.part();
        match cooler(at, &hosts, pieces, plugged, &used) {
            Some(cooler) => {
                used.push(cooler);
                because.push(cooled(piece, &pieces[cooler]));
            }
            None if is_needed == Some(false) => {}
            None => because.push(Because::NoCooler { part, is_needed: is_needed.is_some(), may_come: asked.is_trial }),
        }
    }
    because
}

/// Sockets whose lugs look alike, and the lugs of each. What draws most comes last.
const LUGS: [(&str, &str); 3] =
    [("socket-7", "cooler-socket-7"), ("socket-370", "cooler-socket-370"), ("socket-a", "cooler-socket-a")];

/// Whether the cooler that a processor has is one for its socket.
fn cooled(processor: &Piece, cooler: &Piece) -> Because {
    let (part, of) = (processor.part(), cooler.part());
    let socket = processor.model.needs.iter().find(|port| port.family == Some(Family::Processor));
    let place = |id: &str| {
        let family = if matches!(id, "socket-5" | "super-7") { "socket-7" } else { id };
        LUGS.iter().position(|(socket, _)| family.starts_with(socket))
    };
    let made_for = cooler.model.needs.iter().find_map(|port| {
        let at = LUGS.iter().position(|(_, lugs)| *port.id == **lugs)?;
        Some((at, &port.id))
    });
    let sits_in = socket.and_then(|port| Some((place(&port.id)?, &port.id)));
    match (sits_in, made_for) {
        (Some((sits, socket)), Some((made, lugs))) if sits != made => Because::CoolerOfOther {
            part,
            cooler: of,
            socket: socket.clone(),
            lugs: lugs.clone(),
            is_weaker: made < sits,
        },
        _ => Because::Cooled { part, cooler: of },
    }
}

fn is_clip(port: &Port) -> bool {
    port.family == Some(Family::Mounting) && (port.id.starts_with("cooler-") || port.id.starts_with("retention-"))
}

/// Whether it needs a cooler: as its design says, else by lugs or a frame for one on itself or what it sits in, else
/// by its socket. `None` where none of them tells.
fn is_needed<'p>(processor: &Piece, mut hosts: impl Iterator<Item = &'p Piece>) -> Option<bool> {
    if let Some(told) = processor.figure(Figure::CoolerNeeded) {
        return Some(told > 0.0);
    }
    let has_lugs = |piece: &Piece| piece.model.offers.iter().any(|port| port.id.starts_with("cooler-"));
    if has_lugs(processor) || hosts.any(has_lugs) {
        return Some(true);
    }
    let socket = processor.model.needs.iter().find(|port| port.family == Some(Family::Processor))?;
    let is_slow = processor.model.processor.core_mhz.is_some_and(|mhz| mhz <= SLOW_MHZ);
    let is_cool = COOL.contains(&&*socket.id) || is_slow && COOL_WHILE_SLOW.contains(&&*socket.id);
    is_cool.then_some(false)
}

/// What a processor is plugged into, through adapters.
fn hosts(processor: usize, pieces: &[Piece], plugged: &Plugged) -> Vec<usize> {
    let mut hosts = Vec::new();
    let mut at = processor;
    while let Some(link) = plugged.link(pieces, at, Family::Processor) {
        if hosts.contains(&link.host) {
            break;
        }
        hosts.push(link.host);
        at = link.host;
    }
    hosts
}

/// A cooler that no other processor has: one that is told to sit where this processor does, or one whose mounting
/// nobody told.
fn cooler(processor: usize, hosts: &[usize], pieces: &[Piece], plugged: &Plugged, used: &[usize]) -> Option<usize> {
    let coolers = pieces.iter().enumerate().filter(|(at, piece)| piece.kind() == Kind::Cooler && !used.contains(at));
    let mut untold = None;
    for (at, piece) in coolers {
        if !piece.model.needs.iter().any(is_clip) {
            untold = untold.or(Some(at));
            continue;
        }
        let sits_on = plugged.links().filter(|link| link.part == at && is_clip(&piece.model.needs[link.need]));
        let mut sits_on = sits_on.map(|link| link.host);
        // A retention frame or support holds it over whatever processor is there.
        if sits_on.any(|on| on == processor || hosts.contains(&on) || pieces[on].kind() == Kind::Retention) {
            return Some(at);
        }
    }
    untold
}
