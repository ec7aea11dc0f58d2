//! What a photograph measures by: nothing, a scale, or a rectangle of known sides.

use serde::Serialize;

use super::homography::{Homography, Point};
use super::{MeasureError, Region};
use crate::record::{MarkUse, PhotoMark, PhotoMarkId};

/// What lengths on a photograph are told in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Unit {
    Px,
    Mm,
}

/// What a photograph measures by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Basis {
    /// Nothing is known: lengths are in pixels, and shares hold for a picture taken from straight ahead.
    Pixels,
    /// Two points so far apart, for a picture taken from straight ahead.
    Scale(PhotoMarkId),
    /// A rectangle of known sides: all that lies in its plane is measured, from wherever the picture was taken.
    Rectangle(PhotoMarkId),
}

/// The plane in which a photograph's marks are measured. What lies above or below it comes out too large or too small;
/// what a lens bends stays bent.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plane {
    size_px: [f64; 2],
    map: Homography,
    basis: Basis,
}

impl Plane {
    /// The plane of a photograph of so many pixels. A rectangle goes before a scale, since it also tells from where the
    /// picture was taken; of several the largest in the picture is taken, being the most exactly set.
    pub fn of(size_px: (u32, u32), marks: &[PhotoMark]) -> Result<Self, MeasureError> {
        let size_px = [f64::from(size_px.0), f64::from(size_px.1)];
        let bare = Self { size_px, map: Homography::scale(1.0), basis: Basis::Pixels };
        // An unmeasurable one counts as large, so that it is not passed over in silence.
        let extent = |mark: &PhotoMark| match mark.role {
            MarkUse::Scale => bare.length(&mark.points).map_or(f64::MAX, |length| length),
            _ => bare.area(&mark.points).unwrap_or(f64::MAX),
        };
        let largest = |role| {
            let of_role = marks.iter().filter(|mark| mark.role == role);
            of_role.max_by(|one, other| extent(one).total_cmp(&extent(other)))
        };
        if let Some(mark) = largest(MarkUse::Rectangle) {
            let corners = bare.pixels(&mark.points)?;
            let corners = <[Point; 4]>::try_from(corners).map_err(|_| MeasureError::TooFewPoints { fewest: 4 })?;
            let sides = [told(mark.length_mm)?, told(mark.breadth_mm)?];
            let map = Homography::of_rectangle(corners, sides)?;
            return Ok(Self { size_px, map, basis: Basis::Rectangle(mark.id) });
        }
        if let Some(mark) = largest(MarkUse::Scale) {
            let length_px = bare.length(&mark.points)?;
            let told_mm = told(mark.length_mm)?;
            if length_px < 0.5 {
                return Err(MeasureError::ScaleOfNothing);
            }
            let map = Homography::scale(told_mm / length_px);
            return Ok(Self { size_px, map, basis: Basis::Scale(mark.id) });
        }
        Ok(bare)
    }

    /// What it measures by.
    pub fn basis(&self) -> Basis {
        self.basis
    }

    /// What its lengths are in; areas are in the square of it.
    pub fn unit(&self) -> Unit {
        if self.basis == Basis::Pixels { Unit::Px } else { Unit::Mm }
    }

    /// Points, told as shares of the picture, where they lie in the plane.
    pub fn points(&self, shares: &[[f32; 2]]) -> Result<Vec<Point>, MeasureError> {
        self.pixels(shares)?.into_iter().map(|point| self.map.of(point)).collect()
    }

    /// How long a line through points is.
    pub fn length(&self, shares: &[[f32; 2]]) -> Result<f64, MeasureError> {
        let points = self.points(shares)?;
        if points.len() < 2 {
            return Err(MeasureError::TooFewPoints { fewest: 2 });
        }
        Ok(points.windows(2).map(|step| (step[1][0] - step[0][0]).hypot(step[1][1] - step[0][1])).sum())
    }

    /// What outlines enclose. Seen from aside, straight edges stay straight, so that only the points need be laid right.
    pub fn region<'a>(&self, outlines: impl IntoIterator<Item = &'a [[f32; 2]]>) -> Result<Region, MeasureError> {
        let outlines = outlines.into_iter().map(|shares| match shares.len() {
            0..3 => Err(MeasureError::TooFewPoints { fewest: 3 }),
            _ => self.points(shares),
        });
        Region::of(&outlines.collect::<Result<Vec<_>, _>>()?)
    }

    /// The area that an outline encloses, in the square of [`Plane::unit`].
    pub fn area(&self, shares: &[[f32; 2]]) -> Result<f64, MeasureError> {
        Ok(self.region([shares])?.area())
    }

    fn pixels(&self, shares: &[[f32; 2]]) -> Result<Vec<Point>, MeasureError> {
        pixels(self.size_px, shares)
    }
}

/// Shares of a picture's width and height as pixels from its upper left corner.
pub fn pixels([width, height]: [f64; 2], shares: &[[f32; 2]]) -> Result<Vec<Point>, MeasureError> {
    let pixel = |[x, y]: &[f32; 2]| {
        let is_on = (0.0..=1.0).contains(x) && (0.0..=1.0).contains(y);
        is_on.then(|| [f64::from(*x) * width, f64::from(*y) * height]).ok_or(MeasureError::OffPicture)
    };
    shares.iter().map(pixel).collect()
}

/// A length that a person told.
pub fn told(mm: Option<f64>) -> Result<f64, MeasureError> {
    mm.filter(|mm| mm.is_finite() && *mm > 0.0).ok_or(MeasureError::NoLength)
}
