//! Retention: which mechanism on the shelf suits which board's posts, and which has to be bought.
//!
//! A board is told to take a mechanism by what its design offers, retention hardware to be one by its design, or, where
//! that is not known, by what its last survey says (see `resources/rules/retention.toml`). A board wants a mechanism
//! when its own work asks for it, or when a card or cooler of its machine finds none.

use std::collections::HashMap;
use std::sync::Arc;

use super::fit::{self, Uses};
use super::reason::part_name;
use super::{Answers, PartAnswers, Reason};
use crate::record::{Given, Kind, Logbook, MachineId, PartFile, PartId, Side};
use crate::rules::{RetentionRule, Rules};
use crate::text;

/// A mechanism that a board takes.
#[derive(Clone, Debug)]
pub struct Posts {
    pub rule: Arc<RetentionRule>,
    /// Whether something is to be held there and nothing holds it.
    pub is_wanted: bool,
    /// Retention hardware that suits: what is in the board's own machine first.
    pub suiting: Vec<Suiting>,
}

/// Retention hardware that suits a board.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Suiting {
    pub part: PartId,
    /// Fitted in or planned for a machine of the board's, and not lying on the shelf.
    pub is_with_it: bool,
}

/// A mechanism of which the shelf has fewer than boards want.
#[derive(Clone, Debug)]
pub struct Missing {
    pub rule: Arc<RetentionRule>,
    /// The boards that want it.
    pub boards: Vec<PartId>,
    /// How many are to be bought.
    pub count: usize,
}

/// Retention hardware in the workshop with the rules of what it is, and who is in which machine.
struct Shelf<'a> {
    hardware: Vec<(&'a PartAnswers, Vec<&'a str>)>,
    uses: Uses,
}

impl<'a> Shelf<'a> {
    fn of(answers: &'a Answers, logbook: &Logbook, rules: &'a Rules) -> Self {
        let known = answers.parts.iter().filter(|part| part.file.part.kind == Kind::Retention);
        let usable = known.filter(|part| part.file.custody_now().is_at_hand() && !part.file.part.is_quarantined());
        Self {
            hardware: usable.map(|part| (&**part, mechanisms_of(part, rules))).collect(),
            uses: fit::uses(logbook.machines.iter().map(|file| &**file)),
        }
    }

    fn machines_of(&self, part: PartId) -> impl Iterator<Item = MachineId> + '_ {
        self.uses.get(&part).into_iter().flatten().map(|(machine, _)| *machine)
    }

    /// What of it suits a board: in the board's own machine, or in none.
    fn suiting(&self, rule: &RetentionRule, board: PartId) -> Vec<Suiting> {
        let is_it = self.hardware.iter().filter(|(_, mechanisms)| mechanisms.contains(&rule.name.as_str()));
        let mut suiting: Vec<Suiting> = is_it
            .filter_map(|(part, _)| {
                let is_free = self.machines_of(part.part).next().is_none();
                let is_with_it = self.machines_of(part.part).any(|own| self.machines_of(board).any(|of| of == own));
                (is_free || is_with_it).then_some(Suiting { part: part.part, is_with_it })
            })
            .collect();
        suiting.sort_by_key(|one| !one.is_with_it);
        suiting
    }
}

/// The names of the rules by which a piece of retention hardware is a mechanism.
fn mechanisms_of<'r>(part: &PartAnswers, rules: &'r Rules) -> Vec<&'r str> {
    let by_design = |rule: &RetentionRule| {
        let connectors = part.design.iter().flat_map(|design| &design.connectors);
        connectors.clone().any(|row| row.connector == rule.mechanism)
    };
    let is_told = part.design.as_ref().is_some_and(|design| !design.connectors.is_empty());
    let is_it = |rule: &&Arc<RetentionRule>| if is_told { by_design(rule) } else { by_survey(&part.file, rule) };
    rules.retention.iter().filter(is_it).map(|rule| rule.name.as_str()).collect()
}

/// Whether the last look at hardware of no known design said so.
fn by_survey(file: &PartFile, rule: &RetentionRule) -> bool {
    says(file, &rule.answers)
}

/// Whether the last look at a board said that it has its own posts, lugs or frame.
pub(super) fn has_own(board: &PartFile, rule: &RetentionRule) -> bool {
    says(board, &rule.posts)
}

/// Whether the last answer to any of these questions is the one beside it.
fn says(file: &PartFile, answers: &[String]) -> bool {
    answers.iter().filter_map(|name| name.split_once('/')).any(|(question, said)| {
        let last = file.surveys_now().rev().find_map(|survey| survey.answer(question));
        last.is_some_and(|answer| matches!(&answer.given, Given::Is(given) if *given == said))
    })
}

/// The mechanisms that a part takes by its design: of a board, those that hold what sits in it.
fn taken<'r>(part: &'r PartAnswers, rules: &'r Rules) -> impl Iterator<Item = &'r Arc<RetentionRule>> {
    let offers = part.design.iter().flat_map(|design| &design.connectors).filter(|row| row.side == Side::Offers);
    let is_hardware = part.file.part.kind == Kind::Retention;
    rules
        .retention
        .iter()
        .filter(move |rule| !is_hardware && offers.clone().any(|row| rule.board.contains(&row.connector)))
}

/// Whether the work on a part asks for a mechanism.
fn is_called(part: &PartAnswers, rule: &RetentionRule) -> bool {
    part.tasks.iter().any(|task| task.materials().iter().any(|name| rule.called.contains(name)))
}

/// Of each part, connectors that its machine lacks.
type Unmet<'a> = HashMap<PartId, Vec<&'a str>>;

/// Of each board, the connectors of mechanisms that its machine lacks for certain.
fn unmet(answers: &Answers) -> Unmet<'_> {
    let mut unmet = Unmet::new();
    for machine in &answers.machines {
        for reason in machine.readiness.gates.iter().flat_map(|gate| &gate.reasons) {
            if let Reason::NeedUnmet { connector, is_certain: true, .. } = reason {
                for part in &machine.members {
                    unmet.entry(*part).or_default().push(connector);
                }
            }
        }
    }
    unmet
}

/// The mechanisms that a board takes, with what suits. Empty for a part that holds no card or cooler.
pub fn of_board(board: &PartAnswers, answers: &Answers, logbook: &Logbook, rules: &Rules) -> Vec<Posts> {
    let mut taken = taken(board, rules).peekable();
    if taken.peek().is_none() {
        return Vec::new();
    }
    let (shelf, unmet) = (Shelf::of(answers, logbook, rules), unmet(answers));
    let posts = |rule: &Arc<RetentionRule>| Posts {
        rule: Arc::clone(rule),
        is_wanted: is_wanted(rule, board, &unmet),
        suiting: shelf.suiting(rule, board.part),
    };
    taken.map(posts).collect()
}

fn is_wanted(rule: &RetentionRule, board: &PartAnswers, unmet: &Unmet<'_>) -> bool {
    let lacks = || unmet.get(&board.part).is_some_and(|lacking| lacking.contains(&rule.mechanism.as_str()));
    board.file.custody_now().is_at_hand() && (is_called(board, rule) || lacks())
}

/// The boards that a piece of retention hardware suits, in the order of their keys.
pub fn boards_of(hardware: &PartAnswers, answers: &Answers, rules: &Rules) -> Vec<PartId> {
    if hardware.file.part.kind != Kind::Retention {
        return Vec::new();
    }
    let own = mechanisms_of(hardware, rules);
    let here = answers.parts.iter().filter(|part| part.file.custody_now().is_at_hand());
    here.filter(|part| taken(part, rules).any(|rule| own.contains(&rule.name.as_str()))).map(|part| part.part).collect()
}

/// What boards want and the shelf does not have, by mechanism.
pub fn missing(answers: &Answers, logbook: &Logbook, rules: &Rules) -> Vec<Missing> {
    let (shelf, unmet) = (Shelf::of(answers, logbook, rules), unmet(answers));
    let of_rule = |rule: &Arc<RetentionRule>| {
        let takes = |board: &PartAnswers| taken(board, rules).any(|known| Arc::ptr_eq(known, rule));
        let wanting = answers.parts.iter().filter(|board| takes(board) && is_wanted(rule, board, &unmet));
        let suiting = |board: PartId| shelf.suiting(rule, board);
        let boards: Vec<PartId> =
            wanting.map(|board| board.part).filter(|board| suiting(*board).iter().all(|one| !one.is_with_it)).collect();
        // What lies free suits one of them as well as another.
        let free = boards.first().map_or(0, |board| suiting(*board).len());
        Missing { rule: Arc::clone(rule), count: boards.len().saturating_sub(free), boards }
    };
    rules.retention.iter().map(of_rule).filter(|missing| missing.count > 0).collect()
}

/// Whether what a task asks for is a mechanism that its board's design tells, so that it is named more closely than the
/// work's rule does.
pub fn is_told(part: &PartAnswers, name: &str, rules: &Rules) -> bool {
    taken(part, rules).any(|rule| rule.called.iter().any(|called| called == name))
}

impl Posts {
    /// What holds, and what on the shelf suits, for a person.
    pub fn sentence(&self, logbook: &Logbook, rules: &Rules) -> String {
        let mechanism = rules.connectors.label(&self.rule.mechanism);
        let named = |is_with_it: bool| {
            let parts = self.suiting.iter().filter(|one| one.is_with_it == is_with_it);
            parts.map(|one| part_name(logbook, one.part)).collect::<Vec<_>>().join("; ")
        };
        let (own, free) = (named(true), named(false));
        match (own.is_empty(), free.is_empty()) {
            (false, _) => text!("{mechanism}: with it already: {parts}", mechanism = mechanism, parts = own),
            (true, false) => {
                text!("{mechanism}: these on your shelf suit: {parts}", mechanism = mechanism, parts = free)
            }
            (true, true) if self.is_wanted => text!("{mechanism}: none on your shelf: to buy", mechanism = mechanism),
            (true, true) => text!("{mechanism}: none on your shelf", mechanism = mechanism),
        }
    }
}
