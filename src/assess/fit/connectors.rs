//! Connectors: everything that a part needs must find an offer, through adapters too, and no adapter carries itself.

use super::because::Because;
use super::matching::{Item, Seating, seat};
use super::model::{Piece, Port};
use crate::record::{Kind, PartId};
use crate::rules::Connectors;
use crate::rules::connectors::Family;

/// How many ways out of adapters in a ring are tried. Two or three adapters take a handful; a ring that takes more is
/// broken without going on to prove that no other way leaves fewer needs unmet.
const TRIES: u32 = 200;

/// Who is plugged into whom.
#[derive(Clone, Debug, Default)]
pub struct Plugged {
    needs: Vec<Item>,
    /// The place of each need in its part's list.
    need_rows: Vec<u16>,
    offers: Vec<Item>,
    offer_rows: Vec<u16>,
    seating: Seating,
}

/// A connector in another, by places of parts and of connectors in their lists.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Link {
    pub part: usize,
    pub need: usize,
    pub host: usize,
    pub offer: usize,
}

impl Plugged {
    pub fn links(&self) -> impl Iterator<Item = Link> {
        self.seating.seats.iter().map(|seat| {
            let (need, offer) = (usize::from(seat.need), usize::from(seat.offer));
            Link {
                part: usize::from(self.needs[need].part),
                need: usize::from(self.need_rows[need]),
                host: usize::from(self.offers[offer].part),
                offer: usize::from(self.offer_rows[offer]),
            }
        })
    }

    /// Where a part's first connector of a family is plugged in.
    pub fn link(&self, pieces: &[Piece], part: usize, family: Family) -> Option<Link> {
        self.links().find(|link| link.part == part && pieces[part].model.needs[link.need].family == Some(family))
    }
}

/// Kinds that plug into nothing.
fn is_loose(kind: Kind) -> bool {
    matches!(kind, Kind::Media | Kind::TestRig | Kind::Other)
}

/// Whether a part of a kind may offer connectors of a family; common practice, no source.
pub(in crate::assess) fn may_offer(kind: Kind, family: Option<Family>) -> bool {
    use Kind::{
        Cable, Case, ControllerCard, FlashAdapter, Mainboard, MultiIoCard, PowerSupply, ProcessorAdapter, Retention,
        Riser, SoundCard, VideoCard,
    };
    match family {
        None => true,
        Some(Family::Processor) => matches!(kind, Mainboard | ProcessorAdapter),
        Some(Family::Expansion) => matches!(kind, Mainboard | Riser | SoundCard),
        Some(Family::Memory) => kind == Mainboard,
        Some(Family::Outline) => kind == Case,
        Some(Family::Mounting) => matches!(kind, Case | Mainboard | Retention),
        Some(Family::BoardPower) => matches!(kind, PowerSupply | Cable),
        Some(Family::DrivePower) => matches!(kind, PowerSupply | Mainboard | Cable),
        Some(Family::Disk) => {
            matches!(kind, Mainboard | ControllerCard | MultiIoCard | SoundCard | FlashAdapter | Cable)
        }
        Some(Family::Floppy) => matches!(kind, Mainboard | ControllerCard | MultiIoCard | Cable),
        Some(Family::Video) => matches!(kind, Mainboard | VideoCard),
        Some(Family::Input | Family::Port) => kind == Mainboard || kind.is_card(),
    }
}

/// Whether a part of a kind may offer a connector: of sound cards only the header for a daughterboard.
fn may_offer_it(kind: Kind, connector: &str, family: Option<Family>) -> bool {
    let is_slot = family == Some(Family::Expansion) && !connector.starts_with("wavetable");
    may_offer(kind, family) && !(is_slot && kind == Kind::SoundCard)
}

/// Kinds that always plug into something: to tell what they offer is not enough.
fn must_plug(kind: Kind) -> bool {
    let is_chip = matches!(kind, Kind::Processor | Kind::Coprocessor | Kind::MemoryModule | Kind::CacheModule);
    is_chip || kind.is_card() || kind.is_drive()
}

/// Plugs the pieces together, and says what stays unmet or unknown.
pub(super) fn judge(pieces: &[Piece], table: &Connectors, to_come: &[Kind]) -> (Plugged, Vec<Because>) {
    let mut plugged = Plugged::default();
    let mut because = Vec::new();
    for (at, piece) in pieces.iter().enumerate() {
        let model = &piece.model;
        let is_told = !model.needs.is_empty() || (!must_plug(piece.kind()) && !model.offers.is_empty());
        if !is_told && !piece.is_inside && !is_loose(piece.kind()) {
            because.push(Because::ConnectorsUnknown { part: piece.part() });
        }
        let item = |port: &Port| Item { part: at as u16, connector: port.number, count: port.count };
        plugged.needs.extend(model.needs.iter().map(item));
        plugged.need_rows.extend(0..model.needs.len() as u16);
        plugged.offers.extend(model.offers.iter().map(item));
        plugged.offer_rows.extend(0..model.offers.len() as u16);
        because.extend(piece.by_eye.iter().map(|finding| Because::ByEye { part: piece.part(), finding: *finding }));
    }
    // Parts of which nobody told what they offer: they leave not known what their kind could give, and nothing else.
    let untold = |piece: &&Piece| piece.model.needs.is_empty() && piece.model.offers.is_empty();
    let untold: Vec<Kind> = pieces.iter().filter(untold).map(Piece::kind).collect();
    let adapters = Adapters::of(pieces);
    let takes =
        |offer: &Item, need: &Item| offer.connector == need.connector || table.takes(offer.connector, need.connector);
    let free = seat(&plugged.needs, &plugged.offers, takes);
    let ring = adapters.ring(&plugged, &free, pieces);
    plugged.seating = match &ring {
        None => free.clone(),
        Some(_) => adapters.without_rings(&mut plugged, pieces, &takes),
    };
    let ring = ring.filter(|_| plugged.seating.unmet_in_all() > free.unmet_in_all()).unwrap_or_default();
    for (at, missing) in plugged.seating.unmet.iter().copied().enumerate().filter(|(_, missing)| *missing > 0) {
        let need = &plugged.needs[at];
        let piece = &pieces[usize::from(need.part)];
        let Port { id: connector, family, .. } = piece.model.needs[usize::from(plugged.need_rows[at])].clone();
        let part = piece.part();
        if ring.contains(&need.part) {
            let around = ring.iter().map(|part| pieces[usize::from(*part)].part()).collect();
            because.push(Because::AdapterRing { part, connector, around });
            continue;
        }
        let mut held_by: Vec<PartId> = Vec::new();
        for seat in &plugged.seating.seats {
            let (offer, holder) = (&plugged.offers[usize::from(seat.offer)], &plugged.needs[usize::from(seat.need)]);
            let holder_part = pieces[usize::from(holder.part)].part();
            if takes(offer, need) && holder_part != part && !held_by.contains(&holder_part) {
                held_by.push(holder_part);
            }
        }
        let is_certain = !untold.iter().chain(to_come).any(|kind| may_offer_it(*kind, &connector, family));
        because.push(Because::NeedUnmet { part, connector, family, missing, is_certain, held_by: held_by.into() });
    }
    let all = plugged.seating.seats.len();
    if because.is_empty() && all > 0 {
        because.push(Because::AllPlugged { connectors: all });
    }
    (plugged, because)
}

/// Parts that need and offer connectors of one family, so that they can carry others of their like.
struct Adapters(Vec<(u16, Family)>);

impl Adapters {
    fn of(pieces: &[Piece]) -> Self {
        let mut found = Vec::new();
        for (at, piece) in pieces.iter().enumerate() {
            for family in piece.model.needs.iter().filter_map(|port| port.family) {
                let both = piece.model.offers.iter().any(|port| port.family == Some(family));
                if both && !found.contains(&(at as u16, family)) {
                    found.push((at as u16, family));
                }
            }
        }
        Self(found)
    }

    /// Parts in a ring, each plugged into the next.
    fn ring(&self, plugged: &Plugged, seating: &Seating, pieces: &[Piece]) -> Option<Vec<u16>> {
        if self.0.len() < 2 {
            return None;
        }
        self.0.iter().find_map(|(start, family)| {
            let walk = Walk { adapters: self, family: *family, plugged, seating, pieces };
            let mut path = vec![*start];
            walk.comes_round(&mut path, &mut vec![*start]).then_some(path)
        })
    }

    /// The seating with fewest needs unmet in which no adapters carry each other round.
    fn without_rings(&self, plugged: &mut Plugged, pieces: &[Piece], takes: &impl Fn(&Item, &Item) -> bool) -> Seating {
        let is_adapter = |part: u16| self.0.iter().any(|(known, _)| *known == part);
        let apart =
            |offer: &Item, need: &Item| takes(offer, need) && !(is_adapter(offer.part) && is_adapter(need.part));
        let mut best = seat(&plugged.needs, &plugged.offers, apart);
        let mut tries = TRIES;
        let mut open: Vec<Vec<(u16, u16)>> = vec![Vec::new()];
        while let Some(kept_apart) = open.pop() {
            if tries == 0 {
                break;
            }
            tries -= 1;
            let may = |offer: &Item, need: &Item| takes(offer, need) && !kept_apart.contains(&(need.part, offer.part));
            let seating = seat(&plugged.needs, &plugged.offers, may);
            if seating.unmet_in_all() >= best.unmet_in_all() {
                continue;
            }
            match self.ring(plugged, &seating, pieces) {
                None => best = seating,
                // In every seating without this ring one of its parts is not plugged into the next.
                Some(ring) => open.extend(ring.iter().enumerate().map(|(at, part)| {
                    let next = ring[(at + 1) % ring.len()];
                    kept_apart.iter().copied().chain([(*part, next)]).collect()
                })),
            }
        }
        best
    }
}

/// From adapter to adapter, as they are plugged into each other.
struct Walk<'a> {
    adapters: &'a Adapters,
    family: Family,
    plugged: &'a Plugged,
    seating: &'a Seating,
    pieces: &'a [Piece],
}

impl Walk<'_> {
    /// Goes on from the end of the path; true when it has come round to its start.
    fn comes_round(&self, path: &mut Vec<u16>, seen: &mut Vec<u16>) -> bool {
        let Some(end) = path.last().copied() else { return false };
        for seat in &self.seating.seats {
            let need = self.plugged.needs[usize::from(seat.need)];
            let host = self.plugged.offers[usize::from(seat.offer)].part;
            let row = usize::from(self.plugged.need_rows[usize::from(seat.need)]);
            let of_family = || self.pieces[usize::from(need.part)].model.needs[row].family == Some(self.family);
            if need.part != end || !of_family() || !self.adapters.0.contains(&(host, self.family)) {
                continue;
            }
            if host == path[0] {
                return true;
            }
            if !seen.contains(&host) {
                seen.push(host);
                path.push(host);
                if self.comes_round(path, seen) {
                    return true;
                }
                path.pop();
            }
        }
        false
    }
}
