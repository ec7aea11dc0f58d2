//! Words on paper, by the faces that come with the program.

use skrifa::instance::{LocationRef, Size};
use skrifa::outline::{DrawSettings, OutlinePen};
use skrifa::{FontRef, MetadataProvider as _};
use tiny_skia::{Path, PathBuilder};

const READING: &[u8] = include_bytes!("../../resources/fonts/pt-sans-regular.ttf");
const BOLD: &[u8] = include_bytes!("../../resources/fonts/pt-sans-bold.ttf");
const FALLBACK: &[u8] = include_bytes!("../../resources/fonts/merriweather-sans-regular.ttf");

/// How far apart lines stand, in ems.
pub const LINE: f32 = 1.35;

/// How far the tops of the letters rise over the line they stand on, in ems.
pub const RISE: f32 = 0.72;

/// The faces to take letters from, in this order.
pub struct Lettering {
    reading: [FontRef<'static>; 2],
    bold: [FontRef<'static>; 2],
}

#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Weight {
    Reading,
    Bold,
}

impl Lettering {
    pub fn new() -> Self {
        // The faces are part of the program; the first test that draws a letter would show a fault.
        let face = |bytes| FontRef::new(bytes).expect("the faces are readable");
        Self { reading: [face(READING), face(FALLBACK)], bold: [face(BOLD), face(FALLBACK)] }
    }

    fn faces(&self, weight: Weight) -> &[FontRef<'static>; 2] {
        if weight == Weight::Bold { &self.bold } else { &self.reading }
    }

    /// How wide words are, in pixels at so many pixels an em.
    pub fn width(&self, words: &str, em: f32, weight: Weight) -> f32 {
        self.each(words, em, weight, |_, _, _| {})
    }

    /// The outline of words that begin at a place and stand on a line, in pixels.
    pub fn path(&self, words: &str, [x, y]: [f32; 2], em: f32, weight: Weight) -> Option<Path> {
        let mut pen = Pen { path: PathBuilder::new(), x, y };
        self.each(words, em, weight, |face, glyph, along| {
            pen.x = x + along;
            if let Some(outline) = face.outline_glyphs().get(glyph) {
                // A letter that cannot be drawn leaves its room empty.
                let _ = outline.draw(DrawSettings::unhinted(Size::new(em), LocationRef::default()), &mut pen);
            }
        });
        pen.path.finish()
    }

    /// Goes through the letters, each with where it begins; answers where the last one ends.
    fn each(
        &self,
        words: &str,
        em: f32,
        weight: Weight,
        mut see: impl FnMut(&FontRef<'static>, skrifa::GlyphId, f32),
    ) -> f32 {
        let mut along = 0.0;
        for letter in words.chars() {
            let found = self.faces(weight).iter().find_map(|face| Some((face, face.charmap().map(letter)?)));
            let (face, glyph) = found.unwrap_or((&self.faces(weight)[0], skrifa::GlyphId::NOTDEF));
            see(face, glyph, along);
            let metrics = face.glyph_metrics(Size::new(em), LocationRef::default());
            along += metrics.advance_width(glyph).unwrap_or(em / 2.0);
        }
        along
    }

    /// Words in lines no wider than `room` pixels; a word too long for a line is broken anywhere.
    pub fn wrapped(&self, words: &str, room: f32, em: f32, weight: Weight) -> Vec<String> {
        let mut lines: Vec<String> = Vec::new();
        let mut line = String::new();
        for word in words.split_whitespace() {
            let longer = if line.is_empty() { word.to_owned() } else { format!("{line} {word}") };
            if self.width(&longer, em, weight) <= room {
                line = longer;
                continue;
            }
            if !line.is_empty() {
                lines.push(std::mem::take(&mut line));
            }
            for letter in word.chars() {
                line.push(letter);
                if self.width(&line, em, weight) > room && line.chars().count() > 1 {
                    line.pop();
                    lines.push(std::mem::replace(&mut line, letter.to_string()));
                }
            }
        }
        if !line.is_empty() {
            lines.push(line);
        }
        lines
    }
}

/// Fonts count upwards, paper downwards.
struct Pen {
    path: PathBuilder,
    x: f32,
    y: f32,
}

impl OutlinePen for Pen {
    fn move_to(&mut self, x: f32, y: f32) {
        self.path.move_to(self.x + x, self.y - y);
    }

    fn line_to(&mut self, x: f32, y: f32) {
        self.path.line_to(self.x + x, self.y - y);
    }

    fn quad_to(&mut self, cx: f32, cy: f32, x: f32, y: f32) {
        self.path.quad_to(self.x + cx, self.y - cy, self.x + x, self.y - y);
    }

    fn curve_to(&mut self, cx0: f32, cy0: f32, cx1: f32, cy1: f32, x: f32, y: f32) {
        self.path.cubic_to(self.x + cx0, self.y - cy0, self.x + cx1, self.y - cy1, self.x + x, self.y - y);
    }

    fn close(&mut self) {
        self.path.close();
    }
}
