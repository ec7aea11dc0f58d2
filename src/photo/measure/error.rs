//! Why something on a photograph cannot be measured.

use super::tangle::MOST_CROSSINGS;
use crate::text;

/// Why something on a photograph cannot be measured; each says what to mend.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum MeasureError {
    /// A share that is no number from 0 to 1.
    #[error("{}", text!("A point does not lie on the picture"))]
    OffPicture,
    #[error("{}", text!("{fewest} points at least are needed", fewest = .fewest))]
    TooFewPoints { fewest: usize },
    /// A scale or rectangle whose sides are not told, or not above 0.
    #[error("{}", text!("Its length in millimetres is not told"))]
    NoLength,
    #[error("{}", text!("The two points of the scale lie on the same spot"))]
    ScaleOfNothing,
    #[error("{}", text!("The corners of the known rectangle lie on one line, or two of them on the same spot"))]
    FlatRectangle,
    #[error("{}", text!("The corners of the known rectangle do not go round it: set them one after the other"))]
    CrossedRectangle,
    /// What a camera sees there cannot lie in the rectangle's plane.
    #[error("{}", text!("It reaches beyond the horizon of the known rectangle's plane"))]
    BeyondHorizon,
    #[error("{}", text!("The outlines cross each other more than {most} times", most = MOST_CROSSINGS))]
    Tangled,
    #[error("{}", text!("The outline of the surface encloses nothing"))]
    NoSurface,
}
