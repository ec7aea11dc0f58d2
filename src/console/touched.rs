//! `touched LOGBOOK [TAG WORK electrical|nothing]`: which own work does not say what it touched; or says it of one piece.
//!
//! `WORK` is the piece's words, or a part of them that no other piece on the part has, or its number. JSON: `{"stated":
//! null, "left": [{"part": "0042", "number": 1, "title": "Bridge the trace", "state": "done", "on": "2026-03-01",
//! "nature": "repair", "touches": "unstated", "note": ""}, …]}`; `stated` is the piece of which it was said.

use std::path::PathBuf;

use anyhow::anyhow;
use clap::{Args, ValueEnum};
use serde::Serialize;

use super::{Answer, as_json};
use crate::assess::touched::{Piece, own_work, said, state, unstated};
use crate::record::{Nature, PartFile, Touches, When, Word as _, WorkState};
use crate::store::Store;
use crate::{counted, text};

#[derive(Args)]
pub struct Touched {
    #[arg(help = text!("The logbook to answer from"))]
    logbook: PathBuf,
    #[arg(requires = "what", help = text!("The part's tag"))]
    tag: Option<String>,
    #[arg(requires = "what", help = text!("The work's words, some of them, or its number"))]
    work: Option<String>,
    #[arg(value_enum, help = text!("What it touched"))]
    what: Option<What>,
}

#[derive(Clone, Copy, ValueEnum)]
enum What {
    Electrical,
    Nothing,
}

/// The JSON form.
#[derive(Serialize)]
struct Form {
    stated: Option<PieceForm>,
    left: Vec<PieceForm>,
}

#[derive(Serialize)]
struct PieceForm {
    part: String,
    number: usize,
    title: String,
    state: WorkState,
    on: When,
    nature: Nature,
    touches: Touches,
    note: String,
}

impl Touched {
    pub fn answer(&self, json: bool) -> Answer {
        let stated = match (&self.tag, &self.work, self.what) {
            (Some(tag), Some(work), Some(what)) => Some(self.state(tag, work, what)?),
            _ => None,
        };
        let logbook = Store::open_reading(&self.logbook)?.logbook();
        let form = Form { stated, left: unstated(&logbook).into_iter().map(PieceForm::of).collect() };
        if json { as_json(&form) } else { Ok(form.in_words()) }
    }

    /// Says it of one piece, as one change.
    fn state(&self, tag: &str, wanted: &str, what: What) -> anyhow::Result<PieceForm> {
        let store = Store::open(&self.logbook)?;
        let path = self.logbook.display();
        let logbook = store.logbook();
        let file = logbook
            .part_tagged(tag)
            .ok_or_else(|| anyhow!(text!("no part has the tag “{tag}”: {path}", tag = tag, path = path)))?;
        let piece = find(file, wanted)?;
        let touches = match what {
            What::Electrical => Touches::Electrical,
            What::Nothing => Touches::NothingElectrical,
        };
        let change = state(piece, touches);
        if !change.is_empty() {
            store.write(change)?;
        }
        Ok(PieceForm { touches, ..PieceForm::of(piece) })
    }
}

/// The piece of a number or of these words.
fn find<'a>(file: &'a PartFile, wanted: &str) -> anyhow::Result<Piece<'a>> {
    let own = own_work(file);
    let lower = wanted.trim().to_lowercase();
    let numbered = wanted.trim().parse::<usize>().ok().and_then(|number| own.get(number.checked_sub(1)?));
    let whole: Vec<_> = own.iter().filter(|work| work.title.to_lowercase() == lower).collect();
    let some: Vec<_> = own.iter().filter(|work| work.title.to_lowercase().contains(&lower)).collect();
    let found = numbered.or_else(|| match (&whole[..], &some[..]) {
        ([one], _) | ([], [one]) => Some(*one),
        _ => None,
    });
    let listed = || {
        let listed = own.iter().enumerate().map(|(at, work)| format!("{} {}", at + 1, work.title));
        listed.collect::<Vec<_>>().join("; ")
    };
    let work = found.copied().ok_or_else(|| {
        let tag = &file.part.tag;
        anyhow!(if own.is_empty() {
            text!("{tag} has no work in own words", tag = tag)
        } else {
            text!(
                "“{work}” is not one piece of {tag}’s own work: {listed}",
                work = wanted,
                tag = tag,
                listed = listed()
            )
        })
    })?;
    Ok(Piece { file, work })
}

impl PieceForm {
    fn of(piece: Piece<'_>) -> Self {
        let Piece { file, work } = piece;
        let number = own_work(file).iter().position(|own| own.id == work.id).map_or(0, |at| at + 1);
        Self {
            part: file.part.tag.clone(),
            number,
            title: work.title.clone(),
            state: work.state,
            on: work.changed.on,
            nature: work.nature,
            touches: work.touches,
            note: work.note.clone(),
        }
    }

    fn in_words(&self) -> String {
        let Self { part, number, title, state, on, note, .. } = self;
        let note = if note.is_empty() { String::new() } else { format!(" – {note}") };
        format!("{part}  {number}  {title} ({}, {on}){note}", state.label().to_lowercase())
    }
}

impl Form {
    fn in_words(&self) -> String {
        let mut lines: Vec<String> = self
            .stated
            .iter()
            .map(|piece| format!("{}  {}: {}", piece.part, piece.title, said(piece.touches)))
            .collect();
        lines.push(match self.left.len() {
            0 => text!("All stated").to_owned(),
            left => counted!(
                "{count} piece of own work does not say what it touched",
                "{count} pieces of own work do not say what they touched",
                left
            ),
        });
        lines.extend(self.left.iter().map(|piece| format!("  {}", piece.in_words())));
        lines.join("\n")
    }
}
