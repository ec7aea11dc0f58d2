//! Print on boards and labels: capitals and figures as dots, five wide and seven high.

use super::canvas::{Area, Canvas, Ink};

/// A letter's rows, five bits each, top row first.
fn rows(letter: char) -> [u8; 7] {
    match letter.to_ascii_uppercase() {
        'A' => [14, 17, 17, 31, 17, 17, 17],
        'B' => [30, 17, 17, 30, 17, 17, 30],
        'C' => [14, 17, 16, 16, 16, 17, 14],
        'D' => [30, 17, 17, 17, 17, 17, 30],
        'E' => [31, 16, 16, 30, 16, 16, 31],
        'F' => [31, 16, 16, 30, 16, 16, 16],
        'G' => [14, 17, 16, 23, 17, 17, 14],
        'H' => [17, 17, 17, 31, 17, 17, 17],
        'I' => [14, 4, 4, 4, 4, 4, 14],
        'J' => [7, 2, 2, 2, 2, 18, 12],
        'K' => [17, 18, 20, 24, 20, 18, 17],
        'L' => [16, 16, 16, 16, 16, 16, 31],
        'M' => [17, 27, 21, 21, 17, 17, 17],
        'N' => [17, 25, 21, 19, 17, 17, 17],
        'O' => [14, 17, 17, 17, 17, 17, 14],
        'P' => [30, 17, 17, 30, 16, 16, 16],
        'Q' => [14, 17, 17, 17, 21, 18, 13],
        'R' => [30, 17, 17, 30, 20, 18, 17],
        'S' => [15, 16, 16, 14, 1, 1, 30],
        'T' => [31, 4, 4, 4, 4, 4, 4],
        'U' => [17, 17, 17, 17, 17, 17, 14],
        'V' => [17, 17, 17, 17, 17, 10, 4],
        'W' => [17, 17, 17, 21, 21, 27, 17],
        'X' => [17, 17, 10, 4, 10, 17, 17],
        'Y' => [17, 17, 10, 4, 4, 4, 4],
        'Z' => [31, 1, 2, 4, 8, 16, 31],
        '0' => [14, 17, 19, 21, 25, 17, 14],
        '1' => [4, 12, 4, 4, 4, 4, 14],
        '2' => [14, 17, 1, 6, 8, 16, 31],
        '3' => [31, 2, 4, 6, 1, 17, 14],
        '4' => [2, 6, 10, 18, 31, 2, 2],
        '5' => [31, 16, 30, 1, 1, 17, 14],
        '6' => [6, 8, 16, 30, 17, 17, 14],
        '7' => [31, 1, 2, 4, 8, 8, 8],
        '8' => [14, 17, 17, 14, 17, 17, 14],
        '9' => [14, 17, 17, 15, 1, 2, 12],
        '-' => [0, 0, 0, 31, 0, 0, 0],
        '/' => [1, 1, 2, 4, 8, 16, 16],
        '.' => [0, 0, 0, 0, 0, 12, 12],
        ':' => [0, 12, 12, 0, 12, 12, 0],
        '+' => [0, 4, 4, 31, 4, 4, 0],
        '=' => [0, 0, 31, 0, 31, 0, 0],
        _ => [0; 7],
    }
}

/// How wide a text stands at a dot size, pixels.
pub fn width_px(text: &str, dot_px: f32) -> f32 {
    (text.chars().count() as f32 * 6.0 - 1.0).max(0.0) * dot_px
}

impl Canvas {
    /// Prints a line, its upper left corner at (x, y), with dots of `dot_px`.
    pub fn print(&mut self, text: &str, x: f32, y: f32, dot_px: f32, ink: Ink) {
        for (index, letter) in text.chars().enumerate() {
            let left = x + index as f32 * 6.0 * dot_px;
            for (down, row) in rows(letter).into_iter().enumerate() {
                // Dots that touch are one dash: fewer shapes and no seams.
                let mut across = 0;
                while across < 5 {
                    let run = (across..5).take_while(|column| row & (16 >> column) != 0).count();
                    if run > 0 {
                        let dash = Area::new(
                            left + across as f32 * dot_px,
                            y + down as f32 * dot_px,
                            run as f32 * dot_px,
                            dot_px * 1.02,
                        );
                        self.rect(dash, ink);
                    }
                    across += run.max(1);
                }
            }
        }
    }

    /// Prints a line into the middle of an area, as large as fits and at most with dots of `most_px`.
    pub fn print_into(&mut self, text: &str, area: Area, most_px: f32, ink: Ink) {
        if text.is_empty() {
            return;
        }
        let dot_px = most_px.min(area.w / width_px(text, 1.0)).min(area.h / 7.0);
        let (x, y) = area.at(0.5, 0.5);
        self.print(text, x - width_px(text, dot_px) / 2.0, y - 3.5 * dot_px, dot_px, ink);
    }
}
