//! Points that are the same in two pictures, set by hand to lay one over the other.

use egui::{Align2, EventFilter, Id, Key, Modifiers, Pos2, Rect, Response, Sense, Stroke, Ui, Vec2, WidgetInfo, vec2};

use super::placed::Placed;
use crate::photo::align::{Affine, AlignError, Pair, align};
use crate::text;
use crate::window::theme::{GRID, TextRole, Themed};
use crate::window::widgets::{link_ui, press_if_ui, remark, small};

/// More than three would not make the map better by hand.
const MOST: usize = 3;

/// Up to three points on each of two pictures, in pixels of each.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Points {
    on: [Vec<[f32; 2]>; 2],
}

impl Points {
    /// The same points with the pictures changed over.
    pub fn turned_about(&self) -> Self {
        let [one, two] = self.on.clone();
        Self { on: [two, one] }
    }

    fn pairs(&self) -> Vec<Pair> {
        let both = self.on[0].iter().zip(&self.on[1]);
        both.map(|(one, two)| (one.map(f64::from), two.map(f64::from))).collect()
    }

    fn map(&self) -> Result<Affine, AlignError> {
        align(&self.pairs())
    }

    /// The map that lays the second picture over the first, once there are enough points.
    pub fn laid(&self) -> Option<Affine> {
        self.map().ok()
    }

    /// What to do next, and what is wrong with the points.
    pub fn head_ui(&mut self, ui: &mut Ui) {
        let count = self.pairs().len();
        let add = text!("Put a point on both");
        let is_free = self.on.iter().all(|points| points.len() < MOST);
        if press_if_ui(ui, is_free, add, "", None).clicked() {
            // Where they go is known where the pictures are drawn.
            self.on.iter_mut().for_each(|points| points.push([f32::NAN; 2]));
        }
        if self.on.iter().any(|points| !points.is_empty()) && link_ui(ui, text!("Take the points off")).clicked() {
            *self = Self::default();
        }
        let say = text!("{count} of 2 or 3 points: press the same spot on both, drag to put right", count = count);
        ui.label(remark(ui, say));
        match self.map() {
            Err(AlignError::Count) | Ok(_) => {}
            Err(error) => drop(ui.label(small(say_wrong(error)).color(ui.tokens().severity_grave))),
        }
    }

    /// Draws the points on both pictures; a press beside one sets the next.
    pub fn ui(&mut self, ui: &Ui, placed: [&Placed; 2], whole: &Response) {
        let pressed = if whole.clicked() { whole.interact_pointer_pos() } else { None };
        for (side, placed) in placed.into_iter().enumerate() {
            let points = &mut self.on[side];
            if let Some(at) = pressed.filter(|at| placed.holds(*at) && points.len() < MOST) {
                points.push(placed.px(at));
            }
            let mut away = None;
            for (number, point) in points.iter_mut().enumerate() {
                if !point[0].is_finite() {
                    *point = placed.px(placed.area.center());
                }
                let id = ui.scope_id().with(("point", side, number));
                if point_ui(ui, placed, point, number + 1, side, id) {
                    away = Some(number);
                }
            }
            if let Some(away) = away {
                points.remove(away);
            }
        }
    }
}

/// One point that can be dragged or moved by the arrows; `true` when it is to be taken off.
fn point_ui(ui: &Ui, placed: &Placed, point: &mut [f32; 2], number: usize, side: usize, id: Id) -> bool {
    let at = placed.at_px(*point);
    if !placed.area.contains(at) {
        return false;
    }
    let rect = Rect::from_center_size(at, vec2(7.0 * GRID, 7.0 * GRID));
    let response = ui.interact(rect, id, Sense::click_and_drag());
    let mut moved: Vec2 = response.drag_delta();
    let mut is_off = false;
    if response.has_focus() {
        let filter = EventFilter { horizontal_arrows: true, vertical_arrows: true, ..EventFilter::default() };
        ui.memory_mut(|memory| memory.set_focus_lock_filter(id, filter));
        moved += ui.input_mut(|input| {
            let step = if input.modifiers.shift { 10.0 } else { 1.0 } / placed.screen;
            let mut pressed = |key, by| if input.consume_key(Modifiers::NONE, key) { by } else { Vec2::ZERO };
            step * (pressed(Key::ArrowLeft, vec2(-1.0, 0.0))
                + pressed(Key::ArrowRight, vec2(1.0, 0.0))
                + pressed(Key::ArrowUp, vec2(0.0, -1.0))
                + pressed(Key::ArrowDown, vec2(0.0, 1.0)))
        });
        is_off = ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Delete));
    }
    if moved != Vec2::ZERO {
        let [width, height] = placed.size_px;
        let [x, y] = placed.px(at + moved);
        *point = [x.clamp(0.0, width), y.clamp(0.0, height)];
    }
    let at = placed.at_px(*point);
    draw(ui, at, number, response.hovered() || response.has_focus());
    let name = if side == 0 {
        text!("Point {number} on the first picture", number = number)
    } else {
        text!("Point {number} on the second picture", number = number)
    };
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
    is_off
}

fn draw(ui: &Ui, at: Pos2, number: usize, is_held: bool) {
    let tokens = ui.tokens();
    let colour = if is_held { tokens.press } else { tokens.ink };
    let radius = 2.0 * GRID;
    for (width, colour) in [(4.0, tokens.page), (2.0, colour)] {
        ui.painter().circle_stroke(at, radius, Stroke::new(width, colour));
    }
    ui.painter().circle_filled(at, 1.5, colour);
    let corner = at + vec2(radius + GRID, -radius - GRID);
    let label = Rect::from_center_size(corner, vec2(4.0 * GRID, 4.0 * GRID));
    ui.painter().rect_filled(label, 2.0, tokens.page);
    ui.painter().text(corner, Align2::CENTER_CENTER, number.to_string(), TextRole::Small.font(), colour);
}

fn say_wrong(error: AlignError) -> &'static str {
    match error {
        AlignError::Count => text!("Two points at least are needed on each picture"),
        AlignError::SameSpot => text!("Two of the points lie on the same spot: move one"),
        AlignError::OneLine => text!("The three points lie on one line: move one off it"),
    }
}
