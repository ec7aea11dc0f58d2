//! `new LOGBOOK`: makes an empty logbook: `{"logbook": "attic.logbook", "workshop": "attic", …}`.

use std::path::PathBuf;

use clap::Args;
use serde::Serialize;

use super::{Answer, as_json};
use crate::record::Workshop;
use crate::store::Store;
use crate::text;

#[derive(Args)]
pub struct New {
    #[arg(help = text!("The folder to make the logbook in"))]
    logbook: PathBuf,
    #[arg(long, help = text!("The workshop's name; the folder's name unless given"))]
    name: Option<String>,
    #[arg(long, default_value = "", help = text!("Who usually writes"))]
    keeper: String,
    #[arg(long, default_value = "EUR", help = text!("Money of the logbook, an ISO 4217 code"))]
    currency: String,
}

/// The JSON form.
#[derive(Serialize)]
struct Form<'a> {
    logbook: &'a PathBuf,
    workshop: &'a str,
    keeper: &'a str,
    currency: &'a str,
}

impl New {
    pub fn answer(&self, json: bool) -> Answer {
        let Self { logbook, name, keeper, currency } = self;
        let folder_name = || logbook.file_stem().map(|stem| stem.to_string_lossy().into_owned()).unwrap_or_default();
        let workshop = Workshop {
            id: Store::new_id(),
            name: name.clone().unwrap_or_else(folder_name),
            keeper: keeper.clone(),
            currency: currency.clone(),
            note: String::new(),
        };
        let store = Store::create(logbook, workshop)?;
        let title = store.logbook().workshop.name.clone();
        if json {
            return as_json(&Form { logbook, workshop: &title, keeper, currency });
        }
        Ok(text!("New logbook “{name}”: {path}", name = title, path = logbook.display()))
    }
}
