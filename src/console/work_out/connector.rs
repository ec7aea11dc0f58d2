//! `work-out connector [ID] [--takes NEED]`: the table of connectors, one of it, or whether one takes another.
//!
//! JSON: an array of connectors; with `--takes`, `offer`, `need`, `takes`.

use anyhow::anyhow;
use clap::Args;
use serde::Serialize;

use crate::console::{Answer, as_json};
use crate::rules::{Connector, Connectors, Rules};
use crate::text;

#[derive(Args)]
pub struct ConnectorQuestion {
    #[arg(value_name = "ID", help = text!("A connector, such as isa-16; without it, all of them"))]
    id: Option<String>,
    #[arg(long, value_name = "NEED", requires = "id", help = text!("Another one, to say whether the first takes it"))]
    takes: Option<String>,
}

/// The JSON form of `--takes`.
#[derive(Serialize)]
struct Form<'a> {
    offer: &'a str,
    need: &'a str,
    takes: bool,
}

impl ConnectorQuestion {
    pub fn answer(&self, json: bool) -> Answer {
        let connectors = Rules::shipped().connectors;
        let Some(id) = &self.id else {
            return list(&connectors.all().collect::<Vec<_>>(), json);
        };
        let offer = known(&connectors, id)?;
        let Some(need) = &self.takes else { return list(&[offer], json) };
        let need = known(&connectors, need)?;
        let takes = connectors.accepts(&offer.id, &need.id);
        if json {
            return as_json(&Form { offer: &offer.id, need: &need.id, takes });
        }
        let (offer, need) = (connectors.label(&offer.id), connectors.label(&need.id));
        Ok(if takes {
            text!("{offer} takes {need}", offer = offer, need = need)
        } else {
            text!("{offer} does not take {need}", offer = offer, need = need)
        })
    }
}

/// The connector, or a reason that names those whose id holds what was typed.
fn known<'a>(connectors: &'a Connectors, id: &str) -> anyhow::Result<&'a Connector> {
    connectors.get(id).ok_or_else(|| {
        let stem = id.split(['-', ' ']).next().unwrap_or(id).to_lowercase();
        let near: Vec<&str> = connectors
            .all()
            .map(|row| row.id.as_str())
            .filter(|known| !stem.is_empty() && known.contains(&stem))
            .collect();
        if near.is_empty() {
            anyhow!(text!("\"{id}\" is no connector of the table", id = id))
        } else {
            anyhow!(text!("\"{id}\" is not known; there are {known}", id = id, known = near.join(", ")))
        }
    })
}

fn list(rows: &[&Connector], json: bool) -> Answer {
    if json { as_json(&rows) } else { Ok(rows.iter().map(|row| said(row)).collect::<Vec<_>>().join("\n")) }
}

fn said(row: &Connector) -> String {
    let mut facts = vec![row.family.said().to_owned()];
    facts.extend(row.contacts.map(|contacts| text!("{contacts} contacts", contacts = contacts)));
    facts.extend(row.width_bits.map(|bits| text!("{bits} bits", bits = bits)));
    if !row.clocks_mhz.is_empty() {
        facts.push(text!("{clocks} MHz", clocks = figures(&row.clocks_mhz)));
    }
    if !row.volts.is_empty() {
        facts.push(text!("{volts} V", volts = figures(&row.volts)));
    }
    facts.extend(row.outline_mm.map(|[width, depth]| text!("{width} × {depth} mm", width = width, depth = depth)));
    if !row.accepts.is_empty() {
        facts.push(text!("takes also {others}", others = row.accepts.join(", ")));
    }
    let mut line = format!("{} ({}): {}", text::say(&row.label), row.id, facts.join(", "));
    for more in [text::say(&row.note).to_owned(), text!("Source: {source}", source = row.source.said())] {
        if !more.is_empty() {
            line.push_str("\n  ");
            line.push_str(&more);
        }
    }
    line
}

fn figures(list: &[f64]) -> String {
    list.iter().map(f64::to_string).collect::<Vec<_>>().join(", ")
}
