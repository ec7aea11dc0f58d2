//! Invented machines: roles, and parts of their age planned for them and fitted in them.

use std::collections::{HashMap, VecDeque};

use super::super::authoring::{key, moment};
use super::Ground;
use super::chance::Chance;
use super::design::AGES;
use crate::record::{
    Change, Fitting, Hold, Kind, Machine, MachineId, Nature, PartId, Placement, PowerOn, PowerOnResult, Proof,
    ProofResult, Role, RoleId, Standing, When, Work, WorkState,
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

/// How far a machine has come: the gate that it is to stand at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Stage {
    RolesFilled,
    PartsFit,
    SafeToSwitchOn,
    WorkDone,
    Proven,
    PapersComplete,
}

const STAGES: [Stage; 6] =
    [Stage::PartsFit, Stage::Proven, Stage::RolesFilled, Stage::WorkDone, Stage::SafeToSwitchOn, Stage::PapersComplete];

impl Stage {
    fn of(machine: u32) -> Self {
        STAGES[machine as usize % STAGES.len()]
    }

    /// In which condition its part of a kind is.
    fn condition(self, kind: Kind) -> Condition {
        match self {
            Self::RolesFilled | Self::PartsFit => Condition::AsFound,
            Self::SafeToSwitchOn if kind == Kind::VideoCard => Condition::Unseen,
            _ => Condition::Well,
        }
    }
}

/// In which condition a part is to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Condition {
    /// As chance has it.
    AsFound,
    /// Never surveyed.
    Unseen,
    /// Surveyed and sound, and proven lately.
    Well,
}

/// A part that a machine is to be made of.
#[derive(Clone, Copy, Debug)]
pub struct Wanted {
    pub machine: u32,
    pub kind: Kind,
    /// Which of the [`AGES`] it is of.
    pub age: usize,
    pub condition: Condition,
}

/// Parts for machines, by the machine's number and the part's kind.
pub type Found = HashMap<(u32, Kind), Vec<PartId>>;

fn age(machine: u32) -> usize {
    machine as usize % AGES.len()
}

/// What the machines of a logbook of so many parts are made of.
pub fn wanted(parts: u32) -> VecDeque<Wanted> {
    let of_machine = |machine: u32| {
        let stage = Stage::of(machine);
        // Where roles are to stay empty, it has no processor yet.
        let roles = ROLES.into_iter().filter(move |(kind, ..)| stage != Stage::RolesFilled || *kind != Kind::Processor);
        roles.flat_map(move |(kind, count, _)| {
            let want = Wanted { machine, kind, age: age(machine), condition: stage.condition(kind) };
            std::iter::repeat_n(want, count as usize)
        })
    };
    (1..=count(parts)).flat_map(of_machine).collect()
}

/// One machine for 250 parts, and one at least.
pub fn count(parts: u32) -> u32 {
    parts.div_ceil(250)
}

/// Invents the machine of a number.
pub fn invent(number: u32, ground: &Ground, found: &mut Found, chance: &mut Chance, change: &mut Change) {
    let stage = Stage::of(number);
    let from = AGES[age(number)].first_year();
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
            or_kinds: Vec::new(),
        };
        let role_id = role.id;
        change.put(role);
        for part in found.remove(&(number, kind)).unwrap_or_default() {
            if kind == Kind::Mainboard && stage == Stage::WorkDone {
                change.put(work(part, on, chance));
            }
            let is_fitted = stage.condition(kind) != Condition::AsFound || chance.percent(75);
            place(id, role_id, part, is_fitted, on, chance, change);
        }
    }
    if stage == Stage::PapersComplete {
        for rule in ground.rules.machine_proofs() {
            change.put(Proof {
                id: key(&mut || chance.id()),
                part: None,
                machine: Some(id),
                test: rule.name.clone(),
                run: moment(When::Day(ground.today)),
                rig: rule.rig.clone(),
                minutes: Some(rule.minutes),
                criterion: rule.criterion.clone(),
                result: ProofResult::Passed,
                who: "A. Nobody".to_owned(),
                note: String::new(),
            });
        }
    }
    if chance.percent(30) {
        let result = *chance.of(&[PowerOnResult::Well, PowerOnResult::Faulty, PowerOnResult::Stopped]);
        let is_sound = matches!(stage, Stage::WorkDone | Stage::Proven | Stage::PapersComplete);
        change.put(PowerOn {
            id: key(&mut || chance.id()),
            machine: id,
            switched: moment(on),
            configuration: String::new(),
            settings: String::new(),
            steps: String::new(),
            result: if is_sound { PowerOnResult::Well } else { result },
            happened: String::new(),
            who: "A. Nobody".to_owned(),
        });
    }
}

/// Something that is to be done before the machine is ready, in words of its own.
fn work(part: PartId, on: When, chance: &mut Chance) -> Work {
    Work {
        id: key(&mut || chance.id()),
        part,
        finding: None,
        rule: String::new(),
        title: text!("Set the jumpers as the manual says").to_owned(),
        hold: Hold::Ready,
        nature: Nature::Care,
        state: WorkState::Open,
        changed: moment(on),
        who: String::new(),
        minutes: None,
        used: String::new(),
        reason: String::new(),
        reversible: Some(true),
        note: String::new(),
        touches: crate::record::Touches::Unstated,
    }
}

fn place(
    machine: MachineId,
    role: RoleId,
    part: PartId,
    is_fitted: bool,
    on: When,
    chance: &mut Chance,
    change: &mut Change,
) {
    if is_fitted {
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
