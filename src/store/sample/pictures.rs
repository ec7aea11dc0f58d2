//! Photographs of the sample's parts and machines, whose pictures are still to be drawn.

use super::super::authoring::{Ids, PartAuthor, key, moment};
use super::life::first_look;
use super::tables::{MarkRow, PartRow};
use super::{Book, Shot, Subject};
use crate::record::{Kind, MachineId, MarkUse, PartFile, PartId, Photo, PhotoId, PhotoMark, PhotoView, When};
use crate::rules::Paper;
use crate::text;
use crate::trade::colour::Srgb;

/// The photographs of a part, with marks on what was found.
pub fn photographs(
    row: &PartRow,
    book: &Book,
    author: &PartAuthor,
    ids: &mut Ids,
    shots: &mut Vec<Shot>,
) -> Result<(), String> {
    let part = &author.file.part;
    let papers = book.rules.kind(part.kind).map_or(&[][..], |rule| &rule.papers);
    let own = row.photo.unwrap_or_else(|| row.picture.is_some() || papers.contains(&Paper::Photograph));
    if own {
        let look = row.design.as_ref().and_then(|design| book.looks.get(design));
        let subject = row.picture.clone().or_else(|| look.and_then(|(_, subject)| subject.clone()));
        let title = look.map_or("", |(title, _)| title.as_str());
        let subject = titled(subject.unwrap_or_else(|| super::subject::of_kind(part.kind)), title, part.kind);
        let mut photo = photo(Some(part.id), None, first_look(row, book), ids);
        text!("As it came").clone_into(&mut photo.caption);
        photo.is_map = row.map;
        let marks = row.marks.iter().map(|(x, y, what)| {
            let finding = author.file.findings.iter().find(|file| file.finding.what == *what);
            let finding = finding.ok_or_else(|| format!("no finding “{what}” to be marked"))?;
            let pin = PhotoMark::new(key(ids), photo.id, MarkUse::Place, vec![[*x, *y]]);
            Ok(PhotoMark { finding: Some(finding.finding.id), ..pin })
        });
        let mut marks = marks.collect::<Result<Vec<_>, String>>()?;
        for drawn in &row.drawn {
            marks.push(mark(drawn, photo.id, &author.file, ids)?);
        }
        shots.push(Shot { photo, subject, marks });
    }
    for more in &row.photos {
        let title = row.design.as_ref().and_then(|design| book.looks.get(design)).map_or("", |(title, _)| title);
        let subject = titled(more.picture.clone(), title, part.kind);
        let mut photo = photo(Some(part.id), None, more.on.when(book.today), ids);
        photo.view = more.view;
        photo.caption.clone_from(&more.caption);
        shots.push(Shot { photo, subject, marks: Vec::new() });
    }
    Ok(())
}

/// A mark as the tables have it.
fn mark(row: &MarkRow, photo: PhotoId, file: &PartFile, ids: &mut Ids) -> Result<PhotoMark, String> {
    let MarkRow { role, at, finding, capacitor, marking, length_mm, colour, note } = row;
    let mut mark = PhotoMark::new(key(ids), photo, *role, at.clone());
    if let Some(what) = finding {
        let found = file.findings.iter().find(|file| file.finding.what == **what);
        mark.finding = Some(found.ok_or_else(|| format!("no finding “{what}” to be marked"))?.finding.id);
    }
    if let Some(name) = capacitor {
        let found = file.capacitors.iter().find(|file| file.position.designator == *name);
        mark.capacitor = Some(found.ok_or_else(|| format!("no capacitor “{name}” to be marked"))?.position.id);
    }
    if let Some(text) = marking {
        let found = file.markings.iter().find(|marking| marking.text == *text);
        mark.marking = Some(found.ok_or_else(|| format!("no marking “{text}” to be marked"))?.id);
    }
    if let Some(colour) = colour {
        let Srgb { red, green, blue } = Srgb::parse(colour)?;
        (mark.red, mark.green, mark.blue) = (Some(red), Some(green), Some(blue));
        mark.clipped_percent = Some(0.0);
    }
    Ok(PhotoMark { length_mm: *length_mm, note: note.clone(), ..mark })
}

/// A photograph whose picture is still to be drawn.
pub fn photo(part: Option<PartId>, machine: Option<MachineId>, taken: When, ids: &mut Ids) -> Photo {
    Photo {
        id: key(ids),
        part,
        machine,
        lot: None,
        content: String::new(),
        extension: String::new(),
        width_px: super::subject::WIDTH_PX,
        height_px: super::subject::HEIGHT_PX,
        added: moment(taken),
        taken,
        view: PhotoView::Overview,
        caption: String::new(),
        is_map: false,
    }
}

/// Prints maker and model, and lets parts of one design look alike.
pub fn titled(mut subject: Subject, title: &str, kind: Kind) -> Subject {
    if subject.title.is_empty() {
        subject.title = title.to_uppercase();
    }
    if subject.seed == 0 {
        let sum = title.bytes().fold(kind as u64 + 17, |sum, byte| sum.wrapping_mul(31).wrapping_add(u64::from(byte)));
        subject.seed = sum;
    }
    subject
}
