//! Core voltage: what a processor asks, against what its board, adapter or voltage module is set to, or could give.
//! Never taken as right while either is not known.

use super::because::{Because, Constraint, SetVoltage};
use super::build::Asked;
use super::connectors::Plugged;
use super::model::{Noted, Piece, Volts};
use crate::record::{Figure, Kind};
use crate::rules::connectors::Family;
use crate::trade::setting::Setting;

pub(super) fn judge(pieces: &[Piece], plugged: &Plugged, asked: &Asked) -> Vec<Because> {
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
        // A coprocessor runs at its board's own voltage, whatever the processor's core is set to.
        let noted = noted(pieces, plugged, link.host).filter(|_| piece.kind() == Kind::Processor && !asked.is_trial);
        if let Some((of, Noted { setting, value: None, said })) = noted {
            because.push(Because::SettingUnreadable { part: of.part(), setting: *setting, said: said.clone() });
            continue;
        }
        let volts = given(pieces, plugged, link.host, host.model.offers[link.offer].only_v);
        // What the host cannot give is no setting of it: the note speaks of something else.
        let noted = noted.filter(|(_, noted)| noted.value.is_none_or(|set_v| volts.may_be(set_v)));
        let set_v = noted.and_then(|(_, noted)| noted.value);
        let Some(asks_v) = asked_v(piece, piece.model.needs[link.need].only_v, set_v, &volts) else {
            because.push(missing(piece));
            continue;
        };
        let best_v = volts.nearest(asks_v);
        let part = piece.part();
        because.push(match (noted, best_v) {
            (Some((of, Noted { value: Some(gives_v), .. })), best_v) => {
                let set = SetVoltage::Noted { best_v };
                Because::Voltage { part, host: of.part(), asks_v, gives_v: *gives_v, set }
            }
            (_, Some(gives_v)) => {
                Because::Voltage { part, host: host.part(), asks_v, gives_v, set: SetVoltage::Nearest }
            }
            (_, None) => missing(host),
        });
    }
    because
}

/// The core voltage that a processor asks: as told, of a range what its host is set to or gives nearest, or that of a
/// socket that is used at one voltage alone.
fn asked_v(piece: &Piece, only_v: Option<f64>, set_v: Option<f64>, given: &Volts) -> Option<f64> {
    let told = piece.figure(Figure::CoreVoltageV).filter(|volts| *volts > 0.0);
    let within = || {
        let (least, most) = piece.model.volts.range?;
        let middle = f64::midpoint(least, most);
        Some(set_v.or_else(|| given.nearest(middle)).unwrap_or(middle).clamp(least, most))
    };
    told.or_else(within).or(only_v)
}

/// Modules plugged into a host.
fn modules<'p>(pieces: &'p [Piece], plugged: &Plugged, host: usize) -> impl Iterator<Item = &'p Piece> {
    let links = plugged.links().filter(move |link| link.host == host);
    links.map(|link| &pieces[link.part]).filter(|piece| piece.kind() == Kind::VoltageModule)
}

/// The core voltage as it is noted on a host's module, or else on the host.
fn noted<'p>(pieces: &'p [Piece], plugged: &Plugged, host: usize) -> Option<(&'p Piece, &'p Noted)> {
    let own = |piece: &'p Piece| Some((piece, piece.noted(Setting::CoreVoltage)?));
    modules(pieces, plugged, host).find_map(own).or_else(|| own(&pieces[host]))
}

/// What a host gives by itself, by the modules plugged into it, or, where nobody says so, by a socket that is used at
/// one voltage alone.
fn given(pieces: &[Piece], plugged: &Plugged, host: usize, only_v: Option<f64>) -> Volts {
    let mut volts = pieces[host].model.volts.clone();
    for module in modules(pieces, plugged, host) {
        volts.each.extend(&module.model.volts.each);
        volts.range = volts.range.or(module.model.volts.range);
    }
    if !volts.is_known() {
        volts.each.extend(only_v);
    }
    volts
}
