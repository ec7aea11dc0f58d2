//! The marks on the picture. A pin's shape says what it is tied to, its hue and inside the state of that; a line's kind
//! says what it is for: the same as in the window.
//!
//! | tied to | shape | | state | inside |
//! |---|---|---|---|---|
//! | finding | triangle | | asks for something | filled, with a stroke and a dot |
//! | capacitor | can with its stripe | | watched | a dot |
//! | marking | printed label | | settled: cured, sound, done | a tick |
//! | work | square on its corner | | replaced | a cross |
//! | nothing | ring | | not looked at, or none | empty |

use super::Entry;
use crate::assess::tie::{Form, Stand, Tied};
use crate::paper::inks::{Ink, Inks};
use crate::paper::lettering::{RISE, Weight};
use crate::paper::sheet::{At, Sheet, disc, through};
use crate::record::MarkUse;

/// Draws all marks, those that take most room first, so that what is small lies on top; then their numbers.
pub fn draw(sheet: &mut Sheet, inks: &Inks, entries: &[Entry], [width, height]: [f32; 2], em: f32) {
    let mut placed: Vec<(&Entry, Vec<At>)> = entries
        .iter()
        .map(|entry| (entry, entry.mark.points.iter().map(|[x, y]| [x * width, y * height]).collect::<Vec<At>>()))
        .filter(|(_, points)| !points.is_empty())
        .collect();
    placed.sort_by(|(_, one), (_, other)| room(other).total_cmp(&room(one)));
    for (entry, points) in &placed {
        draw_mark(sheet, inks, entry, points, em);
    }
    let mut taken: Vec<[f32; 4]> = Vec::new();
    for (entry, points) in &placed {
        number(sheet, inks, entry, points, [width, height], em, &mut taken);
    }
}

fn room(points: &[At]) -> f32 {
    let extent = |axis: usize| {
        let values = || points.iter().map(|point| point[axis]);
        values().fold(f32::MIN, f32::max) - values().fold(f32::MAX, f32::min)
    };
    extent(0) * extent(1)
}

fn draw_mark(sheet: &mut Sheet, inks: &Inks, entry: &Entry, points: &[At], em: f32) {
    let (role, ink, line) = (entry.mark.role, inks.of(entry.tied.stand), em / 8.0);
    if let (MarkUse::Place, [at]) = (role, points) {
        pin(sheet, inks, &entry.tied, *at, 0.62 * em);
        return;
    }
    let is_closed = role.is_outline() || role == MarkUse::Place;
    let path = || through(points, is_closed);
    sheet.stroke(path(), 2.2 * line, inks.page, None);
    let dashes = match role {
        MarkUse::Surface => Some([1.2 * em, 0.5 * em]),
        MarkUse::Sample | MarkUse::Reference | MarkUse::Hidden => Some([0.01 * em, 0.35 * em]),
        _ => None,
    };
    sheet.stroke(path(), line, ink, dashes);
    match role {
        MarkUse::Damage => barbs(sheet, points, 0.5 * em, line, ink),
        MarkUse::Length | MarkUse::Scale => {
            ends(sheet, points, 0.6 * em, 2.2 * line, inks.page);
            ends(sheet, points, 0.5 * em, line, ink);
        }
        MarkUse::Rectangle => {
            for [x, y] in points {
                let side = 0.35 * em;
                sheet.bar([x - side / 2.0, y - side / 2.0], [side, side], ink);
            }
        }
        _ => {}
    }
}

/// Short strokes inwards along an outline, as a map shows an edge that falls off.
fn barbs(sheet: &mut Sheet, points: &[At], long: f32, width: f32, ink: Ink) {
    let edges = || points.iter().zip(points.iter().cycle().skip(1));
    let turned: f32 = edges().map(|([x0, y0], [x1, y1])| x0 * y1 - x1 * y0).sum();
    for ([x0, y0], [x1, y1]) in edges() {
        let (dx, dy) = (x1 - x0, y1 - y0);
        let length = dx.hypot(dy);
        let inwards = long * turned.signum() / length.max(1.0);
        let count = (length / (1.6 * long)).min(200.0) as usize;
        for at in 0..count {
            let share = (at as f32 + 0.5) / count as f32;
            let from = [x0 + dx * share, y0 + dy * share];
            sheet.stroke(through(&[from, [from[0] - dy * inwards, from[1] + dx * inwards]], false), width, ink, None);
        }
    }
}

/// Strokes across both ends of a measured line.
fn ends(sheet: &mut Sheet, points: &[At], half: f32, width: f32, ink: Ink) {
    let (Some([first, second]), Some([before, last])) = (points.first_chunk(), points.last_chunk()) else { return };
    for (at, from, to) in [(first, first, second), (last, before, last)] {
        let (dx, dy) = (to[0] - from[0], to[1] - from[1]);
        let across = half / dx.hypot(dy).max(1.0);
        let (ox, oy) = (-dy * across, dx * across);
        sheet.stroke(through(&[[at[0] - ox, at[1] - oy], [at[0] + ox, at[1] + oy]], false), width, ink, None);
    }
}

/// A pin of which half is so many pixels wide.
pub fn pin(sheet: &mut Sheet, inks: &Inks, tied: &Tied, at: At, half: f32) {
    let ink = inks.of(tied.stand);
    let is_filled = matches!(tied.stand, Stand::Asks(_));
    let (ground, inner) = if is_filled { (ink, inks.page) } else { (inks.page, ink) };
    let corners: &[At] = match tied.form {
        Form::Finding => &[[0.0, -1.1], [1.1, 0.9], [-1.1, 0.9]],
        Form::Work => &[[0.0, -1.2], [1.2, 0.0], [0.0, 1.2], [-1.2, 0.0]],
        Form::Marking => &[[-1.3, -0.8], [1.3, -0.8], [1.3, 0.8], [-1.3, 0.8]],
        Form::Capacitor | Form::Bare => &[],
    };
    let place = |[x, y]: At| [at[0] + x * half, at[1] + y * half];
    let outer = || {
        let corners: Vec<At> = corners.iter().map(|corner| place(*corner)).collect();
        if corners.is_empty() { disc(at, half) } else { through(&corners, true) }
    };
    sheet.stroke(outer(), 0.7 * half, inks.page, None);
    sheet.fill(outer(), ground);
    sheet.stroke(outer(), 0.22 * half, ink, None);
    if tied.form == Form::Capacitor {
        // The stripe at the can's minus side.
        let stripe = through(&[place([-0.55, -0.7]), place([-0.55, 0.7])], false);
        sheet.stroke(stripe, 0.3 * half, inner, None);
    }
    let low = if tied.form == Form::Finding { 0.25 } else { 0.0 };
    let line = |points: &[At]| through(&points.iter().map(|[x, y]| place([*x, y + low])).collect::<Vec<_>>(), false);
    let width = 0.22 * half;
    match tied.stand {
        Stand::Watched => sheet.fill(disc(place([0.1, low]), 0.25 * half), inner),
        Stand::Settled => sheet.stroke(line(&[[-0.3, 0.05], [0.0, 0.35], [0.5, -0.3]]), width, inner, None),
        Stand::Replaced => {
            sheet.stroke(line(&[[-0.25, 0.0], [0.55, 0.0]]), width, inner, None);
            sheet.stroke(line(&[[0.15, -0.4], [0.15, 0.4]]), width, inner, None);
        }
        Stand::Asks(_) => {
            sheet.stroke(line(&[[0.0, -0.45], [0.0, 0.1]]), width, inner, None);
            sheet.fill(disc(place([0.0, 0.45 + low]), 0.14 * half), inner);
        }
        Stand::Unseen | Stand::Plain => {}
    }
}

/// A mark's number beside it, on the first place round it that no other number has taken.
fn number(
    sheet: &mut Sheet,
    inks: &Inks,
    entry: &Entry,
    points: &[At],
    [width, height]: [f32; 2],
    em: f32,
    taken: &mut Vec<[f32; 4]>,
) {
    let words = entry.number.to_string();
    let (wide, high) = (sheet.lettering.width(&words, em, Weight::Bold) + 0.4 * em, 1.15 * em);
    let top = points.iter().copied().min_by(|one, other| one[1].total_cmp(&other[1])).unwrap_or([0.0, 0.0]);
    let away = 0.8 * em;
    let around = [[0.7, -1.0], [-0.7, -1.0], [1.0, 0.0], [-1.0, 0.0], [0.7, 1.0], [-0.7, 1.0], [0.0, -1.9], [0.0, 1.9]];
    let spots = around.map(|[x, y]| {
        let middle = [top[0] + x * (away + wide / 2.0), top[1] + y * away];
        // On the picture, also where the mark is at its edge.
        let left = (middle[0] - wide / 2.0).min(width - wide).max(0.0);
        let upper = (middle[1] - high / 2.0).min(height - high).max(0.0);
        [left, upper, left + wide, upper + high]
    });
    let is_free = |spot: &[f32; 4]| {
        taken
            .iter()
            .all(|other| spot[0] >= other[2] || spot[2] <= other[0] || spot[1] >= other[3] || spot[3] <= other[1])
    };
    let spot = spots.into_iter().find(is_free).unwrap_or(spots[0]);
    taken.push(spot);
    let ink = inks.of(entry.tied.stand);
    sheet.bar([spot[0], spot[1]], [wide, high], inks.page);
    let baseline = spot[1] + f32::midpoint(high, RISE * em);
    sheet.words(&words, [spot[0] + 0.2 * em, baseline], em, Weight::Bold, ink);
}
