//! How a flat thing is seen by a camera: maps of one plane to another that keep straight lines straight.

use super::MeasureError;

/// A point, across and down.
pub type Point = [f64; 2];

/// How short a side of the rectangle may look, pixels.
const SHORTEST_PX: f64 = 2.0;

/// The smallest sine of the angle at a corner, as it looks: about half a degree.
const FLATTEST: f64 = 0.01;

/// What lies so many times farther from the camera than the nearest corner cannot be measured.
const FARTHEST: f64 = 1000.0;

/// A projective map of the plane: `(x, y)` goes to `(row 0, row 1) / row 2`, each row taken of `(x, y, 1)`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Homography {
    rows: [[f64; 3]; 3],
    /// What `row 2` must be above, so that a point lies on the camera's side of the horizon.
    least: f64,
}

impl Homography {
    /// The same stretch for all.
    pub fn scale(by: f64) -> Self {
        Self { rows: [[by, 0.0, 0.0], [0.0, by, 0.0], [0.0, 0.0, 1.0]], least: 0.0 }
    }

    /// From the picture to the plane of a rectangle, of which the four corners are seen: the first at (0, 0), the second
    /// `sides[0]` along, the fourth `sides[1]` down.
    ///
    /// The map from the unit square to four points in closed form, then its inverse by the adjugate, stretched to the
    /// sides. Source: Paul Heckbert, "Fundamentals of Texture Mapping and Image Warping", UCB/CSD 89/516 (1989), 2.2.3.
    pub fn of_rectangle(corners: [Point; 4], sides: [f64; 2]) -> Result<Self, MeasureError> {
        must_go_round(corners)?;
        let [[x0, y0], [x1, y1], [x2, y2], [x3, y3]] = corners;
        let (dx1, dx2, sum_x) = (x1 - x2, x3 - x2, x0 - x1 + x2 - x3);
        let (dy1, dy2, sum_y) = (y1 - y2, y3 - y2, y0 - y1 + y2 - y3);
        let over = dx1 * dy2 - dx2 * dy1;
        let (right, down) = ((sum_x * dy2 - dx2 * sum_y) / over, (dx1 * sum_y - sum_x * dy1) / over);
        let seen = [
            [x1 - x0 + right * x1, x3 - x0 + down * x3, x0],
            [y1 - y0 + right * y1, y3 - y0 + down * y3, y0],
            [right, down, 1.0],
        ];
        let [along_first, along_second, over] = adjugate(&seen);
        let mut rows = [along_first.map(|of| of * sides[0]), along_second.map(|of| of * sides[1]), over];
        // All corners lie on one side of the horizon; it is made the side above 0.
        if along(&rows[2], corners[0]) < 0.0 {
            rows = rows.map(|row| row.map(|of| -of));
        }
        let nearest = corners.iter().map(|corner| along(&rows[2], *corner)).fold(0.0, f64::max);
        if !(nearest.is_normal() && rows.iter().flatten().all(|of| of.is_finite())) {
            return Err(MeasureError::FlatRectangle);
        }
        Ok(Self { rows, least: nearest / FARTHEST })
    }

    /// Where a point goes.
    pub fn of(&self, point: Point) -> Result<Point, MeasureError> {
        let [x, y, over] = self.rows.map(|row| along(&row, point));
        if over > self.least { Ok([x / over, y / over]) } else { Err(MeasureError::BeyondHorizon) }
    }
}

/// The inverse of a matrix, but for a factor that a projective map does not feel.
fn adjugate(of: &[[f64; 3]; 3]) -> [[f64; 3]; 3] {
    let at = |row: usize, column: usize| of[row % 3][column % 3];
    std::array::from_fn(|row| {
        std::array::from_fn(|column| {
            at(column + 1, row + 1) * at(column + 2, row + 2) - at(column + 1, row + 2) * at(column + 2, row + 1)
        })
    })
}

fn along(row: &[f64; 3], [x, y]: Point) -> f64 {
    row[0] * x + row[1] * y + row[2]
}

/// What a camera sees of a rectangle is convex, and its corners are met in the same order.
fn must_go_round(corners: [Point; 4]) -> Result<(), MeasureError> {
    let side = |at: usize| {
        let ([x0, y0], [x1, y1]) = (corners[at % 4], corners[(at + 1) % 4]);
        [x1 - x0, y1 - y0]
    };
    let mut turns = [0.0; 4];
    for (at, turn) in turns.iter_mut().enumerate() {
        let ([ux, uy], [vx, vy]) = (side(at), side(at + 1));
        let (u, v) = (ux.hypot(uy), vx.hypot(vy));
        *turn = (ux * vy - uy * vx) / (u * v);
        // Written so that no number at all is refused too.
        if !(u >= SHORTEST_PX && v >= SHORTEST_PX && turn.abs() >= FLATTEST) {
            return Err(MeasureError::FlatRectangle);
        }
    }
    let is_one_way = turns.iter().all(|turn| *turn > 0.0) || turns.iter().all(|turn| *turn < 0.0);
    if is_one_way { Ok(()) } else { Err(MeasureError::CrossedRectangle) }
}
