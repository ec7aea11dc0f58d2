//! Laying one picture over another by points that are the same in both.

/// A map of the plane: `x' = x[0]·x + x[1]·y + x[2]`, and `y'` likewise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Affine {
    pub x: [f64; 3],
    pub y: [f64; 3],
}

/// Why points do not tell how a picture lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum AlignError {
    #[error("Two points at least are needed in each picture, and three at most are used")]
    Count,
    #[error("Two of the points lie on the same spot")]
    SameSpot,
    #[error("The three points lie on one line")]
    OneLine,
}

/// One point in two pictures: where it lies in the first, and where in the second, in pixels of each.
pub type Pair = ([f64; 2], [f64; 2]);

impl Affine {
    /// Leaves everything where it is.
    pub const IDENTITY: Self = Self { x: [1.0, 0.0, 0.0], y: [0.0, 1.0, 0.0] };

    /// Stretches along the axes.
    pub const fn scale(x: f64, y: f64) -> Self {
        Self { x: [x, 0.0, 0.0], y: [0.0, y, 0.0] }
    }

    /// Shifts.
    pub const fn shift(x: f64, y: f64) -> Self {
        Self { x: [1.0, 0.0, x], y: [0.0, 1.0, y] }
    }

    /// Where a point goes.
    #[must_use]
    pub fn of(&self, [x, y]: [f64; 2]) -> [f64; 2] {
        let along = |row: &[f64; 3]| row[0] * x + row[1] * y + row[2];
        [along(&self.x), along(&self.y)]
    }

    /// This map, and `next` after it.
    #[must_use]
    pub fn then(&self, next: &Self) -> Self {
        let row = |row: &[f64; 3]| {
            let column = |at: usize| row[0] * self.x[at] + row[1] * self.y[at];
            [column(0), column(1), column(2) + row[2]]
        };
        Self { x: row(&next.x), y: row(&next.y) }
    }

    /// By how much areas grow; negative where the map mirrors.
    #[must_use]
    pub fn growth(&self) -> f64 {
        self.x[0] * self.y[1] - self.x[1] * self.y[0]
    }

    /// The map back; `None` where this one lays everything on one line.
    #[must_use]
    pub fn back(&self) -> Option<Self> {
        let growth = self.growth();
        if !growth.is_normal() {
            return None;
        }
        let cross = |one: usize, other: usize| self.x[one] * self.y[other] - self.x[other] * self.y[one];
        Some(Self {
            x: [self.y[1], -self.x[1], cross(1, 2)].map(|of| of / growth),
            y: [-self.y[0], self.x[0], cross(2, 0)].map(|of| of / growth),
        })
    }
}

/// The map that lays the second picture's points on the first one's: two pairs give a similarity (turn, one scale,
/// shift), three an affine map, both exact at the points. Points are in pixels.
pub fn align(pairs: &[Pair]) -> Result<Affine, AlignError> {
    match pairs {
        [one, two] => similarity(*one, *two),
        [one, two, three] => affine(*one, *two, *three),
        _ => Err(AlignError::Count),
    }
}

/// How close two points may be, pixels.
const SAME_SPOT_PX: f64 = 0.5;

/// How far the third point must lie from the line through two others, as a share of their distance.
const ONE_LINE: f64 = 0.01;

fn between([x0, y0]: [f64; 2], [x1, y1]: [f64; 2]) -> [f64; 2] {
    [x1 - x0, y1 - y0]
}

/// As complex numbers, `z' = m·z + t`: `m` is the quotient of the distances between the points.
fn similarity((to_1, from_1): Pair, (to_2, from_2): Pair) -> Result<Affine, AlignError> {
    let ([ux, uy], [vx, vy]) = (between(from_1, from_2), between(to_1, to_2));
    let length_2 = ux * ux + uy * uy;
    if length_2.sqrt() < SAME_SPOT_PX || vx.hypot(vy) < SAME_SPOT_PX {
        return Err(AlignError::SameSpot);
    }
    let (cos, sin) = ((vx * ux + vy * uy) / length_2, (vy * ux - vx * uy) / length_2);
    let turn = Affine { x: [cos, -sin, 0.0], y: [sin, cos, 0.0] };
    let [x, y] = between(turn.of(from_1), to_1);
    Ok(turn.then(&Affine::shift(x, y)))
}

fn affine((to_1, from_1): Pair, (to_2, from_2): Pair, (to_3, from_3): Pair) -> Result<Affine, AlignError> {
    let base = |one: [f64; 2], two, three| -> Result<Affine, AlignError> {
        let ([ax, ay], [bx, by]) = (between(one, two), between(one, three));
        let (a, b, c) = (ax.hypot(ay), bx.hypot(by), (bx - ax).hypot(by - ay));
        if a.min(b).min(c) < SAME_SPOT_PX {
            return Err(AlignError::SameSpot);
        }
        let longest = a.max(b).max(c);
        if (ax * by - ay * bx).abs() / longest < ONE_LINE * longest {
            return Err(AlignError::OneLine);
        }
        // The unit square's corner and sides, laid on the three points.
        Ok(Affine { x: [ax, bx, one[0]], y: [ay, by, one[1]] })
    };
    let from = base(from_1, from_2, from_3)?;
    let to = base(to_1, to_2, to_3)?;
    from.back().map(|back| back.then(&to)).ok_or(AlignError::OneLine)
}
