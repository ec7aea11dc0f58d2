//! A part that is offered: have I one, which machine lacks it, what would it improve, and by how much.
//!
//! Each machine is answered as if the part were in it: gates, fit, clocks and memory are those of [`Answers`] itself.

mod read;
mod said;

pub use read::usual_side;

use std::sync::Arc;

use super::fit::candidates::{free_adapters, wants_adapter};
use super::fit::{Because, Build, Models, Piece, RoleFill, Tally, Verdict};
use super::making::{self, TrueTo};
use super::readiness::Gate;
use super::{Answers, PartState};
use crate::record::{
    Design, DesignConnector, DesignFigure, DesignFile, DesignId, Figure, Fitting, Id, Kind, Logbook, MachineFile,
    MachineId, Moment, Originality, Part, PartFile, PartId, Role, RoleId, Side, When, Word,
};
use crate::rules::Rules;
use crate::text;

/// Off by no more than this share a figure is the same: prints round.
const SAME: f64 = 0.005;

/// What is told of the offered part.
#[derive(Clone, Debug, PartialEq)]
pub struct Offered {
    pub kind: Kind,
    pub connectors: Vec<Plug>,
    pub figures: Vec<(Figure, f64)>,
    pub made: When,
}

/// A connector of the offered part.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plug {
    pub side: Side,
    pub connector: String,
    /// How many; taken as one where it is not told.
    pub count: Option<u32>,
}

/// A part like it that is there already.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Have {
    pub part: PartId,
    pub state: PartState,
    /// Where it is fitted or planned.
    pub machine: Option<MachineId>,
}

/// What gets better with it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Gain {
    /// The machine stands at a later gate.
    Gate {
        from: Gate,
        to: Gate,
    },
    /// The core runs faster.
    Core {
        from_mhz: f64,
        to_mhz: f64,
    },
    Memory {
        from_mb: f64,
        to_mb: f64,
    },
    /// Nearer to the machine's window.
    Nearer {
        weeks: u64,
    },
    /// So many reasons fewer.
    Fewer {
        verdict: Verdict,
        count: usize,
    },
}

/// What it would be to a machine.
#[derive(Clone, Debug)]
pub struct Use {
    pub machine: MachineId,
    pub role: RoleId,
    /// The part that it would take the place of; `None` where the role has room.
    pub replaces: Option<PartId>,
    /// The adapter on the shelf that it needs to plug in.
    pub with: Option<PartId>,
    pub is_required: bool,
    /// The worst of the reasons that are about it.
    pub verdict: Verdict,
    /// Those that speak against it, worst first.
    pub because: Vec<Because>,
    pub gains: Vec<Gain>,
}

/// The answer.
#[derive(Clone, Debug)]
pub struct Offer {
    /// Best first.
    pub have: Vec<Have>,
    /// Roles with room for it, the most urgent first.
    pub lacking: Vec<Use>,
    /// Full roles in which it would be better than what is there.
    pub improves: Vec<Use>,
    /// The logbook as if it held the part, for the names in sentences.
    pub logbook: Arc<Logbook>,
}

/// What a machine is worth.
struct Worth {
    gate: Gate,
    core_mhz: Option<f64>,
    memory_mb: f64,
    tally: Tally,
}

struct Offering<'a> {
    logbook: Logbook,
    part: PartId,
    answers: &'a Answers,
    rules: &'a Rules,
    /// Adapters for processors that lie free, one of each design.
    adapters: Vec<PartId>,
}

impl Offered {
    /// Answers for a logbook.
    pub fn answer(&self, logbook: &Logbook, answers: &Answers, rules: &Rules) -> Offer {
        // Worked out with the part on the shelf once, so that each try changes one machine only.
        let laid = self.laid_in(logbook);
        let with_it = answers.next(&laid, rules, answers.today);
        let adapters = free_adapters(&with_it, &mut Models::new(rules)).iter().map(Piece::part).collect();
        let offering = Offering { logbook: laid, part: part_id(), answers: &with_it, rules, adapters };
        let (mut lacking, mut improves) = (Vec::new(), Vec::new());
        for machine in &answers.machines {
            for (role, fill) in machine.file.roles.iter().zip(&machine.readiness.roles) {
                if !role.takes(self.kind) {
                    continue;
                }
                // What plugs into nothing there leaves its role lacking.
                let there: Vec<PartId> = fill.parts().filter(|part| !fill.unplugged.contains(part)).collect();
                if there.len() < role.count.max(1) as usize {
                    lacking.extend(offering.tried(&machine.file, role, fill, None));
                    continue;
                }
                let tried = there.iter().filter_map(|out| offering.tried(&machine.file, role, fill, Some(*out)));
                let better = tried.filter(|one| !one.gains.is_empty());
                improves.extend(better.max_by_key(|one| (std::cmp::Reverse(one.verdict), one.gains.len())));
            }
        }
        lacking.sort_by_key(|one| (!one.is_required, one.verdict));
        improves.sort_by_key(|one| (one.verdict, std::cmp::Reverse(one.gains.len())));
        Offer { have: self.have(answers), lacking, improves, logbook: Arc::new(offering.logbook) }
    }

    /// Parts of the kind that have its connectors and figures, as far as they are told.
    fn have(&self, answers: &Answers) -> Vec<Have> {
        let is_like = |design: Option<&Arc<DesignFile>>| {
            let connectors = self.connectors.iter().all(|plug| {
                let is_same = |row: &DesignConnector| {
                    (row.side, &row.connector) == (plug.side, &plug.connector)
                        && plug.count.is_none_or(|count| count == row.count)
                };
                design.is_some_and(|file| file.connectors.iter().any(is_same))
            });
            let figures = self.figures.iter().all(|(figure, value)| {
                let is_same = |row: &DesignFigure| (row.value - value).abs() <= SAME * value.abs();
                design.is_some_and(|file| file.figures.iter().any(|row| row.figure == figure.name() && is_same(row)))
            });
            connectors && figures
        };
        let uses = super::fit::uses(answers.machines.iter().map(|machine| &*machine.file));
        let alike = answers.parts.iter().filter(|part| part.file.part.kind == self.kind);
        let alike = alike.filter(|part| part.state != PartState::Gone && is_like(part.design.as_ref()));
        let mut have: Vec<Have> = alike
            .map(|part| Have {
                part: part.part,
                state: part.state,
                machine: uses.get(&part.part).and_then(|uses| uses.first()).map(|(machine, _)| *machine),
            })
            .collect();
        // A free one first.
        have.sort_by_key(|one| (one.machine.is_some(), one.part));
        have
    }

    /// The logbook with the part in it.
    fn laid_in(&self, logbook: &Logbook) -> Logbook {
        let design: DesignId = Id::from_uuid(uuid::Uuid::max());
        let mut file = DesignFile::new(Design {
            id: design,
            kind: self.kind,
            maker: String::new(),
            model: String::new(),
            revision: String::new(),
            introduced: self.made,
            discontinued: self.made,
            note: String::new(),
        });
        let connector = |plug: &Plug| DesignConnector {
            id: Id::from_uuid(uuid::Uuid::max()),
            design,
            side: plug.side,
            connector: plug.connector.clone(),
            count: plug.count.unwrap_or(1),
            note: String::new(),
        };
        file.connectors = self.connectors.iter().map(connector).collect();
        let figure = |(figure, value): &(Figure, f64)| DesignFigure {
            id: Id::from_uuid(uuid::Uuid::max()),
            design,
            figure: figure.name().to_owned(),
            value: *value,
            source: String::new(),
            at_bus_mhz: None,
        };
        file.figures = self.figures.iter().map(figure).collect();
        let part = PartFile::new(Part {
            id: part_id(),
            tag: text!("offered").to_owned(),
            kind: self.kind,
            design: Some(design),
            name: String::new(),
            serial: String::new(),
            originality: Originality::Unstated,
            lot: None,
            price_cents: None,
            acquired: When::Unknown,
            place: None,
            inside: None,
            quarantine: String::new(),
            quarantined: When::Unknown,
            note: String::new(),
        });
        let mut with = logbook.clone();
        // The greatest key of all: both lists stay in the order of their keys.
        with.designs.push(Arc::new(file));
        with.parts.push(Arc::new(part));
        with
    }
}

fn part_id() -> PartId {
    Id::from_uuid(uuid::Uuid::max())
}

/// A machine with the part in it.
struct Tried {
    found: Use,
    before: Tally,
    after: Tally,
}

impl Tried {
    /// What it would be; `None` where it would take the place of another and fit worse.
    fn into_use(self, out: Option<PartId>) -> Option<Use> {
        (out.is_none() || self.after.no <= self.before.no).then_some(self.found)
    }
}

impl Offering<'_> {
    /// The machine with the part in a role, in the place of another or where there is room, with an adapter where it
    /// needs one; `None` where it would be worse in what does not fit.
    fn tried(&self, file: &Arc<MachineFile>, role: &Role, fill: &RoleFill, out: Option<PartId>) -> Option<Use> {
        let alone = self.fitted(file, role, fill, out, None)?;
        if !alone.found.because.iter().any(|one| wants_adapter(one, self.part)) {
            return alone.into_use(out);
        }
        let with = self.adapters.iter().filter_map(|adapter| self.fitted(file, role, fill, out, Some(*adapter)));
        let best = with.min_by_key(|tried| tried.after).filter(|best| best.after < alone.after);
        best.unwrap_or(alone).into_use(out)
    }

    /// The same with one adapter, or none.
    fn fitted(
        &self,
        file: &Arc<MachineFile>,
        role: &Role,
        fill: &RoleFill,
        out: Option<PartId>,
        with: Option<PartId>,
    ) -> Option<Tried> {
        let Self { logbook, part, answers, rules, .. } = self;
        let today = Moment::on(answers.today);
        let mut tried = MachineFile::clone(file);
        if let Some(out) = out {
            tried.placements.retain(|plan| plan.part != out);
            for fitting in tried.fittings.iter_mut().filter(|fitting| fitting.part == out) {
                fitting.removed = fitting.removed.or(Some(today));
            }
        }
        let fitting = |role: Option<RoleId>, part: PartId| Fitting {
            id: Id::from_uuid(uuid::Uuid::max()),
            machine: file.machine.id,
            role,
            part,
            fitted: today,
            removed: None,
            note: String::new(),
        };
        tried.fittings.push(fitting(Some(role.id), *part));
        tried.fittings.extend(with.map(|adapter| fitting(None, adapter)));
        let mut changed = logbook.clone();
        let place = changed.machines.iter().position(|known| known.machine.id == file.machine.id)?;
        changed.machines[place] = Arc::new(tried);
        let next = answers.next(&changed, rules, answers.today);
        let (before, _) = worth(answers, file.machine.id, rules)?;
        let (after, build) = worth(&next, file.machine.id, rules)?;
        let is_about = |one: &&Because| one.names(*part) || with.is_some_and(|adapter| one.names(adapter));
        let mut about: Vec<Because> = build.because().filter(is_about).cloned().collect();
        about.sort_by_key(|one| std::cmp::Reverse(one.verdict()));
        about.retain(|one| one.verdict() != Verdict::Fits);
        let mut gains = gains(&before, &after);
        gains.extend(out.and_then(|out| self.nearer(file, out)));
        let found = Use {
            machine: file.machine.id,
            role: role.id,
            replaces: out,
            with,
            is_required: role.required && fill.missing > 0,
            verdict: about.first().map_or(Verdict::Fits, Because::verdict),
            because: about,
            gains,
        };
        Some(Tried { found, before: before.tally, after: after.tally })
    }

    /// Whole weeks by which it is nearer to the machine's window than another.
    fn nearer(&self, file: &MachineFile, out: PartId) -> Option<Gain> {
        let window = making::window(&file.machine)?;
        let own = self.logbook.parts.last()?;
        let design = self.logbook.designs.last().map(|file| &file.design);
        let weeks = |true_to: TrueTo| match true_to {
            TrueTo::Comfortable => Some(0),
            TrueTo::ByDesign { weeks } => Some(weeks.unwrap_or(0).unsigned_abs()),
            TrueTo::Apart { weeks } => Some(weeks.unsigned_abs()),
            TrueTo::NotKnown | TrueTo::Conflict => None,
        };
        let here = weeks(making::Making::of(own, design).true_to(window))?;
        let there = weeks(self.answers.part(out)?.making.true_to(window))?;
        (here < there).then(|| Gain::Nearer { weeks: there - here })
    }
}

fn worth<'r>(answers: &Answers, machine: MachineId, rules: &'r Rules) -> Option<(Worth, Build<'r>)> {
    let mut build = answers.build(machine, &mut Models::new(rules), None)?;
    // Jumpers are set anew for another part.
    build.set_free();
    let worth = Worth {
        gate: answers.machine(machine)?.readiness.at,
        core_mhz: build.setting().map(|row| row.clocks.core_mhz),
        memory_mb: build.memory_mb(),
        tally: build.tally(),
    };
    Some((worth, build))
}

fn gains(before: &Worth, after: &Worth) -> Vec<Gain> {
    let mut gains = Vec::new();
    if after.gate > before.gate {
        gains.push(Gain::Gate { from: before.gate, to: after.gate });
    }
    if let Some((from_mhz, to_mhz)) = before.core_mhz.zip(after.core_mhz)
        && to_mhz > from_mhz * (1.0 + SAME)
    {
        gains.push(Gain::Core { from_mhz, to_mhz });
    }
    if after.memory_mb > before.memory_mb {
        gains.push(Gain::Memory { from_mb: before.memory_mb, to_mb: after.memory_mb });
    }
    let fewer =
        [(Verdict::No, before.tally.no, after.tally.no), (Verdict::Caveat, before.tally.caveats, after.tally.caveats)];
    // What is only not known any more is nothing gained.
    let is_known = after.tally.not_known <= before.tally.not_known;
    for (verdict, before, after) in fewer.into_iter().filter(|_| is_known) {
        if after < before {
            gains.push(Gain::Fewer { verdict, count: before - after });
        }
    }
    gains
}
