//! `photos LOGBOOK copy TAG|PHOTO FOLDER`: copies to hand out, without what the camera noted in them: no place, no time.
//!
//! PHOTO is a photograph's key or the first digits of its content, as `list` shows them. Files are named by the part's
//! tag and a number; one that is there already is left alone. JSON: `{"copied": [{"photo": key, "file":
//! "out/0042-1.jpg"}, …], "failed": [{"file": "out/0042-2.jpg", "reason": "…"}, …]}`. Exits with 1 when anything failed.

use std::fs::{self, OpenOptions};
use std::io::Write as _;
use std::path::{Path, PathBuf};

use anyhow::Context as _;
use clap::Args;
use serde::Serialize;

use super::super::{Answer, Found, as_json};
use super::list::SHORT_CONTENT;
use super::{FailureForm, Meant, meant};
use crate::photo::{Failure, Picture, handed_out};
use crate::record::{Photo, PhotoId};
use crate::store::Store;
use crate::{counted, text};

#[derive(Args)]
pub struct Copy {
    #[arg(value_name = "TAG|PHOTO", help = text!("A part's tag, for all its photographs, or one photograph"))]
    what: String,
    #[arg(help = text!("The folder to copy into; made when it is not there"))]
    folder: PathBuf,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    copied: Vec<CopiedForm>,
    failed: Vec<FailureForm>,
}

#[derive(Serialize)]
struct CopiedForm {
    photo: PhotoId,
    file: String,
}

impl Copy {
    pub fn answer(&self, store: &Store, json: bool) -> Answer {
        let Self { folder, .. } = self;
        let photos = self.named(store)?;
        fs::create_dir_all(folder)
            .with_context(|| text!("The folder cannot be made: {path}", path = folder.display()))?;
        let mut form = Form { copied: Vec::new(), failed: Vec::new() };
        for (name, photo) in photos {
            match copy(store, &photo, &folder.join(&name)) {
                Ok(file) => form.copied.push(CopiedForm { photo: photo.id, file: file.display().to_string() }),
                Err(error) => {
                    let failure = Failure { path: folder.join(name), why: format!("{error:#}") };
                    form.failed.push((&failure).into());
                }
            }
        }
        let answer = if json { as_json(&form)? } else { in_words(&form) };
        if form.failed.is_empty() { Ok(answer) } else { Err(Found(answer).into()) }
    }

    /// The photographs that are meant, each with its copy's name, without ending.
    fn named(&self, store: &Store) -> anyhow::Result<Vec<(String, Photo)>> {
        let Meant { photos, part } = meant(store, &self.what)?;
        let photos = photos.into_iter().map(|file| file.photo);
        if let Some(part) = part.filter(|part| part.part.tag.eq_ignore_ascii_case(&self.what)) {
            let tag = plain(&part.part.tag);
            return Ok(photos.enumerate().map(|(at, photo)| (format!("{tag}-{}", at + 1), photo)).collect());
        }
        let short = |photo: &Photo| photo.content[..SHORT_CONTENT.min(photo.content.len())].to_owned();
        Ok(photos.map(|photo| (short(&photo), photo)).collect())
    }
}

/// A tag as a file's name.
fn plain(tag: &str) -> String {
    tag.chars().map(|letter| if letter.is_alphanumeric() || letter == '-' { letter } else { '_' }).collect()
}

fn copy(store: &Store, photo: &Photo, path: &Path) -> anyhow::Result<PathBuf> {
    let (bytes, extension) = handed_out::copy(&Picture::open(&store.photo_path(photo))?)?;
    let mut name = path.as_os_str().to_owned();
    name.push(format!(".{extension}"));
    let path = PathBuf::from(name);
    let written = OpenOptions::new().write(true).create_new(true).open(&path).and_then(|mut file| {
        file.write_all(&bytes).inspect_err(|_| {
            // Half a copy is worse than none.
            let _ = fs::remove_file(&path);
        })
    });
    written.map(|()| path).context(text!("The copy cannot be written"))
}

fn in_words(form: &Form) -> String {
    let mut lines = vec![counted!("{count} photograph copied", "{count} photographs copied", form.copied.len())];
    lines.extend(form.copied.iter().map(|copied| format!("  {}", copied.file)));
    if !form.failed.is_empty() {
        lines.push(counted!("{count} not copied:", "{count} not copied:", form.failed.len()));
    }
    lines.extend(form.failed.iter().map(|failure| format!("  {}: {}", failure.file, failure.reason)));
    lines.join("\n")
}
