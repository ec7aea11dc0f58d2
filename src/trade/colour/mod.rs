//! Colour from photographs: sRGB samples to CIE colours, yellowness, difference, and a neutral patch as reference.

mod difference;
mod reference;
mod srgb;
mod yellowness;

pub use difference::delta_e_2000;
pub use reference::{Correction, ReferenceWarning};
pub use srgb::{D65, Lab, Srgb, Xyz, lab, xyz};
pub use yellowness::{Illuminant, Yellowness, yellowness, yellowness_index};
