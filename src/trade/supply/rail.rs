//! The rails of AT and ATX supplies and what each must keep to.

use serde::{Deserialize, Serialize};

use crate::trade::Source;

/// A supply's output.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub enum Rail {
    /// +12 V.
    #[serde(rename = "12")]
    Plus12,
    /// +5 V.
    #[serde(rename = "5")]
    Plus5,
    /// +3.3 V.
    #[serde(rename = "3.3")]
    Plus3v3,
    /// -5 V.
    #[serde(rename = "-5")]
    Minus5,
    /// -12 V.
    #[serde(rename = "-12")]
    Minus12,
    /// +5 V standby, present while the supply is plugged in.
    #[serde(rename = "5sb")]
    Standby,
}

impl Rail {
    /// All rails, in the order of a label.
    pub const ALL: [Self; 6] = [Self::Plus12, Self::Plus5, Self::Plus3v3, Self::Minus5, Self::Minus12, Self::Standby];

    /// Nominal voltage in volts, negative for the negative rails.
    pub fn nominal_v(self) -> f64 {
        match self {
            Self::Plus12 => 12.0,
            Self::Plus5 | Self::Standby => 5.0,
            Self::Plus3v3 => 3.3,
            Self::Minus5 => -5.0,
            Self::Minus12 => -12.0,
        }
    }

    /// As labels print it.
    pub fn label(self) -> &'static str {
        match self {
            Self::Plus12 => "+12 V",
            Self::Plus5 => "+5 V",
            Self::Plus3v3 => "+3.3 V",
            Self::Minus5 => "-5 V",
            Self::Minus12 => "-12 V",
            Self::Standby => "+5 VSB",
        }
    }

    /// Reads what people type for a rail: "5", "+5", "-12", "minus12", "3.3", "3v3", "5sb", each with or without "V".
    pub fn parse(text: &str) -> Option<Self> {
        let text = text.trim().to_ascii_lowercase().replace(',', ".");
        let text = text.strip_suffix('v').unwrap_or(&text).trim();
        let text = text.strip_prefix('+').unwrap_or(text);
        Some(match text {
            "12" => Self::Plus12,
            "5" => Self::Plus5,
            "3.3" | "3v3" => Self::Plus3v3,
            "-5" | "minus5" => Self::Minus5,
            "-12" | "minus12" => Self::Minus12,
            "5sb" | "5vsb" | "5 vsb" | "sb" | "vsb" => Self::Standby,
            _ => return None,
        })
    }
}

/// Which family of supplies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Standard {
    /// PC, XT, AT and their descendants with plugs P8 and P9.
    At,
    /// ATX and its smaller sisters.
    Atx,
}

/// What one rail must keep to.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Limits {
    /// Which rail.
    pub rail: Rail,
    /// The limit nearest zero volts allowed (of -12 V the -10.8 end), in volts.
    pub weakest_v: f64,
    /// The limit farthest from zero volts allowed, in volts.
    pub strongest_v: f64,
    /// Ripple and noise, peak to peak in mV, 10 Hz to 20 MHz, with 0.1 µF ceramic and 10 µF electrolytic at the plug.
    pub ripple_mvpp: Option<f64>,
    /// Where the limits stand.
    pub source: Source,
}

const ATX: Source = Source::published("ATX power supply design guide 0.9, p. 11 and 14");
const AT: Source = Source::memory(
    "technical reference manuals of the first PCs: +5/-4 % and +10/-8 or -9 %; a 1998 board manual of the same maker prints +5/-4 % at +5 V and +10/-9 % at -12 V",
);
const AT_STANDS_IN: Source =
    Source::practice("no standard for AT supplies has the rail; the ATX design guide's figures stand in");

/// Limits of every rail that supplies of this standard have, at the board's plug.
///
/// ATX: ±5 % on the positive rails, ±10 % on the negative ones. +3.3 V: the guide prints 3.14 to 3.47 V, its ±5 %
/// make 3.135 to 3.465 V; the wider end of each counts here, since a two-decimal meter shows 3.14 for 3.135, and a
/// reading so near is called marginal in any case. An older edition asked ±4 % there (from memory).
///
/// AT: no standards body defined it. +5 V and +12 V +5/-4 %, -5 V +10/-8 %, -12 V +10/-9 % (from memory; the ±5 % of
/// later clones is wider, so these never pass what those would fail). Ripple is ATX's, as common practice.
pub fn limits(standard: Standard) -> Vec<Limits> {
    let row = |rail, weakest_v, strongest_v, ripple, source: Source| Limits {
        rail,
        weakest_v,
        strongest_v,
        ripple_mvpp: Some(ripple),
        source,
    };
    match standard {
        Standard::Atx => vec![
            row(Rail::Plus12, 11.40, 12.60, 120.0, ATX),
            row(Rail::Plus5, 4.75, 5.25, 50.0, ATX),
            row(Rail::Plus3v3, 3.135, 3.47, 50.0, ATX),
            row(Rail::Minus5, -4.50, -5.50, 100.0, ATX),
            row(Rail::Minus12, -10.80, -13.20, 120.0, ATX),
            row(Rail::Standby, 4.75, 5.25, 50.0, ATX),
        ],
        Standard::At => vec![
            row(Rail::Plus12, 11.52, 12.60, 120.0, AT),
            row(Rail::Plus5, 4.80, 5.25, 50.0, AT),
            row(Rail::Plus3v3, 3.135, 3.47, 50.0, AT_STANDS_IN),
            row(Rail::Minus5, -4.60, -5.50, 100.0, AT),
            row(Rail::Minus12, -10.92, -13.20, 120.0, AT),
        ],
    }
}

/// The rail that a phrase names first: "+5 V rail", "minus 12 V at the plug", "5VSB", "+3.3V to ground, unpowered". A
/// number counts as a rail only with a sign before it or a V after it.
pub fn rail_in(phrase: &str) -> Option<Rail> {
    let text = phrase.to_lowercase().replace(['−', '–'], "-").replace("minus ", "-").replace("minus", "-");
    let text = text.replace("plus ", "+").replace("3,3", "3.3").replace("3v3", "3.3v");
    let bytes = text.as_bytes();
    let mut at = 0;
    while at < bytes.len() {
        if !bytes[at].is_ascii_digit() {
            at += 1;
            continue;
        }
        let end = text[at..]
            .find(|letter: char| !(letter.is_ascii_digit() || letter == '.'))
            .map_or(text.len(), |len| at + len);
        let before = text[..at].trim_end();
        let sign = before.chars().next_back().filter(|sign| matches!(sign, '+' | '-'));
        let after = text[end..].trim_start();
        let is_volts = after
            .strip_prefix('v')
            .is_some_and(|rest| rest.chars().next().is_none_or(|next| !next.is_alphabetic()) || rest.starts_with("sb"));
        let standby = after.strip_prefix('v').unwrap_or(after).trim_start();
        let is_standby = standby.starts_with("sb") || standby.starts_with("standby") || standby.starts_with("stand-by");
        if sign.is_some() || is_volts || is_standby {
            let number = text[at..end].trim_end_matches('.');
            let rail = match (number, sign) {
                ("5", _) if is_standby => Some(Rail::Standby),
                ("12", Some('-')) => Some(Rail::Minus12),
                ("5", Some('-')) => Some(Rail::Minus5),
                ("12", _) => Some(Rail::Plus12),
                ("5", _) => Some(Rail::Plus5),
                ("3.3", Some('+') | None) => Some(Rail::Plus3v3),
                _ => None,
            };
            if rail.is_some() {
                return rail;
            }
        }
        at = end.max(at + 1);
    }
    None
}
