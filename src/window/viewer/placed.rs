//! Where a picture stands on the screen, and how that follows from the way it is looked at.

use egui::{Pos2, Rect, Vec2, pos2, vec2};

use crate::photo::align::Affine;

/// The largest zoom, pixels of the screen for one of the picture.
const MOST_ZOOM: f32 = 16.0;

/// The smallest zoom, as a share of the one at which the picture fits.
const LEAST_OF_FIT: f32 = 0.5;

/// The way a picture is looked at. The picture itself is never turned.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Look {
    /// Pixels of the screen for one of the picture; `None` fits it into the window, whatever its size.
    pub zoom: Option<f32>,
    /// What stands in the middle: shares of the picture's width and height, 0–1.
    pub centre: [f32; 2],
    /// Quarter turns clockwise, 0–3.
    pub quarter_turns: u8,
}

impl Default for Look {
    fn default() -> Self {
        Self { zoom: None, centre: [0.5, 0.5], quarter_turns: 0 }
    }
}

/// A picture on the screen: what turns a place on it into a point of the window, and back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Placed {
    /// The part of the window in which it is seen, points.
    pub area: Rect,
    /// Width and height, pixels.
    pub size_px: [f32; 2],
    /// Pixels of the screen to a point.
    pub screen: f32,
    to_window: Affine,
    from_window: Affine,
}

impl Placed {
    /// A picture of a size in pixels, looked at in a part of the window; `screen` is pixels of the screen to a point.
    pub fn new(area: Rect, size_px: [f32; 2], look: &Look, screen: f32) -> Self {
        let size_px = size_px.map(|side| side.max(1.0));
        let scale = f64::from(look.zoom.unwrap_or_else(|| fit(area, size_px, look.quarter_turns, screen)) / screen);
        let [x, y] = [0, 1].map(|axis| f64::from(look.centre[axis]) * f64::from(size_px[axis]));
        let turn = match look.quarter_turns % 4 {
            0 => Affine::scale(scale, scale),
            1 => Affine { x: [0.0, -scale, 0.0], y: [scale, 0.0, 0.0] },
            2 => Affine::scale(-scale, -scale),
            _ => Affine { x: [0.0, scale, 0.0], y: [-scale, 0.0, 0.0] },
        };
        let middle = area.center();
        let turned = Affine::shift(-x, -y).then(&turn);
        // The picture's corner on a whole pixel of the screen: at 1:1 one pixel falls on one.
        let whole = |at: f64, shift: f32| {
            let at = at + f64::from(shift);
            (at * f64::from(screen)).round() / f64::from(screen)
        };
        let mut to_window = turned;
        to_window.x[2] = whole(turned.x[2], middle.x);
        to_window.y[2] = whole(turned.y[2], middle.y);
        Self::by(area, size_px, to_window, screen)
    }

    /// A picture whose pixels a map lays on points of the window.
    pub fn by(area: Rect, size_px: [f32; 2], to_window: Affine, screen: f32) -> Self {
        let from_window = to_window.back().unwrap_or(Affine::IDENTITY);
        Self { area, size_px, screen, to_window, from_window }
    }

    /// The map from the picture's pixels to points of the window.
    pub fn to_window(&self) -> &Affine {
        &self.to_window
    }

    /// Where a place of the picture stands: shares of width and height, 0–1, as the logbook's marks have them.
    pub fn at(&self, share: [f32; 2]) -> Pos2 {
        self.at_px([share[0] * self.size_px[0], share[1] * self.size_px[1]])
    }

    /// Where a point given in the picture's pixels stands.
    pub fn at_px(&self, [x, y]: [f32; 2]) -> Pos2 {
        let [x, y] = self.to_window.of([f64::from(x), f64::from(y)]);
        pos2(x as f32, y as f32)
    }

    /// The picture's pixel under a point of the window; beside the picture it lies outside its size.
    pub fn px(&self, at: Pos2) -> [f32; 2] {
        self.from_window.of([f64::from(at.x), f64::from(at.y)]).map(|px| px as f32)
    }

    /// The place of the picture under a point of the window, as shares; outside 0–1 beside the picture.
    pub fn share(&self, at: Pos2) -> [f32; 2] {
        let [x, y] = self.px(at);
        [x / self.size_px[0], y / self.size_px[1]]
    }

    /// The place under a point of the window, on the picture's edge where the point lies beside it.
    pub fn share_within(&self, at: Pos2) -> [f32; 2] {
        self.share(at).map(|share| share.clamp(0.0, 1.0))
    }

    /// Whether a point of the window lies on the picture.
    pub fn holds(&self, at: Pos2) -> bool {
        self.area.contains(at) && self.share(at).iter().all(|share| (0.0..=1.0).contains(share))
    }

    /// Pixels of the screen for one of the picture.
    pub fn zoom(&self) -> f32 {
        self.to_window.growth().abs().sqrt() as f32 * self.screen
    }

    /// The picture's corners, clockwise from its own upper left.
    pub fn corners(&self) -> [Pos2; 4] {
        [[0.0, 0.0], [1.0, 0.0], [1.0, 1.0], [0.0, 1.0]].map(|share| self.at(share))
    }

    /// The same picture seen in another part of the window, its middle where that part's middle is.
    #[must_use]
    pub fn moved_to(&self, area: Rect) -> Self {
        let by = area.center() - self.area.center();
        let to_window = self.to_window.then(&Affine::shift(f64::from(by.x), f64::from(by.y)));
        Self::by(area, self.size_px, to_window, self.screen)
    }

    /// Another picture laid over this one by a map from its pixels to this one's.
    #[must_use]
    pub fn under(&self, size_px: [f32; 2], onto_this: &Affine) -> Self {
        Self::by(self.area, size_px, onto_this.then(&self.to_window), self.screen)
    }
}

/// The zoom at which a picture fits, pixels of the screen for one of the picture.
fn fit(area: Rect, [width, height]: [f32; 2], quarter_turns: u8, screen: f32) -> f32 {
    let (width, height) = if quarter_turns.is_multiple_of(2) { (width, height) } else { (height, width) };
    (area.width() / width).min(area.height() / height).max(1e-4) * screen
}

impl Look {
    /// Zooms by a factor; what stands at `pointer` stays there.
    pub fn zoom_by(&mut self, factor: f32, pointer: Pos2, placed: &Placed) {
        let fit = fit(placed.area, placed.size_px, self.quarter_turns, placed.screen);
        let now = self.zoom.unwrap_or(fit);
        let least = (LEAST_OF_FIT * fit).min(1.0);
        self.zoom_to((now * factor).clamp(least, MOST_ZOOM.max(now)), pointer, placed);
    }

    /// Zooms to so many pixels of the screen for one of the picture; what stands at `pointer` stays there.
    pub fn zoom_to(&mut self, zoom: f32, pointer: Pos2, placed: &Placed) {
        let held = placed.share(pointer);
        self.zoom = Some(zoom);
        let after = Placed::new(placed.area, placed.size_px, self, placed.screen);
        let moved = after.share(pointer);
        self.go([self.centre[0] + held[0] - moved[0], self.centre[1] + held[1] - moved[1]]);
    }

    /// Fits the whole picture into the window.
    pub fn fit(&mut self) {
        *self = Self { quarter_turns: self.quarter_turns, ..Self::default() };
    }

    /// Moves the picture under the window by so many points.
    pub fn drag(&mut self, by: Vec2, placed: &Placed) {
        let middle = placed.area.center();
        let (from, to) = (placed.share(middle), placed.share(middle - by));
        self.go([self.centre[0] + to[0] - from[0], self.centre[1] + to[1] - from[1]]);
    }

    /// Moves to a neighbouring part of the picture: a share of the window's sides.
    pub fn step(&mut self, right: f32, down: f32, placed: &Placed) {
        self.drag(-vec2(right * placed.area.width(), down * placed.area.height()), placed);
    }

    /// Turns by quarters, clockwise.
    pub fn turn(&mut self, quarters: i8) {
        self.quarter_turns = (self.quarter_turns as i8 + quarters).rem_euclid(4) as u8;
    }

    fn go(&mut self, centre: [f32; 2]) {
        self.centre = centre.map(|share| share.clamp(0.0, 1.0));
    }
}
