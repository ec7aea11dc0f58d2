//! All that the marks of one photograph measure: one answer for the window, the console and the marked copy.

use chrono::{Days, NaiveDate};
use serde::Serialize;

use super::colour::{Tone, tone};
use super::plane::told;
use super::share::{Share, shares};
use super::{Basis, MeasureError, Plane};
use crate::record::{FindingId, LookId, MarkUse, PartFile, Photo, PhotoFile, PhotoMark, PhotoMarkId, When};
use crate::trade::corrosion::{Change, change};

/// What a mark measures; lengths are in the plane's unit, areas in the square of it.
#[derive(Clone, Debug, PartialEq)]
pub enum Figure {
    /// A pin, or an outline and the area in it.
    Place {
        area: Option<f64>,
    },
    Surface {
        area: f64,
    },
    /// `is_stray` when it lies on no surface that it could be a share of.
    Damage {
        area: f64,
        is_stray: bool,
    },
    Length {
        length: f64,
    },
    /// What was told, and by how much it disagrees with what the picture measures by, per cent.
    Scale {
        told_mm: f64,
        off_percent: f64,
    },
    /// Its sides as told; of the four sides as measured, the disagreement of the worst.
    Rectangle {
        told_mm: [f64; 2],
        off_percent: f64,
    },
    /// A patch; `None` until its colour was taken off the picture.
    Patch {
        tone: Option<Tone>,
    },
}

/// A mark with its figure, or why it has none.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    pub mark: PhotoMarkId,
    /// What it is called on the picture and in lists, from 1.
    pub number: usize,
    pub role: MarkUse,
    pub figure: Result<Figure, MeasureError>,
}

/// How a share changed since the finding's last look at one.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Since {
    pub look: LookId,
    pub on: When,
    pub share_percent: f64,
    /// Percentage points more, or less.
    pub points: f64,
    /// How fast; `None` where a date is known to the year only, or not at all.
    pub change: Option<Change>,
}

/// A share, and how it changed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ShareSince {
    #[serde(flatten)]
    pub share: Share,
    pub since: Option<Since>,
}

/// All that the marks of one photograph measure.
#[derive(Clone, Debug, PartialEq)]
pub struct Measured {
    pub plane: Result<Plane, MeasureError>,
    /// In the order of the marks.
    pub lines: Vec<Line>,
    /// Empty where no surface is marked.
    pub shares: Result<Vec<ShareSince>, MeasureError>,
}

impl Measured {
    /// What a photograph's marks measure; `part` is the part it shows, for what was seen of it before.
    pub fn of(photo: &PhotoFile, part: Option<&PartFile>) -> Self {
        let PhotoFile { photo: Photo { width_px, height_px, .. }, marks } = photo;
        let plane = Plane::of((*width_px, *height_px), marks);
        let shares = plane.and_then(|plane| shares(&plane, marks));
        let lines = marks.iter().enumerate().map(|(at, mark)| Line {
            mark: mark.id,
            number: at + 1,
            role: mark.role,
            figure: if mark.role.is_patch() {
                Ok(Figure::Patch { tone: tone(mark, photo, part) })
            } else {
                plane.and_then(|plane| figure(mark, &plane, shares.as_deref().unwrap_or_default()))
            },
        });
        let lines = lines.collect();
        let since = |share: Share| {
            let since = share.finding.and_then(|finding| since(&share, finding, &photo.photo, part?));
            ShareSince { share, since }
        };
        Self { plane, lines, shares: shares.map(|shares| shares.into_iter().map(since).collect()) }
    }

    /// A mark's line.
    pub fn line(&self, mark: PhotoMarkId) -> Option<&Line> {
        self.lines.iter().find(|line| line.mark == mark)
    }

    /// The shares of a surface, or those that damage counts in.
    pub fn shares_of(&self, mark: PhotoMarkId) -> impl Iterator<Item = &ShareSince> {
        let all = self.shares.as_deref().unwrap_or_default().iter();
        all.filter(move |since| since.share.surfaces.contains(&mark) || since.share.damages.contains(&mark))
    }

    /// The share that was measured for a finding.
    pub fn share_of_finding(&self, finding: FindingId) -> Option<&ShareSince> {
        self.shares.as_deref().unwrap_or_default().iter().find(|since| since.share.finding == Some(finding))
    }
}

fn figure(mark: &PhotoMark, plane: &Plane, shares: &[Share]) -> Result<Figure, MeasureError> {
    let off = |measured: f64, told: f64| 100.0 * (measured / told - 1.0);
    Ok(match mark.role {
        MarkUse::Surface => Figure::Surface { area: plane.area(&mark.points)? },
        MarkUse::Damage => {
            let area = plane.area(&mark.points)?;
            let surfaces: Vec<_> = shares.iter().filter(|share| share.damages.contains(&mark.id)).collect();
            Figure::Damage { area, is_stray: surfaces.is_empty() }
        }
        MarkUse::Length => Figure::Length { length: plane.length(&mark.points)? },
        MarkUse::Scale => {
            let told_mm = told(mark.length_mm)?;
            Figure::Scale { told_mm, off_percent: off(plane.length(&mark.points)?, told_mm) }
        }
        MarkUse::Rectangle => {
            let told_mm = [told(mark.length_mm)?, told(mark.breadth_mm)?];
            let mut worst = 0.0_f64;
            for (at, told_mm) in told_mm.into_iter().cycle().take(mark.points.len()).enumerate() {
                let next = (at + 1) % mark.points.len();
                let off = off(plane.length(&[mark.points[at], mark.points[next]])?, told_mm);
                worst = if off.abs() > worst.abs() { off } else { worst };
            }
            Figure::Rectangle { told_mm, off_percent: worst }
        }
        MarkUse::Place if mark.points.len() > 2 => Figure::Place { area: Some(plane.area(&mark.points)?) },
        MarkUse::Place | MarkUse::Sample | MarkUse::Reference | MarkUse::Hidden => Figure::Place { area: None },
    })
}

/// When a photograph saw what it shows: when it was taken, or else when it was added.
pub fn seen_on(photo: &Photo) -> When {
    if photo.taken.is_known() { photo.taken } else { photo.added.on }
}

/// Beside the last look before the photograph that has a share.
fn since(share: &Share, finding: FindingId, photo: &Photo, part: &PartFile) -> Option<Since> {
    let seen = seen_on(photo);
    let first = seen.span()?.first;
    let before = part.finding(finding)?.looks.iter().filter_map(|look| {
        let last = look.looked.on.span()?.last;
        (last < first).then_some((look.looked.order(), look, look.share_percent?))
    });
    let (_, look, share_percent) = before.max_by_key(|(order, ..)| *order)?;
    let now = share.grades.share_percent;
    let days = middle(look.looked.on).zip(middle(seen));
    let change = days.and_then(|(then, today)| change((then, share_percent), (today, now)).ok());
    Some(Since { look: look.id, on: look.looked.on, share_percent, points: now - share_percent, change })
}

/// The day itself, or the middle of the month; a year is too long to tell how fast anything goes.
fn middle(when: When) -> Option<NaiveDate> {
    let days = match when {
        When::Day(_) => 0,
        When::Month(_) => 14,
        When::Year(_) | When::Unknown => return None,
    };
    when.span()?.first.checked_add_days(Days::new(days))
}

impl Plane {
    /// Whether this mark is what the picture measures by.
    pub fn is_by(&self, mark: PhotoMarkId) -> bool {
        matches!(self.basis(), Basis::Scale(by) | Basis::Rectangle(by) if by == mark)
    }
}
