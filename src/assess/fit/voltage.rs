//! Core voltage: what a processor asks, against what its board, adapter or voltage module gives. Never taken as right
//! while either is not known.

use super::because::{Because, Constraint};
use super::connectors::Plugged;
use super::model::{Piece, Volts};
use crate::record::{Figure, Kind};
use crate::rules::connectors::Family;

pub(super) fn judge(pieces: &[Piece], plugged: &Plugged) -> Vec<Because> {
    let asking = |piece: &&Piece| matches!(piece.kind(), Kind::Processor | Kind::Coprocessor);
    let mut because = Vec::new();
    for (at, piece) in pieces.iter().enumerate().filter(|(_, piece)| asking(piece)) {
        // Plugged in nowhere: that is told under connectors.
        let Some(link) = plugged.link(pieces, at, Family::Processor) else { continue };
        let host = &pieces[link.host];
        let missing = |part: &Piece| Because::FigureMissing {
            constraint: Constraint::Voltage,
            part: part.part(),
            figure: Figure::CoreVoltageV,
        };
        // A socket that is used at one voltage alone asks for it.
        let told = piece.figure(Figure::CoreVoltageV).filter(|volts| *volts > 0.0);
        let Some(asks_v) = told.or(piece.model.needs[link.need].only_v) else {
            because.push(missing(piece));
            continue;
        };
        let volts = given(pieces, plugged, link.host, host.model.offers[link.offer].only_v);
        because.push(match volts.nearest(asks_v) {
            None => missing(host),
            Some(gives_v) => Because::Voltage { part: piece.part(), host: host.part(), asks_v, gives_v },
        });
    }
    because
}

/// What a host gives by itself, by the modules plugged into it, or, where nobody says so, by a socket that is used at
/// one voltage alone.
fn given(pieces: &[Piece], plugged: &Plugged, host: usize, only_v: Option<f64>) -> Volts {
    let mut volts = pieces[host].model.volts.clone();
    let modules = plugged.links().filter(|link| link.host == host).map(|link| &pieces[link.part]);
    for module in modules.filter(|module| module.kind() == Kind::VoltageModule) {
        volts.each.extend(&module.model.volts.each);
        volts.range = volts.range.or(module.model.volts.range);
    }
    if !volts.is_known() {
        volts.each.extend(only_v);
    }
    volts
}
