//! Every photograph of the logbook with what it is of, and small ones that can be pressed.

use std::sync::Arc;

use chrono::NaiveDate;
use egui::{Rect, Response, Sense, Stroke, Ui, Vec2, WidgetInfo, vec2};

use super::outbox::{Outbox, View};
use super::page::Page;
use super::pictures::{SMALL_PX, Shown, paint_fitting};
use super::theme::marks::{self, Mark};
use super::theme::{GRID, Themed};
use crate::record::{Logbook, LotFile, MachineFile, PartFile, Photo, PhotoFile, PhotoId, Word as _};
use crate::text;

/// What a photograph is of.
#[derive(Clone, Debug)]
pub enum Subject {
    Part(Arc<PartFile>),
    Machine(Arc<MachineFile>),
    Lot(Arc<LotFile>),
}

/// A photograph with what it is of.
#[derive(Clone, Debug)]
pub struct Photograph {
    pub of: Subject,
    at: usize,
}

impl Subject {
    /// Its photographs.
    pub fn photos(&self) -> &[PhotoFile] {
        match self {
            Self::Part(file) => &file.photos,
            Self::Machine(file) => &file.photos,
            Self::Lot(file) => &file.photos,
        }
    }

    /// Every photograph of it.
    fn each(self) -> impl Iterator<Item = Photograph> {
        (0..self.photos().len()).map(move |at| Photograph { of: self.clone(), at })
    }

    /// What people call it: a part's tag, a machine's or a lot's name.
    pub fn name(&self) -> &str {
        match self {
            Self::Part(file) => &file.part.tag,
            Self::Machine(file) => &file.machine.name,
            Self::Lot(file) => &file.lot.name,
        }
    }

    /// A part's tag with what it is; a machine's or a lot's name.
    pub fn title(&self, logbook: &Logbook) -> String {
        match self {
            Self::Part(file) => format!("{} {}", file.part.tag, logbook.title_of(file)),
            _ => self.name().to_owned(),
        }
    }

    /// Where everything about it stands; a lot has no page.
    pub fn page(&self) -> Option<Page> {
        match self {
            Self::Part(file) => Some(Page::Part(file.part.id)),
            Self::Machine(file) => Some(Page::Machine(file.machine.id)),
            Self::Lot(_) => None,
        }
    }
}

impl Photograph {
    /// The photograph with its marks.
    pub fn file(&self) -> &PhotoFile {
        &self.of.photos()[self.at]
    }

    /// The photograph's record.
    pub fn photo(&self) -> &Photo {
        &self.file().photo
    }

    /// Every photograph of a logbook: of parts, then machines, then lots, each in the order of its keys.
    pub fn all(logbook: &Logbook) -> impl Iterator<Item = Self> {
        let parts = logbook.parts.iter().map(|file| Subject::Part(Arc::clone(file)));
        let machines = logbook.machines.iter().map(|file| Subject::Machine(Arc::clone(file)));
        let lots = logbook.lots.iter().map(|file| Subject::Lot(Arc::clone(file)));
        parts.chain(machines).chain(lots).flat_map(Subject::each)
    }

    /// The photograph of a key. Looks through the whole logbook: not for every frame.
    pub fn find(logbook: &Logbook, id: PhotoId) -> Option<Self> {
        Self::all(logbook).find(|photograph| photograph.photo().id == id)
    }
}

/// The first day on which a photograph may have been taken, else the one on which it came into the logbook.
pub fn day_of(photo: &Photo) -> Option<NaiveDate> {
    photo.taken.span().or(photo.added.on.span()).map(|span| span.first)
}

/// What a photograph shows, with its caption.
pub fn photo_text(photo: &Photo) -> String {
    if photo.caption.is_empty() {
        photo.view.label().to_owned()
    } else {
        format!("{}, {}", photo.view.label(), photo.caption)
    }
}

/// Small photographs in a row; a press looks at one, with the others to go on to.
pub fn strip_ui<'a>(
    ui: &mut Ui,
    view: &View<'_>,
    photos: impl IntoIterator<Item = &'a PhotoFile, IntoIter: Clone>,
    outbox: &mut Outbox,
) {
    let photos = photos.into_iter();
    ui.horizontal_wrapped(|ui| {
        for PhotoFile { photo, .. } in photos.clone() {
            let name = text!("Photograph: {photograph}", photograph = photo_text(photo));
            let response = thumbnail_ui(ui, view, photo, vec2(32.0, 24.0) * GRID, &name);
            if response.on_hover_text(photo_text(photo)).clicked() {
                outbox.look_at(photo.id, photos.clone().map(|file| file.photo.id));
            }
        }
    });
}

/// A small photograph that can be pressed, of a size in points.
pub fn thumbnail_ui(ui: &mut Ui, view: &View<'_>, photo: &Photo, size: Vec2, name: &str) -> Response {
    let (rect, response) = ui.allocate_exact_size(size, Sense::click());
    if ui.is_rect_visible(rect) {
        small_ui(ui, view, rect, Some(photo), response.hovered() || response.has_focus());
    }
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, name));
    response
}

/// Paints what there is of a photograph, framed while it is held: the picture, or a mark where there is none.
pub fn small_ui(ui: &Ui, view: &View<'_>, rect: Rect, photo: Option<&Photo>, is_held: bool) {
    let tokens = ui.tokens();
    ui.painter().rect_filled(rect, 2.0, tokens.rail);
    match photo.map(|photo| view.pictures.get(view.store, photo, SMALL_PX)) {
        Some(Shown::Ready(texture)) => paint_fitting(ui, rect, &texture),
        Some(Shown::Loading) => {}
        Some(Shown::Failed(_)) => {
            let mark = Rect::from_center_size(rect.center(), vec2(32.0, 32.0));
            marks::draw(ui.painter(), mark, Mark::Heed, tokens.severity_grave);
        }
        None => {
            let mark = Rect::from_center_size(rect.center(), vec2(32.0, 32.0));
            marks::draw(ui.painter(), mark, Mark::Part, tokens.hairline);
        }
    }
    if is_held {
        let stroke = Stroke::new(2.0, tokens.press);
        ui.painter().rect_stroke(rect, 2.0, stroke, egui::StrokeKind::Inside);
    }
}
