//! Disks, and flash cards in their adapters: what the firmware that reaches a disk, and the file system, make of its capacity.

use super::because::{Because, Constraint};
use super::connectors::Plugged;
use super::model::Piece;
use crate::record::{Figure, Kind, PartId};
use crate::rules::connectors::Family;
use crate::trade::drive::{FileSystem, Firmware, Geometry, judge as judge_drive};

/// A label's megabytes and its geometry differ by less than this share where they tell of the same capacity.
const GEOMETRY_NEAR: f64 = 0.05;

pub(super) fn judge(pieces: &[Piece], plugged: &Plugged, file_system: Option<&FileSystem>) -> Vec<Because> {
    let is_disk = |piece: &Piece| matches!(piece.kind(), Kind::HardDisk | Kind::FlashAdapter);
    let disks = pieces.iter().enumerate().filter(|(_, piece)| is_disk(piece));
    disks.filter_map(|(at, disk)| one(at, disk, pieces, plugged, file_system)).collect()
}

fn one(
    at: usize,
    disk: &Piece,
    pieces: &[Piece],
    plugged: &Plugged,
    file_system: Option<&FileSystem>,
) -> Option<Because> {
    let part = disk.part();
    let missing = |part, figure| Some(Because::FigureMissing { constraint: Constraint::Drives, part, figure });
    // Plugged in nowhere: that is told under connectors.
    let host = behind(at, pieces, plugged)?;
    let own_firmware = host.kind() == Kind::ControllerCard;
    let board = if own_firmware { Some(host) } else { pieces.iter().find(|piece| piece.kind() == Kind::Mainboard) };
    let firmware = board.and_then(|board| board.model.firmware.as_ref());
    if own_firmware && firmware.is_none() && file_system.is_none() {
        return Some(Because::DiskOnController { part, host: host.part() });
    }
    let told = capacity_mb(disk, pieces).map(|mb| (mb * 1e6) as u64).filter(|bytes| *bytes > 0);
    // Large drives print the geometry that drives of any size report: it counts where it makes the capacity.
    let makes = |geometry: &Geometry| {
        told.is_none_or(|told| (geometry.bytes() as f64 / told as f64 - 1.0).abs() <= GEOMETRY_NEAR)
    };
    let geometry = geometry(disk).filter(makes);
    let Some(bytes) = geometry.map(Geometry::bytes).or(told) else {
        return missing(part, Figure::CapacityMb);
    };
    let Some(firmware) = firmware else {
        return missing(board.map_or(host.part(), Piece::part), Figure::DiskMostMb);
    };
    Some(seen(part, bytes, geometry, firmware, file_system))
}

/// As it is told; of a flash-card adapter its own, or that of the card inside it.
fn capacity_mb(disk: &Piece, pieces: &[Piece]) -> Option<f64> {
    let card =
        |piece: &&Piece| disk.kind() == Kind::FlashAdapter && piece.answers.file.part.inside == Some(disk.part());
    let of_card = || pieces.iter().filter(card).find_map(|card| card.figure(Figure::CapacityMb));
    disk.figure(Figure::CapacityMb).or_else(of_card)
}

/// The board or controller that a disk hangs on, through cables and adapters.
fn behind<'p>(disk: usize, pieces: &'p [Piece], plugged: &Plugged) -> Option<&'p Piece> {
    let mut at = disk;
    // As many steps as there are parts: adapters are not in a ring, but a guard costs nothing.
    for _ in pieces {
        let Some(link) = plugged.link(pieces, at, Family::Disk) else { break };
        at = link.host;
    }
    (at != disk).then(|| &pieces[at])
}

/// As printed, where all three are told and can be.
fn geometry(disk: &Piece) -> Option<Geometry> {
    let whole = |figure| disk.figure(figure).filter(|value| (1.0..=65_536.0).contains(value)).map(|value| value as u32);
    Some(Geometry::new(whole(Figure::Cylinders)?, whole(Figure::Heads)?, whole(Figure::Sectors)?))
}

fn seen(
    part: PartId,
    bytes: u64,
    geometry: Option<Geometry>,
    firmware: &Firmware,
    file_system: Option<&FileSystem>,
) -> Because {
    let outcome = judge_drive(bytes, geometry, firmware, file_system).outcome;
    let is_within = firmware.most_bytes.is_none_or(|most| bytes <= most);
    let by_system = file_system.filter(|system| is_within && system.drive_bytes.is_some_and(|most| bytes > most));
    let source = by_system.map_or(&firmware.source, |system| &system.source).clone();
    Because::Disk { part, bytes, outcome, remedy: if is_within { "" } else { firmware.remedy }, source }
}
