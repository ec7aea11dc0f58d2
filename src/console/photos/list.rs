//! `photos LOGBOOK list TAG`: a part's photographs.
//!
//! JSON: `{"part": "0042", "photos": [{"photo": key, "file": "…/photos/….jpg", "content": "SHA-256", "width_px": 4000,
//! "height_px": 3000, "taken": "2024-05-06", "added": "2024-05-07", "view": "overview", "caption": ""}, …]}`.

use std::fmt::Write as _;

use clap::Args;
use serde::Serialize;

use super::super::{Answer, as_json};
use super::part;
use crate::record::{Photo, PhotoId, PhotoView, When, Word as _};
use crate::store::Store;
use crate::{counted, text};

/// So many digits of the content tell a person's pictures apart.
pub const SHORT_CONTENT: usize = 12;

#[derive(Args)]
pub struct List {
    #[arg(help = text!("The part's tag"))]
    tag: String,
}

/// The JSON form.
#[derive(Serialize)]
struct Form<'a> {
    part: &'a str,
    photos: Vec<PhotoForm<'a>>,
}

#[derive(Serialize)]
struct PhotoForm<'a> {
    photo: PhotoId,
    file: String,
    content: &'a str,
    width_px: u32,
    height_px: u32,
    taken: When,
    added: When,
    view: PhotoView,
    caption: &'a str,
}

impl List {
    pub fn answer(&self, store: &Store, json: bool) -> Answer {
        let part = part(store, &self.tag)?;
        let photos = part.photos.iter().map(|file| form(store, &file.photo));
        let form = Form { part: &part.part.tag, photos: photos.collect() };
        if json { as_json(&form) } else { Ok(in_words(&form)) }
    }
}

fn form<'a>(store: &Store, photo: &'a Photo) -> PhotoForm<'a> {
    let Photo { id, content, width_px, height_px, taken, added, view, caption, .. } = photo;
    PhotoForm {
        photo: *id,
        file: store.photo_path(photo).display().to_string(),
        content,
        width_px: *width_px,
        height_px: *height_px,
        taken: *taken,
        added: added.on,
        view: *view,
        caption,
    }
}

fn in_words(form: &Form) -> String {
    let mut lines = counted!("{count} photograph", "{count} photographs", form.photos.len());
    for PhotoForm { content, width_px, height_px, taken, view, caption, .. } in &form.photos {
        let content = &content[..SHORT_CONTENT.min(content.len())];
        let size = format!("{width_px} × {height_px}");
        let line = format!("{content}  {size:>13}  {:10}  {}  {caption}", taken.to_string(), view.label());
        let _ = write!(lines, "\n{}", line.trim_end());
    }
    lines
}
