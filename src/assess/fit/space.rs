//! Space: the length of cards and the height of coolers in the case. Outlines, bays and mountings are connectors.

use super::because::{Because, Constraint};
use super::model::Piece;
use crate::record::{Figure, Kind};

pub(super) fn judge(pieces: &[Piece]) -> Vec<Because> {
    let Some(case) = pieces.iter().find(|piece| piece.kind() == Kind::Case) else { return Vec::new() };
    let mut because = Vec::new();
    room(pieces, case, Figure::LengthMm, Figure::CardRoomMm, Kind::is_card, &mut because);
    room(pieces, case, Figure::HeightMm, Figure::CoolerRoomMm, |kind| kind == Kind::Cooler, &mut because);
    because
}

fn room(
    pieces: &[Piece],
    case: &Piece,
    size: Figure,
    room: Figure,
    is_meant: impl Fn(Kind) -> bool,
    because: &mut Vec<Because>,
) {
    let mut meant = pieces.iter().filter(|piece| is_meant(piece.kind())).peekable();
    if meant.peek().is_none() {
        return;
    }
    let missing = |part, figure| Because::FigureMissing { constraint: Constraint::Space, part, figure };
    let Some(room_mm) = case.figure(room) else {
        because.push(missing(case.part(), room));
        return;
    };
    let before = because.len();
    for piece in meant {
        match piece.figure(size) {
            None => because.push(missing(piece.part(), size)),
            Some(mm) if mm > room_mm => {
                because.push(Because::NoRoom { part: piece.part(), case: case.part(), mm, room_mm });
            }
            Some(_) => {}
        }
    }
    if because.len() == before {
        because.push(Because::RoomEnough { case: case.part(), size });
    }
}
