//! A mark while it is drawn: point after point by pointer or keys, or in one go with the button held.

use egui::{CursorIcon, EventFilter, Key, Modifiers, PointerButton, Pos2, Response, Sense, Shape, Stroke, Ui, Vec2};
use egui::{WidgetInfo, pos2};
use simplify_polyline::{Point, simplify};

use super::super::{Placed, Tool};
use super::edit::arrows;
use crate::window::theme::{GRID, Themed};
use crate::{counted, text};

/// How near a press must be to a point to mean it, points.
const NEAR: f32 = 2.0 * GRID;

/// How far a line by free hand may be off once points are left out, points.
const OFF: f32 = 1.0;

/// A mark that is half drawn.
pub struct Drawing {
    pub tool: Tool,
    /// Shares of the picture's width and height.
    points: Vec<[f32; 2]>,
    /// Where the keys set the next point, as a share; `None` until a key moves it.
    cursor: Option<[f32; 2]>,
    /// How many points stood when the line by free hand began.
    free_from: Option<usize>,
    wants_keys: bool,
}

/// What became of it in one frame.
#[derive(Default)]
pub struct Drawn {
    /// All its points, once it is finished.
    pub points: Option<Vec<[f32; 2]>>,
    /// By how much the picture is to be moved, points.
    pub pan: Vec2,
}

impl Drawing {
    /// Nothing drawn yet; takes the keys.
    pub fn new(tool: Tool) -> Self {
        Self { tool, points: Vec::new(), cursor: None, free_from: None, wants_keys: true }
    }

    /// How many points are set.
    pub fn set(&self) -> usize {
        self.points.len()
    }

    /// Gives up what is drawn; `false` when nothing was.
    pub fn give_up(&mut self) -> bool {
        self.free_from = None;
        !std::mem::take(&mut self.points).is_empty()
    }

    /// Has the keys go to the picture.
    pub fn take_keys(&mut self) {
        self.wants_keys = true;
    }

    /// Draws what is set so far and takes the next point.
    pub fn ui(&mut self, ui: &Ui, placed: &Placed) -> Drawn {
        let response = ui.interact(placed.area, ui.scope_id().with("drawing"), Sense::click_and_drag());
        if std::mem::take(&mut self.wants_keys) {
            response.request_focus();
        }
        let mut drawn = Drawn::default();
        let is_done = self.pointer(&response, placed, &mut drawn) | self.keys(ui, &response, placed, &mut drawn);
        self.paint(ui, &response, placed);
        let set = counted!("{count} point set", "{count} points set", self.set());
        let name = text!("{tool}: {points}", tool = self.tool.word(), points = set);
        response.widget_info(|| WidgetInfo::labeled(egui::Role::Image, true, &name));
        response.on_hover_cursor(CursorIcon::Crosshair);
        if is_done {
            drawn.points = Some(std::mem::take(&mut self.points));
        }
        drawn
    }

    fn pointer(&mut self, response: &Response, placed: &Placed, drawn: &mut Drawn) -> bool {
        let at = response.interact_pointer_pos();
        let by_other = response.dragged_by(PointerButton::Secondary) || response.dragged_by(PointerButton::Middle);
        if by_other || (!self.tool.is_free() && response.dragged()) {
            drawn.pan = response.drag_delta();
            return false;
        }
        if self.tool.is_free() && response.dragged_by(PointerButton::Primary) {
            if self.free_from.is_none() {
                self.free_from = Some(self.set());
                let began = response.ctx.input(|input| input.pointer.press_origin());
                self.points.extend(began.map(|at| placed.share_within(at)));
            }
            if let Some(at) = at {
                self.points.push(placed.share_within(at));
            }
        }
        if response.drag_stopped()
            && let Some(from) = self.free_from.take()
        {
            let free = self.points.split_off(from);
            self.points.extend(thinned(&free, placed));
            return from == 0 && self.has_enough();
        }
        let Some(at) = at.filter(|at| response.clicked() && placed.holds(*at)) else { return false };
        self.cursor = Some(placed.share(at));
        self.set_at(at, placed)
    }

    /// Sets a point; `true` when that was the last.
    fn set_at(&mut self, at: Pos2, placed: &Placed) -> bool {
        let meets = |point: Option<&[f32; 2]>| point.is_some_and(|point| placed.at(*point).distance(at) <= NEAR);
        let (_, most) = self.tool.points();
        if self.has_enough()
            && most.is_none()
            && (meets(self.points.last()) || (self.tool.is_free() && meets(self.points.first())))
        {
            return true;
        }
        // The second half of a double click is no point of its own.
        if !meets(self.points.last()) {
            self.points.push(placed.share_within(at));
        }
        most == Some(self.set())
    }

    fn has_enough(&self) -> bool {
        self.set() >= self.tool.points().0
    }

    fn keys(&mut self, ui: &Ui, response: &Response, placed: &Placed, drawn: &mut Drawn) -> bool {
        if !response.has_focus() {
            return false;
        }
        let filter = EventFilter { horizontal_arrows: true, vertical_arrows: true, escape: true, tab: false };
        ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
        let moved = arrows(ui, placed);
        let pressed = |key| ui.input_mut(|input| input.consume_key(Modifiers::NONE, key));
        let (enter, back) = (pressed(Key::Enter), pressed(Key::Backspace));
        if moved != Vec2::ZERO || (enter && self.cursor.is_none()) {
            let from = self.cursor.map_or(placed.area.center(), |cursor| placed.at(cursor));
            let to = placed.at(placed.share_within(from + moved));
            let within = to.clamp(placed.area.min, placed.area.max);
            drawn.pan = within - to;
            self.cursor = Some(placed.share_within(to));
        }
        if back {
            self.points.pop();
        }
        match self.cursor.filter(|_| enter) {
            Some(cursor) => self.set_at(placed.at(cursor), placed),
            None => false,
        }
    }

    fn paint(&self, ui: &Ui, response: &Response, placed: &Placed) {
        let tokens = ui.tokens();
        let painter = ui.painter().with_clip_rect(placed.area);
        let mut line: Vec<Pos2> = self.points.iter().map(|point| placed.at(*point)).collect();
        let next = if response.has_focus() { self.cursor.map(|cursor| placed.at(cursor)) } else { None };
        line.extend(response.hover_pos().or(next));
        painter.add(Shape::line(line.clone(), Stroke::new(4.0, tokens.page)));
        painter.add(Shape::line(line, Stroke::new(2.0, tokens.press)));
        // Every point of a line by free hand would hide the line.
        if self.free_from.is_none() {
            for point in &self.points {
                painter.circle(placed.at(*point), GRID, tokens.page, Stroke::new(2.0, tokens.press));
            }
        }
        if let Some(at) = next {
            cross(&painter, at, Stroke::new(4.0, tokens.page));
            cross(&painter, at, Stroke::new(2.0, tokens.press));
        }
    }
}

/// Where the keys are.
fn cross(painter: &egui::Painter, at: Pos2, stroke: Stroke) {
    let half = 3.0 * GRID;
    painter.hline(at.x - half..=at.x + half, at.y, stroke);
    painter.vline(at.x, at.y - half..=at.y + half, stroke);
}

/// A line by free hand with the points that matter, the last one left out where it comes back to the first.
fn thinned(free: &[[f32; 2]], placed: &Placed) -> Vec<[f32; 2]> {
    let points: Vec<Point<2, f32>> = free.iter().map(|share| Point { vec: placed.at(*share).into() }).collect();
    let mut thinned = simplify(&points, OFF, true);
    let is_back = thinned.len() > 3
        && thinned.first().zip(thinned.last()).is_some_and(|(first, last)| at(*first).distance(at(*last)) <= NEAR);
    if is_back {
        thinned.pop();
    }
    thinned.iter().map(|point| placed.share_within(at(*point))).collect()
}

fn at(point: Point<2, f32>) -> Pos2 {
    pos2(point.vec[0], point.vec[1])
}
