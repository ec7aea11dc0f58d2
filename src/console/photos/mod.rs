//! `photos LOGBOOK add TAG FILE…`, `list TAG`, `marks TAG|PHOTO` and `copy TAG|PHOTO FOLDER`.

mod add;
mod copy;
mod list;
mod marks;

use std::path::PathBuf;
use std::sync::Arc;

use anyhow::anyhow;
use clap::{Args, Subcommand};
use serde::Serialize;

use self::list::SHORT_CONTENT;
use super::Answer;
use crate::photo::measure::{is_missing, sample_missing};
use crate::photo::{Failure, Picture};
use crate::record::{PartFile, PhotoFile};
use crate::store::Store;
use crate::text;

#[derive(Args)]
pub struct Photos {
    #[arg(help = text!("The logbook"))]
    logbook: PathBuf,
    #[command(subcommand)]
    act: Act,
}

#[derive(Subcommand)]
enum Act {
    #[command(about = text!("Take photographs of a part in; what cannot be taken in is named, the rest is kept"))]
    Add(add::Add),
    #[command(about = text!("List a part's photographs"))]
    List(list::List),
    #[command(about = text!("List the marks on photographs and what they measure"))]
    Marks(marks::Marks),
    #[command(about = text!("Copy photographs out, without what the camera noted in them"))]
    Copy(copy::Copy),
}

impl Photos {
    pub fn answer(&self, json: bool) -> Answer {
        match &self.act {
            Act::Add(add) => add.answer(&Store::open(&self.logbook)?, json),
            Act::List(list) => list.answer(&Store::open_reading(&self.logbook)?, json),
            Act::Marks(marks) => marks.answer(&Store::open_reading(&self.logbook)?, json),
            Act::Copy(copy) => copy.answer(&Store::open_reading(&self.logbook)?, json),
        }
    }
}

/// A file that something could not be done with, in the JSON form.
#[derive(Serialize)]
struct FailureForm {
    file: String,
    reason: String,
}

impl From<&Failure> for FailureForm {
    fn from(Failure { path, why }: &Failure) -> Self {
        Self { file: path.display().to_string(), reason: why.clone() }
    }
}

/// The part with a tag.
fn part(store: &Store, tag: &str) -> anyhow::Result<Arc<PartFile>> {
    let unknown = || anyhow!(text!("no part has the tag “{tag}”: {path}", tag = tag, path = store.folder().display()));
    store.logbook().part_tagged(tag).cloned().ok_or_else(unknown)
}

/// The photographs that a tag or a photograph's name means.
struct Meant {
    photos: Vec<PhotoFile>,
    /// The part that they show; `None` for a machine's or a lot's.
    part: Option<Arc<PartFile>>,
}

impl Meant {
    /// Looks at the patches whose colour was not taken off their picture yet, in earlier pictures of the part too, since
    /// patches are compared with them. Nothing is written. Answers with the pictures that could not be read.
    fn look_at_patches(&mut self, store: &Store) -> Vec<Failure> {
        let Self { photos, part } = self;
        let mut failed = Vec::new();
        let all = part.as_mut().map_or(&mut *photos, |part| &mut Arc::make_mut(part).photos);
        for file in all.iter_mut().filter(|file| file.marks.iter().any(is_missing)) {
            let path = store.photo_path(&file.photo);
            let looked_at = Picture::open(&path).and_then(|picture| sample_missing(&mut file.marks, &picture));
            failed.extend(looked_at.err().map(|error| Failure { path, why: error.to_string() }));
        }
        if let Some(part) = part {
            for file in photos {
                if let Some(seen) = part.photos.iter().find(|other| other.photo.id == file.photo.id) {
                    file.clone_from(seen);
                }
            }
        }
        failed
    }
}

/// All photographs of the part with this tag, or the one that is called so: by its key or its content's first digits.
fn meant(store: &Store, what: &str) -> anyhow::Result<Meant> {
    let logbook = store.logbook();
    if let Some(part) = logbook.part_tagged(what) {
        return Ok(Meant { photos: part.photos.clone(), part: Some(part.clone()) });
    }
    let is_meant = |file: &&PhotoFile| {
        let photo = &file.photo;
        photo.id.to_string() == what || (what.len() >= SHORT_CONTENT && photo.content.starts_with(what))
    };
    let file = logbook.photo_files().find(is_meant).cloned().ok_or_else(|| {
        anyhow!(text!(
            "no part has the tag “{what}” and no photograph is called so: {path}",
            what = what,
            path = store.folder().display()
        ))
    })?;
    let part = file.photo.part.and_then(|part| logbook.part(part)).cloned();
    Ok(Meant { photos: vec![file], part })
}
