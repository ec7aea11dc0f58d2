//! A marking as signs: upper case, cut into runs of digits and runs of letters, nothing allocated.

use super::Unreadable;

/// More signs than the longest date (`DATE CODE: 12 SEPTEMBER 1997`) with a maker's words around it.
const SIGNS: usize = 48;
/// More runs than a date with a maker's words around it has.
const RUNS: usize = 12;

/// A marking's signs, and where its runs lie in them.
pub(super) struct Code {
    signs: [u8; SIGNS],
    runs: [Run; RUNS],
    count: usize,
    /// A © stood in the text.
    pub copyright: bool,
}

#[derive(Clone, Copy, Default)]
struct Run {
    start: u8,
    end: u8,
    digits: bool,
    /// Nothing stands between this run and the one before.
    joined: bool,
}

/// One run of a code.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Part<'a> {
    /// At most nine digits: how many there are, and the number they make.
    Digits(usize, u32),
    Letters(&'a [u8]),
}

impl Code {
    /// Cuts a text into runs. Signs that separate (spaces, `- / . , : ' ( ) # _`) end a run; any other sign is an
    /// error, since no date code has it.
    pub fn new(text: &str) -> Result<Self, Unreadable> {
        let mut code = Self { signs: [0; SIGNS], runs: [Run::default(); RUNS], count: 0, copyright: false };
        let mut length = 0;
        let mut joined = false;
        for sign in text.chars() {
            if !sign.is_ascii_alphanumeric() {
                match sign {
                    '-' | '/' | '.' | ',' | ':' | '\'' | '(' | ')' | '#' | '_' | '–' | '’' => {}
                    '©' => code.copyright = true,
                    _ if sign.is_whitespace() => {}
                    _ => return Err(Unreadable::Sign(sign)),
                }
                joined = false;
                continue;
            }
            let digits = sign.is_ascii_digit();
            if length == SIGNS {
                return Err(Unreadable::TooLong);
            }
            code.signs[length] = sign.to_ascii_uppercase() as u8;
            length += 1;
            match code.runs[..code.count].last_mut() {
                // `joined` is still set from the sign before, so this sign goes on with its run.
                Some(run) if joined && run.digits == digits => run.end += 1,
                _ => {
                    let Some(run) = code.runs.get_mut(code.count) else { return Err(Unreadable::TooLong) };
                    *run = Run { start: length as u8 - 1, end: length as u8, digits, joined };
                    code.count += 1;
                }
            }
            joined = true;
        }
        if code.count == 0 { Err(Unreadable::Empty) } else { Ok(code) }
    }

    /// How many runs there are.
    pub fn count(&self) -> usize {
        self.count
    }

    /// The run at a place; `None` past the end, and for more than nine digits in a row.
    pub fn part(&self, at: usize) -> Option<Part<'_>> {
        let run = self.runs[..self.count].get(at)?;
        let signs = &self.signs[usize::from(run.start)..usize::from(run.end)];
        if !run.digits {
            return Some(Part::Letters(signs));
        }
        (signs.len() <= 9).then(|| {
            Part::Digits(signs.len(), signs.iter().fold(0, |number, digit| number * 10 + u32::from(digit - b'0')))
        })
    }

    /// Whether the run at a place follows the one before without anything between them.
    pub fn is_joined(&self, at: usize) -> bool {
        self.runs[..self.count].get(at).is_some_and(|run| run.joined)
    }

    /// How many leading runs only say that a date follows (`DATE CODE`, `D/C`, `MFG`).
    pub fn label_runs(&self) -> usize {
        let mut at = 0;
        while let Some(Part::Letters(word)) = self.part(at) {
            match word {
                b"DATE" | b"CODE" | b"DC" | b"MFG" | b"MFD" | b"MADE" | b"LOT" => at += 1,
                // D/C, in two runs; joined to a figure it would be a year letter.
                b"D" if self.part(at + 1) == Some(Part::Letters(b"C")) => at += 2,
                _ => break,
            }
        }
        at
    }
}
