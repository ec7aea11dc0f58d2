//! The part's photographs: small ones in a row, each to be looked at on a press, and more to be added.

use std::path::Path;

use egui::Ui;

use super::about::About;
use crate::counted;
use crate::photo::PICTURE_ENDINGS;
use crate::record::{Change, Moment, Photo, PhotoView, When};
use crate::store::Store;
use crate::text;
use crate::window::outbox::{Ask, KeptFile, Outbox};
use crate::window::photographs::strip_ui;
use crate::window::widgets::{body, link_ui, path_field_ui};

/// What is half typed.
#[derive(Default)]
pub struct Photographs {
    /// The path that is being typed.
    path: Option<String>,
}

/// Whether a file is a picture by how its name ends; what it really is, is looked at later.
pub fn is_picture(path: &Path) -> bool {
    path.extension().is_some_and(|end| PICTURE_ENDINGS.iter().any(|known| end.eq_ignore_ascii_case(known)))
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
            is_map: false,
        });
    }
    change
}

impl Photographs {
    /// Draws the section.
    pub fn ui(&mut self, ui: &mut Ui, about: &About<'_>, outbox: &mut Outbox) {
        let photos = &about.file.photos;
        if photos.is_empty() {
            ui.label(body(text!("No photograph yet. One before the work is worth ten after it.")));
        }
        strip_ui(ui, about.view, photos, outbox);
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
}
