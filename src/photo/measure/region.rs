//! What outlines enclose: areas, and what several have in common.

use i_overlay::core::fill_rule::FillRule;
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::float::overlay::FloatOverlay;

use super::MeasureError;
use super::homography::Point;
use super::tangle::must_be_drawn_by_hand;

/// What outlines enclose: contours that do not cross, outer ones turning one way, holes the other.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Region {
    contours: Vec<Vec<Point>>,
}

impl Region {
    /// What any of the outlines encloses.
    ///
    /// An outline that crosses itself encloses whatever it goes round, however often and either way (the non-zero rule):
    /// both loops of an eight, and a loop within a loop all through. Only what it goes round once each way stays out.
    pub fn of(outlines: &[Vec<Point>]) -> Result<Self, MeasureError> {
        must_be_drawn_by_hand(outlines)?;
        // Each by itself first: two that overlap but turn against each other would leave a hole.
        let each: Vec<Vec<Point>> =
            outlines.iter().flat_map(|outline| cut(std::slice::from_ref(outline), &[], OverlayRule::Subject)).collect();
        Ok(Self { contours: cut(&each, &[], OverlayRule::Subject) })
    }

    /// What lies in both.
    #[must_use]
    pub fn within(&self, other: &Self) -> Self {
        Self { contours: cut(&self.contours, &other.contours, OverlayRule::Intersect) }
    }

    /// Its area, in the square of its points' unit.
    pub fn area(&self) -> f64 {
        self.contours.iter().map(|contour| turned_area(contour)).sum::<f64>().abs()
    }
}

/// The 64-bit engine lays the points on a grid 2⁶¹ wide, far finer than they are told.
fn cut(subject: &[Vec<Point>], clip: &[Vec<Point>], rule: OverlayRule) -> Vec<Vec<Point>> {
    let mut cutting = FloatOverlay::<Point, i64>::from_subj_and_clip(subject, clip);
    cutting.overlay(rule, FillRule::NonZero).into_iter().flatten().collect()
}

/// The shoelace formula, taken from the first point so that large coordinates do not swallow small areas.
fn turned_area(contour: &[Point]) -> f64 {
    let Some([x0, y0]) = contour.first().copied() else { return 0.0 };
    let from_first = |[x, y]: Point| [x - x0, y - y0];
    contour
        .windows(2)
        .map(|edge| {
            let ([ax, ay], [bx, by]) = (from_first(edge[0]), from_first(edge[1]));
            (ax * by - bx * ay) / 2.0
        })
        .sum()
}
