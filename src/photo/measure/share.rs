//! Damage as a share of the surface it lies on, finding by finding.

use std::collections::BTreeSet;

use serde::Serialize;

use super::{MeasureError, Plane, Region};
use crate::record::{FindingId, MarkUse, PhotoMark, PhotoMarkId};
use crate::trade::corrosion::{Grades, grades};

/// How much of a surface is damaged.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Share {
    /// The finding that the outlines are tied to; `None` for a surface and damage that are tied to none.
    pub finding: Option<FindingId>,
    pub surfaces: Vec<PhotoMarkId>,
    pub damages: Vec<PhotoMarkId>,
    /// Of all surfaces together, each spot counted once, in the square of the plane's unit.
    pub surface_area: f64,
    /// Of what is damaged within them, each spot counted once.
    pub damaged_area: f64,
    /// How much of the damage lies outside the surfaces and was left out, per cent of it.
    pub outside_percent: f64,
    /// The share in per cent, and its grades.
    #[serde(flatten)]
    pub grades: Grades,
}

/// The share of each finding, and of each surface that no finding claims.
///
/// A finding's surfaces are those tied to it, or else those that damage tied to it lies on. Damage that is tied to
/// nothing goes with the finding of the surface it lies on most, where that is plain, and else counts for that surface
/// by itself. Fails where any outline of surface or damage cannot be measured, since a share without it would be wrong.
pub fn shares(plane: &Plane, marks: &[PhotoMark]) -> Result<Vec<Share>, MeasureError> {
    let outlines = |role| -> Result<Vec<Outline>, MeasureError> {
        let of_role = marks.iter().filter(|mark| mark.role == role);
        of_role.map(|mark| Ok(Outline { mark, region: plane.region([&mark.points[..]])? })).collect()
    };
    let (surfaces, damages) = (outlines(MarkUse::Surface)?, outlines(MarkUse::Damage)?);
    if surfaces.iter().any(|surface| surface.region.area() <= 0.0) {
        return Err(MeasureError::NoSurface);
    }
    groups(&surfaces, &damages).into_iter().map(|group| group.share(plane)).collect()
}

struct Outline<'a> {
    mark: &'a PhotoMark,
    region: Region,
}

impl Outline<'_> {
    fn overlap(&self, other: &Self) -> f64 {
        self.region.within(&other.region).area()
    }
}

/// What is measured together.
struct Group<'a> {
    finding: Option<FindingId>,
    surfaces: Vec<&'a PhotoMark>,
    damages: Vec<&'a PhotoMark>,
}

impl Group<'_> {
    fn share(&self, plane: &Plane) -> Result<Share, MeasureError> {
        let region = |marks: &[&PhotoMark]| plane.region(marks.iter().map(|mark| &mark.points[..]));
        let (surface, damage) = (region(&self.surfaces)?, region(&self.damages)?);
        let (surface_area, whole_damage) = (surface.area(), damage.area());
        // Rounding may leave a hair more than all of it.
        let damaged_area = damage.within(&surface).area().min(surface_area).min(whole_damage);
        let outside = if whole_damage > 0.0 { 1.0 - damaged_area / whole_damage } else { 0.0 };
        let keys = |marks: &[&PhotoMark]| marks.iter().map(|mark| mark.id).collect();
        Ok(Share {
            finding: self.finding,
            surfaces: keys(&self.surfaces),
            damages: keys(&self.damages),
            surface_area,
            damaged_area,
            outside_percent: 100.0 * outside,
            grades: grades(100.0 * damaged_area / surface_area).map_err(|_| MeasureError::NoSurface)?,
        })
    }
}

fn groups<'a>(surfaces: &[Outline<'a>], damages: &[Outline<'a>]) -> Vec<Group<'a>> {
    let tied: BTreeSet<FindingId> = surfaces.iter().chain(damages).filter_map(|outline| outline.mark.finding).collect();
    let mut groups: Vec<Group<'a>> = tied
        .into_iter()
        .map(|finding| {
            let is_its = |outline: &&Outline<'a>| outline.mark.finding == Some(finding);
            let damages: Vec<&Outline> = damages.iter().filter(is_its).collect();
            let mut on: Vec<&Outline> = surfaces.iter().filter(is_its).collect();
            if on.is_empty() {
                on = surfaces
                    .iter()
                    .filter(|surface| damages.iter().any(|damage| damage.overlap(surface) > 0.0))
                    .collect();
            }
            Group { finding: Some(finding), surfaces: marks_of(&on), damages: marks_of(&damages) }
        })
        .filter(|group| !group.surfaces.is_empty())
        .collect();
    let claims = |groups: &[Group], surface: &Outline| -> Vec<usize> {
        let is_on = |group: &Group| group.surfaces.iter().any(|mark| mark.id == surface.mark.id);
        (0..groups.len()).filter(|at| is_on(&groups[*at])).collect()
    };
    let mut alone: Vec<Group> = surfaces
        .iter()
        .filter(|surface| claims(&groups, surface).is_empty())
        .map(|surface| Group { finding: None, surfaces: vec![surface.mark], damages: Vec::new() })
        .collect();
    for damage in damages.iter().filter(|damage| damage.mark.finding.is_none()) {
        let overlaps = surfaces.iter().map(|surface| (damage.overlap(surface), surface));
        let most = overlaps.max_by(|one, other| one.0.total_cmp(&other.0)).filter(|(overlap, _)| *overlap > 0.0);
        let Some((_, surface)) = most else { continue };
        if let [only] = claims(&groups, surface)[..] {
            groups[only].damages.push(damage.mark);
        } else if let Some(group) = alone.iter_mut().find(|group| group.surfaces[0].id == surface.mark.id) {
            group.damages.push(damage.mark);
        } else {
            alone.push(Group { finding: None, surfaces: vec![surface.mark], damages: vec![damage.mark] });
        }
    }
    groups.extend(alone);
    groups
}

fn marks_of<'a>(outlines: &[&Outline<'a>]) -> Vec<&'a PhotoMark> {
    outlines.iter().map(|outline| outline.mark).collect()
}
