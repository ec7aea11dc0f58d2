//! `new LOGBOOK [--sample | --invent N [--seed S] [--photographs N]]`: makes a logbook: `{"logbook": "attic.logbook", "workshop": "attic", …}`.

use std::path::PathBuf;

use chrono::{Local, NaiveDate};
use clap::Args;
use serde::Serialize;

use super::{Answer, as_json};
use crate::photo::drawing::{self, sketch};
use crate::record::Workshop;
use crate::store::{Store, StoreError, invent, sample};
use crate::{counted, text};

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
    #[arg(long, conflicts_with_all = ["invent", "name", "keeper", "currency"], help = text!("Fill it with the sample workshop"))]
    sample: bool,
    #[arg(
        long,
        value_name = "N",
        value_parser = clap::value_parser!(u32).range(1..=i64::from(invent::MOST_PARTS)),
        conflicts_with_all = ["name", "keeper", "currency"],
        help = text!("Fill it with so many invented parts and all that hangs on them")
    )]
    invent: Option<u32>,
    #[arg(
        long,
        value_name = "S",
        default_value_t = 1,
        requires = "invent",
        help = text!("What the inventing starts from: the same number invents the same")
    )]
    seed: u64,
    #[arg(
        long,
        value_name = "N",
        value_parser = clap::value_parser!(u32).range(1..=i64::from(invent::MOST_PHOTOGRAPHS)),
        requires = "invent",
        help = text!("And with so many photographs of them")
    )]
    photographs: Option<u32>,
}

/// The JSON form.
#[derive(Serialize)]
struct Form<'a> {
    logbook: &'a PathBuf,
    workshop: &'a str,
    keeper: &'a str,
    currency: &'a str,
    parts: usize,
    machines: usize,
}

impl New {
    pub fn answer(&self, json: bool) -> Answer {
        let made = self.make(Local::now().date_naive())?.logbook();
        let Self { logbook, .. } = self;
        let Workshop { name, keeper, currency, .. } = &*made.workshop;
        let (parts, machines) = (made.parts.len(), made.machines.len());
        if json {
            return as_json(&Form { logbook, workshop: name, keeper, currency, parts, machines });
        }
        let new = text!("New logbook “{name}”: {path}", name = name, path = logbook.display());
        if parts == 0 {
            return Ok(new);
        }
        let parts = counted!("{count} part", "{count} parts", parts);
        let machines = counted!("{count} machine", "{count} machines", machines);
        Ok(format!("{new}\n{}", text!("{parts}, {machines}", parts = parts, machines = machines)))
    }

    fn make(&self, today: NaiveDate) -> Result<Store, StoreError> {
        let Self { logbook, name, keeper, currency, sample, invent, seed, photographs } = self;
        if *sample {
            return sample::create(logbook, today, drawing::draw_jpeg);
        }
        if let Some(parts) = invent {
            let store = invent::create(logbook, today, *parts, *seed)?;
            if let Some(count) = *photographs {
                invent::photographs(&store, today, count, *seed, sketch::SIZE_PX, sketch::sketch_jpeg)?;
            }
            return Ok(store);
        }
        let folder_name = || logbook.file_stem().map(|stem| stem.to_string_lossy().into_owned()).unwrap_or_default();
        let workshop = Workshop {
            id: Store::new_id(),
            name: name.clone().unwrap_or_else(folder_name),
            keeper: keeper.clone(),
            currency: currency.clone(),
            note: String::new(),
        };
        Store::create(logbook, workshop)
    }
}
