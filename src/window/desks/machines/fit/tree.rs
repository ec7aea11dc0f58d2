//! Who hangs on whom: the board with what plugs into it, then supply and case, then what plugs into nothing here.

use super::gathered::Shown;
use crate::record::Kind;
use crate::rules::connectors::Family;

/// One thing of the drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum What {
    /// A part, by its place among the blocks.
    Block(usize),
    /// A part that stands elsewhere, at the end of a line.
    Again(usize),
    /// A free connector.
    Open(usize),
    /// A need that finds no offer.
    Unmet(usize),
}

/// One thing with the lines by which it hangs on the one above it, and what hangs on it.
#[derive(Clone, Debug)]
pub struct Branch {
    pub what: What,
    pub lines: Vec<usize>,
    pub beneath: Vec<Branch>,
}

/// A part's own place is where its signals go; supply, case and cooler hang on it beside that.
fn rank(family: Option<Family>) -> usize {
    match family {
        Some(Family::Processor) => 0,
        Some(Family::Memory) => 1,
        Some(Family::Expansion) => 2,
        Some(Family::Disk) => 3,
        Some(Family::Floppy) => 4,
        Some(Family::Video) => 5,
        Some(Family::Input) => 6,
        Some(Family::Port) | None => 7,
        Some(Family::Mounting | Family::Outline) => 8,
        Some(Family::BoardPower | Family::DrivePower) => 9,
    }
}

fn is_root(kind: Kind) -> bool {
    matches!(kind, Kind::Mainboard | Kind::PowerSupply | Kind::Case)
}

/// All branches from their roots: board, supply, case, and what hangs on none of them.
pub fn branches(shown: &Shown) -> Vec<Branch> {
    let mut placed = vec![false; shown.blocks.len()];
    let mut roots = Vec::new();
    for kind in [Kind::Mainboard, Kind::PowerSupply, Kind::Case] {
        roots.extend((0..shown.blocks.len()).filter(|at| shown.blocks[*at].kind == kind));
    }
    for root in &roots {
        placed[*root] = true;
    }
    let mut branches: Vec<Branch> =
        roots.into_iter().map(|root| branch(shown, root, Vec::new(), &mut placed)).collect();
    for at in 0..shown.blocks.len() {
        // One that hangs on another comes with it, but for a ring, which begins anywhere.
        if !placed[at] && own_host(shown, at).is_none_or(|host| placed[host]) {
            placed[at] = true;
            branches.push(branch(shown, at, Vec::new(), &mut placed));
        }
    }
    for at in 0..shown.blocks.len() {
        if !std::mem::replace(&mut placed[at], true) {
            branches.push(branch(shown, at, Vec::new(), &mut placed));
        }
    }
    branches
}

/// The part that a part stands beside in the drawing.
fn own_host(shown: &Shown, at: usize) -> Option<usize> {
    let lines = shown.lines.iter().filter(|line| line.part == at && !is_root(shown.blocks[at].kind));
    lines.min_by_key(|line| rank(line.family)).map(|line| line.host)
}

fn branch(shown: &Shown, at: usize, lines: Vec<usize>, placed: &mut [bool]) -> Branch {
    let mut beneath = Vec::new();
    let unmet = shown.unmet.iter().enumerate().filter(|(_, unmet)| unmet.part == at);
    beneath.extend(unmet.map(|(unmet, _)| leaf(What::Unmet(unmet), Vec::new())));
    let mut here: Vec<usize> = (0..shown.lines.len()).filter(|line| shown.lines[*line].host == at).collect();
    here.sort_by_key(|line| rank(shown.lines[*line].family));
    let mut again = Vec::new();
    for line in here.iter().copied() {
        let part = shown.lines[line].part;
        if own_host(shown, part) != Some(at) {
            again.push(leaf(What::Again(part), vec![line]));
        } else if !std::mem::replace(&mut placed[part], true) {
            let lines = here.iter().copied().filter(|other| shown.lines[*other].part == part).collect();
            beneath.push(branch(shown, part, lines, placed));
        }
    }
    beneath.append(&mut again);
    let open = shown.open.iter().enumerate().filter(|(_, open)| open.host == at);
    beneath.extend(open.map(|(open, _)| leaf(What::Open(open), Vec::new())));
    Branch { what: What::Block(at), lines, beneath }
}

fn leaf(what: What, lines: Vec<usize>) -> Branch {
    Branch { what, lines, beneath: Vec::new() }
}
