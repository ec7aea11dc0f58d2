//! `photos LOGBOOK copy TAG|PHOTO FOLDER [--marked png|jpg]`: copies to hand out, without what the camera noted in them: no
//! place, no time. With `--marked` each has its marks drawn on it and a legend below.
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

use super::super::opened::rules_in_force;
use super::super::{Answer, Found, as_json};
use super::list::SHORT_CONTENT;
use super::{FailureForm, Meant, meant};
use crate::paper::marked_copy::{self, CopyFormat};
use crate::photo::{Failure, Picture, handed_out};
use crate::record::{PartFile, Photo, PhotoFile, PhotoId, Word as _};
use crate::rules::Rules;
use crate::store::Store;
use crate::{counted, text};

#[derive(Args)]
pub struct Copy {
    #[arg(value_name = "TAG|PHOTO", help = text!("A part's tag, for all its photographs, or one photograph"))]
    what: String,
    #[arg(help = text!("The folder to copy into; made when it is not there"))]
    folder: PathBuf,
    #[arg(long, value_name = "FORMAT", value_parser = format, help = text!("With the marks and a legend, as png or jpg"))]
    marked: Option<CopyFormat>,
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
        let Self { folder, marked, .. } = self;
        let mut meant = meant(store, &self.what)?;
        // A picture that cannot be read is told below, when it is to be copied.
        if marked.is_some() {
            meant.look_at_patches(store);
        }
        let Meant { photos, part } = meant;
        let names = self.names(&photos, part.as_deref());
        let drawing = marked.map(|format| Ok::<_, anyhow::Error>((format, rules_in_force()?))).transpose()?;
        fs::create_dir_all(folder)
            .with_context(|| text!("The folder cannot be made: {path}", path = folder.display()))?;
        let mut form = Form { copied: Vec::new(), failed: Vec::new() };
        for (name, file) in names.into_iter().zip(photos) {
            let photo = file.photo.id;
            let made = match &drawing {
                None => plain_copy(store, &file.photo),
                Some((format, rules)) => marked_copy(store, &file, part.as_deref(), rules, *format),
            };
            match made.and_then(|(bytes, extension)| write(&bytes, &folder.join(&name), extension)) {
                Ok(file) => form.copied.push(CopiedForm { photo, file: file.display().to_string() }),
                Err(error) => {
                    let failure = Failure { path: folder.join(name), why: format!("{error:#}") };
                    form.failed.push((&failure).into());
                }
            }
        }
        let answer = if json { as_json(&form)? } else { in_words(&form) };
        if form.failed.is_empty() { Ok(answer) } else { Err(Found(answer).into()) }
    }

    /// What each photograph's copy is called, without ending.
    fn names(&self, photos: &[PhotoFile], part: Option<&PartFile>) -> Vec<String> {
        if let Some(part) = part.filter(|part| part.part.tag.eq_ignore_ascii_case(&self.what)) {
            let tag = plain(&part.part.tag);
            return (1..=photos.len()).map(|number| format!("{tag}-{number}")).collect();
        }
        let short = |content: &str| content[..SHORT_CONTENT.min(content.len())].to_owned();
        photos.iter().map(|file| short(&file.photo.content)).collect()
    }
}

fn format(typed: &str) -> Result<CopyFormat, String> {
    CopyFormat::named(typed).ok_or_else(|| text!("“{format}” is neither png nor jpg", format = typed))
}

/// A tag as a file's name.
fn plain(tag: &str) -> String {
    tag.chars().map(|letter| if letter.is_alphanumeric() || letter == '-' { letter } else { '_' }).collect()
}

fn plain_copy(store: &Store, photo: &Photo) -> anyhow::Result<(Vec<u8>, &'static str)> {
    Ok(handed_out::copy(&Picture::open(&store.photo_path(photo))?)?)
}

fn marked_copy(
    store: &Store,
    file: &PhotoFile,
    part: Option<&PartFile>,
    rules: &Rules,
    format: CopyFormat,
) -> anyhow::Result<(Vec<u8>, &'static str)> {
    let picture = Picture::open(&store.photo_path(&file.photo))?;
    let title = marked_copy::title(&store.logbook(), &file.photo);
    let bytes = marked_copy::copy(&picture, file, part, rules, &title, format)?;
    Ok((bytes, format.name()))
}

fn write(bytes: &[u8], path: &Path, extension: &str) -> anyhow::Result<PathBuf> {
    let mut name = path.as_os_str().to_owned();
    name.push(format!(".{extension}"));
    let path = PathBuf::from(name);
    let written = OpenOptions::new().write(true).create_new(true).open(&path).and_then(|mut file| {
        file.write_all(bytes).inspect_err(|_| {
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
