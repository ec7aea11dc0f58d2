//! What marks measure, in words.

use super::colour::{Difference, Other, Tone};
use super::measured::{Figure, Line, Measured, ShareSince, Since};
use super::{Basis, MeasureError, Unit};
use crate::record::PhotoFile;
use crate::text;
use crate::trade::colour::Yellowness;

/// From so many per cent on, two lengths that should agree are said to disagree: a hand sets points no finer.
const OFF_PERCENT: f64 = 2.0;

/// So much damage outside the surface comes from a hand that draws along its edge.
const ALONG_THE_EDGE_PERCENT: f64 = 1.0;

/// What a mark says.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Said {
    /// Its figures.
    pub figures: Vec<String>,
    /// What is to be heeded before they are relied on, and why there are none.
    pub heeds: Vec<String>,
}

impl Said {
    fn figure(&mut self, text: impl Into<String>) {
        self.figures.push(text.into());
    }

    fn heed(&mut self, text: impl Into<String>) {
        self.heeds.push(text.into());
    }
}

/// A figure with three digits that count, or all before the point.
pub fn figure(value: f64) -> String {
    let decimals = match value.abs() {
        100.0.. => 0,
        10.0.. => 1,
        1.0.. => 2,
        _ => 3,
    };
    format!("{value:.decimals$}")
}

impl Unit {
    fn length(self, length: f64) -> String {
        match self {
            Self::Px => text!("{length} pixels", length = format!("{length:.0}")),
            Self::Mm => text!("{length} mm", length = figure(length)),
        }
    }

    fn area(self, area: f64) -> String {
        match self {
            Self::Px => text!("{area} square pixels", area = format!("{area:.0}")),
            Self::Mm => text!("{area} mm²", area = figure(area)),
        }
    }
}

impl Measured {
    /// By what the picture measures.
    pub fn basis_said(&self) -> String {
        match self.plane.map(|plane| plane.basis()) {
            Ok(Basis::Pixels) => text!(
                "In pixels: mark a scale or a known rectangle for millimetres. Shares hold for a picture taken from straight ahead."
            )
            .to_owned(),
            Ok(Basis::Scale(_)) => {
                text!("In millimetres by the scale, for a picture taken from straight ahead").to_owned()
            }
            Ok(Basis::Rectangle(_)) => {
                text!("In millimetres by the known rectangle, for all that lies in its plane").to_owned()
            }
            Err(error) => error.to_string(),
        }
    }

    /// What a mark says; `photo` is the one that was measured.
    pub fn said(&self, line: &Line, photo: &PhotoFile) -> Said {
        let mut said = Said::default();
        let unit = self.plane.map_or(Unit::Px, |plane| plane.unit());
        match &line.figure {
            Err(error) => said.heed(error.to_string()),
            Ok(Figure::Place { area }) => said.figures.extend(area.map(|area| unit.area(area))),
            Ok(Figure::Surface { area }) => {
                said.figure(unit.area(*area));
                match &self.shares {
                    Err(error) => said.heed(unshared(*error)),
                    Ok(_) => self.shares_of(line.mark).for_each(|since| share_said(since, &mut said)),
                }
            }
            Ok(Figure::Damage { area, is_stray }) => {
                said.figure(unit.area(*area));
                if *is_stray && self.shares.is_ok() {
                    said.heed(text!("It lies on no surface: outline the surface that it is a share of"));
                }
            }
            Ok(Figure::Length { length }) => said.figure(unit.length(*length)),
            Ok(Figure::Scale { told_mm, off_percent }) => {
                said.figure(Unit::Mm.length(*told_mm));
                self.off_said(line, *off_percent, &mut said);
            }
            Ok(Figure::Rectangle { told_mm: [length, breadth], off_percent }) => {
                said.figure(text!("{length} mm × {breadth} mm", length = figure(*length), breadth = figure(*breadth)));
                self.off_said(line, *off_percent, &mut said);
            }
            Ok(Figure::Patch { tone: None }) => said.heed(text!("Its colour was not taken off the picture yet")),
            Ok(Figure::Patch { tone: Some(tone) }) => tone_said(tone, photo, &mut said),
        }
        said
    }

    /// What is measured by is right by itself; anything else that has a length is a check on it.
    fn off_said(&self, line: &Line, off_percent: f64, said: &mut Said) {
        if self.plane.is_ok_and(|plane| plane.is_by(line.mark)) {
            said.figure(text!("The picture is measured by it"));
            return;
        }
        let percent = format!("{off_percent:+.1}");
        said.figure(match self.plane.map(|plane| plane.basis()) {
            Ok(Basis::Rectangle(_)) => text!("By the known rectangle: {percent} %", percent = percent),
            _ => text!("By the longest scale: {percent} %", percent = percent),
        });
        if off_percent.abs() >= OFF_PERCENT {
            said.heed(text!("The two disagree: check the points, the lengths, and whether both lie in one plane"));
        }
    }
}

fn unshared(error: MeasureError) -> String {
    text!("No share: {reason}", reason = error)
}

fn share_said(ShareSince { share, since }: &ShareSince, said: &mut Said) {
    let grades = share.grades;
    let (percent, ri, d610) = (figure(grades.share_percent), grades.ri, grades.d610);
    said.figure(if share.surfaces.len() > 1 {
        text!(
            "With the other surfaces of its finding {percent} % damaged: ISO 4628-3 Ri {ri}, ASTM D610 grade {d610}",
            percent = percent,
            ri = ri,
            d610 = d610
        )
    } else {
        text!(
            "{percent} % damaged: ISO 4628-3 Ri {ri}, ASTM D610 grade {d610}",
            percent = percent,
            ri = ri,
            d610 = d610
        )
    });
    if let Some(Since { on, points, change, .. }) = since {
        let points = format!("{points:+.2}");
        said.figure(match change {
            None => text!("{points} points since {on}", points = points, on = on),
            Some(change) => text!(
                "{points} points since {on}, {rate} a year",
                points = points,
                on = on,
                rate = format!("{:+.2}", change.points_per_year)
            ),
        });
        if change.is_some_and(|change| change.grade_worse) {
            said.heed(text!("A grade worse than then"));
        }
    }
    if share.outside_percent >= ALONG_THE_EDGE_PERCENT {
        let percent = format!("{:.0}", share.outside_percent);
        said.heed(text!("{percent} % of the damage lies outside the surface and was left out", percent = percent));
    }
}

fn tone_said(tone: &Tone, photo: &PhotoFile, said: &mut Said) {
    let Tone { colour, yellowness, differences, warnings } = tone;
    said.figure(text!("Colour {colour}", colour = colour));
    if let Some(Yellowness { index, remarks }) = yellowness {
        said.figure(text!("Yellowness {index} (ASTM E313, D65, 2°)", index = text::figure(*index, 1)));
        said.heeds.extend(remarks.iter().cloned());
    }
    for Difference { other, delta_e_2000, yellower } in differences {
        let difference = format!("{delta_e_2000:.1}");
        said.figure(match other {
            Other::Hidden { mark } => {
                let number = photo.marks.iter().position(|other| other.id == *mark).map_or(0, |at| at + 1);
                text!(
                    "Against the hidden side ({number}): ΔE {difference} (CIEDE2000)",
                    number = number,
                    difference = difference
                )
            }
            Other::Earlier { on, .. } => {
                text!("Against {on}: ΔE {difference} (CIEDE2000)", on = on, difference = difference)
            }
        });
        if let Some(yellower) = yellower {
            said.figure(text!("{points} points of yellowness against it", points = format!("{yellower:+.1}")));
        }
    }
    said.heeds.extend(warnings.iter().map(|warning| warning.said()));
}
