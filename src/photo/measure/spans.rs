//! The pixels of a picture whose centres lie inside an outline, row by row.

use std::ops::Range;

use super::homography::Point;

/// The rows of a picture of so many pixels that an outline touches.
pub fn rows(outline: &[Point], height: u32) -> Range<u32> {
    let (top, bottom) = ends(outline.iter().map(|point| point[1]));
    first_centre(top, height)..first_centre(bottom, height)
}

/// Which columns of a row lie inside, each stretch by itself; an outline that crosses itself encloses whatever it goes
/// round (the non-zero rule).
pub fn spans(outline: &[Point], row: u32, width: u32) -> Vec<Range<u32>> {
    let y = f64::from(row) + 0.5;
    let mut crossings: Vec<(f64, i32)> = outline
        .iter()
        .zip(outline.iter().cycle().skip(1))
        // Its lower end does not belong to an edge, so that a corner counts once.
        .filter(|([_, y0], [_, y1])| (*y0 <= y) != (*y1 <= y))
        .map(|([x0, y0], [x1, y1])| (x0 + (y - y0) / (y1 - y0) * (x1 - x0), if y0 < y1 { 1 } else { -1 }))
        .collect();
    crossings.sort_by(|one, other| one.0.total_cmp(&other.0));
    let mut spans = Vec::new();
    let mut winding = 0;
    let mut from = 0.0;
    for (x, turn) in crossings {
        if winding == 0 {
            from = x;
        }
        winding += turn;
        let span = first_centre(from, width)..first_centre(x, width);
        if winding == 0 && !span.is_empty() {
            spans.push(span);
        }
    }
    spans
}

/// The first pixel whose centre lies at or after a place.
fn first_centre(at: f64, count: u32) -> u32 {
    (at - 0.5).ceil().clamp(0.0, f64::from(count)) as u32
}

fn ends(values: impl Iterator<Item = f64>) -> (f64, f64) {
    values.fold((f64::MAX, f64::MIN), |(least, most), value| (least.min(value), most.max(value)))
}
