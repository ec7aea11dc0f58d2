//! `import LOGBOOK FILE`, `export LOGBOOK FILE` and `schema`: the exchange document.
//!
//! Import refuses a document with names that no table in force holds, unless it is told to keep them. It answers
//! `{"parts": 60, "machines": 4, "revision": 2}`, what the logbook then holds; export the same of what was written.
//! `schema` is JSON by itself.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use anyhow::Context as _;
use clap::Args;
use serde::Serialize;

use super::opened::rules_in_force;
use super::{Answer, as_json};
use crate::record::Logbook;
use crate::store::{SCHEMA, Store, UnknownNames};
use crate::{counted, text};

#[derive(Args)]
pub struct Import {
    #[arg(help = text!("The logbook to write into"))]
    logbook: PathBuf,
    #[arg(help = text!("The exchange document to read"))]
    file: PathBuf,
    #[arg(long, help = text!("Keep names that no table holds as they are, instead of refusing the document"))]
    keep_unknown: bool,
}

#[derive(Args)]
pub struct Export {
    #[arg(help = text!("The logbook to read"))]
    logbook: PathBuf,
    #[arg(help = text!("The exchange document to write; “-” for standard output"))]
    file: PathBuf,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    parts: usize,
    machines: usize,
    revision: u64,
}

fn answer(json: bool, logbook: &Logbook) -> Answer {
    let (parts, machines) = (logbook.parts.len(), logbook.machines.len());
    if json {
        return as_json(&Form { parts, machines, revision: logbook.revision });
    }
    Ok(format!(
        "{}, {}",
        counted!("{count} part", "{count} parts", parts),
        counted!("{count} machine", "{count} machines", machines)
    ))
}

impl Import {
    pub fn answer(&self, json: bool) -> Answer {
        let Self { logbook, file, keep_unknown } = self;
        let document = std::fs::read_to_string(file)
            .with_context(|| text!("The document cannot be read: {path}", path = file.display()))?;
        let store = Store::open(logbook)?;
        store.use_rules(Arc::new(rules_in_force()?));
        let unknown = if *keep_unknown { UnknownNames::Keep } else { UnknownNames::Refuse };
        let after = store
            .import(&document, unknown)
            .with_context(|| text!("Nothing was imported from {path}", path = file.display()))?;
        answer(json, &after)
    }
}

impl Export {
    pub fn answer(&self, json: bool) -> Answer {
        let Self { logbook, file } = self;
        let store = Store::open_reading(logbook)?;
        let document = store.export()?;
        if file == Path::new("-") {
            return Ok(document);
        }
        write_whole(file, &document)
            .with_context(|| text!("The document cannot be written: {path}", path = file.display()))?;
        answer(json, &store.logbook())
    }
}

/// Writes a file so that a full disk leaves the old one as it was.
fn write_whole(file: &Path, text: &str) -> std::io::Result<()> {
    let mut unfinished = file.as_os_str().to_owned();
    unfinished.push(".unfinished");
    let written = std::fs::write(&unfinished, text).and_then(|()| std::fs::rename(&unfinished, file));
    if written.is_err() {
        let _ = std::fs::remove_file(&unfinished);
    }
    written
}

/// The exchange document's JSON Schema.
pub fn schema() -> String {
    SCHEMA.to_owned()
}
