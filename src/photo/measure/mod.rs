//! Measuring on photographs: lengths, areas, shares of a surface, colours; pure, but for taking a colour off a picture.

mod colour;
mod error;
mod homography;
mod measured;
mod plane;
mod region;
mod said;
mod sample;
mod share;
mod spans;
mod tangle;

pub use colour::{ColourWarning, Difference, Other, Tone};
pub use error::MeasureError;
pub use homography::{Homography, Point};
pub use measured::{Figure, Line, Measured, ShareSince, Since, seen_on};
pub use plane::{Basis, Plane, Unit};
pub use region::Region;
pub use said::Said;
pub use sample::{Sampled, is_missing, sample, sample_missing};
pub use share::{Share, shares};

use plane::pixels;
