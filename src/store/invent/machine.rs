//! Invented machines: roles, and parts of their age planned for them and fitted in them.

use std::collections::HashMap;

use super::super::authoring::{key, moment};
use super::Ground;
use super::chance::Chance;
use super::design::AGES;
use crate::record::{
    Change, DesignId, Fitting, Kind, Machine, MachineId, Part, PartId, Placement, PowerOn, PowerOnResult, Role,
    Standing, When,
};
use crate::text;

/// The roles of every machine: kind, how many, whether it may stay empty.
const ROLES: [(Kind, u32, bool); 13] = [
    (Kind::Mainboard, 1, false),
    (Kind::Processor, 1, false),
    (Kind::MemoryModule, 2, false),
    (Kind::VideoCard, 1, false),
    (Kind::MultiIoCard, 1, false),
    (Kind::HardDisk, 1, false),
    (Kind::FloppyDrive, 1, false),
    (Kind::PowerSupply, 1, false),
    (Kind::Case, 1, false),
    (Kind::SoundCard, 1, true),
    (Kind::NetworkCard, 1, true),
    (Kind::OpticalDrive, 1, true),
    (Kind::Keyboard, 1, true),
];

/// Parts that no machine has yet, by age and kind.
#[derive(Default)]
pub struct Shelf {
    free: HashMap<(usize, Kind), Vec<PartId>>,
    ages: HashMap<DesignId, usize>,
}

impl Shelf {
    /// Puts a part on the shelf, if it can go into a machine.
    pub fn take(&mut self, part: &Part, ground: &Ground) {
        if self.ages.is_empty() {
            self.ages = ground.designs.iter().map(|design| (design.id, design.age)).collect();
        }
        let age = part.design.and_then(|design| self.ages.get(&design));
        if let Some(age) = age.filter(|_| part.inside.is_none() && !part.is_quarantined()) {
            self.free.entry((*age, part.kind)).or_default().push(part.id);
        }
    }

    fn give(&mut self, age: usize, kind: Kind) -> Option<PartId> {
        self.free.get_mut(&(age, kind))?.pop()
    }
}

/// One machine for 250 parts, and one at least.
pub fn count(parts: u32) -> u32 {
    parts.div_ceil(250)
}

/// Invents the machine of a number.
pub fn invent(number: u32, ground: &Ground, shelf: &mut Shelf, chance: &mut Chance, change: &mut Change) {
    let age = number as usize % AGES.len();
    let from = AGES[age].first_year();
    let on = chance.day_before(ground.today, 5, 300);
    let machine = Machine {
        id: key(&mut || chance.id()),
        name: text!("Machine {number}", number = number),
        purpose: text!("Invented, of the years from {year}", year = from),
        window_from: When::Year(from as i32),
        window_to: When::Year(from as i32 + 4),
        standing: *chance.of(&[Standing::Modest, Standing::Typical, Standing::Best]),
        priority: number,
        note: String::new(),
    };
    let id = machine.id;
    change.put(machine);
    for (kind, count, may_stay_empty) in ROLES {
        let role = Role {
            id: key(&mut || chance.id()),
            machine: id,
            kind,
            name: String::new(),
            required: !may_stay_empty,
            count,
            note: String::new(),
        };
        let role_id = role.id;
        change.put(role);
        for _ in 0..count {
            if chance.percent(8) {
                continue;
            }
            if let Some(part) = shelf.give(age, kind) {
                place(id, role_id, part, on, chance, change);
            }
        }
    }
    if chance.percent(30) {
        change.put(PowerOn {
            id: key(&mut || chance.id()),
            machine: id,
            switched: moment(on),
            configuration: String::new(),
            settings: String::new(),
            steps: String::new(),
            result: *chance.of(&[PowerOnResult::Well, PowerOnResult::Faulty, PowerOnResult::Stopped]),
            happened: String::new(),
            who: "A. Nobody".to_owned(),
        });
    }
}

fn place(
    machine: MachineId,
    role: crate::record::RoleId,
    part: PartId,
    on: When,
    chance: &mut Chance,
    change: &mut Change,
) {
    if chance.percent(75) {
        let (fitted, note) = (moment(on), String::new());
        change.put(Fitting {
            id: key(&mut || chance.id()),
            machine,
            role: Some(role),
            part,
            fitted,
            removed: None,
            note,
        });
    } else {
        let (planned, reason) = (moment(on), String::new());
        change.put(Placement {
            id: key(&mut || chance.id()),
            machine,
            role,
            part,
            pinned: chance.percent(20),
            planned,
            reason,
        });
    }
}
