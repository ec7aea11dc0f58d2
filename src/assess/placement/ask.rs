//! The question of a logbook: which of its parts are spares for which roles, and what each choice is worth.

use std::collections::{BTreeMap, HashMap, HashSet};

use super::effort::{bench_minutes, minutes_of, tests_that_hold};
use super::finished::LeftAlone;
use super::goals::{Goals, Term};
use super::pins::{Contradiction, Pin, Pins, pins};
use super::question::{Choice, Machine, OpenNeed, Question, Seat, Spare};
use super::rails;
use super::rank::Ranks;
use crate::assess::fit::{Models, Piece, may_offer};
use crate::assess::making::{self, TrueTo};
use crate::assess::{Answers, PartAnswers, PartState};
use crate::record::{Hold, Kind, Logbook, MachineFile, MachineId, Originality, PartId, Role, RoleId, Side};
use crate::rules::Rules;
use crate::trade::Span;

/// What is asked beside what the logbook says.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Ask {
    pub goals: Goals,
    /// Parts that must go into these machines.
    pub pins: Vec<(PartId, MachineId)>,
    /// Parts that are not to be used at all, or not in one machine.
    pub left_out: Vec<(PartId, Option<MachineId>)>,
    /// Machines past their tests that may be touched all the same.
    pub may_touch: Vec<MachineId>,
    /// Any machine may be touched.
    pub may_touch_all: bool,
}

/// A question with what its numbers stand for.
pub struct Asked<'a> {
    pub question: Question,
    pub logbook: &'a Logbook,
    pub answers: &'a Answers,
    pub rules: &'a Rules,
    pub ask: Ask,
    /// The part of each spare.
    pub parts: Vec<PartId>,
    /// The machine of each seat, and its role; `None` for what stands between.
    pub seats: Vec<(MachineId, Option<RoleId>)>,
    pub machines: Vec<MachineId>,
    pub pieces: Vec<Piece>,
    /// Machines that are left as they are.
    pub alone: LeftAlone,
    /// Fitted parts that stay without being asked about.
    pub aside: HashSet<PartId>,
    /// For each spare the option in which it is today, fitted before planned.
    pub today: Vec<Option<usize>>,
    ranks: Ranks,
}

/// Kinds that stand between others, in no role of their own.
pub fn stands_between(kind: Kind) -> bool {
    use Kind::{Cable, FlashAdapter, ProcessorAdapter, Retention, Riser, VoltageModule};
    matches!(kind, Cable | FlashAdapter | ProcessorAdapter | Retention | Riser | VoltageModule)
}

/// Most adapters in one machine.
const MOST_BETWEEN: u32 = 16;
/// What a need costs that stays open.
const OPEN_COST: i64 = 40;

/// The question of a logbook.
///
/// # Errors
/// Pins that contradict each other, or cannot be.
pub fn ask<'a>(
    logbook: &'a Logbook,
    answers: &'a Answers,
    rules: &'a Rules,
    ask: Ask,
) -> Result<Asked<'a>, Contradiction> {
    let alone = LeftAlone::of(logbook, answers, &ask);
    let Pins { seats: pins, aside } = pins(logbook, &ask, &alone)?;
    let mut asked = Asked {
        question: Question { open_cost: OPEN_COST, rails: rails::names(), ..Question::default() },
        logbook,
        answers,
        rules,
        ranks: Ranks::of(answers),
        ask,
        parts: Vec::new(),
        seats: Vec::new(),
        machines: Vec::new(),
        pieces: Vec::new(),
        alone,
        aside,
        today: Vec::new(),
    };
    asked.machines_and_seats();
    let mut connectors: BTreeMap<String, usize> = BTreeMap::new();
    asked.spares(&pins, &mut connectors);
    asked.connectors(connectors);
    Ok(asked)
}

impl Asked<'_> {
    fn machines_and_seats(&mut self) {
        for file in &self.logbook.machines {
            let machine = self.machines.len();
            self.machines.push(file.machine.id);
            let complete_worth = self.ask.goals.complete(file.machine.priority);
            let change_cost = self.change_cost(file.machine.id);
            let name = file.machine.name.clone();
            self.question.machines.push(Machine { name, complete_worth, change_cost, open: Vec::new() });
            for role in &file.roles {
                let name = crate::assess::reason::role_name(self.logbook, file.machine.id, role.id);
                let (count, required) = (role.count.max(1), role.required);
                self.question.seats.push(Seat { machine, name, count, required, between: false });
                self.seats.push((file.machine.id, Some(role.id)));
            }
            let name = crate::text!("Adapters, cables, brackets").to_owned();
            self.question.seats.push(Seat { machine, name, count: MOST_BETWEEN, required: false, between: true });
            self.seats.push((file.machine.id, None));
        }
    }

    /// What it costs that a machine's own tests hold no longer; nothing where they are lost already with a part that is
    /// fitted there and left out.
    fn change_cost(&self, machine: MachineId) -> i64 {
        let is_out = |part: PartId| {
            let of = |(out, of): &(PartId, Option<MachineId>)| *out == part && of.is_none_or(|of| of == machine);
            self.ask.left_out.iter().any(of) && self.answers.part(part).is_some_and(|answers| answers.takes_current)
        };
        if self.logbook.machine(machine).is_some_and(|file| file.fitted().any(|fitting| is_out(fitting.part))) {
            return 0;
        }
        let tests = self.answers.machine(machine).map(|answers| tests_that_hold(answers)).unwrap_or_default();
        let minutes = minutes_of(&tests);
        if minutes == 0 { 0 } else { -self.ask.goals.worth(Term::Voids { minutes }) }
    }

    fn spares(&mut self, pins: &HashMap<PartId, Pin>, connectors: &mut BTreeMap<String, usize>) {
        let mut models = Models::new(self.rules);
        // Where each part is fitted (`true`) or planned.
        let mut there: HashMap<PartId, Vec<(MachineId, Option<RoleId>, bool)>> = HashMap::new();
        for file in &self.logbook.machines {
            for (part, role, is_fitted) in file.parts() {
                there.entry(part).or_default().push((file.machine.id, role, is_fitted));
            }
        }
        let windows: HashMap<MachineId, Option<Span>> =
            self.logbook.machines.iter().map(|file| (file.machine.id, making::window(&file.machine))).collect();
        for answers in &self.answers.parts {
            let part = answers.part;
            let there = there.get(&part).map_or(&[][..], Vec::as_slice);
            let pin = pins.get(&part);
            if self.aside.contains(&part) || (pin.is_none() && !self.is_free(answers)) {
                continue;
            }
            let (mut options, mut fitted_at, mut planned_at) = (Vec::new(), None, None);
            for (at, (machine, role)) in self.seats.iter().enumerate() {
                let Some(file) = self.logbook.machine(*machine) else { continue };
                let role = role.and_then(|id| file.roles.iter().find(|role| role.id == id));
                if pin.is_some_and(|pin| pin.machine != *machine || pin.role != role.map(|role| role.id)) {
                    continue;
                }
                let kind = answers.file.part.kind;
                let is_of_kind = role.map_or_else(|| stands_between(kind), |role| role.takes(kind));
                let is_there = |fitted: bool| {
                    there.iter().any(|(known, own, is_fitted)| {
                        *known == *machine
                            && *is_fitted == fitted
                            && own.is_none_or(|own| role.is_some_and(|role| role.id == own))
                    })
                };
                if pin.is_none() && (!is_of_kind || self.is_left_out(part, *machine)) {
                    continue;
                }
                let (fitted, planned) = (is_there(true), is_there(false));
                if pin.is_none() && !fitted && !planned && self.alone.holds_role(*machine, role.map(|role| role.id)) {
                    continue;
                }
                let at_home = if fitted { &mut fitted_at } else { &mut planned_at };
                if fitted || planned {
                    at_home.get_or_insert(options.len());
                }
                let window = windows.get(machine).copied().flatten();
                let terms = self.terms(answers, file, role, window, fitted, planned);
                let worth = terms.iter().map(|term| self.ask.goals.worth(*term)).sum();
                options.push(Choice { seat: at, worth, settled: fitted || pin.is_some(), fitted });
            }
            if options.is_empty() {
                continue;
            }
            let piece = models.piece(answers, false);
            let (needs, offers) = plugs(answers, connectors);
            let known = !needs.is_empty() || !offers.is_empty();
            let (draws, gives) = (rails::draws(&piece), rails::gives(&piece));
            let (tag, pinned) = (answers.file.part.tag.clone(), pin.is_some());
            let live = answers.takes_current;
            let home = there.iter().find(|(.., is_fitted)| live && *is_fitted);
            let home = home.and_then(|(machine, ..)| self.machines.iter().position(|known| known == machine));
            self.question.spares.push(Spare { tag, needs, offers, known, draws, gives, options, live, home, pinned });
            self.today.push(fitted_at.or(planned_at));
            self.parts.push(part);
            self.pieces.push(piece);
        }
    }

    /// Whether a part can be put into any machine: at hand, not kept apart, not inside another.
    fn is_free(&self, answers: &PartAnswers) -> bool {
        let part = &answers.file.part;
        answers.file.custody_now().is_at_hand()
            && !part.is_quarantined()
            && part.inside.is_none()
            && !self.ask.left_out.contains(&(part.id, None))
    }

    fn is_left_out(&self, part: PartId, machine: MachineId) -> bool {
        self.ask.left_out.contains(&(part, Some(machine)))
    }

    /// The grounds of a choice, from the records.
    fn terms(
        &self,
        answers: &PartAnswers,
        file: &MachineFile,
        role: Option<&Role>,
        window: Option<Span>,
        fitted: bool,
        planned: bool,
    ) -> Vec<Term> {
        let mut terms = Vec::new();
        match role {
            Some(role) if role.required => {
                terms.push(Term::Required);
                if file.machine.priority > 0 {
                    terms.push(Term::Urgent { priority: file.machine.priority });
                }
            }
            Some(_) => terms.push(Term::Optional),
            None => terms.push(Term::Between),
        }
        let originality = answers.file.part.originality;
        // What stands between others is there for their sake, and not for its own.
        let for_itself = role.is_some();
        // What is openly a modern part is not meant to be of the window.
        if let Some(window) = window.filter(|_| for_itself && originality != Originality::ModernReplacement) {
            terms.push(Term::Dates(answers.making.true_to(window)));
        }
        if let Some(rank) = self.ranks.rank(answers, window) {
            terms.push(Term::Brief { standing: file.machine.standing, rank });
        }
        match answers.state {
            PartState::Proven if for_itself => terms.push(Term::Proven),
            PartState::Sound if for_itself => terms.push(Term::Sound),
            PartState::Unidentified | PartState::Unsurveyed => terms.push(Term::NotSurveyed),
            _ => {}
        }
        let holding = answers.tasks.iter().filter(|task| task.hold < Hold::Looks);
        let minutes = holding.map(crate::assess::Task::minutes).sum();
        if minutes > 0 {
            terms.push(Term::Work { minutes });
        }
        if for_itself && originality != Originality::Unstated {
            terms.push(Term::Originality(originality));
        }
        let minutes = bench_minutes(answers.file.part.kind);
        if fitted {
            terms.extend([Term::Fitted, Term::StaysIn { minutes }]);
        } else {
            terms.extend(planned.then_some(Term::Planned));
            terms.push(Term::ToFit { minutes });
        }
        if answers.design.as_ref().is_none_or(|design| design.connectors.is_empty()) {
            terms.push(Term::ConnectorsUnknown);
        }
        terms
    }

    /// The grounds of a spare's option, each with its points.
    pub fn why(&self, spare: usize, option: usize) -> Vec<(Term, i64)> {
        let seat = self.question.spares[spare].options[option].seat;
        let (machine, role) = self.seats[seat];
        let Some((file, answers)) = self.logbook.machine(machine).zip(self.answers.part(self.parts[spare])) else {
            return Vec::new();
        };
        let here = |fitted: bool| {
            file.parts().iter().any(|(part, own, is_fitted)| {
                *part == answers.part && *is_fitted == fitted && own.is_none_or(|own| Some(own) == role)
            })
        };
        let role = role.and_then(|id| file.roles.iter().find(|role| role.id == id));
        let terms = self.terms(answers, file, role, making::window(&file.machine), here(true), here(false));
        terms.into_iter().map(|term| (term, self.ask.goals.worth(term))).filter(|(_, worth)| *worth != 0).collect()
    }

    /// How a spare stands to a machine's window.
    pub fn true_to(&self, spare: usize, machine: usize) -> Option<TrueTo> {
        let file = self.logbook.machine(self.machines[machine])?;
        Some(self.pieces[spare].answers.making.true_to(making::window(&file.machine)?))
    }

    /// Which connector takes which, and which needs may stay open in which machine. What a role of the machine could
    /// give may stay open while that role is empty: as the logbook's designs say, and where none of them gives it, as
    /// is usual for a kind. What no role gives, but brackets, cables or adapters do, may stay open until one is found;
    /// what nothing gives must not.
    fn connectors(&mut self, numbers: BTreeMap<String, usize>) {
        let mut names = vec![String::new(); numbers.len()];
        for (name, at) in numbers {
            names[at] = name;
        }
        let table = &self.rules.connectors;
        let takes = |need: &String| (0..names.len()).filter(|offer| table.accepts(&names[*offer], need)).collect();
        let takes: Vec<Vec<usize>> = names.iter().map(takes).collect();
        // The kinds of which some design offers what takes a need.
        let mut givers: Vec<Vec<Kind>> = vec![Vec::new(); names.len()];
        for file in &self.logbook.designs {
            let offers = file.connectors.iter().filter(|row| row.side == Side::Offers);
            for offer in offers.filter_map(|row| names.iter().position(|name| *name == row.connector)) {
                for (need, takes) in takes.iter().enumerate() {
                    if takes.contains(&offer) && !givers[need].contains(&file.design.kind) {
                        givers[need].push(file.design.kind);
                    }
                }
            }
        }
        let mut needed = vec![false; names.len()];
        self.question.spares.iter().flat_map(|spare| &spare.needs).for_each(|(need, _)| needed[*need] = true);
        for (machine, file) in self.logbook.machines.iter().enumerate() {
            let seats = || self.question.seats.iter().enumerate().filter(|(_, seat)| seat.machine == machine);
            let between: Vec<usize> = seats().filter(|(_, seat)| seat.between).map(|(at, _)| at).collect();
            let kinds_of = |seat: usize| {
                let role = self.seats[seat].1;
                file.roles.iter().filter(move |known| Some(known.id) == role).flat_map(Role::kinds)
            };
            let open = (0..names.len()).filter(|need| needed[*need]).map(|need| {
                let family = table.get(&names[need]).map(|row| row.family);
                let gives = |seat: &usize| {
                    kinds_of(*seat).any(|kind| match &givers[need][..] {
                        [] => family.is_some() && may_offer(kind, family),
                        known => known.contains(&kind),
                    })
                };
                let giving: Vec<usize> = seats().map(|(at, _)| at).filter(gives).collect();
                let may_come = giving.is_empty() && givers[need].iter().any(|kind| stands_between(*kind));
                OpenNeed { need, seats: if may_come { between.clone() } else { giving } }
            });
            let open = open.collect();
            self.question.machines[machine].open = open;
        }
        self.question.connectors = names;
        self.question.takes = takes;
    }
}

/// Connectors, each with how many.
type Plugs = Vec<(usize, u32)>;

/// What a part's design needs and offers, each connector once.
fn plugs(answers: &PartAnswers, connectors: &mut BTreeMap<String, usize>) -> (Plugs, Plugs) {
    let (mut needs, mut offers) = (BTreeMap::new(), BTreeMap::new());
    for row in answers.design.iter().flat_map(|design| &design.connectors) {
        let next = connectors.len();
        let at = *connectors.entry(row.connector.clone()).or_insert(next);
        let list = if row.side == Side::Offers { &mut offers } else { &mut needs };
        *list.entry(at).or_insert(0) += row.count;
    }
    (needs.into_iter().collect(), offers.into_iter().collect())
}
