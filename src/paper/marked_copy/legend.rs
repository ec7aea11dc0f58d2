//! The legend below the picture: every number with what it is and what it measures, in as many columns as there is room.

use super::Entry;
use super::shapes::pin;
use crate::paper::inks::{Ink, Inks};
use crate::paper::lettering::{LINE, Lettering, RISE, Weight};
use crate::paper::sheet::Sheet;
use crate::record::MarkUse;
use crate::text;

/// The least width of a column, ems: a line that is read at a glance.
const COLUMN: f32 = 26.0;

/// How small words may become where there are very many, pixels an em.
const SMALLEST: f32 = 14.0;

/// How many pixels more than the picture the legend may take, where words are larger than the smallest.
const MOST_OF_PICTURE: f32 = 1.0;

/// The longest legend, pixels; what does not fit is counted.
const LONGEST: f32 = 20_000.0;

#[derive(Clone, Copy)]
enum Voice {
    Title,
    Plain,
    Heed,
}

/// A mark's lines.
struct Block {
    entry: usize,
    lines: Vec<(String, Voice)>,
}

/// The legend, laid out.
pub struct Legend {
    pub width: f32,
    pub height: f32,
    em: f32,
    column: f32,
    head: Vec<(String, Voice)>,
    /// Blocks with their column and how far down they begin.
    blocks: Vec<(Block, usize, f32)>,
    left_out: usize,
}

/// Lays the legend out for a picture of so many pixels; words get smaller before the legend gets larger than that.
pub fn lay_out(title: &str, basis: &str, entries: &[Entry], [width, height]: [f32; 2], em: f32) -> Legend {
    let lettering = Lettering::new();
    let mut em = em;
    loop {
        let legend = Legend::at(title, basis, entries, width, em, &lettering);
        if em <= SMALLEST || legend.height <= MOST_OF_PICTURE * height {
            return legend;
        }
        em = (0.8 * em).max(SMALLEST);
    }
}

impl Legend {
    fn at(title: &str, basis: &str, entries: &[Entry], width: f32, em: f32, lettering: &Lettering) -> Self {
        let margin = em;
        let width = width.max((COLUMN + 2.0) * em);
        let room = width - 2.0 * margin;
        let columns = ((room / (COLUMN * em)) as usize).clamp(1, entries.len().max(1));
        let column = room / columns as f32;
        let mut head = wrapped(lettering, title, room, em, Voice::Title);
        if !entries.is_empty() {
            head.extend(wrapped(lettering, basis, room, em, Voice::Plain));
        }
        let blocks: Vec<Block> =
            entries.iter().enumerate().map(|(at, entry)| block(lettering, at, entry, column, em)).collect();
        let all: f32 = blocks.iter().map(|block| block.height(em)).sum();
        let tallest = blocks.iter().map(|block| block.height(em)).fold(0.0, f32::max);
        let limit = (all / columns as f32 + tallest).min(LONGEST);
        let (mut at, mut down, mut lowest) = (0, 0.0_f32, 0.0_f32);
        let mut placed = Vec::new();
        let mut left_out = 0;
        for block in blocks {
            let high = block.height(em);
            if down > 0.0 && down + high > limit && at + 1 < columns {
                (at, down) = (at + 1, 0.0);
            }
            if down + high > LONGEST {
                left_out += 1;
                continue;
            }
            placed.push((block, at, down));
            down += high;
            lowest = lowest.max(down);
        }
        let tail = if left_out > 0 { LINE * em } else { 0.0 };
        let height = margin + head.len() as f32 * LINE * em + 0.5 * em + lowest + tail + margin;
        Self { width, height, em, column, head, blocks: placed, left_out }
    }

    /// Draws it below the picture.
    pub fn draw(&self, sheet: &mut Sheet, inks: &Inks, entries: &[Entry], top: f32) {
        let Self { em, .. } = *self;
        let margin = em;
        sheet.bar([0.0, top], [self.width, (em / 16.0).max(1.0)], inks.hairline);
        let mut line = top + margin + RISE * em;
        for (words, voice) in &self.head {
            sheet.words(words, [margin, line], em, weight(*voice), ink(*voice, inks));
            line += LINE * em;
        }
        let body = line - RISE * em + 0.5 * em;
        let mut lowest = body;
        for (block, column, down) in &self.blocks {
            let (left, mut line) = (margin + *column as f32 * self.column, body + down + RISE * em);
            let entry = &entries[block.entry];
            let number = entry.number.to_string();
            sheet.words(&number, [left, line], em, Weight::Bold, inks.of(entry.tied.stand));
            if entry.mark.role == MarkUse::Place && entry.mark.points.len() < 2 {
                pin(sheet, inks, &entry.tied, [left + 2.6 * em, line - 0.35 * em], 0.4 * em);
            }
            for (words, voice) in &block.lines {
                sheet.words(words, [left + INDENT * em, line], em, weight(*voice), ink(*voice, inks));
                line += LINE * em;
            }
            lowest = lowest.max(line);
        }
        if self.left_out > 0 {
            let words = text!("{count} more marks are not listed", count = self.left_out);
            sheet.words(&words, [margin, lowest + 0.3 * em], em, Weight::Reading, inks.ink_weak);
        }
    }
}

/// How far the words stand from a column's edge, ems: room for the number and a pin.
const INDENT: f32 = 3.4;

impl Block {
    fn height(&self, em: f32) -> f32 {
        (self.lines.len() as f32 * LINE + 0.4) * em
    }
}

fn block(lettering: &Lettering, at: usize, entry: &Entry, column: f32, em: f32) -> Block {
    let room = column - (INDENT + 1.0) * em;
    let mut lines = wrapped(lettering, &entry.title(), room, em, Voice::Title);
    lines.extend(wrapped(lettering, &entry.said.figures.join("; "), room, em, Voice::Plain));
    for heed in &entry.said.heeds {
        lines.extend(wrapped(lettering, &format!("! {heed}"), room, em, Voice::Heed));
    }
    Block { entry: at, lines }
}

fn wrapped(lettering: &Lettering, words: &str, room: f32, em: f32, voice: Voice) -> Vec<(String, Voice)> {
    lettering.wrapped(words, room, em, weight(voice)).into_iter().map(|line| (line, voice)).collect()
}

fn weight(voice: Voice) -> Weight {
    if matches!(voice, Voice::Title) { Weight::Bold } else { Weight::Reading }
}

fn ink(voice: Voice, inks: &Inks) -> Ink {
    if matches!(voice, Voice::Heed) { inks.ink_weak } else { inks.ink }
}
