//! What a capacitor's mark says: capacitance, voltage, tolerance, and how to know its plus.

use std::fmt;

use serde::{Deserialize, Serialize};

use super::codes::Tolerance;
use super::values;
use crate::text;
use crate::trade::{Source, Sureness};

/// What kind of capacitor carries the mark.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Body {
    Ceramic,
    Film,
    TantalumBead,
    TantalumChip,
    /// An aluminium can with leads.
    AluminiumCan,
    /// A surface-mounted aluminium can.
    AluminiumChip,
    #[default]
    Unknown,
}

impl Body {
    pub const ALL: [Self; 7] = [
        Self::Ceramic,
        Self::Film,
        Self::TantalumBead,
        Self::TantalumChip,
        Self::AluminiumCan,
        Self::AluminiumChip,
        Self::Unknown,
    ];

    /// The name in files and on the console, as in its stored form.
    pub fn key(self) -> &'static str {
        match self {
            Self::Ceramic => "ceramic",
            Self::Film => "film",
            Self::TantalumBead => "tantalum_bead",
            Self::TantalumChip => "tantalum_chip",
            Self::AluminiumCan => "aluminium_can",
            Self::AluminiumChip => "aluminium_chip",
            Self::Unknown => "unknown",
        }
    }

    /// Whether it is an electrolytic, whose bare numbers are microfarads.
    pub fn is_electrolytic(self) -> bool {
        matches!(self, Self::TantalumBead | Self::TantalumChip | Self::AluminiumCan | Self::AluminiumChip)
    }

    pub(super) fn is_tantalum(self) -> bool {
        matches!(self, Self::TantalumBead | Self::TantalumChip)
    }

    /// How to tell plus from minus, `capacitance_pf` in picofarads. Electrolytics begin at 0.1 µF, so a smaller one
    /// of an unknown kind has no plus (common practice). Tantalum: a maker's chip data sheet (mmic.net.cn copy). Cans: common practice.
    pub fn polarity(self, capacitance_pf: f64) -> Polarity {
        match self {
            Self::Ceramic | Self::Film => Polarity::None,
            Self::Unknown if capacitance_pf < 0.1e6 => Polarity::None,
            Self::TantalumBead | Self::TantalumChip => Polarity::BarIsPlus,
            Self::AluminiumCan | Self::AluminiumChip => Polarity::BarIsMinus,
            Self::Unknown => Polarity::DependsOnBody,
        }
    }
}

impl std::str::FromStr for Body {
    type Err = String;

    /// From [`Body::key`]; a hyphen may stand for the underscore.
    fn from_str(text: &str) -> Result<Self, String> {
        let key = text.trim().to_ascii_lowercase().replace('-', "_");
        Self::ALL.into_iter().find(|body| body.key() == key).ok_or_else(|| {
            text!("“{text}” is no kind of capacitor: {all}", text = text, all = Self::ALL.map(Self::key).join(", "))
        })
    }
}

/// What the bar or stripe on a capacitor means.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Polarity {
    /// Either way round.
    None,
    BarIsPlus,
    BarIsMinus,
    /// Tantalum or aluminium: find out first.
    DependsOnBody,
}

impl fmt::Display for Polarity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::None => text!("Fits either way round."),
            Self::BarIsPlus => {
                text!("The bar or the + marks plus. A reversed tantalum fails short and can burn: check before power.")
            }
            Self::BarIsMinus => {
                text!("The stripe or the black segment marks minus. A reversed can vents: check before power.")
            }
            Self::DependsOnBody => {
                text!("The bar marks plus on a tantalum, minus on an aluminium can: find out which it is before power.")
            }
        })
    }
}

/// How the capacitance is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Form {
    /// A number with its unit: `47 µF`.
    WithUnit,
    /// IEC 60062: the prefix stands for the point: `4n7`.
    PrefixForPoint,
    /// Two figures and a power of ten in picofarads: `474`.
    ThreeFigure,
    /// R for the point: `4R7`.
    RForPoint,
    /// A letter and a power of ten: `S3`.
    LetterFigure,
    /// A bare number of microfarads: `100 16V` on a can.
    BareMicrofarads,
    /// A bare number of picofarads: `47` on a ceramic.
    BarePicofarads,
}

impl Form {
    /// Where the form's meaning stands.
    pub fn source(self) -> Source {
        match self {
            Self::WithUnit => Source::practice("as printed"),
            Self::PrefixForPoint => Source::published("IEC 60062, letter and digit code"),
            Self::ThreeFigure => Source::published("IEC 60062, three-character code for capacitance"),
            Self::RForPoint => Source::published("pedalprojects.co.uk, capacitor codes"),
            Self::LetterFigure => Source::published("EIA-198 as given by marsport.org.uk"),
            Self::BareMicrofarads | Self::BarePicofarads => Source::practice(""),
        }
    }
}

impl fmt::Display for Form {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::WithUnit => text!("value with its unit"),
            Self::PrefixForPoint => text!("the prefix stands for the point"),
            Self::ThreeFigure => text!("two figures and a power of ten, in picofarads"),
            Self::RForPoint => text!("R stands for the point"),
            Self::LetterFigure => text!("letter and power of ten, in picofarads"),
            Self::BareMicrofarads => text!("a bare number of microfarads"),
            Self::BarePicofarads => text!("a bare number of picofarads"),
        })
    }
}

/// One possible reading of a mark.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mark {
    pub form: Form,
    /// Capacitance in picofarads, 0.01 pF to 10 F.
    pub capacitance_pf: f64,
    /// Rated voltage, 1 to 10,000 V.
    pub volts: Option<f64>,
    pub tolerance: Option<Tolerance>,
    pub polarity: Polarity,
    /// Class of a mains suppression capacitor, such as X2: replaced by the same class only.
    pub suppression: Option<(char, u8)>,
    /// A letter beside the value is known from memory only.
    pub is_remembered: bool,
}

impl Mark {
    /// Where the reading stands; from memory as soon as one letter is.
    pub fn source(&self) -> Source {
        let source = self.form.source();
        if self.is_remembered { Source { sureness: Sureness::Memory, ..source } } else { source }
    }

    /// Capacitance in microfarads.
    pub fn capacitance_uf(&self) -> f64 {
        self.capacitance_pf / 1e6
    }
}

/// Capacitance in the unit that a person would say it in: `47 pF`, `4.7 nF`, `470 nF (0.47 µF)`, `1000 µF`.
pub fn capacitance_words(capacitance_pf: f64) -> String {
    // Twelve significant places hide what arithmetic leaves behind.
    let short = |value: f64| {
        let rounded: f64 = format!("{value:.11e}").parse().unwrap_or(value);
        rounded.to_string()
    };
    match capacitance_pf {
        pf if pf < 1000.0 => format!("{} pF", short(pf)),
        pf if pf < 10_000.0 => format!("{} nF", short(pf / 1e3)),
        pf if pf < 1e6 => format!("{} nF ({} µF)", short(pf / 1e3), short(pf / 1e6)),
        pf => format!("{} µF", short(pf / 1e6)),
    }
}

/// Why a mark cannot be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Unreadable {
    Empty,
    TooLong,
    Sign(char),
    /// No mark is written like this.
    NoForm,
    /// The third figure is a 7, which ceramic and film capacitors do not use.
    UnusedPower,
    /// A letter O where a voltage code has the figure 0.
    LetterForZero,
    /// A two-character voltage code that does not exist.
    NoVoltageCode(char, char),
    /// No capacitor is that small or that large.
    Beyond,
    /// The value is clear, but not what follows it.
    Remainder,
}

impl fmt::Display for Unreadable {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&match *self {
            Self::Empty => text!("there is nothing to read").to_owned(),
            Self::TooLong => text!("this is longer than any capacitor's mark").to_owned(),
            Self::Sign(sign) => text!("no capacitor's mark has “{sign}” in it", sign = sign),
            Self::NoForm => text!("no capacitor is marked like this").to_owned(),
            Self::UnusedPower => text!("a third figure 7 is not used on ceramic and film capacitors").to_owned(),
            Self::LetterForZero => text!("a voltage code begins with a figure: read the letter O as a zero").to_owned(),
            Self::NoVoltageCode(power, letter) => {
                text!("there is no voltage code {power}{letter}", power = power, letter = letter)
            }
            Self::Beyond => text!("no capacitor is that small or that large").to_owned(),
            Self::Remainder => text!("the value is clear, but not what stands beside it").to_owned(),
        })
    }
}

/// Every possible reading of a capacitor's mark, likeliest first; never an empty list.
///
/// `body` ranks the readings and leaves out those that such a capacitor never carries.
///
/// # Errors
/// [`Unreadable`] says why there is none.
pub fn read(text: &str, body: Body) -> Result<Vec<Mark>, Unreadable> {
    values::marks(text, body)
}
