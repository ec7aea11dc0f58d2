//! A sheet of paper to draw on: lines, shapes and words, in pixels.

use image::RgbImage;
use tiny_skia::{
    Color, FillRule, LineCap, LineJoin, Paint, Path, PathBuilder, Pixmap, PremultipliedColorU8, Rect, Shader, Stroke,
    StrokeDash, Transform,
};

use super::inks::Ink;
use super::lettering::{Lettering, Weight};

/// Across and down, pixels.
pub type At = [f32; 2];

pub struct Sheet {
    pixmap: Pixmap,
    pub lettering: Lettering,
}

fn paint(ink: Ink) -> Paint<'static> {
    let [red, green, blue, alpha] = ink;
    Paint {
        shader: Shader::SolidColor(Color::from_rgba8(red, green, blue, alpha)),
        anti_alias: true,
        ..Paint::default()
    }
}

/// Points as a path; `None` for fewer than two, or none that has any extent.
pub fn through(points: &[At], is_closed: bool) -> Option<Path> {
    let mut path = PathBuilder::new();
    for (number, [x, y]) in points.iter().enumerate() {
        if number == 0 { path.move_to(*x, *y) } else { path.line_to(*x, *y) }
    }
    if is_closed {
        path.close();
    }
    path.finish()
}

pub fn disc([x, y]: At, radius: f32) -> Option<Path> {
    PathBuilder::from_circle(x, y, radius)
}

impl Sheet {
    /// A blank sheet; `None` when it is too large to be held.
    pub fn new(width: u32, height: u32, page: Ink) -> Option<Self> {
        let mut pixmap = Pixmap::new(width, height)?;
        let [red, green, blue, alpha] = page;
        pixmap.fill(Color::from_rgba8(red, green, blue, alpha));
        Some(Self { pixmap, lettering: Lettering::new() })
    }

    /// Lays a picture on the upper left corner, as far as it fits.
    pub fn lay(&mut self, picture: &RgbImage) {
        let width = self.pixmap.width();
        let pixels = self.pixmap.pixels_mut();
        for (x, y, pixel) in picture.enumerate_pixels() {
            let [red, green, blue] = pixel.0;
            if let (true, Some(on), Some(ink)) = (
                x < width,
                pixels.get_mut((y * width + x) as usize),
                PremultipliedColorU8::from_rgba(red, green, blue, 255),
            ) {
                *on = ink;
            }
        }
    }

    pub fn fill(&mut self, path: Option<Path>, ink: Ink) {
        if let Some(path) = path {
            self.pixmap.fill_path(&path, &paint(ink), FillRule::Winding, Transform::identity(), None);
        }
    }

    pub fn bar(&mut self, [x, y]: At, [width, height]: [f32; 2], ink: Ink) {
        self.fill(Rect::from_xywh(x, y, width, height).map(PathBuilder::from_rect), ink);
    }

    /// Draws along a path; `dashes` are lengths of line and gap.
    pub fn stroke(&mut self, path: Option<Path>, width: f32, ink: Ink, dashes: Option<[f32; 2]>) {
        let Some(path) = path else { return };
        let stroke = Stroke {
            width,
            line_cap: LineCap::Round,
            line_join: LineJoin::Round,
            dash: dashes.and_then(|dashes| StrokeDash::new(dashes.to_vec(), 0.0)),
            ..Stroke::default()
        };
        self.pixmap.stroke_path(&path, &paint(ink), &stroke, Transform::identity(), None);
    }

    /// Words that begin at a place and stand on a line.
    pub fn words(&mut self, words: &str, at: At, em: f32, weight: Weight, ink: Ink) {
        let path = self.lettering.path(words, at, em, weight);
        self.fill(path, ink);
    }

    /// The sheet as a picture.
    pub fn picture(&self) -> RgbImage {
        let bytes = self.pixmap.pixels().iter().flat_map(|pixel| [pixel.red(), pixel.green(), pixel.blue()]).collect();
        RgbImage::from_raw(self.pixmap.width(), self.pixmap.height(), bytes).expect("three bytes a pixel")
    }
}
