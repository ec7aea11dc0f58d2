//! All answers for one revision of the logbook, and the next revision's from what changed.

use std::collections::HashSet;
use std::sync::Arc;

use chrono::NaiveDate;

use super::fit::{self, Build, Models, Placed, Uses};
use super::making::Making;
use super::outstanding::{self, Task, TaskPlace, Totals};
use super::part_state::PartState;
use super::power::{self, Power};
use super::proofs::{self, ProofStanding};
use super::readiness::{self, Readiness};
use super::reason::Reason;
use crate::record::{DesignFile, FindingId, Hold, Logbook, MachineFile, MachineId, PartFile, PartId};
use crate::rules::Rules;
use crate::trade::drive::FileSystem;

/// Logbooks below this many parts are answered by one thread.
const PARTS_FOR_TWO_THREADS: usize = 512;

/// What follows for one part, taken for itself.
#[derive(Clone, Debug)]
pub struct PartAnswers {
    pub part: PartId,
    /// What the answers were worked out from.
    pub file: Arc<PartFile>,
    pub design: Option<Arc<DesignFile>>,
    /// Outstanding work in working order.
    pub tasks: Vec<Task>,
    pub totals: Totals,
    /// The strictest hold of its outstanding work.
    pub hold: Option<Hold>,
    /// Open findings that neither a rule nor anybody has decided work for.
    pub undecided: Vec<FindingId>,
    pub proofs: Vec<ProofStanding>,
    pub making: Making,
    /// Whether current can reach it.
    pub takes_current: bool,
    /// What speaks against power on this part alone; see [`Answers::power_of_part`] for the whole answer.
    pub power: Vec<Reason>,
    pub state: PartState,
}

impl PartAnswers {
    pub fn of(file: &Arc<PartFile>, design: Option<&Arc<DesignFile>>, rules: &Rules, today: NaiveDate) -> Self {
        let tasks = outstanding::of_part(file, rules);
        let hold = tasks.iter().map(|task| task.hold).min();
        let undecided = outstanding::undecided(file, rules);
        let proofs = proofs::of_part(file, rules, today);
        let takes_current = rules.kind(file.part.kind).is_none_or(|rule| rule.electrical);
        Self {
            part: file.part.id,
            making: Making::of(file, design.map(|file| &file.design)),
            totals: Totals::of(&tasks),
            power: power::own_reasons(file, design.map(|file| &**file), &tasks, &proofs, takes_current, rules, today),
            state: PartState::of(file, hold, !undecided.is_empty(), &proofs),
            file: Arc::clone(file),
            design: design.cloned(),
            tasks,
            hold,
            undecided,
            proofs,
            takes_current,
        }
    }

    /// Says of each task what it still waits for on other parts.
    pub(super) fn wait_for(&mut self, elsewhere: Vec<Vec<TaskPlace>>) {
        let at_hand = self.file.custody_now().is_at_hand();
        for (task, elsewhere) in self.tasks.iter_mut().zip(elsewhere) {
            task.settle(elsewhere, at_hand);
        }
        self.totals = Totals::of(&self.tasks);
    }

    fn waits_elsewhere(&self) -> bool {
        self.tasks.iter().any(|task| !task.after_elsewhere.is_empty())
    }
}

/// What follows for one machine.
#[derive(Clone, Debug)]
pub struct MachineAnswers {
    pub machine: MachineId,
    pub file: Arc<MachineFile>,
    /// Its parts, fitted ones first, each followed by all that is inside it.
    pub members: Vec<PartId>,
    pub readiness: Readiness,
}

/// All answers of one revision.
#[derive(Clone, Debug)]
pub struct Answers {
    pub revision: u64,
    pub rules_version: u64,
    pub today: NaiveDate,
    /// In the order of the logbook's parts: by key.
    pub parts: Vec<Arc<PartAnswers>>,
    /// In the order of the logbook's machines: by key.
    pub machines: Vec<Arc<MachineAnswers>>,
    /// Where each part answer's file lies in memory, to see without touching it whether it is still the same. The
    /// answers keep the files alive, so a place is never taken by another.
    stamps: Vec<usize>,
    designs: Vec<Arc<DesignFile>>,
    /// Parts with work that comes after work on other parts, sorted.
    linked: Vec<PartId>,
    /// (container, part inside), sorted.
    inside: Arc<Vec<(PartId, PartId)>>,
}

fn stamp(file: &Arc<PartFile>) -> usize {
    Arc::as_ptr(file) as usize
}

impl Answers {
    /// All answers, worked out from nothing: by two threads where the logbook is large.
    pub fn of(logbook: &Logbook, rules: &Rules, today: NaiveDate) -> Self {
        let answer = |files: &[Arc<PartFile>]| -> Vec<Arc<PartAnswers>> {
            let one = |file| Arc::new(PartAnswers::of(file, logbook.design_of(file), rules, today));
            files.iter().map(one).collect()
        };
        let parts = if logbook.parts.len() < PARTS_FOR_TWO_THREADS {
            answer(&logbook.parts)
        } else {
            let (front, back) = logbook.parts.split_at(logbook.parts.len() / 2);
            std::thread::scope(|scope| {
                let front = scope.spawn(|| answer(front));
                let mut back = answer(back);
                let mut all = front.join().unwrap_or_else(|panic| std::panic::resume_unwind(panic));
                all.append(&mut back);
                all
            })
        };
        let mut answers = Self {
            revision: logbook.revision,
            rules_version: rules.version,
            today,
            stamps: logbook.parts.iter().map(stamp).collect(),
            designs: logbook.designs.clone(),
            linked: parts.iter().filter(|part| part.waits_elsewhere()).map(|part| part.part).collect(),
            inside: Arc::new(inside(&logbook.parts)),
            parts,
            machines: Vec::new(),
        };
        outstanding::settle(&mut answers.parts, &answers.linked, logbook);
        let uses = fit::uses(logbook.machines.iter().map(|file| &**file));
        answers.machines =
            logbook.machines.iter().map(|file| Arc::new(answers.answer_machine(file, &uses, rules))).collect();
        answers
    }

    /// The answers for a later revision: only what hangs on a changed part, design or machine is worked out again.
    #[must_use]
    pub fn next(&self, logbook: &Logbook, rules: &Rules, today: NaiveDate) -> Self {
        if today != self.today || rules.version != self.rules_version {
            return Self::of(logbook, rules, today);
        }
        let (mut parts, mut changed, same_nesting) = self.next_parts(logbook, rules);
        let linked = self.next_linked(&parts, &changed);
        changed.extend(outstanding::settle(&mut parts, &linked, logbook));
        let mut answers = Self {
            revision: logbook.revision,
            rules_version: self.rules_version,
            today,
            stamps: logbook.parts.iter().map(stamp).collect(),
            designs: logbook.designs.clone(),
            linked,
            inside: if same_nesting { Arc::clone(&self.inside) } else { Arc::new(inside(&logbook.parts)) },
            parts,
            machines: Vec::new(),
        };
        answers.machines = self.next_machines(&answers, logbook, &changed, same_nesting, rules);
        answers
    }

    /// Part answers of the next revision, the parts that changed, and whether all stay inside what they were inside.
    fn next_parts(&self, logbook: &Logbook, rules: &Rules) -> (Vec<Arc<PartAnswers>>, HashSet<PartId>, bool) {
        let same_designs = self.designs.len() == logbook.designs.len()
            && self.designs.iter().zip(&logbook.designs).all(|(old, new)| Arc::ptr_eq(old, new));
        let same_design = |old: &PartAnswers, design: Option<&Arc<DesignFile>>| match (&old.design, design) {
            (Some(old), Some(new)) => Arc::ptr_eq(old, new),
            (None, None) => true,
            _ => false,
        };
        let mut parts = Vec::with_capacity(logbook.parts.len());
        let mut changed = HashSet::new();
        let mut same_nesting = true;
        let mut at = 0;
        for file in &logbook.parts {
            let is_same = |at: usize| self.stamps.get(at) == Some(&stamp(file));
            if !is_same(at) {
                // Both lists stand in the order of their keys: pass over parts that are gone.
                while let Some(gone) = self.parts.get(at).filter(|old| old.part < file.part.id) {
                    same_nesting = false;
                    changed.insert(gone.part);
                    at += 1;
                }
            }
            let old = self.parts.get(at).filter(|_| is_same(at) || self.parts[at].part == file.part.id);
            at += usize::from(old.is_some());
            if let Some(old) = old.filter(|old| stamp(&old.file) == stamp(file))
                && (same_designs || same_design(old, logbook.design_of(file)))
            {
                parts.push(Arc::clone(old));
                continue;
            }
            same_nesting &= old.map_or(file.part.inside.is_none(), |old| old.file.part.inside == file.part.inside);
            changed.insert(file.part.id);
            parts.push(Arc::new(PartAnswers::of(file, logbook.design_of(file), rules, self.today)));
        }
        let rest = self.parts.get(at..).unwrap_or_default();
        same_nesting &= rest.is_empty();
        changed.extend(rest.iter().map(|gone| gone.part));
        (parts, changed, same_nesting)
    }

    /// Parts of the next revision with work that comes after work on other parts.
    fn next_linked(&self, parts: &[Arc<PartAnswers>], changed: &HashSet<PartId>) -> Vec<PartId> {
        let is_linked = |part: &PartId| {
            let at = parts.binary_search_by(|known| known.part.cmp(part));
            at.is_ok_and(|at| parts[at].waits_elsewhere())
        };
        let mut linked: Vec<PartId> = self.linked.iter().chain(changed).copied().filter(is_linked).collect();
        linked.sort_unstable();
        linked.dedup();
        linked
    }

    fn next_machines(
        &self,
        next: &Self,
        logbook: &Logbook,
        changed: &HashSet<PartId>,
        same_nesting: bool,
        rules: &Rules,
    ) -> Vec<Arc<MachineAnswers>> {
        let unchanged =
            |file: &Arc<MachineFile>| self.machine(file.machine.id).filter(|old| Arc::ptr_eq(&old.file, file));
        // A part that another machine gains or lets go of changes the answers of all that use it.
        let mut shared: HashSet<PartId> = HashSet::new();
        for file in logbook.machines.iter().filter(|file| unchanged(file).is_none()) {
            shared.extend(file.parts().iter().map(|(part, ..)| *part));
        }
        for old in &self.machines {
            if logbook.machine(old.machine).is_none_or(|new| !Arc::ptr_eq(new, &old.file)) {
                shared.extend(old.members.iter().copied());
            }
        }
        let touched = |part: &PartId| changed.contains(part) || shared.contains(part);
        let mut uses = None;
        logbook
            .machines
            .iter()
            .map(|file| {
                if let Some(old) = unchanged(file).filter(|old| same_nesting && !old.members.iter().any(touched)) {
                    return Arc::clone(old);
                }
                let uses = uses.get_or_insert_with(|| fit::uses(logbook.machines.iter().map(|file| &**file)));
                Arc::new(next.answer_machine(file, uses, rules))
            })
            .collect()
    }

    fn answer_machine(&self, file: &Arc<MachineFile>, uses: &Uses, rules: &Rules) -> MachineAnswers {
        let placed = self.placed(file);
        MachineAnswers {
            machine: file.machine.id,
            file: Arc::clone(file),
            members: placed.iter().map(|placed| placed.part).collect(),
            readiness: readiness::of_machine(file, &placed, uses, rules, self.today),
        }
    }

    /// A machine's parts, each followed by all that is inside it.
    fn placed(&self, file: &MachineFile) -> Vec<Placed<'_>> {
        let direct = file.parts();
        let mut placed: Vec<Placed> = Vec::with_capacity(direct.len());
        for (part, role, is_fitted) in &direct {
            let answers = self.part(*part);
            if let Some(inner) = placed.iter_mut().find(|known| known.part == *part) {
                *inner = Placed { part: *part, role: *role, is_fitted: *is_fitted, is_inside: false, answers };
                continue;
            }
            placed.push(Placed { part: *part, role: *role, is_fitted: *is_fitted, is_inside: false, answers });
            for inner in self.inside(*part) {
                if placed.iter().all(|known| known.part != inner) {
                    let answers = self.part(inner);
                    placed.push(Placed { part: inner, role: None, is_fitted: *is_fitted, is_inside: true, answers });
                }
            }
        }
        placed
    }

    /// A machine's parts put together and judged; `None` for a machine that the logbook does not hold.
    pub fn build<'r>(
        &self,
        machine: MachineId,
        models: &mut Models<'r>,
        file_system: Option<FileSystem>,
    ) -> Option<Build<'r>> {
        let MachineAnswers { file, readiness, .. } = &**self.machine(machine)?;
        Some(fit::of_machine(file, &self.placed(file), &readiness.roles, models, file_system))
    }

    /// All that is inside a part, over however many levels, without the part itself.
    pub fn inside(&self, part: PartId) -> Vec<PartId> {
        let mut found = Vec::new();
        let mut open = vec![part];
        while let Some(container) = open.pop() {
            let from = self.inside.partition_point(|(outer, _)| *outer < container);
            for (_, inner) in self.inside[from..].iter().take_while(|(outer, _)| *outer == container) {
                // A part inside itself is refused when written; a damaged record must not hang us.
                if *inner != part && !found.contains(inner) {
                    found.push(*inner);
                    open.push(*inner);
                }
            }
        }
        found
    }

    /// A part's answers.
    pub fn part(&self, id: PartId) -> Option<&Arc<PartAnswers>> {
        self.parts.binary_search_by(|answers| answers.part.cmp(&id)).ok().map(|at| &self.parts[at])
    }

    /// A machine's answers.
    pub fn machine(&self, id: MachineId) -> Option<&Arc<MachineAnswers>> {
        self.machines.binary_search_by(|answers| answers.machine.cmp(&id)).ok().map(|at| &self.machines[at])
    }

    /// May power be applied to this part on the bench, with all that is inside it? A supply's answer is about the
    /// dummy load. `None` for a part that no current reaches, or that the logbook does not hold.
    pub fn power_of_part(&self, id: PartId) -> Option<Power> {
        let mut parts = vec![&**self.part(id)?];
        parts.extend(self.inside(id).into_iter().filter_map(|inner| self.part(inner)).map(|answers| &**answers));
        power::of_part(&parts)
    }

    /// All outstanding work, part by part.
    pub fn tasks(&self) -> impl Iterator<Item = &Task> {
        self.parts.iter().flat_map(|part| &part.tasks)
    }

    /// What all outstanding work comes to.
    pub fn totals(&self) -> Totals {
        self.parts.iter().fold(Totals::default(), |sum, part| sum.and(part.totals))
    }
}

fn inside(parts: &[Arc<PartFile>]) -> Vec<(PartId, PartId)> {
    let mut inside: Vec<_> = parts.iter().filter_map(|file| Some((file.part.inside?, file.part.id))).collect();
    inside.sort_unstable();
    inside
}
