//! All outstanding work and lacking proofs of the machines, as pieces for one pair of hands.

use std::cmp::Reverse;
use std::collections::{HashMap, HashSet};

use super::hands::Piece;
use super::{DAY, Ground, Item, PROOF_HANDS_ON, Pace, Terms};
use crate::assess::outstanding::{Stock, Task, TaskPlace};
use crate::assess::placement::bench_minutes;
use crate::assess::tonight::minutes_of;
use crate::assess::{Answers, PartAnswers, ProofStanding};
use crate::record::{Competence, Hold, PartId, WorkState};
use crate::rules::ProofRule;

/// An item before it has its place on the calendar.
pub struct Waiting {
    pub item: Item,
    /// The place in the answers of the most urgent machine that it is for.
    pub machine: usize,
    pub part: Option<PartId>,
    /// Hands-on minutes by the rules.
    pub rule_minutes: f64,
    /// The same at this logbook's pace.
    pub minutes: f64,
    /// The sitting whose pace it goes by; `None` for what takes as long as it takes.
    pub sitting: Option<String>,
    pub lacks_material: bool,
}

/// A machine with all that it needs.
pub struct Needing {
    /// Its place in the answers.
    pub machine: usize,
    /// Places among the items.
    pub needs: Vec<usize>,
    pub unplanned: usize,
    /// Places of required roles that are empty: until they are filled it cannot be tested as a whole.
    pub empty: u32,
    /// A part under current comes into it: tests that hold today are to be run again.
    changes: bool,
}

pub struct Gathered {
    pub items: Vec<Waiting>,
    pub pieces: Vec<Piece>,
    /// Most urgent first.
    pub machines: Vec<Needing>,
}

/// What was gathered of one part.
#[derive(Default)]
struct OfPart {
    /// All that its machines need: work but for looks, with what comes before it, and proofs.
    needs: Vec<usize>,
    /// What is for looks only.
    looks: Vec<usize>,
    /// Tests, of it or its machines, that work outstanding on it voids.
    voids: HashSet<String>,
    unplanned: usize,
}

pub fn gather(answers: &Answers, ground: &Ground, terms: Terms, stretch: f64) -> Gathered {
    let mut order: Vec<usize> = (0..answers.machines.len()).collect();
    order.sort_by_key(|at| {
        let machine = &answers.machines[*at].file.machine;
        (machine.priority == 0, machine.priority, machine.name.to_lowercase(), machine.id)
    });
    let mut gathering = Gathering {
        answers,
        pace: &ground.pace,
        stock: &ground.stock,
        stretch,
        delivery: f64::from(terms.delivery_days) * DAY,
        places: HashMap::new(),
        elsewhere: Vec::new(),
        kept: HashSet::new(),
        gathered: Gathered { items: Vec::new(), pieces: Vec::new(), machines: Vec::new() },
    };
    let mut parts: HashMap<PartId, OfPart> = HashMap::new();
    for (urgency, machine) in order.iter().enumerate() {
        for part in &answers.machines[*machine].members {
            parts.entry(*part).or_insert_with(|| gathering.part(*part, *machine, urgency as u64));
        }
    }
    let crosses = !gathering.elsewhere.is_empty();
    gathering.join_elsewhere(&mut parts);
    for (urgency, machine) in order.into_iter().enumerate() {
        let empty = answers.machines[machine].readiness.roles.iter().map(|fill| fill.missing).sum();
        let mut own = Needing { machine, needs: Vec::new(), unplanned: 0, empty, changes: false };
        let members = || answers.machines[machine].members.iter().filter_map(|part| parts.get(part));
        for of_part in members() {
            own.needs.extend(&of_part.needs);
            own.unplanned += of_part.unplanned;
        }
        gathering.fittings(&mut own, urgency as u64, &parts);
        if crosses {
            gathering.add_firsts(&mut own);
        }
        let looks: Vec<usize> = members().flat_map(|of_part| &of_part.looks).copied().collect();
        let voids = |test: &str| members().any(|of_part| of_part.voids.contains(test));
        gathering.machine_proofs(&mut own, urgency as u64, &looks, &voids);
        gathering.gathered.machines.push(own);
    }
    gathering.gathered
}

struct Gathering<'a> {
    answers: &'a Answers,
    pace: &'a Pace,
    /// Minutes of the calendar for one of hands.
    stretch: f64,
    /// Minutes of the calendar until materials come.
    delivery: f64,
    stock: &'a Stock,
    /// Where each task stands among the items.
    places: HashMap<TaskPlace, usize>,
    /// Items that come after work on other parts, not yet tied to it.
    elsewhere: Vec<Elsewhere>,
    /// Items that come after work which cannot be planned.
    kept: HashSet<usize>,
    gathered: Gathered,
}

/// An item, for which machine of which urgency, and the work on another part that it comes after.
struct Elsewhere {
    item: usize,
    machine: usize,
    urgency: u64,
    first: TaskPlace,
}

/// Urgency: the machine's first, then what it holds up, then working order.
fn rank(urgency: u64, hold: u64, place: usize) -> u64 {
    (urgency << 32) | (hold << 24) | (place as u64).min(0xff_ffff)
}

/// After the holds come proofs of parts, then fitting, then proofs of the machine.
const PART_PROOF: u64 = 5;
const FIT: u64 = 6;
const MACHINE_PROOF: u64 = 7;
/// What is for looks only comes after everything else of every machine.
const LAST: u64 = 1 << 62;

impl Gathering<'_> {
    fn part(&mut self, part: PartId, machine: usize, urgency: u64) -> OfPart {
        let answers = self.answers;
        let mut of_part = OfPart::default();
        let Ok(part_at) = answers.parts.binary_search_by(|known| known.part.cmp(&part)) else { return of_part };
        let part = &*answers.parts[part_at];
        if !part.file.custody_now().is_at_hand() {
            of_part.unplanned = part.tasks.iter().filter(|task| task.hold != Hold::Looks).count();
            of_part.unplanned += part.proofs.iter().filter(|proof| proof.is_lacking()).count();
            return of_part;
        }
        let first = self.gathered.items.len();
        for at in 0..part.tasks.len() {
            self.task(part, part_at, at, machine, urgency, first);
        }
        // What readiness needs, and all that comes before it.
        let mut needed: Vec<bool> = part.tasks.iter().map(|task| task.hold != Hold::Looks).collect();
        for at in (0..part.tasks.len()).rev().filter(|at| part.tasks[*at].hold != Hold::Looks) {
            part.tasks[at].waits_for.iter().for_each(|before| needed[usize::from(*before)] = true);
        }
        let (own, looks): (Vec<usize>, Vec<usize>) = (0..part.tasks.len()).partition(|at| needed[*at]);
        let voids =
            |task: &Task, test: &str| task.rule().is_some_and(|rule| rule.voids.iter().any(|name| name == test));
        let voiding = own.iter().filter_map(|at| part.tasks[*at].rule());
        of_part.voids = voiding.flat_map(|rule| &rule.voids).cloned().collect();
        of_part.needs = own.into_iter().map(|at| first + at).collect();
        let needed_work = of_part.needs.clone();
        let is_due = |proof: &ProofStanding| {
            proof.is_lacking() || (proof.rule.required && of_part.voids.contains(&proof.rule.name))
        };
        for (at, proof) in part.proofs.iter().enumerate().filter(|(_, proof)| is_due(proof)) {
            // What is for looks only is waited for where it would void the test.
            let voiding = looks.iter().filter(|at| voids(&part.tasks[**at], &proof.rule.name));
            let mut work = needed_work.clone();
            work.extend(voiding.map(|at| first + at));
            let item = Item::PartProof { part: part_at, proof: at };
            let rank = rank(urgency, PART_PROOF, at);
            let place = self.proof(item, machine, Some(part.part), &proof.rule, rank, work);
            of_part.needs.push(place);
        }
        of_part.looks = looks.into_iter().map(|at| first + at).collect();
        of_part
    }

    fn task(&mut self, part: &PartAnswers, part_at: usize, at: usize, machine: usize, urgency: u64, first: usize) {
        let task = &part.tasks[at];
        let lacks_material = task.state == WorkState::Waiting || self.stock.lacking(task).next().is_some();
        let sent_out = task.who() == Competence::SendOut;
        let rule_minutes = if sent_out { 0.0 } else { f64::from(minutes_of(task)) };
        let minutes = rule_minutes * self.pace.of_sitting(task.sitting()).0.mean;
        let hold = task.hold as u64;
        let rank = rank(urgency, hold, at) | if task.hold == Hold::Looks { LAST } else { 0 };
        let item = self.gathered.items.len();
        self.places.insert((part.part, at as u16), item);
        let elsewhere = task.elsewhere.iter().map(|first| Elsewhere { item, machine, urgency, first: *first });
        self.elsewhere.extend(elsewhere);
        let away = if sent_out { self.delivery } else { 0.0 };
        self.gathered.pieces.push(Piece {
            hands: minutes * self.stretch,
            wait: f64::from(task.wait_hours()) * 60.0 + away,
            not_before: if lacks_material { self.delivery } else { 0.0 },
            rank,
            after: task.waits_for.iter().map(|before| first + usize::from(*before)).collect(),
        });
        self.gathered.items.push(Waiting {
            item: Item::Work { part: part_at, task: at },
            machine,
            part: Some(part.part),
            rule_minutes,
            minutes,
            sitting: Some(task.sitting().to_owned()),
            lacks_material,
        });
    }

    /// Ties items to the work on other parts that they come after; a part of no machine is planned for theirs.
    fn join_elsewhere(&mut self, parts: &mut HashMap<PartId, OfPart>) {
        while let Some(Elsewhere { item, machine, urgency, first }) = self.elsewhere.pop() {
            parts.entry(first.0).or_insert_with(|| self.part(first.0, machine, urgency));
            match self.places.get(&first) {
                Some(place) => self.gathered.pieces[item].after.push(*place),
                None => drop(self.kept.insert(item)),
            }
        }
    }

    /// Adds what a machine's own pieces come after on parts that are not its own.
    fn add_firsts(&self, own: &mut Needing) {
        let mut needed: HashSet<usize> = own.needs.iter().copied().collect();
        let mut open = own.needs.clone();
        while let Some(at) = open.pop() {
            own.unplanned += usize::from(self.kept.contains(&at));
            for first in &self.gathered.pieces[at].after {
                if needed.insert(*first) {
                    own.needs.push(*first);
                    open.push(*first);
                }
            }
        }
    }

    fn proof(
        &mut self,
        item: Item,
        machine: usize,
        part: Option<PartId>,
        rule: &ProofRule,
        rank: u64,
        after: Vec<usize>,
    ) -> usize {
        let minutes = f64::from(rule.minutes.min(PROOF_HANDS_ON));
        let wait = f64::from(rule.minutes) - minutes;
        self.plain(item, machine, part, (minutes, wait), rank, after)
    }

    /// Adds what takes as long as it takes: minutes of the hands, and then by itself.
    fn plain(
        &mut self,
        item: Item,
        machine: usize,
        part: Option<PartId>,
        (minutes, wait): (f64, f64),
        rank: u64,
        after: Vec<usize>,
    ) -> usize {
        self.gathered.pieces.push(Piece { hands: minutes * self.stretch, wait, not_before: 0.0, rank, after });
        self.gathered.items.push(Waiting {
            item,
            machine,
            part,
            rule_minutes: minutes,
            minutes,
            sitting: None,
            lacks_material: false,
        });
        self.gathered.items.len() - 1
    }

    /// Fits what is only planned for a machine, once the work that keeps it from being fitted is done.
    fn fittings(&mut self, own: &mut Needing, urgency: u64, parts: &HashMap<PartId, OfPart>) {
        let answers = self.answers;
        let planned = answers.machines[own.machine].file.parts().into_iter().filter(|(.., is_fitted)| !is_fitted);
        for (place, (part, ..)) in planned.enumerate() {
            let Ok(at) = answers.parts.binary_search_by(|known| known.part.cmp(&part)) else { continue };
            let known = &*answers.parts[at];
            if !known.file.custody_now().is_at_hand() {
                // Its work was counted already, if it has any.
                own.unplanned += usize::from(parts.get(&part).is_none_or(|of_part| of_part.unplanned == 0));
                continue;
            }
            let is_fitted = answers.machines.iter().any(|other| other.file.fitted().any(|known| known.part == part));
            let minutes = bench_minutes(known.file.part.kind) * if is_fitted { 2 } else { 1 };
            let before = |at: &usize| known.tasks[*at].hold <= Hold::Fitting;
            let before = (0..known.tasks.len()).filter(before).map(|at| (part, at as u16));
            let after = before.filter_map(|place| self.places.get(&place).copied()).collect();
            let (item, rank) = (Item::Fit { machine: own.machine, part: at }, rank(urgency, FIT, place));
            let fit = self.plain(item, own.machine, Some(part), (f64::from(minutes), 0.0), rank, after);
            own.needs.push(fit);
            own.changes |= known.takes_current;
        }
    }

    /// The machine's own proofs, after all else that it needs and all other work on its parts; they wait until its roles
    /// are filled. One that holds today is run again where work outstanding, or a part to be fitted, takes it away.
    fn machine_proofs(&mut self, own: &mut Needing, urgency: u64, looks: &[usize], voids: &dyn Fn(&str) -> bool) {
        let answers = self.answers;
        let proofs = &answers.machines[own.machine].readiness.proofs;
        let is_due = |proof: &ProofStanding| {
            proof.is_lacking() || (proof.rule.required && (own.changes || voids(&proof.rule.name)))
        };
        let due: Vec<usize> = (0..proofs.len()).filter(|at| is_due(&proofs[*at])).collect();
        if own.unplanned > 0 {
            own.unplanned += due.len();
        }
        if own.unplanned > 0 || own.empty > 0 || due.is_empty() {
            return;
        }
        let known: HashSet<usize> = own.needs.iter().copied().collect();
        own.needs.extend(looks.iter().filter(|at| !known.contains(at)));
        // Each waits for the last pieces only: what those come after is done by then.
        let mut ends: Vec<usize> = own.needs.clone();
        let inner: HashSet<usize> = own.needs.iter().flat_map(|at| &self.gathered.pieces[*at].after).copied().collect();
        ends.retain(|at| !inner.contains(at));
        ends.sort_unstable_by_key(|at| Reverse(*at));
        for at in due {
            let item = Item::MachineProof { machine: own.machine, proof: at };
            let rule = &proofs[at].rule;
            let place = self.proof(item, own.machine, None, rule, rank(urgency, MACHINE_PROOF, at), ends.clone());
            own.needs.push(place);
        }
    }
}
