//! How marks are drawn: a pin's shape says what it is tied to, its hue and inside the state of that; a line's kind says
//! what it is for.
//!
//! | tied to | shape | | state | inside |
//! |---|---|---|---|---|
//! | finding | triangle | | asks for something | filled |
//! | capacitor | can with its stripe | | watched | a dot |
//! | marking | printed label | | settled: cured, sound, done | a tick |
//! | work | square on its corner | | replaced | a cross |
//! | nothing | ring | | not looked at, or none | empty |

use std::borrow::Borrow;

use egui::{Align2, Color32, Painter, Pos2, Rect, Shape, Stroke, Vec2, epaint::PathShape, vec2};

use crate::assess::tie::{Form, Stand, Tied};
use crate::record::{MarkUse, PhotoMark, PhotoMarkId};
use crate::window::theme::{GRID, TextRole, Tokens};
use crate::window::viewer::Placed;

/// Half of a pin's side, points.
const PIN: f32 = 2.5 * GRID;

/// How near to a line a press may be, points.
const NEAR: f32 = 2.0 * GRID;

fn hue(tokens: &Tokens, tied: &Tied) -> Color32 {
    match tied.stand {
        Stand::Asks(severity) => tokens.severity(severity),
        Stand::Watched => tokens.power_unknown,
        Stand::Settled | Stand::Replaced => tokens.hold_ready,
        Stand::Unseen => tokens.ink_weak,
        Stand::Plain => tokens.press,
    }
}

/// Draws a mark with its number where its picture is placed; heavier while it is held.
pub fn paint(
    painter: &Painter,
    tokens: &Tokens,
    placed: &Placed,
    mark: &PhotoMark,
    tied: &Tied,
    number: usize,
    is_held: bool,
) {
    let points: Vec<Pos2> = mark.points.iter().map(|point| placed.at(*point)).collect();
    let (Some(first), colour) = (points.first(), hue(tokens, tied)) else { return };
    let width = if is_held { 3.5 } else { 2.0 };
    if mark.role == MarkUse::Place && points.len() == 1 {
        pin(painter, tokens, *first, tied, colour, is_held);
        // Beside it, since pins of one row of capacitors stand close below each other.
        label(painter, tokens, *first + vec2(2.0 * PIN, 0.0), number, colour);
        return;
    }
    let mut line = points.clone();
    if mark.role.is_outline() || mark.role == MarkUse::Place {
        line.push(*first);
    }
    painter.add(Shape::line(line.clone(), Stroke::new(width + 2.0, tokens.page)));
    let stroke = Stroke::new(width, colour);
    match mark.role {
        MarkUse::Surface => {
            painter.extend(Shape::dashed_line(&line, stroke, 3.0 * GRID, GRID));
        }
        MarkUse::Sample | MarkUse::Reference | MarkUse::Hidden => {
            painter.extend(Shape::dotted_line(&line, colour, 1.5 * GRID, width));
        }
        MarkUse::Damage => {
            painter.add(Shape::line(line.clone(), stroke));
            barbs(painter, &line, stroke);
        }
        MarkUse::Length | MarkUse::Scale => {
            painter.add(Shape::line(line.clone(), stroke));
            ends(painter, &line, Stroke::new(width, tokens.page), 3.0 * GRID);
            ends(painter, &line, stroke, 2.5 * GRID);
        }
        MarkUse::Place | MarkUse::Rectangle => {
            painter.add(Shape::line(line.clone(), stroke));
        }
    }
    if mark.role == MarkUse::Rectangle {
        for corner in &points {
            painter.rect_filled(Rect::from_center_size(*corner, Vec2::splat(1.5 * GRID)), 0.0, colour);
        }
    }
    let topmost = points.iter().min_by(|one, other| one.y.total_cmp(&other.y)).unwrap_or(first);
    label(painter, tokens, *topmost - vec2(0.0, 2.5 * GRID), number, colour);
}

/// The mark's number, beside it.
fn label(painter: &Painter, tokens: &Tokens, at: Pos2, number: usize, colour: Color32) {
    let galley = painter.layout_no_wrap(number.to_string(), TextRole::Small.font(), colour);
    let rect = Rect::from_center_size(at, galley.size() + vec2(GRID, 0.0));
    painter.rect_filled(rect, 2.0, tokens.page);
    painter.galley(rect.center() - galley.size() / 2.0, galley, colour);
}

/// Short strokes inwards along a line, as a map shows an edge that falls off.
fn barbs(painter: &Painter, line: &[Pos2], stroke: Stroke) {
    let turned: f32 = line.windows(2).map(|step| (step[1].x - step[0].x) * (step[1].y + step[0].y)).sum();
    for step in line.windows(2) {
        let along = step[1] - step[0];
        let length = along.length();
        let count = (length / (4.0 * GRID)).min(200.0) as usize;
        let inwards = if turned > 0.0 { along.rot90() } else { -along.rot90() } * (-1.5 * GRID / length.max(1.0));
        for at in 0..count {
            let from = step[0] + along * ((at as f32 + 0.5) / count as f32);
            painter.line_segment([from, from + inwards], stroke);
        }
    }
}

/// Strokes across both ends of a measured line.
fn ends(painter: &Painter, line: &[Pos2], stroke: Stroke, half: f32) {
    let (Some([first, second]), Some([before, last])) = (line.first_chunk(), line.last_chunk()) else { return };
    for (at, along) in [(first, *second - *first), (last, *last - *before)] {
        let across = along.normalized().rot90() * half;
        painter.line_segment([*at - across, *at + across], stroke);
    }
}

fn pin(painter: &Painter, tokens: &Tokens, at: Pos2, tied: &Tied, colour: Color32, is_held: bool) {
    let filled = matches!(tied.stand, Stand::Asks(_));
    let (ground, ink) = if filled { (colour, tokens.page) } else { (tokens.page, colour) };
    let side = if is_held { 1.25 * PIN } else { PIN };
    let outer: Vec<Vec2> = match tied.form {
        Form::Finding => vec![vec2(0.0, -1.1), vec2(1.1, 0.9), vec2(-1.1, 0.9)],
        Form::Work => vec![vec2(0.0, -1.2), vec2(1.2, 0.0), vec2(0.0, 1.2), vec2(-1.2, 0.0)],
        Form::Marking => vec![vec2(-1.3, -0.8), vec2(1.3, -0.8), vec2(1.3, 0.8), vec2(-1.3, 0.8)],
        Form::Capacitor | Form::Bare => Vec::new(),
    };
    let halo = Stroke::new(2.0, tokens.page);
    let rim = Stroke::new(2.0, colour);
    if outer.is_empty() {
        painter.circle(at, side + 2.0, tokens.page, Stroke::NONE);
        painter.circle(at, side, ground, rim);
    } else {
        let at_scale = |by: f32| outer.iter().map(|corner| at + *corner * by).collect::<Vec<_>>();
        painter.add(PathShape::convex_polygon(at_scale(side + 2.5), tokens.page, halo));
        painter.add(PathShape::convex_polygon(at_scale(side), ground, rim));
    }
    if tied.form == Form::Capacitor {
        // The stripe at the can's minus side.
        let half = 0.8 * side;
        painter.line_segment(
            [at + vec2(-0.55 * side, -half), at + vec2(-0.55 * side, half)],
            Stroke::new(3.0, if filled { ink } else { colour }),
        );
    }
    inside(
        painter,
        at + vec2(0.0, if tied.form == Form::Finding { 0.2 * side } else { 0.0 }),
        side,
        tied.stand,
        Stroke::new(2.0, ink),
    );
}

/// What stands in a pin.
fn inside(painter: &Painter, at: Pos2, side: f32, stand: Stand, stroke: Stroke) {
    let at = |x: f32, y: f32| at + vec2(x, y) * side;
    match stand {
        Stand::Watched => {
            painter.circle_filled(at(0.1, 0.0), 0.25 * side, stroke.color);
        }
        Stand::Settled => {
            painter.add(Shape::line(vec![at(-0.3, 0.05), at(0.0, 0.35), at(0.5, -0.3)], stroke));
        }
        Stand::Replaced => {
            painter.line_segment([at(-0.25, 0.0), at(0.55, 0.0)], stroke);
            painter.line_segment([at(0.15, -0.4), at(0.15, 0.4)], stroke);
        }
        Stand::Asks(_) => {
            painter.text(at(0.05, 0.0), Align2::CENTER_CENTER, "!", TextRole::Small.font(), stroke.color);
        }
        Stand::Unseen | Stand::Plain => {}
    }
}

/// What a mark takes of the window; `None` when it has no points.
pub fn around(placed: &Placed, mark: &PhotoMark) -> Option<Rect> {
    let first = mark.points.first()?;
    if let [pin] = mark.points.as_slice() {
        return Some(Rect::from_center_size(placed.at(*pin), Vec2::splat(3.0 * PIN)));
    }
    let mut rect = Rect::from_pos(placed.at(*first));
    mark.points.iter().for_each(|point| rect.extend_with(placed.at(*point)));
    Some(rect.expand(NEAR))
}

/// How well a press meets a mark: the smaller the better. A pin goes before a line, a line before what it encloses, and
/// a small area before a large one.
pub fn hits(placed: &Placed, mark: &PhotoMark, at: Pos2) -> Option<f32> {
    let points: Vec<Pos2> = mark.points.iter().map(|point| placed.at(*point)).collect();
    if let [pin] = points.as_slice() {
        let away = pin.distance(at);
        return (away <= 1.5 * PIN).then_some(away);
    }
    let is_closed = mark.role.is_outline() || mark.role == MarkUse::Place;
    let next = |from: usize| points.get(from + 1).or(points.first().filter(|_| is_closed)).copied();
    let steps = || points.iter().enumerate().filter_map(|(from, point)| Some((*point, next(from)?)));
    let away = steps().map(|(from, to)| away(at, from, to)).fold(f32::INFINITY, f32::min);
    if away <= NEAR {
        return Some(100.0 + away);
    }
    let crossed = steps().filter(|(from, to)| (from.y > at.y) != (to.y > at.y) && at.x < crossing(*from, *to, at.y));
    let is_inside = is_closed && crossed.count() % 2 == 1;
    let rect = Rect::from_points(&points);
    is_inside.then(|| 1000.0 + rect.area())
}

/// Where a line is crossed at a height.
fn crossing(from: Pos2, to: Pos2, y: f32) -> f32 {
    from.x + (y - from.y) / (to.y - from.y) * (to.x - from.x)
}

/// How far a point is from a line between two others.
fn away(at: Pos2, from: Pos2, to: Pos2) -> f32 {
    let along = to - from;
    let share = ((at - from).dot(along) / along.length_sq().max(1e-6)).clamp(0.0, 1.0);
    at.distance(from + along * share)
}

/// The mark that a press means; `None` beside all of them.
pub fn nearest<M: Borrow<PhotoMark>>(placed: &Placed, marks: &[M], at: Pos2) -> Option<PhotoMarkId> {
    let met = marks.iter().filter_map(|mark| Some((hits(placed, mark.borrow(), at)?, mark.borrow().id)));
    met.min_by(|one, other| one.0.total_cmp(&other.0)).map(|(_, id)| id)
}

/// The marks' places, those that take most room first, so that what is small lies on top.
pub fn from_large_to_small<M: Borrow<PhotoMark>>(placed: &Placed, marks: &[M]) -> Vec<usize> {
    let room = |at: &usize| match marks[*at].borrow() {
        mark if mark.points.len() == 1 => 0.0,
        mark => around(placed, mark).map_or(0.0, |rect| rect.area()),
    };
    let mut order: Vec<(f32, usize)> = (0..marks.len()).map(|at| (room(&at), at)).collect();
    order.sort_by(|one, other| other.0.total_cmp(&one.0));
    order.into_iter().map(|(_, at)| at).collect()
}
