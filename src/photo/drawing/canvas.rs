//! The paper that a photograph is drawn on: shapes in pixels, and inks.

use tiny_skia::{
    BlendMode, Color, FillRule, GradientStop, LineCap, LinearGradient, Paint, Path, PathBuilder, Pixmap, Point,
    RadialGradient, Rect, Shader, SpreadMode, Stroke, Transform,
};

/// Width of every drawn photograph, pixels.
pub const WIDTH: f32 = 800.0;
/// Height of every drawn photograph, pixels.
pub const HEIGHT: f32 = 600.0;

/// Red, green, blue, opacity.
pub type Ink = [u8; 4];

pub const fn ink(red: u8, green: u8, blue: u8) -> Ink {
    [red, green, blue, 255]
}

/// An ink between two: `share` 0 is the first, 1 the second.
pub fn mix(one: Ink, other: Ink, share: f32) -> Ink {
    std::array::from_fn(|index| (f32::from(one[index]) * (1.0 - share) + f32::from(other[index]) * share) as u8)
}

/// The same ink, lighter (above 0) or darker (below 0), −1 to 1.
pub fn shade(base: Ink, by: f32) -> Ink {
    let [red, green, blue, alpha] = mix(base, if by > 0.0 { ink(255, 255, 255) } else { ink(0, 0, 0) }, by.abs());
    let _ = alpha;
    [red, green, blue, base[3]]
}

pub fn faint(base: Ink, opacity: u8) -> Ink {
    [base[0], base[1], base[2], opacity]
}

fn color(ink: Ink) -> Color {
    Color::from_rgba8(ink[0], ink[1], ink[2], ink[3])
}

/// A rectangle in pixels: left, top, width, height.
#[derive(Clone, Copy, Debug)]
pub struct Area {
    pub x: f32,
    pub y: f32,
    pub w: f32,
    pub h: f32,
}

impl Area {
    pub const fn new(x: f32, y: f32, w: f32, h: f32) -> Self {
        Self { x, y, w, h }
    }

    /// The point at a share of its width and height.
    pub fn at(self, across: f32, down: f32) -> (f32, f32) {
        (self.x + self.w * across, self.y + self.h * down)
    }

    /// The part of it between shares of its width and height.
    pub fn part(self, across: f32, down: f32, width: f32, height: f32) -> Self {
        let (x, y) = self.at(across, down);
        Self::new(x, y, self.w * width, self.h * height)
    }

    pub fn inner(self, by: f32) -> Self {
        Self::new(self.x + by, self.y + by, self.w - 2.0 * by, self.h - 2.0 * by)
    }
}

pub struct Canvas {
    pixmap: Pixmap,
}

impl Canvas {
    pub fn new() -> Self {
        Self { pixmap: Pixmap::new(WIDTH as u32, HEIGHT as u32).expect("the size is fixed and not zero") }
    }

    /// Red, green, blue of every pixel, row by row.
    pub fn into_rgb(self) -> Vec<u8> {
        self.pixmap.pixels().iter().flat_map(|pixel| [pixel.red(), pixel.green(), pixel.blue()]).collect()
    }

    fn paint(&mut self, path: Option<Path>, shader: Shader<'_>) {
        let Some(path) = path else { return };
        let paint = Paint { shader, anti_alias: true, blend_mode: BlendMode::SourceOver, ..Paint::default() };
        self.pixmap.fill_path(&path, &paint, FillRule::Winding, Transform::identity(), None);
    }

    pub fn rect(&mut self, area: Area, ink: Ink) {
        let path = Rect::from_xywh(area.x, area.y, area.w, area.h).map(PathBuilder::from_rect);
        self.paint(path, Shader::SolidColor(color(ink)));
    }

    /// A rectangle with rounded corners.
    pub fn slab(&mut self, area: Area, corner: f32, ink: Ink) {
        self.paint(rounded(area, corner), Shader::SolidColor(color(ink)));
    }

    /// A slab lit from above: `top` fades into `bottom`.
    pub fn lit(&mut self, area: Area, corner: f32, top: Ink, bottom: Ink) {
        let shader = LinearGradient::new(
            Point::from_xy(area.x, area.y),
            Point::from_xy(area.x + area.w * 0.15, area.y + area.h),
            vec![GradientStop::new(0.0, color(top)), GradientStop::new(1.0, color(bottom))],
            SpreadMode::Pad,
            Transform::identity(),
        );
        if let Some(shader) = shader {
            self.paint(rounded(area, corner), shader);
        }
    }

    pub fn disc(&mut self, x: f32, y: f32, radius: f32, ink: Ink) {
        self.paint(PathBuilder::from_circle(x, y, radius), Shader::SolidColor(color(ink)));
    }

    /// A round spot that fades out towards its edge.
    pub fn glow(&mut self, x: f32, y: f32, radius: f32, ink: Ink) {
        let centre = Point::from_xy(x, y);
        let shader = RadialGradient::new(
            centre,
            0.0,
            centre,
            radius,
            vec![GradientStop::new(0.0, color(ink)), GradientStop::new(1.0, color(faint(ink, 0)))],
            SpreadMode::Pad,
            Transform::identity(),
        );
        if let Some(shader) = shader {
            self.paint(PathBuilder::from_circle(x, y, radius), shader);
        }
    }

    pub fn line(&mut self, points: &[(f32, f32)], width: f32, ink: Ink) {
        let mut builder = PathBuilder::new();
        for (index, &(x, y)) in points.iter().enumerate() {
            if index == 0 { builder.move_to(x, y) } else { builder.line_to(x, y) }
        }
        let Some(path) = builder.finish() else { return };
        let paint = Paint { shader: Shader::SolidColor(color(ink)), anti_alias: true, ..Paint::default() };
        let stroke = Stroke { width, line_cap: LineCap::Round, ..Stroke::default() };
        self.pixmap.stroke_path(&path, &paint, &stroke, Transform::identity(), None);
    }

    /// The soft shadow that a thing of this outline throws on the mat.
    pub fn shadow(&mut self, area: Area, corner: f32) {
        for step in 0..7_u8 {
            let grow = f32::from(7 - step) * 1.6;
            let spread = Area::new(area.x + 4.0 - grow, area.y + 7.0 - grow, area.w + 2.0 * grow, area.h + 2.0 * grow);
            self.slab(spread, corner + grow, [0, 0, 0, 16]);
        }
    }
}

fn rounded(area: Area, corner: f32) -> Option<Path> {
    let Area { x, y, w, h } = area;
    let corner = corner.min(w / 2.0).min(h / 2.0).max(0.0);
    // A circle's arc by one cubic: its handles are 0.5523 of the radius long.
    let handle = corner * (1.0 - 0.5523);
    let mut builder = PathBuilder::new();
    builder.move_to(x + corner, y);
    builder.line_to(x + w - corner, y);
    builder.cubic_to(x + w - handle, y, x + w, y + handle, x + w, y + corner);
    builder.line_to(x + w, y + h - corner);
    builder.cubic_to(x + w, y + h - handle, x + w - handle, y + h, x + w - corner, y + h);
    builder.line_to(x + corner, y + h);
    builder.cubic_to(x + handle, y + h, x, y + h - handle, x, y + h - corner);
    builder.line_to(x, y + corner);
    builder.cubic_to(x, y + handle, x + handle, y, x + corner, y);
    builder.close();
    builder.finish()
}
