//! Settings as they stand on a board: which of them fit judges by, known by the names people give them, and their
//! values read as numbers.
//!
//! Names and ways of writing are common practice, no source: prints on boards, set-up screens and manuals.

use serde::Serialize;

use super::clock::Ratio;
use crate::text;

/// A setting that fit judges a machine by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Setting {
    BusClock,
    Multiplier,
    CoreVoltage,
    PciDivider,
    AgpDivider,
}

const BUS_CLOCK: [&str; 14] = [
    "bus",
    "bus clock",
    "bus speed",
    "bus frequency",
    "fsb",
    "fsb clock",
    "fsb speed",
    "front side bus",
    "host bus",
    "host clock",
    "system bus",
    "external clock",
    "cpu bus clock",
    "processor bus clock",
];
const MULTIPLIER: [&str; 8] = [
    "multiplier",
    "multiplicator",
    "clock multiplier",
    "core multiplier",
    "cpu multiplier",
    "processor multiplier",
    "clock ratio",
    "cpu clock ratio",
];
const CORE_VOLTAGE: [&str; 9] = [
    "core voltage",
    "core volts",
    "cpu voltage",
    "cpu core voltage",
    "processor voltage",
    "vcore",
    "cpu vcore",
    "vcc core",
    "vcc2",
];
const PCI_DIVIDER: [&str; 4] = ["pci divider", "pci divisor", "pci ratio", "pci clock divider"];
const AGP_DIVIDER: [&str; 4] = ["agp divider", "agp divisor", "agp ratio", "agp clock divider"];

/// Names longer than this are none of these, so that nothing long is taken apart.
const LONGEST: usize = 64;

impl Setting {
    /// In words.
    pub fn said(self) -> &'static str {
        match self {
            Self::BusClock => text!("bus clock"),
            Self::Multiplier => text!("multiplier"),
            Self::CoreVoltage => text!("core voltage"),
            Self::PciDivider => text!("PCI divider"),
            Self::AgpDivider => text!("AGP divider"),
        }
    }

    /// The setting of a name as people write it: "Bus clock", "FSB", "V-core". `None` for any other.
    pub fn of_name(name: &str) -> Option<Self> {
        if name.len() > LONGEST {
            return None;
        }
        let bare = |text: &str| -> String {
            text.chars().filter(|letter| letter.is_alphanumeric()).flat_map(char::to_lowercase).collect()
        };
        let name = bare(name);
        let is_one = |names: &[&str]| names.iter().any(|known| bare(known) == name);
        let known = [
            (Self::BusClock, is_one(&BUS_CLOCK)),
            (Self::Multiplier, is_one(&MULTIPLIER)),
            (Self::CoreVoltage, is_one(&CORE_VOLTAGE)),
            (Self::PciDivider, is_one(&PCI_DIVIDER)),
            (Self::AgpDivider, is_one(&AGP_DIVIDER)),
        ];
        known.into_iter().find_map(|(setting, is_it)| is_it.then_some(setting))
    }

    /// The value as a number: MHz, volts, or how many times. A divider is the bus clock by the other one: "2", "1/2"
    /// and "2/3" are 2, 2 and 1.5. `None` for what is no number, has another unit, or cannot be.
    pub fn read(self, value: &str) -> Option<f64> {
        if value.len() > LONGEST {
            return None;
        }
        let value = value.trim().to_lowercase().replace(',', ".");
        let (number, range) = match self {
            Self::BusClock => (plain(value.strip_suffix("mhz").unwrap_or(&value))?, 1.0..=1000.0),
            Self::CoreVoltage => (volts(&value)?, 0.5..=6.0),
            Self::Multiplier => (times(&value)?, 0.5..=64.0),
            Self::PciDivider | Self::AgpDivider => (divider(&value)?, 0.5..=16.0),
        };
        range.contains(&number).then_some(number)
    }
}

/// Digits with at most one point, and nothing else.
fn plain(text: &str) -> Option<f64> {
    let text = text.trim();
    let is_plain = text.starts_with(|first: char| first.is_ascii_digit())
        && text.chars().all(|letter| letter.is_ascii_digit() || letter == '.');
    is_plain.then(|| text.parse().ok())?
}

/// "2.9 V", "2.9", "2v9".
fn volts(value: &str) -> Option<f64> {
    let unit = ["volts", "volt", "v"].iter().find_map(|unit| value.strip_suffix(unit));
    plain(unit.unwrap_or(value)).or_else(|| plain(&value.replacen('v', ".", 1)))
}

/// "3.5", "x3.5", "3.5×".
fn times(value: &str) -> Option<f64> {
    let is_sign = |letter: char| matches!(letter, 'x' | '×' | '*');
    let before = value.strip_prefix(is_sign);
    plain(before.or_else(|| value.strip_suffix(is_sign)).unwrap_or(value))
}

/// "2", "/2", "÷2", "1/2", "2/3".
fn divider(value: &str) -> Option<f64> {
    let alone = value.strip_prefix(['/', '÷']).unwrap_or(value);
    if let Some(number) = plain(alone) {
        return Some(number);
    }
    let Ratio { times, by } = value.contains('/').then(|| Ratio::parse(value))??;
    Some(f64::from(by) / f64::from(times))
}
