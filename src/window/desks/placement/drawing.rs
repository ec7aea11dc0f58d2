//! The question drawn: machines side by side, a lane for each contested kind, the shelf at the right edge.

use egui::{
    EventFilter, Id, Key, Modifiers, Rect, Response, Role, ScrollArea, Sense, Stroke, Ui, WidgetInfo, pos2, vec2,
};

use super::about::Said;
use super::found::{Column, Found};
use super::grid::{BAND, Columns, Grid, HEADING, LABEL, Placed, SHELF};
use super::lines::{lines_ui, rival_ui};
use super::slip::{gap_ui, line_of, paint, slip_ui};
use crate::record::{Kind, MachineId, PartId, Word};
use crate::window::theme::{GRID, TextRole, Themed};
use crate::{counted, text};

/// What was done to the drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Done {
    Choose(PartId),
    Put(PartId, MachineId),
    LeaveOut(PartId),
    /// More spares of a kind are to be drawn.
    More(Kind),
}

/// What is drawn beside the proposal.
pub struct Drawing<'a> {
    pub found: &'a Found,
    pub about: &'a [Said],
    pub chosen: Option<PartId>,
    /// Brings the chosen slip into view.
    pub follow: bool,
    pub shows_settled: bool,
}

impl Drawing<'_> {
    /// Draws it into the room that is left.
    pub fn ui(&self, ui: &mut Ui, more: impl Fn(Kind) -> usize) -> Option<Done> {
        let body = ui.available_rect_before_wrap();
        let id = ui.scope_id().with("drawing");
        let response = ui.interact(body, id, Sense::focusable_noninteractive());
        response.widget_info(|| WidgetInfo::labeled(Role::ListBox, true, name(self.found)));
        let mut turn = None;
        if response.has_focus() {
            let filter = EventFilter { horizontal_arrows: true, vertical_arrows: true, ..EventFilter::default() };
            ui.memory_mut(|memory| memory.set_focus_lock_filter(id, filter));
            if self.chosen.is_none() {
                ui.painter().rect_stroke(body, 2.0, Stroke::new(1.0, ui.tokens().press), egui::StrokeKind::Inside);
            }
            for key in [Key::ArrowLeft, Key::ArrowRight, Key::ArrowUp, Key::ArrowDown] {
                if ui.input_mut(|input| input.consume_key(Modifiers::NONE, key)) {
                    turn = Some(key);
                }
            }
        }
        let scroll = ScrollArea::both().id_salt("places").auto_shrink(false);
        let drawn = scroll.show_viewport(ui, |ui, viewport| {
            let grid = Grid::of(self.found, self.shows_settled, viewport.width(), more);
            let next = turn.and_then(|key| grid.next(self.chosen, key)).map(Done::Choose);
            self.inside_ui(ui, &grid, viewport, &response).or(next)
        });
        drawn.inner
    }

    fn inside_ui(&self, ui: &mut Ui, grid: &Grid, viewport: Rect, response: &Response) -> Option<Done> {
        ui.set_min_size(grid.size);
        let origin = ui.min_rect().min;
        let whole = ui.clip_rect();
        let shelf_left = viewport.max.x.min(grid.size.x) - SHELF;
        let shelf_x = origin.x + shelf_left;
        let heading_y = origin.y + viewport.min.y;
        let below = whole.intersect(Rect::everything_below(heading_y + HEADING));
        let machines = below.intersect(Rect::everything_left_of(shelf_x));
        let room = Room { origin, shelf_x, columns: grid.columns, machines, below };
        if let Some(chosen) = self.chosen.filter(|_| self.follow) {
            self.scroll_to(ui, grid, chosen, &room);
        }
        let mut done = None;
        let lanes = grid
            .lanes
            .iter()
            .filter(|placed| placed.top < viewport.max.y && placed.top + placed.height > viewport.min.y + HEADING);
        let lanes: Vec<&Placed> = lanes.collect();
        for placed in &lanes {
            Self::lane_ui(ui, placed, viewport, &room);
        }
        let mut machines = ui.new_child(egui::UiBuilder::new().max_rect(ui.max_rect()).id_salt("machines"));
        machines.set_clip_rect(room.machines);
        let mut shelf = ui.new_child(egui::UiBuilder::new().max_rect(ui.max_rect()).id_salt("shelf"));
        shelf.set_clip_rect(room.below);
        let (first, last) = room.in_view(self.found, viewport);
        for placed in &lanes {
            lines_ui(ui, placed, self, &room);
            for column in first..last {
                done = done.or(self.cell_ui(&machines, placed, column, &room, response));
            }
            done = done.or(self.shelf_ui(&mut shelf, placed, &room, response));
        }
        self.headings_ui(ui, (first, last), heading_y, &room, whole);
        done
    }

    fn lane_ui(ui: &Ui, placed: &Placed, viewport: Rect, room: &Room) {
        let tokens = ui.tokens();
        let y = room.origin.y + placed.top;
        let painter = ui.painter().with_clip_rect(room.below);
        let left = room.origin.x + viewport.min.x;
        painter.hline(left..=left + viewport.width(), y, Stroke::new(1.0, tokens.hairline));
        let label = placed.lane.kind.label();
        let at = painter.text(
            pos2(left, y + LABEL / 2.0),
            egui::Align2::LEFT_CENTER,
            label,
            TextRole::Strong.font(),
            tokens.ink,
        );
        let response =
            ui.interact(at.intersect(room.below), ui.scope_id().with(("lane", placed.lane.kind)), Sense::HOVER);
        response.widget_info(|| WidgetInfo::labeled(Role::Label, true, label));
    }

    fn cell_ui(&self, ui: &Ui, placed: &Placed, column: usize, room: &Room, focus: &Response) -> Option<Done> {
        let cell = &placed.lane.cells[column];
        let mut done = None;
        for (row, slip) in cell.slips.iter().enumerate() {
            let rect = placed.rect(column, row).translate(room.origin.to_vec2());
            done = done.or(self.one_ui(ui, rect, *slip, room, focus));
        }
        for (row, gap) in cell.gaps.iter().enumerate() {
            let rect = placed.rect(column, cell.slips.len() + row).translate(room.origin.to_vec2());
            gap_ui(ui, rect, gap, ui.scope_id().with(("gap", placed.lane.kind, column, row)));
        }
        done
    }

    fn shelf_ui(&self, ui: &mut Ui, placed: &Placed, room: &Room, focus: &Response) -> Option<Done> {
        let mut done = None;
        for (row, slip) in placed.lane.shelf[..placed.shown].iter().enumerate() {
            let rect = room.on_shelf(placed, row);
            done = done.or(self.one_ui(ui, rect, *slip, room, focus));
            rival_ui(ui, rect, self.about, self.found.slips[*slip].part);
        }
        let rest = placed.lane.shelf.len() - placed.shown;
        if rest > 0 {
            let rect = room.on_shelf(placed, placed.shown);
            let kind = placed.lane.kind;
            let word = counted!("{count} more…", "{count} more…", rest);
            let link = egui::Button::new(crate::window::widgets::body(&word).color(ui.tokens().press)).frame(false);
            let response = ui.put(rect, link);
            let name = text!("{more}: {kind} on the shelf", more = word, kind = kind.label());
            response.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
            if response.clicked() {
                done = Some(Done::More(kind));
            }
        }
        done
    }

    fn one_ui(&self, ui: &Ui, rect: Rect, slip: usize, room: &Room, focus: &Response) -> Option<Done> {
        let slip = &self.found.slips[slip];
        let response = slip_ui(ui, rect, slip, self.chosen == Some(slip.part), focus.has_focus());
        if response.clicked() {
            focus.request_focus();
            return Some(Done::Choose(slip.part));
        }
        let pointer = response.interact_pointer_pos()?;
        if response.dragged() {
            let tokens = ui.tokens();
            let painter = ui.ctx().layer_painter(egui::LayerId::new(egui::Order::Tooltip, Id::unique("dragged slip")));
            if let Some(Over::Machine(column)) = room.under(pointer, self.found) {
                let left = room.origin.x + room.columns.left(column);
                let over = Rect::from_x_y_ranges(left..=left + room.columns.width, room.machines.y_range());
                let stroke = Stroke::new(2.0, tokens.press);
                painter.rect_stroke(over.intersect(room.machines), 2.0, stroke, egui::StrokeKind::Inside);
            }
            paint(&painter, Rect::from_center_size(pointer, rect.size()), slip, tokens.selected, &tokens);
        }
        if response.drag_stopped() {
            return match room.under(pointer, self.found)? {
                Over::Machine(column) if slip.column != Some(column) => {
                    Some(Done::Put(slip.part, self.found.columns[column].machine))
                }
                Over::Shelf if slip.column.is_some() => Some(Done::LeaveOut(slip.part)),
                _ => None,
            };
        }
        None
    }

    fn headings_ui(&self, ui: &mut Ui, (first, last): (usize, usize), y: f32, room: &Room, whole: Rect) {
        let tokens = ui.tokens();
        let band = Rect::from_x_y_ranges(whole.x_range(), y..=y + HEADING).intersect(whole);
        ui.painter().rect_filled(band, 0.0, tokens.page);
        for column in first..last {
            let left = room.origin.x + room.columns.left(column);
            let rect = Rect::from_min_size(pos2(left, y), vec2(room.columns.width, HEADING));
            let clip = rect.intersect(Rect::everything_left_of(room.shelf_x)).intersect(whole);
            column_ui(ui, rect, clip, &self.found.columns[column]);
        }
        let x = room.shelf_x;
        ui.painter().vline(x, whole.y_range(), Stroke::new(1.0, tokens.hairline));
        let left = x + 2.0 * GRID;
        let title = ui.painter().text(
            pos2(left, y + 0.5 * GRID),
            egui::Align2::LEFT_TOP,
            text!("Left over"),
            TextRole::Strong.font(),
            tokens.ink,
        );
        let width = SHELF - 4.0 * GRID;
        let line = |number: f32| pos2(left, title.bottom() + (2.5 + 4.0 * number) * GRID);
        line_of(ui.painter(), line(0.0), width, text!("spares with a use"), tokens.ink_weak);
        let all = self.found.columns.len();
        if last - first < all {
            let said = text!("beside machines {first} to {last} of {all}", first = first + 1, last = last, all = all);
            line_of(ui.painter(), line(1.0), width, &said, tokens.ink_weak);
            let rect = Rect::from_center_size(line(1.0) + vec2(width / 2.0, 0.0), vec2(width, 4.0 * GRID));
            let response = ui.interact(rect, ui.scope_id().with("machines in view"), Sense::HOVER);
            response.widget_info(|| WidgetInfo::labeled(Role::Label, true, &said));
        }
    }

    fn scroll_to(&self, ui: &Ui, grid: &Grid, part: PartId, room: &Room) {
        let Some((_, column, at)) = grid.slips().find(|(slip, ..)| self.found.slips[*slip].part == part) else {
            return;
        };
        let mut rect = Rect::from_min_size(at, grid.lanes[0].on_shelf(0).size()).translate(room.origin.to_vec2());
        if column == self.found.columns.len() {
            // The shelf is always in view.
            rect = rect.translate(vec2(room.shelf_x - room.origin.x - grid.columns.left(column), 0.0));
        } else {
            rect.max.x += SHELF;
        }
        rect.min.y -= HEADING + LABEL + BAND;
        ui.scroll_to_rect(rect.expand(GRID), None);
    }
}

/// Where things are on the screen.
pub struct Room {
    /// Where the drawing begins; outside the window once it is scrolled.
    pub origin: egui::Pos2,
    pub shelf_x: f32,
    pub columns: Columns,
    /// What is seen of the machines.
    pub machines: Rect,
    /// What is seen below the heading.
    pub below: Rect,
}

/// What a slip is dragged over.
enum Over {
    Machine(usize),
    Shelf,
}

impl Room {
    /// The rectangle of a spare on the shelf.
    pub fn on_shelf(&self, placed: &Placed, row: usize) -> Rect {
        placed.on_shelf(row).translate(vec2(self.shelf_x, self.origin.y))
    }

    /// What a point is over.
    fn under(&self, point: egui::Pos2, found: &Found) -> Option<Over> {
        if self.machines.contains(point) {
            let column = self.columns.at(point.x - self.origin.x);
            return (column < found.columns.len()).then_some(Over::Machine(column));
        }
        self.below.contains(point).then_some(Over::Shelf)
    }

    /// The machines in view, those behind the shelf left out.
    fn in_view(&self, found: &Found, viewport: Rect) -> (usize, usize) {
        let first = self.columns.at(viewport.min.x);
        let last = self.columns.at(self.shelf_x - self.origin.x - 1.0) + 1;
        (first.min(found.columns.len()), last.min(found.columns.len()))
    }
}

fn name(found: &Found) -> String {
    text!(
        "Proposal: {machines}, {slips}",
        machines = counted!("{count} machine", "{count} machines", found.columns.len()),
        slips = counted!("{count} part", "{count} parts", found.slips.len())
    )
}

/// A machine's heading.
fn column_ui(ui: &Ui, rect: Rect, clip: Rect, column: &Column) {
    let tokens = ui.tokens();
    let painter = ui.painter().with_clip_rect(clip);
    let left = rect.left() + 2.0 * GRID;
    let width = rect.width() - 4.0 * GRID;
    let name = TextRole::Strong.font();
    let mut job = egui::text::LayoutJob::simple(column.name.clone(), name, tokens.ink, width);
    (job.wrap.max_rows, job.wrap.overflow_character) = (2, Some('…'));
    let galley = painter.layout_job(job);
    let below = rect.top() + GRID + galley.size().y;
    painter.galley(pos2(left, rect.top() + 0.5 * GRID), galley, tokens.ink);
    let colour = if column.is_complete { tokens.gate_passed } else { tokens.power_unknown };
    line_of(&painter, pos2(left, below + 2.0 * GRID), width, &column.window, tokens.ink_weak);
    let mut stands = column.stands.clone();
    if column.settled > 0 {
        stands.push_str(" · ");
        stands.push_str(&counted!("{count} settled", "{count} settled", column.settled));
    }
    line_of(&painter, pos2(left, below + 6.0 * GRID), width, &stands, colour);
    let response = ui.interact(rect.intersect(clip), ui.scope_id().with(("column", column.machine)), Sense::HOVER);
    let name = format!("{}, {}: {stands}", column.name, column.window);
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, &name));
    response.on_hover_text(&name);
}
