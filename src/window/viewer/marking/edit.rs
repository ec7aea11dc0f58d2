//! A mark that is chosen: its points dragged or moved by keys, one added on an edge, one taken away.

use egui::{EventFilter, Id, Key, Modifiers, Pos2, Rect, Response, Sense, Stroke, Ui, Vec2, WidgetInfo, vec2};

use super::super::Placed;
use crate::record::{MarkUse, PhotoMark, PhotoMarkId};
use crate::text;
use crate::window::theme::{GRID, Themed};

/// The side of what is dragged, points.
const HANDLE: f32 = 6.0 * GRID;

/// An edge that is shorter than this has no room for a point of its own, points.
const SHORTEST: f32 = 10.0 * GRID;

/// Points that are being moved, not written yet.
#[derive(Clone, Debug)]
pub struct Moved {
    pub mark: PhotoMarkId,
    pub points: Vec<[f32; 2]>,
    /// Moved by keys: written when Enter is pressed or the point is left.
    by_keys: bool,
}

/// The chosen mark's points.
#[derive(Default)]
pub struct Handles {
    pub moved: Option<Moved>,
    /// The point that was last touched.
    pub point: Option<usize>,
}

impl Handles {
    /// Draws the points of a mark, as they are now; its new points once they are to be written.
    pub fn ui(&mut self, ui: &Ui, placed: &Placed, mark: &PhotoMark, number: usize) -> Option<Vec<[f32; 2]>> {
        let mut points = match &self.moved {
            Some(moved) if moved.mark == mark.id => moved.points.clone(),
            _ => mark.points.clone(),
        };
        let mut turn = Turn::default();
        if !has_fixed_count(mark) {
            self.edges_ui(ui, placed, mark, &mut points, &mut turn);
        }
        for at in 0..points.len() {
            let id = ui.scope_id().with(("point", mark.id, at));
            let name = text!("Point {point} of mark {number}", point = at + 1, number = number);
            let Some(response) = handle_ui(ui, placed, points[at], id, &name, self.point == Some(at)) else { continue };
            if response.clicked() || response.drag_started() || response.gained_focus() {
                self.point = Some(at);
            }
            turn.follow(ui, placed, &response, &mut points[at]);
            let is_gone = response.has_focus() && ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Delete));
            if is_gone && let Some(fewer) = without(mark, &points, at) {
                self.moved = None;
                return Some(fewer);
            }
        }
        self.note(ui, mark, points, &turn)
    }

    /// A place on each edge where a point can be added and dragged at once.
    fn edges_ui(&mut self, ui: &Ui, placed: &Placed, mark: &PhotoMark, points: &mut Vec<[f32; 2]>, turn: &mut Turn) {
        let is_closed = mark.role != MarkUse::Length;
        let edges = if is_closed { points.len() } else { points.len().saturating_sub(1) };
        for at in 0..edges {
            let (from, to) = (placed.at(points[at]), placed.at(points[(at + 1) % points.len()]));
            let middle = from + (to - from) / 2.0;
            if from.distance(to) < SHORTEST || !placed.area.contains(middle) {
                continue;
            }
            let rect = Rect::from_center_size(middle, Vec2::splat(0.75 * HANDLE));
            let response = ui.interact(rect, ui.scope_id().with(("edge", mark.id, at)), Sense::click_and_drag());
            let tokens = ui.tokens();
            let colour = if response.hovered() || response.has_focus() { tokens.press } else { tokens.ink_weak };
            ui.painter().circle(middle, GRID, tokens.page, Stroke::new(1.5, colour));
            let name = text!("Add a point after point {point}", point = at + 1);
            response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
            if response.clicked() || response.drag_started() {
                points.insert(at + 1, placed.share_within(response.interact_pointer_pos().unwrap_or(middle)));
                self.point = Some(at + 1);
                turn.is_changed = true;
                // From the next frame on the hand has the point itself: its place was the edge's until now.
                let point = ui.scope_id().with(("point", mark.id, at + 1));
                if response.drag_started() {
                    ui.ctx().set_dragged_id(point);
                    turn.is_held = true;
                } else {
                    turn.is_over = true;
                }
                return;
            }
        }
    }

    /// Keeps what is being moved, or hands it out to be written.
    fn note(&mut self, ui: &Ui, mark: &PhotoMark, points: Vec<[f32; 2]>, turn: &Turn) -> Option<Vec<[f32; 2]>> {
        let pending = self.moved.as_ref().is_some_and(|moved| moved.mark == mark.id);
        let by_keys = turn.by_keys || self.moved.as_ref().is_some_and(|moved| moved.by_keys);
        if pending && ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Escape)) {
            self.moved = None;
            return None;
        }
        let is_over = turn.is_over || (by_keys && !turn.is_focused);
        if (pending || turn.is_changed) && is_over {
            self.moved = None;
            return (points != mark.points).then_some(points);
        }
        if turn.is_changed {
            self.moved = Some(Moved { mark: mark.id, points, by_keys });
        } else if pending && !by_keys && !turn.is_held {
            // The hand let go outside the window.
            self.moved = None;
            return (points != mark.points).then_some(points);
        }
        None
    }
}

/// A mark's points without one; `None` where it needs every one it has.
pub fn without(mark: &PhotoMark, points: &[[f32; 2]], at: usize) -> Option<Vec<[f32; 2]>> {
    let fewest = if mark.role == MarkUse::Place { 3 } else { mark.role.points().0 };
    let left = points.len().checked_sub(1).filter(|left| *left >= fewest && !has_fixed_count(mark))?;
    let mut points = points.to_vec();
    points.remove(at.min(left));
    Some(points)
}

fn has_fixed_count(mark: &PhotoMark) -> bool {
    mark.role.points().1.is_some() || mark.points.len() < 2
}

/// What a hand did to the points in one frame.
#[derive(Default)]
struct Turn {
    is_changed: bool,
    /// Some point is dragged now.
    is_held: bool,
    /// It is done: let go, or Enter pressed.
    is_over: bool,
    by_keys: bool,
    is_focused: bool,
}

impl Turn {
    fn follow(&mut self, ui: &Ui, placed: &Placed, response: &Response, point: &mut [f32; 2]) {
        let mut moved = if response.dragged() { response.drag_delta() } else { Vec2::ZERO };
        self.is_held |= response.dragged();
        self.is_over |= response.drag_stopped();
        if response.has_focus() {
            self.is_focused = true;
            let filter = EventFilter { horizontal_arrows: true, vertical_arrows: true, escape: true, tab: false };
            ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
            let by_keys = arrows(ui, placed);
            self.by_keys |= by_keys != Vec2::ZERO;
            moved += by_keys;
            self.is_over |= ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Enter));
        }
        if moved != Vec2::ZERO {
            *point = placed.share_within(placed.at(*point) + moved);
            self.is_changed = true;
        }
    }
}

/// How far the arrows move, a pixel of the screen each, ten with Shift.
pub fn arrows(ui: &Ui, placed: &Placed) -> Vec2 {
    ui.input_mut(|input| {
        let step = if input.modifiers.shift { 10.0 } else { 1.0 } / placed.screen;
        let mut pressed = |key, by: Vec2| input.count_and_consume_key(Modifiers::NONE, key) as f32 * by;
        step * (pressed(Key::ArrowLeft, vec2(-1.0, 0.0))
            + pressed(Key::ArrowRight, vec2(1.0, 0.0))
            + pressed(Key::ArrowUp, vec2(0.0, -1.0))
            + pressed(Key::ArrowDown, vec2(0.0, 1.0)))
    })
}

/// A point that can be dragged; `None` where it is out of sight.
fn handle_ui(ui: &Ui, placed: &Placed, point: [f32; 2], id: Id, name: &str, is_chosen: bool) -> Option<Response> {
    let at: Pos2 = placed.at(point);
    if !placed.area.contains(at) {
        return None;
    }
    let response = ui.interact(Rect::from_center_size(at, Vec2::splat(HANDLE)), id, Sense::click_and_drag());
    let tokens = ui.tokens();
    let is_held = response.hovered() || response.has_focus() || is_chosen;
    let ground = if is_held { tokens.press } else { tokens.page };
    let side = if is_held { 3.0 * GRID } else { 2.0 * GRID };
    let square = Rect::from_center_size(at, Vec2::splat(side));
    ui.painter().rect_filled(square.expand(2.0), 1.0, tokens.page);
    ui.painter().rect(square, 1.0, ground, Stroke::new(2.0, tokens.press), egui::StrokeKind::Middle);
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, name));
    Some(response)
}
