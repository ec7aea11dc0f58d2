//! Whether outlines cross each other so often that cutting them would take for ever.

use super::MeasureError;
use super::homography::Point;

/// How often outlines may cross themselves and each other before they are refused. What a hand draws crosses itself a
/// few times; cutting takes the longer the more crossings there are.
pub const MOST_CROSSINGS: usize = 20_000;

/// Fails when the outlines' edges cross more than [`MOST_CROSSINGS`] times.
///
/// Edges are met in the order of their left ends, each held only against those that have not ended yet; for an honest
/// outline that is a few.
pub fn must_be_drawn_by_hand(outlines: &[Vec<Point>]) -> Result<(), MeasureError> {
    let mut edges: Vec<[Point; 2]> = outlines
        .iter()
        .flat_map(|outline| outline.iter().zip(outline.iter().cycle().skip(1)))
        .map(|(one, next)| if one[0] <= next[0] { [*one, *next] } else { [*next, *one] })
        .collect();
    edges.sort_by(|one, other| one[0][0].total_cmp(&other[0][0]));
    let mut open: Vec<[Point; 2]> = Vec::new();
    let mut crossings = 0;
    for edge in edges {
        open.retain(|other| other[1][0] >= edge[0][0]);
        crossings += open.iter().filter(|other| cross(edge, **other)).count();
        if crossings > MOST_CROSSINGS {
            return Err(MeasureError::Tangled);
        }
        open.push(edge);
    }
    Ok(())
}

/// Whether two edges pass through each other; touching at an end does not count.
fn cross([a, b]: [Point; 2], [c, d]: [Point; 2]) -> bool {
    let side = |[x0, y0]: Point, [x1, y1]: Point, [x, y]: Point| (x1 - x0) * (y - y0) - (y1 - y0) * (x - x0);
    side(a, b, c) * side(a, b, d) < 0.0 && side(c, d, a) * side(c, d, b) < 0.0
}
