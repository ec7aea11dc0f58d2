//! The words in which capacitor positions are told: how a line is cut up, and what each word stands for.

use super::capacitor_phrase::BadPhrase;
use super::{CapacitorState, Dielectric, MOST_POSITIONS, Mounting};
use crate::text;

/// A line cut into numbers, words and commas; `1000µF` and `1000 µF` become the same.
pub(super) struct Words {
    pub list: Vec<Token>,
}

#[derive(Clone, Debug, PartialEq)]
pub(super) enum Token {
    Number(f64, String),
    Word(String),
    Comma,
}

impl Words {
    pub fn of(line: &str) -> Self {
        let line: Vec<char> = line.chars().map(|c| if matches!(c, '‐'..='―' | '−') { '-' } else { c }).collect();
        let mut list = Vec::new();
        let mut at = 0;
        while at < line.len() {
            let c = line[at];
            if c.is_ascii_digit() {
                let start = at;
                while at < line.len() && (line[at].is_ascii_digit() || is_point(&line, at)) {
                    at += 1;
                }
                let mut printed: String = line[start..at].iter().collect();
                // The prefix may stand for the point: 4n7.
                let prefix = line.get(at).copied().filter(|c| matches!(c, 'n' | 'p' | 'u' | 'µ'));
                let follows = line[at..].iter().skip(1).take_while(|c| c.is_ascii_digit()).count();
                if prefix.is_some() && follows > 0 {
                    printed.push('.');
                    printed.extend(&line[at + 1..=at + follows]);
                    at += 1 + follows;
                }
                match printed.replace(',', ".").parse() {
                    Ok(number) => list.push(Token::Number(number, printed)),
                    Err(_) => list.push(Token::Word(printed)),
                }
                if let (Some(prefix), true) = (prefix, follows > 0) {
                    list.push(Token::Word(format!("{prefix}F")));
                }
            } else if matches!(c, 'x' | 'X')
                && line.get(at + 1).is_some_and(char::is_ascii_digit)
                && is_between(&line, at)
            {
                list.push(Token::Word("x".to_owned()));
                at += 1;
            } else if c.is_alphabetic() || c == 'µ' || c == '°' || c == 'Ø' {
                let start = at;
                // A designator or a series keeps its figures: C12, C1-C6.
                let named = |at: usize| line[at].is_alphanumeric() || matches!(line[at], '°' | '\'' | '-' | '_');
                while at < line.len() && named(at) {
                    at += 1;
                }
                let word: String = line[start..at].iter().collect();
                list.push(Token::Word(word.trim_end_matches('-').to_owned()));
            } else {
                if matches!(c, ',' | ';' | ':') {
                    list.push(Token::Comma);
                } else if matches!(c, '/' | '×' | '-' | '+' | '%' | '&') {
                    list.push(Token::Word(c.to_string()));
                }
                at += 1;
            }
        }
        Self { list }
    }
}

/// An x directly behind a figure stands between two of them: 8x12.
pub(super) fn is_between(line: &[char], at: usize) -> bool {
    at > 0 && line[at - 1].is_ascii_digit()
}

/// A point or comma between two figures belongs to the number.
pub(super) fn is_point(line: &[char], at: usize) -> bool {
    matches!(line[at], '.' | ',') && line.get(at + 1).is_some_and(char::is_ascii_digit)
}

/// Words that carry nothing.
pub(super) const FILLERS: [&str; 31] = [
    "of",
    "the",
    "and",
    "all",
    "each",
    "with",
    "are",
    "is",
    "they",
    "look",
    "looks",
    "capacitor",
    "capacitors",
    "caps",
    "cap",
    "pieces",
    "pcs",
    "off",
    "can",
    "cans",
    "rated",
    "at",
    "type",
    "marked",
    "value",
    "condition",
    "ones",
    "a",
    "an",
    "both",
    "them",
];

pub(super) const PLACE_WORDS: [&str; 22] = [
    "near", "beside", "by", "around", "round", "behind", "between", "along", "next", "on", "in", "above", "below",
    "under", "left", "right", "front", "beneath", "opposite", "inside", "top", "bottom",
];

pub(super) const COUNTS: [&str; 13] =
    ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

/// Words that the trade uses in two senses, with the clear ones to write instead.
pub(super) fn ambiguous(word: &str) -> Option<&'static str> {
    match word {
        "dry" => Some(text!("“no leakage” or “dried out”")),
        "solid" => Some(text!("“polymer” or “tantalum”")),
        _ => None,
    }
}

pub(super) fn state_of(word: &str) -> Option<CapacitorState> {
    Some(match word {
        "sound" | "good" | "fine" | "ok" | "okay" | "flat" | "intact" | "no leakage" | "not leaking" => {
            CapacitorState::Sound
        }
        "bulged" | "bulging" | "domed" | "vented" | "swollen" => CapacitorState::Bulged,
        "leaking" | "leaked" | "leaky" => CapacitorState::Leaking,
        "burst" | "blown" | "popped" | "exploded" => CapacitorState::Burst,
        "cracked" => CapacitorState::Cracked,
        "missing" | "gone" => CapacitorState::Missing,
        "reversed" | "backwards" => CapacitorState::Reversed,
        // Its electrolyte is gone: little capacitance and much resistance are left.
        "dried" | "dried-out" | "dried out" => CapacitorState::OutOfLimits,
        "unseen" => CapacitorState::NotLooked,
        _ => return None,
    })
}

pub(super) fn dielectric_of(word: &str) -> Option<Dielectric> {
    Some(match word {
        "aluminium" | "aluminum" | "electrolytic" | "electrolytics" | "wet" => Dielectric::WetAluminium,
        "bipolar" | "bipolars" | "bi-polar" | "non-polar" | "nonpolar" | "non-polarised" | "non-polarized"
        | "unpolarised" | "unpolarized" | "np" | "bp" => Dielectric::BipolarAluminium,
        "polymer" | "polymers" => Dielectric::Polymer,
        "tantalum" | "tantalums" | "tant" | "tants" | "bead" | "beads" => Dielectric::Tantalum,
        "film" | "films" => Dielectric::Film,
        "suppression" | "suppressor" | "suppressors" | "x1" | "x2" | "y1" | "y2" => Dielectric::Suppression,
        "ceramic" | "ceramics" => Dielectric::Ceramic,
        _ => return None,
    })
}

pub(super) fn mounting_of(word: &str) -> Option<Mounting> {
    Some(match word {
        "radial" | "radials" => Mounting::Radial,
        "axial" | "axials" => Mounting::Axial,
        "smd" | "smt" | "surface-mount" | "surface-mounted" => Mounting::Surface,
        "snap-in" => Mounting::SnapIn,
        _ => return None,
    })
}

/// A figure that a group carries, by the unit behind it.
#[derive(Clone, Copy)]
pub(super) enum Measure {
    Capacitance(f64),
    Volts,
    Millimetres,
    Celsius,
}

pub(super) fn unit_of(word: &str) -> Result<Option<Measure>, BadPhrase> {
    // The micro sign and the Greek letter look alike.
    let word = word.replace('μ', "µ");
    if word == "mF" {
        return Err(BadPhrase::Milli);
    }
    Ok(match word.to_lowercase().as_str() {
        "µf" | "uf" | "mfd" | "µfd" | "ufd" | "microfarad" | "microfarads" | "µ" => Some(Measure::Capacitance(1.0)),
        "nf" | "nanofarad" | "nanofarads" => Some(Measure::Capacitance(1e-3)),
        "pf" | "picofarad" | "picofarads" => Some(Measure::Capacitance(1e-6)),
        "v" | "volt" | "volts" | "vdc" | "vac" => Some(Measure::Volts),
        "mm" | "millimetre" | "millimetres" => Some(Measure::Millimetres),
        "°c" | "c" | "°" | "degrees" => Some(Measure::Celsius),
        _ => None,
    })
}

/// Letters, then figures, perhaps a run of them: `C12`, `EC3`, `C1-C6`, `TC1-6`.
pub(super) fn is_designator(word: &str) -> bool {
    let one = |word: &str| {
        let letters = word.chars().take_while(char::is_ascii_uppercase).count();
        let figures = &word[letters..];
        (1..=3).contains(&letters) && !figures.is_empty() && figures.chars().all(|c| c.is_ascii_digit())
    };
    match word.split_once('-') {
        Some((first, last)) => {
            one(first) && (one(last) || (!last.is_empty() && last.chars().all(|c| c.is_ascii_digit())))
        }
        None => one(word),
    }
}

/// Every designator from the first to the last; `None` when they do not make a run.
pub(super) fn run(first: &str, last: &str) -> Option<Vec<String>> {
    let cut = |name: &str| {
        let at = name.find(|c: char| c.is_ascii_digit())?;
        Some((name[..at].to_owned(), name[at..].parse::<u32>().ok()?))
    };
    let (letters, from) = cut(first)?;
    let (other, to) = cut(last)?;
    let fits = (other.is_empty() || other == letters) && from < to && ((to - from) as usize) < MOST_POSITIONS;
    fits.then(|| (from..=to).map(|number| format!("{letters}{number}")).collect())
}
