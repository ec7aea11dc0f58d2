//! Candidates for a role: every part that could fill it, ranked, with what another machine would lose.
//!
//! Ranked by fit, then whether work must be done before it is fitted, weeks from the window, condition, hours of work left, proven or not, originality, and whether
//! another machine would miss it. A reason is a candidate's own where it names it, or is not there while its place is
//! empty; what else is wrong with the machine counts against nobody. The board is taken as it could be set. A processor
//! that only fits through an adapter which lies free is told with it.

use std::collections::HashMap;
use std::sync::Arc;

use super::because::{Because, Verdict};
use super::build::{Build, Tally};
use super::model::{Models, Piece};
use super::roles::{competing, uses};
use crate::assess::making::{self, TrueTo};
use crate::assess::{Answers, PartAnswers, PartState};
use crate::record::{DesignId, Hold, Kind, MachineFile, MachineId, Originality, PartId, Role, RoleId};
use crate::rules::Rules;
use crate::rules::connectors::Family;
use crate::trade::Span;
use crate::trade::drive::FileSystem;

/// What another machine would lose.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Loss {
    pub machine: MachineId,
    pub role: Option<RoleId>,
    /// Fitted there, not only planned.
    pub is_fitted: bool,
    /// A role that must be filled would have too few.
    pub empties: bool,
    /// Parts in no machine that plug in as it does.
    pub stand_ins: usize,
}

/// A part for the role.
#[derive(Clone, Debug)]
pub struct Candidate {
    pub part: PartId,
    /// The worst of its own reasons.
    pub verdict: Verdict,
    pub tally: Tally,
    /// `None` where the machine has no window.
    pub true_to: Option<TrueTo>,
    pub state: PartState,
    /// Hands-on minutes of outstanding work that is not for looks only.
    pub minutes: u32,
    /// Every proof that its kind requires holds.
    pub is_proven: bool,
    pub originality: Originality,
    /// Fitted in or planned for this very role.
    pub is_here: bool,
    pub losses: Vec<Loss>,
    /// The adapter on the shelf that it needs to fit.
    pub with: Option<PartId>,
    /// Work on it must be done before it is fitted.
    pub holds_fitting: bool,
    piece: Piece,
    /// What is inside it and comes along.
    carries: Vec<Piece>,
}

impl Candidate {
    /// Whole weeks from the window, either way; `None` while not known.
    pub fn weeks(&self) -> Option<i64> {
        match self.true_to? {
            TrueTo::Comfortable => Some(0),
            TrueTo::ByDesign { weeks } => weeks,
            TrueTo::Apart { weeks } => Some(weeks),
            TrueTo::NotKnown | TrueTo::Conflict => None,
        }
    }

    fn rank(&self) -> impl Ord + use<> {
        let weeks = self.weeks().map_or(u64::MAX, i64::unsigned_abs);
        let fit = (self.verdict, self.tally);
        let kept = (!self.is_proven, originality(self.originality));
        let missed = self.losses.iter().filter(|loss| loss.empties).count();
        (fit, self.holds_fitting, weeks, condition(self.state), self.minutes, kept, missed, self.part)
    }
}

/// Lower is better; what is not here, or kept apart, comes last.
fn condition(state: PartState) -> u8 {
    match state {
        PartState::Proven | PartState::Sound => 0,
        PartState::ToBeProven => 1,
        PartState::HeldReady | PartState::Undecided => 2,
        PartState::HeldFitting => 3,
        PartState::Unsurveyed | PartState::Unidentified => 4,
        PartState::HeldPower => 5,
        PartState::HeldStorage => 6,
        PartState::KeptApart | PartState::LentOut | PartState::Gone => 7,
    }
}

fn originality(originality: Originality) -> u8 {
    match originality {
        Originality::Original => 0,
        Originality::Unstated | Originality::PeriodReplacement => 1,
        Originality::Altered => 2,
        Originality::ModernReplacement => 3,
    }
}

/// The candidates for one role of a machine, best first.
#[derive(Debug)]
pub struct Candidates<'r> {
    pub ranked: Vec<Candidate>,
    trial: Trial<'r>,
    /// Adapters for processors that lie free, one of each design.
    adapters: Vec<Piece>,
}

impl<'r> Candidates<'r> {
    /// All parts of the role's kinds that are not gone; `None` where there is no such machine or role.
    pub fn of(
        answers: &Answers,
        rules: &'r Rules,
        machine: MachineId,
        role: RoleId,
        file_system: Option<FileSystem>,
    ) -> Option<Self> {
        let file = &answers.machine(machine)?.file;
        let role = file.roles.iter().find(|known| known.id == role)?;
        let mut models = Models::new(rules);
        let mut build = answers.build(machine, &mut models, file_system)?;
        build.set_free();
        let mut trial = Trial::of(answers, file, role, build);
        let window = making::window(&file.machine);
        let parts = answers.parts.iter().filter(|part| role.takes(part.file.part.kind));
        let parts = parts.filter(|part| part.state != PartState::Gone);
        let is_chip = role.kinds().any(|kind| matches!(kind, Kind::Processor | Kind::Coprocessor));
        let adapters = if is_chip { free_adapters(answers, &mut models) } else { Vec::new() };
        let inside = Inside::of(answers);
        let mut by_design: HashMap<Option<DesignId>, (Tally, Option<PartId>)> = HashMap::new();
        let mut ranked: Vec<Candidate> = parts
            .map(|part| {
                let piece = models.piece(part, false);
                let carries: Vec<Piece> = inside.of_part(part.part).map(|part| models.piece(part, false)).collect();
                let (tally, with) = if trial.is_in(part.part) {
                    (of_design(&trial.own(&piece)), None)
                } else if carries.is_empty() {
                    let design = piece.model.design;
                    *by_design.entry(design).or_insert_with(|| trial.tried(&piece, &[], &adapters))
                } else {
                    trial.tried(&piece, &carries, &adapters)
                };
                Candidate { with, carries, ..candidate(piece, tally, window) }
            })
            .collect();
        let here: Vec<PartId> = answers
            .machine(machine)
            .and_then(|known| known.readiness.roles.iter().find(|fill| fill.role == role.id))
            .map_or_else(Vec::new, |fill| fill.fitted.iter().chain(&fill.planned).copied().collect());
        for candidate in &mut ranked {
            candidate.is_here = here.contains(&candidate.part);
        }
        add_losses(&mut ranked, answers, machine);
        ranked.sort_by_cached_key(Candidate::rank);
        Some(Self { ranked, trial, adapters })
    }

    /// A candidate's own reasons, worst first; of what is well, what is told of it or of the clocks and memory it
    /// leads to.
    pub fn because(&mut self, candidate: &Candidate) -> Vec<Because> {
        let with = self.adapters.iter().find(|adapter| Some(adapter.part()) == candidate.with);
        let beside: Vec<&Piece> = candidate.carries.iter().chain(with).collect();
        let mut own = self.trial.own_beside(&candidate.piece, &beside);
        own.retain(|one| {
            let follows = matches!(one, Because::Runs { .. } | Because::MemoryTaken { .. });
            one.verdict() != Verdict::Fits || follows || one.names(candidate.part)
        });
        own.sort_by_key(|one| std::cmp::Reverse(one.verdict()));
        own
    }
}

fn of_design(own: &[Because]) -> Tally {
    Tally::of(own.iter().filter(|one| is_of_design(one)))
}

/// What is inside each part: the card in a flash adapter, the chips on a board.
struct Inside<'a>(HashMap<PartId, Vec<&'a Arc<PartAnswers>>>);

impl<'a> Inside<'a> {
    fn of(answers: &'a Answers) -> Self {
        let mut inside: HashMap<PartId, Vec<&Arc<PartAnswers>>> = HashMap::new();
        for part in answers.parts.iter().filter(|part| part.state != PartState::Gone) {
            if let Some(host) = part.file.part.inside {
                inside.entry(host).or_default().push(part);
            }
        }
        Self(inside)
    }

    fn of_part(&self, part: PartId) -> impl Iterator<Item = &'a Arc<PartAnswers>> {
        self.0.get(&part).map_or(&[][..], Vec::as_slice).iter().copied()
    }
}

/// Adapters for processors that are at hand and in no machine, one of each design.
pub(in crate::assess) fn free_adapters(answers: &Answers, models: &mut Models) -> Vec<Piece> {
    let mut adapters: Vec<Piece> = Vec::new();
    let uses = uses(answers.machines.iter().map(|machine| &*machine.file));
    let is_free = |part: &&Arc<PartAnswers>| {
        let file = &part.file;
        file.part.kind == Kind::ProcessorAdapter
            && file.custody_now().is_at_hand()
            && !file.part.is_quarantined()
            && file.part.inside.is_none()
            && !uses.contains_key(&part.part)
    };
    for part in answers.parts.iter().filter(is_free) {
        let piece = models.piece(part, false);
        if adapters.iter().all(|known| known.model.design != piece.model.design) {
            adapters.push(piece);
        }
    }
    adapters
}

/// What is alike for all parts of a design.
fn is_of_design(because: &Because) -> bool {
    !matches!(because, Because::Dates { .. } | Because::ByEye { .. } | Because::InWindow { .. })
}

fn candidate(piece: Piece, of_design: Tally, window: Option<Span>) -> Candidate {
    let part = &piece.answers;
    let true_to = window.map(|window| part.making.true_to(window));
    let originality = part.file.part.originality;
    let own = true_to.map(|true_to| {
        let is_modern = originality == Originality::ModernReplacement;
        Because::Dates { part: part.part, true_to, is_modern }
    });
    let of_part = Tally::of(&own);
    let tally = Tally {
        no: of_design.no + of_part.no,
        not_known: of_design.not_known + of_part.not_known,
        caveats: of_design.caveats + of_part.caveats + piece.by_eye.len(),
    };
    let work = part.tasks.iter().filter(|task| task.hold != Hold::Looks);
    Candidate {
        part: part.part,
        verdict: tally.verdict(),
        tally,
        true_to,
        state: part.state,
        minutes: work.map(crate::assess::Task::minutes).sum(),
        is_proven: part.proofs.iter().any(|proof| proof.rule.required)
            && !part.proofs.iter().any(crate::assess::ProofStanding::is_lacking),
        originality,
        is_here: false,
        losses: Vec::new(),
        with: None,
        holds_fitting: part.tasks.iter().any(|task| task.hold <= Hold::Fitting),
        piece,
        carries: Vec::new(),
    }
}

fn add_losses(ranked: &mut [Candidate], answers: &Answers, here: MachineId) {
    let uses = uses(answers.machines.iter().map(|machine| &*machine.file));
    let free: Vec<Piece> =
        ranked.iter().filter(|one| !uses.contains_key(&one.part)).map(|one| one.piece.clone()).collect();
    for candidate in ranked {
        let elsewhere = uses.get(&candidate.part).map_or(&[][..], Vec::as_slice);
        for (machine, is_fitted) in elsewhere.iter().filter(|(machine, _)| *machine != here) {
            let Some(known) = answers.machine(*machine) else { continue };
            let in_role = |role: &&crate::assess::fit::RoleFill| {
                role.fitted.contains(&candidate.part) || role.planned.contains(&candidate.part)
            };
            let fill = known.readiness.roles.iter().find(in_role);
            let role = fill.and_then(|fill| known.file.roles.iter().find(|role| role.id == fill.role));
            let empties = role.zip(fill).is_some_and(|(role, fill)| {
                role.required && fill.fitted.len() + fill.planned.len() <= role.count.max(1) as usize
            });
            candidate.losses.push(Loss {
                machine: *machine,
                role: role.map(|role| role.id),
                is_fitted: *is_fitted,
                empties,
                stand_ins: free.iter().filter(|other| other.model.plugs_alike(&candidate.piece.model)).count(),
            });
        }
    }
}

/// A machine with a place in which candidates are tried.
#[derive(Debug)]
struct Trial<'r> {
    build: Build<'r>,
    /// Where they are tried: the last of the role's parts, or a place that is added.
    place: Option<usize>,
    /// The reasons without any part in that place.
    without: Vec<Because>,
    /// Parts of the role, each with the reasons without it.
    inside: Vec<(PartId, Vec<Because>)>,
    as_is: Vec<Because>,
}

impl<'r> Trial<'r> {
    fn of(answers: &Answers, file: &MachineFile, role: &Role, build: Build<'r>) -> Self {
        let fills = answers.machine(file.machine.id).map_or(&[][..], |known| &known.readiness.roles);
        let behind = competing(file, fills);
        let fill = fills.iter().find(|fill| fill.role == role.id);
        let chosen = fill.into_iter().flat_map(|fill| fill.fitted.iter().chain(&fill.planned));
        let chosen: Vec<PartId> = chosen.copied().filter(|part| !behind.contains(part)).collect();
        let without = |part: PartId| {
            let mut build = build.clone();
            if let Some(place) = build.place(part) {
                build.take(place);
            }
            build.because().cloned().collect::<Vec<_>>()
        };
        let is_full = chosen.len() >= role.count.max(1) as usize;
        let replaced = chosen.last().filter(|_| is_full);
        let as_is: Vec<Because> = build.because().cloned().collect();
        Self {
            place: replaced.and_then(|part| build.place(*part)),
            without: replaced.map_or_else(|| as_is.clone(), |part| without(*part)),
            inside: chosen.iter().map(|part| (*part, without(*part))).collect(),
            as_is,
            build,
        }
    }

    fn is_in(&self, part: PartId) -> bool {
        self.inside.iter().any(|(known, _)| *known == part)
    }

    /// Puts a candidate in the place.
    fn put(&mut self, piece: &Piece) {
        if let Some(place) = self.place {
            self.build.swap(place, piece.clone());
        } else {
            self.place = Some(self.build.pieces().len());
            self.build.add(piece.clone());
        }
    }

    /// The reasons that are a candidate's own.
    fn own(&mut self, piece: &Piece) -> Vec<Because> {
        let part = piece.part();
        if let Some((_, without)) = self.inside.iter().find(|(known, _)| *known == part) {
            return self.as_is.iter().filter(|one| is_own(one, part, without)).cloned().collect();
        }
        self.put(piece);
        self.build.because().filter(|one| is_own(one, part, &self.without)).cloned().collect()
    }

    /// The same, with others beside it: what is inside it, an adapter.
    fn own_beside(&mut self, piece: &Piece, beside: &[&Piece]) -> Vec<Because> {
        if beside.is_empty() || self.is_in(piece.part()) {
            return self.own(piece);
        }
        self.put(piece);
        let mut all = self.build.clone();
        for other in beside {
            all.add(Piece::clone(other));
        }
        let own = |one: &&Because| {
            is_own(one, piece.part(), &self.without)
                || beside.iter().any(|other| is_own(one, other.part(), &self.without))
        };
        all.because().filter(own).cloned().collect()
    }

    /// What speaks against a candidate by its design, alone or with the adapter that makes it fit.
    fn tried(&mut self, piece: &Piece, carries: &[Piece], adapters: &[Piece]) -> (Tally, Option<PartId>) {
        let own = self.own_beside(piece, &carries.iter().collect::<Vec<_>>());
        let mut best = (of_design(&own), None);
        let wants_adapter = own.iter().any(|one| wants_adapter(one, piece.part()));
        for adapter in adapters.iter().filter(|_| wants_adapter) {
            let beside: Vec<&Piece> = carries.iter().chain([adapter]).collect();
            let with = of_design(&self.own_beside(piece, &beside));
            if with < best.0 {
                best = (with, Some(adapter.part()));
            }
        }
        best
    }
}

/// Whether a reason says that no socket takes a processor: an adapter may.
pub(in crate::assess) fn wants_adapter(because: &Because, processor: PartId) -> bool {
    match because {
        Because::NeedUnmet { part, family, .. } => *part == processor && *family == Some(Family::Processor),
        _ => false,
    }
}

/// Whether a reason is about a part, or is not there, nor its like, without it.
fn is_own(because: &Because, part: PartId, without: &[Because]) -> bool {
    because.part() == Some(part) || !without.iter().any(|known| is_like(because, known))
}

/// Whether a reason says of the machine what another says already: of the same connector, rail or sum, by whomever it
/// is held and however far it goes.
fn is_like(because: &Because, known: &Because) -> bool {
    match (because, known) {
        (
            Because::NeedUnmet { part, connector, missing, is_certain, .. },
            Because::NeedUnmet { part: of, connector: same, missing: before, is_certain: was_certain, .. },
        ) => part == of && connector == same && missing <= before && is_certain <= was_certain,
        (Because::Load { fault, .. }, Because::Load { fault: before, .. }) => fault.is_like(before),
        (Because::TooMuchMemory { .. }, Because::TooMuchMemory { .. })
        | (Because::NotAllCached { .. }, Because::NotAllCached { .. }) => true,
        (Because::BankMixed { connector, .. }, Because::BankMixed { connector: same, .. }) => connector == same,
        (Because::BankShort { connector, short, .. }, Because::BankShort { connector: same, short: before, .. }) => {
            connector == same && short <= before
        }
        (one, known) => one == known,
    }
}
