//! `photos LOGBOOK marks TAG|PHOTO`: the marks on photographs, and what they measure.
//!
//! PHOTO is a photograph's key or the first digits of its content, as `list` shows them. Patches whose colour was not
//! taken off the picture yet are looked at now; nothing is written. JSON: `{"photos": [{"photo": key, "content":
//! "SHA-256", "basis": "pixels" | "scale" | "rectangle" | null, "unit": "px" | "mm", "why_not": null | "…", "marks":
//! [{"mark": key, "number": 1, "role": "surface", "name": "…", "state": "…", "figures": ["…"], "heeds": ["…"], "why_not":
//! null | "…", …}], "shares": [{"finding": key | null, "surfaces": [key], "damages": [key], "surface_area": …,
//! "damaged_area": …, "outside_percent": …, "share_percent": …, "ri": …, "d610": …, "at_reference": …, "since": null |
//! {"look": key, "on": "2024-05", "share_percent": …, "points": …, "change": null | {"days", "points_per_year",
//! "grade_worse"}}}], "no_shares": null | "…"}], "failed": [{"file", "reason"}]}`. A mark has, by its role, `length`,
//! `area`, `stray`, `told_mm` with `off_percent`, or `tone`: `{"colour": {"red", "green", "blue"}, "yellowness": {"index",
//! "remarks"}, "differences": [{"other", "delta_e_2000", "yellower"}], "warnings": […]}` with `sampled` and
//! `clipped_percent`. Lengths are in `unit`, areas in the square of it. Exits with 1 when a picture could not be read.

use clap::Args;
use serde::Serialize;

use super::super::opened::rules_in_force;
use super::super::{Answer, Found, as_json};
use super::list::SHORT_CONTENT;
use super::{FailureForm, Meant, meant};
use crate::assess::tie::Tied;
use crate::photo::measure::{Basis, Figure, Line, Measured, ShareSince, Tone, Unit};
use crate::record::{MarkUse, PartFile, PhotoFile, PhotoId, PhotoMarkId, Word as _};
use crate::rules::Rules;
use crate::store::Store;
use crate::text;

#[derive(Args)]
pub struct Marks {
    #[arg(value_name = "TAG|PHOTO", help = text!("A part's tag, for all its photographs, or one photograph"))]
    what: String,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    photos: Vec<PhotoForm>,
    failed: Vec<FailureForm>,
}

#[derive(Serialize)]
struct PhotoForm {
    photo: PhotoId,
    content: String,
    basis: Option<&'static str>,
    unit: Option<Unit>,
    why_not: Option<String>,
    marks: Vec<MarkForm>,
    shares: Vec<ShareSince>,
    no_shares: Option<String>,
    #[serde(skip)]
    said: String,
}

#[derive(Serialize)]
struct MarkForm {
    mark: PhotoMarkId,
    number: usize,
    role: MarkUse,
    name: String,
    state: String,
    figures: Vec<String>,
    heeds: Vec<String>,
    why_not: Option<String>,
    #[serde(flatten)]
    measured: Option<FigureForm>,
    #[serde(skip_serializing_if = "Option::is_none")]
    sampled: Option<[f64; 3]>,
    #[serde(skip_serializing_if = "Option::is_none")]
    clipped_percent: Option<f64>,
}

#[derive(Serialize)]
#[serde(untagged)]
enum FigureForm {
    Damage { area: f64, stray: bool },
    Area { area: Option<f64> },
    Length { length: f64 },
    Scale { told_mm: f64, off_percent: f64 },
    Rectangle { told_mm: [f64; 2], off_percent: f64 },
    Patch { tone: Option<Tone> },
}

impl Marks {
    pub fn answer(&self, store: &Store, json: bool) -> Answer {
        let mut meant = meant(store, &self.what)?;
        let rules = rules_in_force()?;
        let failed = meant.look_at_patches(store);
        let Meant { photos, part } = meant;
        let form = Form {
            photos: photos.iter().map(|file| form(file, part.as_deref(), &rules)).collect(),
            failed: failed.iter().map(FailureForm::from).collect(),
        };
        let answer = if json { as_json(&form)? } else { in_words(&form) };
        if form.failed.is_empty() { Ok(answer) } else { Err(Found(answer).into()) }
    }
}

fn form(file: &PhotoFile, part: Option<&PartFile>, rules: &Rules) -> PhotoForm {
    let measured = Measured::of(file, part);
    let why_not = |error: &_| ToString::to_string(error);
    let marks = measured.lines.iter().zip(&file.marks).map(|(line, mark)| {
        let said = measured.said(line, file);
        let Tied { name, state, .. } = Tied::of(mark, part, rules);
        MarkForm {
            mark: line.mark,
            number: line.number,
            role: line.role,
            name,
            state,
            figures: said.figures,
            heeds: said.heeds,
            why_not: line.figure.as_ref().err().map(why_not),
            measured: figure_form(line),
            sampled: mark.colour(),
            clipped_percent: mark.clipped_percent,
        }
    });
    PhotoForm {
        photo: file.photo.id,
        content: file.photo.content.clone(),
        basis: measured.plane.ok().map(|plane| match plane.basis() {
            Basis::Pixels => "pixels",
            Basis::Scale(_) => "scale",
            Basis::Rectangle(_) => "rectangle",
        }),
        unit: measured.plane.ok().map(|plane| plane.unit()),
        why_not: measured.plane.as_ref().err().map(why_not),
        marks: marks.collect(),
        no_shares: measured.shares.as_ref().err().map(why_not),
        said: measured.basis_said(),
        shares: measured.shares.unwrap_or_default(),
    }
}

fn figure_form(line: &Line) -> Option<FigureForm> {
    Some(match line.figure.clone().ok()? {
        Figure::Place { area } => FigureForm::Area { area },
        Figure::Surface { area } => FigureForm::Area { area: Some(area) },
        Figure::Damage { area, is_stray } => FigureForm::Damage { area, stray: is_stray },
        Figure::Length { length } => FigureForm::Length { length },
        Figure::Scale { told_mm, off_percent } => FigureForm::Scale { told_mm, off_percent },
        Figure::Rectangle { told_mm, off_percent } => FigureForm::Rectangle { told_mm, off_percent },
        Figure::Patch { tone } => FigureForm::Patch { tone },
    })
}

fn in_words(form: &Form) -> String {
    let mut lines = Vec::new();
    for PhotoForm { content, marks, said, .. } in &form.photos {
        let content = &content[..SHORT_CONTENT.min(content.len())];
        lines.push(if marks.is_empty() {
            text!("{photo}: no marks", photo = content)
        } else {
            text!("{photo}: {basis}", photo = content, basis = said)
        });
        for MarkForm { number, role, name, state, figures, heeds, .. } in marks {
            let state = if state.is_empty() { String::new() } else { format!(" ({state})") };
            let name = if name == role.label() { String::new() } else { format!(": {name}{state}") };
            lines.push(format!("  {number}  {}{name}", role.label()));
            lines.extend(figures.iter().map(|figure| format!("     {figure}")));
            lines.extend(heeds.iter().map(|heed| format!("     ! {heed}")));
        }
    }
    lines.extend(form.failed.iter().map(|failure| format!("  {}: {}", failure.file, failure.reason)));
    lines.join("\n")
}
