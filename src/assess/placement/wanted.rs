//! What a machine wants, from the parts that are in it: of its empty roles what must plug in where, and open connectors.

use std::collections::{BTreeMap, BTreeSet, HashMap};

use super::wishes::Wish;
use crate::assess::fit::matching::{Item, Seating, seat};
use crate::assess::fit::{Piece, Port, may_offer};
use crate::assess::making;
use crate::record::{Figure, Kind, Logbook, MachineFile, Role, RoleId, Side};
use crate::rules::Rules;
use crate::rules::connectors::Family;

/// Makes wishes out of what is in a machine, be it fitted, planned or proposed.
pub struct Wanted<'a> {
    logbook: &'a Logbook,
    rules: &'a Rules,
    usual: HashMap<Kind, Usual>,
}

/// What the designs of a kind need and offer, as the logbook knows them.
#[derive(Clone, Debug, Default)]
struct Usual {
    needs: BTreeSet<String>,
    offers: BTreeSet<String>,
}

impl<'a> Wanted<'a> {
    pub fn of(logbook: &'a Logbook, rules: &'a Rules) -> Self {
        Self { logbook, rules, usual: HashMap::new() }
    }

    /// Everything that a machine with these parts wants. Pieces must be of one [`Models`](crate::assess::fit::Models);
    /// `filled` tells how many of them fill a role.
    pub fn in_machine(&mut self, file: &MachineFile, pieces: &[&Piece], filled: impl Fn(RoleId) -> u32) -> Vec<Wish> {
        let plugged = Plugged::of(pieces, self.rules);
        let mut open = plugged.open();
        let short = |role: &Role| role.count.max(1).saturating_sub(filled(role.id));
        let mut empty: Vec<(&Role, u32)> = file.roles.iter().map(|role| (role, short(role))).collect();
        empty.retain(|(_, count)| *count > 0);
        // What must be there anyway is asked first to give what others wait for.
        let mut giving: Vec<&Role> = empty.iter().map(|(role, _)| *role).collect();
        giving.sort_by_key(|role| !role.required);
        let mut must_offer: HashMap<RoleId, Vec<(String, u32)>> = HashMap::new();
        for role in &giving {
            let usual = self.usual(role);
            let known = |need: &String| usual.offers.iter().any(|offer| self.rules.connectors.accepts(offer, need));
            must_offer.entry(role.id).or_default().extend(take(&mut open, known));
        }
        for role in giving.iter().filter(|role| role.required) {
            let family = |need: &String| self.rules.connectors.get(need).map(|row| row.family);
            let may = |need: &String| {
                family(need).is_some_and(|family| role.kinds().any(|kind| may_offer(kind, Some(family))))
            };
            must_offer.entry(role.id).or_default().extend(take(&mut open, may));
        }
        let board = pieces.iter().find(|piece| piece.kind() == Kind::Mainboard);
        let mut wishes = Vec::new();
        for (role, count) in empty {
            let usual = self.usual(role);
            let board = board.filter(|_| role.kind == Kind::Processor);
            wishes.push(Wish {
                machine: file.machine.id,
                role: Some(role.id),
                required: role.required,
                count,
                kind: Some(role.kind),
                plugs_into: plugged.places(role, &usual.needs),
                must_offer: must_offer.remove(&role.id).unwrap_or_default(),
                core_v: board.and_then(|board| core_voltage(board)),
                bus_mhz: board.map_or_else(Vec::new, |board| bus_clocks(board)),
                window: making::window(&file.machine),
                waits: Vec::new(),
            });
        }
        wishes.extend(open.into_iter().map(|(need, count)| {
            Wish {
                machine: file.machine.id,
                role: None,
                required: true,
                count: 1,
                kind: None,
                plugs_into: Vec::new(),
                waits: pieces
                    .iter()
                    .filter(|piece| piece.model.needs.iter().any(|port| *port.id == *need))
                    .map(|piece| piece.part())
                    .collect(),
                must_offer: vec![(need, count)],
                core_v: None,
                bus_mhz: Vec::new(),
                window: None,
            }
        }));
        wishes
    }

    /// What designs of a role's kinds need and offer.
    fn usual(&mut self, role: &Role) -> Usual {
        let mut all = Usual::default();
        for kind in role.kinds() {
            let Usual { needs, offers } = self.of_kind(kind).clone();
            all.needs.extend(needs);
            all.offers.extend(offers);
        }
        all
    }

    fn of_kind(&mut self, kind: Kind) -> &Usual {
        let logbook = self.logbook;
        self.usual.entry(kind).or_insert_with(|| {
            let mut usual = Usual::default();
            let designs = logbook.designs.iter().filter(|file| file.design.kind == kind);
            for row in designs.flat_map(|file| &file.connectors) {
                let list = if row.side == Side::Offers { &mut usual.offers } else { &mut usual.needs };
                if !list.contains(&row.connector) {
                    list.insert(row.connector.clone());
                }
            }
            usual
        })
    }
}

/// Takes out of what is open that which something gives.
fn take(open: &mut BTreeMap<String, u32>, gives: impl Fn(&String) -> bool) -> Vec<(String, u32)> {
    let mut taken = Vec::new();
    open.retain(|need, count| {
        let is_given = gives(need);
        if is_given {
            taken.push((need.clone(), *count));
        }
        !is_given
    });
    taken
}

/// The parts of a machine plugged together.
struct Plugged<'a> {
    rules: &'a Rules,
    needs: Vec<Item>,
    need_ports: Vec<&'a Port>,
    offers: Vec<Item>,
    offer_ports: Vec<&'a Port>,
}

impl<'a> Plugged<'a> {
    fn of(pieces: &[&'a Piece], rules: &'a Rules) -> Self {
        let (mut needs, mut offers) = (Vec::new(), Vec::new());
        let (mut need_ports, mut offer_ports) = (Vec::new(), Vec::new());
        for (at, piece) in pieces.iter().enumerate() {
            let item = |port: &Port| Item { part: at as u16, connector: port.number, count: port.count };
            needs.extend(piece.model.needs.iter().map(item));
            need_ports.extend(&piece.model.needs);
            offers.extend(piece.model.offers.iter().map(item));
            offer_ports.extend(&piece.model.offers);
        }
        Self { rules, needs, need_ports, offers, offer_ports }
    }

    fn seated(&self, needs: &[Item]) -> Seating {
        let table = &self.rules.connectors;
        let takes = |offer: &Item, need: &Item| {
            offer.connector == need.connector || table.takes(offer.connector, need.connector)
        };
        seat(needs, &self.offers, takes)
    }

    /// Needs that nothing meets, and how many of each.
    fn open(&self) -> BTreeMap<String, u32> {
        let mut open = BTreeMap::new();
        for (port, unmet) in self.need_ports.iter().zip(self.seated(&self.needs).unmet) {
            if unmet > 0 {
                *open.entry(port.id.to_string()).or_default() += unmet;
            }
        }
        open
    }

    /// Whether one more need of a connector would be met, with all that is plugged in already.
    fn is_free(&self, connector: u16) -> bool {
        let mut needs = self.needs.clone();
        needs.push(Item { part: u16::MAX, connector, count: 1 });
        self.seated(&needs).unmet.last() == Some(&0)
    }

    /// The free connectors that a part for a role plugs into, family by family: of those that designs of its kinds are
    /// known to need, else of all that such a part may need.
    fn places(&self, role: &Role, usual: &BTreeSet<String>) -> Vec<String> {
        let table = &self.rules.connectors;
        let number = |id: &str| {
            let own = self.offer_ports.iter().find(|port| *port.id == *id).map(|port| port.number);
            table.place(id).or(own)
        };
        let known = usual.iter().filter(|id| number(id).is_some_and(|number| self.is_free(number)));
        let mut places: Vec<String> = known.cloned().collect();
        let family = |id: &str| table.get(id).map(|row| row.family);
        let told: Vec<Option<Family>> = places.iter().map(|id| family(id)).collect();
        for port in &self.offer_ports {
            let is_new = !told.contains(&port.family) && !places.iter().any(|known| **known == *port.id);
            if is_new && role.kinds().any(|kind| may_need(kind, &port.id, port.family)) && self.is_free(port.number) {
                places.push(port.id.to_string());
            }
        }
        places
    }
}

/// Whether a part of a kind may need a connector; common practice, no source. Ids of connectors never change.
fn may_need(kind: Kind, id: &str, family: Option<Family>) -> bool {
    match family {
        Some(Family::Processor) if id.contains("coprocessor") => kind == Kind::Coprocessor,
        Some(Family::Processor) if id.starts_with("voltage-module") => kind == Kind::VoltageModule,
        Some(Family::Processor) => kind == Kind::Processor,
        Some(Family::Expansion) => kind.is_card(),
        Some(Family::Memory) if id.starts_with("cache") => kind == Kind::CacheModule,
        Some(Family::Memory) if id.starts_with("firmware") => kind == Kind::FirmwareChip,
        Some(Family::Memory) if id.starts_with("clock") => kind == Kind::ClockModule,
        Some(Family::Memory) => kind == Kind::MemoryModule,
        Some(Family::Outline | Family::BoardPower) => kind == Kind::Mainboard,
        Some(Family::Mounting) if id.starts_with("supply") => kind == Kind::PowerSupply,
        Some(Family::Mounting) if id.starts_with("cooler") => kind == Kind::Cooler,
        Some(Family::Mounting) if id.starts_with("bay") => kind.is_drive(),
        Some(Family::DrivePower) if id.starts_with("fan") => matches!(kind, Kind::Fan | Kind::Cooler),
        Some(Family::Disk) => matches!(kind, Kind::HardDisk | Kind::OpticalDrive | Kind::FlashAdapter),
        Some(Family::Floppy) => kind == Kind::FloppyDrive,
        Some(Family::Video) => kind == Kind::Monitor,
        Some(Family::Input) if id.starts_with("keyboard") => kind == Kind::Keyboard,
        Some(Family::Input) => kind == Kind::PointingDevice,
        Some(Family::Mounting | Family::DrivePower | Family::Port) | None => false,
    }
}

/// The core voltages that a board gives.
fn core_voltage(board: &Piece) -> Option<(f64, f64)> {
    let range = board.figure(Figure::CoreVoltageLeastV).zip(board.figure(Figure::CoreVoltageMostV));
    let each = &board.model.volts.each;
    let least = each.iter().copied().reduce(f64::min);
    range.or_else(|| least.zip(each.iter().copied().reduce(f64::max)))
}

/// The bus clocks that a board can be set to.
fn bus_clocks(board: &Piece) -> Vec<f64> {
    let mut clocks = board.model.board.buses_mhz.clone();
    clocks.sort_by(f64::total_cmp);
    clocks.dedup();
    clocks
}
