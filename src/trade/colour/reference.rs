//! A neutral patch in the picture takes the lamp's colour out of the other samples.

use serde::Serialize;

use super::Srgb;
use crate::text;

/// Why a reference patch is not to be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum ReferenceWarning {
    /// A channel is at its end, so what it really was is not known: expose less.
    Clipped,
    /// Too dark to divide by: noise decides the colour.
    Dark,
    /// So strongly coloured that it is no neutral patch, or the lamp is hopeless.
    Coloured,
}

impl ReferenceWarning {
    /// In words.
    pub fn said(self) -> &'static str {
        match self {
            Self::Clipped => text!("The reference patch is overexposed in a channel: take the picture again, darker."),
            Self::Dark => text!("The reference patch is too dark to correct by."),
            Self::Coloured => text!("The reference patch is far from neutral: wrong patch, or mixed light."),
        }
    }
}

/// Gains that make the reference patch neutral.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Correction {
    /// Gain of linear red, green and blue.
    pub gains: [f64; 3],
    /// What speaks against it, where anything does.
    pub warning: Option<ReferenceWarning>,
}

impl Correction {
    /// No correction.
    pub const NONE: Self = Self { gains: [1.0; 3], warning: None };

    /// From the reference patch as photographed. With its reflectance (0 to 1, such as 0.18 for a grey card or 0.9 for
    /// white paper; others are ignored) brightness is set right too, else only the colour is.
    ///
    /// Gains apply to linear light a channel, the simplest adaptation; it holds for lamps not far from daylight.
    /// A reference with a channel at 254 or more of 255 is clipped; below 13 of 255 dark; with gains more than 4 to 1
    /// apart coloured (the project's own bounds).
    pub fn by(reference: Srgb, reflectance: Option<f64>) -> Self {
        let channels = [reference.red, reference.green, reference.blue];
        let warning = if channels.iter().any(|channel| *channel >= 253.5 / 255.0) {
            Some(ReferenceWarning::Clipped)
        } else if channels.iter().any(|channel| channel.is_nan() || *channel < 12.5 / 255.0) {
            return Self { warning: Some(ReferenceWarning::Dark), ..Self::NONE };
        } else {
            None
        };
        let linear = reference.linear();
        let [red, green, blue] = linear;
        // Luminance weights of sRGB, IEC 61966-2-1.
        let luminance = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
        let wanted = reflectance.filter(|share| *share > 0.0 && *share <= 1.0).unwrap_or(luminance);
        let gains = linear.map(|light| wanted / light);
        let largest = gains.iter().copied().fold(f64::MIN, f64::max);
        let smallest = gains.iter().copied().fold(f64::MAX, f64::min);
        let coloured = (largest > 4.0 * smallest).then_some(ReferenceWarning::Coloured);
        Self { gains, warning: warning.or(coloured) }
    }

    /// A sample of the same picture as it would look under neutral light; what leaves the range is clipped.
    #[must_use]
    pub fn of(&self, sample: Srgb) -> Srgb {
        let [red, green, blue] = sample.linear();
        let [red_gain, green_gain, blue_gain] = self.gains;
        Srgb::of_linear([red * red_gain, green * green_gain, blue * blue_gain])
    }
}
