//! A proposal made ready to be drawn: machines as columns, contested kinds as lanes, parts as slips, what is missing as gaps.

use std::collections::HashMap;
use std::sync::Arc;

use crate::assess::placement::{Asked, Move, Proposal, Seated, Term};
use crate::assess::reason::{machine_name, role_name};
use crate::record::{Kind, Logbook, MachineId, PartId, RoleId, Word};
use crate::window::desks::machines::window_text;
use crate::{counted, text};

/// How a part stands to its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// Fitted or planned there already.
    Stays,
    Comes,
    /// Held there by a pin of the logbook.
    Pinned,
    /// Held there by a pin of this desk.
    Tried,
    LeftOver,
}

impl Standing {
    /// In a word.
    pub fn word(self) -> &'static str {
        match self {
            Self::Stays => text!("stays"),
            Self::Comes => text!("comes here"),
            Self::Pinned => text!("pinned"),
            Self::Tried => text!("put here by you"),
            Self::LeftOver => text!("left over"),
        }
    }
}

/// A part that was asked about.
pub struct Slip {
    pub part: PartId,
    pub kind: Kind,
    pub tag: String,
    pub title: String,
    pub state: &'static str,
    /// Its column; `None` on the shelf.
    pub column: Option<usize>,
    pub standing: Standing,
    /// What it is, and where it is proposed for.
    pub name: String,
    /// Its grounds with their points.
    pub why: Vec<(String, i64)>,
}

/// A place that stays empty.
pub struct Gap {
    pub wish: String,
    pub required: bool,
}

/// A kind in one machine.
#[derive(Default)]
pub struct Cell {
    pub slips: Vec<usize>,
    pub gaps: Vec<Gap>,
    pub has_role: bool,
}

/// A kind over all machines.
pub struct Lane {
    pub kind: Kind,
    pub cells: Vec<Cell>,
    /// Spares that are left over, the most worth first.
    pub shelf: Vec<usize>,
    pub is_contested: bool,
    /// The most slips and gaps in one cell.
    pub rows: usize,
}

/// A machine.
pub struct Column {
    pub machine: MachineId,
    pub name: String,
    pub window: String,
    /// How complete it would be.
    pub stands: String,
    pub is_complete: bool,
    /// Places in lanes for which nobody competes.
    pub settled: usize,
}

/// A proposal with all that is drawn of it.
pub struct Found {
    pub proposal: Proposal,
    pub logbook: Arc<Logbook>,
    pub columns: Vec<Column>,
    pub lanes: Vec<Lane>,
    pub slips: Vec<Slip>,
    /// Moves that planning writes, in sentences.
    pub to_plan: Vec<String>,
    /// Moves that are left for the bench.
    pub at_bench: Vec<String>,
    /// What is missing, each with its machine.
    pub wishes: Vec<(String, String)>,
    /// Machines in the order in which they can be ready.
    pub outlook: Vec<String>,
    /// Placed parts of which nobody has said what they need and offer.
    pub unknown: usize,
    /// Machines past their tests that are left as they are.
    pub left_alone: usize,
    by_part: HashMap<PartId, usize>,
}

impl Found {
    /// What is drawn of a proposal. Not for the window's thread.
    pub fn of(asked: &Asked, proposal: Proposal, logbook: Arc<Logbook>) -> Self {
        let (slips, lanes) = (slips(asked, &proposal), Vec::new());
        let wishes = proposal.wishes.iter();
        let wishes =
            wishes.map(|wish| (machine_name(&logbook, wish.machine), wish.line(asked.logbook, asked.rules))).collect();
        let unknown = |seated: &&Seated| seated.why.iter().any(|(term, _)| *term == Term::ConnectorsUnknown);
        let (at_bench, to_plan): (Vec<&Move>, Vec<&Move>) =
            proposal.moves.iter().partition(|one| one.is_for_bench(&logbook));
        let is_tried = |part: PartId| asked.ask.pins.iter().any(|(known, _)| *known == part);
        let sentence = |one: &&Move| match one {
            Move::Plan { part, .. } | Move::Replan { part, .. } | Move::Refit { part, .. } if is_tried(*part) => {
                format!("{} {}", one.told(asked), text!("It is pinned there."))
            }
            _ => one.told(asked),
        };
        let sentences = |moves: Vec<&Move>| moves.iter().map(sentence).collect();
        let mut found = Self {
            to_plan: sentences(to_plan),
            at_bench: sentences(at_bench),
            wishes,
            outlook: proposal.outlook.iter().map(|of| of.sentence(asked)).collect(),
            unknown: proposal.placed.iter().filter(unknown).count(),
            left_alone: asked.machines.iter().filter(|machine| asked.alone.holds(**machine)).count(),
            columns: columns(asked, &proposal),
            by_part: slips.iter().enumerate().map(|(at, slip)| (slip.part, at)).collect(),
            proposal,
            logbook,
            lanes,
            slips,
        };
        found.lanes = found.lay_out(asked);
        for lane in found.lanes.iter().filter(|lane| !lane.is_contested) {
            for (column, cell) in found.columns.iter_mut().zip(&lane.cells) {
                column.settled += cell.slips.len();
            }
        }
        found
    }

    /// The slip of a part.
    pub fn slip(&self, part: PartId) -> Option<&Slip> {
        self.by_part.get(&part).map(|at| &self.slips[*at])
    }

    /// How many machines would have all that they require.
    pub fn complete(&self) -> usize {
        self.columns.iter().filter(|column| column.is_complete).count()
    }

    /// The one sentence about it.
    pub fn sentence(&self) -> String {
        let of = counted!("{count} machine", "{count} machines", self.columns.len());
        let moves = match (self.to_plan.len(), self.at_bench.len()) {
            (0, 0) => text!("nothing to move").to_owned(),
            (0, left) => counted!("{count} move left for the bench", "{count} moves left for the bench", left),
            (to_plan, left) => counted!("{count} move", "{count} moves", to_plan + left),
        };
        let whole = text!(
            "{complete} of {machines} get all their required roles; {moves}.",
            complete = self.complete(),
            machines = of,
            moves = moves
        );
        if self.proposal.is_proven() {
            return text!("Proven best: {whole}", whole = whole);
        }
        let short = self.proposal.bound - self.proposal.worth;
        text!(
            "Best found so far, at most {short} points short of the best possible: {whole}",
            short = short,
            whole = whole
        )
    }

    fn lay_out(&self, asked: &Asked) -> Vec<Lane> {
        let Self { logbook, proposal, slips, .. } = self;
        let mut lanes = Vec::new();
        for kind in Kind::ALL {
            let of_kind = |at: &usize| slips[*at].kind == *kind;
            let own: Vec<usize> = (0..slips.len()).filter(of_kind).collect();
            let mut cells: Vec<Cell> = asked.machines.iter().map(|_| Cell::default()).collect();
            for (cell, file) in cells.iter_mut().zip(&logbook.machines) {
                cell.has_role = file.roles.iter().any(|role| role.takes(*kind));
                let wishes = proposal.wishes.iter().filter(|wish| wish.machine == file.machine.id);
                let wishes = wishes.filter(|wish| wish.role.is_some() && wish.kind == Some(*kind));
                cell.gaps = wishes
                    .map(|wish| Gap { wish: wish.line(asked.logbook, asked.rules), required: wish.required })
                    .collect();
            }
            for at in &own {
                if let Some(column) = slips[*at].column {
                    cells[column].slips.push(*at);
                }
            }
            if !cells.iter().any(|cell| cell.has_role || !cell.slips.is_empty()) {
                continue;
            }
            let shelf: Vec<usize> = own.iter().copied().filter(|at| slips[*at].column.is_none()).collect();
            let moves = own.iter().any(|at| matches!(slips[*at].standing, Standing::Comes | Standing::Tried));
            let is_contested = moves || !shelf.is_empty() || cells.iter().any(|cell| !cell.gaps.is_empty());
            let rows = cells.iter().map(|cell| cell.slips.len() + cell.gaps.len()).max().unwrap_or(0).max(1);
            lanes.push(Lane { kind: *kind, cells, shelf, is_contested, rows });
        }
        lanes
    }
}

fn columns(asked: &Asked, proposal: &Proposal) -> Vec<Column> {
    let files = asked.logbook.machines.iter();
    files
        .map(|file| {
            let outlook = proposal.outlook.iter().find(|of| of.machine == file.machine.id);
            let missing = outlook.map_or(0, |of| of.missing);
            Column {
                machine: file.machine.id,
                name: file.machine.name.clone(),
                window: window_text(file),
                stands: if missing == 0 {
                    text!("complete").to_owned()
                } else {
                    counted!("{count} place empty", "{count} places empty", missing as usize)
                },
                is_complete: missing == 0,
                settled: 0,
            }
        })
        .collect()
}

/// Slips of all parts that were asked about: those placed in order, then those left over, the most worth first.
fn slips(asked: &Asked, proposal: &Proposal) -> Vec<Slip> {
    let mut slips: Vec<Slip> =
        proposal.placed.iter().filter_map(|seated| slip(asked, seated.part, Some(seated))).collect();
    let left = asked.question.spares.iter().enumerate().filter(|(at, _)| proposal.answer.taken[*at].is_none());
    let mut left: Vec<(i64, usize)> =
        left.filter_map(|(at, spare)| Some((spare.options.iter().map(|choice| choice.worth).max()?, at))).collect();
    left.sort_by_key(|(worth, at)| (-worth, *at));
    slips.extend(left.into_iter().filter_map(|(_, at)| slip(asked, asked.parts[at], None)));
    slips
}

fn slip(asked: &Asked, part: PartId, seated: Option<&Seated>) -> Option<Slip> {
    let logbook = asked.logbook;
    let file = logbook.part(part)?;
    let (tag, title) = (file.part.tag.clone(), logbook.title_of(file));
    let is_tried = asked.ask.pins.iter().any(|(known, _)| *known == part);
    let standing = match seated {
        None => Standing::LeftOver,
        Some(_) if is_tried => Standing::Tried,
        Some(seated) if is_pinned(logbook, seated) => Standing::Pinned,
        Some(seated) if is_there(logbook, seated) => Standing::Stays,
        Some(_) => Standing::Comes,
    };
    let name = match seated {
        None => text!("{tag} {title}, left over", tag = tag, title = title),
        Some(seated) => text!(
            "{tag} {title}, proposed for {machine}: {role} ({standing})",
            tag = tag,
            title = title,
            machine = machine_name(logbook, seated.machine),
            role = seat_text(logbook, seated.machine, seated.role, file.part.kind),
            standing = standing.word()
        ),
    };
    Some(Slip {
        part,
        kind: file.part.kind,
        tag,
        title,
        state: asked.answers.part(part).map_or("", |answers| answers.state.label()),
        column: seated.and_then(|seated| asked.machines.iter().position(|known| *known == seated.machine)),
        standing,
        name,
        why: seated.iter().flat_map(|seated| &seated.why).map(|(term, points)| (term.said(), *points)).collect(),
    })
}

/// A role's name, or the kind of what stands between others.
pub fn seat_text(logbook: &Logbook, machine: MachineId, role: Option<RoleId>, kind: Kind) -> String {
    role.map_or_else(|| kind.label().to_owned(), |role| role_name(logbook, machine, role))
}

fn is_pinned(logbook: &Logbook, seated: &Seated) -> bool {
    let file = logbook.machine(seated.machine);
    file.is_some_and(|file| file.placements.iter().any(|plan| plan.part == seated.part && plan.pinned))
}

fn is_there(logbook: &Logbook, seated: &Seated) -> bool {
    let file = logbook.machine(seated.machine);
    let there = |(part, role, _): &(PartId, Option<RoleId>, bool)| {
        *part == seated.part && role.is_none_or(|role| Some(role) == seated.role)
    };
    file.is_some_and(|file| file.parts().iter().any(there))
}

impl Gap {
    /// How much it is missed, in a word.
    pub fn word(&self) -> &'static str {
        if self.required { text!("Empty") } else { text!("Empty, optional") }
    }
}
