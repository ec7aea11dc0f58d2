//! Where columns, lanes and slips stand in the drawing.

use egui::{Key, Pos2, Rect, Vec2, pos2, vec2};

use super::found::{Found, Lane};
use crate::record::{Kind, PartId};
use crate::window::theme::GRID;

/// How wide a machine is drawn where there is room for all of them.
const COLUMN: f32 = 46.0 * GRID;
/// No narrower than this: as many machines as fit are drawn whole.
const LEAST_COLUMN: f32 = 40.0 * GRID;
/// How wide the shelf is drawn.
pub const SHELF: f32 = 46.0 * GRID;
/// How high the machines' heading is: a name of up to two lines, and two lines of small text.
pub const HEADING: f32 = 21.0 * GRID;
/// How high a slip or gap is.
const SLIP: f32 = 10.0 * GRID;
const STEP: f32 = 11.0 * GRID;
/// The lane's name.
pub const LABEL: f32 = 5.0 * GRID;
/// The room above the slips of a lane, where lines run and costs stand.
pub const BAND: f32 = 6.5 * GRID;
/// So many spares are drawn of a lane's shelf before more are asked for.
pub const SHOWN: usize = 5;

/// The lanes on show with their places.
pub struct Grid<'a> {
    pub found: &'a Found,
    pub lanes: Vec<Placed<'a>>,
    pub columns: Columns,
    pub size: Vec2,
}

/// How wide machines are drawn.
#[derive(Clone, Copy, Debug)]
pub struct Columns {
    pub width: f32,
}

impl Columns {
    /// So many machines beside the shelf in a room of this width.
    fn of(count: usize, room: f32) -> Self {
        let room = room - SHELF;
        if count as f32 * COLUMN <= room {
            return Self { width: COLUMN };
        }
        let whole = (room / LEAST_COLUMN).floor().clamp(1.0, count.max(1) as f32);
        Self { width: (room / whole).max(LEAST_COLUMN) }
    }

    /// The left edge of a machine, or of the shelf after the last of them.
    pub fn left(self, column: usize) -> f32 {
        column as f32 * self.width
    }

    /// The middle of a machine.
    pub fn middle(self, column: usize) -> f32 {
        self.left(column) + self.width / 2.0
    }

    /// The machine at a distance from the left edge of the first.
    pub fn at(self, x: f32) -> usize {
        (x / self.width).floor().max(0.0) as usize
    }
}

/// A lane with its place.
pub struct Placed<'a> {
    pub lane: &'a Lane,
    pub top: f32,
    pub height: f32,
    /// How many of its spares are drawn.
    pub shown: usize,
    columns: Columns,
}

impl<'a> Grid<'a> {
    /// The lanes of a proposal: contested ones, or all of them, in a room of this width. `more` says how many more
    /// spares of a kind are drawn.
    pub fn of(found: &'a Found, all: bool, room: f32, more: impl Fn(Kind) -> usize) -> Self {
        let columns = Columns::of(found.columns.len(), room);
        let mut lanes = Vec::new();
        let mut top = HEADING;
        for lane in found.lanes.iter().filter(|lane| all || lane.is_contested) {
            let shown = lane.shelf.len().min(SHOWN + more(lane.kind));
            let shelf_rows = shown + usize::from(shown < lane.shelf.len());
            let height = LABEL + BAND + lane.rows.max(shelf_rows) as f32 * STEP + 2.0 * GRID;
            lanes.push(Placed { lane, top, height, shown, columns });
            top += height;
        }
        Self { found, lanes, columns, size: vec2(columns.left(found.columns.len()) + SHELF, top + 2.0 * GRID) }
    }

    /// Where slips of the lane on show begin, and the slips there, with the column and row of each.
    pub fn slips(&self) -> impl Iterator<Item = (usize, usize, Pos2)> + '_ {
        self.lanes.iter().flat_map(move |placed| {
            let cells = placed.lane.cells.iter().map(|cell| &cell.slips[..]);
            let shelf = std::iter::once(&placed.lane.shelf[..placed.shown]);
            cells.chain(shelf).enumerate().flat_map(move |(column, slips)| {
                slips.iter().enumerate().map(move |(row, slip)| (*slip, column, placed.at(column, row)))
            })
        })
    }

    /// The slip next to another in the direction of an arrow key; the first one for none.
    pub fn next(&self, from: Option<PartId>, key: Key) -> Option<PartId> {
        let part = |slip: usize| self.found.slips[slip].part;
        let here = from.and_then(|from| self.slips().find(|(slip, ..)| part(*slip) == from));
        let Some((own, _, at)) = here else { return self.slips().next().map(|(slip, ..)| part(slip)) };
        let weight = |to: Pos2| -> Option<f32> {
            let by = to - at;
            let (along, across) = match key {
                Key::ArrowLeft => (-by.x, by.y),
                Key::ArrowRight => (by.x, by.y),
                Key::ArrowUp => (-by.y, by.x),
                _ => (by.y, by.x),
            };
            // What lies straight ahead comes before what lies nearer aside.
            (along > 0.5).then_some(along + 20.0 * across.abs())
        };
        let others = self.slips().filter(|(slip, ..)| *slip != own);
        let weighed = others.filter_map(|(slip, _, to)| Some((weight(to)?, slip)));
        weighed.min_by(|one, other| one.0.total_cmp(&other.0)).map(|(_, slip)| part(slip))
    }
}

impl Placed<'_> {
    /// The corner of a slip.
    pub fn at(&self, column: usize, row: usize) -> Pos2 {
        pos2(self.columns.left(column) + 2.0 * GRID, self.top + LABEL + BAND + row as f32 * STEP)
    }

    /// The rectangle of a slip in a machine.
    pub fn rect(&self, column: usize, row: usize) -> Rect {
        Rect::from_min_size(self.at(column, row), vec2(self.columns.width - 4.0 * GRID, SLIP))
    }

    /// The rectangle of a slip on the shelf, from its left edge on.
    pub fn on_shelf(&self, row: usize) -> Rect {
        Rect::from_min_size(self.at(0, row), vec2(SHELF - 4.0 * GRID, SLIP))
    }
}
