//! `photos LOGBOOK add TAG FILE…`, `photos LOGBOOK list TAG` and `photos LOGBOOK copy TAG|PHOTO FOLDER`.

mod add;
mod copy;
mod list;

use std::path::PathBuf;
use std::sync::Arc;

use anyhow::anyhow;
use clap::{Args, Subcommand};
use serde::Serialize;

use super::Answer;
use crate::photo::Failure;
use crate::record::PartFile;
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
    #[command(about = text!("Copy photographs out, without what the camera noted in them"))]
    Copy(copy::Copy),
}

impl Photos {
    pub fn answer(&self, json: bool) -> Answer {
        match &self.act {
            Act::Add(add) => add.answer(&Store::open(&self.logbook)?, json),
            Act::List(list) => list.answer(&Store::open_reading(&self.logbook)?, json),
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
