//! Limits of electrolytic capacitors, by series: what a new one may measure, and when one is at its end.

use std::fmt;

use serde::{Deserialize, Serialize};

use crate::text;
use crate::trade::Source;

/// A kind of series whose limits are published.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Series {
    /// Any aluminium electrolytic of which no more is known.
    #[default]
    General,
    /// General purpose, 85 °C, leads.
    Leads85,
    /// Surface-mounted can up to 6.3 mm across.
    SurfaceSmall,
    /// Surface-mounted can from 8 mm across.
    SurfaceLarge,
    /// Small cans with axial leads, at the end of their useful life.
    AxialUseful,
    /// Long life, 105 °C, snap-in, at the end of their useful life.
    LongLife105,
}

impl Series {
    pub const ALL: [Self; 6] =
        [Self::General, Self::Leads85, Self::SurfaceSmall, Self::SurfaceLarge, Self::AxialUseful, Self::LongLife105];

    /// The name in files and on the console, as in its stored form.
    pub fn key(self) -> &'static str {
        match self {
            Self::General => "general",
            Self::Leads85 => "leads85",
            Self::SurfaceSmall => "surface_small",
            Self::SurfaceLarge => "surface_large",
            Self::AxialUseful => "axial_useful",
            Self::LongLife105 => "long_life105",
        }
    }

    /// How far a capacitor of `volts` may drift before it is at its end.
    pub fn end(self, volts: f64) -> End {
        let both = |percent, loss_factor, source| End {
            minus_percent: percent,
            plus_percent: percent,
            loss_factor,
            source: Source::published(source),
        };
        match self {
            Self::General => End {
                minus_percent: 20.0,
                plus_percent: 20.0,
                loss_factor: 2.0,
                source: Source::practice("after makers' endurance limits of ±20 %, twice the loss"),
            },
            Self::Leads85 => both(20.0, 1.5, "Panasonic SU series, load life 85 °C 2000 h (dtsheet 1530872)"),
            Self::SurfaceSmall => both(25.0, 3.0, "VEJ series, up to 6.3 mm (en.eeworld.com)"),
            Self::SurfaceLarge => both(20.0, 2.0, "VEJ series, from 8 mm (en.eeworld.com)"),
            Self::AxialUseful => End {
                minus_percent: if volts <= 6.3 { 50.0 } else { 45.0 },
                ..both(45.0, 3.0, "Vishay 030/031, useful life, CECC 30301 1.8.1 (28327, p. 186)")
            },
            Self::LongLife105 => both(20.0, 3.0, "Vishay 158 PUL-SI, useful life 5000 h 105 °C (28375, p. 98)"),
        }
    }
}

impl std::str::FromStr for Series {
    type Err = String;

    /// From [`Series::key`]; a hyphen may stand for the underscore.
    fn from_str(text: &str) -> Result<Self, String> {
        let key = text.trim().to_ascii_lowercase().replace('-', "_");
        Self::ALL.into_iter().find(|series| series.key() == key).ok_or_else(|| {
            text!("“{text}” is no series: {all}", text = text, all = Self::ALL.map(Self::key).join(", "))
        })
    }
}

impl fmt::Display for Series {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::General => text!("any aluminium electrolytic"),
            Self::Leads85 => text!("general purpose with leads, 85 °C"),
            Self::SurfaceSmall => text!("surface-mounted, up to 6.3 mm"),
            Self::SurfaceLarge => text!("surface-mounted, from 8 mm"),
            Self::AxialUseful => text!("small axial can"),
            Self::LongLife105 => text!("long life, 105 °C"),
        })
    }
}

/// When a capacitor is at its end.
#[derive(Clone, Debug, PartialEq)]
pub struct End {
    /// Per cent below the printed capacitance.
    pub minus_percent: f64,
    /// Per cent above it.
    pub plus_percent: f64,
    /// How many times the loss factor (or series resistance) of a new one.
    pub loss_factor: f64,
    pub source: Source,
}

/// A limit and where it stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Limit {
    pub value: f64,
    pub source: Source,
}

/// The highest loss factor of a new aluminium electrolytic at 120 Hz and 20 °C, by rated volts and microfarads.
///
/// Between the voltages of the table the next lower one counts. From 1000 µF on, 0.02 is added for each whole
/// 1000 µF. Source: Panasonic SU series for 6.3 to 100 V; beyond from memory.
pub fn tan_delta_limit(capacitance_uf: f64, volts: f64) -> Limit {
    const SU: &str = "Panasonic SU series (dtsheet 1530872)";
    let (base, source) = match volts {
        v if v < 6.3 => (0.24, Source::memory("general purpose series below 6.3 V")),
        v if v < 10.0 => (0.22, Source::published(SU)),
        v if v < 16.0 => (0.19, Source::published(SU)),
        v if v < 25.0 => (0.16, Source::published(SU)),
        v if v < 35.0 => (0.14, Source::published(SU)),
        v if v < 50.0 => (0.12, Source::published(SU)),
        v if v < 63.0 => (0.10, Source::published(SU)),
        v if v < 100.0 => (0.09, Source::published(SU)),
        v if v < 160.0 => (0.08, Source::published(SU)),
        v if v < 350.0 => (0.20, Source::memory("general purpose series, 160 to 250 V")),
        _ => (0.25, Source::memory("general purpose series, 350 to 450 V")),
    };
    let thousands = (capacitance_uf / 1000.0).floor();
    Limit { value: base + 0.02 * thousands, source }
}

/// The highest leakage of a sound aluminium electrolytic in microamperes, two minutes after rated voltage is put on:
/// 0.01 CV or 3 µA, the greater; from 160 V 0.06 CV + 10 µA.
///
/// Source: Panasonic SU series (dtsheet 1530872).
pub fn leakage_limit_ua(capacitance_uf: f64, volts: f64) -> Limit {
    let product = capacitance_uf * volts;
    let value = if volts >= 160.0 { 0.06 * product + 10.0 } else { (0.01 * product).max(3.0) };
    Limit { value, source: Source::published("Panasonic SU series, after 2 minutes (dtsheet 1530872)") }
}
