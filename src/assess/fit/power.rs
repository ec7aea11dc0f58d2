//! Power: amperes on each rail, summed, against the supply's label, its combined limits and least loads.

use super::because::{Because, Constraint};
use super::model::{Piece, rating_figure};
use crate::record::{DesignId, Figure, Kind};
use crate::rules::connectors::Family;
use crate::trade::supply::{LoadFault, Rail, load_faults};

const DRAWS: [(Rail, Figure); 6] = [
    (Rail::Plus12, Figure::Current12vA),
    (Rail::Plus5, Figure::Current5vA),
    (Rail::Plus3v3, Figure::Current3v3A),
    (Rail::Minus5, Figure::CurrentMinus5vA),
    (Rail::Minus12, Figure::CurrentMinus12vA),
    (Rail::Standby, Figure::CurrentStandbyA),
];

/// The figures that tell what a part draws.
pub fn draw_figures() -> impl Iterator<Item = Figure> {
    DRAWS.into_iter().map(|(_, figure)| figure)
}

/// The figure that is asked for where nothing is told of what a kind draws.
pub fn draw_asked_of(kind: Kind) -> Figure {
    if matches!(kind, Kind::Cooler | Kind::Fan) { Figure::Current12vA } else { Figure::Current5vA }
}

/// Kinds that draw enough from the supply to be counted; what else is plugged in draws milliamperes, or has a lead of
/// its own. Common practice, no source.
pub fn draws_current(kind: Kind) -> bool {
    use Kind::{CacheModule, Cooler, Coprocessor, Fan, Mainboard, MemoryModule, Processor};
    kind.is_card()
        || kind.is_drive()
        || matches!(kind, Mainboard | Processor | Coprocessor | MemoryModule | CacheModule | Cooler | Fan)
}

/// What is drawn from each rail, as far as it is known, in amperes. What asks +3.3 V of a board whose plugs bring none
/// draws as many amperes from +5 V: a linear regulator on the board makes it. Common practice, no source.
pub fn draws(pieces: &[Piece]) -> [(Rail, f64); 6] {
    let is_made_there = makes_3v3(pieces);
    DRAWS.map(|(rail, figure)| {
        let drawn = |figure: Figure| pieces.iter().filter_map(|piece| piece.figure(figure)).sum::<f64>();
        let amps = match rail {
            Rail::Plus3v3 if is_made_there => 0.0,
            Rail::Plus5 if is_made_there => drawn(figure) + drawn(Figure::Current3v3A),
            _ => drawn(figure),
        };
        // Sums of tenths are told as tenths.
        (rail, (amps * 1e4).round() / 1e4)
    })
}

/// Whether the board makes its +3.3 V itself, its power plugs being known and bringing none.
fn makes_3v3(pieces: &[Piece]) -> bool {
    let board = pieces.iter().find(|piece| piece.kind() == Kind::Mainboard);
    let plugs = board.into_iter().flat_map(|board| &board.model.needs);
    let mut plugs = plugs.filter(|port| port.family == Some(Family::BoardPower)).peekable();
    plugs.peek().is_some() && plugs.all(|port| !port.has_3v3)
}

/// Watts of all rails together.
pub fn watts(draws: &[(Rail, f64)]) -> f64 {
    draws.iter().map(|(rail, amps)| rail.nominal_v().abs() * amps).sum()
}

pub(super) fn judge(pieces: &[Piece]) -> Vec<Because> {
    let Some(supply) = pieces.iter().find(|piece| piece.kind() == Kind::PowerSupply) else { return Vec::new() };
    let part = supply.part();
    let missing = |part, figure| Because::FigureMissing { constraint: Constraint::Power, part, figure };
    let Some(label) = &supply.model.label else { return vec![missing(part, Figure::Rating5vA)] };
    let draws = draws(pieces);
    let mut because = unknown_draws(pieces);
    let is_all_known = because.is_empty();
    for fault in load_faults(label, &draws) {
        match fault {
            LoadFault::NoSuchRail { rail, .. } if supply.figure(rating_figure(rail)).is_none() => {
                because.push(missing(part, rating_figure(rail)));
            }
            // More may be drawn than is known.
            LoadFault::TooLittle { .. } if !is_all_known => {}
            fault => because.push(Because::Load { part, fault }),
        }
    }
    if because.is_empty() {
        because.push(Because::LoadCarried { part, watts: watts(&draws) });
    }
    because
}

/// One figure asked for of each design that says nothing of what it draws.
fn unknown_draws(pieces: &[Piece]) -> Vec<Because> {
    let mut seen: Vec<DesignId> = Vec::new();
    let mut because = Vec::new();
    for piece in pieces.iter().filter(|piece| draws_current(piece.kind())) {
        if DRAWS.iter().any(|(_, figure)| piece.figure(*figure).is_some()) {
            continue;
        }
        if let Some(design) = piece.model.design {
            if seen.contains(&design) {
                continue;
            }
            seen.push(design);
        }
        let figure = draw_asked_of(piece.kind());
        because.push(Because::FigureMissing { constraint: Constraint::Power, part: piece.part(), figure });
    }
    because
}
