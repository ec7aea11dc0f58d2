//! `photos LOGBOOK add TAG FILE…`: takes files, and the pictures of folders, in as a part's photographs.
//!
//! JSON: `{"part": "0042", "kept": [{"file": "IMG_1.jpg", "photo": key, "content": "SHA-256", "width_px": 4000,
//! "height_px": 3000, "taken": "2024-05-06T07:08:09+02:00", "camera": "…", "already": false}, …], "failed": [{"file":
//! "IMG_2.jpg", "reason": "“IMG_2.jpg” is empty"}, …], "passed_over": 0}`. `already` says that the part had this very
//! picture; `taken` is null when the camera noted none; `passed_over` counts what folders hold beside pictures. Exits
//! with 1 when anything failed; the rest is kept all the same.

use std::collections::HashMap;
use std::io::{IsTerminal as _, Write as _};
use std::ops::ControlFlow;
use std::path::PathBuf;

use chrono::Local;
use clap::Args;
use serde::Serialize;

use super::super::{Answer, Found, as_json};
use super::{FailureForm, part};
use crate::photo::{Failure, TakenIn, gather, take_in};
use crate::record::{Change, PartFile, Photo, PhotoId, PhotoView};
use crate::store::{Store, StoreError};
use crate::{counted, text};

#[derive(Args)]
pub struct Add {
    #[arg(help = text!("The part's tag"))]
    tag: String,
    #[arg(required = true, value_name = "FILE", help = text!("Pictures, or folders with pictures in them"))]
    files: Vec<PathBuf>,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    part: String,
    kept: Vec<KeptForm>,
    failed: Vec<FailureForm>,
    passed_over: usize,
}

#[derive(Serialize)]
struct KeptForm {
    file: String,
    photo: PhotoId,
    content: String,
    width_px: u32,
    height_px: u32,
    taken: Option<String>,
    camera: String,
    already: bool,
}

impl Add {
    pub fn answer(&self, store: &Store, json: bool) -> Answer {
        let part = part(store, &self.tag)?;
        let gathered = gather(&self.files, |_| ControlFlow::Continue(()));
        let count = gathered.files.len();
        let batch = take_in(store, None, &gathered.files, |done| {
            show_progress(done, count);
            ControlFlow::Continue(())
        });
        let failed: Vec<Failure> = gathered.failed.into_iter().chain(batch.failed).collect();
        let kept = written(store, &part, batch.taken_in)?;
        let form = Form {
            part: part.part.tag.clone(),
            kept,
            failed: failed.iter().map(FailureForm::from).collect(),
            passed_over: gathered.passed_over,
        };
        let answer = if json { as_json(&form)? } else { in_words(&form) };
        if form.failed.is_empty() { Ok(answer) } else { Err(Found(answer).into()) }
    }
}

/// Writes the records of what was taken in; when that is refused, nothing of it stays.
fn written(store: &Store, part: &PartFile, taken_in: Vec<TakenIn>) -> Result<Vec<KeptForm>, StoreError> {
    let mut known: HashMap<String, PhotoId> =
        part.photos.iter().map(|file| (file.photo.content.clone(), file.photo.id)).collect();
    let today = Local::now().date_naive();
    let mut change = Change::new(text!("Photographs of {tag}", tag = part.part.tag));
    let mut kept = Vec::new();
    for taken_in in &taken_in {
        let view = if known.is_empty() { PhotoView::Overview } else { PhotoView::Detail };
        let photo = Photo { part: Some(part.part.id), ..taken_in.photo(view, today) };
        let already = known.get(&photo.content).copied();
        kept.push(KeptForm {
            file: taken_in.path.display().to_string(),
            photo: already.unwrap_or(photo.id),
            content: photo.content.clone(),
            width_px: photo.width_px,
            height_px: photo.height_px,
            taken: taken_in.shot.taken.map(|taken| taken.to_string()),
            camera: taken_in.shot.camera.clone(),
            already: already.is_some(),
        });
        if already.is_none() {
            known.insert(photo.content.clone(), photo.id);
            change.put(photo);
        }
    }
    if !change.is_empty()
        && let Err(error) = store.write(change)
    {
        store.forget_photos(taken_in.iter().map(|taken_in| &taken_in.kept));
        return Err(error);
    }
    Ok(kept)
}

/// Rewrites a line on the terminal; nothing where stderr goes elsewhere.
fn show_progress(done: usize, count: usize) {
    let mut stderr = std::io::stderr();
    if stderr.is_terminal() {
        let end = if done == count { "\n" } else { "" };
        let _ = write!(stderr, "\r{}{end}", text!("{done} of {count}", done = done, count = count));
    }
}

fn in_words(form: &Form) -> String {
    let already = form.kept.iter().filter(|kept| kept.already).count();
    let kept = form.kept.len() - already;
    let mut lines = vec![counted!("{count} photograph taken in", "{count} photographs taken in", kept)];
    if already > 0 {
        lines.push(counted!("{count} was there already", "{count} were there already", already));
    }
    if form.passed_over > 0 {
        lines.push(counted!("{count} other file passed over", "{count} other files passed over", form.passed_over));
    }
    if !form.failed.is_empty() {
        lines.push(counted!("{count} not taken in:", "{count} not taken in:", form.failed.len()));
    }
    lines.extend(form.failed.iter().map(|failure| format!("  {}: {}", failure.file, failure.reason)));
    lines.join("\n")
}
