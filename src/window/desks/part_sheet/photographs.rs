//! The part's photographs: small ones in a row, a large one on a press, what each shows and its caption.

use std::path::Path;

use egui::{Rect, Response, Sense, Ui, WidgetInfo, vec2};

use super::about::{About, act_ui, day_text, put};
use crate::counted;
use crate::record::{Change, Moment, Photo, PhotoFile, PhotoId, PhotoView, When, Word};
use crate::store::Store;
use crate::text;
use crate::window::outbox::{Ask, KeptFile, Outbox};
use crate::window::pictures::{LARGE_PX, SMALL_PX, Shown, paint_fitting};
use crate::window::theme::marks::{self, Mark};
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{Edit, Fact, body, choice_ui, link_ui, path_field_ui, remark};

/// What is on show and half typed.
#[derive(Default)]
pub struct Photographs {
    /// The path that is being typed.
    path: Option<String>,
    large: Option<PhotoId>,
}

/// Whether a file is a picture by how its name ends; what it really is, is looked at later.
pub fn is_picture(path: &Path) -> bool {
    let ends = ["jpg", "jpeg", "png", "webp", "tif", "tiff", "bmp", "gif"];
    path.extension().is_some_and(|end| ends.iter().any(|known| end.eq_ignore_ascii_case(known)))
}

/// The photographs of files that were copied into the logbook.
pub fn added(about: &About<'_>, files: &[KeptFile]) -> Change {
    let count = files.len();
    let name = counted!("Add {count} photograph", "Add {count} photographs", count);
    let mut change = Change::new(format!("{name} ({})", about.tag()));
    let has_none = about.file.photos.is_empty();
    for (at, file) in files.iter().enumerate() {
        let Some((extension, [width_px, height_px])) = file.photograph.clone() else { continue };
        change.put(Photo {
            id: Store::new_id(),
            part: Some(about.part().id),
            machine: None,
            lot: None,
            content: file.content.clone(),
            extension,
            width_px,
            height_px,
            added: Moment::on(about.view.today),
            taken: When::Unknown,
            view: if has_none && at == 0 { PhotoView::Overview } else { PhotoView::Detail },
            caption: String::new(),
        });
    }
    change
}

impl Photographs {
    /// Draws the section.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, edit: &mut Edit, outbox: &mut Outbox) {
        let photos = &about.file.photos;
        if photos.is_empty() {
            ui.label(body(text!("No photograph yet. One before the work is worth ten after it.")));
        }
        ui.horizontal_wrapped(|ui| {
            for file in photos {
                if thumbnail_ui(ui, about, &file.photo).clicked() {
                    let is_large = self.large == Some(file.photo.id);
                    self.large = if is_large { None } else { Some(file.photo.id) };
                }
            }
        });
        if let Some(file) = photos.iter().find(|file| self.large == Some(file.photo.id)) {
            self.large_ui(ui, about, file, edit, outbox);
        }
        let Some(path) = &mut self.path else {
            if link_ui(ui, text!("Add a photograph…")).clicked() {
                self.path = Some(String::new());
            }
            return;
        };
        let mut ask = false;
        let label = text!("Path of a photograph, or drop files on the window");
        if let Some(path) = path_field_ui(ui, label, path, text!("Add the photograph"), &mut ask) {
            self.path = None;
            outbox.keep_files(about.page(), vec![path], true);
        }
        if ask {
            outbox.ask(Ask::Photographs(about.page()));
        }
    }

    fn large_ui(&mut self, ui: &mut Ui, about: &About<'_>, file: &PhotoFile, edit: &mut Edit, outbox: &mut Outbox) {
        let photo = &file.photo;
        let width = ui.available_width();
        let shape = photo.height_px as f32 / photo.width_px.max(1) as f32;
        let (rect, response) = ui.allocate_exact_size(vec2(width, (width * shape).min(140.0 * GRID)), Sense::click());
        match about.view.pictures.get(about.view.store, photo, LARGE_PX) {
            Shown::Ready(texture) => paint_fitting(ui, rect, &texture),
            Shown::Loading => paint(ui, rect, about, photo),
            Shown::Failed(why) => drop(ui.label(body(why).color(ui.tokens().severity_grave))),
        }
        let name = text!("Large: {photograph}", photograph = photo_text(photo));
        response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
        if response.clicked() {
            self.large = None;
        }
        ui.label(remark(ui, text!("Added {day}", day = day_text(photo.added.on))));
        let mut view = photo.view;
        let views: Vec<(PhotoView, &str)> = PhotoView::ALL.iter().map(|word| (*word, word.label())).collect();
        if choice_ui(ui, text!("It shows"), &mut view, &views, 44.0 * GRID) {
            let name = text!("Say what a photograph of {tag} shows", tag = about.tag());
            outbox.change(put(name, Photo { view, ..photo.clone() }));
        }
        let key = photo.id.to_string();
        let fact = Fact::line(&key, text!("Caption"));
        if let Some(caption) = edit.fact_ui(ui, fact, &photo.caption) {
            let name = text!("Caption a photograph of {tag}", tag = about.tag());
            outbox.change(put(name, Photo { caption, ..photo.clone() }));
        }
        for mark in file.marks.iter().filter(|mark| !mark.note.is_empty()) {
            ui.label(remark(ui, &mark.note));
        }
        let name = text!("Take the photograph out of the logbook");
        if act_ui(ui, name, name) {
            let mut change = Change::new(text!("Take a photograph of {tag} out", tag = about.tag()));
            for mark in &file.marks {
                change.remove(mark.id);
            }
            change.remove(photo.id);
            outbox.change(change);
            self.large = None;
        }
    }
}

/// A small photograph that can be pressed.
pub fn thumbnail_ui(ui: &mut Ui, about: &About<'_>, photo: &Photo) -> Response {
    let (rect, response) = ui.allocate_exact_size(vec2(32.0 * GRID, 24.0 * GRID), Sense::click());
    if ui.is_rect_visible(rect) {
        paint(ui, rect, about, photo);
        if response.hovered() || response.has_focus() {
            let stroke = egui::Stroke::new(2.0, ui.tokens().press);
            ui.painter().rect_stroke(rect, 2.0, stroke, egui::StrokeKind::Inside);
        }
    }
    let name = text!("Photograph: {photograph}", photograph = photo_text(photo));
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, &name));
    response.on_hover_text(photo_text(photo))
}

/// Paints what there is of a photograph: the picture, or a mark until it is made.
pub fn paint(ui: &Ui, rect: Rect, about: &About<'_>, photo: &Photo) {
    let tokens = ui.tokens();
    ui.painter().rect_filled(rect, 2.0, tokens.rail);
    match about.view.pictures.get(about.view.store, photo, SMALL_PX) {
        Shown::Ready(texture) => paint_fitting(ui, rect, &texture),
        Shown::Loading => {}
        Shown::Failed(_) => {
            let mark = Rect::from_center_size(rect.center(), vec2(6.0, 6.0) * GRID);
            marks::draw(ui.painter(), mark, Mark::Heed, tokens.ink_weak);
        }
    }
}

fn photo_text(photo: &Photo) -> String {
    if photo.caption.is_empty() {
        photo.view.label().to_owned()
    } else {
        format!("{}, {}", photo.view.label(), photo.caption)
    }
}
