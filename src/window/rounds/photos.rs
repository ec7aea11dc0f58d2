//! Photographs that go in: by drop, by the desktop's dialog, or by a typed path. Each is looked at and copied into the
//! logbook at once, away from the window's thread, so that a card pulled out of its reader takes nothing with it.

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::mpsc::{Receiver, Sender, channel};

use egui::{ColorImage, Sense, TextureHandle, TextureOptions, Ui, vec2};
use serde::{Deserialize, Serialize};

use crate::photo::Picture;
use crate::photo::thumbnail::shrink;
use crate::record::{Entry, Id, Moment, PartId, Photo, PhotoView, When, Word as _};
use crate::store::{FileSource, Store};
use crate::text;
use crate::window::desktop::take_dropped;
use crate::window::outbox::{Ask, Outbox};
use crate::window::page::Page;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, choice_ui, field_ui, mark_button, path_field_ui, remark};

/// The side of the small picture that is shown beside each photograph, pixels.
const PREVIEW_PX: u32 = 192;

/// Photographs that are to go in.
#[derive(Default, Serialize, Deserialize)]
#[serde(default)]
pub struct PhotosRound {
    /// The path that is being typed.
    line: String,
    photos: Vec<Typed>,
    #[serde(skip)]
    work: Work,
}

#[derive(Serialize, Deserialize)]
struct Typed {
    path: PathBuf,
    view: PhotoView,
    caption: String,
    /// The file as the logbook keeps it, once it does.
    kept: Option<KeptPhoto>,
    #[serde(skip)]
    look: Look,
}

/// A photograph's file as the logbook keeps it.
#[derive(Clone, Serialize, Deserialize)]
struct KeptPhoto {
    content: String,
    extension: String,
    size_px: [u32; 2],
}

/// What came of looking at a file.
#[derive(Default)]
enum Look {
    #[default]
    Waiting,
    UnderWay,
    Fine(TextureHandle),
    Refused(String),
}

/// What a thread found out about a file.
struct News {
    path: PathBuf,
    looked: Result<(ColorImage, KeptPhoto), String>,
}

struct Work {
    sender: Sender<News>,
    receiver: Receiver<News>,
}

impl Default for Work {
    fn default() -> Self {
        let (sender, receiver) = channel();
        Self { sender, receiver }
    }
}

impl PhotosRound {
    /// How many are listed.
    pub fn count(&self) -> usize {
        self.photos.len()
    }

    /// Adds files, as dropped or picked; one that is listed already is looked at again.
    pub fn add(&mut self, paths: impl IntoIterator<Item = PathBuf>) {
        for path in paths {
            if let Some(known) = self.photos.iter_mut().find(|photo| photo.path == path) {
                known.look = Look::Waiting;
                continue;
            }
            let view = if self.photos.is_empty() { PhotoView::Overview } else { PhotoView::Detail };
            self.photos.push(Typed { path, view, caption: String::new(), kept: None, look: Look::Waiting });
        }
    }

    /// A path that is typed but not added yet goes in as well.
    pub fn add_typed(&mut self) {
        let line = std::mem::take(&mut self.line);
        if !line.trim().is_empty() {
            self.add([PathBuf::from(line.trim())]);
        }
    }

    /// Whether a file is still being looked at.
    pub fn is_busy(&self) -> bool {
        self.photos.iter().any(|photo| matches!(photo.look, Look::Waiting | Look::UnderWay))
    }

    /// Photographs that cannot go in, each with why.
    pub fn refused(&self) -> impl Iterator<Item = (&Path, &str)> {
        self.photos.iter().filter_map(|photo| match &photo.look {
            Look::Refused(why) => Some((photo.path.as_path(), why.as_str())),
            _ => None,
        })
    }

    /// Takes what threads have found out, and sends them off for what is new; call it every frame.
    pub fn take_news(&mut self, ctx: &egui::Context, store: &Arc<Store>) {
        let Self { photos, work, .. } = self;
        for News { path, looked } in work.receiver.try_iter() {
            let Some(photo) = photos.iter_mut().find(|photo| photo.path == path) else { continue };
            match looked {
                Ok((image, kept)) => {
                    let name = path.display().to_string();
                    photo.look = Look::Fine(ctx.load_texture(name, image, TextureOptions::LINEAR));
                    photo.kept = Some(kept);
                }
                Err(why) => photo.look = Look::Refused(why),
            }
        }
        for photo in photos.iter_mut().filter(|photo| matches!(photo.look, Look::Waiting)) {
            photo.look = Look::UnderWay;
            // What is kept already, as after a restart, is looked at where the logbook has it.
            let kept = photo
                .kept
                .as_ref()
                .map(|kept| store.photo_path(&kept.record(PartId::from_uuid(uuid::Uuid::nil()), photo)));
            let (path, sender, ctx, store) = (photo.path.clone(), work.sender.clone(), ctx.clone(), Arc::clone(store));
            std::thread::spawn(move || {
                let looked = keep(kept.as_deref().unwrap_or(&path), &store);
                let _ = sender.send(News { path, looked });
                ctx.request_repaint();
            });
        }
    }

    /// The records of all photographs that the logbook keeps.
    pub fn entries(&self, part: PartId, on: impl Into<When>) -> Vec<Entry> {
        let added = Moment { on: on.into(), sequence: 0 };
        let kept = self.photos.iter().filter_map(|photo| Some(photo.kept.as_ref()?.record(part, photo)));
        kept.map(|photo| Photo { added, ..photo }.into()).collect()
    }

    /// Draws the round. Files dropped on the window are added wherever it stands.
    pub fn ui(&mut self, ui: &mut Ui, page: Page, store: &Arc<Store>, outbox: &mut Outbox) {
        self.take_drops(ui.ctx());
        let mut ask = false;
        let label = text!("Path of a photograph");
        if let Some(path) = path_field_ui(ui, label, &mut self.line, text!("Add"), &mut ask) {
            self.line.clear();
            self.add([path]);
        }
        if ask {
            outbox.ask(Ask::Photographs(page));
        }
        ui.label(remark(ui, text!("Or drop files on the window.")));
        self.take_news(ui.ctx(), store);
        let mut away = None;
        for (at, photo) in self.photos.iter_mut().enumerate() {
            ui.push_id(at, |ui| {
                if photo_ui(ui, photo) {
                    away = Some(at);
                }
            });
        }
        if let Some(at) = away {
            self.photos.remove(at);
        }
    }

    /// Adds files that were dropped on the window.
    pub fn take_drops(&mut self, ctx: &egui::Context) {
        self.add(take_dropped(ctx));
    }
}

impl KeptPhoto {
    fn record(&self, part: PartId, typed: &Typed) -> Photo {
        Photo {
            id: Id::from_uuid(super::new_uuid()),
            part: Some(part),
            machine: None,
            lot: None,
            content: self.content.clone(),
            extension: self.extension.clone(),
            width_px: self.size_px[0],
            height_px: self.size_px[1],
            added: Moment::default(),
            taken: When::Unknown,
            view: typed.view,
            caption: typed.caption.trim().to_owned(),
            is_map: false,
        }
    }
}

/// One photograph with what it shows; `true` when it was taken out.
fn photo_ui(ui: &mut Ui, photo: &mut Typed) -> bool {
    let name = photo.path.file_name().unwrap_or(photo.path.as_os_str()).to_string_lossy().into_owned();
    let mut away = false;
    ui.add_space(2.0 * GRID);
    ui.horizontal_top(|ui| {
        let side = 20.0 * GRID;
        let (rect, _) = ui.allocate_exact_size(vec2(side, side), Sense::hover());
        ui.painter().rect_filled(rect, 2.0, ui.tokens().rail);
        if let Look::Fine(texture) = &photo.look {
            let size = texture.size_vec2();
            let fitted = size * (side / size.max_elem().max(1.0));
            let inner = egui::Rect::from_center_size(rect.center(), fitted);
            egui::Image::new((texture.id(), fitted)).paint_at(ui, inner);
        }
        ui.vertical(|ui| {
            ui.horizontal(|ui| {
                ui.label(body(shortened(&name))).on_hover_text(photo.path.display().to_string());
                match (&photo.look, &photo.kept) {
                    (Look::Waiting | Look::UnderWay, _) => drop(ui.label(remark(ui, text!("being looked at…")))),
                    (Look::Fine(_), Some(kept)) => {
                        let [width, height] = kept.size_px;
                        ui.label(remark(ui, format!("{width} × {height}")));
                    }
                    _ => {}
                }
                away = mark_button(ui, Mark::Away, &text!("Take {name} out", name = name)).clicked();
            });
            if let Look::Refused(why) = &photo.look {
                ui.label(body(why).color(ui.tokens().severity_grave));
            }
            ui.horizontal_wrapped(|ui| {
                let views: Vec<_> = PhotoView::ALL.iter().map(|word| (*word, word.label())).collect();
                choice_ui(ui, text!("Shows"), &mut photo.view, &views, 40.0 * GRID);
                field_ui(ui, text!("Caption"), &mut photo.caption, Some(60.0 * GRID));
            });
        });
    });
    away
}

/// A long name without its middle.
fn shortened(name: &str) -> String {
    let letters: Vec<char> = name.chars().collect();
    if letters.len() <= 36 {
        return name.to_owned();
    }
    let (front, back) = (&letters[..20], &letters[letters.len() - 12..]);
    front.iter().chain(['…'].iter()).chain(back).collect()
}

/// Looks at a file and copies it into the logbook; a small picture of it for the list.
fn keep(path: &Path, store: &Store) -> Result<(ColorImage, KeptPhoto), String> {
    let picture = Picture::open(path).map_err(|error| error.to_string())?;
    let small = shrink(&picture, PREVIEW_PX).map_err(|error| error.to_string())?;
    let kept = store
        .keep_photo(FileSource::Bytes(picture.bytes()), picture.format().extension())
        .map_err(|error| error.to_string())?;
    let image = ColorImage::from_rgba_unmultiplied([small.width() as usize, small.height() as usize], small.as_raw());
    let size_px = [picture.width_px(), picture.height_px()];
    Ok((image, KeptPhoto { content: kept.content, extension: kept.extension, size_px }))
}
