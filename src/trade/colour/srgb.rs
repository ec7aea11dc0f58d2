//! sRGB samples, CIE XYZ and CIELAB.

use std::fmt;

use serde::{Deserialize, Serialize};

use crate::text;

/// A colour as a photograph holds it: encoded sRGB, 0 to 1 a channel.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Srgb {
    /// Red.
    pub red: f64,
    /// Green.
    pub green: f64,
    /// Blue.
    pub blue: f64,
}

/// CIE 1931 tristimulus values, 2° observer; Y of white is 100.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Xyz {
    /// X.
    pub x: f64,
    /// Y, luminance.
    pub y: f64,
    /// Z.
    pub z: f64,
}

/// CIELAB.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Lab {
    /// Lightness, 0 to 100.
    pub l: f64,
    /// Green to red.
    pub a: f64,
    /// Blue to yellow.
    pub b: f64,
}

/// White of D65, 2° observer, from its chromaticity 0.3127, 0.3290 (IEC 61966-2-1).
pub const D65: Xyz = Xyz { x: 100.0 * 0.3127 / 0.3290, y: 100.0, z: 100.0 * (1.0 - 0.3127 - 0.3290) / 0.3290 };

/// Linear sRGB to XYZ, as printed in IEC 61966-2-1 with four decimals.
const TO_XYZ: [[f64; 3]; 3] = [[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]];

impl Srgb {
    /// From bytes.
    pub fn of_bytes(red: u8, green: u8, blue: u8) -> Self {
        let channel = |byte: u8| f64::from(byte) / 255.0;
        Self { red: channel(red), green: channel(green), blue: channel(blue) }
    }

    /// Reads "E8E4D9" or "#e8e4d9".
    ///
    /// # Errors
    /// A sentence when it is not six hexadecimal digits.
    pub fn parse(text: &str) -> Result<Self, String> {
        let digits = text.trim();
        let digits = digits.strip_prefix('#').unwrap_or(digits);
        let fine = digits.len() == 6 && digits.bytes().all(|byte| byte.is_ascii_hexdigit());
        match u32::from_str_radix(digits, 16) {
            Ok(number) if fine => {
                let [_, red, green, blue] = number.to_be_bytes();
                Ok(Self::of_bytes(red, green, blue))
            }
            _ => Err(text!("\"{text}\" is no colour of six hexadecimal digits, such as E8E4D9", text = text)),
        }
    }

    /// Linear light, 0 to 1 a channel (IEC 61966-2-1).
    pub fn linear(self) -> [f64; 3] {
        [self.red, self.green, self.blue]
            .map(|encoded| if encoded <= 0.040_45 { encoded / 12.92 } else { ((encoded + 0.055) / 1.055).powf(2.4) })
    }

    /// From linear light; channels are clipped to 0 and 1.
    pub fn of_linear(linear: [f64; 3]) -> Self {
        let [red, green, blue] = linear.map(|light| {
            let light = light.clamp(0.0, 1.0);
            if light <= 0.003_130_8 { 12.92 * light } else { 1.055 * light.powf(1.0 / 2.4) - 0.055 }
        });
        Self { red, green, blue }
    }
}

impl fmt::Display for Srgb {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let byte = |channel: f64| (channel.clamp(0.0, 1.0) * 255.0).round() as u8;
        write!(f, "{:02X}{:02X}{:02X}", byte(self.red), byte(self.green), byte(self.blue))
    }
}

fn through(matrix: &[[f64; 3]; 3], [one, two, three]: [f64; 3]) -> [f64; 3] {
    matrix.map(|[first, second, third]| first * one + second * two + third * three)
}

/// CIE XYZ of a sample under D65, 2° observer, Y of white 100. Source: IEC 61966-2-1.
pub fn xyz(sample: Srgb) -> Xyz {
    let [x, y, z] = through(&TO_XYZ, sample.linear()).map(|value| 100.0 * value);
    Xyz { x, y, z }
}

/// CIELAB against D65, 2° observer. Source: CIE 15.
pub fn lab(Xyz { x, y, z }: Xyz) -> Lab {
    // CIE 15: (6/29)³, and the straight line below it.
    let root = |ratio: f64| {
        if ratio > 216.0 / 24_389.0 { ratio.cbrt() } else { (24_389.0 / 27.0 * ratio + 16.0) / 116.0 }
    };
    let (fx, fy, fz) = (root(x / D65.x), root(y / D65.y), root(z / D65.z));
    Lab { l: 116.0 * fy - 16.0, a: 500.0 * (fx - fy), b: 200.0 * (fy - fz) }
}
