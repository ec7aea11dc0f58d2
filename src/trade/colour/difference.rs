//! Colour difference CIEDE2000.

use super::Lab;

/// CIEDE2000 with all weights 1: below about 1 nobody sees it, above about 5 everybody (common practice, no source).
///
/// Source: Sharma, Wu, Dalal, "The CIEDE2000 color-difference formula: implementation notes, supplementary test data,
/// and mathematical observations", Color Research & Application 30 (2005).
pub fn delta_e_2000(one: Lab, other: Lab) -> f64 {
    let chroma_mean = f64::midpoint(one.a.hypot(one.b), other.a.hypot(other.b));
    let stretch = 0.5 * (1.0 - seventh_share(chroma_mean));
    let (a1, a2) = ((1.0 + stretch) * one.a, (1.0 + stretch) * other.a);
    let (chroma1, chroma2) = (a1.hypot(one.b), a2.hypot(other.b));
    let (hue1, hue2) = (hue(a1, one.b), hue(a2, other.b));
    let grey = chroma1 * chroma2 == 0.0;

    let lightness_step = other.l - one.l;
    let chroma_step = chroma2 - chroma1;
    let hue_turn = match hue2 - hue1 {
        _ if grey => 0.0,
        turn if turn > 180.0 => turn - 360.0,
        turn if turn < -180.0 => turn + 360.0,
        turn => turn,
    };
    let hue_step = 2.0 * (chroma1 * chroma2).sqrt() * (hue_turn / 2.0).to_radians().sin();

    let lightness = f64::midpoint(one.l, other.l);
    let chroma = f64::midpoint(chroma1, chroma2);
    let hue_sum = hue1 + hue2;
    let hue_mean = if grey {
        hue_sum
    } else if (hue1 - hue2).abs() <= 180.0 {
        hue_sum / 2.0
    } else if hue_sum < 360.0 {
        f64::midpoint(hue_sum, 360.0)
    } else {
        (hue_sum - 360.0) / 2.0
    };
    let cosine = |degrees: f64| degrees.to_radians().cos();
    let t = 1.0 - 0.17 * cosine(hue_mean - 30.0) + 0.24 * cosine(2.0 * hue_mean) + 0.32 * cosine(3.0 * hue_mean + 6.0)
        - 0.20 * cosine(4.0 * hue_mean - 63.0);
    let from_50 = (lightness - 50.0).powi(2);
    let lightness_weight = 1.0 + 0.015 * from_50 / (20.0 + from_50).sqrt();
    let chroma_weight = 1.0 + 0.045 * chroma;
    let hue_weight = 1.0 + 0.015 * chroma * t;
    let turn = 30.0 * (-((hue_mean - 275.0) / 25.0).powi(2)).exp();
    let rotation = -(2.0 * turn).to_radians().sin() * 2.0 * seventh_share(chroma);

    let (lightness, chroma, hue) =
        (lightness_step / lightness_weight, chroma_step / chroma_weight, hue_step / hue_weight);
    // Rounding can leave a hair below 0 for equal colours.
    (lightness.powi(2) + chroma.powi(2) + hue.powi(2) + rotation * chroma * hue).max(0.0).sqrt()
}

/// √(C⁷ / (C⁷ + 25⁷)).
fn seventh_share(chroma: f64) -> f64 {
    let seventh = chroma.powi(7);
    (seventh / (seventh + 25_f64.powi(7))).sqrt()
}

/// Hue in degrees, 0 to 360; 0 where there is none.
fn hue(a: f64, b: f64) -> f64 {
    if a == 0.0 && b == 0.0 { 0.0 } else { b.atan2(a).to_degrees().rem_euclid(360.0) }
}
