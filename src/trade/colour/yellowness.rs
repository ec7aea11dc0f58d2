//! Yellowness after ASTM E313.

use serde::{Deserialize, Serialize};

use super::{Srgb, Xyz, lab, xyz};
use crate::text;

/// Illuminant and observer that tristimulus values were taken with.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Illuminant {
    /// C, 2° observer.
    #[serde(rename = "C/2")]
    C2,
    /// C, 10° observer.
    #[serde(rename = "C/10")]
    C10,
    /// D65, 2° observer: that of sRGB.
    #[serde(rename = "D65/2")]
    D65Deg2,
    /// D65, 10° observer.
    #[serde(rename = "D65/10")]
    D65Deg10,
}

impl Illuminant {
    /// Coefficients of X and Z. Source: ASTM E313, coefficients of the yellowness index; C/2 and D65/10 as HunterLab
    /// prints them, C/10 and D65/2 as the library colour-science tables them.
    pub fn coefficients(self) -> (f64, f64) {
        match self {
            Self::C2 => (1.2769, 1.0592),
            Self::C10 => (1.2871, 1.0781),
            Self::D65Deg2 => (1.2985, 1.1335),
            Self::D65Deg10 => (1.3013, 1.1498),
        }
    }
}

/// ASTM E313 yellowness index, 100 (Cx X − Cz Z) / Y; `None` for black.
pub fn yellowness_index(illuminant: Illuminant, Xyz { x, y, z }: Xyz) -> Option<f64> {
    let (cx, cz) = illuminant.coefficients();
    (y > 0.0).then(|| 100.0 * (cx * x - cz * z) / y)
}

/// Yellowness of a sample, with what limits it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Yellowness {
    /// Yellowness index, D65/2°: about 0 for a neutral grey, higher is yellower.
    pub index: f64,
    /// Why the figure means little here; empty when it applies.
    pub remarks: Vec<String>,
}

/// Yellowness of an sRGB sample. sRGB is D65 with the 2° observer, so those coefficients are used; the 10° ones would
/// put every neutral grey at −1.5. `None` for black.
///
/// E313 is meant for near-white, opaque samples of a hue about 570 to 580 nm. Outside it (here: lightness below 50, or
/// a hue angle not between 75° and 115° where there is colour to speak of; the project's own bounds) the figure
/// comes with a remark.
pub fn yellowness(sample: Srgb) -> Option<Yellowness> {
    let values = xyz(sample);
    let index = yellowness_index(Illuminant::D65Deg2, values)?;
    let colour = lab(values);
    let mut remarks = Vec::new();
    if colour.l < 50.0 {
        remarks.push(text!("Too dark: the index is made for whites and near-whites.").to_owned());
    }
    let hue = colour.b.atan2(colour.a).to_degrees();
    if colour.a.hypot(colour.b) > 3.0 && !(75.0..=115.0).contains(&hue) {
        remarks.push(text!("Not a yellow: the index is made for hues near 570 to 580 nm.").to_owned());
    }
    Some(Yellowness { index, remarks })
}
