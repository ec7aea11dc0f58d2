//! Where blocks and lines of the drawing stand, in points from its corner: the board in the middle, what plugs into it
//! on both sides, supply and case with theirs below.

use egui::{Pos2, Rect, pos2, vec2};

use super::gathered::Shown;
use super::tree::{Branch, What};
use crate::record::Kind;
use crate::window::theme::GRID;

/// The height of a part.
const BLOCK: f32 = 12.0 * GRID;
/// The height of a line that leads to no part, or of one line of several to the same part.
pub const ROW: f32 = 6.0 * GRID;
const GAP: f32 = 2.0 * GRID;
const INDENT: f32 = 6.0 * GRID;
/// Supply and case stand side by side from this width on.
const SIDE_BY_SIDE: f32 = 225.0 * GRID;
/// A part that hangs on nothing is about so wide.
const LOOSE: f32 = 60.0 * GRID;

/// One thing where it stands.
pub struct Item {
    pub what: What,
    pub rect: Rect,
    pub wires: Vec<Wire>,
}

/// One line from a host to a thing.
pub struct Wire {
    pub points: Vec<Pos2>,
    /// Where its words stand; nowhere for what says them itself.
    pub label: Option<Rect>,
    /// Its place among the lines; `None` for an open end.
    pub line: Option<usize>,
}

/// The whole drawing.
#[derive(Default)]
pub struct Layout {
    pub items: Vec<Item>,
    pub height: f32,
}

/// A column of things beside the edge of what they hang on.
struct Column {
    left: f32,
    width: f32,
    /// The host's edge.
    edge: f32,
}

impl Layout {
    pub fn of(shown: &Shown, branches: &[Branch], width: f32) -> Self {
        let kind = |branch: &Branch| match branch.what {
            What::Block(at) => shown.blocks[at].kind,
            _ => Kind::Other,
        };
        let mut layout = Self::default();
        let boards = branches.iter().filter(|branch| kind(branch) == Kind::Mainboard);
        for board in boards {
            layout.between(board, width);
        }
        let is_host = |branch: &&Branch| matches!(kind(branch), Kind::PowerSupply | Kind::Case);
        let hosts: Vec<&Branch> = branches.iter().filter(is_host).collect();
        let in_row = if width >= SIDE_BY_SIDE { 2 } else { 1 };
        let half = (width - (in_row - 1) as f32 * 6.0 * GRID) / in_row as f32;
        for row in hosts.chunks(in_row) {
            let top = layout.height;
            for (at, host) in row.iter().enumerate() {
                layout.beside(host, at as f32 * (half + 6.0 * GRID), top, half);
            }
        }
        let rest: Vec<&Branch> =
            branches.iter().filter(|branch| kind(branch) != Kind::Mainboard && !is_host(branch)).collect();
        let in_row = ((width / LOOSE) as usize).max(1);
        let cell = width / in_row as f32;
        for row in rest.chunks(in_row) {
            let top = layout.height;
            for (at, branch) in row.iter().enumerate() {
                let bottom = layout.block(branch, at as f32 * cell, top, cell - GAP, Vec::new());
                layout.grow(bottom + 2.0 * GAP);
            }
        }
        layout
    }

    fn grow(&mut self, bottom: f32) {
        self.height = self.height.max(bottom);
    }

    /// The board between two columns.
    fn between(&mut self, board: &Branch, width: f32) {
        let top = self.height;
        let own = (0.18 * width).clamp(36.0 * GRID, 56.0 * GRID);
        let gap = (0.14 * width).clamp(27.0 * GRID, 44.0 * GRID);
        let column = (width - own - 2.0 * gap) / 2.0;
        let (left, right) = board.beneath.split_at(halved(&board.beneath));
        let edge = column + gap;
        let one = self.column(left, &Column { left: 0.0, width: column, edge }, top);
        let right_column = Column { left: edge + own + gap, width: column, edge: edge + own };
        let other = self.column(right, &right_column, top);
        let bottom = one.max(other).max(top + BLOCK);
        let rect = Rect::from_min_max(pos2(edge, top), pos2(edge + own, bottom));
        self.items.push(Item { what: board.what, rect, wires: Vec::new() });
        self.grow(bottom + 6.0 * GRID);
    }

    /// A host with one column beside it.
    fn beside(&mut self, host: &Branch, left: f32, top: f32, width: f32) {
        let own = (0.3 * width).clamp(30.0 * GRID, 56.0 * GRID);
        let gap = (0.28 * width).clamp(24.0 * GRID, 44.0 * GRID);
        let edge = left + own;
        let column = Column { left: edge + gap, width: width - own - gap, edge };
        let bottom = self.column(&host.beneath, &column, top).max(top + BLOCK);
        let rect = Rect::from_min_max(pos2(left, top), pos2(edge, bottom));
        self.items.push(Item { what: host.what, rect, wires: Vec::new() });
        self.grow(bottom + 6.0 * GRID);
    }

    /// Things one below the other; gives where the last one ends.
    fn column(&mut self, branches: &[Branch], column: &Column, top: f32) -> f32 {
        let is_left = column.left < column.edge;
        let (near, far) =
            if is_left { (column.left + column.width, column.left) } else { (column.left, column.left + column.width) };
        let mut y = top;
        for branch in branches {
            let bottom = if let What::Block(_) = branch.what {
                let own = own_height(branch);
                let each = own / branch.lines.len().max(1) as f32;
                let wires = branch.lines.iter().enumerate().map(|(at, line)| {
                    let y = y + (at as f32 + 0.5) * each;
                    Wire {
                        points: vec![pos2(column.edge, y), pos2(near, y)],
                        label: Some(above(column.edge, near, y)),
                        line: Some(*line),
                    }
                });
                let wires = wires.collect();
                self.block(branch, column.left, y, column.width, wires)
            } else {
                let middle = y + ROW / 2.0;
                let is_open = !matches!(branch.what, What::Again(_));
                let reach = if is_open { column.edge + 0.25 * (near - column.edge) } else { near };
                let beyond = if is_left { -2.0 * GRID } else { 2.0 * GRID };
                let rect = Rect::from_two_pos(pos2(reach + beyond, y), pos2(far, y + ROW));
                let points = vec![pos2(column.edge, middle), pos2(reach, middle)];
                let label = (!is_open).then(|| above(column.edge, near, middle));
                let wire = Wire { points, label, line: branch.lines.first().copied() };
                self.items.push(Item { what: branch.what, rect, wires: vec![wire] });
                y + ROW
            };
            y = bottom + GAP;
        }
        y - GAP
    }

    /// A part with all that hangs on it below; gives where that ends.
    fn block(&mut self, branch: &Branch, left: f32, top: f32, width: f32, wires: Vec<Wire>) -> f32 {
        let rect = Rect::from_min_size(pos2(left, top), vec2(width, own_height(branch)));
        self.items.push(Item { what: branch.what, rect, wires });
        let trunk = left + INDENT / 2.0;
        let mut y = rect.bottom();
        for inner in &branch.beneath {
            let start = pos2(trunk, rect.bottom());
            y += GAP / 2.0;
            let inset = left + INDENT;
            if let What::Block(_) = inner.what {
                let rows = inner.lines.len() as f32 * ROW;
                let middle = y + rows + own_height(inner) / 2.0;
                let wires = inner.lines.iter().enumerate().map(|(at, line)| {
                    let label = Rect::from_min_size(pos2(inset, y + at as f32 * ROW), vec2(width - INDENT, ROW));
                    let points = vec![start, pos2(trunk, middle), pos2(inset, middle)];
                    Wire { points, label: Some(label), line: Some(*line) }
                });
                let wires = wires.collect();
                y = self.block(inner, inset, y + rows, width - INDENT, wires);
            } else {
                let middle = y + ROW / 2.0;
                let rect = Rect::from_min_size(pos2(inset + 2.0 * GRID, y), vec2(width - INDENT - 2.0 * GRID, ROW));
                let points = vec![start, pos2(trunk, middle), pos2(inset, middle)];
                let wire = Wire { points, label: None, line: inner.lines.first().copied() };
                self.items.push(Item { what: inner.what, rect, wires: vec![wire] });
                y += ROW;
            }
        }
        y
    }
}

/// The words above a level line.
fn above(one: f32, other: f32, y: f32) -> Rect {
    Rect::from_two_pos(pos2(one, y - 4.5 * GRID), pos2(other, y - 0.25 * GRID)).shrink2(vec2(GRID, 0.0))
}

/// Where a list is cut so that the taller half is as low as can be.
fn halved(branches: &[Branch]) -> usize {
    let tall = |branches: &[Branch]| branches.iter().map(|branch| height(branch) + GAP).sum::<f32>();
    let taller = |at: &usize| tall(&branches[..*at]).max(tall(&branches[*at..]));
    (0..=branches.len()).min_by(|one, other| taller(one).total_cmp(&taller(other))).unwrap_or_default()
}

/// Without what hangs on it.
fn own_height(branch: &Branch) -> f32 {
    (branch.lines.len() as f32 * ROW).max(BLOCK)
}

fn height(branch: &Branch) -> f32 {
    let What::Block(_) = branch.what else { return ROW };
    let inner = |inner: &Branch| {
        let labels = if let What::Block(_) = inner.what { inner.lines.len() as f32 * ROW } else { 0.0 };
        GAP / 2.0 + labels + height(inner)
    };
    own_height(branch) + branch.beneath.iter().map(inner).sum::<f32>()
}
