//! Photographs that go in with a part that is being logged: each is copied into the logbook as soon as it is named, so
//! that a card pulled out of its reader takes nothing with it.

use std::path::{Path, PathBuf};

use chrono::NaiveDate;
use egui::{Sense, Ui, vec2};
use serde::{Deserialize, Serialize};

use crate::photo::{Failure, TakenIn};
use crate::record::{Entry, Moment, PartId, Photo, PhotoView, When, Word as _};
use crate::text;
use crate::window::outbox::{Ask, Outbox, View};
use crate::window::page::Page;
use crate::window::photographs::small_ui;
use crate::window::taking_in::hint_ui;
use crate::window::theme::marks::Mark;
use crate::window::theme::{GRID, Themed};
use crate::window::widgets::{body, choice_ui, expanded, field_ui, mark_button, path_field_ui, remark};

/// Photographs that are to go in.
#[derive(Default, Serialize, Deserialize)]
#[serde(default)]
pub struct PhotosRound {
    /// The path that is being typed.
    line: String,
    photos: Vec<Typed>,
    /// Paths that are still to be handed over.
    wanted: Vec<PathBuf>,
}

#[derive(Serialize, Deserialize)]
struct Typed {
    name: String,
    view: PhotoView,
    caption: String,
    /// The photograph as the logbook keeps it; `None` where it cannot go in.
    kept: Option<Photo>,
    /// Why it cannot go in.
    refused: String,
}

impl PhotosRound {
    /// How many are listed.
    pub fn count(&self) -> usize {
        self.photos.len()
    }

    /// A path that is typed but not added yet goes in as well.
    pub fn add_typed(&mut self) {
        let line = std::mem::take(&mut self.line);
        if !line.trim().is_empty() {
            self.wanted.push(expanded(line.trim()));
        }
    }

    /// Whether paths are still to be handed over.
    pub fn has_wanted(&self) -> bool {
        !self.wanted.is_empty()
    }

    /// Has what is named taken in, for a page; call it every frame.
    pub fn hand_over(&mut self, page: Page, outbox: &mut Outbox) {
        outbox.keep_files(page, std::mem::take(&mut self.wanted), true);
    }

    /// Puts another round's photographs after its own.
    pub fn append(&mut self, other: Self) {
        for Typed { name, kept, refused, .. } in other.photos {
            match kept {
                Some(photo) => self.bring(name, photo),
                None => self.refuse(name, refused),
            }
        }
    }

    /// Takes photographs that came in, and those that could not, each with why.
    pub fn arrived(&mut self, taken_in: &[TakenIn], failed: &[Failure], today: NaiveDate) {
        for one in taken_in {
            self.bring(name(&one.path), one.photo(PhotoView::Detail, today));
        }
        for Failure { path, why } in failed {
            self.refuse(name(path), why.clone());
        }
    }

    fn refuse(&mut self, name: String, refused: String) {
        // Tried again, it is told once.
        self.photos.retain(|photo| photo.kept.is_some() || photo.name != name);
        self.photos.push(Typed { name, view: PhotoView::Detail, caption: String::new(), kept: None, refused });
    }

    /// Takes a photograph that the logbook keeps already; the same picture is listed once.
    pub fn bring(&mut self, name: String, photo: Photo) {
        let mut kept = self.photos.iter().filter_map(|photo| photo.kept.as_ref());
        if kept.any(|known| known.content == photo.content) {
            return;
        }
        self.photos.retain(|refused| refused.kept.is_some() || refused.name != name);
        let view = if self.photos.is_empty() { PhotoView::Overview } else { PhotoView::Detail };
        self.photos.push(Typed { name, view, caption: String::new(), kept: Some(photo), refused: String::new() });
    }

    /// Whether it keeps a photograph of this content.
    pub fn holds(&self, content: &str) -> bool {
        self.photos.iter().filter_map(|photo| photo.kept.as_ref()).any(|kept| kept.content == content)
    }

    /// Photographs that cannot go in, as why.
    pub fn refused(&self) -> impl Iterator<Item = &str> {
        self.photos.iter().filter(|photo| photo.kept.is_none()).map(|photo| photo.refused.as_str())
    }

    /// The records of all photographs that the logbook keeps.
    pub fn entries(&self, part: PartId, on: impl Into<When>) -> Vec<Entry> {
        let added = Moment { on: on.into(), sequence: 0 };
        let kept = self.photos.iter().filter_map(|photo| Some((photo, photo.kept.clone()?)));
        kept.map(|(Typed { view, caption, .. }, kept)| {
            let caption = caption.trim().to_owned();
            Photo { part: Some(part), added, view: *view, caption, ..kept }.into()
        })
        .collect()
    }

    /// Draws the round.
    pub fn ui(&mut self, ui: &mut Ui, page: Page, view: &View<'_>, outbox: &mut Outbox) {
        let mut ask = false;
        let label = text!("Path of a photograph");
        if let Some(path) = path_field_ui(ui, label, &mut self.line, text!("Add"), &mut ask) {
            self.line.clear();
            self.wanted.push(path);
        }
        if ask {
            outbox.ask(Ask::Photographs(page));
        }
        hint_ui(ui, view);
        let mut away = None;
        for (at, photo) in self.photos.iter_mut().enumerate() {
            ui.push_id(at, |ui| {
                if photo_ui(ui, view, photo) {
                    away = Some(at);
                }
            });
        }
        if let Some(at) = away {
            self.photos.remove(at);
        }
    }
}

fn name(path: &Path) -> String {
    path.file_name().unwrap_or(path.as_os_str()).to_string_lossy().into_owned()
}

/// One photograph with what it shows; `true` when it was taken out.
fn photo_ui(ui: &mut Ui, view: &View<'_>, photo: &mut Typed) -> bool {
    let name = photo.name.clone();
    let mut away = false;
    ui.add_space(2.0 * GRID);
    ui.horizontal_top(|ui| {
        let side = 20.0 * GRID;
        let (rect, _) = ui.allocate_exact_size(vec2(side, side), Sense::hover());
        small_ui(ui, view, rect, photo.kept.as_ref(), false);
        ui.vertical(|ui| {
            ui.horizontal(|ui| {
                ui.label(body(shortened(&name))).on_hover_text(&name);
                if let Some(Photo { width_px, height_px, .. }) = &photo.kept {
                    ui.label(remark(ui, format!("{width_px} × {height_px}")));
                }
                away = mark_button(ui, Mark::Away, &text!("Take {name} out", name = name)).clicked();
            });
            if photo.kept.is_none() {
                ui.label(body(&photo.refused).color(ui.tokens().severity_grave));
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
